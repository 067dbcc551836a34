// Question `job_requests`: from the state of a job to the requests of furniture, fold_test, pace and plan, so
// that page and command line ask the same.
#include "engine/job_requests.h"

#include "engine/questions/questions.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  return object(
      {field("state", object({}, "state of a job, as the question fold_events gives it").allow_more())},
      "a job");
}

Shape answer_shape() {
  const auto requests = [](const char* of, const char* text) {
    return list(
        object({field("id", shape::text(of)), field("request", anything(text).or_null())}, "one request"),
        text);
  };
  return object(
      {field("furniture", requests("the item", "request of the question furniture, one an item")),
       field("fold_tests",
             requests("the test",
                      "request of the question fold_test, one a test; null while it has no readings")),
       field("pace",
             anything("what requests of pace and plan share: `fold_test`, a list, the one in use "
                      "first; or `prior` and elevation. `edge`, `items` and `samples` are the asker's")),
       field("test_in_use", shape::text("the test that the paces rest on").or_null()),
       field("plan", anything("request of the question plan; null without items").or_null())},
      "requests");
}

Result<Answer> solve(const Json& request) {
  const Json& state = request.at("state");
  Answer answer;
  Json& out = answer.result;
  const auto each = [&](const char* key, auto&& request_of) {
    Json rows = Json::array();
    if (const auto found = state.find(key); found != state.end()) {
      for (const Json& one : *found) {
        if (one.is_object() && one.contains("id") && one.at("id").is_string())
          rows.push_back({{"id", one.at("id")}, {"request", request_of(one, state)}});
      }
    }
    return rows;
  };
  out["furniture"] = each("items", furniture_request_of);
  out["fold_tests"] = each("fold_tests", fold_test_request_of);
  out["pace"] = pace_kit_of(state);
  out["test_in_use"] = test_in_use(state);
  auto plan = plan_request_of(state);
  out["plan"] = plan ? std::move(*plan) : Json(nullptr);
  return answer;
}

}  // namespace

const Question& job_requests_question() {
  static const Question question{
      "job_requests", "The requests that a job's recorded facts make of furniture, fold_test, pace and plan.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
