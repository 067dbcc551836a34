// What the sample points must do for every key: stratify, be nets in two dimensions, have the moments
// of the uniform and normal distributions, and be unrelated between keys and dimensions.
#include "physics/uncertainty/sobol.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>
#include <string>
#include <vector>

namespace lastegg {
namespace {

const std::vector<std::string> k_keys = {
    "", "a", "b", "hand", "head:h1/towel:none", "head:h1/towel:wrapped", "cloth:3"};

std::vector<double> samples(const std::string& key, unsigned dimension, std::uint32_t first,
                            std::uint32_t count) {
  const SobolStream stream(key, dimension);
  std::vector<double> result;
  for (std::uint32_t i = first; i < first + count; ++i) result.push_back(stream.uniform(i));
  return result;
}

TEST(Sobol, PutsOnePointInEveryBinOfEveryAlignedBlock) {
  for (const std::string& key : k_keys) {
    for (unsigned dimension = 0; dimension < 6; ++dimension) {
      for (const std::uint32_t count : {1024u, 128u, 16u}) {
        for (std::uint32_t first = 0; first < 2048; first += count) {
          std::vector<int> hits(count, 0);
          for (const double u : samples(key, dimension, first, count)) {
            ASSERT_GT(u, 0.0);
            ASSERT_LT(u, 1.0);
            ++hits[static_cast<std::size_t>(u * count)];
          }
          for (const int hit : hits) ASSERT_EQ(hit, 1) << key << " " << dimension;
        }
      }
    }
  }
}

TEST(Sobol, FirstTwoDimensionsAreNets) {
  for (const std::string& key : k_keys) {
    for (std::uint32_t first = 0; first < 4096; first += 1024) {
      const auto x = samples(key, 0, first, 1024), y = samples(key, 1, first, 1024);
      for (unsigned columns = 1; columns <= 1024; columns *= 2) {
        const unsigned rows = 1024 / columns;
        std::vector<int> hits(1024, 0);
        for (std::size_t i = 0; i < 1024; ++i)
          ++hits[static_cast<std::size_t>(x[i] * columns) * rows + static_cast<std::size_t>(y[i] * rows)];
        for (const int hit : hits) ASSERT_EQ(hit, 1) << key << " " << columns;
      }
    }
  }
}

TEST(Sobol, AllFourDimensionsFillTheSixteenths) {
  // Joe and Kuo's first four dimensions form a net of quality t <= 3: 2^7 points fill all 2^4
  // half-cells evenly.
  for (const std::string& key : k_keys) {
    std::vector<int> hits(16, 0);
    for (std::uint32_t i = 0; i < 128; ++i) {
      std::size_t cell = 0;
      for (unsigned d = 0; d < 4; ++d) cell = cell * 2 + (uniform(key, d, i) < 0.5 ? 0 : 1);
      ++hits[cell];
    }
    for (const int hit : hits) EXPECT_EQ(hit, 8) << key;
  }
}

TEST(Sobol, HasTheMomentsOfItsDistributions) {
  for (const std::string& key : k_keys) {
    for (unsigned dimension = 0; dimension < 4; ++dimension) {
      const SobolStream stream(key, dimension);
      double mean = 0, square = 0, normal_mean = 0, normal_square = 0, normal_fourth = 0;
      constexpr std::uint32_t count = 1024;
      for (std::uint32_t i = 0; i < count; ++i) {
        const double u = stream.uniform(i), z = stream.normal(i);
        mean += u / count;
        square += u * u / count;
        normal_mean += z / count;
        normal_square += z * z / count;
        normal_fourth += z * z * z * z / count;
      }
      EXPECT_NEAR(mean, 0.5, 1e-4);
      EXPECT_NEAR(square, 1.0 / 3.0, 2e-4);
      EXPECT_NEAR(normal_mean, 0.0, 2e-3);
      EXPECT_NEAR(normal_square, 1.0, 0.02);
      EXPECT_NEAR(normal_fourth, 3.0, 0.5);
    }
  }
}

double correlation(const std::vector<double>& x, const std::vector<double>& y) {
  double sum = 0.0;
  for (std::size_t i = 0; i < x.size(); ++i) sum += (x[i] - 0.5) * (y[i] - 0.5);
  return sum * 12.0 / static_cast<double>(x.size());
}

// Between keys the pairing of points is random, but not that of two shuffled lists: because every
// aligned pair of points fills both halves, agreement of the leading digits comes in pairs. By counting
// bits the variance of the correlation of 1024 points is 1.6 / 1024 (independent lists: 1 / 1024): the
// price of stratified prefixes. A shared order would give 1.
constexpr double k_correlation_deviation = 0.0395;

TEST(Sobol, KeysAreUnrelated) {
  std::vector<std::vector<double>> columns;
  for (int k = 0; k < 60; ++k) columns.push_back(samples("unknown:" + std::to_string(k), 0, 0, 1024));
  double squares = 0.0, sum = 0.0, largest = 0.0;
  int pairs = 0;
  for (std::size_t a = 0; a < columns.size(); ++a) {
    for (std::size_t b = a + 1; b < columns.size(); ++b) {
      const double r = correlation(columns[a], columns[b]);
      sum += r;
      squares += r * r;
      largest = std::max(largest, std::abs(r));
      ++pairs;
    }
  }
  EXPECT_NEAR(sum / pairs, 0.0, 4.0 * k_correlation_deviation / std::sqrt(pairs));
  EXPECT_NEAR(std::sqrt(squares / pairs), k_correlation_deviation, 0.003);
  EXPECT_LT(largest, 4.5 * k_correlation_deviation);
}

TEST(Sobol, KeysShareNoCells) {
  // Chi-square of the joint 16 x 16 table of two keys' points, 225 degrees of freedom a pair; the same
  // pairing of leading digits raises its mean a little. Shared order or shared cells would multiply it.
  double sum = 0.0;
  int pairs = 0;
  for (int a = 0; a < 12; ++a) {
    for (int b = a + 1; b < 12; ++b) {
      const auto x = samples("k" + std::to_string(a), 0, 0, 1024),
                 y = samples("k" + std::to_string(b), 1, 0, 1024);
      std::vector<double> hits(256, 0.0);
      for (std::size_t i = 0; i < 1024; ++i)
        hits[static_cast<std::size_t>(x[i] * 16) * 16 + static_cast<std::size_t>(y[i] * 16)] += 1.0;
      for (const double hit : hits) sum += (hit - 4.0) * (hit - 4.0) / 4.0;
      ++pairs;
    }
  }
  EXPECT_GT(sum / (225.0 * pairs), 0.9);
  EXPECT_LT(sum / (225.0 * pairs), 1.2);
}

TEST(Sobol, ConvergesFasterThanChance) {
  // Mean of a smooth function of two dimensions of one key: random points err by about 1e-2, a
  // scrambled net far less.
  double worst = 0.0;
  for (const std::string& key : k_keys) {
    double sum = 0.0;
    for (std::uint32_t i = 0; i < 1024; ++i)
      sum += std::exp(uniform(key, 0, i)) * uniform(key, 1, i) * uniform(key, 1, i);
    worst = std::max(worst, std::abs(sum / 1024 - (std::exp(1.0) - 1.0) / 3.0));
  }
  EXPECT_LT(worst, 1e-3);
}

TEST(Sobol, NeverRepeatsAPoint) {
  std::set<double> seen;
  for (const double u : samples("hand", 2, 0, 20000)) seen.insert(u);
  EXPECT_EQ(seen.size(), 20000u);
}

TEST(Sobol, GivesTheRecordedPoints) {
  // Recorded once from this code. They must never change: answers already issued rest on them.
  EXPECT_EQ(key_hash("hand"), 0x262717e2819dbebcULL);
  EXPECT_EQ(uniform("hand", 0, 0), 0x1.6635c21cp-3);
  EXPECT_EQ(uniform("hand", 1, 1), 0x1.9f7d30e6p-2);
  EXPECT_EQ(uniform("head:h1", 3, 1023), 0x1.c0c0cf35p-1);
  EXPECT_EQ(uniform("head:h1", 5, 7), 0x1.58e2e95ap-2);
}

}  // namespace
}  // namespace lastegg
