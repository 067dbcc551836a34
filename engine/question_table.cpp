#include "engine/questions/questions.h"

namespace lastegg {

const std::vector<Question>& questions() {
  static const std::vector<Question> table = {saturation_question(), conduction_question(),
                                              fold_events_question()};
  return table;
}

}  // namespace lastegg
