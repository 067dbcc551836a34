#include "job/record/event_set.h"

#include "job/record/sha256.h"

namespace lastegg::record {

Result<Added> EventSet::add(std::string_view line) {
  Result<Event> event = parse_event(line);
  if (!event) return refuse(event.error());
  return add(*std::move(event));
}

Added EventSet::add(Event event) {
  const auto [place, is_new] = events_.insert(std::move(event));
  if (!is_new) return Added::already;
  const auto next = std::next(place);
  const bool shares_id = (next != events_.end() && next->id == place->id) ||
                         (place != events_.begin() && std::prev(place)->id == place->id);
  return shares_id ? Added::clash : Added::fresh;
}

void EventSet::merge(const EventSet& other) {
  events_.insert(other.events_.begin(), other.events_.end());
}

std::string EventSet::ndjson() const {
  std::string text;
  for (const Event& event : events_) text.append(event.bytes).push_back('\n');
  return text;
}

std::string EventSet::state_hash() const {
  Sha256 hash;
  for (const Event& event : events_) {
    hash.add(event.bytes);
    hash.add("\n");
  }
  return hash.finish();
}

}  // namespace lastegg::record
