#include "physics/water/water.h"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <string_view>

#include "physics/numerics/elementary.h"
#include "physics/water/if97.h"
#include "words/say.h"

namespace lastegg {
namespace {

// IAPWS R7-97(2012), section 3 and figure 1: limits of the regions.
constexpr double k_lowest_kelvin = 273.15;
constexpr double k_highest_two_phase_kelvin = 623.15;
constexpr double k_highest_limit_kelvin = 863.15;
constexpr double k_highest_steam_kelvin = 1073.15;
constexpr double k_critical_kelvin = 647.096;
constexpr double k_highest_pascal = 100e6;
constexpr double k_lowest_saturation_pascal = 611.213;
constexpr double k_critical_pascal = 22.064e6;
/// A state on the saturation line, computed by its equation, counts as either phase in spite of rounding.
constexpr double k_saturation_slack_relative = 1e-9;

// ISO 2533:1975
constexpr double k_sea_level_pascal = 101325.0;
constexpr double k_sea_level_kelvin = 288.15;
constexpr double k_lapse_kelvin_per_metre = 0.0065;
constexpr double k_gravity = 9.80665;
constexpr double k_air_gas_constant = 287.05287;
constexpr double k_lowest_elevation_metres = -500.0;
constexpr double k_highest_elevation_metres = 6000.0;

Error outside(std::string_view what, double value, double low, double high, std::string_view unit) {
  const double limit = value < low ? low : high;
  return {ErrorKind::out_of_domain,
          say("{} of {:.6g} {} lies outside {:.6g} to {:.6g} {}.", in_language(what), value, unit, low, high,
              unit),
          "",
          fmt::format("{:.9g}", value),
          fmt::format("{:.9g}", limit),
          std::string(unit)};
}

/// Nothing when low <= value <= high; a value that is not a number is outside.
std::optional<Error> check(std::string_view what, double value, double low, double high,
                           std::string_view unit) {
  if (value >= low && value <= high) return std::nullopt;
  return outside(what, value, low, high, unit);
}

WaterProperties typed(const if97::Properties& raw) {
  return {SpecificVolume::from_si(raw.specific_volume), SpecificEnergy::from_si(raw.enthalpy),
          SpecificHeat::from_si(raw.entropy), SpecificHeat::from_si(raw.heat_capacity),
          Speed::from_si(raw.sound_speed)};
}

double highest_steam_pascal(double kelvin) {
  if (kelvin <= k_highest_two_phase_kelvin)
    return if97::saturation_pascal(kelvin) * (1.0 + k_saturation_slack_relative);
  if (kelvin <= k_highest_limit_kelvin) return if97::vapour_limit_pascal(kelvin);
  return k_highest_pascal;
}

Saturation both_phases(double kelvin, double pascal) {
  return {Temperature::from_kelvin(kelvin), Pressure::from_si(pascal), typed(if97::liquid(kelvin, pascal)),
          typed(if97::vapour(kelvin, pascal))};
}

}  // namespace

Result<WaterProperties> liquid_water(Temperature temperature, Pressure pressure) {
  const double kelvin = temperature.kelvin(), pascal = pressure.si();
  if (auto error =
          check(to_say("A liquid temperature"), kelvin, k_lowest_kelvin, k_highest_two_phase_kelvin, "K"))
    return refuse(*std::move(error));
  const double lowest = if97::saturation_pascal(kelvin) * (1.0 - k_saturation_slack_relative);
  if (auto error = check(to_say("A liquid pressure"), pascal, lowest, k_highest_pascal, "Pa"))
    return refuse(*std::move(error));
  return typed(if97::liquid(kelvin, pascal));
}

Result<WaterProperties> water_vapour(Temperature temperature, Pressure pressure) {
  const double kelvin = temperature.kelvin(), pascal = pressure.si();
  if (auto error = check(to_say("A steam temperature"), kelvin, k_lowest_kelvin, k_highest_steam_kelvin, "K"))
    return refuse(*std::move(error));
  const double highest = highest_steam_pascal(kelvin);
  if (!(pascal > 0.0 && pascal <= highest))
    return refuse(outside(to_say("A steam pressure"), pascal, 0.0, highest, "Pa"));
  return typed(if97::vapour(kelvin, pascal));
}

Result<Pressure> saturation_pressure(Temperature temperature) {
  const double kelvin = temperature.kelvin();
  if (auto error = check(to_say("A saturation temperature"), kelvin, k_lowest_kelvin, k_critical_kelvin, "K"))
    return refuse(*std::move(error));
  return Pressure::from_si(if97::saturation_pascal(kelvin));
}

Result<Temperature> saturation_temperature(Pressure pressure) {
  const double pascal = pressure.si();
  if (auto error =
          check(to_say("A saturation pressure"), pascal, k_lowest_saturation_pascal, k_critical_pascal, "Pa"))
    return refuse(*std::move(error));
  return Temperature::from_kelvin(if97::saturation_kelvin(pascal));
}

Result<Saturation> saturation_at(Temperature temperature) {
  const double kelvin = temperature.kelvin();
  if (auto error =
          check(to_say("A saturation temperature"), kelvin, k_lowest_kelvin, k_highest_two_phase_kelvin, "K"))
    return refuse(*std::move(error));
  return both_phases(kelvin, if97::saturation_pascal(kelvin));
}

Result<Saturation> saturation_at(Pressure pressure) {
  const double pascal = pressure.si();
  const double highest = if97::saturation_pascal(k_highest_two_phase_kelvin);
  if (auto error = check(to_say("A saturation pressure"), pascal, k_lowest_saturation_pascal, highest, "Pa"))
    return refuse(*std::move(error));
  return both_phases(if97::saturation_kelvin(pascal), pascal);
}

Result<Pressure> standard_pressure(Length elevation) {
  const double metres = elevation.si();
  if (auto error =
          check(to_say("An elevation"), metres, k_lowest_elevation_metres, k_highest_elevation_metres, "m"))
    return refuse(*std::move(error));
  constexpr double exponent = k_gravity / (k_lapse_kelvin_per_metre * k_air_gas_constant);
  const double ratio = 1.0 - k_lapse_kelvin_per_metre * metres / k_sea_level_kelvin;
  return Pressure::from_si(k_sea_level_pascal * numerics::pow(ratio, exponent));
}

Result<Temperature> dew_temperature(double steam_fraction, Pressure pressure) {
  if (!(steam_fraction > 0.0 && steam_fraction <= 1.0)) {
    return refuse({ErrorKind::bad_input,
                   say("A steam fraction of {:.6g} lies outside 0 to 1.", steam_fraction), "",
                   fmt::format("{:.9g}", steam_fraction), steam_fraction > 1.0 ? "1" : "0", "fraction"});
  }
  const double partial = steam_fraction * pressure.si();
  if (auto error = check(to_say("The steam's share of the pressure"), partial, k_lowest_saturation_pascal,
                         k_critical_pascal, "Pa"))
    return refuse(*std::move(error));
  return Temperature::from_kelvin(if97::saturation_kelvin(partial));
}

}  // namespace lastegg
