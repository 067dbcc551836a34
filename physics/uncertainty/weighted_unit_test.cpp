#include "physics/uncertainty/weighted.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>
#include <vector>

namespace lastegg {
namespace {

const std::vector<double> k_ten = {9, 1, 8, 2, 7, 3, 6, 4, 5, 10};

TEST(WeightedQuantile, IsHazensForEqualWeights) {
  // Hyndman and Fan type 5 of 1..10: quantile p stands at 10 p + 1/2.
  const std::vector<double> ones(10, 0.3);
  EXPECT_DOUBLE_EQ(weighted_quantile(k_ten, ones, 0.5), 5.5);
  EXPECT_DOUBLE_EQ(weighted_quantile(k_ten, ones, 0.25), 3.0);
  EXPECT_DOUBLE_EQ(weighted_quantile(k_ten, ones, 0.9), 9.5);
  EXPECT_DOUBLE_EQ(weighted_quantile(k_ten, ones, 0.05), 1.0);
  EXPECT_DOUBLE_EQ(weighted_quantile(k_ten, ones, 0.0), 1.0);
  EXPECT_DOUBLE_EQ(weighted_quantile(k_ten, ones, 1.0), 10.0);
}

TEST(WeightedQuantile, CountsWeights) {
  const std::vector<double> values = {1, 2, 3}, weights = {1, 2, 1};
  EXPECT_DOUBLE_EQ(weighted_quantile(values, weights, 0.5), 2.0);
  EXPECT_DOUBLE_EQ(weighted_quantile(values, weights, 0.125), 1.0);
  EXPECT_DOUBLE_EQ(weighted_quantile(values, weights, 0.3125), 1.5);
  const std::vector<double> one_only = {0, 0, 5};
  EXPECT_EQ(weighted_quantile(values, one_only, 0.1), 3.0);
}

TEST(WeightedQuantile, DoesNotDependOnOrderOrScaleAndRisesWithP) {
  std::mt19937_64 generator(5);
  std::uniform_real_distribution<double> draw(0.0, 1.0);
  std::vector<double> values, weights, values_back, weights_back;
  for (int i = 0; i < 300; ++i) {
    values.push_back(draw(generator));
    weights.push_back(draw(generator) < 0.2 ? 0.0 : draw(generator));
  }
  values_back.assign(values.rbegin(), values.rend());
  weights_back.assign(weights.rbegin(), weights.rend());
  for (double& w : weights_back) w *= 1024.0;
  double before = -1.0;
  for (int i = 0; i <= 100; ++i) {
    const double q = weighted_quantile(values, weights, i / 100.0);
    EXPECT_DOUBLE_EQ(q, weighted_quantile(values_back, weights_back, i / 100.0));
    EXPECT_GE(q, before);
    before = q;
  }
}

TEST(WeightedQuantile, CopesWithInfinitiesAndRefusesNothing) {
  const double inf = std::numeric_limits<double>::infinity();
  const std::vector<double> values = {-inf, 1, inf, inf}, weights = {1, 1, 1, 1};
  EXPECT_EQ(weighted_quantile(values, weights, 0.0), -inf);
  EXPECT_EQ(weighted_quantile(values, weights, 0.375), 1.0);
  EXPECT_EQ(weighted_quantile(values, weights, 0.9), inf);
  for (int i = 0; i <= 100; ++i) EXPECT_FALSE(std::isnan(weighted_quantile(values, weights, i / 100.0)));
  EXPECT_TRUE(std::isnan(weighted_quantile({}, {}, 0.5)));
  const std::vector<double> none = {0, 0, 0, 0};
  EXPECT_TRUE(std::isnan(weighted_quantile(values, none, 0.5)));
  EXPECT_TRUE(std::isnan(weighted_quantile(values, weights, 1.5)));
}

TEST(WeightedMoments, FollowTheirDefinitions) {
  const std::vector<double> values = {1, 2, 6}, weights = {1, 2, 1};
  EXPECT_DOUBLE_EQ(weighted_mean(values, weights), 2.75);
  EXPECT_DOUBLE_EQ(weighted_deviation(values, weights),
                   std::sqrt((1.75 * 1.75 + 2 * 0.75 * 0.75 + 3.25 * 3.25) / 4));
}

TEST(EffectiveSampleSize, LiesBetweenOneAndTheCount) {
  EXPECT_DOUBLE_EQ(effective_sample_size(std::vector<double>(1024, 1e-300)), 1024.0);
  EXPECT_DOUBLE_EQ(effective_sample_size(std::vector<double>{0, 0, 1e300}), 1.0);
  EXPECT_DOUBLE_EQ(effective_sample_size(std::vector<double>{1, 2}), 9.0 / 5.0);
  EXPECT_EQ(effective_sample_size(std::vector<double>{0, 0}), 0.0);
  EXPECT_EQ(effective_sample_size({}), 0.0);
}

}  // namespace
}  // namespace lastegg
