// One function per question, each defined in engine/questions/<name>.cpp. A new question is declared here and
// listed in engine/question_table.cpp, in the order of the documentation.
#pragma once

#include "engine/question.h"

namespace lastegg {

const Question& saturation_question();
const Question& conduction_question();
const Question& fold_events_question();

}  // namespace lastegg
