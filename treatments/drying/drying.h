// How long an edge stays wet after steaming: the water that the passes left, marched on in room air by the
// same equations that put it there, and the closed forms it is held against. Plain values; pure functions.
#pragma once

#include <optional>

#include "physics/quantities/error.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg::drying {

/// Exchange with room air by convection, W/m2K: a closed room, and a fan on the spot.
/// Source:  estimates: 5 is free convection on a face (design tables of buildings use 2.5 to 5, from
///          memory), 25 is air of a few metres per second (design tables use 20 at 4 m/s, from memory).
constexpr double k_still_film = 5;
constexpr double k_fan_film = 25;

/// Dry means that no more than the larger of these is left of what the passes brought.
/// Source:  judgement.
constexpr double k_dry_share = 0.05;
constexpr double k_dry_kilograms_per_m2 = 0.002;

/// Longest time looked at.
constexpr double k_longest_seconds = 72 * 3600.0;

/// Wet things are dried within this time, or mould may grow. The earlier end of 24 to 48 hours is taken.
/// Source:  [epa_mold_course] chapter 4, lesson 1
constexpr double k_mould_seconds = 24 * 3600.0;

/// Temperature of a wet surface that only air warms and evaporation cools.
/// Model:   h (T_air - T) = beta h_fg(T) (lambda_s(T) - lambda_air), beta = 6.8e-4 h (Lewis), lambda =
///          -ln(1 - y): the film drops out.
/// Inputs:  pressure 50..110 kPa, air of the room. Nothing but convection: no radiation, no warmth from
///          below.
/// Source:  Lewis relation, constants of treatments/steam/pass/constants.h
/// Checked: treatments/drying/drying_reference_test.cpp (psychrometer formula of the WMO)
double wet_bulb_celsius(const steam::RoomAir& air, double pressure_pascal);

/// Evaporation of that surface, kg/(m2 s): no edge that holds its water deeper dries faster for long.
/// Checked: treatments/drying/drying_reference_test.cpp
double free_surface_rate(const steam::RoomAir& air, double pressure_pascal);

struct DryingProblem {
  steam::PassProblem pass;  ///< what wetted it; its `air` is that of the passes
  /// Droplets that the steam carried to the surface, on top of what condensed.
  double carried_over_kilograms_per_m2 = 0;
  steam::RoomAir air{k_still_film, 20, 0.5};  ///< in which it dries
};

struct Drying {
  double water_kilograms_per_m2 = 0;  ///< left when the steam ended, carried-over droplets included
  std::optional<double> seconds;      ///< until dry; none: not within k_longest_seconds
};

/// Water left and the time until it is dry.
/// Model:   the pass of treatments/steam, then its air phase with steps that grow, until the water gained
///          has fallen to the threshold: evaporation at the surface, diffusion of vapour from the depth
///          where the water lies, heat from room air only. Liquid does not wick to the surface, which
///          makes it slow. Droplets on the surface go first, at the rate of a free surface.
/// Errors:  as steam::run_pass().
/// Cost:    about 10 passes
/// Source:  treatments/steam/README.md
/// Checked: treatments/drying/drying_law_test.cpp
Result<Drying> dry(const DryingProblem& problem);

}  // namespace lastegg::drying
