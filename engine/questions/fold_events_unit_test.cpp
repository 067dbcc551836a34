// The question as programs meet it: through ask(), with text in and text out.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "engine/ask.h"
#include "engine/document.h"
#include "engine/questions/questions.h"
#include "job/record/events_for_tests.h"

using namespace lastegg;
using lastegg::record::id_number;
using lastegg::record::line_of;
using lastegg::record::reading_line;
using lastegg::record::room_line;

namespace {

Json answer_of(const Json& request) {
  const AskOutcome outcome = ask("fold_events", dumped(request));
  EXPECT_TRUE(outcome.ok) << outcome.text;
  Json answer = *parse_document(outcome.text);
  for (const char* frame : {"engine", "data", "warnings"}) EXPECT_TRUE(answer.contains(frame));
  Json result = answer;
  for (const char* frame : {"engine", "data", "warnings"}) result.erase(frame);
  const Result<Json> checked = check_answer(fold_events_question(), result);
  EXPECT_TRUE(checked.has_value()) << checked.error().message;
  return answer;
}

std::vector<std::string> some_lines() {
  return {line_of(1, "job/1", 100, R"({"title":"J","typed":null,"n":1.00})"),
          room_line(2, 101, "a"),
          room_line(3, 101, "b", 2),
          room_line(4, 101, "c", 2),
          line_of(5, "fold_test/1", 102, R"({"title":"F","start_celsius":21,"events":"hidden"})"),
          reading_line(6, 103, 102, 71.5),
          reading_line(7, 104, 102, 471.5),
          line_of(8, "item/1", 105, R"({"title":"S","kind":"sofa","covering":"cotton"})"),
          line_of(9, "removed/1", 105, "{}"),
          line_of(10, "smell/1", 106, "{}")};
}

}  // namespace

TEST(FoldEvents, AnswersWithItsShape) {
  const Json answer = answer_of({{"lines", some_lines()}});
  const Json& state = answer["state"];
  EXPECT_EQ(state["job"]["title"], "J");
  EXPECT_EQ(state["job"]["event"], id_number(1));
  EXPECT_FALSE(state["job"].contains("typed"));
  EXPECT_TRUE(state["dwelling"].is_null());
  ASSERT_EQ(state["rooms"].size(), 1U);
  EXPECT_EQ(state["rooms"][0]["events"].size(), 2U);
  ASSERT_EQ(state["fold_tests"].size(), 1U);
  EXPECT_EQ(state["fold_tests"][0]["events"], Json::array({id_number(5)}));
  EXPECT_EQ(state["fold_tests"][0]["readings"][0]["peak_celsius"], 71.5);
  ASSERT_EQ(state["removed"].size(), 1U);
  EXPECT_EQ(state["removed"][0]["entity"]["kind"], "sofa");
  EXPECT_EQ(state["removed"][0]["removed_by"][0], id_number(9));
  ASSERT_EQ(answer["conflicts"].size(), 1U);
  EXPECT_EQ(answer["conflicts"][0]["values"][1]["title"], "c");
  ASSERT_EQ(answer["refused"].size(), 1U);
  EXPECT_EQ(answer["refused"][0]["error"]["value"], 471.5);
  EXPECT_EQ(answer["refused"][0]["error"]["where"], "/data/peak_celsius");
  EXPECT_EQ(answer["unknown"], Json::array({{{"kind", "smell/1"}, {"count", 1}}}));
  EXPECT_EQ(answer["event_count"], 10);
  EXPECT_TRUE(answer["warnings"].empty());
}

TEST(FoldEvents, HashesTheBytesOfLines) {
  record::EventSet set = record::set_of(some_lines());
  EXPECT_EQ(answer_of({{"lines", some_lines()}})["state_hash"], set.state_hash());
}

TEST(FoldEvents, TakesObjectsButSaysThatTheirBytesAreItsOwn) {
  Json events = Json::array();
  for (const std::string& line : some_lines()) events.push_back(*parse_document(line));
  const Json by_objects = answer_of({{"events", events}});
  const Json by_lines = answer_of({{"lines", some_lines()}});
  EXPECT_EQ(by_objects["state"], by_lines["state"]);
  EXPECT_NE(by_objects["state_hash"], by_lines["state_hash"]);  // 1.00 was spelt 1.0
  ASSERT_EQ(by_objects["warnings"].size(), 1U);
  EXPECT_EQ(by_objects["warnings"][0]["code"], "bytes_respelt");
}

TEST(FoldEvents, PointsAtEntriesThatAreNoEvents) {
  const Json answer = answer_of({{"lines", {room_line(1, 100, "a"), "nonsense", "{}"}}});
  ASSERT_EQ(answer["not_events"].size(), 2U);
  EXPECT_EQ(answer["not_events"][0]["where"], "/lines/1");
  EXPECT_EQ(answer["not_events"][1]["where"], "/lines/2");
  EXPECT_EQ(answer["not_events"][1]["error"]["where"], "/id");
  EXPECT_EQ(answer["event_count"], 1);
  const Json objects = answer_of({{"events", {1, nullptr, Json::object()}}});
  EXPECT_EQ(objects["not_events"].size(), 3U);
}

TEST(FoldEvents, RefusesWrongRequests) {
  for (const char* request :
       {"{}", R"({"lines":[],"events":[]})", R"({"lines":{}})", R"({"lines":[1]})", R"({"event":[]})"}) {
    const AskOutcome outcome = ask("fold_events", request);
    EXPECT_FALSE(outcome.ok) << request;
    EXPECT_EQ((*parse_document(outcome.text))["error"]["kind"], "bad_input") << outcome.text;
  }
}
