// Timetables: what waits waits, nothing is used twice, more hands never end later, and the same question has
// the same answer. The gap to an exact solver is measured by checks/visits.py.
#include "job/visits/schedule.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace lastegg::visits {
namespace {

// Up to 20 tasks, people, one machine, one circuit; forerunners have smaller numbers.
Project invented_project(int people) {
  Project project;
  project.resources = {{"people", static_cast<double>(people)}, {"machine", 1}, {"amperes", 16}};
  const auto count = *rc::gen::inRange<std::size_t>(1, 21);
  for (std::size_t i = 0; i < count; ++i) {
    Task task;
    task.minutes = *rc::gen::inRange(0, 40);
    for (std::size_t before = 0; before < i; ++before)
      if (!project.tasks[before].tail && *rc::gen::inRange(0, 6) == 0) task.after.push_back(before);
    if (*rc::gen::inRange(0, 4) > 0) task.needs.push_back({0, static_cast<double>(*rc::gen::inRange(1, 3))});
    if (*rc::gen::inRange(0, 3) == 0) task.needs.push_back({1, 1});
    if (*rc::gen::inRange(0, 3) == 0) task.needs.push_back({2, *rc::gen::inRange(5, 160) / 10.0});
    task.tail = task.needs.empty() && *rc::gen::inRange(0, 3) == 0;
    project.tasks.push_back(task);
  }
  return project;
}

void holds(const Project& project, const Schedule& found) {
  RC_ASSERT(found.start.size() == project.tasks.size());
  int last = 0, end = 0;
  for (std::size_t i = 0; i < project.tasks.size(); ++i) {
    RC_ASSERT(found.start[i] >= 0);
    for (const std::size_t before : project.tasks[i].after)
      RC_ASSERT(found.start[i] >= found.start[before] + project.tasks[before].minutes);
    last = std::max(last, found.start[i] + project.tasks[i].minutes);
    if (!project.tasks[i].tail) end = std::max(end, found.start[i] + project.tasks[i].minutes);
  }
  RC_ASSERT(end == found.makespan);
  RC_ASSERT(found.makespan >= found.lower_bound);
  for (int minute = 0; minute < last; ++minute) {
    std::vector<double> used(project.resources.size(), 0);
    for (std::size_t i = 0; i < project.tasks.size(); ++i) {
      if (minute < found.start[i] || minute >= found.start[i] + project.tasks[i].minutes) continue;
      for (const Need& need : project.tasks[i].needs) used[need.resource] += need.amount;
    }
    for (std::size_t r = 0; r < used.size(); ++r) RC_ASSERT(used[r] <= project.resources[r].capacity + 1e-6);
  }
}

RC_GTEST_PROP(ScheduleLaw, WhatWaitsWaitsAndNothingIsUsedTwice, ()) {
  const Project project = invented_project(*rc::gen::inRange(2, 5));
  const auto found = schedule(project, 0);
  RC_ASSERT(found.has_value());
  holds(project, *found);
  const auto most = peaks(project, *found);
  for (std::size_t r = 0; r < most.size(); ++r) RC_ASSERT(most[r] <= project.resources[r].capacity + 1e-6);
}

RC_GTEST_PROP(ScheduleLaw, MorePeopleNeverEndLater, ()) {
  Project project = invented_project(2);
  int before = 1 << 20;
  for (const double people : {2.0, 3.0, 4.0}) {
    project.resources[0].capacity = people;
    const auto found = schedule(project, 0);
    RC_ASSERT(found.has_value());
    RC_ASSERT(found->makespan <= before);
    before = found->makespan;
  }
}

RC_GTEST_PROP(ScheduleLaw, TheSameQuestionHasTheSameAnswer, ()) {
  const Project project = invented_project(3);
  RC_ASSERT(schedule(project, 0)->start == schedule(project, 0)->start);
}

TEST(ScheduleLaw, KnownCases) {
  // Two chains of 10 + 20 and 15 + 5 minutes for one person: all in a row; for two: the longer chain.
  Project project;
  project.resources = {{"people", 1}};
  const std::vector<Need> one{{0, 1}};
  project.tasks = {{10, {}, one}, {20, {0}, one}, {15, {}, one}, {5, {2}, one}};
  EXPECT_EQ(schedule(project)->makespan, 50);
  project.resources[0].capacity = 2;
  EXPECT_EQ(schedule(project)->makespan, 30);
  // Drying without hands runs beside the work, and a tail does not count.
  project.resources[0].capacity = 1;
  project.tasks.push_back({60, {0}, {}, true});
  const auto found = schedule(project);
  EXPECT_EQ(found->makespan, 50);
  EXPECT_EQ(found->lower_bound, 50);
}

TEST(ScheduleLaw, WhatCannotBeIsRefused) {
  Project project;
  project.resources = {{"people", 1}};
  project.tasks = {{10, {}, {{0, 2}}}};
  ASSERT_FALSE(schedule(project));
  EXPECT_EQ(schedule(project).error().where, "/tasks/0/needs");
  project.tasks = {{10, {1}, {}}, {10, {0}, {}}};
  ASSERT_FALSE(schedule(project));
  EXPECT_EQ(schedule(project).error().where, "/tasks");
  EXPECT_EQ(schedule(Project{})->makespan, 0);
}

}  // namespace
}  // namespace lastegg::visits
