#include "job/record/event.h"

#include <gtest/gtest.h>

#include <string>

#include "job/record/event_set.h"
#include "job/record/events_for_tests.h"

using namespace lastegg;
using namespace lastegg::record;

namespace {

const std::string k_head =
    R"({"id":"00000000-0000-7000-8000-000000000001","kind":"room/1","subject":"00000000-0000-7000-8000-000000000002",)"
    R"("device":"d","actor":"a","at":"t",)";

void expect_refused(const std::string& line, const std::string& where, const std::string& part) {
  const auto event = parse_event(line);
  ASSERT_FALSE(event.has_value()) << line;
  EXPECT_EQ(event.error().kind, ErrorKind::bad_input);
  EXPECT_EQ(event.error().where, where) << line;
  EXPECT_NE(event.error().message.find(part), std::string::npos) << event.error().message;
}

}  // namespace

TEST(Event, IsReadAndKeepsItsBytes) {
  const std::string line = reading_line(7, 8, 9, 71.5, 6);
  const auto event = parse_event(line);
  ASSERT_TRUE(event.has_value());
  EXPECT_EQ(event->bytes, line);
  EXPECT_EQ(event->id, id_number(7));
  EXPECT_EQ(event->kind, "reading/1");
  EXPECT_EQ(event->subject, id_number(8));
  EXPECT_EQ(event->corrects, id_number(6));
  EXPECT_EQ(event->device, "d");
  EXPECT_EQ(event->actor, "a");
  EXPECT_EQ(event->at, "2026-01-02T03:04:05Z");
  EXPECT_EQ(event->data["peak_celsius"], 71.5);
}

// What a parser and writer of JSON would change: spellings of numbers, escapes, spaces, order, unknown
// members.
TEST(Event, KeepsSpellingsThatAWriterOfJsonWouldChange) {
  for (const char* data :
       {R"({"a":1.0})", R"({"a":1.00})", R"({"a":1e0})", R"({"a":100E-2})", R"({ "z":1, "a" : -0.0 })",
        R"({"a":"\u00e9\u0301\ud83d\ude00","b":"é😀","c":"\/"})", R"({"a":"\u202e\u0000x\u007f"})",
        R"({"a":123456789012345678901234567890})", R"({"a":0.1000000000000000055511151231257827})"}) {
    const std::string line = k_head + R"("data":)" + data + R"(,"of_the_future":[1.50,{"x":null}]})";
    EventSet record;
    ASSERT_TRUE(record.add(line).has_value()) << line;
    EXPECT_EQ(record.ndjson(), line + "\n");
    EventSet again;
    for_each_line(record.ndjson(),
                  [&](std::string_view one, std::size_t) { ASSERT_TRUE(again.add(one).has_value()); });
    EXPECT_EQ(again.ndjson(), line + "\n");
    EXPECT_EQ(again.state_hash(), record.state_hash());
  }
}

TEST(Event, SameFactSpeltOtherwiseHasAnotherHash) {
  EventSet one, other;
  ASSERT_TRUE(one.add(k_head + R"("data":{"a":1.0}})").has_value());
  ASSERT_TRUE(other.add(k_head + R"("data":{"a":1.00}})").has_value());
  EXPECT_NE(one.state_hash(), other.state_hash());
}

TEST(Event, RefusesWhatIsNone) {
  expect_refused("", "", "one line");
  expect_refused("[]", "", "one line");
  expect_refused(" {}", "", "one line");
  expect_refused("\xef\xbb\xbf{}", "", "one line");
  expect_refused("{\"a\":\n1}", "", "one line");
  expect_refused("{\"a\":\r1}", "", "one line");
  expect_refused("{nonsense}", "", "not one JSON object");
  expect_refused("{\"a\":\"\xff\"}", "", "UTF-8");
  expect_refused(R"({"a":"\ud800"})", "", "UTF-8");
  expect_refused(R"({"a":1e999})", "", "not one JSON object");
  expect_refused(R"({} {})", "", "not one JSON object");
  expect_refused("{}", "/id", "missing");
  expect_refused(R"({"id":5})", "/id", "must be a text");
  expect_refused(R"({"id":"1"})", "/id", "UUID");
  expect_refused(R"({"id":"00000000-0000-7000-8000-00000000000A"})", "/id", "lower case");
  expect_refused(R"({"id":"00000000-0000-7000-8000-000000000001"})", "/kind", "missing");
  expect_refused(k_head + R"("data":[]})", "/data", "must be an object");
  expect_refused(k_head + R"("note":1})", "/data", "missing");
  expect_refused(k_head + R"("data":{},"corrects":"x"})", "/corrects", "UUID");
  expect_refused(k_head + R"("data":{},"id":"00000000-0000-7000-8000-000000000009"})", "", "twice");
  expect_refused(k_head + R"("data":{"a":{"b":1,"b":1}}})", "", "\"b\" is given twice");
}

TEST(Event, AllowsEqualKeysInDifferentObjects) {
  EXPECT_TRUE(parse_event(k_head + R"("data":{"a":{"b":1},"c":[{"b":1},{"b":2}],"id":1}})").has_value());
}

TEST(Event, RefusesDepthAndLengthBeyondTheLimits) {
  const auto nested = [](std::size_t levels) {
    return k_head + R"("data":{"a":)" + std::string(levels, '[') + std::string(levels, ']') + "}}";
  };
  EXPECT_TRUE(parse_event(nested(k_deepest_event_levels - 2)).has_value());
  expect_refused(nested(k_deepest_event_levels), "", "levels deep");
  expect_refused(nested(400'000), "", "levels deep");
  const std::string start = k_head + R"("data":{"a":")";
  const std::string longest = start + std::string(k_longest_event_bytes - start.size() - 3, 'x') + "\"}}";
  EXPECT_TRUE(parse_event(longest).has_value());
  expect_refused(longest.substr(0, start.size()) + "x" + longest.substr(start.size()), "", "bytes long");
}

TEST(Event, NullCorrectsNothing) {
  const auto event = parse_event(k_head + R"("data":{},"corrects":null})");
  ASSERT_TRUE(event.has_value());
  EXPECT_FALSE(event->corrects.has_value());
}

TEST(Lines, EndWithLineFeedOrBothSigns) {
  std::string seen;
  for_each_line("one\r\n\ntwo\nthree", [&](std::string_view line, std::size_t index) {
    seen += fmt::format("{}:{} ", index, line);
  });
  EXPECT_EQ(seen, "0:one 2:two 3:three ");
}

TEST(SameValue, LooksAtValuesNotSpellings) {
  const auto json = [](const char* text) { return Json::parse(text, nullptr, false); };
  EXPECT_TRUE(same_value(json(R"({"a":1,"b":[2.50]})"), json(R"({"b":[2.5],"a":1.0})")));
  EXPECT_FALSE(same_value(json(R"({"a":1})"), json(R"({"a":1,"b":null})")));
  EXPECT_FALSE(same_value(json(R"({"a":[1,2]})"), json(R"({"a":[2,1]})")));
  EXPECT_FALSE(same_value(json(R"({"a":"1"})"), json(R"({"a":1})")));
}
