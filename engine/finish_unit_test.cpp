#include "engine/finish.h"

#include <gtest/gtest.h>

namespace lastegg {
namespace {

Finish finish_named(const char* covering, const std::optional<std::string>& named,
                    HiddenSpot spot = HiddenSpot::not_tried) {
  const auto known = find_covering(covering);
  EXPECT_TRUE(known) << covering;
  const auto finish = finish_of(*known, named, spot);
  EXPECT_TRUE(finish) << covering;
  return *finish;
}

TEST(Finish, UnknownAsksForAHiddenSpotAndTheSpotSettlesIt) {
  const Finish before = finish_named("unknown", std::nullopt);
  EXPECT_TRUE(before.unknown());
  EXPECT_FALSE(before.barred());
  EXPECT_FALSE(finish_named("unknown", std::nullopt, HiddenSpot::unharmed).unknown());
  const Finish marked = finish_named("unknown", std::nullopt, HiddenSpot::marked);
  EXPECT_TRUE(marked.barred());
}

TEST(Finish, AHeldHeadReplacesAShorterEstimateAndNothingElse) {
  const auto polyester = find_covering("polyester");
  ASSERT_TRUE(polyester);
  const auto untried = finish_of(*polyester, std::nullopt, HiddenSpot::not_tried);
  const auto held = finish_of(*polyester, std::nullopt, HiddenSpot::not_tried, 40.0);
  const auto brief = finish_of(*polyester, std::nullopt, HiddenSpot::not_tried, 5.0);
  const auto marked = finish_of(*polyester, std::nullopt, HiddenSpot::marked, 40.0);
  ASSERT_TRUE(untried && held && brief && marked);
  EXPECT_GT(held->seconds_allowed, untried->seconds_allowed);
  EXPECT_LT(held->seconds_allowed, 40) << "the surface was not above its limit from the first moment";
  EXPECT_EQ(held->surface_celsius, untried->surface_celsius);
  EXPECT_EQ(brief->seconds_allowed, untried->seconds_allowed);
  EXPECT_TRUE(marked->barred());
  const auto leather = find_covering("leather");
  ASSERT_TRUE(leather);
  EXPECT_TRUE(finish_of(*leather, std::nullopt, HiddenSpot::not_tried, 40.0)->barred());
}

TEST(Finish, AHiddenSpotNeverLiftsABar) {
  EXPECT_TRUE(finish_named("leather", std::nullopt, HiddenSpot::unharmed).barred());
  EXPECT_TRUE(finish_named("polyester", "shellac", HiddenSpot::unharmed).barred());
}

TEST(Finish, AMarkedSpotBarsWhatTheDataAllow) {
  EXPECT_FALSE(finish_named("olefin", std::nullopt).barred());
  EXPECT_TRUE(finish_named("olefin", std::nullopt, HiddenSpot::marked).barred());
}

TEST(Finish, EveryCoveringNamesItsSources) {
  for (const Covering& covering : all_coverings()) {
    const Finish finish = finish_named(covering.word.c_str(), std::nullopt);
    EXPECT_EQ(finish.limits.size(), covering.damage_limits.size()) << covering.word;
    const Json told = to_json(finish);  // outlives the loop over a part of it
    for (const Json& limit : told.at("limits")) {
      EXPECT_FALSE(limit.at("source").get<std::string>().empty()) << covering.word;
      EXPECT_FALSE(limit.at("locator").get<std::string>().empty()) << covering.word;
    }
  }
}

TEST(Finish, PolyesterBearsTwentySecondsAboveSeventy) {
  const Finish finish = finish_named("polyester", std::nullopt);
  EXPECT_EQ(finish.surface_celsius, 70);
  EXPECT_EQ(finish.seconds_allowed, 20);
}

TEST(Finish, WaxOfWoodIsBarredBySomethingWithASource) {
  const Finish finish = finish_named("unknown", "wax");
  EXPECT_TRUE(finish.barred());
  ASSERT_EQ(finish.limits.size(), 1u);
  EXPECT_EQ(finish.limits.front().key, "beeswax");
  EXPECT_NE(to_json(finish).at("text").get<std::string>().find("not steamed"), std::string::npos);
}

TEST(Finish, AnUnknownNameIsRefused) {
  const auto covering = find_covering("cotton");
  ASSERT_TRUE(covering);
  EXPECT_FALSE(finish_of(*covering, "moon_dust", HiddenSpot::not_tried));
}

}  // namespace
}  // namespace lastegg
