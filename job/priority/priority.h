// Which edges to treat first when time is short: where bugs are expected to sit, how surely an edge's pace
// kills there, and how long it takes. Reads where_bugs_sit.json. Plain values; pure functions.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lastegg {

/// What an inspection found at an edge.
enum class Seen { none, signs, live };

/// An edge that waits for treatment.
struct WaitingEdge {
  std::size_t item = 0;   ///< index of its item
  std::string item_kind;  ///< a word of the catalogue; one that the data do not name is "elsewhere"
  double length_metres = 0;
  Seen seen = Seen::none;
  std::optional<double> seconds;  ///< none: no pace, so it cannot be treated with steam
  double kill_probability = 0;    ///< of an egg there at that pace
};

struct EdgePriority {
  double bug_share = 0;                ///< of all bugs expected on these edges
  double killed_share_per_minute = 0;  ///< expected, of all bugs on these edges; 0 without a pace
  std::optional<std::size_t> rank;     ///< from 1, most killed per minute first; none without a pace
};

/// What matters most per minute.
/// Model:   the edges of all items of a class (beds' frames, seats ...) hold the class's share of the bugs,
/// by
///          length, times a factor for what was seen there; shares then add up to one over all edges given.
///          Killed per minute = share x kill probability / minutes. Of equal edges the first given comes
///          first.
/// Source:  data where_bugs_sit.json; division by length: estimate
/// Checked: job/priority/priority_law_test.cpp
std::vector<EdgePriority> prioritise(std::span<const WaitingEdge> edges);

/// Edges to treat in a number of minutes, by rank, leaving out what no longer fits; indices in the order of
/// rank.
std::vector<std::size_t> fitting(std::span<const WaitingEdge> edges, std::span<const EdgePriority> priorities,
                                 double minutes);

}  // namespace lastegg
