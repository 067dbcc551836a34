// Which statements of a record stand. An event stands when its data can be used and no other event corrects
// it, directly or through a chain. Who wins is decided by what corrects what, never by a time. Pure function;
// what it returns points into the record and lives as long as it is left alone.
#pragma once

#include <string>
#include <vector>

#include "job/record/event_set.h"

namespace lastegg::record {

/// An event that is kept but does not count, and why.
struct Refused {
  std::string id;
  Error error;
  bool settled = false;  ///< a sound event corrects it, so that nobody needs to look any more
};

struct Standing {
  std::vector<const Event*> statements;  ///< those that stand, sorted by id; of known and unknown kinds
  std::vector<Refused> refused;          ///< sorted by id
};

/// Model:   Each event names at most one other, so corrections form chains. Refused are: events that share an
/// id
///          (a defect: neither counts, and what they correct is left alone), corrections of another subject
///          or family of kinds, corrections that form a circle, and data that fault_of() finds fault with. A
///          sound event beats every event of the chain below it, also through one whose data cannot be used.
///          A correction whose target has not arrived stands on its own.
/// Cost:    n log n
/// Checked: job/record/standing_unit_test.cpp: unit; job/record/fold_law_test.cpp: law
Standing standing_of(const EventSet& record);

}  // namespace lastegg::record
