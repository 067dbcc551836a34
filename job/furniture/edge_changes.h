// What a person changes of the edges that an item has by itself: one added, renamed, split in two, left out.
// Plain values; pure functions.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "job/furniture/item.h"
#include "physics/quantities/error.h"

namespace lastegg::furniture {

struct EdgeChange {
  enum class What { added, renamed, split, left_out };
  What what = What::renamed;
  std::string id;     ///< of an added edge: its own name
  std::string edge;   ///< of the others: the edge that is meant
  std::string title;  ///< of an added or renamed one
  EdgeKind kind = EdgeKind::seam;
  std::string part;  ///< of an added one; the item's first part if empty
  double length_metres = 0, height_metres = 0;
  bool in_sight = true;
  std::optional<double> at_share;  ///< of a split; the middle if left out
};

/// Shortest piece that a split may leave. Source: judgement, half the length of a small head.
constexpr double k_shortest_piece_metres = 0.02;

/// The item with the changes made in their order: added ones first, whatever their place, then the others. A
/// split edge gives two, named with ".1" and ".2". An added edge has no points and is not drawn.
/// Errors:  not_found: no such edge or part; bad_input: an added edge without a title or length, a name that
///          is taken, a split that leaves less than k_shortest_piece_metres. Places lie below /changes.
/// Checked: job/furniture/edge_changes_unit_test.cpp
Result<Item> with_changes(Item item, std::span<const EdgeChange> changes);

}  // namespace lastegg::furniture
