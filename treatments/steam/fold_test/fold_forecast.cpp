#include "treatments/steam/fold_test/fold_forecast.h"

#include <algorithm>

#include "bugs/mortality/mortality.h"
#include "physics/numerics/elementary.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/lanes/lane_pass.h"

namespace lastegg::steam {
namespace {
constexpr double k_observe_seconds = 60;
constexpr double k_stop_celsius = 38;
}  // namespace

std::vector<double> leading_weights(const std::vector<double>& weights, int samples) {
  const auto count = std::min(weights.size(), static_cast<std::size_t>(samples));
  std::vector<double> leading(weights.begin(), weights.begin() + static_cast<std::ptrdiff_t>(count));
  double sum = 0;
  for (const double weight : leading) sum += weight;
  for (double& weight : leading) weight /= sum;
  return leading;
}

Result<std::vector<FoldForecast>> forecast_readings(const Calibration& calibration, const FoldTest& test,
                                                    const std::vector<FoldReading>& readings, int samples) {
  const auto count = std::min(calibration.weights.size(), static_cast<std::size_t>(samples));
  std::vector<Stack> stacks;
  for (const FoldReading& reading : readings) stacks.push_back(stack_of_reading(test, reading));
  std::vector<LanePass> passes;
  passes.reserve(count * readings.size());
  std::vector<FoldForecast> out(readings.size());
  for (std::size_t r = 0; r < readings.size(); ++r) {
    out[r].reading = readings[r];
    const std::string& cloth = readings[r].cloth_key.empty() ? calibration.cloth_key : readings[r].cloth_key;
    for (std::size_t i = 0; i < count; ++i) {
      Scores scores = calibrated_scores(calibration, cloth, static_cast<int>(i));
      if (tells_head_alone(readings[r].kind)) {
        const Scores own = own_scores(calibration, static_cast<int>(i));
        std::copy_n(own.begin(), k_head_unknown_count, scores.begin());
      }
      if (readings[r].kind != ReadingKind::stationary) {
        passes.push_back(pass_of_reading(test, readings[r], scores, stacks[r]));
        continue;
      }
      const double dew = head_on_cloth(scores, test.pressure_pascal, test.towel).dew_celsius;
      out[r].fold_celsius.push_back(dew);
      out[r].probe_celsius.push_back(dew);
    }
  }
  LaneBatch batch = batch_of(test);
  batch.observe_seconds = k_observe_seconds;
  batch.stop_below_celsius = k_stop_celsius;
  const auto answers = run_passes(batch, passes, accuracy_for(static_cast<int>(calibration.weights.size())));
  if (!answers) return refuse(answers.error());
  const double required = numerics::log10(bugs::required_ratio());
  std::size_t next = 0;
  for (FoldForecast& forecast : out) {
    if (forecast.reading.kind == ReadingKind::stationary) continue;
    for (std::size_t i = 0; i < count; ++i, ++next) {
      const LaneAnswer& answer = (*answers)[next];
      forecast.fold_celsius.push_back(answer.target_peak_celsius);
      forecast.probe_celsius.push_back(answer.probe_peak_celsius);
      forecast.lethal_margin.push_back(answer.kill.worst() - required);
    }
  }
  return out;
}

FoldPoint summary_of(const FoldForecast& forecast, const std::vector<double>& weights) {
  FoldPoint point{};
  for (std::size_t i = 0; i < weights.size(); ++i) {
    if (forecast.lethal_margin[i] >= 0) point.lethal_share += weights[i];
    if (forecast.fold_celsius[i] >= k_practice_low_celsius) point.practice_share += weights[i];
  }
  const auto quantile = [&](double p) { return weighted_quantile(forecast.fold_celsius, weights, p); };
  point.fold_celsius = {quantile(0.05), quantile(0.25), quantile(0.5), quantile(0.75), quantile(0.95)};
  point.probe_spread_kelvin = weighted_deviation(forecast.probe_celsius, weights);
  return point;
}

}  // namespace lastegg::steam
