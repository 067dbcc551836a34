#include "engine/survey_request.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <optional>

#include "engine/request_values.h"
#include "job/furniture/catalogue.h"
#include "job/survey/hazards.h"
#include "job/survey/prior.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;
using Ids = std::map<std::string, std::size_t>;

constexpr double k_far_metres = 1000;
constexpr double k_most_counted = 100000;

Shape counted(std::string text) {
  return integer(std::move(text)).at_least(0).at_most(k_most_counted);
}

std::vector<Choice> kinds() {
  std::vector<Choice> choices;
  for (const furniture::Kind& kind : furniture::catalogue()) choices.push_back({kind.name, kind.title});
  return choices;
}

std::vector<Choice> risks() {
  std::vector<Choice> choices;
  for (const survey::Hazard& hazard : survey::hazards()) choices.push_back({hazard.key, hazard.text});
  return choices;
}

Shape item_shape() {
  return object({field("id", text("name in this request")), field("kind", choice(kinds(), "kind of item")),
                 optional("room", text("id of its room")),
                 optional("x_metres", number(Unit::metre, "its middle, from the room's left wall")
                                          .at_least(-k_far_metres)
                                          .at_most(k_far_metres)),
                 optional("y_metres", number(Unit::metre, "its middle, from the room's far wall")
                                          .at_least(-k_far_metres)
                                          .at_most(k_far_metres)),
                 with_default("sleeps_here", flag("somebody sleeps or long sits on it"), false),
                 optional("edges", integer("how many edges it has").at_least(1).at_most(10000))},
                "an item");
}

Shape finding_shape() {
  return object(
      {optional("item", text("id of the item")), optional("room", text("id of the room")),
       optional("edge", text("name of the edge; the whole place if left out")),
       field("look", choice({{"found", "something was found"},
                             {"none_seen", "looked, none seen"},
                             {"not_accessible", "could not be reached"}},
                            "result of the look")),
       with_default("adults", counted("live adults"), 0), with_default("nymphs", counted("live nymphs"), 0),
       with_default("eggs", counted("eggs that look alive"), 0),
       with_default("cast_skins", counted("cast skins"), 0),
       with_default("spots", flag("dark spots of droppings"), false),
       with_default("dead", flag("dead bugs only"), false),
       with_default("how", choice(survey_how_choices(), "how it was looked"), "eye"),
       optional("certain", flag("true: surely a bed bug; false: unsure; left out: nobody said"))},
      "one look at a place");
}

Shape catch_shape() {
  return object({optional("item", text("id of the item above it")), optional("room", text("id of the room")),
                 with_default("adults", counted("adults"), 0), with_default("nymphs", counted("nymphs"), 0),
                 with_default("missing", flag("it was gone, moved or dusty, so it tells nothing"), false),
                 optional("certain", flag("true: surely bed bugs; false: unsure; left out: nobody said"))},
                "what a trap held");
}

Shape risk_shape() {
  return object({field("id", text("name in this request")), field("what", choice(risks(), "who or what")),
                 optional("room", text("id of the room")), optional("item", text("id of the item")),
                 with_default("settled", flag("said to be dealt with"), false),
                 optional("settled_by", text("role of who said so"))},
                "somebody or something at risk");
}

Refusal unlisted(const std::string& what, const std::string& id, const std::string& where) {
  return refuse(
      {ErrorKind::not_found, say("there is no {} \"{}\" in this request", what, id), where, id, "", ""});
}

/// Ids in order; an id that stands twice is refused.
Result<Ids> read_ids(const Json& list, const std::string& name, std::vector<std::string>& ids) {
  Ids known;
  for (std::size_t i = 0; i < list.size(); ++i) {
    const std::string id = text_of(list[i], "id");
    if (!known.emplace(id, i).second)
      return refuse({ErrorKind::bad_input, say("the id \"{}\" stands twice", id),
                     fmt::format("/{}/{}/id", name, i), id, "", ""});
    ids.push_back(id);
  }
  return known;
}

Result<std::optional<std::size_t>> index_of(const Json& entry, const char* key, const Ids& ids,
                                            const std::string& where) {
  const auto id = text_if(entry, key);
  if (!id) return std::optional<std::size_t>();
  const auto found = ids.find(*id);
  if (found == ids.end()) return unlisted(key, *id, where + "/" + key);
  return std::optional<std::size_t>(found->second);
}

std::optional<bool> flag_if(const Json& entry, const char* key) {
  const Json* member = member_if(entry, key);
  return member == nullptr ? std::nullopt : std::optional<bool>(member->get<bool>());
}

survey::How how_named(const std::string& word) {
  using survey::How;
  static const std::map<std::string, How> k_words{{"eye", How::eye},
                                                  {"light_and_card", How::light_and_card},
                                                  {"opened", How::opened},
                                                  {"trap", How::trap},
                                                  {"told", How::told}};
  return k_words.at(word);
}

survey::Finding finding_of(const Json& told) {
  using survey::Look;
  survey::Finding finding;
  finding.edge = text_if(told, "edge").value_or("");
  const std::string look = text_of(told, "look");
  finding.look = look == "found" ? Look::found : look == "none_seen" ? Look::none_seen : Look::not_accessible;
  finding.how = how_named(text_of(told, "how"));
  finding.adults = told.at("adults").get<int>();
  finding.nymphs = told.at("nymphs").get<int>();
  finding.eggs = told.at("eggs").get<int>();
  finding.cast_skins = told.at("cast_skins").get<int>();
  finding.spots = told.at("spots").get<bool>();
  finding.dead = told.at("dead").get<bool>();
  finding.certain = flag_if(told, "certain");
  return finding;
}

survey::Item item_of(const Json& told) {
  survey::Item item;
  item.kind = text_of(told, "kind");
  item.x_metres = number_if(told, "x_metres");
  item.y_metres = number_if(told, "y_metres");
  item.sleeps_here = told.at("sleeps_here").get<bool>();
  if (has(told, "edges")) item.edges = told.at("edges").get<std::size_t>();
  return item;
}

const Json& list_of(const Json& request, const char* key) {
  static const Json empty = Json::array();
  const Json* list = member_if(request, key);
  return list == nullptr ? empty : *list;
}

}  // namespace

std::vector<Choice> survey_how_choices() {
  return {{"eye", "by eye"},
          {"light_and_card", "with light and a card along the edge"},
          {"opened", "taken apart"},
          {"trap", "from a trap"},
          {"told", "told by the people there"}};
}

Shape survey_request_shape() {
  constexpr std::size_t k_most = 10000;
  return object(
      {optional(
           "rooms",
           list(object({field("id", text("name in this request"))}, "a room"), "rooms").items(0, k_most)),
       field("items", list(item_shape(), "what was listed").items(0, k_most)),
       optional("evidence", list(finding_shape(), "looks, in any order").items(0, k_most)),
       optional("traps", list(catch_shape(), "what traps held").items(0, k_most)),
       optional("risks", list(risk_shape(), "who and what is at risk").items(0, k_most)),
       with_default("treated_before",
                    choice({{"yes", "something was tried"},
                            {"no", "surely nothing was tried"},
                            {"not_known", "nobody said"}},
                           "whether bugs were fought here before"),
                    "not_known")},
      "an inspection");
}

Result<SurveyRequest> read_survey(const Json& request) {
  SurveyRequest out;
  const auto rooms = read_ids(list_of(request, "rooms"), "rooms", out.room_ids);
  if (!rooms) return refuse(rooms.error());
  const auto items = read_ids(request.at("items"), "items", out.item_ids);
  if (!items) return refuse(items.error());
  out.survey.rooms = out.room_ids.size();
  out.survey.treated_before = text_of(request, "treated_before") == "yes";
  for (std::size_t i = 0; i < request.at("items").size(); ++i) {
    const Json& told = request.at("items")[i];
    survey::Item item = item_of(told);
    const auto room = index_of(told, "room", *rooms, fmt::format("/items/{}", i));
    if (!room) return refuse(room.error());
    item.room = *room;
    out.has_bed = out.has_bed || survey::is_bed(item.kind);
    out.survey.items.push_back(std::move(item));
  }
  const auto placed = [&](const Json& told, const std::string& where, auto& entry) -> Result<void> {
    const auto item = index_of(told, "item", *items, where);
    if (!item) return refuse(item.error());
    const auto room = index_of(told, "room", *rooms, where);
    if (!room) return refuse(room.error());
    entry.item = *item;
    entry.room = *room;
    return {};
  };
  const Json& evidence = list_of(request, "evidence");
  for (std::size_t i = 0; i < evidence.size(); ++i) {
    survey::Finding finding = finding_of(evidence[i]);
    if (const auto at = placed(evidence[i], fmt::format("/evidence/{}", i), finding); !at)
      return refuse(at.error());
    out.survey.findings.push_back(std::move(finding));
  }
  const Json& traps = list_of(request, "traps");
  for (std::size_t i = 0; i < traps.size(); ++i) {
    survey::Catch caught;
    if (const auto at = placed(traps[i], fmt::format("/traps/{}", i), caught); !at) return refuse(at.error());
    if (traps[i].at("missing").get<bool>()) continue;
    caught.adults = traps[i].at("adults").get<int>();
    caught.nymphs = traps[i].at("nymphs").get<int>();
    caught.certain = flag_if(traps[i], "certain");
    out.survey.catches.push_back(caught);
  }
  const Json& risks = list_of(request, "risks");
  for (std::size_t i = 0; i < risks.size(); ++i) {
    survey::Catch somewhere;
    if (const auto at = placed(risks[i], fmt::format("/risks/{}", i), somewhere); !at)
      return refuse(at.error());
  }
  return out;
}

}  // namespace lastegg
