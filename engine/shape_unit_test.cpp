#include "engine/shape.h"

#include <gtest/gtest.h>

#include <limits>

#include "engine/trial_question.h"

namespace lastegg {
namespace {

// A request that reads, with one more member put in or replaced.
Json request_with(const std::string& key, Json value) {
  Json request = {{"pace_metres_per_second", 0.025}, {"share", 0.5}};
  request[key] = std::move(value);
  return request;
}

Error refusal_of(const Json& request) {
  const Result<Json> result = read(trial_request(), request);
  EXPECT_FALSE(result) << "read although it should be refused: " << request.dump();
  return result ? Error{} : result.error();
}

void expect_error(const Error& error, const std::string& message, const std::string& where,
                  const std::string& value, const std::string& limit, const std::string& unit) {
  EXPECT_EQ(error.kind, ErrorKind::bad_input);
  EXPECT_EQ(error.message, message);
  EXPECT_EQ(error.where, where);
  EXPECT_EQ(error.value, value);
  EXPECT_EQ(error.limit, limit);
  EXPECT_EQ(error.unit, unit);
}

TEST(ShapeRead, FillsDefaultsAndDropsNotes) {
  const Result<Json> result = read(trial_request(), request_with("note", "for the eye only"));
  ASSERT_TRUE(result) << result.error().message;
  EXPECT_EQ(*result,
            Json({{"pace_metres_per_second", 0.025}, {"towel", "none"}, {"share", 0.5}, {"passes", 1}}));
}

TEST(ShapeRead, ConvertsTextWithAUnit) {
  const Result<Json> inches = read(trial_request(), request_with("pace_metres_per_second", "1 in/s"));
  ASSERT_TRUE(inches) << inches.error().message;
  EXPECT_DOUBLE_EQ((*inches)["pace_metres_per_second"].get<double>(), 0.0254);
  const Result<Json> degrees = read(trial_request(), request_with("readings", {{{"celsius", "160 F"}}}));
  ASSERT_TRUE(degrees) << degrees.error().message;
  EXPECT_NEAR((*degrees)["readings"][0]["celsius"].get<double>(), 71.0 + 1.0 / 9.0, 1e-12);
}

TEST(ShapeRead, ConvertsNumbersWrittenAsWholeOnes) {
  const Result<Json> result = read(trial_request(), request_with("passes", 2.0));
  ASSERT_TRUE(result);
  EXPECT_TRUE((*result)["passes"].is_number_integer());
  const Result<Json> pace = read(trial_request(), request_with("pace_metres_per_second", 1));
  ASSERT_TRUE(pace);
  EXPECT_TRUE((*pace)["pace_metres_per_second"].is_number_float());
}

TEST(ShapeRead, RefusesNumbersPastTheirLimits) {
  expect_error(refusal_of(request_with("pace_metres_per_second", 3)),
               "pace_metres_per_second is 3 m/s; it must be at most 1 m/s", "/pace_metres_per_second", "3",
               "1", "m/s");
  expect_error(refusal_of(request_with("pace_metres_per_second", 0)),
               "pace_metres_per_second is 0 m/s; it must be more than 0 m/s", "/pace_metres_per_second", "0",
               "0", "m/s");
  expect_error(refusal_of(request_with("pace_metres_per_second", "10 ft/s")),
               "pace_metres_per_second is 10 ft/s (3.048 m/s); it must be at most 1 m/s",
               "/pace_metres_per_second", "3.048", "1", "m/s");
  expect_error(refusal_of(request_with("passes", 12)), "passes is 12; it must be at most 9", "/passes", "12",
               "9", "");
}

TEST(ShapeRead, NamesThePlaceInLists) {
  const Error error = refusal_of(request_with("readings", {{{"celsius", 71}}, {{"celsius", -300}}}));
  EXPECT_EQ(error.where, "/readings/1/celsius");
  EXPECT_EQ(error.value, "-300");
  EXPECT_EQ(error.limit, "-273.15");
  EXPECT_TRUE(error.message.starts_with("celsius in entry 2 of readings is -300 ")) << error.message;
}

TEST(ShapeRead, RefusesNumbersThatAreNotFinite) {
  EXPECT_EQ(
      refusal_of(request_with("pace_metres_per_second", std::numeric_limits<double>::quiet_NaN())).where,
      "/pace_metres_per_second");
  EXPECT_EQ(refusal_of(request_with("share", -std::numeric_limits<double>::infinity())).where, "/share");
  EXPECT_EQ(refusal_of(request_with("job", {{"new", {1.0, std::numeric_limits<double>::infinity()}}})).where,
            "/job/new/1");
}

TEST(ShapeRead, RefusesTextWithoutOrWithAForeignUnit) {
  for (const char* text : {"25", "fast", "25 kg", "", "nan m/s"}) {
    const Error error = refusal_of(request_with("pace_metres_per_second", text));
    EXPECT_EQ(error.kind, ErrorKind::bad_input);
    EXPECT_EQ(error.where, "/pace_metres_per_second") << text;
    EXPECT_NE(error.message.find("pace_metres_per_second"), std::string::npos) << error.message;
  }
}

TEST(ShapeRead, RefusesTextWhereTheNumberHasNoUnit) {
  expect_error(refusal_of(request_with("share", "0.5")), "share is \"0.5\"; it must be a number", "/share",
               "0.5", "", "");
}

TEST(ShapeRead, RefusesTheWrongType) {
  EXPECT_EQ(refusal_of(request_with("damp", 1)).message, "damp is 1; it must be true or false");
  EXPECT_EQ(refusal_of(request_with("readings", Json::object())).message,
            "readings is an object; it must be a list");
  EXPECT_EQ(refusal_of(request_with("towel", nullptr)).message, "towel is null; it must be none or wrapped");
  EXPECT_EQ(refusal_of(request_with("passes", 1.5)).message, "passes is 1.5; it must be a whole number");
  EXPECT_EQ(refusal_of(request_with("passes", 1e300)).where, "/passes");
  EXPECT_EQ(refusal_of(Json::array()).message, "the request is an empty list; it must be an object");
}

TEST(ShapeRead, RefusesUnknownWordsAndNamesTheNearest) {
  expect_error(refusal_of(request_with("towel", "wraped")),
               "towel is \"wraped\"; it must be none or wrapped; did you mean wrapped?", "/towel", "wraped",
               "", "");
}

TEST(ShapeRead, RefusesUnknownKeysAndNamesTheNearest) {
  expect_error(refusal_of(request_with("pace", 1)),
               "pace is not known here; did you mean pace_metres_per_second?", "/pace", "pace", "", "");
  const Error far = refusal_of(request_with("readings", {{{"celsius", 1}, {"humidity", 2}}}));
  EXPECT_EQ(far.message, "humidity in entry 1 of readings is not known here; it must be celsius or remark");
}

TEST(ShapeRead, RefusesWhatIsMissing) {
  const Error error = refusal_of(Json{{"share", 0.5}});
  EXPECT_EQ(error.where, "/pace_metres_per_second");
  EXPECT_TRUE(error.message.starts_with(
      "pace_metres_per_second is missing; it must be a number of metres per second"))
      << error.message;
}

TEST(ShapeRead, AsksForExactlyOneGroup) {
  const auto message_of = [](Json more) {
    Json request = {{"pace_metres_per_second", 0.025}};
    request.update(more);
    const Result<Json> result = read(trial_request(), request);
    return result ? "" : result.error().message;
  };
  EXPECT_EQ(message_of({{"share", 0.5}}), "");
  EXPECT_EQ(message_of({{"distance_metres", 1}, {"seconds", 2}}), "");
  EXPECT_EQ(message_of(Json::object()),
            "the request lacks one of these: share or distance_metres with seconds");
  EXPECT_EQ(message_of({{"seconds", 2}}), "the request gives seconds but lacks distance_metres");
  EXPECT_EQ(
      message_of({{"share", 0.5}, {"seconds", 2}}),
      "the request gives share and seconds; it must give only one of these: share or distance_metres with "
      "seconds");
}

TEST(ShapeRead, CountsTheEntriesOfLists) {
  expect_error(refusal_of(request_with("readings", Json::array())),
               "readings has 0 entries; it must have at least 1", "/readings", "0", "1", "entries");
  const Json one = {{"celsius", 1}};
  expect_error(refusal_of(request_with("readings", {one, one, one, one})),
               "readings has 4 entries; it must have at most 3", "/readings", "4", "3", "entries");
}

TEST(ShapeRead, KnowsTheCalendar) {
  EXPECT_TRUE(read(trial_request(), request_with("treated_on", "2028-02-29")));
  EXPECT_EQ(refusal_of(request_with("treated_on", "2026-02-29")).message,
            "treated_on is \"2026-02-29\"; it must be a day that the calendar has");
  for (const char* text :
       {"2026-2-3", "26-02-03", "2026/02/03", "2026-02-03T00:00", "2026-+1-03", "03.02.2026"})
    EXPECT_EQ(refusal_of(request_with("treated_on", text)).where, "/treated_on") << text;
}

TEST(ShapeRead, TellsAlternativesApart) {
  EXPECT_TRUE(read(trial_request(), request_with("front", {{"kind", "flux"}, {"flux_watts_per_m2", 300}})));
  EXPECT_EQ(refusal_of(request_with("front", {{"kind", "flux"}, {"flux_watts_per_m2", true}})).where,
            "/front/flux_watts_per_m2");
  EXPECT_EQ(refusal_of(request_with("front", {{"kind", "flx"}, {"flux_watts_per_m2", 3}})).message,
            "kind in front is \"flx\"; it must be fixed or flux; did you mean flux?");
  EXPECT_EQ(refusal_of(request_with("front", {{"celsius", 3}})).message,
            "kind in front is missing; it must be fixed or flux");
  EXPECT_EQ(refusal_of(request_with("front", 7)).message, "front is 7; it must be an object");
}

TEST(ShapeRead, OpenObjectsAndNullsSurvive) {
  const Json job = {{"title", "A flat"}, {"note", "kept"}, {"version_9", {{"deep", {1, 2.5, nullptr}}}}};
  const Result<Json> result = read(trial_request(), request_with("job", job));
  ASSERT_TRUE(result);
  EXPECT_EQ((*result)["job"], job);
  const Result<Json> endless = read(trial_request(), request_with("until", nullptr));
  ASSERT_TRUE(endless);
  EXPECT_TRUE((*endless)["until"].is_null());
}

TEST(ShapeRead, ReadsTables) {
  EXPECT_TRUE(read(trial_request(), request_with("found", {{"nymph", 2}, {"adult", 0}})));
  EXPECT_EQ(refusal_of(request_with("found", {{"a/b~c", -1}})).where, "/found/a~1b~0c");
}

TEST(ShapeRead, LimitsTheDepthOfFreeContent) {
  Json deep = 1;
  for (int i = 0; i < 100; ++i) deep = Json::array({deep});
  EXPECT_EQ(refusal_of(request_with("job", {{"x", deep}})).message,
            "the request is nested more than 64 levels deep");
}

TEST(ShapeRead, ShortensWhatItQuotes) {
  std::string umlauts;
  for (int i = 0; i < 1000; ++i) umlauts += "\xc3\xa4";
  const Error error = refusal_of(request_with("damp", umlauts));
  EXPECT_LT(error.message.size(), 120U);
  EXPECT_NO_THROW((void)Json(error.message).dump()) << "cut in the middle of a letter";
}

TEST(ShapeRead, PutsThePointerOfTheWholeInFront) {
  const Result<Json> result = read(shape::flag("Yes or no."), 3, "/head/towel");
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error().where, "/head/towel");
}

TEST(ShapeRead, CallsADefaultThatDoesNotFitADefect) {
  const Shape broken = shape::object({shape::with_default("x", shape::flag("x"), 3)}, "Broken.");
  const Result<Json> result = read(broken, Json::object());
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error().kind, ErrorKind::internal);
}

}  // namespace
}  // namespace lastegg
