// Crossings of functions whose crossings are known.
#include "treatments/steam/crossings.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "physics/uncertainty/sobol.h"

namespace lastegg::steam {
namespace {

constexpr std::size_t k_functions = 600;

// A falling function that flattens at both ends, as a dose does, crossing zero where its features say,
// almost.
struct Known {
  std::vector<std::vector<double>> features;
  std::vector<double> crossing, steepness;
  double value(std::size_t i, double x) const { return 3 * std::tanh(steepness[i] * (crossing[i] - x) / 3); }
};

Known known() {
  Known out;
  for (std::uint32_t i = 0; i < k_functions; ++i) {
    const auto score = [i](unsigned k) { return SobolStream("crossings", k).normal(i); };
    out.features.push_back({score(0), score(1)});
    out.crossing.push_back(-4 + 0.5 * score(0) - 0.3 * score(1) + 0.03 * score(2));
    out.steepness.push_back(6 * std::exp(0.2 * score(3)));
  }
  return out;
}

CrossingSearch search() {
  CrossingSearch s;
  s.low = -5, s.high = -3, s.start = -4, s.start_slope = -6, s.close_enough = 0.08;
  return s;
}

TEST(CrossingsLaw, FindsThemAndSaysWhereThereIsNone) {
  const Known functions = known();
  std::size_t evaluations = 0;
  const auto found = find_crossings(functions.features, search(), [&](auto which, auto xs) {
    std::vector<double> values;
    for (std::size_t k = 0; k < which.size(); ++k) values.push_back(functions.value(which[k], xs[k]));
    evaluations += which.size();
    return Result<std::vector<double>>(values);
  });
  ASSERT_TRUE(found);
  for (std::size_t i = 0; i < k_functions; ++i) {
    const double want = functions.crossing[i], got = (*found)[i].x;
    if (want > -3 + 1e-3) {
      EXPECT_EQ(got, std::numeric_limits<double>::infinity()) << i;
    } else if (want < -5 - 1e-3) {
      EXPECT_EQ(got, -std::numeric_limits<double>::infinity()) << i;
    } else if (want > -5 + 1e-3 && want < -3 - 1e-3) {
      EXPECT_NEAR(got, want, 0.004) << i;
    }
  }
  std::printf("%.2f evaluations per function\n", static_cast<double>(evaluations) / k_functions);
  EXPECT_LT(evaluations, 3 * k_functions);
}

TEST(CrossingsLaw, WhatDoesNotMatterIsPredictedOnly) {
  const Known functions = known();
  CrossingSearch some = search();
  some.matters = [](std::size_t, double x, double error, std::span<const Crossing>) {
    return std::fabs(x + 4.5) < 5 * error;
  };
  std::vector<bool> evaluated(k_functions);
  const auto found = find_crossings(functions.features, some, [&](auto which, auto xs) {
    std::vector<double> values;
    for (std::size_t k = 0; k < which.size(); ++k) {
      values.push_back(functions.value(which[k], xs[k]));
      evaluated[which[k]] = true;
    }
    return Result<std::vector<double>>(values);
  });
  ASSERT_TRUE(found);
  std::size_t predicted = 0;
  for (std::size_t i = 0; i < k_functions; ++i) {
    EXPECT_EQ((*found)[i].predicted, !evaluated[i]);
    if (!(*found)[i].predicted) continue;
    ++predicted;
    EXPECT_EQ((*found)[i].x > -4.5, functions.crossing[i] > -4.5) << "the side is right: " << i;
  }
  EXPECT_GT(predicted, k_functions / 3);
}

TEST(CrossingsLaw, AFailedEvaluationIsPassedOn) {
  const auto found = find_crossings({{0.0}}, search(), [](auto, auto) {
    return Result<std::vector<double>>(refuse({ErrorKind::out_of_domain, "no", "", "", "", ""}));
  });
  ASSERT_FALSE(found);
  EXPECT_EQ(found.error().message, "no");
}

}  // namespace
}  // namespace lastegg::steam
