#include "treatments/steam/fold_test/drift.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/normal.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_test/fold_forecast.h"
#include "treatments/steam/fold_test/fold_unknowns.h"

namespace lastegg::steam {
namespace {

struct Known {
  double mean, spread;
};

Known known(const Calibration& calibration, bool is_film) {
  std::vector<double> values;
  for (std::size_t i = 0; i < calibration.weights.size(); ++i) {
    const HeadOnCloth head = head_on_cloth(own_scores(calibration, static_cast<int>(i)),
                                           calibration.pressure_pascal, calibration.towel);
    // Of the dew temperature what lies below boiling there: tests may be made at different elevations.
    values.push_back(is_film ? numerics::log(head.film_watts_per_m2_kelvin)
                             : head.dew_celsius - boiling_celsius(calibration.pressure_pascal));
  }
  return {weighted_mean(values, calibration.weights), weighted_deviation(values, calibration.weights)};
}

}  // namespace

double chi_squared_exceedance(double value, int freedom) {
  if (value <= 0) return 1;
  const double n = freedom;
  const double root = numerics::exp(numerics::log(value / n) / 3);
  return normal_probability(-(root - (1 - 2 / (9 * n))) / std::sqrt(2 / (9 * n)));
}

Result<Drift> drift_since(const Calibration& before, const FoldTest& now, const Calibration& after,
                          const std::vector<bool>& left_out, int samples) {
  Drift drift;
  FoldTest compared = now;
  compared.readings.clear();
  for (std::size_t r = 0; r < now.readings.size(); ++r) {
    // A surface is too vague to tell a change, and has no forecast.
    if (left_out[r] || now.readings[r].kind == ReadingKind::surface) continue;
    compared.readings.push_back(now.readings[r]);
    if (compared.readings.back().cloth_key.empty()) compared.readings.back().cloth_key = now.cloth_key;
  }
  drift.readings = static_cast<int>(compared.readings.size());
  const Known dew_before = known(before, false), dew_after = known(after, false);
  const Known film_before = known(before, true), film_after = known(after, true);
  const auto together = [](const Known& a, const Known& b) {
    return std::sqrt(a.spread * a.spread + b.spread * b.spread);
  };
  drift.dew_shift_kelvin = dew_after.mean - dew_before.mean;
  drift.dew_shift_spread_kelvin = together(dew_before, dew_after);
  drift.film_ratio = numerics::exp(film_after.mean - film_before.mean);
  drift.film_ratio_log_spread = together(film_before, film_after);
  drift.weaker_dew_probability = normal_probability(-drift.dew_shift_kelvin / drift.dew_shift_spread_kelvin);
  drift.weaker_film_probability =
      normal_probability((film_before.mean - film_after.mean) / drift.film_ratio_log_spread);
  if (drift.readings < k_least_drift_readings) return drift;

  auto forecast = forecast_readings(before, compared, compared.readings, samples);
  if (!forecast) return refuse(forecast.error());
  const std::vector<double> weights = leading_weights(before.weights, samples);
  const auto n = static_cast<Eigen::Index>(compared.readings.size());
  Eigen::VectorXd off(n);
  Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(n, n);
  const FoldUnknowns unknowns = unknowns_of(compared);
  std::vector<std::vector<double>> slopes;
  std::vector<double> means;
  for (std::size_t r = 0; r < compared.readings.size(); ++r) {
    means.push_back(weighted_mean((*forecast)[r].probe_celsius, weights));
    off[static_cast<Eigen::Index>(r)] = compared.readings[r].peak_celsius - means[r];
    std::vector<double> by(unknowns.size(), 0.0);
    add_error_slopes(compared, unknowns, r, means[r], 0, by);
    slopes.push_back(std::move(by));
  }
  for (Eigen::Index a = 0; a < n; ++a) {
    for (Eigen::Index b = 0; b < n; ++b) {
      const auto ia = static_cast<std::size_t>(a), ib = static_cast<std::size_t>(b);
      double sum = 0;
      for (std::size_t i = 0; i < weights.size(); ++i) {
        sum += weights[i] * ((*forecast)[ia].probe_celsius[i] - means[ia]) *
               ((*forecast)[ib].probe_celsius[i] - means[ib]);
      }
      for (std::size_t k = 0; k < slopes[ia].size(); ++k) sum += slopes[ia][k] * slopes[ib][k];
      if (a == b) {
        const double error = reading_error_kelvin(compared.readings[ia].kind);
        sum += error * error;
      }
      covariance(a, b) = sum;
    }
  }
  const double distance = off.dot(covariance.llt().solve(off));
  drift.probability = chi_squared_exceedance(distance, drift.readings);
  drift.mean_kelvin = off.mean();
  drift.verdict = drift.probability >= k_drift_probability ? Drift::Verdict::unchanged
                  : drift.mean_kelvin < 0                  ? Drift::Verdict::weaker
                                                           : Drift::Verdict::stronger;
  return drift;
}

}  // namespace lastegg::steam
