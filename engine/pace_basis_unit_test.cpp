// A fold test made at one elevation, asked for paces at another. All readings are invented.
#include <gtest/gtest.h>

#include "engine/ask.h"
#include "engine/document.h"

namespace lastegg {
namespace {

Json answer_of(const char* question, const Json& request) {
  const AskOutcome outcome = ask(question, dumped(request));
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text, nullptr, false);
}

Json pass(double pace, int layers, double celsius) {
  return {{"pace_metres_per_second", pace}, {"layers", layers}, {"peak_celsius", celsius}};
}

// Tested at 200 m above the sea.
Json request() {
  return {{"fold_test",
           {{"machine", "m"},
            {"head", {{"name", "hand head"}, {"length_metres", 0.08}}},
            {"elevation_metres", 200},
            {"samples", 256},
            {"readings", Json::array({pass(0.010, 1, 90), pass(0.018, 1, 82), pass(0.0254, 1, 75),
                                      pass(0.008, 2, 85), pass(0.014, 2, 70)})}}},
          {"edge", {{"kind", "seam"}, {"covering", "polyester"}, {"wetting_limit_grams_per_m2", 300}}}};
}

Json at_elevation(double metres) {
  Json asked = request();
  asked["elevation_metres"] = metres;
  return answer_of("pace", asked);
}

bool warns(const Json& answer) {
  for (const Json& warning : answer.at("warnings")) {
    if (warning.at("code") == "thinner_air") return true;
  }
  return false;
}

double dew(const Json& answer) {
  return answer.at("middle_case").at("head").at("dew_celsius");
}

double boiling(double metres) {
  return answer_of("saturation", {{"elevation_metres", metres}}).at("temperature_celsius");
}

TEST(PaceBasis, InThinnerAirTheSteamIsCoolerByAsMuchAsBoilingIs) {
  const Json there = at_elevation(200), here = at_elevation(2200);
  EXPECT_NEAR(dew(there) - dew(here), boiling(200) - boiling(2200), 0.1);
  EXPECT_TRUE(warns(here));
  EXPECT_FALSE(warns(there));
  ASSERT_FALSE(there.at("window_metres_per_second").is_null());
  ASSERT_FALSE(here.at("window_metres_per_second").is_null());
  EXPECT_LT(here.at("window_metres_per_second")[1], there.at("window_metres_per_second")[1]);
}

TEST(PaceBasis, InDenserAirTheTestStands) {
  Json low = at_elevation(0);
  EXPECT_EQ(low, answer_of("pace", request()));
}

TEST(PaceBasis, WhatATestFoundIsBroughtToThinnerAirAsTheTestIs) {
  const Json found = answer_of("fold_test", request().at("fold_test"));
  Json asked{{"calibration", found.at("calibration")}, {"edge", request().at("edge")}};
  asked["elevation_metres"] = 2200;
  const Json here = answer_of("pace", asked), tested = at_elevation(2200);
  EXPECT_EQ(here.at("window_metres_per_second"), tested.at("window_metres_per_second"));
}

}  // namespace
}  // namespace lastegg
