#include "treatments/steam/fold_test/fold_unknowns.h"

#include <algorithm>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"
#include "treatments/steam/fold_test/fold_fit.h"

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
    unknowns.is_of_head.push_back(tells_head_alone(reading.kind));
    if (is_erring(reading)) erring[index] = true;
  }
  for (std::size_t c = 0; c < erring.size(); ++c) {
    if (erring[c]) unknowns.erring_cloths.push_back(c);
  }
  unknowns.probe = test.probe_time_constant_seconds > 0 && test.probe_log_spread > 0;
  return unknowns;
}

double own_head_score(const JointScores& scores, std::size_t k) {
  return blended_score(k, scores[k], scores[k_unknown_count + k]);
}

std::vector<Scores> scores_of_readings(const FoldUnknowns& unknowns, const JointScores& scores) {
  const double dew = own_head_score(scores, 0), film = own_head_score(scores, 1);
  std::vector<Scores> out;
  out.reserve(unknowns.cloth_of_reading.size());
  for (std::size_t r = 0; r < unknowns.cloth_of_reading.size(); ++r) {
    const std::size_t cloth = unknowns.cloth_of_reading[r];
    Scores one{scores[0], scores[1], scores[2], scores[3]};
    if (cloth > 0) {
      const double* own = &scores[k_fitted_count + k_unknown_count * (cloth - 1)];
      one = {blended_score(0, dew, own[0]), blended_score(1, film, own[1]), own[2], own[3]};
    }
    if (unknowns.is_of_head[r]) {
      one[0] = dew;
      one[1] = film;
    }
    out.push_back(one);
  }
  return out;
}

JointScores drawn_joint_scores(const FoldUnknowns& unknowns, const std::string& head_key, std::uint32_t i) {
  const std::string& wanted = unknowns.cloth_keys.front();
  JointScores scores{SobolStream(head_key, 0).normal(i),
                     SobolStream(head_key, 1).normal(i),
                     SobolStream(wanted, 0).normal(i),
                     SobolStream(wanted, 1).normal(i),
                     SobolStream(head_key, k_head_rest_stream).normal(i),
                     SobolStream(head_key, k_head_rest_stream + 1).normal(i)};
  for (std::size_t c = 1; c < unknowns.cloth_keys.size(); ++c) {
    const std::string& cloth = unknowns.cloth_keys[c];
    for (const unsigned stream : {k_cloth_shift_stream, k_cloth_shift_stream + 1, 0U, 1U})
      scores.push_back(SobolStream(cloth, stream).normal(i));
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
