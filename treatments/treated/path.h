// The way of a head along an edge as it was timed: marks, what lies between them, and how long the head
// covered a place. Plain values; pure functions.
#pragma once

#include <optional>
#include <vector>

#include "physics/quantities/error.h"

namespace lastegg::treated {

/// The middle of the head was at a place at a time.
struct Mark {
  double at_metres = 0;
  double seconds = 0;          ///< from the start of the pass
  bool broken_before = false;  ///< what happened since the mark before is not known: a call, a locked screen
};

/// Refuses what is no record of a pass.
/// Errors:  bad_input, `where` a pointer below the pass ("/marks/2/seconds"): fewer than two marks, a
///          value that is not finite, time that goes backwards, places outside the edge by more than half
///          a metre.
/// Checked: treatments/treated/path_law_test.cpp
Result<void> check_marks(const std::vector<Mark>& marks, double edge_metres);

/// Marks closer together than this are a stop.
/// Source:  judgement: no hand holds stiller.
constexpr double k_stop_metres = 0.002;

/// How a head went over a place in one go.
struct Visit {
  double kill_pace = 0;  ///< head length over the time that surely covered the place, m/s
  double harm_pace = 0;  ///< head length over the longest time that may have; 0: nobody knows how long
  double seconds = 0;    ///< when, from the start of the pass
};

/// Visits of a place, in order of time.
/// Model:   between two marks the head moved evenly; a place is covered while the head's middle is within
///          half its length. Where the record begins or ends inside that window, the pace found is taken
///          for the rest of it. Stops add their time to the places under the head; for kill no more than
///          `slowest_pace` would give. What was broken, or moved more slowly than `slowest_pace` on
///          average (it hides a stop at an unknown place), earns no kill and leaves harm unknown. Going
///          back is a visit of its own.
/// Inputs:  marks that check_marks() lets pass; head_metres > 0; slowest_pace > 0, m/s.
/// Source:  own derivation, README.md
/// Checked: treatments/treated/path_law_test.cpp
std::vector<Visit> visits_of(const std::vector<Mark>& marks, double head_metres, double slowest_pace,
                             double at_metres);

}  // namespace lastegg::treated
