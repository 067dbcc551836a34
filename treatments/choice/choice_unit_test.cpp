// What the rules say of single things: leather, outlets, spray cans, fire systems, consents, persons'
// choices.
#include <gtest/gtest.h>

#include <algorithm>

#include "treatments/choice/choice.h"

namespace lastegg::method_choice {
namespace {

const Offer& offer_of(const std::vector<Offer>& all, std::string_view method) {
  return *std::find_if(all.begin(), all.end(),
                       [&](const Offer& offer) { return offer.method->key == method; });
}

bool has_reason(const Offer& offer, std::string_view code) {
  return std::any_of(offer.reasons.begin(), offer.reasons.end(),
                     [&](const Reason& reason) { return reason.code == code; });
}

Situation of_kind(const char* kind) {
  Situation situation;
  situation.traits = *traits_of(kind);
  situation.equipment = {"vacuum", "steamer", "chamber", "dryer", "washer", "freezer", "cover", "leg_traps"};
  return situation;
}

TEST(Choice, DataAreRead) {
  ASSERT_TRUE(data_state());
  EXPECT_EQ(methods().size(), 10U);
  EXPECT_EQ(methods().front().key, "vacuum");
  EXPECT_EQ(traits_of("no_such_kind"), nullptr);
}

TEST(Choice, VacuumIsFirstAndNeverCountsAsKilling) {
  const auto all = offers(of_kind("sofa"));
  EXPECT_EQ(all.front().method->key, "vacuum");
  EXPECT_FALSE(all.front().whole);
  EXPECT_FALSE(all.front().kill_probability);
}

TEST(Choice, LeatherBarsSteamAndAPersonMayStillChooseIt) {
  Situation situation = of_kind("recliner");
  situation.surface =
      Surface{true, false, "Leather is not steamed.", "conservation_science", "page 95", Quality::handbook};
  situation.steam = SteamPlan{10, 10, 20, 0.97, 0};
  const auto all = offers(situation);
  const Offer& steam = offer_of(all, "steam");
  EXPECT_EQ(steam.standing, Standing::barred);
  EXPECT_EQ(steam.reasons.front().source, "conservation_science");
  EXPECT_TRUE(steam.overridable);
  EXPECT_EQ(choose(all, "").offer->method->key, "hot_chamber");
  EXPECT_TRUE(choose(all, "steam").by_person);
}

TEST(Choice, OutletsAreNeverSteamedAndNoChoiceLiftsIt) {
  const auto all = offers(of_kind("socket_plate"));
  const Offer& steam = offer_of(all, "steam");
  EXPECT_EQ(steam.standing, Standing::barred);
  EXPECT_TRUE(has_reason(steam, "outlet_never_steamed"));
  EXPECT_FALSE(steam.overridable);
  const Chosen chosen = choose(all, "steam");
  EXPECT_FALSE(chosen.by_person);
  EXPECT_EQ(chosen.refused_code, "hazard");
  EXPECT_EQ(choose(all, "spray").refused_code, "not_known");
}

TEST(Choice, CansAmmunitionMedicinesBarHeat) {
  for (const char* what : {"pressurised_cans", "ammunition", "medicines"}) {
    Situation situation = of_kind("dresser");
    situation.risks[what] = {};
    const auto all = offers(situation);
    for (const char* method : {"hot_room", "hot_chamber", "dryer", "steam"})
      EXPECT_EQ(offer_of(all, method).standing, Standing::barred) << what << " " << method;
  }
}

TEST(Choice, FireSystemsNeedANamedRole) {
  Situation situation = of_kind("sofa");
  situation.consents["hot_room"] = Answer::given;
  situation.equipment.insert("room_heaters");
  situation.risks["sprinkler"] = {};
  EXPECT_EQ(offer_of(offers(situation), "hot_room").standing, Standing::barred);
  situation.risks["sprinkler"] = {true, ""};
  EXPECT_EQ(offer_of(offers(situation), "hot_room").standing, Standing::barred) << "nobody is named";
  situation.risks["sprinkler"] = {true, "owner and fire contractor"};
  const auto all = offers(situation);
  EXPECT_EQ(offer_of(all, "hot_room").standing, Standing::needs_check);
  EXPECT_TRUE(has_reason(offer_of(all, "hot_room"), "sprinkler_settled"));
  EXPECT_NE(choose(all, "").offer->method->key, "hot_room") << "never unasked";
}

TEST(Choice, ConsentsOpenAndRefusalsBar) {
  Situation situation = of_kind("sofa");
  EXPECT_EQ(offer_of(offers(situation), "discard").standing, Standing::needs_consent);
  situation.consents["discard"] = Answer::given;
  EXPECT_EQ(offer_of(offers(situation), "discard").standing, Standing::allowed);
  situation.consents["discard"] = Answer::refused;
  const auto all = offers(situation);
  const Offer& refused = offer_of(all, "discard");
  EXPECT_EQ(refused.standing, Standing::barred);
  EXPECT_FALSE(refused.overridable);
}

TEST(Choice, WithoutAProvenPaceSteamIsPracticeAndSaysSo) {
  Situation situation = of_kind("baseboard");
  situation.steam = SteamPlan{2, 0, 0, std::nullopt, 3.0};
  const auto all = offers(situation);
  const Offer& steam = offer_of(all, "steam");
  EXPECT_TRUE(steam.unproven);
  EXPECT_FALSE(steam.kill_probability);
  EXPECT_NEAR(steam.hands_minutes, 2.5, 1e-9) << "3 m at 30 cm in 15 s";
  situation = of_kind("dresser");
  situation.equipment.erase("chamber");
  situation.steam = SteamPlan{2, 0, 0, std::nullopt, 3.0};
  EXPECT_EQ(choose(offers(situation), "").offer->method->key, "isolate")
      << "what is known goes before practice";
}

TEST(Choice, CurtainsGoIntoTheDryer) {
  Situation situation = of_kind("curtain");
  const auto all = offers(situation);
  EXPECT_EQ(offer_of(all, "dryer").standing, Standing::needs_check);
  EXPECT_TRUE(has_reason(offer_of(all, "dryer"), "care_label"));
  EXPECT_EQ(offer_of(all, "encase").standing, Standing::barred);
}

}  // namespace
}  // namespace lastegg::method_choice
