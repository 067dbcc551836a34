// The reader of requests: one function per kind of shape. Every refusal goes through refused(), so that each
// names the place, what was given and what is allowed.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/nearest_word.h"
#include "engine/place.h"
#include "engine/shape_scalars.h"
#include "words/say.h"

namespace lastegg {
namespace {

constexpr int k_deepest = 64;

Result<Json> read_value(const Shape& shape, const Json& value, const Place& place, int depth);

Error too_deep(const Place& place) {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = say("the request is nested more than {} levels deep", k_deepest);
  error.where = place.pointer();
  error.limit = std::to_string(k_deepest);
  error.unit = "levels";
  return error;
}

// Free content: every number finite, nothing deeper than the limit.
std::optional<Error> unfit_content(const Json& value, const Place& place, int depth) {
  if (depth > k_deepest) return too_deep(place);
  if (value.is_number_float() && !std::isfinite(value.get<double>()))
    return refused(place, value, say("not finite"), say("a finite number"));
  if (value.is_array()) {
    for (std::size_t i = 0; i < value.size(); ++i)
      if (auto error = unfit_content(value[i], place.entry(i), depth + 1)) return error;
  } else if (value.is_object()) {
    for (const auto& [key, member] : value.items())
      if (auto error = unfit_content(member, place.key(key), depth + 1)) return error;
  }
  return std::nullopt;
}

Result<Json> read_anything(const Json& value, const Place& place, int depth) {
  if (auto error = unfit_content(value, place, depth)) return refuse(*std::move(error));
  return value;
}

Result<Json> read_list(const Shape& shape, const Json& value, const Place& place, int depth) {
  if (!value.is_array()) return wrong_type(shape, value, place);
  const std::size_t count = value.size();
  if (count < shape.minimum_items || count > shape.maximum_items) {
    const bool few = count < shape.minimum_items;
    const std::size_t limit = few ? shape.minimum_items : shape.maximum_items;

    Error error;
    error.kind = ErrorKind::bad_input;
    const std::string entries = count == 1 ? say("entry") : say("entries");
    error.message = shape.minimum_items == shape.maximum_items
                        ? say("{} has {} {}; it must have exactly {}", place.spoken(), count, entries, limit)
                    : few
                        ? say("{} has {} {}; it must have at least {}", place.spoken(), count, entries, limit)
                        : say("{} has {} {}; it must have at most {}", place.spoken(), count, entries, limit);
    error.where = place.pointer();
    error.value = std::to_string(count);
    error.limit = std::to_string(limit);
    error.unit = "entries";
    return refuse(std::move(error));
  }
  Json result = Json::array();
  result.get_ref<Json::array_t&>().reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    Result<Json> entry = read_value(shape.element[0], value[i], place.entry(i), depth + 1);
    if (!entry) return entry;
    result.push_back(*std::move(entry));
  }
  return result;
}

Result<Json> read_table(const Shape& shape, const Json& value, const Place& place, int depth) {
  if (!value.is_object()) return wrong_type(shape, value, place);
  Json result = Json::object();
  for (const auto& [key, member] : value.items()) {
    Result<Json> entry = read_value(shape.element[0], member, place.key(key), depth + 1);
    if (!entry) return entry;
    result[key] = *std::move(entry);
  }
  return result;
}

const Field* field_named(const Shape& shape, std::string_view key) {
  for (const Field& field : shape.fields)
    if (field.key == key) return &field;
  return nullptr;
}

std::vector<std::string> keys_of(const Shape& shape) {
  std::vector<std::string> keys;
  for (const Field& field : shape.fields) keys.push_back(field.key);
  return keys;
}

Error unknown_key(const Shape& shape, const std::string& key, const Place& place) {
  const Place member = place.key(key);
  const std::vector<std::string> keys = keys_of(shape);
  const std::string nearest = nearest_word(key, keys);
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = !nearest.empty() ? say("{} is not known here; did you mean {}?", member.spoken(), nearest)
                  : keys.empty()   ? say("{} is not known here; no keys are", member.spoken())
                                 : say("{} is not known here; it must be {}", member.spoken(), any_of(keys));
  error.where = member.pointer();
  error.value = key;
  return error;
}

std::string joined_with(const std::vector<std::string>& group) {
  std::string text;
  for (const std::string& key : group) text += (text.empty() ? "" : say(" with ")) + key;
  return text;
}

// Refuses an object whose keys make up no group, or mix several.
std::optional<Error> wrong_groups(const Shape& shape, const Json& value, const Place& place) {
  if (shape.one_of.empty()) return std::nullopt;
  std::vector<std::string> given, wishes;
  for (const auto& group : shape.one_of) {
    wishes.push_back(joined_with(group));
    for (const std::string& key : group)
      if (value.contains(key) && std::find(given.begin(), given.end(), key) == given.end())
        given.push_back(key);
  }
  const auto holds = [](const std::vector<std::string>& all, const std::vector<std::string>& some) {
    return std::all_of(some.begin(), some.end(), [&](const std::string& key) {
      return std::find(all.begin(), all.end(), key) != all.end();
    });
  };
  const std::vector<std::string>* begun = nullptr;
  for (const auto& group : shape.one_of) {
    if (holds(group, given) && holds(given, group)) return std::nullopt;
    if (!given.empty() && holds(group, given)) begun = &group;
  }
  Error error;
  error.kind = ErrorKind::bad_input;
  error.where = place.pointer();
  error.limit = any_of(wishes);
  if (given.empty()) {
    error.message = say("{} lacks one of these: {}", place.spoken(), any_of(wishes));
  } else if (begun != nullptr) {
    std::vector<std::string> missing;
    for (const std::string& key : *begun)
      if (!value.contains(key)) missing.push_back(key);
    error.message = say("{} gives {} but lacks {}", place.spoken(), all_of(given), all_of(missing));
    error.value = all_of(given);
  } else {
    error.message =
        say("{} gives {}; it must give only one of these: {}", place.spoken(), all_of(given), any_of(wishes));
    error.value = all_of(given);
  }
  return error;
}

Error missing(const Shape& shape, const Place& place) {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = say("{} is missing; it must be {}", place.spoken(), wanted(shape));
  error.where = place.pointer();
  return error;
}

Result<Json> read_field(const Field& field, const Json& value, const Place& place, int depth) {
  const auto found = value.find(field.key);
  const Place member = place.key(field.key);
  if (found != value.end()) return read_value(field.shape, *found, member, depth + 1);
  if (field.required) return refuse(missing(field.shape, member));
  if (field.fallback.is_null()) return Json();
  Result<Json> filled = read_value(field.shape, field.fallback, member, depth + 1);
  if (!filled) {
    Error error = filled.error();
    error.kind = ErrorKind::internal;
    error.message = "the default does not fit: " + error.message;
    return refuse(std::move(error));
  }
  return filled;
}

Result<Json> read_object(const Shape& shape, const Json& value, const Place& place, int depth) {
  if (!value.is_object()) return wrong_type(shape, value, place);
  for (const auto& [key, member] : value.items()) {
    if (shape.open || key == "note" || field_named(shape, key) != nullptr) continue;
    return refuse(unknown_key(shape, key, place));
  }
  if (auto error = wrong_groups(shape, value, place)) return refuse(*std::move(error));
  Json result = Json::object();
  for (const Field& field : shape.fields) {
    Result<Json> member = read_field(field, value, place, depth);
    if (!member) return member;
    if (member->is_null() && !value.contains(field.key)) continue;
    result[field.key] = *std::move(member);
  }
  if (!shape.open) return result;
  for (const auto& [key, member] : value.items()) {
    if (field_named(shape, key) != nullptr) continue;
    Result<Json> kept = read_anything(member, place.key(key), depth + 1);
    if (!kept) return kept;
    result[key] = *std::move(kept);
  }
  return result;
}

// Whether `value` has a JSON type that `shape` can read.
bool fits_type(const Shape& shape, const Json& value) {
  if (value.is_null()) return shape.nullable || shape.kind == Shape::Kind::anything;
  switch (shape.kind) {
    case Shape::Kind::number:
      return value.is_number() || (value.is_string() && shape.unit && *shape.unit != Unit::none);
    case Shape::Kind::integer:
      return value.is_number();
    case Shape::Kind::text:
    case Shape::Kind::date:
    case Shape::Kind::choice:
      return value.is_string();
    case Shape::Kind::flag:
      return value.is_boolean();
    case Shape::Kind::list:
      return value.is_array();
    case Shape::Kind::object:
    case Shape::Kind::table:
      return value.is_object();
    case Shape::Kind::either:
      return std::any_of(shape.alternatives.begin(), shape.alternatives.end(),
                         [&](const Shape& alternative) { return fits_type(alternative, value); });
    case Shape::Kind::anything:
      return true;
  }
  return false;
}

// How much an object looks like one of this shape: a fitting word in a choice outweighs any number of known
// keys.
int likeness(const Shape& shape, const Json& value) {
  if (shape.kind != Shape::Kind::object || !value.is_object()) return 0;
  int score = 0;
  for (const Field& field : shape.fields) {
    const auto found = value.find(field.key);
    if (found == value.end()) continue;
    ++score;
    if (field.shape.kind != Shape::Kind::choice || !found->is_string()) continue;
    for (const Choice& choice : field.shape.choices)
      if (choice.word == found->get_ref<const std::string&>()) score += 1000;
  }
  return score;
}

// When the alternatives are objects told apart by one choice, such as `kind`, and the value's word is in none
// of them: the refusal that names the words of all.
std::optional<Error> unknown_variant(const Shape& shape, const Json& value, const Place& place) {
  if (!value.is_object() || shape.alternatives.empty()) return std::nullopt;
  for (const Field& candidate : shape.alternatives[0].fields) {
    if (candidate.shape.kind != Shape::Kind::choice) continue;
    Shape all = candidate.shape;
    all.choices.clear();
    bool everywhere = true;
    for (const Shape& alternative : shape.alternatives) {
      const Field* field = field_named(alternative, candidate.key);
      everywhere = everywhere && field != nullptr && field->required && field->shape.kind == all.kind;
      if (everywhere)
        all.choices.insert(all.choices.end(), field->shape.choices.begin(), field->shape.choices.end());
    }
    if (!everywhere) continue;
    const Place member = place.key(candidate.key);
    const auto found = value.find(candidate.key);
    if (found == value.end()) return missing(all, member);
    const Result<Json> word = read_choice(all, *found, member);
    if (!word) return word.error();
  }
  return std::nullopt;
}

Result<Json> read_either(const Shape& shape, const Json& value, const Place& place, int depth) {
  if (auto error = unknown_variant(shape, value, place)) return refuse(*std::move(error));
  std::optional<Result<Json>> complaint;
  int best = -1;
  for (const Shape& alternative : shape.alternatives) {
    if (!fits_type(alternative, value)) continue;
    Result<Json> attempt = read_value(alternative, value, place, depth + 1);
    if (attempt) return attempt;
    const int score = likeness(alternative, value);
    if (score <= best) continue;
    best = score;
    complaint = std::move(attempt);
  }
  if (complaint) return *std::move(complaint);
  return wrong_type(shape, value, place);
}

Result<Json> read_value(const Shape& shape, const Json& value, const Place& place, int depth) {
  if (depth > k_deepest) return refuse(too_deep(place));
  if (value.is_null() && shape.nullable) return value;
  switch (shape.kind) {
    case Shape::Kind::number:
      return read_number(shape, value, place);
    case Shape::Kind::integer:
      return read_integer(shape, value, place);
    case Shape::Kind::text:
      if (!value.is_string()) return wrong_type(shape, value, place);
      return value;
    case Shape::Kind::date:
      return read_date(shape, value, place);
    case Shape::Kind::flag:
      if (!value.is_boolean()) return wrong_type(shape, value, place);
      return value;
    case Shape::Kind::choice:
      return read_choice(shape, value, place);
    case Shape::Kind::list:
      return read_list(shape, value, place, depth);
    case Shape::Kind::object:
      return read_object(shape, value, place, depth);
    case Shape::Kind::table:
      return read_table(shape, value, place, depth);
    case Shape::Kind::either:
      return read_either(shape, value, place, depth);
    case Shape::Kind::anything:
      return read_anything(value, place, depth);
  }
  return wrong_type(shape, value, place);
}

}  // namespace

Result<Json> read(const Shape& shape, const Json& value, const std::string& where) {
  return read_value(shape, value, Place(where), 0);
}

}  // namespace lastegg
