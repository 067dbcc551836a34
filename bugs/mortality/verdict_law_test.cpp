// Verdicts: what makes a series lethal, short or not proven.
#include <gtest/gtest.h>

#include <cmath>

#include "bugs/mortality/mortality.h"
#include "bugs/mortality/series_for_tests.h"

namespace lastegg::bugs {
namespace {

DoseReport judged(const OwnedSeries& series, const DoseProblem& problem) {
  const auto report = judge_series(series.view(), problem);
  EXPECT_TRUE(report) << (report ? "" : report.error().message);
  return report.value_or(DoseReport{});
}

// A hold that gives exactly the ratio at the worst z.
OwnedSeries hold_of(Stage stage, double celsius, double ratio, Exposure exposure = Exposure::air) {
  const KillLaw& law = kill_law(stage, exposure);
  const double slowest =
      std::min(law.rate(law.z_kelvin[0]).at(celsius), law.rate(law.z_kelvin[1]).at(celsius));
  return {{0, 60 * ratio * law.lt99_minutes / slowest}, {celsius, celsius}};
}

TEST(VerdictLaw, TwiceTheDoseIsTheBorder) {
  for (const Stage stage : {Stage::egg, Stage::nymph, Stage::adult})
    for (const double celsius : {46.0, 50.0, 54.0}) {
      EXPECT_EQ(judged(hold_of(stage, celsius, 2.2), {.stage = stage}).verdict, Verdict::lethal);
      EXPECT_EQ(judged(hold_of(stage, celsius, 1.8), {.stage = stage}).verdict, Verdict::too_short);
      for (const double near_limit : {1.88, 1.95, 2.0, 2.05, 2.13}) {
        const DoseReport report = judged(hold_of(stage, celsius, near_limit), {.stage = stage});
        EXPECT_NEAR(report.ratio, near_limit, 1e-9);
        EXPECT_EQ(report.verdict, Verdict::not_proven);
        EXPECT_EQ(report.reason, VerdictReason::near_limit);
      }
    }
}

TEST(VerdictLaw, UncertaintyTakesAVerdictAway) {
  const OwnedSeries series = hold_of(Stage::egg, 50, 3);
  EXPECT_EQ(judged(series, {}).verdict, Verdict::lethal);
  EXPECT_EQ(judged(series, {.uncertainty_celsius = 2}).verdict, Verdict::too_short);
}

TEST(VerdictLaw, OverridesProveNothing) {
  const OwnedSeries series = hold_of(Stage::egg, 50, 100);
  for (const DoseProblem& problem :
       {DoseProblem{.z_kelvin = 4}, DoseProblem{.onset_celsius = 20}, DoseProblem{.cap_celsius = 100}}) {
    EXPECT_EQ(judged(series, problem).verdict, Verdict::not_proven);
    EXPECT_EQ(judged(series, problem).reason, VerdictReason::overridden);
  }
}

TEST(VerdictLaw, SlowRampsAskEggsFor55Degrees) {
  // 0.1 K/min to 50 C, two hours there: R is far above 2.
  OwnedSeries slow;
  for (int minute = 0; minute <= 420; ++minute) {
    slow.seconds.push_back(60 * minute);
    slow.celsius.push_back(std::min(20 + 0.1 * minute, 50.0));
  }
  const DoseReport egg = judged(slow, {.stage = Stage::egg});
  EXPECT_NEAR(*egg.ramp_kelvin_per_minute, 0.1, 1e-9);
  EXPECT_GT(egg.ratio, 4);
  EXPECT_EQ(egg.verdict, Verdict::not_proven);
  EXPECT_EQ(egg.reason, VerdictReason::slow_ramp);
  EXPECT_EQ(judged(slow, {.stage = Stage::adult}).verdict, Verdict::lethal);

  OwnedSeries hot = slow;
  for (int minute = 1; minute <= 30; ++minute) {
    hot.seconds.push_back(slow.seconds.back() + 60 * minute);
    hot.celsius.push_back(50 + 0.2 * minute);
  }
  EXPECT_EQ(judged(hot, {.stage = Stage::egg}).verdict, Verdict::lethal);
  EXPECT_EQ(judged(hot, {.stage = Stage::egg, .uncertainty_celsius = 1.1}).reason, VerdictReason::slow_ramp);

  const OwnedSeries fast{{0, 6000, 6000 + 7200}, {20, 50, 50}};  // 0.3 K/min, the same two hours
  EXPECT_EQ(judged(fast, {.stage = Stage::egg}).verdict, Verdict::lethal);
}

TEST(VerdictLaw, AGapThatMayHideDoseIsNotCalledShort) {
  OwnedSeries log;
  for (int minute = 0; minute <= 20; ++minute) {
    log.seconds.push_back(60 * minute);
    log.celsius.push_back(50);
  }
  EXPECT_EQ(judged(log, {}).verdict, Verdict::too_short);
  log.seconds.push_back(1200 + 1800);
  log.celsius.push_back(50);
  const DoseReport report = judged(log, {});
  ASSERT_EQ(report.gaps.size(), 1u);
  EXPECT_EQ(report.gaps[0].from_seconds, 1200);
  EXPECT_EQ(report.gaps[0].to_seconds, 3000);
  EXPECT_EQ(report.verdict, Verdict::not_proven);
  EXPECT_EQ(report.reason, VerdictReason::gap);
  log.celsius.assign(log.celsius.size(), 30);
  EXPECT_EQ(judged(log, {}).verdict, Verdict::too_short) << "a gap between cold readings hides nothing";
}

TEST(VerdictLaw, CoarseReadingsDoNotProve) {
  // A quarter of an hour between readings that jump: by straight lines lethal, by lower ends not.
  const OwnedSeries series{{0, 900, 1800, 2700, 3600, 4500, 5400}, {40, 54, 42, 54, 42, 54, 42}};
  const DoseReport report = judged(series, {});
  EXPECT_GT(report.ratio, 2.2);
  EXPECT_LT(report.cautious_ratio, 1);
  EXPECT_EQ(report.verdict, Verdict::not_proven);
  EXPECT_EQ(report.reason, VerdictReason::coarse_readings);
}

TEST(VerdictLaw, BodiesLagBehindAPulse) {
  // Half a second at 80 C: enough for the place, not for an unfed body, far from enough for a fed one.
  const OwnedSeries pulse{{0, 0.01, 0.51, 0.52, 60}, {22, 80, 80, 22, 22}};
  const DoseReport egg = judged(pulse, {.stage = Stage::egg, .exposure = Exposure::steam});
  const DoseReport adult = judged(pulse, {.stage = Stage::adult, .exposure = Exposure::steam});
  EXPECT_GT(egg.ratio, 2.2);
  EXPECT_LT(egg.ratio_with_lag, egg.ratio);
  EXPECT_GT(adult.ratio, 2.2);
  EXPECT_LT(adult.ratio_with_lag, 2);
  EXPECT_EQ(adult.verdict, Verdict::not_proven);
  EXPECT_EQ(adult.reason, VerdictReason::body_lag);
  ASSERT_TRUE(adult.engorged_ratio);
  EXPECT_LT(*adult.engorged_ratio, adult.ratio_with_lag);
  EXPECT_FALSE(egg.engorged_ratio);
}

TEST(VerdictLaw, SteamCreditsMoreThanAir) {
  const OwnedSeries pulse{{0, 3}, {72, 72}};
  EXPECT_EQ(judged(pulse, {.exposure = Exposure::steam}).verdict, Verdict::lethal);
  EXPECT_EQ(judged(pulse, {.exposure = Exposure::air}).verdict, Verdict::too_short);
}

}  // namespace
}  // namespace lastegg::bugs
