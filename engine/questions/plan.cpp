// Question `plan`: a pace for every edge of the items, top to bottom, and the minutes they take.
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <utility>
#include <vector>

#include "engine/edge_pace.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "job/priority/priority.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  std::vector<Field> fields = pace_kit_fields();
  fields.push_back(
      field("items", list(furniture_question().request, "request of the question furniture").items(1, 40)));
  fields.push_back(optional(
      "seen",
      list(object({field("item_index", integer("item, from 0").at_least(0).at_most(39)),
                   optional("id", text("edge of the item; every edge of the item if left out")),
                   field("what", choice({{"signs", "spots, cast skins or eggs"}, {"live", "live bugs"}},
                                        "what was seen"))},
                  "one finding"),
           "what an inspection found; it decides most of what matters first")
          .items(0, 400)));
  fields.push_back(optional(
      "known_paces", list(object({field("treat", anything("`treat` of an edge")),
                                  field("pace", object(pace_answer_fields(),
                                                       "answer of the question pace for it, by the same "
                                                       "fold test or prior")
                                                    .allow_more())},
                                 "one pace"),
                          "paces that were asked for already; the others are computed")
                         .items(0, 1000)));
  fields.push_back(
      optional("minutes_left", number(Unit::minute, "time left for steaming").at_least(0).at_most(1440)));
  return object(std::move(fields), "a kit and the items of a dwelling");
}

Shape answer_shape() {
  std::vector<Field> edge{
      field("item_index", integer("item, from 0")),
      field("id", text("edge of the item")),
      field("title", text("name of the edge")),
      field("part", text("part of the item")),
      field("length_metres", number(Unit::metre, "length")),
      field("height_metres", number(Unit::metre, "mean height above the floor")),
      field("in_sight", flag("seen without moving the item")),
      field("seconds",
            number(Unit::second, "time for all passes, without changes of place; null without a pace")
                .or_null()),
      field("pace_index", integer("which entry of `paces` is its pace")),
      field("bug_share", ratio("share of the bugs on these edges that is expected here")),
      field("killed_share_per_minute", ratio("of all bugs on these edges, expected")),
      field("rank", integer("from 1, most killed per minute first; null without a pace").or_null())};
  return object(
      {field("items", list(object({field("title", text("name of the item")),
                                   field("edges", integer("edges of the item")),
                                   field("edges_with_window", integer("of them with a pace"))},
                                  "one item"),
                           "items as given")),
       field("edges", list(object(std::move(edge), "one edge"), "item by item, top to bottom")),
       field("paces", list(object(pace_answer_fields(), "a pace answer"),
                           "the different answers; edges alike share one")),
       field("edges_with_window", integer("edges with a pace")), field("edge_count", integer("all edges")),
       field("share_with_window", ratio("share of edges with a pace")),
       field("length_with_window_metres", number(Unit::metre, "their length")),
       field("length_metres", number(Unit::metre, "of all edges")),
       field("minutes", number(Unit::minute, "for all edges with a pace, without changes of place")),
       field("closed_by", list(object({field("code", text("reason")),
                                       field("edges", integer("edges without a pace for it")),
                                       field("text", text("what it means and what would open them"))},
                                      "one reason"),
                               "what leaves edges without a pace, most edges first")),
       field("summary", text("one sentence")),
       optional(
           "in_minutes_left",
           object({field("minutes", number(Unit::minute, "as given")),
                   field("minutes_used", number(Unit::minute, "by the edges chosen")),
                   field("edges", list(integer("index in `edges`"), "what to treat, most per minute first")),
                   field("bug_share", ratio("share of the bugs on all edges that is expected on these")),
                   field("text", text("in words"))},
                  "what matters most in the time left"))},
      "the plan");
}

std::string opening_of(const std::string& code) {
  if (code == "soaks_before_it_kills")
    return say(
        "the wetting limit is reached before the eggs are dead; where the limit is the estimate of 50 "
        "g/m2, a wetting test on a hidden "
        "spot may show that the covering bears more, and a fold test in this very covering narrows the "
        "rest");
  if (code == "scorches_before_it_kills")
    return say("the finish bears less heat than the eggs; a hidden spot test, or another method");
  if (code == "too_deep_for_steam")
    return say("too deep for steam at any steady pace; open the edge, or another method");
  if (code == "shape_not_modelled")
    return say("no honest model of the shape yet; steam by the practice of the trade, not proven");
  if (code == "bound_not_lethal")
    return say(
        "a crack or a cord where only a figure on the safe side is known, and it does not reach the dose; "
        "lay the place open, or steam it slowly by the practice of the trade and count it as not proven");
  if (code == "barred_finish") return say("the finish is not steamed; another method");
  return say("see the reason of the edge");
}

// The pace that was handed in for an edge; null: it has to be computed.
const Json* known_pace(const Json& request, const Json& treat) {
  if (const Json* list = member_if(request, "known_paces"))
    for (const Json& one : *list)
      if (one.at("treat") == treat) return &one.at("pace");
  return nullptr;
}

// How many edges each reason leaves without a pace.
Json closed_by(const Json& plan) {
  std::map<std::string, int> counts;
  for (const Json& edge : plan.at("edges")) {
    const Json& pace = plan.at("paces")[edge.at("pace_index").get<std::size_t>()];
    if (pace.at("recommended_metres_per_second").is_null())
      ++counts[pace.at("reason").at("code").get<std::string>()];
  }
  std::vector<std::pair<std::string, int>> sorted(counts.begin(), counts.end());
  std::sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) {
    return a.second != b.second ? a.second > b.second : a.first < b.first;
  });
  Json out = Json::array();
  for (const auto& [code, edges] : sorted)
    out.push_back({{"code", code}, {"edges", edges}, {"text", opening_of(code)}});
  return out;
}

Seen seen_at(const Json& request, std::size_t item, const std::string& id) {
  Seen seen = Seen::none;
  if (const Json* list = member_if(request, "seen")) {
    for (const Json& finding : *list) {
      if (finding.at("item_index").get<std::size_t>() != item) continue;
      if (const auto edge = text_if(finding, "id"); edge && *edge != id) continue;
      seen = std::max(seen, text_of(finding, "what") == "live" ? Seen::live : Seen::signs);
    }
  }
  return seen;
}

Result<void> check_seen(const Json& request, const std::vector<WaitingEdge>& edges, const Json& rows) {
  const Json* list = member_if(request, "seen");
  if (list == nullptr) return {};
  for (std::size_t i = 0; i < list->size(); ++i) {
    const Json& finding = (*list)[i];
    const auto item = finding.at("item_index").get<std::size_t>();
    const auto id = text_if(finding, "id");
    bool found = false;
    for (std::size_t e = 0; e < edges.size(); ++e)
      found |= edges[e].item == item && (!id || rows[e].at("id") == *id);
    if (found) continue;
    const std::string what = id ? *id : std::to_string(item);
    return refuse({ErrorKind::not_found,
                   id ? say("item {} has no edge \"{}\"", item, *id)
                      : say("there is no item {}; the items are counted from 0", item),
                   fmt::format("/seen/{}/{}", i, id ? "id" : "item_index"), what, "", ""});
  }
  return {};
}

// Adds to every edge how much it matters, and what to do in the minutes left.
void add_priorities(const Json& request, const std::vector<WaitingEdge>& edges, Json& out) {
  const std::vector<EdgePriority> priorities = prioritise(edges);
  for (std::size_t i = 0; i < edges.size(); ++i) {
    Json& row = out["edges"][i];
    row["bug_share"] = priorities[i].bug_share;
    row["killed_share_per_minute"] = priorities[i].killed_share_per_minute;
    row["rank"] = priorities[i].rank ? Json(*priorities[i].rank) : Json(nullptr);
  }
  const auto minutes = number_if(request, "minutes_left");
  if (!minutes) return;
  const std::vector<std::size_t> chosen = fitting(edges, priorities, *minutes);
  double seconds = 0, share = 0;
  for (const std::size_t i : chosen) {
    seconds += *edges[i].seconds;
    share += priorities[i].bug_share;
  }
  out["in_minutes_left"] = {
      {"minutes", *minutes},
      {"minutes_used", seconds / 60},
      {"edges", chosen},
      {"bug_share", share},
      {"text", say("{:.0f} minutes are enough for {} of {} edges; {:.0f} of 100 bugs are expected on "
                   "them. Where bugs sit is a guess from one trial until something is seen.",
                   *minutes, chosen.size(), edges.size(), 100 * share)}};
}

Result<Answer> solve(const Json& request) {
  auto basis = read_pace_basis(request);
  if (!basis) return refuse(basis.error());
  const EdgeSettings settings = read_edge_settings(request);
  Answer answer;
  answer.warnings = basis->warnings;
  const std::size_t samples = basis->calibrations.front().weights.size();
  if (steam::accuracy_for(static_cast<int>(samples)) == steam::LaneAccuracy::preview) {
    answer.warnings.push_back(
        {"first_look",
         say("a first look, with {} samples: fewer edges have a pace in it than with 1024", samples)});
  }
  Json& out = answer.result;
  out["items"] = Json::array();
  out["edges"] = Json::array();
  out["paces"] = Json::array();
  std::map<std::string, int> known;  // treatment of an edge -> index of its pace
  std::vector<WaitingEdge> waiting;
  int with_window = 0, count = 0;
  double length = 0, length_with_window = 0, seconds = 0;
  const Json& items = request.at("items");
  for (std::size_t i = 0; i < items.size(); ++i) {
    const auto furniture = furniture_question().solve(items[i]);
    if (!furniture) {
      Error error = furniture.error();
      error.where = fmt::format("/items/{}{}", i, error.where);
      return refuse(error);
    }
    std::vector<const Json*> edges;
    for (const Json& edge : furniture->result.at("edges")) edges.push_back(&edge);
    std::sort(edges.begin(), edges.end(), [](const Json* a, const Json* b) {
      const double above = number_of(*a, "height_metres"), below = number_of(*b, "height_metres");
      return above != below ? above > below : text_of(*a, "id") < text_of(*b, "id");
    });
    int item_with_window = 0;
    for (const Json* edge : edges) {
      const std::string treatment = edge->at("treat").dump();
      auto entry = known.find(treatment);
      if (entry == known.end()) {
        auto read_edge = read(edge_shape(), edge->at("treat"));
        if (!read_edge) return refuse(read_edge.error());
        const Json* told = known_pace(request, edge->at("treat"));
        auto pace = told != nullptr ? Result<Json>(*told)
                                    : pace_of_edge(*basis, *read_edge, settings, fmt::format("/items/{}", i));
        if (!pace) return refuse(pace.error());
        entry = known.emplace(treatment, static_cast<int>(out["paces"].size())).first;
        out["paces"].push_back(std::move(*pace));
      }
      const Json& pace = out["paces"][static_cast<std::size_t>(entry->second)];
      const double edge_length = number_of(*edge, "length_metres");
      Json row{{"item_index", i},
               {"id", edge->at("id")},
               {"title", edge->at("title")},
               {"part", edge->at("part")},
               {"length_metres", edge_length},
               {"height_metres", edge->at("height_metres")},
               {"in_sight", edge->at("in_sight")},
               {"seconds", nullptr},
               {"pace_index", entry->second}};
      WaitingEdge wait{
          i, text_of(items[i], "item"), edge_length, seen_at(request, i, text_of(*edge, "id")), std::nullopt,
          0};
      ++count;
      length += edge_length;
      if (const auto recommended = number_if(pace, "recommended_metres_per_second")) {
        const double edge_seconds = pace.at("passes").get<int>() * edge_length / *recommended;
        row["seconds"] = edge_seconds;
        wait.seconds = edge_seconds;
        wait.kill_probability = number_of(pace.at("kill_by_stage"), "egg");
        seconds += edge_seconds;
        length_with_window += edge_length;
        ++with_window;
        ++item_with_window;
      }
      out["edges"].push_back(std::move(row));
      waiting.push_back(std::move(wait));
    }
    out["items"].push_back({{"title", furniture->result.at("title")},
                            {"edges", edges.size()},
                            {"edges_with_window", item_with_window}});
  }
  if (auto known_findings = check_seen(request, waiting, out["edges"]); !known_findings)
    return refuse(known_findings.error());
  add_priorities(request, waiting, out);
  out["edges_with_window"] = with_window;
  out["edge_count"] = count;
  out["share_with_window"] = count > 0 ? static_cast<double>(with_window) / count : 0.0;
  out["length_with_window_metres"] = length_with_window;
  out["length_metres"] = length;
  out["minutes"] = seconds / 60;
  out["summary"] = say(
      "{} of {} edges have a pace ({:.1f} of {:.1f} m); at these paces they take {:.0f} minutes of steaming.",
      with_window, count, length_with_window, length, seconds / 60);
  out["closed_by"] = closed_by(out);
  answer.data_keys = {"coverings/1", "damage_limits/1", "dimensions/1",    "edge_kinds/3",
                      "materials/1", "mortality/1",     "where_bugs_sit/1"};
  return answer;
}

}  // namespace

const Question& plan_question() {
  static const Question question{
      "plan", "A pace or a reason for every edge of the items, top to bottom, with the minutes they take.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
