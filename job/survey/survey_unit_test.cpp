// Levels, classes and shares for inspections whose outcome can be told by hand.
#include "job/survey/survey.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "job/survey/hazards.h"
#include "job/survey/looks.h"
#include "job/survey/prior.h"

namespace lastegg::survey {
namespace {

Item item(const char* kind, std::size_t room = 0) {
  Item made;
  made.kind = kind;
  made.room = room;
  return made;
}

Finding found(std::size_t at, int adults, std::optional<bool> certain, const char* edge = "") {
  Finding finding;
  finding.item = at;
  finding.adults = adults;
  finding.certain = certain;
  finding.edge = edge;
  return finding;
}

TEST(SurveyLevel, FollowsWhatWasFoundAndHowSurely) {
  Finding finding = found(0, 1, true);
  EXPECT_EQ(level_of(finding, false), Level::confirmed);
  EXPECT_EQ(level_of(finding, true), Level::confirmed) << "a live bug is live after a treatment too";
  finding.certain.reset();
  EXPECT_EQ(level_of(finding, false), Level::probable) << "nobody said that it is a bed bug";
  finding.certain = false;
  EXPECT_EQ(level_of(finding, false), Level::suspected);
  finding.certain = true;
  finding.how = How::told;
  EXPECT_EQ(level_of(finding, false), Level::suspected);

  Finding egg = found(0, 0, true);
  egg.eggs = 1;
  EXPECT_EQ(level_of(egg, false), Level::confirmed);

  Finding skins = found(0, 0, true);
  skins.cast_skins = 3;
  EXPECT_EQ(level_of(skins, false), Level::probable);
  EXPECT_EQ(level_of(skins, true), Level::old);
  Finding spots = found(0, 0, std::nullopt);
  spots.spots = true;
  EXPECT_EQ(level_of(spots, false), Level::probable);
  spots.certain = false;
  EXPECT_EQ(level_of(spots, false), Level::suspected);

  Finding nothing;
  nothing.look = Look::none_seen;
  EXPECT_EQ(level_of(nothing, false), Level::none);
  nothing.how = How::told;
  EXPECT_EQ(level_of(nothing, false), Level::not_looked) << "half of infested homes are unaware";
  nothing.look = Look::not_accessible;
  EXPECT_EQ(level_of(nothing, false), Level::not_looked);
}

TEST(SurveyClass, TurnsAt12And30) {
  EXPECT_EQ(class_of(0), CountClass::none_counted);
  EXPECT_EQ(class_of(1), CountClass::up_to_12);
  EXPECT_EQ(class_of(12), CountClass::up_to_12);
  EXPECT_EQ(class_of(13), CountClass::from_13_to_30);
  EXPECT_EQ(class_of(30), CountClass::from_13_to_30);
  EXPECT_EQ(class_of(31), CountClass::over_30);
}

TEST(SurveyPrior, IsThePublishedOneOverWhatIsThere) {
  // 0.346, 0.224, 0.134, 0.226, 0.07 of job/priority's data: all classes are there, so nothing is divided
  // anew.
  const Prior all =
      prior({item("box_spring"), item("mattress"), item("metal_frame"), item("sofa", 1), item("dresser")});
  const std::vector<double> shares{0.346, 0.224, 0.134, 0.226, 0.07};
  for (std::size_t i = 0; i < shares.size(); ++i) EXPECT_NEAR(all.of_item[i], shares[i], 1e-12);
  EXPECT_EQ(all.unlisted, 0);
  const Prior bed_only = prior({item("mattress")});
  EXPECT_NEAR(bed_only.of_item[0], 0.224 / (0.224 + 0.07), 1e-12)
      << "the rest of the room is there all the same";
  EXPECT_NEAR(bed_only.unlisted, 0.07 / (0.224 + 0.07), 1e-12);
}

TEST(SurveyPrior, ASeatThatIsSleptOnTakesTheBedsPlace) {
  Item sofa = item("sofa", 1);
  sofa.sleeps_here = true;
  EXPECT_NEAR(prior({sofa, item("dresser", 1)}).of_item[0], 0.704 / 0.774, 1e-12)
      << "no bed: the sofa is the bed";
  const Prior both = prior({sofa, item("mattress"), item("dresser")});
  // Half of the places slept on are seats: beds and seats meet in the middle of 0.704 and 0.226.
  const double mattress = 0.224 * (0.704 - 0.239) / 0.704, sum = 0.465 + mattress + 0.07;
  EXPECT_NEAR(both.of_item[0], 0.465 / sum, 1e-12);
  EXPECT_NEAR(both.of_item[1], mattress / sum, 1e-12);
}

TEST(SurveyPrior, FallsWithTheDistanceFromTheBed) {
  Item bed = item("mattress"), near = item("night_table"), far = item("dresser");
  bed.x_metres = bed.y_metres = near.y_metres = far.y_metres = 1;
  near.x_metres = 2;
  far.x_metres = 3.5;
  const Prior shares = prior({bed, near, far});
  EXPECT_NEAR(shares.of_item[1] / shares.of_item[2], std::exp(1.5 / 1.5), 1e-12)
      << "1.5 m farther: a factor of e";
}

TEST(Survey, OnePlaceCountsOnceAndTrapsAddToTheHome) {
  Survey survey;
  survey.rooms = 2;
  survey.items = {item("mattress", 0), item("sofa", 1)};
  survey.findings = {found(0, 7, true, "tape"), found(0, 4, true, "tape"), found(0, 3, true, "label"),
                     found(0, 50, false, "zip")};
  survey.catches = {{1, std::nullopt, 1, 2, true}, {std::nullopt, 1, 5, 0, false}};
  const Outcome outcome = judge(survey);
  EXPECT_EQ(outcome.items[0].live, 10) << "7 at the tape, 3 at the label; 50 of something else do not count";
  EXPECT_EQ(outcome.home.live, 13);
  EXPECT_EQ(outcome.count_class, CountClass::from_13_to_30);
  EXPECT_EQ(outcome.rooms[0].live, 10);
  EXPECT_EQ(outcome.rooms[1].live, 3);
  EXPECT_EQ(outcome.rooms[1].level, Level::confirmed);
  EXPECT_EQ(outcome.items[1].level, Level::suspected) << "a trap tells of the room, not surely of the sofa";
}

TEST(Survey, TheBoxSpringUnderAnInfestedMattressComesNext) {
  Survey survey;
  survey.rooms = 2;
  survey.items = {item("mattress", 0), item("box_spring", 0), item("sofa", 1), item("dresser", 0)};
  survey.findings = {found(0, 9, true, "tape")};
  const Outcome outcome = judge(survey);
  EXPECT_EQ(outcome.items[1].rank, 1U);
  EXPECT_EQ(outcome.items[1].why, Why::not_looked);
  EXPECT_GT(outcome.items[1].share, outcome.items[2].share);
  EXPECT_EQ(outcome.items[0].rank, 4U) << "it is treated whole anyway";
  EXPECT_TRUE(outcome.count_is_least);
  // By hand. Shares over 0.866 (no frame is listed); a look by eye at one of ten edges misses 0.965 of the
  // bugs.
  const double mattress = 0.224 * 0.965 / 0.866, box_spring = 0.346 / 0.866, bed = mattress + box_spring;
  const double rest = (0.226 + 0.07) / 0.866;
  const double of_bed = (10 * bed + 9) / (10 * (bed + rest) + 9), in_bed = 20 * box_spring / bed / (20 + 9);
  EXPECT_NEAR(outcome.items[1].share, of_bed * in_bed, 1e-12);
}

TEST(Survey, WhatCouldNotBeReachedStaysOpenUntilSomebodyReachesIt) {
  Survey survey;
  survey.rooms = 1;
  survey.items = {item("baseboard")};
  Finding look;
  look.item = 0;
  look.look = Look::not_accessible;
  survey.findings = {look};
  EXPECT_FALSE(judge(survey).items[0].reached);
  EXPECT_TRUE(judge(survey).count_is_least);
  EXPECT_EQ(judge(survey).items[0].why, Why::not_accessible);
  look.look = Look::none_seen;
  survey.findings.push_back(look);
  const Outcome outcome = judge(survey);
  EXPECT_TRUE(outcome.items[0].reached);
  EXPECT_EQ(outcome.home.level, Level::none);
  EXPECT_FALSE(outcome.count_is_least);
}

TEST(SurveyHazards, EachSaysWhoDecidesAndWhereItComesFrom) {
  std::set<std::string> hard;
  for (const Hazard& hazard : hazards()) {
    EXPECT_FALSE(hazard.text.empty() || hazard.who_decides.empty() || hazard.source.empty()) << hazard.key;
    if (hazard.hard) hard.insert(hazard.key);
  }
  for (const char* key :
       {"oxygen", "sprinkler", "heat_detector", "pressurised_cans", "ammunition", "fuel_heater"})
    EXPECT_TRUE(hard.contains(key)) << key;
}

}  // namespace
}  // namespace lastegg::survey
