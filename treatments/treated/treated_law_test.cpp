#include "treatments/treated/treated.h"

#include <gtest/gtest.h>

#include <vector>

#include "physics/uncertainty/weighted.h"
#include "treatments/treated/edges_for_tests.h"

namespace lastegg::treated {
namespace {

constexpr int k_samples = 64;

TreatedReport judged(const TreatedEdge& edge) {
  const auto report = judge(edge);
  EXPECT_TRUE(report) << report.error().message;
  return report ? *report : TreatedReport{};
}

double surely_lethal_pace() {
  static const double pace = [] {
    const steam::PaceProblem problem = welt_for_tests(k_samples);
    const auto limits = steam::sample_limits(problem, steam::Marched::all);
    EXPECT_TRUE(limits);
    std::vector<double> fastest;
    for (const auto& sample : *limits) fastest.push_back(sample.fastest);
    return weighted_quantile(fastest, problem.calibration.weights, 0.05);
  }();
  return pace;
}

const TreatedStretch& at(const TreatedReport& report, double metres) {
  for (const TreatedStretch& stretch : report.stretches) {
    if (metres >= stretch.from_metres && metres < stretch.to_metres) return stretch;
  }
  return report.stretches.back();
}

void expect_whole(const TreatedReport& report, double length) {
  EXPECT_EQ(report.stretches.front().from_metres, 0);
  EXPECT_NEAR(report.stretches.back().to_metres, length, 1e-9);
  for (std::size_t i = 1; i < report.stretches.size(); ++i)
    EXPECT_EQ(report.stretches[i].from_metres, report.stretches[i - 1].to_metres);
}

TEST(TreatedLaw, AnEvenGoodPassIsLethalAsAWhole) {
  const auto report = judged(even_treatment(welt_for_tests(k_samples), 2, 0.9 * surely_lethal_pace()));
  expect_whole(report, 2);
  EXPECT_EQ(report.verdict, bugs::Verdict::lethal);
  EXPECT_EQ(report.stretches.size(), 1u);
  EXPECT_NEAR(report.lethal_metres, 2, 1e-9);
  EXPECT_GE(report.depth_reached_metres, 0.0015);
  ASSERT_TRUE(report.kill_egg);
  EXPECT_GT(*report.kill_egg, 0.9);
  EXPECT_LE(*report.kill_egg, 0.99);
}

TEST(TreatedLaw, TheWorstStretchIsTheVerdict) {
  TreatedEdge edge = even_treatment(welt_for_tests(k_samples), 2, 0.9 * surely_lethal_pace());
  const double good = 0.9 * surely_lethal_pace();
  edge.passes[0].marks = {
      {0, 0}, {0.8, 0.8 / good}, {1.1, 0.8 / good + 0.3 / 0.12}, {2, 1.7 / good + 0.3 / 0.12}};
  const auto report = judged(edge);
  expect_whole(report, 2);
  EXPECT_EQ(report.verdict, bugs::Verdict::too_short);
  EXPECT_EQ(at(report, 0.3).verdict, bugs::Verdict::lethal);
  EXPECT_EQ(at(report, 0.95).verdict, bugs::Verdict::too_short);
  EXPECT_EQ(at(report, 0.95).cause, Cause::too_fast);
  EXPECT_EQ(at(report, 1.7).verdict, bugs::Verdict::lethal);
  EXPECT_LT(report.depth_reached_metres, 0.0015);
  EXPECT_GT(at(report, 0.3).depth_reached_metres, at(report, 0.95).depth_reached_metres);
}

TEST(TreatedLaw, WhereNobodyPassedItIsShort) {
  TreatedEdge edge = even_treatment(welt_for_tests(k_samples), 2, 0.9 * surely_lethal_pace());
  edge.passes[0].marks.back() = {1, 1 / (0.9 * surely_lethal_pace())};
  const auto report = judged(edge);
  EXPECT_EQ(report.verdict, bugs::Verdict::too_short);
  EXPECT_EQ(at(report, 1.5).cause, Cause::not_passed);
  EXPECT_EQ(at(report, 1.5).harm, Harm::none);
  EXPECT_FALSE(report.kill_egg);
  edge.passes.clear();
  EXPECT_EQ(judged(edge).verdict, bugs::Verdict::too_short);
}

TEST(TreatedLaw, ABrokenRecordEarnsNothingAndIsNotCalledShort) {
  TreatedEdge edge = even_treatment(welt_for_tests(k_samples), 2, 0.9 * surely_lethal_pace());
  const double good = 0.9 * surely_lethal_pace();
  edge.passes[0].marks = {{0, 0}, {0.8, 0.8 / good}, {1.1, 0.8 / good + 300, true}, {2, 1.7 / good + 300}};
  const auto report = judged(edge);
  EXPECT_EQ(report.verdict, bugs::Verdict::not_proven);
  EXPECT_EQ(at(report, 0.95).cause, Cause::unclear_record);
  EXPECT_EQ(at(report, 0.95).harm, Harm::unknown);
  EXPECT_EQ(at(report, 0.3).verdict, bugs::Verdict::lethal);
}

TEST(TreatedLaw, AnUnknownHeadEarnsNothing) {
  TreatedEdge edge = even_treatment(welt_for_tests(k_samples), 1, 0.9 * surely_lethal_pace());
  edge.passes[0].problem = std::nullopt;
  const auto report = judged(edge);
  EXPECT_EQ(report.verdict, bugs::Verdict::not_proven);
  EXPECT_EQ(at(report, 0.5).cause, Cause::no_model);
  EXPECT_EQ(at(report, 0.5).harm, Harm::unknown);
}

// A second pass soon after helps; long after it helps less, and after the reset time not at all.
TEST(TreatedLaw, RepeatsAddDoseWhileTheClockIsKnown) {
  const double pace = 1.2 * surely_lethal_pace(), length = 0.5;
  const TreatedEdge once = even_treatment(welt_for_tests(k_samples), length, pace);
  const double single = judged(once).stretches.front().lethal_margin;
  EXPECT_LT(single, 0);
  const auto twice = [&](std::optional<double> second_began) {
    TreatedEdge edge = once;
    edge.passes.push_back(edge.passes.front());
    edge.passes[1].began_seconds = second_began;
    return judged(edge).stretches.front();
  };
  const auto soon = twice(length / pace + 5);
  const auto later = twice(1200);
  EXPECT_GT(soon.lethal_margin, single + 0.1);
  EXPECT_EQ(soon.counted_together, 2);
  EXPECT_GE(soon.lethal_margin, later.lethal_margin);
  EXPECT_GE(later.lethal_margin, single);
  for (const auto& alone : {twice(5000), twice(std::nullopt)}) {
    EXPECT_EQ(alone.lethal_margin, single);
    EXPECT_EQ(alone.counted_together, 1);
    EXPECT_EQ(alone.visits, 2);
    EXPECT_EQ(alone.verdict, bugs::Verdict::not_proven);
  }
}

TEST(TreatedLaw, ALiveBugPutsTheEdgeBackUntilALaterPassIsLethalByItself) {
  const double good = 0.9 * surely_lethal_pace();
  TreatedEdge edge = even_treatment(welt_for_tests(k_samples), 1, good);
  edge.passes[0].saw_live_bug = true;
  const auto seen = judged(edge);
  EXPECT_EQ(seen.verdict, bugs::Verdict::not_proven);
  EXPECT_EQ(seen.stretches.front().cause, Cause::saw_live_bug);
  edge.passes.push_back(edge.passes.front());
  edge.passes[1].saw_live_bug = false;
  edge.passes[1].began_seconds = 300;
  EXPECT_EQ(judged(edge).verdict, bugs::Verdict::lethal);
  edge.passes[1].marks.back().seconds /= 4;  // far too fast
  EXPECT_EQ(judged(edge).verdict, bugs::Verdict::not_proven);
}

TEST(TreatedLaw, DepthFallsWithPace) {
  double before = 1;
  for (const double factor : {0.4, 0.6, 0.8, 0.95, 1.1, 1.4, 2.0}) {
    const auto report = judged(even_treatment(welt_for_tests(k_samples), 0.5, factor * surely_lethal_pace()));
    EXPECT_LE(report.depth_reached_metres, before + 1e-9) << factor;
    EXPECT_EQ(report.depth_reached_metres >= 0.0015, report.verdict == bugs::Verdict::lethal) << factor;
    before = report.depth_reached_metres;
  }
}

TEST(TreatedLaw, HarmComesFromSlownessAndRepeats) {
  steam::PaceProblem problem = welt_for_tests(k_samples);
  problem.harm.wetting_kilograms_per_m2 = 0.045;
  EXPECT_EQ(judged(even_treatment(problem, 0.5, 0.035)).stretches.front().harm, Harm::none);
  EXPECT_EQ(judged(even_treatment(problem, 0.5, 0.0025)).stretches.front().harm, Harm::soak);
  TreatedEdge thrice = even_treatment(problem, 0.5, 0.035);
  for (const double began : {20.0, 40.0}) {
    thrice.passes.push_back(thrice.passes.front());
    thrice.passes.back().began_seconds = began;
  }
  EXPECT_EQ(judged(thrice).stretches.front().harm, Harm::soak);
  EXPECT_EQ(judged(even_treatment(problem, 0.05, 0.001)).stretches.front().harm, Harm::unknown);
}

TEST(TreatedLaw, RefusesWithAPlace) {
  TreatedEdge edge = even_treatment(welt_for_tests(k_samples), 1, 0.01);
  edge.passes[0].marks[1].seconds = -4;
  const auto report = judge(edge);
  ASSERT_FALSE(report);
  EXPECT_EQ(report.error().where, "/passes/0/marks/1/seconds");
}

}  // namespace
}  // namespace lastegg::treated
