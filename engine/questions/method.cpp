// Question `method`: every method for every item, as allowed, to be checked, to be agreed or barred, ranked.
#include <fmt/format.h>

#include <utility>

#include "engine/finish.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/visit_shapes.h"
#include "job/furniture/catalogue.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

constexpr std::size_t k_most_items_of_a_home = 100;

std::vector<Choice> kind_words() {
  std::vector<Choice> words;
  for (const furniture::Kind& kind : furniture::catalogue()) words.push_back({kind.name, kind.title});
  return words;
}

std::vector<Choice> equipment_words() {
  return {{"vacuum", "vacuum cleaner"},
          {"steamer", "steamer"},
          {"chamber", "hot chamber, or a tent with a heater"},
          {"dryer", "tumble dryer"},
          {"washer", "washing machine"},
          {"freezer", "freezer that holds -18 C"},
          {"room_heaters", "heaters, fans and sensors for a room"},
          {"cover", "bite-proof covers"},
          {"leg_traps", "leg traps"}};
}

Shape request_shape() {
  const Shape steam = object(
      {field("edges", integer("edges of the item").at_least(0).at_most(10000)),
       field("edges_with_pace", integer("of them with a pace").at_least(0)),
       field("minutes", number(Unit::minute, "of steaming").at_least(0)),
       with_default("length_without_pace_metres", number(Unit::metre, "of the other edges").at_least(0), 0),
       optional("kill_probability",
                ratio("of an egg at the weakest edge with a pace").at_least(0).at_most(1))},
      "what the question plan found");
  const Shape item = object(
      {optional("id", text("name by which risks and consents speak of it")),
       field("item", choice(kind_words(), "kind of item")), optional("title", text("what people call it")),
       optional("room", text("name of its room")),
       optional("covering", text("a covering of the question furniture; what is usual if left out")),
       optional("finish", text("finish of its wood or metal, or a key of the damage limits")),
       with_default("hidden_spot", hidden_spot_shape(), "not_tried"),
       optional("hidden_spot_seconds", hidden_spot_seconds()),
       with_default(
           "seen",
           choice({{"none", "nothing seen"}, {"signs", "spots, cast skins or eggs"}, {"live", "live bugs"}},
                  "what an inspection found"),
           "none"),
       optional("traits", list(text("a trait of the data file item_traits"),
                               "what the piece is like, in place of what is usual")
                              .items(0, 40)),
       optional("steam", steam),
       optional("chosen",
                object({field("method", text("method that a person chose")), optional("reason", text("why"))},
                       "what a person decided"))},
      "one item");
  std::vector<Field> fields{
      field("items", list(item, "items of the home").items(1, k_most_items_of_a_home)),
      with_default("equipment", list(choice(equipment_words(), "a thing"), "what there is").items(0, 20),
                   Json::array({"vacuum", "steamer", "cover", "leg_traps"})),
      optional("steamer_watts", number(Unit::watt, "of the steamer").at_least(200).at_most(12000))};
  for (Field& one : circumstance_fields()) fields.push_back(std::move(one));
  return object(std::move(fields), "items, circumstances and equipment");
}

Shape answer_shape() {
  Shape reason = sourced_text("one reason");
  reason.fields.push_back(field("standing", standing_shape()));
  reason.fields.push_back(field("grounds", choice({{"hazard", "it could hurt someone"},
                                                   {"damage", "it could ruin the thing"},
                                                   {"practical", "it cannot be done here"}},
                                                  "why it matters")));
  const Shape evidence =
      object({field("stage", text("all, egg, nymph or adult")), field("text", text("in words")),
              field("celsius", number(Unit::celsius, "at which").or_null()),
              field("minutes", number(Unit::minute, "for how long").or_null()),
              field("source", text("key of the bibliography or of the data file")),
              field("locator", text("where in it")),
              field("quality", text("measured, handbook, practice, estimate, from memory"))},
             "what a trial found, or what is customary");
  const Shape offer = object(
      {field("method", method_word("the method")), field("title", text("its name")),
       field("text", text("what it does")),
       field("role", choice({{"first", "before any other"},
                             {"kill", "kills bugs and eggs"},
                             {"contain", "shuts in or out; kills nothing today"},
                             {"remove", "takes the thing away"}},
                            "what it is for")),
       field("standing", standing_shape()), field("rank", integer("from 1")),
       field("reasons", list(reason, "what stands against it, the gravest first")),
       field("kill_probability", ratio("of an egg, as computed; null: not computed").or_null()),
       field("whole", flag("reaches every place of the item, as far as is known")),
       field("unproven", flag("steam by the practice of the trade alone")),
       field("evidence", list(evidence, "what is known of it")),
       field("hands_minutes", number(Unit::minute, "of one person")),
       field("clock_minutes", number(Unit::minute, "from start to end")),
       field("energy_joules", ratio("electric, in joules")),
       field("wetting", choice({{"none", "stays dry"}, {"damp", "damp on its surface"}, {"wet", "wet"}},
                               "how wet the thing gets")),
       field("harm", text("what it may do to the thing")),
       field("may_be_chosen", flag("whether a person may choose it: all but what could hurt someone or "
                                   "cannot be done"))},
      "one method");
  Shape override = object(
      {field("method", text("as chosen")), field("reason", text("as given; empty: none")),
       field("taken", flag("whether it was taken")),
       field("code", choice({{"taken", "taken"},
                             {"not_known", "no such method"},
                             {"hazard", "it could hurt someone: no choice lifts that"},
                             {"not_possible", "it cannot be done here"}},
                            "why not")),
       field("instead_of", method_word("what was offered first").or_null()),
       field("extra_hands_minutes", number(Unit::minute, "against what was offered first; may be negative")),
       field("kill_probability_lost", ratio("against what was offered first; null: not computed").or_null()),
       field("text", text("what the choice costs"))},
      "what a person decided, and what it costs");
  return object(
      {field(
           "items",
           list(object({field("id", text("as given; empty: none")), field("title", text("of the item")),
                        field("item", text("its kind")), field("traits", list(text("a trait"), "its traits")),
                        field("method", method_word("what it gets").or_null()),
                        field("methods", list(offer, "every method, the vacuum first")),
                        field("override", override.or_null()), field("text", text("one sentence"))},
                       "one item"),
                "items as given")),
       field("recorded_only", text("on dusts and sprays"))},
      "methods");
}

Result<method_choice::Surface> surface_of(const Json& item, const furniture::Kind& kind) {
  const auto named = text_if(item, "finish");
  const bool covered = kind.usual_covering.has_value();
  const std::string usual = kind.usual_covering ? std::string(name_of(*kind.usual_covering)) : "unknown";
  const auto covering = find_covering(covered ? text_if(item, "covering").value_or(usual) : "unknown");
  if (!covering) {
    Error error = covering.error();
    error.where = "/covering";
    return refuse(error);
  }
  const HiddenSpot spot = read_hidden_spot(text_of(item, "hidden_spot"));
  const auto held = number_if(item, "hidden_spot_seconds");
  // The covering of what is covered decides; of bare wood and metal the finish.
  auto finish =
      finish_of(*covering, covered ? std::nullopt : std::optional(named.value_or("unknown")), spot, held);
  if (!finish) {
    Error error = finish.error();
    error.where = "/finish";
    return refuse(error);
  }
  method_choice::Surface surface;
  surface.barred = finish->barred();
  surface.unknown = finish->unknown();
  const Json written = to_json(*finish);
  surface.text = text_of(written, "text");
  if (finish->limits.empty()) {
    surface.source = "estimate: nothing is known of it, so a hidden spot decides";
    surface.locator = "hidden spot";
    surface.quality = Quality::estimate;
  } else {
    surface.source = finish->limits.front().source;
    surface.locator = finish->limits.front().locator;
    surface.quality = finish->limits.front().quality;
  }
  return surface;
}

Json to_json(const method_choice::Offer& offer, std::size_t rank) {
  Json reasons = Json::array(), evidence = Json::array();
  for (const method_choice::Reason& reason : offer.reasons)
    reasons.push_back({{"code", reason.code},
                       {"text", reason.text},
                       {"source", reason.source},
                       {"locator", reason.locator},
                       {"quality", quality_name(reason.quality)},
                       {"standing", standing_word(reason.standing)},
                       {"grounds", reason.grounds == method_choice::Grounds::hazard   ? "hazard"
                                   : reason.grounds == method_choice::Grounds::damage ? "damage"
                                                                                      : "practical"}});
  for (const method_choice::Evidence& one : offer.method->evidence)
    evidence.push_back({{"stage", one.stage},
                        {"text", in_language(one.text)},
                        {"celsius", one.celsius ? Json(*one.celsius) : Json(nullptr)},
                        {"minutes", one.minutes ? Json(*one.minutes) : Json(nullptr)},
                        {"source", one.source},
                        {"locator", one.locator},
                        {"quality", quality_name(one.quality)}});
  constexpr const char* k_roles[] = {"first", "kill", "contain", "remove"};
  return {{"method", offer.method->key},
          {"title", in_language(offer.method->title)},
          {"text", in_language(offer.method->text)},
          {"role", k_roles[static_cast<std::size_t>(offer.method->role)]},
          {"standing", standing_word(offer.standing)},
          {"rank", rank},
          {"reasons", std::move(reasons)},
          {"kill_probability", offer.kill_probability ? Json(*offer.kill_probability) : Json(nullptr)},
          {"whole", offer.whole},
          {"unproven", offer.unproven},
          {"evidence", std::move(evidence)},
          {"hands_minutes", offer.hands_minutes},
          {"clock_minutes", offer.clock_minutes},
          {"energy_joules", offer.energy_joules},
          {"wetting", offer.method->wetting},
          {"harm", in_language(offer.method->harm)},
          {"may_be_chosen", offer.standing != method_choice::Standing::barred || offer.overridable}};
}

std::string cost_words(const method_choice::Chosen& chosen, const method_choice::Chosen& first,
                       const std::string& code) {
  if (code == "not_known") return say("There is no such method; what was offered first stands.");
  if (code == "hazard")
    return say("It could hurt someone, and no choice lifts that; what was offered first stands.");
  if (code == "not_possible") return say("It cannot be done here; what was offered first stands.");
  if (first.offer == nullptr || chosen.offer == first.offer) return say("It is what was offered first.");
  const double extra = chosen.offer->hands_minutes - first.offer->hands_minutes;
  std::string words =
      extra < 0
          ? say("{} in place of {}: {:.0f} minutes of hands less", in_language(chosen.offer->method->title),
                in_language(first.offer->method->title), -extra)
          : say("{} in place of {}: {:.0f} minutes of hands more", in_language(chosen.offer->method->title),
                in_language(first.offer->method->title), extra);
  if (chosen.offer->method->role != method_choice::Role::kill &&
      first.offer->method->role == method_choice::Role::kill)
    words += say("; it kills nothing today");
  else if (!chosen.offer->kill_probability)
    words += say("; its kill is not computed");
  if (chosen.offer->standing == method_choice::Standing::barred)
    words += say("; expect damage: {}", chosen.offer->reasons.front().text);
  return words + ".";
}

Json override_of(const Json& item, const std::vector<method_choice::Offer>& offers,
                 const method_choice::Chosen& chosen) {
  const Json* wanted = member_if(item, "chosen");
  if (wanted == nullptr) return nullptr;
  const method_choice::Chosen first = method_choice::choose(offers, "");
  const std::string code = chosen.by_person ? "taken" : chosen.refused_code;
  const bool both = chosen.offer != nullptr && first.offer != nullptr;
  Json lost = nullptr;
  if (both && first.offer->kill_probability && chosen.offer->kill_probability)
    lost = *first.offer->kill_probability - *chosen.offer->kill_probability;
  return {{"method", text_of(*wanted, "method")},
          {"reason", text_if(*wanted, "reason").value_or("")},
          {"taken", chosen.by_person},
          {"code", code},
          {"instead_of", first.offer == nullptr ? Json(nullptr) : Json(first.offer->method->key)},
          {"extra_hands_minutes", both ? chosen.offer->hands_minutes - first.offer->hands_minutes : 0.0},
          {"kill_probability_lost", lost},
          {"text", cost_words(chosen, first, code)}};
}

Result<Json> answer_of(const Json& request, const Json& item) {
  const std::string kind_name = text_of(item, "item");
  const furniture::Kind* kind = furniture::kind_named(kind_name);
  if (kind == nullptr)
    return refuse(
        {ErrorKind::not_found, say("no such kind of item: {}", kind_name), "/item", kind_name, "", ""});
  method_choice::Situation situation;
  if (const Json* traits = member_if(item, "traits")) {
    for (const Json& trait : *traits) situation.traits.insert(trait.get<std::string>());
  } else if (const auto* usual = method_choice::traits_of(kind_name)) {
    situation.traits = *usual;
  }
  const std::string id = text_if(item, "id").value_or("");
  read_circumstances(request, id, text_if(item, "room").value_or(""), situation);
  for (const Json& thing : request.at("equipment")) situation.equipment.insert(thing.get<std::string>());
  situation.steamer_watts = number_if(request, "steamer_watts");
  if (kind->usual_covering || kind->finished) {
    auto surface = surface_of(item, *kind);
    if (!surface) return refuse(surface.error());
    situation.surface = std::move(*surface);
  }
  if (const Json* steam = member_if(item, "steam")) {
    situation.steam = method_choice::SteamPlan{
        steam->at("edges").get<int>(), steam->at("edges_with_pace").get<int>(), number_of(*steam, "minutes"),
        number_if(*steam, "kill_probability"), number_of(*steam, "length_without_pace_metres")};
    if (situation.steam->edges_with_pace > situation.steam->edges)
      return refuse({ErrorKind::bad_input, say("edges_with_pace is more than edges"),
                     "/steam/edges_with_pace", std::to_string(situation.steam->edges_with_pace),
                     std::to_string(situation.steam->edges), ""});
  }
  const std::vector<method_choice::Offer> offers = method_choice::offers(situation);
  const Json* wanted = member_if(item, "chosen");
  const method_choice::Chosen chosen =
      method_choice::choose(offers, wanted == nullptr ? "" : text_of(*wanted, "method"));
  Json out;
  const std::string title = text_if(item, "title").value_or(in_language(kind->title));
  out["id"] = id;
  out["title"] = title;
  out["item"] = kind_name;
  out["traits"] = situation.traits;
  out["method"] = chosen.offer == nullptr ? Json(nullptr) : Json(chosen.offer->method->key);
  out["methods"] = Json::array();
  for (std::size_t i = 0; i < offers.size(); ++i) out["methods"].push_back(to_json(offers[i], i + 1));
  out["override"] = override_of(item, offers, chosen);
  out["text"] = chosen.offer == nullptr
                    ? say("{}: no method is possible as things stand.", title)
                    : fmt::format("{}: {}.", title, in_language(chosen.offer->method->title));
  return out;
}

Result<Answer> solve(const Json& request) {
  if (const auto state = method_choice::data_state(); !state) return refuse(state.error());
  Answer answer;
  Json& items = answer.result["items"] = Json::array();
  const Json& asked = request.at("items");
  for (std::size_t i = 0; i < asked.size(); ++i) {
    auto one = answer_of(request, asked[i]);
    if (!one) {
      Error error = one.error();
      error.where = fmt::format("/items/{}{}", i, error.where);
      return refuse(error);
    }
    items.push_back(std::move(*one));
  }
  answer.result["recorded_only"] =
      say("Dusts and sprays are recorded, never advised here: label, licence and local law govern them.");
  for (const std::string_view key : method_choice::k_data_keys) answer.data_keys.emplace_back(key);
  answer.data_keys.insert(answer.data_keys.end(), {"coverings/1", "damage_limits/1"});
  answer.warnings.push_back(
      {"times_by_practice",
       say("methods other than steam use published or customary times; their kill is not "
           "computed, and a probe in the coldest place proves it")});
  return answer;
}

}  // namespace

const Question& method_question() {
  static const Question question{"method",
                                 "Every method for every item: allowed, to be checked first, to be agreed or "
                                 "barred, with reasons and cost.",
                                 request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
