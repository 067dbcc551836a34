// Minutes of the tasks of a visit, from data/task_minutes.json. For visit_tasks.cpp and its tests.
#pragma once

#include <map>
#include <string>

#include "job/visits/visit_tasks.h"
#include "physics/evidence/datum.h"

namespace lastegg::visits {

struct TaskMinutes {
  std::map<std::string, Datum> tasks, numbers;
};

/// Read once; on an error the message names the place.
const Result<TaskMinutes>& task_minutes();

/// A value of the range. A datum without a range has one value.
double at(const Datum& datum, Spread spread);

}  // namespace lastegg::visits
