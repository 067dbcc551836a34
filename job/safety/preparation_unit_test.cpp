// Which sentences a home gets, and that each number stands in its text.
#include "job/safety/preparation.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace lastegg::safety {
namespace {

bool has(const std::vector<Sentence>& list, std::string_view code) {
  return std::any_of(list.begin(), list.end(), [&](const Sentence& one) { return one.code == code; });
}

TEST(Preparation, AsksOnlyForWhatTheVisitNeeds) {
  ASSERT_TRUE(data_state());
  const auto bare = sentences_for({});
  EXPECT_TRUE(has(bare, "stay_put"));
  EXPECT_FALSE(has(bare, "dry_hot"));
  EXPECT_FALSE(has(bare, "pets_out"));
  const auto full = sentences_for({{"bed"}, {"pets", "asthma", "sprinkler"}, {"steam"}, {"dryer"}});
  for (const char* code : {"dry_hot", "pets_out", "bag_bedding", "stay_out", "infant", "firm_sprinkler"})
    EXPECT_TRUE(has(full, code)) << code;
  EXPECT_FALSE(has(full, "hot_room_out"));
}

TEST(Preparation, DetectorsAreTheFirmsJob) {
  for (const Sentence& one : sentences_for({{}, {"smoke_detector", "heat_detector"}, {}, {}}))
    EXPECT_TRUE(one.code.find("detector") == std::string::npos || one.who == Who::firm) << one.code;
}

TEST(Preparation, SentencesAreShortAndCodesAreUnique) {
  const Home all{{"bed", "contents", "launderable", "encasable", "turn"},
                 {"pets", "aquarium", "medicines", "pressurised_cans", "ammunition", "oxygen", "needles",
                  "smoke_detector", "heat_detector", "sprinkler", "fuel_heater", "loose_wiring",
                  "asbestos_or_lead", "infant", "mould", "weak_floor"},
                 {"steam", "hot_room", "freezer", "discard"},
                 {"dryer", "washer", "freezer"}};
  std::set<std::string> codes;
  for (const Sentence& one : sentences_for(all)) {
    EXPECT_TRUE(codes.insert(one.code).second) << one.code;
    EXPECT_LE(std::count(one.text.begin(), one.text.end(), ' '), 24) << one.text;
    for (const auto& [name, datum] : one.params)
      EXPECT_NE(one.text.find("{" + name + "}"), std::string::npos) << one.code;
    EXPECT_EQ(one.text.find('{') == std::string::npos, one.params.empty()) << one.code;
  }
  EXPECT_GT(codes.size(), 45U);
}

TEST(Preparation, WashesAndDriesAsTheTrialDid) {
  // Naylor and Boase 2010, abstract: wash at 60 C; hot dryer for 30 min.
  for (const Sentence& one : sentences_for({{}, {}, {}, {"dryer"}})) {
    if (one.code == "wash_hot") {
      EXPECT_EQ(one.params.at("temperature").value, 60);
    }
    if (one.code == "dry_hot") {
      EXPECT_EQ(one.params.at("minutes").value, 30);
    }
  }
}

}  // namespace
}  // namespace lastegg::safety
