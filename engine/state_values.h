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

}  // namespace lastegg
