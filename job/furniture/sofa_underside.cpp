#include <string>
#include <vector>

#include "job/furniture/sofa_pieces.h"
#include "job/furniture/solid.h"

namespace lastegg::furniture {
namespace {

struct Rectangle {
  double left, front, right, back;

  Rectangle shrunk(double by) const { return {left + by, front + by, right - by, back - by}; }

  /// Its side by number: front, right, back, left.
  std::vector<Vertex> side(std::size_t number, double z) const {
    const std::vector<Vertex> corners = {
        {left, front, z}, {right, front, z}, {right, back, z}, {left, back, z}};
    return {corners[number], corners[(number + 1) % 4]};
  }
};

const std::vector<std::string> k_sides = {"front", "right", "back", "left"};

void add_dust_cover(Item& item, const SofaMeasures& m, const Layers& layers) {
  const double inset = m.dust_cover_inset;
  const Rectangle cover{inset, m.base_recess + inset, m.width - inset, m.depth - inset};
  const double top = m.leg_height;
  const double bottom = top - m.cloth;
  add_body(item,
           box("dust_cover", "underside", {cover.left, cover.front, bottom}, {cover.right, cover.back, top}));
  const Rectangle staples = cover.shrunk(m.staple_inset);
  for (std::size_t i = 0; i < k_sides.size(); ++i) {
    const std::string& side = k_sides[i];
    add_edge(item, {"underside.dust_cover_" + side + "_edge",
                    "Edge of the dust cover, " + side,
                    EdgeKind::dust_cover_edge,
                    "underside",
                    {"dust_cover.bottom", "dust_cover." + side},
                    cover.side(i, bottom),
                    false,
                    layers});
    add_edge(item, {"underside.staples_" + side,
                    "Staple line of the dust cover, " + side,
                    EdgeKind::staple_line,
                    "underside",
                    {"dust_cover.bottom"},
                    staples.side(i, bottom),
                    false,
                    layers});
  }
}

void add_legs(Item& item, const SofaMeasures& m, const Layers& layers) {
  struct Place {
    std::string name, title;
    double x, y;
  };
  const double in = m.leg_inset;
  const double front = m.base_recess + in;
  std::vector<Place> places = {{"leg_front_left", "front left leg", in, front},
                               {"leg_front_right", "front right leg", m.width - in, front},
                               {"leg_back_left", "back left leg", in, m.depth - in},
                               {"leg_back_right", "back right leg", m.width - in, m.depth - in}};
  if (m.middle_legs) {
    places.push_back({"leg_front_middle", "front middle leg", m.width / 2.0, front});
    places.push_back({"leg_back_middle", "back middle leg", m.width / 2.0, m.depth - in});
  }
  const double height = m.leg_height - m.cloth;
  const double half = m.leg_side / 2.0;
  for (const Place& place : places) {
    add_body(item, tapered_post(place.name, "underside", {place.x, place.y, 0.0}, m.leg_foot_side, m.leg_side,
                                height));
    const double left = place.x - half;
    const double right = place.x + half;
    add_edge(item, {"underside." + place.name + "_joint",
                    "Joint of the " + place.title,
                    EdgeKind::leg_joint,
                    "underside",
                    {"dust_cover.bottom", place.name + ".top"},
                    {{left, place.y - half, height},
                     {right, place.y - half, height},
                     {right, place.y + half, height},
                     {left, place.y + half, height},
                     {left, place.y - half, height}},
                    false,
                    layers});
  }
}

void add_skirt(Item& item, const SofaMeasures& m, const Layers& layers) {
  const double cloth = m.cloth;
  const double low = m.skirt_clearance;
  const double high = m.leg_height + m.skirt_overlap;
  const std::vector<Rectangle> panels = {{-cloth, -cloth, m.width + cloth, 0.0},
                                         {m.width, 0.0, m.width + cloth, m.depth},
                                         {-cloth, m.depth, m.width + cloth, m.depth + cloth},
                                         {-cloth, 0.0, 0.0, m.depth}};
  for (std::size_t i = 0; i < k_sides.size(); ++i) {
    const std::string& side = k_sides[i];
    const std::string body = "skirt_" + side;
    const Rectangle& panel = panels[i];
    add_body(item, box(body, "base", {panel.left, panel.front, low}, {panel.right, panel.back, high}));
    const std::string outer_face = body + "." + side;
    add_edge(item, {"skirt." + side + "_welt",
                    "Welt over the skirt, " + side,
                    EdgeKind::welt,
                    "base",
                    {outer_face, body + ".top"},
                    panel.side(i, high),
                    true,
                    layers});
    add_edge(item, {"skirt." + side + "_hem",
                    "Hem of the skirt, " + side,
                    EdgeKind::skirt,
                    "base",
                    {outer_face, body + ".bottom"},
                    panel.side(i, low),
                    true,
                    layers});
  }
  const auto pleat = [&](const std::string& name, const std::string& title, const std::string& body, double x,
                         double y) {
    add_edge(item, {"skirt." + name + "_pleat",
                    "Pleat of the skirt, " + title,
                    EdgeKind::pleat,
                    "base",
                    {body},
                    {{x, y, low}, {x, y, high}},
                    true,
                    layers});
  };
  pleat("front_left", "front left corner", "skirt_front.front", -cloth, -cloth);
  pleat("front_right", "front right corner", "skirt_front.front", m.width + cloth, -cloth);
  pleat("back_left", "back left corner", "skirt_back.back", -cloth, m.depth + cloth);
  pleat("back_right", "back right corner", "skirt_back.back", m.width + cloth, m.depth + cloth);
  for (int i = 1; i < m.seats; ++i) {
    const std::string seats = std::to_string(i) + "_" + std::to_string(i + 1);
    pleat("front_" + seats, "front, between seats " + std::to_string(i) + " and " + std::to_string(i + 1),
          "skirt_front.front", m.inside_left() + static_cast<double>(i) * m.cushion_width, -cloth);
  }
}

}  // namespace

void add_sofa_underside(Item& item, const SofaMeasures& m, const SofaRequest& request) {
  // Dust covers are mostly spun or woven polypropylene, from memory, to be checked; under them runs the
  // wooden rail.
  add_dust_cover(item, m, {Covering::olefin, Fill::wood, std::nullopt});
  add_legs(item, m, {Covering::olefin, Fill::wood, request.leg_finish});
  if (request.skirted) add_skirt(item, m, {request.covering, Fill::none, std::nullopt});
}

}  // namespace lastegg::furniture
