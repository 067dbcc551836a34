// What steam leaves on its way: drips of a cold hose and head at the start, and the water that a towel takes
// up until it is soaked. Plain values; pure functions.
#pragma once

#include "physics/quantities/error.h"

namespace lastegg::boiler {

/// Heat capacity of hose and head, J/K, and how long they stay warm.
/// Source:  estimates: 0.9 kg of plastic, rubber and brass at 1.5 kJ/kg K; a surface of 0.13 m2 at 10
///          W/m2K
constexpr double k_hose_and_head_joules_per_kelvin = 1350;
constexpr double k_hose_cooling_seconds = 1000;

/// Water that the boiler carries over as droplets, as a share of the supply, and what may occur.
/// Source:  trade side: 5 to 6 % for machines of the vapour type (read); the range is an estimate
constexpr double k_carried_over_share = 0.05;
constexpr double k_carried_over_most = 0.10;

struct WarmUp {
  double seconds = 0;          ///< until the head gives steam instead of water
  double water_kilograms = 0;  ///< that drips and spits meanwhile
};

/// What hose and head condense before they are hot.
/// Model:   capacity x (100 C - T) / h_fg; T falls back to the room with k_hose_cooling_seconds while
///          nothing flows
/// Inputs:  supply > 0, kg/s; rest_seconds since steam last flowed, infinity for a cold start; room
///          -10..50 C
/// Errors:  bad_input outside
/// Source:  energy balance, README.md
/// Checked: treatments/boiler/head_and_towel_law_test.cpp
Result<WarmUp> warm_up(double supply_kilograms_per_second, double rest_seconds, double room_celsius);

/// A terry towel wrapped round a head.
struct TowelWrap {
  double head_length_metres = 0.08, head_width_metres = 0.2;
  double supply_kilograms_per_second = 0.65e-3;
  double room_celsius = 20;
  double dew_celsius = 96;
};

/// How long it lasts until it is soaked: then it drips, wets what it touches and lets less steam through.
struct TowelLife {
  double seconds = 0;           ///< likely
  double shortest_seconds = 0;  ///< 19 of 20 last longer: what to plan with
  double water_kilograms = 0;   ///< that it then holds, likely
};

/// Terry: mass per area, and water per mass when soaked. Ranges as they occur, from memory, to be
/// checked: 0.35 to 0.6 kg/m2; 0.3 to 1 kg/kg. The wrap covers so many times the footprint of the head
/// (estimate: back and sides).
constexpr double k_terry_kilograms_per_m2 = 0.45, k_terry_least = 0.35;
constexpr double k_terry_holds = 0.6, k_terry_holds_least = 0.3;
constexpr double k_wrap_per_footprint = 2.5;

/// Time until a towel is soaked.
/// Model:   takes up the droplets, what condenses to warm it once, and what condenses to cover its loss
///          to the room (10 W/m2K); holds mass per area x area x water per mass; the cautious time takes
///          the ranges as independent log-normal spreads, each felt alone
/// Errors:  bad_input outside: lengths 0.01..0.6 m, supply 0.01..5 g/s
/// Source:  own derivation, README.md
/// Checked: treatments/boiler/head_and_towel_law_test.cpp
Result<TowelLife> towel_life(const TowelWrap& wrap);

}  // namespace lastegg::boiler
