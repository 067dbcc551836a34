// The data file: it loads, and its numbers are those of the abstracts.
#include <gtest/gtest.h>

#include "bugs/mortality/kill_law.h"

namespace lastegg::bugs {
namespace {

TEST(MortalityData, Loads) {
  const auto state = kill_data_state();
  ASSERT_TRUE(state) << state.error().message;
}

TEST(MortalityData, HoldsWhatTheAbstractsPrint) {
  // [kells_goblirsch_2011] abstract
  EXPECT_EQ(kill_law(Stage::adult, Exposure::air).reference_celsius, 45);
  EXPECT_EQ(kill_law(Stage::adult, Exposure::air).lt99_minutes, 94.8);
  EXPECT_EQ(kill_law(Stage::egg, Exposure::air).reference_celsius, 48);
  EXPECT_EQ(kill_law(Stage::egg, Exposure::air).lt99_minutes, 71.5);
  // [puckett_2013] abstract
  EXPECT_EQ(kill_law(Stage::adult, Exposure::steam).contact_share[0], 0.88);
  EXPECT_EQ(kill_law(Stage::adult, Exposure::steam).contact_share[1], 0.94);
  EXPECT_EQ(kill_law(Stage::egg, Exposure::steam).contact_share[0], 1);
  // [pereira_2009] abstract: 4 C, inside both ends
  EXPECT_LT(kill_law(Stage::adult, Exposure::air).z_kelvin[0], 4);
  EXPECT_GT(kill_law(Stage::adult, Exposure::air).z_kelvin[1], 4);
}

TEST(MortalityData, OnlySteamHasContactAndTheHigherCap) {
  for (const Stage stage : {Stage::egg, Stage::nymph, Stage::adult}) {
    const KillLaw &air = kill_law(stage, Exposure::air), &steam = kill_law(stage, Exposure::steam);
    EXPECT_EQ(air.contact_share[0], 1);
    EXPECT_EQ(air.contact_share[1], 1);
    EXPECT_EQ(air.cap_celsius, 55);
    EXPECT_EQ(steam.cap_celsius, 70);
    EXPECT_EQ(air.onset_celsius, 40);
    EXPECT_EQ(steam.onset_celsius, 40);
    EXPECT_GT(air.body_lag_seconds, 0);
    EXPECT_GT(air.study_spread, air.spread);
  }
}

TEST(MortalityData, ALawMadeByDefaultCreditsNothing) {
  const KillLaw nothing;
  EXPECT_EQ(1e9 / nothing.lt99_minutes, 0);
}

}  // namespace
}  // namespace lastegg::bugs
