// The samples' fastest and slowest paces, found from few marches in lanes, against root finding with the
// reference.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/pace/pace.h"
#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/kill.h"

namespace lastegg::steam {
namespace {

struct Named {
  const char* name;
  PaceProblem problem;
};

// A seat, a fold and a tick with the spreads of real goods, under a steamer that nobody has tested.
std::vector<Named> problems(int samples) {
  const UncertainLayer fold{{0.0024, 480e3, 0.055, true, 0.68, 2.0, 2.0}, 0.2, 0.1, 0.1};
  const UncertainLayer tick{{0.0008, 480e3, 0.055, true, 0.68, 2.0, 2.0}, 0.2, 0.1, 0.1};
  const UncertainLayer batting{{0.009, 19.5e3, 0.04, true, 0.985, 1.05, 0.074}, 0.2, 0.1, 0.1};
  const UncertainLayer foam{{0.03, 45e3, 0.04, true, 0.97, 1.3, 0.55}, 0, 0.1, 0.1};
  const auto problem = [&](const std::string& name, std::vector<UncertainLayer> stack, double depth) {
    PaceProblem p;
    p.calibration = prior_calibration("head|agreement", "cloth|" + name, Towel::none, 0.08, 101325, samples);
    p.cloth_key = "cloth|" + name;
    p.stack_key = "stack|" + name;
    p.stack = std::move(stack);
    p.target_depth_metres = depth;
    p.harm.wetting_kilograms_per_m2 = 0.1;
    p.harm.surface_celsius = 90;
    p.harm.seconds_allowed_above = 5;
    return p;
  };
  return {{"fold", problem("fold", {fold, foam}, 0.0015)},
          {"tick", problem("tick", {tick, batting, foam}, 0.004)},
          {"seam", problem("seam", {tick, foam}, 0.0009)}};
}

double root(double low, double high, const std::function<double(double)>& falling) {
  double a = std::log(low), b = std::log(high);
  if (falling(low) <= 0) return 0;
  if (falling(high) > 0) return high;
  for (int i = 0; i < 12; ++i) {
    const double middle = 0.5 * (a + b);
    (falling(std::exp(middle)) > 0 ? a : b) = middle;
  }
  return std::exp(0.5 * (a + b));
}

TEST(PaceAgreement, LimitsOfSamplesAgainstRootFinding) {
  const char* wanted = std::getenv("LASTEGG_LONG");
  const bool full = wanted != nullptr && std::string(wanted) == "1";
  const int samples = 1024, stride = full ? 8 : 64;
  std::vector<double> gaps;
  for (const Named& named : problems(samples)) {
    const auto limits = sample_limits(named.problem, Marched::all);
    ASSERT_TRUE(limits) << limits.error().message;
    for (int i = 3; i < samples; i += stride) {
      const double hand =
          numerics::exp(k_hand_spread * SobolStream("hand", 0).normal(static_cast<std::uint32_t>(i)));
      Series series;
      const double fastest = root(k_paces.front(), k_paces.back(), [&](double pace) {
        const auto history =
            run_pass(sample_pass(named.problem, i, pace), {.cells = lane_cells(LaneAccuracy::usual),
                                                           .stop_below_celsius = 40,
                                                           .largest_mismatch_kelvin = 1});
        EXPECT_TRUE(history);
        fine_series(*history, history->celsius[0], 0.5, series);
        return kill_of(series).worst() - numerics::log10(bugs::required_ratio());
      });
      const double found = (*limits)[static_cast<std::size_t>(i)].fastest * hand;
      if (fastest == 0 || fastest == k_paces.back()) {
        EXPECT_NEAR(found, fastest, 0.02 * k_paces.back()) << named.name << ' ' << i;
        continue;
      }
      gaps.push_back(std::fabs(std::log(found / fastest)));
    }
  }
  std::sort(gaps.begin(), gaps.end());
  const double p95 = gaps[static_cast<std::size_t>(0.95 * static_cast<double>(gaps.size()))];
  std::printf("fastest pace of %zu samples: p50 %.2f %%, p95 %.2f %%, largest %.2f %%\n", gaps.size(),
              100 * gaps[gaps.size() / 2], 100 * p95, 100 * gaps.back());
  EXPECT_LE(p95, 0.004);
  EXPECT_LE(gaps.back(), 0.015);
}

// Marching only the samples near an end of the window leaves the window where it is.
// The search finds roots in few samples; here every sample is marched at the ends of what was found.
TEST(PaceAgreement, AtTheEndsOfAWindowTheAskedShareKillsAndTheAskedShareIsUnharmed) {
  constexpr double k_share = 0.01;  // a pace's error of 1.5 % moves so much of the weight
  for (const Named& named : problems(1024)) {
    SCOPED_TRACE(named.name);
    const auto report = find_pace(named.problem);
    ASSERT_TRUE(report);
    const auto fastest = look_at_pace(named.problem, report->fastest_metres_per_second);
    const auto slowest = look_at_pace(named.problem, report->slowest_metres_per_second);
    ASSERT_TRUE(fastest && slowest);
    EXPECT_NEAR(fastest->lethal_share, named.problem.confidence, k_share);
    EXPECT_NEAR(fastest->lethal_margin, 0, 0.03);
    ASSERT_NE(report->slow_limit, SlowLimit::steady_hand);
    EXPECT_NEAR(slowest->harmless_share, named.problem.confidence, k_share);
    const auto faster = look_at_pace(named.problem, 1.5 * report->fastest_metres_per_second);
    ASSERT_TRUE(faster);
    EXPECT_LT(faster->lethal_share, fastest->lethal_share);
    EXPECT_LT(faster->target_celsius.p50, fastest->target_celsius.p50);
    EXPECT_GE(faster->harmless_share, fastest->harmless_share);
  }
}

// A first look speaks for few samples: what a finger sees first is near to what stands in the end.
TEST(PaceAgreement, AFirstLookAtAPaceIsNearTheWhole) {
  for (const double pace : {0.006, 0.012, 0.0254}) {
    const auto first = problems(128), whole = problems(1024);
    for (std::size_t i = 0; i < first.size(); ++i) {
      SCOPED_TRACE(std::string(first[i].name) + " at " + std::to_string(pace));
      const auto quick = look_at_pace(first[i].problem, pace), full = look_at_pace(whole[i].problem, pace);
      ASSERT_TRUE(quick && full);
      const double width = full->target_celsius.p95 - full->target_celsius.p05;
      EXPECT_NEAR(quick->target_celsius.p50, full->target_celsius.p50, 0.1 * width);
      EXPECT_NEAR(quick->target_celsius.p05, full->target_celsius.p05, 0.15 * width);
      EXPECT_NEAR(quick->target_celsius.p95, full->target_celsius.p95, 0.15 * width);
      EXPECT_NEAR(quick->lethal_share, full->lethal_share, 0.08);
    }
  }
}

TEST(PaceAgreement, TheWindowNeedsOnlyTheSamplesNearItsEnds) {
  for (const Named& named : problems(1024)) {
    const auto window = [&](Marched marched) {
      const auto limits = sample_limits(named.problem, marched);
      EXPECT_TRUE(limits);
      std::vector<double> fastest, slowest;
      for (const SampleLimits& sample : *limits) {
        fastest.push_back(sample.fastest);
        slowest.push_back(std::max(sample.slowest, k_slowest_pace));
      }
      const std::vector<double>& weights = named.problem.calibration.weights;
      return std::pair(weighted_quantile(fastest, weights, 0.05), weighted_quantile(slowest, weights, 0.95));
    };
    const auto all = window(Marched::all), near = window(Marched::those_near_the_window);
    std::printf("%s: fastest %.5f and %.5f m/s, slowest %.5f and %.5f m/s\n", named.name, all.first,
                near.first, all.second, near.second);
    EXPECT_NEAR(near.first / all.first, 1, 0.01) << named.name;
    EXPECT_NEAR(near.second / all.second, 1, 0.01) << named.name;
  }
}

}  // namespace
}  // namespace lastegg::steam
