// Question `as_treated`: what a timed treatment of one edge did.
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <utility>

#include "engine/calibration_json.h"
#include "engine/edge_family.h"
#include "engine/edge_pace.h"
#include "engine/pace_words.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "engine/surface_readings.h"
#include "engine/treated_record.h"
#include "engine/treated_words.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  std::vector<Field> fields = pace_kit_fields();
  fields.push_back(field("edge", edge_shape()));
  fields.push_back(optional(
      "length_metres",
      number(Unit::metre, "of the edge; left out: as far as the passes reach").above(0).at_most(100)));
  fields.push_back(field("passes", list(treated_pass_shape(), "what was done, in order").items(0, 50)));
  fields.push_back(
      optional("spot_readings", list(surface_reading_shape(), "gun or palm behind the head").items(1, 50)));
  return object(std::move(fields), "a kit, an edge, and the record of its treatment");
}

Shape answer_shape() {
  const Shape probability = ratio("probability, printed at most as 0.99");
  Shape stretch = object(
      {field("from_metres", number(Unit::metre, "start of the stretch")),
       field("to_metres", number(Unit::metre, "its end")),
       field("visits", integer("times the head surely went over it")),
       field("slowest_metres_per_second", number(Unit::metre_per_second, "of these visits").or_null()),
       field("fastest_metres_per_second", number(Unit::metre_per_second, "of these visits").or_null()),
       field("counted_together", integer("visits whose doses the verdict adds")),
       field("verdict", verdict_shape("of the stretch")), field("cause", cause_shape()),
       field("depth_reached_metres", number(Unit::metre, "lethal down to here, by the best single visit")),
       field("harm", treated_harm_shape())},
      "a stretch that was treated alike");
  Shape redo = object(
      {field("from_metres", number(Unit::metre, "start")), field("to_metres", number(Unit::metre, "end")),
       field("cause", cause_shape()), field("text", text("what to do"))},
      "a stretch to do again");
  return object(
      {field("basis", basis_shape("what the verdict stands on")),
       field("verdict", verdict_shape("of the edge: that of its worst stretch")),
       field("reason", reason_shape("what decided")), field("harm", treated_harm_shape()),
       field("kill_probability", ratio("of the hardest stage at the worst stretch, at most 0.99").or_null()),
       field("kill_by_stage",
             object({field("egg", probability), field("nymph", probability), field("adult", probability)},
                    "at the worst stretch by its best single visit, contact and escape included")
                 .or_null()),
       field("engorged_adult",
             object({field("kill_probability", probability), field("text", text("what follows"))},
                    "shown apart")
                 .or_null()),
       field("depth_reached_metres",
             number(Unit::metre, "the edge is lethal down to here at least").or_null()),
       field("target_depth_metres", number(Unit::metre, "deepest place where eggs may lie").or_null()),
       field("length_metres", number(Unit::metre, "of the edge")),
       field("lethal_metres", number(Unit::metre, "length of its lethal stretches")),
       field("stretches", list(stretch, "from the start of the edge to its end")),
       field("redo", list(redo, "what to do again")), field("spot_readings", learnt_shape().or_null()),
       field("finish", finish_shape()), field("water_drop", water_drop_answer_shape()),
       field("effective_samples", ratio("samples that the weights leave")),
       field("samples", integer("size of the ensemble"))},
      "what the treatment did");
}

// The calibration for a towel: the test made in this covering first; without one the prior, but for a head
// whose effect was given.
std::optional<steam::Calibration> calibration_for(const PaceBasis& basis, const EdgeProblem& edge,
                                                  steam::Towel towel, std::vector<Warning>& warnings) {
  const steam::Calibration& usual = edge.pace.calibration;
  if (usual.towel == towel) return usual;
  for (const bool same_covering : {true, false}) {
    for (std::size_t i = 0; i < basis.calibrations.size(); ++i) {
      if (basis.calibrations[i].towel == towel && (!same_covering || basis.coverings[i] == edge.covering_key))
        return basis.calibrations[i];
    }
  }
  if (basis.word == "head") {
    warnings.push_back({"unknown_towel", say("nothing is known of this head with towel \"{}\": these passes "
                                             "earn nothing",
                                             word(towel))});
    return std::nullopt;
  }
  warnings.push_back(
      {"untested_towel",
       say("no fold test was made with towel \"{}\": these passes stand on what is usual", word(towel))});
  return steam::prior_calibration(head_key(basis.machine, basis.head, towel), usual.cloth_key, towel,
                                  usual.head_length_metres, usual.pressure_pascal,
                                  static_cast<int>(usual.weights.size()));
}

// The record with a model behind each pass.
treated::TreatedEdge edge_of(const PaceBasis& basis, const EdgeProblem& edge, const TreatedRecord& record,
                             double length_metres, std::vector<Warning>& warnings) {
  treated::TreatedEdge out;
  out.length_metres = length_metres;
  steam::PaceProblem problem = edge.pace;
  problem.stack = stack_behind(edge.drop, std::move(problem.stack), problem.target_depth_metres);
  std::map<steam::Towel, std::optional<std::size_t>> known;
  out.problems.push_back(problem);
  known[problem.calibration.towel] = 0;
  for (const RecordedPass& recorded : record.passes) {
    const steam::Towel towel = recorded.towel.value_or(problem.calibration.towel);
    if (!known.count(towel)) {
      known[towel] = std::nullopt;
      if (const auto calibration = calibration_for(basis, edge, towel, warnings)) {
        known[towel] = out.problems.size();
        out.problems.push_back(problem);
        out.problems.back().calibration = *calibration;
      }
    }
    treated::TreatedPass pass = recorded.pass;
    pass.problem = known[towel];
    out.passes.push_back(std::move(pass));
  }
  return out;
}

Json without_model(const PaceBasis& basis, const EdgeProblem& edge, double length_metres) {
  return {{"basis", basis.word},
          {"verdict", "not_proven"},
          {"reason", edge.closed},
          {"harm", edge.finish.barred() ? "barred" : "unknown"},
          {"kill_probability", nullptr},
          {"kill_by_stage", nullptr},
          {"engorged_adult", nullptr},
          {"depth_reached_metres", nullptr},
          {"target_depth_metres", nullptr},
          {"length_metres", length_metres},
          {"lethal_metres", 0},
          {"stretches", Json::array()},
          {"redo", Json::array()},
          {"spot_readings", nullptr},
          {"finish", to_json(edge.finish)},
          {"water_drop", to_json(edge.drop)},
          {"effective_samples", 0},
          {"samples", 0}};
}

// A bound never proves that a place stayed too cold.
void spare_short(const EdgeProblem& edge, Json& out) {
  for (Json& stretch : out["stretches"]) {
    if (stretch["verdict"] == "short") stretch["verdict"] = "not_proven";
  }
  if (out["verdict"] != "short") return;
  out["verdict"] = "not_proven";
  out["reason"] = bound_reason(*find_edge_kind(edge.kind), edge.depth_metres(), edge.pace.confidence);
}

Result<Answer> solve(const Json& request) {
  auto basis = read_pace_basis(request);
  if (!basis) return refuse(basis.error());
  const auto edge = read_edge(*basis, request.at("edge"), read_edge_settings(request), "/edge");
  if (!edge) return refuse(edge.error());
  const auto record = read_treated_record(request.at("passes"), "/passes");
  if (!record) return refuse(record.error());
  const double length = number_if(request, "length_metres").value_or(record->reach_metres);
  Answer answer;
  answer.warnings = basis->warnings;
  answer.data_keys = {"coverings/1", "damage_limits/1", "edge_kinds/3", "materials/1", "mortality/1"};
  if (edge->pace.stack.empty()) {
    answer.result = without_model(*basis, *edge, length);
    return answer;
  }
  if (!(length > 0)) {
    return refuse({ErrorKind::bad_input,
                   say("length_metres is missing, and no pass says how long the edge is"), "/length_metres",
                   "", "", ""});
  }
  treated::TreatedEdge treated_edge = edge_of(*basis, *edge, *record, length, answer.warnings);
  auto report = treated::judge(treated_edge);
  if (!report) return refuse(report.error());
  Json learnt = nullptr;
  if (const Json* readings = member_if(request, "spot_readings")) {
    auto reweighted = learn_from_surface(treated_edge, *readings, "/spot_readings");
    if (!reweighted) return refuse(reweighted.error());
    auto after = treated::judge(reweighted->edge);
    if (!after) return refuse(after.error());
    learnt = learnt_json(*reweighted, *basis, *report, *after);
    // A surface says little of the fold: it may take a verdict back, never grant one.
    if (is_worse(after->verdict, report->verdict)) report = std::move(after);
    report->effective_samples = std::min(report->effective_samples, reweighted->effective_samples);
  }

  const bool enough = enough_samples(report->effective_samples, report->samples);
  Json out = without_model(*basis, *edge, length);
  const std::string verdict = enough ? std::string(bugs::verdict_word(report->verdict)) : "not_proven";
  out["verdict"] = verdict;
  out["spot_readings"] = learnt;
  out["effective_samples"] = report->effective_samples;
  out["samples"] = report->samples;
  out["target_depth_metres"] = edge->depth_metres();
  out["depth_reached_metres"] = report->depth_reached_metres / edge->depth_factor;
  out["lethal_metres"] = report->lethal_metres;
  out["reason"] = enough ? treated_reason(*report, length)
                         : reason("few_effective_samples",
                                  say("the readings leave too few samples to be sure of anything"));
  if (report->kill_egg) {
    out["kill_probability"] = std::min(*report->kill_egg, *report->kill_mobile);
    out["kill_by_stage"] = {
        {"egg", *report->kill_egg}, {"nymph", *report->kill_mobile}, {"adult", *report->kill_mobile}};
    out["engorged_adult"] = {{"kill_probability", *report->kill_engorged}, {"text", engorged_words()}};
  }
  std::string worst_harm = "none";
  for (const treated::TreatedStretch& stretch : report->stretches) {
    const std::string harm = harm_word(stretch, *edge);
    worst_harm = worse_harm(worst_harm, harm);
    out["stretches"].push_back(stretch_json(stretch, harm));
  }
  out["harm"] = worst_harm;
  out["redo"] = redo_json(*report);
  if (edge->bound) spare_short(*edge, out);
  answer.result = std::move(out);
  return answer;
}

}  // namespace

const Question& as_treated_question() {
  static const Question question{"as_treated",
                                 "What a timed treatment of one edge did: lethal, short or not proven per "
                                 "stretch, how deep, harm, what to do again.",
                                 request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
