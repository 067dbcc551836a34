// Chairs, ottoman and vehicle seat.
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "job/furniture/builders.h"
#include "job/furniture/pieces.h"

namespace lastegg::furniture {
namespace {

constexpr std::size_t k_star_arms = 5;

/// The five-armed foot of a desk chair: a five-sided hub and an arm on each of its sides.
void add_star(Assembly& a, const Point& centre, double reach, double bottom, double top) {
  const double hub = 0.06;
  const double turn = 2.0 * std::numbers::pi / k_star_arms;
  const auto spoke = [&](std::size_t i, double radius) {
    const double angle = turn * static_cast<double>(i);
    return Point{centre.u + radius * std::sin(angle), centre.v - radius * std::cos(angle)};
  };
  std::vector<Point> corners;
  std::vector<std::string> sides;
  for (std::size_t i = 0; i < k_star_arms; ++i) {
    corners.push_back(spoke(i, hub));
    sides.push_back("side_" + std::to_string(i + 1));
  }
  a.body(
      drawn_out("hub", a.current_part(), corners, Direction::along_z, bottom, top, "bottom", "top", sides));
  for (std::size_t i = 0; i < k_star_arms; ++i) {
    const std::string number = std::to_string(i + 1);
    const std::string name = "star_" + number;
    const Point& p = corners[i];
    const Point& q = corners[(i + 1) % k_star_arms];
    // Outwards from the middle of the hub's side, as far as the star reaches.
    const Point middle{(p.u + q.u) / 2.0 - centre.u, (p.v + q.v) / 2.0 - centre.v};
    const double from_centre = std::hypot(middle.u, middle.v);
    const double share = (reach - from_centre) / from_centre;
    const Point out{middle.u * share, middle.v * share};
    const std::vector<Point> arm = {p, q, {q.u + out.u, q.v + out.v}, {p.u + out.u, p.v + out.v}};
    a.body(drawn_out(name, a.current_part(), arm, Direction::along_z, bottom, top, "bottom", "top",
                     {"hub", "one_side", "tip", "other_side"}));
    add_edge(a.item(), {name + ".joint",
                        "Joint of star arm " + number + " at the hub",
                        EdgeKind::metal_joint,
                        a.current_part(),
                        {name + ".top", name + ".hub"},
                        {{p.u, p.v, top}, {q.u, q.v, top}},
                        true,
                        a.hard()});
    const double half = 0.02;
    const double tip = (reach - 0.03) / from_centre;
    const Vertex foot{centre.u + middle.u * tip, centre.v + middle.v * tip, 0.0};
    const Block castor =
        a.block("castor_" + number, foot - Vertex{half, half, 0.0}, foot + Vertex{half, half, bottom});
    a.around_whole(castor, Side::top,
                   {"socket", "Socket of castor " + number, EdgeKind::gap, k_out_of_sight, a.hard()});
  }
}

/// A padded back that stands behind a seat: welts around its front and rear, and the crevice at its foot.
void add_back_pad(Assembly& a, const std::string& name, const std::string& title, const Plan& plan,
                  double bottom, double top) {
  const Block pad = slab(a, name, plan, bottom, top);
  a.rim(pad, Side::front,
        {"welt", "Welt around the front of the " + title, EdgeKind::welt, k_in_sight,
         a.cloth(Fill::batting_foam)},
        {Side::left, Side::top, Side::right});
  a.rim(pad, Side::back,
        {"rear_seam", "Rear seam of the " + title, EdgeKind::seam, k_in_sight, a.cloth(Fill::none)});
}

}  // namespace

void build_dining_chair(Assembly& a) {
  const double width = a.measure("width");
  const double depth = a.measure("depth");
  const double height = a.measure("height");
  const double seat = a.measure("seat_height");
  const double leg = a.usual("dining_chair.leg");
  const double pad = a.usual("dining_chair.pad");
  const double under = seat - pad;
  const Plan inner = Plan{0.0, 0.0, width, depth}.shrunk(leg);

  a.part("seat", "Seat");
  const Block cushion =
      add_padded(a, "seat", "seat", {0.0, 0.0, width, inner.back}, under, seat, {Side::back});
  for (const bool is_front : {true, false}) {
    for (const bool is_left : {true, false}) {
      const std::string where = std::string(is_front ? "front_" : "back_") + (is_left ? "left" : "right");
      const std::string words = std::string(is_front ? "front " : "back ") + (is_left ? "left" : "right");
      const double x = is_left ? inner.left + 0.05 : inner.right - 0.05;
      const double y = is_front ? inner.front + 0.05 : inner.back - 0.05;
      add_screw(a, cushion, Side::bottom, {x, y, under}, where + "_screw", "Screw under the seat, " + words,
                a.wood(), k_out_of_sight);
    }
  }
  a.part("frame", "Legs and rails");
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? 0.0 : inner.right;
    a.block("leg_front_" + side, {x, 0.0, 0.0}, {x + leg, leg, under});
    a.block("post_back_" + side, {x, inner.back, 0.0}, {x + leg, depth, height});
  }
  add_rails(a, "rail", "seat rail", inner, 0.6 * leg, under - 0.07, under);
  a.part("back", "Back");
  const Plan between{inner.left, inner.back + 0.25 * leg, inner.right, depth - 0.25 * leg};
  const double low = seat + 0.03;
  const Block lower = slab(a, "back_lower_rail", between, low, low + 0.03);
  const Block upper = slab(a, "back_top_rail", between, height - 0.07, height);
  constexpr int k_bars = 3;
  for (int i = 1; i <= k_bars; ++i) {
    const double x = between.left + between.width() * i / (k_bars + 1.0) - 0.015;
    slab(a, "back_bar_" + std::to_string(i), {x, between.front, x + 0.03, between.back}, low + 0.03,
         height - 0.07);
  }
  a.along(lower, Side::top, Side::front,
          {"bar_ends", "Lower ends of the back bars", EdgeKind::wood_joint, k_in_sight, a.wood()});
  a.along(upper, Side::bottom, Side::front,
          {"bar_ends", "Upper ends of the back bars", EdgeKind::wood_joint, k_in_sight, a.wood()});
  for (const Side end : {Side::left, Side::right}) {
    a.along(lower, end, Side::back,
            {name_of(end) + "_joint", "Lower back rail at the " + name_of(end) + " post",
             EdgeKind::wood_joint, k_in_sight, a.wood()});
    a.along(upper, end, Side::back,
            {name_of(end) + "_joint", "Top rail at the " + name_of(end) + " post", EdgeKind::wood_joint,
             k_in_sight, a.wood()});
  }
}

void build_desk_chair(Assembly& a) {
  const double width = a.measure("width");
  const double depth = a.measure("depth");
  const double height = a.measure("height");
  const double seat = a.measure("seat_height");
  const double reach = a.usual("desk_chair.base_diameter") / 2.0;
  const double pad = a.usual("desk_chair.pad");
  const double under = seat - pad;
  const Point middle{width / 2.0, depth / 2.0};
  const double foot = 0.05;
  const double star_top = foot + 0.05;
  a.part("seat", "Seat");
  add_padded(a, "seat", "seat", {0.0, 0.0, width, depth}, under, seat);
  a.part("back", "Back");
  const double back = a.usual("desk_chair.back");
  const double bracket = 0.03;
  add_back_pad(a, "back", "back", {0.0, depth, width, depth + back}, seat + 0.1, height);
  const Block holder = a.block("back_bracket", {middle.u - 0.04, depth + back, under - bracket},
                               {middle.u + 0.04, depth + back + bracket, seat + 0.3});
  a.rim(holder, Side::front,
        {"joint", "Rim of the back's bracket", EdgeKind::metal_joint, k_out_of_sight, a.hard()},
        {Side::left, Side::right, Side::top});
  a.part("underside", "Mechanism and foot");
  const Block plate = a.block("plate", {middle.u - 0.12, middle.v - 0.12, under - bracket},
                              {middle.u + 0.12, depth + back, under});
  a.rim(plate, Side::top,
        {"gap", "Gap over the mechanism plate", EdgeKind::metal_joint, k_out_of_sight, a.hard()},
        {Side::left, Side::front, Side::right});
  const Block column = a.block("column", {middle.u - 0.025, middle.v - 0.025, star_top},
                               {middle.u + 0.025, middle.v + 0.025, under - bracket});
  a.around_whole(column, Side::bottom,
                 {"joint", "Foot of the column in the hub", EdgeKind::metal_joint, k_out_of_sight, a.hard()});
  add_star(a, middle, reach, foot, star_top);
  if (!a.has("arms")) return;
  a.part("arms", "Arm rests");
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? -0.05 : width;
    const double y = 0.4 * depth;
    const Block post = a.block("arm_post_" + side, {x, y, under}, {x + 0.05, y + 0.06, seat + 0.18});
    const Block rest =
        a.block("arm_rest_" + side, {x, 0.2 * depth, seat + 0.18}, {x + 0.05, 0.85 * depth, seat + 0.21});
    a.along(post, Side::bottom, is_left ? Side::left : Side::right,
            {"joint", "Foot of the " + side + " arm rest", EdgeKind::metal_joint, k_in_sight, a.hard()});
    a.rim(rest, Side::bottom,
          {"rim", "Underside of the " + side + " arm rest", EdgeKind::gap, k_in_sight, a.hard()},
          {is_left ? Side::left : Side::right});
  }
}

void build_ottoman(Assembly& a) {
  const Plan plan{0.0, 0.0, a.measure("width"), a.measure("depth")};
  const double legs = a.measure("leg_height");
  const double top = a.measure("height");
  const double lid = a.usual("ottoman.lid");
  const bool opens = a.has("storage");
  a.part("top", opens ? "Lid" : "Top");
  add_padded(a, "top", opens ? "lid" : "top", plan, top - lid, top);
  a.part("body", "Body");
  const Block body = slab(a, "body", plan.shrunk(0.005), legs, top - lid);
  for (const Side across : {Side::left, Side::right}) {
    for (const Side deep : {Side::front, Side::back}) {
      a.along(body, across, deep,
              {name_of(deep) + "_" + name_of(across) + "_seam",
               "Seam at the corner, " + name_of(deep) + " " + name_of(across), EdgeKind::seam, k_in_sight,
               a.cloth(Fill::wood)});
    }
  }
  if (opens) {
    a.rim(body, Side::top, {"slot", "Slot under the lid", EdgeKind::fold, k_in_sight, a.cloth(Fill::wood)});
    const Plan lining = plan.shrunk(0.03);
    const Block box{"", "", {lining.left, lining.front, top - lid}, {lining.right, lining.back, top - lid}};
    a.trace(
        body, Side::top, outline(box, Side::top),
        {"lining", "Edge of the lining inside", EdgeKind::staple_line, k_out_of_sight, a.cloth(Fill::wood)});
    add_screw(a, body, Side::back, {plan.width() / 2.0, plan.back - 0.005, top - lid - 0.03}, "hinge",
              "Screw of the lid's hinge", a.wood());
  }
  a.part("underside", "Underside");
  const double below = add_dust_cover(a, plan.shrunk(0.005), legs);
  add_legs(a, plan.shrunk(a.usual("leg.inset")), below, a.usual("leg.side"), a.wood());
}

void build_vehicle_seat(Assembly& a) {
  const double width = a.measure("width");
  const double depth = a.measure("depth");
  const double height = a.measure("height");
  const double seat = a.measure("seat_height");
  const double pad = a.usual("vehicle_seat.pad");
  const double back = a.usual("vehicle_seat.back");
  const double bolster = 0.15 * width;
  const double rail = a.usual("metal.tube");
  a.part("cushion", "Cushion");
  const Block cushion =
      add_padded(a, "cushion", "cushion", {0.0, 0.0, width, depth}, seat - pad, seat, {Side::back});
  a.part("back", "Back");
  const double head = a.usual("vehicle_seat.head_rest");
  const double top = height - head - 0.04;
  const double narrower = 0.01;
  add_back_pad(a, "back", "back", {narrower, depth, width - narrower, depth + back}, seat - pad, top);
  a.part("cushion_lines", "Seams between the bolsters, and crevices");
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? bolster : width - bolster;
    a.trace(cushion, Side::top, {{x, 0.05, seat}, {x, depth, seat}},
            {side + "_bolster_seam", "Seam at the " + side + " bolster of the cushion", EdgeKind::seam,
             k_in_sight, a.cloth(Fill::foam)});
    add_edge(a.item(), {"back." + side + "_bolster_seam",
                        "Seam at the " + side + " bolster of the back",
                        EdgeKind::seam,
                        "back",
                        {"back.front"},
                        {{x, depth, seat}, {x, depth, top - 0.05}},
                        true,
                        a.cloth(Fill::foam)});
  }
  add_edge(a.item(), {"back.crevice",
                      "Crevice between cushion and back",
                      EdgeKind::fold,
                      "back",
                      {"back.front"},
                      {{narrower, depth, seat - 0.01}, {width - narrower, depth, seat - 0.01}},
                      true,
                      a.cloth(Fill::foam)});
  a.part("head_rest", "Head rest");
  const Plan rest{0.25 * width, depth + 0.2 * back, 0.75 * width, depth + 0.8 * back};
  add_padded(a, "head_rest", "head rest", rest, height - head, height);
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = (is_left ? 0.35 : 0.65) * width;
    const double y = depth + back / 2.0;
    const Block rod =
        a.block("rod_" + side, {x - 0.006, y - 0.006, top}, {x + 0.006, y + 0.006, height - head});
    a.around_whole(rod, Side::bottom,
                   {"sleeve", "Sleeve of the head rest, " + side, EdgeKind::gap, k_out_of_sight, a.hard()});
  }
  a.part("rails", "Rails and underside");
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? 0.05 : width - 0.05 - rail;
    const Block base = a.block("rail_" + side, {x, 0.0, 0.0}, {x + rail, depth, rail});
    const Block stand = a.block("stand_" + side, {x, 0.05, rail}, {x + rail, depth - 0.05, seat - pad});
    a.rim(base, Side::top,
          {"slot", "Slot of the " + side + " rail", EdgeKind::metal_joint, k_in_sight, a.hard()},
          {is_left ? Side::left : Side::right});
    a.along(base, Side::bottom, is_left ? Side::right : Side::left,
            {"floor",
             "Floor along the " + side + " rail",
             EdgeKind::carpet_edge,
             k_in_sight,
             {Covering::unknown, Fill::none, std::nullopt}});
    a.rim(
        stand, Side::top,
        {"clips", "Clips of the cover, " + side, EdgeKind::staple_line, k_out_of_sight, a.cloth(Fill::none)},
        {Side::left, Side::right});
  }
  const Block plug = a.block("connector", {width / 2.0 - 0.05, depth - 0.12, seat - pad - 0.04},
                             {width / 2.0 + 0.05, depth - 0.05, seat - pad});
  a.around_whole(
      plug, Side::bottom,
      {"cover", "Cable connectors under the cushion", EdgeKind::electrical_cover, k_out_of_sight, a.wired()});
  a.caution(
      "Air bag, seat heater, occupancy sensor and belt tensioner sit in this seat: no steam on their seams, "
      "plugs or labels; ask the maker's workshop.",
      k_practice);
  a.caution("Belts are not steamed: webbing that was hot and wet is no longer trusted.", k_practice);
}

}  // namespace lastegg::furniture
