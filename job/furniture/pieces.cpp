#include "job/furniture/pieces.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace lastegg::furniture {
namespace {

constexpr int k_ring_segments = 8;

bool is_one_of(Side side, const std::vector<Side>& sides) {
  return std::find(sides.begin(), sides.end(), side) != sides.end();
}

}  // namespace

Block slab(Assembly& a, std::string name, const Plan& plan, double bottom, double top) {
  return a.block(std::move(name), {plan.left, plan.front, bottom}, {plan.right, plan.back, top});
}

void add_legs(Assembly& a, const Plan& plan, double height, double side, const Layers& layers) {
  const double half = side / 2.0;
  for (const bool is_front : {true, false}) {
    for (const bool is_left : {true, false}) {
      const std::string where = std::string(is_front ? "front" : "back") + (is_left ? "_left" : "_right");
      const std::string words = std::string(is_front ? "front" : "back") + (is_left ? " left" : " right");
      const double x = is_left ? plan.left + half : plan.right - half;
      const double y = is_front ? plan.front + half : plan.back - half;
      const Block leg = a.block("leg_" + where, {x - half, y - half, 0.0}, {x + half, y + half, height});
      a.around_whole(
          leg, Side::top,
          {"joint", "Joint of the " + words + " leg", EdgeKind::leg_joint, k_out_of_sight, layers});
    }
  }
}

double add_dust_cover(Assembly& a, const Plan& plan, double underside) {
  const Plan cover = plan.shrunk(a.usual("sofa.dust_cover_inset"));
  const double bottom = underside - a.usual("sofa.cloth_thickness");
  const Block cloth = slab(a, "dust_cover", cover, bottom, underside);
  // Mostly spun or woven polypropylene, from memory, to be checked; under it runs the rail.
  const Layers layers{Covering::olefin, Fill::wood, std::nullopt};
  a.rim(cloth, Side::bottom,
        {"edge", "Edge of the dust cover", EdgeKind::dust_cover_edge, k_out_of_sight, layers});
  const Plan staples = cover.shrunk(a.usual("sofa.staple_inset"));
  const Block line{
      "dust_cover", cloth.part, {staples.left, staples.front, bottom}, {staples.right, staples.back, bottom}};
  for (const Side side : around(Side::bottom)) {
    a.trace(cloth, Side::bottom, arris(line, Side::bottom, side),
            {name_of(side) + "_staples", "Staple line of the dust cover, " + name_of(side),
             EdgeKind::staple_line, k_out_of_sight, layers});
  }
  return bottom;
}

Block add_padded(Assembly& a, const std::string& name, const std::string& title, const Plan& plan,
                 double bottom, double top, const std::vector<Side>& hidden) {
  const Block block = slab(a, name, plan, bottom, top);
  const Layers padded = a.cloth(Fill::batting_foam);
  for (const Side side : around(Side::top)) {
    const bool seen = !is_one_of(side, hidden);
    a.rim(block, Side::top, {"welt", "Welt around the top of the " + title, EdgeKind::welt, seen, padded},
          {side});
    a.rim(block, Side::bottom,
          {"lower_seam", "Lower seam of the " + title, EdgeKind::seam, k_out_of_sight, a.cloth(Fill::wood)},
          {side});
  }
  for (const Side across : {Side::left, Side::right}) {
    for (const Side deep : {Side::front, Side::back}) {
      const bool seen = !is_one_of(across, hidden) && !is_one_of(deep, hidden);
      a.along(block, across, deep,
              {name_of(deep) + "_" + name_of(across) + "_seam",
               "Upright seam of the " + title + ", " + name_of(deep) + " " + name_of(across), EdgeKind::seam,
               seen, padded});
    }
  }
  return block;
}

void add_slats(Assembly& a, const std::string& name, const std::string& title, const Plan& plan, double z) {
  const double ledge = a.usual("slat.ledge");
  const double thickness = a.usual("slat.thickness");
  const double width = a.usual("slat.width");
  const double middle = (plan.left + plan.right) / 2.0;
  const Block left =
      slab(a, name + "_ledge_left", {plan.left, plan.front, plan.left + ledge, plan.back}, z - ledge, z);
  const Block right =
      slab(a, name + "_ledge_right", {plan.right - ledge, plan.front, plan.right, plan.back}, z - ledge, z);
  const Block beam = slab(a, name + "_beam",
                          {middle - ledge / 2.0, plan.front, middle + ledge / 2.0, plan.back}, z - ledge, z);
  const int slats = std::max(2, static_cast<int>(std::lround(plan.depth() / a.usual("slat.spacing"))));
  const double step = plan.depth() / static_cast<double>(slats);
  for (int i = 0; i < slats; ++i) {
    const double front = plan.front + (static_cast<double>(i) + 0.5) * step - width / 2.0;
    slab(a, name + "_slat_" + std::to_string(i + 1), {plan.left, front, plan.right, front + width}, z,
         z + thickness);
  }
  a.along(left, Side::top, Side::right,
          {"slat_ends", "Slat ends of the " + title + ", left", EdgeKind::wood_joint, k_in_sight, a.wood()});
  a.along(right, Side::top, Side::left,
          {"slat_ends", "Slat ends of the " + title + ", right", EdgeKind::wood_joint, k_in_sight, a.wood()});
  a.along(beam, Side::top, Side::right,
          {"slats", "Slats on the middle beam of the " + title, EdgeKind::wood_joint, k_in_sight, a.wood()});
}

std::array<Block, 4> add_posts(Assembly& a, const Plan& inner, double side, double height) {
  const Plan outer = inner.shrunk(-side);
  return {slab(a, "post_front_left", {outer.left, outer.front, inner.left, inner.front}, 0.0, height),
          slab(a, "post_front_right", {inner.right, outer.front, outer.right, inner.front}, 0.0, height),
          slab(a, "post_back_left", {outer.left, inner.back, inner.left, outer.back}, 0.0, height),
          slab(a, "post_back_right", {inner.right, inner.back, outer.right, outer.back}, 0.0, height)};
}

Rails add_rails(Assembly& a, const std::string& name, const std::string& title, const Plan& inner,
                double thickness, double bottom, double top) {
  const double t = thickness;
  const Rails rails = {
      slab(a, name + "_left", {inner.left - t, inner.front, inner.left, inner.back}, bottom, top),
      slab(a, name + "_right", {inner.right, inner.front, inner.right + t, inner.back}, bottom, top),
      slab(a, name + "_front", {inner.left, inner.front - t, inner.right, inner.front}, bottom, top),
      slab(a, name + "_back", {inner.left, inner.back, inner.right, inner.back + t}, bottom, top)};
  const auto joint = [&](const Block& rail, const std::string& side, Side end, Side outer) {
    a.along(
        rail, end, outer,
        {name_of(end) + "_joint", "Joint of the " + title + ", " + side + ", at its " + name_of(end) + " end",
         EdgeKind::wood_joint, k_in_sight, a.wood()});
  };
  for (const Side end : {Side::front, Side::back}) {
    joint(rails.left, "left", end, Side::left);
    joint(rails.right, "right", end, Side::right);
  }
  for (const Side end : {Side::left, Side::right}) {
    joint(rails.front, "front", end, Side::front);
    joint(rails.back, "back", end, Side::back);
  }
  return rails;
}

void add_screw(Assembly& a, const Block& block, Side side, const Vertex& centre, const std::string& id,
               const std::string& title, const Layers& layers, bool in_sight) {
  const double radius = a.usual("screw.recess_diameter") / 2.0;
  std::vector<Vertex> ring;
  for (int i = 0; i <= k_ring_segments; ++i) {
    const double angle = 2.0 * std::numbers::pi * static_cast<double>(i % k_ring_segments) / k_ring_segments;
    const double u = radius * std::cos(angle);
    const double v = radius * std::sin(angle);
    const bool faces_x = side == Side::left || side == Side::right;
    const bool faces_y = side == Side::front || side == Side::back;
    ring.push_back(faces_x   ? Vertex{centre.x, centre.y + u, centre.z + v}
                   : faces_y ? Vertex{centre.x + u, centre.y, centre.z + v}
                             : Vertex{centre.x + u, centre.y + v, centre.z});
  }
  a.trace(block, side, ring, {id, title, EdgeKind::screw_hole, in_sight, layers});
}

Vertex middle_of(const Block& block, Side side) {
  const std::vector<Vertex> corners = outline(block, side);
  return between(corners[0], corners[2], 0.5);
}

}  // namespace lastegg::furniture
