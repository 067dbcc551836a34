// The question probe_check: words, warnings, refusals.
#include <gtest/gtest.h>

#include "engine/ask.h"
#include "engine/json.h"

namespace lastegg {
namespace {

Json answer_of(const Json& request) {
  const AskOutcome outcome = ask("probe_check", dumped(request));
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text);
}

TEST(ProbeCheckQuestion, IceTellsHotFromCold) {
  EXPECT_EQ(answer_of({{"in", "melting_ice"}, {"shown_celsius", 0.4}})["verdict"], "sound");
  EXPECT_EQ(answer_of({{"in", "melting_ice"}, {"shown_celsius", 3}})["reason"]["code"], "reads_hot");
  EXPECT_EQ(answer_of({{"in", "melting_ice"}, {"shown_celsius", -3}})["reason"]["code"], "reads_cold");
  EXPECT_EQ(answer_of({{"in", "melting_ice"}, {"shown_celsius", 1.6}})["reason"]["code"], "near");
}

TEST(ProbeCheckQuestion, BoilingWithoutAPlaceProvesNothing) {
  for (const double shown : {90.0, 95.0, 100.0, 105.0}) {
    const Json answer = answer_of({{"in", "boiling_water"}, {"shown_celsius", shown}});
    EXPECT_EQ(answer["verdict"], "not_proven") << shown;
    EXPECT_EQ(answer["reason"]["code"], "place_unknown");
    EXPECT_EQ(answer["warnings"].at(0)["code"], "elevation_unknown");
  }
}

TEST(ProbeCheckQuestion, ABarometerSettlesWhatTheWeatherMightExplain) {
  Json request{{"in", "boiling_water"}, {"shown_celsius", 101.0}, {"elevation_metres", 0}};
  EXPECT_EQ(answer_of(request)["reason"]["code"], "weather");
  request.erase("elevation_metres");
  request["pressure_pascal"] = 101325;
  EXPECT_EQ(answer_of(request)["verdict"], "sound");
}

TEST(ProbeCheckQuestion, RefusesWhatNoBathShows) {
  const AskOutcome outcome = ask("probe_check", R"({"in":"melting_ice","shown_celsius":"400 F"})");
  ASSERT_FALSE(outcome.ok);
  EXPECT_NE(outcome.text.find("/shown_celsius"), std::string::npos);
  EXPECT_NE(outcome.text.find("130"), std::string::npos);
}

}  // namespace
}  // namespace lastegg
