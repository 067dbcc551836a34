// The in-house exponentials and logarithms against the C library's long double ones (64-bit mantissa on
// x86, so that they serve as exact values), over the whole range and at the edges.
#include "physics/numerics/elementary.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace lastegg {
namespace {

static_assert(std::numeric_limits<long double>::digits >= 64, "the reference needs an extended long double");

constexpr double k_tiny = std::numeric_limits<double>::min();
constexpr double k_smallest = std::numeric_limits<double>::denorm_min();
constexpr double k_inf = std::numeric_limits<double>::infinity();
const double k_nan = std::numeric_limits<double>::quiet_NaN();

/// Distance from the exact value in units in the last place of a double of its size.
double error_in_ulp(double value, long double exact) {
  const double nearest = std::abs(static_cast<double>(exact));
  const double ulp = std::nextafter(nearest, k_inf) - nearest;
  return static_cast<double>(std::abs(static_cast<long double>(value) - exact) /
                             static_cast<long double>(ulp));
}

template <class Ours, class Exact>
double worst_ulp(double low, double high, Ours ours, Exact exact, int points = 200000) {
  std::mt19937_64 generator(20231);
  std::uniform_real_distribution<double> draw(low, high);
  double worst = 0.0;
  for (int i = 0; i < points; ++i) {
    const double x = draw(generator);
    worst = std::max(worst, error_in_ulp(ours(x), exact(static_cast<long double>(x))));
  }
  return worst;
}

TEST(Exp2, IsWithinOneAndAHalfUlpOverItsRange) {
  const auto ours = [](double x) { return numerics::exp2(x); };
  const auto exact = [](long double x) { return std::exp2(x); };
  EXPECT_LT(worst_ulp(-1021.0, 1023.99, ours, exact), 1.5);
  EXPECT_LT(worst_ulp(-2.0, 2.0, ours, exact), 1.5);
  EXPECT_LT(worst_ulp(-1e-6, 1e-6, ours, exact), 1.0);
  EXPECT_LT(worst_ulp(-1074.0, -1022.0, ours, exact), 1.5);  // subnormal results
}

TEST(Exp2, IsExactForWholeExponents) {
  for (int k = -1074; k <= 1023; ++k) EXPECT_EQ(numerics::exp2(k), std::ldexp(1.0, k)) << k;
  EXPECT_EQ(numerics::exp2(1024.0), k_inf);
  EXPECT_EQ(numerics::exp2(-1080.0), 0.0);
  EXPECT_EQ(numerics::exp2(k_inf), k_inf);
  EXPECT_EQ(numerics::exp2(-k_inf), 0.0);
  EXPECT_TRUE(std::isnan(numerics::exp2(k_nan)));
}

TEST(Exp, IsWithinOneAndAHalfUlpOverItsRange) {
  const auto ours = [](double x) { return numerics::exp(x); };
  const auto exact = [](long double x) { return std::exp(x); };
  EXPECT_LT(worst_ulp(-708.0, 709.7, ours, exact), 1.5);
  EXPECT_LT(worst_ulp(-1.0, 1.0, ours, exact), 1.5);
  EXPECT_LT(worst_ulp(-745.0, -708.5, ours, exact), 1.5);
  EXPECT_EQ(numerics::exp(0.0), 1.0);
  EXPECT_EQ(numerics::exp(709.79), k_inf);
  EXPECT_TRUE(std::isfinite(numerics::exp(709.78)));
  EXPECT_EQ(numerics::exp(-800.0), 0.0);
  EXPECT_EQ(numerics::exp(k_inf), k_inf);
  EXPECT_EQ(numerics::exp(-k_inf), 0.0);
  EXPECT_TRUE(std::isnan(numerics::exp(k_nan)));
}

TEST(Pow10, IsWithinTwoUlpOverItsRange) {
  const auto ours = [](double x) { return numerics::pow10(x); };
  const auto exact = [](long double x) { return std::pow(10.0L, x); };
  EXPECT_LT(worst_ulp(-307.0, 308.2, ours, exact), 2.0);
  EXPECT_LT(worst_ulp(-3.0, 3.0, ours, exact), 2.0);
  EXPECT_EQ(numerics::pow10(0.0), 1.0);
  for (int k = 1; k <= 22; ++k) EXPECT_LT(error_in_ulp(numerics::pow10(k), std::pow(10.0L, k)), 1.01) << k;
  EXPECT_EQ(numerics::pow10(309.0), k_inf);
  EXPECT_EQ(numerics::pow10(-330.0), 0.0);
  EXPECT_TRUE(std::isnan(numerics::pow10(k_nan)));
}

/// Logarithms are drawn evenly in the exponent, because a range of doubles spans 600 decades.
template <class Ours, class Exact>
double worst_log_ulp(Ours ours, Exact exact) {
  return worst_ulp(
      -1074.0, 1023.99, [&](double x) { return ours(std::exp2(x)); },
      [&](long double x) { return exact(static_cast<long double>(std::exp2(static_cast<double>(x)))); });
}

TEST(Log, IsWithinOneAndAHalfUlp) {
  const auto ours = [](double x) { return numerics::log(x); };
  const auto exact = [](long double x) { return std::log(x); };
  EXPECT_LT(worst_log_ulp(ours, exact), 1.5);
  EXPECT_LT(worst_ulp(0.5, 2.0, ours, exact), 1.5);
  EXPECT_LT(worst_ulp(0.999999, 1.000001, ours, exact), 1.5);
}

TEST(Log2, IsWithinOneAndAHalfUlpAndExactForPowersOfTwo) {
  const auto ours = [](double x) { return numerics::log2(x); };
  const auto exact = [](long double x) { return std::log2(x); };
  EXPECT_LT(worst_log_ulp(ours, exact), 1.5);
  EXPECT_LT(worst_ulp(0.5, 2.0, ours, exact), 1.5);
  EXPECT_LT(worst_ulp(0.999999, 1.000001, ours, exact), 1.5);
  for (int k = -1074; k <= 1023; ++k) EXPECT_EQ(numerics::log2(std::ldexp(1.0, k)), k);
}

TEST(Log10, IsWithinThreeUlp) {
  const auto ours = [](double x) { return numerics::log10(x); };
  const auto exact = [](long double x) { return std::log10(x); };
  EXPECT_LT(worst_log_ulp(ours, exact), 2.0);
  EXPECT_LT(worst_ulp(0.5, 2.0, ours, exact), 3.0);
}

TEST(Logarithms, RefuseWhatHasNone) {
  for (const auto function :
       {+[](double x) { return numerics::log(x); }, +[](double x) { return numerics::log2(x); },
        +[](double x) { return numerics::log10(x); }}) {
    EXPECT_EQ(function(0.0), -k_inf);
    EXPECT_EQ(function(k_inf), k_inf);
    EXPECT_EQ(function(1.0), 0.0);
    EXPECT_TRUE(std::isnan(function(-1.0)));
    EXPECT_TRUE(std::isnan(function(k_nan)));
    EXPECT_TRUE(std::isfinite(function(k_smallest)));
    EXPECT_TRUE(std::isfinite(function(k_tiny)));
  }
}

TEST(Log1p, IsWithinThreeUlp) {
  const auto ours = [](double x) { return numerics::log1p(x); };
  const auto exact = [](long double x) { return std::log1p(x); };
  EXPECT_LT(worst_ulp(-0.9999, 5.0, ours, exact), 3.0);
  EXPECT_LT(worst_ulp(-1e-3, 1e-3, ours, exact), 3.0);
  EXPECT_LT(worst_ulp(-1e-12, 1e-12, ours, exact), 3.0);
  EXPECT_EQ(numerics::log1p(0.0), 0.0);
  EXPECT_EQ(numerics::log1p(-1.0), -k_inf);
}

TEST(Pow, FollowsTheLibraryWithinItsStatedError) {
  std::mt19937_64 generator(77);
  std::uniform_real_distribution<double> base(0.01, 100.0), exponent(-20.0, 20.0);
  for (int i = 0; i < 100000; ++i) {
    const double x = base(generator), y = exponent(generator);
    const long double exact = std::pow(static_cast<long double>(x), static_cast<long double>(y));
    const double bound = std::abs(y * std::log2(x)) * 2e-16 + 3.5e-16;
    EXPECT_LT(std::abs(static_cast<double>((static_cast<long double>(numerics::pow(x, y)) - exact) / exact)),
              bound);
  }
  EXPECT_EQ(numerics::pow(0.0, 2.0), 0.0);
  EXPECT_EQ(numerics::pow(5.0, 0.0), 1.0);
  EXPECT_TRUE(std::isnan(numerics::pow(-1.0, 0.5)));
}

TEST(Elementary, GivesTheRecordedDigits) {
  // Digits produced by this code once; they must come out of every compiler and target.
  EXPECT_EQ(numerics::exp2(0.3), 0x1.3b2c47bff8329p+0);
  EXPECT_EQ(numerics::exp(-1.7), 0x1.7622c78a98a07p-3);
  EXPECT_EQ(numerics::log(7.1), 0x1.f5c8c5928b0f9p+0);
  EXPECT_EQ(numerics::log2(0.817), -0x1.2a9718fad9bfdp-2);
  EXPECT_EQ(numerics::pow10(2.71), 0x1.006e41d4a41aep+9);
}

}  // namespace
}  // namespace lastegg
