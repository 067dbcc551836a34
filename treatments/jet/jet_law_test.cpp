#include <gtest/gtest.h>

#include "treatments/jet/jet.h"

namespace lastegg::jet {
namespace {

TEST(JetLaw, SpeedFallsWithDistanceAndNeverExceedsTheOpening) {
  for (const Opening opening : {Opening::round, Opening::slot}) {
    const Nozzle nozzle{opening, 0.004, 0.08, 0.6e-3, 101325};
    const double first = *speed_at(nozzle, 0);
    double before = first;
    for (double x = 0.002; x < 1; x *= 1.3) {
      const double now = *speed_at(nozzle, x);
      EXPECT_LE(now, before) << x;
      EXPECT_LE(now, first);
      before = now;
    }
  }
}

TEST(JetLaw, ThinAirMakesItFaster) {
  Nozzle nozzle{Opening::round, 0.004, 0, 0.6e-3, 101325};
  const double sea = *speed_at(nozzle, 0);
  nozzle.room_pascal = 70000;
  EXPECT_GT(*speed_at(nozzle, 0), sea);
}

TEST(JetLaw, TipsScatterAndWideHeadsDoNot) {
  EXPECT_EQ(scatter_at(*speed_at({Opening::round, 0.003, 0, 0.6e-3, 101325}, 0.06)), Scatter::scatters);
  EXPECT_EQ(scatter_at(*speed_at({Opening::round, 0.005, 0, 0.6e-3, 101325}, 0.1)), Scatter::may_scatter);
  EXPECT_EQ(scatter_at(*speed_at({Opening::slot, 0.01, 0.2, 0.6e-3, 101325}, 0)), Scatter::stays);
  // The words stand on the bodies: what stays moves nobody, what scatters moves every loose bug.
  EXPECT_LT(k_stays_below, moving_speed(k_bodies[0]));
  EXPECT_GT(k_scatters_above, moving_speed(k_bodies[1]));
}

TEST(JetLaw, AWhistlingHoleIsRefused) {
  const auto refused = speed_at({Opening::round, 0.001, 0, 0.6e-3, 101325}, 0.1);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, ErrorKind::out_of_domain);
}

TEST(JetLaw, CracksTakeMoreInWiderGapsLongerTimesLighterWalls) {
  const Crack crack;
  const double reach = *closed_reach(crack);
  EXPECT_GT(*closed_reach({0.004, crack.wall_effusivity, 2}), reach);
  EXPECT_GT(*closed_reach({0.002, crack.wall_effusivity, 4}), reach);
  EXPECT_LT(*closed_reach({0.002, 1000, 2}), reach);
  EXPECT_EQ(*open_reach(crack, 0, 97, 20), 0);
  EXPECT_LT(*open_reach(crack, 0.1, 97, 20), *open_reach(crack, 0.2, 97, 20));
}

TEST(JetLaw, StripsMeet) {
  for (const double head : {0.03, 0.1, 0.25}) {
    const double counted = counted_width(head, 1.3e-7, 2);
    EXPECT_LE(counted, head - 2 * k_lost_side_metres + 1e-12);
    for (const double face : {0.01, 0.4, 1.9}) {
      const int strips = strips_for(face, counted);
      EXPECT_GE(strips * counted, face - 1e-9);
      EXPECT_LT((strips - 1) * counted, face);
    }
  }
  EXPECT_EQ(counted_width(0.009, 1.3e-7, 2), 0);
  EXPECT_EQ(strips_for(1, 0), 0);
  // Long holds blunt more than the rule.
  EXPECT_LT(counted_width(0.1, 1.3e-7, 60), 0.09);
}

}  // namespace
}  // namespace lastegg::jet
