// Summaries of a weighted ensemble: values[i] carries weights[i] >= 0. Pure functions.
#pragma once

#include <span>

namespace lastegg {

/// The value below which the share p of the weight lies.
/// Model:   values sorted; the k-th stands at the middle of its own weight, (w_1 + ... + w_(k-1) + w_k
///          / 2) / sum; linear between those places, the outermost values beyond them. With equal
///          weights this is Hazen's plotting position (Hyndman and Fan 1996, type 5). Between a finite
///          and an infinite value the nearer one is taken.
/// Inputs:  spans of one length; 0 <= p <= 1; weights of zero do not count. Precondition: some weight
///          is above zero, no value is not-a-number; otherwise the result is not a number.
/// Checked: physics/uncertainty/weighted_unit_test.cpp
double weighted_quantile(std::span<const double> values, std::span<const double> weights, double p);

/// Sum of weight times value over the sum of weights. Precondition as above.
double weighted_mean(std::span<const double> values, std::span<const double> weights);

/// Standard deviation about the weighted mean, weights taken as probabilities. Precondition as above.
double weighted_deviation(std::span<const double> values, std::span<const double> weights);

/// How many equally weighted samples carry the same information: (sum w)^2 / sum w^2; 0 when no weight
/// is above zero.
/// Source:  Kish 1965 (from memory)
/// Checked: physics/uncertainty/weighted_unit_test.cpp
double effective_sample_size(std::span<const double> weights);

}  // namespace lastegg
