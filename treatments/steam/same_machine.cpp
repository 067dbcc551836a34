#include "treatments/steam/same_machine.h"

#include <algorithm>
#include <cmath>

#include "physics/uncertainty/weighted.h"

namespace lastegg::steam {

DewBelief belief_from_machine(std::span<const Calibration> others) {
  double mean = 0, spread = 1;
  for (const Calibration& other : others) {
    if (!other.tested) continue;
    std::vector<double> dew;
    for (std::size_t i = 0; i < other.weights.size(); ++i)
      dew.push_back(calibrated_scores(other, other.cloth_key, static_cast<int>(i))[0]);
    const double known = weighted_deviation(dew, other.weights);
    if (known >= spread) continue;
    spread = known;
    mean = weighted_mean(dew, other.weights);
  }
  constexpr double rho = k_shared_boiler;
  if (spread >= 1) return {};
  return {rho * mean, std::sqrt(1 - rho * rho * (1 - spread * spread))};
}

}  // namespace lastegg::steam
