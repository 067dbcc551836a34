// Question `visit_requests`: from the state of a job and its plan to the requests of method, visit and
// preparation, so that page and command line ask the same.
#include <fmt/format.h>

#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/visit_from_job.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  return object(
      {field("state", object({}, "state of a job, as the question fold_events gives it").allow_more()),
       optional("plan_items", list(furniture_question().request,
                                   "items of the plan's request, in the order of the state's items: tells "
                                   "which edges there are")
                                  .items(0, 100)),
       optional(
           "plan",
           object({}, "answer of the question plan for all items of the state, in their order").allow_more()),
       optional("equipment",
                list(text("a word of the question method"), "what there is besides the kit").items(0, 20)),
       optional("crew", integer("in place of the recorded visit").at_least(1).at_most(4)),
       optional("minutes", number(Unit::minute, "in place of the recorded visit").at_least(1).at_most(1440)),
       optional("minutes_left", number(Unit::minute, "for steaming").at_least(0).at_most(1440)),
       optional("machines", integer("steamers, all alike").at_least(0).at_most(4)),
       optional("waits_for_bed", flag("the crew stays until the bed is put back"))},
      "a job");
}

Shape answer_shape() {
  return object(
      {field("seen", list(anything("a finding"), "`seen` of the question plan, from the evidence")),
       field("method", anything("request of the question method; null without items").or_null()),
       field("visit", anything("request of the question visit; null without items").or_null()),
       field("preparation", anything("request of the question preparation; null without items").or_null())},
      "requests");
}

Result<Answer> solve(const Json& request) {
  Answer answer;
  const Json& state = request.at("state");
  Json furniture = Json::array();
  if (const Json* items = member_if(request, "plan_items")) {
    for (std::size_t i = 0; i < items->size(); ++i) {
      auto built = furniture_question().solve((*items)[i]);
      if (!built) {
        Error error = built.error();
        error.where = fmt::format("/plan_items/{}{}", i, error.where);
        return refuse(error);
      }
      furniture.push_back(std::move(built->result));
    }
  }
  answer.result = {
      {"seen", seen_of(state, furniture)}, {"method", nullptr}, {"visit", nullptr}, {"preparation", nullptr}};
  const Json* items = member_if(state, "items");
  if (items == nullptr || !items->is_array() || items->empty()) return answer;
  const Json* plan = member_if(request, "plan");
  const Json method = method_request_of(state, plan == nullptr ? Json(nullptr) : *plan, request);
  auto asked = read(method_question().request, method, "/state");
  if (!asked) return refuse(asked.error());
  const auto answered = method_question().solve(*asked);
  if (!answered) return refuse(answered.error());
  answer.result["method"] = method;
  answer.result["visit"] =
      visit_request_of(state, plan == nullptr ? Json(nullptr) : *plan, request, answered->result);
  answer.result["preparation"] = preparation_request_of(method, answered->result);
  answer.data_keys = answered->data_keys;
  return answer;
}

}  // namespace

const Question& visit_requests_question() {
  static const Question question{"visit_requests",
                                 "The requests of method, visit and preparation for a job and its plan.",
                                 request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
