// What the state of a job says, read with patience: a state need not come from a fold, so whatever is missing
// or of another type says nothing. Requests are read with engine/request_values.h instead: there a wrong type
// was refused before.
#pragma once

#include <optional>
#include <string>

#include "engine/request_values.h"

namespace lastegg {

/// The list under a key; empty when there is none.
inline const Json& list_of(const Json& state, const char* key) {
  static const Json none = Json::array();
  const Json* found = state.is_object() ? member_if(state, key) : nullptr;
  return found != nullptr && found->is_array() ? *found : none;
}

/// The text under a key; empty when there is none.
inline std::string word_of(const Json& entity, const char* key) {
  const Json* found = entity.is_object() ? member_if(entity, key) : nullptr;
  return found != nullptr && found->is_string() ? found->get<std::string>() : std::string();
}

/// The number under a key.
inline std::optional<double> value_of(const Json& entity, const char* key) {
  const Json* found = entity.is_object() ? member_if(entity, key) : nullptr;
  return found != nullptr && found->is_number() ? std::optional<double>(found->get<double>()) : std::nullopt;
}

/// {"elevation_metres": ...} of the home: what the dwelling says, else the job; else {}.
inline Json home_elevation(const Json& state) {
  for (const char* owner : {"dwelling", "job"}) {
    const Json* place = state.is_object() ? member_if(state, owner) : nullptr;
    if (place == nullptr) continue;
    if (const auto metres = value_of(*place, "elevation_metres")) return {{"elevation_metres", *metres}};
  }
  return Json::object();
}

}  // namespace lastegg
