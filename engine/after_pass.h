// What follows a pass at the planned pace, for an answer: how long the edge stays wet, when a bare hand may
// feel it, what the surface does meanwhile. Pure functions.
#pragma once

#include "engine/question.h"
#include "treatments/steam/pace/pace.h"

namespace lastegg {

Shape after_pass_shape();

struct AfterPass {
  Json after;                  ///< of after_pass_shape(), or null
  Json dry_minutes = nullptr;  ///< [middle case with a fan, wet case in still air], or null
};

/// Errors:  none: what cannot be computed is null, with words.
/// Checked: engine/around_pass_unit_test.cpp
AfterPass after_pass(const steam::PaceProblem& problem, const steam::AtPace& planned);

}  // namespace lastegg
