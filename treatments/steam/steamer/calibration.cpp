#include "treatments/steam/steamer/calibration.h"

#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"

namespace lastegg::steam {
namespace {

// What the map draws for sample i: the prior's own normal scores, and behind a test the same stretched to a
// multivariate Student-t.
FittedScores drawn_scores(const Calibration& calibration, std::uint32_t i) {
  FittedScores xi{SobolStream(calibration.head_key, 0).normal(i),
                  SobolStream(calibration.head_key, 1).normal(i),
                  SobolStream(calibration.cloth_key, 0).normal(i),
                  SobolStream(calibration.cloth_key, 1).normal(i),
                  SobolStream(calibration.head_key, k_head_rest_stream).normal(i),
                  SobolStream(calibration.head_key, k_head_rest_stream + 1).normal(i)};
  if (!calibration.tested) return xi;
  const double stretch = map_stretch(calibration.head_key, i);
  for (double& score : xi) score *= stretch;
  return xi;
}

FittedScores fitted_scores(const Calibration& calibration, std::uint32_t i) {
  const FittedScores xi = drawn_scores(calibration, i);
  FittedScores scores = calibration.mode;
  for (std::size_t row = 0; row < k_fitted_count; ++row) {
    for (std::size_t column = 0; column <= row; ++column)
      scores[row] += calibration.factor[row][column] * xi[column];
  }
  return scores;
}

double head_score(const FittedScores& scores, std::size_t k) {
  return blended_score(k, scores[k], scores[k_unknown_count + k]);
}

}  // namespace

double map_stretch(const std::string& head_key, std::uint32_t i) {
  // Chi-squared of an even number of degrees of freedom: twice a sum of exponentials.
  double chi_squared = 0;
  for (unsigned k = 0; k < k_map_freedom / 2; ++k)
    chi_squared -= 2 * numerics::log(SobolStream(head_key, 2 + k).uniform(i));
  return std::sqrt(static_cast<double>(k_map_freedom) / chi_squared);
}

Calibration prior_calibration(const std::string& head_key, const std::string& cloth_key, Towel towel,
                              double head_length_metres, double pressure_pascal, int samples) {
  Calibration calibration;
  calibration.head_key = head_key;
  calibration.cloth_key = cloth_key;
  calibration.towel = towel;
  calibration.head_length_metres = head_length_metres;
  calibration.pressure_pascal = pressure_pascal;
  for (std::size_t k = 0; k < k_fitted_count; ++k) calibration.factor[k][k] = 1;
  calibration.weights.assign(static_cast<std::size_t>(samples), 1.0 / samples);
  calibration.effective_samples = samples;
  return calibration;
}

Scores calibrated_scores(const Calibration& calibration, const std::string& cloth_key, int i) {
  const auto index = static_cast<std::uint32_t>(i);
  const FittedScores fitted = fitted_scores(calibration, index);
  if (cloth_key == calibration.cloth_key) return {fitted[0], fitted[1], fitted[2], fitted[3]};
  const auto drawn = [&](unsigned stream) { return SobolStream(cloth_key, stream).normal(index); };
  return {blended_score(0, head_score(fitted, 0), drawn(k_cloth_shift_stream)),
          blended_score(1, head_score(fitted, 1), drawn(k_cloth_shift_stream + 1)), drawn(0), drawn(1)};
}

Scores own_scores(const Calibration& calibration, int i) {
  const auto index = static_cast<std::uint32_t>(i);
  const FittedScores fitted = fitted_scores(calibration, index);
  const auto rest = [&](unsigned k) {
    return SobolStream(calibration.cloth_key, k_cloth_rest_stream + k).normal(index);
  };
  return {head_score(fitted, 0), head_score(fitted, 1), blended_score(2, fitted[2], rest(0)),
          blended_score(3, fitted[3], rest(1))};
}

DrawnHead head_at(const Calibration& calibration, const Scores& scores) {
  const HeadOnCloth drawn = head_on_cloth(scores, calibration.pressure_pascal, calibration.towel);
  if (calibration.known_head) {
    return {*calibration.known_head, calibration.known_vapour_efficiency.value_or(drawn.vapour_efficiency)};
  }
  return {{.length_metres = calibration.head_length_metres,
           .dew_celsius = drawn.dew_celsius,
           .film_watts_per_m2_kelvin = drawn.film_watts_per_m2_kelvin,
           .flux_cap_watts_per_m2 = flux_cap_watts_per_m2(calibration.towel),
           .forced_gas_metres_per_second = drawn.forced_gas_metres_per_second},
          drawn.vapour_efficiency};
}

DrawnHead drawn_head(const Calibration& calibration, const std::string& cloth_key, int i) {
  return head_at(calibration, calibrated_scores(calibration, cloth_key, i));
}

DrawnHead median_head(const Calibration& calibration, const std::string& cloth_key) {
  const FittedScores& mode = calibration.mode;
  if (cloth_key == calibration.cloth_key) return head_at(calibration, {mode[0], mode[1], mode[2], mode[3]});
  return head_at(calibration,
                 {blended_score(0, head_score(mode, 0), 0), blended_score(1, head_score(mode, 1), 0), 0, 0});
}

}  // namespace lastegg::steam
