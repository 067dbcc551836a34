#include "engine/treated_record.h"

#include <gtest/gtest.h>

namespace lastegg {
namespace {

Json read_pass(const char* text) {
  const auto pass = read(treated_pass_shape(), Json::parse(text));
  EXPECT_TRUE(pass) << pass.error().message;
  return pass ? *pass : Json();
}

TEST(TreatedRecord, Timestamps) {
  EXPECT_EQ(seconds_of_timestamp("1970-01-01T00:00:00Z"), 0);
  EXPECT_EQ(seconds_of_timestamp("2026-03-02T10:15:00Z"), 1772446500);
  EXPECT_EQ(seconds_of_timestamp("2026-03-02T12:15:00+02:00"), 1772446500);
  EXPECT_EQ(seconds_of_timestamp("2026-03-02T05:15:00.25-05:00"), 1772446500.25);
  EXPECT_EQ(seconds_of_timestamp("2026-03-02T10:15:00"), 1772446500);
  for (const char* bad : {"", "10:15", "2026-02-30T10:15:00Z", "2026-03-02T25:15:00Z",
                          "2026-03-02T10:15:00ZZ", "2026-03-02T10:15:00+2", "2026/03/02T10:15:00Z"})
    EXPECT_FALSE(seconds_of_timestamp(bad)) << bad;
}

TEST(TreatedRecord, EvenPassesAndMarksAreTheSame) {
  const Json passes = Json::array(
      {read_pass(R"({"length_metres": 2, "seconds": 100, "at": 50})"),
       read_pass(
           R"({"marks": [{"at_metres": 0, "seconds": 0}, {"at_metres": "2 m", "seconds": 100}], "at": 200})")});
  const auto record = read_treated_record(passes, "/passes");
  ASSERT_TRUE(record) << record.error().message;
  EXPECT_EQ(record->reach_metres, 2);
  for (const RecordedPass& pass : record->passes) {
    ASSERT_EQ(pass.pass.marks.size(), 2u);
    EXPECT_EQ(pass.pass.marks[1].at_metres, 2);
    EXPECT_EQ(pass.pass.marks[1].seconds, 100);
  }
}

TEST(TreatedRecord, TimedPassesStandInTheOrderOfTime) {
  const Json passes =
      Json::array({read_pass(R"({"length_metres": 2, "seconds": 100, "at": 500})"),
                   read_pass(R"({"length_metres": 1, "seconds": 10, "at": 20, "saw_live_bug": true})")});
  const auto record = read_treated_record(passes, "/passes");
  ASSERT_TRUE(record);
  EXPECT_TRUE(record->passes[0].pass.saw_live_bug);
  EXPECT_FALSE(record->passes[1].pass.saw_live_bug);
}

TEST(TreatedRecord, RefusesTwoClocksAndTwoPassesAtOnce) {
  const Json mixed =
      Json::array({read_pass(R"({"length_metres": 2, "seconds": 100, "at": 500})"),
                   read_pass(R"({"length_metres": 2, "seconds": 100, "at": "2026-03-02T10:15:00Z"})")});
  EXPECT_FALSE(read_treated_record(mixed, "/passes"));
  const Json overlapping = Json::array({read_pass(R"({"length_metres": 2, "seconds": 100, "at": 0})"),
                                        read_pass(R"({"length_metres": 2, "seconds": 100, "at": 50})")});
  EXPECT_FALSE(read_treated_record(overlapping, "/passes"));
  const Json bad = Json::array({read_pass(R"({"length_metres": 2, "seconds": 100, "at": "noon"})")});
  const auto refused = read_treated_record(bad, "/passes");
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "/passes/0/at");
}

}  // namespace
}  // namespace lastegg
