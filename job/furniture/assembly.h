// An item in the making: measures are taken, blocks are put down, lines are read off them. Lives as long as
// one build; used by one thread.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "job/furniture/catalogue.h"
#include "job/furniture/dimensions.h"
#include "job/furniture/item.h"
#include "job/furniture/solid.h"

namespace lastegg::furniture {

/// The sides of a block.
enum class Side { left, right, front, back, bottom, top };

/// The word of a side, as its face is called.
std::string name_of(Side side);

constexpr bool k_in_sight = true;
constexpr bool k_out_of_sight = false;

/// A box that is part of an item.
struct Block {
  std::string name;
  std::string part;
  Vertex low;
  Vertex high;
};

/// The line where two neighbouring sides of a block meet.
std::vector<Vertex> arris(const Block& block, Side a, Side b);

/// The closed line around one side of a block.
std::vector<Vertex> outline(const Block& block, Side side);

/// The four sides around a side.
std::vector<Side> around(Side side);

/// What is told of an edge besides where it runs. `id` is without the name of the block.
struct Line {
  std::string id;
  std::string title;
  EdgeKind kind = EdgeKind::gap;
  bool in_sight = true;
  Layers layers;
};

class Assembly {
 public:
  Assembly(const DimensionTable& table, const Kind& kind, const ItemRequest& request);

  /// What the request tells, or what is usual. A measure is named without its unit: "width".
  double measure(std::string_view name);
  double usual(std::string_view dimension) { return measuring_.usual(dimension); }
  int count(std::string_view key) const;
  bool has(std::string_view option) const;
  Covering covering() const;
  Finish finish() const;
  const ItemRequest& request() const { return request_; }

  /// Refuses a measure unless it lies in [lowest, highest]; `what` begins the sentence.
  void require(std::string_view what, std::string_view key, double value, double lowest, double highest) {
    measuring_.require(what, key, value, lowest, highest);
  }

  /// Layers of an edge: the item's cloth over a fill; finished wood; a cover with wiring behind it, which is
  /// barred; metal or plastic, whose finish is told too.
  Layers cloth(Fill fill) const { return {covering(), fill, std::nullopt}; }
  Layers wood() const { return {Covering::unknown, Fill::wood, finish()}; }
  Layers wired() const { return {Covering::unknown, Fill::none, Finish::electronics}; }
  Layers hard() const { return {Covering::unknown, Fill::none, finish()}; }

  /// Everything put down from here on belongs to this part.
  void part(std::string name, std::string title);
  Block block(std::string name, const Vertex& low, const Vertex& high);
  void body(const Body& body) { add_body(item_, body); }
  const std::string& current_part() const { return item_.parts.back().name; }

  /// An edge where sides `a` and `b` of a block meet; all around side `side` as one closed line; around it as
  /// one edge for each of `sides`; along `points` on a side.
  void along(const Block& block, Side a, Side b, Line line);
  void around_whole(const Block& block, Side side, Line line);
  void rim(const Block& block, Side side, const Line& line, const std::vector<Side>& sides);
  void rim(const Block& block, Side side, const Line& line) { rim(block, side, line, around(side)); }
  void trace(const Block& block, Side side, std::vector<Vertex> points, Line line);

  void title(std::string title) { item_.title = std::move(title); }
  void caution(std::string text, std::string source) {
    item_.cautions.push_back({std::move(text), std::move(source)});
  }

  /// For items that are built elsewhere: takes what was built, or its refusal.
  void take(Result<Item> built);
  Item& item() { return item_; }

  Result<Item> finished();

 private:
  const Kind& kind_;
  const ItemRequest& request_;
  Measuring measuring_;
  std::optional<MattressSize> size_;
  Item item_;
  std::vector<UsedDimension> used_elsewhere_;
};

}  // namespace lastegg::furniture
