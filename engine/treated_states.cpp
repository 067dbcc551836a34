#include "engine/treated_states.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

#include "engine/pace_answer.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "engine/treated_words.h"
#include "treatments/choice/choice.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

constexpr std::array<const char*, 5> k_states{"lethal", "short", "not_proven", "barred", "not_treated"};

Shape state_choice() {
  return choice({{"lethal", "every place of it got a lethal dose, with the asked confidence"},
                 {"short", "passed, and at least one place surely got too little"},
                 {"not_proven", "passed or done by practice, and it cannot be told"},
                 {"barred", "its finish must not be steamed"},
                 {"not_treated", "nothing was done to it"}},
                "what it is said to be");
}

std::vector<Field> edge_fields() {
  return {field("id", text("name of the edge, as furniture gives it")),
          field("title", text("in words")),
          field("part", text("part of the item")),
          field("kind", text("kind of edge")),
          field("length_metres", number(Unit::metre, "along the line")),
          field("in_sight", flag("reached without moving anything")),
          field("treated", object({field("passes", integer("timed passes")),
                                   field("metres", number(Unit::metre, "passed, repeats counted again")),
                                   field("seconds", number(Unit::second, "of these passes"))},
                                  "what was done")),
          field("marks", list(object({field("what", text("a word of edge_mark/1")),
                                      optional("reason", text("as stated")),
                                      optional("at_metres", number(Unit::metre, "where along the edge"))},
                                     "what was met"),
                              "statements about it")),
          field("spot_readings", integer("readings of the surface behind the head")),
          field("modelled", modelled_shape().or_null()),
          field("state", state_choice()),
          field("cause", reason_shape("why it is that")),
          field("harm", treated_harm_shape()),
          field("redo",
                object({field("state", choice({{"none", "lethal: nothing to do again"},
                                               {"open", "to do again or to explain"},
                                               {"explained", "not done again, and the reason is on record"}},
                                              "on the redo list")),
                        field("reason", text("why it is not done again").or_null())},
                       "the redo list"))};
}

struct Cause {
  std::string code, text;
};

// Why an edge was not steamed, from what the record says of it.
Cause cause_of_untreated(const EdgeFacts& facts) {
  const auto with_reason = [&](const char* what, const std::string& words) {
    const std::string told = facts.record.reason_of(what);
    return told.empty() ? words : fmt::format("{}: {}", words, told);
  };
  if (facts.is_barred) return {"barred", say("its finish must not be steamed")};
  if (facts.record.is_marked("could_not_reach"))
    return {"could_not_reach", with_reason("could_not_reach", say("it could not be reached"))};
  if (facts.record.is_marked("skipped"))
    return {"skipped", with_reason("skipped", say("it was left for later"))};
  if (!facts.method.empty() && facts.method != "steam") {
    return {"other_method", say("another method was chosen for the item: {}",
                                in_language(method_choice::in_words(facts.method)))};
  }
  return {"nothing_recorded", say("no pass is on record")};
}

Cause cause_of(const EdgeFacts& facts, std::string& state) {
  if (facts.modelled) {
    const Json& reason = facts.modelled->at("reason");
    state = text_of(*facts.modelled, "verdict");
    if (state == "lethal" && facts.is_contested) {
      state = "not_proven";
      return {"contested", say("two statements about it contradict each other; settle them in the record")};
    }
    return {text_of(reason, "code"), text_of(reason, "text")};
  }
  if (!facts.record.strokes.empty()) {
    state = "not_proven";
    return {"record_unusable", say("what was recorded of it cannot be used: {}", facts.refusal)};
  }
  if (facts.record.is_marked("treated_by_practice")) {
    state = "not_proven";
    return {"by_practice",
            say("treated as practice has it, without a timed pass: nothing is computed of it")};
  }
  if (facts.record.is_marked("live_bug")) {
    state = "not_proven";
    return {"saw_live_bug", say("a live bug was seen there, and no pass is on record")};
  }
  state = facts.is_barred ? "barred" : "not_treated";
  return cause_of_untreated(facts);
}

}  // namespace

Json modelled_json(const Json& answer, const std::string& asked) {
  Json out{{"asked", asked}};
  for (const char* key : {"basis", "verdict", "reason", "harm", "kill_probability", "depth_reached_metres",
                          "target_depth_metres", "lethal_metres", "redo", "effective_samples", "samples"})
    out[key] = answer.at(key);
  return out;
}

Shape modelled_shape() {
  Shape redo = object(
      {field("from_metres", number(Unit::metre, "start")), field("to_metres", number(Unit::metre, "end")),
       field("cause", cause_shape()), field("text", text("what to do"))},
      "a stretch to do again");
  return object(
      {field("asked", text("SHA-256 of everything it was computed from")),
       field("basis", text("fold_test, prior or head")), field("verdict", verdict_shape("of the passes")),
       field("reason", reason_shape("what decided")), field("harm", treated_harm_shape()),
       field("kill_probability", ratio("of the hardest stage, at most 0.99").or_null()),
       field("depth_reached_metres", number(Unit::metre, "lethal down to here at least").or_null()),
       field("target_depth_metres", number(Unit::metre, "deepest place where eggs may lie").or_null()),
       field("lethal_metres", number(Unit::metre, "length of its lethal stretches")),
       field("redo", list(std::move(redo), "which parts are to do again")),
       field("effective_samples", ratio("samples that the weights leave")),
       field("samples", integer("size of the ensemble"))},
      "what as_treated computed of an edge");
}

bool better_treated(const Json& a, const Json& b) {
  const auto rank = [](const Json& answer) {
    const std::string verdict = text_of(answer, "verdict");
    return verdict == "lethal" ? 2 : verdict == "not_proven" ? 1 : 0;
  };
  if (rank(a) != rank(b)) return rank(a) > rank(b);
  return number_of(a, "lethal_metres") > number_of(b, "lethal_metres");
}

void add_state(const EdgeFacts& facts, Json& row) {
  std::string state;
  const Cause cause = cause_of(facts, state);
  row["state"] = state;
  row["cause"] = reason(cause.code, cause.text);
  row["harm"] =
      facts.modelled ? facts.modelled->at("harm") : Json(facts.record.strokes.empty() ? "none" : "unknown");
  // A statement of a person explains an edge; being barred or under another method is an explanation by
  // itself.
  std::string redo = "none";
  Json why = nullptr;
  if (state != "lethal") {
    redo = "open";
    for (const Json& note : facts.record.notes) why = note.at("reason");
    if (why.is_null() && (cause.code == "barred" || cause.code == "other_method")) why = cause.text;
    if (why.is_null() && cause.code == "could_not_reach" &&
        !facts.record.reason_of("could_not_reach").empty())
      why = cause.text;
    if (!why.is_null()) redo = "explained";
  }
  row["redo"] = {{"state", redo}, {"reason", why}};
}

Json counts_of(const Json& edges) {
  Json out;
  for (const char* state : k_states) out[state] = 0;
  int open = 0, explained = 0, treated = 0, passes = 0, readings = 0, modelled = 0;
  double metres = 0, seconds = 0, lethal_metres = 0, length = 0;
  for (const Json& edge : edges) {
    const std::string state = text_of(edge, "state"), redo = text_of(edge.at("redo"), "state");
    out[state] = out[state].get<int>() + 1;
    open += redo == "open" ? 1 : 0;
    explained += redo == "explained" ? 1 : 0;
    const Json& done = edge.at("treated");
    treated += done.at("passes").get<int>() > 0 ? 1 : 0;
    passes += done.at("passes").get<int>();
    metres += number_of(done, "metres");
    seconds += number_of(done, "seconds");
    readings += edge.at("spot_readings").get<int>();
    length += number_of(edge, "length_metres");
    if (edge.at("modelled").is_null()) continue;
    ++modelled;
    lethal_metres += number_of(edge.at("modelled"), "lethal_metres");
  }
  out["edges"] = edges.size();
  out["length_metres"] = length;
  out["treated"] = {{"edges", treated}, {"passes", passes}, {"metres", metres}, {"seconds", seconds}};
  out["spot_readings"] = readings;
  out["modelled"] = {{"edges", modelled}, {"lethal_metres", lethal_metres}};
  out["redo_open"] = open;
  out["redo_explained"] = explained;
  return out;
}

Shape treated_counts_shape() {
  std::vector<Field> fields;
  for (const char* state : k_states) fields.push_back(field(state, integer("edges of this state")));
  fields.push_back(field("edges", integer("all edges")));
  fields.push_back(field("length_metres", number(Unit::metre, "of all edges")));
  fields.push_back(field("treated", object({field("edges", integer("edges with a timed pass")),
                                            field("passes", integer("timed passes")),
                                            field("metres", number(Unit::metre, "passed")),
                                            field("seconds", number(Unit::second, "of passes"))},
                                           "what was done")));
  fields.push_back(field("spot_readings", integer("readings of the surface behind the head")));
  fields.push_back(
      field("modelled", object({field("edges", integer("edges that were computed")),
                                field("lethal_metres", number(Unit::metre, "length found lethal"))},
                               "what was computed")));
  fields.push_back(field("redo_open", integer("edges to do again or to explain")));
  fields.push_back(field("redo_explained", integer("edges not done again, with a reason")));
  return object(std::move(fields), "sums over edges");
}

Shape treated_item_shape() {
  return object(
      {field("id", text("its subject in the record")), field("title", text("as people call it")),
       field("kind", text("kind of item")), field("room", text("title of its room; empty without one")),
       field("method", text("the method that was chosen for it").or_null()),
       field("furniture", anything("request of the question furniture, for its drawing")),
       field("edges", list(object(edge_fields(), "an edge"), "part by part")),
       field("counts", treated_counts_shape()), field("error", text("why it could not be built").or_null())},
      "an item");
}

}  // namespace lastegg
