// Times of development against published ones. Anchors are met exactly; what did not set the forms is held
// apart.
#include <gtest/gtest.h>

#include <algorithm>

#include "bugs/lifecycle/development.h"

namespace lastegg::bugs {
namespace {

TEST(Development, MeetsItsAnchors) {
  ASSERT_TRUE(development_data_state());
  EXPECT_NEAR(adult_days(18), 120, 1e-9);    // [handbook_figures]
  EXPECT_NEAR(adult_days(30), 21, 1e-9);     // [handbook_figures]
  EXPECT_NEAR(first_egg_days(18), 8, 1e-9);  // [handbook_figures]
  EXPECT_NEAR(first_egg_days(30), 3, 1e-9);  // [handbook_figures]
  EXPECT_NEAR(egg_days(18, Bound::slow), 20.5, 1e-9);
}

// The two forms as the derivation prints them; slow and fast are the longer and the shorter of each row.
TEST(Development, IncubationByBothForms) {
  struct Row {
    double celsius, curved, straight;
  };
  for (const Row& row : {Row{18, 20.5, 18.0}, Row{20, 15.9, 12.9}, Row{22, 12.4, 10.0}, Row{24, 9.6, 8.2},
                         Row{26, 7.5, 6.9}, Row{28, 5.8, 6.0}, Row{30, 4.5, 5.3}}) {
    EXPECT_NEAR(egg_days(row.celsius, Bound::slow), std::max(row.curved, row.straight), 0.051) << row.celsius;
    EXPECT_NEAR(egg_days(row.celsius, Bound::fast), std::min(row.curved, row.straight), 0.051) << row.celsius;
  }
}

// What did not set the forms.
TEST(Development,
     EggsInHomesTakeFourToTwentyOneDays) {  // [fhi_bed_bugs], 18 to 31 C taken for indoor temperatures
  EXPECT_LE(egg_days(18, Bound::slow), 21);
  EXPECT_GE(egg_days(31, Bound::fast), 3.95);
}

TEST(Development, EggAtTwentyDegreesTakesAboutTwoWeeks) {  // [trade_page_20c]
  EXPECT_LE(egg_days(20, Bound::fast), 14);
  EXPECT_GE(egg_days(20, Bound::slow), 14);
}

TEST(Development, NymphsAtTwentyDegreesTakeTwoToThreeMonths) {  // [trade_page_20c]
  EXPECT_GE(adult_days(20) - egg_days(20, Bound::slow), 60);
  EXPECT_LE(adult_days(20) - egg_days(20, Bound::slow), 91);
}

TEST(Development,
     LaboratoryColoniesGrowUpIn33To40Days) {  // [polanco_2011_growth], [barbarin_2013], 26 C from memory
  EXPECT_GE(adult_days(26), 33);
  EXPECT_LE(adult_days(26), 40);
}

// Where the forms disagree with what is published, in the direction that brings the return visit forward: egg
// to egg takes 4 to 5 weeks at 28 to 30 C [fhi_bed_bugs]; the forms say 24 days at 30 C. The README prints
// it.
TEST(Development, IsFasterThanTheGuideAtThirtyDegrees) {
  EXPECT_NEAR(adult_days(30) + first_egg_days(30), 24, 1e-9);
  EXPECT_LT(adult_days(30) + first_egg_days(30), 28);
  EXPECT_NEAR(adult_days(28) + first_egg_days(28), 31.6, 0.1);
}

}  // namespace
}  // namespace lastegg::bugs
