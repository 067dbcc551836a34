#include "treatments/steam/fold_forecast.h"

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/exposure.h"
#include "treatments/steam/kill.h"

namespace lastegg::steam {
namespace {
constexpr double k_observe_seconds = 60;
constexpr double k_stop_celsius = 38;
constexpr double k_series_step_kelvin = 1.5;
}  // namespace

Result<std::vector<FoldPoint>> fold_forecast(const Calibration& calibration, const FoldTest& test,
                                             const Stack& stack, const std::vector<double>& depths_metres,
                                             const std::vector<double>& paces, int samples) {
  const auto count = std::min(calibration.weights.size(), static_cast<std::size_t>(samples));
  std::vector<double> weights(calibration.weights.begin(),
                              calibration.weights.begin() + static_cast<std::ptrdiff_t>(count));
  double sum = 0;
  for (const double weight : weights) sum += weight;
  for (double& weight : weights) weight /= sum;

  std::vector<FoldPoint> points;
  Series series;
  for (const double pace : paces) {
    std::vector<std::vector<double>> peaks(depths_metres.size(), std::vector<double>(count));
    std::vector<FoldPoint> at_pace(depths_metres.size());
    std::vector<double> mean(depths_metres.size()), square(depths_metres.size());
    for (std::size_t i = 0; i < count; ++i) {
      const DrawnHead drawn = drawn_head(calibration, calibration.cloth_key, static_cast<int>(i));
      PassProblem problem;
      problem.head = drawn.head;
      problem.pace_metres_per_second = pace;
      problem.stack = stack;
      problem.vapour_efficiency = drawn.vapour_efficiency;
      problem.pressure_pascal = calibration.pressure_pascal;
      problem.start_celsius = test.start_celsius;
      problem.air.celsius = test.start_celsius;
      problem.observe_seconds = k_observe_seconds;
      problem.depths_metres = depths_metres;
      const auto history = run_pass(problem, {.stop_below_celsius = k_stop_celsius});
      if (!history) return refuse(history.error());
      for (std::size_t d = 0; d < depths_metres.size(); ++d) {
        fine_series(*history, history->celsius[d], k_series_step_kelvin, series);
        const double peak = peak_of(series).celsius;
        const double probe = lagged_peak(series, test.probe_time_constant_seconds).celsius;
        peaks[d][i] = peak;
        mean[d] += weights[i] * probe;
        square[d] += weights[i] * probe * probe;
        if (kill_of(series).worst() >= numerics::log10(bugs::required_ratio()))
          at_pace[d].lethal_share += weights[i];
        if (peak >= k_practice_low_celsius) at_pace[d].practice_share += weights[i];
      }
    }
    for (std::size_t d = 0; d < depths_metres.size(); ++d) {
      FoldPoint& point = at_pace[d];
      point.pace_metres_per_second = pace;
      point.depth_metres = depths_metres[d];
      const auto quantile = [&](double p) { return weighted_quantile(peaks[d], weights, p); };
      point.fold_celsius = {quantile(0.05), quantile(0.25), quantile(0.5), quantile(0.75), quantile(0.95)};
      point.probe_spread_kelvin = std::sqrt(std::max(0.0, square[d] - mean[d] * mean[d]));
      points.push_back(point);
    }
  }
  return points;
}

}  // namespace lastegg::steam
