// Question `at_pace`: what one chosen pace would do on one edge. For a finger on a slider: no search, no
// words.
#include "engine/edge_problem.h"
#include "engine/pace_answer.h"
#include "engine/questions/questions.h"
#include "engine/steam_shapes.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  std::vector<Field> fields = pace_kit_fields();
  fields.push_back(field("edge", edge_shape()));
  fields.push_back(field("pace_metres_per_second", number(Unit::metre_per_second, "the pace to look at")
                                                       .at_least(steam::k_paces.front())
                                                       .at_most(steam::k_paces.back())));
  return object(std::move(fields), "a kit, an edge and a pace");
}

Shape answer_shape() {
  return object({field("basis", basis_shape("what the figures stand on")),
                 field("samples", integer("size of the ensemble")),
                 field("effective_samples", ratio("samples that the weights leave")),
                 field("verdict", verdict_shape("at this pace")), field("harm", harm_shape()),
                 field("at", curve_shape().or_null()), field("kill_by_stage", kill_shape().or_null()),
                 field("reason", reason_shape("why nothing can be said of this edge").or_null())},
                "what the pace would do");
}

// Where the water-drop check shuts vapour out for kill, harm counts the open cloth as well: the stricter one.
Result<steam::AtPace> look(const EdgeProblem& edge, double pace) {
  steam::PaceProblem problem = edge.pace;
  problem.stack = stack_behind(edge.drop, std::move(problem.stack), problem.target_depth_metres);
  auto at = steam::look_at_pace(problem, pace);
  if (!at || !edge.drop.shuts_vapour_out()) return at;
  const auto open = steam::look_at_pace(edge.pace, pace);
  if (!open) return open;
  if (open->harmless_share < at->harmless_share) {
    at->harmless_share = open->harmless_share;
    at->soak_share = open->soak_share;
    at->scorch_share = open->scorch_share;
  }
  return at;
}

Json answer_of(const PaceBasis& basis, const EdgeProblem& edge) {
  return {{"basis", basis.word},
          {"samples", edge.pace.calibration.weights.size()},
          {"effective_samples", edge.pace.calibration.effective_samples},
          {"verdict", "not_proven"},
          {"harm", "unknown"},
          {"at", nullptr},
          {"kill_by_stage", nullptr},
          {"reason", nullptr}};
}

Result<Answer> solve(const Json& request) {
  auto basis = read_pace_basis(request);
  if (!basis) return refuse(basis.error());
  const EdgeSettings settings = read_edge_settings(request);
  const auto edge = read_edge(*basis, request.at("edge"), settings, "/edge");
  if (!edge) return refuse(edge.error());
  Json out = answer_of(*basis, *edge);
  std::vector<std::string> data{"coverings/1", "damage_limits/1", "edge_kinds/3", "materials/1",
                                "mortality/1"};
  if (!edge->closed.is_null()) {
    if (edge->closed.at("code") == "barred_finish") out["harm"] = "barred";
    out["reason"] = edge->closed;
    return Answer{std::move(out), std::move(basis->warnings), std::move(data)};
  }
  const auto at = look(*edge, request.at("pace_metres_per_second").get<double>());
  if (!at) return refuse(at.error());
  const int samples = static_cast<int>(edge->pace.calibration.weights.size());
  const std::string verdict =
      verdict_of(*at, enough_samples(edge->pace.calibration.effective_samples, samples));
  out["verdict"] = edge->bound && verdict == "short" ? "not_proven" : verdict;  // a bound proves no survival
  out["harm"] = harm_of(*edge, *at, settings.confidence);
  out["at"] = curve_json(*at);
  out["kill_by_stage"] = kill_json(*at);
  return Answer{std::move(out), std::move(basis->warnings), std::move(data)};
}

}  // namespace

const Question& at_pace_question() {
  static const Question question{"at_pace",
                                 "What one chosen pace would do on one edge: the heat where the eggs are, "
                                 "kill, water and harm.",
                                 request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
