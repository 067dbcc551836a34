#include "job/furniture/case_pieces.h"

#include <string>
#include <vector>

namespace lastegg::furniture {
namespace {

/// Left, back and right side of a board as seen from the open front, as one line on its face.
std::vector<Vertex> inside_joint(const Block& board, double z) {
  return {{board.low.x, board.low.y, z},
          {board.low.x, board.high.y, z},
          {board.high.x, board.high.y, z},
          {board.high.x, board.low.y, z}};
}

}  // namespace

Hollow Hollow::row(int number, int count) const {
  const double step = height() / count;
  return {plan, top - (number + 1) * step, top - number * step};
}

Hollow Hollow::column(int number, int count, double board) const {
  const double step = (plan.width() + board) / count;
  const double left = plan.left + number * step;
  return {{left, plan.front, left + step - board, plan.back}, bottom, top};
}

Hollow add_carcass(Assembly& a, const std::string& name, const Plan& outer, double bottom, double top,
                   bool open) {
  const double board = a.usual("wood.board");
  const double panel = a.usual("wood.back_panel");
  const Plan inner{outer.left + board, outer.front, outer.right - board, outer.back - panel};
  const auto named = [&](const std::string& piece) { return name.empty() ? piece : name + "_" + piece; };
  slab(a, named("side_left"), {outer.left, outer.front, inner.left, outer.back}, bottom, top);
  slab(a, named("side_right"), {inner.right, outer.front, outer.right, outer.back}, bottom, top);
  const Block base = slab(a, named("bottom"), inner, bottom, bottom + board);
  const Block lid = slab(a, named("top"), inner, top - board, top);
  const Block back = slab(a, named("back"), {inner.left, inner.back, inner.right, outer.back}, bottom, top);
  a.trace(base, Side::top, inside_joint(base, bottom + board),
          {"joint", "Inside joint around the bottom", EdgeKind::wood_joint, open, a.wood()});
  a.trace(lid, Side::bottom, inside_joint(lid, top - board),
          {"joint", "Inside joint around the top", EdgeKind::wood_joint, open, a.wood()});
  a.rim(lid, Side::top,
        {"seam", "Joint of the top with the side", EdgeKind::wood_joint, k_in_sight, a.wood()},
        {Side::left, Side::right});
  a.rim(back, Side::back,
        {"groove", "Groove around the back panel", EdgeKind::gap, k_out_of_sight, a.wood()});
  a.rim(base, Side::bottom,
        {"seam", "Joint of the bottom with the side, from below", EdgeKind::wood_joint, k_out_of_sight,
         a.wood()},
        {Side::left, Side::right});
  return {inner, bottom + board, top - board};
}

Block add_shelf(Assembly& a, const std::string& name, const std::string& title, const Hollow& hollow,
                double z, bool in_sight) {
  const double board = a.usual("wood.board");
  const Block shelf = slab(a, name, hollow.plan, z, z + board);
  a.trace(shelf, Side::top, inside_joint(shelf, z + board),
          {"upper_joint", "Joint around the upper side of the " + title, EdgeKind::wood_joint, in_sight,
           a.wood()});
  a.trace(shelf, Side::bottom, inside_joint(shelf, z),
          {"lower_joint", "Joint around the lower side of the " + title, EdgeKind::wood_joint, in_sight,
           a.wood()});
  return shelf;
}

void add_drawer(Assembly& a, const std::string& name, const std::string& title, const Hollow& hollow) {
  const double board = a.usual("wood.board");
  const double gap = a.usual("drawer.gap");
  const double runner = a.usual("drawer.runner");
  const Plan& plan = hollow.plan;
  const double low = hollow.bottom + gap;
  const double high = hollow.top - gap;
  const double middle = (low + high) / 2.0;
  const double from = plan.front + board;
  const Block front =
      slab(a, name + "_front", {plan.left + gap, plan.front, plan.right - gap, from}, low, high);
  a.around_whole(front, Side::front,
                 {"gap", "Gap around the front of the " + title, EdgeKind::gap, k_in_sight, a.wood()});
  add_screw(a, front, Side::front, middle_of(front, Side::front), "knob", "Foot of the knob of the " + title,
            a.wood());
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? plan.left : plan.right - runner;
    const Block slide = slab(a, name + "_runner_" + side, {x, from, x + runner, plan.back - 0.02},
                             middle - runner / 2.0, middle + runner / 2.0);
    a.along(
        slide, Side::top, is_left ? Side::left : Side::right,
        {"slot", "Runner of the " + title + ", " + side, EdgeKind::drawer_runner, k_out_of_sight, a.wood()});
  }
  const Block box = slab(a, name + "_box", {plan.left + runner, from, plan.right - runner, plan.back - 0.02},
                         low + 0.005, high - 0.01);
  a.around_whole(
      box, Side::bottom,
      {"groove", "Groove around the bottom of the " + title, EdgeKind::wood_joint, k_out_of_sight, a.wood()});
  for (const Side side : {Side::left, Side::right}) {
    a.along(box, Side::back, side,
            {name_of(side) + "_corner", "Rear " + name_of(side) + " corner of the " + title,
             EdgeKind::wood_joint, k_out_of_sight, a.wood()});
  }
}

void add_doors(Assembly& a, int count, const Hollow& hollow, double y) {
  const double board = a.usual("wood.board");
  const double gap = a.usual("drawer.gap");
  for (int i = 0; i < count; ++i) {
    const Hollow opening = hollow.column(i, count, 0.0);
    const std::string number = std::to_string(i + 1);
    const Block door =
        slab(a, "door_" + number, {opening.plan.left + gap, y, opening.plan.right - gap, y + board},
             hollow.bottom + gap, hollow.top - gap);
    a.around_whole(
        door, Side::front,
        {"gap", "Gap around door " + number + " from the left", EdgeKind::gap, k_in_sight, a.wood()});
    // Doors are hung on the outer side of a pair.
    const Side hung = i % 2 == 0 ? Side::left : Side::right;
    a.along(door, Side::back, hung,
            {"hinges", "Hinges of door " + number + ", door open", EdgeKind::metal_joint, k_out_of_sight,
             a.hard()});
  }
}

void add_plinth(Assembly& a, const Plan& outer, double height) {
  const double board = a.usual("wood.board");
  const Plan front{outer.left + board, outer.front + 0.03, outer.right - board, outer.front + 0.03 + board};
  for (const bool is_left : {true, false}) {
    const double x = is_left ? outer.left : outer.right - board;
    slab(a, std::string("plinth_") + (is_left ? "left" : "right"), {x, outer.front, x + board, outer.back},
         0.0, height);
  }
  const Block plinth = slab(a, "plinth", front, 0.0, height);
  a.rim(plinth, Side::front, {"gap", "Gap of the plinth", EdgeKind::gap, k_in_sight, a.wood()},
        {Side::bottom, Side::top});
  a.rim(plinth, Side::back,
        {"joint", "Joint behind the plinth", EdgeKind::wood_joint, k_out_of_sight, a.wood()},
        {Side::left, Side::right});
}

}  // namespace lastegg::furniture
