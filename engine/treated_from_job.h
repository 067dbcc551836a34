// The whole job as it was treated: every edge of every item with what was done, measured and computed, kept
// apart. It maps the record to requests of as_treated, asks that question edge by edge, and adds what only
// the job knows: marks, methods, contradictions, the redo list. Pure functions.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "engine/question.h"

namespace lastegg {

struct TreatedJobQuestion {
  Json state;                       ///< as fold_events gives it
  std::set<std::string> contested;  ///< subjects of open contradictions
  std::set<std::string> items;      ///< only these; empty: all
  int samples = 1024;
  std::map<std::string, Json>
      known;  ///< `asked` of an earlier answer's edges to their `modelled`: not computed again
};

/// Answer of the question `treated`, without warnings.
/// Model:   Per edge the strokes of one head and fold test are one request of as_treated; of several the best
/// answer
///          stands, for no two are added. A contested statement turns lethal into not proven.
/// Errors:  those of `furniture` never: an item that cannot be built is listed with its error
/// Checked: engine/questions/treated_unit_test.cpp
Result<Answer> treated_job(const TreatedJobQuestion& question);

}  // namespace lastegg
