#include "apps/cli/temperature_log.h"

#include <gtest/gtest.h>

namespace lastegg::cli {
namespace {

TEST(TemperatureLog, ReadsPlainTables) {
  const auto log = read_temperature_log("seconds,celsius\n0,20\n60,21.5\n120,-3e0\n");
  ASSERT_TRUE(log);
  EXPECT_EQ(log->seconds, (std::vector<double>{0, 60, 120}));
  EXPECT_EQ(log->celsius, (std::vector<double>{20, 21.5, -3}));
  EXPECT_EQ(log->lines, (std::vector<std::size_t>{2, 3, 4}));
}

TEST(TemperatureLog, ReadsWhatLoggersWrite) {
  const auto log = read_temperature_log(
      "\xEF\xBB\xBF# a remark\r\n\r\n\"Place\";\"Celsius\";\"Seconds\"\r\nbox; 50 ;0\r\n# in "
      "between\r\nbox;51;60");
  ASSERT_TRUE(log);
  EXPECT_EQ(log->seconds, (std::vector<double>{0, 60}));
  EXPECT_EQ(log->celsius, (std::vector<double>{50, 51}));
  EXPECT_EQ(log->lines, (std::vector<std::size_t>{4, 6}));
}

TEST(TemperatureLog, Fahrenheit) {
  const auto log = read_temperature_log("seconds\tfahrenheit\n0\t122\n1\t-40\n");
  ASSERT_TRUE(log);
  EXPECT_DOUBLE_EQ(log->celsius[0], 50);
  EXPECT_DOUBLE_EQ(log->celsius[1], -40);
}

TEST(TemperatureLog, RefusesByLine) {
  const struct {
    const char* text;
    const char* where;
    const char* words;
  } bad[] = {
      {"", "line 1", "empty"},
      {"0,20\n60,21\n", "line 1", "no column seconds"},
      {"time,celsius\n0,20\n", "line 1", "no column seconds"},
      {"seconds,temperature\n0,20\n", "line 1", "neither"},
      {"seconds,celsius,fahrenheit\n0,20,68\n", "line 1", "both"},
      {"seconds,celsius,celsius\n0,20,68\n", "line 1", "twice"},
      {"seconds,celsius\n0,20\n60\n", "line 3", "cells"},
      {"seconds,celsius\n0,20\n60,\n", "line 3", "not a number"},
      {"seconds,celsius\n0,20\n60,nan\n", "line 3", "not a number"},
      {"seconds,celsius\n0,20\n60,inf\n", "line 3", "not a number"},
      {"seconds,celsius\n0,20\n60,0x20\n", "line 3", "not a number"},
      {"seconds,celsius\n0,20\n60,21 C\n", "line 3", "not a number"},
      {"seconds;celsius\n0;20\n60;21,5\n", "line 3", "21,5"},
      {"seconds,celsius\n\n# x\n0,20\n60,21\n60,22\n", "line 6", "of line 5"},
      {"seconds,celsius\n0,20\n60,21\n50,22\n", "line 4", "forwards"},
      {"seconds,celsius\n0,20\n", "", "at least 2"},
  };
  for (const auto& [text, where, words] : bad) {
    const auto log = read_temperature_log(text);
    ASSERT_FALSE(log) << text;
    EXPECT_EQ(log.error().kind, ErrorKind::bad_input);
    EXPECT_EQ(log.error().where, where) << text;
    EXPECT_NE(log.error().message.find(words), std::string::npos) << log.error().message;
  }
}

TEST(TemperatureDifference, AsPeopleWriteIt) {
  EXPECT_DOUBLE_EQ(*temperature_difference_kelvin("1 C"), 1);
  EXPECT_DOUBLE_EQ(*temperature_difference_kelvin("1.5C"), 1.5);
  EXPECT_DOUBLE_EQ(*temperature_difference_kelvin("0.5 \xC2\xB0"
                                                  "C"),
                   0.5);
  EXPECT_DOUBLE_EQ(*temperature_difference_kelvin("1.8 F"), 1);
  EXPECT_DOUBLE_EQ(*temperature_difference_kelvin("2 K"), 2);
  EXPECT_DOUBLE_EQ(*temperature_difference_kelvin("3.6 delta F"), 2);
  for (const char* bad : {"", "1", "C", "one C", "1 m", "nan C", "1,5 C"})
    EXPECT_FALSE(temperature_difference_kelvin(bad)) << bad;
}

}  // namespace
}  // namespace lastegg::cli
