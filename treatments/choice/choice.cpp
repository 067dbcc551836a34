#include "treatments/choice/choice.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "treatments/choice/choice_data.h"
#include "words/say.h"

namespace lastegg::method_choice {
namespace {

constexpr double k_seconds_per_minute = 60;

/// Whether every condition of a rule but those that change its standing holds.
bool holds(const Rule& rule, const Situation& situation) {
  for (const auto& [what, word] : rule.when) {
    const bool is_trait = situation.traits.contains(word);
    if (what == "trait" && !is_trait) return false;
    if ((what == "no_trait" || what == "also_no_trait") && is_trait) return false;
    if (what == "risk" && !situation.risks.contains(word)) return false;
    if (what == "prior" && !situation.prior.contains(word)) return false;
    if (what == "missing" && situation.equipment.contains(word)) return false;
  }
  return true;
}

/// The reason a rule gives here; none when consent was given.
std::optional<Reason> reason_of(const Rule& rule, const Situation& situation) {
  Reason reason{rule.code,    in_language(rule.text), rule.source, rule.locator,
                rule.quality, rule.standing,          rule.grounds};
  if (const auto risk = rule.when.find("risk"); risk != rule.when.end()) {
    const Risk& stated = situation.risks.at(risk->second);
    if (stated.settled && (!rule.needs_role || !stated.settled_by.empty())) {
      reason.standing = Standing::needs_check;
      reason.code += "_settled";
      reason.text = stated.settled_by.empty()
                        ? say("Settled; see that it still holds. {}", in_language(rule.text))
                        : say("Settled by {}; see that it still holds. {}", in_language(stated.settled_by),
                              in_language(rule.text));
    }
  }
  if (const auto consent = rule.when.find("consent"); consent != rule.when.end()) {
    const auto asked = situation.consents.find(consent->second);
    const Answer answer = asked == situation.consents.end() ? Answer::not_asked : asked->second;
    if (answer == Answer::given) return std::nullopt;
    if (answer == Answer::refused) {
      reason.standing = Standing::barred;
      reason.grounds = Grounds::practical;
      reason.code += "_refused";
      reason.text = say("Asked and refused. {}", in_language(rule.text));
    }
  }
  return reason;
}

void add_surface(const Situation& situation, Offer& offer) {
  if (!situation.surface || !(situation.surface->barred || situation.surface->unknown)) return;
  const Surface& surface = *situation.surface;
  offer.reasons.push_back({surface.barred ? "surface_barred" : "hidden_spot_first", surface.text,
                           surface.source, surface.locator, surface.quality,
                           surface.barred ? Standing::barred : Standing::needs_check, Grounds::damage});
}

void add_steam_plan(const Situation& situation, Offer& offer) {
  const std::string own = "estimate: computed by the plan, edge by edge";
  if (!situation.steam) {
    offer.reasons.push_back({"not_planned", say("The plan has not looked at its edges yet."), own, "the plan",
                             Quality::estimate, Standing::needs_check, Grounds::practical});
    return;
  }
  const SteamPlan& plan = *situation.steam;
  offer.hands_minutes = offer.clock_minutes = plan.minutes;
  offer.kill_probability = plan.edges_with_pace > 0 ? plan.kill_probability : std::nullopt;
  offer.whole = plan.edges > 0 && plan.edges_with_pace == plan.edges;
  if (plan.edges_with_pace == 0) {
    offer.unproven = true;
    offer.hands_minutes = offer.clock_minutes =
        plan.length_without_pace_metres * k_practice_seconds_per_metre / k_seconds_per_minute;
    offer.reasons.push_back(
        {"no_edge_has_a_pace",
         say("None of its edges has a pace that is known to kill and do no harm. By the "
             "practice of the trade, slowly, and counted as not proven; or another method."),
         "trade_steam_guide", "30 cm per 10 to 15 s", Quality::practice, Standing::needs_check,
         Grounds::practical});
  } else if (!offer.whole) {
    offer.reasons.push_back(
        {"edges_without_pace",
         say("{} of {} edges have a pace; the others need another method or an opened seam.",
             plan.edges_with_pace, plan.edges),
         own, "the plan", Quality::estimate, Standing::needs_check, Grounds::practical});
  }
}

int role_rank(Role role) {
  return static_cast<int>(role);
}

}  // namespace

std::string in_words(const std::string& method) {
  std::string words = method;
  std::replace(words.begin(), words.end(), '_', ' ');
  return in_language(words);
}

std::vector<Offer> offers(const Situation& situation) {
  std::vector<Offer> out;
  if (!tables()) return out;
  for (const Method& method : methods()) {
    Offer offer;
    offer.method = &method;
    offer.hands_minutes = method.hands_minutes.value;
    offer.clock_minutes = method.clock_minutes.value;
    offer.whole = method.role == Role::kill;
    for (const Rule& rule : tables()->rules) {
      if (std::find(rule.methods.begin(), rule.methods.end(), method.key) == rule.methods.end()) continue;
      if (!holds(rule, situation)) continue;
      offer.missing |= rule.when.contains("missing");
      if (auto reason = reason_of(rule, situation)) offer.reasons.push_back(std::move(*reason));
    }
    double watts = method.watts.value;
    if (method.key == "steam") {
      add_surface(situation, offer);
      add_steam_plan(situation, offer);
      watts = situation.steamer_watts.value_or(watts);
    }
    offer.energy_joules = watts * k_seconds_per_minute * offer.clock_minutes;
    std::stable_sort(offer.reasons.begin(), offer.reasons.end(),
                     [](const Reason& a, const Reason& b) { return a.standing > b.standing; });
    if (!offer.reasons.empty()) offer.standing = offer.reasons.front().standing;
    offer.overridable = offer.standing == Standing::barred &&
                        std::all_of(offer.reasons.begin(), offer.reasons.end(), [](const Reason& reason) {
                          return reason.standing != Standing::barred || reason.grounds == Grounds::damage;
                        });
    out.push_back(std::move(offer));
  }
  const auto key = [](const Offer& offer) {
    const bool first = offer.method->role == Role::first;
    // What needs a look is as good as what needs none: a look is taken at every visit.
    const Standing group = std::max(offer.standing, Standing::needs_check);
    return std::tuple(!first, group, offer.missing || offer.unproven, role_rank(offer.method->role),
                      !offer.whole, offer.standing, offer.hands_minutes, offer.clock_minutes);
  };
  std::stable_sort(out.begin(), out.end(), [&](const Offer& a, const Offer& b) { return key(a) < key(b); });
  return out;
}

Chosen choose(const std::vector<Offer>& offers, std::string_view wanted) {
  Chosen chosen;
  if (!wanted.empty()) {
    const auto found = std::find_if(offers.begin(), offers.end(),
                                    [&](const Offer& offer) { return offer.method->key == wanted; });
    if (found == offers.end()) {
      chosen.refused_code = "not_known";
    } else if (found->standing == Standing::barred && !found->overridable) {
      const bool hazard = std::any_of(found->reasons.begin(), found->reasons.end(), [](const Reason& reason) {
        return reason.standing == Standing::barred && reason.grounds == Grounds::hazard;
      });
      chosen.refused_code = hazard ? "hazard" : "not_possible";
    } else {
      chosen.offer = &*found;
      chosen.by_person = true;
      return chosen;
    }
  }
  // A hot room is a visit of its own and discarding is the last resort: neither is taken unasked.
  for (const bool missing : {false, true}) {
    for (const Role role : {Role::kill, Role::contain}) {
      for (const Offer& offer : offers) {
        if (offer.method->role != role || (offer.missing || offer.unproven) != missing) continue;
        if (offer.standing > Standing::needs_check || offer.method->key == "hot_room") continue;
        chosen.offer = &offer;
        return chosen;
      }
    }
  }
  for (const Offer& offer : offers)
    if (offer.method->role == Role::first && offer.standing <= Standing::needs_check) {
      chosen.offer = &offer;
      return chosen;
    }
  return chosen;
}

}  // namespace lastegg::method_choice
