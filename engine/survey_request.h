// The request of the question `survey` and what it says. Pure functions.
#pragma once

#include <string>
#include <vector>

#include "engine/question.h"
#include "job/survey/survey.h"

namespace lastegg {

struct SurveyRequest {
  survey::Survey survey;
  std::vector<std::string> room_ids, item_ids;  ///< as given, in the order of the survey
  bool has_bed = false;
};

std::vector<Choice> survey_how_choices();
Shape survey_request_shape();

/// Errors:  not_found for a room or item that is not listed, bad_input for an id that stands twice; with the
/// place
Result<SurveyRequest> read_survey(const Json& request);

}  // namespace lastegg
