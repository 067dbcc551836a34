// Lines of invented events for the tests of the record.
#pragma once

#include <fmt/format.h>

#include <string>
#include <string_view>
#include <vector>

#include "job/record/fold.h"

namespace lastegg::record {

/// The n-th identifier: "00000000-0000-7000-8000-00000000000n".
inline std::string id_number(unsigned n) {
  return fmt::format("00000000-0000-7000-8000-{:012x}", n);
}

/// An event's line; `data` is JSON text, `corrects` the number of an event or 0.
inline std::string line_of(unsigned id, std::string_view kind, unsigned subject, std::string_view data,
                           unsigned corrects = 0) {
  const std::string correction = corrects == 0 ? "" : fmt::format(R"(,"corrects":"{}")", id_number(corrects));
  return fmt::format(
      R"({{"id":"{}","kind":"{}","subject":"{}","device":"d","actor":"a","at":"2026-01-02T03:04:05Z","data":{}{}}})",
      id_number(id), kind, id_number(subject), data, correction);
}

inline std::string room_line(unsigned id, unsigned subject, std::string_view title, unsigned corrects = 0) {
  return line_of(id, "room/1", subject, fmt::format(R"({{"title":"{}"}})", title), corrects);
}

inline std::string reading_line(unsigned id, unsigned subject, unsigned fold_test, double peak_celsius,
                                unsigned corrects = 0) {
  return line_of(
      id, "reading/1", subject,
      fmt::format(R"({{"fold_test":"{}","pace_metres_per_second":0.025,"layers":1,"peak_celsius":{:g}}})",
                  id_number(fold_test), peak_celsius),
      corrects);
}

/// A set of the events on these lines, all of which must be sound envelopes.
inline EventSet set_of(const std::vector<std::string>& lines) {
  EventSet set;
  for (const std::string& line : lines)
    if (!set.add(line)) set = EventSet();  // the caller's counts then fail
  return set;
}

/// Everything that a fold gives, as text to compare.
inline std::string text_of(const Folded& folded) {
  std::string text;
  const auto tell = [&](std::string_view name, const Entity& entity) {
    text += fmt::format("{} {} {} {} [{}] {}\n", name, entity.kind, entity.id, entity.event,
                        fmt::join(entity.events, ","), entity.data.dump());
  };
  const JobState& state = folded.state;
  if (state.job) tell("job", *state.job);
  if (state.dwelling) tell("dwelling", *state.dwelling);
  if (state.settings) tell("settings", *state.settings);
  for (const auto& [name, entities] : state.lists)
    for (const Entity& entity : entities) tell(name, entity);
  for (const Entity& entity : state.readings_without_test) tell("reading", entity);
  for (const FoldTest& test : state.fold_tests) {
    tell("test", test.test);
    for (const Entity& reading : test.readings) tell("  reading", reading);
  }
  for (const Removed& removed : state.removed) {
    tell("removed", removed.entity);
    text += fmt::format("  by {}\n", fmt::join(removed.by, ","));
  }
  for (const Conflict& conflict : folded.conflicts) {
    text += fmt::format("conflict {} {}\n", conflict.subject, conflict.kind);
    for (std::size_t i = 0; i < conflict.rivals.size(); ++i)
      text += fmt::format("  {} {}\n", conflict.rivals[i], conflict.values[i].dump());
  }
  for (const UnknownKind& unknown : folded.unknown)
    text += fmt::format("unknown {} {}\n", unknown.kind, unknown.count);
  for (const Refused& refused : folded.refused)
    text += fmt::format("refused {} {} {} {}\n", refused.id, refused.error.message, refused.error.where,
                        refused.settled);
  return text + fmt::format("{} {}\n", folded.event_count, folded.state_hash);
}

}  // namespace lastegg::record
