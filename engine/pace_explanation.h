// Why a pace is what it is, as fields of the pace answer and one sentence.
#pragma once

#include <string>
#include <vector>

#include "engine/json.h"
#include "engine/pace_words.h"
#include "engine/shape.h"
#include "treatments/steam/pace/what_matters.h"

namespace lastegg {

/// Fields `what_matters`, `levers` and `explanation` of a pace answer.
std::vector<Field> explanation_fields();

/// Writes those fields. Without gains (nothing kills in the middle case) there are no levers.
void explain(const PaceWords& words, const std::vector<steam::InfluenceShare>& influences,
             const std::vector<steam::LeverGain>& gains, Json& answer);

/// The fields where there is no pace to explain.
void explain_nothing(Json& answer);

}  // namespace lastegg
