// Against the psychrometer formula of the WMO and the standard table of saturation.
#include <gtest/gtest.h>

#include "physics/water/water.h"
#include "treatments/drying/drying.h"

namespace lastegg::drying {
namespace {

// Vapour pressure by an aspirated psychrometer. Source: [wmo_guide_8].
double vapour_pressure(double dry, double wet, double pressure_pascal) {
  const double saturated = in_pascals(*saturation_pressure(celsius(wet)));
  return saturated - 6.53e-4 * (1 + 0.000944 * wet) * pressure_pascal * (dry - wet);
}

TEST(DryingReference, WetBulbAgreesWithThePsychrometer) {
  // A psychrometer's wet bulb also takes up a little radiation, and its coefficient is that of 4 to 10 m/s:
  // 0.5 K.
  for (const double dry : {15.0, 22.0, 28.0, 35.0}) {
    for (const double humidity : {0.2, 0.35, 0.5, 0.65, 0.8}) {
      const double wet = wet_bulb_celsius({5, dry, humidity}, 101325);
      const double wanted = humidity * in_pascals(*saturation_pressure(celsius(dry)));
      double low = dry - 30, high = dry;
      low = std::max(low, 0.1);
      for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (vapour_pressure(dry, middle, 101325) < wanted ? low : high) = middle;
      }
      EXPECT_NEAR(wet, 0.5 * (low + high), 0.06 * (dry - wet)) << dry << " C, " << humidity;
    }
  }
}

TEST(DryingReference, SaturatedAirDriesNothing) {
  EXPECT_NEAR(wet_bulb_celsius({10, 20, 1.0}, 101325), 20, 1e-6);
  EXPECT_NEAR(free_surface_rate({10, 20, 1.0}, 101325), 0, 1e-12);
}

// Rates that an independent program gave for 22 C: 53, 106, 265 g/m2 h at 50 % with films 5, 10, 25, and 60
// at 70 % with film 10. Its constant of the Lewis relation differs: 10 %.
TEST(DryingReference, FreeSurfaceRates) {
  const auto grams_per_hour = [](double film, double humidity) {
    return 3.6e6 * free_surface_rate({film, 22, humidity}, 101325);
  };
  EXPECT_NEAR(grams_per_hour(5, 0.5), 53, 5.3);
  EXPECT_NEAR(grams_per_hour(10, 0.5), 106, 10.6);
  EXPECT_NEAR(grams_per_hour(25, 0.5), 265, 26.5);
  EXPECT_NEAR(grams_per_hour(10, 0.7), 60, 6.0);
}

}  // namespace
}  // namespace lastegg::drying
