// A timetable for tasks that wait for each other and share what there is only so much of: people, machines,
// dryers, amperes. Whole minutes. Plain values; pure, deterministic functions; any thread.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "physics/quantities/error.h"

namespace lastegg::visits {

/// Something that several tasks share: they may use its capacity at any time, never more.
struct Resource {
  std::string name;
  double capacity = 0;
};

struct Need {
  std::size_t resource = 0;
  double amount = 0;
};

struct Task {
  int minutes = 0;
  std::vector<std::size_t> after;  ///< tasks that end before it begins
  std::vector<Need> needs;         ///< while it lasts
  bool tail = false;               ///< may outlast the project, such as drying; nothing waits for it
};

struct Project {
  std::vector<Resource> resources;
  std::vector<Task> tasks;
};

struct Schedule {
  std::vector<int> start;  ///< minute, task by task
  int makespan = 0;        ///< end of the last task that is no tail
  int lower_bound = 0;     ///< no schedule ends earlier
};

/// Sum of amounts may exceed a capacity by so much, absolute: rounding of decimals.
constexpr double k_capacity_tolerance = 1e-9;

/// Lists that are tried by moving one task after the rules have been.
constexpr int k_improvement_rounds = 400;

/// A short timetable.
/// Model:   serial schedule generation: tasks in the order of a list, each as early as its forerunners and
///          the resources allow. Lists by five rules (latest finish, longest way to the end, most work after
///          it, most successors, as given); each is justified to the right and to the left until nothing is
///          won; then tasks are moved about in the best list, pseudo-randomly with a fixed seed. The best is
///          kept; it stops early at the lower bound.
/// Inputs:  whole minutes 0..100000; needs within capacity; forerunners without a circle.
///          `growing`: a resource of whole units for which every smaller capacity is tried too, so that
///          more of it never ends later.
/// Errors:  bad_input for a circle, a need that is larger than its capacity, or an index out of range.
/// Cost:    about 400 lists of n tasks; a home of 60 tasks takes a few milliseconds
/// Source:  own program of the textbook method for projects under limited resources (serial generation,
///          double justification)
/// Checked: job/visits/schedule_law_test.cpp; against an exact solver: checks/visits.py
Result<Schedule> schedule(const Project& project, std::optional<std::size_t> growing = std::nullopt);

/// No schedule is shorter.
/// Model:   the longest chain; and for each resource and all tasks that begin no earlier than h and have at
///          least q minutes behind them: h + work / capacity + q, the largest over h and q.
int lower_bound(const Project& project);

/// Most of each resource that is used at any minute.
std::vector<double> peaks(const Project& project, const Schedule& schedule);

}  // namespace lastegg::visits
