#include "job/furniture/mattress.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "job/furniture/dimensions.h"
#include "job/furniture/solid.h"

namespace lastegg::furniture {
namespace {

// Arcs have an even number of chords, so that the tape can be shared out between two sides at the middle of a
// corner.
constexpr std::size_t k_corner_segments = 4;
constexpr int k_vent_segments = 12;
const std::vector<std::string> k_sides = {"foot", "right", "head", "left"};

struct MattressMeasures {
  double width = 0.0, length = 0.0, thickness = 0.0, bottom = 0.0, radius = 0.0;
  double quilting_spacing = 0.0, handle_length = 0.0, handle_width = 0.0;
  double vent_diameter = 0.0, label_width = 0.0, label_length = 0.0;
  std::string title;

  double top() const { return bottom + thickness; }
};

Result<MattressMeasures> measure(const MattressRequest& request, std::vector<UsedDimension>& used) {
  const auto& table = furniture_dimensions();
  if (!table) return refuse(table.error());
  const auto size = std::find_if(table->mattress_sizes.begin(), table->mattress_sizes.end(),
                                 [&](const MattressSize& known) { return known.name == request.size; });
  if (size == table->mattress_sizes.end()) return refuse(unknown_size(*table, request.size));
  Measuring measuring(*table);
  MattressMeasures m;
  m.width =
      measuring.take("mattress.width", "width_metres", request.width_metres.value_or(size->width_metres));
  m.length =
      measuring.take("mattress.length", "length_metres", request.length_metres.value_or(size->length_metres));
  m.thickness = measuring.take("mattress.thickness", "thickness_metres", request.thickness_metres);
  m.bottom = measuring.take("mattress.base_height", "base_height_metres", request.base_height_metres);
  m.radius = measuring.usual("mattress.corner_radius");
  m.quilting_spacing = measuring.usual("mattress.quilting_spacing");
  m.handle_length = measuring.usual("mattress.handle_length");
  m.handle_width = measuring.usual("mattress.handle_width");
  m.vent_diameter = measuring.usual("mattress.vent_diameter");
  m.label_width = measuring.usual("mattress.label_width");
  m.label_length = std::min(measuring.usual("mattress.label_length"), 0.6 * m.thickness);
  if (measuring.refusal()) return refuse(*measuring.refusal());
  used = measuring.used();
  for (UsedDimension& dimension : used) {
    const bool is_width = dimension.name == "mattress.width" && !request.width_metres;
    const bool is_length = dimension.name == "mattress.length" && !request.length_metres;
    if (is_width || is_length) {
      dimension.source = size->source;
      dimension.quality = size->quality;
    }
    if (dimension.name == "mattress.label_length") dimension.value_metres = m.label_length;
  }
  const bool measured = request.width_metres || request.length_metres;
  m.title =
      measured ? fmt::format("Mattress, {:.2f} x {:.2f} m", m.width, m.length) : "Mattress, " + size->title;
  return m;
}

/// The plan, counter-clockwise from the middle of the corner between left and foot... side i starts after
/// corner i.
std::vector<Point> plan_of(const MattressMeasures& m) {
  const std::vector<Point> corners = {{0.0, 0.0}, {m.width, 0.0}, {m.width, m.length}, {0.0, m.length}};
  std::vector<Point> plan;
  for (std::size_t i = 0; i < 4; ++i) {
    const auto arc = rounded_corner(corners[(i + 3) % 4], corners[i], corners[(i + 1) % 4], m.radius,
                                    static_cast<int>(k_corner_segments));
    plan.insert(plan.end(), arc.begin(), arc.end());
  }
  return plan;
}

/// Side `side` of the plan with half a corner at each end.
std::vector<Vertex> tape_along(const std::vector<Point>& plan, std::size_t side, double z) {
  const std::size_t per_corner = k_corner_segments + 1;
  std::vector<Vertex> line;
  for (std::size_t i = 0; i <= per_corner; ++i) {
    const Point& point = plan[(side * per_corner + k_corner_segments / 2 + i) % plan.size()];
    line.push_back({point.u, point.v, z});
  }
  return line;
}

/// A point of the border: side, distance from the side's start as seen from outside, left to right, and
/// height.
Vertex on_border(const MattressMeasures& m, std::size_t side, double along, double z) {
  switch (side) {
    case 0:
      return {along, 0.0, z};
    case 1:
      return {m.width, along, z};
    case 2:
      return {m.width - along, m.length, z};
    default:
      return {0.0, m.length - along, z};
  }
}

void add_tapes_and_quilting(Item& item, const MattressMeasures& m, const std::vector<Point>& plan,
                            const Layers& layers) {
  for (std::size_t side = 0; side < 4; ++side) {
    const std::string& name = k_sides[side];
    add_edge(item, {"mattress.top_" + name + "_tape",
                    "Tape edge, top, " + name + " side",
                    EdgeKind::tape_edge,
                    "top",
                    {"mattress.top"},
                    tape_along(plan, side, m.top()),
                    true,
                    layers});
    add_edge(item, {"mattress.bottom_" + name + "_tape",
                    "Tape edge, bottom, " + name + " side",
                    EdgeKind::tape_edge,
                    "underside",
                    {"mattress.bottom"},
                    tape_along(plan, side, m.bottom),
                    false,
                    layers});
    const double side_length = side % 2 == 0 ? m.width : m.length;
    const double z = m.bottom + 0.3 * m.thickness;
    add_edge(item, {"mattress.border_" + name + "_quilting",
                    "Quilting of the border, " + name + " side",
                    EdgeKind::quilting,
                    "border",
                    {"mattress.border_" + name},
                    {on_border(m, side, m.radius, z), on_border(m, side, side_length - m.radius, z)},
                    true,
                    layers});
  }
  const int channels = std::max(2, static_cast<int>(std::lround(m.length / m.quilting_spacing)));
  for (int i = 1; i < channels; ++i) {
    const double y = m.length * static_cast<double>(i) / static_cast<double>(channels);
    const std::string number = std::to_string(i);
    add_edge(item, {"mattress.top_quilting_" + number,
                    "Quilting of the top panel, row " + number + " from the foot",
                    EdgeKind::quilting,
                    "top",
                    {"mattress.top"},
                    {{0.0, y, m.top()}, {m.width, y, m.top()}},
                    true,
                    layers});
  }
}

void add_handles_and_vents(Item& item, const MattressMeasures& m, const Layers& padded, const Layers& open) {
  for (const std::size_t side : {std::size_t{1}, std::size_t{3}}) {
    const std::string& name = k_sides[side];
    const std::string face = "mattress.border_" + name;
    const double z = m.bottom + 0.65 * m.thickness;
    const double half_width = m.handle_width / 2.0;
    // Counted from the foot on both sides.
    const auto along_from_foot = [&](double from_foot) {
      return side == 1 ? from_foot : m.length - from_foot;
    };
    int number = 1;
    for (const double share : {0.25, 0.75}) {
      const double centre = along_from_foot(share * m.length);
      const double start = centre - m.handle_length / 2.0;
      const double end = centre + m.handle_length / 2.0;
      const std::string count = std::to_string(number++);
      add_edge(item, {"mattress.handle_" + name + "_" + count,
                      "Handle " + count + " from the foot, " + name + " side",
                      EdgeKind::handle,
                      "border",
                      {face},
                      {on_border(m, side, start, z - half_width), on_border(m, side, end, z - half_width),
                       on_border(m, side, end, z + half_width), on_border(m, side, start, z + half_width),
                       on_border(m, side, start, z - half_width)},
                      true,
                      padded});
    }
    number = 1;
    for (const double share : {0.45, 0.55}) {
      const double centre = along_from_foot(share * m.length);
      std::vector<Vertex> rim;
      for (int i = 0; i <= k_vent_segments; ++i) {
        const double angle =
            2.0 * std::numbers::pi * static_cast<double>(i % k_vent_segments) / k_vent_segments;
        const double radius = m.vent_diameter / 2.0;
        rim.push_back(on_border(m, side, centre + radius * std::cos(angle), z + radius * std::sin(angle)));
      }
      const std::string count = std::to_string(number++);
      add_edge(item, {"mattress.vent_" + name + "_" + count,
                      "Vent " + count + " from the foot, " + name + " side",
                      EdgeKind::vent,
                      "border",
                      {face},
                      rim,
                      true,
                      open});
    }
  }
}

void add_label_and_join(Item& item, const MattressMeasures& m, const Layers& layers) {
  constexpr std::size_t k_head = 2;
  const double start = m.radius + 0.5 * m.label_width;
  const double end = start + m.label_width;
  const double low = m.top() - m.label_length;
  add_edge(item, {"mattress.label",
                  "Free sides of the law label, head end",
                  EdgeKind::label,
                  "border",
                  {"mattress.border_head"},
                  {on_border(m, k_head, start, m.top()), on_border(m, k_head, start, low),
                   on_border(m, k_head, end, low), on_border(m, k_head, end, m.top())},
                  true,
                  layers});
  const double join = m.width - m.radius;
  add_edge(item, {"mattress.border_join_seam",
                  "Seam where the ends of the border meet, head end",
                  EdgeKind::seam,
                  "border",
                  {"mattress.border_head"},
                  {on_border(m, k_head, join, m.bottom), on_border(m, k_head, join, m.top())},
                  true,
                  layers});
}

}  // namespace

Result<Item> build_mattress(const MattressRequest& request) {
  Item item;
  const auto measured = measure(request, item.dimensions);
  if (!measured) return refuse(measured.error());
  const MattressMeasures& m = *measured;
  item.kind = "mattress";
  item.title = m.title;
  item.parts = {{"top", "Top panel"}, {"border", "Border"}, {"underside", "Underside"}};

  const std::vector<Point> plan = plan_of(m);
  std::vector<std::string> names;
  for (std::size_t corner = 0; corner < 4; ++corner) {
    const std::string between_sides = k_sides[(corner + 3) % 4] + "_" + k_sides[corner];
    for (std::size_t i = 1; i <= k_corner_segments; ++i) {
      names.push_back("border_corner_" + between_sides + "_" + std::to_string(i));
    }
    names.push_back("border_" + k_sides[corner]);
  }
  add_body(item, drawn_out("mattress", "border", plan, Direction::along_z, m.bottom, m.top(), "bottom", "top",
                           names));
  for (Face& face : item.faces) {
    if (face.name == "mattress.top") face.part = "top";
    if (face.name == "mattress.bottom") face.part = "underside";
  }
  const Layers padded{request.covering, Fill::foam, std::nullopt};
  add_tapes_and_quilting(item, m, plan, padded);
  add_handles_and_vents(item, m, padded, {request.covering, Fill::none, std::nullopt});
  add_label_and_join(item, m, padded);
  return item;
}

}  // namespace lastegg::furniture
