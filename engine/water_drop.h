// The water-drop check of a covering, and what it says of vapour: whether a drop beads on the face or soaks
// in, and what is seen of the back. It only ever makes a stack tighter. Pure functions.
#pragma once

#include <optional>
#include <vector>

#include "engine/question.h"
#include "treatments/steam/pace/pace.h"

namespace lastegg {

enum class DropFace { not_tried, soaks, beads };
enum class ClothBack { not_seen, open, coated };

struct WaterDrop {
  DropFace face = DropFace::not_tried;
  ClothBack back = ClothBack::not_seen;
  std::optional<double> seconds;  ///< until it had soaked in

  /// Whether vapour is to be counted as shut out, by the face or by the back.
  bool shuts_vapour_out() const { return face == DropFace::beads || back == ClothBack::coated; }
};

/// A drop that still stands after this time beads.
/// Source:  [aatcc_79] times the soaking of a drop; 60 s as its end from memory, to be checked
constexpr double k_beads_after_seconds = 60;

/// Thickness of a coating on the back of a cloth.
/// Source:  estimate: latex and acrylic backings are a tenth of a millimetre and more; its heat hardly
///          matters, its tightness does.
constexpr double k_back_coating_metres = 0.0001;

Shape water_drop_shape();
/// A drop that took longer than k_beads_after_seconds beads, whatever it was called.
WaterDrop read_water_drop(const Json& edge);

/// The stack as vapour meets it for kill: a beading face is taken as tight (a repellent finish may let
/// vapour through, but nothing proves it), a coated back as a tight film below the covering. Otherwise
/// unchanged.
/// Checked: engine/around_pass_unit_test.cpp
std::vector<steam::UncertainLayer> stack_behind(const WaterDrop& drop,
                                                std::vector<steam::UncertainLayer> stack,
                                                double& target_depth_metres);

/// {"face", "back", "text"} of an answer: what the check says and what else to look at.
Shape water_drop_answer_shape();
Json to_json(const WaterDrop& drop);

}  // namespace lastegg
