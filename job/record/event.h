// One event: a fact that a person or a device stated, as one line of JSON. The line's bytes are the event;
// what is read from them serves the fold and is never written back. So fields and kinds that this version
// does not know, and the spelling of numbers, pass through it unchanged. Plain values.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "physics/evidence/json.h"
#include "physics/quantities/error.h"

namespace lastegg::record {

/// Keys keep their order, as in the engine.
using Json = nlohmann::ordered_json;

/// Limits of one line. Own choice, so that a broken file cannot exhaust a phone: photographs and logs are
/// blobs, an event is a few hundred bytes.
constexpr std::size_t k_longest_event_bytes = 1024U * 1024U;
constexpr std::size_t k_deepest_event_levels = 32;

struct Event {
  std::string bytes;                    ///< the line as received, without its line end
  std::string id;                       ///< UUID; writers make version 7
  std::string kind;                     ///< "reading/1": a name and the version of its data
  std::string subject;                  ///< UUID of the entity that the event speaks about
  std::string device;                   ///< which device stated it
  std::string actor;                    ///< who stated it, as an identifier
  std::string at;                       ///< the time that the device told; shown, never compared
  std::optional<std::string> corrects;  ///< id of the event that this one replaces
  Json data;                            ///< an object
};

/// The event that a line holds.
/// Inputs:  one line, without its line end; from { to }, UTF-8, no key given twice in one object
/// Errors:  bad_input: not JSON, a member missing or of the wrong type, an id that is no UUID; `where` points
///          into the event
/// Checked: job/record/event_unit_test.cpp: unit
Result<Event> parse_event(std::string_view line);

/// The name of a kind without its version: "reading" of "reading/1".
std::string_view family_of(std::string_view kind);

/// Whether two values say the same: numbers by value (1 and 1.0), objects whatever the order of their keys.
/// Checked: job/record/event_unit_test.cpp: unit
bool same_value(const Json& one, const Json& other);

}  // namespace lastegg::record
