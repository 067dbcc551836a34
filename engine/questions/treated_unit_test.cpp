// The question treated, and the report made of it, on the invented job of examples/treated_job.ndjson.
#include <gtest/gtest.h>

#include <fstream>
#include <string>

#include "engine/ask.h"
#include "engine/json.h"
#include "engine/questions/questions.h"

namespace lastegg {
namespace {

const char* const k_mattress = "0194a3c0-0000-7000-8000-00000000100a";
const char* const k_recliner = "0194a3c0-0000-7000-8000-00000000100c";
const char* const k_answering_stroke = "0194a3c0-0000-7000-8000-000000001074";

Json answer_of(const char* question, const Json& request) {
  const AskOutcome outcome = ask(question, dumped(request));
  EXPECT_TRUE(outcome.ok) << outcome.text;
  return Json::parse(outcome.text);
}

const Json& folded() {
  static const Json job = [] {
    Json lines = Json::array();
    std::ifstream file(LASTEGG_SOURCE_DIR "/examples/treated_job.ndjson");
    for (std::string line; std::getline(file, line);) lines.push_back(line);
    return answer_of("fold_events", {{"lines", lines}});
  }();
  return job;
}

// The mattress alone, and of its strokes those on three edges: enough, and quick.
Json treated(Json state, const Json& conflicts = Json::array(), const Json& known = Json::array()) {
  if (state.contains("strokes")) {
    Json kept = Json::array();
    for (const Json& stroke : state["strokes"]) {
      const std::string edge = stroke.at("edge");
      if (edge == "mattress.top_head_tape" || edge == "mattress.top_foot_tape" ||
          edge == "mattress.bottom_head_tape")
        kept.push_back(stroke);
    }
    state["strokes"] = kept;
  }
  return answer_of("treated", {{"state", state},
                               {"conflicts", conflicts},
                               {"items", {k_mattress}},
                               {"known", known},
                               {"samples", 128}});
}

const Json& whole() {
  static const Json answer = answer_of("treated", {{"state", folded().at("state")}, {"samples", 256}});
  return answer;
}

Json edge_of(const Json& answer, const std::string& id) {
  for (const Json& item : answer.at("items")) {
    for (const Json& edge : item.at("edges")) {
      if (edge.at("id") == id) return edge;
    }
  }
  ADD_FAILURE() << "no edge " << id;
  return {};
}

TEST(Treated, FitsItsShape) {
  Json result = whole();
  for (const char* frame : {"engine", "data", "warnings"}) result.erase(frame);
  const auto checked = check_answer(treated_question(), result);
  EXPECT_TRUE(checked.has_value()) << checked.error().message;
}

TEST(Treated, SaysOfEachEdgeWhatItsRecordAllows) {
  EXPECT_EQ(edge_of(whole(), "mattress.top_head_tape")["state"], "lethal");
  EXPECT_EQ(edge_of(whole(), "mattress.border_head_quilting")["state"], "lethal");
  const Json hurried = edge_of(whole(), "mattress.top_left_tape");
  EXPECT_EQ(hurried["state"], "short");
  EXPECT_EQ(hurried["redo"]["state"], "open");
  EXPECT_FALSE(hurried["modelled"]["redo"].empty());
  const Json unreached = edge_of(whole(), "mattress.bottom_left_tape");
  EXPECT_EQ(unreached["state"], "not_treated");
  EXPECT_EQ(unreached["cause"]["code"], "could_not_reach");
  EXPECT_EQ(unreached["redo"]["state"], "explained");
  EXPECT_EQ(edge_of(whole(), "mattress.label")["cause"]["code"], "nothing_recorded");
  EXPECT_EQ(edge_of(whole(), "mattress.label")["redo"]["state"], "open");
  EXPECT_EQ(edge_of(whole(), "leg_front_left.joint")["state"], "not_proven");
  EXPECT_EQ(edge_of(whole(), "dust_cover.back_edge")["redo"]["state"], "explained");
}

TEST(Treated, ALiveBugIsAnsweredOnlyByAPassThatSaysSo) {
  EXPECT_EQ(edge_of(whole(), "mattress.bottom_head_tape")["state"], "lethal");
  Json state = folded().at("state");
  for (Json& stroke : state["strokes"]) stroke.erase("follows");
  const Json edge = edge_of(treated(state), "mattress.bottom_head_tape");
  EXPECT_EQ(edge["state"], "not_proven");
  EXPECT_EQ(edge["cause"]["code"], "saw_live_bug");
}

TEST(Treated, AContradictionTakesLethalBack) {
  const Json edge =
      edge_of(treated(folded().at("state"), {{{"subject", k_answering_stroke}, {"kind", "stroke/1"}}}),
              "mattress.bottom_head_tape");
  EXPECT_EQ(edge["state"], "not_proven");
  EXPECT_EQ(edge["cause"]["code"], "contested");
}

TEST(Treated, LeatherIsBarredAndThatExplainsIt) {
  for (const Json& item : whole().at("items")) {
    if (item.at("id") != k_recliner) continue;
    EXPECT_EQ(item["counts"]["lethal"], 0);
    EXPECT_GT(item["counts"]["barred"].get<int>(), 0);
    EXPECT_EQ(item["counts"]["redo_open"], 0);
  }
}

TEST(Treated, NothingOnRecordIsNothingProven) {
  Json state = folded().at("state");
  state["strokes"] = Json::array();
  const Json answer = treated(state);
  EXPECT_EQ(answer["counts"]["lethal"], 0);
  EXPECT_EQ(answer["counts"]["modelled"]["edges"], 0);
  EXPECT_EQ(treated(Json::object())["counts"]["edges"], 0);
}

TEST(Treated, AnotherHeadThanTheTestedStandsOnWhatIsUsual) {
  Json state = folded().at("state");
  for (Json& stroke : state["strokes"]) stroke["head"] = "0194a3c0-0000-7000-8000-00000000ffff";
  const Json edge = edge_of(treated(state), "mattress.top_head_tape");
  EXPECT_EQ(edge["modelled"]["basis"], "prior");
}

TEST(Treated, ARecordThatCannotBeUsedIsNoFailureOfTheRest) {
  Json state = folded().at("state");
  for (Json& stroke : state["strokes"]) {
    if (stroke.at("edge") == "mattress.top_head_tape")
      stroke["marks"] = {{{"at_metres", 0.9}, {"seconds", 90}}, {{"at_metres", 0.5}, {"seconds", 20}}};
  }
  const Json answer = treated(state);
  EXPECT_NE(edge_of(answer, "mattress.top_head_tape")["state"], "lethal");
  EXPECT_EQ(edge_of(answer, "mattress.top_foot_tape")["state"], "lethal");
}

TEST(Treated, AStateOfAnyKindIsAnsweredOrRefused) {
  const Json item{{"id", "a"}, {"kind", "ottoman"}, {"covering", "cotton"}};
  const Json broken{{"items", {3, nullptr, {{"id", 1}}, item, {{"id", "b"}, {"kind", 7}}}},
                    {"strokes",
                     {3,
                      Json::object(),
                      {{"item", "a"}, {"edge", "top.left_welt"}},
                      {{"item", "a"},
                       {"edge", "top.left_welt"},
                       {"length_metres", 0.4},
                       {"seconds", 40},
                       {"marks", {1, 2}}}}},
                    {"edge_marks", {{{"item", "a"}, {"edge", "top.left_welt"}}}},
                    {"redo_notes", {{{"item", "a"}, {"edge", "top.left_welt"}, {"reason", 3}}}},
                    {"methods", 3},
                    {"visits", {1}},
                    {"rooms", {{{"id", 2}}}},
                    {"kit", {{"heads", 4}}},
                    {"job", 5},
                    {"settings", "x"}};
  const Json answer = answer_of("treated", {{"state", broken}, {"samples", 64}});
  EXPECT_EQ(answer["counts"]["lethal"], 0);
  EXPECT_TRUE(ask("report", dumped({{"state", broken}, {"treated", {answer}}, {"state_hash", "0"}})).ok);
  EXPECT_FALSE(ask("treated", R"({"state":3})").ok);
}

TEST(Treated, WhatIsKnownIsNotComputedAgainAndNothingElseIsTakenForIt) {
  const Json& state = folded().at("state");
  const Json first = treated(state);
  Json known = Json::array();
  for (const Json& edge : first.at("items")[0].at("edges")) {
    if (!edge.at("modelled").is_null()) known.push_back(edge.at("modelled"));
  }
  ASSERT_EQ(known.size(), 3U);
  EXPECT_EQ(treated(state, Json::array(), known)["items"], first["items"]);
  for (Json& one : known) one["lethal_metres"] = 0.125;  // to see which answer is used
  EXPECT_EQ(
      edge_of(treated(state, Json::array(), known), "mattress.top_head_tape")["modelled"]["lethal_metres"],
      0.125);
  Json other = state;
  for (Json& stroke : other["strokes"]) stroke["seconds"] = stroke["seconds"].get<double>() + 1;
  EXPECT_NE(
      edge_of(treated(other, Json::array(), known), "mattress.top_head_tape")["modelled"]["lethal_metres"],
      0.125);
  for (Json& test : other["fold_tests"]) test["readings"][0]["peak_celsius"] = 88;
  other["strokes"] = state["strokes"];
  EXPECT_NE(
      edge_of(treated(other, Json::array(), known), "mattress.top_head_tape")["modelled"]["lethal_metres"],
      0.125);
}

TEST(Report, IsMadeOfTheSameAnswersWhetherAskedAtOnceOrItemByItem) {
  const Json& state = folded().at("state");
  const Json hash = folded().at("state_hash");
  Json pieces = Json::array();
  for (const Json& item : whole().at("items"))
    pieces.push_back({{"items", {item}}, {"samples", 256}, {"data", whole().at("data")}});
  const Json at_once = answer_of("report", {{"state", state}, {"treated", {whole()}}, {"state_hash", hash}});
  const Json by_item = answer_of("report", {{"state", state}, {"treated", pieces}, {"state_hash", hash}});
  EXPECT_EQ(at_once["blocks"], by_item["blocks"]);
  EXPECT_EQ(at_once["counts"], whole().at("counts"));
  EXPECT_EQ(at_once["basis"]["state_hash"], hash);
  EXPECT_EQ(at_once["basis"]["samples"], 256);
  EXPECT_FALSE(
      ask("report",
          dumped({{"state", state}, {"treated", {{{"items", {{{"id", "x"}}}}}}}, {"state_hash", hash}}))
          .ok);
}

}  // namespace
}  // namespace lastegg
