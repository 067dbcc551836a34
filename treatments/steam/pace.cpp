#include "treatments/steam/pace.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "physics/numerics/elementary.h"
#include "physics/numerics/monotone_curve.h"
#include "physics/uncertainty/sobol.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/lane_pass.h"

namespace lastegg::steam {
namespace {

constexpr double k_infinity = std::numeric_limits<double>::infinity();
constexpr double k_no_more_dose_celsius = 40;  // onset of mortality: below it no place gains dose
constexpr std::size_t k_pace_count = k_paces.size();

/// Extra water that a boiler carries over as droplets, as a share of its supply. Source: estimate (trade side
/// quotes 5-6 %).
constexpr double k_carried_over_share = 0.05;
/// Supply per area at the cloth is (supply / width) / pace; 0.65 g/s over 0.2 m. Source: steam of a 1.8 kW
/// boiler, derived.
constexpr double k_supply_per_width_kilograms_per_metre_second = 0.65e-3 / 0.2;

using Row = std::array<double, k_pace_count>;

/// One sample at all paces.
struct SampleCurve {
  Row lethal{};                     // log10(R / 2), worst of the stages in the verdict
  Row egg{}, mobile{}, engorged{};  // log10 R
  Row target{};                     // peak at the target, celsius
  Row condensate{};                 // kg/m2
  Row scorch{};                     // above zero: the surface passes its limit
  double hand = 1;                  // actual over planned pace
};

Row log_paces() {
  Row x{};
  for (std::size_t k = 0; k < k_pace_count; ++k) x[k] = numerics::log(k_paces[k]);
  return x;
}

double read(const Row& x, const Row& y, double pace) {
  return numerics::monotone_curve(x, y, numerics::log(pace));
}

// The pace where a falling row crosses zero: bisection on its monotone curve. Above zero everywhere:
// infinity; below: 0.
double crossing(const Row& x, const Row& y) {
  if (y.back() > 0) return k_infinity;
  if (y.front() <= 0) return 0;
  double low = x.front(), high = x.back();
  for (int i = 0; i < 48; ++i) {
    const double middle = 0.5 * (low + high);
    (numerics::monotone_curve(x, y, middle) > 0 ? low : high) = middle;
  }
  return numerics::exp(0.5 * (low + high));
}

Stack drawn_stack(const PaceProblem& problem, std::uint32_t i) {
  Stack stack;
  for (std::size_t k = 0; k < problem.stack.size(); ++k) {
    const UncertainLayer& uncertain = problem.stack[k];
    Layer layer = uncertain.layer;
    const std::string key = problem.stack_key + "/" + std::to_string(k);
    const auto scatter = [&](unsigned dimension, double spread) {
      return spread > 0 ? numerics::exp(spread * SobolStream(key, dimension).normal(i)) : 1.0;
    };
    layer.thickness_metres *= scatter(0, uncertain.thickness_spread);
    layer.conductivity_watts_per_metre_kelvin *= scatter(1, uncertain.conductivity_spread);
    layer.heat_capacity_joules_per_m3_kelvin *= scatter(2, uncertain.capacity_spread);
    stack.push_back(layer);
  }
  // A thin draw must not lose the target: the last layer makes up for it.
  const double missing = problem.target_depth_metres - thickness_metres(stack);
  if (missing >= 0) stack.back().thickness_metres += missing + 0.1e-3;
  return stack;
}

// Every sample at every pace.
Result<std::vector<SampleCurve>> march_samples(const PaceProblem& problem) {
  const Calibration& calibration = problem.calibration;
  const std::size_t samples = calibration.weights.size();
  std::vector<SampleCurve> curves(samples);
  std::vector<Stack> stacks(samples);
  std::vector<LanePass> passes(samples);
  for (std::size_t i = 0; i < samples; ++i) {
    const DrawnHead drawn = drawn_head(calibration, problem.cloth_key, static_cast<int>(i));
    stacks[i] = drawn_stack(problem, static_cast<std::uint32_t>(i));
    double depth = problem.target_depth_metres;
    if (calibration.towel == Towel::laid) {
      stacks[i].insert(stacks[i].begin(), laid_towel());
      depth += stacks[i].front().thickness_metres;
    }
    passes[i] = {drawn.head, drawn.vapour_efficiency, 0, &stacks[i], depth};
    curves[i].hand =
        numerics::exp(k_hand_spread * SobolStream("hand", 0).normal(static_cast<std::uint32_t>(i)));
  }
  LaneBatch batch;
  batch.pressure_pascal = calibration.pressure_pascal;
  batch.start_celsius = problem.start_celsius;
  batch.start_activity = problem.start_activity;
  batch.air = problem.air;
  batch.passes = problem.passes;
  batch.stop_below_celsius = k_no_more_dose_celsius;
  // Harm takes the dew temperature at its possible worst: the boiling point.
  const double hotter =
      boiling_celsius(calibration.pressure_pascal) - cleanest_dew_celsius(calibration.pressure_pascal);
  if (problem.harm.surface_celsius) batch.surface_limit_celsius = *problem.harm.surface_celsius - hotter;
  for (std::size_t k = 0; k < k_pace_count; ++k) {
    for (LanePass& pass : passes) pass.pace_metres_per_second = k_paces[k];
    const auto answers = run_passes(batch, passes);
    if (!answers) return refuse(answers.error());
    for (std::size_t i = 0; i < samples; ++i) {
      const LaneAnswer& answer = (*answers)[i];
      SampleCurve& curve = curves[i];
      curve.egg[k] = answer.kill.egg;
      curve.mobile[k] = answer.kill.mobile;
      curve.engorged[k] = answer.kill.engorged;
      curve.lethal[k] = answer.kill.worst() - numerics::log10(bugs::required_ratio());
      curve.target[k] = answer.target_peak_celsius;
      curve.condensate[k] =
          answer.water_gain_kilograms_per_m2 +
          problem.passes * k_carried_over_share * k_supply_per_width_kilograms_per_metre_second / k_paces[k];
      curve.scorch[k] = -1;
      if (batch.surface_limit_celsius) {
        curve.scorch[k] = problem.harm.seconds_allowed_above > 0
                              ? answer.surface_seconds_above / problem.harm.seconds_allowed_above - 1
                              : (answer.surface_peak_celsius - *batch.surface_limit_celsius) / 10;
      }
    }
  }
  return curves;
}

struct Ensemble {
  const PaceProblem& problem;
  std::vector<SampleCurve> curves;
  Row x = log_paces();

  std::size_t size() const { return curves.size(); }
  template <class Value>
  double mean(Value value) const {
    double sum = 0;
    for (std::size_t i = 0; i < size(); ++i) sum += problem.calibration.weights[i] * value(curves[i]);
    return sum;
  }
  template <class Value>
  std::vector<double> values(Value value) const {
    std::vector<double> out(size());
    for (std::size_t i = 0; i < size(); ++i) out[i] = value(curves[i]);
    return out;
  }
  double quantile(const std::vector<double>& values_of_samples, double p) const {
    return weighted_quantile(values_of_samples, problem.calibration.weights, p);
  }
  Spread spread(const std::vector<double>& v) const {
    return {quantile(v, 0.05), quantile(v, 0.25), quantile(v, 0.5), quantile(v, 0.75), quantile(v, 0.95)};
  }

  AtPace at(double planned) const {
    const auto pick = [&](Row SampleCurve::* row) {
      return [this, row, planned](const SampleCurve& c) { return read(x, c.*row, planned * c.hand); };
    };
    AtPace out;
    out.pace_metres_per_second = planned;
    const std::vector<double> lethal = values(pick(&SampleCurve::lethal));
    out.lethal_margin = quantile(lethal, 1 - problem.confidence);
    out.short_margin = quantile(lethal, problem.confidence);
    out.lethal_share =
        mean([&, of = pick(&SampleCurve::lethal)](const SampleCurve& c) { return of(c) >= 0 ? 1.0 : 0.0; });
    out.soak_share = mean([&, of = pick(&SampleCurve::condensate)](const SampleCurve& c) {
      return of(c) > problem.harm.wetting_kilograms_per_m2 ? 1.0 : 0.0;
    });
    out.scorch_share =
        mean([&, of = pick(&SampleCurve::scorch)](const SampleCurve& c) { return of(c) > 0 ? 1.0 : 0.0; });
    out.harmless_share = mean(
        [&, wet = pick(&SampleCurve::condensate), hot = pick(&SampleCurve::scorch)](const SampleCurve& c) {
          return wet(c) <= problem.harm.wetting_kilograms_per_m2 && hot(c) <= 0 ? 1.0 : 0.0;
        });
    out.target_celsius = spread(values(pick(&SampleCurve::target)));
    out.condensate_kilograms_per_m2 = spread(values(pick(&SampleCurve::condensate)));
    out.kill_egg = bugs::printed_probability(mean([&, of = pick(&SampleCurve::egg)](const SampleCurve& c) {
      return bugs::expected_kill(bugs::Stage::egg, of(c));
    }));
    out.kill_mobile =
        bugs::printed_probability(mean([&, of = pick(&SampleCurve::mobile)](const SampleCurve& c) {
          return bugs::expected_kill(bugs::Stage::adult, of(c));
        }));
    out.kill_engorged =
        bugs::printed_probability(mean([&, of = pick(&SampleCurve::engorged)](const SampleCurve& c) {
          return bugs::expected_kill(bugs::Stage::adult, of(c));
        }));
    return out;
  }
};

}  // namespace

double recommended_pace(double slowest, double fastest) {
  // A tenth below the fastest leaves the verdict clear of its limit; a narrow window takes its middle.
  const double wanted = std::max(0.9 * fastest, std::sqrt(slowest * fastest));
  for (const double step : {0.001, 0.0005, 0.0001}) {
    const double rounded = std::floor(wanted / step + 1e-9) * step;
    if (rounded > slowest && rounded > 0.9 * wanted) return rounded;
  }
  return wanted;
}

Result<PaceReport> find_pace(const PaceProblem& problem) {
  auto curves = march_samples(problem);
  if (!curves) return refuse(curves.error());
  Ensemble ensemble{problem, std::move(*curves)};
  const int samples = static_cast<int>(problem.calibration.weights.size());
  const Row& x = ensemble.x;
  PaceReport report;
  report.samples = samples;
  report.effective_samples = problem.calibration.effective_samples;
  for (const double pace : k_paces) report.curve.push_back(ensemble.at(pace));

  const auto soak_free = [&](const SampleCurve& c) {
    Row over = c.condensate;
    for (double& value : over) value -= problem.harm.wetting_kilograms_per_m2;
    return crossing(x, over) / c.hand;
  };
  const auto scorch_free = [&](const SampleCurve& c) { return crossing(x, c.scorch) / c.hand; };
  const std::vector<double> fastest = ensemble.values(
      [&](const SampleCurve& c) { return std::min(crossing(x, c.lethal), k_paces.back()) / c.hand; });
  const std::vector<double> soak = ensemble.values(soak_free);
  const std::vector<double> scorch = ensemble.values(scorch_free);
  std::vector<double> slowest(fastest.size());
  for (std::size_t i = 0; i < slowest.size(); ++i)
    slowest[i] = std::max({soak[i], scorch[i], k_slowest_pace});
  report.fastest_metres_per_second = ensemble.quantile(fastest, 1 - problem.confidence);
  report.slowest_metres_per_second = ensemble.quantile(slowest, problem.confidence);

  const double soak_limit = ensemble.quantile(soak, problem.confidence);
  const double scorch_limit = ensemble.quantile(scorch, problem.confidence);
  report.slow_limit = std::max(soak_limit, scorch_limit) <= k_slowest_pace ? SlowLimit::steady_hand
                      : scorch_limit > soak_limit                          ? SlowLimit::scorch
                                                                           : SlowLimit::soak;
  const double at_fastest = std::max(report.fastest_metres_per_second, k_slowest_pace);
  const double egg_worst = ensemble.mean([&](const SampleCurve& c) {
    return read(x, c.egg, at_fastest * c.hand) <= read(x, c.mobile, at_fastest * c.hand) ? 1.0 : 0.0;
  });
  report.fast_limit = egg_worst >= 0.5 ? FastLimit::egg : FastLimit::mobile;
  if (report.has_window()) {
    report.planned =
        ensemble.at(recommended_pace(report.slowest_metres_per_second, report.fastest_metres_per_second));
  } else if (report.slowest_metres_per_second <= k_paces.back()) {
    report.planned = ensemble.at(report.slowest_metres_per_second);
  }
  return report;
}

}  // namespace lastegg::steam
