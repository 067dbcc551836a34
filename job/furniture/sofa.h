// A sofa of one to four seats with loose seat and back cushions: from a few measures to an Item with every
// edge on it. Pure functions, no shared state.
#pragma once

#include <optional>

#include "job/furniture/item.h"
#include "physics/quantities/error.h"

namespace lastegg::furniture {

constexpr int k_fewest_seats = 1;
constexpr int k_most_seats = 4;

/// What is known of a sofa; a measure that is absent takes its usual value. Lengths in metres.
struct SofaRequest {
  int seats = 3;
  std::optional<double> width_metres;
  std::optional<double> depth_metres;
  std::optional<double> height_metres;
  std::optional<double> seat_height_metres;  ///< floor to top of the seat cushion
  std::optional<double> arm_height_metres;   ///< floor to top of the arm
  std::optional<double> arm_width_metres;
  std::optional<double> leg_height_metres;
  std::optional<double> seat_cushion_thickness_metres;
  std::optional<double> back_cushion_thickness_metres;
  bool skirted = false;
  bool tufted = false;  ///< rows of buttons on the back cushions
  Covering covering = Covering::unknown;
  Finish leg_finish = Finish::unknown;
};

/// A sofa standing on the floor with its front at y = 0 and its left side at x = 0.
/// Model:   convex bodies that touch and never overlap: base, two arms, back frame, cushions, dust cover,
/// legs, skirt.
///          Cushions are boxed, with welts on both panels, and meet their neighbours at half their thickness.
/// Inputs:  seats 1 to 4; measures within the limits of data/dimensions.json and of each other
/// Errors:  bad_input with value, limit, unit and the request's key
/// Source:  data/dimensions.json; construction: common practice of upholstery, see README.md
/// Checked: furniture_law_test.cpp: law; sofa_unit_test.cpp: unit
Result<Item> build_sofa(const SofaRequest& request);

}  // namespace lastegg::furniture
