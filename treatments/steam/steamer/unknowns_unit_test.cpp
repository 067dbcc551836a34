// The prior's four numbers: medians, ranges, monotone in their scores.
#include "treatments/steam/steamer/unknowns.h"

#include <gtest/gtest.h>

namespace lastegg::steam {
namespace {

TEST(Unknowns, MediansAreThoseDecided) {
  const HeadOnCloth bare = head_on_cloth({0, 0, 0, 0}, 101325, Towel::none);
  // Python 3.11 statistics.NormalDist(Tsat - 3, 3) truncated at the dew temperature of 99 % steam, both by
  // python3-iapws
  EXPECT_NEAR(bare.dew_celsius, 96.28236, 0.002);
  EXPECT_DOUBLE_EQ(bare.film_watts_per_m2_kelvin, 600);
  EXPECT_NEAR(bare.forced_gas_metres_per_second, 0.006, 1e-12);
  EXPECT_NEAR(head_on_cloth({0, 0, 0, 0}, 101325, Towel::wrapped).forced_gas_metres_per_second, 0.003, 1e-12);
  // Python 3.11 statistics.NormalDist(0.6, 0.35), truncated to 0..1
  EXPECT_NEAR(bare.vapour_efficiency, 0.56338822, 1e-7);
}

TEST(Unknowns, StayInRangeAndRiseWithTheirScores) {
  HeadOnCloth before = head_on_cloth({-6, -6, -6, -6}, 83428, Towel::none);
  EXPECT_GE(before.vapour_efficiency, 0);
  for (double score = -5.5; score <= 6; score += 0.5) {
    const HeadOnCloth now = head_on_cloth({score, score, score, score}, 83428, Towel::none);
    EXPECT_GE(now.dew_celsius, before.dew_celsius);
    EXPECT_GE(now.film_watts_per_m2_kelvin, before.film_watts_per_m2_kelvin);
    EXPECT_GE(now.vapour_efficiency, before.vapour_efficiency);
    EXPECT_GE(now.forced_gas_metres_per_second, before.forced_gas_metres_per_second);
    before = now;
  }
  EXPECT_LE(before.vapour_efficiency, 1);
  EXPECT_LE(before.forced_gas_metres_per_second, 0.020);
  EXPECT_LT(before.dew_celsius, boiling_celsius(83428));
  EXPECT_NEAR(boiling_celsius(83428), 94.62, 0.01);
}

}  // namespace
}  // namespace lastegg::steam
