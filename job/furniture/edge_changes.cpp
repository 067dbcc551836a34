#include "job/furniture/edge_changes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "words/say.h"

namespace lastegg::furniture {
namespace {

using What = EdgeChange::What;

std::string place_of(std::size_t index, const char* key) {
  return fmt::format("/changes/{}/{}", index, key);
}

std::vector<Edge>::iterator edge_named(Item& item, const std::string& id) {
  return std::find_if(item.edges.begin(), item.edges.end(), [&](const Edge& edge) { return edge.id == id; });
}

double distance(const Vertex& a, const Vertex& b) {
  return std::hypot(b.x - a.x, b.y - a.y, b.z - a.z);
}

Vertex between(const Vertex& a, const Vertex& b, double share) {
  return {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y), a.z + share * (b.z - a.z)};
}

// Length and heights of a drawn line.
void measure(Edge& edge) {
  edge.length_metres = 0;
  double weighted = 0;
  edge.lowest_metres = edge.highest_metres = edge.points.front().z;
  for (std::size_t i = 1; i < edge.points.size(); ++i) {
    const Vertex &a = edge.points[i - 1], &b = edge.points[i];
    const double piece = distance(a, b);
    edge.length_metres += piece;
    weighted += piece * 0.5 * (a.z + b.z);
    edge.lowest_metres = std::min(edge.lowest_metres, b.z);
    edge.highest_metres = std::max(edge.highest_metres, b.z);
  }
  edge.height_metres = edge.length_metres > 0 ? weighted / edge.length_metres : edge.points.front().z;
}

std::pair<Edge, Edge> split_at(const Edge& edge, double share) {
  Edge first = edge, second = edge;
  first.id += ".1", second.id += ".2";
  first.title = say("{}, first piece", edge.title), second.title = say("{}, second piece", edge.title);
  if (edge.points.empty()) {
    first.length_metres *= share, second.length_metres *= 1 - share;
    return {first, second};
  }
  const double wanted = share * edge.length_metres;
  double gone = 0;
  std::size_t i = 1;
  while (i + 1 < edge.points.size() && gone + distance(edge.points[i - 1], edge.points[i]) < wanted) {
    gone += distance(edge.points[i - 1], edge.points[i]);
    ++i;
  }
  const double piece = distance(edge.points[i - 1], edge.points[i]);
  const Vertex cut = between(edge.points[i - 1], edge.points[i], (wanted - gone) / piece);
  const auto middle = edge.points.begin() + static_cast<std::ptrdiff_t>(i);
  first.points.assign(edge.points.begin(), middle);
  first.points.push_back(cut);
  second.points.assign(middle, edge.points.end());
  second.points.insert(second.points.begin(), cut);
  measure(first);
  measure(second);
  return {first, second};
}

Result<void> add(Item& item, const EdgeChange& change, std::size_t index) {
  const std::string part = change.part.empty() && !item.parts.empty() ? item.parts.front().name : change.part;
  const bool known =
      std::any_of(item.parts.begin(), item.parts.end(), [&](const Part& one) { return one.name == part; });
  if (!known)
    return refuse({ErrorKind::not_found, say("the item has no part \"{}\"", part), place_of(index, "part"),
                   part, "", ""});
  if (change.title.empty())
    return refuse(
        {ErrorKind::bad_input, say("an added edge needs a title"), place_of(index, "title"), "", "", ""});
  if (!(change.length_metres > 0))
    return refuse({ErrorKind::bad_input, say("an added edge needs a length"),
                   place_of(index, "length_metres"), fmt::format("{:g}", change.length_metres), "0", "m"});
  if (edge_named(item, change.id) != item.edges.end())
    return refuse({ErrorKind::bad_input, say("there is an edge \"{}\" already", change.id),
                   place_of(index, "id"), change.id, "", ""});
  Edge edge;
  edge.id = change.id;
  edge.title = change.title;
  edge.kind = change.kind;
  edge.part = part;
  edge.length_metres = change.length_metres;
  edge.height_metres = edge.lowest_metres = edge.highest_metres = change.height_metres;
  edge.in_sight = change.in_sight;
  // It lies in the cloth that most of its part is covered with.
  for (const Edge& other : item.edges) {
    if (other.part != part) continue;
    edge.layers = other.layers;
    break;
  }
  item.edges.push_back(std::move(edge));
  return {};
}

Result<void> change_known(Item& item, const EdgeChange& change, std::size_t index) {
  const auto edge = edge_named(item, change.edge);
  if (edge == item.edges.end())
    return refuse({ErrorKind::not_found, say("the item has no edge \"{}\"", change.edge),
                   place_of(index, "edge"), change.edge, "", ""});
  if (change.what == What::renamed) {
    if (!change.title.empty()) edge->title = change.title;
    return {};
  }
  if (change.what == What::left_out) {
    item.edges.erase(edge);
    return {};
  }
  const double share = change.at_share.value_or(0.5);
  const double shorter = std::min(share, 1 - share) * edge->length_metres;
  if (shorter < k_shortest_piece_metres)
    return refuse({ErrorKind::bad_input,
                   say("the split leaves a piece of {:.3g} m; each must have at least {:g} m", shorter,
                       k_shortest_piece_metres),
                   place_of(index, "at_share"), fmt::format("{:.3g}", shorter),
                   fmt::format("{:g}", k_shortest_piece_metres), "m"});
  auto [first, second] = split_at(*edge, share);
  *edge = std::move(first);
  item.edges.insert(edge + 1, std::move(second));
  return {};
}

}  // namespace

Result<Item> with_changes(Item item, std::span<const EdgeChange> changes) {
  for (const bool adding : {true, false}) {
    for (std::size_t i = 0; i < changes.size(); ++i) {
      if ((changes[i].what == What::added) != adding) continue;
      auto changed = adding ? add(item, changes[i], i) : change_known(item, changes[i], i);
      if (!changed) return refuse(changed.error());
    }
  }
  return item;
}

}  // namespace lastegg::furniture
