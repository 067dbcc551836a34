// What people type, accepted and refused.
#include "physics/quantities/unit_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace lastegg {
namespace {

TEST(UnitText, AcceptsTheSpellingsPeopleUse) {
  const std::pair<const char*, double> lengths[] = {
      {"6in", 0.1524},          {"6 in.", 0.1524},     {"6 inches", 0.1524},   {"6\"", 0.1524},
      {"6 \u2033", 0.1524},     {"\u00bd in", 0.0127}, {"1\u00bd in", 0.0381}, {" 25.4  mm ", 0.0254},
      {"25.4MM", 0.0254},       {".5 m", 0.5},         {"5. m", 5.0},          {"+2 m", 2.0},
      {"1e-3 m", 0.001},        {"2E+1 mm", 0.02},     {"-3 mm", -0.003},      {"3 millimetres", 0.003},
      {"3 Millimeters", 0.003}, {"2'", 0.6096},        {"300 \u00b5m", 3e-4}};
  for (const auto& [text, metres] : lengths) {
    const Result<double> value = parse_quantity(text, Unit::metre);
    ASSERT_TRUE(value) << value.error().message;
    EXPECT_NEAR(*value, metres, 1e-15) << text;
  }
  EXPECT_NEAR(*parse_quantity("1 inch per second", Unit::metre_per_second), 0.0254, 1e-17);
  EXPECT_NEAR(*parse_quantity("25 mm / s", Unit::metre_per_second), 0.025, 1e-17);
  EXPECT_EQ(*parse_quantity("71\u00b0C", Unit::celsius), 71.0);
  EXPECT_EQ(*parse_quantity("71 \u00b0 c", Unit::celsius), 71.0);
  EXPECT_EQ(*parse_quantity("71 deg C", Unit::celsius), 71.0);
  EXPECT_EQ(*parse_quantity("\u221240 C", Unit::celsius), -40.0);
  EXPECT_EQ(*parse_quantity("30 PSI", Unit::pascal), *parse_quantity("30 psi", Unit::pascal));
  EXPECT_NEAR(*parse_quantity("600 W/(m\u00b2\u00b7K)", Unit::watt_per_m2_kelvin), 600.0, 1e-12);
  EXPECT_NEAR(*parse_quantity("50 g/m^2", Unit::gram_per_m2), 50.0, 1e-13);
}

struct Refused {
  const char* text;
  Unit unit;
  const char* said;  ///< words that the message must hold
};

TEST(UnitText, RefusesWithWordsToActOn) {
  const Refused rows[] = {
      {"71", Unit::celsius, "has no unit"},
      {"25", Unit::metre_per_second, "mm/s"},
      {"5 m", Unit::second, "minutes are min"},
      {"5 m", Unit::minute, "minutes are min"},
      {"5 min", Unit::metre, "another kind"},
      {"16 oz", Unit::kilogram, "mass or a volume"},
      {"2 gal", Unit::cubic_metre, "write L"},
      {"30 psig", Unit::pascal, "air pressure"},
      {"30 mil", Unit::metre, "write in or mm"},
      {"71 deg", Unit::celsius, "C or F"},
      {"71 \u00b0", Unit::celsius, "has no unit"},
      {"in", Unit::metre, "number"},
      {"", Unit::metre, "empty"},
      {"   ", Unit::metre, "empty"},
      {"25,4 mm", Unit::metre, "decimal point"},
      {"1,000 ft", Unit::metre, "decimal point"},
      {"5 C", Unit::kelvin_difference, "difference is asked"},
      {"5 F", Unit::kelvin_difference, "delta F"},
      {"5 delta F", Unit::celsius, "where a temperature is asked"},
      {"-300 C", Unit::celsius, "absolute zero"},
      {"1/0 in", Unit::metre, "cannot be used"},
      {"1e999 m", Unit::metre, "cannot be used"},
      {"nan m", Unit::metre, "number"},
      {"0x10 m", Unit::metre, "unknown unit"},
      {"5 furlong", Unit::metre, "unknown unit"},
      {"5 mJ", Unit::joule_per_kilogram, "unknown unit"},
      {"5 mPa", Unit::pascal, "unknown unit"},
      {"5 mm", Unit::none, "without a unit"},
      {"5 mm 3", Unit::metre, "belongs to no unit"},
      {"5 6 mm", Unit::metre, "belongs to no unit"},
      {"5' 6\"", Unit::metre, "belongs to no unit"},
      {"5 %", Unit::metre, "another kind"},
      {"3 mm mm", Unit::metre, "another kind"},
  };
  for (const Refused& row : rows) {
    const Result<double> value = parse_quantity(row.text, row.unit);
    ASSERT_FALSE(value) << row.text;
    EXPECT_EQ(value.error().kind, ErrorKind::bad_input);
    EXPECT_NE(value.error().message.find(row.said), std::string::npos)
        << row.text << " -> " << value.error().message;
    EXPECT_NE(value.error().message.find("accepted here: "), std::string::npos);
    EXPECT_EQ(value.error().value, row.text);
  }
}

TEST(UnitText, RefusesTextOfAnyLength) {
  EXPECT_FALSE(parse_quantity(std::string(1000000, '1') + " mm", Unit::metre));
}

constexpr Unit k_last_unit = Unit::fraction;

TEST(UnitText, EveryUnitHasNamesAndItsOwnSpellingsAreAccepted) {
  for (int i = 1; i < static_cast<int>(k_last_unit); ++i) {
    const Unit unit = static_cast<Unit>(i);
    EXPECT_FALSE(unit_name(unit).empty()) << i;
    for (const std::string& spelling : accepted_spellings(unit)) {
      const Result<double> value = parse_quantity("280 " + spelling, unit);
      EXPECT_TRUE(value) << spelling << " " << (value ? "" : value.error().message);
    }
    const Result<double> own = parse_quantity("280 " + std::string(unit_sign(unit)), unit);
    ASSERT_TRUE(own) << unit_name(unit);
    EXPECT_NEAR(*own, 280.0, 1e-12) << unit_name(unit);
  }
}

TEST(UnitText, TakesAnyBytesWithoutHarm) {
  std::mt19937 generator(7);
  const std::string alphabet = "0123456789./-+ eEmsinftCFKgW%()*^,\"'\xc2\xb0\xe2\x88\x92q";
  for (int i = 0; i < 20000; ++i) {
    std::string text;
    const std::size_t length = generator() % 14;
    for (std::size_t k = 0; k < length; ++k) text += alphabet[generator() % alphabet.size()];
    const Result<double> value = parse_quantity(
        text, static_cast<Unit>(static_cast<int>(generator() % (static_cast<unsigned>(k_last_unit) + 1))));
    if (value) {
      EXPECT_TRUE(std::isfinite(*value)) << text;
    } else {
      EXPECT_FALSE(value.error().message.empty());
    }
  }
}

}  // namespace
}  // namespace lastegg
