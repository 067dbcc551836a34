// What lies under the steam head: layers from the steamed surface downwards. Plain values.
#pragma once

#include <span>
#include <vector>

namespace lastegg::steam {

/// One layer. Impermeable layers let no vapour in; their porosity, tortuosity and sorption scale have no
/// meaning.
struct Layer {
  double thickness_metres = 0;
  double heat_capacity_joules_per_m3_kelvin = 0;  ///< dry
  double conductivity_watts_per_metre_kelvin = 0;
  bool permeable = false;
  double porosity = 0;
  double tortuosity = 1;
  double sorption_scale_kilograms_per_m3 = 0;  ///< W_h of the isotherm a(W), see treatments/steam/README.md
};

using Stack = std::vector<Layer>;

/// Total thickness of a stack in metres.
inline double thickness_metres(std::span<const Layer> stack) {
  double sum = 0;
  for (const Layer& layer : stack) sum += layer.thickness_metres;
  return sum;
}

}  // namespace lastegg::steam
