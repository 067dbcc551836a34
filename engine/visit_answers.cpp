#include "engine/visit_answers.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/request_values.h"
#include "job/priority/priority.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

Json missing(const char* code, const std::string& item, std::string text) {
  return {{"code", code}, {"item", item}, {"text", std::move(text)}};
}

bool is_done(const Timed& timed, const char* kind, std::size_t item) {
  return std::any_of(timed.tasks.notes.begin(), timed.tasks.notes.end(),
                     [&](const visits::TaskNote& note) { return note.kind == kind && note.item == item; });
}

}  // namespace

Shape sleep_shape() {
  return object({field("verdict", choice({{"yes", "the bed is treated, dry and isolated by then"},
                                          {"no", "something is missing"},
                                          {"not_proven", "what is known does not settle it"},
                                          {"no_bed", "no bed is among the items"}},
                                         "can they sleep in it tonight")),
                 field("ready_minutes", number(Unit::minute,
                                               "from the start, when the bed is back; null: not by this "
                                               "visit")
                                            .or_null()),
                 field("missing", list(object({field("code", text("what")), field("item", text("where")),
                                               field("text", text("in words"))},
                                              "one thing"),
                                       "what is missing or not known")),
                 field("text", text("in words"))},
                "can they sleep in it tonight");
}

Json sleep_answer(const Json& request, const visits::Visit& visit, const Timed& timed) {
  Json lacks = Json::array();
  std::size_t doubts = 0;  // of what is missing: what is not known or left to others, and nothing worse
  bool bed = false, legs = false, isolated = false;
  const Json& items = request.at("items");
  for (std::size_t i = 0; i < visit.work.size(); ++i) {
    const visits::Work& work = visit.work[i];
    if (!work.bed) continue;
    bed = true;
    legs |= work.legs;
    const bool covered = is_done(timed, "encase", i);
    isolated |= is_done(timed, "isolate", i);
    const bool steamed = is_done(timed, "steam", i) || is_done(timed, "steam_hidden", i);
    const bool treated = steamed || is_done(timed, "hold", i) || is_done(timed, "load", i) || covered;
    if (!treated) lacks.push_back(missing("not_treated", work.title, say("{} is not treated.", work.title)));
    for (const visits::LeftOut& left : timed.tasks.left_out) {
      if (left.item != i || left.what == "vacuum" || covered) continue;
      if (left.what == "turn" || left.what == "open_cover" || left.what == "steam_hidden")
        lacks.push_back(
            missing("underside_left", work.title, say("{}: its underside is left untreated.", work.title)));
      else if (left.what != "dismantle")
        lacks.push_back(
            missing("not_treated", work.title, say("{}: part of it is left untreated.", work.title)));
    }
    const Json* steam = member_if(items[i], "steam");
    const int without = steam == nullptr ? 0 : steam->at("edges_without_pace").get<int>();
    if (work.method == "steam" && without > 0 && !covered)
      lacks.push_back(
          missing("edges_without_pace", work.title,
                  say("{}: {} edges have no pace; a bite-proof cover shuts them in.", work.title, without)));
    if (steamed && !work.dry_minutes) {
      ++doubts;
      lacks.push_back(
          missing("drying_not_known", work.title, say("{}: when it is dry is not known.", work.title)));
    }
  }
  if (bed && !legs)
    lacks.push_back(
        missing("no_legs", "", say("No bed frame with legs is among the items, so nothing is isolated.")));
  else if (bed && !isolated)
    lacks.push_back(missing("legs_not_isolated", "", say("The legs of the bed are not in leg traps.")));
  Json ready = nullptr;
  for (std::size_t t = 0; t < timed.tasks.notes.size(); ++t)
    if (timed.tasks.notes[t].kind == "put_back")
      ready = std::max(ready.is_null() ? 0 : ready.get<int>(),
                       timed.schedule.start[t] + timed.tasks.project.tasks[t].minutes);
  const auto there_are = number_if(request, "minutes");
  if (bed && !ready.is_null() && there_are && ready.get<double>() > *there_are) {
    lacks.push_back(
        missing("not_in_time", "",
                say("The bed is back after {} minutes; there are {:.0f}.", ready.get<int>(), *there_are)));
  }
  if (bed && ready.is_null()) {
    int dry = 0;
    for (std::size_t t = 0; t < timed.tasks.notes.size(); ++t) {
      const visits::TaskNote& note = timed.tasks.notes[t];
      if (note.kind == "dry" && note.item && visit.work[*note.item].bed)
        dry = std::max(dry, timed.schedule.start[t] + timed.tasks.project.tasks[t].minutes);
    }
    ++doubts;
    lacks.push_back(missing("left_to_home", "",
                            say("Covering and putting back is left to the people of the home{}.",
                                dry > 0 ? say(", once it is dry, after {} minutes", dry) : std::string())));
  }
  std::string verdict = !bed ? "no_bed" : lacks.empty() ? "yes" : "no";
  if (verdict == "no" && lacks.size() == doubts) verdict = "not_proven";
  std::string words;
  if (verdict == "no_bed")
    words = say("No bed is among the items.");
  else if (verdict == "yes")
    words =
        say("Yes: treated, dry to the touch and back after {} minutes. They sleep in this bed, in no "
            "other room.",
            ready.get<int>());
  else
    words = (verdict == "no" ? say("Not yet.") : say("Not proven.")) + " " +
            lacks.front().at("text").get<std::string>() +
            say(" Nobody moves to another room to sleep: bugs would follow.");
  return {{"verdict", verdict}, {"ready_minutes", ready}, {"missing", lacks}, {"text", words}};
}

Shape minutes_left_shape() {
  return object({field("minutes", number(Unit::minute, "as given")),
                 field("minutes_used", number(Unit::minute, "by the edges chosen")),
                 field("edges", list(integer("index in `edges` of the request"), "most per minute first")),
                 field("bug_share", ratio("of all bugs on the edges, expected on these")),
                 field("text", text("in words"))},
                "what matters most in the minutes left");
}

Json minutes_left_answer(const Json& request) {
  const auto minutes = number_if(request, "minutes_left");
  const Json* edges = member_if(request, "edges");
  if (!minutes || edges == nullptr) return nullptr;
  std::vector<WaitingEdge> waiting;
  std::vector<EdgePriority> priorities;
  std::vector<std::size_t> order(edges->size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    order[i] = i;
    WaitingEdge edge;
    edge.seconds = number_of((*edges)[i], "seconds");
    waiting.push_back(std::move(edge));
    priorities.push_back(
        {number_of((*edges)[i], "bug_share"), number_of((*edges)[i], "killed_share_per_minute"), {}});
  }
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return priorities[a].killed_share_per_minute > priorities[b].killed_share_per_minute;
  });
  for (std::size_t rank = 0; rank < order.size(); ++rank) priorities[order[rank]].rank = rank + 1;
  const std::vector<std::size_t> chosen = fitting(waiting, priorities, *minutes);
  double seconds = 0, share = 0;
  for (const std::size_t i : chosen) {
    seconds += *waiting[i].seconds;
    share += priorities[i].bug_share;
  }
  return {{"minutes", *minutes},
          {"minutes_used", seconds / 60},
          {"edges", chosen},
          {"bug_share", share},
          {"text", say("{:.0f} minutes are enough for {} of {} edges with a pace; {:.0f} of 100 bugs are "
                       "expected on them. Where bugs sit is a guess until something is seen.",
                       *minutes, chosen.size(), edges->size(), 100 * share)}};
}

Shape load_shape() {
  const Shape circuit =
      object({field("title", text("of the circuit")),
              field("peak_amperes", number(Unit::ampere, "most that the visit draws")),
              field("allowed_amperes", number(Unit::ampere, "80 % of its breaker less what runs already")),
              field("breaker_amperes", number(Unit::ampere, "of its breaker"))},
             "one circuit");
  const Shape refused =
      object({field("item", text("what could not be plugged in for")), field("task", text("kind of task")),
              field("amperes", number(Unit::ampere, "it needs")),
              field("allowed_amperes", number(Unit::ampere, "most that any circuit has")),
              field("text", text("in words"))},
             "one refusal");
  return object({field("verdict", choice({{"within", "no circuit goes above what it may carry"},
                                          {"refused", "something could not be plugged in"},
                                          {"not_proven", "the circuits are not on record"}},
                                         "whether the circuits carry the visit")),
                 field("circuits", list(circuit, "as given")), field("refused", list(refused, "refusals")),
                 field("source", text("of the 80 %"))},
                "electrical load");
}

Json load_answer(const visits::Visit& visit, const Timed& timed) {
  Json circuits = Json::array(), refused = Json::array();
  const std::vector<double> most = visits::peaks(timed.tasks.project, timed.schedule);
  for (std::size_t i = 0; i < visit.circuits.size(); ++i)
    circuits.push_back({{"title", visit.circuits[i].title},
                        {"peak_amperes", most[visits::k_first_circuit + i]},
                        {"allowed_amperes", visit.circuits[i].free_amperes()},
                        {"breaker_amperes", visit.circuits[i].breaker_amperes}});
  for (const visits::LeftOut& left : timed.tasks.left_out) {
    if (left.code != "no_circuit") continue;
    refused.push_back(
        {{"item", visit.work[left.item].title},
         {"task", left.what},
         {"amperes", left.amperes},
         {"allowed_amperes", left.limit},
         {"text", say("{}: it needs {:.1f} A and no circuit has more than {:.1f} A to give (80 % of "
                      "its breaker, less what runs). Another circuit, or a smaller machine; nothing is "
                      "bypassed.",
                      visit.work[left.item].title, left.amperes, left.limit)}});
  }
  const char* verdict = !refused.empty() ? "refused" : circuits.empty() ? "not_proven" : "within";
  return {{"verdict", verdict},
          {"circuits", circuits},
          {"refused", refused},
          {"source",
           "NEC 210.23(A)(1) and its 80 % for continuous loads, from memory, to be checked; "
           "local code decides"}};
}

Shape quote_shape() {
  return object(
      {field("currency", text("as given")), field("low", ratio("if all goes quickly")),
       field("likely", ratio("to be quoted")), field("high", ratio("if all goes slowly")),
       field("person_hours", ratio("likely minutes times crew, in hours")), field("text", text("in words"))},
      "what it costs");
}

Json quote_answer(const Json& request, int low_minutes, int likely_minutes, int high_minutes) {
  const Json* rates = member_if(request, "rates");
  if (rates == nullptr) return nullptr;
  const double crew = request.at("crew").get<double>();
  const auto price = [&](int minutes) {
    return number_of(*rates, "per_visit") + number_of(*rates, "per_hour") * crew * minutes / 60;
  };
  const double low = price(std::min(low_minutes, likely_minutes));
  const double high = price(std::max(high_minutes, likely_minutes));
  return {{"currency", text_of(*rates, "currency")},
          {"low", low},
          {"likely", price(likely_minutes)},
          {"high", high},
          {"person_hours", crew * likely_minutes / 60},
          {"text", say("{:.0f} {} ({:.0f} to {:.0f}): {} minutes, {} in crew, at the firm's rates. "
                       "The range follows from judged ranges of the tasks' minutes.",
                       price(likely_minutes), text_of(*rates, "currency"), low, high, likely_minutes, crew)}};
}

}  // namespace lastegg
