#include "treatments/steam/calibration.h"

#include <fmt/format.h>

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/lane_pass.h"

namespace lastegg::steam {
namespace {

constexpr int k_most_iterations = 25;
constexpr double k_score_step = 0.1;       // of the difference quotients
constexpr double k_converged_step = 3e-3;  // largest change of a score; the weights do the rest
constexpr double k_fold_observe_seconds = 40;
constexpr double k_fold_stop_celsius = 35;  // no cell can raise the probe's peak any more
constexpr unsigned k_map_freedom = 6;
constexpr int k_adaptation_samples = 512;
constexpr int k_most_adaptations = 6;
constexpr double k_good_effective_share = 0.65;
constexpr int k_most_last_rounds = 2;
constexpr double k_fair_effective_share = 0.45;
constexpr double k_covariance_widening = 1.0;
constexpr double k_covariance_floor = 1e-4;

using Vector = Eigen::Matrix<double, k_unknown_count, 1>;
using Matrix = Eigen::Matrix<double, k_unknown_count, k_unknown_count>;

// Solutions of linear systems differ between machines in their last digits. Rounded so, they do not, and
// neither does anything that is marched from them.
double rounded(double value) {
  constexpr double grid = 1 << 20;
  return std::floor(value * grid + 0.5) / grid;
}

Vector to_vector(const Scores& scores) {
  return Vector(scores.data());
}
Scores to_scores(const Vector& vector) {
  Scores scores;
  for (std::size_t k = 0; k < k_unknown_count; ++k) scores[k] = rounded(vector[static_cast<Eigen::Index>(k)]);
  return scores;
}

// What the map draws for sample i: the prior's own normal scores, and behind a test the same stretched to a
// multivariate Student-t of six degrees of freedom, whose tails are heavier than any posterior here: no
// sample can outweigh the rest.
Scores drawn_scores(const Calibration& calibration, std::uint32_t i) {
  Scores xi{SobolStream(calibration.head_key, 0).normal(i), SobolStream(calibration.head_key, 1).normal(i),
            SobolStream(calibration.cloth_key, 0).normal(i), SobolStream(calibration.cloth_key, 1).normal(i)};
  if (!calibration.tested) return xi;
  // Chi-squared of an even number of degrees of freedom: twice a sum of exponentials.
  double chi_squared = 0;
  for (unsigned k = 0; k < k_map_freedom / 2; ++k)
    chi_squared -= 2 * numerics::log(SobolStream(calibration.head_key, 2 + k).uniform(i));
  const double stretch = std::sqrt(static_cast<double>(k_map_freedom) / chi_squared);
  for (double& score : xi) score *= stretch;
  return xi;
}

// Minus twice the log of the Student-t likelihood of one standardised residual, up to a constant.
double misfit(double score) {
  return (k_likelihood_freedom + 1) * numerics::log(1 + score * score / k_likelihood_freedom);
}
double likelihood_weight(double score) {
  return (k_likelihood_freedom + 1) / (k_likelihood_freedom + score * score);
}

Head fold_head(const FoldTest& test, const HeadOnCloth& head) {
  return {.length_metres = test.head_length_metres,
          .dew_celsius = head.dew_celsius,
          .film_watts_per_m2_kelvin = head.film_watts_per_m2_kelvin,
          .flux_cap_watts_per_m2 = flux_cap_watts_per_m2(test.towel),
          .forced_gas_metres_per_second = head.forced_gas_metres_per_second};
}

LaneBatch fold_batch(const FoldTest& test) {
  LaneBatch batch;
  batch.pressure_pascal = test.pressure_pascal;
  batch.start_celsius = test.start_celsius;
  batch.air.celsius = test.start_celsius;
  batch.observe_seconds = k_fold_observe_seconds + 2 * test.probe_time_constant_seconds;
  batch.probe_time_constant_seconds = test.probe_time_constant_seconds;
  batch.stop_below_celsius = k_fold_stop_celsius;
  return batch;
}

// expected_peaks() of many scores at once.
Result<std::vector<std::vector<double>>> expected_peaks_of_many(const FoldTest& test,
                                                                std::span<const Scores> scores,
                                                                LaneAccuracy accuracy = LaneAccuracy::usual) {
  const std::size_t readings = test.readings.size();
  std::vector<LanePass> passes;
  passes.reserve(scores.size() * readings);
  for (const Scores& one : scores) {
    const HeadOnCloth head = head_on_cloth(one, test.pressure_pascal, test.towel);
    for (const FoldReading& reading : test.readings) {
      passes.push_back({fold_head(test, head), head.vapour_efficiency, reading.pace_metres_per_second,
                        &reading.stack, reading.depth_metres});
    }
  }
  const auto answers = run_passes(fold_batch(test), passes, accuracy);
  if (!answers) {
    Error error = answers.error();
    error.where = "/readings";
    return refuse(error);
  }
  std::vector<std::vector<double>> peaks(scores.size(), std::vector<double>(readings));
  for (std::size_t i = 0; i < answers->size(); ++i)
    peaks[i / readings][i % readings] = (*answers)[i].probe_peak_celsius;
  return peaks;
}

struct Objective {
  std::vector<double> expected;
  double value;  // minus twice the log posterior, up to a constant
};

// Minus twice the log posterior, up to a constant.
double misfit_of(const FoldTest& test, const Scores& scores, const std::vector<double>& expected) {
  double value = 0;
  for (const double score : scores) value += score * score;
  for (std::size_t i = 0; i < test.readings.size(); ++i)
    value += misfit((test.readings[i].peak_celsius - expected[i]) / k_reading_error_kelvin);
  return value;
}

Result<Objective> objective(const FoldTest& test, const Scores& scores) {
  auto expected = expected_peaks(test, scores);
  if (!expected) return refuse(expected.error());
  const double value = misfit_of(test, scores, *expected);
  return Objective{std::move(*expected), value};
}

// Normalised weights of unnormalised logarithms.
std::vector<double> weights_of_logs(const std::vector<double>& logs) {
  const double largest = *std::max_element(logs.begin(), logs.end());
  std::vector<double> weights(logs.size());
  double sum = 0;
  for (std::size_t i = 0; i < logs.size(); ++i) sum += weights[i] = numerics::exp(logs[i] - largest);
  for (double& weight : weights) weight /= sum;
  return weights;
}

struct Curvature {
  Vector gradient;  // of half the objective
  Matrix hessian;   // Gauss-Newton
};

Result<Curvature> curvature(const FoldTest& test, const Scores& scores, const Objective& at) {
  const auto n = static_cast<Eigen::Index>(test.readings.size());
  std::array<Scores, k_unknown_count> moved;
  std::array<double, k_unknown_count> steps;
  for (std::size_t k = 0; k < k_unknown_count; ++k) {
    steps[k] = scores[k] > 0 ? -k_score_step : k_score_step;  // towards the prior's middle: stays in range
    moved[k] = scores;
    moved[k][k] += steps[k];
  }
  const auto expected = expected_peaks_of_many(test, moved);
  if (!expected) return refuse(expected.error());
  Eigen::MatrixXd jacobian(n, static_cast<Eigen::Index>(k_unknown_count));
  for (std::size_t k = 0; k < k_unknown_count; ++k) {
    for (std::size_t i = 0; i < test.readings.size(); ++i) {
      jacobian(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(k)) =
          ((*expected)[k][i] - at.expected[i]) / steps[k];
    }
  }
  Curvature out{to_vector(scores), Matrix::Identity()};
  for (Eigen::Index i = 0; i < n; ++i) {
    const auto index = static_cast<std::size_t>(i);
    const double score = (test.readings[index].peak_celsius - at.expected[index]) / k_reading_error_kelvin;
    const double weight = likelihood_weight(score);
    const Vector row = jacobian.row(i).transpose() / k_reading_error_kelvin;
    out.gradient -= weight * score * row;
    out.hessian += weight * row * row.transpose();
  }
  return out;
}

// Weight of each of the first `count` samples of a map: posterior density over the density of the map.
Result<std::vector<double>> weights_of(const FoldTest& test, const Calibration& calibration, int count,
                                       LaneAccuracy accuracy) {
  std::vector<Scores> scores(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i)
    scores[static_cast<std::size_t>(i)] = calibrated_scores(calibration, calibration.cloth_key, i);
  const auto expected = expected_peaks_of_many(test, scores, accuracy);
  if (!expected) return refuse(expected.error());
  std::vector<double> half_log(scores.size());
  for (std::size_t i = 0; i < scores.size(); ++i) {
    double square = 0;
    for (const double score : drawn_scores(calibration, static_cast<std::uint32_t>(i)))
      square += score * score;
    const double log_map = -0.5 * static_cast<double>(k_map_freedom + k_unknown_count) *
                           numerics::log(1 + square / k_map_freedom);
    half_log[i] = -0.5 * misfit_of(test, scores[i], (*expected)[i]) - log_map;
  }
  return weights_of_logs(half_log);
}

// The map with the mean and the (slightly widened) covariance of its weighted samples.
Calibration matched_to(const Calibration& calibration, const std::vector<double>& weights) {
  Vector mean = Vector::Zero();
  Matrix square = Matrix::Zero();
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const Vector scores =
        to_vector(calibrated_scores(calibration, calibration.cloth_key, static_cast<int>(i)));
    mean += weights[i] * scores;
    square += weights[i] * scores * scores.transpose();
  }
  const Matrix covariance =
      k_covariance_widening * (square - mean * mean.transpose()) + k_covariance_floor * Matrix::Identity();
  const Matrix factor = covariance.llt().matrixL();
  Calibration out = calibration;
  out.mode = to_scores(mean);
  for (std::size_t row = 0; row < k_unknown_count; ++row) {
    for (std::size_t column = 0; column <= row; ++column) {
      out.factor[row][column] =
          rounded(factor(static_cast<Eigen::Index>(row), static_cast<Eigen::Index>(column)));
    }
  }
  return out;
}

}  // namespace

Calibration prior_calibration(const std::string& head_key, const std::string& cloth_key, Towel towel,
                              double head_length_metres, double pressure_pascal, int samples) {
  Calibration calibration;
  calibration.head_key = head_key;
  calibration.cloth_key = cloth_key;
  calibration.towel = towel;
  calibration.head_length_metres = head_length_metres;
  calibration.pressure_pascal = pressure_pascal;
  for (std::size_t k = 0; k < k_unknown_count; ++k) calibration.factor[k][k] = 1;
  calibration.weights.assign(static_cast<std::size_t>(samples), 1.0 / samples);
  calibration.effective_samples = samples;
  return calibration;
}

Scores calibrated_scores(const Calibration& calibration, const std::string& cloth_key, int i) {
  const Scores xi = drawn_scores(calibration, static_cast<std::uint32_t>(i));
  Scores scores = calibration.mode;
  for (std::size_t row = 0; row < k_unknown_count; ++row) {
    for (std::size_t column = 0; column <= row; ++column)
      scores[row] += calibration.factor[row][column] * xi[column];
  }
  if (cloth_key != calibration.cloth_key) {
    scores[2] = SobolStream(cloth_key, 0).normal(static_cast<std::uint32_t>(i));
    scores[3] = SobolStream(cloth_key, 1).normal(static_cast<std::uint32_t>(i));
  }
  return scores;
}

namespace {

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

}  // namespace

DrawnHead drawn_head(const Calibration& calibration, const std::string& cloth_key, int i) {
  return head_at(calibration, calibrated_scores(calibration, cloth_key, i));
}

DrawnHead median_head(const Calibration& calibration, const std::string& cloth_key) {
  Scores scores = calibration.mode;
  if (cloth_key != calibration.cloth_key) scores[2] = scores[3] = 0;
  return head_at(calibration, scores);
}

Result<std::vector<double>> expected_peaks(const FoldTest& test, const Scores& scores) {
  auto peaks = expected_peaks_of_many(test, {&scores, 1});
  if (!peaks) return refuse(peaks.error());
  return std::move(peaks->front());
}

Result<FitReport> calibrate(const FoldTest& test, int samples) {
  Scores scores{};
  auto at = objective(test, scores);
  if (!at) return refuse(at.error());
  auto local = curvature(test, scores, *at);
  if (!local) return refuse(local.error());
  double damping = 0;
  for (int iteration = 0; iteration < k_most_iterations; ++iteration) {
    Matrix damped = local->hessian;
    damped.diagonal() *= 1 + damping;
    const Vector step = damped.llt().solve(-local->gradient);
    const Scores candidate = to_scores(to_vector(scores) + step);
    auto moved = objective(test, candidate);
    if (!moved) return refuse(moved.error());
    if (moved->value <= at->value) {
      scores = candidate;
      at = std::move(moved);
      damping = damping < 1e-3 ? 0 : damping / 5;
      if (step.cwiseAbs().maxCoeff() < k_converged_step) break;
      local = curvature(test, scores, *at);
      if (!local) return refuse(local.error());
    } else {
      if (step.cwiseAbs().maxCoeff() < k_converged_step) break;
      damping = damping == 0 ? 0.1 : damping * 5;
    }
  }

  FitReport report;
  report.calibration = prior_calibration(test.head_key, test.cloth_key, test.towel, test.head_length_metres,
                                         test.pressure_pascal, samples);
  Calibration& calibration = report.calibration;
  calibration.tested = true;
  calibration.mode = scores;
  const Matrix covariance = local->hessian.inverse();
  const Matrix factor = covariance.llt().matrixL();
  for (std::size_t row = 0; row < k_unknown_count; ++row) {
    report.narrowing[row] =
        std::sqrt(covariance(static_cast<Eigen::Index>(row), static_cast<Eigen::Index>(row)));
    for (std::size_t column = 0; column < k_unknown_count; ++column) {
      calibration.factor[row][column] =
          rounded(factor(static_cast<Eigen::Index>(row), static_cast<Eigen::Index>(column)));
    }
  }

  // Where the posterior is no bell, the Laplace map wastes samples: match it to the mean and covariance of a
  // first weighted round, and keep what leaves most effective samples.
  const int first_round = std::min(samples, k_adaptation_samples);
  auto best = weights_of(test, calibration, first_round, LaneAccuracy::preview);
  if (!best) return refuse(best.error());
  Calibration latest = calibration;
  std::vector<double> latest_weights = *best;
  for (int round = 0; round < k_most_adaptations; ++round) {
    if (effective_sample_size(*best) >= k_good_effective_share * first_round) break;
    latest = matched_to(latest, latest_weights);
    auto weights = weights_of(test, latest, first_round, LaneAccuracy::preview);
    if (!weights) return refuse(weights.error());
    latest_weights = std::move(*weights);
    if (effective_sample_size(latest_weights) > effective_sample_size(*best)) {
      calibration = latest;
      best = latest_weights;
    }
  }
  // Then all samples; a single one in a tail can still outweigh hundreds, so a poor result is matched again.
  auto weights = weights_of(test, calibration, samples, accuracy_for(samples));
  if (!weights) return refuse(weights.error());
  latest = calibration;
  latest_weights = *weights;
  for (int round = 0; round < k_most_last_rounds; ++round) {
    if (effective_sample_size(*weights) >= k_fair_effective_share * samples) break;
    latest = matched_to(latest, latest_weights);
    auto again = weights_of(test, latest, samples, accuracy_for(samples));
    if (!again) return refuse(again.error());
    latest_weights = std::move(*again);
    if (effective_sample_size(latest_weights) > effective_sample_size(*weights)) {
      calibration = latest;
      weights = latest_weights;
    }
  }
  calibration.weights = std::move(*weights);
  calibration.effective_samples = effective_sample_size(calibration.weights);

  report.expected_celsius = at->expected;
  for (std::size_t i = 0; i < test.readings.size(); ++i) {
    report.standard_scores.push_back((test.readings[i].peak_celsius - at->expected[i]) /
                                     k_reading_error_kelvin);
  }
  return report;
}

}  // namespace lastegg::steam
