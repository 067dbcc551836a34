// The question `at_pace` says of a pace what `pace` found of it, refuses what cannot be looked at, and never
// calls a bound short.
#include <gtest/gtest.h>

#include "engine/questions/questions.h"

namespace lastegg {
namespace {

Result<Json> ask(const Question& question, const Json& request) {
  return read(question.request, request)
      .and_then([&](const Json& checked) { return question.solve(checked); })
      .transform([](const Answer& answer) { return answer.result; });
}

Json seam(double pace) {
  return {{"prior", Json::object()},
          {"samples", 1024},
          {"edge", {{"kind", "label"}, {"covering", "polyester"}, {"wetting_limit_grams_per_m2", 150}}},
          {"pace_metres_per_second", pace}};
}

Json looked_at(const Json& request) {
  const auto answer = ask(at_pace_question(), request);
  EXPECT_TRUE(answer) << (answer ? "" : answer.error().message);
  return answer ? *answer : Json();
}

}  // namespace

TEST(AtPaceQuestion, SaysOfAPaceWhatThePaceQuestionFound) {
  Json request = seam(0.0254);
  const Json at = looked_at(request);
  request.erase("pace_metres_per_second");
  const auto pace = ask(pace_question(), request);
  ASSERT_TRUE(pace);
  const Json& inch = pace->at("one_inch_per_second");
  // Away from the ends of its window the question pace predicts most samples and marches few.
  EXPECT_NEAR(at.at("at").at("lethal_share").get<double>(), inch.at("lethal_share").get<double>(), 0.05);
  EXPECT_NEAR(at.at("at").at("target_celsius_quantiles").at("p50").get<double>(),
              inch.at("target_celsius").at("p50").get<double>(), 2);
  ASSERT_FALSE(pace->at("recommended_metres_per_second").is_null());
  const Json planned = looked_at(seam(pace->at("recommended_metres_per_second").get<double>()));
  EXPECT_EQ(planned.at("verdict"), pace->at("verdict_at_recommended"));
  EXPECT_EQ(planned.at("harm"), pace->at("harm_at_recommended"));
}

TEST(AtPaceQuestion, FasterIsLessSure) {
  EXPECT_NE(looked_at(seam(0.002)).at("harm"), "none");
  const Json fast = looked_at(seam(0.045));
  EXPECT_NE(fast.at("verdict"), "lethal");
  EXPECT_LT(fast.at("kill_by_stage").at("egg"), looked_at(seam(0.01)).at("kill_by_stage").at("egg"));
}

TEST(AtPaceQuestion, ABoundProvesNoSurvival) {
  Json request = seam(0.045);
  request["edge"] = {{"kind", "leg_joint"}, {"covering", "cotton"}};
  const Json answer = looked_at(request);
  EXPECT_EQ(answer.at("verdict"), "not_proven");
  EXPECT_LT(answer.at("at").at("lethal_share").get<double>(), 0.01);
}

TEST(AtPaceQuestion, ABarredFinishHasNoFigures) {
  Json request = seam(0.01);
  request["edge"] = {{"kind", "seam"}, {"covering", "leather"}};
  const Json answer = looked_at(request);
  EXPECT_TRUE(answer.at("at").is_null());
  EXPECT_EQ(answer.at("harm"), "barred");
  EXPECT_EQ(answer.at("reason").at("code"), "barred_finish");
}

TEST(AtPaceQuestion, RefusesAPaceThatNoHandHolds) {
  const auto slow = ask(at_pace_question(), seam(0.001));
  ASSERT_FALSE(slow);
  EXPECT_EQ(slow.error().where, "/pace_metres_per_second");
  EXPECT_EQ(slow.error().limit, "0.002");
  EXPECT_FALSE(ask(at_pace_question(), seam(0.1)));
}

}  // namespace lastegg
