// All that a fold test leaves open, as one list of standard normal scores: those of the head, those of each
// covering that was read, and what probe and march may be wrong by. Plain values; pure functions.
#pragma once

#include <string>
#include <vector>

#include "treatments/steam/fold_reading.h"

namespace lastegg::steam {

using JointScores = std::vector<double>;

/// Order of the scores: dew temperature, film; vapour efficiency, forced gas of each covering, the wanted one
/// first; error of the probe's time constant, if it has any; error of the march in each covering: level, per
/// pace, per depth.
struct FoldUnknowns {
  std::vector<std::string> cloth_keys;
  std::vector<std::size_t> cloth_of_reading;
  bool probe = false;
  std::vector<std::size_t> erring_cloths;  ///< coverings with readings to which an error of the march applies
  std::size_t physical() const { return 2 + 2 * cloth_keys.size(); }
  std::size_t first_error() const { return physical() + (probe ? 1 : 0); }
  std::size_t size() const { return first_error() + 3 * erring_cloths.size(); }
};
FoldUnknowns unknowns_of(const FoldTest& test);

/// The scores that hold for each reading.
std::vector<Scores> scores_of_readings(const FoldUnknowns& unknowns, const JointScores& scores);

/// Sample i of the standard normal scores that the physical ones are drawn from.
JointScores drawn_joint_scores(const FoldUnknowns& unknowns, const std::string& head_key, std::uint32_t i);

/// Kelvin by which each error, at one standard deviation, moves reading r when the march expects `celsius`
/// there: one entry per score, zero for the physical ones. probe_kelvin: what the probe's error does to it.
void add_error_slopes(const FoldTest& test, const FoldUnknowns& unknowns, std::size_t r, double celsius,
                      double probe_kelvin, std::vector<double>& slopes);

}  // namespace lastegg::steam
