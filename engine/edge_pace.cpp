#include "engine/edge_pace.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>
#include <utility>

#include "engine/calibration_json.h"
#include "engine/edge_family.h"
#include "engine/pace_words.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "job/edges/edge_stack.h"
#include "physics/materials/materials.h"

namespace lastegg {

using namespace shape;

namespace {

constexpr double k_least_effective_share = 400.0 / 1024;  // judgement
constexpr double k_near_limit = 0.03;                     // |log10(R/2)| within which a verdict is not proven
constexpr double k_glide_pace = 0.010;                    // slower: place, hold, move (judgement)
constexpr int k_tried_samples = 128;  // alternatives are looked at with a preview's ensemble
constexpr double k_damp_activity = 0.9;
constexpr double k_pass_nearest_boiling_kelvin = 0.31;  // what the question pass accepts, and a little
constexpr double k_larger_head = 1.5;
constexpr double k_cooling_gap_passes = 2;

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

// What the surface bears, from the finish that was named or else from the covering.
struct Finish {
  std::string title, effect;
  HarmAction action = HarmAction::hidden_test;
  std::optional<double> surface_celsius;
  double seconds_allowed = 0;
};

void tighten(Finish& finish, const DamageLimit& limit) {
  if (!limit.limit_celsius) return;
  const double celsius = limit.limit_celsius->value;
  if (finish.surface_celsius && *finish.surface_celsius <= celsius) return;
  finish.surface_celsius = celsius;
  finish.seconds_allowed = limit.seconds_allowed ? limit.seconds_allowed->value : 0;
}

// Finishes of wood as furniture names them, and the damage limit that stands for each; bare and unknown wood
// have none.
constexpr std::pair<std::string_view, std::string_view> k_wood_finishes[] = {
    {"wax", "beeswax"},
    {"shellac", "shellac"},
    {"lacquer", "nitrocellulose_lacquer"},
    {"varnish", "catalysed_varnish"},
    {"paint", "alkyd_paint"}};

Result<Finish> finish_of(const Covering& covering, const std::optional<std::string>& named) {
  if (named == "bare" || named == "oil" || named == "unknown") {
    return Finish{"this finish", "try a hidden spot first", HarmAction::hidden_test, std::nullopt, 0};
  }
  if (named) {
    std::string key = *named;
    for (const auto& [finish, limit] : k_wood_finishes) {
      if (finish == key) key = limit;
    }
    const auto limit = find_damage_limit(key);
    if (!limit) return refuse(limit.error());
    Finish finish{limit->title, limit->effect, limit->action, std::nullopt, 0};
    if (finish.action == HarmAction::short_dwell) tighten(finish, *limit);
    return finish;
  }
  Finish finish{covering.title, covering.reason, covering.action, std::nullopt, 0};
  for (const std::string& key : covering.damage_limits) {
    const auto limit = find_damage_limit(key);
    if (!limit) return refuse(limit.error());
    if (limit->action == HarmAction::short_dwell) tighten(finish, *limit);
  }
  return finish;
}

Json curve_json(const steam::AtPace& at) {
  return {{"pace_metres_per_second", at.pace_metres_per_second},
          {"lethal_share", at.lethal_share},
          {"harmless_share", at.harmless_share},
          {"target_celsius_quantiles", to_json(at.target_celsius)},
          {"condensate_grams_per_m2", to_json(at.condensate_kilograms_per_m2, 1e3)}};
}

// What stands behind an edge in this covering: the test made in the same covering if there is one.
std::size_t calibration_for(const PaceBasis& basis, const std::string& covering) {
  for (std::size_t i = 0; i < basis.coverings.size(); ++i) {
    if (basis.coverings[i] == covering) return i;
  }
  return 0;
}

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
    Attempt bare{preview,
                 "without the towel, from the prior of the bare head: a fold test without towel would tell"};
    bare.problem.calibration = steam::prior_calibration(
        head_key(basis.machine, basis.head, steam::Towel::none), problem.calibration.cloth_key,
        steam::Towel::none, problem.calibration.head_length_metres, problem.calibration.pressure_pascal,
        static_cast<int>(weights.size()));
    out.push_back(std::move(bare));
  }
  Attempt larger{preview, fmt::format("a head {:g} times as long along the travel", k_larger_head)};
  larger.problem.calibration.head_length_metres *= k_larger_head;
  if (larger.problem.calibration.known_head)
    larger.problem.calibration.known_head->length_metres *= k_larger_head;
  out.push_back(std::move(larger));
  Attempt twice{preview, "two passes with a pause to cool between them"};
  twice.problem.passes = static_cast<int>(k_cooling_gap_passes);
  out.push_back(std::move(twice));
  return out;
}

Json no_pace(const PaceBasis& basis, const std::string& harm, const Json& why, const Json& empty_depth) {
  return {{"basis", basis.word},
          {"verdict_at_recommended", "not_proven"},
          {"harm_at_recommended", harm},
          {"window_metres_per_second", nullptr},
          {"recommended_metres_per_second", nullptr},
          {"style", nullptr},
          {"passes", 1},
          {"towel", basis.calibrations.empty() ? "none" : word(basis.calibrations.front().towel)},
          {"limited_by", {{"low", nullptr}, {"high", nullptr}}},
          {"reason", why},
          {"tried", Json::array()},
          {"kill_probability_at_recommended", nullptr},
          {"kill_by_stage", nullptr},
          {"engorged_adult", nullptr},
          {"condensate_grams_per_m2", nullptr},
          {"dry_minutes", nullptr},
          {"target_depth_metres", empty_depth},
          {"effective_samples", 0},
          {"samples", 0},
          {"curve", Json::array()},
          {"middle_case", nullptr},
          {"one_inch_per_second", nullptr}};
}

// The median of everything uncertain, as a request of the question `pass`.
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

}  // namespace

std::vector<Field> pace_kit_fields() {
  Shape known = head_shape(false);
  known.fields.push_back(
      optional("vapour_efficiency", ratio("of this cloth, if known (phi)").at_least(0).at_most(1.5)));
  known.fields.push_back(with_default("towel", towel_shape("towel that belongs to these values"), "none"));
  std::vector<Field> fields{
      optional("head", known),
      optional("fold_test", either({object(fold_test_fields(), "a fold test"),
                                    list(object(fold_test_fields(), "a fold test"), "several")},
                                   "fold tests of this machine, head and towel")),
      optional("calibration",
               either({calibration_shape(), list(calibration_shape(), "several")}, "what fold tests found")),
      optional("prior",
               object({with_default("machine", text("name of the machine"), "machine"),
                       with_default("head", text("name of the head"), "head"),
                       with_default("towel", towel_shape("towel"), "none"),
                       with_default(
                           "length_metres",
                           number(Unit::metre, "contact length along the travel").at_least(0.01).at_most(0.6),
                           0.08)},
                      "no test yet: what is usual")),
      with_default("start_celsius",
                   number(Unit::celsius, "temperature of the item before").at_least(-20).at_most(50), 20),
      with_default("damp", flag("the covering is damp to the hand"), false),
      with_default("confidence", ratio("confidence of kill and of no harm").at_least(0.5).at_most(0.99),
                   0.95),
      with_default("samples",
                   integer("size of the ensemble where no fold test gives it; verdicts use 1024")
                       .at_least(64)
                       .at_most(4096),
                   1024),
      with_default(
          "wetting_limit_grams_per_m2",
          number(
              Unit::gram_per_m2,
              "most water the covering may take up; 50 is an estimate, a hidden-spot test may show another")
              .at_least(5)
              .at_most(500),
          50)};
  for (Field& pressure : pressure_fields()) fields.push_back(std::move(pressure));
  return fields;
}

Result<PaceBasis> read_pace_basis(const Json& request) {
  int given = 0;
  for (const char* key : {"head", "fold_test", "calibration", "prior"}) given += has(request, key) ? 1 : 0;
  if (given > 1) {
    return refuse({ErrorKind::bad_input,
                   "give one of head, fold_test, calibration and prior; several were given", "", "", "", ""});
  }
  PaceBasis basis;
  const int samples = request.at("samples").get<int>();
  const auto as_list = [](const Json& value) { return value.is_array() ? value : Json::array({value}); };
  if (const Json* tests = member_if(request, "fold_test")) {
    basis.word = "fold_test";
    const Json list = as_list(*tests);
    for (std::size_t i = 0; i < list.size(); ++i) {
      const std::string where = tests->is_array() ? fmt::format("/fold_test/{}", i) : "/fold_test";
      const auto test = read_fold_test(list[i], where);
      if (!test) return refuse(test.error());
      const auto fit = steam::calibrate(test->test, test->samples);
      if (!fit) return refuse(fit.error());
      basis.calibrations.push_back(fit->calibration);
      basis.coverings.push_back(test->covering);
      basis.warnings.insert(basis.warnings.end(), test->warnings.begin(), test->warnings.end());
      const Json& head = list[i].at("head");
      basis.machine = text_of(list[i], "machine");
      basis.head = head.is_string() ? head.get<std::string>() : text_of(head, "name");
    }
    return basis;
  }
  if (const Json* found = member_if(request, "calibration")) {
    const Json list = as_list(*found);
    for (std::size_t i = 0; i < list.size(); ++i) {
      const auto calibration =
          read_calibration(list[i], found->is_array() ? fmt::format("/calibration/{}", i) : "/calibration");
      if (!calibration) return refuse(calibration.error());
      basis.calibrations.push_back(*calibration);
      basis.coverings.push_back(text_of(list[i], "covering"));
      const std::string& key = calibration->head_key;  // head|machine|head|towel
      const auto first = key.find('|'), second = key.find('|', first + 1), third = key.rfind('|');
      if (first != std::string::npos && second != std::string::npos && third > second) {
        basis.machine = key.substr(first + 1, second - first - 1);
        basis.head = key.substr(second + 1, third - second - 1);
      }
    }
    basis.word = basis.calibrations.front().tested ? "fold_test" : "prior";
    return basis;
  }
  const auto pressure = read_pressure(request);
  if (!pressure) return refuse(pressure.error());
  if (const Json* head = member_if(request, "head")) {
    basis.word = "head";
    basis.machine = basis.head = "known";
    const steam::Towel towel = read_towel(text_of(*head, "towel"));
    steam::Calibration calibration =
        steam::prior_calibration(head_key("known", "known", towel), cloth_key("known", "known", "known"),
                                 towel, number_of(*head, "length_metres"), *pressure, samples);
    calibration.known_head = read_head(*head);
    calibration.known_vapour_efficiency = number_if(*head, "vapour_efficiency");
    basis.calibrations.push_back(calibration);
    basis.coverings.push_back("");
    return basis;
  }
  Json prior{{"machine", "machine"}, {"head", "head"}, {"towel", "none"}, {"length_metres", 0.08}};
  if (const Json* found = member_if(request, "prior")) prior = *found;
  basis.word = "prior";
  basis.machine = text_of(prior, "machine");
  basis.head = text_of(prior, "head");
  const steam::Towel towel = read_towel(text_of(prior, "towel"));
  basis.calibrations.push_back(steam::prior_calibration(
      head_key(basis.machine, basis.head, towel), cloth_key(basis.machine, basis.head, "prior"), towel,
      number_of(prior, "length_metres"), *pressure, samples));
  basis.coverings.push_back("");
  basis.warnings.push_back(
      {"no_test_yet",
       "no fold test stands behind this pace, only what is usual: test this machine, head and towel"});
  return basis;
}

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
          number_of(request, "confidence"), number_of(request, "wetting_limit_grams_per_m2")};
}

std::vector<Field> pace_answer_fields() {
  const Shape probability = ratio("probability, printed at most as 0.99");
  Shape stage = object({field("egg", probability), field("nymph", probability), field("adult", probability)},
                       "contact and escape included");
  Shape one_pace =
      object({field("pace_metres_per_second", number(Unit::metre_per_second, "planned pace")),
              field("lethal_share", ratio("weight that kills")),
              field("harmless_share", ratio("weight that does no harm")),
              field("target_celsius_quantiles", spread_shape(Unit::celsius, "peak where the eggs are")),
              field("condensate_grams_per_m2", spread_shape(Unit::gram_per_m2, "water left by the pass"))},
             "one pace");
  return {
      field("basis", choice({{"fold_test", "readings of this machine, head and towel"},
                             {"prior", "no test yet: what is usual"},
                             {"head", "a head whose effect was given"}},
                            "what the pace stands on")),
      field("verdict_at_recommended",
            verdict_shape("at the recommended pace; without a window at the fastest harmless one")),
      field("harm_at_recommended", choice({{"none", "no harm with the stated confidence"},
                                           {"scorch", "the surface may pass its limit"},
                                           {"soak", "the covering may take up too much water"},
                                           {"barred", "the finish must not be steamed"},
                                           {"unknown", "try a hidden spot first"}},
                                          "harm, apart from kill")),
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
      field("kill_by_stage", stage.or_null()),
      field(
          "engorged_adult",
          object({field("kill_probability", probability), field("text", text("what follows"))}, "shown apart")
              .or_null()),
      field("condensate_grams_per_m2", object({field("p50", number(Unit::gram_per_m2, "half")),
                                               field("p95", number(Unit::gram_per_m2, "95 %"))},
                                              "water left at the recommended pace")
                                           .or_null()),
      field("dry_minutes",
            list(number(Unit::minute, "to dry"), "with and without moving air, surface water only")
                .items(2, 2)
                .or_null()),
      field("target_depth_metres", object({field("p50", number(Unit::metre, "median of where eggs may sit")),
                                           field("p90", number(Unit::metre, "target"))},
                                          "where the eggs are")
                                       .or_null()),
      field("effective_samples", ratio("samples that the weights leave")),
      field("samples", integer("size of the ensemble")),
      field("curve", list(one_pace, "over pace")),
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
}

Result<Json> pace_of_edge(const PaceBasis& basis, const Json& edge, const EdgeSettings& settings,
                          const std::string& where) {
  const std::string kind = text_of(edge, "kind");
  const std::string covering_key = text_of(edge, "covering");
  const auto covering = find_covering(covering_key);
  if (!covering) return refuse(covering.error());
  const auto edge_kind = find_edge_kind(kind);
  if (!edge_kind) return refuse(edge_kind.error());
  const bool own_stack = has(edge, "stack");
  auto named_finish = text_if(edge, "finish");
  if (!named_finish && is_bare(*edge_kind) && !own_stack) named_finish = "unknown";
  const auto finish = finish_of(*covering, named_finish);
  if (!finish) {
    Error error = finish.error();
    error.where = where + "/finish";
    return refuse(error);
  }

  steam::PaceProblem problem;
  double middle_depth = 0;
  Json family = nullptr;  // stays so where the layers were given
  bool bound = false;
  double depth_factor = 1;
  const auto with_family = [&family](Json answer) {
    if (!family.is_null()) answer["shape"] = family;
    return answer;
  };
  if (const Json* given = member_if(edge, "stack")) {
    const auto stack = read_stack(*given, where + "/stack");
    if (!stack) return refuse(stack.error());
    for (const steam::Layer& layer : *stack) problem.stack.push_back({layer});
    const auto depth = number_if(edge, "target_depth_metres");
    if (!depth) {
      return refuse({ErrorKind::bad_input,
                     "target_depth_metres is missing; an edge with its own stack needs it", where, "", "",
                     ""});
    }
    middle_depth = problem.target_depth_metres = *depth;
  } else {
    const std::string fill = text_of(edge, "fill");
    const auto stack = edge_stack(kind, covering_key, read_fill(fill));
    if (!stack) {
      if (stack.error().kind != ErrorKind::out_of_domain) return refuse(stack.error());
      family = edge_family_json(*edge_kind, steam::Claim::as_computed);
      return with_family(
          no_pace(basis, "unknown", reason("shape_not_modelled", stack.error().message), nullptr));
    }
    bound = stack->claim == steam::Claim::bound;
    family = edge_family_json(*edge_kind, stack->claim);
    problem.stack = stack->layers;
    middle_depth = stack->middle_depth_metres;
    depth_factor = stack->depth_factor;
    const double target = number_if(edge, "target_depth_metres").value_or(stack->target_depth_metres);
    problem.target_depth_metres = std::max(depth_factor * target, stack->least_marched_metres);
  }
  const double thickness = [&] {
    double sum = 0;
    for (const auto& layer : problem.stack) sum += layer.layer.thickness_metres;
    return sum;
  }();
  const double depth = problem.target_depth_metres / depth_factor;
  if (problem.target_depth_metres > thickness) {
    const double most = thickness / depth_factor;
    return refuse(
        {ErrorKind::bad_input,
         fmt::format("target_depth_metres is {:g} m; it must be at most {:g} m, the thickness of the layers",
                     depth, most),
         where + "/target_depth_metres", fmt::format("{:g}", depth), fmt::format("{:g}", most), "m"});
  }
  const Json depths{{"p50", std::min(middle_depth, depth)}, {"p90", depth}};
  if (is_barred(finish->action))
    return with_family(no_pace(basis, "barred",
                               reason("barred_finish", barred_words(finish->title, finish->effect)), depths));

  const steam::Calibration& calibration = basis.calibrations[calibration_for(basis, covering_key)];
  problem.calibration = calibration;
  problem.cloth_key = cloth_key(basis.machine, basis.head, covering_key);
  problem.stack_key = "stack|" + kind + "|" + covering_key;
  const auto wetting_test = number_if(edge, "wetting_limit_grams_per_m2");
  const double wetting_limit = wetting_test.value_or(settings.wetting_limit_grams_per_m2);
  problem.harm.wetting_kilograms_per_m2 = wetting_limit / 1e3;
  problem.harm.surface_celsius = finish->surface_celsius;
  problem.harm.seconds_allowed_above = finish->seconds_allowed;
  problem.start_celsius = settings.start_celsius;
  problem.air.celsius = settings.start_celsius;
  if (settings.damp) problem.start_activity = k_damp_activity;
  problem.confidence = settings.confidence;
  auto report = steam::find_pace(problem);
  if (!report) {
    Error error = report.error();
    if (error.kind == ErrorKind::out_of_domain)
      return with_family(no_pace(basis, "unknown", reason("no_solution", error.message), depths));
    error.where = where;
    return refuse(error);
  }
  const bool enough = report->effective_samples >= k_least_effective_share * report->samples;
  const PaceWords words{.basis = basis.word,
                        .tested_here = calibration.tested &&
                                       basis.coverings[calibration_for(basis, covering_key)] == covering_key,
                        .kind = kind,
                        .covering = covering->title,
                        .wetting_limit_grams_per_m2 = wetting_limit,
                        .wetting_tested = wetting_test.has_value(),
                        .target_depth_metres = depth,
                        .confidence = settings.confidence,
                        .bound = bound};

  Json out = with_family(no_pace(basis, "none", nullptr, depths));
  out["towel"] = word(calibration.towel);
  out["effective_samples"] = report->effective_samples;
  out["samples"] = report->samples;
  for (const steam::AtPace& at : report->curve) out["curve"].push_back(curve_json(at));
  const auto inch = std::find_if(report->curve.begin(), report->curve.end(), [](const steam::AtPace& at) {
    return at.pace_metres_per_second == steam::k_one_inch_per_second;
  });
  out["one_inch_per_second"] = {{"target_celsius", to_json(inch->target_celsius)},
                                {"lethal_share", inch->lethal_share},
                                {"condensate_grams_per_m2", 1e3 * inch->condensate_kilograms_per_m2.p50},
                                {"text", inch_words(*inch, bound)}};
  out["middle_case"] = middle_case(
      problem, report->has_window() ? report->planned->pace_metres_per_second : steam::k_one_inch_per_second);
  out["limited_by"] = {{"low", low_word(report->slow_limit)}, {"high", high_word(report->fast_limit)}};

  if (!report->has_window() || !enough) {
    out["reason"] = !enough ? reason("few_effective_samples", few_samples_words(*report))
                    : bound && report->fastest_metres_per_second <= steam::k_slowest_pace
                        ? bound_reason(*edge_kind, depth, settings.confidence)
                        : no_window_reason(words, *report);
    if (enough) {
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
    if (bound && out["verdict_at_recommended"] == "short") out["verdict_at_recommended"] = "not_proven";
    return out;
  }

  const steam::AtPace& planned = *report->planned;
  const double pace = planned.pace_metres_per_second;
  out["window_metres_per_second"] = {report->slowest_metres_per_second, report->fastest_metres_per_second};
  out["recommended_metres_per_second"] = pace;
  out["verdict_at_recommended"] = verdict_of(planned, enough);
  out["harm_at_recommended"] =
      finish->action != HarmAction::allow && finish->action != HarmAction::short_dwell ? "unknown"
      : planned.harmless_share >= settings.confidence - 1e-9                           ? "none"
      : planned.soak_share >= planned.scorch_share                                     ? "soak"
                                                                                       : "scorch";
  out["style"] = pace < k_glide_pace ? "place_hold_move" : "glide";
  if (pace < k_glide_pace) {
    out["hold_seconds"] = calibration.head_length_metres / pace;
    out["move_metres"] = calibration.head_length_metres;
  }
  out["reason"] = window_reason(words, *report);
  const double egg = planned.kill_egg;
  const double mobile = planned.kill_mobile;
  out["kill_probability_at_recommended"] = std::min(egg, mobile);
  out["kill_by_stage"] = {{"egg", egg}, {"nymph", mobile}, {"adult", mobile}};
  out["engorged_adult"] = {{"kill_probability", planned.kill_engorged}, {"text", engorged_words()}};
  const double wet50 = 1e3 * planned.condensate_kilograms_per_m2.p50;
  const double wet95 = 1e3 * planned.condensate_kilograms_per_m2.p95;
  out["condensate_grams_per_m2"] = {{"p50", wet50}, {"p95", wet95}};
  out["dry_minutes"] = {60 * wet50 / k_fast_drying_grams_per_m2_hour,
                        60 * wet95 / k_slow_drying_grams_per_m2_hour};
  return out;
}

}  // namespace lastegg
