#include "treatments/steam/pace/what_matters.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/pace/drawn_edge.h"

namespace lastegg::steam {
namespace {

constexpr int k_powers = 3;  // of a score in a conditional mean
constexpr double k_hotter_kelvin = 2, k_longer = 1.5;
constexpr double k_most_conducting = 5;  // W/mK, the most that a pass accepts
constexpr std::size_t k_base_paces = 16, k_lever_paces = 8;
constexpr double k_most_gain = 1.4;    // ln of it: more than any lever brings
constexpr double k_below_base = 0.05;  // ln: where a lever that brings nothing is still bracketed
constexpr double k_fastest_tried = 4;  // times the end of the usual paces: levers may carry beyond it

// Share of the weighted variance of y that a cubic in z explains.
double explained(const std::vector<double>& z, const std::vector<double>& y,
                 const std::vector<double>& weights) {
  double mean = 0, effective = 0;
  for (std::size_t i = 0; i < y.size(); ++i) {
    mean += weights[i] * y[i];
    effective += weights[i] * weights[i];
  }
  Eigen::Matrix4d normal = Eigen::Matrix4d::Zero();
  Eigen::Vector4d right = Eigen::Vector4d::Zero();
  double total = 0;
  for (std::size_t i = 0; i < y.size(); ++i) {
    const Eigen::Vector4d powers(1, z[i], z[i] * z[i], z[i] * z[i] * z[i]);
    normal += weights[i] * powers * powers.transpose();
    right += weights[i] * (y[i] - mean) * powers;
    total += weights[i] * (y[i] - mean) * (y[i] - mean);
  }
  if (!(total > 0)) return 0;
  const double share = right.dot(normal.ldlt().solve(right)) / total;
  const double noise = k_powers * effective;  // what a cubic explains of y that does not depend on z
  return std::clamp((share - noise) / (1 - noise), 0.0, 1.0);
}

double fastest_or_end(const SampleLimits& sample) {
  return numerics::log(std::clamp(sample.fastest, k_paces.front() / 2, k_paces.back()));
}

// A variant of the middle case.
struct Middle {
  DrawnHead drawn;
  Stack stack;
  double depth_metres = 0;
  int passes = 1;
};

Middle middle_of(const PaceProblem& problem) {
  Middle middle{median_head(problem.calibration, problem.cloth_key), middle_stack(problem),
                problem.target_depth_metres, problem.passes};
  if (problem.calibration.towel == Towel::laid) {
    middle.stack.insert(middle.stack.begin(), laid_towel());
    middle.depth_metres += middle.stack.front().thickness_metres;
  }
  return middle;
}

Middle with(Middle middle, Lever lever, double hottest_dew_celsius) {
  Head& head = middle.drawn.head;
  switch (lever) {
    case Lever::longer_head:
      head.length_metres *= k_longer;
      break;
    case Lever::second_pass:
      ++middle.passes;
      break;
    case Lever::hotter_steam:
      head.dew_celsius =
          std::max(head.dew_celsius, std::min(head.dew_celsius + k_hotter_kelvin, hottest_dew_celsius));
      break;
    case Lever::better_exchange:
      head.film_watts_per_m2_kelvin *= 2;
      head.flux_cap_watts_per_m2 *= 2;
      break;
    case Lever::opener_cloth:
      middle.drawn.vapour_efficiency =
          std::max(middle.drawn.vapour_efficiency, std::min(1.0, 2 * middle.drawn.vapour_efficiency));
      break;
    case Lever::stronger_push:
      head.forced_gas_metres_per_second *= 2;
      break;
    case Lever::conducting_layers:
      for (Layer& layer : middle.stack) {
        double& k = layer.conductivity_watts_per_metre_kelvin;
        k = std::max(k, std::min(2 * k, k_most_conducting));
      }
      break;
  }
  return middle;
}

// ln of the fastest pace that kills, looked for between two of them at `count` places; minus infinity: none.
Result<double> log_fastest(const PaceProblem& problem, const Middle& middle, double low, double high,
                           std::size_t count) {
  LaneBatch batch;
  batch.pressure_pascal = problem.calibration.pressure_pascal;
  batch.start_celsius = problem.start_celsius;
  batch.start_activity = problem.start_activity;
  batch.air = problem.air;
  batch.passes = middle.passes;
  batch.gap_seconds = problem.gap_seconds;
  batch.stop_below_celsius = 40;  // onset of mortality
  std::vector<LanePass> passes;
  std::vector<double> x(count);
  for (std::size_t k = 0; k < count; ++k) {
    x[k] = low + (high - low) * static_cast<double>(k) / static_cast<double>(count - 1);
    passes.push_back({middle.drawn.head, middle.drawn.vapour_efficiency, numerics::exp(x[k]), &middle.stack,
                      middle.depth_metres});
  }
  const auto answers = run_passes(batch, passes, LaneAccuracy::preview);
  if (!answers) return refuse(answers.error());
  const auto value = [&](std::size_t k) {
    return (*answers)[k].kill.worst() - numerics::log10(bugs::required_ratio());
  };
  std::size_t k = 0;
  while (k < passes.size() && value(k) > 0) ++k;
  if (k == 0) return -HUGE_VAL;
  if (k == passes.size()) return x.back();
  return x[k - 1] + (x[k] - x[k - 1]) * value(k - 1) / (value(k - 1) - value(k));
}

}  // namespace

std::vector<InfluenceShare> influences(const PaceProblem& problem, const std::vector<SampleLimits>& limits) {
  const std::size_t n = limits.size();
  const std::vector<double>& weights = problem.calibration.weights;
  std::vector<double> y(n), hand(n);
  std::array<std::vector<double>, k_unknown_count> head;
  for (auto& scores : head) scores.resize(n);
  std::vector<std::vector<double>> layers;
  for (std::size_t i = 0; i < n; ++i) {
    const auto index = static_cast<std::uint32_t>(i);
    y[i] = fastest_or_end(limits[i]);
    hand[i] = numerics::log(drawn_hand(index));
    const Scores scores = calibrated_scores(problem.calibration, problem.cloth_key, static_cast<int>(i));
    for (std::size_t k = 0; k < k_unknown_count; ++k) head[k][i] = scores[k];
    const std::vector<double> stack = stack_scores(problem, index);
    layers.resize(stack.size());
    for (std::size_t k = 0; k < stack.size(); ++k) layers[k].push_back(stack[k]);
  }
  std::vector<InfluenceShare> shares;
  if (!problem.calibration.known_head) {
    constexpr std::array<Influence, k_unknown_count> of_unknown{
        Influence::steam_temperature, Influence::exchange, Influence::cloth_vapour, Influence::forced_flow};
    for (std::size_t k = 0; k < k_unknown_count; ++k)
      shares.push_back({of_unknown[k], explained(head[k], y, weights)});
  }
  double of_layers = 0;
  for (const std::vector<double>& scores : layers) of_layers += explained(scores, y, weights);
  shares.push_back({Influence::layers, std::min(1.0, of_layers)});
  shares.push_back({Influence::hand, explained(hand, y, weights)});
  std::stable_sort(shares.begin(), shares.end(),
                   [](const InfluenceShare& a, const InfluenceShare& b) { return a.share > b.share; });
  return shares;
}

Result<std::vector<LeverGain>> lever_gains(const PaceProblem& problem) {
  const Middle middle = middle_of(problem);
  const double end = numerics::log(k_fastest_tried * k_paces.back());
  const auto base = log_fastest(problem, middle, numerics::log(k_paces.front()), end, k_base_paces);
  if (!base) return refuse(base.error());
  std::vector<LeverGain> gains;
  if (*base == -HUGE_VAL) return gains;
  // Around the base, and the base anew on the same places, so that what changes nothing gives 1.
  const double low = *base - k_below_base, high = std::min(end, *base + k_most_gain);
  const auto near = log_fastest(problem, middle, low, high, k_lever_paces);
  if (!near) return refuse(near.error());
  const double hottest = cleanest_dew_celsius(problem.calibration.pressure_pascal);
  for (const Lever lever :
       {Lever::longer_head, Lever::second_pass, Lever::hotter_steam, Lever::better_exchange,
        Lever::opener_cloth, Lever::stronger_push, Lever::conducting_layers}) {
    const auto changed = log_fastest(problem, with(middle, lever, hottest), low, high, k_lever_paces);
    if (!changed) return refuse(changed.error());
    gains.push_back({lever, numerics::exp(*changed - *near)});
  }
  return gains;
}

Lever bottleneck(const std::vector<LeverGain>& gains) {
  Lever lever = Lever::better_exchange;
  double most = 0;
  for (const LeverGain& gain : gains) {
    const bool transport = gain.lever == Lever::better_exchange || gain.lever == Lever::opener_cloth ||
                           gain.lever == Lever::stronger_push || gain.lever == Lever::conducting_layers;
    if (transport && gain.factor > most) {
      most = gain.factor;
      lever = gain.lever;
    }
  }
  return lever;
}

}  // namespace lastegg::steam
