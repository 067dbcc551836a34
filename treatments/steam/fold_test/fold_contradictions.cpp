#include "treatments/steam/fold_test/fold_contradictions.h"

#include <algorithm>
#include <cmath>

namespace lastegg::steam {
namespace {

constexpr double k_same_pace_ratio = 1.1;
constexpr double k_same_depth_metres = 1e-4;

bool share_a_cloth(const FoldReading& a, const FoldReading& b) {
  const auto lies_in_cloth = [](const FoldReading& one) {
    return one.kind != ReadingKind::coupon && one.kind != ReadingKind::surface;
  };
  return lies_in_cloth(a) && lies_in_cloth(b) && a.cloth_key == b.cloth_key;
}

// What `a` must be, against `b`, for every steamer; none: either may be hotter.
std::optional<Contradiction::Kind> must_be_hotter(const FoldReading& a, const FoldReading& b) {
  const bool both_coupons = a.kind == ReadingKind::coupon && b.kind == ReadingKind::coupon;
  if (!both_coupons && !share_a_cloth(a, b)) return std::nullopt;
  if (a.depth_metres > b.depth_metres + k_same_depth_metres) return std::nullopt;
  const bool a_rests = a.kind == ReadingKind::stationary, b_rests = b.kind == ReadingKind::stationary;
  if (b_rests) return std::nullopt;
  if (a_rests) return Contradiction::Kind::rest_is_colder;
  const double ratio = b.pace_metres_per_second / a.pace_metres_per_second;
  const bool same_depth = b.depth_metres < a.depth_metres + k_same_depth_metres;
  const bool same_pace = ratio < k_same_pace_ratio && ratio > 1 / k_same_pace_ratio;
  if (same_pace)
    return same_depth ? Contradiction::Kind::repeats_differ : Contradiction::Kind::deeper_is_hotter;
  if (ratio > 1) return Contradiction::Kind::slower_is_colder;
  return std::nullopt;
}

}  // namespace

std::vector<Contradiction> contradictions(const FoldTest& test) {
  std::vector<Contradiction> pairs;
  const std::size_t count = test.readings.size();
  for (std::size_t i = 0; i < count; ++i) {
    for (std::size_t j = 0; j < count; ++j) {
      const FoldReading &a = test.readings[i], &b = test.readings[j];
      if (i == j) continue;
      const auto kind = must_be_hotter(a, b);
      if (!kind) continue;
      const double kelvin = b.peak_celsius - a.peak_celsius;
      const double error_a = reading_error_kelvin(a.kind), error_b = reading_error_kelvin(b.kind);
      if (kelvin > k_contradiction_errors * std::sqrt(error_a * error_a + error_b * error_b))
        pairs.push_back({*kind, i, j, kelvin, std::nullopt});
    }
  }
  std::vector<Contradiction> out;
  const double boiling = boiling_celsius(test.pressure_pascal);
  for (std::size_t i = 0; i < count; ++i) {
    const double over = test.readings[i].peak_celsius - boiling;
    if (over > k_above_boiling_kelvin)
      out.push_back({Contradiction::Kind::above_boiling, i, std::nullopt, over, i});
  }
  // The reading that disagrees with most others is told with the pair that disagrees most, and its other
  // pairs with it.
  while (!pairs.empty()) {
    std::vector<int> times(count, 0);
    for (const Contradiction& pair : pairs) {
      ++times[pair.first];
      ++times[*pair.second];
    }
    const auto most = static_cast<std::size_t>(std::max_element(times.begin(), times.end()) - times.begin());
    const auto with_most = [&](const Contradiction& pair) {
      return pair.first == most || *pair.second == most;
    };
    Contradiction worst{};
    for (const Contradiction& pair : pairs) {
      if (with_most(pair) && pair.kelvin > worst.kelvin) worst = pair;
    }
    if (times[most] > 1) worst.suspect = most;
    out.push_back(worst);
    std::erase_if(pairs, with_most);
  }
  return out;
}

}  // namespace lastegg::steam
