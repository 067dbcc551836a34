// How the phases of a pass are cut into steps: a base schedule per phase, shared by the double-precision
// passes and the lanes. Plain values.
#pragma once

#include <array>
#include <cstddef>

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

/// A row for passes that cover a place up to 2 s, 4 s, 8 s and so on, the last for all that are slower: no
/// step may be much longer than the front takes through a cell, so slow passes need more of them.
constexpr std::size_t k_schedule_rows = 6;
constexpr double k_first_row_seconds = 2;
using ScheduleRows = std::array<Schedules, k_schedule_rows>;
constexpr ScheduleRows k_usual_schedules{{
    {{2, 2, 2.0}, {4, 2, 2.5}, {4, 4, 2.5}, {7, 3, 2.0}},
    {{2, 3, 1.7}, {3, 5, 2.1}, {4, 4, 2.5}, {7, 3, 2.0}},
    {{2, 2, 2.0}, {2, 13, 2.2}, {4, 4, 2.5}, {6, 4, 2.3}},
    {{2, 4, 1.7}, {1, 24, 1.9}, {4, 4, 2.5}, {6, 4, 1.7}},
    {{4, 5, 3.5}, {3, 17, 2.0}, {4, 4, 2.5}, {4, 6, 2.2}},
    {{4, 6, 2.3}, {3, 27, 2.5}, {4, 4, 2.5}, {6, 5, 1.5}},
}};

/// While a slider moves.
constexpr ScheduleRows k_preview_schedules{{
    {{2, 2, 2.6}, {2, 3, 2.9}, {4, 2, 3.0}, {7, 2, 2.1}},
    {{3, 2, 2.1}, {2, 5, 2.1}, {4, 2, 3.0}, {5, 2, 3.0}},
    {{2, 2, 2.0}, {2, 8, 1.9}, {4, 2, 3.0}, {5, 3, 3.0}},
    {{3, 1, 2.0}, {2, 9, 1.9}, {4, 2, 3.0}, {7, 2, 1.8}},
    {{2, 5, 3.5}, {2, 15, 2.2}, {4, 2, 3.0}, {5, 3, 2.0}},
    {{3, 4, 2.6}, {3, 14, 2.4}, {4, 2, 3.0}, {4, 3, 1.7}},
}};

/// The row for a pass whose head covers a place for so long.
constexpr std::size_t schedule_row(double cover_seconds) {
  std::size_t row = 0;
  for (double longest = k_first_row_seconds; row + 1 < k_schedule_rows && cover_seconds > longest;
       longest *= 2)
    ++row;
  return row;
}

/// Length of the first step, so that all steps of the schedule add up to `seconds`.
constexpr double first_step_seconds(const Schedule& schedule, double seconds) {
  double sum = 0;
  double growth = 1;
  for (int block = 0; block < schedule.blocks; ++block, growth *= schedule.ratio) sum += growth;
  return seconds / (schedule.steps * sum);
}

}  // namespace lastegg::steam
