#include "engine/steam_shapes.h"

#include <fmt/format.h>

#include "engine/request_values.h"
#include "physics/materials/materials.h"
#include "physics/water/water.h"
#include "treatments/steam/pace/material_layer.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

Shape stack_shape(std::string text) {
  Shape layer = object(
      {optional("material", shape::text("key of a material of the data files")),
       optional("thickness_metres", number(Unit::metre, "thickness; a material's usual thickness if left out")
                                        .at_least(1e-5)
                                        .at_most(0.5)),
       optional("heat_capacity_joules_per_m3_kelvin",
                number(Unit::joule_per_m3_kelvin, "heat capacity of the dry layer by volume")
                    .at_least(1e3)
                    .at_most(1e7)),
       optional(
           "conductivity_watts_per_metre_kelvin",
           number(Unit::watt_per_metre_kelvin, "conductivity of the dry layer").at_least(0.005).at_most(5)),
       optional("permeable", flag("whether steam can enter")),
       optional("porosity", ratio("share of gas in the layer's volume; a permeable layer needs it")
                                .at_least(0.01)
                                .at_most(0.999)),
       optional("tortuosity",
                ratio("lengthening of the gas paths; a permeable layer needs it").at_least(1).at_most(20)),
       optional("sorption_scale_kilograms_per_m3",
                number(Unit::kilogram_per_m3, "water-holding scale W_h; a permeable layer needs it")
                    .at_least(0.01)
                    .at_most(200))},
      "one layer, by material or by its properties");
  layer.exactly_one_of(
      {{"material"},
       {"heat_capacity_joules_per_m3_kelvin", "conductivity_watts_per_metre_kelvin", "permeable"}});
  return list(layer, std::move(text)).items(1, 12);
}

Result<steam::Stack> read_stack(const Json& stack, const std::string& where) {
  steam::Stack layers;
  for (std::size_t i = 0; i < stack.size(); ++i) {
    const Json& given = stack[i];
    const std::string place = fmt::format("{}/{}", where, i);
    const auto missing = [&](const char* key, const std::string& why) {
      return refuse(
          {ErrorKind::bad_input, say("{} is missing in layer {}: {}", key, i + 1, why), place, "", "", ""});
    };
    if (has(given, "material")) {
      const auto material = find_material(text_of(given, "material"));
      if (!material) {
        Error error = material.error();
        error.where = place + "/material";
        return refuse(error);
      }
      auto layer = steam::layer_of(*material, number_if(given, "thickness_metres"));
      if (!layer) {
        Error error = layer.error();
        error.where = place + "/thickness_metres";
        return refuse(error);
      }
      layers.push_back(*layer);
      continue;
    }
    if (!has(given, "thickness_metres"))
      return missing("thickness_metres", say("a layer without a material needs it"));
    steam::Layer layer;
    layer.thickness_metres = number_of(given, "thickness_metres");
    layer.heat_capacity_joules_per_m3_kelvin = number_of(given, "heat_capacity_joules_per_m3_kelvin");
    layer.conductivity_watts_per_metre_kelvin = number_of(given, "conductivity_watts_per_metre_kelvin");
    layer.permeable = given.at("permeable").get<bool>();
    if (layer.permeable) {
      for (const char* key : {"porosity", "tortuosity", "sorption_scale_kilograms_per_m3"}) {
        if (!has(given, key)) return missing(key, say("a permeable layer needs it"));
      }
      layer.porosity = number_of(given, "porosity");
      layer.tortuosity = number_of(given, "tortuosity");
      layer.sorption_scale_kilograms_per_m3 = number_of(given, "sorption_scale_kilograms_per_m3");
    }
    layers.push_back(layer);
  }
  return layers;
}

Shape head_shape(bool with_pace) {
  std::vector<Field> fields{
      field("length_metres",
            number(Unit::metre, "contact length along the travel").at_least(0.002).at_most(1)),
      field("dew_celsius",
            number(Unit::celsius, "dew temperature of the steam under the head").above(0).at_most(110)),
      field("film_watts_per_m2_kelvin",
            number(Unit::watt_per_m2_kelvin, "effective exchange between steam and surface")
                .at_least(10)
                .at_most(10000)),
      field("flux_cap_watts_per_m2",
            number(Unit::watt_per_m2, "most heat the supply can bring").at_least(1e3).at_most(1e6)),
      field("forced_gas_metres_per_second",
            number(Unit::metre_per_second, "speed at which steam is pushed into the cloth")
                .at_least(0)
                .at_most(0.1)),
      with_default("skirt_length_metres",
                   number(Unit::metre, "reach of the weaker steam before and behind the head")
                       .at_least(0)
                       .at_most(0.2),
                   0.02),
      with_default("skirt_factor",
                   ratio("strength of the skirt against that under the head").at_least(0).at_most(1), 0.25)};
  if (with_pace) {
    fields.push_back(field(
        "pace_metres_per_second",
        number(Unit::metre_per_second, "speed of the head along the edge").at_least(0.0005).at_most(1)));
  }
  return object(std::move(fields), "a head with its towel, as the cloth feels it");
}

steam::Head read_head(const Json& head) {
  return {.length_metres = number_of(head, "length_metres"),
          .dew_celsius = number_of(head, "dew_celsius"),
          .film_watts_per_m2_kelvin = number_of(head, "film_watts_per_m2_kelvin"),
          .flux_cap_watts_per_m2 = number_of(head, "flux_cap_watts_per_m2"),
          .forced_gas_metres_per_second = number_of(head, "forced_gas_metres_per_second"),
          .skirt_length_metres = number_of(head, "skirt_length_metres"),
          .skirt_factor = number_of(head, "skirt_factor")};
}

std::vector<Field> pressure_fields() {
  return {optional("pressure_pascal",
                   number(Unit::pascal, "station pressure by barometer").at_least(50000).at_most(110000)),
          optional("elevation_metres", number(Unit::metre, "height above sea level, if no pressure is given")
                                           .at_least(-430)
                                           .at_most(5500))};
}

Result<double> read_pressure(const Json& request) {
  const auto pressure = number_if(request, "pressure_pascal");
  const auto elevation = number_if(request, "elevation_metres");
  if (pressure && elevation) {
    return refuse({ErrorKind::bad_input, say("give either pressure_pascal or elevation_metres, not both"),
                   "/elevation_metres", "", "", ""});
  }
  if (pressure) return *pressure;
  const auto standard = standard_pressure(metres(elevation.value_or(0)));
  if (!standard) return refuse(standard.error());
  return in_pascals(*standard);
}

Shape spread_shape(Unit unit, std::string text) {
  const auto quantile = [&](const char* share) {
    return number(unit, fmt::format("{} of the weight lies below", share));
  };
  return object(
      {field("p05", quantile("5 %")), field("p25", quantile("25 %")), field("p50", quantile("half")),
       field("p75", quantile("75 %")), field("p95", quantile("95 %"))},
      std::move(text));
}

Json to_json(const steam::Spread& spread, double scale) {
  return {{"p05", spread.p05 * scale},
          {"p25", spread.p25 * scale},
          {"p50", spread.p50 * scale},
          {"p75", spread.p75 * scale},
          {"p95", spread.p95 * scale}};
}

Shape reason_shape(std::string text) {
  return object({field("code", shape::text("short name for programs")),
                 field("text", shape::text("a sentence for people"))},
                std::move(text));
}

Json reason(const std::string& code, const std::string& text) {
  return {{"code", code}, {"text", text}};
}

}  // namespace lastegg
