#include "treatments/steam/pace/material_layer.h"

#include <fmt/format.h>

#include "words/say.h"

namespace lastegg::steam {

Result<Layer> layer_of(const Material& material, std::optional<double> thickness_metres) {
  if (!thickness_metres && !material.thickness) {
    return refuse({ErrorKind::bad_input,
                   say("{} has no usual thickness; thickness_metres is needed", in_language(material.title)),
                   "", "", "", "m"});
  }
  Layer layer;
  layer.thickness_metres = thickness_metres ? *thickness_metres : material.thickness->value;
  layer.heat_capacity_joules_per_m3_kelvin = material.heat_capacity_joules_per_m3_kelvin();
  layer.conductivity_watts_per_metre_kelvin = material.conductivity.value;
  layer.permeable = material.permeable;
  if (material.permeable) {
    if (!material.porosity || !material.tortuosity || !material.sorption_scale) {
      return refuse(
          {ErrorKind::out_of_domain,
           say("{} lets vapour in, but the data have no pore structure for it", in_language(material.title)),
           "", "", "", ""});
    }
    layer.porosity = material.porosity->value;
    layer.tortuosity = material.tortuosity->value;
    layer.sorption_scale_kilograms_per_m3 = material.sorption_scale->value;
  }
  return layer;
}

Result<UncertainLayer> uncertain_layer_of(const Material& material, double thickness_metres) {
  auto layer = layer_of(material, thickness_metres);
  if (!layer) return refuse(layer.error());
  return UncertainLayer{*layer, material.thickness ? material.thickness->log_spread() : 0.0,
                        material.conductivity.log_spread(), material.heat_capacity_log_spread()};
}

}  // namespace lastegg::steam
