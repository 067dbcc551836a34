// The pace of one edge as questions give and answer it: reading of the edge, the search for a window, the
// alternatives when there is none, and the words. Used by `pace` and `plan`.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/question.h"
#include "treatments/steam/pace.h"

namespace lastegg {

/// What stands behind a pace: a known head, fold tests, or only the prior.
struct PaceBasis {
  std::string word;  ///< fold_test | prior | head
  std::vector<steam::Calibration> calibrations;
  std::vector<std::string> coverings;  ///< tested covering of each
  std::string machine, head;
  std::vector<Warning> warnings;
};

/// The kit and place fields that `pace` and `plan` share, and their reading.
std::vector<Field> pace_kit_fields();
Result<PaceBasis> read_pace_basis(const Json& request);

/// Shape of an edge as furniture gives it in `treat`.
Shape edge_shape();

struct EdgeSettings {
  double start_celsius = 20;
  bool damp = false;
  double confidence = 0.95;
  double wetting_limit_grams_per_m2 = 50;
};
EdgeSettings read_edge_settings(const Json& request);

/// Fields of a pace answer.
std::vector<Field> pace_answer_fields();

/// The whole answer for one edge.
/// Errors:  not_found, bad_input with place below `where`; never for a missing window, which is an answer.
Result<Json> pace_of_edge(const PaceBasis& basis, const Json& edge, const EdgeSettings& settings,
                          const std::string& where);

}  // namespace lastegg
