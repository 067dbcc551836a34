#include "job/priority/priority.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <string>

#include "job/priority/where_bugs_sit.h"

namespace lastegg {
namespace {

double factor_of(Seen seen) {
  return where_bugs_sit().factor_of_seen.at(seen == Seen::live    ? "live"
                                            : seen == Seen::signs ? "signs"
                                                                  : "none");
}

}  // namespace

std::vector<EdgePriority> prioritise(std::span<const WaitingEdge> edges) {
  const WhereBugsSit& table = where_bugs_sit();
  std::map<std::string, double> length_of_class;
  for (const WaitingEdge& edge : edges) length_of_class[table.class_of(edge.item_kind)] += edge.length_metres;
  std::vector<EdgePriority> out(edges.size());
  double sum = 0;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const std::string& group = table.class_of(edges[i].item_kind);
    const double length = length_of_class[group];
    if (length > 0)
      out[i].bug_share =
          table.share_of_class.at(group) * edges[i].length_metres / length * factor_of(edges[i].seen);
    sum += out[i].bug_share;
  }
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    if (sum > 0) out[i].bug_share /= sum;
    if (!edges[i].seconds || !(*edges[i].seconds > 0)) continue;
    out[i].killed_share_per_minute = out[i].bug_share * edges[i].kill_probability * 60 / *edges[i].seconds;
    order.push_back(i);
  }
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return out[a].killed_share_per_minute > out[b].killed_share_per_minute;
  });
  for (std::size_t r = 0; r < order.size(); ++r) out[order[r]].rank = r + 1;
  return out;
}

std::vector<std::size_t> fitting(std::span<const WaitingEdge> edges, std::span<const EdgePriority> priorities,
                                 double minutes) {
  std::vector<std::size_t> ranked;
  for (std::size_t i = 0; i < priorities.size(); ++i)
    if (priorities[i].rank) ranked.push_back(i);
  std::sort(ranked.begin(), ranked.end(),
            [&](std::size_t a, std::size_t b) { return *priorities[a].rank < *priorities[b].rank; });
  std::vector<std::size_t> chosen;
  double left = 60 * minutes;
  for (const std::size_t i : ranked) {
    if (*edges[i].seconds > left) continue;
    left -= *edges[i].seconds;
    chosen.push_back(i);
  }
  return chosen;
}

}  // namespace lastegg
