#include "physics/uncertainty/weighted.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <utility>
#include <vector>

namespace lastegg {
namespace {

constexpr double k_no_number = std::numeric_limits<double>::quiet_NaN();

/// Between two neighbours at share t; never "not a number" where one of them is infinite.
double between(double low, double high, double t) {
  if (low == high || t <= 0.0) return low;
  if (t >= 1.0) return high;
  if (!std::isfinite(low) || !std::isfinite(high)) return t < 0.5 ? low : high;
  return low + t * (high - low);
}

}  // namespace

double weighted_quantile(std::span<const double> values, std::span<const double> weights, double p) {
  std::vector<std::pair<double, double>> sorted;  // value, weight
  sorted.reserve(values.size());
  double total = 0.0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (!(weights[i] > 0.0)) continue;
    if (values[i] != values[i]) return k_no_number;
    sorted.emplace_back(values[i], weights[i]);
  }
  std::sort(sorted.begin(), sorted.end());
  for (const auto& entry : sorted) total += entry.second;
  if (!(total > 0.0) || !std::isfinite(total) || !(p >= 0.0 && p <= 1.0)) return k_no_number;

  const double wanted = p * total;
  double before = 0.0;      // weight of all earlier values
  double last_place = 0.0;  // where the previous value stands
  for (std::size_t k = 0; k < sorted.size(); ++k) {
    const double place = before + 0.5 * sorted[k].second;
    if (wanted <= place) {
      if (k == 0) return sorted[0].first;
      return between(sorted[k - 1].first, sorted[k].first, (wanted - last_place) / (place - last_place));
    }
    before += sorted[k].second;
    last_place = place;
  }
  return sorted.back().first;
}

double weighted_mean(std::span<const double> values, std::span<const double> weights) {
  double sum = 0.0, total = 0.0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (!(weights[i] > 0.0)) continue;
    sum += weights[i] * values[i];
    total += weights[i];
  }
  return total > 0.0 ? sum / total : k_no_number;
}

double weighted_deviation(std::span<const double> values, std::span<const double> weights) {
  const double mean = weighted_mean(values, weights);
  double sum = 0.0, total = 0.0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (!(weights[i] > 0.0)) continue;
    sum += weights[i] * (values[i] - mean) * (values[i] - mean);
    total += weights[i];
  }
  return total > 0.0 ? std::sqrt(sum / total) : k_no_number;
}

double effective_sample_size(std::span<const double> weights) {
  double largest = 0.0;
  for (const double w : weights) largest = std::max(largest, w);
  if (!(largest > 0.0)) return 0.0;
  double sum = 0.0, squares = 0.0;
  for (const double w : weights) {  // relative to the largest: no overflow, no underflow
    if (!(w > 0.0)) continue;
    sum += w / largest;
    squares += (w / largest) * (w / largest);
  }
  return sum * sum / squares;
}

}  // namespace lastegg
