#include "engine/questions/questions.h"

namespace lastegg {

const std::vector<Question>& questions() {
  static const std::vector<Question> table = {
      saturation_question(),  conduction_question(),   dose_question(),
      pass_question(),        fold_test_question(),    pace_question(),
      at_pace_question(),     as_treated_question(),   boiler_question(),
      jet_question(),         catalogue_question(),    furniture_question(),
      survey_question(),      plan_question(),         method_question(),
      visit_question(),       preparation_question(),  visit_requests_question(),
      fold_events_question(), job_requests_question(), treated_question(),
      follow_up_question(),   report_question(),       probe_check_question()};
  return table;
}

}  // namespace lastegg
