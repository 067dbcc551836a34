#include <cmath>
#include <string>
#include <vector>

#include "job/furniture/sofa_pieces.h"
#include "job/furniture/solid.h"

namespace lastegg::furniture {
namespace {

constexpr int k_arc_segments = 3;

using Names = std::vector<std::string>;

std::vector<Vertex> in_plane_y(const std::vector<Point>& line, double y) {
  std::vector<Vertex> points;
  for (const Point& point : line) points.push_back({point.u, y, point.v});
  return points;
}

void add_base(Item& item, const SofaMeasures& m, const Layers& over_wood) {
  const double front = m.base_recess;
  const double left = m.inside_left();
  const double right = m.inside_right();
  add_body(item, box("base", "base", {left, front, m.leg_height}, {right, m.inside_back, m.deck_height}));
  const Layers deck{over_wood.covering, Fill::foam, std::nullopt};
  const double deck_z = m.deck_height;
  add_edge(item, {"base.deck_front_seam",
                  "Seam of the deck at the front rail, under the cushions",
                  EdgeKind::seam,
                  "base",
                  {"base.top", "base.front"},
                  {{left, front, deck_z}, {right, front, deck_z}},
                  false,
                  deck});
  add_edge(item, {"base.deck_back_crevice",
                  "Crevice between deck and inside back",
                  EdgeKind::fold,
                  "base",
                  {"base.top", "back_frame.inside_low"},
                  {{left, m.inside_back, deck_z}, {right, m.inside_back, deck_z}},
                  false,
                  deck});
  for (const bool is_left : {true, false}) {
    const double x = is_left ? left : right;
    const std::string side = is_left ? "left" : "right";
    const std::string arm = "arm_" + side;
    add_edge(item, {"base.deck_" + side + "_crevice",
                    "Crevice between deck and " + side + " arm",
                    EdgeKind::fold,
                    "base",
                    {"base.top", arm + ".inside"},
                    {{x, front, deck_z}, {x, m.inside_back, deck_z}},
                    false,
                    deck});
    add_edge(item, {"base.front_" + side + "_crevice",
                    "Crevice between front rail and " + side + " arm",
                    EdgeKind::fold,
                    "base",
                    {"base.front", arm + ".inside"},
                    {{x, front, m.leg_height}, {x, front, deck_z}},
                    true,
                    over_wood});
  }
}

/// One arm. `across` turns a distance from the arm's outside into x, so that both arms are drawn alike.
void add_arm(Item& item, const SofaMeasures& m, bool is_left, const Layers& padded, const Layers& over_wood) {
  const std::string side = is_left ? "left" : "right";
  const std::string name = "arm_" + side;
  const auto across = [&](double from_outside) { return is_left ? from_outside : m.width - from_outside; };
  const double outside = across(0.0);
  const double inside = across(m.arm_width);
  const Point foot_in{inside, m.leg_height};
  const Point foot_out{outside, m.leg_height};
  const Point top_in{inside, m.arm_height};
  const Point top_out{outside, m.arm_height};
  std::vector<Point> over;  // from the upright of the inside over the top to the upright of the outside
  for (const auto& arc : {rounded_corner(foot_in, top_in, top_out, m.arm_rounding, k_arc_segments),
                          rounded_corner(top_in, top_out, foot_out, m.arm_rounding, k_arc_segments)}) {
    over.insert(over.end(), arc.begin(), arc.end());
  }
  std::vector<Point> drawing = {foot_in};
  drawing.insert(drawing.end(), over.begin(), over.end());
  drawing.push_back(foot_out);
  Names sides = {"inside"};
  for (int i = 1; i <= k_arc_segments; ++i) sides.push_back("inside_roll_" + std::to_string(i));
  sides.push_back("top");
  for (int i = 1; i <= k_arc_segments; ++i) sides.push_back("outside_roll_" + std::to_string(i));
  sides.push_back("outside");
  sides.push_back("bottom");
  add_body(item, drawn_out(name, name, drawing, Direction::along_y, 0.0, m.depth, "front", "back", sides));

  const std::string arm = side + " arm";
  std::vector<Vertex> welt = in_plane_y(drawing, 0.0);
  add_edge(item, {name + ".front_welt",
                  "Welt around the front of the " + arm,
                  EdgeKind::welt,
                  name,
                  {name + ".front"},
                  welt,
                  true,
                  over_wood});
  std::vector<Point> rear = over;
  rear.push_back(foot_out);
  add_edge(item, {name + ".back_seam",
                  "Seam around the rear of the " + arm,
                  EdgeKind::seam,
                  name,
                  {name + ".back"},
                  in_plane_y(rear, m.depth),
                  true,
                  over_wood});
  const double z = m.arm_straight;
  const double back_y = m.inside_back_at(z);
  add_edge(item, {name + ".inside_seam",
                  "Seam along the inside of the " + arm,
                  EdgeKind::seam,
                  name,
                  {name + ".inside", name + ".inside_roll_1"},
                  {{inside, 0.0, z}, {inside, back_y, z}},
                  true,
                  padded});
  add_edge(item, {name + ".outside_seam",
                  "Seam along the outside of the " + arm,
                  EdgeKind::seam,
                  name,
                  {name + ".outside", name + ".outside_roll_" + std::to_string(k_arc_segments)},
                  {{outside, 0.0, z}, {outside, m.depth, z}},
                  true,
                  padded});
  const std::string frame_side = "back_frame." + side;
  add_edge(item, {name + ".back_crevice",
                  "Crevice between the back and the top of the " + arm,
                  EdgeKind::fold,
                  name,
                  {name + ".inside", frame_side},
                  {{inside, back_y, z}, {inside, m.depth, z}},
                  true,
                  padded});
  add_edge(
      item,
      {name + ".inside_back_crevice",
       "Crevice between inside back and " + arm + ", behind the cushions",
       EdgeKind::fold,
       name,
       {name + ".inside", frame_side},
       {{inside, m.inside_back, m.deck_height}, {inside, m.inside_back, m.seat_height}, {inside, back_y, z}},
       false,
       padded});
}

void add_back_frame(Item& item, const SofaMeasures& m, const Layers& padded, const Layers& hollow) {
  const Point foot_front{m.inside_back, m.leg_height};
  const Point knee{m.inside_back, m.seat_height};
  const Point top_front{m.inside_back_at(m.frame_height), m.frame_height};
  const Point top_back{m.depth, m.frame_height};
  const Point foot_back{m.depth, m.leg_height};
  // The front arc starts where the inside back reaches the height at which the rounding begins.
  const double front_reach = m.frame_rounding * std::hypot(1.0, m.back_lean);
  std::vector<Point> over;
  for (const auto& arc : {rounded_corner(knee, top_front, top_back, front_reach, k_arc_segments),
                          rounded_corner(top_front, top_back, foot_back, m.frame_rounding, k_arc_segments)}) {
    over.insert(over.end(), arc.begin(), arc.end());
  }
  std::vector<Point> drawing = {foot_front, knee};
  drawing.insert(drawing.end(), over.begin(), over.end());
  drawing.push_back(foot_back);
  Names sides = {"inside_low", "inside"};
  for (int i = 1; i <= k_arc_segments; ++i) sides.push_back("inside_roll_" + std::to_string(i));
  sides.push_back("top");
  for (int i = 1; i <= k_arc_segments; ++i) sides.push_back("outside_roll_" + std::to_string(i));
  sides.push_back("outside");
  sides.push_back("bottom");
  const double left = m.inside_left();
  const double right = m.inside_right();
  add_body(item,
           drawn_out("back_frame", "back", drawing, Direction::along_x, left, right, "left", "right", sides));

  const double seam_z = m.frame_straight;
  add_edge(item, {"back_frame.outside_top_seam",
                  "Seam along the top of the outside back",
                  EdgeKind::seam,
                  "back",
                  {"back_frame.outside", "back_frame.outside_roll_" + std::to_string(k_arc_segments)},
                  {{left, m.depth, seam_z}, {right, m.depth, seam_z}},
                  true,
                  hollow});
  for (const bool is_left : {true, false}) {
    const double x = is_left ? left : right;
    const std::string side = is_left ? "left" : "right";
    add_edge(item, {"back_frame.outside_" + side + "_seam",
                    "Seam along the " + side + " of the outside back",
                    EdgeKind::seam,
                    "back",
                    {"back_frame.outside", "back_frame." + side},
                    {{x, m.depth, m.leg_height}, {x, m.depth, seam_z}},
                    true,
                    hollow});
    std::vector<Vertex> line = {{x, m.inside_back_at(m.arm_straight), m.arm_straight}};
    for (const Point& point : over) line.push_back({x, point.u, point.v});
    add_edge(item, {"back_frame." + side + "_side_seam",
                    "Seam over the " + side + " end of the back",
                    EdgeKind::seam,
                    "back",
                    {"back_frame." + side},
                    line,
                    true,
                    padded});
  }
}

}  // namespace

void add_sofa_frame(Item& item, const SofaMeasures& m, const SofaRequest& request) {
  const Layers padded{request.covering, Fill::batting_foam, std::nullopt};
  const Layers over_wood{request.covering, Fill::wood, std::nullopt};
  const Layers hollow{request.covering, Fill::none, std::nullopt};
  add_base(item, m, over_wood);
  add_arm(item, m, true, padded, over_wood);
  add_arm(item, m, false, padded, over_wood);
  add_back_frame(item, m, padded, hollow);
}

}  // namespace lastegg::furniture
