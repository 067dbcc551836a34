// The numbers of data/looks.json. Read once, never changed.
#pragma once

#include <array>

#include "job/survey/survey.h"

namespace lastegg::survey {

struct Looks {
  std::array<double, 5> finds = {};  ///< chance that a look finds the bugs of a place, by How
  double prior_weight_bugs = 0, bed_weight_bugs = 0, edge_share = 0, fall_metres = 0, other_room_metres = 0;
  int up_to_12 = 0, up_to_30 = 0;
};

const Looks& looks();

}  // namespace lastegg::survey
