#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <map>
#include <set>

#include "job/furniture/item_laws.h"
#include "job/furniture/mattress.h"
#include "job/furniture/sofa.h"

namespace lastegg::furniture::laws {
namespace {

constexpr double k_length_tolerance_metres = 1e-9;  // absolute; coordinates are of the order of one metre

using Vector = std::array<double, 3>;

Vector vector_of(const Vertex& v) {
  return {v.x, v.y, v.z};
}
Vector minus(const Vector& a, const Vector& b) {
  return {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
}
double dot(const Vector& a, const Vector& b) {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
Vector cross(const Vector& a, const Vector& b) {
  return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}
double size_of(const Vector& a) {
  return std::sqrt(dot(a, a));
}
Vector unit(const Vector& a) {
  const double size = size_of(a);
  return {a[0] / size, a[1] / size, a[2] / size};
}
Vector middle_of(const Vector& a, const Vector& b) {
  return {(a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0, (a[2] + b[2]) / 2.0};
}

using Polygon = std::vector<Vector>;

Polygon polygon_of(const Item& item, const Face& face) {
  Polygon polygon;
  for (const std::size_t i : face.vertices) polygon.push_back(vector_of(item.vertices.at(i)));
  return polygon;
}

/// Sum of the cross products of the corners: normal times twice the area.
Vector area_vector(const Polygon& polygon) {
  Vector sum{0.0, 0.0, 0.0};
  for (std::size_t i = 1; i + 1 < polygon.size(); ++i) {
    const Vector part = cross(minus(polygon[i], polygon[0]), minus(polygon[i + 1], polygon[0]));
    for (std::size_t k = 0; k < 3; ++k) sum[k] += part[k];
  }
  return sum;
}

std::map<std::string, std::vector<Polygon>> bodies_of(const Item& item) {
  std::map<std::string, std::vector<Polygon>> bodies;
  for (const Face& face : item.faces) bodies[face.body].push_back(polygon_of(item, face));
  return bodies;
}

bool lies_on(const Vector& point, const Polygon& polygon) {
  const Vector normal = unit(area_vector(polygon));
  if (std::fabs(dot(normal, minus(point, polygon[0]))) > k_length_tolerance_metres) return false;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Vector side = unit(minus(polygon[(i + 1) % polygon.size()], polygon[i]));
    if (dot(cross(side, minus(point, polygon[i])), normal) < -k_length_tolerance_metres) return false;
  }
  return true;
}

/// Whether some direction among `axes` has both bodies on different sides.
bool apart(const std::vector<Polygon>& a, const std::vector<Polygon>& b, const std::vector<Vector>& axes) {
  const auto reach = [](const std::vector<Polygon>& body, const Vector& axis) {
    double low = 1e9;
    double high = -1e9;
    for (const Polygon& polygon : body) {
      for (const Vector& point : polygon) {
        low = std::min(low, dot(point, axis));
        high = std::max(high, dot(point, axis));
      }
    }
    return std::pair{low, high};
  };
  return std::any_of(axes.begin(), axes.end(), [&](const Vector& axis) {
    const auto [low_a, high_a] = reach(a, axis);
    const auto [low_b, high_b] = reach(b, axis);
    return high_a <= low_b + k_length_tolerance_metres || high_b <= low_a + k_length_tolerance_metres;
  });
}

bool is_slug(const std::string& text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](unsigned char c) {
    return std::islower(c) != 0 || std::isdigit(c) != 0 || c == '_' || c == '.';
  });
}

bool must_close(EdgeKind kind) {
  return kind == EdgeKind::handle || kind == EdgeKind::vent || kind == EdgeKind::leg_joint;
}

void check_numbers(const Edge& edge, double lowest_of_item, double highest_of_item, Complaints& complaints) {
  double length = 0.0;
  double moment = 0.0;
  double low = 1e9;
  double high = -1e9;
  for (std::size_t i = 0; i < edge.points.size(); ++i) {
    low = std::min(low, edge.points[i].z);
    high = std::max(high, edge.points[i].z);
    if (i == 0) continue;
    const double step = size_of(minus(vector_of(edge.points[i]), vector_of(edge.points[i - 1])));
    if (step < 1e-6) complaints.push_back(edge.id + " has a piece without length");
    length += step;
    moment += step * 0.5 * (edge.points[i].z + edge.points[i - 1].z);
  }
  if (std::fabs(length - edge.length_metres) > k_length_tolerance_metres)
    complaints.push_back(edge.id + " length");
  if (std::fabs(moment / length - edge.height_metres) > k_length_tolerance_metres) {
    complaints.push_back(edge.id + " mean height");
  }
  if (low != edge.lowest_metres || high != edge.highest_metres)
    complaints.push_back(edge.id + " height range");
  if (low < lowest_of_item - k_length_tolerance_metres ||
      high > highest_of_item + k_length_tolerance_metres) {
    complaints.push_back(edge.id + " leaves the item");
  }
}

void check_faces_of(const Edge& edge, const std::map<std::string, Polygon>& faces, Complaints& complaints) {
  if (edge.faces.empty()) complaints.push_back(edge.id + " names no face");
  std::vector<bool> held(edge.points.size() - 1, false);
  for (const std::string& name : edge.faces) {
    const auto found = faces.find(name);
    if (found == faces.end()) {
      complaints.push_back(edge.id + " names a face that is not there: " + name);
      continue;
    }
    bool holds_any = false;
    bool holds_all = true;
    for (std::size_t i = 0; i + 1 < edge.points.size(); ++i) {
      const Vector a = vector_of(edge.points[i]);
      const Vector b = vector_of(edge.points[i + 1]);
      const bool holds =
          lies_on(a, found->second) && lies_on(middle_of(a, b), found->second) && lies_on(b, found->second);
      holds_any = holds_any || holds;
      holds_all = holds_all && holds;
      if (holds) held[i] = true;
    }
    if (!holds_any || (edge.in_sight && !holds_all))
      complaints.push_back(edge.id + " does not lie on " + name);
  }
  if (std::find(held.begin(), held.end(), false) != held.end())
    complaints.push_back(edge.id + " leaves its faces");
}

struct Piece {
  std::string id;
  Vector a, b;
};

/// Length that two straight pieces have in common.
double shared_length(const Piece& p, const Piece& q) {
  const Vector along = unit(minus(p.b, p.a));
  for (const Vector& point : {q.a, q.b}) {
    if (size_of(cross(along, minus(point, p.a))) > 1e-7) return 0.0;
  }
  const double from = dot(along, minus(q.a, p.a));
  const double to = dot(along, minus(q.b, p.a));
  return std::min(std::max(from, to), size_of(minus(p.b, p.a))) - std::max(std::min(from, to), 0.0);
}

}  // namespace

double volume_of(const Item& item, const std::string& body) {
  double volume = 0.0;
  for (const Face& face : item.faces) {
    if (face.body != body) continue;
    const Polygon polygon = polygon_of(item, face);
    volume += dot(area_vector(polygon), polygon[0]) / 6.0;
  }
  return volume;
}

Complaints faces_close_bodies(const Item& item) {
  Complaints complaints;
  std::set<std::string> names;
  std::set<std::string> parts;
  for (const Part& part : item.parts) parts.insert(part.name);
  for (const Face& face : item.faces) {
    if (!names.insert(face.name).second) complaints.push_back(face.name + " is there twice");
    if (parts.count(face.part) == 0) complaints.push_back(face.name + " is of no part");
    const Polygon polygon = polygon_of(item, face);
    const Vector normal = area_vector(polygon);
    if (size_of(normal) < 1e-9) complaints.push_back(face.name + " has no area");
    for (const Vector& point : polygon) {
      if (std::fabs(dot(unit(normal), minus(point, polygon[0]))) > k_length_tolerance_metres) {
        complaints.push_back(face.name + " is not flat");
      }
    }
  }
  for (const auto& [body, polygons] : bodies_of(item)) {
    std::map<std::pair<Vector, Vector>, int> sides;
    for (const Polygon& polygon : polygons) {
      for (std::size_t i = 0; i < polygon.size(); ++i)
        ++sides[{polygon[i], polygon[(i + 1) % polygon.size()]}];
      const Vector normal = unit(area_vector(polygon));
      for (const Polygon& other : polygons) {
        for (const Vector& point : other) {
          if (dot(normal, minus(point, polygon[0])) > k_length_tolerance_metres) {
            complaints.push_back(body + " stands out past one of its faces");
          }
        }
      }
    }
    for (const auto& [side, count] : sides) {
      const auto back = sides.find({side.second, side.first});
      if (count != 1 || back == sides.end() || back->second != 1)
        complaints.push_back(body + " is not closed");
    }
    if (!(volume_of(item, body) > 0.0)) complaints.push_back(body + " has no volume");
  }
  return complaints;
}

Complaints bodies_do_not_overlap(const Item& item) {
  Complaints complaints;
  const auto bodies = bodies_of(item);
  for (auto a = bodies.begin(); a != bodies.end(); ++a) {
    for (auto b = std::next(a); b != bodies.end(); ++b) {
      std::vector<Vector> axes;
      for (const auto* body : {&a->second, &b->second}) {
        for (const Polygon& polygon : *body) axes.push_back(unit(area_vector(polygon)));
      }
      if (apart(a->second, b->second, axes)) continue;
      axes.clear();
      for (const Polygon& p : a->second) {
        for (const Polygon& q : b->second) {
          const Vector axis = cross(minus(p[1], p[0]), minus(q[1], q[0]));
          if (size_of(axis) > 1e-9) axes.push_back(unit(axis));
        }
      }
      if (!apart(a->second, b->second, axes))
        complaints.push_back(a->first + " and " + b->first + " overlap");
    }
  }
  return complaints;
}

Complaints edges_are_honest(const Item& item) {
  Complaints complaints;
  std::map<std::string, Polygon> faces;
  for (const Face& face : item.faces) faces[face.name] = polygon_of(item, face);
  double lowest = 1e9;
  double highest = -1e9;
  for (const Vertex& vertex : item.vertices) {
    lowest = std::min(lowest, vertex.z);
    highest = std::max(highest, vertex.z);
  }
  std::set<std::string> ids;
  for (const Edge& edge : item.edges) {
    if (!is_slug(edge.id)) complaints.push_back(edge.id + " is no slug");
    if (!ids.insert(edge.id).second) complaints.push_back(edge.id + " is there twice");
    if (edge.title.empty()) complaints.push_back(edge.id + " has no title");
    const auto is_its_part = [&](const Part& part) { return part.name == edge.part; };
    if (std::none_of(item.parts.begin(), item.parts.end(), is_its_part))
      complaints.push_back(edge.id + " part");
    if (edge.points.size() < 2) {
      complaints.push_back(edge.id + " has no length");
      continue;
    }
    const Vector gap = minus(vector_of(edge.points.front()), vector_of(edge.points.back()));
    if (must_close(edge.kind) && size_of(gap) != 0.0) complaints.push_back(edge.id + " does not close");
    check_numbers(edge, lowest, highest, complaints);
    check_faces_of(edge, faces, complaints);
  }
  return complaints;
}

Complaints edges_do_not_repeat(const Item& item) {
  std::vector<Piece> pieces;
  for (const Edge& edge : item.edges) {
    for (std::size_t i = 0; i + 1 < edge.points.size(); ++i) {
      pieces.push_back({edge.id, vector_of(edge.points[i]), vector_of(edge.points[i + 1])});
    }
  }
  Complaints complaints;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    for (std::size_t j = i + 1; j < pieces.size(); ++j) {
      if (shared_length(pieces[i], pieces[j]) > 1e-6) {
        complaints.push_back(pieces[i].id + " and " + pieces[j].id + " share a stretch");
      }
    }
  }
  return complaints;
}

Complaints all(const Item& item) {
  Complaints complaints;
  for (const auto& law : {faces_close_bodies, bodies_do_not_overlap, edges_are_honest, edges_do_not_repeat}) {
    const Complaints more = law(item);
    complaints.insert(complaints.end(), more.begin(), more.end());
  }
  return complaints;
}

// A law that cannot complain proves nothing: each is shown an item spoilt on purpose.

Item sofa_to_spoil() {
  return build_sofa({}).value();
}

TEST(furniture_laws_complain, about_a_bent_face) {
  Item item = sofa_to_spoil();
  item.vertices[item.faces.front().vertices[0]].z += 1e-6;
  EXPECT_FALSE(faces_close_bodies(item).empty());
}

TEST(furniture_laws_complain, about_a_face_turned_inwards_and_a_missing_one) {
  Item item = sofa_to_spoil();
  std::reverse(item.faces[3].vertices.begin(), item.faces[3].vertices.end());
  EXPECT_FALSE(faces_close_bodies(item).empty());
  item = sofa_to_spoil();
  item.faces.erase(item.faces.begin() + 5);
  EXPECT_FALSE(faces_close_bodies(item).empty());
}

TEST(furniture_laws_complain, about_a_cushion_pushed_into_its_neighbour) {
  Item item = sofa_to_spoil();
  std::set<std::size_t> corners;
  for (const Face& face : item.faces) {
    if (face.body == "seat_cushion_2") corners.insert(face.vertices.begin(), face.vertices.end());
  }
  for (const std::size_t i : corners) item.vertices[i].x += 1e-6;
  EXPECT_EQ(bodies_do_not_overlap(item), Complaints{"seat_cushion_2 and seat_cushion_3 overlap"});
}

TEST(furniture_laws_complain, about_an_edge_off_its_face_or_of_a_wrong_length) {
  Item item = sofa_to_spoil();
  item.edges[10].points[0].y += 1e-6;
  EXPECT_FALSE(edges_are_honest(item).empty());
  item = sofa_to_spoil();
  item.edges[10].length_metres += 1e-6;
  EXPECT_FALSE(edges_are_honest(item).empty());
  item = sofa_to_spoil();
  item.edges[10].id = item.edges[11].id;
  EXPECT_FALSE(edges_are_honest(item).empty());
}

TEST(furniture_laws_complain, about_an_edge_that_runs_along_half_of_another) {
  Item item = build_mattress({}).value();
  Edge copy = item.edges.front();
  copy.id = "copy";
  copy.points = {copy.points[2], copy.points[3]};
  copy.points[1].x = (copy.points[0].x + copy.points[1].x) / 2.0;
  item.edges.push_back(copy);
  EXPECT_FALSE(edges_do_not_repeat(item).empty());
}

TEST(furniture_laws_complain, about_a_loop_that_does_not_close) {
  Item item = build_mattress({}).value();
  for (Edge& edge : item.edges) {
    if (edge.kind == EdgeKind::vent) edge.points.pop_back();
  }
  EXPECT_FALSE(edges_are_honest(item).empty());
}

}  // namespace lastegg::furniture::laws
