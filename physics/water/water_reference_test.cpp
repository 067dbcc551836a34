// Printed check values: IAPWS R7-97(2012) tables 5, 15, 35 and 36 (nine digits), ISO 2533 pressures.
// The tables' numbers were read in the verification programs of several independent implementations,
// which agree with one another.
#include <gtest/gtest.h>

#include <cmath>

#include "physics/water/water.h"

namespace lastegg {
namespace {

void expect_printed(double value, double printed, const char* what) {
  const double unit = std::pow(10.0, std::floor(std::log10(std::abs(printed))) - 8.0);
  EXPECT_NEAR(value, printed, 0.51 * unit) << what;
}

struct TableRow {
  double kelvin, megapascal;
  double specific_volume, enthalpy_kilojoules, entropy_kilojoules, heat_capacity_kilojoules, sound_speed;
};

void expect_row(const WaterProperties& properties, const TableRow& row) {
  expect_printed(in_m3_per_kilogram(properties.specific_volume), row.specific_volume, "v");
  expect_printed(in_joules_per_kilogram(properties.enthalpy) / 1000.0, row.enthalpy_kilojoules, "h");
  expect_printed(in_joules_per_kilogram_kelvin(properties.entropy) / 1000.0, row.entropy_kilojoules, "s");
  expect_printed(in_joules_per_kilogram_kelvin(properties.heat_capacity) / 1000.0,
                 row.heat_capacity_kilojoules, "cp");
  expect_printed(in_metres_per_second(properties.sound_speed), row.sound_speed, "w");
}

TEST(LiquidWater, GivesTable5) {
  const TableRow rows[] = {
      {300, 3, 0.100215168e-2, 0.115331273e3, 0.392294792, 0.417301218e1, 0.150773921e4},
      {300, 80, 0.971180894e-3, 0.184142828e3, 0.368563852, 0.401008987e1, 0.163469054e4},
      {500, 3, 0.120241800e-2, 0.975542239e3, 0.258041912e1, 0.465580682e1, 0.124071337e4},
  };
  for (const TableRow& row : rows) {
    const auto properties = liquid_water(kelvin(row.kelvin), pascals(row.megapascal * 1e6));
    ASSERT_TRUE(properties);
    expect_row(*properties, row);
  }
}

TEST(Steam, GivesTable15) {
  const TableRow rows[] = {
      {300, 0.0035, 0.394913866e2, 0.254991145e4, 0.852238967e1, 0.191300162e1, 0.427920172e3},
      {700, 0.0035, 0.923015898e2, 0.333568375e4, 0.101749996e2, 0.208141274e1, 0.644289068e3},
      {700, 30, 0.542946619e-2, 0.263149474e4, 0.517540298e1, 0.103505092e2, 0.480386523e3},
  };
  for (const TableRow& row : rows) {
    const auto properties = water_vapour(kelvin(row.kelvin), pascals(row.megapascal * 1e6));
    ASSERT_TRUE(properties);
    expect_row(*properties, row);
  }
}

TEST(SaturationPressure, GivesTable35) {
  const std::pair<double, double> rows[] = {
      {300, 0.353658941e-2}, {500, 0.263889776e1}, {600, 0.123443146e2}};
  for (const auto& [t, megapascal] : rows)
    expect_printed(in_pascals(*saturation_pressure(kelvin(t))) / 1e6, megapascal, "psat");
}

TEST(SaturationTemperature, GivesTable36) {
  const std::pair<double, double> rows[] = {{0.1, 0.372755919e3}, {1, 0.453035632e3}, {10, 0.584149488e3}};
  for (const auto& [megapascal, t] : rows)
    expect_printed(in_kelvin(*saturation_temperature(pascals(megapascal * 1e6))), t, "Tsat");
}

TEST(StandardPressure, GivesThePrintedAtmosphere) {
  // ISO 2533 and US Standard Atmosphere 1976, geopotential metres and Pa, as printed (six digits).
  const std::pair<double, double> rows[] = {{0, 101325},     {500, 95460.8},  {1000, 89874.6},
                                            {1500, 84556.0}, {2000, 79495.2}, {2500, 74682.5},
                                            {3000, 70108.5}, {5000, 54019.9}};
  for (const auto& [elevation, pascal] : rows)
    EXPECT_NEAR(in_pascals(*standard_pressure(metres(elevation))), pascal, 0.051) << elevation;
}

TEST(BoilingPoint, AtSeaLevelIsThatOfIf97) {
  // Tsat(101325 Pa) = 373.1243 K: Wagner and Kretzschmar, International Steam Tables (from memory);
  // 99.97 C in any table.
  EXPECT_NEAR(in_celsius(*saturation_temperature(pascals(101325))), 99.9743, 5e-5);
}

TEST(DewTemperature, IsTheSaturationTemperatureOfTheShare) {
  // Steam share against dew temperature at sea level, computed with python3-iapws 1.5.3 to 0.01 K.
  const std::pair<double, double> rows[] = {{1.00, 99.97}, {0.95, 98.54}, {0.90, 97.05}, {0.80, 93.84},
                                            {0.70, 90.28}, {0.60, 86.26}, {0.50, 81.64}, {0.40, 76.17},
                                            {0.33, 71.61}, {0.30, 69.40}, {0.25, 65.26}, {0.20, 60.34},
                                            {0.15, 54.24}, {0.10, 46.07}};
  for (const auto& [share, dew] : rows)
    EXPECT_NEAR(in_celsius(*dew_temperature(share, pascals(101325))), dew, 0.0051) << share;
}

}  // namespace
}  // namespace lastegg
