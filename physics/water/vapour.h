// Water vapour as the steam kernel needs it: smooth closed forms with their slopes, inline and without
// refusals, good to the stated errors over -30..115 C. The certified properties are in
// physics/water/water.h; these forms are fits to them and exist for speed and differentiability. Pure
// functions of plain numbers; the unit stands in each name.
#pragma once

#include "physics/numerics/elementary.h"

namespace lastegg {

/// Molar masses in kg/mol and the gas constant in J/(mol K).
/// Source:  water 18.015268 g/mol IAPWS R6-95(2018); dry air 28.9647 g/mol US Standard Atmosphere 1976
///          (28.9644 there; the small later correction is immaterial here, from memory); gas constant
///          CODATA 2018, exact.
inline constexpr double k_water_molar_mass = 0.018015268;
inline constexpr double k_air_molar_mass = 0.0289647;
inline constexpr double k_gas_constant = 8.314462618;
inline constexpr double k_standard_pressure_pascal = 101325.0;
inline constexpr double k_zero_celsius_in_kelvin = 273.15;

struct SaturationPoint {
  double pressure_pascal;
  double slope_pascal_per_kelvin;  ///< of this fit, exactly
};

/// Saturation pressure of water in Pa and its slope in Pa/K at a temperature in degrees Celsius.
/// Model:   101325 * 2^P(s), s = (T - 42.5) / 72.5, P of degree 10.
/// Inputs:  -30..115 C. Largest relative error against IAPWS-IF97 region 4: 2.3e-7 over 0..110 C. Below
///          0 C it continues that equation beyond its range (supercooled liquid, not ice). Outside
///          -30..115 C meaningless.
/// Source:  coefficients from tools/fit_saturation.py (fit to IAPWS R7-97(2012) equation 30)
/// Checked: physics/water/vapour_agreement_test.cpp: agreement
constexpr SaturationPoint saturation_fit(double celsius) {
  constexpr double coefficients[] = {-3.58780215744,     5.4762995767,     -1.43440829678,
                                     0.351285323292,     -0.0819865504627, 0.0204981027342,
                                     -0.00567954176176,  0.00195997734973, -0.000239948691683,
                                     -0.000908566230075, 0.000525830909503};
  constexpr int degree = 10;
  constexpr double ln2 = 0.6931471805599453;
  const double s = (celsius - 42.5) * (1.0 / 72.5);
  double exponent = coefficients[degree];
  double exponent_slope = 0.0;
  for (int k = degree - 1; k >= 0; --k) {
    exponent_slope = exponent_slope * s + exponent;
    exponent = exponent * s + coefficients[k];
  }
  const double pressure = k_standard_pressure_pascal * numerics::exp2(exponent);
  return {pressure, pressure * exponent_slope * (ln2 / 72.5)};
}

struct VapourDensity {
  double kilograms_per_m3;
  double slope_kilograms_per_m3_kelvin;  ///< along the saturation line
};

/// Density of saturated vapour in kg/m3, as an ideal gas, and its slope along the saturation line.
/// Model:   rho = psat M / (R T). The ideal-gas error is below 1.6 % up to 100 C (vapour in steam is
///          denser), smaller for vapour in air, whose partial pressure is lower.
/// Checked: physics/water/vapour_agreement_test.cpp: agreement
constexpr VapourDensity saturated_vapour_density(double celsius) {
  const SaturationPoint point = saturation_fit(celsius);
  const double kelvin = celsius + k_zero_celsius_in_kelvin;
  const double density = point.pressure_pascal * k_water_molar_mass / (k_gas_constant * kelvin);
  return {density, density * (point.slope_pascal_per_kelvin / point.pressure_pascal - 1.0 / kelvin)};
}

/// Density of water vapour in kg/m3 at a partial pressure in Pa, as an ideal gas.
constexpr double vapour_density_kilograms_per_m3(double partial_pressure_pascal, double celsius) {
  return partial_pressure_pascal * k_water_molar_mass /
         (k_gas_constant * (celsius + k_zero_celsius_in_kelvin));
}

/// Latent heat of evaporation in J/kg.
/// Model:   2500.9e3 - 2365.5 T - 0.89 T^2; at most 0.093 % (at 75 C) below IAPWS-IF97 over 0..100 C.
/// Source:  own fit to IAPWS-IF97 values
/// Checked: physics/water/vapour_agreement_test.cpp: agreement
constexpr double latent_heat_fit(double celsius) {
  return 2500.9e3 - 2365.5 * celsius - 0.89 * celsius * celsius;
}

/// Slope of latent_heat_fit in J/(kg K).
constexpr double latent_heat_fit_slope(double celsius) {
  return -2365.5 - 1.78 * celsius;
}

/// Heat capacity of liquid water in J/(kg K) in the kernel's enthalpy forms: constant, so that energy
/// is linear in T. Within 0.9 % of IAPWS-IF97 over 0..100 C.
inline constexpr double k_liquid_heat_capacity = 4180.0;

/// Enthalpy of liquid water in J/kg above that at 0 C.
constexpr double liquid_enthalpy_fit(double celsius) {
  return k_liquid_heat_capacity * celsius;
}

/// Enthalpy of saturated vapour in J/kg above liquid at 0 C: liquid plus latent heat.
constexpr double vapour_enthalpy_fit(double celsius) {
  return liquid_enthalpy_fit(celsius) + latent_heat_fit(celsius);
}

}  // namespace lastegg
