// What the question `survey` says in words. Pure functions.
#pragma once

#include <string>

#include "job/survey/survey.h"

namespace lastegg {

const char* survey_word(survey::Level level);
const char* survey_word(survey::CountClass count_class);
const char* survey_word(survey::How how);
const char* survey_word(survey::Why why);

std::string home_text(const survey::Survey& survey, const survey::Outcome& outcome);
std::string item_text(const survey::ItemJudged& item);
/// Why an item comes where it does, and how to look at it.
std::string next_text(const survey::Item& item, const survey::ItemJudged& judged);

}  // namespace lastegg
