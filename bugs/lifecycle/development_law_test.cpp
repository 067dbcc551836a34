// What must hold of rates whatever the numbers are.
#include <gtest/gtest.h>

#include "bugs/lifecycle/development.h"

namespace lastegg::bugs {
namespace {

TEST(DevelopmentLaw, WarmerIsNeverSlower) {
  for (const Phase phase : {Phase::egg, Phase::nymph, Phase::first_egg}) {
    for (const Bound bound : {Bound::slow, Bound::fast}) {
      double before = 0;
      for (double celsius = 10; celsius <= 34; celsius += 0.1) {
        const double rate = rate_per_day(phase, {celsius, celsius}, bound);
        EXPECT_GE(rate, before) << celsius;
        before = rate;
      }
    }
  }
}

TEST(DevelopmentLaw, SlowIsNeverFasterThanFast) {
  for (double celsius = 5; celsius <= 45; celsius += 0.1)
    EXPECT_LE(rate_per_day(Phase::egg, {celsius, celsius}, Bound::slow),
              rate_per_day(Phase::egg, {celsius, celsius}, Bound::fast) + 1e-15);
}

TEST(DevelopmentLaw, UncertaintyOnlyWidens) {
  for (double celsius = 10; celsius <= 40; celsius += 0.5) {
    for (const double u : {0.5, 1.0, 3.0}) {
      EXPECT_LE(rate_per_day(Phase::egg, {celsius - u, celsius + u}, Bound::slow),
                rate_per_day(Phase::egg, {celsius, celsius}, Bound::slow));
      EXPECT_GE(rate_per_day(Phase::egg, {celsius - u, celsius + u}, Bound::fast),
                rate_per_day(Phase::egg, {celsius, celsius}, Bound::fast));
    }
  }
}

TEST(DevelopmentLaw, StopsBelowFourteenHoldsAboveThirtyOneAndLeavesHeatToAnotherModel) {
  EXPECT_EQ(rate_per_day(Phase::egg, {13.9, 13.9}, Bound::fast), 0);
  EXPECT_GT(rate_per_day(Phase::egg, {14, 14}, Bound::slow), 0);
  EXPECT_EQ(rate_per_day(Phase::egg, {33, 33}, Bound::slow), rate_per_day(Phase::egg, {31, 31}, Bound::slow));
  EXPECT_EQ(rate_per_day(Phase::egg, {34.1, 34.1}, Bound::slow), 0);
  EXPECT_EQ(rate_per_day(Phase::egg, {34.1, 34.1}, Bound::fast),
            rate_per_day(Phase::egg, {31, 31}, Bound::fast));
}

}  // namespace
}  // namespace lastegg::bugs
