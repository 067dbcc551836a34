#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "engine/ask.h"
#include "engine/document.h"
#include "engine/questions/questions.h"

namespace lastegg {
namespace {

Result<Answer> answer_to(const std::string& text) {
  const Question& question = dose_question();
  return parse_document(text)
      .and_then([&](const Json& request) { return read(question.request, request); })
      .and_then([&](const Json& request) { return question.solve(request); });
}

Json result_of(const std::string& text) {
  const auto answer = answer_to(text);
  EXPECT_TRUE(answer) << (answer ? "" : answer.error().message);
  if (!answer) return {};
  const auto checked = check_answer(dose_question(), answer->result);
  EXPECT_TRUE(checked) << (checked ? "" : checked.error().message + checked.error().where);
  return answer->result;
}

std::vector<std::string> warnings_of(const std::string& text) {
  std::vector<std::string> codes;
  const auto answered = answer_to(text);
  for (const Warning& warning : answered->warnings) codes.push_back(warning.code);
  return codes;
}

TEST(DoseQuestion, ExampleIsAnsweredInItsShape) {
  std::ifstream file(std::string(LASTEGG_SOURCE_DIR) + "/examples/dose.json");
  std::stringstream text;
  text << file.rdbuf();
  const Json result = result_of(text.str());
  EXPECT_EQ(result["reference_celsius"], 48);
  EXPECT_GT(result["ratio_to_lt99"], 1);
}

// The hand-worked ramp: 54.934 + 189.737 + 27.467 = 272.138 equivalent minutes, R 3.806.
TEST(DoseQuestion, RampWorkedByHand) {
  const Json result = result_of(
      R"({"stage":"egg","series":{"seconds":[0,18000,21600,30600],"celsius":[20,50,50,20]},
          "z_kelvin":4,"onset_celsius":-100,"cap_celsius":200})");
  EXPECT_NEAR(result["equivalent_minutes"].get<double>(), 272.138, 0.0005);
  EXPECT_NEAR(result["ratio_to_lt99"].get<double>(), 3.806, 0.0005);
  EXPECT_EQ(result["verdict"], "not_proven");
  EXPECT_EQ(result["verdict_reason"]["code"], "overridden");
  EXPECT_EQ(result["by_z"].size(), 1u);
}

TEST(DoseQuestion, WorstZDecides) {
  const Json result = result_of(R"({"stage":"adult","series":{"seconds":[0,3600],"celsius":[50,50]}})");
  ASSERT_EQ(result["by_z"].size(), 2u);
  EXPECT_EQ(result["by_z"][0]["z_kelvin"], 3.5);
  EXPECT_EQ(result["by_z"][1]["z_kelvin"], 5);
  // 60 min at 50 C and z = 5: ten times at 45 C.
  EXPECT_NEAR(result["equivalent_minutes"].get<double>(), 600, 1e-9);
  EXPECT_NEAR(result["ratio_to_lt99"].get<double>(), 600 / 94.8, 1e-12);
  EXPECT_EQ(result["verdict"], "lethal");
  EXPECT_LE(result["kill_probability"], 0.99);
  EXPECT_TRUE(result.contains("ratio_engorged"));
}

TEST(DoseQuestion, SteamCreditsUpTo70Degrees) {
  const char* request = R"({"stage":"egg","exposure":"%","series":{"seconds":[0,2],"celsius":[80,80]}})";
  const auto with = [&](const std::string& exposure) {
    std::string text = request;
    return result_of(text.replace(text.find('%'), 1, exposure));
  };
  EXPECT_EQ(with("steam")["verdict"], "lethal");
  EXPECT_EQ(with("steam")["cap_celsius"], 70);
  EXPECT_EQ(with("air")["verdict"], "short");
  EXPECT_EQ(with("air")["cap_celsius"], 55);
}

TEST(DoseQuestion, UncertaintyTextWithUnit) {
  const Json plain = result_of(
      R"({"stage":"egg","uncertainty_celsius":1.5,"series":{"seconds":[0,3600],"celsius":[51,51]}})");
  const Json typed = result_of(
      R"({"stage":"egg","uncertainty_celsius":"2.7 delta F","series":{"seconds":[0,3600],"celsius":[51,51]}})");
  EXPECT_NEAR(plain["ratio_to_lt99"].get<double>(), typed["ratio_to_lt99"].get<double>(), 1e-9);
  EXPECT_EQ(plain["highest_celsius"], 49.5);
}

TEST(DoseQuestion, GapsAreListedAndEarnNothing) {
  const char* log =
      R"({"stage":"egg","series":{"seconds":[0,60,120,180,240,300,7500,7560,7620],
          "celsius":[51,51,51,51,51,51,51,51,51]}})";
  const Json result = result_of(log);
  ASSERT_EQ(result["gaps"].size(), 1u);
  EXPECT_EQ(result["gaps"][0]["from_seconds"], 300);
  EXPECT_EQ(result["gaps"][0]["to_seconds"], 7500);
  EXPECT_NEAR(result["equivalent_minutes"].get<double>(), 7 * std::pow(10, 3.0 / 5), 1e-9);
  EXPECT_EQ(result["verdict_reason"]["code"], "gap");
  const auto warnings = warnings_of(log);
  EXPECT_NE(std::find(warnings.begin(), warnings.end(), "gap"), warnings.end());
}

TEST(DoseQuestion, PracticeStandsBesideAVerdictThatDisagrees) {
  const auto warnings = warnings_of(R"({"stage":"egg","series":{"seconds":[0,120],"celsius":[50,50]}})");
  EXPECT_NE(std::find(warnings.begin(), warnings.end(), "practice_is_less_cautious"), warnings.end());
}

TEST(DoseQuestion, RefusesWithThePlace) {
  const struct {
    const char* request;
    const char* where;
  } bad[] = {
      {R"({"stage":"egg","series":{"seconds":[0,60,50],"celsius":[50,50,50]}})", "/series/seconds/2"},
      {R"({"stage":"egg","series":{"seconds":[0,60],"celsius":[50,1200]}})", "/series/celsius/1"},
      {R"({"stage":"egg","series":{"seconds":[0,60],"celsius":[50,51,52]}})", "/series"},
      {R"({"stage":"egg","series":{"seconds":[0,60],"celsius":[50,null]}})", "/series/celsius/1"},
      {R"({"stage":"larva","series":{"seconds":[0,60],"celsius":[50,50]}})", "/stage"},
      {R"({"stage":"egg","uncertainty_celsius":-1,"series":{"seconds":[0,60],"celsius":[50,50]}})",
       "/uncertainty_celsius"},
      {R"({"stage":"egg","cap_celsius":40,"series":{"seconds":[0,60],"celsius":[50,50]}})", "/cap_celsius"},
      {R"({"stage":"egg","onset_celsius":60,"series":{"seconds":[0,60],"celsius":[50,50]}})",
       "/onset_celsius"},
  };
  for (const auto& [request, where] : bad) {
    const auto answer = answer_to(request);
    ASSERT_FALSE(answer) << request;
    EXPECT_EQ(answer.error().kind, ErrorKind::bad_input) << request;
    EXPECT_EQ(answer.error().where, where) << answer.error().message;
  }
}

TEST(DoseQuestion, ExtremesStayFinite) {
  const AskOutcome outcome = ask("dose",
                                 R"({"stage":"egg","z_kelvin":1,"onset_celsius":-273,"cap_celsius":1000,
          "series":{"seconds":[0,1e9],"celsius":[-100,300]}})");
  EXPECT_TRUE(outcome.ok) << outcome.text;
}

}  // namespace
}  // namespace lastegg
