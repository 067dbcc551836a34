#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "treatments/drying/drying.h"
#include "treatments/steam/pass/problems_for_tests.h"

namespace lastegg::drying {
namespace {

DryingProblem problem_of(const steam::PassProblem& pass, double film = k_still_film, double humidity = 0.5) {
  return {pass, 0, {film, 22, humidity}};
}

double seconds_of(const DryingProblem& problem) {
  const auto dried = dry(problem);
  EXPECT_TRUE(dried) << dried.error().message;
  EXPECT_TRUE(dried->seconds);
  return dried->seconds.value_or(-1);
}

// What the pass of treatments/steam holds after so many seconds of air, on a fine grid with fine steps.
double held_after(steam::PassProblem pass, const steam::RoomAir& air, double seconds) {
  pass.air = air;
  pass.observe_seconds = seconds;
  const auto history = steam::run_pass(pass, steam::shown_resolution());
  EXPECT_TRUE(history) << history.error().message;
  return history->ledger.water_held_kilograms_per_m2;
}

TEST(DryingLaw, AgreesWithTheFineMarchOfThePass) {
  int compared = 0;
  for (const auto& [name, pass] : steam::problems_for_tests()) {
    for (const double film : {k_still_film, k_fan_film}) {
      const DryingProblem problem = problem_of(pass, film);
      const auto dried = dry(problem);
      ASSERT_TRUE(dried && dried->seconds) << name;
      const double water = dried->water_kilograms_per_m2;
      const auto history = steam::run_pass(pass, steam::shown_resolution());
      ASSERT_TRUE(history) << name;
      EXPECT_NEAR(water, history->water_gain_at_liftoff_kilograms_per_m2, 0.02 * water) << name;
      if (*dried->seconds > 3000) continue;  // longer than the pass may be watched
      const double left = std::max(k_dry_share * water, k_dry_kilograms_per_m2);
      EXPECT_NEAR(held_after(pass, problem.air, *dried->seconds), left, 0.02 * water)
          << name << ", film " << film;
      ++compared;
    }
  }
  EXPECT_GE(compared, 6);
}

// Once the heat of the pass is spent, all that evaporates more water has to come from the room, through a
// film that gives no more than to a surface as cold as its wet bulb, and from what the stack itself can still
// cool down to that.
TEST(DryingLaw, NoFasterThanTheRoomCanGiveHeat) {
  for (const auto& [name, pass] : steam::problems_for_tests()) {
    const DryingProblem problem = problem_of(pass);
    const auto dried = dry(problem);
    ASSERT_TRUE(dried && dried->seconds) << name;
    constexpr double k_spent_seconds = 900;
    if (*dried->seconds < k_spent_seconds) continue;
    const double held = held_after(pass, problem.air, k_spent_seconds);
    const double left = std::max(k_dry_share * dried->water_kilograms_per_m2, k_dry_kilograms_per_m2);
    double capacity = 0;
    for (const auto& layer : pass.stack)
      capacity += layer.thickness_metres * layer.heat_capacity_joules_per_m3_kelvin;
    const double depression = 22 - wet_bulb_celsius(problem.air, pass.pressure_pascal);
    const double own = (capacity + 4180 * held) * (depression + 2) / 2.45e6;
    const double rate = free_surface_rate(problem.air, pass.pressure_pascal);
    EXPECT_GE(*dried->seconds, k_spent_seconds + (held - left - own) / rate) << name;
  }
}

TEST(DryingLaw, AFanAndDryAirHelp) {
  for (auto [name, pass] : steam::problems_for_tests()) {
    EXPECT_LT(seconds_of(problem_of(pass, k_fan_film)), seconds_of(problem_of(pass))) << name;
    double before = 0;
    for (const double humidity : {0.2, 0.35, 0.5, 0.65, 0.8}) {
      // A cloth that is in balance with damp air; dry air meets one that was in balance with 50 %.
      pass.start_activity = pass.air.relative_humidity = std::max(humidity, 0.5);
      const double now = seconds_of(problem_of(pass, k_still_film, humidity));
      EXPECT_GT(now, before) << name << " at " << humidity;
      before = now;
    }
  }
}

TEST(DryingLaw, ASlowerPassDriesLonger) {
  for (auto [name, pass] : steam::problems_for_tests()) {
    const double once = seconds_of(problem_of(pass));
    pass.pace_metres_per_second /= 2;
    EXPECT_GT(seconds_of(problem_of(pass)), once) << name;
  }
}

TEST(DryingLaw, TwoPassesDryLonger) {
  for (auto [name, pass] : steam::problems_for_tests()) {
    const double once = seconds_of(problem_of(pass));
    pass.passes = 2;
    EXPECT_GT(seconds_of(problem_of(pass)), once) << name;
  }
}

TEST(DryingLaw, WaterThatLiesDeeperTakesLonger) {
  // The same water under a dry cover: a cover without water of its own, as thick as the first millimetres.
  auto pass = steam::problems_for_tests().front().problem;
  pass.head.forced_gas_metres_per_second = 0;
  const double shallow = seconds_of(problem_of(pass, k_fan_film));
  pass.head.forced_gas_metres_per_second = 0.015;  // drives it further in
  EXPECT_GT(seconds_of(problem_of(pass, k_fan_film)), shallow);
}

TEST(DryingLaw, DropletsGoAtTheRateOfAFreeSurface) {
  const auto pass = steam::problems_for_tests().front().problem;
  DryingProblem problem = problem_of(pass);
  const double without = seconds_of(problem);
  problem.carried_over_kilograms_per_m2 = 0.001;
  // The share that counts as dry grows with the water: at most a twentieth of a gram earlier.
  EXPECT_NEAR(seconds_of(problem) - without, 0.001 / free_surface_rate(problem.air, 101325), 0.06 * without);
}

TEST(DryingLaw, SaturatedAirNeverDries) {
  const auto pass = steam::problems_for_tests()[1].problem;
  DryingProblem problem = problem_of(pass, k_still_film, 1.0);
  problem.carried_over_kilograms_per_m2 = 0.005;
  const auto dried = dry(problem);
  ASSERT_TRUE(dried);
  EXPECT_FALSE(dried->seconds);
}

TEST(DryingLaw, ColdRoomsAndSoakedClothsStayFinite) {
  for (auto [name, pass] : steam::problems_for_tests()) {
    for (const double room : {-5.0, 5.0, 40.0}) {
      pass.start_celsius = pass.air.celsius = room;
      for (const double activity : {0.2, 0.9}) {
        pass.start_activity = activity;
        const auto dried = dry({pass, 0.01, {k_fan_film, room, 0.6}});
        ASSERT_TRUE(dried) << name << " at " << room << " C, " << activity << ": " << dried.error().message;
        EXPECT_GT(dried->water_kilograms_per_m2, 0.01) << name;
        if (dried->seconds) {
          EXPECT_GT(*dried->seconds, 60) << name;
        }
      }
    }
  }
}

}  // namespace
}  // namespace lastegg::drying
