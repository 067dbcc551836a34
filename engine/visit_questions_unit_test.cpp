// The questions around a visit: method, visit, preparation, visit_requests.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "engine/ask.h"
#include "engine/document.h"
#include "engine/json.h"
#include "job/furniture/catalogue.h"
#include "treatments/choice/choice.h"

namespace lastegg {
namespace {

Json asked(const char* question, const Json& request) {
  const AskOutcome outcome = ask(question, dumped(request));
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text, nullptr, false);
}

Json offer_of(const Json& item, const char* method) {
  for (const Json& offer : item.at("methods"))
    if (offer.at("method") == method) return offer;
  return {};
}

TEST(MethodQuestion, KnowsEveryKindOfTheCatalogue) {
  for (const furniture::Kind& kind : furniture::catalogue())
    EXPECT_NE(method_choice::traits_of(kind.name), nullptr) << kind.name;
}

TEST(MethodQuestion, LeatherIsBarredWithItsSourceAndAnOverrideSaysWhatItCosts) {
  Json item{{"item", "recliner"},
            {"covering", "leather"},
            {"steam", {{"edges", 9}, {"edges_with_pace", 9}, {"minutes", 20}, {"kill_probability", 0.96}}}};
  Json answer = asked("method", {{"items", {item}}})["items"][0];
  const Json steam = offer_of(answer, "steam");
  EXPECT_EQ(steam["standing"], "barred");
  EXPECT_EQ(steam["reasons"][0]["source"], "conservation_science");
  EXPECT_TRUE(answer["override"].is_null());
  item["chosen"] = {{"method", "steam"}, {"reason", "it goes to the tip anyway"}};
  answer = asked("method", {{"items", {item}}})["items"][0];
  EXPECT_EQ(answer["method"], "steam");
  EXPECT_TRUE(answer["override"]["taken"]);
  EXPECT_NE(answer["override"]["text"].get<std::string>().find("expect damage"), std::string::npos);
}

TEST(MethodQuestion, AHazardIsNotOverridden) {
  const Json answer = asked(
      "method", {{"items", {{{"item", "socket_plate"}, {"chosen", {{"method", "steam"}}}}}}})["items"][0];
  EXPECT_FALSE(answer["override"]["taken"]);
  EXPECT_EQ(answer["override"]["code"], "hazard");
  EXPECT_NE(answer["method"], "steam");
}

TEST(MethodQuestion, RisksOfAnotherRoomDoNotCount) {
  const Json items = Json::array(
      {{{"id", "a"}, {"item", "dresser"}, {"room", "x"}}, {{"id", "b"}, {"item", "dresser"}, {"room", "y"}}});
  const Json answer =
      asked("method", {{"items", items}, {"risks", {{{"what", "ammunition"}, {"room", "y"}}}}});
  EXPECT_NE(offer_of(answer["items"][0], "hot_chamber")["standing"], "barred");
  EXPECT_EQ(offer_of(answer["items"][1], "hot_chamber")["standing"], "barred");
}

Json bed(int crew) {
  const Json mattress{{"title", "mattress"},
                      {"room", "bedroom"},
                      {"method", "steam"},
                      {"bed", true},
                      {"turns", true},
                      {"legs", true},
                      {"steam", {{"minutes", 20}, {"edges", 8}, {"hidden_minutes", 10}, {"hidden_edges", 8}}},
                      {"dry_minutes", {20, 60}}};
  return {
      {"crew", crew}, {"items", {mattress}}, {"circuits", {{{"title", "bedroom"}, {"breaker_amperes", 20}}}}};
}

TEST(VisitQuestion, SleepTonight) {
  EXPECT_EQ(asked("visit", bed(2))["sleep"]["verdict"], "yes");
  EXPECT_EQ(asked("visit", bed(1))["sleep"]["verdict"], "no") << "its underside is left";
  Json request = bed(2);
  request["items"][0].erase("dry_minutes");
  EXPECT_EQ(asked("visit", request)["sleep"]["verdict"], "not_proven");
  request = bed(2);
  request["items"][0]["steam"]["edges_without_pace"] = 3;
  EXPECT_EQ(asked("visit", request)["sleep"]["verdict"], "no");
  request["items"][0]["encased"] = true;
  EXPECT_EQ(asked("visit", request)["sleep"]["verdict"], "yes");
  request["minutes"] = 30;
  EXPECT_EQ(asked("visit", request)["sleep"]["verdict"], "no");
  request = bed(2);
  request["waits_for_bed"] = false;
  EXPECT_EQ(asked("visit", request)["sleep"]["verdict"], "not_proven")
      << "the people of the home put it back";
  EXPECT_LT(asked("visit", request)["minutes"], asked("visit", bed(2))["minutes"]);
  request = bed(2);
  request["items"][0]["legs"] = false;
  EXPECT_EQ(asked("visit", request)["sleep"]["verdict"], "no");
}

TEST(PlanQuestion, KnownPacesAreTakenAsTheyAre) {
  Json request{{"prior", {{"towel", "none"}}},
               {"samples", 64},
               {"items", {{{"item", "night_table"}, {"finish", "paint"}}}}};
  const Json computed = asked("plan", request);
  const Json furniture = asked("furniture", request["items"][0]);
  request["known_paces"] = Json::array();
  for (const Json& edge : computed["edges"])
    for (const Json& one : furniture["edges"])
      if (one["id"] == edge["id"])
        request["known_paces"].push_back(
            {{"treat", one["treat"]}, {"pace", computed["paces"][edge["pace_index"].get<std::size_t>()]}});
  const Json told = asked("plan", request);
  EXPECT_EQ(told["edges"], computed["edges"]);
  const auto sorted = [](const Json& value) { return nlohmann::json::parse(value.dump()); };
  EXPECT_EQ(sorted(told["paces"]), sorted(computed["paces"]));
  for (Json& one : request["known_paces"]) one["pace"]["passes"] = 3;
  EXPECT_EQ(asked("plan", request)["paces"][0]["passes"], 3) << "nothing was computed anew";
}

TEST(VisitQuestion, LoadIsRefusedOrNotProven) {
  Json request = bed(2);
  EXPECT_EQ(asked("visit", request)["load"]["verdict"], "within");
  request["circuits"][0]["breaker_amperes"] = 15;
  const Json answer = asked("visit", request);
  EXPECT_EQ(answer["load"]["verdict"], "refused");
  EXPECT_NEAR(answer["load"]["refused"][0]["allowed_amperes"].get<double>(), 12, 1e-9);
  EXPECT_EQ(answer["sleep"]["verdict"], "no");
  request.erase("circuits");
  EXPECT_EQ(asked("visit", request)["load"]["verdict"], "not_proven");
}

TEST(VisitQuestion, QuoteIsMinutesTimesRates) {
  Json request = bed(2);
  request["rates"] = {{"currency", "USD"}, {"per_visit", 50}, {"per_hour", 60}};
  const Json answer = asked("visit", request);
  EXPECT_NEAR(answer["quote"]["likely"].get<double>(), 50 + 60 * 2 * answer["minutes"].get<double>() / 60,
              1e-9);
  EXPECT_LE(answer["quote"]["low"], answer["quote"]["likely"]);
  EXPECT_GE(answer["quote"]["high"], answer["quote"]["likely"]);
}

TEST(VisitQuestion, MinutesLeftTakeWhatKillsMostPerMinute) {
  Json request = bed(2);
  request["minutes_left"] = 5;
  request["edges"] = Json::array({{{"item", "a"},
                                   {"title", "slow"},
                                   {"seconds", 250},
                                   {"bug_share", 0.6},
                                   {"killed_share_per_minute", 0.1}},
                                  {{"item", "a"},
                                   {"title", "quick"},
                                   {"seconds", 100},
                                   {"bug_share", 0.4},
                                   {"killed_share_per_minute", 0.2}}});
  const Json left = asked("visit", request)["in_minutes_left"];
  EXPECT_EQ(left["edges"], Json::array({1}));
  EXPECT_NEAR(left["bug_share"].get<double>(), 0.4, 1e-12);
}

TEST(VisitQuestion, TheBoilerIsHeardOnlyForWhatIsSteamed) {
  Json request = bed(2);
  request["steamer"] = {{"power_watts", 1500}, {"tank", "pressurised"}, {"water_kilograms", 0.6}};
  const Json two = asked("visit", request);
  request["crew"] = 1;
  const Json one = asked("visit", request);
  EXPECT_EQ(two["water"]["steam_minutes"], 30);
  EXPECT_EQ(one["water"]["steam_minutes"], 20);
  EXPECT_GT(two["minutes"], asked("visit", bed(2))["minutes"]) << "it waits for refills";
}

TEST(VisitRequests, EvidenceBecomesFindingsAndUnknownEdgesCountForTheItem) {
  const Json state{{"items", {{{"id", "m"}, {"kind", "mattress"}, {"title", "mattress"}}}},
                   {"evidence",
                    {{{"look", "found"}, {"item", "m"}, {"edge", "mattress.top_head_tape"}, {"eggs", 4}},
                     {{"look", "found"}, {"item", "m"}, {"edge", "no_such_edge"}, {"adults", 1}},
                     {{"look", "none_seen"}, {"item", "m"}}}}};
  const Json seen =
      asked("visit_requests", {{"state", state}, {"plan_items", {{{"item", "mattress"}}}}})["seen"];
  ASSERT_EQ(seen.size(), 2U);
  EXPECT_EQ(seen[0], (Json{{"item_index", 0}, {"what", "signs"}, {"id", "mattress.top_head_tape"}}));
  EXPECT_EQ(seen[1], (Json{{"item_index", 0}, {"what", "live"}}));
}

TEST(VisitRequests, WithoutItemsThereIsNothingToAsk) {
  const Json answer = asked("visit_requests", {{"state", Json::object()}});
  EXPECT_TRUE(answer["method"].is_null());
  EXPECT_TRUE(answer["visit"].is_null());
}

}  // namespace
}  // namespace lastegg
