// Repeat passes with cooling between them: the dose adds, the heat that is left helps, the water that is left
// hinders.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <span>
#include <vector>

#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/kill.h"
#include "treatments/steam/pass/problems_for_tests.h"

namespace lastegg::steam {
namespace {

struct Place {
  PlaceKill kill;
  Series series;
  PassHistory history;
};

Place place_of(const PassProblem& problem) {
  const auto history = run_pass(problem, shown_resolution());
  EXPECT_TRUE(history) << history.error().message;
  Place place;
  place.history = *history;
  fine_series(place.history, place.history.celsius[0], 0.5, place.series);
  place.kill = kill_of(place.series);
  return place;
}

double at(const Series& series, double seconds) {
  const auto after = std::lower_bound(series.seconds.begin(), series.seconds.end(), seconds);
  if (after == series.seconds.end()) return series.celsius.back();
  return series.celsius[static_cast<std::size_t>(after - series.seconds.begin())];
}

PassProblem at_first_depth(PassProblem problem, int passes, double gap_seconds) {
  problem.depths_metres.resize(1);
  problem.passes = passes;
  problem.gap_seconds = gap_seconds;
  return problem;
}

// Without skirt and pause two passes are one of half the pace.
TEST(RepeatLaw, TwoPassesWithoutPauseAreOneOfHalfThePace) {
  for (auto [name, problem] : problems_for_tests()) {
    problem.head.skirt_length_metres = 0;
    const Place twice = place_of(at_first_depth(problem, 2, 0.1));
    problem.pace_metres_per_second /= 2;
    const Place slow = place_of(at_first_depth(problem, 1, 20));
    EXPECT_NEAR(twice.kill.egg, slow.kill.egg, 0.06) << name;
    EXPECT_NEAR(peak_of(twice.series).celsius, peak_of(slow.series).celsius, 0.4) << name;
    EXPECT_NEAR(twice.history.water_gain_at_liftoff_kilograms_per_m2,
                slow.history.water_gain_at_liftoff_kilograms_per_m2,
                0.02 * slow.history.water_gain_at_liftoff_kilograms_per_m2)
        << name;
  }
}

// What two passes do is no less than what the first of them does alone, and its history is the same until
// then.
TEST(RepeatLaw, TheFirstPassIsTheSameAndTheDoseAdds) {
  for (const auto& [name, problem] : problems_for_tests()) {
    for (const double gap : {5.0, 20.0, 120.0}) {
      PassProblem once = at_first_depth(problem, 1, gap);
      once.observe_seconds = gap;
      const Place first = place_of(once);
      const Place both = place_of(at_first_depth(problem, 2, gap));
      EXPECT_GT(both.kill.egg, first.kill.egg) << name << " after " << gap;
      EXPECT_GT(both.history.water_gain_at_liftoff_kilograms_per_m2,
                first.history.water_gain_at_liftoff_kilograms_per_m2);
      for (const double seconds : {0.5, 1.0, 2.0}) {
        const double moment = first.history.liftoff_seconds + std::min(seconds, gap);
        EXPECT_NEAR(at(both.series, moment), at(first.series, moment), 0.6) << name << " at " << moment;
      }
    }
  }
}

// The room of the kill law, which knows of holes and of times that clear a dose, adds what the two passes
// gave.
TEST(RepeatLaw, DoseIsTheSumOverBothHistories) {
  const auto& law = bugs::kill_law(bugs::Stage::egg, bugs::Exposure::steam);
  for (const auto& [name, problem] : problems_for_tests()) {
    const Place both = place_of(at_first_depth(problem, 2, 60));
    const double cut =
        both.history.seconds[both.history.phase_starts[4]] - 1;  // a second before the second pass
    const auto after = std::lower_bound(both.series.seconds.begin(), both.series.seconds.end(), cut);
    const auto split = static_cast<std::size_t>(after - both.series.seconds.begin());
    const std::span<const double> seconds(both.series.seconds), celsius(both.series.celsius);
    const auto first = bugs::equivalent_minutes({seconds.first(split + 1), celsius.first(split + 1)}, law);
    const auto second = bugs::equivalent_minutes({seconds.subspan(split), celsius.subspan(split)}, law);
    const auto whole = bugs::equivalent_minutes({seconds, celsius}, law);
    for (std::size_t z = 0; z < 2; ++z) {
      EXPECT_NEAR(whole[z], first[z] + second[z], 1e-9 * whole[z]) << name;
      EXPECT_GT(first[z], 0) << name;
      EXPECT_GT(second[z], 0) << name;
    }
    const double ratio = bugs::ratio_to_lt99(whole, law);
    EXPECT_NEAR(bugs::log10_ratio({seconds, celsius}, law, 0), std::log10(ratio), 1e-9) << name;
  }
}

// The longer the pause the cooler the start of the second pass, down to the room and no further than a wet
// bulb.
TEST(RepeatLaw, PausesCool) {
  for (const auto& [name, problem] : problems_for_tests()) {
    double before = 1e9;
    for (const double gap : {2.0, 10.0, 60.0, 600.0, 3600.0}) {
      const Place both = place_of(at_first_depth(problem, 2, gap));
      const double start = both.history.celsius[0][both.history.phase_starts[4]];
      if (before > 22.5) {
        EXPECT_LT(start, before) << name << " after " << gap;
      } else {
        EXPECT_LT(start, 22.5) << name << " after " << gap;
      }
      EXPECT_GT(start, 15) << name;  // the wet bulb of the room
      before = start;
    }
    EXPECT_LT(before, 22.5) << name;
  }
}

// The lanes march repeats as the reference does.
TEST(RepeatLaw, LanesAgreeWithTheReference) {
  for (const auto& [name, problem] : problems_for_tests()) {
    for (const double gap : {10.0, 120.0}) {
      LaneBatch batch;
      batch.pressure_pascal = problem.pressure_pascal;
      batch.start_celsius = problem.start_celsius;
      batch.start_activity = problem.start_activity;
      batch.air = problem.air;
      batch.passes = 2;
      batch.gap_seconds = gap;
      const LanePass pass{problem.head, problem.vapour_efficiency, problem.pace_metres_per_second,
                          &problem.stack, problem.depths_metres[0]};
      const auto answers = run_passes(batch, std::vector<LanePass>{pass});
      ASSERT_TRUE(answers) << name;
      const Place reference = place_of(at_first_depth(problem, 2, gap));
      EXPECT_NEAR(answers->front().kill.egg, reference.kill.egg, 0.05) << name << " after " << gap;
      EXPECT_NEAR(answers->front().water_gain_kilograms_per_m2,
                  reference.history.water_gain_at_liftoff_kilograms_per_m2, 0.0006)
          << name << " after " << gap;
    }
  }
}

}  // namespace
}  // namespace lastegg::steam
