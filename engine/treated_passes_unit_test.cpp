// From strokes to passes: where the head is said to have been, and what earns nothing.
#include "engine/treated_passes.h"

#include <gtest/gtest.h>

namespace lastegg {
namespace {

Json stroke(const char* id, double length, double seconds) {
  return {{"id", id}, {"item", "i"}, {"edge", "e"}, {"length_metres", length}, {"seconds", seconds}};
}

Json state_of(Json strokes, Json marks, Json visits = Json::array()) {
  return {{"strokes", std::move(strokes)}, {"edge_marks", std::move(marks)}, {"visits", std::move(visits)}};
}

Json bug(const char* id, const char* visit = "") {
  return {{"id", id}, {"item", "i"}, {"edge", "e"}, {"what", "live_bug"}, {"visit", visit}};
}

bool saw(const Json& pass) {
  return pass.value("saw_live_bug", false);
}

TEST(TreatedPasses, AnEvenStrokeGoesFromZeroToItsLength) {
  const Json pass = pass_of_stroke(stroke("s", 2.1, 210), {}, 2.1);
  ASSERT_EQ(pass["marks"].size(), 2U);
  EXPECT_EQ(pass["marks"][0]["at_metres"], 0);
  EXPECT_EQ(pass["marks"][1]["at_metres"], 2.1);
  EXPECT_EQ(pass["marks"][1]["seconds"], 210);
  EXPECT_FALSE(pass.contains("towel"));
}

TEST(TreatedPasses, MarksSayWhereTheHeadBeganAndEnded) {
  Json one = stroke("s", 0.2, 22);
  one["marks"] = {{{"at_metres", 0.7}, {"seconds", 0}}, {{"at_metres", 0.9}, {"seconds", 22}}};
  const Json pass = pass_of_stroke(one, {}, 2);
  ASSERT_EQ(pass["marks"].size(), 2U);
  EXPECT_EQ(pass["marks"][0]["at_metres"], 0.7);
  one["marks"] = {{{"at_metres", 0.5}, {"seconds", 60}, {"interrupted", true}}};
  one["length_metres"] = 1.0;
  one["seconds"] = 100;
  const Json middle = pass_of_stroke(one, {}, 2);
  ASSERT_EQ(middle["marks"].size(), 3U);
  EXPECT_TRUE(middle["marks"][1]["interrupted"].get<bool>());
  EXPECT_FALSE(middle["marks"][2]["interrupted"].get<bool>());
}

TEST(TreatedPasses, InterruptedNobodyKnowsWhereIsUnknownAllAlong) {
  Json one = stroke("s", 1, 100);
  one["interrupted"] = true;
  EXPECT_TRUE(pass_of_stroke(one, {}, 2)["marks"][1]["interrupted"].get<bool>());
}

TEST(TreatedPasses, AChangeOfTowelsLeavesItsIntervalUnknown) {
  Json one = stroke("s", 1, 100);
  one["marks"] = {{{"at_metres", 0.5}, {"seconds", 50}}};
  const Json changed{
      {"id", "m"}, {"item", "i"}, {"edge", "e"}, {"what", "towel_changed"}, {"at_metres", 0.7}};
  const Json pass = pass_of_stroke(one, {changed}, 2);
  EXPECT_FALSE(pass["marks"][1]["interrupted"].get<bool>());
  EXPECT_TRUE(pass["marks"][2]["interrupted"].get<bool>());
}

TEST(TreatedPasses, ALiveBugStaysUntilAPassIsKnownToHaveComeAfter) {
  const Json first = stroke("a", 1, 100), second = stroke("b", 1, 100);
  const Json state = state_of({first, second}, Json::array({bug("m")}));
  const EdgeRecord record = record_of_edge(state, "i", "e");
  const auto unknown = passes_of(record.strokes, record, state, 1);
  EXPECT_TRUE(saw(unknown.back())) << "nobody said which came last";

  Json answer = second;
  answer["follows"] = "m";
  const Json told = state_of({answer, first}, Json::array({bug("m")}));  // whatever the order of the list
  const EdgeRecord known = record_of_edge(told, "i", "e");
  const auto passes = passes_of(known.strokes, known, told, 1);
  EXPECT_TRUE(saw(passes.front()));
  EXPECT_FALSE(saw(passes.back()));
}

TEST(TreatedPasses, ALaterVisitComesAfter) {
  Json first = stroke("a", 1, 100), second = stroke("b", 1, 100);
  first["visit"] = "v1";
  second["visit"] = "v2";
  const Json visits = {{{"id", "v1"}, {"on", "2026-03-02"}}, {{"id", "v2"}, {"on", "2026-03-21"}}};
  const Json state = state_of({second, first}, Json::array({bug("m", "v1")}), visits);
  const EdgeRecord record = record_of_edge(state, "i", "e");
  const auto passes = passes_of(record.strokes, record, state, 1);
  EXPECT_TRUE(saw(passes.front()));
  EXPECT_FALSE(saw(passes.back()));
}

TEST(TreatedPasses, TwoBugsAreNotAnsweredByOneAnswer) {
  Json answer = stroke("b", 1, 100);
  answer["follows"] = "m";
  const Json state = state_of({stroke("a", 1, 100), answer}, {bug("m"), bug("n")});
  const EdgeRecord record = record_of_edge(state, "i", "e");
  EXPECT_TRUE(saw(passes_of(record.strokes, record, state, 1).back()));
}

TEST(TreatedPasses, AnEndReadOffATapeIsTheEdgesOwn) {
  EXPECT_EQ(pass_of_stroke(stroke("s", 0.828, 50), {}, 0.8325)["marks"][1]["at_metres"], 0.8325);
  EXPECT_EQ(pass_of_stroke(stroke("s", 0.81, 50), {}, 0.8325)["marks"][1]["at_metres"], 0.81);
}

TEST(TreatedPasses, OtherEdgesAndBrokenStatesAreLeftAlone) {
  const EdgeRecord none = record_of_edge({{"strokes", 3}}, "i", "e");
  EXPECT_TRUE(none.strokes.empty());
  EXPECT_TRUE(record_of_edge(state_of(Json::array({stroke("a", 1, 1)}), Json::array()), "i", "other")
                  .strokes.empty());
}

}  // namespace
}  // namespace lastegg
