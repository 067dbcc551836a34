// A pace for a head and towel that nobody has tested, of a machine whose other head was. All readings are
// invented.
#include <gtest/gtest.h>

#include "engine/ask.h"
#include "engine/document.h"

namespace lastegg {
namespace {

Json pass(double pace, int layers, double celsius) {
  return {{"pace_metres_per_second", pace}, {"layers", layers}, {"peak_celsius", celsius}};
}

// A head that stands still well below boiling: the boiler gives weak steam.
Json weak_head(const char* name) {
  return {{"machine", "m"},
          {"head", {{"name", name}, {"length_metres", 0.08}}},
          {"samples", 256},
          {"readings", Json::array({{{"hold_seconds", 60}, {"layers", 1}, {"peak_celsius", 90}},
                                    pass(0.010, 1, 80),
                                    pass(0.018, 1, 70),
                                    pass(0.010, 2, 66)})}};
}

Json pace_request(Json basis) {
  basis["edge"] = {{"kind", "welt"}, {"covering", "cotton"}, {"fill", "foam"}};
  return basis;
}

Json prior_with(Json others) {
  Json prior{{"machine", "m"}, {"head", "floor head"}};
  if (!others.empty()) prior["same_machine"] = std::move(others);
  return pace_request({{"prior", std::move(prior)}, {"samples", 256}});
}

Json answer_of(const Json& request) {
  const AskOutcome outcome = ask("pace", dumped(request));
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text, nullptr, false);
}

double lethal_at_an_inch(const Json& answer) {
  return answer["one_inch_per_second"]["lethal_share"];
}

double hottest_at_2_mm_per_second(const Json& answer) {
  return answer["curve"][0]["target_celsius_quantiles"]["p95"];
}

bool warns(const Json& answer, const char* code) {
  for (const Json& warning : answer["warnings"]) {
    if (warning["code"] == code) return true;
  }
  return false;
}

TEST(SameMachinePace, AnotherHeadOfTheMachineLowersWhatIsBelieved) {
  const Json prior = answer_of(prior_with(Json::array()));
  const Json informed = answer_of(prior_with(Json::array({weak_head("hand head")})));
  EXPECT_EQ(prior["basis"], "prior");
  EXPECT_TRUE(warns(prior, "no_test_yet"));
  EXPECT_EQ(informed["basis"], "same_machine");
  EXPECT_TRUE(warns(informed, "same_machine"));
  EXPECT_FALSE(warns(informed, "no_test_yet"));
  EXPECT_LT(hottest_at_2_mm_per_second(informed), hottest_at_2_mm_per_second(prior) - 0.3);
  EXPECT_LT(lethal_at_an_inch(informed), lethal_at_an_inch(prior) + 0.01);
}

TEST(SameMachinePace, AnOwnTestIsKnownBetter) {
  const Json informed = answer_of(prior_with(Json::array({weak_head("hand head")})));
  const Json own = answer_of(pace_request({{"fold_test", weak_head("floor head")}}));
  EXPECT_EQ(own["basis"], "fold_test");
  const auto spread = [](const Json& answer) {
    const Json& celsius = answer["one_inch_per_second"]["target_celsius"];
    return celsius["p95"].get<double>() - celsius["p05"].get<double>();
  };
  EXPECT_GT(spread(informed), spread(own));
}

TEST(SameMachinePace, BesideAnOwnTestTheBasisStaysTheTest) {
  Json test = weak_head("floor head");
  test["readings"] = Json::array({pass(0.012, 1, 80)});
  test["same_machine"] = Json::array({weak_head("hand head")});
  const Json answer = answer_of(pace_request({{"fold_test", test}}));
  EXPECT_EQ(answer["basis"], "fold_test");
  EXPECT_TRUE(warns(answer, "same_machine"));
}

TEST(SameMachinePace, OnlyOtherHeadsOfThisMachineMaySpeak) {
  Json stranger = weak_head("hand head");
  stranger["machine"] = "another";
  for (const Json& other : {stranger, weak_head("floor head")}) {
    const AskOutcome outcome = ask("pace", dumped(prior_with(Json::array({other}))));
    ASSERT_FALSE(outcome.ok);
    EXPECT_EQ(Json::parse(outcome.text, nullptr, false)["error"]["where"], "/prior/same_machine/0");
  }
}

}  // namespace
}  // namespace lastegg
