#include "treatments/steam/fold_test/same_machine.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_test/fold_fit.h"
#include "treatments/steam/fold_test/fold_steamers_for_tests.h"

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

struct MeanAndSpread {
  double mean, spread;
};

MeanAndSpread own_dew(const Calibration& calibration) {
  std::vector<double> dew;
  for (std::size_t i = 0; i < calibration.weights.size(); ++i)
    dew.push_back(own_scores(calibration, static_cast<int>(i))[0]);
  return {weighted_mean(dew, calibration.weights), weighted_deviation(dew, calibration.weights)};
}

// A head nobody tested: of the steam it knows more than the prior and less than a head with a test of its
// own.
TEST(SameMachineLaw, AnUntestedHeadLiesBetweenPriorAndItsOwnTest) {
  const Calibration other = rested(-1.5, "head|a"), own = rested(-1.5, "head|b");
  const Calibration prior = prior_calibration("head|b", "cloth|head|b", Towel::none, 0.08, 101325, 1024);
  const Calibration informed = prior_of_machine(prior, belief_from_machine({&other, 1}));
  EXPECT_LT(own_dew(informed).spread, own_dew(prior).spread);
  EXPECT_GT(own_dew(informed).spread, own_dew(own).spread);
  EXPECT_LT(own_dew(informed).mean, own_dew(prior).mean - 0.3);
  EXPECT_GT(own_dew(informed).mean, own_dew(own).mean);
  EXPECT_FALSE(informed.tested);
  // What belongs to head and covering is the prior's, sample by sample.
  for (int i = 0; i < 64; ++i) {
    const Scores was = own_scores(prior, i), is = own_scores(informed, i);
    for (std::size_t k = 1; k < k_unknown_count; ++k) EXPECT_EQ(was[k], is[k]);
  }
}

TEST(SameMachineLaw, WithoutABeliefThePriorStays) {
  const Calibration prior = prior_calibration("head|b", "cloth|b", Towel::none, 0.08, 101325, 64);
  const Calibration same = prior_of_machine(prior, belief_from_machine({}));
  for (int i = 0; i < 64; ++i) {
    for (std::size_t k = 0; k < k_unknown_count; ++k)
      EXPECT_NEAR(calibrated_scores(same, "cloth|b", i)[k], calibrated_scores(prior, "cloth|b", i)[k], 1e-12);
  }
}

// Beside a test of its own, however short, another head moves the middle and narrows nothing.
TEST(SameMachineLaw, BesideAnOwnTestNothingNarrows) {
  for (const double dew : {-1.5, -0.5, 0.5}) {
    const Calibration other = rested(dew, "head|a");
    FoldTest test;
    test.head_key = "head|b";
    test.cloth_key = "cloth|head|b";
    test.readings = {fold_pass(0.012, 1)};
    test.readings[0].peak_celsius = 75;
    const auto alone = calibrate(test, 1024);
    test.dew_belief = belief_beside_own_test({&other, 1});
    EXPECT_EQ(test.dew_belief.spread, 1);
    const auto beside = calibrate(test, 1024);
    ASSERT_TRUE(alone && beside);
    const MeanAndSpread was = own_dew(alone->calibration), is = own_dew(beside->calibration);
    EXPECT_GE(is.spread, 0.97 * was.spread) << "3 % for the draw of the samples";
    EXPECT_GT((is.mean - was.mean) * dew, 0) << "towards the other head";
  }
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
