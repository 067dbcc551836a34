#include "engine/finish.h"

#include <fmt/format.h>

#include <algorithm>

#include <string_view>
#include <utility>

#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

// Finishes of wood as furniture names them, and the damage limit that stands for each; bare, oiled and
// unknown wood have none.
constexpr std::pair<std::string_view, std::string_view> k_wood_finishes[] = {
    {"wax", "beeswax"},
    {"shellac", "shellac"},
    {"lacquer", "nitrocellulose_lacquer"},
    {"varnish", "catalysed_varnish"},
    {"paint", "alkyd_paint"}};

/// Of the time that a head is held on a spot this much may pass before the surface is above its limit.
/// Source: judgement; a weak head may take longer, and the seconds that the surface stays above the limit
/// after the head has gone, which are not counted, make up for it.
constexpr double k_warming_seconds = 2;

// A short dwell sets the surface's limit; of several the lowest.
void tighten(Finish& finish, const DamageLimit& limit) {
  if (limit.action != HarmAction::short_dwell || !limit.limit_celsius) return;
  const double celsius = limit.limit_celsius->value;
  if (finish.surface_celsius && *finish.surface_celsius <= celsius) return;
  finish.surface_celsius = celsius;
  finish.seconds_allowed = limit.seconds_allowed ? limit.seconds_allowed->value : 0;
}

std::string_view hidden_spot_word(HiddenSpot spot) {
  switch (spot) {
    case HiddenSpot::unharmed:
      return "unharmed";
    case HiddenSpot::marked:
      return "marked";
    case HiddenSpot::not_tried:
      break;
  }
  return "not_tried";
}

std::string words_of(const Finish& finish) {
  if (finish.hidden_spot == HiddenSpot::marked)
    return say("{}: the hidden spot was marked, so it is not steamed; another method", finish.title);
  if (is_barred(finish.action))
    return say("{} is not steamed: {}; another method", finish.title, finish.effect);
  if (finish.hidden_spot == HiddenSpot::unharmed)
    return finish.held_seconds
               ? say("{}: a hidden spot bore the head held on it for {:g} s without a mark; keep to "
                     "the towel it was tried with",
                     finish.title, *finish.held_seconds)
               : say("{}: a hidden spot stood the steam; keep to the pace and the towel it was tried with",
                     finish.title);
  if (finish.action == HarmAction::short_dwell && finish.surface_celsius)
    return say("{}: bears {:g} s above {:g} C; {}", finish.title, finish.seconds_allowed,
               *finish.surface_celsius, finish.effect);
  if (finish.action == HarmAction::short_dwell || finish.action == HarmAction::allow)
    return fmt::format("{}: {}", finish.title, finish.effect);
  return say(
      "{}: {}. Steam a hidden spot at this pace first, let it dry, and look for marks, shine, shrinking, "
      "bleeding dye",
      finish.title, finish.effect);
}

// What is known of a finish before a hidden spot is tried.
Result<Finish> untried_finish(const Covering& covering, const std::optional<std::string>& named) {
  Finish finish;
  if (named == "bare" || named == "oil" || named == "unknown") {
    finish.title = *named == "unknown" ? say("A finish that nobody knows")
                   : *named == "bare"  ? say("Wood, bare")
                                       : say("Wood, oil");
    finish.effect = say("no limit of it is known");
    return finish;
  }
  if (named) {
    std::string key = *named;
    for (const auto& [wood_finish, limit] : k_wood_finishes) {
      if (wood_finish == key) key = limit;
    }
    const auto limit = find_damage_limit(key);
    if (!limit) return refuse(limit.error());
    finish.title = in_language(limit->title);
    finish.effect = in_language(limit->effect);
    finish.action = limit->action;
    tighten(finish, *limit);
    finish.limits.push_back(*limit);
    return finish;
  }
  finish.title = in_language(covering.title);
  finish.effect = in_language(covering.reason);
  finish.action = covering.action;
  for (const std::string& key : covering.damage_limits) {
    const auto limit = find_damage_limit(key);
    if (!limit) return refuse(limit.error());
    tighten(finish, *limit);
    finish.limits.push_back(*limit);
  }
  return finish;
}

}  // namespace

bool Finish::unknown() const {
  return hidden_spot == HiddenSpot::not_tried && action != HarmAction::allow &&
         action != HarmAction::short_dwell;
}

Result<Finish> finish_of(const Covering& covering, const std::optional<std::string>& named,
                         HiddenSpot hidden_spot, std::optional<double> held_seconds) {
  auto finish = untried_finish(covering, named);
  if (!finish) return finish;
  finish->hidden_spot = hidden_spot;
  if (!held_seconds || hidden_spot == HiddenSpot::marked) return finish;
  finish->hidden_spot = HiddenSpot::unharmed;
  finish->held_seconds = held_seconds;
  finish->seconds_allowed = std::max(finish->seconds_allowed, *held_seconds - k_warming_seconds);
  return finish;
}

Shape hidden_spot_shape() {
  return choice({{"not_tried", "no hidden spot was tried"},
                 {"unharmed", "tried at the planned pace and dried without a mark"},
                 {"marked", "left a mark"}},
                "what a trial on a hidden spot of this covering or finish showed");
}

Shape hidden_spot_seconds() {
  return number(
             Unit::second,
             "for which the steaming head was held still on a hidden spot, which then dried without a mark")
      .at_least(1)
      .at_most(120);
}

HiddenSpot read_hidden_spot(const std::string& word) {
  for (const HiddenSpot spot : {HiddenSpot::unharmed, HiddenSpot::marked}) {
    if (hidden_spot_word(spot) == word) return spot;
  }
  return HiddenSpot::not_tried;
}

Shape finish_shape() {
  const Shape limit = object(
      {field("key", text("key of the damage limits")), field("title", text("what is harmed")),
       field("limit_celsius", number(Unit::celsius, "from which temperature").or_null()),
       field("when", text("under which condition; may be empty")), field("effect", text("how")),
       field("source", text("key of the bibliography")), field("locator", text("where in it")),
       field("quality", text("how good the number is: measured, handbook, practice, estimate, from memory"))},
      "one limit");
  return object({field("title", text("covering or finish")),
                 field("action", choice({{"allow", "steam does it no harm below 100 C"},
                                         {"short_dwell", "bears so many seconds above its limit"},
                                         {"avoid", "barred"},
                                         {"stop", "barred: ruined for certain or at once"},
                                         {"hidden_test", "unknown until a hidden spot was tried"},
                                         {"ask", "depends on a rating that the maker or the owner knows"}},
                                        "what follows for steaming")),
                 field("hidden_spot", hidden_spot_shape()),
                 field("surface_celsius", number(Unit::celsius, "what its surface bears").or_null()),
                 field("seconds_allowed", number(Unit::second, "above that")),
                 field("limits", list(limit, "what this rests on, the decisive one first")),
                 field("text", text("in words"))},
                "what the surface bears, and where that is written");
}

Json to_json(const Finish& finish) {
  Json limits = Json::array();
  for (const DamageLimit& limit : finish.limits) {
    Json celsius = nullptr;
    if (limit.limit_celsius) celsius = limit.limit_celsius->value;
    limits.push_back({{"key", limit.key},
                      {"title", in_language(limit.title)},
                      {"limit_celsius", celsius},
                      {"when", in_language(limit.when)},
                      {"effect", in_language(limit.effect)},
                      {"source", limit.source},
                      {"locator", limit.locator},
                      {"quality", quality_name(limit.quality)}});
  }
  Json surface = nullptr;
  if (finish.surface_celsius) surface = *finish.surface_celsius;
  return {{"title", finish.title},
          {"action", action_word(finish.action)},
          {"hidden_spot", hidden_spot_word(finish.hidden_spot)},
          {"surface_celsius", surface},
          {"seconds_allowed", finish.seconds_allowed},
          {"limits", limits},
          {"text", words_of(finish)}};
}

}  // namespace lastegg
