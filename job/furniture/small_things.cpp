// Things that are carried or wheeled about: a heap, a case, a wheelchair, a stroller.
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "job/furniture/builders.h"
#include "job/furniture/pieces.h"

namespace lastegg::furniture {
namespace {

constexpr int k_wheel_sides = 12;

/// A wheel that turns about x, with the line around its hub on its outer side.
void add_wheel(Assembly& a, const std::string& name, const std::string& title, double from, double to,
               double y, double radius, bool outer_is_low) {
  std::vector<Point> drawing;
  std::vector<std::string> sides;
  std::vector<Vertex> hub;
  const double hub_radius = 0.25 * radius;
  const double outer = outer_is_low ? from : to;
  // The wheel stands on one of its sides, so that its lowest points touch the floor.
  const double apothem = radius * std::cos(std::numbers::pi / k_wheel_sides);
  for (int i = 0; i < k_wheel_sides; ++i) {
    const double angle = 2.0 * std::numbers::pi * (i + 0.5) / k_wheel_sides;
    drawing.push_back({y + radius * std::sin(angle), apothem - radius * std::cos(angle)});
    sides.push_back("tread_" + std::to_string(i + 1));
    hub.push_back({outer, y + hub_radius * std::sin(angle), apothem - hub_radius * std::cos(angle)});
  }
  hub.push_back(hub.front());
  a.body(drawn_out(name, a.current_part(), drawing, Direction::along_x, from, to, "left", "right", sides));
  add_edge(a.item(), {name + ".hub",
                      "Hub of the " + title,
                      EdgeKind::metal_joint,
                      a.current_part(),
                      {name + (outer_is_low ? ".left" : ".right")},
                      hub,
                      true,
                      a.hard()});
}

/// Cloth slung between two tubes: the sewn sleeves at its sides and the hems at its ends.
void add_sling(Assembly& a, const Block& cloth, const std::string& title, Side face,
               const std::vector<Side>& sleeves, const std::vector<Side>& hems) {
  a.rim(cloth, face,
        {"sleeve", "Sewn sleeve of the " + title, EdgeKind::seam, k_in_sight, a.cloth(Fill::none)}, sleeves);
  a.rim(cloth, face, {"hem", "Hem of the " + title, EdgeKind::seam, k_in_sight, a.cloth(Fill::none)}, hems);
}

}  // namespace

void build_clutter(Assembly& a) {
  const double width = a.measure("width");
  const double depth = a.measure("depth");
  const double height = a.measure("height");
  const double low = 0.55 * height;
  const Layers layers{Covering::unknown, Fill::none, std::nullopt};
  a.part("lower", "Lower row");
  const auto thing = [&](const std::string& name, const std::string& title, const Vertex& from,
                         const Vertex& to) {
    const Block block = a.block(name, from, to);
    a.around_whole(block, Side::bottom, {"under", "Under " + title, EdgeKind::heap, k_out_of_sight, layers});
    return block;
  };
  const Block first = thing("carton_1", "carton 1", {0.0, 0.0, 0.0}, {0.48 * width, depth, low});
  thing("carton_2", "carton 2", {0.5 * width, 0.0, 0.0}, {width, 0.6 * depth, low});
  thing("bag_1", "bag 1", {0.52 * width, 0.62 * depth, 0.0}, {0.97 * width, depth, 0.7 * low});
  a.rim(first, Side::top, {"flaps", "Flaps of carton 1", EdgeKind::heap, k_in_sight, layers},
        {Side::left, Side::front});
  a.part("upper", "Upper row");
  const Block upper =
      thing("carton_3", "carton 3", {0.05 * width, 0.1 * depth, low}, {0.45 * width, 0.9 * depth, height});
  thing("bag_2", "bag 2", {0.55 * width, 0.05 * depth, low}, {0.95 * width, 0.55 * depth, 0.9 * height});
  a.rim(upper, Side::top, {"flaps", "Flaps of carton 3", EdgeKind::heap, k_in_sight, layers},
        {Side::left, Side::front, Side::right, Side::back});
  a.caution(
      "A heap is not treated by a pass: sort it into sealed bags, then dryer, freezer, hot chamber or "
      "discard, thing by thing.",
      k_practice);
  a.caution(
      "Look before you reach in: needles, blades, glass; pressurised cans, lighters and batteries are taken "
      "out before any heat.",
      k_practice);
}

void build_luggage(Assembly& a) {
  const double width = a.measure("width");
  const double depth = a.measure("depth");
  const double height = a.measure("height");
  const double wheel = 0.04;
  const double middle = depth / 2.0;
  const Layers cloth = a.cloth(Fill::none);
  a.part("outside", "Outside");
  const Block front = a.block("front_half", {0.0, 0.0, wheel}, {width, middle, height});
  const Block back = a.block("back_half", {0.0, middle, wheel}, {width, depth, height});
  a.rim(front, Side::back, {"zip", "Main zip", EdgeKind::zip, k_in_sight, cloth},
        {Side::left, Side::top, Side::right});
  a.along(front, Side::back, Side::bottom,
          {"hinge", "Cloth hinge below", EdgeKind::seam, k_out_of_sight, cloth});
  a.rim(front, Side::front, {"piping", "Piping around the front", EdgeKind::welt, k_in_sight, cloth});
  a.rim(back, Side::back, {"piping", "Piping around the back", EdgeKind::welt, k_in_sight, cloth});
  const double high = 0.8 * height;
  a.trace(front, Side::front, {{0.1 * width, 0.0, high}, {0.9 * width, 0.0, high}},
          {"pocket_zip", "Zip of the outer pocket", EdgeKind::zip, k_in_sight, cloth});
  const double grip = 0.25 * width;
  const Block strap{"",
                    "",
                    {width / 2.0 - grip / 2.0, depth * 0.6, height},
                    {width / 2.0 + grip / 2.0, depth * 0.75, height}};
  a.trace(back, Side::top, outline(strap, Side::top),
          {"handle", "Handle", EdgeKind::handle, k_in_sight, cloth});
  a.part("inside", "Inside, laid open");
  const auto lining = [&](const Block& half, Side face, double inset, const std::string& words) {
    const Block line{"", "", {inset, middle, wheel + inset}, {width - inset, middle, height - inset}};
    a.trace(half, face, outline(line, face),
            {"lining", "Seam of the lining, " + words + " half", EdgeKind::seam, k_out_of_sight, cloth});
  };
  // Drawn shut, the two linings lie against each other: the insets differ so that each is a line of its own.
  lining(front, Side::back, 0.02, "front");
  lining(back, Side::front, 0.03, "back");
  a.part("wheels", "Wheels");
  for (const bool is_front : {true, false}) {
    for (const bool is_left : {true, false}) {
      const std::string where = std::string(is_front ? "front_" : "back_") + (is_left ? "left" : "right");
      const double x = is_left ? 0.01 : width - 0.05;
      const double y = is_front ? 0.01 : depth - 0.05;
      const Block box = a.block("wheel_" + where, {x, y, 0.0}, {x + 0.04, y + 0.04, wheel});
      a.around_whole(box, Side::top,
                     {"housing",
                      std::string("Housing of the wheel, ") + (is_front ? "front " : "back ") +
                          (is_left ? "left" : "right"),
                      EdgeKind::gap, k_out_of_sight, a.hard()});
    }
  }
  a.caution(
      "Empty it into a sealed bag; a case that fits a hot chamber is better treated there. Batteries and "
      "trackers come out first.",
      k_practice);
}

void build_wheelchair(Assembly& a) {
  const double width = a.measure("width");
  const double depth = a.measure("depth");  // of the seat
  const double height = a.measure("height");
  const double seat = a.measure("seat_height");
  const double tube = a.usual("metal.tube");
  const double wheel = a.usual("wheelchair.wheel_diameter") / 2.0;
  const double tyre = 0.03;
  const double rest = 0.25;  // foot rests in front of the seat
  const double left = tyre + 0.01;
  const double right = width - left;
  const double front = rest;
  const double back = rest + depth;
  const double cloth = 0.01;
  const double arm = seat + a.usual("wheelchair.arm_above_seat");
  a.part("slings", "Seat and back cloth");
  const Block sling = a.block("seat", {left + tube, front, seat - cloth}, {right - tube, back, seat});
  add_sling(a, sling, "seat", Side::top, {Side::left, Side::right}, {Side::front});
  const Block rear = a.block("back", {left + tube, back, seat}, {right - tube, back + cloth, height - 0.05});
  add_sling(a, rear, "back", Side::back, {Side::left, Side::right}, {Side::top});
  a.along(rear, Side::front, Side::bottom,
          {"crevice", "Crevice between seat and back", EdgeKind::fold, k_in_sight, a.cloth(Fill::none)});
  a.along(
      sling, Side::bottom, Side::front,
      {"folded", "Fold under the seat, chair folded", EdgeKind::fold, k_out_of_sight, a.cloth(Fill::none)});
  a.part("frame", "Frame and arm rests");
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const Side outer = is_left ? Side::left : Side::right;
    const double x = is_left ? left : right - tube;
    const Block low = a.block("side_" + side, {x, front, 0.2}, {x + tube, back, 0.2 + tube});
    const Block high = a.block("seat_tube_" + side, {x, front + tube, seat - tube}, {x + tube, back, seat});
    const Block post = a.block("front_tube_" + side, {x, front, 0.2 + tube}, {x + tube, front + tube, arm});
    const Block push = a.block("back_tube_" + side, {x, back, 0.2 + tube}, {x + tube, back + tube, height});
    const Block pad = a.block("arm_" + side, {x, front, arm}, {x + tube, back, arm + 0.03});
    a.along(
        high, Side::front, outer,
        {"front_joint", "Seat tube at the front post, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()});
    a.along(
        high, Side::back, outer,
        {"back_joint", "Seat tube at the back post, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()});
    a.along(post, Side::bottom, outer,
            {"joint", "Foot of the front post, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()});
    a.rim(pad, Side::bottom,
          {"rim", "Underside of the arm pad, " + side, EdgeKind::gap, k_in_sight, a.hard()}, {outer});
    a.trace(push, Side::back, {{x, back + tube, height - 0.1}, {x + tube, back + tube, height - 0.1}},
            {"grip", "End of the grip, " + side, EdgeKind::gap, k_in_sight, a.hard()});
    a.along(low, Side::bottom, outer,
            {"caster_bar", "Underside of the lower tube, " + side, EdgeKind::metal_joint, k_out_of_sight,
             a.hard()});
    const Block hanger = a.block("hanger_" + side, {x, front - tube, 0.17}, {x + tube, front, 0.45});
    a.block("hanger_foot_" + side, {x, 0.15, 0.15}, {x + tube, front, 0.17});
    a.along(hanger, Side::back, outer,
            {"latch", "Latch of the foot rest hanger, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()});
    const Block foot = a.block("foot_rest_" + side, {is_left ? left : width / 2.0 + 0.01, 0.0, 0.15},
                               {is_left ? width / 2.0 - 0.01 : right, 0.15, 0.17});
    a.rim(foot, Side::top,
          {"hinge", "Hinge of the foot rest, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()}, {outer});
  }
  const double cross = (left + right) / 2.0;
  const double y = (front + back) / 2.0;
  const Block brace = a.block("brace", {left + tube, y, 0.2}, {right - tube, y + tube, 0.2 + tube});
  add_screw(a, brace, Side::front, {cross, y, 0.2 + tube / 2.0}, "bolt", "Bolt of the folding brace",
            a.hard());
  a.part("wheels", "Wheels");
  add_wheel(a, "wheel_left", "left wheel", 0.0, tyre, back - 0.05, wheel, true);
  add_wheel(a, "wheel_right", "right wheel", width - tyre, width, back - 0.05, wheel, false);
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    add_wheel(a, "caster_" + side, side + " caster", is_left ? left : right - tube,
              is_left ? left + tube : right, front + 0.1, 0.095, is_left);
  }
  a.caution("Its owner needs it: agree on the time and give it back dry the same day.", k_practice);
  a.caution(
      "Pressure cushions are not steamed: ask the maker. Batteries, joystick and cables of a powered chair "
      "are never steamed.",
      k_practice);
}

void build_stroller(Assembly& a) {
  const double width = a.measure("width");
  const double depth = a.measure("depth");
  const double height = a.measure("height");
  const double tube = 0.02;
  const double seat = 0.5 * height;
  const double wheel = 0.085;
  const double cloth = 0.015;
  const double front = 0.2 * depth;
  const double back = 0.6 * depth;
  const Layers soft = a.cloth(Fill::none);
  a.part("seat", "Seat and straps");
  const Block pan = a.block("seat", {tube, front, seat - cloth}, {width - tube, back, seat});
  add_sling(a, pan, "seat", Side::top, {Side::left, Side::right}, {Side::front});
  const Block rest = a.block("back", {tube, back, seat}, {width - tube, back + cloth, 0.9 * height});
  add_sling(a, rest, "back", Side::front, {Side::left, Side::right}, {Side::top});
  a.along(rest, Side::back, Side::bottom,
          {"rear_fold", "Fold behind the seat", EdgeKind::fold, k_in_sight, soft});
  a.along(rest, Side::front, Side::bottom,
          {"crevice", "Crevice between seat and back", EdgeKind::fold, k_in_sight, soft});
  for (const double share : {0.35, 0.65}) {
    const std::string side = share < 0.5 ? "left" : "right";
    a.trace(rest, Side::front, {{share * width, back, seat + 0.05}, {share * width, back, 0.8 * height}},
            {side + "_strap", "Strap and its slot, " + side, EdgeKind::seam, k_in_sight, soft});
  }
  a.part("canopy", "Canopy");
  const Block canopy = a.block("canopy", {tube, 0.35 * depth, 0.9 * height},
                               {width - tube, back + cloth, 0.9 * height + 0.03});
  a.rim(canopy, Side::top, {"seam", "Seam of the canopy", EdgeKind::seam, k_in_sight, soft},
        {Side::left, Side::front, Side::right});
  a.rim(canopy, Side::bottom, {"fold", "Folds of the canopy", EdgeKind::fold, k_in_sight, soft},
        {Side::left, Side::right});
  a.rim(canopy, Side::back, {"zip", "Zip of the canopy", EdgeKind::zip, k_in_sight, soft}, {Side::top});
  a.part("basket", "Basket");
  const Block basket = a.block("basket", {tube, 0.3 * depth, 0.15}, {width - tube, back, 0.28});
  a.rim(basket, Side::top, {"hem", "Hem of the basket", EdgeKind::seam, k_in_sight, soft});
  a.rim(basket, Side::bottom, {"seam", "Bottom seam of the basket", EdgeKind::seam, k_out_of_sight, soft},
        {Side::front, Side::back});
  a.part("frame", "Frame and wheels");
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const Side outer = is_left ? Side::left : Side::right;
    const double x = is_left ? 0.0 : width - tube;
    const Block rail = a.block("rail_" + side, {x, front, seat - tube}, {x + tube, back, seat});
    const Block push = a.block("push_" + side, {x, back, 0.2}, {x + tube, back + tube, height});
    const Block leg = a.block("front_leg_" + side, {x, front - tube, 0.2}, {x + tube, front, seat});
    a.along(rail, Side::back, outer,
            {"hinge", "Folding hinge, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()});
    a.along(leg, Side::back, outer,
            {"joint", "Joint of the front leg, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()});
    a.along(push, Side::bottom, outer,
            {"joint", "Foot of the push tube, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()});
    const double from = is_left ? 0.0 : width - tube;
    add_wheel(a, "front_wheel_" + side, "front wheel, " + side, from, from + tube, front, wheel, is_left);
    add_wheel(a, "back_wheel_" + side, "back wheel, " + side, from, from + tube, back + tube, wheel, is_left);
  }
  a.block("grip", {tube, back, height - tube}, {width - tube, back + tube, height});
  a.caution("A child sits here: take off what may be washed, steam the rest, and let it dry before use.",
            k_practice);
}

}  // namespace lastegg::furniture
