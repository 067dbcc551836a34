// Parts of the room along which bugs sit: flat runs at the wall, floor and window. A run goes from left to
// right.
#include <string>
#include <vector>

#include "job/furniture/builders.h"
#include "job/furniture/pieces.h"

namespace lastegg::furniture {
namespace {

const char* k_wiring_behind =
    "Wiring may run behind it: no steam into a wall where a cable or socket is near.";

}  // namespace

void build_curtain(Assembly& a) {
  const double width = a.measure("width");
  const double length = a.measure("length");
  const int panels = a.count("panels");
  const double off_floor = 0.02;
  const double thickness = 0.03;  // as it hangs in folds
  const double gap = 0.02;
  const double top = off_floor + length;
  const Layers cloth = a.cloth(Fill::none);
  for (int i = 0; i < panels; ++i) {
    const std::string number = std::to_string(i + 1);
    const double left = i * (width + gap);
    a.part("panel_" + number, "Panel " + number + " from the left");
    const Block panel = a.block("panel_" + number, {left, 0.0, off_floor}, {left + width, thickness, top});
    a.along(panel, Side::back, Side::top,
            {"heading", "Heading of panel " + number, EdgeKind::curtain_heading, k_in_sight, cloth});
    a.along(panel, Side::front, Side::bottom,
            {"hem", "Hem of panel " + number, EdgeKind::skirt, k_in_sight, cloth});
    a.rim(panel, Side::front, {"seam", "Side seam of panel " + number, EdgeKind::seam, k_in_sight, cloth},
          {Side::left, Side::right});
  }
  a.part("rod", "Rod and brackets");
  const double right = panels * width + (panels - 1) * gap;
  const Block rod = a.block("rod", {-0.1, 0.0, top}, {right + 0.1, thickness, top + thickness});
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? -0.1 : right + 0.06;
    const Block bracket =
        a.block("bracket_" + side, {x, thickness, top}, {x + 0.04, thickness + 0.06, top + thickness});
    a.around_whole(
        bracket, Side::back,
        {"plate", "Plate of the " + side + " bracket at the wall", EdgeKind::gap, k_in_sight, a.hard()});
    a.around_whole(rod, is_left ? Side::left : Side::right,
                   {side + "_end", "End of the rod, " + side, EdgeKind::gap, k_in_sight, a.hard()});
  }
  a.caution("Curtains that may be washed or tumbled are better treated so; steam what has to stay up.",
            k_practice);
}

void build_picture(Assembly& a) {
  const double width = a.measure("width");
  const double height = a.measure("height");
  const double low = a.usual("picture.underside");
  const double bar = a.usual("picture.bar");
  const double deep = a.usual("picture.depth");
  const double top = low + height;
  a.part("frame", "Frame");
  a.block("left", {0.0, 0.0, low}, {bar, deep, top});
  a.block("right", {width - bar, 0.0, low}, {width, deep, top});
  const Block bottom = a.block("bottom", {bar, 0.0, low}, {width - bar, deep, low + bar});
  const Block upper = a.block("top", {bar, 0.0, top - bar}, {width - bar, deep, top});
  for (const Block& piece : {bottom, upper}) {
    for (const Side end : {Side::left, Side::right}) {
      for (const Side face : {Side::front, Side::back}) {
        a.along(piece, end, face,
                {name_of(face) + "_" + name_of(end) + "_joint",
                 "Corner of the frame, " + piece.name + " " + name_of(end) + ", " + name_of(face),
                 EdgeKind::wood_joint, face == Side::front, a.wood()});
      }
    }
  }
  a.part("back", "Back");
  const Block panel = a.block("panel", {bar, 0.3 * deep, low + bar}, {width - bar, 0.7 * deep, top - bar});
  a.rim(panel, Side::back,
        {"groove", "Groove around the backing", EdgeKind::headboard_back, k_out_of_sight, a.wood()});
  a.rim(panel, Side::front, {"rebate", "Rebate at the front", EdgeKind::wood_joint, k_in_sight, a.wood()});
  a.caution(
      "Take it down; no steam on paper, paint or under glass. What cannot bear warmth is bagged, or left to "
      "a conservator.",
      k_practice);
}

void build_baseboard(Assembly& a) {
  const double length = a.measure("length");
  const double height = a.measure("height");
  a.part("board", "Baseboard");
  const Block board = a.block("board", {0.0, 0.0, 0.0}, {length, a.usual("baseboard.thickness"), height});
  a.along(board, Side::back, Side::top,
          {"wall_gap", "Gap between baseboard and wall", EdgeKind::skirting_gap, k_in_sight, a.wood()});
  a.along(board, Side::front, Side::bottom,
          {"floor_gap", "Gap between baseboard and floor", EdgeKind::skirting_gap, k_in_sight, a.wood()});
  a.rim(board, Side::front, {"joint", "Joint in the corner", EdgeKind::wood_joint, k_in_sight, a.wood()},
        {Side::left, Side::right});
  a.caution(k_wiring_behind, k_practice);
}

void build_carpet_edge(Assembly& a) {
  const double length = a.measure("length");
  const double thickness = a.usual("carpet.thickness");
  a.part("strip", "Strip along the wall");
  const Block strip = a.block("strip", {0.0, 0.0, 0.0}, {length, a.usual("carpet.strip"), thickness});
  const Layers layers = a.cloth(Fill::none);
  a.along(strip, Side::back, Side::top,
          {"wall_edge", "Edge of the carpet at the wall", EdgeKind::carpet_edge, k_in_sight, layers});
  a.along(strip, Side::back, Side::bottom,
          {"gripper",
           "Gripper strip under the edge, lifted",
           EdgeKind::wood_joint,
           k_out_of_sight,
           {Covering::unknown, Fill::wood, Finish::bare}});
  a.rim(strip, Side::top,
        {"end", "Edge of the carpet at the end of the run", EdgeKind::carpet_edge, k_in_sight, layers},
        {Side::left, Side::right});
  a.caution("Gripper strips have nails: lift the edge with a tool, gloves on.", k_practice);
}

void build_door_frame(Assembly& a) {
  const double width = a.measure("width");
  const double height = a.measure("height");
  const double casing = a.usual("door_frame.casing_width");
  const double thick = a.usual("door_frame.casing_thickness");
  const double jamb = a.usual("door_frame.jamb_depth");
  a.part("casing", "Casing");
  const Block left = a.block("casing_left", {-casing, 0.0, 0.0}, {0.0, thick, height});
  const Block right = a.block("casing_right", {width, 0.0, 0.0}, {width + casing, thick, height});
  const Block head = a.block("casing_head", {-casing, 0.0, height}, {width + casing, thick, height + casing});
  const auto runs = [&](const Block& piece, const std::string& words, Side outer, Side inner) {
    a.along(piece, Side::back, outer,
            {"wall_gap", "Gap between wall and casing, " + words, EdgeKind::gap, k_in_sight, a.wood()});
    a.along(piece, Side::front, inner,
            {"jamb_gap", "Gap between casing and jamb, " + words, EdgeKind::gap, k_in_sight, a.wood()});
  };
  runs(left, "left", Side::left, Side::right);
  runs(right, "right", Side::right, Side::left);
  a.along(head, Side::back, Side::top,
          {"wall_gap", "Gap between wall and casing, head", EdgeKind::gap, k_in_sight, a.wood()});
  for (const Block& piece : {left, right}) {
    a.along(piece, Side::front, Side::top,
            {"mitre", "Joint with the head casing, " + piece.name.substr(7), EdgeKind::wood_joint, k_in_sight,
             a.wood()});
    a.along(piece, Side::front, Side::bottom,
            {"foot", "Foot of the casing, " + piece.name.substr(7), EdgeKind::skirting_gap, k_in_sight,
             a.wood()});
  }
  a.part("jamb", "Jamb, hinges and strike plate");
  const double board = a.usual("wood.board");
  const Block hung = a.block("jamb_left", {-board, thick, 0.0}, {0.0, thick + jamb, height});
  const Block shut = a.block("jamb_right", {width, thick, 0.0}, {width + board, thick + jamb, height});
  a.block("jamb_head", {0.0, thick, height - board}, {width, thick + jamb, height});
  const auto plate = [&](const Block& side, double x, Side face, const std::string& id,
                         const std::string& title, double z) {
    const double y = thick + 0.02;
    const Block outline_of{"", "", {x, y, z}, {x, y + 0.03, z + 0.09}};
    a.trace(side, face, outline(outline_of, face), {id, title, EdgeKind::metal_joint, k_in_sight, a.hard()});
  };
  plate(hung, 0.0, Side::right, "lower_hinge", "Recess of the lower hinge", 0.2);
  plate(hung, 0.0, Side::right, "upper_hinge", "Recess of the upper hinge", height - 0.35);
  plate(shut, width, Side::left, "strike", "Recess of the strike plate", 0.95);
  a.caution(k_wiring_behind, k_practice);
}

void build_socket_plate(Assembly& a) {
  const double width = a.measure("width");
  const double height = a.measure("height");
  const double low = a.usual("socket_plate.underside");
  a.part("plate", "Plate");
  const Block plate =
      a.block("plate", {0.0, 0.0, low}, {width, a.usual("socket_plate.thickness"), low + height});
  a.around_whole(plate, Side::back,
                 {"rim", "Rim of the plate at the wall", EdgeKind::electrical_cover, k_in_sight, a.wired()});
  a.caution(
      "Never steamed: live parts lie behind it. Look with a lamp, vacuum the rim dry, and note what was "
      "seen.",
      k_practice);
  a.caution(
      "Take the plate off only where local rules let you, with the circuit proved dead; otherwise ask an "
      "electrician.",
      k_practice);
}

void build_wall_joint(Assembly& a) {
  const double length = a.measure("length");
  const double height = a.measure("height");
  const double strip = a.usual("wall_joint.strip");
  const double thick = a.usual("wood.board");
  a.part("joint", "Wall and ceiling");
  const Block wall = a.block("wall", {0.0, strip, height - strip}, {length, strip + thick, height});
  a.block("ceiling", {0.0, 0.0, height}, {length, strip + thick, height + thick});
  const Layers bare{Covering::unknown, Fill::none, a.finish()};
  a.along(wall, Side::front, Side::top,
          {"joint", "Joint of wall and ceiling", EdgeKind::wall_joint, k_in_sight, bare});
  a.rim(wall, Side::front,
        {"corner", "Corner of the room below the ceiling", EdgeKind::wall_joint, k_in_sight, bare},
        {Side::left, Side::right});
  a.caution(
      "Smoke and heat detectors, sprinkler heads and lamps near the ceiling stop the work until their keeper "
      "has covered or switched them off.",
      k_practice);
  a.caution("Old paint and textured ceilings may hold lead or asbestos: no scraping.", k_practice);
}

}  // namespace lastegg::furniture
