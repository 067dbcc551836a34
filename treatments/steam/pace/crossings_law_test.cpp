// Crossings of functions whose crossings are known.
#include "treatments/steam/pace/crossings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>

#include "physics/uncertainty/sobol.h"
#include "physics/uncertainty/weighted.h"

namespace lastegg::steam {
namespace {

constexpr std::size_t k_functions = 600;

// A falling function that flattens at both ends, as a dose does, crossing zero where its features say,
// almost.
struct Family {
  std::vector<std::vector<double>> features;
  std::vector<double> crossing, steepness;
  double value(std::size_t i, double x) const { return 3 * std::tanh(steepness[i] * (crossing[i] - x) / 3); }
};

Family family() {
  Family out;
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
  const Family functions = family();
  std::size_t evaluations = 0;
  const auto found = find_crossings(functions.features, search(), [&](auto which, auto xs, Effort) {
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

// A quantile asks for few of them, and rough values that are off by a little do not move it.
TEST(CrossingsLaw, AQuantileNeedsOnlyTheCrossingsNearIt) {
  const Family functions = family();
  std::vector<double> weights(k_functions), offsets(k_functions), planned(k_functions);
  for (std::uint32_t i = 0; i < k_functions; ++i) {
    weights[i] = (1 + 0.5 * std::sin(i)) / k_functions;
    offsets[i] = 0.1 * SobolStream("offsets", 0).normal(i);
    planned[i] = std::clamp(functions.crossing[i], -5.0, -3.0) - offsets[i];
  }
  for (const double share : {0.05, 0.1, 0.95}) {
    std::vector<int> evaluated(k_functions);
    int fine = 0;
    const auto found = find_crossings_near(
        {share, weights, offsets}, functions.features, search(), [&](auto which, auto xs, Effort effort) {
          std::vector<double> values;
          for (std::size_t k = 0; k < which.size(); ++k) {
            const double off = effort == Effort::rough ? 0.05 * std::cos(static_cast<double>(which[k])) : 0;
            values.push_back(functions.value(which[k], xs[k]) + off);
            ++evaluated[which[k]];
            fine += effort == Effort::fine ? 1 : 0;
          }
          return Result<std::vector<double>>(values);
        });
    ASSERT_TRUE(found);
    std::vector<double> near(k_functions);
    std::size_t predicted = 0;
    for (std::size_t i = 0; i < k_functions; ++i) {
      near[i] = std::clamp((*found)[i].x, -5.0, -3.0) - offsets[i];
      EXPECT_EQ((*found)[i].evaluated, evaluated[i] > 0);
      predicted += (*found)[i].evaluated ? 0 : 1;
    }
    // A function in a hundred may be further from its prediction than the band is wide; the quantile may
    // then be off by two or three of the 600 ranks.
    const double ranks = 3.0 / k_functions, found_at = weighted_quantile(near, weights, share);
    EXPECT_GE(found_at, weighted_quantile(planned, weights, share - ranks) - 1e-3) << share;
    EXPECT_LE(found_at, weighted_quantile(planned, weights, share + ranks) + 1e-3) << share;
    EXPECT_GT(predicted, k_functions / 2) << share;
    std::printf("share %.2f: %zu of %zu predicted, %d fine evaluations\n", share, predicted, k_functions,
                fine);
    EXPECT_LT(fine, static_cast<int>(k_functions) / 4) << share;
  }
}

// Where no function, or hardly one, crosses inside, the quantile lies outside, and nothing breaks.
TEST(CrossingsLaw, AQuantileMayLieOutside) {
  const Family functions = family();
  const std::vector<double> weights(k_functions, 1.0 / k_functions), offsets(k_functions);
  for (const double shift : {-6.0, -1.6, 1.6, 6.0}) {
    const auto found = find_crossings_near({0.05, weights, offsets}, functions.features, search(),
                                           [&](auto which, auto xs, Effort) {
                                             std::vector<double> values;
                                             for (std::size_t k = 0; k < which.size(); ++k)
                                               values.push_back(functions.value(which[k], xs[k] - shift));
                                             return Result<std::vector<double>>(values);
                                           });
    ASSERT_TRUE(found) << shift;
    std::size_t below = 0, above = 0, truly_below = 0, truly_above = 0;
    for (std::size_t i = 0; i < k_functions; ++i) {
      below += (*found)[i].x == -std::numeric_limits<double>::infinity() ? 1 : 0;
      above += (*found)[i].x == std::numeric_limits<double>::infinity() ? 1 : 0;
      truly_below += functions.crossing[i] + shift < -5 ? 1 : 0;
      truly_above += functions.crossing[i] + shift > -3 ? 1 : 0;
    }
    EXPECT_NEAR(static_cast<double>(below), static_cast<double>(truly_below), 0.02 * k_functions) << shift;
    EXPECT_NEAR(static_cast<double>(above), static_cast<double>(truly_above), 0.02 * k_functions) << shift;
  }
}

TEST(CrossingsLaw, AFailedEvaluationIsPassedOn) {
  const auto found = find_crossings({{0.0}}, search(), [](auto, auto, Effort) {
    return Result<std::vector<double>>(refuse({ErrorKind::out_of_domain, "no", "", "", "", ""}));
  });
  ASSERT_FALSE(found);
  EXPECT_EQ(found.error().message, "no");
}

}  // namespace
}  // namespace lastegg::steam
