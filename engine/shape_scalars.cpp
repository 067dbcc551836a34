// Plain values of requests: numbers, text, days, words of closed lists.
#include "engine/shape_scalars.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdint>

#include "engine/nearest_word.h"
#include "words/say.h"

namespace lastegg {
namespace {

constexpr std::size_t k_longest_value_in_messages = 60;
constexpr double k_largest_exact_integer = 9007199254740992.0;  // 2^53: beyond it a double skips integers

// A value as messages show it: short, and one line.
std::string shown(const Json& value) {
  if (value.is_array()) return value.empty() ? say("an empty list") : say("a list");
  if (value.is_object()) return say("an object");
  std::string text = value.dump(-1, ' ', false, Json::error_handler_t::replace);
  if (text.size() <= k_longest_value_in_messages) return text;
  std::size_t end = k_longest_value_in_messages;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
  return text.substr(0, end) + "...";
}

std::string value_of(const Json& value) {
  if (value.is_string()) return value.get<std::string>();
  return value.is_structured() ? std::string() : shown(value);
}

std::string with_sign(double number, const std::optional<Unit>& unit) {
  std::string text = fmt::format("{}", number);
  if (!unit) return text;
  const std::string_view sign = unit_sign(*unit);
  return sign.empty() ? text : text + " " + std::string(sign);
}

std::string number_wanted(const Shape& shape) {
  const std::string kind = shape.kind == Shape::Kind::integer ? say("a whole number") : say("a number");
  if (!shape.unit || unit_sign(*shape.unit).empty()) return kind;
  std::string wanted = say("{} of {}", kind, in_language(unit_name(*shape.unit)));
  const std::vector<std::string> spellings = accepted_spellings(*shape.unit);
  if (!spellings.empty()) wanted += say(", or text with a unit ({})", any_of(spellings));
  return wanted;
}

std::optional<int> digits(std::string_view text) {
  int number = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (problem != std::errc{} || end != text.data() + text.size() || text.empty() || text[0] == '-')
    return std::nullopt;
  return number;
}

}  // namespace

// "pace is 3 m/s; it must be at most 1 m/s": the sentence of every refusal of a value.
Error refused(const Place& place, const Json& value, const std::string& given, const std::string& demand) {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = say("{} is {}; it must be {}", place.spoken(), given, demand);
  error.where = place.pointer();
  error.value = value_of(value);
  return error;
}

std::string wanted(const Shape& shape) {
  switch (shape.kind) {
    case Shape::Kind::number:
    case Shape::Kind::integer:
      return number_wanted(shape);
    case Shape::Kind::text:
      return say("text");
    case Shape::Kind::date:
      return say("a day written as year-month-day, such as \"2026-03-02\"");
    case Shape::Kind::flag:
      return say("true or false");
    case Shape::Kind::choice: {
      std::vector<std::string> words;
      for (const Choice& choice : shape.choices) words.push_back(choice.word);
      return any_of(words);
    }
    case Shape::Kind::list:
      return say("a list");
    case Shape::Kind::object:
    case Shape::Kind::table:
      return say("an object");
    case Shape::Kind::either: {
      std::vector<std::string> kinds;
      for (const Shape& alternative : shape.alternatives) {
        std::string kind = wanted(alternative);
        if (std::find(kinds.begin(), kinds.end(), kind) == kinds.end()) kinds.push_back(std::move(kind));
      }
      std::string text;
      for (const std::string& kind : kinds) text += (text.empty() ? "" : say(", or ")) + kind;
      return text;
    }
    case Shape::Kind::anything:
      return say("any value");
  }
  return say("another value");
}

Refusal wrong_type(const Shape& shape, const Json& value, const Place& place) {
  return refuse(refused(place, value, shown(value), wanted(shape)));
}

namespace {

// Refuses a number outside the shape's limits; `given` is how the person wrote it.
std::optional<Error> outside_limits(const Shape& shape, double number, const std::string& given,
                                    const Place& place) {
  std::string demand;
  double limit = 0.0;
  if (shape.minimum && (number < *shape.minimum || (shape.minimum_excluded && number == *shape.minimum))) {
    limit = *shape.minimum;
    demand = shape.minimum_excluded ? say("more than {}", with_sign(limit, shape.unit))
                                    : say("at least {}", with_sign(limit, shape.unit));
  } else if (shape.maximum &&
             (number > *shape.maximum || (shape.maximum_excluded && number == *shape.maximum))) {
    limit = *shape.maximum;
    demand = shape.maximum_excluded ? say("less than {}", with_sign(limit, shape.unit))
                                    : say("at most {}", with_sign(limit, shape.unit));
  } else {
    return std::nullopt;
  }
  Error error = refused(place, number, given, demand);
  error.value = fmt::format("{}", number);
  error.limit = fmt::format("{}", limit);
  if (shape.unit) error.unit = unit_sign(*shape.unit);
  return error;
}

}  // namespace

Result<Json> read_number(const Shape& shape, const Json& value, const Place& place) {
  double number = 0.0;
  std::string given;
  if (value.is_number()) {
    number = value.get<double>();
    given = with_sign(number, shape.unit);
  } else if (value.is_string() && shape.unit && *shape.unit != Unit::none) {
    const std::string typed = value.get<std::string>();
    const Result<double> quantity = parse_quantity(typed, *shape.unit);
    if (!quantity) {
      Error error = quantity.error();
      error.message = place.spoken() + ": " + error.message;
      error.where = place.pointer();
      if (error.value.empty()) error.value = typed;
      return refuse(std::move(error));
    }
    number = *quantity;
    const std::string converted = with_sign(number, shape.unit);
    given = typed == converted ? typed : typed + " (" + converted + ")";
  } else {
    return wrong_type(shape, value, place);
  }
  if (!std::isfinite(number)) return refuse(refused(place, value, given, say("a finite number")));
  if (auto error = outside_limits(shape, number, given, place)) return refuse(*std::move(error));
  return Json(number);
}

Result<Json> read_integer(const Shape& shape, const Json& value, const Place& place) {
  if (!value.is_number()) return wrong_type(shape, value, place);
  const double number = value.get<double>();
  if (!std::isfinite(number) || number != std::floor(number) || std::fabs(number) > k_largest_exact_integer)
    return wrong_type(shape, value, place);
  if (auto error = outside_limits(shape, number, shown(value), place)) return refuse(*std::move(error));
  return Json(static_cast<std::int64_t>(number));
}

Result<Json> read_choice(const Shape& shape, const Json& value, const Place& place) {
  if (!value.is_string()) return wrong_type(shape, value, place);
  const std::string& word = value.get_ref<const std::string&>();
  std::vector<std::string> words;
  for (const Choice& choice : shape.choices) {
    if (choice.word == word) return value;
    words.push_back(choice.word);
  }
  Error error = refused(place, value, shown(value), wanted(shape));
  const std::string nearest = nearest_word(word, words);
  if (!nearest.empty() && words.size() > 1) error.message += say("; did you mean {}?", nearest);
  return refuse(std::move(error));
}

Result<Json> read_date(const Shape& shape, const Json& value, const Place& place) {
  if (!value.is_string()) return wrong_type(shape, value, place);
  const std::string_view day = value.get_ref<const std::string&>();
  if (day.size() != 10 || day[4] != '-' || day[7] != '-') return wrong_type(shape, value, place);
  const auto y = digits(day.substr(0, 4)), m = digits(day.substr(5, 2)), d = digits(day.substr(8, 2));
  if (!y || !m || !d) return wrong_type(shape, value, place);
  const std::chrono::year_month_day date{std::chrono::year{*y}, std::chrono::month{static_cast<unsigned>(*m)},
                                         std::chrono::day{static_cast<unsigned>(*d)}};
  if (!date.ok()) return refuse(refused(place, value, shown(value), say("a day that the calendar has")));
  return value;
}

}  // namespace lastegg
