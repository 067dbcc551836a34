// The report that a client is handed: what was found, done, measured and computed, kept apart; what was not
// done and why; how sure all of it is. A pure function of the folded record and of the answers given along.
// It promises nothing.
#pragma once

#include <string>

#include "job/reports/report_lines.h"

namespace lastegg::reports {

struct ReportInput {
  const Json& state;      ///< as fold_events gives it
  const Json& treated;    ///< {"items", "counts"} of the question `treated`
  const Json& follow_up;  ///< answer of the question `follow_up`; null where nobody asked
  bool has_contradictions = false;
};

/// {"title", "blocks"}: blocks in the order in which people read them.
/// Checked: job/reports/report_law_test.cpp
Json report_document(const ReportInput& input);

/// Blocks out of the record alone (report_record.cpp).
Json found_block(const ReportInput& input);
Json treated_block(const ReportInput& input);
Json measured_block(const ReportInput& input);
Json hidden_spot_block(const ReportInput& input);
Json damage_block(const ReportInput& input);

/// Blocks out of what was computed (report_verdicts.cpp).
Json summary_block(const ReportInput& input);
Json modelled_block(const ReportInput& input);
Json not_treated_block(const ReportInput& input);
Json redo_block(const ReportInput& input);
Json harm_block(const ReportInput& input);

/// Blocks that say what it means (report_meaning.cpp).
Json next_visit_block(const ReportInput& input);
Json cautions_block(const ReportInput& input);
Json how_sure_block(const ReportInput& input);

}  // namespace lastegg::reports
