#include "treatments/treated/path.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lastegg::treated {
namespace {

constexpr double k_head = 0.08;
constexpr double k_slowest = 0.002;

std::vector<Visit> visits(const std::vector<Mark>& marks, double at) {
  return visits_of(marks, k_head, k_slowest, at);
}

TEST(TreatedPath, AnEvenPaceIsThatPaceEverywhere) {
  const std::vector<Mark> marks{{0, 0}, {2, 100}};
  for (const double at : {0.0, 0.01, 0.7, 1.99, 2.0}) {
    const auto found = visits(marks, at);
    ASSERT_EQ(found.size(), 1u) << at;
    EXPECT_NEAR(found[0].kill_pace, 0.02, 1e-12) << at;
    EXPECT_NEAR(found[0].harm_pace, 0.02, 1e-12) << at;
  }
}

TEST(TreatedPath, MarksBetweenChangeNothingOnAnEvenWay) {
  const std::vector<Mark> coarse{{0, 0}, {1, 50}}, fine{{0, 0}, {0.2, 10}, {0.3, 15}, {0.31, 15.5}, {1, 50}};
  for (double at = 0; at <= 1; at += 0.013) {
    EXPECT_NEAR(visits(coarse, at)[0].kill_pace, visits(fine, at)[0].kill_pace, 1e-9) << at;
  }
}

// The mean dwell over all places is head length over mean pace, whatever the hand did: covering is booked
// once.
TEST(TreatedPath, DwellIsConserved) {
  const std::vector<Mark> marks{{0, 0}, {0.4, 10}, {0.9, 60}, {1.5, 80}, {3, 130}};
  double sum = 0;
  int count = 0;
  for (double at = k_head; at < 3 - k_head; at += 0.001, ++count)
    sum += k_head / visits(marks, at)[0].kill_pace;
  EXPECT_NEAR(sum / count, k_head * 130 / 3, 0.02 * k_head * 130 / 3);
}

TEST(TreatedPath, AFastStretchIsFoundAsFast) {
  const std::vector<Mark> marks{{0, 0}, {1, 50}, {1.3, 55}, {2, 90}};
  EXPECT_NEAR(visits(marks, 0.5)[0].kill_pace, 0.02, 1e-12);
  EXPECT_NEAR(visits(marks, 1.15)[0].kill_pace, 0.06, 1e-12);
  EXPECT_NEAR(visits(marks, 1.6)[0].kill_pace, 0.02, 1e-12);
  // In between the head covered both.
  EXPECT_GT(visits(marks, 1.0)[0].kill_pace, 0.02);
  EXPECT_LT(visits(marks, 1.0)[0].kill_pace, 0.06);
}

TEST(TreatedPath, PlaceHoldMoveIsHeadLengthOverHold) {
  std::vector<Mark> marks;
  double time = 0;
  for (int i = 0; i < 6; ++i) {
    marks.push_back({i * k_head, time});
    time += 9;
    marks.push_back({i * k_head, time});
    time += 0.5;
  }
  for (const double at : {0.02, 0.1, 0.17, 0.25}) {
    const auto found = visits(marks, at);
    ASSERT_EQ(found.size(), 1u) << at;
    EXPECT_LE(found[0].kill_pace, k_head / 9) << at;
    EXPECT_GE(found[0].kill_pace, k_head / (9 + 9 + 1)) << at;
  }
}

TEST(TreatedPath, AStopEarnsOnlyUnderTheHead) {
  const std::vector<Mark> marks{{0, 0}, {1, 20}, {1, 32}, {2, 52}};
  EXPECT_NEAR(visits(marks, 0.5)[0].kill_pace, 0.05, 1e-12);
  EXPECT_NEAR(visits(marks, 1.0)[0].kill_pace, k_head / (12 + k_head / 0.05), 1e-12);
  EXPECT_NEAR(visits(marks, 1.0 + 0.6 * k_head)[0].kill_pace, 0.05, 1e-12);
}

TEST(TreatedPath, ASleepIsNeverHeat) {
  // Told as broken, and not told: a mean pace that no hand holds.
  const std::vector<Mark> told{{0, 0}, {0.5, 25}, {0.6, 60, true}, {1, 80}},
      untold{{0, 0}, {0.5, 25}, {0.6, 125}, {1, 145}};
  for (const auto& marks : {told, untold}) {
    const auto found = visits(marks, 0.55);
    ASSERT_FALSE(found.empty());
    for (const Visit& visit : found) {
      EXPECT_TRUE(std::isinf(visit.kill_pace) || visit.kill_pace > 0.019);
    }
    EXPECT_TRUE(std::any_of(found.begin(), found.end(), [](const Visit& v) { return v.harm_pace == 0; }));
    EXPECT_NEAR(visits(marks, 0.2)[0].kill_pace, 0.02, 1e-12);
    EXPECT_NEAR(visits(marks, 0.8)[0].kill_pace, 0.02, 1e-12);
  }
}

TEST(TreatedPath, ALongStopEarnsNoMoreThanTheSlowestHandWould) {
  const std::vector<Mark> marks{{0, 0}, {1, 20}, {1, 920}, {2, 940}};
  const Visit stop = visits(marks, 1.0)[0];
  EXPECT_GE(stop.kill_pace, k_head / (k_head / k_slowest + k_head / 0.05) - 1e-12);
  EXPECT_LT(stop.harm_pace, k_head / 900);
}

TEST(TreatedPath, GoingBackIsAVisitOfItsOwn) {
  const std::vector<Mark> marks{{0, 0}, {1, 50}, {0.5, 75}, {1, 100}};
  EXPECT_EQ(visits(marks, 0.25).size(), 1u);
  const auto thrice = visits(marks, 0.8);
  ASSERT_EQ(thrice.size(), 3u);
  for (const Visit& visit : thrice) EXPECT_NEAR(visit.kill_pace, 0.02, 1e-9);
  EXPECT_LT(thrice[0].seconds, thrice[1].seconds);
  EXPECT_LT(thrice[1].seconds, thrice[2].seconds);
}

TEST(TreatedPath, WhereNobodyWasThereIsNoVisit) {
  const std::vector<Mark> marks{{0.5, 0}, {1, 25}};
  EXPECT_TRUE(visits(marks, 0.2).empty());
  EXPECT_TRUE(visits(marks, 1.3).empty());
  // Under the head's end only: harm, no kill.
  const auto beside = visits(marks, 0.5 - 0.25 * k_head);
  ASSERT_EQ(beside.size(), 1u);
  EXPECT_TRUE(std::isinf(beside[0].kill_pace));
}

TEST(TreatedPath, RefusesWhatIsNoRecord) {
  EXPECT_FALSE(check_marks({{0, 0}}, 1));
  EXPECT_FALSE(check_marks({{0, 0}, {1, -1}}, 1));
  EXPECT_FALSE(check_marks({{0, 0}, {9, 10}}, 1));
  EXPECT_FALSE(check_marks({{0, 0}, {1, std::nan("")}}, 1));
  EXPECT_TRUE(check_marks({{0, 0}, {1, 0}}, 1));
}

}  // namespace
}  // namespace lastegg::treated
