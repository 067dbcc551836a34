#include "treatments/steam/same_machine.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "treatments/steam/fold_fit.h"
#include "treatments/steam/fold_steamers_for_tests.h"

namespace lastegg::steam {
namespace {

Calibration rested(double dew_score, const char* head) {
  FoldTest test;
  test.head_key = head;
  test.cloth_key = std::string("cloth|") + head;
  test.readings = {fold_rest(90, 1), fold_rest(90, 1), fold_pass(0.012, 1)};
  const auto peaks = expected_peaks(test, {dew_score, 0, 0, 0});
  for (std::size_t r = 0; r < test.readings.size(); ++r) test.readings[r].peak_celsius = (*peaks)[r];
  return calibrate(test, 128)->calibration;
}

TEST(SameMachineLaw, NothingTestedLeavesThePrior) {
  const Calibration prior = prior_calibration("a", "b", Towel::none, 0.08, 101325, 64);
  EXPECT_EQ(belief_from_machine({}).spread, 1);
  EXPECT_EQ(belief_from_machine({&prior, 1}).spread, 1);
  EXPECT_EQ(belief_from_machine({&prior, 1}).mean, 0);
}

// However many heads were tested, the belief stays wider than the correlation allows.
TEST(SameMachineLaw, BeliefMovesTowardsTheOtherHeadAndStaysWide) {
  const std::array<Calibration, 3> weak{rested(-2, "head|1"), rested(-2, "head|2"), rested(-2, "head|3")};
  const DewBelief one = belief_from_machine({weak.data(), 1}), three = belief_from_machine(weak);
  EXPECT_LT(one.mean, -0.4);
  EXPECT_GT(one.mean, -1.1) << "at most half of the other head's score";
  EXPECT_GE(one.spread, std::sqrt(1 - k_shared_boiler * k_shared_boiler));
  EXPECT_LT(one.spread, 1);
  EXPECT_GE(three.spread, std::sqrt(1 - k_shared_boiler * k_shared_boiler))
      << "three heads are no three boilers";
  const Calibration hot = rested(1, "head|4");
  EXPECT_GT(belief_from_machine({&hot, 1}).mean, 0.1);
}

TEST(SameMachineLaw, TheFitStartsFromTheBelief) {
  FoldTest test;
  test.head_key = "head|new";
  test.cloth_key = "cloth|new";
  test.readings = {fold_pass(0.012, 1)};
  test.readings[0].peak_celsius = 70;
  const auto plain = calibrate(test, 128);
  test.dew_belief = {-1, 0.87};
  const auto informed = calibrate(test, 128);
  ASSERT_TRUE(plain && informed);
  EXPECT_LT(informed->calibration.mode[0], plain->calibration.mode[0] - 0.4);
  EXPECT_LT(informed->narrowing[0], plain->narrowing[0]);
  EXPECT_GT(informed->narrowing[0], 0.8);
}

}  // namespace
}  // namespace lastegg::steam
