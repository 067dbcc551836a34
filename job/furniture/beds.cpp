// Mattresses, box springs and futons.
#include <optional>
#include <string>

#include "job/furniture/builders.h"
#include "job/furniture/mattress.h"
#include "job/furniture/pieces.h"

namespace lastegg::furniture {
namespace {

MattressRequest mattress_from(const Assembly& a) {
  const ItemRequest& request = a.request();
  const auto given = [&](std::string_view key) {
    const auto found = request.measures.find(key);
    return found == request.measures.end() ? std::nullopt : std::optional(found->second);
  };
  MattressRequest mattress;
  mattress.size = request.size.value_or(mattress.size);
  mattress.width_metres = given("width_metres");
  mattress.length_metres = given("length_metres");
  mattress.thickness_metres = given("thickness_metres");
  mattress.base_height_metres = given("base_height_metres");
  mattress.covering = a.covering();
  return mattress;
}

}  // namespace

void build_mattress_item(Assembly& a) {
  a.take(build_mattress(mattress_from(a)));
}

void build_floor_mattress(Assembly& a) {
  MattressRequest mattress = mattress_from(a);
  mattress.base_height_metres = 0.0;
  auto built = build_mattress(mattress);
  if (built) {
    // That it lies on the floor is of its kind and no measure.
    std::erase_if(built->dimensions,
                  [](const UsedDimension& used) { return used.name == "mattress.base_height"; });
  }
  a.take(std::move(built));
  a.caution("Lift it off the floor first: its underside and the floor below it hold most.", k_practice);
}

void build_box_spring(Assembly& a) {
  const Plan plan{0.0, 0.0, a.measure("width"), a.measure("length")};
  const double legs = a.measure("leg_height");
  const double top = legs + a.measure("height");
  a.part("cover", "Cover");
  const Block base = slab(a, "base", plan, legs, top);
  a.rim(base, Side::top, {"welt", "Welt around the top", EdgeKind::welt, k_in_sight, a.cloth(Fill::wood)});
  const double guard = a.usual("box_spring.corner_guard");
  for (const Side side : {Side::left, Side::right}) {
    const double x = side == Side::left ? plan.left : plan.right;
    for (const Side end : {Side::front, Side::back}) {
      const double y = end == Side::front ? plan.front + guard : plan.back - guard;
      const std::string where = name_of(end) + "_" + name_of(side);
      const std::string words = name_of(end) + " " + name_of(side);
      a.along(
          base, side, end,
          {where + "_seam", "Seam at the corner, " + words, EdgeKind::seam, k_in_sight, a.cloth(Fill::wood)});
      a.trace(base, side, {{x, y, legs}, {x, y, legs + (top - legs) / 2.0}},
              {where + "_guard", "Free side of the corner guard, " + words, EdgeKind::gap, k_in_sight,
               a.cloth(Fill::wood)});
    }
  }
  a.rim(base, Side::bottom,
        {"staples", "Staple line of the cover under the frame", EdgeKind::staple_line, k_out_of_sight,
         a.cloth(Fill::wood)});
  a.part("underside", "Underside");
  const double below = add_dust_cover(a, plan, legs);
  const double leg = a.usual("leg.side");
  add_legs(a, plan.shrunk(a.usual("leg.inset")), below, leg, a.wood());
  a.caution("Stand it on its side, two people; the cloth beneath is opened only with consent.", k_practice);
}

void build_futon(Assembly& a) {
  const double arm = a.usual("wood.post");
  const double across = a.measure("length");  // the fold runs along the mattress
  const double seat = a.measure("width") / 2.0;
  const double thickness = a.measure("thickness");
  const double deck = a.measure("seat_height") - thickness;
  const double slat = a.usual("slat.thickness");
  const double rail = a.usual("slat.ledge");
  const double back = seat + thickness + slat + rail;
  const double left = arm;
  const double right = arm + across;
  const double top = deck + seat;
  const Layers foam = a.cloth(Fill::foam);

  a.part("mattress", "Mattress");
  const Block lower = a.block("seat_half", {left, 0.0, deck}, {right, seat, deck + thickness});
  const Block upper = a.block("back_half", {left, seat, deck}, {right, seat + thickness, top + thickness});
  a.rim(lower, Side::top, {"tape", "Upper tape edge of the seat half", EdgeKind::tape_edge, k_in_sight, foam},
        {Side::left, Side::front, Side::right});
  a.rim(lower, Side::bottom,
        {"lower_tape", "Lower tape edge of the seat half", EdgeKind::tape_edge, k_out_of_sight, foam},
        {Side::left, Side::front, Side::right});
  a.along(lower, Side::top, Side::back,
          {"fold", "Fold between seat and back", EdgeKind::fold, k_in_sight, foam});
  a.rim(upper, Side::back,
        {"tape", "Rear tape edge of the back half", EdgeKind::tape_edge, k_out_of_sight, foam},
        {Side::left, Side::top, Side::right});
  a.along(upper, Side::front, Side::top,
          {"front_tape", "Front tape edge of the back half", EdgeKind::tape_edge, k_in_sight, foam});
  for (const int row : {1, 2}) {
    const std::string number = std::to_string(row);
    const double share = row / 3.0;
    a.trace(lower, Side::top,
            {{left + 0.05, share * seat, deck + thickness}, {right - 0.05, share * seat, deck + thickness}},
            {"tufts_" + number, "Tufts of the seat half, row " + number, EdgeKind::tuft, k_in_sight, foam});
    const double z = deck + thickness + share * seat;
    a.trace(upper, Side::front, {{left + 0.05, seat, z}, {right - 0.05, seat, z}},
            {"tufts_" + number, "Tufts of the back half, row " + number, EdgeKind::tuft, k_in_sight, foam});
  }

  a.part("frame", "Frame");
  const int slats = 7;
  const double width = a.usual("slat.width");
  for (int i = 0; i < slats; ++i) {
    const double x = left + (right - left) * (static_cast<double>(i) + 0.5) / slats - width / 2.0;
    const std::string number = std::to_string(i + 1);
    a.block("seat_slat_" + number, {x, 0.0, deck - slat}, {x + width, seat, deck});
    a.block("back_slat_" + number, {x, seat + thickness, deck}, {x + width, seat + thickness + slat, top});
  }
  const auto carrier = [&](const std::string& name, const std::string& words, const Vertex& low,
                           const Vertex& high, Side touching) {
    const Block beam = a.block(name, low, high);
    a.along(beam, touching, touching == Side::top ? Side::front : Side::bottom,
            {"slat_ends", "Slat ends on the " + words, EdgeKind::wood_joint, k_out_of_sight, a.wood()});
    for (const Side end : {Side::left, Side::right}) {
      a.along(beam, end, touching == Side::top ? Side::bottom : Side::back,
              {name_of(end) + "_joint", "Joint of the " + words + " at the " + name_of(end) + " arm",
               EdgeKind::wood_joint, k_in_sight, a.wood()});
    }
  };
  const double under = deck - slat;
  carrier("front_beam", "front beam", {left, 0.0, under - rail}, {right, rail, under}, Side::top);
  carrier("rear_beam", "rear beam", {left, seat - rail, under - rail}, {right, seat, under}, Side::top);
  carrier("back_low_beam", "lower beam of the back", {left, seat + thickness + slat, deck},
          {right, back, deck + rail}, Side::front);
  carrier("back_top_beam", "upper beam of the back", {left, seat + thickness + slat, top - rail},
          {right, back, top}, Side::front);
  a.part("arms", "Arms");
  const double arm_height = deck + thickness + 0.15;
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? 0.0 : right;
    const Side outer = is_left ? Side::left : Side::right;
    for (const bool is_front : {true, false}) {
      const std::string end = is_front ? "front" : "back";
      const double y = is_front ? 0.0 : back - arm;
      const Block post = a.block("arm_" + side + "_" + end, {x, y, 0.0}, {x + arm, y + arm, arm_height});
      a.along(post, Side::top, outer,
              {"joint", "Joint of the " + side + " arm at its " + end + " post", EdgeKind::wood_joint,
               k_in_sight, a.wood()});
      add_screw(a, post, outer, {is_left ? 0.0 : right + arm, y + arm / 2.0, under - rail / 2.0}, "bolt",
                "Bolt of the " + side + " arm, " + end, a.wood());
    }
    a.block("arm_" + side + "_top", {x, 0.0, arm_height}, {x + arm, back, arm_height + rail});
  }
}

}  // namespace lastegg::furniture
