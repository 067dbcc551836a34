// The standard normal distribution with the same digits on every target. Pure functions.
#pragma once

namespace lastegg {

/// Probability that a standard normal score lies below x.
/// Model:   |x| < 1.5: 1/2 + density(x) (x + x^3/3 + x^5/(3 5) + ...); beyond: density over Laplace's
///          continued fraction. Absolute error below 3e-16; relative error below 1e-14 down to x = -37.
/// Source:  Abramowitz and Stegun 26.2.11 and 26.2.14 (from memory, checked)
/// Checked: physics/uncertainty/normal_agreement_test.cpp: agreement with Boost.Math
double normal_probability(double x);

/// Standard normal score below which the share p lies; -infinity at 0, infinity at 1, not a number
/// outside 0..1. Relative error below 1e-15 away from p = 1/2.
/// Model:   rational approximations of three ranges. Chosen instead of Boost.Math's quantile because
///          that one calls the platform's exp and log, whose last digits differ between targets; this
///          one needs our own logarithm only.
/// Source:  Wichura 1988, Applied Statistics 37:477, algorithm AS 241, PPND16 (coefficients from
///          memory, confirmed by the agreement test)
/// Checked: physics/uncertainty/normal_agreement_test.cpp: agreement with Boost.Math
double normal_quantile(double p);

}  // namespace lastegg
