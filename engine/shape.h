// A Shape describes one JSON value: kind, unit, range, words. One table of shapes per question is all there is: the
// reader of requests, the JSON Schema files, the TypeScript types and the documentation are made from it. Plain
// values; building and reading share nothing, so any thread may use them.
#pragma once

#include <initializer_list>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/json.h"
#include "physics/quantities/error.h"
#include "physics/quantities/unit_text.h"

namespace lastegg {

struct Field;

/// One allowed word of a closed list, and what it means.
struct Choice {
  std::string word;
  std::string text;
};

struct Shape {
  enum class Kind { number, integer, text, flag, choice, list, object, either, anything };

  Kind kind = Kind::anything;
  std::string text;         ///< what the value means, one sentence
  std::optional<Unit> unit;  ///< unit of a number; text with a unit of the same dimension is accepted and converted
  std::optional<double> minimum, maximum;
  bool minimum_excluded = false, maximum_excluded = false;
  std::vector<Choice> choices;
  std::vector<Field> fields;
  bool open = false;               ///< an object that may hold further keys (documents written by newer versions)
  std::vector<Shape> alternatives;  ///< of `either`, told apart by JSON type, or for objects by `tells`
  std::vector<Shape> element;      ///< of a list: exactly one
  std::size_t minimum_items = 0, maximum_items = 100000;
  bool nullable = false;
  /// Groups of keys of an object of which exactly one whole group must be given, e.g. {{"pace"},{"distance","seconds"}}.
  std::vector<std::vector<std::string>> one_of;

  Shape& at_least(double value);
  Shape& above(double value);
  Shape& at_most(double value);
  Shape& below(double value);
  Shape& items(std::size_t least, std::size_t most);
  Shape& or_null();
  Shape& allow_more();
  Shape& exactly_one_of(std::vector<std::vector<std::string>> groups);
};

struct Field {
  std::string key;
  Shape shape;
  bool required = true;
  Json fallback;  ///< filled in when the key is absent; null: stays absent
};

namespace shape {
Shape number(Unit unit, std::string text);
Shape ratio(std::string text);  ///< a number without a unit
Shape integer(std::string text);
Shape text(std::string text);
Shape flag(std::string text);
Shape choice(std::vector<Choice> choices, std::string text);
Shape list(Shape element, std::string text);
Shape object(std::vector<Field> fields, std::string text);
Shape either(std::vector<Shape> alternatives, std::string text);
Shape anything(std::string text);
Field field(std::string key, Shape shape);                           ///< must be given
Field optional(std::string key, Shape shape);                        ///< may be absent
Field with_default(std::string key, Shape shape, Json fallback);     ///< absent means `fallback`
}  // namespace shape

/// Checks `value` against `shape`, converts text with units, fills defaults.
/// Returns the value with every number in its key's unit. Unknown keys are refused (with the nearest known one named),
/// except `note`, which any object may carry and which is dropped.
/// Errors:  bad_input with JSON pointer, value, limit and unit.
/// Checked: engine/shape_test.cpp: unit
Result<Json> read(const Shape& shape, const Json& value, const std::string& where = "");

/// JSON Schema (draft 2020-12) of a shape.
Json to_json_schema(const Shape& shape);

/// TypeScript type expression of a shape.
std::string to_typescript(const Shape& shape, int indent = 0);

/// Markdown rows "| key | unit | range | meaning |" of an object shape, nested keys with dots.
std::string to_markdown(const Shape& shape);

}  // namespace lastegg
