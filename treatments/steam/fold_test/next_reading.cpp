#include "treatments/steam/fold_test/next_reading.h"

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_test/fold_unknowns.h"

namespace lastegg::steam {
namespace {

constexpr double k_most_log_beyond = 0.693;  // a factor of two
constexpr double k_least_margin = -6;  // a place that stays cold has no dose: no slope could be taken from it
constexpr double k_least_slope = -0.5;

}  // namespace

double log_fastest_pace(std::span<const double> paces, std::span<const double> margins) {
  const auto margin = [&](std::size_t k) { return std::max(margins[k], k_least_margin); };
  const auto log_pace = [&](std::size_t k) { return numerics::log(paces[k]); };
  const std::size_t last = paces.size() - 1;
  const auto slope = [&](std::size_t k) {
    return std::min((margin(k + 1) - margin(k)) / (log_pace(k + 1) - log_pace(k)), k_least_slope);
  };
  if (margin(0) < 0) return log_pace(0) - std::min(margin(0) / slope(0), k_most_log_beyond);
  for (std::size_t k = 0; k < last; ++k) {
    if (margin(k + 1) >= 0) continue;
    return log_pace(k) + (log_pace(k + 1) - log_pace(k)) * margin(k) / (margin(k) - margin(k + 1));
  }
  return log_pace(last) + std::min(-margin(last) / slope(last - 1), k_most_log_beyond);
}

double candidate_error_kelvin(const FoldTest& test, const FoldForecast& candidate,
                              const std::vector<double>& weights) {
  FoldTest alone = test;
  alone.readings = {candidate.reading};
  alone.probe_log_spread = 0;
  const FoldUnknowns unknowns = unknowns_of(alone);
  std::vector<double> slopes(unknowns.size(), 0.0);
  add_error_slopes(alone, unknowns, 0, weighted_mean(candidate.probe_celsius, weights), 0, slopes);
  const double error = reading_error_kelvin(candidate.reading.kind);
  double square = error * error;
  for (const double slope : slopes) square += slope * slope;
  return std::sqrt(square);
}

ReadingWorth worth_of_readings(const FoldTest& test, const std::vector<FoldForecast>& candidates,
                               const std::vector<double>& quantity, const std::vector<double>& weights) {
  ReadingWorth worth;
  const double mean = weighted_mean(quantity, weights);
  worth.spread_now = weighted_deviation(quantity, weights);
  for (const FoldForecast& candidate : candidates) {
    const double middle = weighted_mean(candidate.probe_celsius, weights);
    double covariance = 0, variance = 0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
      const double off = candidate.probe_celsius[i] - middle;
      covariance += weights[i] * off * (quantity[i] - mean);
      variance += weights[i] * off * off;
    }
    const double error = candidate_error_kelvin(test, candidate, weights);
    const double gained = covariance * covariance / (variance + error * error);
    worth.spread_then.push_back(std::sqrt(std::max(0.0, worth.spread_now * worth.spread_now - gained)));
    if (worth.spread_then.back() < worth.spread_then[worth.best]) worth.best = worth.spread_then.size() - 1;
  }
  return worth;
}

}  // namespace lastegg::steam
