// What an answer says about the shape of an edge: its family, whether the figure is a bound, and which places
// of such an edge it says nothing about.
#pragma once

#include <string>

#include "engine/question.h"
#include "job/edges/edge_stack.h"

namespace lastegg {

/// The field of a pace answer.
Field edge_family_field();

/// Its value.
Json edge_family_json(const EdgeKind& kind, steam::Claim claim);

/// Why no pace is proven where the figure is only a bound.
Json bound_reason(const EdgeKind& kind, double target_depth_metres, double confidence);

/// Whether the edge is hard parts alone, so that its covering says nothing about what steam does to it.
bool is_bare(const EdgeKind& kind);

}  // namespace lastegg
