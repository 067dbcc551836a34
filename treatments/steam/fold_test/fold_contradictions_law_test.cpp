#include "treatments/steam/fold_test/fold_contradictions.h"

#include <gtest/gtest.h>

#include "treatments/steam/fold_test/fold_steamers_for_tests.h"

namespace lastegg::steam {
namespace {

using Kind = Contradiction::Kind;

FoldTest honest_test() {
  FoldTest test;
  test.head_key = "head|c";
  test.cloth_key = "cloth|c";
  test.probe_time_constant_seconds = 0.3;
  for (const double pace : {0.008, 0.014, 0.020, 0.028}) {
    for (const int layers : {1, 2}) test.readings.push_back(fold_pass(pace, layers));
  }
  test.readings.push_back(fold_rest(90, 1));
  test.readings.push_back(coupon_pass(0.010));
  test.readings.push_back(coupon_pass(0.020));
  return test;
}

// Orders that the check takes for granted hold in the model, whatever the steamer.
TEST(FoldContradictionsLaw, ExactReadingsNeverContradict) {
  for (std::uint32_t steamer = 0; steamer < 24; ++steamer) {
    FoldTest test = honest_test();
    TrueSteamer(steamer, 0).take_readings(test);
    EXPECT_TRUE(contradictions(test).empty()) << "steamer " << steamer;
  }
}

TEST(FoldContradictionsLaw, NoisyReadingsOfAnotherClothSeldomDo) {
  int told = 0;
  for (std::uint32_t steamer = 0; steamer < 60; ++steamer) {
    FoldTest test = honest_test();
    TrueSteamer(steamer, 1).take_readings(test);
    told += contradictions(test).empty() ? 0 : 1;
  }
  EXPECT_LE(told, 6);
}

TEST(FoldContradictionsLaw, ASlowerPassThatIsColderIsNamedWithItsPair) {
  FoldTest test;
  test.readings = {fold_pass(0.025, 1), fold_pass(0.010, 1)};
  test.readings[0].peak_celsius = 75;
  test.readings[1].peak_celsius = 60;
  const auto found = contradictions(test);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].kind, Kind::slower_is_colder);
  EXPECT_EQ(found[0].first, 1U);
  EXPECT_EQ(found[0].second, 0U);
  EXPECT_DOUBLE_EQ(found[0].kelvin, 15);
  EXPECT_FALSE(found[0].suspect) << "two readings cannot tell which of them is wrong";
  test.readings[1].peak_celsius = 70;  // 5 K may be chance: errors of 2.5 K each
  EXPECT_TRUE(contradictions(test).empty());
}

TEST(FoldContradictionsLaw, TheReadingThatDisagreesWithManyIsTheSuspect) {
  FoldTest test;
  test.readings = {fold_pass(0.008, 1), fold_pass(0.015, 1), fold_pass(0.020, 1), fold_pass(0.028, 1)};
  const double peaks[] = {50, 80, 74, 66};
  for (std::size_t i = 0; i < 4; ++i) test.readings[i].peak_celsius = peaks[i];
  const auto found = contradictions(test);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].suspect, 0U);
  EXPECT_EQ(found[0].second, 1U) << "the worst pair";
}

TEST(FoldContradictionsLaw, EveryKindIsTold) {
  FoldTest test;
  test.readings = {fold_pass(0.015, 1), fold_pass(0.015, 2)};
  test.readings[0].peak_celsius = 60;
  test.readings[1].peak_celsius = 75;
  EXPECT_EQ(contradictions(test).at(0).kind, Kind::deeper_is_hotter);
  test.readings = {fold_pass(0.015, 1), fold_pass(0.0155, 1)};
  test.readings[0].peak_celsius = 60;
  test.readings[1].peak_celsius = 75;
  EXPECT_EQ(contradictions(test).at(0).kind, Kind::repeats_differ);
  test.readings = {fold_rest(90, 1), fold_pass(0.015, 1)};
  test.readings[0].peak_celsius = 60;
  test.readings[1].peak_celsius = 75;
  EXPECT_EQ(contradictions(test).at(0).kind, Kind::rest_is_colder);
  test.readings = {fold_pass(0.015, 1)};
  test.readings[0].peak_celsius = 104.5;
  const auto above = contradictions(test);
  EXPECT_EQ(above.at(0).kind, Kind::above_boiling);
  EXPECT_FALSE(above.at(0).second);
}

TEST(FoldContradictionsLaw, ReadingsInDifferentClothsAreNotCompared) {
  FoldTest test;
  test.readings = {fold_pass(0.010, 1), fold_pass(0.025, 1), coupon_pass(0.025)};
  test.readings[0].peak_celsius = 50;
  test.readings[1].peak_celsius = 80;
  test.readings[1].cloth_key = "cloth|velvet";
  test.readings[2].peak_celsius = 80;
  EXPECT_TRUE(contradictions(test).empty());
}

}  // namespace
}  // namespace lastegg::steam
