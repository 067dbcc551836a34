// Laws of rate summation: a steady log is a steady temperature, cutting changes nothing, worse knowledge
// widens.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "bugs/lifecycle/hatch_window.h"

namespace lastegg::bugs {
namespace {

RoomLog steady(double celsius, double uncertainty = 0) {
  return {{0}, {celsius}, uncertainty};
}

RoomLog waves(double middle, double swing, double days, int a_day = 24) {
  RoomLog log;
  for (int i = 0; i <= static_cast<int>(days * a_day); ++i) {
    log.days.push_back(static_cast<double>(i) / a_day);
    log.celsius.push_back(middle + swing * std::sin(2 * std::numbers::pi * i / a_day));
  }
  return log;
}

TEST(HatchWindow, SteadyTemperatureGivesTheTimesOfItsForms) {
  for (const double celsius : {16.0, 18.0, 21.0, 26.0, 30.0}) {
    const auto window = hatch_window(steady(celsius));
    ASSERT_TRUE(window);
    EXPECT_NEAR(*window->last_hatch_days, egg_days(celsius, Bound::slow), 1e-9);
    EXPECT_NEAR(*window->first_hatch_days, egg_days(celsius, Bound::fast), 1e-9);
    EXPECT_NEAR(*window->next_adult_days, nymph_days(celsius), 1e-9);
    EXPECT_NEAR(*window->first_new_egg_days, nymph_days(celsius) + first_egg_days(celsius), 1e-9);
    EXPECT_FALSE(window->is_extended);
  }
}

TEST(HatchWindow, ALogThatDoesNotChangeIsASteadyTemperature) {
  const auto log = hatch_window(waves(22, 0, 40)), state = hatch_window(steady(22));
  ASSERT_TRUE(log && state);
  EXPECT_NEAR(*log->last_hatch_days, *state->last_hatch_days, 1e-9);
  EXPECT_NEAR(*log->next_adult_days, *state->next_adult_days, 1e-9);
}

TEST(HatchWindow, HowOftenTheLoggerReadsChangesNothing) {
  const auto coarse = hatch_window(waves(20, 4, 40, 24)), fine = hatch_window(waves(20, 4, 40, 96));
  ASSERT_TRUE(coarse && fine);
  EXPECT_NEAR(*coarse->last_hatch_days, *fine->last_hatch_days, 0.05);
  EXPECT_NEAR(*coarse->first_hatch_days, *fine->first_hatch_days, 0.05);
}

// The curved form is convex, so days and nights of the same mean bring more than the steady mean
// ([johnson_1940] tells the same of a daily change by 10 C).
TEST(HatchWindow, DaysAndNightsHatchSoonerThanTheirMean) {
  const auto changing = hatch_window(waves(22, 5, 60)), state = hatch_window(steady(22));
  ASSERT_TRUE(changing && state);
  EXPECT_LT(*changing->last_hatch_days, *state->last_hatch_days);
}

TEST(HatchWindow, UncertaintyWidens) {
  const auto sure = hatch_window(steady(20)), unsure = hatch_window(steady(20, 2));
  ASSERT_TRUE(sure && unsure);
  EXPECT_GT(*unsure->last_hatch_days, *sure->last_hatch_days);
  EXPECT_LT(*unsure->first_hatch_days, *sure->first_hatch_days);
  EXPECT_LT(*unsure->first_new_egg_days, *sure->first_new_egg_days);
}

TEST(HatchWindow, AColdSpellStopsTheClock) {
  RoomLog log;
  for (int hour = 0; hour <= 24 * 60; ++hour) {
    log.days.push_back(hour / 24.0);
    log.celsius.push_back(hour >= 48 && hour < 48 + 240 ? 10 : 22);
  }
  const auto cold = hatch_window(log), warm = hatch_window(steady(22));
  ASSERT_TRUE(cold && warm);
  EXPECT_NEAR(*cold->last_hatch_days, *warm->last_hatch_days + 10, 0.1);
}

TEST(HatchWindow, TooColdNamesNoDate) {
  const auto window = hatch_window(steady(12));
  ASSERT_TRUE(window);
  EXPECT_FALSE(window->last_hatch_days || window->first_hatch_days || window->next_adult_days);
}

TEST(HatchWindow, NearTheColdLimitOnlyTheSlowBoundIsLost) {
  const auto window = hatch_window(steady(14.5, 1));
  ASSERT_TRUE(window);
  EXPECT_FALSE(window->last_hatch_days);
  EXPECT_TRUE(window->first_hatch_days);
}

TEST(HatchWindow, HeatNeverProvesThatEggsHatched) {
  const auto window = hatch_window(steady(36));
  ASSERT_TRUE(window);
  EXPECT_FALSE(window->last_hatch_days);
  EXPECT_NEAR(*window->first_hatch_days, egg_days(31, Bound::fast), 1e-9);
}

TEST(HatchWindow, AShortLogGoesOnAtItsColdestAndWarmestDay) {
  RoomLog log;
  for (int hour = 0; hour <= 48; ++hour) {
    log.days.push_back(hour / 24.0);
    log.celsius.push_back(hour < 24 ? 18 : 24);
  }
  const auto window = hatch_window(log);
  ASSERT_TRUE(window);
  EXPECT_TRUE(window->is_extended);
  EXPECT_GT(*window->last_hatch_days, egg_days(24, Bound::slow));
  EXPECT_LE(*window->last_hatch_days, egg_days(18, Bound::slow));
  EXPECT_GE(*window->first_hatch_days, egg_days(24, Bound::fast));
  EXPECT_LT(*window->first_hatch_days, egg_days(18, Bound::fast));
}

TEST(HatchWindow, AHoleCountsByItsWorseEnd) {
  const auto hole = hatch_window({{0, 30}, {18, 26}, 0}), cool = hatch_window(steady(18)),
             warm = hatch_window(steady(26));
  ASSERT_TRUE(hole && cool && warm);
  EXPECT_TRUE(hole->has_gaps);
  EXPECT_NEAR(*hole->last_hatch_days, *cool->last_hatch_days, 1e-9);
  EXPECT_NEAR(*hole->first_hatch_days, *warm->first_hatch_days, 1e-9);
}

TEST(HatchWindow, RefusesBrokenLogs) {
  EXPECT_FALSE(hatch_window({}));
  EXPECT_FALSE(hatch_window({{0, 1}, {20}, 0}));
  EXPECT_FALSE(hatch_window({{1, 1}, {20, 20}, 0}));
  EXPECT_FALSE(hatch_window({{-1, 1}, {20, 20}, 0}));
  const auto hot = hatch_window({{0, 1}, {20, 300}, 0});
  ASSERT_FALSE(hot);
  EXPECT_EQ(hot.error().where, "/series/celsius/1");
}

}  // namespace
}  // namespace lastegg::bugs
