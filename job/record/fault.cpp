// The check of an event's data against the table of kinds.
#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "job/record/kinds.h"
#include "job/record/uuid.h"
#include "words/say.h"

namespace lastegg::record {
namespace {

constexpr std::size_t k_most_layers = 12;  // as many as a stack may have

using Type = DataField::Type;

Error complaint(std::string message, const std::string& where, std::string value = "", std::string limit = "",
                std::string unit = "") {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = std::move(message);
  error.where = where;
  error.value = std::move(value);
  error.limit = std::move(limit);
  error.unit = std::move(unit);
  return error;
}

Error wrong_type(const DataField& field, const std::string& where, std::string_view wanted) {
  return complaint(say("{} must be {}", field.key, wanted), where);
}

bool is_date(const std::string& text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const auto digits = [&](std::size_t from, std::size_t count) {
    int value = 0;
    for (std::size_t i = from; i < from + count; ++i) {
      if (text[i] < '0' || text[i] > '9') return -1;
      value = 10 * value + (text[i] - '0');
    }
    return value;
  };
  const int year = digits(0, 4), month = digits(5, 2), day = digits(8, 2);
  if (year < 0 || month < 1 || month > 12 || day < 1) return false;
  constexpr int k_days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return day <= k_days[month - 1] + (month == 2 && leap ? 1 : 0);
}

std::optional<Error> range_fault(const DataField& field, double value, const std::string& where) {
  const std::string_view sign = field.unit == Unit::none ? std::string_view() : unit_sign(field.unit);
  const auto with_unit = [&](double number) {
    return sign.empty() ? fmt::format("{:g}", number) : fmt::format("{:g} {}", number, sign);
  };
  const auto outside = [&](std::string_view relation, double limit) {
    return complaint(
        say("{} is {}; it must be {} {}", field.key, with_unit(value), relation, with_unit(limit)), where,
        fmt::format("{:g}", value), fmt::format("{:g}", limit), std::string(sign));
  };
  if (field.least_excluded && value <= field.least) return outside(say("above"), field.least);
  if (value < field.least) return outside(say("at least"), field.least);
  if (value > field.most) return outside(say("at most"), field.most);
  return std::nullopt;
}

std::optional<Error> layers_fault(const DataField& field, const Json& value, const std::string& where) {
  const auto most = static_cast<double>(k_most_layers);
  if (value.is_number_integer()) {
    DataField count = field;
    count.least = 1;
    count.most = most;
    return range_fault(count, value.get<double>(), where);
  }
  if (!value.is_array() || value.empty() || value.size() > k_most_layers)
    return wrong_type(field, where,
                      say("a whole number from 1 to {0}, or a list of 1 to {0} layers", k_most_layers));
  return std::nullopt;
}

std::optional<Error> fields_fault(const std::vector<DataField>& fields, const Json& data,
                                  const std::string& where);

std::optional<Error> word_fault(const DataField& field, const Json& value, const std::string& where) {
  const std::string list = fmt::format("{}", fmt::join(field.words, ", "));
  if (!value.is_string()) return wrong_type(field, where, say("one of {}", list));
  const std::string& given = value.get_ref<const std::string&>();
  if (std::find(field.words.begin(), field.words.end(), given) != field.words.end()) return std::nullopt;
  return complaint(say("{} is \"{}\"; it must be one of {}", field.key, given, list), where, given, list);
}

std::optional<Error> list_fault(const DataField& field, const Json& value, const std::string& where) {
  if (!value.is_array()) return wrong_type(field, where, say("a list"));
  for (std::size_t i = 0; i < value.size(); ++i) {
    const std::string place = fmt::format("{}/{}", where, i);
    if (!value[i].is_object()) return complaint(say("an entry of {} must be an object", field.key), place);
    if (std::optional<Error> fault = fields_fault(field.fields, value[i], place)) return fault;
  }
  return std::nullopt;
}

std::optional<Error> value_fault(const DataField& field, const Json& value, const std::string& where) {
  switch (field.type) {
    case Type::text:
      if (!value.is_string()) return wrong_type(field, where, say("a text"));
      return std::nullopt;
    case Type::id:
      if (!value.is_string() || !is_uuid(value.get_ref<const std::string&>()))
        return wrong_type(field, where, say("a UUID in lower case, with hyphens"));
      return std::nullopt;
    case Type::date:
      if (!value.is_string() || !is_date(value.get_ref<const std::string&>()))
        return wrong_type(field, where, say("a day of the calendar, such as 2026-03-02"));
      return std::nullopt;
    case Type::number:
      if (!value.is_number()) return wrong_type(field, where, say("a number"));
      return range_fault(field, value.get<double>(), where);
    case Type::integer:
      if (!value.is_number_integer()) return wrong_type(field, where, say("a whole number"));
      return range_fault(field, value.get<double>(), where);
    case Type::flag:
      if (!value.is_boolean()) return wrong_type(field, where, say("true or false"));
      return std::nullopt;
    case Type::word:
      return word_fault(field, value, where);
    case Type::layers:
      return layers_fault(field, value, where);
    case Type::object:
      if (!value.is_object()) return wrong_type(field, where, say("an object"));
      return fields_fault(field.fields, value, where);
    case Type::list:
      return list_fault(field, value, where);
  }
  return std::nullopt;
}

std::optional<Error> fields_fault(const std::vector<DataField>& fields, const Json& data,
                                  const std::string& where) {
  for (const DataField& field : fields) {
    const std::string key(field.key);
    const std::string place = where + "/" + key;
    const auto found = data.find(key);
    if (found == data.end() || found->is_null()) {
      if (field.is_required) return complaint(say("{} is missing", key), place);
      continue;
    }
    if (std::optional<Error> fault = value_fault(field, *found, place)) return fault;
  }
  return std::nullopt;
}

}  // namespace

std::optional<Error> fault_of(const KindRule& rule, const Json& data) {
  if (std::optional<Error> fault = fields_fault(rule.fields, data, "/data")) return fault;
  const auto is_whole = [&](const std::vector<std::string_view>& group) {
    return std::all_of(group.begin(), group.end(), [&](std::string_view key) {
      const auto found = data.find(std::string(key));
      return found != data.end() && !found->is_null();
    });
  };
  if (rule.any_of.empty() || std::any_of(rule.any_of.begin(), rule.any_of.end(), is_whole))
    return std::nullopt;
  std::string groups;
  for (const auto& group : rule.any_of)
    groups += (groups.empty() ? "" : say(", or ")) + fmt::format("{}", fmt::join(group, say(" and ")));
  return complaint(say("one of these must be given: {}", groups), "/data");
}

}  // namespace lastegg::record
