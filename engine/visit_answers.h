// The answers that the question `visit` gives besides its timetable: sleep, minutes left, load, quote.
#pragma once

#include "engine/visit_request.h"
#include "job/visits/schedule.h"
#include "job/visits/visit_tasks.h"

namespace lastegg {

struct Timed {
  visits::Tasks tasks;
  visits::Schedule schedule;
};

/// Can they sleep in it tonight: the bed treated or covered, dry by the drying answer, legs isolated.
Shape sleep_shape();
Json sleep_answer(const Json& request, const visits::Visit& visit, const Timed& timed);

/// So many minutes left: what matters most.
Shape minutes_left_shape();
Json minutes_left_answer(const Json& request);

/// Load of each circuit against what it may carry.
Shape load_shape();
Json load_answer(const visits::Visit& visit, const Timed& timed);

/// Minutes times rates, with the range that follows from the tasks' ranges.
Shape quote_shape();
Json quote_answer(const Json& request, int low_minutes, int likely_minutes, int high_minutes);

}  // namespace lastegg
