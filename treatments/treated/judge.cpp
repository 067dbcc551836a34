#include "treatments/treated/judge.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/pace/drawn_edge.h"

namespace lastegg::treated {
namespace {

constexpr double k_infinity = std::numeric_limits<double>::infinity();
constexpr double k_gap_step = 0.1;  // of ln(pause)
constexpr std::size_t k_most_marches = 12;
constexpr std::size_t k_most_together = 3;
constexpr std::size_t k_depth_samples = 128;  // of the table of depths, a preview's ensemble
constexpr double k_depths_of_target[] = {0.4, 0.7, 1, 1.3, 1.8, 2.5};
constexpr double k_shallowest_metres = 0.0002;

double kill_pace(const PlaceVisit& visit) {
  return numerics::exp(k_pace_step * visit.kill_step);
}

// Slower than any hand is steady is not looked at: it earns what the slowest steady hand earns.
double looked_at(double pace) {
  return std::max(pace, steam::k_paces.front());
}

}  // namespace

Result<TreatedStretch> Judge::stretch(const std::vector<PlaceVisit>& visits) {
  TreatedStretch out;
  bool unclear = false, unknown_head = false;
  std::vector<PlaceVisit> earning;
  for (const PlaceVisit& visit : visits) {
    if (!visit.problem)
      unknown_head = true;
    else if (!visit.earns)
      unclear = true;
    else
      earning.push_back(visit);
  }
  out.visits = static_cast<int>(earning.size());
  out.slowest = k_infinity;
  for (const PlaceVisit& visit : earning) {
    out.slowest = std::min(out.slowest, kill_pace(visit));
    out.fastest = std::max(out.fastest, kill_pace(visit));
  }
  if (earning.empty()) out.slowest = 0;
  const auto judged = judge_visits(earning);
  if (!judged) return refuse(judged.error());
  out.lethal_margin = judged->margins.lethal;
  out.short_margin = judged->margins.shortfall;
  out.counted_together = judged->together;
  const double near = bugs::kill_rules().near_limit;
  if (out.lethal_margin > near) {
    out.verdict = bugs::Verdict::lethal;
    out.cause = Cause::none;
  } else if (earning.empty()) {
    out.cause = unclear ? Cause::unclear_record : unknown_head ? Cause::no_model : Cause::not_passed;
    // Nobody was there: that is short. Where somebody was, nothing is known.
    if (out.cause == Cause::not_passed) out.verdict = bugs::Verdict::too_short;
  } else if (out.short_margin < -near && !unclear && !unknown_head) {
    out.verdict = bugs::Verdict::too_short;
    out.cause = Cause::too_fast;
  } else {
    out.cause = unclear || unknown_head            ? Cause::unclear_record
                : judged->single_shortfall < -near ? Cause::too_fast
                                                   : Cause::near_limit;
  }
  if (out.verdict == bugs::Verdict::lethal) {
    if (auto later = lethal_after_bug(visits); !later) {
      return refuse(later.error());
    } else if (!*later) {
      out.verdict = bugs::Verdict::not_proven;
      out.cause = Cause::saw_live_bug;
    }
  }
  const auto depth = depth_reached(earning, out.lethal_margin > near);
  if (!depth) return refuse(depth.error());
  out.depth_reached_metres = *depth;
  const auto harm = harm_of(visits);
  if (!harm) return refuse(harm.error());
  out.harm = *harm;
  return out;
}

Result<void> Judge::add_probabilities(const std::vector<PlaceVisit>& visits, TreatedReport& report) {
  const PlaceVisit* best = nullptr;
  for (const PlaceVisit& visit : visits) {
    if (visit.problem && visit.earns && (best == nullptr || visit.kill_step < best->kill_step)) best = &visit;
  }
  if (best == nullptr) return {};
  const steam::PaceProblem& problem = edge_.problems[*best->problem];
  const auto answers = samples(*best->problem).run(looked_at(kill_pace(*best)), 1, 1);
  if (!answers) return refuse(answers.error());
  double egg = 0, mobile = 0, engorged = 0;
  for (std::size_t i = 0; i < answers->size(); ++i) {
    const double weight = problem.calibration.weights[i];
    egg += weight * bugs::expected_kill(bugs::Stage::egg, (*answers)[i].kill.egg);
    mobile += weight * bugs::expected_kill(bugs::Stage::adult, (*answers)[i].kill.mobile);
    engorged += weight * bugs::expected_kill(bugs::Stage::adult, (*answers)[i].kill.engorged);
  }
  report.kill_egg = bugs::printed_probability(egg);
  report.kill_mobile = bugs::printed_probability(mobile);
  report.kill_engorged = bugs::printed_probability(engorged);
  return {};
}

const Samples& Judge::samples(std::size_t problem) {
  const auto found = samples_.find(problem);
  return found != samples_.end() ? found->second
                                 : samples_.try_emplace(problem, edge_.problems[problem]).first->second;
}

Result<const std::vector<steam::SampleLimits>*> Judge::limits(std::size_t problem) {
  if (limits_[problem].empty()) {
    auto found = steam::sample_limits(edge_.problems[problem], steam::Marched::all);
    if (!found) return refuse(found.error());
    limits_[problem] = std::move(*found);
  }
  return &limits_[problem];
}

Margins Judge::margins_of(std::vector<double> lower, const std::vector<double>& upper,
                          std::size_t problem) const {
  const steam::PaceProblem& p = edge_.problems[problem];
  return {weighted_quantile(lower, p.calibration.weights, 1 - p.confidence),
          weighted_quantile(upper, p.calibration.weights, p.confidence)};
}

// One visit: log10(R/2) of each sample by the slope at its fastest pace, exact where a verdict is near.
Result<Margins> Judge::single(std::size_t problem, int step) {
  const auto known = singles_.find({problem, step});
  if (known != singles_.end()) return known->second;
  const auto found = limits(problem);
  if (!found) return refuse(found.error());
  const double pace = looked_at(numerics::exp(k_pace_step * step));
  std::vector<double> lower, upper;
  for (std::size_t i = 0; i < (*found)->size(); ++i) {
    const steam::SampleLimits& sample = (**found)[i];
    const double margin = sample.fastest > 0
                              ? std::clamp(sample.slope * numerics::log(pace / sample.fastest), -9.0, 9.0)
                              : -9.0;
    lower.push_back(margin);
    // A sample that still killed at the fastest pace looked at may do so faster still.
    const bool open_end = sample.fastest * steam::drawn_hand(static_cast<std::uint32_t>(i)) >=
                          steam::k_paces.back() * (1 - 1e-9);
    upper.push_back(margin < 0 && open_end ? 9.0 : margin);
  }
  return singles_[{problem, step}] = margins_of(std::move(lower), upper, problem);
}

// Several visits, marched.
Result<Margins> Judge::together(std::size_t problem, int count, int step, int gap_step) {
  const auto key = std::tuple(problem, count, step, gap_step);
  if (const auto known = repeats_.find(key); known != repeats_.end()) return known->second;
  if (repeats_.size() >= k_most_marches) return Margins{};
  const double pace = looked_at(numerics::exp(k_pace_step * step));
  const auto all = samples(problem).run(pace, count, numerics::exp(k_gap_step * gap_step));
  if (!all) return refuse(all.error());
  const auto one = samples(problem).run(pace, 1, 1);
  if (!one) return refuse(one.error());
  std::vector<double> lower;
  const double required = numerics::log10(bugs::required_ratio());
  for (std::size_t i = 0; i < all->size(); ++i)
    lower.push_back(std::min((*all)[i].kill.egg, (*one)[i].kill.mobile) - required);
  const std::vector<double> upper = lower;
  return repeats_[key] = margins_of(std::move(lower), upper, problem);
}

Result<Judge::Judged> Judge::judge_visits(const std::vector<PlaceVisit>& earning) {
  Judged best;
  if (earning.empty()) return best;
  for (const PlaceVisit& visit : earning) {
    const auto found = single(*visit.problem, visit.kill_step);
    if (!found) return refuse(found.error());
    if (best.together == 0 || found->lethal > best.margins.lethal) best.margins.lethal = found->lethal;
    best.margins.shortfall =
        best.together == 0 ? found->shortfall : std::max(best.margins.shortfall, found->shortfall);
    best.together = 1;
  }
  best.single_shortfall = best.margins.shortfall;
  if (earning.size() == 1 || best.margins.lethal > bugs::kill_rules().near_limit) return best;
  // What several do together is no less than what one does: short is not said of them.
  best.margins.shortfall = 9;
  for (std::size_t problem = 0; problem < edge_.problems.size(); ++problem) {
    std::vector<PlaceVisit> timed;
    for (const PlaceVisit& visit : earning) {
      if (visit.problem == problem && visit.at_seconds) timed.push_back(visit);
    }
    std::stable_sort(timed.begin(), timed.end(),
                     [](const PlaceVisit& a, const PlaceVisit& b) { return a.kill_step < b.kill_step; });
    for (std::size_t count = 2; count <= std::min(timed.size(), k_most_together); ++count) {
      std::vector<double> times;
      for (std::size_t i = 0; i < count; ++i) times.push_back(*timed[i].at_seconds);
      std::sort(times.begin(), times.end());
      double gap = 0.1;
      for (std::size_t i = 1; i < count; ++i) gap = std::max(gap, times[i] - times[i - 1]);
      if (gap >= bugs::kill_rules().reset_seconds) continue;
      const int gap_step = static_cast<int>(std::ceil(numerics::log(gap) / k_gap_step - 1e-9));
      if (numerics::exp(k_gap_step * gap_step) > bugs::kill_rules().reset_seconds) continue;
      const auto found = together(problem, static_cast<int>(count), timed[count - 1].kill_step, gap_step);
      if (!found) return refuse(found.error());
      if (found->lethal <= best.margins.lethal) continue;
      best.margins.lethal = found->lethal;
      best.together = static_cast<int>(count);
    }
  }
  return best;
}

// Whether what came after the last live bug is lethal by itself; true where none was seen.
Result<bool> Judge::lethal_after_bug(const std::vector<PlaceVisit>& visits) {
  std::size_t first = 0;
  for (std::size_t p = 0; p < edge_.passes.size(); ++p) {
    if (edge_.passes[p].saw_live_bug) first = p + 1;
  }
  if (first == 0) return true;
  std::vector<PlaceVisit> later;
  for (const PlaceVisit& visit : visits) {
    if (visit.pass >= first && visit.problem && visit.earns) later.push_back(visit);
  }
  const auto judged = judge_visits(later);
  if (!judged) return refuse(judged.error());
  return judged->margins.lethal > bugs::kill_rules().near_limit;
}

// Fastest lethal pace, with the asked confidence, down to a row of depths.
Result<Judge::DepthTable> Judge::depth_table(std::size_t problem) {
  auto& table = depths_[problem];
  if (!table.empty()) return table;
  steam::PaceProblem at = edge_.problems[problem];
  auto& weights = at.calibration.weights;
  if (weights.size() > k_depth_samples) {
    weights.resize(k_depth_samples);
    double sum = 0;
    for (const double weight : weights) sum += weight;
    for (double& weight : weights) weight /= sum;
  }
  double thickness = 0;
  for (const auto& layer : at.stack) thickness += layer.layer.thickness_metres;
  const double target = at.target_depth_metres;
  for (const double factor : k_depths_of_target) {
    const double depth = std::max(factor * target, k_shallowest_metres);
    if (depth > thickness || (!table.empty() && depth <= table.back().first)) continue;
    at.target_depth_metres = depth;
    const auto limits = steam::sample_limits(at, steam::Marched::those_near_the_window);
    if (!limits) return refuse(limits.error());
    std::vector<double> fastest;
    for (const auto& sample : *limits) fastest.push_back(sample.fastest);
    table.push_back({depth, weighted_quantile(fastest, weights, 1 - at.confidence)});
  }
  return table;
}

Result<double> Judge::depth_reached(const std::vector<PlaceVisit>& earning, bool lethal) {
  double deepest = 0;
  for (const PlaceVisit& visit : earning) {
    const auto table = depth_table(*visit.problem);
    if (!table) return refuse(table.error());
    const double pace = looked_at(kill_pace(visit));
    double reached = 0;
    for (std::size_t i = 0; i < table->size(); ++i) {
      const auto& [depth, fastest] = (*table)[i];
      if (pace <= fastest) {
        reached = depth;
        continue;
      }
      if (i > 0 && fastest > 0) {
        const auto& [above, above_fastest] = (*table)[i - 1];
        if (pace <= above_fastest)
          reached = above + (depth - above) * numerics::log(above_fastest / pace) /
                                numerics::log(above_fastest / fastest);
      }
      break;
    }
    deepest = std::max(deepest, reached);
  }
  // The verdict at the target, made with the whole ensemble and with repeats, has the last word.
  const double target = edge_.problems.front().target_depth_metres;
  if (lethal) return std::max(deepest, target);
  return std::min(deepest, target * (1 - 1e-6));
}

Result<Harm> Judge::harm_of(const std::vector<PlaceVisit>& visits) {
  if (visits.empty()) return Harm::none;
  double slowest = k_infinity;
  std::size_t problem = edge_.problems.size();
  for (const PlaceVisit& visit : visits) {
    if (!visit.problem || visit.harm_pace < steam::k_paces.front() * (1 - 1e-9)) return Harm::unknown;
    slowest = std::min(slowest, visit.harm_pace);
    if (problem != edge_.problems.size() && problem != *visit.problem) return Harm::unknown;
    problem = *visit.problem;
  }
  if (visits.size() > k_most_together) return Harm::unknown;
  const int step = static_cast<int>(std::floor(numerics::log(slowest) / k_pace_step + 1e-9));
  const auto key = std::tuple(problem, visits.size());
  auto known = harm_limits_.find(key);
  if (known == harm_limits_.end()) {
    steam::PaceProblem repeated = edge_.problems[problem];
    repeated.passes = static_cast<int>(visits.size());
    if (repeated.passes == 1) {
      const auto once = limits(problem);
      if (!once) return refuse(once.error());
      known = harm_limits_.emplace(key, **once).first;
    } else {
      auto found = steam::sample_limits(repeated, steam::Marched::those_near_the_window);
      if (!found) return refuse(found.error());
      known = harm_limits_.emplace(key, std::move(*found)).first;
    }
  }
  const double pace = numerics::exp(k_pace_step * step);
  const std::vector<double>& weights = edge_.problems[problem].calibration.weights;
  std::vector<double> slowest_harmless;
  double soak = 0, scorch = 0;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const steam::SampleLimits& sample = known->second[i];
    slowest_harmless.push_back(sample.slowest);
    if (pace < sample.slowest) (sample.soaks_first ? soak : scorch) += weights[i];
  }
  if (pace >= weighted_quantile(slowest_harmless, weights, edge_.problems[problem].confidence))
    return Harm::none;
  return soak >= scorch ? Harm::soak : Harm::scorch;
}

}  // namespace lastegg::treated
