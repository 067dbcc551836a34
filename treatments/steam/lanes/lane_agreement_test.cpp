// The lanes against the double-precision reference, and against themselves at other widths.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string>
#include <vector>

#include "physics/uncertainty/sobol.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/lanes/steamers_for_tests.h"
#include "treatments/steam/pass/exposure.h"

namespace lastegg::steam {
namespace {

// Doses below and above these are no verdict's neighbours: their logarithms may differ freely.
constexpr double k_least_log10_ratio = -2, k_most_log10_ratio = 2.5;

int draws(int usual, int in_full) {
  const char* wanted = std::getenv("LASTEGG_LONG");
  return wanted != nullptr && std::string(wanted) == "1" ? in_full : usual;
}

double quantile(std::vector<double> values, double share) {
  std::sort(values.begin(), values.end());
  return values[std::min(values.size() - 1,
                         static_cast<std::size_t>(share * static_cast<double>(values.size())))];
}

struct Lived {
  double peak, probe, surface, egg;
};
Lived lived(const LaneBatch& batch, const PassHistory& history) {
  Series series;
  fine_series(history, history.celsius[0], 0.5, series);
  Lived out{peak_of(series).celsius, lagged_peak(series, batch.probe_time_constant_seconds).celsius, 0,
            kill_of(series).egg};
  fine_series(history, history.surface_celsius, 0.5, series);
  out.surface = peak_of(series).celsius;
  return out;
}

bool near_a_verdict(double log10_ratio) {
  return log10_ratio > k_least_log10_ratio && log10_ratio < k_most_log10_ratio;
}

TEST(LaneAgreement, EveryWidthGivesTheSameNumbers) {
  const auto kernels = kernels_here();
  if (kernels.size() < 2) GTEST_SKIP() << "this machine has one width of vectors only";
  for (const NamedProblem& named : problems_for_tests()) {
    const DrawnPasses drawn = drawn_passes(named, 37, 0.4);
    for (const LaneAccuracy accuracy : {LaneAccuracy::usual, LaneAccuracy::preview}) {
      const auto first = run_passes(drawn.batch, drawn.passes, accuracy, kernels.front().run);
      ASSERT_TRUE(first);
      for (const WideKernel& kernel : kernels) {
        const auto other = run_passes(drawn.batch, drawn.passes, accuracy, kernel.run);
        ASSERT_TRUE(other);
        for (std::size_t i = 0; i < first->size(); ++i) {
          EXPECT_EQ((*first)[i].kill.egg, (*other)[i].kill.egg) << named.name << i;
          EXPECT_EQ((*first)[i].kill.engorged, (*other)[i].kill.engorged) << named.name << i;
          EXPECT_EQ((*first)[i].target_peak_celsius, (*other)[i].target_peak_celsius) << named.name << i;
          EXPECT_EQ((*first)[i].probe_peak_celsius, (*other)[i].probe_peak_celsius) << named.name << i;
          EXPECT_EQ((*first)[i].surface_seconds_above, (*other)[i].surface_seconds_above) << named.name << i;
          EXPECT_EQ((*first)[i].water_gain_kilograms_per_m2, (*other)[i].water_gain_kilograms_per_m2);
        }
      }
    }
  }
}

// On the same grid and, where no step had to be cut, the same steps.
TEST(LaneAgreement, FollowsTheReferenceOnItsOwnGridAndSteps) {
  std::vector<double> dose_gap, peak_gap, surface_gap, water_gap;
  for (const NamedProblem& named : problems_for_tests()) {
    const DrawnPasses drawn = drawn_passes(named, 60, 0.4);
    for (const LanePass& pass : drawn.passes) {
      const auto lanes = run_passes(drawn.batch, {&pass, 1});
      ASSERT_TRUE(lanes);
      const auto history = run_pass(
          lane_problem(drawn.batch, pass),
          {.cells = lane_cells(LaneAccuracy::usual), .stop_below_celsius = 40, .largest_mismatch_kelvin = 1});
      ASSERT_TRUE(history);
      const LaneAnswer& lane = lanes->front();
      if (history->most_parts > 1 || lane.steps_were_cut) continue;
      const Lived reference = lived(drawn.batch, *history);
      peak_gap.push_back(std::fabs(lane.target_peak_celsius - reference.peak));
      surface_gap.push_back(std::fabs(lane.surface_peak_celsius - reference.surface));
      water_gap.push_back(
          std::fabs(lane.water_gain_kilograms_per_m2 - history->water_gain_at_liftoff_kilograms_per_m2));
      if (near_a_verdict(reference.egg)) dose_gap.push_back(std::fabs(lane.kill.egg - reference.egg));
    }
  }
  ASSERT_GT(dose_gap.size(), 20U);
  std::printf(
      "%zu passes: log10 dose p95 %.4f, largest %.4f; peak %.3f K; surface %.3f K; water %.2g kg/m2\n",
      dose_gap.size(), quantile(dose_gap, 0.95), quantile(dose_gap, 1), quantile(peak_gap, 1),
      quantile(surface_gap, 1), quantile(water_gap, 1));
  EXPECT_LE(quantile(dose_gap, 1), 5e-3);
  EXPECT_LE(quantile(peak_gap, 1), 0.05);
  EXPECT_LE(quantile(surface_gap, 1), 0.05);
  EXPECT_LE(quantile(water_gap, 1), 2e-4);
}

// Time and space together, against a grid four times as fine with steps cut in four.
TEST(LaneAgreement, TotalErrorOfShownNumbersAndOfPreviews) {
  const int count = draws(40, 400);
  std::vector<double> peak[2], dose[2];
  for (const NamedProblem& named : problems_for_tests()) {
    const DrawnPasses drawn = drawn_passes(named, count, 0);
    const auto usual = run_passes(drawn.batch, drawn.passes, LaneAccuracy::usual);
    const auto preview = run_passes(drawn.batch, drawn.passes, LaneAccuracy::preview);
    ASSERT_TRUE(usual && preview);
    for (std::size_t i = 0; i < drawn.passes.size(); ++i) {
      const auto history = run_pass(lane_problem(drawn.batch, drawn.passes[i]),
                                    {.cells = 192, .refine = 4, .stop_below_celsius = 38});
      ASSERT_TRUE(history);
      const Lived fine = lived(drawn.batch, *history);
      const LaneAnswer* answers[2] = {&(*usual)[i], &(*preview)[i]};
      for (int a = 0; a < 2; ++a) {
        peak[a].push_back(std::fabs(answers[a]->target_peak_celsius - fine.peak));
        if (near_a_verdict(fine.egg))
          dose[a].push_back(std::fabs(std::max(answers[a]->kill.egg, k_least_log10_ratio) - fine.egg));
      }
    }
  }
  for (int a = 0; a < 2; ++a) {
    std::printf("%s: peak p95 %.3f K, p99 %.3f; log10 dose p95 %.4f, p99 %.4f, largest %.3f (%zu)\n",
                a == 0 ? "shown" : "preview", quantile(peak[a], 0.95), quantile(peak[a], 0.99),
                quantile(dose[a], 0.95), quantile(dose[a], 0.99), quantile(dose[a], 1), dose[a].size());
  }
  EXPECT_LE(quantile(peak[0], 0.95), 0.15);
  EXPECT_LE(quantile(dose[0], 0.95), 0.03);
  EXPECT_LE(quantile(dose[0], 1), 0.08);
  EXPECT_LE(quantile(peak[1], 0.95), 0.3);
  EXPECT_LE(quantile(dose[1], 0.95), 0.05);
}

}  // namespace
}  // namespace lastegg::steam
