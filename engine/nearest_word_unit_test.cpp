#include "engine/nearest_word.h"

#include <gtest/gtest.h>

namespace lastegg {
namespace {

const std::vector<std::string> k_keys = {"pace_metres_per_second", "distance_metres", "seconds", "layers",
                                         "peak_celsius"};

TEST(NearestWord, FindsSlipsOfTheFinger) {
  EXPECT_EQ(nearest_word("secnods", k_keys), "seconds");  // neighbours swapped
  EXPECT_EQ(nearest_word("laiers", k_keys), "layers");    // one letter replaced
  EXPECT_EQ(nearest_word("peak_celcius", k_keys), "peak_celsius");
}

TEST(NearestWord, FindsTheKeyWithoutItsUnit) {
  EXPECT_EQ(nearest_word("pace", k_keys), "pace_metres_per_second");
  EXPECT_EQ(nearest_word("celsius", k_keys), "peak_celsius");
}

TEST(NearestWord, ProposesNothingFarFetched) {
  EXPECT_EQ(nearest_word("humidity", k_keys), "");
  EXPECT_EQ(nearest_word("", k_keys), "");
  EXPECT_EQ(nearest_word("x", {}), "");
}

TEST(NearestWord, JoinsListsAsSpeechDoes) {
  EXPECT_EQ(any_of({"a"}), "a");
  EXPECT_EQ(any_of({"a", "b", "c"}), "a, b or c");
  EXPECT_EQ(all_of({"a", "b", "c"}), "a, b and c");
}

}  // namespace
}  // namespace lastegg
