#include "treatments/steam/pace/pace.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numeric>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/pace/crossings.h"
#include "treatments/steam/pace/drawn_edge.h"

namespace lastegg::steam {
namespace {

constexpr double k_infinity = std::numeric_limits<double>::infinity();
constexpr double k_no_more_dose_celsius = 40;  // onset of mortality: below it no place gains dose

/// Extra water that a boiler carries over as droplets, as a share of its supply. Source: estimate (trade side
/// quotes 5-6 %).
constexpr double k_carried_over_share = 0.05;
/// Supply per area at the cloth is (supply / width) / pace; 0.65 g/s over 0.2 m. Source: steam of a 1.8 kW
/// boiler, derived.
constexpr double k_supply_per_width_kilograms_per_metre_second = 0.65e-3 / 0.2;

// Samples whose temperatures and water are shown at the planned pace and beside the curve; shares and margins
// take all.
constexpr std::size_t k_planned_samples = 128, k_inch_samples = 128, k_curve_samples = 16;
// A first look follows a slider: few samples are marched, and they speak for the others.
constexpr std::size_t k_first_look_learnt = 48, k_first_look_planned = 32, k_first_look_curve = 8;

// Harm is looked for while the surface is hot, no longer than this.
constexpr double k_harm_seconds = 10;
constexpr double k_least_observed_seconds = 1;

constexpr double k_kill_close_enough = 0.08;  // in log10 of the dose ratio: about 1.5 % of pace
constexpr double k_harm_close_enough = 0.03;  // about 3 % of the limit

std::vector<double> features_of(const Scores& scores, std::span<const double> stack_scores,
                                bool with_products) {
  std::vector<double> features(scores.begin(), scores.end());
  for (std::size_t row = 0; with_products && row < scores.size(); ++row) {
    for (std::size_t column = 0; column <= row; ++column) features.push_back(scores[row] * scores[column]);
  }
  features.insert(features.end(), stack_scores.begin(), stack_scores.end());
  return features;
}

// All samples of a problem, ready to be marched at any pace.
class Ensemble {
 public:
  /// Errors:  as run_pass()
  static Result<Ensemble> of(const PaceProblem& problem) {
    Ensemble ensemble(problem);
    auto ready = ReadyPasses::of(ensemble.batch_, ensemble.passes_);
    if (!ready) return refuse(ready.error());
    ensemble.ready_ = std::move(*ready);
    return ensemble;
  }

  std::size_t size() const { return passes_.size(); }

  /// Limits of every sample.
  Result<std::vector<SampleLimits>> limits(Marched marched) const {
    std::vector<SampleLimits> limits(size());
    const double fast_share = 1 - problem_.confidence, slow_share = problem_.confidence;
    const auto kill = crossings(
        marched, fast_share, k_kill_close_enough, batch_,
        [&](const LaneAnswer& answer, double) { return margin_of(answer); },
        [&](std::size_t i, const LaneAnswer& answer, double) {
          limits[i].egg_is_worst = answer.kill.egg <= answer.kill.mobile;
        });
    if (!kill) return refuse(kill.error());
    LaneBatch steam = batch_;
    steam.observe_seconds = batch_.surface_limit_celsius ? k_harm_seconds : k_least_observed_seconds;
    if (batch_.surface_limit_celsius) steam.stop_below_celsius = *batch_.surface_limit_celsius;
    const auto harm = crossings(
        marched, slow_share, k_harm_close_enough, steam,
        [&](const LaneAnswer& answer, double pace) { return std::max(soak(answer, pace), scorch(answer)); },
        [&](std::size_t i, const LaneAnswer& answer, double pace) {
          limits[i].soaks_first = soak(answer, pace) >= scorch(answer);
        });
    if (!harm) return refuse(harm.error());
    for (std::size_t i = 0; i < size(); ++i) {
      limits[i].fastest = std::min(pace_at((*kill)[i]), k_paces.back()) / hands_[i];
      limits[i].slowest = pace_at((*harm)[i]) / hands_[i];
      if ((*kill)[i].slope < 0) limits[i].slope = (*kill)[i].slope;
      limits[i].fastest_marched = (*kill)[i].evaluated;
      limits[i].slowest_marched = (*harm)[i].evaluated;
    }
    follow_the_marched(limits, &SampleLimits::fastest_marched, &SampleLimits::egg_is_worst);
    follow_the_marched(limits, &SampleLimits::slowest_marched, &SampleLimits::soaks_first);
    return limits;
  }

  static PassProblem reference_problem(const PaceProblem& problem, std::size_t i, double pace) {
    const Ensemble ensemble(problem);
    LanePass pass = ensemble.passes_[i];
    pass.pace_metres_per_second = pace;
    return lane_problem(ensemble.batch_, pass);
  }

  /// The first `count` samples at a planned pace, marched; shares and margins come from the limits of all.
  Result<AtPace> at(double planned, std::size_t count, LaneAccuracy accuracy,
                    const std::vector<SampleLimits>& limits) const {
    const auto answers = march_at(planned, std::min(count, size()), accuracy);
    if (!answers) return refuse(answers.error());
    AtPace out = seen_at(planned, *answers);
    std::vector<double> margins(size());
    for (std::size_t i = 0; i < size(); ++i) {
      margins[i] = margin_at(planned, i, limits[i]);
      const double weight = problem_.calibration.weights[i];
      // At the fastest pace that is looked at a sample without a limit counts as killed there.
      if (planned <= limits[i].fastest * (1 + 1e-12)) out.lethal_share += weight;
      if (planned >= limits[i].slowest)
        out.harmless_share += weight;
      else
        (limits[i].soaks_first ? out.soak_share : out.scorch_share) += weight;
    }
    set_margins(margins, out);
    return out;
  }

  /// All samples at a planned pace, marched, and so are shares and margins.
  Result<AtPace> all_at(double planned) const {
    const auto answers = march_at(planned, size(), accuracy_);
    if (!answers) return refuse(answers.error());
    AtPace out = seen_at(planned, *answers);
    std::vector<double> margins(size());
    for (std::size_t i = 0; i < size(); ++i) {
      const LaneAnswer& answer = (*answers)[i];
      margins[i] = margin_of(answer);
      const double weight = problem_.calibration.weights[i];
      const double soaks = soak(answer, planned * hands_[i]), scorches = scorch(answer);
      if (margins[i] >= 0) out.lethal_share += weight;
      if (std::max(soaks, scorches) <= 0)
        out.harmless_share += weight;
      else
        (soaks >= scorches ? out.soak_share : out.scorch_share) += weight;
    }
    set_margins(margins, out);
    return out;
  }

 private:
  explicit Ensemble(const PaceProblem& problem) : problem_(problem) {
    const Calibration& calibration = problem.calibration;
    const std::size_t samples = calibration.weights.size();
    accuracy_ = accuracy_for(static_cast<int>(samples));
    stacks_.resize(samples + 1);
    for (std::size_t i = 0; i < samples; ++i) {
      const auto index = static_cast<std::uint32_t>(i);
      const Scores scores = calibrated_scores(calibration, problem.cloth_key, static_cast<int>(i));
      const std::vector<double> of_stack = stack_scores(problem, index);
      passes_.push_back(pass_of(head_at(calibration, scores), stack_at(problem, of_stack), stacks_[i]));
      hands_.push_back(drawn_hand(index));
      features_.push_back(features_of(scores, of_stack, accuracy_ == LaneAccuracy::usual));
    }
    nominal_ = pass_of(median_head(calibration, problem.cloth_key), middle_stack(problem), stacks_.back());
    batch_.pressure_pascal = calibration.pressure_pascal;
    batch_.start_celsius = problem.start_celsius;
    batch_.start_activity = problem.start_activity;
    batch_.air = problem.air;
    batch_.passes = problem.passes;
    batch_.gap_seconds = problem.gap_seconds;
    batch_.stop_below_celsius = k_no_more_dose_celsius;
    // Harm takes the dew temperature at its possible worst: the boiling point.
    const double hotter =
        boiling_celsius(calibration.pressure_pascal) - cleanest_dew_celsius(calibration.pressure_pascal);
    if (problem.harm.surface_celsius) batch_.surface_limit_celsius = *problem.harm.surface_celsius - hotter;
  }

  using Value = std::function<double(const LaneAnswer&, double pace)>;
  using Note = std::function<void(std::size_t sample, const LaneAnswer&, double pace)>;

  LanePass pass_of(const DrawnHead& drawn, Stack stack, Stack& kept) const {
    double depth = problem_.target_depth_metres;
    if (problem_.calibration.towel == Towel::laid) {
      stack.insert(stack.begin(), laid_towel());
      depth += stack.front().thickness_metres;
    }
    kept = std::move(stack);
    return {drawn.head, drawn.vapour_efficiency, k_one_inch_per_second, &kept, depth};
  }

  // What limits a sample that was not marched is what limits most of those that were.
  void follow_the_marched(std::vector<SampleLimits>& limits, bool SampleLimits::* marched,
                          bool SampleLimits::* what) const {
    double balance = 0;
    for (std::size_t i = 0; i < limits.size(); ++i) {
      if (limits[i].*marched)
        balance += limits[i].*what ? problem_.calibration.weights[i] : -problem_.calibration.weights[i];
    }
    for (SampleLimits& sample : limits) {
      if (!(sample.*marched)) sample.*what = balance >= 0;
    }
  }

  static double pace_at(const Crossing& crossing) {
    return crossing.x == -k_infinity ? 0 : crossing.x == k_infinity ? k_infinity : numerics::exp(crossing.x);
  }

  // The first `count` samples at a planned pace, each with its own hand.
  Result<std::vector<LaneAnswer>> march_at(double planned, std::size_t count, LaneAccuracy accuracy) const {
    std::vector<std::size_t> which(count);
    std::iota(which.begin(), which.end(), 0);
    std::vector<double> paces(count);
    for (std::size_t i = 0; i < count; ++i) paces[i] = planned * hands_[i];
    return ready_.run(batch_, which, paces, accuracy);
  }

  // Temperature, water and kill of the samples that were marched, the first of all.
  AtPace seen_at(double planned, const std::vector<LaneAnswer>& answers) const {
    const std::size_t count = answers.size();
    std::vector<double> weights(problem_.calibration.weights.begin(),
                                problem_.calibration.weights.begin() + static_cast<std::ptrdiff_t>(count));
    const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
    for (double& weight : weights) weight /= sum;
    std::vector<double> target(count), water(count);
    AtPace out;
    out.pace_metres_per_second = planned;
    for (std::size_t i = 0; i < count; ++i) {
      const LaneAnswer& answer = answers[i];
      target[i] = answer.target_peak_celsius;
      water[i] = condensate(answer, planned * hands_[i]);
      out.kill_egg += weights[i] * bugs::expected_kill(bugs::Stage::egg, answer.kill.egg);
      out.kill_mobile += weights[i] * bugs::expected_kill(bugs::Stage::adult, answer.kill.mobile);
      out.kill_engorged += weights[i] * bugs::expected_kill(bugs::Stage::adult, answer.kill.engorged);
    }
    for (double* probability : {&out.kill_egg, &out.kill_mobile, &out.kill_engorged})
      *probability = bugs::printed_probability(*probability);
    const auto spread = [&](const std::vector<double>& v) {
      const auto q = [&](double p) { return weighted_quantile(v, weights, p); };
      return Spread{q(0.05), q(0.25), q(0.5), q(0.75), q(0.95)};
    };
    out.target_celsius = spread(target);
    out.condensate_kilograms_per_m2 = spread(water);
    return out;
  }

  void set_margins(const std::vector<double>& margins, AtPace& out) const {
    out.lethal_margin = weighted_quantile(margins, problem_.calibration.weights, 1 - problem_.confidence);
    out.short_margin = weighted_quantile(margins, problem_.calibration.weights, problem_.confidence);
  }

  static double margin_of(const LaneAnswer& answer) {
    return answer.kill.worst() - numerics::log10(bugs::required_ratio());
  }

  double condensate(const LaneAnswer& answer, double pace) const {
    return answer.water_gain_kilograms_per_m2 +
           problem_.passes * k_carried_over_share * k_supply_per_width_kilograms_per_metre_second / pace;
  }
  // log10(R/2) of a sample at a planned pace, by the slope at its fastest: exact where a verdict is near.
  double margin_at(double planned, std::size_t i, const SampleLimits& sample) const {
    if (sample.fastest <= 0) return k_no_kill;
    if (sample.fastest * hands_[i] >= k_paces.back() && planned * hands_[i] <= k_paces.back())
      return -k_no_kill;
    return sample.slope * numerics::log(planned / sample.fastest);
  }

  // Above zero: too wet. Above zero: the surface passes what it bears.
  double soak(const LaneAnswer& answer, double pace) const {
    return numerics::log(std::max(1e-6, condensate(answer, pace)) / problem_.harm.wetting_kilograms_per_m2);
  }
  double scorch(const LaneAnswer& answer) const {
    if (!batch_.surface_limit_celsius) return -k_infinity;
    return problem_.harm.seconds_allowed_above > 0
               ? answer.surface_seconds_above / problem_.harm.seconds_allowed_above - 1
               : (answer.surface_peak_celsius - *batch_.surface_limit_celsius) / 10;
  }

  // Where `value` crosses zero in every sample, in ln(pace), or near its quantile in planned pace; the median
  // of everything tells where to begin.
  Result<std::vector<Crossing>> crossings(Marched marched, double share, double close_enough,
                                          const LaneBatch& batch, const Value& value,
                                          const Note& note) const {
    CrossingSearch search;
    search.low = numerics::log(k_paces.front());
    search.high = numerics::log(k_paces.back());
    std::vector<LanePass> at_paces(k_paces.size(), nominal_);
    std::array<double, k_paces.size()> x{}, y{};
    for (std::size_t k = 0; k < k_paces.size(); ++k) at_paces[k].pace_metres_per_second = k_paces[k];
    const auto answers = run_passes(batch, at_paces, LaneAccuracy::preview);
    if (!answers) return refuse(answers.error());
    for (std::size_t k = 0; k < k_paces.size(); ++k) {
      x[k] = numerics::log(k_paces[k]);
      y[k] = value((*answers)[k], k_paces[k]);
    }
    std::size_t k = 1;
    while (k + 1 < k_paces.size() && y[k] > 0) ++k;
    const double rise = (y[k] - y[k - 1]) / (x[k] - x[k - 1]);
    search.start_slope = std::min(rise, -0.1);
    search.start = std::clamp(x[k - 1] - y[k - 1] / search.start_slope, search.low, search.high);
    search.close_enough = close_enough;
    if (accuracy_ == LaneAccuracy::preview) {
      search.learnt = k_first_look_learnt;
      search.closes_in = false;
    }
    const EvaluateMany march = [&](std::span<const std::size_t> which, std::span<const double> xs,
                                   Effort effort) -> Result<std::vector<double>> {
      std::vector<double> paces;
      paces.reserve(which.size());
      for (const double at : xs) paces.push_back(numerics::exp(at));
      const auto marched_passes =
          ready_.run(batch, which, paces, effort == Effort::rough ? LaneAccuracy::preview : accuracy_);
      if (!marched_passes) return refuse(marched_passes.error());
      std::vector<double> values(which.size());
      for (std::size_t i = 0; i < which.size(); ++i) {
        values[i] = value((*marched_passes)[i], paces[i]);
        note(which[i], (*marched_passes)[i], paces[i]);
      }
      return values;
    };
    if (marched == Marched::all) return find_crossings(features_, search, march);
    std::vector<double> offsets(size());
    for (std::size_t i = 0; i < size(); ++i) offsets[i] = numerics::log(hands_[i]);
    return find_crossings_near({share, problem_.calibration.weights, offsets}, features_, search, march);
  }

  const PaceProblem& problem_;
  std::vector<Stack> stacks_;  // of the samples, then the middle one; passes point into it
  std::vector<LanePass> passes_;
  ReadyPasses ready_;
  std::vector<double> hands_;
  std::vector<std::vector<double>> features_;
  LanePass nominal_;
  LaneBatch batch_;
  LaneAccuracy accuracy_;
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

Result<std::vector<SampleLimits>> sample_limits(const PaceProblem& problem, Marched marched) {
  const auto ensemble = Ensemble::of(problem);
  if (!ensemble) return refuse(ensemble.error());
  return ensemble->limits(marched);
}

PassProblem sample_pass(const PaceProblem& problem, int i, double pace_metres_per_second) {
  return Ensemble::reference_problem(problem, static_cast<std::size_t>(i), pace_metres_per_second);
}

Result<AtPace> look_at_pace(const PaceProblem& problem, double planned_metres_per_second) {
  const auto ensemble = Ensemble::of(problem);
  if (!ensemble) return refuse(ensemble.error());
  return ensemble->all_at(planned_metres_per_second);
}

Result<PaceReport> find_pace(const PaceProblem& problem) {
  const auto made = Ensemble::of(problem);
  if (!made) return refuse(made.error());
  const Ensemble& ensemble = *made;
  const auto limits = ensemble.limits(Marched::those_near_the_window);
  if (!limits) return refuse(limits.error());
  const std::vector<double>& weights = problem.calibration.weights;
  PaceReport report;
  report.samples = static_cast<int>(weights.size());
  report.effective_samples = problem.calibration.effective_samples;

  std::vector<double> fastest, slowest;
  for (const SampleLimits& sample : *limits) {
    fastest.push_back(sample.fastest);
    slowest.push_back(std::max(sample.slowest, k_slowest_pace));
  }
  report.fastest_metres_per_second = weighted_quantile(fastest, weights, 1 - problem.confidence);
  report.slowest_metres_per_second = weighted_quantile(slowest, weights, problem.confidence);

  // What limits is what most of the weight that lies at or beyond a limit has.
  double soak = 0, scorch = 0, egg = 0, mobile = 0;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const SampleLimits& sample = (*limits)[i];
    if (slowest[i] >= report.slowest_metres_per_second) (sample.soaks_first ? soak : scorch) += weights[i];
    if (fastest[i] <= report.fastest_metres_per_second) (sample.egg_is_worst ? egg : mobile) += weights[i];
  }
  report.slow_limit = report.slowest_metres_per_second <= k_slowest_pace ? SlowLimit::steady_hand
                      : scorch > soak                                    ? SlowLimit::scorch
                                                                         : SlowLimit::soak;
  report.fast_limit = egg >= mobile ? FastLimit::egg : FastLimit::mobile;

  const bool first_look = accuracy_for(report.samples) == LaneAccuracy::preview;
  for (const double pace : k_paces) {
    const std::size_t count = first_look                      ? k_first_look_curve
                              : pace == k_one_inch_per_second ? k_inch_samples
                                                              : k_curve_samples;
    auto at = ensemble.at(pace, count, LaneAccuracy::preview, *limits);
    if (!at) return refuse(at.error());
    report.curve.push_back(*at);
  }
  std::optional<double> planned;
  if (report.has_window())
    planned = recommended_pace(report.slowest_metres_per_second, report.fastest_metres_per_second);
  else if (report.slowest_metres_per_second <= k_paces.back())
    planned = report.slowest_metres_per_second;
  if (planned) {
    auto at = ensemble.at(*planned, first_look ? k_first_look_planned : k_planned_samples,
                          accuracy_for(report.samples), *limits);
    if (!at) return refuse(at.error());
    report.planned = *at;
  }
  report.limits = *limits;
  return report;
}

}  // namespace lastegg::steam
