// Words and JSON of what a treatment did. Pure functions.
#pragma once

#include <string>

#include "engine/edge_problem.h"
#include "engine/question.h"
#include "treatments/treated/treated.h"

namespace lastegg {

Shape cause_shape();
Shape treated_harm_shape();

/// Harm of a stretch: barred or unknown by its finish, else what the ensemble says. A covering that may
/// shut vapour out was judged without its water, so its harm is unknown.
std::string harm_word(const treated::TreatedStretch& stretch, const EdgeProblem& edge);
std::string worse_harm(const std::string& a, const std::string& b);

Json stretch_json(const treated::TreatedStretch& stretch, const std::string& harm);

/// Neighbouring stretches that are not lethal for the same cause, as one; the whole edge where a live bug
/// was seen.
Json redo_json(const treated::TreatedReport& report);

/// Why the edge has its verdict.
Json treated_reason(const treated::TreatedReport& report, double length_metres);

/// lethal, not proven, short: from best to worst.
bool is_worse(bugs::Verdict a, bugs::Verdict b);

}  // namespace lastegg
