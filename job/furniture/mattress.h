// A mattress of a named or measured size: panels, border, tape edges, quilting, handles, vents, label. Pure
// functions.
#pragma once

#include <optional>
#include <string>

#include "job/furniture/item.h"
#include "physics/quantities/error.h"

namespace lastegg::furniture {

/// What is known of a mattress. Width and length, where given, win over the named size. Lengths in metres.
struct MattressRequest {
  std::string size = "queen";  ///< a name of data/dimensions.json
  std::optional<double> width_metres;
  std::optional<double> length_metres;
  std::optional<double> thickness_metres;
  std::optional<double> base_height_metres;  ///< floor to underside of the mattress
  Covering covering = Covering::mattress_tick;
};

/// A mattress with its foot at y = 0 and its left side, seen from the foot, at x = 0.
/// Model:   one body with upright border and rounded corners; the tape edges run around both panels
/// Inputs:  a size of the table, or width and length within the limits of data/dimensions.json
/// Errors:  not_found for a size that the table lacks; bad_input with value, limit, unit and key
/// Source:  data/dimensions.json; construction: common practice, see README.md
/// Checked: furniture_law_test.cpp: law; mattress_unit_test.cpp: unit
Result<Item> build_mattress(const MattressRequest& request);

}  // namespace lastegg::furniture
