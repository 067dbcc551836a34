// From the temperature after a treatment to the days on which its surviving eggs hatch, their nymphs grow up
// and lay. Rates are summed over the temperatures, so a log of a cooling room counts as it was. Plain values;
// pure functions.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "bugs/lifecycle/development.h"
#include "physics/quantities/error.h"

namespace lastegg::bugs {

/// Temperatures since the treatment, joined by straight lines; one reading is a steady temperature.
struct RoomLog {
  std::vector<double> days;  ///< strictly increasing, from the treatment on
  std::vector<double> celsius;
  double uncertainty_kelvin = 0;  ///< of every reading, up and down
};

/// Days after the treatment; none where the temperature lets no date be named.
struct HatchWindow {
  std::optional<double> first_hatch_days;  ///< of an egg laid on the day of the treatment, fast bound
  std::optional<double> last_hatch_days;   ///< of the same egg, slow bound: every surviving egg has hatched
  std::optional<double>
      next_adult_days;  ///< fast bound, from an egg that hatched on the day of the treatment
  std::optional<double> first_new_egg_days;  ///< laid by that adult
  bool is_extended =
      false;  ///< a date lies after the last reading: coldest and warmest day of the log were taken on
  bool has_gaps = false;  ///< intervals longer than k_longest_interval_days count by their worse end
  CelsiusRange met;       ///< lowest and highest temperature, uncertainty included
};

/// Longer intervals of a log are holes: slow counts the lower of both ends, fast the higher.
/// Source:  judgement: a home changes by day and night
inline constexpr double k_longest_interval_days = 0.25;

/// No date later than this is named.
/// Source:  judgement: longer than adults live without blood at room temperature
inline constexpr double k_last_day = 400;

/// When surviving eggs hatch, grow up and lay.
/// Model:   sum of rate_per_day over the log until it reaches 1; the slow bound at the lower end of every
/// temperature's
///          uncertainty, the fast one at the upper. After the last reading the slow bound goes on at the
///          coldest day of the log, the fast one at the warmest (of a log shorter than a day: lowest and
///          highest reading).
/// Inputs:  log: -40 to 60 C, at least one reading, uncertainty 0 to 10 K
/// Errors:  bad_input with place below /series
/// Source:  own derivation; rate summation as in insect phenology at large
/// Checked: bugs/lifecycle/hatch_window_law_test.cpp, hatch_window_reference_test.cpp
Result<HatchWindow> hatch_window(const RoomLog& log);

}  // namespace lastegg::bugs
