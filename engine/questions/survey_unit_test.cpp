// The question survey: what is refused, with its place, and what an answer holds.
#include <gtest/gtest.h>

#include <string>

#include "engine/ask.h"
#include "engine/json.h"

namespace lastegg {
namespace {

Json asked(const std::string& request) {
  return Json::parse(ask("survey", request).text);
}

TEST(SurveyQuestion, AnEmptyInspectionSaysThatNobodyLooked) {
  const Json answer = asked(R"({"items": []})");
  EXPECT_EQ(answer.at("level"), "not_looked");
  EXPECT_EQ(answer.at("count_is_least"), true);
  EXPECT_TRUE(answer.at("next").empty());
}

TEST(SurveyQuestion, APlaceThatIsNotListedIsRefusedWithItsPlace) {
  const Json answer =
      asked(R"({"items": [{"id": "a", "kind": "sofa"}], "evidence": [{"item": "b", "look": "found"}]})");
  EXPECT_EQ(answer.at("error").at("kind"), "not_found");
  EXPECT_EQ(answer.at("error").at("where"), "/evidence/0/item");
  const Json twice = asked(R"({"items": [{"id": "a", "kind": "sofa"}, {"id": "a", "kind": "sofa"}]})");
  EXPECT_EQ(twice.at("error").at("where"), "/items/1/id");
  const Json many = asked(R"({"items": [], "evidence": [{"look": "found", "adults": -1}]})");
  EXPECT_EQ(many.at("error").at("where"), "/evidence/0/adults");
}

TEST(SurveyQuestion, ATrapThatWasGoneTellsNothing) {
  const Json answer = asked(R"({"items": [], "traps": [{"adults": 3, "missing": true, "certain": true}]})");
  EXPECT_EQ(answer.at("live"), 0);
  EXPECT_EQ(answer.at("level"), "not_looked");
}

TEST(SurveyQuestion, AHardStopIsSettledByWhoDecidesAlone) {
  const auto settled = [](const char* by) {
    return asked(std::string(R"({"items": [], "risks": [{"id": "1", "what": "sprinkler", "settled": true)") +
                 by + "}]}")
        .at("cautions")[0]
        .at("settled")
        .get<bool>();
  };
  EXPECT_FALSE(settled("")) << "nobody named";
  EXPECT_FALSE(settled(R"(, "settled_by": "occupant")"));
  EXPECT_TRUE(settled(R"(, "settled_by": "fire_authority")"));
}

TEST(SurveyQuestion, HardStopsComeFirstAndStayWhenSettled) {
  const Json answer = asked(
      R"({"items": [], "risks": [{"id": "1", "what": "pets"}, {"id": "2", "what": "oxygen", "settled": true, "settled_by": "supplier"}]})");
  ASSERT_EQ(answer.at("cautions").size(), 2U);
  EXPECT_EQ(answer.at("cautions")[0].at("stop"), "hard");
  EXPECT_EQ(answer.at("cautions")[0].at("settled"), true);
  EXPECT_FALSE(answer.at("cautions")[0].at("who_decides").get<std::string>().empty());
}

}  // namespace
}  // namespace lastegg
