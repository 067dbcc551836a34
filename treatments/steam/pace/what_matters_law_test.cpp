// What is said to matter must matter: shares of a spread whose parts are known, and levers pulled.
#include "treatments/steam/pace/what_matters.h"

#include <gtest/gtest.h>

#include <cmath>

#include "physics/numerics/elementary.h"
#include "treatments/steam/pace/drawn_edge.h"

namespace lastegg::steam {
namespace {

PaceProblem fold() {
  PaceProblem p;
  p.calibration = prior_calibration("head|matters", "cloth|matters", Towel::none, 0.08, 101325, 1024);
  p.cloth_key = "cloth|matters";
  p.stack_key = "stack|matters";
  p.stack = {{{0.0024, 480e3, 0.055, true, 0.68, 2.0, 2.0}, 0.2, 0.1, 0.1},
             {{0.03, 45e3, 0.04, true, 0.97, 1.3, 0.55}, 0, 0.1, 0.1}};
  p.target_depth_metres = 0.0015;
  return p;
}

double share_of(const std::vector<InfluenceShare>& shares, Influence what) {
  for (const InfluenceShare& one : shares)
    if (one.what == what) return one.share;
  return -1;
}

// A pace made of known parts: ln v = -4 + 0.1 z(exchange) + 0.1 (z^2 - 1)/sqrt(2) of the same + 0.2 z(cloth)
// - 0.1 z(layer) - ln(hand). The variances are 0.02, 0.04, 0.01 and 0.0225.
TEST(WhatMattersLaw, SharesOfKnownParts) {
  const PaceProblem problem = fold();
  std::vector<SampleLimits> limits(1024);
  for (std::size_t i = 0; i < limits.size(); ++i) {
    const auto index = static_cast<std::uint32_t>(i);
    const Scores z = calibrated_scores(problem.calibration, problem.cloth_key, static_cast<int>(i));
    limits[i].fastest = std::exp(-4.2 + 0.1 * z[1] + 0.1 * (z[1] * z[1] - 1) / std::sqrt(2) + 0.2 * z[2] -
                                 0.1 * stack_scores(problem, index).front()) /
                        drawn_hand(index);
  }
  // Scores of different keys are independent draws: over 1024 samples their correlations are about 0.03, and
  // shares of a half may be off by as much.
  constexpr double k_chance = 0.05;
  const auto shares = influences(problem, limits);
  const double all = 0.02 + 0.04 + 0.01 + 0.0225;
  EXPECT_NEAR(share_of(shares, Influence::exchange), 0.02 / all, k_chance);
  EXPECT_NEAR(share_of(shares, Influence::cloth_vapour), 0.04 / all, k_chance);
  EXPECT_NEAR(share_of(shares, Influence::layers), 0.01 / all, k_chance);
  EXPECT_NEAR(share_of(shares, Influence::hand), 0.0225 / all, k_chance);
  EXPECT_LT(share_of(shares, Influence::steam_temperature), 0.01);
  EXPECT_LT(share_of(shares, Influence::forced_flow), 0.01);
  EXPECT_EQ(shares.front().what, Influence::cloth_vapour);
}

TEST(WhatMattersLaw, LeversPullTheRightWay) {
  const auto gains = lever_gains(fold());
  ASSERT_TRUE(gains) << gains.error().message;
  ASSERT_EQ(gains->size(), 7U);
  for (const LeverGain& gain : *gains) EXPECT_GE(gain.factor, 0.999) << static_cast<int>(gain.lever);
  EXPECT_GT((*gains)[0].factor, 1.2) << "a head half as long again stays half as long again";
  EXPECT_LT((*gains)[0].factor, 1.6);
  EXPECT_GT((*gains)[2].factor, 1.02) << "hotter steam";
}

// Under wood no vapour moves: conduction is what holds the heat back.
TEST(WhatMattersLaw, WoodIsHeldBackByConduction) {
  PaceProblem wood = fold();
  wood.stack = {{{0.015, 720e3, 0.12, false, 0, 1, 0}, 0.1, 0.1, 0.1}};
  wood.target_depth_metres = 0.001;
  const auto gains = lever_gains(wood);
  ASSERT_TRUE(gains);
  ASSERT_FALSE(gains->empty());
  for (const LeverGain& gain : *gains) {
    if (gain.lever == Lever::opener_cloth || gain.lever == Lever::stronger_push) {
      EXPECT_NEAR(gain.factor, 1, 1e-6);
    }
  }
  const Lever held = bottleneck(*gains);
  EXPECT_TRUE(held == Lever::conducting_layers || held == Lever::better_exchange);
}

TEST(WhatMattersLaw, NothingIsGainedWhereNothingKills) {
  PaceProblem deep = fold();
  deep.stack.back().layer.thickness_metres = 0.2;
  deep.target_depth_metres = 0.15;
  const auto gains = lever_gains(deep);
  ASSERT_TRUE(gains);
  EXPECT_TRUE(gains->empty());
}

}  // namespace
}  // namespace lastegg::steam
