// The question follow_up: dates, refusals, reasons, the custom of two weeks.
#include <gtest/gtest.h>

#include "engine/ask.h"
#include "engine/json.h"

namespace lastegg {
namespace {

Json answer_of(const Json& request) {
  const AskOutcome outcome = ask("follow_up", dumped(request));
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text);
}

Json at(double celsius, double uncertainty = 1) {
  return answer_of(
      {{"temperature_celsius", celsius}, {"treated_on", "2026-03-02"}, {"uncertainty_celsius", uncertainty}});
}

TEST(FollowUp, RoundsTheWindowInwards) {
  const Json answer = at(26, 0);
  EXPECT_EQ(answer["return_from_days"], 8);  // 7.46 d
  EXPECT_EQ(answer["return_from"], "2026-03-10");
  const double egg = answer["first_new_egg_days"];
  EXPECT_EQ(answer["return_to_days"].get<int>(), static_cast<int>(egg) - 1);
  EXPECT_LT(answer["next_adult_days"].get<double>(), egg);
}

TEST(FollowUp, AdvisesAtLeastSixteenDaysAtTwentyDegreesAndTwentyOneAtEighteen) {
  EXPECT_GE(at(20, 0)["return_from_days"].get<int>(), 16);
  EXPECT_GE(at(18, 0)["return_from_days"].get<int>(), 21);
  EXPECT_GE(at(20)["return_from_days"].get<int>(), 18);
}

TEST(FollowUp, CallsTwoWeeksTooEarlyAtTwentyDegreesAndColder) {
  for (const double celsius : {15.5, 17.0, 18.0, 19.0, 20.0})
    EXPECT_EQ(at(celsius, 0)["custom"]["verdict"], "too_early") << celsius;
  EXPECT_EQ(at(24)["custom"]["verdict"], "inside");
  EXPECT_EQ(at(24)["custom"]["on"], "2026-03-16");
}

TEST(FollowUp, ColdAndHeatNameNoDateAndSayWhy) {
  const Json cold = at(12), hot = at(36);
  for (const Json& answer : {cold, hot}) {
    EXPECT_TRUE(answer["return_from"].is_null());
    EXPECT_TRUE(answer["calendar"].is_null());
    EXPECT_EQ(answer["custom"]["verdict"], "no_date");
  }
  EXPECT_EQ(cold["reason"]["code"], "too_cold");
  EXPECT_EQ(hot["reason"]["code"], "too_hot");
}

TEST(FollowUp, KnownTooPoorlyAsksForTwoVisits) {
  const Json answer = at(23, 8);
  EXPECT_EQ(answer["reason"]["code"], "window_closed");
  EXPECT_GT(answer["return_from_days"], answer["return_to_days"]);
}

TEST(FollowUp, SecondsAndDaysSayTheSame) {
  const Json days = answer_of(
      {{"series", {{"days", {0, 10, 20}}, {"celsius", {22, 22, 22}}}}, {"treated_on", "2026-03-02"}});
  const Json seconds = answer_of({{"series", {{"seconds", {0, 864000, 1728000}}, {"celsius", {22, 22, 22}}}},
                                  {"treated_on", "2026-03-02"}});
  EXPECT_EQ(days["last_hatch_days"], seconds["last_hatch_days"]);
  EXPECT_EQ(days["return_to"], seconds["return_to"]);
}

TEST(FollowUp, CrossesTheEndOfAMonthInALeapYear) {
  const Json answer =
      answer_of({{"temperature_celsius", 26}, {"treated_on", "2028-02-25"}, {"uncertainty_celsius", 0}});
  EXPECT_EQ(answer["return_from"], "2028-03-04");  // 8 days with a 29 February
}

TEST(FollowUp, RefusesWhatItCannotCount) {
  EXPECT_FALSE(ask("follow_up", R"({"temperature_celsius":20})").ok);
  EXPECT_FALSE(ask("follow_up", R"({"treated_on":"2026-03-02"})").ok);
  EXPECT_FALSE(ask("follow_up", R"({"temperature_celsius":20,"treated_on":"2026-02-30"})").ok);
  EXPECT_FALSE(ask("follow_up", R"({"temperature_celsius":200,"treated_on":"2026-03-02"})").ok);
  EXPECT_FALSE(ask("follow_up", R"({"series":{"days":[0,1],"celsius":[20]},"treated_on":"2026-03-02"})").ok);
}

}  // namespace
}  // namespace lastegg
