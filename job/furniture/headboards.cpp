// Headboards, with their front to the bed: the back is what leans against the wall.
#include <string>

#include "job/furniture/builders.h"
#include "job/furniture/pieces.h"

namespace lastegg::furniture {
namespace {

const char* k_off_the_wall =
    "Take the board off the wall before its back is worked on; two people where it is heavy.";

/// Holes for the bed's bolts in a leg, a lower and an upper one.
void add_bed_bolts(Assembly& a, const Block& leg, const std::string& side) {
  Vertex centre = middle_of(leg, Side::front);
  for (const bool is_upper : {false, true}) {
    centre.z = is_upper ? 0.32 : 0.26;
    const std::string which = is_upper ? "upper" : "lower";
    add_screw(a, leg, Side::front, centre, which + "_bolt", "Bed bolt, " + side + " leg, " + which, a.wood());
  }
}

}  // namespace

void build_wooden_headboard(Assembly& a) {
  const double width = a.measure("width");
  const double height = a.measure("height");
  const double thickness = a.measure("thickness");
  const double post = a.usual("wood.post");
  const double rail_height = 0.1;
  const double bottom = a.usual("headboard.underside");
  a.part("frame", "Posts and rails");
  const Block left = a.block("post_left", {0.0, 0.0, 0.0}, {post, thickness, height});
  const Block right = a.block("post_right", {width - post, 0.0, 0.0}, {width, thickness, height});
  add_bed_bolts(a, left, "left");
  add_bed_bolts(a, right, "right");
  const Plan between{post, 0.0, width - post, thickness};
  for (const bool is_top : {false, true}) {
    const std::string which = is_top ? "top" : "bottom";
    const double z = is_top ? height - rail_height : bottom;
    const Block rail = slab(a, which + "_rail", between, z, z + rail_height);
    for (const Side end : {Side::left, Side::right}) {
      for (const Side face : {Side::front, Side::back}) {
        a.along(rail, end, face,
                {name_of(face) + "_" + name_of(end) + "_joint",
                 "Joint of the " + which + " rail at the " + name_of(end) + " post, " + name_of(face),
                 EdgeKind::wood_joint, face == Side::front, a.wood()});
      }
    }
  }
  a.part("panel", "Panel");
  const double panel = 0.4 * thickness;
  const double front = 0.3 * thickness;
  const Block board = a.block("panel", {post, front, bottom + rail_height},
                              {width - post, front + panel, height - rail_height});
  a.rim(board, Side::front,
        {"groove", "Groove around the panel, front", EdgeKind::wood_joint, k_in_sight, a.wood()});
  a.rim(board, Side::back,
        {"back_groove", "Groove around the panel, back", EdgeKind::headboard_back, k_out_of_sight, a.wood()});
  a.caution(k_off_the_wall, k_practice);
}

void build_upholstered_headboard(Assembly& a) {
  const double width = a.measure("width");
  const double height = a.measure("height");
  const double thickness = a.measure("thickness");
  const double bottom = a.usual("headboard.underside");
  a.part("front", "Padded front");
  const Block pad = a.block("pad", {0.0, 0.0, bottom}, {width, thickness, height});
  a.rim(pad, Side::front,
        {"welt", "Welt around the front", EdgeKind::welt, k_in_sight, a.cloth(Fill::batting_foam)});
  if (a.has("tufted")) {
    int row = 1;
    for (const double share : {0.35, 0.7}) {
      const double z = between({0.0, 0.0, bottom}, {0.0, 0.0, height}, share).z;
      const std::string number = std::to_string(row++);
      a.trace(pad, Side::front, {{0.05, 0.0, z}, {width - 0.05, 0.0, z}},
              {"tufts_" + number, "Row of tufts " + number + " from below", EdgeKind::tuft, k_in_sight,
               a.cloth(Fill::batting_foam)});
    }
  }
  a.part("back", "Back");
  const double cloth = a.usual("sofa.cloth_thickness");
  const double inset = a.usual("sofa.dust_cover_inset");
  const double staples = inset + a.usual("sofa.staple_inset");
  const double y = thickness + cloth;
  const Layers layers{Covering::olefin, Fill::none, std::nullopt};
  const Block cover =
      a.block("back_cloth", {inset, thickness, bottom + inset}, {width - inset, y, height - inset});
  a.rim(cover, Side::back,
        {"edge", "Edge of the cloth on the back", EdgeKind::dust_cover_edge, k_out_of_sight, layers});
  const Block line{"", "", {staples, y, bottom + staples}, {width - staples, y, height - staples}};
  a.trace(cover, Side::back, outline(line, Side::back),
          {"staples",
           "Staple line of the cloth on the back",
           EdgeKind::staple_line,
           k_out_of_sight,
           {Covering::olefin, Fill::wood, std::nullopt}});
  a.part("legs", "Legs");
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? 0.15 * width : 0.85 * width - 0.06;
    const Block leg = a.block("leg_" + side, {x, y, 0.0}, {x + 0.06, y + 0.025, bottom + 0.3});
    a.rim(leg, Side::front,
          {"joint", "Joint of the " + side + " leg on the back", EdgeKind::wood_joint, k_out_of_sight,
           a.wood()},
          {Side::top});
    add_bed_bolts(a, leg, side);
  }
  a.caution(k_off_the_wall, k_practice);
}

}  // namespace lastegg::furniture
