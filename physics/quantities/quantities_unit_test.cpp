#include "physics/quantities/quantities.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace lastegg {
namespace {

TEST(Quantities, ConvertByTheDefinitionsOfTheUnits) {
  EXPECT_DOUBLE_EQ(in_celsius(fahrenheit(160.0)), 71.0 + 1.0 / 9.0);
  EXPECT_DOUBLE_EQ(in_fahrenheit(celsius(100.0)), 212.0);
  EXPECT_DOUBLE_EQ(in_kelvin(celsius(20.0)), 293.15);
  EXPECT_DOUBLE_EQ(in_kelvin(fahrenheit_difference(9.0)), 5.0);
  EXPECT_EQ(millimetres(3.0), metres(0.003));
  EXPECT_DOUBLE_EQ(in_millimetres(inches(1.0)), 25.4);
  EXPECT_DOUBLE_EQ(in_inches(feet(1.0)), 12.0);
  EXPECT_DOUBLE_EQ(in_metres_per_second(inches_per_second(1.0)), 0.0254);
  EXPECT_DOUBLE_EQ(in_minutes(hours(1.5)), 90.0);
  EXPECT_DOUBLE_EQ(in_hours(days(2.0)), 48.0);
  EXPECT_DOUBLE_EQ(in_pascals(kilopascals(2.5)), 2500.0);
  EXPECT_DOUBLE_EQ(in_grams_per_m2(grams(30.0) / Area::from_si(0.5)), 60.0);
}

TEST(Quantities, CombineAsTheirUnitsDo) {
  static_assert(std::is_same_v<decltype(metres(1) / seconds(2)), Speed>);
  static_assert(std::is_same_v<decltype(metres(1) / metres(2)), double>);
  static_assert(std::is_same_v<decltype(watts_per_m2_kelvin(1) * kelvin_difference(1)), HeatFlux>);
  static_assert(
      std::is_same_v<decltype(watts_per_metre_kelvin(1) / joules_per_m3_kelvin(1)), ThermalDiffusivity>);
  static_assert(std::is_same_v<decltype(m3_per_kilogram(1) * kilograms_per_m3(1)), double>);
  static_assert(std::is_same_v<decltype(1.0 / m3_per_kilogram(1)), Density>);
  static_assert(std::is_same_v<decltype(celsius(1) - celsius(2)), TemperatureDifference>);
  static_assert(celsius(20) < celsius(21) && metres(1) > millimetres(999));
  EXPECT_DOUBLE_EQ(in_metres_per_second(millimetres(50) / seconds(2)), 0.025);
  EXPECT_DOUBLE_EQ(in_celsius(celsius(71) + kelvin_difference(2) - kelvin_difference(3)), 70.0);
  EXPECT_DOUBLE_EQ(in_watts_per_m2(watts_per_m2_kelvin(600) * (celsius(97) - celsius(20))), 46200.0);
  Length sum = metres(1);
  sum += millimetres(500);
  sum -= millimetres(250);
  EXPECT_DOUBLE_EQ(in_metres(-sum * 2.0), -2.5);
}

}  // namespace
}  // namespace lastegg
