#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "job/furniture/sofa_pieces.h"
#include "job/furniture/solid.h"

namespace lastegg::furniture {
namespace {

constexpr double k_shoulder = 0.03;      // from the welt to the first step of the crown, as drawn: estimate
constexpr double k_slope = 0.1;          // from the welt to the level top of the crown, as drawn: estimate
constexpr double k_strip_margin = 0.06;  // share of a side between the zip strip and each corner: estimate

const CushionNames k_seat_names = {
    {"front", "right", "back", "left"}, "bottom", "top", "lower_rim", "upper_rim"};
const CushionNames k_back_names = {
    {"bottom", "right", "top", "left"}, "rear", "front", "rear_rim", "front_rim"};

CushionShape shaped(const SofaMeasures& m, double length, double thickness, double crown) {
  const double room = 0.35 * std::min(m.cushion_width, length);
  return {m.cushion_width,
          length,
          thickness,
          m.bulge,
          m.cushion_rim,
          crown,
          std::min(k_shoulder, 0.3 * room),
          std::min(k_slope, room)};
}

std::string numbered(const std::string& name, int i) {
  return name + "_" + std::to_string(i);
}

/// The welts around both panels. `hidden` tells for the sides of the outer panel and then of the inner one
/// whether the welt is out of sight.
void add_welts(Item& item, const Cushion& cushion, const CushionNames& names, const std::string& title,
               const std::array<bool, 8>& hidden, const Layers& layers) {
  const std::string& body = cushion.body.name;
  for (const bool is_outer : {true, false}) {
    const Corners& corners = is_outer ? cushion.outer : cushion.inner;
    for (std::size_t side = 0; side < 4; ++side) {
      const std::string& side_name = names.sides[side];
      const std::string rim = "." + side_name + "_" + (is_outer ? names.outer_rim : names.inner_rim);
      const std::string panel =
          is_outer ? "." + names.outer_panel + "_shoulder_" + side_name : "." + names.inner_panel;
      const std::string id = (is_outer ? "." : "." + names.inner_panel + "_") + side_name + "_welt";
      const std::string panel_title = is_outer ? names.outer_panel : names.inner_panel;
      add_edge(item, {body + id,
                      "Welt, " + panel_title + " panel, " + side_name + " side, " + title,
                      EdgeKind::welt,
                      cushion.body.part,
                      {body + rim, body + panel},
                      {corners[side], corners[(side + 1) % 4]},
                      !hidden[side + (is_outer ? 0 : 4)],
                      layers});
    }
  }
}

/// The zip in the middle of one side of the boxing, and the two seams where its strip meets the rest of the
/// boxing. All are out of sight. The side runs from corner `first` to the next one; `ends` says what lies at
/// its two ends.
void add_zip(Item& item, const Cushion& cushion, const CushionNames& names, const std::string& title,
             std::size_t first, const std::array<std::string, 2>& ends, const Layers& layers) {
  const std::string& body = cushion.body.name;
  const std::string& part = cushion.body.part;
  const std::string face = body + "." + names.sides[first];
  const auto at = [&](const Corners& corners, double share) {
    return between(corners[first], corners[(first + 1) % 4], share);
  };
  const auto half_way = [&](double share) {
    return between(at(cushion.inner_full, share), at(cushion.outer_full, share), 0.5);
  };
  const std::array<double, 2> shares = {k_strip_margin, 1.0 - k_strip_margin};
  add_edge(item, {body + ".zip",
                  "Zip in the boxing, " + names.sides[first] + " side, " + title,
                  EdgeKind::zip,
                  part,
                  {face},
                  {half_way(shares[0]), half_way(shares[1])},
                  false,
                  layers});
  for (std::size_t end = 0; end < 2; ++end) {
    add_edge(item,
             {body + "." + ends[end] + "_boxing_seam",
              "Seam at the end of the zip strip, " + names.sides[first] + " " + ends[end] + ", " + title,
              EdgeKind::seam,
              part,
              {face + "_" + names.inner_rim, face, face + "_" + names.outer_rim},
              {at(cushion.inner, shares[end]), at(cushion.inner_full, shares[end]),
               at(cushion.outer_full, shares[end]), at(cushion.outer, shares[end])},
              false,
              layers});
  }
}

void add_seat_cushion(Item& item, const SofaMeasures& m, int i, const Layers& layers) {
  const std::string body = numbered("seat_cushion", i);
  const std::string title = "seat cushion " + std::to_string(i);
  const double left = m.inside_left() + static_cast<double>(i - 1) * m.cushion_width;
  const CushionFrame frame{{left, 0.0, m.deck_height}, {1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}, {0.0, 0.0, 1.0}};
  const Cushion cushion = boxed_cushion(
      body, "seat", frame, shaped(m, m.inside_back, m.seat_thickness, m.seat_crown), k_seat_names);
  add_body(item, cushion.body);
  // Seen: the top welts but for the one under the back cushion, and the bottom welt at the front.
  add_welts(item, cushion, k_seat_names, title, {false, false, true, false, false, true, true, true}, layers);
  add_zip(item, cushion, k_seat_names, title, 2, {"right", "left"}, layers);

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
  const Cushion cushion =
      boxed_cushion(body, "back", frame, shaped(m, length, m.back_thickness, m.back_crown), k_back_names);
  add_body(item, cushion.body);
  // Seen: the front welts and the rear one at the top.
  add_welts(item, cushion, k_back_names, title, {false, false, false, false, true, true, false, true},
            layers);
  add_zip(item, cushion, k_back_names, title, 0, {"left", "right"}, layers);
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
