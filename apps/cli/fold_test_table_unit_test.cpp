// Tables of readings as people write them, and the mistakes they make.
#include "apps/cli/fold_test_table.h"

#include <gtest/gtest.h>

namespace lastegg::cli {
namespace {

TEST(FoldTestTable, ReadsUnitsInCells) {
  const auto table = read_fold_test_table("pace,layers,peak\n25 mm/s,1,70 C\n1 in/s,2,\"123 F\"\n");
  ASSERT_TRUE(table) << table.error().message;
  EXPECT_EQ((*table)["readings"].size(), 2U);
  EXPECT_EQ((*table)["readings"][0]["pace_metres_per_second"], "25 mm/s");
  EXPECT_EQ((*table)["readings"][1]["peak_celsius"], "123 F");
  EXPECT_EQ((*table)["readings"][1]["layers"], 2);
  EXPECT_FALSE(table->contains("towel"));
}

TEST(FoldTestTable, ReadsARowOfUnitsAndATowel) {
  const auto table =
      read_fold_test_table("distance,seconds,layers,peak,towel\nin,s,,F,\n20,15,1,158,wrapped\n");
  ASSERT_TRUE(table) << table.error().message;
  EXPECT_EQ((*table)["readings"][0]["distance_metres"], "20 in");
  EXPECT_EQ((*table)["readings"][0]["seconds"], "15 s");
  EXPECT_EQ((*table)["readings"][0]["peak_celsius"], "158 F");
  EXPECT_EQ((*table)["towel"], "wrapped");
}

TEST(FoldTestTable, ReadsEveryKindOfReading) {
  const auto table = read_fold_test_table(
      "kind,pace,hold,layers,covering,peak\n,25 mm/s,,1,,70 C\nstationary,,60,1,,96 C\n"
      "coupon,10 mm/s,,,,66 C\nunder_real_edge,12 mm/s,,2,velvet,60 C\n");
  ASSERT_TRUE(table) << table.error().message;
  const auto& readings = (*table)["readings"];
  EXPECT_FALSE(readings[0].contains("kind"));
  EXPECT_EQ(readings[1]["hold_seconds"], 60);
  EXPECT_FALSE(readings[1].contains("pace_metres_per_second"));
  EXPECT_EQ(readings[2]["kind"], "coupon");
  EXPECT_FALSE(readings[2].contains("layers"));
  EXPECT_EQ(readings[3]["covering"], "velvet");
}

TEST(FoldTestTable, RefusalsNameTheLine) {
  const auto message = [](const char* text) {
    const auto table = read_fold_test_table(text);
    return table ? std::string("accepted") : table.error().message;
  };
  EXPECT_NE(message("pace,layers,heat\n").find("line 1: there is no column \"heat\""), std::string::npos);
  EXPECT_NE(message("pace,layers,peak\n25,1,70 C\n").find("line 2: pace is 25 without a unit"),
            std::string::npos);
  EXPECT_NE(message("pace,layers,peak\n25 mm/s,1.5,70 C\n").find("line 2: layers is 1.5"), std::string::npos);
  EXPECT_NE(message("pace,layers,peak\n25 mm/s,1\n").find("line 2: 2 cells where the header has 3"),
            std::string::npos);
  EXPECT_NE(
      message("pace,layers,peak,towel\n25 mm/s,1,70 C,none\n25 mm/s,1,70 C,laid\n").find("line 3: towel"),
      std::string::npos);
  EXPECT_NE(message("").find("the table is empty"), std::string::npos);
  EXPECT_NE(message("pace,layers,peak\n").find("no readings"), std::string::npos);
}

}  // namespace
}  // namespace lastegg::cli
