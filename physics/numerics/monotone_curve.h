// A monotone piecewise-cubic curve through a few points: no overshoot between them. Pure functions on spans.
#pragma once

#include <cmath>
#include <cstddef>
#include <span>

namespace lastegg::numerics {

namespace monotone_curve_detail {

inline double end_slope(double h0, double h1, double d0, double d1) {
  double slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (slope * d0 <= 0)
    slope = 0;
  else if (d0 * d1 <= 0 && std::fabs(slope) > 3 * std::fabs(d0))
    slope = 3 * d0;
  return slope;
}

inline double slope_at(std::span<const double> x, std::span<const double> y, std::size_t i) {
  const std::size_t n = x.size();
  const auto h = [&](std::size_t k) { return x[k + 1] - x[k]; };
  const auto d = [&](std::size_t k) { return (y[k + 1] - y[k]) / h(k); };
  if (n == 2) return d(0);
  if (i == 0) return end_slope(h(0), h(1), d(0), d(1));
  if (i == n - 1) return end_slope(h(n - 2), h(n - 3), d(n - 2), d(n - 3));
  if (d(i - 1) * d(i) <= 0) return 0;
  const double w1 = 2 * h(i) + h(i - 1);
  const double w2 = h(i) + 2 * h(i - 1);
  return (w1 + w2) / (w1 / d(i - 1) + w2 / d(i));
}

}  // namespace monotone_curve_detail

/// Value at `at` of the monotone cubic through (x, y); beyond the ends the end values.
/// Inputs:  x strictly increasing, at least two points, y of the same length.
/// Source:  Fritsch and Butland 1984, harmonic-mean slopes (from memory, to be checked)
/// Checked: physics/numerics/monotone_curve_law_test.cpp
inline double monotone_curve(std::span<const double> x, std::span<const double> y, double at) {
  if (at <= x.front()) return y.front();
  if (at >= x.back()) return y.back();
  std::size_t i = 0;
  while (at > x[i + 1]) ++i;
  const double h = x[i + 1] - x[i];
  const double u = (at - x[i]) / h;
  const double secant = (y[i + 1] - y[i]) / h;
  const double s0 = monotone_curve_detail::slope_at(x, y, i);
  const double s1 = monotone_curve_detail::slope_at(x, y, i + 1);
  return y[i] + h * u * (s0 + u * (3 * secant - 2 * s0 - s1 + u * (s0 + s1 - 2 * secant)));
}

}  // namespace lastegg::numerics
