// Constants of the steam kernel, in SI, beside those of physics/water/vapour.h.
#pragma once

#include "physics/water/vapour.h"

namespace lastegg::steam {

/// Gamma = D M p/(R T) at 77 C, kg/(m s): diffusivity of vapour in air times density, from which the pressure
/// drops out. D = 2.19e-5 (T/273.15)^1.81 m2/s (from memory, to be checked).
constexpr double k_vapour_transport = 2.152388e-5;

/// Evaporation per unit of lambda difference and of the dry film: beta = 6.8e-4 h_a kg/(m2 s) (Lewis
/// relation, constants from memory, to be checked).
constexpr double k_evaporation_per_film = 6.8e-4;

/// The film of condensate on an impermeable top: water held before it counts as a wet surface, kg/m3 of the
/// first cell.
constexpr double k_film_sorption_scale = 10;

constexpr double k_mass_ratio = k_water_molar_mass / k_air_molar_mass;

}  // namespace lastegg::steam
