// Night table, dresser, desk, wardrobe, bookcase.
#include <string>

#include "job/furniture/builders.h"
#include "job/furniture/case_pieces.h"

namespace lastegg::furniture {
namespace {

const char* k_drawers_out =
    "Take the drawers out, empty them into sealed bags, and turn each over: the runners and the bottoms hold "
    "most.";
const char* k_off_the_wall =
    "Move it off the wall, two people, and secure it again afterwards: a tall piece can fall forward.";

/// Drawers that fill a hollow, in columns of equal rows.
void fill_with_drawers(Assembly& a, const Hollow& hollow, int columns, int rows) {
  const double board = a.usual("wood.board");
  for (int column = 0; column < columns; ++column) {
    const Hollow stack = hollow.column(column, columns, board);
    const std::string of_column = columns > 1 ? std::to_string(column + 1) + "_" : "";
    const std::string words = columns > 1 ? ", column " + std::to_string(column + 1) : "";
    for (int row = 0; row < rows; ++row) {
      const std::string number = std::to_string(row + 1);
      add_drawer(a, "drawer_" + of_column + number, "drawer " + number + words, stack.row(row, rows));
    }
    if (column + 1 == columns) continue;
    const double x = stack.plan.right;
    slab(a, "divider_" + std::to_string(column + 1), {x, hollow.plan.front, x + board, hollow.plan.back},
         hollow.bottom, hollow.top);
  }
}

/// A chest on legs, all drawers.
void build_chest(Assembly& a, int columns, int rows) {
  const Plan plan{0.0, 0.0, a.measure("width"), a.measure("depth")};
  const double height = a.measure("height");
  const double legs = a.measure("leg_height");
  a.part("carcass", "Carcass");
  const Hollow hollow = add_carcass(a, "", plan, legs, height, false);
  a.part("drawers", "Drawers");
  fill_with_drawers(a, hollow, columns, rows);
  a.part("legs", "Legs");
  add_legs(a, plan.shrunk(0.01), legs, a.usual("leg.side"), a.wood());
  a.caution(k_drawers_out, k_practice);
}

}  // namespace

void build_night_table(Assembly& a) {
  build_chest(a, 1, a.count("drawers"));
}

void build_dresser(Assembly& a) {
  build_chest(a, a.count("columns"), a.count("drawers"));
  a.caution(k_off_the_wall, k_practice);
}

void build_desk(Assembly& a) {
  const double width = a.measure("width");
  const double depth = a.measure("depth");
  const double height = a.measure("height");
  const double board = a.usual("wood.board");
  const double pedestal = a.usual("desk.pedestal_width");
  const double under = height - board;
  a.part("top", "Top");
  const Block top = a.block("top", {0.0, 0.0, under}, {width, depth, height});
  a.rim(top, Side::bottom,
        {"underside", "Underside along the rim of the top", EdgeKind::wood_joint, k_in_sight, a.wood()},
        {Side::left, Side::back});
  a.part("frame", "Side and back panel");
  const Block side = a.block("side", {0.0, 0.02, 0.0}, {board, depth - 0.02, under});
  a.along(side, Side::top, Side::right,
          {"joint", "Joint of the left side under the top", EdgeKind::wood_joint, k_in_sight, a.wood()});
  const double y = depth - 0.1;
  const Block panel = a.block("back_panel", {board, y, under - 0.3}, {width - pedestal, y + board, under});
  a.rim(panel, Side::front, {"joint", "Joint of the back panel", EdgeKind::wood_joint, k_in_sight, a.wood()},
        {Side::left, Side::right, Side::top});
  a.part("pedestal", "Drawers");
  const Hollow hollow =
      add_carcass(a, "pedestal", {width - pedestal, 0.02, width, depth - 0.02}, 0.0, under, false);
  fill_with_drawers(a, hollow, 1, a.count("drawers"));
  a.caution(k_drawers_out, k_practice);
  a.caution("Screens, chargers, power strips and cables are taken off first and are never steamed.",
            k_practice);
}

void build_wardrobe(Assembly& a) {
  const double board = a.usual("wood.board");
  const Plan plan{0.0, board, a.measure("width"), a.measure("depth")};
  const double height = a.measure("height");
  const double plinth = a.usual("wardrobe.plinth");
  a.part("carcass", "Carcass");
  const Hollow hollow = add_carcass(a, "", plan, plinth, height, false);
  a.part("inside", "Shelf and rail");
  const double shelf = hollow.top - a.usual("wardrobe.shelf_below_top");
  add_shelf(a, "shelf", "shelf", hollow, shelf, k_out_of_sight);
  const double y = (hollow.plan.front + hollow.plan.back) / 2.0;
  const double rod = a.usual("metal.tube");
  const Block rail = a.block("rail", {hollow.plan.left, y - rod / 2.0, shelf - 0.06 - rod},
                             {hollow.plan.right, y + rod / 2.0, shelf - 0.06});
  for (const Side end : {Side::left, Side::right}) {
    a.around_whole(rail, end,
                   {name_of(end) + "_socket", "Socket of the hanging rail, " + name_of(end),
                    EdgeKind::metal_joint, k_out_of_sight, a.hard()});
  }
  a.part("doors", "Doors");
  const Hollow mouth{{plan.left, 0.0, plan.right, board}, plinth, height};
  add_doors(a, a.count("doors"), mouth, 0.0);
  a.part("plinth", "Plinth");
  add_plinth(a, plan, plinth);
  a.caution("Empty it into sealed bags first: clothes go to the dryer or wash, not under the steam head.",
            k_practice);
  a.caution(k_off_the_wall, k_practice);
}

void build_bookcase(Assembly& a) {
  const Plan plan{0.0, 0.0, a.measure("width"), a.measure("depth")};
  const double height = a.measure("height");
  const double plinth = a.usual("bookcase.plinth");
  a.part("carcass", "Carcass");
  const Hollow hollow = add_carcass(a, "", plan, plinth, height, true);
  // Rows of pin holes on the insides of the sides, front and rear.
  const double from = hollow.bottom + 0.1;
  const double to = hollow.top - 0.1;
  for (const bool is_left : {true, false}) {
    const Block side{is_left ? "side_left" : "side_right", "carcass", {}, {}};
    const double x = is_left ? hollow.plan.left : hollow.plan.right;
    for (const bool is_front : {true, false}) {
      const std::string row = is_front ? "front" : "rear";
      const double y = is_front ? plan.front + 0.04 : plan.back - 0.06;
      a.trace(side, is_left ? Side::right : Side::left, {{x, y, from}, {x, y, to}},
              {row + "_pin_holes",
               "Row of pin holes, " + std::string(is_left ? "left" : "right") + " side, " + row,
               EdgeKind::screw_hole, k_in_sight, a.wood()});
    }
  }
  a.part("shelves", "Shelves");
  const int shelves = a.count("shelves");
  for (int i = 1; i <= shelves; ++i) {
    const std::string number = std::to_string(i);
    add_shelf(a, "shelf_" + number, "shelf " + number + " from below", hollow,
              hollow.bottom + hollow.height() * i / (shelves + 1.0), k_in_sight);
  }
  a.part("plinth", "Plinth");
  add_plinth(a, plan, plinth);
  a.caution("Books are not steamed: bag them and treat them by cold or in a hot chamber.", k_practice);
  a.caution(k_off_the_wall, k_practice);
}

}  // namespace lastegg::furniture
