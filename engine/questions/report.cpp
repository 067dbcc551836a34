// Question `report`: the client report as a document of blocks, from the state of a job and the answers given
// along.
#include <set>
#include <string>
#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/treated_states.h"
#include "job/reports/report.h"
#include "words/language.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  return object(
      {field("state", object({}, "state of a job, as the question fold_events gives it").allow_more()),
       field("treated",
             list(object({field("items", list(treated_item_shape(), "items"))}, "an answer").allow_more(),
                  "answers of the question treated: one for the job, or one for each item")
                 .items(0, 400)),
       optional(
           "follow_up",
           object({field("text", text("its sentence"))}, "answer of the question follow_up").allow_more()),
       optional("conflicts", list(anything("one"), "open contradictions, as fold_events gives them")),
       optional("on", date("day on which the report is written")),
       field("state_hash", text("of the record that all of this was made from")),
       with_default("event_count", integer("facts of that record").at_least(0), 0)},
      "a job, what was computed of it, and the day");
}

Shape line_shape(std::string meaning) {
  return object(
      {field("code", text("what is said, for programs")),
       field("parameters", anything("the values that stand in it")), field("text", text("in words")),
       optional("item", text("item it is about")), optional("edge", text("edge it is about")),
       optional("state", text("state it speaks of: a word of the question treated"))},
      std::move(meaning));
}

Shape answer_shape() {
  Shape block =
      object({field("code", text("summary, found, treated, measured, modelled, not_treated, redo, harm, "
                                 "hidden_spots, damage_before, next_visit, cautions, how_sure")),
              field("heading", text("in words")), field("lines", list(line_shape("a sentence"), "sentences")),
              field("rows", list(line_shape("an entry"), "entries of a list"))},
             "a part of the report");
  Shape item = object(
      {field("id", text("its subject")), field("title", text("its name")), field("room", text("its room")),
       field("furniture", anything("request of furniture, for its drawing")),
       field("states", table(text("state"), "state of each edge")), field("counts", treated_counts_shape())},
      "an item to draw");
  return object(
      {field("title", line_shape("title of the document")),
       field("language", text("of its text: en, en-GB or es")), field("on", date("day").or_null()),
       field("blocks", list(std::move(block), "in reading order")),
       field("items", list(std::move(item), "what to draw beside them")),
       field("counts", treated_counts_shape()),
       field("basis",
             object({field("engine", text("version that computed it")),
                     field("data", list(text("key"), "data files it rests on")),
                     field("samples", integer("least size of the ensembles")),
                     field("effective_samples", ratio("least that the weights left").or_null()),
                     field("state_hash", text("of the record")), field("event_count", integer("facts"))},
                    "what this document stands on"))},
      "the document");
}

Result<Answer> solve(const Json& request) {
  Json treated{{"items", Json::array()}};
  Json edges = Json::array();
  int samples = 0;
  Json least = nullptr;
  std::set<std::string> data{"development/1"};
  for (const Json& answer : request.at("treated")) {
    for (const Json& item : answer.at("items")) {
      treated["items"].push_back(item);
      for (const Json& edge : item.at("edges")) {
        edges.push_back(edge);
        const Json* modelled = member_if(edge, "modelled");
        if (modelled == nullptr || !has(*modelled, "effective_samples")) continue;
        const double effective = number_of(*modelled, "effective_samples");
        if (effective > 0 && (least.is_null() || effective < least.get<double>())) least = effective;
      }
    }
    const Json* size = member_if(answer, "samples");
    const int here = size != nullptr && size->is_number_integer() ? size->get<int>() : 0;
    samples = samples == 0 ? here : std::min(samples, here);
    if (const Json* keys = member_if(answer, "data")) {
      for (const Json& key : *keys) {
        if (key.is_string()) data.insert(key.get<std::string>());
      }
    }
  }
  treated["counts"] = counts_of(edges);
  const Json* follow_up = member_if(request, "follow_up");
  const Json none;
  const Json* conflicts = member_if(request, "conflicts");

  Answer answer;
  Json& out = answer.result;
  out = reports::report_document({.state = request.at("state"),
                                  .treated = treated,
                                  .follow_up = follow_up != nullptr ? *follow_up : none,
                                  .has_contradictions = conflicts != nullptr && !conflicts->empty()});
  out["language"] = language_in_force() == Language::american ? "en" : tag_of(language_in_force());
  out["on"] = has(request, "on") ? request.at("on") : Json(nullptr);
  out["items"] = Json::array();
  for (const Json& item : treated["items"]) {
    Json states = Json::object();
    for (const Json& edge : item.at("edges")) states[text_of(edge, "id")] = edge.at("state");
    out["items"].push_back({{"id", item.at("id")},
                            {"title", item.at("title")},
                            {"room", item.at("room")},
                            {"furniture", item.at("furniture")},
                            {"states", std::move(states)},
                            {"counts", item.at("counts")}});
  }
  out["counts"] = treated["counts"];
  answer.data_keys.assign(data.begin(), data.end());
  out["basis"] = {{"engine", LASTEGG_VERSION},
                  {"data", answer.data_keys},
                  {"samples", samples},
                  {"effective_samples", least},
                  {"state_hash", request.at("state_hash")},
                  {"event_count", request.at("event_count")}};
  return answer;
}

}  // namespace

const Question& report_question() {
  static const Question question{
      "report", "The client report: found, done, measured, computed, not done and why, how sure.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
