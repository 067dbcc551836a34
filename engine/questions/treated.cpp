// Question `treated`: the whole job as it was treated, edge by edge, from the state of its record.
#include "engine/treated_from_job.h"

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/treated_states.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  return object(
      {field("state", object({}, "state of a job, as the question fold_events gives it").allow_more()),
       optional(
           "conflicts",
           list(object({field("subject", text("what it is about"))}, "as fold_events gives it").allow_more(),
                "open contradictions: what rests on one is not proven")),
       optional("items", list(text("id of an item"), "only these; all if left out").items(0, 400)),
       optional("known", list(modelled_shape(), "`modelled` of an earlier answer's edges").items(0, 10000)),
       with_default("samples", integer("size of the ensemble; verdicts use 1024").at_least(64).at_most(4096),
                    1024)},
      "a job");
}

Shape answer_shape() {
  return object({field("items", list(treated_item_shape(), "in the order of the record")),
                 field("counts", treated_counts_shape()), field("samples", integer("size of the ensemble"))},
                "what was done, measured and computed, edge by edge");
}

Result<Answer> solve(const Json& request) {
  TreatedJobQuestion question;
  question.state = request.at("state");
  question.samples = request.at("samples").get<int>();
  if (const Json* conflicts = member_if(request, "conflicts")) {
    for (const Json& conflict : *conflicts) question.contested.insert(text_of(conflict, "subject"));
  }
  if (const Json* items = member_if(request, "items")) {
    for (const Json& item : *items) question.items.insert(item.get<std::string>());
  }
  if (const Json* known = member_if(request, "known")) {
    for (const Json& one : *known) question.known[text_of(one, "asked")] = one;
  }
  return treated_job(question);
}

}  // namespace

const Question& treated_question() {
  static const Question question{
      "treated",
      "A whole job as it was treated: done, measured and computed for every edge, and the redo list.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
