// An edge as questions are given it, read into the problem that the steam engine solves: layers, depth, harm,
// the calibration that stands behind it. Pure functions.
#pragma once

#include <optional>
#include <string>

#include "engine/finish.h"
#include "engine/pace_basis.h"
#include "engine/question.h"
#include "engine/water_drop.h"
#include "treatments/steam/pace/pace.h"

namespace lastegg {

/// Shape of an edge as furniture gives it in `treat`.
Shape edge_shape();

struct EdgeSettings {
  double start_celsius = 20;
  bool damp = false;
  double confidence = 0.95;
  double wetting_limit_grams_per_m2 = 50;
  double gap_seconds = steam::k_gap_seconds;  ///< between repeat passes
};
EdgeSettings read_edge_settings(const Json& request);

/// An edge ready to be asked for a pace, or the reason why there can be none.
struct EdgeProblem {
  std::string kind, covering_key, covering;
  Finish finish;
  WaterDrop drop;
  steam::PaceProblem pace;
  double middle_depth_metres = 0;
  double wetting_limit_grams_per_m2 = 50;
  bool wetting_tested = false;
  bool tested_here = false;  ///< readings were made in this covering
  Json family;               ///< the shape of the edge; null where the layers were given
  bool bound = false;        ///< the eggs are at least as warm as computed
  double depth_factor = 1;   ///< the engine marches a depth as so many times itself
  Json closed;               ///< {"code", "text"}: no pace at all; else null

  /// Depth of the eggs, as an answer tells it.
  double depth_metres() const { return pace.target_depth_metres / depth_factor; }
  Json depths() const;  ///< {"p50", "p90"}; null where the shape has none
};

/// Errors:  not_found, bad_input with place below `where`; a shape without a model and a barred finish
///          are no errors.
Result<EdgeProblem> read_edge(const PaceBasis& basis, const Json& edge, const EdgeSettings& settings,
                              const std::string& where);

}  // namespace lastegg
