// What several commands ask of a job file: its folded state, and the answers that are computed from it.
#pragma once

#include <string>

#include "engine/json.h"
#include "physics/quantities/error.h"

namespace lastegg::cli {

/// Answer of a question.
/// Errors:  that of the question
Result<Json> answer_to(const std::string& question, const Json& request);

/// Answer of fold_events for a .lastegg file or a text of events.
/// Errors:  not_found, bad_input naming the file
Result<Json> folded_job(const std::string& file);

/// Answer of `treated` for a folded job.
Result<Json> treated_answer(const Json& folded, int samples);

}  // namespace lastegg::cli
