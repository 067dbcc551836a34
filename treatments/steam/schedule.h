// How the phases of a pass are cut into steps: a base schedule per phase, shared by the double-precision
// passes and the lanes. Plain values.
#pragma once

namespace lastegg::steam {

/// `blocks` blocks of `steps` equal steps, each block's steps `ratio` times longer than the last's, so that
/// the abrupt change at the phase's start is resolved.
struct Schedule {
  int blocks;
  int steps;
  double ratio;
};

/// The schedules of one accuracy. Found by search, docs/decisions/010-steam-grid.md.
struct Schedules {
  Schedule skirt, cover, gap, air;
};
constexpr Schedules k_usual_schedules{{2, 2, 2.0}, {3, 4, 2.0}, {4, 4, 2.5}, {6, 4, 2.3}};
/// While a slider moves.
constexpr Schedules k_preview_schedules{{2, 1, 2.0}, {2, 3, 2.5}, {4, 2, 3.0}, {5, 2, 3.0}};

/// Length of the first step, so that all steps of the schedule add up to `seconds`.
constexpr double first_step_seconds(const Schedule& schedule, double seconds) {
  double sum = 0;
  double growth = 1;
  for (int block = 0; block < schedule.blocks; ++block, growth *= schedule.ratio) sum += growth;
  return seconds / (schedule.steps * sum);
}

}  // namespace lastegg::steam
