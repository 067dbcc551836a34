// Question `saturation`: boiling water at a temperature, a pressure or an elevation, and the dew
// temperature of steam mixed with air.
#include <optional>
#include <string>
#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "physics/water/water.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  return object(
             {optional(
                  "temperature_celsius",
                  number(Unit::celsius, "temperature of boiling water; beside a steam fraction: of a surface")
                      .at_least(0)
                      .at_most(350)),
              optional("pressure_pascal",
                       number(Unit::pascal, "absolute pressure; beside a steam fraction: of the mixture")
                           .at_least(611.213)
                           .at_most(16529164)),
              optional(
                  "elevation_metres",
                  number(Unit::metre,
                         "elevation above sea level, from which the standard atmosphere gives the pressure")
                      .at_least(-500)
                      .at_most(6000)),
              optional("steam_fraction",
                       number(Unit::fraction, "moles of steam per mole of the mixture of steam and air")
                           .above(0)
                           .at_most(1))},
             "a temperature, a pressure or an elevation; or a mixture of steam and air")
      .exactly_one_of({{"temperature_celsius"},
                       {"pressure_pascal"},
                       {"elevation_metres"},
                       {"pressure_pascal", "steam_fraction"},
                       {"elevation_metres", "steam_fraction"},
                       {"temperature_celsius", "pressure_pascal", "steam_fraction"},
                       {"temperature_celsius", "elevation_metres", "steam_fraction"}});
}

Shape answer_shape() {
  return object(
      {field("pressure_pascal",
             number(Unit::pascal, "saturation pressure; of a mixture: its whole pressure")),
       optional("temperature_celsius", number(Unit::celsius, "saturation temperature")),
       optional("dew_temperature_celsius",
                number(Unit::celsius,
                       "where steam begins to condense from the mixture; no wet surface gets hotter")),
       optional("steam_pressure_pascal", number(Unit::pascal, "the steam's share of the pressure")),
       optional("condenses", flag("whether steam condenses on a surface of the given temperature")),
       field("latent_heat_joules_per_kilogram",
             number(Unit::joule_per_kilogram, "heat released by condensing")),
       field("vapour_density_kilograms_per_m3", number(Unit::kilogram_per_m3, "density of saturated vapour")),
       field("liquid_density_kilograms_per_m3", number(Unit::kilogram_per_m3, "density of saturated liquid")),
       field("liquid_enthalpy_joules_per_kilogram",
             number(Unit::joule_per_kilogram, "enthalpy of saturated liquid, zero at the triple point")),
       field("vapour_enthalpy_joules_per_kilogram",
             number(Unit::joule_per_kilogram, "enthalpy of saturated vapour, the same zero"))},
      "properties of water on the saturation line; of a mixture: at its dew temperature");
}

/// The error with the member of the request that caused it.
Refusal at(Error error, const std::string& where) {
  error.where = where;
  return refuse(std::move(error));
}

/// The pressure that the request gives or implies.
Result<std::optional<Pressure>> pressure_of(const Json& request) {
  if (const auto pascal = number_if(request, "pressure_pascal")) return std::optional(pascals(*pascal));
  const auto elevation = number_if(request, "elevation_metres");
  if (!elevation) return std::optional<Pressure>();
  const Result<Pressure> pressure = standard_pressure(metres(*elevation));
  if (!pressure) return at(pressure.error(), "/elevation_metres");
  return std::optional(*pressure);
}

void add_properties(Json& result, const Saturation& both) {
  result["latent_heat_joules_per_kilogram"] = in_joules_per_kilogram(both.latent_heat());
  result["vapour_density_kilograms_per_m3"] = in_kilograms_per_m3(both.vapour.density());
  result["liquid_density_kilograms_per_m3"] = in_kilograms_per_m3(both.liquid.density());
  result["liquid_enthalpy_joules_per_kilogram"] = in_joules_per_kilogram(both.liquid.enthalpy);
  result["vapour_enthalpy_joules_per_kilogram"] = in_joules_per_kilogram(both.vapour.enthalpy);
}

Result<Json> mixture(double steam_fraction, Pressure pressure, std::optional<double> surface_celsius) {
  const Result<Temperature> dew = dew_temperature(steam_fraction, pressure);
  if (!dew) return at(dew.error(), "/steam_fraction");
  const Result<Saturation> both = saturation_at(*dew);
  if (!both) return at(both.error(), "/steam_fraction");
  Json result = {{"pressure_pascal", in_pascals(pressure)},
                 {"dew_temperature_celsius", in_celsius(*dew)},
                 {"steam_pressure_pascal", steam_fraction * in_pascals(pressure)}};
  if (surface_celsius) result["condenses"] = *surface_celsius < in_celsius(*dew);
  add_properties(result, *both);
  return result;
}

Result<Json> saturated(const Json& request, const std::optional<Pressure>& pressure) {
  const Result<Saturation> both =
      pressure ? saturation_at(*pressure) : saturation_at(celsius(number_of(request, "temperature_celsius")));
  if (!both) return at(both.error(), pressure ? "/pressure_pascal" : "/temperature_celsius");
  Json result = {{"pressure_pascal", in_pascals(both->pressure)}};
  // Given back as it was asked: the way through kelvin would change its last digit.
  result["temperature_celsius"] =
      pressure ? in_celsius(both->temperature) : number_of(request, "temperature_celsius");
  add_properties(result, *both);
  return result;
}

Result<Answer> solve(const Json& request) {
  const auto pressure = pressure_of(request);
  if (!pressure) return refuse(pressure.error());
  const auto steam_fraction = number_if(request, "steam_fraction");
  Result<Json> result = steam_fraction
                            ? mixture(*steam_fraction, **pressure, number_if(request, "temperature_celsius"))
                            : saturated(request, *pressure);
  if (!result) return refuse(result.error());
  Answer answer;
  answer.result = *std::move(result);
  if (has(request, "elevation_metres")) {
    answer.warnings.push_back(
        {"standard_atmosphere",
         say("the pressure is that of the standard atmosphere; weather moves the boiling point by about "
             "1 C either way, and a barometer at the place is better")});
  }
  return answer;
}

}  // namespace

const Question& saturation_question() {
  static const Question question{
      "saturation",
      "Pressure, temperature, heat and density of boiling water; dew temperature of steam mixed with air.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
