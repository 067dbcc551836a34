// Against tables that were made independently for the design of this product (each value to the digits
// shown), and the error function of the standard library.
#include <gtest/gtest.h>

#include <cmath>

#include "treatments/jet/jet.h"

namespace lastegg::jet {
namespace {

TEST(JetReference, RoundTipsOfSixTenthsGramPerSecond) {
  const struct {
    double diameter, at_opening, at_30, at_60, at_100, at_150;
  } rows[] = {{0.002, 319, 94, 47, 28, 19}, {0.003, 142, 62, 31, 19, 12}, {0.005, 51, 37, 19, 11, 7.5}};
  for (const auto& row : rows) {
    const Nozzle nozzle{Opening::round, row.diameter, 0, 0.6e-3, 101325};
    const double wanted[] = {row.at_opening, row.at_30, row.at_60, row.at_100, row.at_150};
    const double distance[] = {0, 0.03, 0.06, 0.1, 0.15};
    for (int i = 0; i < 5; ++i) {
      const auto speed = speed_at(nozzle, distance[i]);
      ASSERT_TRUE(speed) << row.diameter;
      EXPECT_NEAR(*speed, wanted[i], std::max(0.03 * wanted[i], 0.5))
          << row.diameter << " at " << distance[i];
    }
  }
}

TEST(JetReference, WideHeadsAreSlow) {
  const double rows[][3] = {
      {0.030, 0.003, 11}, {0.100, 0.005, 2.0}, {0.200, 0.010, 0.5}, {0.200, 0.020, 0.25}};
  for (const auto& row : rows) {
    const auto speed = speed_at({Opening::slot, row[1], row[0], 0.6e-3, 101325}, 0);
    ASSERT_TRUE(speed);
    EXPECT_NEAR(*speed, row[2], 0.03 * row[2]) << row[0];
  }
}

TEST(JetReference, SpeedsThatMoveBugs) {
  const double wanted[] = {2.5, 5.5, 17, 101};
  for (std::size_t i = 0; i < k_bodies.size(); ++i)
    EXPECT_NEAR(moving_speed(k_bodies[i]), wanted[i], 0.12 * wanted[i]) << k_bodies[i].key;
}

TEST(JetReference, ClosedCracks) {
  constexpr double k_wood = 322.5, k_fabric = 176.6;
  const double gaps[] = {0.0005, 0.001, 0.002, 0.005};
  const double wood[] = {1.4, 2.0, 2.8, 4.4}, fabric[] = {1.9, 2.7, 3.8, 6.0},
               wood_ten[] = {2.1, 3.0, 4.2, 6.6};
  for (int i = 0; i < 4; ++i) {
    EXPECT_NEAR(1e3 * *closed_reach({gaps[i], k_wood, 2}), wood[i], 0.06) << gaps[i];
    EXPECT_NEAR(1e3 * *closed_reach({gaps[i], k_fabric, 2}), fabric[i], 0.06) << gaps[i];
    EXPECT_NEAR(1e3 * *closed_reach({gaps[i], k_wood, 10}), wood_ten[i], 0.06) << gaps[i];
  }
}

TEST(JetReference, OpenCracks) {
  // 0.2 m/s in a gap of 2 mm between softwood walls: 28 mm after 2 s, 63 mm after 10 s.
  EXPECT_NEAR(1e3 * *open_reach({0.002, 322.5, 2}, 0.2, 97, 22), 28, 1);
  EXPECT_NEAR(1e3 * *open_reach({0.002, 322.5, 10}, 0.2, 97, 22), 63, 2);
}

TEST(JetReference, SideOfAStripByTheErrorFunction) {
  for (const double seconds : {0.5, 2.0, 10.0}) {
    const double y = conduction_side(1.28e-7, seconds);
    EXPECT_NEAR(0.5 * (1 + std::erf(y / (2 * std::sqrt(1.28e-7 * seconds)))), 0.95, 1e-9);
  }
  // About 1 mm for cloth after two seconds.
  EXPECT_NEAR(1e3 * conduction_side(1.28e-7, 2), 1.0, 0.25);
}

}  // namespace
}  // namespace lastegg::jet
