#include "treatments/steam/fold_forecast.h"

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/lane_pass.h"

namespace lastegg::steam {
namespace {
constexpr double k_observe_seconds = 60;
constexpr double k_stop_celsius = 38;
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

  std::vector<LanePass> passes(count);
  for (std::size_t i = 0; i < count; ++i) {
    const DrawnHead drawn = drawn_head(calibration, calibration.cloth_key, static_cast<int>(i));
    passes[i] = {drawn.head, drawn.vapour_efficiency, 0, &stack, 0};
  }
  LaneBatch batch;
  batch.pressure_pascal = calibration.pressure_pascal;
  batch.start_celsius = test.start_celsius;
  batch.air.celsius = test.start_celsius;
  batch.observe_seconds = k_observe_seconds;
  batch.probe_time_constant_seconds = test.probe_time_constant_seconds;
  batch.stop_below_celsius = k_stop_celsius;

  std::vector<FoldPoint> points;
  for (const double pace : paces) {
    std::vector<std::vector<double>> peaks(depths_metres.size(), std::vector<double>(count));
    std::vector<FoldPoint> at_pace(depths_metres.size());
    std::vector<double> mean(depths_metres.size()), square(depths_metres.size());
    for (std::size_t d = 0; d < depths_metres.size(); ++d) {
      for (LanePass& pass : passes) {
        pass.pace_metres_per_second = pace;
        pass.target_depth_metres = depths_metres[d];
      }
      const auto answers =
          run_passes(batch, passes, accuracy_for(static_cast<int>(calibration.weights.size())));
      if (!answers) return refuse(answers.error());
      for (std::size_t i = 0; i < count; ++i) {
        const LaneAnswer& answer = (*answers)[i];
        peaks[d][i] = answer.target_peak_celsius;
        mean[d] += weights[i] * answer.probe_peak_celsius;
        square[d] += weights[i] * answer.probe_peak_celsius * answer.probe_peak_celsius;
        if (answer.kill.worst() >= numerics::log10(bugs::required_ratio()))
          at_pace[d].lethal_share += weights[i];
        if (answer.target_peak_celsius >= k_practice_low_celsius) at_pace[d].practice_share += weights[i];
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
