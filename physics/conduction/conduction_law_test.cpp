// Laws of conduction and of the scheme: heat balance, order of convergence, steady states, independence
// of what else is asked, bounds, refusals.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "physics/conduction/conduction.h"

namespace lastegg {
namespace {

ConductionLayer layer(double thickness, double conductivity, double heat_capacity, double start = 20.0) {
  return {metres(thickness), watts_per_metre_kelvin(conductivity), joules_per_m3_kelvin(heat_capacity),
          celsius(start)};
}

ConductionProblem sofa_stack() {
  return {{layer(0.0008, 0.05, 390e3, 22.0), layer(0.012, 0.04, 20e3), layer(0.04, 0.035, 45e3, 18.0)},
          Boundary::convective(watts_per_m2_kelvin(600), celsius(97)),
          Boundary::fixed(celsius(20)),
          {metres(0), metres(0.0008), metres(0.003), metres(0.0128), metres(0.05)},
          {seconds(0.5), seconds(2), seconds(10), seconds(600)}};
}

double heat_per_kelvin(const ConductionProblem& problem) {
  double sum = 0.0;
  for (const ConductionLayer& part : problem.layers) sum += part.thickness.si() * part.heat_capacity.si();
  return sum;
}

TEST(Conduction, KeepsTheHeatBalance) {
  const Boundary boundaries[] = {Boundary::fixed(celsius(95)),
                                 Boundary::convective(watts_per_m2_kelvin(300), celsius(95)),
                                 Boundary::flux(watts_per_m2(-400)), Boundary::insulated()};
  for (const Boundary& front : boundaries) {
    for (const Boundary& back : boundaries) {
      ConductionProblem problem = sofa_stack();
      problem.front = front;
      problem.back = back;
      const auto answer = conduct(problem);
      ASSERT_TRUE(answer);
      const EnergyLedger& ledger = answer->ledger;
      // Heat is turned over inside an insulated stack too: the scale includes what warms it by one kelvin.
      const double turned_over = std::abs(ledger.in_through_front.si()) +
                                 std::abs(ledger.in_through_back.si()) + std::abs(ledger.stored.si()) +
                                 heat_per_kelvin(problem);
      EXPECT_NEAR((ledger.in_through_front + ledger.in_through_back - ledger.stored).si() / turned_over, 0.0,
                  1e-9);
    }
  }
}

/// Largest difference between the temperatures of two answers in kelvin.
double difference(const ConductionAnswer& a, const ConductionAnswer& b) {
  double largest = 0.0;
  for (std::size_t t = 0; t < a.temperatures.size(); ++t)
    for (std::size_t x = 0; x < a.temperatures[t].size(); ++x)
      largest = std::max(largest, std::abs((a.temperatures[t][x] - b.temperatures[t][x]).si()));
  return largest;
}

ConductionAnswer with(double cells, double steps) {
  return *conduct(sofa_stack(), {cells, cells, steps});
}

TEST(Conduction, IsOfSecondOrderInSpace) {
  const auto coarse = with(0.16, 0.02), middle = with(0.08, 0.02), fine = with(0.04, 0.02);
  const double order = std::log2(difference(coarse, middle) / difference(middle, fine));
  EXPECT_GT(order, 1.8);
  EXPECT_LT(order, 2.3);
}

TEST(Conduction, IsOfSecondOrderInTime) {
  const auto coarse = with(0.06, 0.08), middle = with(0.06, 0.04), fine = with(0.06, 0.02);
  const double order = std::log2(difference(coarse, middle) / difference(middle, fine));
  EXPECT_GT(order, 1.8);
  EXPECT_LT(order, 2.6);
}

TEST(Conduction, IsConvergedAtItsDefaults) {
  EXPECT_LT(difference(*conduct(sofa_stack()), with(0.005, 0.013)), 0.01);
}

TEST(Conduction, ReachesTheSteadyStateOfResistancesInSeries) {
  ConductionProblem problem = sofa_stack();
  problem.times = {seconds(1e6)};
  const auto answer = conduct(problem);
  ASSERT_TRUE(answer);
  const double film = 1.0 / 600, fabric = 0.0008 / 0.05, batting = 0.012 / 0.04, foam = 0.04 / 0.035;
  const double flux = 77.0 / (film + fabric + batting + foam);
  EXPECT_NEAR(in_celsius(answer->temperatures[0][0]), 97.0 - flux * film, 1e-6);
  EXPECT_NEAR(in_celsius(answer->temperatures[0][1]), 97.0 - flux * (film + fabric), 1e-6);
  EXPECT_NEAR(in_celsius(answer->temperatures[0][3]), 20.0 + flux * foam, 1e-6);
}

TEST(Conduction, AnswersTheSameWhateverElseIsAsked) {
  ConductionProblem narrow = sofa_stack(), wide = sofa_stack();
  narrow.times = {seconds(2)};
  narrow.depths = {metres(0.003)};
  for (int i = 0; i <= 40; ++i) wide.depths.push_back(metres(0.0528 * i / 40));
  const auto one = conduct(narrow), many = conduct(wide);
  ASSERT_TRUE(one && many);
  EXPECT_NEAR((one->temperatures[0][0] - many->temperatures[1][2]).si(), 0.0, 0.01);
}

TEST(Conduction, DoesNotCareForTheOrderOfTimesAndDepths) {
  ConductionProblem turned = sofa_stack();
  std::swap(turned.times[0], turned.times[3]);
  std::swap(turned.depths[1], turned.depths[4]);
  const auto straight = conduct(sofa_stack()), other = conduct(turned);
  ASSERT_TRUE(straight && other);
  EXPECT_EQ(straight->temperatures[0][1], other->temperatures[3][4]);
  EXPECT_EQ(straight->temperatures[3][4], other->temperatures[0][1]);
}

TEST(Conduction, IsTheSameFromBehind) {
  ConductionProblem problem = sofa_stack(), mirror = sofa_stack();
  std::reverse(mirror.layers.begin(), mirror.layers.end());
  std::swap(mirror.front, mirror.back);
  for (Length& depth : mirror.depths) depth = metres(0.0528) - depth;
  EXPECT_LT(difference(*conduct(problem), *conduct(mirror)), 1e-6);
}

TEST(Conduction, DoesNotSeeACutThroughOneMaterial) {
  ConductionProblem whole = sofa_stack(), cut = sofa_stack();
  cut.layers[1].thickness = metres(0.005);
  cut.layers.insert(cut.layers.begin() + 2, layer(0.007, 0.04, 20e3));
  EXPECT_LT(difference(*conduct(whole), *conduct(cut)), 0.01);
}

TEST(Conduction, StaysBetweenItsTemperaturesAndRisesUnderHeat) {
  std::mt19937_64 generator(17);
  std::uniform_real_distribution<double> draw(0.0, 1.0);
  for (int trial = 0; trial < 20; ++trial) {
    ConductionProblem problem;
    for (int i = 0; i < 3; ++i)
      problem.layers.push_back(layer(0.0005 * std::pow(60.0, draw(generator)),
                                     0.03 * std::pow(10.0, draw(generator)),
                                     2e4 * std::pow(100.0, draw(generator))));
    problem.front = draw(generator) < 0.5
                        ? Boundary::fixed(celsius(90))
                        : Boundary::convective(watts_per_m2_kelvin(1000 * draw(generator) + 1), celsius(90));
    for (int i = 0; i <= 10; ++i)
      problem.depths.push_back((problem.layers[0].thickness + problem.layers[1].thickness) * (i / 10.0));
    for (int i = 0; i < 8; ++i) problem.times.push_back(seconds(0.3 * std::pow(3.0, i)));
    const auto answer = conduct(problem);
    ASSERT_TRUE(answer);
    for (std::size_t t = 0; t < problem.times.size(); ++t) {
      for (std::size_t x = 0; x < problem.depths.size(); ++x) {
        const double value = in_celsius(answer->temperatures[t][x]);
        EXPECT_GT(value, 20.0 - 1e-3);
        EXPECT_LT(value, 90.0 + 1e-3);
        if (t > 0) {
          EXPECT_GT(value, in_celsius(answer->temperatures[t - 1][x]) - 1e-3);
        }
        if (x > 0) {
          EXPECT_LT(value, in_celsius(answer->temperatures[t][x - 1]) + 1e-3);
        }
      }
    }
  }
}

TEST(Conduction, AnswersTheStartAtTimeZero) {
  ConductionProblem problem = sofa_stack();
  problem.times = {seconds(0)};
  problem.depths = {metres(0), metres(0.005), metres(0.03)};
  const auto answer = conduct(problem);
  ASSERT_TRUE(answer);
  EXPECT_NEAR(in_celsius(answer->temperatures[0][0]), 22.0, 1e-9);
  EXPECT_NEAR(in_celsius(answer->temperatures[0][1]), 20.0, 1e-9);
  EXPECT_NEAR(in_celsius(answer->temperatures[0][2]), 18.0, 1e-9);
}

void expect_refused(const ConductionProblem& problem, const char* where) {
  const auto answer = conduct(problem);
  ASSERT_FALSE(answer) << where;
  EXPECT_EQ(answer.error().kind, ErrorKind::bad_input);
  EXPECT_EQ(answer.error().where, where);
}

TEST(Conduction, RefusesWhatHasNoMeaning) {
  ConductionProblem problem = sofa_stack();
  problem.layers.clear();
  expect_refused(problem, "/layers");
  problem = sofa_stack();
  problem.layers[1].thickness = metres(0);
  expect_refused(problem, "/layers/1/thickness");
  problem = sofa_stack();
  problem.layers[2].conductivity = watts_per_metre_kelvin(-1);
  expect_refused(problem, "/layers/2/conductivity");
  problem = sofa_stack();
  problem.layers[0].heat_capacity = joules_per_m3_kelvin(std::nan(""));
  expect_refused(problem, "/layers/0/heat_capacity");
  problem = sofa_stack();
  problem.depths.push_back(metres(0.06));
  expect_refused(problem, "/depths/5");
  problem = sofa_stack();
  problem.times[1] = seconds(-1);
  expect_refused(problem, "/times/1");
  problem = sofa_stack();
  problem.front.film = watts_per_m2_kelvin(0);
  expect_refused(problem, "/front/film");
}

}  // namespace
}  // namespace lastegg
