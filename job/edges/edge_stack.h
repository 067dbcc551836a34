// From the name of an edge to what steam meets there: layers with their spread, the depth where eggs may sit,
// and whether the figure is a bound. Reads the data files of edge kinds, coverings and materials. Pure
// functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "job/edges/edge_kind.h"
#include "physics/quantities/error.h"
#include "treatments/steam/pace/pace.h"

namespace lastegg {

/// What fills the item behind the covering; none: a hollow.
enum class Fill { batting_foam, foam, wood, none };

struct EdgeStack {
  std::vector<steam::UncertainLayer> layers;
  double middle_depth_metres = 0;  ///< median of where eggs may sit
  double target_depth_metres = 0;  ///< 90th percentile: the target of a verdict
  steam::Claim claim = steam::Claim::as_computed;
  double depth_factor = 1;          ///< the engine marches a depth as so many times itself ...
  double least_marched_metres = 0;  ///< ... and as no less than this
};

/// The layers of an edge of a kind in a covering over a fill.
/// Model:   the family of the kind with its parameters (treatments/steam/shapes); cloth never thinner than
///          one covering cloth; the depth of eggs is uniform over the kind's range.
/// Errors:  not_found for an unknown kind or covering; out_of_domain (`shape_not_modelled` in value) where
///          the kind has no model.
/// Source:  job/edges/data/edge_kinds.json, physics/materials data
/// Checked: job/edges/edge_stack_unit_test.cpp
Result<EdgeStack> edge_stack(std::string_view kind, std::string_view covering, Fill fill);

}  // namespace lastegg
