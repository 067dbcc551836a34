// The record of a job: a set of events, grown by union and never otherwise changed. Two devices merge by
// taking everything that either has. Owns its events; reading from several threads is safe, adding is not.
#pragma once

#include <cstddef>
#include <set>
#include <string>
#include <string_view>

#include "job/record/event.h"

namespace lastegg::record {

/// What adding a line did.
enum class Added {
  fresh,    ///< the event is new
  already,  ///< the very same bytes are here
  clash     ///< another event of the same id is here: a defect of the writer; both are kept, neither counts
};

class EventSet {
 public:
  /// By id; events that wrongly share one, by their bytes.
  struct Order {
    bool operator()(const Event& one, const Event& other) const {
      return one.id != other.id ? one.id < other.id : one.bytes < other.bytes;
    }
  };
  using Events = std::set<Event, Order>;

  /// Adds the event of a line.
  /// Errors:  those of parse_event; the set is then unchanged
  Result<Added> add(std::string_view line);

  /// Adds an event that has been read.
  Added add(Event event);

  /// Adds everything of `other`. The result depends neither on order nor on repetition.
  /// Checked: job/record/fold_law_test.cpp: law
  void merge(const EventSet& other);

  /// Sorted by id.
  const Events& events() const { return events_; }
  std::size_t size() const { return events_.size(); }

  /// The record as text: the events' bytes sorted by id, each followed by a line feed. Adding its lines to an
  /// empty set gives this set again.
  std::string ndjson() const;

  /// SHA-256 of ndjson(), so that `sha256sum events.ndjson` gives the same figure. Equal hash: equal record.
  std::string state_hash() const;

 private:
  Events events_;
};

/// Calls `take(line, index)` for every line of an NDJSON text, without its line feed or carriage return;
/// empty lines are passed over but counted.
template <class Take>
void for_each_line(std::string_view text, Take&& take) {
  std::size_t index = 0;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    std::string_view line = text.substr(0, end);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    if (!line.empty()) take(line, index);
    ++index;
  }
}

}  // namespace lastegg::record
