#include "engine/document.h"

#include <gtest/gtest.h>

namespace lastegg {
namespace {

std::string refusal_of(std::string_view text) {
  const Result<Json> document = parse_document(text);
  return document ? "" : document.error().message;
}

TEST(Document, ReadsWhatTheParserReads) {
  constexpr std::string_view k_text = R"({"a":[1,-2,2.5,true,null,"\u00e4"],"b":{"c":{}},"a2":[]})";
  const Result<Json> document = parse_document(k_text);
  ASSERT_TRUE(document);
  EXPECT_EQ(*document, Json::parse(k_text));
  EXPECT_EQ(document->dump(), Json::parse(k_text).dump());  // the order of keys too
}

TEST(Document, NamesLineAndColumnOfASlip) {
  EXPECT_EQ(refusal_of("{\"a\":1,\n \"b\" 2}"), "the request is not JSON: line 2, column 6 cannot be read");
  EXPECT_EQ(refusal_of(""), "the request is empty; it must be a JSON object");
  EXPECT_EQ(refusal_of(" \n"), "the request is empty; it must be a JSON object");
  EXPECT_EQ(refusal_of("{\"a\":"), "the request ends in the middle of a JSON value");
  EXPECT_NE(refusal_of("{} {}"), "");
}

TEST(Document, RefusesBytesThatAreNotUtf8) {
  EXPECT_NE(refusal_of("{\"a\":\"\xff\"}"), "");
  EXPECT_NE(refusal_of("{\"a\":\"\xc3\"}"), "");
  EXPECT_NE(refusal_of("{\"a\":\"\xed\xa0\x80\"}"), "");  // a surrogate
  EXPECT_NE(refusal_of(R"({"a":"\ud800"})"), "");
}

TEST(Document, RefusesAKeyGivenTwice) {
  EXPECT_EQ(refusal_of(R"({"a":{"b":1,"b":2}})"), "the key \"b\" is given twice in one object");
  EXPECT_EQ(refusal_of(R"([{"b":1},{"b":2}])"), "");
}

TEST(Document, RefusesNumbersBeyondADouble) {
  EXPECT_EQ(refusal_of("[1e999]"), "the number 1e999 is too large");
  EXPECT_EQ(refusal_of("[1e308]"), "");
  EXPECT_NE(refusal_of("[NaN]"), "");
}

TEST(Document, RefusesDeepNesting) {
  const std::string fits = std::string(64, '[') + std::string(64, ']');
  const std::string deep = std::string(65, '[') + std::string(65, ']');
  EXPECT_EQ(refusal_of(fits), "");
  EXPECT_EQ(refusal_of(deep), "the request is nested more than 64 levels deep");
  EXPECT_EQ(refusal_of(std::string(1000000, '[')), "the request is nested more than 64 levels deep");
}

TEST(Document, RefusesWhatIsTooLong) {
  const Result<Json> document = parse_document(std::string(k_longest_request_bytes + 1, ' '));
  ASSERT_FALSE(document);
  EXPECT_EQ(document.error().value, "16777217");
  EXPECT_EQ(document.error().limit, "16777216");
  EXPECT_EQ(document.error().unit, "bytes");
}

TEST(Document, RefusesTooManyValues) {
  std::string text = "[0";
  for (std::size_t i = 0; i < k_most_request_values; ++i) text += ",0";
  EXPECT_EQ(refusal_of(text + "]"), "the request holds more than 2000000 values");
}

TEST(Document, ManyKeysCostNoMoreThanTheirNumber) {
  // A search through all keys for each new one would be 10^10 comparisons here, and the test would not end.
  std::string text = "{";
  for (int i = 0; i < 100000; ++i) text += (i == 0 ? "\"k" : ",\"k") + std::to_string(i) + "\":0";
  const Result<Json> document = parse_document(text + "}");
  ASSERT_TRUE(document);
  EXPECT_EQ(document->size(), 100000U);
}

}  // namespace
}  // namespace lastegg
