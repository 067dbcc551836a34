// Short ways to take members out of a request that read() has checked: the shape guarantees that a required
// key is there and has its type, so these never fail on such a request. Pure functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/json.h"

namespace lastegg {

/// The member, or null when it is absent or null.
inline const Json* member_if(const Json& object, const std::string& key) {
  const auto found = object.find(key);
  return found == object.end() || found->is_null() ? nullptr : &*found;
}

/// A required number, in the unit of its key.
inline double number_of(const Json& object, const std::string& key) {
  return object.at(key).get<double>();
}

/// A number that may be absent.
inline std::optional<double> number_if(const Json& object, const std::string& key) {
  const Json* member = member_if(object, key);
  return member == nullptr ? std::nullopt : std::optional<double>(member->get<double>());
}

/// A required text or word of a closed list.
inline std::string text_of(const Json& object, const std::string& key) {
  return object.at(key).get<std::string>();
}

/// A text that may be absent.
inline std::optional<std::string> text_if(const Json& object, const std::string& key) {
  const Json* member = member_if(object, key);
  return member == nullptr ? std::nullopt : std::optional<std::string>(member->get<std::string>());
}

/// A required list of numbers.
inline std::vector<double> numbers_of(const Json& object, const std::string& key) {
  return object.at(key).get<std::vector<double>>();
}

/// Whether a key was given and is not null.
inline bool has(const Json& object, const std::string& key) {
  return member_if(object, key) != nullptr;
}

}  // namespace lastegg
