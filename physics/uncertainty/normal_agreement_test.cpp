// Against Boost.Math's normal distribution, which uses other approximations, in numbers of 113 bits: in
// double its own rounding of x / sqrt(2) would show in the far tail, and long double is no better on every
// machine.
#include "physics/uncertainty/normal.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/normal.hpp>
#include <boost/multiprecision/cpp_bin_float.hpp>
#include <cmath>
#include <limits>

#include "physics/numerics/sanitized_for_tests.h"

namespace lastegg {
namespace {

using Wide = boost::multiprecision::cpp_bin_float_quad;
const boost::math::normal_distribution<Wide> k_boost;
constexpr int k_step = k_sanitized ? 20 : 1;  // of the grids below

TEST(NormalQuantile, AgreesWithBoost) {
  for (int i = 1; i < 20000; i += k_step) {
    const double p = i / 20000.0;
    const double boost_value = static_cast<double>(quantile(k_boost, Wide(p)));
    EXPECT_NEAR(normal_quantile(p), boost_value, 2e-15 * std::max(1.0, std::abs(boost_value))) << p;
  }
  for (double exponent = -300.0; exponent < -1.0; exponent += 0.5) {
    const double p = std::pow(10.0, exponent);
    EXPECT_NEAR(normal_quantile(p) / static_cast<double>(quantile(k_boost, Wide(p))), 1.0, 3e-15) << p;
  }
}

TEST(NormalProbability, AgreesWithBoost) {
  for (int i = -3700; i <= 900; i += k_step) {
    const double x = i / 100.0;
    const double boost_value = static_cast<double>(cdf(k_boost, Wide(x)));
    EXPECT_NEAR(normal_probability(x), boost_value, 3e-16) << x;
    EXPECT_NEAR(normal_probability(x) / boost_value, 1.0, 1e-14) << x;
  }
  EXPECT_EQ(normal_probability(0.0), 0.5);
  EXPECT_EQ(normal_probability(-50.0), 0.0);
  EXPECT_EQ(normal_probability(50.0), 1.0);
  EXPECT_EQ(normal_probability(std::numeric_limits<double>::infinity()), 1.0);
  EXPECT_EQ(normal_probability(-std::numeric_limits<double>::infinity()), 0.0);
  EXPECT_TRUE(std::isnan(normal_probability(std::nan(""))));
}

TEST(Normal, QuantileAndProbabilityAreInverse) {
  for (int i = 1; i < 1000; ++i)
    EXPECT_NEAR(normal_probability(normal_quantile(i / 1000.0)), i / 1000.0, 1e-15);
  EXPECT_EQ(normal_quantile(0.5), 0.0);
  EXPECT_TRUE(std::isinf(normal_quantile(0.0)) && std::isinf(normal_quantile(1.0)));
  EXPECT_TRUE(std::isnan(normal_quantile(-0.1)) && std::isnan(normal_quantile(1.1)));
}

}  // namespace
}  // namespace lastegg
