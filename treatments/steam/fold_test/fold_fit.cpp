#include "treatments/steam/fold_test/fold_fit.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <optional>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_test/fold_unknowns.h"
#include "treatments/steam/fold_test/reading_likelihood.h"
#include "treatments/steam/fold_test/score_map.h"
#include "treatments/steam/fold_test/surface_response.h"

namespace lastegg::steam {
namespace {

constexpr int k_most_iterations = 25;
constexpr double k_score_step = 0.1;       // of the difference quotients
constexpr double k_converged_step = 3e-3;  // largest change of a score; the weights do the rest
constexpr int k_adaptation_samples = 512;
constexpr int k_most_adaptations = 6;
constexpr double k_good_effective_share = 0.65;
constexpr int k_most_last_rounds = 2;
constexpr double k_fair_effective_share = 0.45;
constexpr double k_probe_step = 0.2;  // of ln(time constant), for the slope of a reading over it

class Fit {
 public:
  Fit(const FoldTest& test, int samples)
      : test_(test),
        moving_(test),
        unknowns_(unknowns_of(test)),
        samples_(samples),
        probe_kelvin_(test.readings.size()),
        responses_(test.readings.size()) {
    std::erase_if(moving_.readings, is_surface);
    for (const FoldReading& reading : test.readings) errors_.push_back(reading_error_kelvin(reading.kind));
  }

  Result<FitReport> run();

 private:
  struct At {
    JointScores scores;
    std::vector<double> marched;          // celsius per reading, by the march alone
    std::vector<std::vector<double>> by;  // slopes of the errors, per reading
    std::vector<double> expected;         // celsius per reading with the errors
    double value;                         // minus twice the log posterior, up to a constant
  };
  struct Curvature {
    Vector gradient;  // of half the objective
    Matrix hessian;   // Gauss-Newton
  };

  // What the readings say at given scores, the march being known there.
  At at(JointScores scores, std::vector<double> marched) const {
    At out{std::move(scores), std::move(marched), {}, {}, 0};
    for (const double one : out.scores) out.value += one * one;
    out.value += belief_excess(out.scores);
    for (std::size_t r = 0; r < test_.readings.size(); ++r) {
      std::vector<double> by(out.scores.size(), 0.0);
      add_error_slopes(test_, unknowns_, r, out.marched[r], probe_kelvin_[r], by);
      double celsius = out.marched[r];
      for (std::size_t k = unknowns_.physical(); k < by.size(); ++k) celsius += by[k] * out.scores[k];
      out.expected.push_back(celsius);
      out.by.push_back(std::move(by));
      out.value += misfit(score(r, celsius));
    }
    return out;
  }

  // By how much the belief of the head's own dew temperature differs from the standard normal one, in minus
  // twice the logarithm.
  double belief_excess(const JointScores& scores) const {
    const double own = own_head_score(scores, 0);
    const double off = (own - test_.dew_belief.mean) / test_.dew_belief.spread;
    return off * off - own * own;
  }

  double score(std::size_t r, double expected) const {
    const FoldReading& reading = test_.readings[r];
    const double high = reading.high_celsius.value_or(reading.peak_celsius);
    return (std::clamp(expected, reading.peak_celsius, high) - expected) / errors_[r];
  }

  Result<std::vector<std::vector<double>>> march(const std::vector<JointScores>& scores,
                                                 LaneAccuracy accuracy = LaneAccuracy::usual) const;

  Result<At> at(const JointScores& scores) const {
    auto marched = march({scores});
    if (!marched) return refuse(marched.error());
    return at(scores, std::move(marched->front()));
  }

  struct Integrated {
    double value = 0;            // minus twice the log posterior of the physical scores, up to a constant
    std::vector<double> scores;  // what is left of each reading, in errors
  };
  Integrated integrated(const JointScores& scores, const std::vector<double>& marched) const;

  Result<void> learn_surfaces();
  Result<void> learn_probe_slopes(const JointScores& scores);
  Result<Curvature> curvature(const At& here) const;
  Result<At> find_mode(const JointScores& start);
  Result<std::vector<double>> weights_of(const ScoreMap& map, int count, LaneAccuracy accuracy);
  ScoreMap matched_to(const ScoreMap& map, const std::vector<double>& weights) const;
  Result<std::pair<ScoreMap, std::vector<double>>> adapted(ScoreMap map);

  static bool is_surface(const FoldReading& reading) { return reading.kind == ReadingKind::surface; }

  const FoldTest& test_;
  FoldTest moving_;  // without surface readings, which are not marched
  FoldUnknowns unknowns_;
  int samples_;
  std::vector<double> probe_kelvin_;
  std::vector<SurfaceResponse> responses_;  // of surface readings
  std::vector<double> errors_;              // kelvin, per reading
  std::optional<Curvature> local_;
  std::vector<std::vector<double>> latest_scores_;  // per sample and reading, of the latest weights_of()
};

// What each reading shows at several scores: marched, and of surfaces as the learnt response has it.
Result<std::vector<std::vector<double>>> Fit::march(const std::vector<JointScores>& scores,
                                                    LaneAccuracy accuracy) const {
  std::vector<std::vector<Scores>> each, moving(scores.size());
  for (std::size_t i = 0; i < scores.size(); ++i) {
    each.push_back(scores_of_readings(unknowns_, scores[i]));
    for (std::size_t r = 0; r < test_.readings.size(); ++r) {
      if (!is_surface(test_.readings[r])) moving[i].push_back(each[i][r]);
    }
  }
  const auto marched = expected_of_many(moving_, moving, accuracy);
  if (!marched) return refuse(marched.error());
  std::vector<std::vector<double>> shown(scores.size());
  for (std::size_t i = 0; i < scores.size(); ++i) {
    std::size_t next = 0;
    for (std::size_t r = 0; r < test_.readings.size(); ++r)
      shown[i].push_back(is_surface(test_.readings[r]) ? responses_[r].celsius(test_, each[i][r])
                                                       : (*marched)[i][next++]);
  }
  return shown;
}

Result<void> Fit::learn_surfaces() {
  for (std::size_t r = 0; r < test_.readings.size(); ++r) {
    if (!is_surface(test_.readings[r])) continue;
    auto response = surface_response(test_, test_.readings[r]);
    if (!response) return refuse(response.error());
    const double timing = k_surface_timing_seconds * response->kelvin_per_second;
    const double instrument = test_.readings[r].instrument_error_kelvin;
    errors_[r] = std::sqrt(errors_[r] * errors_[r] + instrument * instrument + timing * timing +
                           response->residual_kelvin * response->residual_kelvin);
    responses_[r] = std::move(*response);
  }
  return {};
}

// Kelvin by which one standard deviation of ln(time constant) moves each reading.
Result<void> Fit::learn_probe_slopes(const JointScores& scores) {
  if (!unknowns_.probe) return {};
  const auto usual = march({scores});
  if (!usual) return refuse(usual.error());
  const double time_constant = moving_.probe_time_constant_seconds;
  moving_.probe_time_constant_seconds *= numerics::exp(k_probe_step);
  const auto lagged = march({scores});
  moving_.probe_time_constant_seconds = time_constant;
  if (!lagged) return refuse(lagged.error());
  for (std::size_t r = 0; r < probe_kelvin_.size(); ++r) {
    probe_kelvin_[r] = rounded(((*lagged)[0][r] - (*usual)[0][r]) / k_probe_step * test_.probe_log_spread);
  }
  return {};
}

Result<Fit::Curvature> Fit::curvature(const At& here) const {
  const std::size_t size = unknowns_.size(), readings = test_.readings.size();
  std::vector<JointScores> moved(unknowns_.physical(), here.scores);
  std::vector<double> steps(unknowns_.physical());
  for (std::size_t k = 0; k < moved.size(); ++k) {
    steps[k] = here.scores[k] > 0 ? -k_score_step : k_score_step;  // towards the prior's middle
    moved[k][k] += steps[k];
  }
  const auto marched = march(moved);
  if (!marched) return refuse(marched.error());
  Curvature out{to_vector(here.scores),
                Matrix::Identity(static_cast<Eigen::Index>(size), static_cast<Eigen::Index>(size))};
  const double own = own_head_score(here.scores, 0);
  const double precision = 1 / (test_.dew_belief.spread * test_.dew_belief.spread);
  Vector of_own = Vector::Zero(static_cast<Eigen::Index>(size));
  of_own[0] = blended_score(0, 1, 0);
  of_own[k_unknown_count] = blended_score(0, 0, 1);
  out.gradient += ((own - test_.dew_belief.mean) * precision - own) * of_own;
  out.hessian += (precision - 1) * of_own * of_own.transpose();
  for (std::size_t r = 0; r < readings; ++r) {
    Vector row = to_vector(here.by[r]);
    for (std::size_t k = 0; k < moved.size(); ++k)
      row[static_cast<Eigen::Index>(k)] = ((*marched)[k][r] - here.marched[r]) / steps[k];
    row /= errors_[r];
    const double missed = score(r, here.expected[r]);
    if (missed == 0 && test_.readings[r].high_celsius) continue;  // inside its interval it pulls nowhere
    const double weight = likelihood_weight(missed);
    out.gradient -= weight * missed * row;
    out.hessian += weight * row * row.transpose();
  }
  return out;
}

Result<Fit::At> Fit::find_mode(const JointScores& start) {
  auto here = at(start);
  if (!here) return here;
  auto local = curvature(*here);
  if (!local) return refuse(local.error());
  double damping = 0;
  for (int iteration = 0; iteration < k_most_iterations; ++iteration) {
    Matrix damped = local->hessian;
    damped.diagonal() *= 1 + damping;
    const Vector step = damped.llt().solve(-local->gradient);
    auto moved = at(to_scores(to_vector(here->scores) + step));
    if (!moved) return moved;
    const bool is_small = step.cwiseAbs().maxCoeff() < k_converged_step;
    if (moved->value <= here->value) {
      here = std::move(moved);
      damping = damping < 1e-3 ? 0 : damping / 5;
      if (is_small) break;
      local = curvature(*here);
      if (!local) return refuse(local.error());
    } else {
      if (is_small) break;
      damping = damping == 0 ? 0.1 : damping * 5;
    }
  }
  local_ = std::move(*local);
  return here;
}

// At given physical scores, the errors of probe and march integrated out, so that the map need not span them.
Fit::Integrated Fit::integrated(const JointScores& scores, const std::vector<double>& marched) const {
  const std::size_t first = unknowns_.physical(), readings = test_.readings.size();
  const auto errors = static_cast<Eigen::Index>(unknowns_.size() - first);
  Matrix slopes(static_cast<Eigen::Index>(readings), errors);
  Vector missed(static_cast<Eigen::Index>(readings));
  std::vector<double> by(unknowns_.size());
  for (std::size_t r = 0; r < readings; ++r) {
    std::fill(by.begin(), by.end(), 0.0);
    add_error_slopes(test_, unknowns_, r, marched[r], probe_kelvin_[r], by);
    for (Eigen::Index k = 0; k < errors; ++k)
      slopes(static_cast<Eigen::Index>(r), k) = by[first + static_cast<std::size_t>(k)] / errors_[r];
    missed[static_cast<Eigen::Index>(r)] = score(r, marched[r]);
  }
  const IntegratedErrors left = integrate_errors(slopes, missed);
  Integrated out;
  out.value = left.value + belief_excess(scores);
  for (std::size_t k = 0; k < first; ++k) out.value += scores[k] * scores[k];
  for (Eigen::Index r = 0; r < left.scores.size(); ++r) {
    out.value += misfit(left.scores[r]);
    out.scores.push_back(left.scores[r]);
  }
  return out;
}

// Weight of each of the first `count` samples of a map: posterior density over the density of the map.
Result<std::vector<double>> Fit::weights_of(const ScoreMap& map, int count, LaneAccuracy accuracy) {
  std::vector<JointScores> scores;
  std::vector<double> log_map;
  for (int i = 0; i < count; ++i) {
    const auto index = static_cast<std::uint32_t>(i);
    const JointScores xi = drawn_joint_scores(unknowns_, test_.head_key, index);
    const double stretch = map_stretch(test_.head_key, index);
    double square = 0;
    for (const double one : xi) square += one * one * stretch * stretch;
    log_map.push_back(-0.5 * static_cast<double>(k_map_freedom + xi.size()) *
                      numerics::log(1 + square / k_map_freedom));
    scores.push_back(map.scores(xi, stretch));
  }
  const auto marched = march(scores, accuracy);
  if (!marched) return refuse(marched.error());
  std::vector<double> half_log(scores.size());
  latest_scores_.assign(scores.size(), {});
  for (std::size_t i = 0; i < scores.size(); ++i) {
    Integrated one = integrated(scores[i], (*marched)[i]);
    half_log[i] = -0.5 * one.value - log_map[i];
    latest_scores_[i] = std::move(one.scores);
  }
  return weights_of_logs(half_log);
}

ScoreMap Fit::matched_to(const ScoreMap& map, const std::vector<double>& weights) const {
  std::vector<JointScores> samples;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const auto index = static_cast<std::uint32_t>(i);
    samples.push_back(
        map.scores(drawn_joint_scores(unknowns_, test_.head_key, index), map_stretch(test_.head_key, index)));
  }
  return matched_map(samples, weights);
}

// Where the posterior is no bell, the Laplace map wastes samples: it is matched to the mean and covariance of
// a first weighted round, and what leaves most effective samples is kept. Then all samples; a single one in a
// tail can still outweigh hundreds, so a poor result is matched again.
Result<std::pair<ScoreMap, std::vector<double>>> Fit::adapted(ScoreMap map) {
  const int first_round = std::min(samples_, k_adaptation_samples);
  const auto improve = [&](int count, LaneAccuracy accuracy, int rounds, double enough,
                           std::vector<double>& best,
                           std::vector<std::vector<double>>& best_scores) -> Result<void> {
    ScoreMap latest = map;
    std::vector<double> latest_weights = best;
    for (int round = 0; round < rounds; ++round) {
      if (effective_sample_size(best) >= enough * count) break;
      latest = matched_to(latest, latest_weights);
      auto weights = weights_of(latest, count, accuracy);
      if (!weights) return refuse(weights.error());
      latest_weights = std::move(*weights);
      if (effective_sample_size(latest_weights) > effective_sample_size(best)) {
        map = latest;
        best = latest_weights;
        best_scores = latest_scores_;
      }
    }
    return {};
  };
  auto weights = weights_of(map, first_round, LaneAccuracy::preview);
  if (!weights) return refuse(weights.error());
  auto scores = latest_scores_;
  if (auto done = improve(first_round, LaneAccuracy::preview, k_most_adaptations, k_good_effective_share,
                          *weights, scores);
      !done)
    return refuse(done.error());
  weights = weights_of(map, samples_, accuracy_for(samples_));
  if (!weights) return refuse(weights.error());
  scores = latest_scores_;
  if (auto done = improve(samples_, accuracy_for(samples_), k_most_last_rounds, k_fair_effective_share,
                          *weights, scores);
      !done)
    return refuse(done.error());
  latest_scores_ = std::move(scores);
  return std::pair{std::move(map), std::move(*weights)};
}

Result<FitReport> Fit::run() {
  if (auto learnt = learn_surfaces(); !learnt) return refuse(learnt.error());
  JointScores start(unknowns_.size(), 0.0);
  start[0] = rounded(blended_score(0, test_.dew_belief.mean, 0));
  start[k_unknown_count] = rounded(blended_score(0, 0, test_.dew_belief.mean));
  if (auto learnt = learn_probe_slopes(start); !learnt) return refuse(learnt.error());
  auto mode = find_mode(start);
  if (!mode) return refuse(mode.error());
  if (unknowns_.probe) {
    if (auto learnt = learn_probe_slopes(mode->scores); !learnt) return refuse(learnt.error());
    mode = find_mode(mode->scores);
    if (!mode) return refuse(mode.error());
  }
  const auto physical = static_cast<Eigen::Index>(unknowns_.physical());
  const Matrix all = local_->hessian.inverse();
  const Matrix covariance = all.topLeftCorner(physical, physical);
  auto found = adapted({{mode->scores.begin(), mode->scores.begin() + physical}, rounded_factor(covariance)});
  if (!found) return refuse(found.error());
  const auto& [map, weights] = *found;

  FitReport report;
  Calibration& calibration = report.calibration;
  calibration = prior_calibration(test_.head_key, test_.cloth_key, test_.towel, test_.head_length_metres,
                                  test_.pressure_pascal, samples_);
  calibration.tested = true;
  for (std::size_t row = 0; row < k_fitted_count; ++row) {
    const auto index = static_cast<Eigen::Index>(row);
    calibration.mode[row] = map.mode[row];
    for (std::size_t column = 0; column < k_fitted_count; ++column)
      calibration.factor[row][column] = map.factor(index, static_cast<Eigen::Index>(column));
    if (row >= k_unknown_count) continue;
    Vector of_own = Vector::Zero(physical);
    of_own[index] = row < k_head_unknown_count ? blended_score(row, 1, 0) : 1;
    if (row < k_head_unknown_count)
      of_own[static_cast<Eigen::Index>(row + k_unknown_count)] = blended_score(row, 0, 1);
    report.narrowing[row] = std::sqrt(of_own.dot(covariance * of_own));
  }
  calibration.weights = weights;
  calibration.effective_samples = effective_sample_size(calibration.weights);
  for (std::size_t r = 0; r < test_.readings.size(); ++r) {
    const FoldReading& reading = test_.readings[r];
    if (reading.kind != ReadingKind::coupon && !is_surface(reading) && unknowns_.cloth_of_reading[r] == 0)
      calibration.tested_depth_metres = std::max(calibration.tested_depth_metres, reading.depth_metres);
    report.standard_scores.push_back(score(r, mode->expected[r]));
  }
  report.expected_celsius = mode->expected;
  report.sample_scores = std::move(latest_scores_);
  return report;
}

}  // namespace

Result<FitReport> calibrate(const FoldTest& test, int samples) {
  return Fit(test, samples).run();
}

std::vector<double> weights_without(const FitReport& report, const std::vector<bool>& left_out) {
  std::vector<double> half_log(report.sample_scores.size());
  for (std::size_t i = 0; i < half_log.size(); ++i) {
    half_log[i] = numerics::log(std::max(report.calibration.weights[i], 1e-300));
    for (std::size_t r = 0; r < left_out.size(); ++r) {
      if (left_out[r]) half_log[i] += 0.5 * misfit(report.sample_scores[i][r]);
    }
  }
  return weights_of_logs(half_log);
}

}  // namespace lastegg::steam
