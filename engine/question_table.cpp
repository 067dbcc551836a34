#include "engine/questions/questions.h"

namespace lastegg {

const std::vector<Question>& questions() {
  static const std::vector<Question> table = {saturation_question(), conduction_question(), dose_question(),
                                              pass_question(),       fold_test_question(),  pace_question(),
                                              as_treated_question(), boiler_question(),     jet_question(),
                                              catalogue_question(),  furniture_question(),  plan_question(),
                                              fold_events_question()};
  return table;
}

}  // namespace lastegg
