// Conversions against the exact definitions of the inch, foot, pound, degree Fahrenheit and Btu (NIST
// SP 811, appendix B) and against that table's rounded factors for the conventional pressure units.
#include "physics/quantities/unit_text.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lastegg {
namespace {

struct Row {
  const char* text;
  Unit unit;
  double value;
  double relative_tolerance;  ///< from the digits printed in the source; 4e-16 where the definition is exact
};

constexpr double k_exact = 4e-16;

TEST(UnitText, FollowsTheDefinitionsOfTheUnits) {
  const Row rows[] = {
      {"1 in/s", Unit::metre_per_second, 0.0254, k_exact},
      {"25 mm/s", Unit::metre_per_second, 0.025, k_exact},
      {"10 ft/min", Unit::metre_per_second, 0.0508, k_exact},
      {"1 ft per minute", Unit::metre_per_second, 5.08e-3, k_exact},
      {"1 mph", Unit::metre_per_second, 0.44704, k_exact},
      {"6 in", Unit::metre, 0.1524, k_exact},
      {"1/4 in", Unit::metre, 0.00635, k_exact},
      {"1 1/2 in", Unit::metre, 0.0381, k_exact},
      {"1-1/2 in", Unit::metre, 0.0381, k_exact},
      {"3 mm", Unit::metre, 0.003, 0.0},
      {"1 yd", Unit::metre, 0.9144, k_exact},
      {"1 ft2", Unit::square_metre, 0.09290304, k_exact},
      {"1 sq in", Unit::square_metre, 6.4516e-4, k_exact},
      {"1 ft3", Unit::cubic_metre, 2.8316846592e-2, k_exact},
      {"250 mL", Unit::cubic_metre, 2.5e-4, k_exact},
      {"1 cfm", Unit::cubic_metre_per_second, 4.719474432e-4, k_exact},
      {"160 F", Unit::celsius, 71.0 + 1.0 / 9.0, k_exact},
      {"32 F", Unit::celsius, 0.0, 0.0},
      {"212 F", Unit::celsius, 100.0, k_exact},
      {"-40 F", Unit::celsius, -40.0, k_exact},
      {"71 C", Unit::celsius, 71.0, 0.0},
      {"71 C", Unit::kelvin, 344.15, k_exact},
      {"300 K", Unit::kelvin, 300.0, 0.0},
      {"9 delta F", Unit::kelvin_difference, 5.0, k_exact},
      {"5 K", Unit::kelvin_difference, 5.0, 0.0},
      {"5 delta C", Unit::kelvin_difference, 5.0, 0.0},
      {"18 F/h", Unit::kelvin_per_second, 10.0 / 3600.0, k_exact},
      {"2.5 kPa", Unit::pascal, 2500.0, 0.0},
      {"1 atm", Unit::pascal, 101325.0, 0.0},
      {"1013.25 hPa", Unit::pascal, 101325.0, k_exact},
      {"1 psi", Unit::pascal, 6.894757e3, 1e-7},
      {"29.92 inHg", Unit::pascal, 101320.8, 1e-6},
      {"29.92 in Hg", Unit::pascal, 101320.8, 1e-6},
      {"1 inH2O", Unit::pascal, 2.490889e2, 1e-6},
      {"36 g/min", Unit::gram_per_second, 0.6, k_exact},
      {"36 g/min", Unit::kilogram_per_second, 6e-4, k_exact},
      {"1 lb", Unit::kilogram, 0.45359237, 0.0},
      {"1 lb/ft3", Unit::kilogram_per_m3, 16.01846, 1e-6},
      {"50 g/m2", Unit::gram_per_m2, 50.0, k_exact},
      {"1 Btu/h", Unit::watt, 0.2930711, 1e-6},
      {"1 Btu/(h ft2 F)", Unit::watt_per_m2_kelvin, 5.678263, 1e-6},
      {"1 Btu/(h ft F)", Unit::watt_per_metre_kelvin, 1.730735, 1e-6},
      {"1 Btu/(lb F)", Unit::joule_per_kilogram_kelvin, 4186.8, 1e-12},
      {"1 Btu/lb", Unit::joule_per_kilogram, 2326.0, 1e-12},
      {"0.04 W/mK", Unit::watt_per_metre_kelvin, 0.04, k_exact},
      {"600 W/m2K", Unit::watt_per_m2_kelvin, 600.0, k_exact},
      {"2 h", Unit::minute, 120.0, k_exact},
      {"90 min", Unit::hour, 1.5, k_exact},
      {"2 weeks", Unit::day, 14.0, k_exact},
      {"80 %", Unit::fraction, 0.8, k_exact},
      {"0.8", Unit::fraction, 0.8, 0.0},
      {"7", Unit::none, 7.0, 0.0},
      {"1 mV", Unit::microvolt, 1000.0, k_exact},
  };
  for (const Row& row : rows) {
    const Result<double> value = parse_quantity(row.text, row.unit);
    ASSERT_TRUE(value) << row.text << ": " << value.error().message;
    EXPECT_NEAR(*value, row.value, std::abs(row.value) * row.relative_tolerance) << row.text;
  }
}

}  // namespace
}  // namespace lastegg
