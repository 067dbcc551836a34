#include "engine/water_drop.h"

#include <utility>

#include "engine/request_values.h"
#include "physics/materials/materials.h"
#include "treatments/steam/pace/material_layer.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

Shape face_shape() {
  return choice({{"not_tried", "no drop was put on it"},
                 {"soaks", "the drop soaks in"},
                 {"beads", "the drop stands, or takes longer than a minute"}},
                "a drop of water on the face of the covering");
}

Shape back_shape() {
  return choice({{"not_seen", "the back was not looked at"},
                 {"open", "the back is plain cloth: no film, latex, foam or glue on it"},
                 {"coated", "the back has a film, latex, foam or glue on it"}},
                "the back of the covering, seen at a hem, a zip or under the dust cover");
}

const char* word(DropFace face) {
  return face == DropFace::soaks ? "soaks" : face == DropFace::beads ? "beads" : "not_tried";
}
const char* word(ClothBack back) {
  return back == ClothBack::open ? "open" : back == ClothBack::coated ? "coated" : "not_seen";
}

std::string words_of(const WaterDrop& drop) {
  if (drop.face == DropFace::beads)
    return say(
        "water beads: the face is counted as tight, so steam heats it from outside only; open the edge "
        "and steam "
        "from the other side, or take another method");
  if (drop.back == ClothBack::coated)
    return say(
        "the back is coated: what lies behind it is counted as out of reach of steam; only what lies in "
        "the cloth "
        "itself is heated by vapour");
  if (drop.face == DropFace::soaks && drop.back == ClothBack::open)
    return say(
        "water soaks in and the back is plain: nothing speaks against vapour; only a probe in the fold "
        "proves it");
  if (drop.face == DropFace::soaks)
    return say(
        "water soaks into the face, which proves nothing of the back: look at a hem, a zip or under the "
        "dust cover "
        "for a film, latex, foam or glue");
  return say(
      "no drop was tried: put one on a hidden spot and count the seconds; look at the back of the cloth "
      "too");
}

}  // namespace

Shape water_drop_shape() {
  return object(
      {with_default("face", face_shape(), "not_tried"), with_default("back", back_shape(), "not_seen"),
       optional("seconds", number(Unit::second, "until the drop had soaked in").at_least(0).at_most(3600))},
      "check whether vapour can enter the covering at all");
}

WaterDrop read_water_drop(const Json& edge) {
  WaterDrop drop;
  const Json* given = member_if(edge, "water_drop");
  if (given == nullptr) return drop;
  const std::string face = text_of(*given, "face"), back = text_of(*given, "back");
  drop.face = face == "soaks" ? DropFace::soaks : face == "beads" ? DropFace::beads : DropFace::not_tried;
  drop.back = back == "open" ? ClothBack::open : back == "coated" ? ClothBack::coated : ClothBack::not_seen;
  drop.seconds = number_if(*given, "seconds");
  if (drop.seconds && *drop.seconds > k_beads_after_seconds) drop.face = DropFace::beads;
  return drop;
}

std::vector<steam::UncertainLayer> stack_behind(const WaterDrop& drop,
                                                std::vector<steam::UncertainLayer> stack,
                                                double& target_depth_metres) {
  if (stack.empty()) return stack;
  if (drop.face == DropFace::beads) {
    stack.front().layer.permeable = false;
    stack.front().layer.porosity = 0;
    stack.front().layer.tortuosity = 1;
    stack.front().layer.sorption_scale_kilograms_per_m3 = 0;
  }
  if (drop.back == ClothBack::coated) {
    // Acrylic as the film; it is too thin for its heat to matter.
    if (const auto acrylic = find_material("acrylic_sheet")) {
      const steam::UncertainLayer film{{k_back_coating_metres, acrylic->heat_capacity_joules_per_m3_kelvin(),
                                        acrylic->conductivity.value, false, 0, 1, 0}};
      const double cloth = stack.front().layer.thickness_metres;
      stack.insert(stack.begin() + 1, film);
      if (target_depth_metres > cloth) target_depth_metres += k_back_coating_metres;
    }
  }
  return stack;
}

Shape water_drop_answer_shape() {
  return object({field("face", face_shape()), field("back", back_shape()),
                 field("shuts_vapour_out", flag("kill is computed as if no vapour entered")),
                 field("text", text("what the check says, and what else to look at"))},
                "the water-drop check");
}

Json to_json(const WaterDrop& drop) {
  return {{"face", word(drop.face)},
          {"back", word(drop.back)},
          {"shuts_vapour_out", drop.shuts_vapour_out()},
          {"text", words_of(drop)}};
}

}  // namespace lastegg
