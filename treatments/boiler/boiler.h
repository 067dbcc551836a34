// What a steamer can give and when: supply from power or from weighing, and the timetable of heating up,
// steaming, pauses, cooling and refills for so many minutes of steam. Plain values; pure functions.
#pragma once

#include <vector>

#include "physics/quantities/error.h"

namespace lastegg::boiler {

enum class Tank {
  continuous,   ///< a pump feeds cold water to a small boiler; the reservoir is open and refilled at any time
  pressurised,  ///< a closed boiler: it has to cool before it may be opened
  kettle        ///< a small boiler without pressure: it has to stop boiling and cool before it is opened
};

/// A boiler is opened at or below this temperature, never hotter.
/// Source:  own rule: far below boiling, so that nothing flashes or spits; wet skin bears 60 C for three
///          seconds ([scald_table])
constexpr double k_open_celsius = 60;

/// Heat of the boiler's shell and its loss to the room.
/// Source:  estimates: 2 kg of steel at 0.5 kJ/kg K; a tenth of a square metre at 10 W/m2K. With them a
///          closed boiler of 140 C needs half an hour to k_open_celsius; a page that was read says about
///          an hour, so a maker's longer time goes before.
constexpr double k_shell_joules_per_kelvin = 1000;
constexpr double k_loss_watts_per_kelvin = 1.0;

/// Water that stays in a closed tank when it is called empty, as a share.
/// Source:  estimate: the element stays covered.
constexpr double k_reserve_share = 0.1;

/// Water in the small boiler of a continuous machine, kg.
/// Source:  estimate.
constexpr double k_continuous_boiler_kilograms = 0.3;

/// Time at the tap.
/// Source:  estimates.
constexpr double k_refill_seconds = 120;
constexpr double k_top_up_seconds = 60;

/// Steam is no longer good when the gauge has fallen to this share; then the boiler recovers.
/// Source:  estimate.
constexpr double k_sagged_share = 0.5;

struct Machine {
  Tank tank = Tank::pressurised;
  double power_watts = 1500;
  double water_kilograms = 1.5;  ///< full tank or reservoir
  double gauge_pascal = 300e3;   ///< boiler above the room; a kettle has none
  double room_pascal = 101325;
  double room_celsius = 20;
  double cold_water_celsius = 15;
  double shortest_cooling_seconds = 0;  ///< the maker's time, if longer than what is computed
};

/// Steam that the power keeps up, kg/s.
/// Model:   (P - loss) / (h_vapour(p) - h_in); h_in of the water that replaces the steam: cold water for
///          a continuous machine, the boiling water itself for a closed one.
/// Errors:  bad_input outside the box; out_of_domain for pressures without steam.
/// Source:  energy balance with IAPWS-IF97
/// Checked: treatments/boiler/boiler_reference_test.cpp
Result<double> sustained_supply(const Machine& machine);

/// Supply by weighing the machine before and after some minutes of steady steam, kg/s.
/// Errors:  bad_input when it got no lighter.
Result<double> weighed_supply(double before_kilograms, double after_kilograms, double seconds);

enum class PhaseKind { heat_up, steam, recover, cool, refill };

struct Phase {
  PhaseKind kind = PhaseKind::heat_up;
  double from_seconds = 0, seconds = 0;
  double steam_seconds = 0;    ///< with the trigger pulled
  double steam_kilograms = 0;  ///< given off
  double end_celsius = 0;      ///< of the boiler's water
  double end_kilograms = 0;    ///< water left in tank or reservoir
};

struct Timetable {
  std::vector<Phase> phases;
  double seconds = 0;
  double steam_seconds = 0;
  double steam_kilograms = 0;
  double electric_joules = 0;
  double waiting_seconds = 0;  ///< all but steam
  int refills = 0;
  // the books, for tests
  double fed_joules = 0, lost_joules = 0, given_joules = 0, stored_joules = 0;
};

/// Timetable for so much time of steam.
/// Model:   water at its boiling curve and a shell, one second at a time: electric heat in (thermostat at
///          the working pressure), losses, enthalpy of the steam out and of the water in. While the gauge
///          stands above k_sagged_share steam flows for the share `duty` of the time; below it the boiler
///          recovers.
/// Inputs:  steam_seconds 1 s..8 h; supply 0.01..5 g/s while the trigger is pulled; duty 0.05..1.
/// Errors:  bad_input outside; out_of_domain when the power does not even cover the losses.
/// Source:  own derivation, README.md
/// Checked: treatments/boiler/boiler_law_test.cpp
Result<Timetable> timetable(const Machine& machine, double supply_kilograms_per_second, double duty,
                            double steam_seconds);

}  // namespace lastegg::boiler
