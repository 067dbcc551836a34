#include "job/visits/schedule.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <utility>

#include "words/say.h"

namespace lastegg::visits {
namespace {

using List = std::vector<std::size_t>;

std::vector<List> successors_of(const Project& project) {
  std::vector<List> out(project.tasks.size());
  for (std::size_t i = 0; i < project.tasks.size(); ++i)
    for (const std::size_t before : project.tasks[i].after) out[before].push_back(i);
  return out;
}

/// Tasks so that every one comes after its forerunners; the lowest index first. Shorter in a circle.
List topological(const Project& project) {
  std::vector<std::size_t> open(project.tasks.size());
  for (std::size_t i = 0; i < open.size(); ++i) open[i] = project.tasks[i].after.size();
  const auto after = successors_of(project);
  List order, ready;
  for (std::size_t i = open.size(); i-- > 0;)
    if (open[i] == 0) ready.push_back(i);
  while (!ready.empty()) {
    const auto next = std::min_element(ready.begin(), ready.end());
    const std::size_t task = *next;
    ready.erase(next);
    order.push_back(task);
    for (const std::size_t later : after[task])
      if (--open[later] == 0) ready.push_back(later);
  }
  return order;
}

/// Minutes from the begin of each task to the end of the longest chain behind it.
std::vector<int> tails_of(const Project& project, const List& order) {
  std::vector<int> tail(project.tasks.size());
  for (std::size_t i = 0; i < tail.size(); ++i)
    tail[i] = project.tasks[i].tail ? 0 : project.tasks[i].minutes;
  for (auto task = order.rbegin(); task != order.rend(); ++task)
    for (const std::size_t before : project.tasks[*task].after)
      tail[before] = std::max(tail[before], project.tasks[before].minutes + tail[*task]);
  return tail;
}

/// Free amounts, minute by minute.
class Profile {
 public:
  Profile(const Project& project, int horizon) : resources_(project.resources.size()) {
    for (std::size_t r = 0; r < resources_.size(); ++r)
      resources_[r].assign(static_cast<std::size_t>(horizon), project.resources[r].capacity);
  }

  int earliest(const Task& task, int from) const {
    if (task.needs.empty() || task.minutes == 0) return from;
    for (int begin = from;;) {
      int clash = -1;
      for (const Need& need : task.needs) {
        const auto& free = resources_[need.resource];
        for (int minute = begin + task.minutes - 1; minute >= begin && minute > clash; --minute)
          if (free[static_cast<std::size_t>(minute)] + k_capacity_tolerance < need.amount) clash = minute;
      }
      if (clash < 0) return begin;
      begin = clash + 1;
    }
  }

  void take(const Task& task, int begin) {
    for (const Need& need : task.needs)
      for (int minute = begin; minute < begin + task.minutes; ++minute)
        resources_[need.resource][static_cast<std::size_t>(minute)] -= need.amount;
  }

 private:
  std::vector<std::vector<double>> resources_;
};

int end_of(const Project& project, const std::vector<int>& start) {
  int end = 0;
  for (std::size_t i = 0; i < start.size(); ++i)
    if (!project.tasks[i].tail) end = std::max(end, start[i] + project.tasks[i].minutes);
  return end;
}

int horizon_of(const Project& project) {
  int minutes = 1;
  for (const Task& task : project.tasks) minutes += task.minutes;
  return minutes;
}

/// Each task as early as possible, in the order of a list in which forerunners stand before.
std::vector<int> generate(const Project& project, const List& list, int horizon) {
  Profile profile(project, horizon);
  std::vector<int> start(project.tasks.size(), 0);
  for (const std::size_t i : list) {
    int from = 0;
    for (const std::size_t before : project.tasks[i].after)
      from = std::max(from, start[before] + project.tasks[before].minutes);
    start[i] = profile.earliest(project.tasks[i], from);
    profile.take(project.tasks[i], start[i]);
  }
  return start;
}

/// The project with time running backwards.
Project reversed(const Project& project) {
  Project out;
  out.resources = project.resources;
  out.tasks.resize(project.tasks.size());
  for (std::size_t i = 0; i < project.tasks.size(); ++i) {
    out.tasks[i].minutes = project.tasks[i].minutes;
    out.tasks[i].needs = project.tasks[i].needs;
    for (const std::size_t before : project.tasks[i].after) out.tasks[before].after.push_back(i);
  }
  return out;
}

/// Tasks by `value`, the smallest first, forerunners always before.
template <typename Value>
List by(const Project& project, const std::vector<Value>& value) {
  std::vector<std::size_t> open(project.tasks.size());
  for (std::size_t i = 0; i < open.size(); ++i) open[i] = project.tasks[i].after.size();
  const auto after = successors_of(project);
  List order, ready;
  for (std::size_t i = 0; i < open.size(); ++i)
    if (open[i] == 0) ready.push_back(i);
  while (!ready.empty()) {
    const auto next = std::min_element(ready.begin(), ready.end(), [&](std::size_t a, std::size_t b) {
      return value[a] != value[b] ? value[a] < value[b] : a < b;
    });
    const std::size_t task = *next;
    ready.erase(next);
    order.push_back(task);
    for (const std::size_t later : after[task])
      if (--open[later] == 0) ready.push_back(later);
  }
  return order;
}

struct Search {
  const Project& project;
  const Project backwards;
  int horizon;
  int bound;
  Schedule best;
  List best_list;

  /// Tries a list and what justification makes of it.
  int attempt(List list) {
    std::vector<int> start = generate(project, list, horizon);
    int end = end_of(project, start);
    for (;;) {
      keep(start, end, list);
      if (end == bound) return end;
      std::vector<int> late(start.size());
      for (std::size_t i = 0; i < start.size(); ++i) late[i] = -(start[i] + project.tasks[i].minutes);
      const std::vector<int> mirrored = generate(backwards, by(backwards, late), horizon);
      std::vector<int> early(start.size());
      for (std::size_t i = 0; i < start.size(); ++i) early[i] = -(mirrored[i] + project.tasks[i].minutes);
      List next = by(project, early);
      std::vector<int> moved = generate(project, next, horizon);
      const int moved_end = end_of(project, moved);
      if (moved_end >= end) return end;
      start = std::move(moved);
      list = std::move(next);
      end = moved_end;
    }
  }

  void keep(const std::vector<int>& start, int end, const List& list) {
    if (!best.start.empty() && end >= best.makespan) return;
    best.start = start;
    best.makespan = end;
    best_list = list;
  }
};

std::uint64_t next_random(std::uint64_t& state) {
  state ^= state << 13;
  state ^= state >> 7;
  state ^= state << 17;
  return state;
}

/// Moves one task to another place of the list between its forerunners and its successors.
List with_one_moved(const Project& project, const std::vector<List>& after, List list, std::uint64_t& state) {
  const std::size_t from = next_random(state) % list.size();
  const std::size_t task = list[from];
  std::size_t low = 0, high = list.size() - 1;
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto among = [&](const List& others) {
      return std::find(others.begin(), others.end(), list[i]) != others.end();
    };
    if (i < from && among(project.tasks[task].after)) low = i + 1;
    if (i > from && among(after[task])) {
      high = i - 1;
      break;
    }
  }
  const std::size_t to = low + next_random(state) % (high - low + 1);
  list.erase(list.begin() + static_cast<std::ptrdiff_t>(from));
  list.insert(list.begin() + static_cast<std::ptrdiff_t>(to), task);
  return list;
}

Schedule best_of(const Project& project) {
  const List order = topological(project);
  const auto after = successors_of(project);
  const std::vector<int> tail = tails_of(project, order);
  std::vector<int> longest(tail.size()), most_after(tail.size()), given(tail.size());
  std::vector<double> most_work(tail.size());
  std::vector<std::vector<char>> reaches(tail.size(), std::vector<char>(tail.size(), 0));
  for (auto i = order.rbegin(); i != order.rend(); ++i) {
    for (const std::size_t later : after[*i]) {
      reaches[*i][later] = 1;
      for (std::size_t k = 0; k < tail.size(); ++k) reaches[*i][k] |= reaches[later][k];
    }
  }
  for (std::size_t i = 0; i < tail.size(); ++i) {
    longest[i] = -tail[i];
    given[i] = static_cast<int>(i);
    double work = project.tasks[i].minutes;
    for (std::size_t k = 0; k < tail.size(); ++k) {
      if (!reaches[i][k]) continue;
      --most_after[i];
      double share = 0;
      for (const Need& need : project.tasks[k].needs)
        share = std::max(share, need.amount / project.resources[need.resource].capacity);
      work += share * project.tasks[k].minutes;
    }
    most_work[i] = -work;
  }
  Search search{project, reversed(project), horizon_of(project), lower_bound(project), {}, {}};
  search.best.lower_bound = search.bound;
  std::vector<int> latest_begin(tail.size());
  for (std::size_t i = 0; i < tail.size(); ++i) latest_begin[i] = project.tasks[i].minutes - tail[i];
  search.attempt(by(project, longest));
  search.attempt(by(project, latest_begin));
  search.attempt(by(project, most_work));
  search.attempt(by(project, most_after));
  search.attempt(by(project, given));
  std::uint64_t state = 0x9e3779b97f4a7c15ULL;
  List current = search.best_list;
  int current_end = search.best.makespan;
  for (int round = 0; round < k_improvement_rounds && search.best.makespan > search.bound; ++round) {
    List moved = with_one_moved(project, after, current, state);
    const int end = search.attempt(moved);
    if (end > current_end) continue;
    current = search.best.makespan == end && end < current_end ? search.best_list : std::move(moved);
    current_end = end;
  }
  return search.best;
}

Result<void> check(const Project& project) {
  for (std::size_t i = 0; i < project.tasks.size(); ++i) {
    const Task& task = project.tasks[i];
    const std::string where = fmt::format("/tasks/{}", i);
    if (task.minutes < 0 || task.minutes > 100000)
      return refuse({ErrorKind::bad_input, say("a task takes 0 to 100000 minutes"), where + "/minutes",
                     std::to_string(task.minutes), "100000", "min"});
    for (const std::size_t before : task.after)
      if (before >= project.tasks.size() || project.tasks[before].tail)
        return refuse({ErrorKind::bad_input, say("it waits for a task that there is not, or for a tail"),
                       where + "/after", std::to_string(before), "", ""});
    for (const Need& need : task.needs) {
      if (need.resource >= project.resources.size())
        return refuse({ErrorKind::bad_input, say("it needs what there is not"), where + "/needs",
                       std::to_string(need.resource), "", ""});
      const Resource& resource = project.resources[need.resource];
      if (need.amount > resource.capacity + k_capacity_tolerance)
        return refuse(
            {ErrorKind::bad_input,
             say("a task needs {:g} of {} and there are {:g}", need.amount, resource.name, resource.capacity),
             where + "/needs", fmt::format("{:g}", need.amount), fmt::format("{:g}", resource.capacity), ""});
    }
  }
  if (topological(project).size() < project.tasks.size())
    return refuse(
        {ErrorKind::bad_input, say("the tasks wait for each other in a circle"), "/tasks", "", "", ""});
  return {};
}

}  // namespace

int lower_bound(const Project& project) {
  const List order = topological(project);
  const std::vector<int> tail = tails_of(project, order);
  std::vector<int> head(tail.size(), 0);
  int bound = 0;
  for (const std::size_t i : order) {
    for (const std::size_t before : project.tasks[i].after)
      head[i] = std::max(head[i], head[before] + project.tasks[before].minutes);
    bound = std::max(bound, head[i] + tail[i]);
  }
  struct User {
    int head, behind;
    double work;
  };
  for (std::size_t r = 0; r < project.resources.size(); ++r) {
    std::vector<User> users;
    for (std::size_t i = 0; i < tail.size(); ++i)
      for (const Need& need : project.tasks[i].needs)
        if (need.resource == r && !project.tasks[i].tail)
          users.push_back(
              {head[i], tail[i] - project.tasks[i].minutes, need.amount * project.tasks[i].minutes});
    for (const User& first : users) {
      for (const User& last : users) {
        double work = 0;
        for (const User& user : users)
          if (user.head >= first.head && user.behind >= last.behind) work += user.work;
        if (work > 0)
          bound =
              std::max(bound, first.head + last.behind +
                                  static_cast<int>(std::ceil(work / project.resources[r].capacity - 1e-6)));
      }
    }
  }
  return bound;
}

Result<Schedule> schedule(const Project& project, std::optional<std::size_t> growing) {
  if (const auto checked = check(project); !checked) return refuse(checked.error());
  if (project.tasks.empty()) return Schedule{};
  Schedule best = best_of(project);
  if (!growing || *growing >= project.resources.size()) return best;
  double least = 1;
  for (const Task& task : project.tasks)
    for (const Need& need : task.needs)
      if (need.resource == *growing) least = std::max(least, std::ceil(need.amount));
  Project smaller = project;
  for (double capacity = least;
       capacity < project.resources[*growing].capacity && best.makespan > best.lower_bound; ++capacity) {
    smaller.resources[*growing].capacity = capacity;
    const Schedule other = best_of(smaller);
    if (other.makespan < best.makespan) {
      best.start = other.start;
      best.makespan = other.makespan;
    }
  }
  return best;
}

std::vector<double> peaks(const Project& project, const Schedule& schedule) {
  std::vector<double> out(project.resources.size(), 0);
  for (std::size_t i = 0; i < project.tasks.size(); ++i) {
    // Use only grows where a task begins.
    std::vector<double> used(project.resources.size(), 0);
    for (std::size_t k = 0; k < project.tasks.size(); ++k) {
      if (schedule.start[k] > schedule.start[i] ||
          schedule.start[k] + project.tasks[k].minutes <= schedule.start[i])
        continue;
      for (const Need& need : project.tasks[k].needs) used[need.resource] += need.amount;
    }
    for (std::size_t r = 0; r < used.size(); ++r) out[r] = std::max(out[r], used[r]);
  }
  return out;
}

}  // namespace lastegg::visits
