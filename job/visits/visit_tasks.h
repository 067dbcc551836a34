// From the items of a visit with their methods to the tasks of the visit, what each needs and waits for, and
// what has to be left out. Reads data/task_minutes.json. Plain values; pure functions; any thread.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "job/visits/schedule.h"

namespace lastegg::visits {

/// Which end of the ranges of the tasks' minutes is taken.
enum class Spread { low, likely, high };

struct Circuit {
  std::string title, room;
  double volts = 120;
  double breaker_amperes = 15;
  double other_watts = 0;  ///< of what else runs on it
  /// What a visit may draw: a share of the breaker less what runs already; never below zero.
  /// Source:  data continuous_share
  double free_amperes() const;
};

/// An item as the visit sees it.
struct Work {
  std::string title, room, method;
  bool bed = false, turns = false, dismantles = false, legs = false, encased = false;
  bool dust_cover = false, dust_cover_consent = false, dismantle_consent = true;
  double hands_minutes = 0, clock_minutes = 0;         ///< of methods other than steam
  double steam_minutes = 0, hidden_steam_minutes = 0;  ///< in sight, and where it has to be turned or opened
  int edges = 0, hidden_edges = 0;
  std::optional<std::pair<double, double>> dry_minutes;  ///< touch dry again: low, high
};

/// Laundry for dryer or washer.
struct Load {
  std::string title, room;
  double minutes = 40;
  bool bedding = false;  ///< the bed waits for it
};

/// A wait of the steamer after so many minutes of steam: cooling and refill.
struct Pause {
  double after_steam_minutes = 0, minutes = 0;
};

struct Steamer {
  double watts = 1500;
  double heat_up_minutes = 8;
  double stretch = 1;         ///< minutes on the clock per minute of steam, by short pauses of the boiler
  std::vector<Pause> pauses;  ///< in order
};

struct Visit {
  int crew = 1, machines = 1, vacuums = 1, dryers = 1;
  Steamer steamer;
  double vacuum_watts = 1200;
  double heater_watts = 1500;
  bool waits_for_bed = true;  ///< stays until the bed is dry, covered and put back
  std::vector<Circuit> circuits;
  std::vector<Load> loads;
  std::vector<Work> work;  ///< steamed in this order as far as pauses are dealt out
};

/// What a task is, for the words.
struct TaskNote {
  std::string kind;                 ///< arrive, start_check, heat_up, strip, carry_load, load ...
  std::optional<std::size_t> item;  ///< index in Visit::work
  std::string subject;              ///< title of item, load or room
  std::string device;               ///< steamer, vacuum, dryer, heater; empty: none
  int people = 0;
  double amperes = 0;
  std::optional<std::size_t> circuit;
  bool cord_from_other_room = false;
};

struct LeftOut {
  std::string code;  ///< no_second_person, no_consent, no_circuit, other_visit, no_machine ...
  std::size_t item = 0;
  std::string what;  ///< kind of task
  double amperes = 0, limit = 0;
};

/// Resources of the project, in this order: people, machines, vacuums, dryers, then circuits.
constexpr std::size_t k_people = 0, k_machines = 1, k_vacuums = 2, k_dryers = 3, k_first_circuit = 4;

struct Tasks {
  Project project;
  std::vector<TaskNote> notes;  ///< task by task
  std::vector<LeftOut> left_out;
};

/// Tasks of a visit as a chain of dependencies.
/// Model:   arrive; check and heat up; per bed strip, the mattress before what it lies on; per item vacuum,
/// dismantle, steam in sight, turn with
///          two, open the dust cover only with consent, steam what was hidden, dry, encase, isolate; the bed
///          is put back last in its room, after its bedding; hand over. Steaming takes the plan's minutes
///          times steam_spread, plus edge changes, the boiler's short pauses, and its refills where the tank
///          runs dry in the order given.
/// Inputs:  crew 1..4
/// Source:  order: product rules and common practice; minutes: data/task_minutes.json
/// Checked: job/visits/visit_tasks_unit_test.cpp
Result<Tasks> tasks_of(const Visit& visit, Spread spread);

/// Who does a task: persons counted from 1, so that as few as possible change between items.
std::vector<std::vector<int>> persons(const Visit& visit, const Tasks& tasks, const Schedule& schedule);

/// Why a task begins no earlier.
struct Wait {
  std::string code;                 ///< none, after, people, machine, vacuum, dryer, circuit
  std::optional<std::size_t> task;  ///< the one it waits for
};
std::vector<Wait> waits(const Tasks& tasks, const Schedule& schedule);

constexpr std::string_view k_task_minutes_data_key = "task_minutes/1";

}  // namespace lastegg::visits
