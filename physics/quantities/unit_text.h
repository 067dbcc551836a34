// Units of measurement that people type and that keys carry, and the reading of text such as "1/4 in", "71 C",
// "25 mm/s". Temperatures are absolute; a difference of temperatures has its own unit. Pure functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "physics/quantities/error.h"

namespace lastegg {

/// The units in which values are stored and travel. The name of a key ends in unit_name().
enum class Unit {
  none,
  metre,
  square_metre,
  second,
  minute,
  day,
  metre_per_second,
  celsius,
  kelvin,                       ///< an absolute temperature in kelvin
  kelvin_difference,            ///< a difference of temperatures
  pascal,
  kilogram,
  kilogram_per_m3,
  gram_per_m2,
  watt,
  watt_per_m2,
  watt_per_m2_kelvin,
  watt_per_metre_kelvin,
  joule_per_m3_kelvin,
  joule_per_kilogram,
  joule_per_kilogram_kelvin,
  fraction
};

/// Words for a unit, "metres per second", as messages and documentation show it.
std::string_view unit_name(Unit unit);

/// Short sign of a unit, "m/s".
std::string_view unit_sign(Unit unit);

/// The spellings accepted for a unit's dimension, for messages: {"mm/s", "in/s", ...}.
std::vector<std::string> accepted_spellings(Unit unit);

/// Value of `text` in `unit`. Accepts a decimal or a fraction ("1/4", "1 1/2") followed by a unit of the same dimension.
/// Errors:  bad_input when the text has no unit, an unknown or ambiguous one, one of another dimension, or no number;
///          the message lists the accepted spellings.
/// Source:  conversion factors: 1 in = 0.0254 m, 1 ft = 0.3048 m, F = 1.8 C + 32 (exact definitions, NIST SP 811 appendix B)
/// Checked: physics/quantities/unit_text_test.cpp: reference
Result<double> parse_quantity(std::string_view text, Unit unit);

}  // namespace lastegg
