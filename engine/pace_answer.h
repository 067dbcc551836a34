// The answer of a pace: its fields, an answer without a pace, and the parts of one with a pace. Pure
// functions.
#pragma once

#include <vector>

#include "engine/edge_problem.h"
#include "engine/question.h"

namespace lastegg {

std::vector<Field> pace_answer_fields();

/// lethal, short or not_proven, with a text.
Shape verdict_shape(std::string text);

/// A verdict of the ensemble at one pace; `enough` effective samples stand behind it.
std::string verdict_of(const steam::AtPace& at, bool enough);

/// Whether the weights leave enough samples for a verdict.
bool enough_samples(double effective_samples, int samples);

/// The answer without a pace.
Json no_pace(const PaceBasis& basis, const EdgeProblem& edge, const std::string& harm, const Json& why);

/// none, soak, scorch, or unknown where the finish is.
std::string harm_of(const EdgeProblem& edge, const steam::AtPace& at, double confidence);
Shape harm_shape();

/// What one pace brings.
Json curve_json(const steam::AtPace& at);
Shape curve_shape();

/// Kill by stage, contact and escape included.
Json kill_json(const steam::AtPace& at);
Shape kill_shape();

/// The median of everything uncertain, as a request of the question `pass`.
Json middle_case(const steam::PaceProblem& problem, double pace);

}  // namespace lastegg
