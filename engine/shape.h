// A Shape describes one JSON value: kind, unit, range, words. One table of shapes per question is all there
// is: the reader of requests, the JSON Schema files, the TypeScript types and the documentation are made from
// it. Plain values; building and reading share nothing, so any thread may use them.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/json.h"
#include "physics/quantities/error.h"
#include "physics/quantities/unit_text.h"

namespace lastegg {

struct Field;

/// Most entries of a list for which the shape says nothing else.
constexpr std::size_t k_most_items = 100000;

/// One allowed word of a closed list, and what it means.
struct Choice {
  std::string word;
  std::string text;
};

struct Shape {
  enum class Kind { number, integer, text, date, flag, choice, list, object, table, either, anything };

  Kind kind = Kind::anything;
  std::string text;  ///< what the value means, one sentence
  std::optional<Unit>
      unit;  ///< unit of a number; text with a unit of the same dimension is accepted and converted
  std::optional<double> minimum, maximum;
  bool minimum_excluded = false, maximum_excluded = false;
  std::vector<Choice> choices;
  std::vector<Field> fields;
  bool open = false;  ///< an object that may hold further keys (documents written by newer versions)
  /// Of `either`: the first that reads is taken. When none does, the complaint comes from the alternative
  /// that the value resembles most: right JSON type, then the right word in a choice such as `kind`, then the
  /// most known keys.
  std::vector<Shape> alternatives;
  std::vector<Shape> element;  ///< of a list or a table: exactly one
  std::size_t minimum_items = 0, maximum_items = k_most_items;
  bool nullable = false;
  /// Groups of keys of an object of which exactly one whole group must be given, e.g.
  /// {{"pace"},{"distance","seconds"}}. Keys of groups are fields made with optional(), never with a default.
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
Shape date(std::string text);  ///< a day of the calendar as text, "2026-03-02"
Shape flag(std::string text);
Shape choice(std::vector<Choice> choices, std::string text);
Shape list(Shape element, std::string text);
Shape object(std::vector<Field> fields, std::string text);
Shape table(Shape element, std::string text);  ///< an object of free keys whose values all have one shape
Shape either(std::vector<Shape> alternatives, std::string text);
Shape anything(std::string text);
Field field(std::string key, Shape shape);                        ///< must be given
Field optional(std::string key, Shape shape);                     ///< may be absent
Field with_default(std::string key, Shape shape, Json fallback);  ///< absent means `fallback`
}  // namespace shape

/// Checks `value` against `shape`, converts text with units, fills defaults.
/// Returns the value with every number in its key's unit. Unknown keys are refused (with the nearest known
/// one named), except `note`, which any closed object may carry and which is dropped (an open object keeps
/// all it was given). Inputs:  where is the JSON pointer of `value` in the request, empty for the whole of it
/// Errors:  bad_input with JSON pointer, value (a number in the key's unit), limit and unit; internal when a
/// default of
///          the shape does not fit the shape
/// Checked: engine/shape_unit_test.cpp, engine/shape_law_test.cpp
Result<Json> read(const Shape& shape, const Json& value, const std::string& where = "");

/// Requests may give a quantity as text with a unit and leave out what has a default; answers never do.
enum class Side { request, answer };

/// JSON Schema (draft 2020-12) of a shape, without the "$schema" line.
/// Checked: engine/shape_writers_unit_test.cpp
Json to_json_schema(const Shape& shape, Side side = Side::request);

/// TypeScript type expression of a shape; lines after the first are indented by `indent` spaces.
/// Checked: engine/shape_writers_unit_test.cpp
std::string to_typescript(const Shape& shape, Side side = Side::request, int indent = 0);

/// Markdown table rows "| key | unit | range | meaning |" of an object shape, nested keys with dots, entries
/// of lists with []. Checked: engine/shape_writers_unit_test.cpp
std::string to_markdown(const Shape& shape);

/// Every closed list below `shape` with the path of its key, in the order of the document.
std::vector<std::pair<std::string, std::vector<Choice>>> closed_lists(const Shape& shape);

}  // namespace lastegg
