#include "job/record/kind_builders.h"

#include <utility>

namespace lastegg::record {

DataField of_type(DataField::Type type, std::string_view key, bool is_required, std::string_view text) {
  DataField field;
  field.key = key;
  field.type = type;
  field.is_required = is_required;
  field.text = text;
  return field;
}

DataField number(std::string_view key, bool is_required, Unit unit, double least, double most,
                 std::string_view text) {
  DataField field = of_type(DataField::Type::number, key, is_required, text);
  field.unit = unit;
  field.least = least;
  field.most = most;
  return field;
}

DataField positive(std::string_view key, bool is_required, Unit unit, double most, std::string_view text) {
  DataField field = number(key, is_required, unit, 0, most, text);
  field.least_excluded = true;
  return field;
}

DataField whole(std::string_view key, double least, double most, std::string_view text) {
  DataField field = of_type(DataField::Type::integer, key, k_optional, text);
  field.least = least;
  field.most = most;
  return field;
}

DataField word(std::string_view key, bool is_required, std::vector<std::string_view> words,
               std::string_view text) {
  DataField field = of_type(DataField::Type::word, key, is_required, text);
  field.words = std::move(words);
  return field;
}

DataField object(std::string_view key, std::vector<DataField> fields, std::string_view text) {
  DataField field = of_type(DataField::Type::object, key, k_optional, text);
  field.fields = std::move(fields);
  return field;
}

DataField list(std::string_view key, std::vector<DataField> fields, std::string_view text) {
  DataField field = of_type(DataField::Type::list, key, k_optional, text);
  field.fields = std::move(fields);
  return field;
}

DataField id(std::string_view key, bool is_required, std::string_view text) {
  return of_type(DataField::Type::id, key, is_required, text);
}

DataField text(std::string_view key, std::string_view meaning) {
  return of_type(DataField::Type::text, key, k_optional, meaning);
}

DataField title() {
  return of_type(DataField::Type::text, "title", k_required,
                 "what people call it; no names of persons, no addresses");
}

DataField typed() {
  return object("typed", {}, "what the person typed, key by key, with the unit as typed");
}

DataField elevation() {
  return number("elevation_metres", k_optional, Unit::metre, -450, 6000, "above sea level");
}

KindRule kind(std::string_view name, std::string_view list, std::string_view text,
              std::vector<DataField> fields) {
  KindRule rule;
  rule.kind = name;
  rule.list = list;
  rule.text = text;
  rule.fields = std::move(fields);
  rule.fields.push_back(of_type(DataField::Type::text, "note", k_optional, "a remark"));
  rule.fields.push_back(
      of_type(DataField::Type::flag, "invented", k_optional, "true in made-up data, such as the demo's"));
  return rule;
}

}  // namespace lastegg::record
