// Properties of water and steam after IAPWS-IF97, and the temperatures that steam mixed with air can
// reach. Regions 1, 2 and 4: liquid, vapour and their boundary; nothing here needs the near-critical
// region 3. Pure functions of strong types.
#pragma once

#include "physics/quantities/error.h"
#include "physics/quantities/quantities.h"

namespace lastegg {

struct WaterProperties {
  SpecificVolume specific_volume;
  SpecificEnergy enthalpy;     ///< zero of liquid at the triple point
  SpecificHeat entropy;        ///< J/(kg K), zero of liquid at the triple point
  SpecificHeat heat_capacity;  ///< at constant pressure
  Speed sound_speed;

  Density density() const { return 1.0 / specific_volume; }
};

/// Properties of liquid water.
/// Model:   IAPWS-IF97 region 1.
/// Inputs:  273.15 K <= T <= 623.15 K; saturation pressure <= p <= 100 MPa.
/// Errors:  out_of_domain outside, with the limit passed over.
/// Source:  [iapws_if97] R7-97(2012) equation 7, table 2
/// Checked: physics/water/water_reference_test.cpp (table 5), water_agreement_test.cpp
Result<WaterProperties> liquid_water(Temperature temperature, Pressure pressure);

/// Properties of steam.
/// Model:   IAPWS-IF97 region 2.
/// Inputs:  273.15 K <= T <= 1073.15 K; 0 < p <= saturation pressure up to 623.15 K, then the boundary
///          to region 3 (equation 5) up to 863.15 K, then 100 MPa.
/// Errors:  out_of_domain outside, with the limit passed over.
/// Source:  [iapws_if97] R7-97(2012) equations 15 to 17, tables 10 and 11
/// Checked: physics/water/water_reference_test.cpp (table 15), water_agreement_test.cpp
Result<WaterProperties> water_vapour(Temperature temperature, Pressure pressure);

/// Saturation pressure at 273.15 K <= T <= 647.096 K.
/// Errors:  out_of_domain outside.
/// Source:  [iapws_if97] R7-97(2012) equation 30, table 34
/// Checked: physics/water/water_reference_test.cpp (table 35), water_law_test.cpp
Result<Pressure> saturation_pressure(Temperature temperature);

/// Saturation (boiling) temperature at 611.213 Pa <= p <= 22.064 MPa.
/// Errors:  out_of_domain outside.
/// Source:  [iapws_if97] R7-97(2012) equation 31, table 34
/// Checked: physics/water/water_reference_test.cpp (table 36), water_law_test.cpp
Result<Temperature> saturation_temperature(Pressure pressure);

/// Liquid and vapour in equilibrium.
struct Saturation {
  Temperature temperature;
  Pressure pressure;
  WaterProperties liquid;
  WaterProperties vapour;

  SpecificEnergy latent_heat() const { return vapour.enthalpy - liquid.enthalpy; }
};

/// Both phases at a temperature between 273.15 K and 623.15 K.
/// Errors:  out_of_domain outside.
/// Checked: physics/water/water_agreement_test.cpp, water_law_test.cpp (Clapeyron)
Result<Saturation> saturation_at(Temperature temperature);

/// Both phases at a pressure between 611.213 Pa and 16.5292 MPa.
/// Errors:  out_of_domain outside.
/// Checked: physics/water/water_agreement_test.cpp
Result<Saturation> saturation_at(Pressure pressure);

/// Air pressure at an elevation above sea level in the standard atmosphere.
/// Model:   p = 101325 Pa (1 - 0.0065 z / 288.15)^5.25588, z in metres; the exponent is g / (L R) with
///          9.80665 m/s2, 0.0065 K/m and 287.05287 J/(kg K). Elevation is taken as geopotential: below
///          5 km this errs by less than 0.06 % of the pressure. Weather moves the true pressure by a
///          few per cent: a barometer at the place is better.
/// Inputs:  -500 m <= z <= 6000 m (where people live and work; the formula itself holds from -2 km to
///          11 km).
/// Errors:  out_of_domain outside.
/// Source:  [iso_2533] ISO 2533:1975 (constants from memory, checked against its tabulated pressures)
/// Checked: physics/water/water_reference_test.cpp: reference
Result<Pressure> standard_pressure(Length elevation);

/// Temperature at which steam begins to condense from a mixture with air: no wet surface under that
/// mixture gets hotter.
/// Model:   saturation temperature of the steam's partial pressure, `steam_fraction` (moles of steam
///          per mole) times p.
/// Inputs:  0 < steam_fraction <= 1; the partial pressure within saturation_temperature's range.
/// Errors:  bad_input for a fraction outside 0..1; out_of_domain when it would condense below 0 C.
/// Source:  Dalton's law with saturation_temperature
/// Checked: physics/water/water_reference_test.cpp: reference
Result<Temperature> dew_temperature(double steam_fraction, Pressure pressure);

}  // namespace lastegg
