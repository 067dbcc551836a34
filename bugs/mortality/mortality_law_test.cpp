// Laws that dose, ratio and probability obey whatever the parameters are.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "bugs/mortality/mortality.h"
#include "bugs/mortality/series_for_tests.h"

namespace lastegg::bugs {
namespace {

constexpr Stage k_stages[] = {Stage::egg, Stage::nymph, Stage::adult};
constexpr Exposure k_exposures[] = {Exposure::air, Exposure::steam};

// The integral by many small rectangles, of the rate alone.
double by_rectangles(const DoseRate& rate, double from, double to, double seconds) {
  constexpr int k_pieces = 400000;
  double sum = 0;
  for (int i = 0; i < k_pieces; ++i) sum += rate.at(from + (to - from) * (i + 0.5) / k_pieces);
  return sum * seconds / k_pieces;
}

TEST(DoseLaw, ClosedFormIsTheIntegral) {
  const DoseRate rate = kill_law(Stage::egg, Exposure::air).rate(4);
  const struct {
    double from, to;
  } pieces[] = {{20, 60}, {60, 20}, {39, 41}, {41, 39}, {54, 56}, {56, 54},    {45, 45.0001},
                {55, 70}, {20, 39}, {40, 55}, {48, 48}, {57, 57}, {39.9, 55.1}};
  for (const auto& [from, to] : pieces) {
    const double exact = rate.of_piece(from, to, 90);
    EXPECT_NEAR(exact, by_rectangles(rate, from, to, 90), 2e-5 * exact + 1e-12) << from << " to " << to;
  }
}

TEST(DoseLaw, OnsetAndCapAreSharp) {
  const DoseRate rate(48, 4, 40, 55);
  EXPECT_EQ(rate.at(std::nextafter(40.0, 0.0)), 0);
  EXPECT_NEAR(rate.at(40), 0.01, 1e-15);
  EXPECT_EQ(rate.at(55), rate.at(200));
  EXPECT_EQ(rate.of_piece(20, 39.999, 1e6), 0);
  EXPECT_NEAR(rate.of_piece(40, 40, 100), 1, 1e-13);
  EXPECT_NEAR(rate.of_piece(90, 60, 7), 7 * rate.at(55), 1e-9);
}

TEST(DoseLaw, AdditiveInAnySplit) {
  std::mt19937_64 generator(3);
  std::uniform_real_distribution<double> celsius(30, 75), share(0, 1);
  for (const Exposure exposure : k_exposures) {
    const DoseRate rate = kill_law(Stage::egg, exposure).rate(3.5);
    for (int i = 0; i < 2000; ++i) {
      const double from = celsius(generator), to = celsius(generator), s = share(generator);
      const double middle = from + s * (to - from);
      const double whole = rate.of_piece(from, to, 100);
      const double parts = rate.of_piece(from, middle, 100 * s) + rate.of_piece(middle, to, 100 * (1 - s));
      EXPECT_NEAR(parts, whole, 1e-10 * whole + 1e-12) << from << " " << middle << " " << to;
    }
  }
}

TEST(DoseLaw, SameForwardsAndBackwards) {
  const DoseRate rate = kill_law(Stage::adult, Exposure::air).rate(5);
  for (double to = 30; to < 70; to += 0.37)
    EXPECT_DOUBLE_EQ(rate.of_piece(44, to, 50), rate.of_piece(to, 44, 50));
}

TEST(DoseLaw, MonotoneInTemperatureAndTime) {
  std::mt19937_64 generator(4);
  std::uniform_real_distribution<double> celsius(35, 65), rise(0, 2);
  for (const Stage stage : k_stages)
    for (const Exposure exposure : k_exposures) {
      const KillLaw& law = kill_law(stage, exposure);
      for (int i = 0; i < 200; ++i) {
        OwnedSeries cool, hot, longer;
        double t = 0;
        for (int k = 0; k < 20; ++k) {
          const double c = celsius(generator);
          cool.seconds.push_back(t);
          cool.celsius.push_back(c);
          hot.celsius.push_back(c + rise(generator));
          t += 30;
        }
        hot.seconds = cool.seconds;
        longer = cool;
        longer.seconds.push_back(t);
        longer.celsius.push_back(50);
        const auto dose = equivalent_minutes(cool.view(), law);
        const auto hotter = equivalent_minutes(hot.view(), law);
        const auto later = equivalent_minutes(longer.view(), law);
        for (std::size_t z = 0; z < 2; ++z) {
          EXPECT_GE(hotter[z], dose[z]);
          EXPECT_GT(later[z], dose[z]);
        }
      }
    }
}

TEST(DoseLaw, TheWorseZDecides) {
  std::mt19937_64 generator(5);
  std::uniform_real_distribution<double> celsius(40, 60);
  for (const Stage stage : k_stages) {
    const KillLaw& law = kill_law(stage, Exposure::air);
    int low_decides = 0, high_decides = 0;
    for (int i = 0; i < 500; ++i) {
      const double c = celsius(generator);
      const OwnedSeries hold{{0, 600}, {c, c}};
      const auto minutes = equivalent_minutes(hold.view(), law);
      const double ratio = ratio_to_lt99(minutes, law);
      EXPECT_LE(ratio, minutes[0] / law.lt99_minutes);
      EXPECT_LE(ratio, minutes[1] / law.lt99_minutes);
      (minutes[0] < minutes[1] ? low_decides : high_decides)++;
      if (std::fabs(c - law.reference_celsius) < 0.1) continue;
      EXPECT_EQ(minutes[0] < minutes[1], c < law.reference_celsius)
          << "small z is worse below the reference, large z above";
    }
    EXPECT_GT(low_decides, 0);
    EXPECT_GT(high_decides, 0);
  }
}

TEST(DoseLaw, UncertaintyIsAShiftOfTheSeries) {
  const OwnedSeries series{{0, 600, 1200, 3000}, {20, 51, 50, 47}};
  OwnedSeries lower = series;
  for (double& c : lower.celsius) c -= 1.5;
  const KillLaw& law = kill_law(Stage::egg, Exposure::air);
  const auto shifted = equivalent_minutes(series.view(), law, {.uncertainty_celsius = 1.5});
  const auto direct = equivalent_minutes(lower.view(), law);
  EXPECT_DOUBLE_EQ(shifted[0], direct[0]);
  EXPECT_DOUBLE_EQ(shifted[1], direct[1]);
  // One kelvin is a factor 10^(1/4) at z = 4, far from onset and cap.
  const KillLaw bare = bare_law(Stage::egg, 4);
  EXPECT_NEAR(equivalent_minutes(series.view(), bare)[0] /
                  equivalent_minutes(series.view(), bare, {.uncertainty_celsius = 1})[0],
              std::pow(10, 0.25), 1e-12);
}

TEST(KillProbabilityLaw, RatioOneLeavesOnePercent) {
  for (const Stage stage : k_stages) EXPECT_NEAR(survival(0, kill_law(stage, Exposure::air)), 0.01, 2e-5);
}

TEST(KillProbabilityLaw, RisesWithDoseAndStaysBelowItsCap) {
  for (const Stage stage : k_stages)
    for (const Exposure exposure : k_exposures) {
      double before = -1;
      for (double lg = -3; lg < 12; lg += 0.01) {
        const double kill = expected_kill(stage, lg, exposure);
        EXPECT_GE(kill, before);
        EXPECT_LE(kill, 1);
        EXPECT_LE(printed_probability(kill), 0.99);
        before = kill;
      }
      EXPECT_EQ(expected_kill(stage, -INFINITY, exposure), 0);
    }
  EXPECT_EQ(printed_probability(1), 0.99);
  EXPECT_EQ(printed_probability(0.5), 0.5);
}

TEST(KillProbabilityLaw, StudiesThatDisagreePullTowardsHalf) {
  // The spread between studies makes a high kill less certain than a batch's own spread would.
  for (const Stage stage : k_stages) {
    const KillLaw& law = kill_law(stage, Exposure::air);
    EXPECT_LT(expected_kill(stage, 0.3, Exposure::air), 1 - survival(0.3, law));
  }
}

TEST(KillProbabilityLaw, ContactBoundsMobileStagesOnly) {
  EXPECT_NEAR(expected_kill(Stage::egg, 9, Exposure::steam), 1, 1e-9);
  EXPECT_NEAR(expected_kill(Stage::nymph, 9, Exposure::steam), 0.91, 1e-9);
  EXPECT_NEAR(expected_kill(Stage::adult, 9, Exposure::steam), 0.91, 1e-9);
  EXPECT_NEAR(expected_kill(Stage::adult, 9, Exposure::air), 1, 1e-9);
}

}  // namespace
}  // namespace lastegg::bugs
