#include "apps/server/problem.h"

#include <gtest/gtest.h>

#include "engine/json.h"

namespace lastegg::server {
namespace {

TEST(Problem, CarriesTheMembersOfTheEnginesError) {
  const Problem problem = problem_from_engine(
      R"({"error":{"kind":"out_of_domain","message":"too hot","where":"/temperature_celsius","value":400,"limit":350,"unit":"degrees Celsius"}})");
  EXPECT_EQ(problem.status, 422);
  const Json document = Json::parse(problem.text);
  EXPECT_EQ(document["status"], 422);
  EXPECT_EQ(document["title"], "Unprocessable Content");
  EXPECT_EQ(document["detail"], "too hot");
  EXPECT_EQ(document["kind"], "out_of_domain");
  EXPECT_EQ(document["message"], "too hot");
  EXPECT_EQ(document["where"], "/temperature_celsius");
  EXPECT_EQ(document["value"], 400);
  EXPECT_EQ(document["limit"], 350);
  EXPECT_EQ(document["unit"], "degrees Celsius");
}

TEST(Problem, HasAStatusForEveryKind) {
  EXPECT_EQ(status_of("bad_input"), 400);
  EXPECT_EQ(status_of("not_found"), 404);
  EXPECT_EQ(status_of("out_of_domain"), 422);
  EXPECT_EQ(status_of("internal"), 500);
  EXPECT_EQ(status_of("a kind that does not exist"), 500);
}

TEST(Problem, TurnsUnreadableEngineTextIntoAnInternalError) {
  for (const char* text :
       {"", "[]", "{}", R"({"error":3})", R"({"error":{"kind":1,"message":"x"}})", "\xff\xfe"}) {
    const Problem problem = problem_from_engine(text);
    EXPECT_EQ(problem.status, 500) << text;
    EXPECT_EQ(Json::parse(problem.text)["kind"], "internal") << text;
  }
}

TEST(Problem, ReplacesBytesThatAreNotUtf8) {
  Error error;
  error.kind = ErrorKind::not_found;
  error.message = "nothing at \xff";
  const Problem problem = problem_from_http(404, error);
  EXPECT_EQ(Json::parse(problem.text)["detail"], "nothing at \xEF\xBF\xBD");
}

}  // namespace
}  // namespace lastegg::server
