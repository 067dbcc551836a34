#include "engine/edge_problem.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/calibration_json.h"
#include "engine/edge_family.h"
#include "engine/pace_words.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "job/edges/edge_stack.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

constexpr double k_damp_activity = 0.9;

double thickness_of(const std::vector<steam::UncertainLayer>& stack) {
  double sum = 0;
  for (const auto& layer : stack) sum += layer.layer.thickness_metres;
  return sum;
}

// Layers and depths; `closed` where the shape has no model.
Result<void> read_layers(const Json& edge, const EdgeKind& kind, const std::string& where, EdgeProblem& out) {
  steam::PaceProblem& problem = out.pace;
  if (const Json* given = member_if(edge, "stack")) {
    const auto stack = read_stack(*given, where + "/stack");
    if (!stack) return refuse(stack.error());
    for (const steam::Layer& layer : *stack) problem.stack.push_back({layer});
    const auto depth = number_if(edge, "target_depth_metres");
    if (!depth) {
      return refuse({ErrorKind::bad_input,
                     say("target_depth_metres is missing; an edge with its own stack needs it"), where, "",
                     "", ""});
    }
    out.middle_depth_metres = problem.target_depth_metres = *depth;
  } else {
    const auto stack = edge_stack(out.kind, out.covering_key, read_fill(text_of(edge, "fill")));
    if (!stack) {
      if (stack.error().kind != ErrorKind::out_of_domain) return refuse(stack.error());
      out.family = edge_family_json(kind, steam::Claim::as_computed);
      out.closed = reason("shape_not_modelled", stack.error().message);
      return {};
    }
    problem.stack = stack->layers;
    out.middle_depth_metres = stack->middle_depth_metres;
    out.family = edge_family_json(kind, stack->claim);
    out.bound = stack->claim == steam::Claim::bound;
    out.depth_factor = stack->depth_factor;
    const double target = number_if(edge, "target_depth_metres").value_or(stack->target_depth_metres);
    problem.target_depth_metres = std::max(out.depth_factor * target, stack->least_marched_metres);
  }
  const double thickness = thickness_of(problem.stack);
  if (problem.target_depth_metres > thickness) {
    return refuse(
        {ErrorKind::bad_input,
         say("target_depth_metres is {:g} m; it must be at most {:g} m, the thickness of the layers",
             out.depth_metres(), thickness / out.depth_factor),
         where + "/target_depth_metres", fmt::format("{:g}", out.depth_metres()),
         fmt::format("{:g}", thickness / out.depth_factor), "m"});
  }
  return {};
}

}  // namespace

Shape edge_shape() {
  std::vector<Choice> kinds;
  for (const EdgeKind& kind : edge_kinds()) kinds.push_back({kind.key, kind.text});
  std::vector<Choice> coverings;
  for (const Covering& covering : all_coverings()) coverings.push_back({covering.word, covering.title});
  return object(
      {field("kind", choice(std::move(kinds), "what kind of edge")),
       field("covering", choice(std::move(coverings), "what covers it")),
       with_default("fill",
                    choice({{"batting_foam", "batting over foam"},
                            {"foam", "foam"},
                            {"wood", "wood"},
                            {"none", "nothing"}},
                           "what lies behind the covering"),
                    "batting_foam"),
       optional("finish", text("a finish of wood as furniture names it, or a key of the damage limits")),
       with_default("hidden_spot", hidden_spot_shape(), "not_tried"),
       optional("hidden_spot_seconds", hidden_spot_seconds()), optional("water_drop", water_drop_shape()),
       optional("stack", stack_shape("the layers themselves, if known; then target_depth_metres too")),
       optional("target_depth_metres",
                number(Unit::metre, "deepest place where an egg may lie").above(0).at_most(0.2)),
       optional("wetting_limit_grams_per_m2",
                number(Unit::gram_per_m2, "by a hidden-spot wetting test of this covering")
                    .at_least(5)
                    .at_most(500))},
      "an edge, as furniture gives it in `treat`");
}

EdgeSettings read_edge_settings(const Json& request) {
  return {number_of(request, "start_celsius"), request.at("damp").get<bool>(),
          number_of(request, "confidence"), number_of(request, "wetting_limit_grams_per_m2"),
          number_if(request, "gap_seconds").value_or(steam::k_gap_seconds)};
}

Json EdgeProblem::depths() const {
  if (pace.stack.empty()) return nullptr;
  return {{"p50", std::min(middle_depth_metres, depth_metres())}, {"p90", depth_metres()}};
}

Result<EdgeProblem> read_edge(const PaceBasis& basis, const Json& edge, const EdgeSettings& settings,
                              const std::string& where) {
  EdgeProblem out;
  out.kind = text_of(edge, "kind");
  out.covering_key = text_of(edge, "covering");
  const auto covering = find_covering(out.covering_key);
  if (!covering) return refuse(covering.error());
  out.covering = in_language(covering->title);
  const auto kind = find_edge_kind(out.kind);
  if (!kind) return refuse(kind.error());
  auto named_finish = text_if(edge, "finish");
  // Hard parts alone: what covers the rest of the item says nothing about them.
  if (!named_finish && is_bare(*kind) && !has(edge, "stack")) named_finish = "unknown";
  auto finish = finish_of(*covering, named_finish, read_hidden_spot(text_of(edge, "hidden_spot")),
                          number_if(edge, "hidden_spot_seconds"));
  if (!finish) {
    Error error = finish.error();
    error.where = where + "/finish";
    return refuse(error);
  }
  out.finish = std::move(*finish);
  out.drop = read_water_drop(edge);
  if (auto layers = read_layers(edge, *kind, where, out); !layers) return refuse(layers.error());
  if (out.finish.barred()) {  // outranks a shape without a model: that one may still be steamed by practice
    out.closed = reason("barred_finish", out.finish.hidden_spot == HiddenSpot::marked
                                             ? to_json(out.finish).at("text").get<std::string>()
                                             : barred_words(out.finish.title, out.finish.effect));
  }

  steam::PaceProblem& problem = out.pace;
  const std::size_t index = basis.calibration_for(out.covering_key);
  problem.calibration = basis.calibrations[index];
  out.tested_here = problem.calibration.tested && basis.coverings[index] == out.covering_key;
  problem.cloth_key = cloth_key(basis.machine, basis.head, out.covering_key);
  problem.stack_key = "stack|" + out.kind + "|" + out.covering_key;
  const auto wetting_test = number_if(edge, "wetting_limit_grams_per_m2");
  out.wetting_tested = wetting_test.has_value();
  out.wetting_limit_grams_per_m2 = wetting_test.value_or(settings.wetting_limit_grams_per_m2);
  problem.harm.wetting_kilograms_per_m2 = out.wetting_limit_grams_per_m2 / 1e3;
  problem.harm.surface_celsius = out.finish.surface_celsius;
  problem.harm.seconds_allowed_above = out.finish.seconds_allowed;
  problem.start_celsius = settings.start_celsius;
  problem.air.celsius = settings.start_celsius;
  if (settings.damp) problem.start_activity = k_damp_activity;
  problem.confidence = settings.confidence;
  problem.gap_seconds = settings.gap_seconds;
  return out;
}

}  // namespace lastegg
