#include "treatments/steam/calibration.h"

#include <fmt/format.h>

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/exposure.h"

namespace lastegg::steam {
namespace {

constexpr int k_most_iterations = 25;
constexpr double k_score_step = 0.02;      // of the difference quotients
constexpr double k_converged_step = 1e-4;  // largest change of a score
constexpr double k_fold_observe_seconds = 40;
constexpr double k_fold_stop_celsius = 35;  // no cell can raise the probe's peak any more
constexpr double k_series_step_kelvin = 1.0;
constexpr int k_adaptation_samples = 256;
constexpr int k_most_adaptations = 5;
constexpr double k_good_effective_share = 0.65;
constexpr double k_covariance_widening = 1.2;
constexpr double k_covariance_floor = 1e-4;

using Vector = Eigen::Matrix<double, k_unknown_count, 1>;
using Matrix = Eigen::Matrix<double, k_unknown_count, k_unknown_count>;

Vector to_vector(const Scores& scores) {
  return Vector(scores.data());
}
Scores to_scores(const Vector& vector) {
  Scores scores;
  for (std::size_t k = 0; k < k_unknown_count; ++k) scores[k] = vector[static_cast<Eigen::Index>(k)];
  return scores;
}

bool same_stack(const Stack& a, const Stack& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Layer& x, const Layer& y) {
    return x.thickness_metres == y.thickness_metres &&
           x.heat_capacity_joules_per_m3_kelvin == y.heat_capacity_joules_per_m3_kelvin &&
           x.conductivity_watts_per_metre_kelvin == y.conductivity_watts_per_metre_kelvin &&
           x.permeable == y.permeable && x.porosity == y.porosity && x.tortuosity == y.tortuosity &&
           x.sorption_scale_kilograms_per_m3 == y.sorption_scale_kilograms_per_m3;
  });
}

// Readings of one pace in one stack share a march: the first of each group stands for it.
std::vector<std::size_t> march_of_reading(const FoldTest& test) {
  std::vector<std::size_t> first(test.readings.size());
  for (std::size_t i = 0; i < test.readings.size(); ++i) {
    first[i] = i;
    for (std::size_t k = 0; k < i; ++k) {
      if (test.readings[k].pace_metres_per_second == test.readings[i].pace_metres_per_second &&
          same_stack(test.readings[k].stack, test.readings[i].stack)) {
        first[i] = first[k];
        break;
      }
    }
  }
  return first;
}

// The normal scores that the prior draws for sample i.
Scores drawn_scores(const Calibration& calibration, std::uint32_t i) {
  return {SobolStream(calibration.head_key, 0).normal(i), SobolStream(calibration.head_key, 1).normal(i),
          SobolStream(calibration.cloth_key, 0).normal(i), SobolStream(calibration.cloth_key, 1).normal(i)};
}

// Minus twice the log of the Student-t likelihood of one standardised residual, up to a constant.
double misfit(double score) {
  return (k_likelihood_freedom + 1) * numerics::log(1 + score * score / k_likelihood_freedom);
}
double likelihood_weight(double score) {
  return (k_likelihood_freedom + 1) / (k_likelihood_freedom + score * score);
}

struct Objective {
  std::vector<double> expected;
  double value;  // minus twice the log posterior, up to a constant
};

Result<Objective> objective(const FoldTest& test, const Scores& scores) {
  auto expected = expected_peaks(test, scores);
  if (!expected) return refuse(expected.error());
  Objective out{std::move(*expected), 0};
  for (double score : scores) out.value += score * score;
  for (std::size_t i = 0; i < test.readings.size(); ++i) {
    out.value += misfit((test.readings[i].peak_celsius - out.expected[i]) / k_reading_error_kelvin);
  }
  return out;
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
  Eigen::MatrixXd jacobian(n, static_cast<Eigen::Index>(k_unknown_count));
  for (std::size_t k = 0; k < k_unknown_count; ++k) {
    Scores moved = scores;
    const double step =
        scores[k] > 0 ? -k_score_step : k_score_step;  // towards the prior's middle: stays in range
    moved[k] += step;
    auto expected = expected_peaks(test, moved);
    if (!expected) return refuse(expected.error());
    for (Eigen::Index i = 0; i < n; ++i) {
      const auto index = static_cast<std::size_t>(i);
      jacobian(i, static_cast<Eigen::Index>(k)) = ((*expected)[index] - at.expected[index]) / step;
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
Result<std::vector<double>> weights_of(const FoldTest& test, const Calibration& calibration, int count) {
  std::vector<double> half_log(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    const auto index = static_cast<std::uint32_t>(i);
    const Scores xi = drawn_scores(calibration, index);
    double square = 0;
    for (const double score : xi) square += score * score;
    const auto there = objective(test, calibrated_scores(calibration, calibration.cloth_key, i));
    if (!there) return refuse(there.error());
    half_log[static_cast<std::size_t>(i)] = 0.5 * (square - there->value);
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
      out.factor[row][column] = factor(static_cast<Eigen::Index>(row), static_cast<Eigen::Index>(column));
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
  const HeadOnCloth head = head_on_cloth(scores, test.pressure_pascal, test.towel);
  const std::vector<std::size_t> march = march_of_reading(test);
  std::vector<double> peaks(test.readings.size());
  Series series;
  for (std::size_t first = 0; first < test.readings.size(); ++first) {
    if (march[first] != first) continue;
    PassProblem problem;
    problem.head = {.length_metres = test.head_length_metres,
                    .dew_celsius = head.dew_celsius,
                    .film_watts_per_m2_kelvin = head.film_watts_per_m2_kelvin,
                    .flux_cap_watts_per_m2 = flux_cap_watts_per_m2(test.towel),
                    .forced_gas_metres_per_second = head.forced_gas_metres_per_second};
    problem.pace_metres_per_second = test.readings[first].pace_metres_per_second;
    problem.stack = test.readings[first].stack;
    problem.vapour_efficiency = head.vapour_efficiency;
    problem.pressure_pascal = test.pressure_pascal;
    problem.start_celsius = test.start_celsius;
    problem.air.celsius = test.start_celsius;
    problem.observe_seconds = k_fold_observe_seconds + 2 * test.probe_time_constant_seconds;
    std::vector<std::size_t> members;
    for (std::size_t i = first; i < test.readings.size(); ++i) {
      if (march[i] != first) continue;
      members.push_back(i);
      problem.depths_metres.push_back(test.readings[i].depth_metres);
    }
    const auto history = run_pass(problem, {.stop_below_celsius = k_fold_stop_celsius});
    if (!history) {
      Error error = history.error();
      error.where = fmt::format("/readings/{}", first);
      return refuse(error);
    }
    for (std::size_t m = 0; m < members.size(); ++m) {
      fine_series(*history, history->celsius[m], k_series_step_kelvin, series);
      peaks[members[m]] = lagged_peak(series, test.probe_time_constant_seconds).celsius;
    }
  }
  return peaks;
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
          factor(static_cast<Eigen::Index>(row), static_cast<Eigen::Index>(column));
    }
  }

  // Where the posterior is no bell, the Laplace map wastes samples: match it to the mean and covariance of a
  // first weighted round, and keep what leaves most effective samples.
  const int first_round = std::min(samples, k_adaptation_samples);
  auto best = weights_of(test, calibration, first_round);
  if (!best) return refuse(best.error());
  Calibration latest = calibration;
  std::vector<double> latest_weights = *best;
  for (int round = 0; round < k_most_adaptations; ++round) {
    if (effective_sample_size(*best) >= k_good_effective_share * first_round) break;
    latest = matched_to(latest, latest_weights);
    auto weights = weights_of(test, latest, first_round);
    if (!weights) return refuse(weights.error());
    latest_weights = std::move(*weights);
    if (effective_sample_size(latest_weights) > effective_sample_size(*best)) {
      calibration = latest;
      best = latest_weights;
    }
  }
  auto weights = weights_of(test, calibration, samples);
  if (!weights) return refuse(weights.error());
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
