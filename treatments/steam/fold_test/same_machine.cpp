#include "treatments/steam/fold_test/same_machine.h"

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
      dew.push_back(own_scores(other, static_cast<int>(i))[0]);
    const double known = weighted_deviation(dew, other.weights);
    if (known >= spread) continue;
    spread = known;
    mean = weighted_mean(dew, other.weights);
  }
  constexpr double rho = k_shared_boiler;
  if (spread >= 1) return {};
  return {rho * mean, std::sqrt(1 - rho * rho * (1 - spread * spread))};
}

DewBelief belief_beside_own_test(std::span<const Calibration> others) {
  return {belief_from_machine(others).mean, 1};
}

Calibration prior_of_machine(Calibration prior, const DewBelief& belief) {
  constexpr std::size_t k_rest = k_unknown_count;  // of the dew temperature
  const double own = blended_score(0, 1, 0), rest = blended_score(0, 0, 1);
  prior.mode[0] = own * belief.mean;
  prior.mode[k_rest] = rest * belief.mean;
  // Covariance of the two scores whose blend has the belief's spread and whose other part the prior's.
  const double added = belief.spread * belief.spread - 1;
  const double shown = std::sqrt(1 + own * own * added), mixed = own * rest * added / shown;
  prior.factor[0][0] = shown;
  prior.factor[k_rest][0] = mixed;
  prior.factor[k_rest][k_rest] = std::sqrt(1 + rest * rest * added - mixed * mixed);
  return prior;
}

}  // namespace lastegg::steam
