#include "treatments/steam/fold_test/fold_reading.h"

#include <algorithm>
#include "treatments/steam/fold_test/surface_response.h"

namespace lastegg::steam {
namespace {

constexpr double k_fold_observe_seconds = 40;
constexpr double k_fold_stop_celsius = 35;  // no cell can raise the probe's peak any more
constexpr double k_coupon_capacity = 9e6, k_coupon_conductivity = 5;

}  // namespace

double reading_error_kelvin(ReadingKind kind) {
  switch (kind) {
    case ReadingKind::stationary:
      return 1.5;
    case ReadingKind::coupon:
      return 3;
    case ReadingKind::under_real_edge:
      return 4;
    case ReadingKind::surface:
      return k_surface_law_kelvin;
    case ReadingKind::pass:
      break;
  }
  return k_reading_error_kelvin;
}

Layer metal_coupon(double heat_capacity_joules_per_m2_kelvin) {
  Layer layer;
  layer.thickness_metres = heat_capacity_joules_per_m2_kelvin / k_coupon_capacity;
  layer.heat_capacity_joules_per_m3_kelvin = k_coupon_capacity;
  layer.conductivity_watts_per_metre_kelvin = k_coupon_conductivity;
  layer.permeable = false;
  return layer;
}

Stack stack_of_reading(const FoldTest& test, const FoldReading& reading) {
  Stack stack = reading.stack;
  if (test.towel == Towel::laid) stack.insert(stack.begin(), laid_towel());
  return stack;
}

LanePass pass_of_reading(const FoldTest& test, const FoldReading& reading, const Scores& scores,
                         const Stack& stack) {
  const HeadOnCloth drawn = head_on_cloth(scores, test.pressure_pascal, test.towel);
  const Head head{.length_metres = test.head_length_metres,
                  .dew_celsius = drawn.dew_celsius,
                  .film_watts_per_m2_kelvin = drawn.film_watts_per_m2_kelvin,
                  .flux_cap_watts_per_m2 = flux_cap_watts_per_m2(test.towel),
                  .forced_gas_metres_per_second = drawn.forced_gas_metres_per_second};
  const double above = test.towel == Towel::laid ? laid_towel().thickness_metres : 0;
  return {head, drawn.vapour_efficiency, reading.pace_metres_per_second, &stack,
          above + reading.depth_metres};
}

LaneBatch batch_of(const FoldTest& test) {
  LaneBatch batch;
  batch.pressure_pascal = test.pressure_pascal;
  batch.start_celsius = test.start_celsius;
  batch.air.celsius = test.start_celsius;
  batch.observe_seconds = k_fold_observe_seconds + 2 * test.probe_time_constant_seconds;
  batch.probe_time_constant_seconds = test.probe_time_constant_seconds;
  batch.stop_below_celsius = k_fold_stop_celsius;
  return batch;
}

Result<std::vector<std::vector<double>>> expected_of_many(const FoldTest& test,
                                                          std::span<const std::vector<Scores>> scores,
                                                          LaneAccuracy accuracy) {
  const std::size_t readings = test.readings.size();
  std::vector<Stack> stacks;
  for (const FoldReading& reading : test.readings) stacks.push_back(stack_of_reading(test, reading));
  std::vector<std::vector<double>> shown(scores.size(), std::vector<double>(readings));
  std::vector<LanePass> passes;
  passes.reserve(scores.size() * readings);
  std::vector<double*> places;
  for (std::size_t i = 0; i < scores.size(); ++i) {
    for (std::size_t r = 0; r < readings; ++r) {
      if (test.readings[r].kind == ReadingKind::stationary) {
        shown[i][r] = head_on_cloth(scores[i][r], test.pressure_pascal, test.towel).dew_celsius;
        continue;
      }
      if (test.readings[r].kind == ReadingKind::surface) {
        const auto after = surface_after(test, test.readings[r], scores[i][r]);
        if (!after) return refuse(after.error());
        shown[i][r] = after->celsius;
        continue;
      }
      passes.push_back(pass_of_reading(test, test.readings[r], scores[i][r], stacks[r]));
      places.push_back(&shown[i][r]);
    }
  }
  const auto answers = run_passes(batch_of(test), passes, accuracy);
  if (!answers) {
    Error error = answers.error();
    error.where = "/readings";
    return refuse(error);
  }
  for (std::size_t k = 0; k < places.size(); ++k) *places[k] = (*answers)[k].probe_peak_celsius;
  return shown;
}

Result<std::vector<double>> expected_peaks(const FoldTest& test, const Scores& scores) {
  const std::vector<Scores> same(test.readings.size(), scores);
  auto peaks = expected_of_many(test, {&same, 1});
  if (!peaks) return refuse(peaks.error());
  return std::move(peaks->front());
}

}  // namespace lastegg::steam
