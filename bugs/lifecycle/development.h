// How fast eggs, nymphs and new adults develop at a temperature, as a slow and a fast bound. Plain functions
// of the temperature where they live; the numbers come from data/development.json.
#pragma once

#include <string_view>

#include "physics/quantities/error.h"

namespace lastegg::bugs {

inline constexpr std::string_view k_development_data_key = "development/1";

/// Slow: the last surviving egg has surely hatched. Fast: nothing develops sooner.
enum class Bound { slow, fast };

/// What the temperature is known to lie between.
struct CelsiusRange {
  double low = 0, high = 0;
};

/// Temperatures at which the rules of development change, and what is usual.
struct DevelopmentLimits {
  double no_hatch_below_celsius = 0;
  double known_from_celsius = 0;  ///< cooler: extrapolated
  double held_above_celsius = 0;  ///< warmer earns nothing more
  double heat_above_celsius = 0;  ///< warmer harms: another model
  double usual_uncertainty_kelvin = 0;
  double custom_days = 0;  ///< the customary return visit
};

/// Errors:  internal, when the data file cannot be used
Result<void> development_data_state();
const DevelopmentLimits& development_limits();

/// Days from laying to hatching at a steady temperature.
/// Model:   A exp(-k (T - 18)) and S / (T - 13), days, T in C; slow is the longer, fast the shorter. Derived:
/// A and k
///          from 20.5 d at 18 C and 4.5 d at 30 C, S = 90 K d. T above 31 C counts as 31 C.
/// Inputs:  celsius: from the limit of hatching (14 C)
/// Source:  data/development.json: from memory, and own derivation
/// Checked: bugs/lifecycle/development_reference_test.cpp
double egg_days(double celsius, Bound bound);

/// Days from laying to the adult moult of a well fed bug, by the middle form.
/// Model:   A exp(-k (T - 18)) through 120 d at 18 C and 21 d at 30 C
/// Source:  [handbook_figures] both anchors
/// Checked: bugs/lifecycle/development_reference_test.cpp
double adult_days(double celsius);

/// Least days from hatching to the adult moult: 0.88 of what the middle forms leave between them.
/// Source:  own derivation, bugs/lifecycle/README.md
/// Checked: bugs/lifecycle/development_reference_test.cpp
double nymph_days(double celsius);

/// Days from the adult moult to the first egg.
/// Source:  [handbook_figures] 8 d at 18 C, 3 d at 30 C
double first_egg_days(double celsius);

/// What develops.
enum class Phase { egg, nymph, first_egg };

/// Share of a phase that a day brings at a temperature somewhere in `range`: the least for Bound::slow, the
/// most for Bound::fast. Below 14 C nothing; above 34 C the slow bound counts nothing and the fast one as at
/// 31 C. Checked: bugs/lifecycle/development_law_test.cpp
double rate_per_day(Phase phase, CelsiusRange range, Bound bound);

}  // namespace lastegg::bugs
