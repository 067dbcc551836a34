// Laws of the monotone cubic: through the points, no overshoot, exact for straight lines.
#include "physics/numerics/monotone_curve.h"

#include <gtest/gtest.h>

#include <array>

namespace lastegg::numerics {
namespace {

TEST(MonotoneCurve, PassesThroughItsPointsAndKeepsTheEnds) {
  const std::array x{0.0, 1.0, 2.5, 4.0};
  const std::array y{5.0, 3.0, 2.9, -7.0};
  for (std::size_t i = 0; i < x.size(); ++i) EXPECT_DOUBLE_EQ(monotone_curve(x, y, x[i]), y[i]);
  EXPECT_EQ(monotone_curve(x, y, -1), 5.0);
  EXPECT_EQ(monotone_curve(x, y, 9), -7.0);
}

TEST(MonotoneCurve, FallingDataNeverRise) {
  const std::array x{0.0, 0.3, 1.0, 1.2, 4.0};
  const std::array y{9.0, 8.9, 2.0, 1.99, -30.0};
  double before = 9.0;
  for (int i = 1; i <= 400; ++i) {
    const double value = monotone_curve(x, y, 0.01 * i);
    EXPECT_LE(value, before + 1e-12) << i;
    before = value;
  }
}

TEST(MonotoneCurve, IsExactForStraightLinesAndNearForSmoothOnes) {
  const std::array x{0.0, 1.0, 3.0, 4.0};
  const std::array line{1.0, 3.0, 7.0, 9.0};
  const std::array square{0.0, 1.0, 9.0, 16.0};
  for (const double at : {0.2, 1.7, 2.2, 3.9}) {
    EXPECT_NEAR(monotone_curve(x, line, at), 1.0 + 2.0 * at, 1e-12);
    EXPECT_NEAR(monotone_curve(x, square, at), at * at, 0.35);
  }
}

}  // namespace
}  // namespace lastegg::numerics
