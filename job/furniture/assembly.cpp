#include "job/furniture/assembly.h"

#include <algorithm>
#include <utility>

namespace lastegg::furniture {
namespace {

/// Which coordinate a side limits, and whether at its high end.
struct Limit {
  double Vertex::* axis;
  bool high;
};

Limit limit_of(Side side) {
  switch (side) {
    case Side::left:
      return {&Vertex::x, false};
    case Side::right:
      return {&Vertex::x, true};
    case Side::front:
      return {&Vertex::y, false};
    case Side::back:
      return {&Vertex::y, true};
    case Side::bottom:
      return {&Vertex::z, false};
    case Side::top:
      break;
  }
  return {&Vertex::z, true};
}

double at(const Block& block, const Limit& limit) {
  return limit.high ? block.high.*limit.axis : block.low.*limit.axis;
}

}  // namespace

std::string name_of(Side side) {
  switch (side) {
    case Side::left:
      return "left";
    case Side::right:
      return "right";
    case Side::front:
      return "front";
    case Side::back:
      return "back";
    case Side::bottom:
      return "bottom";
    case Side::top:
      break;
  }
  return "top";
}

std::vector<Vertex> arris(const Block& block, Side a, Side b) {
  Vertex start = block.low;
  Vertex end = block.high;
  for (const Side side : {a, b}) {
    const Limit limit = limit_of(side);
    start.*limit.axis = end.*limit.axis = at(block, limit);
  }
  return {start, end};
}

std::vector<Side> around(Side side) {
  switch (side) {
    case Side::left:
    case Side::right:
      return {Side::front, Side::bottom, Side::back, Side::top};
    case Side::front:
    case Side::back:
      return {Side::left, Side::bottom, Side::right, Side::top};
    case Side::bottom:
    case Side::top:
      break;
  }
  return {Side::left, Side::front, Side::right, Side::back};
}

std::vector<Vertex> outline(const Block& block, Side side) {
  const std::vector<Side> sides = around(side);
  std::vector<Vertex> points;
  for (std::size_t i = 0; i <= sides.size(); ++i) {
    Vertex corner = block.low;
    for (const Side limiting : {side, sides[i % 4], sides[(i + 1) % 4]}) {
      const Limit limit = limit_of(limiting);
      corner.*limit.axis = at(block, limit);
    }
    points.push_back(corner);
  }
  return points;
}

Assembly::Assembly(const DimensionTable& table, const Kind& kind, const ItemRequest& request)
    : kind_(kind), request_(request), measuring_(table) {
  item_.kind = kind.name;
  item_.title = kind.title;
  if (kind.usual_size.empty()) return;
  const std::string& size = request.size ? *request.size : kind.usual_size;
  const auto found = std::find_if(table.mattress_sizes.begin(), table.mattress_sizes.end(),
                                  [&](const MattressSize& known) { return known.name == size; });
  if (found == table.mattress_sizes.end()) {
    measuring_.refuse_with(unknown_size(table, size));
    return;
  }
  size_ = *found;
}

double Assembly::measure(std::string_view name) {
  const std::string key = std::string(name) + "_metres";
  const auto measure = std::find_if(kind_.measures.begin(), kind_.measures.end(),
                                    [&](const Measure& listed) { return listed.key == key; });
  if (measure == kind_.measures.end()) {
    measuring_.refuse_with({ErrorKind::internal, kind_.name + " takes no '" + key + "'", "", "", "", ""});
    return 1.0;
  }
  const auto given = request_.measures.find(key);
  if (given != request_.measures.end()) return measuring_.take(measure->dimension, key, given->second);
  if (size_ && key == "width_metres")
    return measuring_.take_known(measure->dimension, size_->width_metres, *size_);
  if (size_ && key == "length_metres")
    return measuring_.take_known(measure->dimension, size_->length_metres, *size_);
  return measuring_.usual(measure->dimension);
}

int Assembly::count(std::string_view key) const {
  const auto given = request_.counts.find(key);
  if (given != request_.counts.end()) return given->second;
  for (const Count& listed : kind_.counts) {
    if (listed.key == key) return listed.usual;
  }
  return 0;
}

bool Assembly::has(std::string_view option) const {
  return request_.options.count(option) > 0;
}

Covering Assembly::covering() const {
  return request_.covering.value_or(kind_.usual_covering.value_or(Covering::unknown));
}

Finish Assembly::finish() const {
  return request_.finish.value_or(Finish::unknown);
}

void Assembly::part(std::string name, std::string title) {
  item_.parts.push_back({std::move(name), std::move(title)});
}

Block Assembly::block(std::string name, const Vertex& low, const Vertex& high) {
  Block block{std::move(name), current_part(), low, high};
  add_body(item_, box(block.name, block.part, low, high));
  return block;
}

void Assembly::along(const Block& block, Side a, Side b, Line line) {
  add_edge(item_, {block.name + "." + line.id,
                   std::move(line.title),
                   line.kind,
                   block.part,
                   {block.name + "." + name_of(a), block.name + "." + name_of(b)},
                   arris(block, a, b),
                   line.in_sight,
                   line.layers});
}

void Assembly::around_whole(const Block& block, Side side, Line line) {
  trace(block, side, outline(block, side), std::move(line));
}

void Assembly::rim(const Block& block, Side side, const Line& line, const std::vector<Side>& sides) {
  for (const Side other : sides) {
    Line one = line;
    one.id = name_of(other) + "_" + line.id;
    one.title = line.title + ", " + name_of(other);
    along(block, side, other, std::move(one));
  }
}

void Assembly::trace(const Block& block, Side side, std::vector<Vertex> points, Line line) {
  add_edge(item_, {block.name + "." + line.id,
                   std::move(line.title),
                   line.kind,
                   block.part,
                   {block.name + "." + name_of(side)},
                   std::move(points),
                   line.in_sight,
                   line.layers});
}

void Assembly::take(Result<Item> built) {
  if (!built) {
    measuring_.refuse_with(built.error());
    return;
  }
  item_ = *std::move(built);
  item_.kind = kind_.name;
  used_elsewhere_ = std::move(item_.dimensions);
}

Result<Item> Assembly::finished() {
  if (measuring_.refusal()) return refuse(*measuring_.refusal());
  item_.dimensions = std::move(used_elsewhere_);
  item_.dimensions.insert(item_.dimensions.end(), measuring_.used().begin(), measuring_.used().end());
  return std::move(item_);
}

}  // namespace lastegg::furniture
