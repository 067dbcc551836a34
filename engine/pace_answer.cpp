#include "engine/pace_answer.h"

#include <algorithm>
#include <utility>

#include "engine/after_pass.h"
#include "engine/calibration_json.h"
#include "engine/edge_family.h"
#include "engine/pace_explanation.h"
#include "engine/steam_shapes.h"

namespace lastegg {

using namespace shape;

namespace {

constexpr double k_least_effective_share = 400.0 / 1024;  // judgement
constexpr double k_near_limit = 0.03;                     // |log10(R/2)| within which a verdict is not proven
constexpr double k_pass_nearest_boiling_kelvin = 0.31;    // what the question pass accepts, and a little

}  // namespace

Shape verdict_shape(std::string text) {
  return choice({{"lethal", "kills eggs, nymphs and unfed adults with the stated confidence"},
                 {"short", "does not reach the dose, with the stated confidence"},
                 {"not_proven", "neither is sure"}},
                std::move(text));
}

std::string verdict_of(const steam::AtPace& at, bool enough) {
  if (!enough) return "not_proven";
  if (at.lethal_margin > k_near_limit) return "lethal";
  if (at.short_margin < -k_near_limit) return "short";
  return "not_proven";
}

bool enough_samples(double effective_samples, int samples) {
  return effective_samples >= k_least_effective_share * samples;
}

std::string harm_of(const EdgeProblem& edge, const steam::AtPace& at, double confidence) {
  if (edge.finish.unknown()) return "unknown";
  if (at.harmless_share >= confidence - 1e-9) return "none";
  return at.soak_share >= at.scorch_share ? "soak" : "scorch";
}

Shape harm_shape() {
  return choice({{"none", "no harm with the stated confidence"},
                 {"scorch", "the surface may pass its limit"},
                 {"soak", "the covering may take up too much water"},
                 {"barred", "the finish must not be steamed"},
                 {"unknown", "try a hidden spot first"}},
                "harm, apart from kill");
}

Shape curve_shape() {
  return object({field("pace_metres_per_second", number(Unit::metre_per_second, "planned pace")),
                 field("lethal_share", ratio("weight that kills")),
                 field("harmless_share", ratio("weight that does no harm")),
                 field("target_celsius_quantiles", spread_shape(Unit::celsius, "peak where the eggs are")),
                 field("condensate_grams_per_m2", spread_shape(Unit::gram_per_m2, "water left by the pass"))},
                "one pace");
}

Json kill_json(const steam::AtPace& at) {
  return {{"egg", at.kill_egg}, {"nymph", at.kill_mobile}, {"adult", at.kill_mobile}};
}

Shape kill_shape() {
  const Shape probability = ratio("probability, printed at most as 0.99");
  return object({field("egg", probability), field("nymph", probability), field("adult", probability)},
                "contact and escape included");
}

Json curve_json(const steam::AtPace& at) {
  return {{"pace_metres_per_second", at.pace_metres_per_second},
          {"lethal_share", std::min(at.lethal_share, 1.0)},
          {"harmless_share", std::min(at.harmless_share, 1.0)},
          {"target_celsius_quantiles", to_json(at.target_celsius)},
          {"condensate_grams_per_m2", to_json(at.condensate_kilograms_per_m2, 1e3)}};
}

Json no_pace(const PaceBasis& basis, const EdgeProblem& edge, const std::string& harm, const Json& why) {
  Json out{{"basis", basis.word},
           {"verdict_at_recommended", "not_proven"},
           {"harm_at_recommended", harm},
           {"window_metres_per_second", nullptr},
           {"recommended_metres_per_second", nullptr},
           {"style", nullptr},
           {"passes", 1},
           {"towel", word(edge.pace.calibration.towel)},
           {"limited_by", {{"low", nullptr}, {"high", nullptr}}},
           {"reason", why},
           {"tried", Json::array()},
           {"kill_probability_at_recommended", nullptr},
           {"kill_by_stage", nullptr},
           {"engorged_adult", nullptr},
           {"condensate_grams_per_m2", nullptr},
           {"dry_minutes", nullptr},
           {"after", nullptr},
           {"finish", to_json(edge.finish)},
           {"water_drop", to_json(edge.drop)},
           {"target_depth_metres", edge.depths()},
           {"effective_samples", 0},
           {"samples", 0},
           {"curve", Json::array()},
           {"middle_case", nullptr},
           {"one_inch_per_second", nullptr}};
  explain_nothing(out);
  if (!edge.family.is_null()) out["shape"] = edge.family;
  return out;
}

Json middle_case(const steam::PaceProblem& problem, double pace) {
  const steam::DrawnHead median = steam::median_head(problem.calibration, problem.cloth_key);
  Json stack = Json::array();
  std::vector<steam::Layer> layers;
  double above = 0;
  if (problem.calibration.towel == steam::Towel::laid) {
    layers.push_back(steam::laid_towel());
    above = layers.front().thickness_metres;
  }
  for (const steam::UncertainLayer& uncertain : problem.stack) layers.push_back(uncertain.layer);
  for (const steam::Layer& layer : layers) {
    Json row{{"thickness_metres", layer.thickness_metres},
             {"heat_capacity_joules_per_m3_kelvin", layer.heat_capacity_joules_per_m3_kelvin},
             {"conductivity_watts_per_metre_kelvin", layer.conductivity_watts_per_metre_kelvin},
             {"permeable", layer.permeable}};
    if (layer.permeable) {
      row["porosity"] = layer.porosity;
      row["tortuosity"] = layer.tortuosity;
      row["sorption_scale_kilograms_per_m3"] = layer.sorption_scale_kilograms_per_m3;
    }
    stack.push_back(std::move(row));
  }
  const double hottest =
      steam::boiling_celsius(problem.calibration.pressure_pascal) - k_pass_nearest_boiling_kelvin;
  return {{"head",
           {{"length_metres", median.head.length_metres},
            {"dew_celsius", std::min(median.head.dew_celsius, hottest)},
            {"film_watts_per_m2_kelvin", median.head.film_watts_per_m2_kelvin},
            {"flux_cap_watts_per_m2", median.head.flux_cap_watts_per_m2},
            {"forced_gas_metres_per_second", median.head.forced_gas_metres_per_second},
            {"skirt_length_metres", median.head.skirt_length_metres},
            {"skirt_factor", median.head.skirt_factor},
            {"pace_metres_per_second", pace}}},
          {"stack", stack},
          {"vapour_efficiency", median.vapour_efficiency},
          {"pressure_pascal", problem.calibration.pressure_pascal},
          {"start_celsius", problem.start_celsius},
          {"start_activity", problem.start_activity},
          {"passes", problem.passes},
          {"depths_metres", Json::array({above + problem.target_depth_metres})}};
}

std::vector<Field> pace_answer_fields() {
  const Shape probability = ratio("probability, printed at most as 0.99");
  std::vector<Field> fields{
      field("basis", basis_shape("what the pace stands on")),
      field("verdict_at_recommended",
            verdict_shape("at the recommended pace; without a window at the fastest harmless one")),
      field("harm_at_recommended", harm_shape()),
      field("window_metres_per_second",
            list(number(Unit::metre_per_second, "pace"), "slowest and fastest").items(2, 2).or_null()),
      field("recommended_metres_per_second", number(Unit::metre_per_second, "the pace to plan").or_null()),
      field("style", choice({{"glide", "move steadily"},
                             {"place_hold_move", "place the head, hold, move one head length"}},
                            "how")
                         .or_null()),
      optional("hold_seconds", number(Unit::second, "for place_hold_move")),
      optional("move_metres", number(Unit::metre, "for place_hold_move")),
      field("passes", integer("passes one after the other")),
      field("towel", towel_shape("towel")),
      field("limited_by",
            object(
                {field("low", choice({{"soak", "water left in the covering"},
                                      {"scorch", "heat of the surface"},
                                      {"steady_hand", "no hand is steady slower"}},
                                     "what forbids slower")
                                  .or_null()),
                 field("high", choice({{"egg", "eggs would live"}, {"mobile", "nymphs or adults would live"}},
                                      "what forbids faster")
                                   .or_null())},
                "the two limits")),
      field("reason", reason_shape("why there is no window, or what limits it").or_null()),
      edge_family_field(),
      field("tried", list(object({field("towel", towel_shape("towel")), field("passes", integer("passes")),
                                  field("window_metres_per_second",
                                        list(number(Unit::metre_per_second, "pace"), "slowest and fastest")
                                            .items(2, 2)
                                            .or_null()),
                                  field("text", text("what was tried"))},
                                 "one alternative"),
                          "alternatives, looked at with a smaller ensemble, when there is no window")),
      field("kill_probability_at_recommended", ratio("of the hardest stage, at most 0.99").or_null()),
      field("kill_by_stage", kill_shape().or_null()),
      field(
          "engorged_adult",
          object({field("kill_probability", probability), field("text", text("what follows"))}, "shown apart")
              .or_null()),
      field("condensate_grams_per_m2", object({field("p50", number(Unit::gram_per_m2, "half")),
                                               field("p95", number(Unit::gram_per_m2, "95 %"))},
                                              "water left at the recommended pace")
                                           .or_null()),
      field("dry_minutes",
            list(number(Unit::minute, "to dry"),
                 "the middle case before a fan, and a wet case in still air; no liquid wicks to the surface")
                .items(2, 2)
                .or_null()),
      field("after", after_pass_shape().or_null()),
      field("finish", finish_shape()),
      field("water_drop", water_drop_answer_shape()),
      field("target_depth_metres", object({field("p50", number(Unit::metre, "median of where eggs may sit")),
                                           field("p90", number(Unit::metre, "target"))},
                                          "where the eggs are")
                                       .or_null()),
      optional("beyond_test",
               object({field("tested_depth_metres", number(Unit::metre, "deepest tip of the readings")),
                       field("text", text("in words"))},
                      "when the target lies deeper than 1.5 times what was tested in this covering")),
      field("effective_samples", ratio("samples that the weights leave")),
      field("samples", integer("size of the ensemble")),
      field("curve", list(curve_shape(), "over pace")),
      field("middle_case", anything("the median case at the recommended pace (else one inch per second), as "
                                    "a request of the question "
                                    "pass; its depths are for the asker to choose")),
      field("one_inch_per_second",
            object({field("target_celsius", spread_shape(Unit::celsius, "peak where the eggs are")),
                    field("lethal_share", ratio("weight that kills")),
                    field("condensate_grams_per_m2", number(Unit::gram_per_m2, "median")),
                    field("text", text("in words"))},
                   "for orientation: what the customary pace would do (common practice)")
                .or_null())};
  for (Field& explained : explanation_fields()) fields.push_back(std::move(explained));
  return fields;
}

}  // namespace lastegg
