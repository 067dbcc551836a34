// The record of a treatment as questions are given it: passes with marks or with length and seconds, their
// towels and times. Pure functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/question.h"
#include "treatments/steam/steamer/unknowns.h"
#include "treatments/treated/treated.h"

namespace lastegg {

Shape treated_pass_shape();

struct RecordedPass {
  treated::TreatedPass pass;          ///< `problem` still to be set
  std::optional<steam::Towel> towel;  ///< none: that of the calibration
};

struct TreatedRecord {
  std::vector<RecordedPass> passes;  ///< in the order in which they were made
  double reach_metres = 0;           ///< farthest mark
};

/// Errors:  bad_input with place: times of two kinds, a time that is no time, passes that overlap in
///          time.
/// Checked: engine/treated_record_unit_test.cpp
Result<TreatedRecord> read_treated_record(const Json& passes, const std::string& where);

/// Seconds since the start of 1970 (UTC, or local time without a zone) of "2026-03-02T10:15:00Z"; none
/// for any other text.
/// Source:  RFC 3339 (an open standard)
/// Checked: engine/treated_record_unit_test.cpp
std::optional<double> seconds_of_timestamp(const std::string& text);

}  // namespace lastegg
