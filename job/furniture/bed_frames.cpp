// Frames that carry a mattress: slatted, metal, bunk, cot, motorised. The foot is at the front.
#include <string>

#include "job/furniture/builders.h"
#include "job/furniture/pieces.h"

namespace lastegg::furniture {
namespace {

constexpr double k_rail_height = 0.14;       // of a wooden bed rail, as drawn: estimate
constexpr double k_slats_below_rail = 0.05;  // the mattress lies this deep in the frame: estimate

/// Rails with slats in them, at the height of the rails' upper side.
Rails add_deck(Assembly& a, const std::string& name, const std::string& title, const Plan& inner,
               double top) {
  const Rails rails =
      add_rails(a, name + "_rail", title + " rail", inner, a.usual("wood.rail"), top - k_rail_height, top);
  add_slats(a, name, title, inner, top - k_slats_below_rail);
  return rails;
}

/// Bolts through the outer sides of the posts where the side rails end.
void add_bolts(Assembly& a, const std::array<Block, 4>& posts, double z, const std::string& id,
               const std::string& title) {
  for (const Block& post : posts) {
    const Side outer = post.name.ends_with("left") ? Side::left : Side::right;
    Vertex centre = middle_of(post, outer);
    centre.z = z;
    add_screw(a, post, outer, centre, id, title + ", " + post.name.substr(5), a.wood());
  }
}

}  // namespace

void build_slatted_frame(Assembly& a) {
  const double post = a.usual("wood.post");
  const double height = a.measure("height");
  const Plan inner{post, post, post + a.measure("width"), post + a.measure("length")};
  a.part("frame", "Rails and posts");
  const auto posts = add_posts(a, inner, post, height);
  add_bolts(a, posts, height - k_rail_height / 2.0, "bolt", "Bolt of the side rail");
  a.part("slats", "Slats");
  add_deck(a, "deck", "bed", inner, height);
  const double middle = (inner.left + inner.right) / 2.0;
  const double y = (inner.front + inner.back) / 2.0;
  const double half = a.usual("slat.ledge") / 2.0;
  const Block prop = a.block("prop", {middle - half, y - half, 0.0},
                             {middle + half, y + half, height - k_slats_below_rail - a.usual("slat.ledge")});
  a.around_whole(prop, Side::top,
                 {"joint", "Joint of the middle leg", EdgeKind::leg_joint, k_out_of_sight, a.wood()});
}

void build_metal_frame(Assembly& a) {
  const double tube = a.usual("metal.angle");
  const double width = a.measure("width");
  const double length = a.measure("length");
  const double top = a.measure("height");
  a.part("frame", "Rails and cross bars");
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? 0.0 : width - tube;
    const Block rail = a.block("rail_" + side, {x, 0.0, top - tube}, {x + tube, length, top});
    a.along(rail, Side::top, is_left ? Side::right : Side::left,
            {"angle", "Inside angle of the " + side + " rail, under the base", EdgeKind::metal_joint,
             k_out_of_sight, a.hard()});
    const Block plate =
        a.block("bracket_" + side, {x, length, top - tube}, {x + tube, length + 0.004, top + 0.12});
    a.along(plate, Side::front, Side::bottom,
            {"joint", "Foot of the headboard bracket, " + side, EdgeKind::metal_joint, k_in_sight, a.hard()});
    for (const double up : {0.04, 0.09}) {
      const std::string which = up < 0.05 ? "lower" : "upper";
      add_screw(a, plate, Side::back, {x + tube / 2.0, length + 0.004, top + up}, which + "_bolt",
                "Bolt of the headboard bracket, " + side + ", " + which, a.hard(), k_out_of_sight);
    }
  }
  int number = 1;
  for (const double share : {0.1, 0.5, 0.9}) {
    const double front = share * length - tube / 2.0;
    const std::string count = std::to_string(number++);
    const Block bar = a.block("bar_" + count, {tube, front, top - tube}, {width - tube, front + tube, top});
    for (const Side end : {Side::left, Side::right}) {
      a.along(
          bar, end, Side::front,
          {name_of(end) + "_joint", "Cross bar " + count + " from the foot at the " + name_of(end) + " rail",
           EdgeKind::metal_joint, k_in_sight, a.hard()});
    }
    for (const bool is_left : {true, false}) {
      const std::string side = is_left ? "left" : "right";
      const double x = is_left ? 0.0 : width - tube;
      const Block leg =
          a.block("leg_" + side + "_" + count, {x, front, 0.0}, {x + tube, front + tube, top - tube});
      a.around_whole(leg, Side::top,
                     {"joint", "Socket of leg " + count + " from the foot, " + side, EdgeKind::leg_joint,
                      k_out_of_sight, a.hard()});
    }
  }
}

void build_bunk_bed(Assembly& a) {
  const double post = a.usual("bunk_bed.post");
  const double height = a.measure("height");
  const double lower = a.usual("bunk_bed.lower_rail_height");
  const double upper = height - a.usual("bunk_bed.guard_height");
  const double rail = a.usual("wood.rail");
  const Plan inner{post, post, post + a.measure("width"), post + a.measure("length")};
  a.part("posts", "Posts");
  const auto posts = add_posts(a, inner, post, height);
  add_bolts(a, posts, lower - k_rail_height / 2.0, "lower_bolt", "Bolt of the lower side rail");
  add_bolts(a, posts, upper - k_rail_height / 2.0, "upper_bolt", "Bolt of the upper side rail");
  a.part("lower", "Lower bed");
  add_deck(a, "lower", "lower bed", inner, lower);
  a.part("upper", "Upper bed");
  add_deck(a, "upper", "upper bed", inner, upper);
  const double guard_top = height - 0.03;
  add_rails(a, "guard", "guard rail", inner, rail, guard_top - 0.08, guard_top);

  a.part("ladder", "Ladder");
  const double x = inner.right + post;
  const double reach = 0.4;
  const double y = inner.front + 0.1;
  const double stile = 0.04;
  const Block front = a.block("ladder_front", {x, y, 0.0}, {x + rail, y + stile, upper});
  const Block back = a.block("ladder_back", {x, y + reach - stile, 0.0}, {x + rail, y + reach, upper});
  constexpr int k_rungs = 4;
  for (int i = 1; i <= k_rungs; ++i) {
    const double z = upper * static_cast<double>(i) / (k_rungs + 1);
    a.block("rung_" + std::to_string(i), {x, y + stile, z}, {x + rail, y + reach - stile, z + 0.03});
  }
  a.along(front, Side::right, Side::back,
          {"rung_ends", "Ends of the rungs, front stile", EdgeKind::wood_joint, k_in_sight, a.wood()});
  a.along(back, Side::right, Side::front,
          {"rung_ends", "Ends of the rungs, back stile", EdgeKind::wood_joint, k_in_sight, a.wood()});
}

void build_cot(Assembly& a) {
  const double post = a.usual("cot.post");
  const double height = a.measure("height");
  const double rail = a.usual("wood.rail");
  const double bar = a.usual("cot.bar");
  const Plan inner{post, post, post + a.measure("width"), post + a.measure("length")};
  const double low = a.usual("cot.lower_rail_top");
  const double high = height - 0.05;
  a.part("sides", "Sides");
  const auto posts = add_posts(a, inner, post, height);
  const Rails lower = add_rails(a, "lower_rail", "lower rail", inner, rail, low - 0.05, low);
  const Rails upper = add_rails(a, "upper_rail", "upper rail", inner, rail, high, height);
  const auto bars = [&](const Block& under, const Block& over, const std::string& side, Side outer) {
    const bool across = side == "front" || side == "back";
    const double from = across ? under.low.x : under.low.y;
    const double to = across ? under.high.x : under.high.y;
    const int count = static_cast<int>((to - from) / a.usual("cot.bar_pitch"));
    for (int i = 1; i <= count; ++i) {
      const double at =
          from + (to - from) * static_cast<double>(i) / static_cast<double>(count + 1) - bar / 2.0;
      const std::string name = "bar_" + side + "_" + std::to_string(i);
      if (across) {
        const double y = (under.low.y + under.high.y - bar) / 2.0;
        a.block(name, {at, y, low}, {at + bar, y + bar, high});
      } else {
        const double x = (under.low.x + under.high.x - bar) / 2.0;
        a.block(name, {x, at, low}, {x + bar, at + bar, high});
      }
    }
    a.along(under, Side::top, outer,
            {"bar_ends", "Lower ends of the bars, " + side, EdgeKind::wood_joint, k_in_sight, a.wood()});
    a.along(over, Side::bottom, outer,
            {"bar_ends", "Upper ends of the bars, " + side, EdgeKind::wood_joint, k_in_sight, a.wood()});
  };
  bars(lower.left, upper.left, "left", Side::left);
  bars(lower.right, upper.right, "right", Side::right);
  bars(lower.front, upper.front, "front", Side::front);
  bars(lower.back, upper.back, "back", Side::back);
  add_bolts(a, posts, low + 0.03, "bolt", "Bolt of the mattress base");
  a.part("base", "Mattress base");
  add_slats(a, "base", "mattress base", inner, low);
  a.caution(
      "A child sleeps here: nothing but dry steam and hot water, and dry before the mattress goes back.",
      k_practice);
}

void build_hospital_bed(Assembly& a) {
  const double width = a.measure("width");
  const double length = a.measure("length");
  const double top = a.measure("height");
  const double tube = a.usual("metal.tube");
  const double plate = 0.02;
  const double castor = 0.1;
  const double board = 0.03;
  const double frame_bottom = top - plate - tube;
  a.part("underframe", "Underframe and castors");
  add_legs(a, {0.0, 0.1, width, length - 0.1}, castor, tube, a.hard());
  for (const bool is_left : {true, false}) {
    const double x = is_left ? 0.0 : width - tube;
    const std::string side = is_left ? "left" : "right";
    const Block beam = a.block("chassis_" + side, {x, 0.1, castor}, {x + tube, length - 0.1, castor + tube});
    a.along(
        beam, Side::top, is_left ? Side::right : Side::left,
        {"angle", "Inside of the chassis beam, " + side, EdgeKind::metal_joint, k_out_of_sight, a.hard()});
  }
  for (const bool is_left : {true, false}) {
    const double x = is_left ? 0.0 : width - tube;
    for (const bool at_head : {false, true}) {
      const std::string where = std::string(is_left ? "left" : "right") + (at_head ? "_head" : "_foot");
      const std::string words = std::string(is_left ? "left" : "right") + (at_head ? ", head" : ", foot");
      const double y = (at_head ? 0.75 : 0.25) * length;
      const double slim = 0.004;  // on each side, within the tubes it joins
      const Block lift =
          a.block("lift_" + where, {x + slim, y, castor + tube}, {x + tube - slim, y + tube, frame_bottom});
      a.around_whole(
          lift, Side::top,
          {"joint", "Head of the lift, " + words, EdgeKind::metal_joint, k_out_of_sight, a.hard()});
    }
  }
  a.block("chassis_cross", {tube, 0.5 * length, castor}, {width - tube, 0.5 * length + tube, castor + tube});
  const Block motor = a.block("motor", {width / 2.0 - 0.1, 0.45 * length, castor + tube},
                              {width / 2.0 + 0.1, 0.6 * length, frame_bottom});
  a.around_whole(
      motor, Side::bottom,
      {"cover", "Seam of the motor housing", EdgeKind::electrical_cover, k_out_of_sight, a.wired()});

  a.part("platform", "Platform");
  for (const bool is_left : {true, false}) {
    const double x = is_left ? 0.0 : width - tube;
    const std::string side = is_left ? "left" : "right";
    const Block rail = a.block("frame_" + side, {x, 0.0, frame_bottom}, {x + tube, length, top - plate});
    a.along(
        rail, Side::bottom, is_left ? Side::right : Side::left,
        {"angle", "Inside of the platform frame, " + side, EdgeKind::metal_joint, k_out_of_sight, a.hard()});
    const double from = is_left ? -tube : width;
    for (const bool at_head : {false, true}) {
      const std::string end = at_head ? "head" : "foot";
      const double start = (at_head ? 0.55 : 0.1) * length;
      const Block guard = a.block("guard_" + side + "_" + end, {from, start, frame_bottom},
                                  {from + tube, start + 0.35 * length, top + 0.35});
      a.along(guard, Side::bottom, is_left ? Side::left : Side::right,
              {"hinge", "Hinges of the side rail, " + side + ", " + end, EdgeKind::metal_joint, k_in_sight,
               a.hard()});
    }
  }
  constexpr int k_sections = 4;
  const double step = length / k_sections;
  for (int i = 0; i < k_sections; ++i) {
    const std::string number = std::to_string(i + 1);
    const double end = i + 1 < k_sections ? 0.01 : 0.0;
    const Block section = a.block("section_" + number, {0.0, static_cast<double>(i) * step, top - plate},
                                  {width, static_cast<double>(i + 1) * step - end, top});
    a.rim(section, Side::top,
          {"rim", "Rim of platform section " + number + " from the foot", EdgeKind::metal_joint, k_in_sight,
           a.hard()},
          {Side::left, Side::right});
    if (end > 0.0) {
      a.along(section, Side::top, Side::back,
              {"gap", "Gap behind platform section " + number + " from the foot", EdgeKind::gap, k_in_sight,
               a.hard()});
    }
  }
  a.part("boards", "Head and foot boards");
  for (const bool at_head : {false, true}) {
    const std::string end = at_head ? "head" : "foot";
    const double y = at_head ? length : -board;
    const Block panel =
        a.block(end + "_board", {0.0, y, frame_bottom}, {width, y + board, top + (at_head ? 0.5 : 0.35)});
    a.trace(panel, at_head ? Side::front : Side::back,
            {{0.0, at_head ? y : 0.0, top}, {width, at_head ? y : 0.0, top}},
            {"gap", "Gap between platform and " + end + " board", EdgeKind::gap, k_in_sight, a.hard()});
    a.rim(panel, Side::bottom,
          {"socket", "Sockets of the " + end + " board", EdgeKind::metal_joint, k_in_sight, a.hard()},
          {at_head ? Side::back : Side::front});
  }
  a.caution(
      "Motor, hand control and cables are never steamed: unplug the bed first, and wipe or isolate them.",
      k_practice);
  a.caution("Ask who looks after the patient before the bed is moved, lowered or taken out of use.",
            k_practice);
  a.caution(
      "Oxygen, pumps and air mattresses are switched off and taken away by their keepers before any heat.",
      k_practice);
}

}  // namespace lastegg::furniture
