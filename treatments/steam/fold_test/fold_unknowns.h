// All that a fold test leaves open, as one list of standard normal scores: those of head and covering as the
// wanted covering shows them, the head's own, those of each further covering that was read, and what probe
// and march may be wrong by. Plain values; pure functions.
#pragma once

#include <string>
#include <vector>

#include "treatments/steam/fold_test/fold_reading.h"
#include "treatments/steam/steamer/calibration.h"

namespace lastegg::steam {

using JointScores = std::vector<double>;

/// Order of the scores: dew temperature, film, vapour efficiency, forced gas as the wanted covering shows
/// them; what the head's own dew temperature and film differ by; of each further covering what it makes of
/// these two, vapour efficiency, forced gas; error of the probe's time constant, if it has any; error of the
/// march in each covering: level, per pace, per depth.
struct FoldUnknowns {
  std::vector<std::string> cloth_keys;
  std::vector<std::size_t> cloth_of_reading;
  std::vector<bool> is_of_head;  ///< per reading: no cloth's law comes in, it tells the head's own scores
  bool probe = false;
  std::vector<std::size_t> erring_cloths;  ///< coverings with readings to which an error of the march applies
  std::size_t physical() const { return k_fitted_count + k_unknown_count * (cloth_keys.size() - 1); }
  std::size_t first_error() const { return physical() + (probe ? 1 : 0); }
  std::size_t size() const { return first_error() + 3 * erring_cloths.size(); }
};
FoldUnknowns unknowns_of(const FoldTest& test);

/// The head's own score of dew temperature or film.
double own_head_score(const JointScores& scores, std::size_t k);

/// The scores that hold for each reading.
std::vector<Scores> scores_of_readings(const FoldUnknowns& unknowns, const JointScores& scores);

/// Sample i of the standard normal scores that the physical ones are drawn from.
JointScores drawn_joint_scores(const FoldUnknowns& unknowns, const std::string& head_key, std::uint32_t i);

/// Kelvin by which each error, at one standard deviation, moves reading r when the march expects `celsius`
/// there: one entry per score, zero for the physical ones. probe_kelvin: what the probe's error does to it.
void add_error_slopes(const FoldTest& test, const FoldUnknowns& unknowns, std::size_t r, double celsius,
                      double probe_kelvin, std::vector<double>& slopes);

}  // namespace lastegg::steam
