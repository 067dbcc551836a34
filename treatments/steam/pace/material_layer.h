// From a material of the data files to a layer under steam.
#pragma once

#include <optional>

#include "physics/materials/materials.h"
#include "physics/quantities/error.h"
#include "treatments/steam/pace/pace.h"

namespace lastegg::steam {

/// A layer of a material; without a thickness the material's usual one.
/// Errors:  bad_input if the material has no usual thickness and none is given; out_of_domain if a needed
/// property has no value.
Result<Layer> layer_of(const Material& material, std::optional<double> thickness_metres);

/// The same with the spread of the material's properties over real goods.
Result<UncertainLayer> uncertain_layer_of(const Material& material, double thickness_metres);

}  // namespace lastegg::steam
