// One function per question, each defined in engine/questions/<name>.cpp (fold_test in
// fold_test_question.cpp, since *_test.cpp are tests). A new question is declared here and
// listed in engine/question_table.cpp, in the order of the documentation.
#pragma once

#include "engine/question.h"

namespace lastegg {

const Question& saturation_question();
const Question& conduction_question();
const Question& dose_question();
const Question& pass_question();
const Question& fold_test_question();
const Question& pace_question();
const Question& at_pace_question();
const Question& as_treated_question();
const Question& boiler_question();
const Question& jet_question();
const Question& catalogue_question();
const Question& furniture_question();
const Question& survey_question();
const Question& plan_question();
const Question& method_question();
const Question& visit_question();
const Question& preparation_question();
const Question& visit_requests_question();
const Question& treated_question();
const Question& follow_up_question();
const Question& report_question();
const Question& probe_check_question();
const Question& fold_events_question();
const Question& job_requests_question();

}  // namespace lastegg
