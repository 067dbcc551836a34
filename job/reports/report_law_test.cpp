// What must hold of a report whatever the job: it promises nothing, keeps three things apart, loses no entry.
#include "job/reports/report.h"

#include <gtest/gtest.h>

#include <set>

namespace lastegg::reports {
namespace {

Json edge(const char* id, const char* state, const char* redo, bool is_modelled,
          const char* code = "too_fast") {
  const int passes = is_modelled ? 1 : 0;
  Json out{
      {"id", id},
      {"title", std::string("Edge ") + id},
      {"state", state},
      {"cause", {{"code", code}, {"text", std::string("because of ") + id}}},
      {"harm", is_modelled ? "unknown" : "none"},
      {"length_metres", 1.0},
      {"treated", {{"passes", passes}, {"metres", 1.0 * passes}, {"seconds", 60.0 * passes}}},
      {"redo",
       {{"state", redo},
        {"reason", std::string(redo) == "explained" ? Json("reason of " + std::string(id)) : Json(nullptr)}}},
      {"modelled", nullptr}};
  if (is_modelled)
    out["modelled"] = {{"kill_probability", 0.999}, {"lethal_metres", 0.5}, {"basis", "fold_test"}};
  return out;
}

Json counts() {
  return {
      {"lethal", 1},        {"short", 1},
      {"not_proven", 1},    {"barred", 1},
      {"not_treated", 1},   {"edges", 5},
      {"redo_open", 2},     {"redo_explained", 2},
      {"spot_readings", 0}, {"treated", {{"edges", 3}, {"passes", 3}, {"metres", 3.0}, {"seconds", 180.0}}}};
}

Json treated() {
  return {{"items",
           {{{"id", "i"},
             {"title", "Sofa"},
             {"room", "Den"},
             {"method", nullptr},
             {"error", nullptr},
             {"counts", counts()},
             {"edges",
              {edge("a", "lethal", "none", true), edge("b", "short", "open", true),
               edge("c", "not_proven", "explained", true), edge("d", "barred", "explained", false, "barred"),
               edge("e", "not_treated", "open", false, "nothing_recorded")}}}}},
          {"counts", counts()}};
}

Json state() {
  return {{"job", {{"title", "Flat"}, {"invented", true}}},
          {"evidence", {{{"item", "i"}, {"edge", "a"}, {"look", "found"}, {"adults", 1}, {"eggs", 3}}}},
          {"spot_readings", {{{"item", "i"}, {"edge", "a"}, {"gun_celsius", 71}, {"seconds_after", 2}}}},
          {"damages", {{{"item", "i"}, {"what", "a tear"}}}}};
}

const Json& block_of(const Json& document, const std::string& code) {
  for (const Json& block : document.at("blocks")) {
    if (block.at("code") == code) return block;
  }
  static const Json none;
  ADD_FAILURE() << "no block " << code;
  return none;
}

bool says(const Json& block, const std::string& words) {
  return block.dump().find(words) != std::string::npos;
}

TEST(ReportLaw, EveryBlockSaysSomethingAndEveryLineHasACode) {
  const Json none;
  const Json nothing{{"items", Json::array()}, {"counts", counts()}};
  for (const Json& made : {treated(), nothing}) {
    const Json document = report_document({.state = state(), .treated = made, .follow_up = none});
    std::set<std::string> codes;
    for (const Json& block : document.at("blocks")) {
      EXPECT_TRUE(codes.insert(block.at("code")).second);
      EXPECT_FALSE(block.at("heading").get<std::string>().empty());
      EXPECT_GT(block.at("lines").size() + block.at("rows").size(), 0U) << block.at("code");
      for (const char* part : {"lines", "rows"}) {
        for (const Json& line : block.at(part)) {
          EXPECT_FALSE(line.at("code").get<std::string>().empty());
          EXPECT_TRUE(line.at("parameters").is_object());
          EXPECT_FALSE(line.at("text").get<std::string>().empty());
        }
      }
    }
  }
}

TEST(ReportLaw, PromisesNothing) {
  const Json none;
  const std::string text =
      report_document({.state = state(), .treated = treated(), .follow_up = none}).dump();
  for (const char* never : {"eradi", "100 %", "guarantee", "100 in 100", "is safe", "bug-free"})
    EXPECT_EQ(text.find(never), std::string::npos) << never;
  EXPECT_NE(text.find("99 in 100"), std::string::npos) << "0.999 is said as 99 in 100";
  EXPECT_NE(text.find("No treatment of bed bugs is certain"), std::string::npos);
}

TEST(ReportLaw, TreatedMeasuredAndModelledStayApart) {
  const Json none;
  const Json document = report_document({.state = state(), .treated = treated(), .follow_up = none});
  EXPECT_TRUE(says(block_of(document, "measured"), "71 C"));
  EXPECT_FALSE(says(block_of(document, "treated"), "71 C"));
  EXPECT_FALSE(says(block_of(document, "measured"), "lethal"));
  EXPECT_FALSE(says(block_of(document, "treated"), "in 100"));
  EXPECT_EQ(block_of(document, "modelled").at("rows").size(), 3U);
}

TEST(ReportLaw, EveryEdgeThatIsNotLethalIsDoneAgainOrExplained) {
  const Json none;
  const Json document = report_document({.state = state(), .treated = treated(), .follow_up = none});
  const Json& redo = block_of(document, "redo");
  EXPECT_FALSE(says(redo, "Edge a"));
  EXPECT_TRUE(says(redo, "Edge b"));
  EXPECT_TRUE(says(redo, "reason of c"));
  EXPECT_FALSE(says(redo, "reason of d")) << "barred: its reason stands in the block before";
  EXPECT_TRUE(says(redo, "because of e"));
  EXPECT_TRUE(says(block_of(document, "not_treated"), "because of d"));
  EXPECT_TRUE(says(block_of(document, "summary"), "not finished"));
}

TEST(ReportLaw, SaysWhenItRestsOnContradictionsOrOnNoMeasurement) {
  const Json none;
  const Json bare{{"job", nullptr}};
  const Json document =
      report_document({.state = bare, .treated = treated(), .follow_up = none, .has_contradictions = true});
  EXPECT_TRUE(says(block_of(document, "summary"), "contradict"));
  EXPECT_TRUE(says(block_of(document, "measured"), "Nothing was measured"));
  EXPECT_TRUE(says(block_of(document, "next_visit"), "not fixed yet"));
}

}  // namespace
}  // namespace lastegg::reports
