#include "treatments/steam/steamer/unknowns.h"

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/normal.h"

namespace lastegg::steam {
namespace {

// Priors (estimates, docs/decisions/013-steam-priors.md).
constexpr double k_dew_below_boiling_kelvin = 3.0;
constexpr double k_dew_spread_kelvin = 3.0;
constexpr double k_dew_lowest_below_boiling_kelvin = 40.0;  // far outside the prior
constexpr double k_film_median = 600.0;
constexpr double k_film_log_spread = 0.7;
constexpr double k_film_least = 10.0, k_film_most = 10000.0;  // far outside the prior; what a pass accepts
constexpr double k_efficiency_mean = 0.6;
constexpr double k_efficiency_spread = 0.35;
constexpr double k_forced_most = 0.020;
constexpr double k_forced_median_bare = 0.006;
constexpr double k_forced_median_towel = 0.003;
constexpr double k_forced_logit_spread = 1.0;
constexpr double k_cleanest_steam_fraction = 0.99;

double truncated_normal(double score, double mean, double spread, double least, double most) {
  const double low = normal_probability((least - mean) / spread);
  const double high = normal_probability((most - mean) / spread);
  const double u = low + (high - low) * normal_probability(score);
  return std::clamp(mean + spread * normal_quantile(u), least, most);
}

}  // namespace

double blended_score(std::size_t k, double score, double rest) {
  return std::sqrt(k_own_share[k]) * score + std::sqrt(1 - k_own_share[k]) * rest;
}

double cleanest_dew_celsius(double pressure_pascal) {
  return boiling_celsius(k_cleanest_steam_fraction * pressure_pascal);
}

HeadOnCloth head_on_cloth(const Scores& scores, double pressure_pascal, Towel towel) {
  const double ceiling = cleanest_dew_celsius(pressure_pascal);
  const double boiling = boiling_celsius(pressure_pascal);
  const double median = towel == Towel::none ? k_forced_median_bare : k_forced_median_towel;
  const double logit = numerics::log(median / (k_forced_most - median)) + k_forced_logit_spread * scores[3];
  return {
      .dew_celsius = truncated_normal(scores[0], boiling - k_dew_below_boiling_kelvin, k_dew_spread_kelvin,
                                      boiling - k_dew_lowest_below_boiling_kelvin, ceiling),
      .film_watts_per_m2_kelvin =
          std::clamp(k_film_median * numerics::exp(k_film_log_spread * scores[1]), k_film_least, k_film_most),
      .vapour_efficiency = truncated_normal(scores[2], k_efficiency_mean, k_efficiency_spread, 0, 1),
      .forced_gas_metres_per_second = k_forced_most / (1.0 + numerics::exp(-logit))};
}

double flux_cap_watts_per_m2(Towel towel) {
  return towel == Towel::none ? 70e3 : 60e3;
}

Layer laid_towel() {
  return {.thickness_metres = 0.003,
          .heat_capacity_joules_per_m3_kelvin = 150 * 1340,
          .conductivity_watts_per_metre_kelvin = 0.06,
          .permeable = true,
          .porosity = 0.9,
          .tortuosity = 1.5,
          .sorption_scale_kilograms_per_m3 = 150 * 0.075 / 0.817};
}

}  // namespace lastegg::steam
