#include "treatments/boiler/head_and_towel.h"

#include <gtest/gtest.h>

#include <limits>

namespace lastegg::boiler {
namespace {

constexpr double k_cold = std::numeric_limits<double>::infinity();

TEST(WarmUpLaw, ACondensingKilogramHeatsTheHose) {
  const auto cold = warm_up(0.65e-3, k_cold, 20);
  ASSERT_TRUE(cold);
  // Steam tables: 2256.5 kJ/kg at 100 C.
  EXPECT_NEAR(cold->water_kilograms * 2256.5e3, k_hose_and_head_joules_per_kelvin * 80, 300);
  EXPECT_NEAR(cold->seconds, cold->water_kilograms / 0.65e-3, 1e-9);
}

TEST(WarmUpLaw, LongerRestsSpitMore) {
  double before = -1;
  for (const double rest : {0.0, 30.0, 300.0, 3000.0, k_cold}) {
    const auto now = warm_up(0.65e-3, rest, 20);
    ASSERT_TRUE(now);
    EXPECT_GT(now->water_kilograms, before) << rest;
    before = now->water_kilograms;
  }
  EXPECT_EQ(warm_up(0.65e-3, 0, 20)->water_kilograms, 0);
  EXPECT_GT(warm_up(0.65e-3, k_cold, 0)->seconds, warm_up(0.65e-3, k_cold, 30)->seconds);
}

TEST(TowelLaw, SmallHeadsAndStrongSteamSoakItSooner) {
  TowelWrap wrap;
  const auto usual = towel_life(wrap);
  ASSERT_TRUE(usual);
  EXPECT_LT(usual->shortest_seconds, 0.8 * usual->seconds);
  EXPECT_GT(usual->shortest_seconds, 0.2 * usual->seconds);
  TowelWrap small = wrap;
  small.head_width_metres = 0.08;
  EXPECT_LT(towel_life(small)->seconds, usual->seconds);
  TowelWrap strong = wrap;
  strong.supply_kilograms_per_second *= 2;
  EXPECT_LT(towel_life(strong)->seconds, usual->seconds);
  TowelWrap cold = wrap;
  cold.room_celsius = 5;
  EXPECT_LT(towel_life(cold)->seconds, usual->seconds);
}

TEST(TowelLaw, ItTakesUpNoMoreThanItHoldsAndNoMoreThanIsGiven) {
  const TowelWrap wrap;
  const auto life = towel_life(wrap);
  ASSERT_TRUE(life);
  EXPECT_GE(life->water_kilograms, k_carried_over_share * wrap.supply_kilograms_per_second * life->seconds);
  EXPECT_LT(life->water_kilograms, wrap.supply_kilograms_per_second * life->seconds);
}

TEST(TowelLaw, RefusesWithAPlace) {
  TowelWrap wrap;
  wrap.head_width_metres = 0;
  const auto refused = towel_life(wrap);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "/head/width_metres");
  EXPECT_FALSE(warm_up(0, 0, 20));
}

}  // namespace
}  // namespace lastegg::boiler
