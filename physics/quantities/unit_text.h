// Units of measurement that people type and that keys carry, and the reading of text such as "1/4 in",
// "71 C", "25 mm/s". Temperatures are absolute; a difference of temperatures has its own unit. Pure
// functions.
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
  cubic_metre,
  second,
  minute,
  hour,
  day,
  metre_per_second,
  celsius,
  kelvin,             ///< an absolute temperature in kelvin
  kelvin_difference,  ///< a difference of temperatures
  kelvin_per_second,
  pascal,
  kilogram,
  kilogram_per_second,
  gram_per_second,
  kilogram_per_m3,
  gram_per_m2,
  cubic_metre_per_second,
  watt,
  watt_per_kelvin,
  watt_per_m2,
  watt_per_m2_kelvin,
  watt_per_metre_kelvin,
  square_metre_kelvin_per_watt,
  joule_per_m2,
  joule_per_kelvin,
  joule_per_m3_kelvin,
  joule_per_kilogram,
  joule_per_kilogram_kelvin,
  volt,
  ampere,
  microvolt,
  fraction
};

/// Words for a unit, "metres per second", as messages and documentation show it.
std::string_view unit_name(Unit unit);

/// Short sign of a unit, "m/s".
std::string_view unit_sign(Unit unit);

/// The spellings accepted for a unit's dimension, for messages: {"mm/s", "in/s", ...}.
std::vector<std::string> accepted_spellings(Unit unit);

/// Value of `text` in `unit`. Accepts a decimal or a fraction ("1/4", "1 1/2", "1-1/2") followed by a
/// unit of the same dimension; unit words, signs and products are understood ("inches per second",
/// "W/(m2 K)", "25 mm/s"). Where a unit is asked for a bare number is refused; for `none` and
/// `fraction` it is the value, and `fraction` takes "80 %" as well. A temperature takes C, F or K. A
/// difference takes K, "delta C" or "delta F", never a bare C or F.
/// Errors:  bad_input when the text has no unit, an unknown or ambiguous one (oz, gal, psig, mil), one
///          of another dimension, no number, or a decimal comma; the message lists accepted spellings.
/// Source:  conversion factors NIST SP 811 (2008) appendix B: 1 in = 0.0254 m, 1 ft = 0.3048 m, 1 lb =
///          0.45359237 kg, F = 1.8 C + 32, 1 Btu(IT) = 1055.05585262 J exactly; psi, inHg, inH2O as
///          listed there (factors from memory, to be checked)
/// Checked: physics/quantities/unit_text_reference_test.cpp: reference; unit_text_unit_test.cpp: unit
Result<double> parse_quantity(std::string_view text, Unit unit);

}  // namespace lastegg
