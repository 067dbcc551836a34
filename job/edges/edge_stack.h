// From the name of an edge to what steam meets there: layers with their spread, and the depth where eggs may
// sit. Reads the data files of edge kinds, coverings and materials. Pure functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/pace.h"

namespace lastegg {

struct EdgeKind {
  std::string key, title, text;
  bool modelled = false;  ///< false: no honest model of its shape yet
  double cloth_metres = 0;
  double least_depth_metres = 0, most_depth_metres = 0;
};

/// All kinds, in the order of the data file.
const std::vector<EdgeKind>& edge_kinds();

/// What fills the item behind the covering.
enum class Fill { batting_foam, foam, wood, none };

struct EdgeStack {
  std::vector<steam::UncertainLayer> layers;
  double middle_depth_metres = 0;  ///< median of where eggs may sit
  double target_depth_metres = 0;  ///< 90th percentile: the target of a verdict
};

/// The layers of an edge of a kind in a covering over a fill.
/// Model:   cloth of the kind's total thickness (never thinner than one covering cloth), then the fill; the
/// depth of eggs is
///          uniform over the kind's range.
/// Errors:  not_found for an unknown kind or covering; out_of_domain (`shape_not_modelled` in value) where
/// the kind has none. Source:  job/edges/data/edge_kinds.json, physics/materials data Checked:
/// job/edges/edge_stack_unit_test.cpp
Result<EdgeStack> edge_stack(std::string_view kind, std::string_view covering, Fill fill);

}  // namespace lastegg
