// Laws of one pass: books that close, limits that hold, answers that settle as grid and steps are refined.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/pass.h"
#include "treatments/steam/pass/problems_for_tests.h"
#include "treatments/steam/steamer/unknowns.h"

namespace lastegg::steam {
namespace {

double peak(const PassHistory& history, std::size_t depth) {
  Series series;
  fine_series(history, history.celsius[depth], 0.5, series);
  return peak_of(series).celsius;
}

TEST(PassLaw, EnergyAndWaterLedgersClose) {
  for (const NamedProblem& named : problems_for_tests()) {
    const auto history = run_pass(named.problem, Resolution{}, true);
    ASSERT_TRUE(history) << named.name << ": " << history.error().message;
    const Ledger& ledger = history->ledger;
    EXPECT_NEAR(ledger.energy_held_joules_per_m2 / ledger.energy_in_joules_per_m2, 1.0, 1e-9) << named.name;
    EXPECT_NEAR(ledger.water_held_kilograms_per_m2 - ledger.water_in_kilograms_per_m2, 0.0,
                1e-9 * std::max(0.01, std::fabs(ledger.water_in_kilograms_per_m2)))
        << named.name;
  }
}

TEST(PassLaw, ActivityNeverPassesThatOfTheSteam) {
  for (const NamedProblem& named : problems_for_tests()) {
    const auto history = run_pass(named.problem, shown_resolution(), true);
    ASSERT_TRUE(history) << named.name;
    EXPECT_LE(history->activity_excess, 1e-6) << named.name;
  }
}

TEST(PassLaw, SlowerHotterSteamAndBetterExchangeHeatMore) {
  for (const NamedProblem& named : problems_for_tests()) {
    const auto at = [&](double pace_factor, double dew_shift, double film_factor) {
      PassProblem problem = named.problem;
      problem.pace_metres_per_second *= pace_factor;
      problem.head.dew_celsius += dew_shift;
      problem.head.film_watts_per_m2_kelvin *= film_factor;
      const auto history = run_pass(problem, {.cells = 48, .refine = 2});
      EXPECT_TRUE(history) << named.name;
      std::vector<double> peaks;
      for (std::size_t d = 0; d < problem.depths_metres.size(); ++d) peaks.push_back(peak(*history, d));
      return peaks;
    };
    const auto base = at(1, 0, 1);
    const auto slower = at(0.8, 0, 1);
    const auto cooler = at(1, -4, 1);
    const auto better = at(1, 0, 1.3);
    for (std::size_t d = 0; d < base.size(); ++d) {
      EXPECT_GT(slower[d], base[d]) << named.name << " depth " << d;
      EXPECT_LT(cooler[d], base[d]) << named.name << " depth " << d;
      EXPECT_GT(better[d], base[d]) << named.name << " depth " << d;
    }
  }
}

// The full model under refinement of the grid, with steps fine enough not to matter: differences shrink and
// the last is small. A scheme that is only consistent with itself fails here.
TEST(PassLaw, FullModelSettlesUnderGridRefinement) {
  std::vector<double> first_change, last_change;
  for (const NamedProblem& named : problems_for_tests()) {
    std::vector<PassHistory> runs;
    for (const int cells : {32, 96, 192}) {
      auto run = run_pass(named.problem, {.cells = cells, .refine = 32});
      ASSERT_TRUE(run) << named.name;
      runs.push_back(std::move(*run));
    }
    for (std::size_t d = 0; d < named.problem.depths_metres.size(); ++d) {
      first_change.push_back(std::fabs(peak(runs[1], d) - peak(runs[0], d)));
      last_change.push_back(std::fabs(peak(runs[2], d) - peak(runs[1], d)));
    }
  }
  const auto p95 = [](std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(0.95 * static_cast<double>(values.size() - 1) + 0.5)];
  };
  EXPECT_LT(p95(last_change), p95(first_change));
  EXPECT_LE(p95(last_change), 0.03);
}

TEST(PassLaw, StepsConvergeWithSecondOrder) {
  std::vector<double> coarse_error, fine_error;
  for (const NamedProblem& named : problems_for_tests()) {
    const auto at = [&](int refine) { return *run_pass(named.problem, {.cells = 32, .refine = refine}); };
    const PassHistory exact = at(64), coarse = at(4), fine = at(8);
    for (std::size_t d = 0; d < named.problem.depths_metres.size(); ++d) {
      coarse_error.push_back(std::fabs(coarse.celsius[d].back() - exact.celsius[d].back()) +
                             std::fabs(peak(coarse, d) - peak(exact, d)));
      fine_error.push_back(std::fabs(fine.celsius[d].back() - exact.celsius[d].back()) +
                           std::fabs(peak(fine, d) - peak(exact, d)));
    }
  }
  double coarse_sum = 0, fine_sum = 0;
  for (const double e : coarse_error) coarse_sum += e;
  for (const double e : fine_error) fine_sum += e;
  EXPECT_GT(coarse_sum / fine_sum, 3.0) << "halving the step should quarter the error";
  EXPECT_LT(fine_sum / static_cast<double>(fine_error.size()), 0.02);
}

TEST(PassLaw, PoorSteamCannotHeatAWetSurfaceAboveItsDewTemperature) {
  PassProblem problem = problems_for_tests().front().problem;
  for (const double dew : {75.0, 85.0, 95.0}) {
    problem.head.dew_celsius = dew;
    problem.pace_metres_per_second = 0.004;
    problem.start_activity = 0.95;
    for (Layer& layer : problem.stack) layer.sorption_scale_kilograms_per_m3 = 0.05;
    const auto history = run_pass(problem, {.cells = 64, .refine = 8});
    ASSERT_TRUE(history);
    EXPECT_LE(*std::max_element(history->surface_celsius.begin(), history->surface_celsius.end()),
              dew + 1e-6);
  }
}

TEST(PassLaw, RefusalsNameValueLimitAndPlace) {
  PassProblem problem = problems_for_tests().front().problem;
  problem.head.dew_celsius = 101;
  auto refused = run_pass(problem, Resolution{});
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "/head/dew_celsius");
  EXPECT_EQ(refused.error().value, "101");
  EXPECT_EQ(refused.error().limit, "99.72");
  problem = problems_for_tests().front().problem;
  problem.depths_metres = {0.001, 3};
  refused = run_pass(problem, Resolution{});
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "/depths_metres/1");
  problem = problems_for_tests().front().problem;
  problem.stack[1].conductivity_watts_per_metre_kelvin = 0;
  refused = run_pass(problem, Resolution{});
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "/stack/1/conductivity_watts_per_metre_kelvin");
}

}  // namespace
}  // namespace lastegg::steam
