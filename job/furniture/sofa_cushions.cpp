#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "job/furniture/cushions.h"
#include "job/furniture/sofa_pieces.h"
#include "job/furniture/solid.h"

namespace lastegg::furniture {
namespace {

CushionShape shaped(const SofaMeasures& m, double length, double thickness, double crown) {
  return cushion_shape(m.cushion_width, length, thickness, m.bulge, m.cushion_rim, crown);
}

std::string numbered(const std::string& name, int i) {
  return name + "_" + std::to_string(i);
}

void add_seat_cushion(Item& item, const SofaMeasures& m, int i, const Layers& layers) {
  const std::string body = numbered("seat_cushion", i);
  const std::string title = "seat cushion " + std::to_string(i);
  const double left = m.inside_left() + static_cast<double>(i - 1) * m.cushion_width;
  const CushionFrame frame{{left, 0.0, m.deck_height}, {1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}, {0.0, 0.0, 1.0}};
  const Cushion cushion = boxed_cushion(
      body, "seat", frame, shaped(m, m.inside_back, m.seat_thickness, m.seat_crown), seat_cushion_names());
  add_body(item, cushion.body);
  // Seen: the top welts but for the one under the back cushion, and the bottom welt at the front.
  add_welts(item, cushion, seat_cushion_names(), title, {false, false, true, false, false, true, true, true},
            layers);
  add_zip(item, cushion, seat_cushion_names(), title, 2, {"right", "left"}, layers);

  if (i == 1) {
    add_edge(item, {"seat.arm_left_crevice",
                    "Crevice between seat cushion 1 and left arm",
                    EdgeKind::fold,
                    "seat",
                    {body + ".left", "arm_left.inside"},
                    {cushion.outer_full[0], cushion.outer_full[3]},
                    true,
                    layers});
  }
  const bool is_last = i == m.seats;
  const std::string next = numbered("seat_cushion", i + 1);
  add_edge(item,
           {is_last ? "seat.arm_right_crevice" : numbered(numbered("seat.crevice", i), i + 1),
            is_last ? "Crevice between " + title + " and right arm"
                    : "Crevice between seat cushions " + std::to_string(i) + " and " + std::to_string(i + 1),
            EdgeKind::fold,
            "seat",
            {body + ".right", is_last ? std::string("arm_right.inside") : next + ".left"},
            {cushion.outer_full[1], cushion.outer_full[2]},
            true,
            layers});
}

void add_tufts(Item& item, const Cushion& cushion, const std::string& title, const Layers& layers) {
  const std::string& body = cushion.body.name;
  int row = 1;
  for (const double share : {0.3, 0.7}) {
    add_edge(item, {body + numbered(".tuft_row", row),
                    "Tuft row " + std::to_string(row) + ", " + title,
                    EdgeKind::tuft,
                    "back",
                    {body + ".front"},
                    {between(cushion.crown[0], cushion.crown[3], share),
                     between(cushion.crown[1], cushion.crown[2], share)},
                    true,
                    layers});
    ++row;
  }
}

/// The part of a back cushion's side, where it parts from its neighbour, that lies against an arm.
std::vector<Vertex> along_arm(const SofaMeasures& m, const Vertex& low, const Vertex& high) {
  const double share = std::min(1.0, (m.arm_straight - low.z) / (high.z - low.z));
  return {low, between(low, high, share)};
}

void add_back_cushion(Item& item, const SofaMeasures& m, int i, bool tufted, const Layers& layers) {
  const std::string body = numbered("back_cushion", i);
  const std::string title = "back cushion " + std::to_string(i);
  const double left = m.inside_left() + static_cast<double>(i - 1) * m.cushion_width;
  const double slant = std::hypot(1.0, m.back_lean);
  const CushionFrame frame{{left, m.inside_back, m.seat_height},
                           {1.0, 0.0, 0.0},
                           {0.0, m.back_lean / slant, 1.0 / slant},
                           {0.0, -1.0, 0.0}};
  const double length = (m.height - m.seat_height) * slant;
  const Cushion cushion = boxed_cushion(
      body, "back", frame, shaped(m, length, m.back_thickness, m.back_crown), back_cushion_names());
  add_body(item, cushion.body);
  // Seen: the front welts and the rear one at the top.
  add_welts(item, cushion, back_cushion_names(), title, {false, false, false, false, true, true, false, true},
            layers);
  add_zip(item, cushion, back_cushion_names(), title, 0, {"left", "right"}, layers);
  if (tufted) add_tufts(item, cushion, title, layers);

  add_edge(item, {numbered("seat.back_crevice", i),
                  "Crevice between seat cushion " + std::to_string(i) + " and " + title,
                  EdgeKind::fold,
                  "seat",
                  {body + ".bottom"},
                  {cushion.outer_full[0], cushion.outer_full[1]},
                  true,
                  layers});
  const double z = m.frame_straight;
  const double y = m.inside_back_at(z);
  add_edge(item, {numbered("back.frame_crevice", i),
                  "Crevice between the top of the back and " + title,
                  EdgeKind::fold,
                  "back",
                  {body + ".rear", "back_frame.inside", "back_frame.inside_roll_1"},
                  {{cushion.inner[0].x, y, z}, {cushion.inner[1].x, y, z}},
                  true,
                  layers});
  if (i == 1) {
    add_edge(item, {"back.arm_left_crevice",
                    "Crevice between back cushion 1 and left arm",
                    EdgeKind::fold,
                    "back",
                    {body + ".left", "arm_left.inside"},
                    along_arm(m, cushion.outer_full[0], cushion.outer_full[3]),
                    true,
                    layers});
  }
  if (i == m.seats) {
    add_edge(item, {"back.arm_right_crevice",
                    "Crevice between " + title + " and right arm",
                    EdgeKind::fold,
                    "back",
                    {body + ".right", "arm_right.inside"},
                    along_arm(m, cushion.outer_full[1], cushion.outer_full[2]),
                    true,
                    layers});
  } else {
    const std::string next = numbered("back_cushion", i + 1);
    add_edge(item, {numbered(numbered("back.crevice", i), i + 1),
                    "Crevice between back cushions " + std::to_string(i) + " and " + std::to_string(i + 1),
                    EdgeKind::fold,
                    "back",
                    {body + ".right", next + ".left"},
                    {cushion.outer_full[1], cushion.outer_full[2]},
                    true,
                    layers});
  }
}

}  // namespace

void add_sofa_cushions(Item& item, const SofaMeasures& m, const SofaRequest& request) {
  const Layers layers{request.covering, Fill::batting_foam, std::nullopt};
  for (int i = 1; i <= m.seats; ++i) add_seat_cushion(item, m, i, layers);
  for (int i = 1; i <= m.seats; ++i) add_back_cushion(item, m, i, request.tufted, layers);
}

}  // namespace lastegg::furniture
