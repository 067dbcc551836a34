#include "engine/edge_pace.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <utility>

#include "engine/after_pass.h"
#include "engine/calibration_json.h"
#include "engine/edge_family.h"
#include "engine/pace_explanation.h"
#include "engine/pace_words.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "words/say.h"

namespace lastegg {
namespace {

constexpr double k_glide_pace = 0.010;  // slower: place, hold, move (judgement)
constexpr int k_tried_samples = 128;    // alternatives are looked at with a preview's ensemble
constexpr double k_larger_head = 1.5;
constexpr double k_cooling_gap_passes = 2;

struct Attempt {
  steam::PaceProblem problem;
  std::string text;
};

// The ways to open a window, in the order in which they are tried.
std::vector<Attempt> attempts(const PaceBasis& basis, const steam::PaceProblem& problem) {
  std::vector<Attempt> out;
  steam::PaceProblem preview = problem;
  auto& weights = preview.calibration.weights;
  if (weights.size() > k_tried_samples) {
    weights.resize(k_tried_samples);
    double sum = 0;
    for (const double weight : weights) sum += weight;
    for (double& weight : weights) weight /= sum;
  }
  if (problem.calibration.towel != steam::Towel::none && !problem.calibration.known_head) {
    Attempt bare{
        preview,
        say("without the towel, from the prior of the bare head: a fold test without towel would tell")};
    bare.problem.calibration = steam::prior_calibration(
        head_key(basis.machine, basis.head, steam::Towel::none), problem.calibration.cloth_key,
        steam::Towel::none, problem.calibration.head_length_metres, problem.calibration.pressure_pascal,
        static_cast<int>(weights.size()));
    out.push_back(std::move(bare));
  }
  Attempt larger{preview, say("a head {:g} times as long along the travel", k_larger_head)};
  larger.problem.calibration.head_length_metres *= k_larger_head;
  if (larger.problem.calibration.known_head)
    larger.problem.calibration.known_head->length_metres *= k_larger_head;
  out.push_back(std::move(larger));
  Attempt twice{preview, say("two passes with a pause of {:g} s to cool between them", problem.gap_seconds)};
  twice.problem.passes = static_cast<int>(k_cooling_gap_passes);
  out.push_back(std::move(twice));
  return out;
}

// Harm without the water-drop check, where vapour is shut out for kill only: both count, the stricter limits.
Result<void> mind_open_cloth(const EdgeProblem& edge, steam::PaceReport& report) {
  const auto limits = steam::sample_limits(edge.pace, steam::Marched::those_near_the_window);
  if (!limits) return refuse(limits.error());
  std::vector<double> slowest;
  for (const steam::SampleLimits& sample : *limits)
    slowest.push_back(std::max(sample.slowest, steam::k_slowest_pace));
  const double open = weighted_quantile(slowest, edge.pace.calibration.weights, edge.pace.confidence);
  if (open <= report.slowest_metres_per_second) return {};
  report.slowest_metres_per_second = open;
  report.slow_limit = steam::SlowLimit::soak;
  if (report.planned && report.planned->pace_metres_per_second < open)
    report.fastest_metres_per_second = std::min(report.fastest_metres_per_second, open);
  return {};
}

}  // namespace

Result<Json> pace_of_edge(const PaceBasis& basis, const Json& request, const EdgeSettings& settings,
                          const std::string& where) {
  const auto read = read_edge(basis, request, settings, where);
  if (!read) return refuse(read.error());
  const EdgeProblem& edge = *read;
  if (!edge.closed.is_null()) {
    const bool barred = edge.closed.at("code") == "barred_finish";
    return no_pace(basis, edge, barred ? "barred" : "unknown", edge.closed);
  }
  steam::PaceProblem problem = edge.pace;
  problem.stack = stack_behind(edge.drop, std::move(problem.stack), problem.target_depth_metres);
  auto report = steam::find_pace(problem);
  if (!report) {
    Error error = report.error();
    if (error.kind == ErrorKind::out_of_domain)
      return no_pace(basis, edge, "unknown", reason("no_solution", error.message));
    error.where = where;
    return refuse(error);
  }
  if (edge.drop.shuts_vapour_out()) {
    if (auto minded = mind_open_cloth(edge, *report); !minded) return refuse(minded.error());
  }
  const bool enough = enough_samples(report->effective_samples, report->samples);
  const PaceWords words{.basis = basis.word,
                        .tested_here = edge.tested_here,
                        .kind = edge.kind,
                        .covering = edge.covering,
                        .wetting_limit_grams_per_m2 = edge.wetting_limit_grams_per_m2,
                        .wetting_tested = edge.wetting_tested,
                        .target_depth_metres = edge.depth_metres(),
                        .confidence = settings.confidence,
                        .bound = edge.bound};

  Json out = no_pace(basis, edge, "none", nullptr);
  out["effective_samples"] = report->effective_samples;
  out["samples"] = report->samples;
  const double tested = edge.tested_here ? edge.pace.calibration.tested_depth_metres : 0;
  if (tested > 0 && edge.pace.target_depth_metres > steam::k_trusted_depth_ratio * tested) {
    out["beyond_test"] = {
        {"tested_depth_metres", tested},
        {"text", say("extrapolated: bugs may sit {:.1f} mm deep here, the deepest reading in this "
                     "covering lay under {:.1f} mm, and the test speaks for 1.5 times that",
                     1e3 * edge.pace.target_depth_metres, 1e3 * tested)}};
  }
  for (const steam::AtPace& at : report->curve) out["curve"].push_back(curve_json(at));
  const auto inch = std::find_if(report->curve.begin(), report->curve.end(), [](const steam::AtPace& at) {
    return at.pace_metres_per_second == steam::k_one_inch_per_second;
  });
  out["one_inch_per_second"] = {{"target_celsius", to_json(inch->target_celsius)},
                                {"lethal_share", inch->lethal_share},
                                {"condensate_grams_per_m2", 1e3 * inch->condensate_kilograms_per_m2.p50},
                                {"text", inch_words(*inch, edge.bound)}};
  out["middle_case"] = middle_case(
      problem, report->has_window() ? report->planned->pace_metres_per_second : steam::k_one_inch_per_second);
  out["limited_by"] = {{"low", low_word(report->slow_limit)}, {"high", high_word(report->fast_limit)}};

  // A first look leaves out what a slider need not wait for: explanation, alternatives, drying.
  const bool first_look = steam::accuracy_for(report->samples) == steam::LaneAccuracy::preview;
  if (!first_look) {
    const auto gains = steam::lever_gains(problem);
    if (!gains) return refuse(gains.error());
    explain(words, steam::influences(problem, report->limits), *gains, out);
  }

  if (!report->has_window() || !enough) {
    out["reason"] = !enough ? reason("few_effective_samples", few_samples_words(*report))
                    : edge.bound && report->fastest_metres_per_second <= steam::k_slowest_pace
                        ? bound_reason(*find_edge_kind(edge.kind), edge.depth_metres(), settings.confidence)
                        : no_window_reason(words, *report);
    if (enough && !first_look) {
      for (const Attempt& attempt : attempts(basis, problem)) {
        const auto tried = steam::find_pace(attempt.problem);
        if (!tried) continue;
        Json window = nullptr;
        if (tried->has_window())
          window = {tried->slowest_metres_per_second, tried->fastest_metres_per_second};
        out["tried"].push_back({{"towel", word(attempt.problem.calibration.towel)},
                                {"passes", attempt.problem.passes},
                                {"window_metres_per_second", window},
                                {"text", attempt.text}});
      }
    }
    if (report->planned) out["verdict_at_recommended"] = verdict_of(*report->planned, enough);
    // A bound never proves that a place stayed too cold.
    if (edge.bound && out["verdict_at_recommended"] == "short") out["verdict_at_recommended"] = "not_proven";
    return out;
  }

  const steam::AtPace& planned = *report->planned;
  const double pace = planned.pace_metres_per_second;
  out["window_metres_per_second"] = {report->slowest_metres_per_second, report->fastest_metres_per_second};
  out["recommended_metres_per_second"] = pace;
  out["verdict_at_recommended"] = verdict_of(planned, enough);
  out["harm_at_recommended"] = harm_of(edge, planned, settings.confidence);
  out["style"] = pace < k_glide_pace ? "place_hold_move" : "glide";
  if (pace < k_glide_pace) {
    out["hold_seconds"] = problem.calibration.head_length_metres / pace;
    out["move_metres"] = problem.calibration.head_length_metres;
  }
  out["reason"] = window_reason(words, *report);
  out["kill_probability_at_recommended"] = std::min(planned.kill_egg, planned.kill_mobile);
  out["kill_by_stage"] = kill_json(planned);
  out["engorged_adult"] = {{"kill_probability", planned.kill_engorged}, {"text", engorged_words()}};
  const double wet50 = 1e3 * planned.condensate_kilograms_per_m2.p50;
  const double wet95 = 1e3 * planned.condensate_kilograms_per_m2.p95;
  out["condensate_grams_per_m2"] = {{"p50", wet50}, {"p95", wet95}};
  if (first_look) return out;
  AfterPass after = after_pass(edge.pace, planned);
  out["dry_minutes"] = std::move(after.dry_minutes);
  out["after"] = std::move(after.after);
  return out;
}

}  // namespace lastegg
