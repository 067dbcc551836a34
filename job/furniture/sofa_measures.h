// The measures of one sofa, checked against their limits and against each other. Used by sofa.cpp and its
// neighbours.
#pragma once

#include <vector>

#include "job/furniture/item.h"
#include "job/furniture/sofa.h"
#include "physics/quantities/error.h"

namespace lastegg::furniture {

/// All in metres; coordinates where so named.
struct SofaMeasures {
  int seats = 3;
  double width = 0.0, depth = 0.0, height = 0.0;
  double arm_width = 0.0, arm_height = 0.0, arm_rounding = 0.0;
  double leg_height = 0.0;
  double seat_height = 0.0, seat_thickness = 0.0, seat_crown = 0.0;
  double back_thickness = 0.0, back_crown = 0.0;
  double back_lean = 0.0;  ///< tangent of the lean from upright
  double frame_thickness = 0.0, frame_height = 0.0, frame_rounding = 0.0;
  double base_recess = 0.0, bulge = 0.0, cushion_rim = 0.0;
  double leg_side = 0.0, leg_foot_side = 0.0, leg_inset = 0.0;
  bool middle_legs = false;
  double dust_cover_inset = 0.0, staple_inset = 0.0, cloth = 0.0;
  double skirt_overlap = 0.0, skirt_clearance = 0.0;
  // derived
  double deck_height = 0.0;     ///< z of the deck under the seat cushions
  double inside_back = 0.0;     ///< y of the inside back up to the seat's top; above it leans back
  double cushion_width = 0.0;   ///< of one seat
  double arm_straight = 0.0;    ///< z up to which the inside of an arm is upright
  double frame_straight = 0.0;  ///< z up to which the inside back is flat

  double inside_left() const { return arm_width; }
  double inside_right() const { return width - arm_width; }
  /// y of the inside back at a height above the seat's top.
  double inside_back_at(double z) const { return inside_back + (z - seat_height) * back_lean; }
};

struct MeasuredSofa {
  SofaMeasures measures;
  std::vector<UsedDimension> used;
};

/// The request's measures with every missing one filled in.
/// Errors:  bad_input with value, limit, unit and key when a measure is outside its limits or does not go
/// with another Checked: sofa_unit_test.cpp: unit
Result<MeasuredSofa> measure_sofa(const SofaRequest& request);

}  // namespace lastegg::furniture
