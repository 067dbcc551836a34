// What a shape says to others: JSON Schema, TypeScript, tables for the documentation.
#include <fmt/format.h>

#include <algorithm>

#include "engine/shape.h"

namespace lastegg {
namespace {

using Kind = Shape::Kind;

bool takes_text(const Shape& shape, Side side) {
  return side == Side::request && shape.kind == Kind::number && shape.unit && *shape.unit != Unit::none;
}

void add_limits(const Shape& shape, Json& schema) {
  if (shape.minimum) schema[shape.minimum_excluded ? "exclusiveMinimum" : "minimum"] = *shape.minimum;
  if (shape.maximum) schema[shape.maximum_excluded ? "exclusiveMaximum" : "maximum"] = *shape.maximum;
}

Json number_schema(const Shape& shape, Side side) {
  Json number = {{"type", shape.kind == Kind::integer ? "integer" : "number"}};
  add_limits(shape, number);
  if (!takes_text(shape, side)) return number;
  std::string spellings;
  for (const std::string& spelling : accepted_spellings(*shape.unit))
    spellings += (spellings.empty() ? "" : ", ") + spelling;
  return {{"anyOf", {number, {{"type", "string"}, {"description", "A number with a unit: " + spellings}}}}};
}

Json group_schema(const std::vector<std::vector<std::string>>& groups) {
  Json alternatives = Json::array();
  for (const auto& group : groups) {
    Json others = Json::array();
    for (const auto& other : groups)
      for (const std::string& key : other)
        if (std::find(group.begin(), group.end(), key) == group.end())
          others.push_back({{"required", Json::array({key})}});
    Json alternative = {{"required", group}};
    if (!others.empty()) alternative["not"] = {{"anyOf", others}};
    alternatives.push_back(alternative);
  }
  return alternatives;
}

Json object_schema(const Shape& shape, Side side) {
  Json properties = Json::object(), required = Json::array();
  for (const Field& field : shape.fields) {
    Json property = to_json_schema(field.shape, side);
    if (!field.fallback.is_null()) property["default"] = field.fallback;
    properties[field.key] = property;
    if (field.required) required.push_back(field.key);
  }
  const bool closed = side == Side::request && !shape.open;
  if (closed && !properties.contains("note"))
    properties["note"] = {{"description", "Free remark; not read."}};
  Json schema = {{"type", "object"}, {"properties", properties}};
  if (!required.empty()) schema["required"] = required;
  if (closed) schema["additionalProperties"] = false;
  if (!shape.one_of.empty()) schema["oneOf"] = group_schema(shape.one_of);
  return schema;
}

Json bare_schema(const Shape& shape, Side side) {
  switch (shape.kind) {
    case Kind::number:
    case Kind::integer:
      return number_schema(shape, side);
    case Kind::text:
      return {{"type", "string"}};
    case Kind::date:
      return {{"type", "string"}, {"format", "date"}};
    case Kind::flag:
      return {{"type", "boolean"}};
    case Kind::choice: {
      Json words = Json::array();
      for (const Choice& choice : shape.choices) words.push_back(choice.word);
      return {{"enum", words}};
    }
    case Kind::list: {
      Json schema = {{"type", "array"}, {"items", to_json_schema(shape.element[0], side)}};
      if (shape.minimum_items > 0) schema["minItems"] = shape.minimum_items;
      schema["maxItems"] = shape.maximum_items;
      return schema;
    }
    case Kind::table:
      return {{"type", "object"}, {"additionalProperties", to_json_schema(shape.element[0], side)}};
    case Kind::object:
      return object_schema(shape, side);
    case Kind::either: {
      Json alternatives = Json::array();
      for (const Shape& alternative : shape.alternatives)
        alternatives.push_back(to_json_schema(alternative, side));
      return {{"anyOf", alternatives}};
    }
    case Kind::anything:
      return Json::object();
  }
  return Json::object();
}

// Words as a sentence: a capital first and a full stop last.
std::string sentence(std::string words) {
  if (words.empty()) return words;
  if (words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
  if (std::string_view(".!?").find(words.back()) == std::string_view::npos) words += '.';
  return words;
}

std::string unit_words(const Shape& shape) {
  if (!shape.unit || *shape.unit == Unit::none) return "";
  return std::string(unit_name(*shape.unit));
}

// The range of a number or the length of a list, as the documentation shows it.
std::string range_words(const Shape& shape) {
  if (shape.kind == Kind::list) {
    if (shape.minimum_items == shape.maximum_items) return fmt::format("{} entries", shape.minimum_items);
    if (shape.maximum_items == k_most_items)
      return shape.minimum_items == 0 ? "" : fmt::format("{} entries or more", shape.minimum_items);
    return fmt::format("{} to {} entries", shape.minimum_items, shape.maximum_items);
  }
  std::string words;
  if (shape.minimum)
    words += fmt::format("{} {}", shape.minimum_excluded ? "more than" : "at least", *shape.minimum);
  if (shape.maximum) {
    if (!words.empty()) words += ", ";
    words += fmt::format("{} {}", shape.maximum_excluded ? "less than" : "at most", *shape.maximum);
  }
  return words;
}

std::string literal(std::string_view word) {
  return Json(std::string(word)).dump(-1, ' ', false, Json::error_handler_t::replace);
}

bool is_identifier(std::string_view key) {
  const auto letter = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
  };
  return !key.empty() && (key[0] < '0' || key[0] > '9') && std::all_of(key.begin(), key.end(), letter);
}

std::string object_type(const Shape& shape, Side side, int indent) {
  const std::string margin(static_cast<std::size_t>(indent) + 2, ' ');
  std::string text = "{\n";
  for (const Field& field : shape.fields) {
    std::string remark = sentence(field.shape.text);
    for (const std::string& more : {unit_words(field.shape), range_words(field.shape)})
      if (!more.empty()) remark += (remark.empty() ? "" : " ") + ("[" + more + "]");
    if (!field.fallback.is_null()) remark += " Default " + field.fallback.dump() + ".";
    if (!remark.empty()) text += margin + "/** " + remark + " */\n";
    text += margin + (is_identifier(field.key) ? field.key : literal(field.key)) +
            (field.required ? "" : "?") + ": " + to_typescript(field.shape, side, indent + 2) + ";\n";
  }
  if (shape.open) text += margin + "[key: string]: unknown;\n";
  return text + std::string(static_cast<std::size_t>(indent), ' ') + "}";
}

// Whether the type expression of a shape has a bar at its outermost level, so that "[]" needs brackets before
// it.
bool is_union(const Shape& shape, Side side) {
  if (shape.nullable || takes_text(shape, side)) return true;
  if (shape.kind == Kind::choice) return shape.choices.size() > 1;
  if (shape.kind != Kind::either) return false;
  return shape.alternatives.size() > 1 || is_union(shape.alternatives[0], side);
}

std::string bare_type(const Shape& shape, Side side, int indent) {
  switch (shape.kind) {
    case Kind::number:
      return takes_text(shape, side) ? "number | string" : "number";
    case Kind::integer:
      return "number";
    case Kind::text:
    case Kind::date:
      return "string";
    case Kind::flag:
      return "boolean";
    case Kind::choice: {
      std::string words;
      for (const Choice& choice : shape.choices) words += (words.empty() ? "" : " | ") + literal(choice.word);
      return words;
    }
    case Kind::list: {
      const std::string element = to_typescript(shape.element[0], side, indent);
      const bool compound = is_union(shape.element[0], side);
      return compound ? "(" + element + ")[]" : element + "[]";
    }
    case Kind::table:
      return "Record<string, " + to_typescript(shape.element[0], side, indent) + ">";
    case Kind::object:
      return object_type(shape, side, indent);
    case Kind::either: {
      std::string types;
      for (const Shape& alternative : shape.alternatives)
        types += (types.empty() ? "" : " | ") + to_typescript(alternative, side, indent);
      return types;
    }
    case Kind::anything:
      return "unknown";
  }
  return "unknown";
}

std::string kind_words(const Shape& shape) {
  switch (shape.kind) {
    case Kind::number:
      return shape.unit && *shape.unit != Unit::none ? unit_words(shape) : "number";
    case Kind::integer:
      return "whole number";
    case Kind::text:
      return "text";
    case Kind::date:
      return "day";
    case Kind::flag:
      return "true or false";
    case Kind::choice:
      return "word";
    case Kind::list:
      return "list";
    case Kind::object:
    case Kind::table:
      return "object";
    case Kind::either: {
      std::string words;
      for (const Shape& alternative : shape.alternatives) {
        const std::string word = kind_words(alternative);
        if (words.find(word) == std::string::npos) words += (words.empty() ? "" : " or ") + word;
      }
      return words;
    }
    case Kind::anything:
      return "any";
  }
  return "any";
}

// Goes through every key below a shape: visit(path, field's shape, field or null).
template <class Visit>
void walk(const Shape& shape, const std::string& path, const Visit& visit) {
  for (const Field& field : shape.fields) {
    const std::string key = path.empty() ? field.key : path + "." + field.key;
    visit(key, field.shape, &field);
    walk(field.shape, key, visit);
  }
  for (const Shape& element : shape.element) {
    const std::string key = path + (shape.kind == Kind::table ? ".*" : "[]");
    if (element.kind != Kind::object && !element.text.empty()) visit(key, element, nullptr);
    walk(element, key, visit);
  }
  for (const Shape& alternative : shape.alternatives) {
    if (alternative.kind == Kind::choice) visit(path, alternative, nullptr);
    walk(alternative, path, visit);
  }
}

std::string cell(std::string text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '|') text.insert(i++, "\\");
    if (text[i] == '\n') text[i] = ' ';
  }
  return text;
}

// The rows of a page's table. An object with several keys that stands at more than one place is shown at the
// first and referred to at the others.
struct MarkdownRows {
  static constexpr std::size_t k_fewest_keys_referred_to = 3;

  std::string text;
  std::vector<std::pair<std::string, std::string>>
      shown;  ///< rows of an object, and the path where they stand

  void add_below(const Shape& shape, const std::string& path) {
    for (const Field& field : shape.fields)
      add(field.shape, path.empty() ? field.key : path + "." + field.key, &field);
    for (const Shape& element : shape.element)
      add_inner(element, path + (shape.kind == Kind::table ? ".*" : "[]"), element.text.empty());
    for (const Shape& alternative : shape.alternatives)
      add_inner(alternative, path, alternative.kind != Kind::choice);
  }

 private:
  // An entry of a list or an alternative: a row of its own only if it says something that its parent's row
  // does not.
  void add_inner(const Shape& value, const std::string& path, bool silent) {
    if (value.kind != Kind::object && !silent) return add(value, path, nullptr);
    const std::string earlier = place_of_same(value, path);
    if (earlier.empty()) return add_below(value, path);
    text += fmt::format("| `{}` | {} |  | Keys as in `{}`. |\n", path, kind_words(value), earlier);
  }

  void add(const Shape& value, const std::string& path, const Field* field) {
    std::string meaning = sentence(value.text);
    const auto append = [&](const std::string& more) { meaning += (meaning.empty() ? "" : " ") + more; };
    if (value.nullable) append("May be null.");
    if (field != nullptr && !field->required)
      append(field->fallback.is_null() ? "May be left out." : "Default " + field->fallback.dump() + ".");
    std::string words;
    for (const Choice& choice : value.choices) words += (words.empty() ? "`" : ", `") + choice.word + "`";
    if (!words.empty()) append((value.choices.size() > 1 ? "One of " : "Always ") + words + ".");
    const std::string earlier = place_of_same(value, path);
    if (!earlier.empty()) append("Keys as in `" + earlier + "`.");
    const std::string row = fmt::format("| `{}` | {} | {} | {} |\n", path, cell(kind_words(value)),
                                        cell(range_words(value)), cell(meaning));
    // Alternatives often share keys; each row is shown once.
    if (text.find(row) == std::string::npos) text += row;
    if (earlier.empty()) add_below(value, path);
  }

  // Where the object that `value` is, or is a list of, has been shown already; empty when it has not, which
  // is noted.
  std::string place_of_same(const Shape& value, const std::string& path) {
    const Shape* object = &value;
    std::string place = path;
    while (object->kind == Kind::list || object->kind == Kind::table) {
      place += object->kind == Kind::table ? ".*" : "[]";
      object = &object->element[0];
    }
    if (object->kind != Kind::object || object->fields.size() < k_fewest_keys_referred_to) return "";
    const std::string rows = to_markdown(*object);
    for (const auto& [known, where] : shown)
      if (known == rows && where != place) return where;
    shown.emplace_back(rows, place);
    return "";
  }
};

}  // namespace

Json to_json_schema(const Shape& shape, Side side) {
  Json schema = bare_schema(shape, side);
  if (shape.nullable) schema = {{"anyOf", {std::move(schema), {{"type", "null"}}}}};
  std::string description = sentence(shape.text);
  const std::string unit = unit_words(shape);
  if (!unit.empty()) description += (description.empty() ? "In " : " In ") + unit + ".";
  for (const Choice& choice : shape.choices) {
    if (choice.text.empty()) continue;
    description += (description.empty() ? "" : " ") + choice.word + ": " + choice.text;
    if (!description.ends_with('.')) description += '.';
  }
  if (!description.empty()) schema["description"] = description;
  return schema;
}

std::string to_typescript(const Shape& shape, Side side, int indent) {
  const std::string type = bare_type(shape, side, indent);
  return shape.nullable ? type + " | null" : type;
}

std::string to_markdown(const Shape& shape) {
  MarkdownRows rows;
  rows.add_below(shape, "");
  return rows.text;
}

std::vector<std::pair<std::string, std::vector<Choice>>> closed_lists(const Shape& shape) {
  std::vector<std::pair<std::string, std::vector<Choice>>> lists;
  if (shape.kind == Kind::choice) lists.emplace_back("", shape.choices);
  walk(shape, "", [&](const std::string& path, const Shape& value, const Field*) {
    if (value.kind == Kind::choice) lists.emplace_back(path, value.choices);
  });
  return lists;
}

}  // namespace lastegg
