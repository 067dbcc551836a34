// What a timed treatment of an edge did: for every stretch whether it is lethal there, how deep, and whether
// it may have harmed, from the same ensemble that plans the pace. Plain values; pure functions.
#pragma once

#include <optional>
#include <vector>

#include "bugs/mortality/mortality.h"
#include "treatments/steam/pace/pace.h"
#include "treatments/treated/path.h"

namespace lastegg::treated {

struct TreatedPass {
  std::vector<Mark> marks;
  std::optional<double> began_seconds;  ///< on a clock that all passes share; none: nobody knows when
  std::optional<std::size_t>
      problem;                ///< which model stands behind it; none: nothing is known, nothing is earned
  bool saw_live_bug = false;  ///< behind the head, during or after it
};

struct TreatedEdge {
  double length_metres = 0;
  std::vector<steam::PaceProblem> problems;  ///< the edge with the head and towel of the passes; same target
  std::vector<TreatedPass> passes;           ///< in the order in which they were made
};

/// Why a stretch is not lethal.
enum class Cause {
  none,            ///< it is lethal
  too_fast,        ///< passed, and too fast
  near_limit,      ///< passed, and it cannot be told
  unclear_record,  ///< somebody was there, but nobody knows how long
  not_passed,
  saw_live_bug,  ///< hot enough by the model, and yet a bug lived
  no_model       ///< passed with a head or towel that nothing is known of
};

enum class Harm { none, soak, scorch, unknown };

struct TreatedStretch {
  double from_metres = 0, to_metres = 0;
  int visits = 0;                   ///< that earn kill
  double slowest = 0, fastest = 0;  ///< paces of these visits, m/s
  int counted_together = 0;         ///< visits whose doses the verdict adds; 1: one of them alone
  bugs::Verdict verdict = bugs::Verdict::not_proven;
  Cause cause = Cause::not_passed;
  double lethal_margin = -9;  ///< log10(R/2) that the asked confidence of the weight exceeds
  double short_margin = 9;    ///< log10(R/2) that one minus the confidence exceeds
  double depth_reached_metres =
      0;  ///< down to here it is lethal with that confidence, by the best single visit
  Harm harm = Harm::none;
};

struct TreatedReport {
  std::vector<TreatedStretch> stretches;              ///< from 0 to the edge's length
  bugs::Verdict verdict = bugs::Verdict::not_proven;  ///< the worst stretch's
  std::size_t worst = 0;
  double depth_reached_metres = 0;  ///< the least of all stretches
  double lethal_metres = 0;         ///< length of the lethal stretches
  /// Mean probabilities at the worst stretch, at most 0.99; none where nothing is known to have happened.
  std::optional<double> kill_egg, kill_mobile, kill_engorged;
  double effective_samples = 0;  ///< the least of the problems that were used
  int samples = 0;
};

/// Judges a treatment.
/// Model:   README.md. One visit: its pace against each sample's fastest lethal pace. Several visits of
///          one head and towel, less than the reset time of the kill law apart: marched as so many passes
///          at the fastest of their paces with the longest of the pauses; eggs get the sum, nymphs and
///          adults, which may have moved, only what one visit gives. Paces are rounded towards the faster
///          for kill and the slower for harm.
/// Inputs:  passes that check_marks() lets pass; at least one problem.
/// Errors:  bad_input with a pointer ("/passes/1/marks/0"); as steam::run_pass().
/// Cost:    for each problem about 4 passes per sample, and 3 per sample for each kind of repeat (at most
///          12)
/// Source:  own derivation, README.md
/// Checked: treatments/treated/treated_law_test.cpp, treated_agreement_test.cpp
Result<TreatedReport> judge(const TreatedEdge& edge);

}  // namespace lastegg::treated
