// Laws of a pace window: it shrinks as more confidence is asked, and harder targets ask for slower paces.
#include "treatments/steam/pace/pace.h"

#include <gtest/gtest.h>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"
#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/kill.h"

namespace lastegg::steam {
namespace {

PaceProblem problem(double confidence, double depth_metres, double wetting) {
  PaceProblem p;
  p.calibration = prior_calibration("head|law", "cloth|law", Towel::none, 0.08, 101325, 64);
  p.cloth_key = "cloth|law";
  p.stack_key = "stack|law";
  p.stack = {{{0.0024, 480e3, 0.055, true, 0.68, 2.0, 2.0}, 0.2, 0.1, 0.1},
             {{0.03, 45e3, 0.04, true, 0.97, 1.3, 0.55}, 0, 0.1, 0.1}};
  p.target_depth_metres = depth_metres;
  p.harm.wetting_kilograms_per_m2 = wetting;
  p.confidence = confidence;
  return p;
}

TEST(PaceLaw, WindowShrinksWithConfidence) {
  double fastest = 1, slowest = 0;
  for (const double confidence : {0.6, 0.8, 0.9, 0.95}) {
    const auto report = find_pace(problem(confidence, 0.0015, 0.1));
    ASSERT_TRUE(report) << report.error().message;
    EXPECT_LE(report->fastest_metres_per_second, fastest);
    EXPECT_GE(report->slowest_metres_per_second, slowest);
    fastest = report->fastest_metres_per_second;
    slowest = report->slowest_metres_per_second;
  }
}

TEST(PaceLaw, DeeperAsksForSlowerAndLessWaterForFaster) {
  const auto base = find_pace(problem(0.9, 0.0012, 0.1));
  const auto deeper = find_pace(problem(0.9, 0.0020, 0.1));
  const auto drier = find_pace(problem(0.9, 0.0012, 0.06));
  ASSERT_TRUE(base && deeper && drier);
  EXPECT_LT(deeper->fastest_metres_per_second, base->fastest_metres_per_second);
  EXPECT_GT(drier->slowest_metres_per_second, base->slowest_metres_per_second);
  for (std::size_t k = 1; k < base->curve.size(); ++k) {
    EXPECT_LE(base->curve[k].lethal_share, base->curve[k - 1].lethal_share + 1e-12);
    EXPECT_GE(base->curve[k].harmless_share, base->curve[k - 1].harmless_share - 1e-12);
  }
}

// Shares and margins follow from the limits that gave the window, so here every sample is marched at the
// planned pace by the reference: the asked share must be lethal.
TEST(PaceLaw, TheWindowsEndIsWhereItSays) {
  const PaceProblem asked = problem(0.9, 0.0015, 0.1);
  const auto report = find_pace(asked);
  ASSERT_TRUE(report);
  ASSERT_TRUE(report->has_window());
  ASSERT_TRUE(report->planned);
  EXPECT_GE(report->planned->lethal_share, 0.9);
  double lethal = 0;
  Series series;
  for (int i = 0; i < report->samples; ++i) {
    const double hand =
        numerics::exp(k_hand_spread * SobolStream("hand", 0).normal(static_cast<std::uint32_t>(i)));
    const auto history = run_pass(sample_pass(asked, i, report->planned->pace_metres_per_second * hand),
                                  {.cells = 64, .stop_below_celsius = 40});
    ASSERT_TRUE(history) << history.error().message;
    fine_series(*history, history->celsius[0], 0.5, series);
    if (kill_of(series).worst() >= numerics::log10(bugs::required_ratio()))
      lethal += asked.calibration.weights[static_cast<std::size_t>(i)];
  }
  EXPECT_GE(lethal, 0.9) << "marched by the reference";
  EXPECT_NEAR(lethal, report->planned->lethal_share, 0.05);
  EXPECT_GT(report->planned->lethal_margin, 0.03) << "the planned pace is clear of its limit";
  EXPECT_LT(report->planned->pace_metres_per_second, report->fastest_metres_per_second);
  EXPECT_GT(report->planned->pace_metres_per_second, report->slowest_metres_per_second);
}

// What is left of the heat of the first pass helps the second: after a longer pause there is less of it.
TEST(PaceLaw, ALongerPauseBetweenPassesCoolsMore) {
  double fastest = 1, peak = 1000;
  for (const double gap : {2.0, 20.0, 200.0}) {
    PaceProblem twice = problem(0.9, 0.0015, 0.1);
    twice.passes = 2;
    twice.gap_seconds = gap;
    const auto history = run_pass(sample_pass(twice, 0, 0.02), {.cells = 64});
    ASSERT_TRUE(history) << history.error().message;
    Series series;
    fine_series(*history, history->celsius[0], 0.5, series);
    EXPECT_LT(peak_of(series).celsius, peak - 0.5) << gap << " s";
    peak = peak_of(series).celsius;
    const auto report = find_pace(twice);
    ASSERT_TRUE(report) << report.error().message;
    EXPECT_LT(report->fastest_metres_per_second, 0.99 * fastest) << gap << " s";
    fastest = report->fastest_metres_per_second;
  }
  EXPECT_EQ(PaceProblem{}.gap_seconds, k_gap_seconds);
}

// With one pass there is no pause to matter.
TEST(PaceLaw, ThePauseIsOfNoEffectForOnePass) {
  PaceProblem once = problem(0.9, 0.0015, 0.1);
  const auto usual = find_pace(once);
  once.gap_seconds = 300;
  const auto later = find_pace(once);
  ASSERT_TRUE(usual && later);
  EXPECT_EQ(usual->fastest_metres_per_second, later->fastest_metres_per_second);
  EXPECT_EQ(usual->slowest_metres_per_second, later->slowest_metres_per_second);
}

}  // namespace
}  // namespace lastegg::steam
