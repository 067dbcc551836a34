#include "physics/numerics/roots.h"

#include <gtest/gtest.h>

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <random>

namespace lastegg {
namespace {

using numerics::bracketed_root;

TEST(BracketedRoot, FindsRootsKnownInClosedForm) {
  EXPECT_NEAR(*bracketed_root([](double x) { return x * x - 2.0; }, 0.0, 2.0), std::sqrt(2.0), 1e-15);
  EXPECT_NEAR(*bracketed_root([](double x) { return std::cos(x); }, 0.0, 3.0), std::acos(0.0), 1e-15);
  EXPECT_NEAR(*bracketed_root([](double x) { return 5.0 - x; }, -1e6, 1e6), 5.0, 1e-12);
  EXPECT_EQ(*bracketed_root([](double x) { return x; }, 0.0, 1.0), 0.0);
  EXPECT_EQ(*bracketed_root([](double x) { return x - 1.0; }, 0.0, 1.0), 1.0);
}

TEST(BracketedRoot, CopesWithStepsAndFlatPlaces) {
  EXPECT_NEAR(*bracketed_root([](double x) { return x < 0.3 ? -1.0 : 1.0; }, 0.0, 1.0, 1e-9), 0.3, 2e-9);
  EXPECT_NEAR(*bracketed_root([](double x) { return std::pow(x - 0.7, 9); }, 0.0, 1.0, 1e-9), 0.7, 2e-9);
  int calls = 0;
  const auto hard = [&calls](double x) {
    ++calls;
    return std::exp(60.0 * (x - 0.99)) - 1e-3;
  };
  EXPECT_NEAR(*bracketed_root(hard, -20.0, 1.0, 1e-12), 0.99 + std::log(1e-3) / 60.0, 1e-11);
  EXPECT_LT(calls, 60);
}

TEST(BracketedRoot, RefusesWhereThereIsNone) {
  EXPECT_FALSE(bracketed_root([](double x) { return x * x + 1.0; }, -1.0, 1.0));
  EXPECT_FALSE(bracketed_root([](double) { return std::nan(""); }, -1.0, 1.0));
  EXPECT_FALSE(bracketed_root([](double x) { return x == 0.0 ? std::nan("") : x; }, -1.0, 1.0));
}

TEST(BracketedRoot, AgreesWithBoost) {
  std::mt19937_64 generator(3);
  std::uniform_real_distribution<double> draw(0.1, 3.0);
  for (int i = 0; i < 1000; ++i) {
    const double a = draw(generator), b = draw(generator);
    const auto rising = [=](double x) { return std::exp(a * x) + x * x * x - b; };
    std::uintmax_t steps = 100;
    const auto [low, high] = boost::math::tools::toms748_solve(
        rising, -4.0, 4.0, boost::math::tools::eps_tolerance<double>(50), steps);
    const Result<double> ours = bracketed_root(rising, -4.0, 4.0);
    ASSERT_TRUE(ours);
    EXPECT_NEAR(*ours, 0.5 * (low + high), 1e-12) << a << " " << b;
  }
}

}  // namespace
}  // namespace lastegg
