// Every kind of edge through the question of the pace: what it says of its shape, and that a bound is never
// taken for proof of too cold.
#include "engine/edge_family.h"

#include <gtest/gtest.h>

#include "engine/ask.h"

namespace lastegg {
namespace {

Json pace_of(const std::string& kind, const std::string& covering, const std::string& fill) {
  const Json request{{"edge", {{"kind", kind}, {"covering", covering}, {"fill", fill}}},
                     {"head",
                      {{"length_metres", 0.15},
                       {"dew_celsius", 97},
                       {"film_watts_per_m2_kelvin", 900},
                       {"flux_cap_watts_per_m2", 65000},
                       {"forced_gas_metres_per_second", 0.005},
                       {"vapour_efficiency", 0.6}}},
                     {"samples", 64}};
  const AskOutcome outcome = ask("pace", request.dump());
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text);
}

TEST(EdgeFamily, EveryKindSaysItsFamilyAndABoundIsNeverShort) {
  for (const EdgeKind& kind : edge_kinds()) {
    const Json pace = pace_of(kind.key, "cotton", "batting_foam");
    ASSERT_TRUE(pace.contains("shape")) << kind.key;
    const Json& family = pace["shape"];
    EXPECT_EQ(family["family"], std::string(word(kind.family))) << kind.key;
    EXPECT_EQ(family["not_covered"].is_null(), kind.not_covered.empty()) << kind.key;
    if (family["bound"] == true) {
      EXPECT_NE(pace["verdict_at_recommended"], "short") << kind.key;
      EXPECT_NE(family["text"].get<std::string>().find("at least as warm as computed"), std::string::npos);
    }
    if (kind.family != ShapeFamily::none) {
      EXPECT_NE(pace["reason"]["code"], "shape_not_modelled") << kind.key;
    }
  }
}

TEST(EdgeFamily, ACrackThatTheBoundDoesNotReachSaysSo) {
  const Json pace = pace_of("leg_joint", "olefin", "wood");
  EXPECT_TRUE(pace["window_metres_per_second"].is_null());
  EXPECT_EQ(pace["reason"]["code"], "bound_not_lethal");
  EXPECT_EQ(pace["verdict_at_recommended"], "not_proven");
  EXPECT_NE(pace["reason"]["text"].get<std::string>().find("towel off"), std::string::npos);
  EXPECT_NE(pace["one_inch_per_second"]["text"].get<std::string>().find("at least"), std::string::npos);
}

TEST(EdgeFamily, ThePauseBetweenRepeatPassesIsAskedFor) {
  Json request{{"edge", {{"kind", "welt"}, {"covering", "velvet"}, {"fill", "batting_foam"}}},
               {"prior", Json::object()},
               {"samples", 256},  // a first look of fewer leaves out what was tried
               {"gap_seconds", 45}};
  const AskOutcome told = ask("pace", request.dump());
  ASSERT_TRUE(told.ok) << told.text;
  const Json tried = Json::parse(told.text).at("tried");
  ASSERT_FALSE(tried.empty());
  EXPECT_NE(tried.back().at("text").get<std::string>().find("45 s"), std::string::npos) << tried.dump();
  request.erase("gap_seconds");
  EXPECT_NE(ask("pace", request.dump()).text.find("a pause of 20 s"), std::string::npos);
  for (const double wrong : {0.0, -5.0, 4000.0}) {
    request["gap_seconds"] = wrong;
    const AskOutcome refused = ask("pace", request.dump());
    EXPECT_FALSE(refused.ok);
    EXPECT_EQ(Json::parse(refused.text).at("error").at("where"), "/gap_seconds") << refused.text;
  }
}

TEST(EdgeFamily, GivenLayersHaveNoFamily) {
  const Json request{{"edge",
                      {{"kind", "seam"},
                       {"covering", "cotton"},
                       {"target_depth_metres", 0.001},
                       {"stack", Json::array({{{"material", "softwood"}, {"thickness_metres", 0.01}}})}}},
                     {"samples", 64}};
  const AskOutcome outcome = ask("pace", request.dump());
  ASSERT_TRUE(outcome.ok) << outcome.text;
  EXPECT_FALSE(Json::parse(outcome.text).contains("shape"));
}

}  // namespace
}  // namespace lastegg
