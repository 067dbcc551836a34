// The pace of one edge as questions answer it: the search for a window, the alternatives when there is none,
// and the words. Used by `pace` and `plan`.
#pragma once

#include <string>

#include "engine/edge_problem.h"
#include "engine/pace_answer.h"

namespace lastegg {

/// The whole answer for one edge.
/// Errors:  not_found, bad_input with place below `where`; never for a missing window, which is an
///          answer.
Result<Json> pace_of_edge(const PaceBasis& basis, const Json& edge, const EdgeSettings& settings,
                          const std::string& where);

}  // namespace lastegg
