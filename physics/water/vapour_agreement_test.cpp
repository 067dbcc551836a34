// The kernel's smooth forms against the certified properties of water.h, and their slopes against
// differences.
#include "physics/water/vapour.h"

#include <gtest/gtest.h>

#include <cmath>

#include "physics/water/water.h"

namespace lastegg {
namespace {

TEST(SaturationFit, StaysWithinItsStatedErrorOfIf97) {
  for (double t = 0.0; t <= 110.0; t += 0.05) {
    const double certified = in_pascals(*saturation_pressure(celsius(t)));
    EXPECT_NEAR(saturation_fit(t).pressure_pascal / certified, 1.0, 2.4e-7) << t;
  }
  for (double t = 110.0; t <= 115.0; t += 0.05) {
    const double certified = in_pascals(*saturation_pressure(celsius(t)));
    EXPECT_NEAR(saturation_fit(t).pressure_pascal / certified, 1.0, 4e-7) << t;
  }
}

TEST(SaturationFit, ContinuesSmoothlyBelowFreezing) {
  // Supercooled water, Murphy and Koop 2005, Quarterly Journal 131:1539, equation 10 (from memory, to
  // be checked); within 1 % is ample for a start value of the kernel.
  const auto supercooled = [](double celsius_value) {
    const double t = celsius_value + 273.15;
    return std::exp(54.842763 - 6763.22 / t - 4.210 * std::log(t) + 0.000367 * t +
                    std::tanh(0.0415 * (t - 218.8)) *
                        (53.878 - 1331.22 / t - 9.44523 * std::log(t) + 0.014025 * t));
  };
  for (double t = -30.0; t <= 0.0; t += 1.0)
    EXPECT_NEAR(saturation_fit(t).pressure_pascal / supercooled(t), 1.0, 0.01) << t;
}

TEST(SaturationFit, HasItsOwnSlopeAndRises) {
  for (double t = -29.0; t <= 114.0; t += 0.5) {
    const double h = 1e-3;
    const double difference =
        (saturation_fit(t + h).pressure_pascal - saturation_fit(t - h).pressure_pascal) / (2 * h);
    EXPECT_NEAR(saturation_fit(t).slope_pascal_per_kelvin / difference, 1.0, 1e-8) << t;
    EXPECT_GT(difference, 0.0);
  }
}

TEST(SaturatedVapourDensity, IsNearThatOfIf97AndHasItsOwnSlope) {
  for (double t = 0.0; t <= 100.0; t += 1.0) {
    const double certified = in_kilograms_per_m3(saturation_at(celsius(t))->vapour.density());
    EXPECT_NEAR(saturated_vapour_density(t).kilograms_per_m3 / certified, 1.0, 0.016) << t;
    const double h = 1e-3;
    const double difference = (saturated_vapour_density(t + h).kilograms_per_m3 -
                               saturated_vapour_density(t - h).kilograms_per_m3) /
                              (2 * h);
    EXPECT_NEAR(saturated_vapour_density(t).slope_kilograms_per_m3_kelvin / difference, 1.0, 1e-7) << t;
  }
}

TEST(EnthalpyFits, AreWithinTheirStatedErrors) {
  for (double t = 0.5; t <= 100.0; t += 0.5) {
    const Saturation both = *saturation_at(celsius(t));
    EXPECT_NEAR(latent_heat_fit(t) / both.latent_heat().si(), 1.0, 9.3e-4) << t;
    EXPECT_NEAR(liquid_enthalpy_fit(t), both.liquid.enthalpy.si(), 1100.0) << t;
    EXPECT_DOUBLE_EQ(vapour_enthalpy_fit(t), liquid_enthalpy_fit(t) + latent_heat_fit(t));
    EXPECT_NEAR((latent_heat_fit(t + 1e-3) - latent_heat_fit(t - 1e-3)) / 2e-3, latent_heat_fit_slope(t),
                1e-4);
  }
}

}  // namespace
}  // namespace lastegg
