// Exact solutions, with the numbers printed where they were published or computed independently, and
// one textbook example.
#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "physics/conduction/conduction.h"

namespace lastegg {
namespace {

constexpr double k_allowed_kelvin = 0.01;

ConductionLayer layer(double thickness, double conductivity, double heat_capacity, double start) {
  return {metres(thickness), watts_per_metre_kelvin(conductivity), joules_per_m3_kelvin(heat_capacity),
          celsius(start)};
}

double celsius_at(const ConductionAnswer& answer, std::size_t time, std::size_t depth) {
  return in_celsius(answer.temperatures.at(time).at(depth));
}

// A body so thick that its far side is not felt: fabric, k = 0.05 W/(m K), rho c = 390 kJ/(m3 K), 20 C.
constexpr double k_conductivity = 0.05, k_heat_capacity = 390e3, k_start = 20.0, k_hot = 95.0;

ConductionProblem thick_fabric(const Boundary& front) {
  return {{layer(0.1, k_conductivity, k_heat_capacity, k_start)},
          front,
          Boundary::insulated(),
          {metres(0.0005), metres(0.001), metres(0.002), metres(0.003)},
          {seconds(4)}};
}

TEST(ThickBody, WithAFixedFaceFollowsErfc) {
  // Printed values at 4 s: independent evaluation of 20 + 75 erfc(x / (2 sqrt(a t))).
  const auto answer = conduct(thick_fabric(Boundary::fixed(celsius(k_hot))));
  ASSERT_TRUE(answer);
  const double expected[] = {66.613, 44.258, 23.621, 20.229};
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_NEAR(celsius_at(*answer, 0, i), expected[i], k_allowed_kelvin) << i;
}

TEST(ThickBody, UnderAFilmFollowsItsSolution) {
  const auto answer = conduct(thick_fabric(Boundary::convective(watts_per_m2_kelvin(300), celsius(k_hot))));
  ASSERT_TRUE(answer);
  const double expected[] = {39.153, 22.580, 20.148};  // at 1, 2 and 3 mm
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_NEAR(celsius_at(*answer, 0, i + 1), expected[i], k_allowed_kelvin) << i;
}

TEST(ThickBody, UnderAFluxFollowsItsSolution) {
  auto problem = thick_fabric(Boundary::flux(watts_per_m2(5000)));
  problem.depths = {metres(0), metres(0.001), metres(0.002)};
  const auto answer = conduct(problem);
  ASSERT_TRUE(answer);
  const double rise[] = {80.8049, 17.2835, 1.8392};
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_NEAR(celsius_at(*answer, 0, i), k_start + rise[i], k_allowed_kelvin) << i;
}

TEST(ThickBody, UnderAFluxIsAsExactAtItsFaceAskedAlone) {
  // No other depth that would refine the grid: 20 C + 2 q sqrt(a t / pi) / k.
  auto problem = thick_fabric(Boundary::flux(watts_per_m2(5000)));
  problem.depths = {metres(0)};
  const auto answer = conduct(problem);
  ASSERT_TRUE(answer);
  EXPECT_NEAR(celsius_at(*answer, 0, 0), k_start + 80.8049, 0.5 * k_allowed_kelvin);
}

TEST(ThickBody, FollowsErfcOverFourDecadesOfTimeAtOnce) {
  auto problem = thick_fabric(Boundary::fixed(celsius(k_hot)));
  problem.layers[0].thickness = metres(0.3);
  problem.times = {seconds(0.1), seconds(1), seconds(10), seconds(100), seconds(1000)};
  problem.depths = {metres(0.0001), metres(0.0003), metres(0.001), metres(0.003), metres(0.01), metres(0.03)};
  const auto answer = conduct(problem);
  ASSERT_TRUE(answer);
  const double diffusivity = k_conductivity / k_heat_capacity;
  for (std::size_t t = 0; t < problem.times.size(); ++t) {
    for (std::size_t x = 0; x < problem.depths.size(); ++x) {
      const double z = problem.depths[x].si() / (2.0 * std::sqrt(diffusivity * problem.times[t].si()));
      EXPECT_NEAR(celsius_at(*answer, t, x), k_start + (k_hot - k_start) * std::erfc(z), k_allowed_kelvin)
          << t << " " << x;
    }
  }
}

TEST(PlaneWall, FollowsTheSeriesSolution) {
  // Dimensionless temperatures at the centre and the surface of a wall cooled on both sides; six
  // digits, computed from the eigenvalue series. Half a wall is modelled, insulated at the centre. A
  // wall of 0.02 m half thickness, 75 K above the air.
  struct Row {
    double biot, fourier, centre, surface;
  };
  const Row rows[] = {
      {0.1, 1.0, 0.922389, 0.878126}, {1.0, 0.2, 0.950642, 0.643391}, {1.0, 1.0, 0.533859, 0.348177}};
  const double half = 0.02, conductivity = 0.16, heat_capacity = 1.2e6;
  for (const Row& row : rows) {
    const double seconds_passed = row.fourier * half * half * heat_capacity / conductivity;
    const ConductionProblem problem = {
        {layer(half, conductivity, heat_capacity, 95.0)},
        Boundary::convective(watts_per_m2_kelvin(row.biot * conductivity / half), celsius(20)),
        Boundary::insulated(),
        {metres(half), metres(0)},
        {seconds(seconds_passed)}};
    const auto answer = conduct(problem);
    ASSERT_TRUE(answer);
    EXPECT_NEAR(celsius_at(*answer, 0, 0), 20.0 + 75.0 * row.centre, k_allowed_kelvin);
    EXPECT_NEAR(celsius_at(*answer, 0, 1), 20.0 + 75.0 * row.surface, k_allowed_kelvin);
  }
}

TEST(TwoBodies, MeetAtTheContactTemperature) {
  // A hot wet towel (95 C, effusivity 1308) laid on softwood (322.5) and on fabric (176.6), at 20 C:
  // (e1 T1 + e2 T2) / (e1 + e2) = 80.16 and 86.07 C at every time.
  const std::pair<double, double> rows[] = {{322.5, 80.16}, {176.6, 86.07}};
  for (const auto& [effusivity, contact] : rows) {
    const double towel_conductivity = 0.6, other_conductivity = 0.13;
    const ConductionProblem problem = {
        {layer(0.05, towel_conductivity, 1308.0 * 1308.0 / towel_conductivity, 95.0),
         layer(0.05, other_conductivity, effusivity * effusivity / other_conductivity, 20.0)},
        Boundary::insulated(),
        Boundary::insulated(),
        {metres(0.05)},
        {seconds(0.5), seconds(3), seconds(60)}};
    const auto answer = conduct(problem);
    ASSERT_TRUE(answer);
    for (std::size_t t = 0; t < 3; ++t)
      EXPECT_NEAR(celsius_at(*answer, t, 0), contact, k_allowed_kelvin) << effusivity;
  }
}

TEST(Textbook, NellisAndKleinSemiInfiniteConvection) {
  // Published example of the semi-infinite convection function: 393 K body, 355 K fluid, h 50, k 10, a
  // 4.029e-6, x 3 mm, 100 s: 389.5 K printed; the exact formula gives 389.543.
  const ConductionProblem problem = {
      {{metres(0.4), watts_per_metre_kelvin(10), joules_per_m3_kelvin(10 / 4.029e-6), kelvin(393)}},
      Boundary::convective(watts_per_m2_kelvin(50), kelvin(355)),
      Boundary::insulated(),
      {millimetres(3)},
      {seconds(100)}};
  const auto answer = conduct(problem);
  ASSERT_TRUE(answer);
  EXPECT_NEAR(in_kelvin(answer->temperatures[0][0]), 389.5, 0.05);
  EXPECT_NEAR(in_kelvin(answer->temperatures[0][0]), 389.543, k_allowed_kelvin);
}

/// A layer of thickness l on a thick body, face held: the series of images (Carslaw and Jaeger 1959,
/// section 12.8; own derivation agrees). Depth x from the face; share of the jump.
double coated(double x, double t, double l, double a1, double a2, double effusivity_ratio) {
  const double alpha = (effusivity_ratio - 1.0) / (effusivity_ratio + 1.0);  // ratio = e2 / e1
  const double width = 2.0 * std::sqrt(a1 * t);
  double sum = 0.0;
  for (int n = 0; n < 60; ++n) {
    const double sign = std::pow(alpha, n);
    if (x <= l) {
      sum += sign * (std::erfc((2 * n * l + x) / width) - alpha * std::erfc(((2 * n + 2) * l - x) / width));
    } else {
      sum += sign * 2.0 / (1.0 + effusivity_ratio) *
             std::erfc(((2 * n + 1) * l + std::sqrt(a1 / a2) * (x - l)) / width);
    }
  }
  return sum;
}

TEST(LayerOnAThickBody, FollowsTheSeriesOfImages) {
  // 1 mm of fabric on foam and, the other way about, foam on wood: temperatures in, at and below the
  // interface.
  struct Case {
    double k1, c1, k2, c2;
  };
  const Case cases[] = {{0.05, 390e3, 0.035, 45e3}, {0.035, 45e3, 0.13, 800e3}, {0.2, 1.9e6, 0.04, 40e3}};
  for (const Case& c : cases) {
    const double l = 0.001;
    const ConductionProblem problem = {
        {layer(l, c.k1, c.c1, k_start), layer(0.5, c.k2, c.c2, k_start)},
        Boundary::fixed(celsius(k_hot)),
        Boundary::insulated(),
        {metres(0.0004), metres(0.0009), metres(l), metres(0.0011), metres(0.002), metres(0.006)},
        {seconds(0.3), seconds(1), seconds(4), seconds(20)}};
    const auto answer = conduct(problem);
    ASSERT_TRUE(answer);
    const double a1 = c.k1 / c.c1, a2 = c.k2 / c.c2;
    const double ratio = std::sqrt(c.k2 * c.c2 / (c.k1 * c.c1));
    for (std::size_t t = 0; t < problem.times.size(); ++t) {
      for (std::size_t x = 0; x < problem.depths.size(); ++x) {
        const double exact = k_start + (k_hot - k_start) * coated(problem.depths[x].si(),
                                                                  problem.times[t].si(), l, a1, a2, ratio);
        EXPECT_NEAR(celsius_at(*answer, t, x), exact, k_allowed_kelvin) << c.k1 << " t " << t << " x " << x;
      }
    }
  }
}

}  // namespace
}  // namespace lastegg
