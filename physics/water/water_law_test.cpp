// Laws that any equation of state must obey, and the refusals at the edges of validity.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "physics/water/water.h"

namespace lastegg {
namespace {

TEST(Saturation, RoundTripsBetweenTemperatureAndPressure) {
  // Equations 30 and 31 are roots of one polynomial: the round trip closes to rounding.
  std::mt19937_64 generator(41);
  std::uniform_real_distribution<double> draw(273.16, 647.0);
  for (int i = 0; i < 10000; ++i) {
    const double t = draw(generator);
    const auto pressure = saturation_pressure(kelvin(t));
    ASSERT_TRUE(pressure);
    const auto back = saturation_temperature(*pressure);
    ASSERT_TRUE(back);
    EXPECT_NEAR(in_kelvin(*back), t, 1e-8);
  }
}

TEST(Saturation, PressureRisesWithTemperature) {
  double before = 0.0;
  for (double t = 273.15; t <= 647.0; t += 0.25) {
    const double now = in_pascals(*saturation_pressure(kelvin(t)));
    EXPECT_GT(now, before) << t;
    before = now;
  }
}

TEST(Saturation, ObeysClapeyron) {
  // dp/dT = h_fg / (T (v_g - v_l)). IF97 states its regions' agreement on the line in Gibbs energy, not
  // exactly; 0.02 % holds.
  for (double t = 275.0; t <= 620.0; t += 5.0) {
    const Saturation both = *saturation_at(kelvin(t));
    const double step = 1e-3;
    const double slope =
        in_pascals(*saturation_pressure(kelvin(t + step)) - *saturation_pressure(kelvin(t - step))) /
        (2 * step);
    const double clapeyron =
        both.latent_heat().si() / (t * (both.vapour.specific_volume - both.liquid.specific_volume).si());
    EXPECT_NEAR(slope / clapeyron, 1.0, 2e-4) << t;
  }
}

TEST(Saturation, PhasesHaveEqualGibbsEnergy) {
  for (double t = 275.0; t <= 620.0; t += 5.0) {
    const Saturation both = *saturation_at(kelvin(t));
    const double liquid = both.liquid.enthalpy.si() - t * both.liquid.entropy.si();
    const double vapour = both.vapour.enthalpy.si() - t * both.vapour.entropy.si();
    EXPECT_NEAR(liquid, vapour, 2e-5 * both.latent_heat().si()) << t;
  }
}

template <class Phase>
void expect_consistent_derivatives(Phase phase, double t, double p) {
  const double dt = 1e-2, dp = p * 1e-4;
  const auto at = [&](double temperature, double pressure) {
    return *phase(kelvin(temperature), pascals(pressure));
  };
  const auto middle = at(t, p);
  const double heat_capacity = (at(t + dt, p).enthalpy - at(t - dt, p).enthalpy).si() / (2 * dt);
  EXPECT_NEAR(heat_capacity / middle.heat_capacity.si(), 1.0, 2e-6);
  // dh = T ds + v dp at constant temperature
  const double by_pressure = (at(t, p + dp).enthalpy - at(t, p - dp).enthalpy).si();
  const double heat = t * (at(t, p + dp).entropy - at(t, p - dp).entropy).si();
  EXPECT_NEAR(by_pressure - heat, middle.specific_volume.si() * 2 * dp, 1e-5 * std::abs(heat) + 1e-6);
  // w^2 = -v^2 (dp/dv)_s, with (dv/dp)_s = (dv/dp)_T + T/cp (dv/dT)_p^2
  const double by_p = (at(t, p + dp).specific_volume - at(t, p - dp).specific_volume).si() / (2 * dp);
  const double by_t = (at(t + dt, p).specific_volume - at(t - dt, p).specific_volume).si() / (2 * dt);
  const double v = middle.specific_volume.si();
  const double isentropic = by_p + t / middle.heat_capacity.si() * by_t * by_t;
  EXPECT_NEAR(std::sqrt(-v * v / isentropic) / middle.sound_speed.si(), 1.0, 1e-5);
}

TEST(WaterAndSteam, HaveConsistentDerivatives) {
  expect_consistent_derivatives(liquid_water, 330.0, 2e6);
  expect_consistent_derivatives(liquid_water, 371.0, 2e5);
  expect_consistent_derivatives(water_vapour, 380.0, 9e4);
  expect_consistent_derivatives(water_vapour, 420.0, 2e5);
}

TEST(Steam, BecomesAnIdealGasAtLowPressure) {
  const auto thin = *water_vapour(celsius(50), pascals(1.0));
  EXPECT_NEAR(thin.specific_volume.si() * 1.0 / (461.526 * 323.15), 1.0, 1e-5);
}

TEST(DewTemperature, RisesWithTheShareAndFallsWithElevation) {
  double before = 0.0;
  for (double share = 0.05; share <= 1.0; share += 0.05) {
    const double now = in_kelvin(*dew_temperature(share, pascals(101325)));
    EXPECT_GT(now, before);
    EXPECT_LT(in_kelvin(*dew_temperature(share, *standard_pressure(metres(1609.344)))), now);
    before = now;
  }
}

template <class Value>
void expect_refused(const Result<Value>& result, const char* limit) {
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error().kind, ErrorKind::out_of_domain);
  EXPECT_EQ(result.error().limit, limit);
  EXPECT_FALSE(result.error().value.empty());
  EXPECT_FALSE(result.error().unit.empty());
}

TEST(Water, RefusesOutsideItsValidity) {
  expect_refused(saturation_pressure(celsius(-1)), "273.15");
  expect_refused(saturation_pressure(kelvin(648)), "647.096");
  expect_refused(saturation_pressure(kelvin(std::nan(""))), "647.096");
  expect_refused(saturation_temperature(pascals(600)), "611.213");
  expect_refused(saturation_temperature(pascals(23e6)), "22064000");
  expect_refused(saturation_at(kelvin(630)), "623.15");
  expect_refused(saturation_at(pascals(-5)), "611.213");
  expect_refused(liquid_water(kelvin(270), pascals(1e5)), "273.15");
  expect_refused(liquid_water(kelvin(300), pascals(2e8)), "100000000");
  expect_refused(water_vapour(kelvin(1100), pascals(1e5)), "1073.15");
  expect_refused(standard_pressure(metres(9000)), "6000");
  expect_refused(standard_pressure(metres(-600)), "-500");
  expect_refused(dew_temperature(0.001, pascals(101325)), "611.213");
  EXPECT_FALSE(liquid_water(kelvin(400), pascals(1e5)));
  EXPECT_FALSE(water_vapour(kelvin(300), pascals(1e5)));
  EXPECT_FALSE(water_vapour(kelvin(650), pascals(30e6)));
  EXPECT_FALSE(water_vapour(kelvin(400), pascals(0)));
  EXPECT_EQ(dew_temperature(1.5, pascals(101325)).error().kind, ErrorKind::bad_input);
  EXPECT_EQ(dew_temperature(0.0, pascals(101325)).error().kind, ErrorKind::bad_input);
  EXPECT_FALSE(dew_temperature(std::nan(""), pascals(101325)));
}

}  // namespace
}  // namespace lastegg
