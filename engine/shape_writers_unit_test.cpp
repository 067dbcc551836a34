#include <gtest/gtest.h>

#include "engine/shape.h"
#include "engine/trial_question.h"

namespace lastegg {
namespace {

const Json& property(const Json& schema, const std::string& key) {
  return schema.at("properties").at(key);
}

TEST(ShapeWriters, SchemaOfANumberInARequestTakesTextToo) {
  const Json schema = to_json_schema(trial_request());
  const Json& pace = property(schema, "pace_metres_per_second");
  EXPECT_EQ(pace["anyOf"][0], Json({{"type", "number"}, {"exclusiveMinimum", 0.0}, {"maximum", 1.0}}));
  EXPECT_EQ(pace["anyOf"][1]["type"], "string");
  EXPECT_EQ(pace["description"], "Pace of the head. In metres per second.");
  EXPECT_EQ(property(schema, "share"),
            Json({{"type", "number"}, {"maximum", 1.0}, {"description", "A share."}}));
}

TEST(ShapeWriters, SchemaOfANumberInAnAnswerIsANumber) {
  const Json schema = to_json_schema(trial_request(), Side::answer);
  EXPECT_EQ(property(schema, "pace_metres_per_second")["type"], "number");
  EXPECT_FALSE(schema.contains("additionalProperties")) << "answers may grow";
  EXPECT_FALSE(schema["properties"].contains("note"));
}

TEST(ShapeWriters, SchemaHoldsKeysListsAndDefaults) {
  const Json schema = to_json_schema(trial_request());
  EXPECT_EQ(schema["required"], Json({"pace_metres_per_second"}));
  EXPECT_EQ(schema["additionalProperties"], false);
  EXPECT_TRUE(schema["properties"].contains("note"));
  const Json& towel = property(schema, "towel");
  EXPECT_EQ(towel["enum"], Json({"none", "wrapped"}));
  EXPECT_EQ(towel["default"], "none");
  EXPECT_EQ(towel["description"],
            "Cloth between head and fabric. none: The bare head. wrapped: A towel around the head.");
  EXPECT_EQ(property(schema, "readings")["minItems"], 1);
  EXPECT_EQ(property(schema, "readings")["maxItems"], 3);
  EXPECT_EQ(property(schema, "treated_on")["format"], "date");
  EXPECT_EQ(property(schema, "until")["anyOf"][1], Json({{"type", "null"}}));
  EXPECT_EQ(property(schema, "front")["anyOf"].size(), 2U);
  EXPECT_EQ(property(schema, "found")["additionalProperties"]["type"], "integer");
  EXPECT_FALSE(property(schema, "job").contains("additionalProperties"));
}

TEST(ShapeWriters, SchemaAsksForExactlyOneGroup) {
  const Json expected = Json::parse(R"([
    {"required": ["share"], "not": {"anyOf": [{"required": ["distance_metres"]}, {"required": ["seconds"]}]}},
    {"required": ["distance_metres", "seconds"], "not": {"anyOf": [{"required": ["share"]}]}}])");
  EXPECT_EQ(to_json_schema(trial_request())["oneOf"], expected);
}

TEST(ShapeWriters, TypeScript) {
  using namespace shape;
  const Shape small = object({field("seconds", number(Unit::second, "Time.").above(0)),
                              optional("towel", choice({{"none", ""}, {"laid", ""}}, "Cloth.")),
                              field("list", list(either({flag(""), text("")}, ""), "Mixed.")),
                              field("rows", list(list(ratio(""), ""), "").or_null()),
                              field("by-name", table(object({field("x", integer(""))}, ""), ""))},
                             "Small.");
  EXPECT_EQ(to_typescript(small, Side::request), R"({
  /** Time. [seconds] [more than 0] */
  seconds: number | string;
  /** Cloth. */
  towel?: "none" | "laid";
  /** Mixed. */
  list: (boolean | string)[];
  rows: number[][] | null;
  "by-name": Record<string, {
    x: number;
  }>;
})");
  EXPECT_NE(to_typescript(small, Side::answer).find("seconds: number;"), std::string::npos);
}

TEST(ShapeWriters, ListsOfNullablesAreBracketed) {
  using namespace shape;
  EXPECT_EQ(to_typescript(list(ratio("").or_null(), "")), "(number | null)[]");
  EXPECT_EQ(to_typescript(list(either({object({}, ""), object({}, "")}, ""), "")), "({\n} | {\n})[]");
}

TEST(ShapeWriters, MarkdownRows) {
  const std::string rows = to_markdown(trial_request());
  for (const char* row :
       {"| `pace_metres_per_second` | metres per second | more than 0, at most 1 | Pace of the head. |\n",
        "| `towel` | word |  | Cloth between head and fabric. Default \"none\". One of `none`, `wrapped`. "
        "|\n",
        "| `readings` | list | 1 to 3 entries | Peaks, in the order of the passes. May be left out. |\n",
        "| `readings[].remark` | text |  | Words. May be left out. |\n",
        "| `front.flux_watts_per_m2` | watts per m2 |  | Heat into the face. |\n",
        "| `found` | object |  | Finds by stage. May be left out. |\n",
        "| `found.*` | whole number | at least 0 | How many. |\n"})
    EXPECT_NE(rows.find(row), std::string::npos) << row << "is not in\n" << rows;
}

TEST(ShapeWriters, MarkdownShowsTheSameObjectOnce) {
  using namespace shape;
  const Shape layer =
      object({field("a", ratio("first")), field("b", ratio("second")), field("c", ratio("third"))}, "");
  EXPECT_EQ(to_markdown(object({field("top", layer), optional("below", list(layer, "layers below"))}, "")),
            "| `top` | object |  |  |\n"
            "| `top.a` | number |  | First. |\n"
            "| `top.b` | number |  | Second. |\n"
            "| `top.c` | number |  | Third. |\n"
            "| `below` | list |  | Layers below. May be left out. Keys as in `top`. |\n");
}

TEST(ShapeWriters, MarkdownCellsHoldNoBars) {
  using namespace shape;
  EXPECT_EQ(to_markdown(object({field("x", flag("This | that."))}, "")),
            "| `x` | true or false |  | This \\| that. |\n");
}

TEST(ShapeWriters, ClosedLists) {
  const auto lists = closed_lists(trial_request());
  ASSERT_EQ(lists.size(), 3U);
  EXPECT_EQ(lists[0].first, "towel");
  EXPECT_EQ(lists[1].first, "front.kind");
  EXPECT_EQ(lists[1].second[0].word, "fixed");
  EXPECT_EQ(lists[2].second[0].word, "flux");
}

}  // namespace
}  // namespace lastegg
