#include "engine/ask.h"

#include <gtest/gtest.h>

#include <limits>

#include "engine/trial_question.h"
#include "words/language.h"

namespace lastegg {
namespace {

Json error_of(const AskOutcome& outcome) {
  EXPECT_FALSE(outcome.ok) << outcome.text;
  const Json document = Json::parse(outcome.text, nullptr, false);
  EXPECT_TRUE(document.is_object() && document.size() == 1 && document.contains("error")) << outcome.text;
  return document.value("error", Json::object());
}

Question with_solution(Result<Answer> (*solve)(const Json&)) {
  Question question = trial_question();
  question.request = shape::object({}, "Nothing.");
  question.solve = solve;
  return question;
}

TEST(Ask, AnswersWithVersionDataAndWarnings) {
  const Question question = with_solution([](const Json&) -> Result<Answer> {
    return Answer{
        {{"read", 1}}, {{"worn_towel", "The towel is worn."}}, {"mortality/1", "materials/2", "mortality/1"}};
  });
  const AskOutcome outcome = ask(question, "{}");
  ASSERT_TRUE(outcome.ok) << outcome.text;
  EXPECT_EQ(
      outcome.text,
      "{\"read\":1,\"engine\":\"" LASTEGG_VERSION
      "\",\"data\":[\"materials/2\",\"mortality/1\"],\"warnings\":[{\"code\":\"worn_towel\",\"text\":\"The "
      "towel is worn.\"}]}");
}

TEST(Ask, RefusesABadValueWithAllItsParts) {
  const Json error = error_of(ask(trial_question(), R"({"pace_metres_per_second":"10 ft/s","share":0})"));
  const Json expected = {
      {"kind", "bad_input"},
      {"message", "pace_metres_per_second is 10 ft/s (3.048 m/s); it must be at most 1 m/s"},
      {"where", "/pace_metres_per_second"},
      {"value", 3.048},
      {"limit", 1},
      {"unit", "m/s"}};
  EXPECT_EQ(error, expected);
}

TEST(Ask, LeavesOutThePartsThatAreNotThere) {
  const Json error = error_of(ask(trial_question(), R"({"share":0})"));
  EXPECT_EQ(error["where"], "/pace_metres_per_second");
  EXPECT_FALSE(error.contains("value") || error.contains("limit") || error.contains("unit")) << error;
}

TEST(Ask, SpeaksTheLanguageOfTheRequest) {
  const auto message = [](const char* request) {
    return error_of(ask(trial_question(), request)).value("message", "");
  };
  EXPECT_EQ(message(R"({"pace_metres_per_second":2,"share":0,"language":"es"})"),
            "pace_metres_per_second es 2 m/s; debe ser como máximo 1 m/s");
  EXPECT_EQ(message(R"({"pace_metres_per_second":2,"share":0,"language":"en-US"})"),
            "pace_metres_per_second is 2 m/s; it must be at most 1 m/s");
  // A language ends with its request.
  EXPECT_EQ(message(R"({"pace_metres_per_second":2,"share":0})"),
            "pace_metres_per_second is 2 m/s; it must be at most 1 m/s");
}

TEST(Ask, TheQuestionDoesNotSeeTheLanguage) {
  const AskOutcome outcome =
      ask(trial_question(), R"({"language":"en-GB","pace_metres_per_second":0.5,"share":0.5})");
  ASSERT_TRUE(outcome.ok) << outcome.text;
  EXPECT_EQ(outcome.text.find("language"), std::string::npos) << outcome.text;
}

TEST(Ask, WithoutALanguageThatOfTheProgramHolds) {
  const InLanguage spoken(Language::spanish);
  EXPECT_EQ(error_of(ask(trial_question(), "[]")).value("message", ""),
            "la solicitud es una lista vacía; debe ser un objeto");
  EXPECT_EQ(error_of(ask(trial_question(), R"({"language":"en-US","share":7})")).value("where", ""),
            "/pace_metres_per_second");
  EXPECT_EQ(language_in_force(), Language::spanish);
}

TEST(Ask, RefusesALanguageItDoesNotSpeak) {
  for (const char* request :
       {R"({"language":"fr"})", R"({"language":"ES"})", R"({"language":5})", R"({"language":null})"}) {
    const Json error = error_of(ask(trial_question(), request));
    EXPECT_EQ(error["kind"], "bad_input") << request;
    EXPECT_EQ(error["where"], "/language") << request;
    EXPECT_NE(error.value("message", "").find("en-US, en-GB or es"), std::string::npos) << error;
  }
}

TEST(Ask, OnlyTheRequestItselfMayNameALanguage) {
  const Json error = error_of(
      ask(trial_question(),
          R"({"pace_metres_per_second":0.5,"share":0.5,"readings":[{"celsius":1,"language":"es"}]})"));
  EXPECT_EQ(error["where"], "/readings/0/language");
}

TEST(Ask, RefusesTextThatIsNoDocument) {
  for (const char* text :
       {"", "{", "{]", "nul", "{\"share\":0.5,\"share\":0.5}", "{\"a\":\"\xff\"}", "[1e999]"}) {
    const Json error = error_of(ask(trial_question(), text));
    EXPECT_EQ(error["kind"], "bad_input") << text;
    EXPECT_EQ(error["where"], "") << text;
  }
}

TEST(Ask, ReplacesBytesThatAreNotUtf8InItsOwnText) {
  const AskOutcome outcome =
      ask("satur\xff"
          "ation",
          "{}");
  EXPECT_FALSE(outcome.ok);
  EXPECT_NE(outcome.text.find("satur\xef\xbf\xbd"
                              "ation"),
            std::string::npos)
      << outcome.text;
}

TEST(Ask, DoesNotFindUnknownQuestions) {
  const Json error = error_of(ask("no_such_question_at_all", "{}"));
  EXPECT_EQ(error["kind"], "not_found");
  EXPECT_EQ(error["value"], "no_such_question_at_all");
}

TEST(Ask, NamesTheNearestQuestion) {
  for (const Question& question : questions()) {
    const Json error = error_of(ask(question.name + "x", "{}"));
    EXPECT_NE(error.value("message", "").find("did you mean " + question.name), std::string::npos) << error;
  }
}

TEST(Ask, PassesOnWhatTheModelCannotAnswer) {
  const Question question = with_solution([](const Json&) -> Result<Answer> {
    return refuse({ErrorKind::out_of_domain, "no steam below the triple point", "/temperature_celsius", "-5",
                   "0.01", "C"});
  });
  const Json expected = {{"kind", "out_of_domain"},
                         {"message", "no steam below the triple point"},
                         {"where", "/temperature_celsius"},
                         {"value", -5},
                         {"limit", 0.01},
                         {"unit", "C"}};
  EXPECT_EQ(error_of(ask(question, "{}")), expected);
}

TEST(Ask, CallsAnAnswerThatIsNotFiniteADefect) {
  const Question question = with_solution([](const Json&) -> Result<Answer> {
    return Answer{{{"read", {{"deep", {1.0, std::numeric_limits<double>::quiet_NaN()}}}}}, {}, {}};
  });
  EXPECT_EQ(error_of(ask(question, "{}"))["kind"], "internal");
}

TEST(Ask, ChecksAnswersAgainstTheirShape) {
  EXPECT_TRUE(check_answer(trial_question(), {{"read", 1}}));
  const Result<Json> wrong = check_answer(trial_question(), {{"red", 1}});
  ASSERT_FALSE(wrong);
  EXPECT_EQ(wrong.error().kind, ErrorKind::internal);
  EXPECT_EQ(wrong.error().message,
            "the answer to trial does not have its shape: red is not known here; did you mean read?");
}

}  // namespace
}  // namespace lastegg
