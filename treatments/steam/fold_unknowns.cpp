#include "treatments/steam/fold_unknowns.h"

#include <algorithm>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"
#include "treatments/steam/fold_fit.h"

namespace lastegg::steam {
namespace {

constexpr double k_middle_pace = 0.015, k_middle_depth_metres = 0.0015;

bool is_erring(const FoldReading& reading) {
  return reading.kind == ReadingKind::pass || reading.kind == ReadingKind::under_real_edge;
}

const std::string& cloth_key_of(const FoldTest& test, const FoldReading& reading) {
  return reading.cloth_key.empty() ? test.cloth_key : reading.cloth_key;
}

// 0 at the start temperature and at the boiling point, 1 half-way.
double room_for_error(const FoldTest& test, double celsius) {
  const double boiling = boiling_celsius(test.pressure_pascal);
  const double share = std::clamp((celsius - test.start_celsius) / (boiling - test.start_celsius), 0.0, 1.0);
  return 4 * share * (1 - share);
}

}  // namespace

FoldUnknowns unknowns_of(const FoldTest& test) {
  FoldUnknowns unknowns;
  unknowns.cloth_keys.push_back(test.cloth_key);
  std::vector<bool> erring(1, false);
  for (const FoldReading& reading : test.readings) {
    // A coupon meets no covering: it borrows the scores of the first, which do nothing to it.
    const std::string& key =
        reading.kind == ReadingKind::coupon ? test.cloth_key : cloth_key_of(test, reading);
    const auto found = std::find(unknowns.cloth_keys.begin(), unknowns.cloth_keys.end(), key);
    const auto index = static_cast<std::size_t>(found - unknowns.cloth_keys.begin());
    if (found == unknowns.cloth_keys.end()) {
      unknowns.cloth_keys.push_back(key);
      erring.push_back(false);
    }
    unknowns.cloth_of_reading.push_back(index);
    if (is_erring(reading)) erring[index] = true;
  }
  for (std::size_t c = 0; c < erring.size(); ++c) {
    if (erring[c]) unknowns.erring_cloths.push_back(c);
  }
  unknowns.probe = test.probe_time_constant_seconds > 0 && test.probe_log_spread > 0;
  return unknowns;
}

std::vector<Scores> scores_of_readings(const FoldUnknowns& unknowns, const JointScores& scores) {
  std::vector<Scores> out;
  out.reserve(unknowns.cloth_of_reading.size());
  for (const std::size_t cloth : unknowns.cloth_of_reading)
    out.push_back({scores[0], scores[1], scores[2 + 2 * cloth], scores[3 + 2 * cloth]});
  return out;
}

JointScores drawn_joint_scores(const FoldUnknowns& unknowns, const std::string& head_key, std::uint32_t i) {
  JointScores scores{SobolStream(head_key, 0).normal(i), SobolStream(head_key, 1).normal(i)};
  for (const std::string& cloth : unknowns.cloth_keys) {
    scores.push_back(SobolStream(cloth, 0).normal(i));
    scores.push_back(SobolStream(cloth, 1).normal(i));
  }
  return scores;
}

void add_error_slopes(const FoldTest& test, const FoldUnknowns& unknowns, std::size_t r, double celsius,
                      double probe_kelvin, std::vector<double>& slopes) {
  const FoldReading& reading = test.readings[r];
  if (unknowns.probe) slopes[unknowns.physical()] = probe_kelvin;
  if (!is_erring(reading)) return;
  const auto found =
      std::find(unknowns.erring_cloths.begin(), unknowns.erring_cloths.end(), unknowns.cloth_of_reading[r]);
  const std::size_t first =
      unknowns.first_error() + 3 * static_cast<std::size_t>(found - unknowns.erring_cloths.begin());
  const double room = room_for_error(test, celsius);
  slopes[first] = k_law_error.level_kelvin * room;
  slopes[first + 1] =
      k_law_error.per_pace_kelvin * room * numerics::log(reading.pace_metres_per_second / k_middle_pace);
  slopes[first + 2] = k_law_error.per_depth_kelvin * room *
                      numerics::log(std::max(reading.depth_metres, 1e-4) / k_middle_depth_metres);
}

}  // namespace lastegg::steam
