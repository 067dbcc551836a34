#include "physics/evidence/datum.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lastegg {
namespace {

using Json = nlohmann::json;

Json good() {
  return {{"value", 0.06},       {"range", {0.05, 0.07}}, {"unit", "W/(m K)"},        {"source", "memory"},
          {"locator", "page 3"}, {"quality", "handbook"}, {"note", "of dry material"}};
}

TEST(Datum, ReadsAll) {
  const auto datum = read_datum(good(), "W/(m K)", "terry/conductivity");
  ASSERT_TRUE(datum);
  EXPECT_EQ(datum->value, 0.06);
  EXPECT_EQ(datum->range->low, 0.05);
  EXPECT_EQ(datum->range->high, 0.07);
  EXPECT_EQ(datum->source, "memory");
  EXPECT_EQ(datum->locator, "page 3");
  EXPECT_EQ(datum->quality, Quality::handbook);
  EXPECT_EQ(datum->note, "of dry material");
}

TEST(Datum, RefusesWhatIsIncomplete) {
  for (const char* key : {"value", "unit", "source", "quality"}) {
    Json object = good();
    object.erase(key);
    const auto datum = read_datum(object, "W/(m K)", "terry");
    ASSERT_FALSE(datum) << key;
    EXPECT_EQ(datum.error().where, "terry");
  }
  EXPECT_FALSE(read_datum(good(), "kg/m3", "terry"));
  EXPECT_FALSE(read_datum(Json(3.0), "kg/m3", "terry"));
  const auto changed = [](const char* key, const Json& value) {
    Json object = good();
    object[key] = value;
    return object;
  };
  EXPECT_FALSE(read_datum(changed("value", "0.06"), "W/(m K)", "terry"));
  EXPECT_FALSE(read_datum(changed("value", 0.08), "W/(m K)", "terry"));
  EXPECT_FALSE(read_datum(changed("range", {0.05}), "W/(m K)", "terry"));
  EXPECT_FALSE(read_datum(changed("range", {"a", "b"}), "W/(m K)", "terry"));
  EXPECT_FALSE(read_datum(changed("quality", "guess"), "W/(m K)", "terry"));
  Json silent = changed("quality", "estimate");
  EXPECT_TRUE(read_datum(silent, "W/(m K)", "terry"));
  silent.erase("note");
  EXPECT_FALSE(read_datum(silent, "W/(m K)", "terry")) << "an estimate says how";
}

TEST(Datum, RangeIsTheMiddle95PercentOfALogNormal) {
  const auto datum = read_datum(good(), "W/(m K)", "terry");
  // From the geometric middle, 1.96 standard deviations reach either end.
  EXPECT_NEAR(std::sqrt(0.05 * 0.07) * std::exp(1.96 * datum->log_spread()), 0.07, 1e-12);
  Json certain = good();
  certain.erase("range");
  EXPECT_EQ(read_datum(certain, "W/(m K)", "terry")->log_spread(), 0);
  Json to_zero = good();
  to_zero["range"] = {0, 0.07};
  EXPECT_EQ(read_datum(to_zero, "W/(m K)", "terry")->log_spread(), 0);
}

TEST(DataFile, KeyIsChecked) {
  EXPECT_TRUE(parse_data(R"({"key": "a/1"})", "a/1"));
  EXPECT_FALSE(parse_data(R"({"key": "a/2"})", "a/1"));
  EXPECT_FALSE(parse_data("[]", "a/1"));
  EXPECT_FALSE(parse_data("{", "a/1"));
}

TEST(Quality, NamesAreThoseOfTheFiles) {
  for (const Quality quality :
       {Quality::measured, Quality::handbook, Quality::practice, Quality::estimate, Quality::from_memory})
    EXPECT_EQ(quality_named(quality_name(quality)), quality);
  EXPECT_FALSE(quality_named("various"));
}

}  // namespace
}  // namespace lastegg
