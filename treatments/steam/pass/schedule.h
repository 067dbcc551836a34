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
    {{3, 1, 1.3}, {3, 2, 2.2}, {4, 4, 2.5}, {8, 2, 1.9}},
    {{4, 1, 1.9}, {1, 10, 1.0}, {4, 4, 2.5}, {8, 2, 1.9}},
    {{4, 1, 1.6}, {3, 5, 2.1}, {4, 4, 2.5}, {8, 2, 1.8}},
    {{5, 1, 1.6}, {2, 7, 2.1}, {4, 4, 2.5}, {5, 2, 2.2}},
    {{2, 2, 4.3}, {2, 13, 4.5}, {4, 4, 2.5}, {8, 1, 1.6}},
    {{3, 2, 3.7}, {2, 25, 4.5}, {4, 4, 2.5}, {4, 2, 1.7}},
}};

/// While a slider moves.
constexpr ScheduleRows k_preview_schedules{{
    {{1, 2, 1.0}, {5, 1, 1.4}, {4, 2, 3.0}, {8, 2, 1.8}},
    {{3, 1, 1.4}, {3, 2, 2.6}, {4, 2, 3.0}, {7, 2, 1.9}},
    {{3, 1, 1.8}, {4, 2, 1.1}, {4, 2, 3.0}, {7, 2, 1.9}},
    {{2, 2, 4.5}, {2, 5, 2.0}, {4, 2, 3.0}, {5, 2, 2.0}},
    {{4, 1, 2.7}, {1, 13, 1.1}, {4, 2, 3.0}, {7, 1, 1.3}},
    {{4, 1, 2.9}, {3, 7, 4.0}, {4, 2, 3.0}, {5, 1, 1.4}},
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
