#include "engine/shape.h"

namespace lastegg {

Shape& Shape::at_least(double value) {
  minimum = value;
  minimum_excluded = false;
  return *this;
}

Shape& Shape::above(double value) {
  minimum = value;
  minimum_excluded = true;
  return *this;
}

Shape& Shape::at_most(double value) {
  maximum = value;
  maximum_excluded = false;
  return *this;
}

Shape& Shape::below(double value) {
  maximum = value;
  maximum_excluded = true;
  return *this;
}

Shape& Shape::items(std::size_t least, std::size_t most) {
  minimum_items = least;
  maximum_items = most;
  return *this;
}

Shape& Shape::or_null() {
  nullable = true;
  return *this;
}

Shape& Shape::allow_more() {
  open = true;
  return *this;
}

Shape& Shape::exactly_one_of(std::vector<std::vector<std::string>> groups) {
  one_of = std::move(groups);
  return *this;
}

namespace shape {
namespace {

Shape of_kind(Shape::Kind kind, std::string text) {
  Shape made;
  made.kind = kind;
  made.text = std::move(text);
  return made;
}

Field made_field(std::string key, Shape shape, bool required, Json fallback) {
  Field made;
  made.key = std::move(key);
  made.shape = std::move(shape);
  made.required = required;
  made.fallback = std::move(fallback);
  return made;
}

}  // namespace

Shape number(Unit unit, std::string text) {
  Shape made = of_kind(Shape::Kind::number, std::move(text));
  made.unit = unit;
  return made;
}

Shape ratio(std::string text) {
  return of_kind(Shape::Kind::number, std::move(text));
}

Shape integer(std::string text) {
  return of_kind(Shape::Kind::integer, std::move(text));
}

Shape text(std::string text) {
  return of_kind(Shape::Kind::text, std::move(text));
}

Shape date(std::string text) {
  return of_kind(Shape::Kind::date, std::move(text));
}

Shape flag(std::string text) {
  return of_kind(Shape::Kind::flag, std::move(text));
}

Shape choice(std::vector<Choice> choices, std::string text) {
  Shape made = of_kind(Shape::Kind::choice, std::move(text));
  made.choices = std::move(choices);
  return made;
}

Shape list(Shape element, std::string text) {
  Shape made = of_kind(Shape::Kind::list, std::move(text));
  made.element.push_back(std::move(element));
  return made;
}

Shape object(std::vector<Field> fields, std::string text) {
  Shape made = of_kind(Shape::Kind::object, std::move(text));
  made.fields = std::move(fields);
  return made;
}

Shape table(Shape element, std::string text) {
  Shape made = of_kind(Shape::Kind::table, std::move(text));
  made.element.push_back(std::move(element));
  return made;
}

Shape either(std::vector<Shape> alternatives, std::string text) {
  Shape made = of_kind(Shape::Kind::either, std::move(text));
  made.alternatives = std::move(alternatives);
  return made;
}

Shape anything(std::string text) {
  return of_kind(Shape::Kind::anything, std::move(text));
}

Field field(std::string key, Shape shape) {
  return made_field(std::move(key), std::move(shape), true, nullptr);
}

Field optional(std::string key, Shape shape) {
  return made_field(std::move(key), std::move(shape), false, nullptr);
}

Field with_default(std::string key, Shape shape, Json fallback) {
  return made_field(std::move(key), std::move(shape), false, std::move(fallback));
}

}  // namespace shape
}  // namespace lastegg
