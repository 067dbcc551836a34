// What matters most per minute: shares add up, what is seen counts, and time is kept.
#include "job/priority/priority.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace lastegg {
namespace {

WaitingEdge edge(std::size_t item, const char* kind, double length, Seen seen, double seconds) {
  return {item, kind, length, seen, seconds, 0.9};
}

TEST(PriorityLaw, SharesFollowItemLengthAndWhatWasSeen) {
  const std::vector<WaitingEdge> edges{
      edge(0, "sofa", 1.0, Seen::none, 60), edge(0, "sofa", 3.0, Seen::none, 60),
      edge(1, "mattress", 2.0, Seen::none, 60), edge(2, "dresser", 1.0, Seen::none, 60)};
  const auto p = prioritise(edges);
  // 0.226, 0.224 and 0.07 of the data file; the sofa's by length.
  const double all = 0.226 + 0.224 + 0.07;
  EXPECT_NEAR(p[0].bug_share, 0.226 / 4 / all, 1e-12);
  EXPECT_NEAR(p[1].bug_share, 3 * 0.226 / 4 / all, 1e-12);
  EXPECT_NEAR(p[2].bug_share, 0.224 / all, 1e-12);
  EXPECT_NEAR(p[3].bug_share, 0.07 / all, 1e-12);
  EXPECT_EQ(p[2].rank, 1U);
  auto seen = edges;
  seen[0].seen = Seen::live;
  EXPECT_EQ(prioritise(seen)[0].rank, 1U);
}

TEST(PriorityLaw, WithoutAPaceThereIsNoRank) {
  std::vector<WaitingEdge> edges{edge(0, "sofa", 1, Seen::live, 60), edge(0, "sofa", 1, Seen::none, 60)};
  edges[0].seconds.reset();
  const auto p = prioritise(edges);
  EXPECT_FALSE(p[0].rank);
  EXPECT_EQ(p[0].killed_share_per_minute, 0);
  EXPECT_GT(p[0].bug_share, p[1].bug_share) << "the bugs are there all the same";
  EXPECT_EQ(p[1].rank, 1U);
}

RC_GTEST_PROP(PriorityLaw, SharesAddUpAndTheTimeIsKept, ()) {
  const auto count = *rc::gen::inRange<std::size_t>(1, 40);
  std::vector<WaitingEdge> edges;
  for (std::size_t i = 0; i < count; ++i) {
    edges.push_back(edge(*rc::gen::inRange<std::size_t>(0, 4), "sofa", *rc::gen::inRange(1, 300) / 100.0,
                         *rc::gen::element(Seen::none, Seen::signs, Seen::live), *rc::gen::inRange(1, 600)));
  }
  const auto p = prioritise(edges);
  double sum = 0;
  for (const auto& one : p) sum += one.bug_share;
  RC_ASSERT(std::fabs(sum - 1) < 1e-9);
  const double minutes = *rc::gen::inRange(0, 60);
  const auto chosen = fitting(edges, p, minutes);
  double seconds = 0;
  for (std::size_t k = 0; k < chosen.size(); ++k) {
    seconds += *edges[chosen[k]].seconds;
    if (k > 0) RC_ASSERT(p[chosen[k]].killed_share_per_minute <= p[chosen[k - 1]].killed_share_per_minute);
  }
  RC_ASSERT(seconds <= 60 * minutes + 1e-9);
  // Nothing that was left out still fits.
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const bool in = std::find(chosen.begin(), chosen.end(), i) != chosen.end();
    if (!in) RC_ASSERT(seconds + *edges[i].seconds > 60 * minutes - 1e-9);
  }
}

}  // namespace
}  // namespace lastegg
