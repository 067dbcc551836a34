#include <gtest/gtest.h>

#include <cmath>

#include "treatments/touch/touch.h"

namespace lastegg::touch {
namespace {

// The table itself, and another one (seconds to a serious burn) as a plausibility: same order of magnitude.
TEST(TouchReference, BurnTable) {
  const double rows[][2] = {{45, 2 * 3600}, {47, 20 * 60}, {48, 15 * 60}, {49, 8 * 60},
                            {51, 2 * 60},   {55, 17},      {60, 3}};
  for (const auto& row : rows) EXPECT_NEAR(seconds_to_burn(row[0]), row[1], 1e-9 * row[1]) << row[0];
  const double serious[][2] = {{52, 105}, {55, 30}, {57, 10}, {60, 5}, {63, 3}, {66, 1.5}, {68, 1}};
  for (const auto& row : serious) {
    EXPECT_LT(seconds_to_burn(row[0]), 1.2 * row[1]) << row[0];
    EXPECT_GT(seconds_to_burn(row[0]), 0.05 * row[1]) << row[0];
  }
}

TEST(TouchReference, ABareHandHasManyTimesTheTimeOfATouch) {
  EXPECT_GE(seconds_to_burn(k_bare_hand_celsius), 600);  // the contact standard's ten minutes
}

TEST(TouchReference, SpotsOnStrips) {
  // Halves: a strip of half the diameter covers 2/pi (pi/6 + sqrt(3)/4) = 0.6090 of a disc.
  EXPECT_NEAR(share_of_spot(0.01, 0.02), 0.6090, 1e-4);
  EXPECT_EQ(share_of_spot(0.03, 0.02), 1);
}

}  // namespace
}  // namespace lastegg::touch
