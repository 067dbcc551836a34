// Laws of the choice: a further risk never opens a method, consent never closes one, the gravest reason
// decides, and what could hurt someone is never taken by a person's choice.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "treatments/choice/choice.h"

namespace lastegg::method_choice {
namespace {

const std::vector<std::string> k_risks = {
    "infant",  "oxygen",       "pets",  "medicines",  "sprinkler",        "heat_detector", "fuel_heater",
    "needles", "loose_wiring", "mould", "ammunition", "asbestos_or_lead", "smoke_detector"};
const std::vector<std::string> k_traits = {"bed",         "encasable", "chamber", "legs",
                                           "motor",       "contents",  "paper",   "fits_freezer",
                                           "launderable", "fixed",     "outlet"};
const std::vector<std::string> k_things = {"vacuum", "steamer", "chamber", "dryer",
                                           "washer", "freezer", "cover",   "leg_traps"};

Situation any_situation() {
  Situation out;
  for (const auto& trait : k_traits)
    if (*rc::gen::inRange(0, 3) == 0) out.traits.insert(trait);
  for (const auto& risk : k_risks)
    if (*rc::gen::inRange(0, 4) == 0)
      out.risks[risk] = {*rc::gen::arbitrary<bool>(), *rc::gen::element(std::string(), std::string("owner"))};
  for (const auto& thing : k_things)
    if (*rc::gen::inRange(0, 3) > 0) out.equipment.insert(thing);
  if (*rc::gen::arbitrary<bool>()) out.steam = SteamPlan{9, *rc::gen::inRange(0, 10), 20, 0.95, 1};
  if (*rc::gen::arbitrary<bool>())
    out.surface = Surface{*rc::gen::arbitrary<bool>(), *rc::gen::arbitrary<bool>(), "a", "memory", "b",
                          Quality::from_memory};
  return out;
}

Standing standing_of(const std::vector<Offer>& all, const Method* method) {
  return std::find_if(all.begin(), all.end(), [&](const Offer& offer) { return offer.method == method; })
      ->standing;
}

RC_GTEST_PROP(ChoiceLaw, AFurtherRiskNeverOpensAMethod, ()) {
  Situation situation = any_situation();
  const auto before = offers(situation);
  situation.risks[*rc::gen::elementOf(k_risks)] = {};
  const auto after = offers(situation);
  for (const Offer& offer : before) RC_ASSERT(standing_of(after, offer.method) >= offer.standing);
}

RC_GTEST_PROP(ChoiceLaw, ConsentNeverCloses, ()) {
  Situation situation = any_situation();
  const auto before = offers(situation);
  for (const char* to : {"steam", "hot_room", "discard"}) situation.consents[to] = Answer::given;
  const auto after = offers(situation);
  for (const Offer& offer : before) RC_ASSERT(standing_of(after, offer.method) <= offer.standing);
}

RC_GTEST_PROP(ChoiceLaw, TheGravestReasonDecidesAndEachIsSourced, ()) {
  const auto all = offers(any_situation());
  RC_ASSERT(all.size() == methods().size());
  for (const Offer& offer : all) {
    Standing gravest = Standing::allowed;
    for (const Reason& reason : offer.reasons) {
      gravest = std::max(gravest, reason.standing);
      RC_ASSERT(!reason.text.empty() && !reason.source.empty());
    }
    RC_ASSERT(offer.standing == gravest);
  }
}

RC_GTEST_PROP(ChoiceLaw, WhatCouldHurtSomeoneIsNeverTaken, ()) {
  const auto all = offers(any_situation());
  for (const Offer& offer : all) {
    const bool hazard = std::any_of(offer.reasons.begin(), offer.reasons.end(), [](const Reason& reason) {
      return reason.standing == Standing::barred && reason.grounds == Grounds::hazard;
    });
    const Chosen chosen = choose(all, offer.method->key);
    if (hazard) RC_ASSERT(chosen.offer != &offer && !chosen.by_person);
    if (chosen.offer != nullptr && !chosen.by_person)
      RC_ASSERT(chosen.offer->standing <= Standing::needs_check);
  }
}

}  // namespace
}  // namespace lastegg::method_choice
