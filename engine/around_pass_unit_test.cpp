// What stands around a pass in answers: the water-drop check, drying and touch, readings of the surface.
#include <gtest/gtest.h>

#include "engine/ask.h"
#include "engine/question.h"
#include "engine/water_drop.h"

namespace lastegg {
namespace {

Json answer_of(const char* question, const Json& request) {
  const Result<const Question*> named = question_named(question);
  EXPECT_TRUE(named);
  const AskOutcome outcome = ask(**named, request.dump());
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text);
}

Json pace_request() {
  return Json::parse(R"({"head": {"length_metres": 0.08, "dew_celsius": 96, "film_watts_per_m2_kelvin": 900,
    "flux_cap_watts_per_m2": 65000, "forced_gas_metres_per_second": 0.006, "vapour_efficiency": 0.8}, "samples": 128,
    "edge": {"kind": "seam", "covering": "polyester", "wetting_limit_grams_per_m2": 150}})");
}

TEST(WaterDrop, OnlyTightensTheStack) {
  const std::vector<steam::UncertainLayer> stack{{{0.001, 480e3, 0.055, true, 0.68, 2.0, 2.0}},
                                                 {{0.010, 19.5e3, 0.04, true, 0.985, 1.05, 0.074}}};
  double depth = 0.003;
  WaterDrop drop;
  drop.face = DropFace::soaks;
  drop.back = ClothBack::open;
  EXPECT_EQ(stack_behind(drop, stack, depth).size(), 2u);
  EXPECT_TRUE(stack_behind(drop, stack, depth).front().layer.permeable);
  drop.face = DropFace::beads;
  EXPECT_FALSE(stack_behind(drop, stack, depth).front().layer.permeable);
  EXPECT_EQ(depth, 0.003);
  drop.face = DropFace::soaks;
  drop.back = ClothBack::coated;
  const auto coated = stack_behind(drop, stack, depth);
  ASSERT_EQ(coated.size(), 3u);
  EXPECT_TRUE(coated[0].layer.permeable);
  EXPECT_FALSE(coated[1].layer.permeable);
  EXPECT_NEAR(depth, 0.0031, 1e-12);
}

TEST(WaterDrop, ASlowDropBeads) {
  EXPECT_TRUE(
      read_water_drop(Json::parse(R"({"water_drop": {"face": "soaks", "back": "not_seen", "seconds": 90}})"))
          .shuts_vapour_out());
  EXPECT_FALSE(
      read_water_drop(Json::parse(R"({"water_drop": {"face": "soaks", "back": "not_seen", "seconds": 9}})"))
          .shuts_vapour_out());
}

// Toward caution only: a check never makes the fastest pace faster nor the slowest slower.
TEST(WaterDrop, MovesAPaceOnlyTowardsCaution) {
  const Json open = answer_of("pace", pace_request());
  ASSERT_FALSE(open.at("recommended_metres_per_second").is_null()) << open.at("reason");
  for (const char* check : {R"({"face": "beads"})", R"({"face": "soaks", "back": "coated"})"}) {
    Json request = pace_request();
    request["edge"]["water_drop"] = Json::parse(check);
    const Json tight = answer_of("pace", request);
    EXPECT_TRUE(tight.at("water_drop").at("shuts_vapour_out").get<bool>());
    const Json& window = tight.at("window_metres_per_second");
    if (window.is_null()) continue;
    EXPECT_LE(window[1].get<double>(), open.at("window_metres_per_second")[1].get<double>() * 1.001) << check;
    EXPECT_GE(window[0].get<double>(), open.at("window_metres_per_second")[0].get<double>() * 0.999) << check;
  }
  Json request = pace_request();
  request["edge"]["water_drop"] = Json::parse(R"({"face": "soaks"})");
  const Json soaks = answer_of("pace", request);
  EXPECT_EQ(soaks.at("window_metres_per_second"), open.at("window_metres_per_second"));
  EXPECT_NE(soaks.at("water_drop").at("text").get<std::string>().find("proves nothing"), std::string::npos);
}

TEST(AfterPass, SaysWhenItIsDryAndWhenAHandMayFeelIt) {
  Json request = pace_request();
  EXPECT_TRUE(answer_of("pace", request).at("dry_minutes").is_null()) << "a first look need not wait for it";
  request["samples"] = 256;
  const Json answer = answer_of("pace", request);
  const Json& dry = answer.at("dry_minutes");
  ASSERT_EQ(dry.size(), 2u);
  EXPECT_GT(dry[0].get<double>(), 1);
  EXPECT_GT(dry[1].get<double>(), dry[0].get<double>());
  const Json& after = answer.at("after");
  EXPECT_LE(after.at("dry_minutes_still").get<double>(), dry[1].get<double>() + 1e-9);
  EXPECT_LT(after.at("dry_minutes_fan").get<double>(), after.at("dry_minutes_still").get<double>());
  // The hottest of the likely cases waits longer than the middle case takes to fall below 48 C at its
  // surface.
  double middle = 1e9;
  for (const Json& row : after.at("surface_after_celsius")) {
    if (row.at("celsius").get<double>() < 48)
      middle = std::min(middle, row.at("seconds_after").get<double>());
  }
  EXPECT_GE(after.at("bare_hand_seconds").get<double>() + 5, middle);
}

TEST(AfterPass, NothingIsSaidWithoutAPace) {
  Json request = pace_request();
  request["edge"]["covering"] = "leather";
  const Json answer = answer_of("pace", request);
  EXPECT_TRUE(answer.at("after").is_null());
  EXPECT_EQ(answer.at("harm_at_recommended"), "barred");
  EXPECT_FALSE(answer.at("finish").at("limits").empty());
}

TEST(HiddenSpot, ANewCoveringIsUnknownUntilItIsTried) {
  Json request = pace_request();
  request["edge"]["covering"] = "cotton";
  EXPECT_EQ(answer_of("pace", request).at("finish").at("action"), "hidden_test");
  request["edge"]["hidden_spot"] = "marked";
  const Json marked = answer_of("pace", request);
  EXPECT_EQ(marked.at("harm_at_recommended"), "barred");
  EXPECT_TRUE(marked.at("recommended_metres_per_second").is_null());
}

TEST(Barred, OutranksAShapeWithoutAModel) {
  Json request = pace_request();
  request["edge"] = {{"kind", "tuft"}, {"covering", "leather"}};
  EXPECT_EQ(answer_of("pace", request).at("harm_at_recommended"), "barred");
  // What furniture hands on for a cover with wiring behind it.
  request["edge"] = {{"kind", "gap"}, {"covering", "unknown"}, {"fill", "none"}, {"finish", "electronics"}};
  const Json answer = answer_of("pace", request);
  EXPECT_EQ(answer.at("harm_at_recommended"), "barred");
  EXPECT_EQ(answer.at("reason").at("code"), "barred_finish");
  EXPECT_TRUE(answer.at("recommended_metres_per_second").is_null());
}

Json treated_request(double pace) {
  Json request = pace_request();
  request["passes"] = Json::array({{{"length_metres", 1.0}, {"seconds", 1.0 / pace}, {"at", 0}}});
  return request;
}

TEST(AsTreated, TheRecommendedPaceIsLethalAndTwiceItsFastestIsNot) {
  const Json pace = answer_of("pace", pace_request());
  const Json good =
      answer_of("as_treated", treated_request(pace.at("recommended_metres_per_second").get<double>()));
  EXPECT_EQ(good.at("verdict"), "lethal");
  EXPECT_TRUE(good.at("redo").empty());
  EXPECT_GE(good.at("depth_reached_metres"), good.at("target_depth_metres"));
  EXPECT_EQ(good.at("harm"), "none");
  const Json bad =
      answer_of("as_treated", treated_request(2 * pace.at("window_metres_per_second")[1].get<double>()));
  EXPECT_NE(bad.at("verdict"), "lethal");
  EXPECT_EQ(bad.at("redo").size(), 1u);
  EXPECT_LT(bad.at("depth_reached_metres"), bad.at("target_depth_metres"));
  EXPECT_LT(bad.at("kill_probability"), good.at("kill_probability"));
}

TEST(AsTreated, AColdSurfaceTakesAVerdictBackAndAHotOneGrantsNone) {
  const double pace = answer_of("pace", pace_request()).at("recommended_metres_per_second").get<double>();
  Json request = treated_request(0.6 * pace);
  request.erase("head");  // nothing is known of it yet, so that there is something to learn
  request["spot_readings"] = Json::array({{{"palm", "cold"}, {"seconds_after", 1}, {"at_metres", 0.5}}});
  const Json cold = answer_of("as_treated", request);
  EXPECT_LE(cold.at("spot_readings").at("lethal_margin_after"),
            cold.at("spot_readings").at("lethal_margin_before"));
  Json fast = treated_request(2.5 * pace);
  const Json before = answer_of("as_treated", fast);
  fast["spot_readings"] = Json::array({{{"gun_celsius", 90}, {"seconds_after", 2}, {"at_metres", 0.5}}});
  EXPECT_NE(answer_of("as_treated", fast).at("verdict"), "lethal");
  EXPECT_NE(before.at("verdict"), "lethal");
}

TEST(AsTreated, WhatTheSurfaceSaidPacesWhatIsLeft) {
  Json asked = pace_request();
  asked.erase("head");
  const Json planned = answer_of("pace", asked);
  Json request = treated_request(0.010);
  request.erase("head");
  const auto repaced = [&](double gun_celsius) {
    request["spot_readings"] =
        Json::array({{{"gun_celsius", gun_celsius}, {"seconds_after", 2}, {"at_metres", 0.5}}});
    Json again = asked;
    again.erase("samples");
    again["calibration"] = answer_of("as_treated", request).at("spot_readings").at("calibrations");
    EXPECT_EQ(again["calibration"].size(), 1u);
    return answer_of("pace", again);
  };
  const auto celsius_at_an_inch = [](const Json& answer) {
    return answer.at("one_inch_per_second").at("target_celsius").at("p50").get<double>();
  };
  // A surface much colder than expected makes the same pace kill less, one as hot as any makes it kill no
  // less.
  EXPECT_LT(celsius_at_an_inch(repaced(45)), celsius_at_an_inch(planned));
  EXPECT_GE(celsius_at_an_inch(repaced(98)), celsius_at_an_inch(repaced(45)));
}

TEST(AsTreated, AShapeWithoutAModelIsNotProven) {
  Json request = treated_request(0.01);
  request["edge"]["kind"] = "metal_joint";
  const Json answer = answer_of("as_treated", request);
  EXPECT_EQ(answer.at("verdict"), "not_proven");
  EXPECT_EQ(answer.at("reason").at("code"), "shape_not_modelled");
}

TEST(AsTreated, ATowelThatNothingIsKnownOfEarnsNothing) {
  Json request = treated_request(0.005);
  request["passes"][0]["towel"] = "wrapped";
  const Json answer = answer_of("as_treated", request);
  EXPECT_EQ(answer.at("verdict"), "not_proven");
  EXPECT_EQ(answer.at("warnings")[0].at("code"), "unknown_towel");
}

TEST(AsTreated, NoPassIsShort) {
  Json request = treated_request(0.01);
  request["passes"] = Json::array();
  request["length_metres"] = 1;
  const Json answer = answer_of("as_treated", request);
  EXPECT_EQ(answer.at("verdict"), "short");
  EXPECT_EQ(answer.at("redo")[0].at("cause"), "not_passed");
}

Json boiler_request(const char* tank) {
  return {{"tank", tank},
          {"power_watts", 1500},
          {"water_kilograms", 1.5},
          {"steam_minutes", 60},
          {"trigger_share", 1}};
}

TEST(Boiler, AnswersByTankAndNeverAdvisesOpeningAHotOne) {
  double continuous_minutes = 0;
  for (const char* tank : {"continuous", "pressurised", "kettle"}) {
    const Json answer = answer_of("boiler", boiler_request(tank));
    double minutes = 0;
    for (const Json& phase : answer.at("phases")) {
      EXPECT_NEAR(phase.at("from_minutes").get<double>(), minutes, 1e-6) << tank;
      minutes += phase.at("minutes").get<double>();
      if (std::string(tank) == "continuous") {
        EXPECT_NE(phase.at("kind"), "cool");
      }
    }
    EXPECT_NEAR(answer.at("minutes").get<double>(), minutes, 1e-6) << tank;
    EXPECT_NEAR(answer.at("steam_minutes").get<double>(), 60, 0.05) << tank;
    if (std::string(tank) == "continuous") {
      continuous_minutes = minutes;
    } else {
      EXPECT_GT(minutes, continuous_minutes) << tank;
      EXPECT_NE(answer.at("text").get<std::string>().find("Never open a hot boiler"), std::string::npos)
          << tank;
    }
    EXPECT_EQ(answer.at("warnings")[0].at("code"), "not_weighed");
  }
}

TEST(Boiler, WeighingGoesBeforeThePower) {
  Json request = boiler_request("continuous");
  request["weighing"] = {{"before_kilograms", 7.42}, {"after_kilograms", 7.24}, {"minutes", 5}};
  const Json answer = answer_of("boiler", request);
  EXPECT_EQ(answer.at("supply").at("basis"), "weighing");
  EXPECT_NEAR(answer.at("supply").at("grams_per_second").get<double>(), 0.6, 1e-9);
}

TEST(Jet, ATipScattersAWideHeadDoesNot) {
  const auto asked = [](const char* kind, double size, double distance) {
    return answer_of("jet", {{"opening", {{"kind", kind}, {"size_metres", size}, {"width_metres", 0.2}}},
                             {"distances_metres", Json::array({distance})}})
        .at("speeds")[0];
  };
  EXPECT_EQ(asked("round", 0.003, 0.06).at("scatter"), "scatters");
  EXPECT_EQ(asked("slot", 0.01, 0).at("scatter"), "stays");
  const Json whistling = asked("round", 0.001, 0.1);
  EXPECT_EQ(whistling.at("scatter"), "scatters");
  EXPECT_TRUE(whistling.at("metres_per_second").is_null());
}

}  // namespace
}  // namespace lastegg
