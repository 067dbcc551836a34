// A corner sofa: a main run across the back and a return that comes forward on the right.
#include <string>
#include <vector>

#include "job/furniture/builders.h"
#include "job/furniture/cushions.h"
#include "job/furniture/pieces.h"
#include "words/say.h"

namespace lastegg::furniture {
namespace {

struct Corner {
  double width, length, depth;  // over all: across, front to back, of one run
  double arm, frame;            // thickness of an arm and of the back
  double legs, deck, seat, arm_top, frame_top, top;
  double seat_thickness, seat_crown, back_thickness, back_crown, bulge, rim;

  double main_front() const { return length - depth; }
  double return_left() const { return width - depth; }
  double inside_back() const { return length - frame; }
  double inside_right() const { return width - frame; }
  double back_reach() const { return back_thickness + back_crown; }
};

/// A stretch of one run that holds a cushion: along x on the main run, along y on the return.
struct Place {
  bool on_return;
  double from, to;
  std::string name, title;
};

Corner measured(Assembly& a) {
  Corner m{};
  m.width = a.measure("width");
  m.length = a.measure("length");
  m.depth = a.measure("depth");
  m.top = a.measure("height");
  m.seat = a.measure("seat_height");
  m.arm = a.usual("sofa.arm_width");
  m.frame = a.usual("sofa.back_frame_thickness");
  m.legs = a.usual("sofa.leg_height");
  m.seat_thickness = a.usual("sofa.seat_cushion_thickness");
  m.seat_crown = a.usual("sofa.seat_crown");
  m.back_thickness = a.usual("sofa.back_cushion_thickness");
  m.back_crown = a.usual("sofa.back_crown");
  m.bulge = a.usual("sofa.cushion_bulge");
  m.rim = a.usual("sofa.cushion_rim");
  m.deck = m.seat - m.seat_crown - m.seat_thickness;
  m.arm_top = m.seat + a.usual("sectional.arm_above_seat");
  m.frame_top = m.top - a.usual("sofa.back_frame_below_cushions");
  return m;
}

/// Seats from the left arm to the corner, the corner, and seats from the corner to the front arm.
std::vector<Place> places(const Corner& m, int main_seats, int return_seats) {
  std::vector<Place> all;
  const auto share_out = [&](bool on_return, double from, double to, int seats, const std::string& run) {
    const double step = (to - from) / static_cast<double>(seats);
    for (int i = 0; i < seats; ++i) {
      const std::string number = std::to_string(i + 1);
      all.push_back({on_return, from + static_cast<double>(i) * step,
                     from + static_cast<double>(i + 1) * step, run + "_" + number,
                     (run == "main" ? "seat " : "seat of the return ") + number});
    }
  };
  share_out(false, m.arm, m.return_left(), main_seats, "main");
  all.push_back({false, m.return_left(), m.inside_right(), "corner", "the corner"});
  share_out(true, m.arm, m.main_front(), return_seats, "return");
  return all;
}

void add_seat(Assembly& a, const Corner& m, const Place& place, const Layers& layers) {
  const double x = place.on_return ? m.return_left() : place.from;
  const double y = place.on_return ? place.from : m.main_front();
  const double deep = m.depth - m.frame;
  const double wide = place.to - place.from;
  const CushionShape shape = cushion_shape(place.on_return ? deep : wide, place.on_return ? wide : deep,
                                           m.seat_thickness, m.bulge, m.rim, m.seat_crown);
  const Cushion cushion = boxed_cushion("seat_" + place.name, a.current_part(),
                                        {{x, y, m.deck}, {1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}, {0.0, 0.0, 1.0}},
                                        shape, seat_cushion_names());
  a.body(cushion.body);
  // Out of sight: welts under the back cushions, and the lower ones but at the free front.
  const bool is_corner = place.name == "corner";
  const bool right_hidden = place.on_return || is_corner;
  const bool back_hidden = !place.on_return;
  add_welts(
      a.item(), cushion, seat_cushion_names(), "cushion of " + place.title,
      {false, right_hidden, back_hidden, false, place.on_return || is_corner, true, true, !place.on_return},
      layers);
  const std::size_t rear = place.on_return ? 1 : 2;
  add_zip(a.item(), cushion, seat_cushion_names(), "cushion of " + place.title, rear,
          place.on_return ? std::array<std::string, 2>{"front", "back"}
                          : std::array<std::string, 2>{"right", "left"},
          layers);
  // Each cushion parts from the one after it; the first of each run also from its arm.
  const std::size_t next = place.on_return ? 2 : 1;
  const auto crevice = [&](std::size_t side, const std::string& id, const std::string& title) {
    add_edge(a.item(), {cushion.body.name + "." + id,
                        title,
                        EdgeKind::fold,
                        a.current_part(),
                        {cushion.body.name + "." + seat_cushion_names().sides[side]},
                        {cushion.outer_full[side], cushion.outer_full[(side + 1) % 4]},
                        true,
                        layers});
  };
  if (place.name == "main_1")
    crevice(3, "arm_crevice", "Crevice between " + place.title + " and the left arm");
  if (place.name == "return_1")
    crevice(0, "arm_crevice", "Crevice between " + place.title + " and the front arm");
  if (!is_corner) crevice(next, "crevice", "Crevice behind " + place.title + ", towards the corner");
}

void add_back(Assembly& a, const Corner& m, const Place& place, const Layers& layers) {
  const std::string body = "back_" + place.name;
  const CushionFrame frame =
      place.on_return
          ? CushionFrame{{m.inside_right(), place.from, m.seat},
                         {0.0, 1.0, 0.0},
                         {0.0, 0.0, 1.0},
                         {-1.0, 0.0, 0.0}}
          : CushionFrame{
                {place.from, m.inside_back(), m.seat}, {1.0, 0.0, 0.0}, {0.0, 0.0, 1.0}, {0.0, -1.0, 0.0}};
  const CushionShape shape =
      cushion_shape(place.to - place.from, m.top - m.seat, m.back_thickness, m.bulge, m.rim, m.back_crown);
  const Cushion cushion = boxed_cushion(body, a.current_part(), frame, shape, back_cushion_names());
  a.body(cushion.body);
  add_welts(a.item(), cushion, back_cushion_names(), "back cushion of " + place.title,
            {false, false, false, false, true, true, false, true}, layers);
  add_zip(a.item(), cushion, back_cushion_names(), "back cushion of " + place.title, 0, {"left", "right"},
          layers);
  const auto crevice = [&](std::size_t side, const std::string& id, const std::string& title) {
    add_edge(a.item(), {body + "." + id,
                        title,
                        EdgeKind::fold,
                        a.current_part(),
                        {body + "." + back_cushion_names().sides[side]},
                        {cushion.outer_full[side], cushion.outer_full[(side + 1) % 4]},
                        true,
                        layers});
  };
  crevice(0, "seat_crevice", "Crevice between seat and back cushion, " + place.title);
  if (place.name == "main_1" || place.name == "return_1") {
    crevice(3, "arm_crevice", "Crevice between back cushion and arm, " + place.title);
  }
  crevice(1, "side_crevice", "Crevice beside the back cushion, " + place.title);
}

void add_frame(Assembly& a, const Corner& m) {
  const Layers over_wood = a.cloth(Fill::wood);
  const Block main =
      slab(a, "base_main", {m.arm, m.main_front(), m.inside_right(), m.inside_back()}, m.legs, m.deck);
  const Block turn =
      slab(a, "base_return", {m.return_left(), m.arm, m.inside_right(), m.main_front()}, m.legs, m.deck);
  a.along(main, Side::top, Side::back,
          {"deck_crevice", "Crevice between deck and back, main run", EdgeKind::fold, k_out_of_sight,
           a.cloth(Fill::foam)});
  a.along(turn, Side::top, Side::right,
          {"deck_crevice", "Crevice between deck and back, return", EdgeKind::fold, k_out_of_sight,
           a.cloth(Fill::foam)});
  a.along(turn, Side::top, Side::back,
          {"join", "Join of the two runs, under the cushions", EdgeKind::gap, k_out_of_sight, over_wood});
  a.trace(main, Side::front, {{m.arm, m.main_front(), m.deck}, {m.return_left(), m.main_front(), m.deck}},
          {"deck_seam", "Seam of the deck at the front rail, main run", EdgeKind::seam, k_out_of_sight,
           over_wood});
  a.along(
      turn, Side::top, Side::left,
      {"deck_seam", "Seam of the deck at the front rail, return", EdgeKind::seam, k_out_of_sight, over_wood});
  a.along(turn, Side::left, Side::back,
          {"front_join", "Join of the two runs at the front rail", EdgeKind::gap, k_in_sight, over_wood});

  const Block rear = slab(a, "back_main", {m.arm, m.inside_back(), m.width, m.length}, m.legs, m.frame_top);
  const Block right =
      slab(a, "back_return", {m.inside_right(), m.arm, m.width, m.inside_back()}, m.legs, m.frame_top);
  a.rim(
      rear, Side::back,
      {"outside_seam", "Seam of the outside back, main run", EdgeKind::seam, k_in_sight, a.cloth(Fill::none)},
      {Side::left, Side::top, Side::right});
  a.rim(right, Side::right,
        {"outside_seam", "Seam of the outside back, return", EdgeKind::seam, k_in_sight, a.cloth(Fill::none)},
        {Side::front, Side::top});
  a.along(right, Side::back, Side::top,
          {"join", "Join of the two backs", EdgeKind::gap, k_in_sight, over_wood});
}

void add_arm(Assembly& a, const std::string& name, const std::string& title, const Plan& plan, double legs,
             double top, Side front, Side outer, Side inner) {
  const Block arm = slab(a, name, plan, legs, top);
  a.rim(arm, front,
        {"welt", "Welt around the front of the " + title, EdgeKind::welt, k_in_sight, a.cloth(Fill::wood)});
  a.along(arm, Side::top, outer,
          {"outside_seam", "Seam along the outside of the " + title, EdgeKind::seam, k_in_sight,
           a.cloth(Fill::batting_foam)});
  a.along(arm, Side::top, inner,
          {"inside_seam", "Seam along the inside of the " + title, EdgeKind::seam, k_in_sight,
           a.cloth(Fill::batting_foam)});
}

/// A run must leave room for its seats.
void require_room(Assembly& a, const Corner& m, std::string_view key, double run, int seats) {
  const double taken = m.depth + m.arm;
  a.require(say("The run of a sectional with {} seats beside the corner", seats), key, run,
            taken + seats * a.usual("sofa.least_cushion_width"),
            taken + seats * a.usual("sofa.greatest_cushion_width"));
}

}  // namespace

void build_sectional(Assembly& a) {
  const Corner m = measured(a);
  require_room(a, m, "width_metres", m.width, a.count("seats"));
  require_room(a, m, "length_metres", m.length, a.count("return_seats"));
  const std::vector<Place> all = places(m, a.count("seats"), a.count("return_seats"));
  const Layers padded = a.cloth(Fill::batting_foam);
  a.part("seat", "Seat cushions");
  for (const Place& place : all) add_seat(a, m, place, padded);
  a.part("back", "Back cushions");
  for (const Place& place : all) add_back(a, m, place, padded);
  const Place turned{true, m.main_front(), m.inside_back() - m.back_reach(), "corner_return",
                     "the corner, right"};
  add_back(a, m, turned, padded);
  a.part("arms", "Arms");
  add_arm(a, "arm_left", "left arm", {0.0, m.main_front(), m.arm, m.length}, m.legs, m.arm_top, Side::front,
          Side::left, Side::right);
  add_arm(a, "arm_front", "front arm", {m.return_left(), 0.0, m.width, m.arm}, m.legs, m.arm_top, Side::left,
          Side::front, Side::back);
  a.part("frame", "Base and outside back");
  add_frame(a, m);
  a.part("underside_main", "Underside, main run");
  const double leg = a.usual("sofa.leg_side");
  const double inset = a.usual("leg.inset");
  const auto underside = [&](const std::string& run, const Plan& plan) {
    const double bottom = m.legs - a.usual("sofa.cloth_thickness");
    const Block cover =
        slab(a, "dust_cover_" + run, plan.shrunk(a.usual("sofa.dust_cover_inset")), bottom, m.legs);
    a.rim(cover, Side::bottom,
          {"edge",
           "Edge of the dust cover, " + run + " run",
           EdgeKind::dust_cover_edge,
           k_out_of_sight,
           {Covering::olefin, Fill::wood, std::nullopt}});
    for (const bool is_left : {true, false}) {
      for (const bool is_front : {true, false}) {
        const double x = is_left ? plan.left + inset : plan.right - inset - leg;
        const double y = is_front ? plan.front + inset : plan.back - inset - leg;
        const std::string where = std::string(is_front ? "front" : "back") + (is_left ? "_left" : "_right");
        const Block post = a.block("leg_" + run + "_" + where, {x, y, 0.0}, {x + leg, y + leg, bottom});
        a.around_whole(post, Side::top,
                       {"joint",
                        std::string("Joint of the ") + (is_front ? "front " : "back ") +
                            (is_left ? "left" : "right") + " leg, " + run + " run",
                        EdgeKind::leg_joint, k_out_of_sight, a.wood()});
      }
    }
  };
  underside("main", {0.0, m.main_front(), m.width, m.length});
  a.part("underside_return", "Underside, return");
  underside("return", {m.return_left(), 0.0, m.width, m.main_front()});
  a.caution("Take the runs apart first: the join holds most and is reached no other way.", k_practice);
}

}  // namespace lastegg::furniture
