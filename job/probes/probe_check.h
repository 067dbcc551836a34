// Is a thermometer right? Held into melting ice or boiling water it shows how far it is off at a temperature
// that water itself sets. Pure functions.
#pragma once

#include <optional>

#include "physics/quantities/error.h"
#include "physics/water/water.h"

namespace lastegg::probes {

enum class Bath { melting_ice, boiling_water };

/// What water in the bath has, and how far it may lie beside that.
struct BathTemperature {
  double celsius;
  double spread_kelvin;  ///< up and down
};

/// Melting ice, stirred, of clean water: 0.0 C.
/// Source:  ASTM E563 (preparation and use of an ice-point bath); the spread of a kitchen's bath: estimate
constexpr BathTemperature k_ice{0.0, 0.3};

/// Of water boiling in an open pot, beside the weather: depth, lid, salts of tap water.
/// Source:  estimate
constexpr double k_pot_kelvin = 0.3;

/// How far the weather moves the pressure from that of the standard atmosphere.
/// Source:  from memory, to be checked: at sea level it mostly stays between 98 and 104 kPa
constexpr double k_weather_pascal = 3000;

/// How far a probe may be off before its readings prove nothing.
/// Source:  IEC 60584, type K class 1 at -40 to 375 C: 1.5 K of a new wire; the display adds to it and gets
/// no
///          allowance here
constexpr double k_tolerance_kelvin = 1.5;

/// Inputs:  by_barometer: `pressure` was read where the pot stands; else it is that of the standard
/// atmosphere Errors:  those of saturation_at Checked: job/probes/probe_check_reference_test.cpp
Result<BathTemperature> bath_temperature(Bath bath, Pressure pressure, bool by_barometer);

enum class Verdict {
  sound,       ///< off by no more than the tolerance, wherever in its spread the bath lay
  not_proven,  ///< the bath is not known well enough to tell
  off          ///< off by more, wherever the bath lay
};

struct ProbeCheck {
  BathTemperature bath;
  double error_kelvin;  ///< shown less there; above zero: reads hot, which is the dangerous side
  Verdict verdict;
};

/// Compares what a probe showed with the bath.
/// Checked: job/probes/probe_check_reference_test.cpp
ProbeCheck check_probe(double shown_celsius, const BathTemperature& bath);

}  // namespace lastegg::probes
