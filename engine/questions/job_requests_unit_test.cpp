// The requests that a job's facts make: nothing recorded is lost on the way, and each is what its question
// takes.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "engine/ask.h"
#include "engine/document.h"
#include "engine/questions/questions.h"
#include "job/furniture/catalogue.h"

namespace lastegg {
namespace {

std::string id(int number) {
  const std::string digits = std::to_string(number);
  return "0194a3c0-0000-7000-8000-" + std::string(12 - digits.size(), '0') + digits;
}

Json requests_of(const Json& state) {
  const AskOutcome outcome = ask("job_requests", dumped(Json{{"state", state}}));
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text, nullptr, false);
}

void expect_taken(const Question& question, const Json& request) {
  const auto checked = read(question.request, request);
  EXPECT_TRUE(checked) << question.name << ": " << (checked ? "" : checked.error().message) << " "
                       << dumped(request);
}

Json reading(int number, double pace, double celsius) {
  return {{"id", id(number)}, {"pace_metres_per_second", pace}, {"layers", 1}, {"peak_celsius", celsius}};
}

Json test_of(int number, int head, Json readings) {
  return {{"id", id(number)}, {"machine", id(20)}, {"head", id(head)}, {"readings", std::move(readings)}};
}

// One machine, two heads.
Json state_with(Json tests) {
  return {{"items", Json::array()},
          {"kit",
           {{"machines", Json::array({{{"id", id(20)}, {"title", "m"}}})},
            {"heads", Json::array({{{"id", id(21)}, {"title", "hand"}, {"length_metres", 0.08}},
                                   {{"id", id(22)}, {"title", "floor"}, {"length_metres", 0.1}}})},
            {"towels", Json::array()},
            {"probes", Json::array()}}},
          {"fold_tests", std::move(tests)}};
}

TEST(JobRequestsQuestion, TheExampleMakesRequestsThatTheirQuestionsTake) {
  const std::ifstream file(std::string(LASTEGG_SOURCE_DIR) + "/examples/job_requests.json");
  std::stringstream text;
  text << file.rdbuf();
  const AskOutcome outcome = ask("job_requests", text.str());
  ASSERT_TRUE(outcome.ok) << outcome.text;
  const Json answer = Json::parse(outcome.text, nullptr, false);
  ASSERT_EQ(answer["furniture"].size(), 2U);
  for (const Json& one : answer["furniture"]) {
    expect_taken(furniture_question(), one["request"]);
    const auto checked = read(furniture_question().request, one["request"]);
    ASSERT_TRUE(checked);
    const auto built = furniture_question().solve(*checked);
    EXPECT_TRUE(built) << (built ? "" : built.error().message);
  }
  expect_taken(fold_test_question(), answer["fold_tests"][0]["request"]);
  EXPECT_TRUE(answer["fold_tests"][1]["request"].is_null());
  expect_taken(plan_question(), answer["plan"]);
  EXPECT_EQ(answer["pace"]["prior"]["head"], "floor head");
  EXPECT_EQ(answer["pace"]["prior"]["same_machine"].size(), 1U);
  EXPECT_TRUE(answer["test_in_use"].is_null());
}

TEST(JobRequestsQuestion, EveryKeyThatAKindTakesGoesOn) {
  for (const furniture::Kind& kind : furniture::catalogue()) {
    Json item{{"id", id(1)}, {"kind", kind.name}, {"title", "t"}, {"covering", "unknown"}, {"room", id(2)}};
    for (const auto& measure : kind.measures) item[measure.key] = 1;
    for (const auto& count : kind.counts) item[count.key] = 1;
    for (const auto& option : kind.options) item[option.key] = true;
    Json state = state_with(Json::array());
    state["items"].push_back(item);
    const Json request = requests_of(state)["furniture"][0]["request"];
    expect_taken(furniture_question(), request);
    EXPECT_EQ(request["item"], kind.name);
    for (const auto& measure : kind.measures) EXPECT_TRUE(request.contains(measure.key)) << measure.key;
    for (const auto& count : kind.counts) EXPECT_TRUE(request.contains(count.key)) << count.key;
    for (const auto& option : kind.options) EXPECT_TRUE(request.contains(option.key)) << option.key;
    EXPECT_FALSE(request.contains("title"));
    EXPECT_FALSE(request.contains("room"));
  }
}

TEST(JobRequestsQuestion, ChangesOfEdgesGoWithTheirItem) {
  Json state = state_with(Json::array());
  for (const int number : {1, 2})
    state["items"].push_back({{"id", id(number)}, {"kind", "sofa"}, {"covering", "cotton"}});
  state["edge_changes"] = Json::array(
      {{{"id", id(9)}, {"item", id(2)}, {"change", "left_out"}, {"edge", "x"}, {"reason", "gone"}}});
  const Json answer = requests_of(state);
  EXPECT_FALSE(answer["furniture"][0]["request"].contains("changes"));
  ASSERT_EQ(answer["furniture"][1]["request"]["changes"].size(), 1U);
  expect_taken(furniture_question(), answer["furniture"][1]["request"]);
}

TEST(JobRequestsQuestion, TheTestThatTheSettingsNameIsInUseElseTheLast) {
  Json state = state_with(
      Json::array({test_of(30, 21, Json::array({reading(40, 0.01, 88)})),
                   test_of(31, 22, Json::array({reading(41, 0.01, 80)})), test_of(32, 22, Json::array())}));
  EXPECT_EQ(requests_of(state)["test_in_use"], id(31));
  state["settings"] = {{"id", id(50)}, {"fold_test", id(30)}};
  const Json answer = requests_of(state);
  EXPECT_EQ(answer["test_in_use"], id(30));
  ASSERT_EQ(answer["pace"]["fold_test"].size(), 1U) << "another head's test stands for no edge of this one";
  EXPECT_EQ(answer["pace"]["fold_test"][0]["head"]["name"], "hand");
  EXPECT_EQ(answer["pace"]["fold_test"][0]["same_machine"][0]["head"]["name"], "floor");
}

TEST(JobRequestsQuestion, AHeadWithoutReadingsLeansOnTheMachinesLatestTests) {
  Json state = state_with(
      Json::array({test_of(30, 21, Json::array({reading(40, 0.01, 70)})),
                   test_of(31, 21, Json::array({reading(41, 0.01, 90)})), test_of(32, 22, Json::array())}));
  state["settings"] = {{"id", id(50)}, {"fold_test", id(32)}};
  const Json pace = requests_of(state)["pace"];
  EXPECT_EQ(pace["prior"]["head"], "floor");
  EXPECT_EQ(pace["prior"]["length_metres"], 0.1);
  ASSERT_EQ(pace["prior"]["same_machine"].size(), 1U) << "an older test of the same head is stale";
  EXPECT_EQ(pace["prior"]["same_machine"][0]["readings"][0]["peak_celsius"], 90);
  Json asked = pace;
  asked["edge"] = {{"kind", "welt"}, {"covering", "cotton"}};
  expect_taken(pace_question(), asked);
  // The older one is what the newer is compared with.
  const Json tests = requests_of(state)["fold_tests"];
  EXPECT_EQ(tests[1]["request"]["earlier"]["readings"][0]["peak_celsius"], 70);
}

TEST(JobRequestsQuestion, SurfaceReadingsGoOnWithoutLayers) {
  Json surface = reading(40, 0.015, 0);
  surface.erase("peak_celsius");
  surface["kind"] = "surface";
  surface["palm"] = "warm";
  surface["seconds_after"] = 20;
  const Json state = state_with(Json::array({test_of(30, 21, Json::array({surface}))}));
  const Json request = requests_of(state)["fold_tests"][0]["request"];
  expect_taken(fold_test_question(), request);
  EXPECT_FALSE(request["readings"][0].contains("layers"));
  EXPECT_EQ(request["readings"][0]["palm"], "warm");
}

TEST(JobRequestsQuestion, AnEmptyOrOddStateAsksThePrior) {
  for (const Json& state :
       {Json::object(),
        Json{{"items", 5}, {"kit", "none"}, {"fold_tests", Json::array({1, "x", Json::object()})}},
        Json{{"items", Json::array({{{"id", id(1)}, {"kind", 7}}})}, {"settings", Json::array({2})}}}) {
    const Json answer = requests_of(state);
    EXPECT_TRUE(answer["pace"].contains("prior")) << dumped(state);
    EXPECT_TRUE(answer["test_in_use"].is_null());
  }
}

}  // namespace
}  // namespace lastegg
