// Series: refusals, gaps, long cold times, heating rates.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "bugs/mortality/mortality.h"
#include "bugs/mortality/series_for_tests.h"

namespace lastegg::bugs {
namespace {

// A log every `cadence` seconds of a constant temperature.
OwnedSeries log_of(double celsius, double cadence, int readings, double start = 0) {
  OwnedSeries series;
  for (int i = 0; i < readings; ++i) {
    series.seconds.push_back(start + cadence * i);
    series.celsius.push_back(celsius);
  }
  return series;
}

void append(OwnedSeries& series, const OwnedSeries& more) {
  series.seconds.insert(series.seconds.end(), more.seconds.begin(), more.seconds.end());
  series.celsius.insert(series.celsius.end(), more.celsius.begin(), more.celsius.end());
}

TEST(SeriesLaw, RefusesWithThePlace) {
  const double nan = std::nan("");
  const struct {
    OwnedSeries series;
    const char* where;
  } bad[] = {{{{0, 1, 2}, {20, 20}}, ""},
             {{{0}, {20}}, ""},
             {{{0, 1}, {20, nan}}, "/celsius/1"},
             {{{0, nan}, {20, 20}}, "/seconds/1"},
             {{{0, 0}, {20, 20}}, "/seconds/1"},
             {{{0, 5, 4}, {20, 20, 20}}, "/seconds/2"},
             {{{0, 1}, {20, 850}}, "/celsius/1"},
             {{{0, 1}, {-200, 20}}, "/celsius/0"},
             {{{0, INFINITY}, {20, 20}}, "/seconds/1"}};
  for (const auto& [series, where] : bad) {
    const auto checked = check_series(series.view());
    ASSERT_FALSE(checked);
    EXPECT_EQ(checked.error().kind, ErrorKind::bad_input);
    EXPECT_EQ(checked.error().where, where);
    EXPECT_FALSE(judge_series(series.view(), {}));
  }
  const OwnedSeries good{{-5, 0, 7}, {20, 21, 22}};
  EXPECT_TRUE(check_series(good.view()));
}

TEST(SeriesLaw, GapsEarnNothing) {
  const KillLaw& law = kill_law(Stage::egg, Exposure::air);
  OwnedSeries log = log_of(50, 60, 31);          // half an hour
  append(log, log_of(50, 60, 31, 1800 + 7200));  // two hours of nothing, half an hour
  const double longest = longest_interval_seconds(log.view(), Exposure::air);
  EXPECT_EQ(longest, 240);
  const auto with_gap = equivalent_minutes(log.view(), law, {.longest_interval_seconds = longest});
  const auto half_hour = equivalent_minutes(log_of(50, 60, 31).view(), law);
  EXPECT_NEAR(with_gap[0], 2 * half_hour[0], 1e-9);
  // Taken as cold, two hours clear what came before.
  const auto cold =
      equivalent_minutes(log.view(), law, {.longest_interval_seconds = longest, .gap_is_cold = true});
  EXPECT_NEAR(cold[0], half_hour[0], 1e-9);
}

TEST(SeriesLaw, FewPointsHaveNoCadence) {
  const OwnedSeries ramp{{0, 600, 22200, 22800}, {20, 50, 50, 20}};
  EXPECT_EQ(longest_interval_seconds(ramp.view(), Exposure::air), std::numeric_limits<double>::infinity());
}

TEST(SeriesLaw, ShortIntervalsAreNeverGaps) {
  OwnedSeries log = log_of(50, 1, 100);
  EXPECT_EQ(longest_interval_seconds(log.view(), Exposure::air), 60);
  EXPECT_EQ(longest_interval_seconds(log.view(), Exposure::steam), 5);
}

TEST(SeriesLaw, MoreThanAnHourBelowOnsetClearsTheDose) {
  const KillLaw& law = kill_law(Stage::egg, Exposure::air);
  const auto two_holds = [&](double cold_seconds) {
    const OwnedSeries series{{0, 1800, 1801, 1801 + cold_seconds, 1802 + cold_seconds, 3602 + cold_seconds},
                             {50, 50, 30, 30, 50, 50}};
    return equivalent_minutes(series.view(), law)[0];
  };
  const OwnedSeries one{{0, 1800}, {50, 50}};
  const double single = equivalent_minutes(one.view(), law)[0];
  EXPECT_NEAR(two_holds(3000), 2 * single, 0.02);
  EXPECT_NEAR(two_holds(3599), 2 * single, 0.02);
  EXPECT_NEAR(two_holds(3601), single, 0.02);
  EXPECT_NEAR(two_holds(90000), single, 0.02);
}

TEST(SeriesLaw, ALethalStretchIsNotUndoneByTheNight) {
  const OwnedSeries series{{0, 36000, 36001, 90000, 90001, 90060}, {52, 52, 20, 20, 50, 50}};
  const KillLaw& law = kill_law(Stage::egg, Exposure::air);
  const OwnedSeries first{{0, 36000}, {52, 52}};
  EXPECT_NEAR(equivalent_minutes(series.view(), law)[0] / equivalent_minutes(first.view(), law)[0], 1, 1e-4);
}

TEST(SeriesLaw, CoarseIntervalsCountAtTheirLowerEnd) {
  const KillLaw& law = kill_law(Stage::egg, Exposure::air);
  const OwnedSeries series{{0, 600, 1200}, {50, 54, 48}};
  const OwnedSeries lower{{0, 600, 1200}, {50, 50, 48}};
  const auto coarse = equivalent_minutes(series.view(), law, {.coarse_seconds = 300});
  EXPECT_NEAR(coarse[0], 10 * law.rate(3.5).at(50) + 10 * law.rate(3.5).at(48), 1e-9);
  EXPECT_LT(coarse[0], equivalent_minutes(series.view(), law)[0]);
  EXPECT_LT(coarse[0], equivalent_minutes(lower.view(), law)[0]);
}

TEST(SeriesLaw, CuttingAStraightPieceChangesNothing) {
  const KillLaw& law = kill_law(Stage::egg, Exposure::air);
  const OwnedSeries whole{{0, 6000}, {20, 60}};
  OwnedSeries cut;
  for (int i = 0; i <= 200; ++i) {
    cut.seconds.push_back(30 * i);
    cut.celsius.push_back(20 + 0.2 * i);
  }
  for (std::size_t z = 0; z < 2; ++z) {
    const double expected = equivalent_minutes(whole.view(), law)[z];
    EXPECT_NEAR(equivalent_minutes(cut.view(), law)[z] / expected, 1, 1e-11);
  }
}

TEST(RampLaw, StraightRampGivesItsSlope) {
  const OwnedSeries ramp{{0, 18000}, {20, 50}};
  EXPECT_NEAR(*ramp_kelvin_per_minute(ramp.view(), 40, 48), 0.1, 1e-12);
  EXPECT_NEAR(*ramp_kelvin_per_minute(ramp.view(), 40, 48, 3), 0.1, 1e-12);
}

TEST(RampLaw, TheLastRiseBeforeTheGoalCounts) {
  // Warm, cool again for hours, then 42 to 50 C in four minutes.
  const OwnedSeries series{{0, 600, 1200, 20000, 20240, 30000}, {20, 42, 30, 30, 50, 50}};
  EXPECT_NEAR(*ramp_kelvin_per_minute(series.view(), 40, 48), 5, 1e-9);
}

TEST(RampLaw, NoneWithoutARise) {
  const OwnedSeries hot{{0, 600}, {50, 50}}, cool{{0, 600}, {20, 39}};
  EXPECT_FALSE(ramp_kelvin_per_minute(hot.view(), 40, 48));
  EXPECT_FALSE(ramp_kelvin_per_minute(cool.view(), 40, 48));
}

}  // namespace
}  // namespace lastegg::bugs
