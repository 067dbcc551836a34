// The kinds of reading, each against what must be true of it without the march.
#include "treatments/steam/fold_test/fold_reading.h"

#include <gtest/gtest.h>

#include <cmath>

#include "treatments/steam/fold_test/fold_fit.h"
#include "treatments/steam/fold_test/fold_steamers_for_tests.h"

namespace lastegg::steam {
namespace {

FoldTest test_with(std::vector<FoldReading> readings) {
  FoldTest test;
  test.head_key = "head|k";
  test.cloth_key = "cloth|k";
  test.readings = std::move(readings);
  return test;
}

// At rest the marched cloth comes to the dew temperature, whatever film and cloth are: the cloth being
// damp, as the recipe asks (a dry hygroscopic one stays some kelvin hotter for minutes). That is what a
// stationary reading is taken for.
TEST(FoldReadingLaw, AHeadAtRestComesToTheDewTemperature) {
  for (std::uint32_t steamer = 0; steamer < 12; ++steamer) {
    const FoldTest test = test_with({fold_rest(240, 1)});
    const TrueSteamer truth(steamer, 0);
    const auto shown = expected_peaks(test, truth.truth());
    ASSERT_TRUE(shown) << shown.error().message;
    EXPECT_NEAR(shown->front(), truth.steady_celsius(test, test.readings[0]), 1.0) << "steamer " << steamer;
  }
}

// A thin plate of a good conductor with nothing but insulation behind it: T' = q / C with
// q = min(h (T_d - T), cap), whose closed form is a ramp and then an exponential.
TEST(FoldReadingLaw, AMetalCouponHeatsAsALumpedBody) {
  const double capacity = 2400;  // 1 mm of aluminium
  FoldReading reading{0.020, {metal_coupon(capacity), {0.05, 1.2e3, 0.005, false, 0, 1, 0}}, 0, 0};
  reading.kind = ReadingKind::coupon;
  reading.depth_metres = reading.stack.front().thickness_metres;
  const FoldTest test = test_with({reading});
  const Scores scores{0.0, 0.3, 0.0, 0.0};
  const HeadOnCloth head = head_on_cloth(scores, test.pressure_pascal, test.towel);
  const auto shown = expected_peaks(test, scores);
  ASSERT_TRUE(shown) << shown.error().message;

  const double cap = flux_cap_watts_per_m2(test.towel), film = head.film_watts_per_m2_kelvin;
  double celsius = test.start_celsius;
  const double skirt = 0.02 / reading.pace_metres_per_second, cover = 0.08 / reading.pace_metres_per_second;
  constexpr int k_steps = 200000;
  for (const auto& [seconds, factor] : {std::pair{skirt, 0.25}, {cover, 1.0}, {skirt, 0.25}}) {
    for (int i = 0; i < k_steps; ++i) {
      // What condenses stays on the plate as a film of water and must be heated too: 4180 / h_fg of the flux.
      const double flux = std::min(film * factor * (head.dew_celsius - celsius), cap * factor);
      celsius += flux / capacity * seconds / k_steps;
    }
  }
  EXPECT_NEAR(shown->front(), celsius, 2.0) << "water on the plate and the insulation take a little";
  EXPECT_LT(shown->front(), celsius + 0.2);
}

TEST(FoldReadingLaw, VapourPropertiesDoNothingToACoupon) {
  const FoldTest test = test_with({coupon_pass(0.012)});
  const auto low = expected_peaks(test, {0, 0, -1.5, -1.5});
  const auto high = expected_peaks(test, {0, 0, 1.5, 1.5});
  const auto film = expected_peaks(test, {0, 1, 0, 0});
  ASSERT_TRUE(low && high && film);
  EXPECT_NEAR(low->front(), high->front(), 0.3);
  EXPECT_GT(film->front(), low->front() + 4) << "but the film does (about 11 K per e-fold by hand)";
}

TEST(FoldReadingLaw, ALaidTowelLiesOnTopAndCostsHeat) {
  FoldTest test = test_with({fold_pass(0.010, 1), fold_pass(0.010, 2)});
  const Stack bare = stack_of_reading(test, test.readings[0]);
  test.towel = Towel::wrapped;
  const auto wrapped = expected_peaks(test, {});
  test.towel = Towel::laid;
  const Stack laid = stack_of_reading(test, test.readings[0]);
  ASSERT_EQ(laid.size(), bare.size() + 1);
  EXPECT_EQ(laid.front().thickness_metres, laid_towel().thickness_metres);
  const LanePass pass = pass_of_reading(test, test.readings[1], {}, laid);
  EXPECT_NEAR(pass.target_depth_metres, laid_towel().thickness_metres + 0.002, 1e-12);
  const auto under = expected_peaks(test, {});
  ASSERT_TRUE(wrapped && under);
  EXPECT_LT((*under)[0], (*wrapped)[0] - 5);
  EXPECT_LT((*under)[1], (*under)[0]);
}

TEST(FoldReadingLaw, ReadingsInAnotherCoveringLeaveThisOneAlone) {
  FoldTest test = test_with({fold_pass(0.010, 1), fold_pass(0.020, 1), fold_pass(0.010, 2)});
  TrueSteamer(3, 0).take_readings(test);
  const auto alone = calibrate(test, 64);
  FoldTest with_edge = test;
  for (const double pace : {0.008, 0.015}) {
    with_edge.readings.push_back(fold_pass(pace, 2));
    with_edge.readings.back().kind = ReadingKind::under_real_edge;
    with_edge.readings.back().cloth_key = "cloth|velvet";
  }
  TrueSteamer(3, 0).take_readings(with_edge);
  const auto both = calibrate(with_edge, 64);
  with_edge.cloth_key = "cloth|velvet";
  for (FoldReading& reading : with_edge.readings) {
    if (reading.cloth_key.empty()) reading.cloth_key = test.cloth_key;
  }
  const auto edge = calibrate(with_edge, 64);
  ASSERT_TRUE(alone && both && edge);
  // The head is known a little better, the test's own cloth by no more than through the head.
  EXPECT_LE(both->narrowing[1], alone->narrowing[1] + 0.02);
  EXPECT_NEAR(both->narrowing[2], alone->narrowing[2], 0.1);
  EXPECT_LT(edge->narrowing[2] + edge->narrowing[3], 1.95) << "the edge's covering is conditioned too";
  EXPECT_DOUBLE_EQ(edge->calibration.tested_depth_metres, 0.002);
  EXPECT_EQ(edge->calibration.cloth_key, "cloth|velvet");
}

TEST(FoldReadingLaw, ARestedHeadAndACouponNarrowWhatTheyShould) {
  FoldTest passes = test_with({fold_pass(0.008, 1), fold_pass(0.020, 1), fold_pass(0.008, 2)});
  passes.probe_time_constant_seconds = 0.3;
  FoldTest rested = passes, plated = passes;
  rested.readings.push_back(fold_rest(90, 1));
  plated.readings.push_back(coupon_pass(0.008));
  plated.readings.push_back(coupon_pass(0.016));
  for (FoldTest* test : {&passes, &rested, &plated}) TrueSteamer(5, 0).take_readings(*test);
  const auto by_passes = calibrate(passes, 64), by_rest = calibrate(rested, 64),
             by_plate = calibrate(plated, 64);
  ASSERT_TRUE(by_passes && by_rest && by_plate);
  EXPECT_GT(by_passes->narrowing[0], 0.7) << "passes hardly tell the dew temperature";
  EXPECT_LT(by_rest->narrowing[0], 0.6);
  EXPECT_LT(by_plate->narrowing[1], 0.75 * by_passes->narrowing[1]);
}

TEST(FoldReadingLaw, AnUncertainProbeWidens) {
  FoldTest test = test_with({fold_pass(0.008, 1), fold_pass(0.020, 1), fold_pass(0.008, 2)});
  test.probe_time_constant_seconds = 3;
  TrueSteamer(2, 0).take_readings(test);
  const auto sure = calibrate(test, 64);
  test.probe_log_spread = 0.3;
  const auto unsure = calibrate(test, 64);
  ASSERT_TRUE(sure && unsure);
  EXPECT_GT(unsure->narrowing[1], sure->narrowing[1] + 0.01);
}

}  // namespace
}  // namespace lastegg::steam
