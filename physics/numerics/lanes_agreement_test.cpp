// The lanes' functions against those of elementary.h.
#include "physics/numerics/lanes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"

namespace lastegg::numerics {
namespace {

using F = Lanes<4>::Floats;

TEST(LanesAgreement, PowersOfTwo) {
  double worst = 0;
  for (int i = -1260; i <= 1260; ++i) {
    const float x = 0.09973f * static_cast<float>(i);
    const F got = lanes::exp2(F{x, -x, x, 0.5f * x});
    const double want = exp2(static_cast<double>(x));
    worst = std::max(worst, std::fabs(static_cast<double>(got[0]) / want - 1));
    worst = std::max(worst, std::fabs(static_cast<double>(got[3]) / exp2(static_cast<double>(0.5f * x)) - 1));
    EXPECT_EQ(got[0], got[2]);
  }
  EXPECT_LT(worst, 4e-7);
  const F ends = lanes::exp2(F{0, 1, -1000, 1000});
  EXPECT_EQ(ends[0], 1.0f);
  EXPECT_NEAR(ends[1], 2.0f, 1e-6);
  EXPECT_EQ(ends[2], std::ldexp(1.0f, -126));
  EXPECT_EQ(ends[3], std::ldexp(1.0f, 126));
}

TEST(LanesAgreement, NaturalLogarithm) {
  double worst = 0;
  for (int i = -800; i <= 800; ++i) {
    const auto x = static_cast<float>(std::exp(0.1 * i));
    const F got = lanes::log(F{x, 1.0f, 0.5f, 1 + 1e-3f * static_cast<float>(i)});
    const double want = log(static_cast<double>(x));
    worst = std::max(worst, std::fabs(static_cast<double>(got[0]) - want) / std::max(1.0, std::fabs(want)));
    EXPECT_EQ(got[1], 0.0f);
    EXPECT_NEAR(got[2], -0.693147181f, 1e-7);
  }
  EXPECT_LT(worst, 1.2e-7);
}

TEST(LanesAgreement, PolynomialsOfEveryLength) {
  const float c[] = {1.5f, -2.25f, 0.5f, 3, -1, 0.75f, 2, -0.5f, 1, 0.25f};
  const auto horner = [&](int count, double x) {
    double sum = 0;
    for (int k = count - 1; k >= 0; --k) sum = sum * x + static_cast<double>(c[k]);
    return sum;
  };
  const F x{-0.9f, -0.2f, 0.3f, 1.1f};
  const auto p = lanes::powers(x);
  for (int lane = 0; lane < 4; ++lane) {
    const auto at = static_cast<double>(x[lane]);
    EXPECT_NEAR(lanes::polynomial<1>(c, p)[lane], horner(1, at), 2e-6);
    EXPECT_NEAR(lanes::polynomial<2>(c, p)[lane], horner(2, at), 2e-6);
    EXPECT_NEAR(lanes::polynomial<3>(c, p)[lane], horner(3, at), 2e-6);
    EXPECT_NEAR(lanes::polynomial<7>(c, p)[lane], horner(7, at), 2e-6);
    EXPECT_NEAR(lanes::polynomial<8>(c, p)[lane], horner(8, at), 2e-6);
    EXPECT_NEAR(lanes::polynomial<9>(c, p)[lane], horner(9, at), 4e-6);
    EXPECT_NEAR(lanes::polynomial<10>(c, p)[lane], horner(10, at), 4e-6);
  }
}

TEST(LanesAgreement, ChoicesAreByLane) {
  const F a{1, 2, 3, -4}, b{4, 3, 2, -1};
  const F low = lanes::smaller(a, b), high = lanes::larger(a, b), size = lanes::absolute(a);
  for (int lane = 0; lane < 4; ++lane) {
    EXPECT_EQ(low[lane], std::min(a[lane], b[lane]));
    EXPECT_EQ(high[lane], std::max(a[lane], b[lane]));
    EXPECT_EQ(size[lane], std::fabs(a[lane]));
  }
}

}  // namespace
}  // namespace lastegg::numerics
