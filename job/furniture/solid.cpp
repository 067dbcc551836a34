#include "job/furniture/solid.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lastegg::furniture {
namespace {

Vertex cross(const Vertex& a, const Vertex& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

double dot(const Vertex& a, const Vertex& b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

Vertex centre_of(const std::vector<Vertex>& points) {
  Vertex sum;
  for (const Vertex& point : points) sum = sum + point;
  return (1.0 / static_cast<double>(points.size())) * sum;
}

/// Twice the area of a flat polygon as a vector along its normal (Newell's sum).
Vertex doubled_area(const std::vector<Vertex>& corners, const std::vector<std::size_t>& loop) {
  Vertex sum;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    sum = sum +
          cross(corners[loop[i]] - corners[loop[0]], corners[loop[(i + 1) % loop.size()]] - corners[loop[0]]);
  }
  return sum;
}

/// The eight corners of a box-like body, bottom loop then top loop, with the names of a box's faces.
Body six_sided(std::string name, std::string part, std::vector<Vertex> corners) {
  return {std::move(name),
          std::move(part),
          std::move(corners),
          {{"bottom", {0, 1, 2, 3}},
           {"top", {4, 5, 6, 7}},
           {"front", {0, 1, 5, 4}},
           {"right", {1, 2, 6, 5}},
           {"back", {2, 3, 7, 6}},
           {"left", {3, 0, 4, 7}}}};
}

Vertex placed(const Point& point, Direction direction, double at) {
  switch (direction) {
    case Direction::along_x:
      return {at, point.u, point.v};
    case Direction::along_y:
      return {point.u, at, point.v};
    case Direction::along_z:
      break;
  }
  return {point.u, point.v, at};
}

}  // namespace

Vertex operator+(const Vertex& a, const Vertex& b) {
  return {a.x + b.x, a.y + b.y, a.z + b.z};
}

Vertex operator-(const Vertex& a, const Vertex& b) {
  return {a.x - b.x, a.y - b.y, a.z - b.z};
}

Vertex operator*(double factor, const Vertex& a) {
  return {factor * a.x, factor * a.y, factor * a.z};
}

double distance(const Vertex& a, const Vertex& b) {
  const Vertex way = b - a;
  return std::sqrt(dot(way, way));
}

double length_of(const std::vector<Vertex>& points) {
  double length = 0.0;
  for (std::size_t i = 1; i < points.size(); ++i) length += distance(points[i - 1], points[i]);
  return length;
}

Vertex between(const Vertex& a, const Vertex& b, double share) {
  return a + share * (b - a);
}

Body box(std::string name, std::string part, const Vertex& low, const Vertex& high) {
  return six_sided(std::move(name), std::move(part),
                   {{low.x, low.y, low.z},
                    {high.x, low.y, low.z},
                    {high.x, high.y, low.z},
                    {low.x, high.y, low.z},
                    {low.x, low.y, high.z},
                    {high.x, low.y, high.z},
                    {high.x, high.y, high.z},
                    {low.x, high.y, high.z}});
}

Body tapered_post(std::string name, std::string part, const Vertex& foot_centre, double foot_side,
                  double top_side, double height) {
  std::vector<Vertex> corners;
  for (const auto& [half, z] :
       {std::pair{foot_side / 2.0, foot_centre.z}, {top_side / 2.0, foot_centre.z + height}}) {
    for (const auto& [sign_x, sign_y] : {std::pair{-1.0, -1.0}, {1.0, -1.0}, {1.0, 1.0}, {-1.0, 1.0}}) {
      corners.push_back({foot_centre.x + sign_x * half, foot_centre.y + sign_y * half, z});
    }
  }
  return six_sided(std::move(name), std::move(part), std::move(corners));
}

Body drawn_out(std::string name, std::string part, const std::vector<Point>& drawing, Direction direction,
               double from, double to, const std::string& start_name, const std::string& end_name,
               const std::vector<std::string>& side_names) {
  Body body{std::move(name), std::move(part), {}, {}};
  const std::size_t count = drawing.size();
  std::vector<std::size_t> start;
  std::vector<std::size_t> end;
  for (std::size_t i = 0; i < count; ++i) {
    body.corners.push_back(placed(drawing[i], direction, from));
    start.push_back(i);
  }
  for (std::size_t i = 0; i < count; ++i) {
    body.corners.push_back(placed(drawing[i], direction, to));
    end.push_back(count + i);
  }
  body.faces.emplace_back(start_name, start);
  body.faces.emplace_back(end_name, end);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t next = (i + 1) % count;
    body.faces.emplace_back(side_names[i], std::vector<std::size_t>{i, next, count + next, count + i});
  }
  return body;
}

std::vector<Point> rounded_corner(const Point& before, const Point& at, const Point& after, double reach,
                                  int segments) {
  const double length_in = std::hypot(before.u - at.u, before.v - at.v);
  const double length_out = std::hypot(after.u - at.u, after.v - at.v);
  const Point in{(before.u - at.u) / length_in, (before.v - at.v) / length_in};
  const Point out{(after.u - at.u) / length_out, (after.v - at.v) / length_out};
  // The arc touches both sides `reach` from the corner; its centre lies on the bisector.
  const double half_angle = std::acos(std::clamp(in.u * out.u + in.v * out.v, -1.0, 1.0)) / 2.0;
  const double to_centre = reach / std::cos(half_angle);
  const double bisector_length = std::hypot(in.u + out.u, in.v + out.v);
  const Point centre{at.u + to_centre * (in.u + out.u) / bisector_length,
                     at.v + to_centre * (in.v + out.v) / bisector_length};
  const Point first{at.u + reach * in.u - centre.u, at.v + reach * in.v - centre.v};
  const double turn_sign = in.u * out.v - in.v * out.u > 0.0 ? -1.0 : 1.0;
  const double turn = turn_sign * (std::numbers::pi - 2.0 * half_angle);
  std::vector<Point> arc;
  for (int i = 0; i <= segments; ++i) {
    const double angle = turn * static_cast<double>(i) / static_cast<double>(segments);
    arc.push_back({centre.u + first.u * std::cos(angle) - first.v * std::sin(angle),
                   centre.v + first.u * std::sin(angle) + first.v * std::cos(angle)});
  }
  return arc;
}

Cushion boxed_cushion(std::string name, std::string part, const CushionFrame& frame,
                      const CushionShape& shape, const CushionNames& names) {
  const auto level = [&](double height, double inset) {
    const auto at = [&](double u, double v) {
      return frame.origin + u * frame.across + v * frame.along + height * frame.through;
    };
    return Corners{at(inset, inset), at(shape.width - inset, inset),
                   at(shape.width - inset, shape.length - inset), at(inset, shape.length - inset)};
  };
  constexpr double k_rise_of_first_step = 0.65;
  const std::array<Corners, 6> levels = {
      level(0.0, shape.bulge),
      level(shape.rim, 0.0),
      level(shape.thickness - shape.rim, 0.0),
      level(shape.thickness, shape.bulge),
      level(shape.thickness + k_rise_of_first_step * shape.crown, shape.bulge + shape.shoulder),
      level(shape.thickness + shape.crown, shape.bulge + shape.slope)};
  Cushion cushion{
      {std::move(name), std::move(part), {}, {}}, levels[0], levels[1], levels[2], levels[3], levels[5]};
  for (const Corners& corners : levels) {
    cushion.body.corners.insert(cushion.body.corners.end(), corners.begin(), corners.end());
  }
  auto& faces = cushion.body.faces;
  faces.emplace_back(names.inner_panel, std::vector<std::size_t>{0, 1, 2, 3});
  for (std::size_t side = 0; side < 4; ++side) {
    const std::array<std::string, 5> strips = {names.sides[side] + "_" + names.inner_rim, names.sides[side],
                                               names.sides[side] + "_" + names.outer_rim,
                                               names.outer_panel + "_shoulder_" + names.sides[side],
                                               names.outer_panel + "_slope_" + names.sides[side]};
    const std::size_t next = (side + 1) % 4;
    for (std::size_t strip = 0; strip < strips.size(); ++strip) {
      const std::size_t low = 4 * strip;
      faces.emplace_back(strips[strip],
                         std::vector<std::size_t>{low + side, low + next, low + 4 + next, low + 4 + side});
    }
  }
  faces.emplace_back(names.outer_panel, std::vector<std::size_t>{20, 21, 22, 23});
  return cushion;
}

void add_body(Item& item, const Body& body) {
  const std::size_t first = item.vertices.size();
  item.vertices.insert(item.vertices.end(), body.corners.begin(), body.corners.end());
  const Vertex centre = centre_of(body.corners);
  for (const auto& [name, corners] : body.faces) {
    std::vector<std::size_t> loop = corners;
    if (dot(doubled_area(body.corners, loop), body.corners[loop[0]] - centre) < 0.0) {
      std::reverse(loop.begin(), loop.end());
    }
    for (std::size_t& index : loop) index += first;
    item.faces.push_back({body.name + "." + name, body.part, body.name, std::move(loop)});
  }
}

void add_edge(Item& item, EdgeDraft draft) {
  Edge edge;
  edge.id = std::move(draft.id);
  edge.title = std::move(draft.title);
  edge.kind = draft.kind;
  edge.part = std::move(draft.part);
  edge.faces = std::move(draft.faces);
  edge.points = std::move(draft.points);
  edge.in_sight = draft.in_sight;
  edge.layers = draft.layers;
  edge.length_metres = length_of(edge.points);
  edge.lowest_metres = edge.points.front().z;
  edge.highest_metres = edge.points.front().z;
  double height_by_length = 0.0;
  for (std::size_t i = 1; i < edge.points.size(); ++i) {
    const Vertex& a = edge.points[i - 1];
    const Vertex& b = edge.points[i];
    height_by_length += distance(a, b) * (a.z + b.z) / 2.0;
    edge.lowest_metres = std::min(edge.lowest_metres, b.z);
    edge.highest_metres = std::max(edge.highest_metres, b.z);
  }
  edge.height_metres =
      std::clamp(height_by_length / edge.length_metres, edge.lowest_metres, edge.highest_metres);
  item.edges.push_back(std::move(edge));
}

}  // namespace lastegg::furniture
