#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"
#include "treatments/steam/pass/problems_for_tests.h"
#include "treatments/touch/touch.h"

namespace lastegg::touch {
namespace {

TEST(TouchLaw, BurnsComeSoonerWhereItIsHotter) {
  double before = seconds_to_burn(45);
  for (double celsius = 45.25; celsius < 75; celsius += 0.25) {
    const double now = seconds_to_burn(celsius);
    EXPECT_LT(now, before) << celsius;
    EXPECT_GT(now, 0) << celsius;
    before = now;
  }
  EXPECT_TRUE(std::isinf(seconds_to_burn(44)));
}

TEST(TouchLaw, AGunOnAWideStripWithItsOwnEmissivityShowsTheSurface) {
  const Gun gun{0.02, k_emissivity};
  for (const double celsius : {25.0, 48.0, 90.0})
    EXPECT_NEAR(gun_shows_celsius(celsius, 22, 0.1, gun), celsius, 1e-9);
}

TEST(TouchLaw, TheSurfaceBehindWhatAGunShowsIsFoundAgain) {
  for (const Gun& gun : {Gun{0.02, 0.95}, Gun{0.05, 0.98}, Gun{0.05, 0.90}}) {
    for (const double celsius : {15.0, 22.0, 48.0, 95.0}) {
      const double shown = gun_shows_celsius(celsius, 22, 0.03, gun);
      EXPECT_NEAR(surface_celsius(shown, 22, 0.03, gun), celsius, 1e-9);
    }
  }
}

TEST(TouchLaw, AWideSpotALowEmissivityAndTheRoomPullAReadingDown) {
  const double true_celsius = 80;
  const double wide = gun_shows_celsius(true_celsius, 22, 0.03, {0.02, 0.95});
  EXPECT_LT(wide, true_celsius);  // 0.93 read at 0.95
  EXPECT_GT(wide, true_celsius - 2);
  EXPECT_LT(gun_shows_celsius(true_celsius, 22, 0.03, {0.06, 0.95}), wide - 10);
  EXPECT_LT(gun_shows_celsius(true_celsius, 22, 0.03, {0.02, 0.95}, 0.77), wide - 5);
  EXPECT_LT(gun_shows_celsius(true_celsius, 22, 0.03, {0.06, 0.95}),
            gun_shows_celsius(true_celsius, 40, 0.03, {0.06, 0.95}));
  EXPECT_NEAR(gun_shows_celsius(22, 22, 0.01, {0.06, 0.95}), 22, 1e-9);
}

TEST(TouchLaw, HotterAndSlowerPassesWaitLonger) {
  for (auto [name, pass] : steam::problems_for_tests()) {
    const auto once = bare_hand_seconds(pass);
    ASSERT_TRUE(once && *once) << name;
    EXPECT_GT(**once, 0) << name;
    pass.pace_metres_per_second *= 0.4;
    const auto slow = bare_hand_seconds(pass);
    ASSERT_TRUE(slow && *slow) << name;
    EXPECT_GE(**slow, **once) << name;
    pass.passes = 2;
    pass.gap_seconds = 5;
    const auto twice = bare_hand_seconds(pass);
    ASSERT_TRUE(twice && *twice) << name;
    EXPECT_GE(**twice, **slow) << name;
  }
}

TEST(TouchLaw, NothingNearTheSurfaceIsTooHotThen) {
  for (auto [name, pass] : steam::problems_for_tests()) {
    const auto seconds = bare_hand_seconds(pass);
    ASSERT_TRUE(seconds && *seconds) << name;
    pass.depths_metres = {0.0003, 0.001};
    pass.observe_seconds = **seconds + 5;
    const auto history = steam::run_pass(pass, steam::shown_resolution());
    ASSERT_TRUE(history) << name;
    for (std::size_t i = 0; i < history->seconds.size(); ++i) {
      if (history->seconds[i] < history->liftoff_seconds + **seconds + 1) continue;
      EXPECT_LT(history->surface_celsius[i], k_bare_hand_celsius + 1) << name;
      EXPECT_LT(history->celsius[0][i], k_bare_hand_celsius + 1) << name;
      EXPECT_LT(history->celsius[1][i], k_bare_hand_celsius + 1) << name;
    }
  }
}

steam::PaceProblem seat(steam::Towel towel) {
  steam::PaceProblem problem;
  problem.calibration = steam::prior_calibration("touch|head", "touch|cloth", towel, 0.08, 101325, 256);
  problem.cloth_key = "touch|cloth";
  problem.stack_key = "touch|stack";
  const steam::Stack stack = steam::problems_for_tests().front().problem.stack;
  for (const steam::Layer& layer : stack) problem.stack.push_back({layer});
  problem.target_depth_metres = 0.002;
  return problem;
}

// The corners wait longer than at least 19 of 20 samples of the prior, hands included.
TEST(TouchLaw, TheCornersCoverTheEnsemble) {
  for (const double pace : {0.006, 0.015, 0.03}) {
    const steam::PaceProblem problem = seat(steam::Towel::none);
    const auto corner = bare_hand_seconds(problem, pace);
    ASSERT_TRUE(corner) << corner.error().message;
    ASSERT_TRUE(*corner) << pace;
    int longer = 0;
    constexpr int k_samples = 100;
    for (int i = 0; i < k_samples; ++i) {
      const steam::DrawnHead drawn = steam::drawn_head(problem.calibration, problem.cloth_key, i);
      steam::PassProblem pass = middle_pass(problem, pace);
      pass.head = drawn.head;
      pass.vapour_efficiency = drawn.vapour_efficiency;
      pass.pace_metres_per_second *= numerics::exp(
          steam::k_hand_spread * SobolStream("touch test hand", 0).normal(static_cast<std::uint32_t>(i)));
      const auto seconds = bare_hand_seconds(pass);
      ASSERT_TRUE(seconds);
      if (!*seconds || **seconds > **corner) ++longer;
    }
    EXPECT_LE(longer, k_samples / 20) << pace;
  }
}

TEST(TouchLaw, LaterReadingsAreCooler) {
  for (const auto& [name, pass] : steam::problems_for_tests()) {
    std::vector<SurfaceReading> readings(4);
    const double after[] = {0, 1, 3, 20};
    for (std::size_t i = 0; i < 4; ++i) {
      readings[i].seconds_after = after[i];
      readings[i].gun_celsius = 50;
    }
    const auto expected = expected_readings(pass, readings);
    ASSERT_TRUE(expected) << name;
    for (std::size_t i = 1; i < 4; ++i) EXPECT_LT((*expected)[i].celsius, (*expected)[i - 1].celsius) << name;
    for (const ExpectedReading& reading : *expected) EXPECT_LT(reading.kelvin_per_second, 0) << name;
  }
}

TEST(TouchLaw, TheLikelihoodPeaksAtWhatWasRead) {
  SurfaceReading gun;
  gun.gun_celsius = 61;
  const double best = log_likelihood(gun, {61, -5});
  EXPECT_GT(best, log_likelihood(gun, {55, -5}));
  EXPECT_GT(best, log_likelihood(gun, {67, -5}));
  // Where the surface falls fast the same miss weighs less.
  EXPECT_GT(log_likelihood(gun, {61, -2}) - log_likelihood(gun, {70, -2}),
            log_likelihood(gun, {61, -20}) - log_likelihood(gun, {70, -20}));
}

TEST(TouchLaw, PalmsOrderTheirWords) {
  SurfaceReading palm;
  for (const auto& [word, best, worse] : std::vector<std::tuple<Palm, double, double>>{
           {Palm::cold, 24.0, 45.0}, {Palm::warm, 38.0, 60.0}, {Palm::hot, 60.0, 30.0}}) {
    palm.palm = word;
    EXPECT_GT(log_likelihood(palm, {best, 0}), log_likelihood(palm, {worse, 0}));
    EXPECT_GT(log_likelihood(palm, {worse, 0}), -6) << "one slip of a palm may not rule a sample out";
  }
  // The three words together have the whole probability.
  for (const double celsius : {20.0, 33.0, 41.0, 47.0, 70.0}) {
    double sum = 0;
    for (const Palm word : {Palm::cold, Palm::warm, Palm::hot}) {
      palm.palm = word;
      sum += std::exp(log_likelihood(palm, {celsius, -1}));
    }
    EXPECT_NEAR(sum, 1, 1e-9) << celsius;
  }
}

}  // namespace
}  // namespace lastegg::touch
