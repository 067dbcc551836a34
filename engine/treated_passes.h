// From the strokes, marks and readings that a record holds of one edge to the passes that the question
// as_treated takes. Pure functions of the state of a job. What the record leaves open earns nothing here.
#pragma once

#include <string>
#include <vector>

#include "engine/json.h"

namespace lastegg {

/// What was recorded of one edge.
struct EdgeRecord {
  std::vector<Json> strokes;        ///< stroke/1
  std::vector<Json> marks;          ///< edge_mark/1
  std::vector<Json> spot_readings;  ///< spot_reading/1
  std::vector<Json> notes;          ///< redo_note/1

  bool is_marked(const char* what) const;
  /// The reason given with a mark of that kind; empty without one.
  std::string reason_of(const char* what) const;
};

/// Everything that the state's lists say of an edge.
EdgeRecord record_of_edge(const Json& state, const std::string& item, const std::string& edge);

/// One pass of as_treated.
/// Model:   The head is at 0 at second 0 and at the stroke's length at its end, unless the first or last mark
/// says
///          otherwise. A stroke that was interrupted nobody knows where is unknown all along. A change of
///          towels leaves the interval around its place unknown, or all of the stroke where no place was
///          told.
/// Checked: engine/treated_passes_unit_test.cpp
Json pass_of_stroke(const Json& stroke, const std::vector<Json>& marks_of_edge, double edge_metres);

/// Source:  judgement: as finely as a length along a cloth is read
inline constexpr double k_measured_to_metres = 0.01;

/// The passes of as_treated in their order, with saw_live_bug on the last that may have come before a live
/// bug. Model:   No clock is asked. A stroke came after a live bug if it says so (`follows`), or if its visit
/// is of a later
///          day than the bug's. Whatever is not known to have come after came before, so the edge stays on
///          the list.
/// Checked: engine/treated_passes_unit_test.cpp
std::vector<Json> passes_of(const std::vector<Json>& strokes, const EdgeRecord& record, const Json& state,
                            double edge_metres);

}  // namespace lastegg
