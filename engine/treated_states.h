// What an edge of a job is said to be after all that was done: its state, the cause in words, and whether it
// is on the redo list, off it, or explained. Also the sums over edges. Pure functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/question.h"
#include "engine/treated_passes.h"

namespace lastegg {

struct EdgeFacts {
  const EdgeRecord& record;
  const std::optional<Json>& modelled;  ///< by modelled_json(); none where nothing was passed
  std::string refusal;                  ///< why a record of passes could not be used
  std::string method;                   ///< chosen for the item; empty: none, and edges are steamed
  bool is_barred = false, is_contested = false;
};

/// Adds `state`, `cause`, `harm`, `redo` to the row of an edge.
/// Checked: engine/questions/treated_unit_test.cpp
void add_state(const EdgeFacts& facts, Json& row);

/// The part of an answer of as_treated that a job keeps, with the hash of what was asked.
Json modelled_json(const Json& answer, const std::string& asked);
Shape modelled_shape();

/// Whether what is kept of an answer proves more than another.
bool better_treated(const Json& a, const Json& b);

/// Edges by state, and how long the redo list is.
Json counts_of(const Json& edges);

Shape treated_item_shape();
Shape treated_counts_shape();

}  // namespace lastegg
