// Laws of the reader over random documents: whatever it is given it returns a value or a refusal; what it
// accepts it accepts again unchanged; and what fits a shape is accepted.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/shape.h"
#include "engine/trial_question.h"

namespace lastegg {
namespace {

// Keys and words of the trial among others, so that the reader is led into its branches.
std::string random_word() {
  return *rc::gen::element<std::string>("pace_metres_per_second", "towel", "none", "wrapped", "readings",
                                        "celsius", "remark", "treated_on", "2026-03-02", "share",
                                        "distance_metres", "seconds", "passes", "damp", "front", "kind",
                                        "fixed", "flux", "flux_watts_per_m2", "found", "until", "job",
                                        "title", "note", "1 in/s", "71 C", "1/4 in", "", "\xff", "25 mm/s",
                                        "-5 \xc2\xb0"
                                        "C",
                                        "a/b~c");
}

double random_number() {
  return *rc::gen::element(0.0, -0.0, 0.5, 1.0, 2.0, 3.0, -300.0, 1e-300, 1e300, 9007199254740993.0,
                           std::nan(""), HUGE_VAL);
}

Json random_json(int depth) {
  const int kind = *rc::gen::inRange(0, depth > 0 ? 8 : 6);
  switch (kind) {
    case 0:
      return nullptr;
    case 1:
      return *rc::gen::arbitrary<bool>();
    case 2:
      return *rc::gen::arbitrary<std::int64_t>();
    case 3:
      return random_number();
    case 4:
      return random_word();
    case 5:
      return *rc::gen::arbitrary<std::string>();
    default:
      break;
  }
  Json made = kind == 6 ? Json::array() : Json::object();
  const int count = *rc::gen::inRange(0, 5);
  for (int i = 0; i < count; ++i) {
    if (kind == 6)
      made.push_back(random_json(depth - 1));
    else
      made[random_word()] = random_json(depth - 1);
  }
  return made;
}

// A value that fits the shape, by the shape's own words.
Json fitting(const Shape& shape) {
  if (shape.nullable && *rc::gen::arbitrary<bool>()) return nullptr;
  switch (shape.kind) {
    case Shape::Kind::number:
    case Shape::Kind::integer: {
      const double low = shape.minimum.value_or(-1000.0), high = shape.maximum.value_or(low + 2000.0);
      const int step = *rc::gen::inRange(1, 100);
      const double number = low + (high - low) * step / 100.0;
      if (shape.kind == Shape::Kind::integer) return static_cast<std::int64_t>(std::ceil(number));
      return number;
    }
    case Shape::Kind::text:
      return random_word();
    case Shape::Kind::date:
      return *rc::gen::element<std::string>("2026-03-02", "2028-02-29");
    case Shape::Kind::flag:
      return *rc::gen::arbitrary<bool>();
    case Shape::Kind::choice:
      return shape.choices[*rc::gen::inRange<std::size_t>(0, shape.choices.size())].word;
    case Shape::Kind::list: {
      Json list = Json::array();
      const std::size_t most = std::min<std::size_t>(shape.maximum_items, shape.minimum_items + 3);
      const auto count = *rc::gen::inRange<std::size_t>(shape.minimum_items, most + 1);
      for (std::size_t i = 0; i < count; ++i) list.push_back(fitting(shape.element[0]));
      return list;
    }
    case Shape::Kind::table: {
      Json table = Json::object();
      for (int i = *rc::gen::inRange(0, 3); i > 0; --i) table[random_word()] = fitting(shape.element[0]);
      return table;
    }
    case Shape::Kind::object: {
      std::vector<std::string> barred, wanted;
      if (!shape.one_of.empty()) {
        const auto chosen = *rc::gen::inRange<std::size_t>(0, shape.one_of.size());
        wanted = shape.one_of[chosen];
        for (const auto& group : shape.one_of) barred.insert(barred.end(), group.begin(), group.end());
      }
      const auto holds = [](const std::vector<std::string>& words, const std::string& word) {
        return std::find(words.begin(), words.end(), word) != words.end();
      };
      Json object = Json::object();
      for (const Field& field : shape.fields) {
        const bool want = field.required || holds(wanted, field.key) ||
                          (!holds(barred, field.key) && *rc::gen::arbitrary<bool>());
        if (want) object[field.key] = fitting(field.shape);
      }
      return object;
    }
    case Shape::Kind::either:
      return fitting(shape.alternatives[*rc::gen::inRange<std::size_t>(0, shape.alternatives.size())]);
    case Shape::Kind::anything:
      return 1;
  }
  return nullptr;
}

// Replaces one member somewhere below by a random value.
void disturb(Json& value) {
  if (!value.is_structured() || value.empty() || *rc::gen::inRange(0, 4) == 0) {
    value = random_json(2);
    return;
  }
  auto place = value.begin();
  std::advance(place, *rc::gen::inRange<std::ptrdiff_t>(0, static_cast<std::ptrdiff_t>(value.size())));
  disturb(*place);
}

void check_reading(const Json& value) {
  const Result<Json> once = read(trial_request(), value);
  if (!once) {
    RC_ASSERT(once.error().kind == ErrorKind::bad_input);
    RC_ASSERT(!once.error().message.empty());
    RC_ASSERT(once.error().where.empty() || once.error().where[0] == '/');
    return;
  }
  const Result<Json> twice = read(trial_request(), *once);
  RC_ASSERT(twice.has_value());
  RC_ASSERT(*twice == *once);
}

RC_GTEST_PROP(ShapeReadLaw, AnythingIsReadOrRefused, ()) {
  check_reading(random_json(4));
}

RC_GTEST_PROP(ShapeReadLaw, AlmostFittingIsReadOrRefused, ()) {
  Json value = fitting(trial_request());
  disturb(value);
  const Result<Json> once = read(trial_request(), value);
  RC_CLASSIFY(once.has_value(), "accepted");
  check_reading(value);
}

RC_GTEST_PROP(ShapeReadLaw, WhatFitsIsAcceptedAndStable, ()) {
  const Json value = fitting(trial_request());
  RC_ASSERT(read(trial_request(), value).has_value());
  check_reading(value);
}

}  // namespace
}  // namespace lastegg
