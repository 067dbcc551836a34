// What stands behind a pace, as questions are given it: a head whose effect is known, fold tests,
// calibrations, or only the prior. Plain values; pure functions.
#pragma once

#include <string>
#include <vector>

#include "engine/question.h"
#include "treatments/steam/steamer/calibration.h"

namespace lastegg {

struct PaceBasis {
  std::string word;  ///< fold_test | same_machine | prior | head
  std::vector<steam::Calibration> calibrations;
  std::vector<std::string> coverings;  ///< tested covering of each
  std::string machine, head;
  std::vector<Warning> warnings;

  /// Which calibration stands behind an edge in this covering: the test made in it if there is one.
  std::size_t calibration_for(const std::string& covering) const;
};

/// The words of `PaceBasis::word` as answers give them.
Shape basis_shape(std::string text);

/// The kit and place fields that the questions of pace share.
std::vector<Field> pace_kit_fields();

/// Errors:  bad_input when more than one basis is given, and those of its parts, with their place.
Result<PaceBasis> read_pace_basis(const Json& request);

}  // namespace lastegg
