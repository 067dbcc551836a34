// Question `fold_test`: what a thermometer in a fold says about this steamer.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/calibration_json.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_forecast.h"

namespace lastegg {
namespace {

using namespace shape;
using steam::FoldPoint;

constexpr int k_forecast_samples = 256;                   // the curves; verdicts of edges use all samples
constexpr double k_least_effective_share = 400.0 / 1024;  // below: not proven (judgement)
constexpr double k_sure = 0.95;
constexpr double k_unidentified_narrowing =
    0.75;                            // posterior over prior spread above which readings told little
constexpr double k_odd_score = 2.5;  // a reading this many errors off is named

struct UnknownName {
  const char* key;
  Unit unit;
  const char* text;
};
constexpr UnknownName k_names[] = {
    {"dew_temperature_celsius", Unit::celsius,
     "dew temperature of the steam under the head: the ceiling of any wet surface"},
    {"film_watts_per_m2_kelvin", Unit::watt_per_m2_kelvin, "effective exchange between steam and cloth"},
    {"vapour_efficiency", Unit::none, "how well vapour moves in this cloth (phi)"},
    {"forced_gas_metres_per_second", Unit::metre_per_second,
     "speed at which steam is pushed into the cloth"}};

Shape verdict_shape(std::string text) {
  return choice({{"lethal", "kills with the stated confidence"},
                 {"short", "does not reach the dose, with the stated confidence"},
                 {"not_proven", "neither is sure"}},
                std::move(text));
}

Shape answer_shape() {
  std::vector<Field> posterior;
  for (const UnknownName& name : k_names) {
    const auto value = [&](const char* what) {
      return name.unit == Unit::none ? ratio(what) : number(name.unit, what);
    };
    const auto spread = [&](const char* what) {
      return name.unit == Unit::celsius ? number(Unit::kelvin_difference, what) : value(what);
    };
    Shape quantiles =
        object({field("p05", value("5 %")), field("p25", value("25 %")), field("p50", value("half")),
                field("p75", value("75 %")), field("p95", value("95 %"))},
               "quantiles");
    posterior.push_back(
        field(name.key, object({field("mean", value("weighted mean")),
                                field("sd", spread("standard deviation")), field("quantiles", quantiles)},
                               name.text)));
  }
  return object(
      {field("posterior", object(std::move(posterior), "what this machine, head and towel deliver")),
       field("samples", integer("size of the ensemble")),
       field("effective_samples", ratio("samples that the weights leave")),
       field("verdict", verdict_shape("egg kill at working pace under the deepest tested layers")),
       field("verdict_reason", reason_shape("why")),
       field("practice",
             object({field("low_celsius",
                           number(Unit::celsius, "lower end of the practice target (common practice)")),
                     field("high_celsius", number(Unit::celsius, "upper end")),
                     field("pace_metres_per_second", number(Unit::metre_per_second, "working pace judged")),
                     field("layers", integer("layers over the tip judged")),
                     field("reached", choice({{"yes", "at least 95 % of the weight reaches it"},
                                              {"no", "at most 5 % does"},
                                              {"not_proven", "neither"}},
                                             "whether the fold reaches the practice target")),
                     field("probability", ratio("weight that reaches it")), field("text", text("in words"))},
                    "against the practice target")),
       field("fold_celsius_at",
             list(object({field("pace_metres_per_second", number(Unit::metre_per_second, "pace")),
                          field("layers", integer("layers over the place")),
                          field("depth_metres", number(Unit::metre, "below the surface")),
                          field("quantiles", spread_shape(Unit::celsius, "peak in the fold")),
                          field("lethal_share", ratio("weight that kills eggs, nymphs and unfed adults"))},
                         "one pace and depth"),
                  "the fold over pace")),
       field("readings",
             list(object({field("index", integer("from 0")),
                          field("measured_celsius", number(Unit::celsius, "as given")),
                          field("expected_celsius",
                                number(Unit::celsius, "what the model expects the probe to show")),
                          field("standard_score", ratio("(measured - expected) / 2.5 K")),
                          optional("remark", text("when it does not fit"))},
                         "one reading"),
                  "how the readings fit")),
       field("words", list(text("sentence"), "what your steamer does, in words")),
       field("unidentified", list(text("key of the posterior"), "what the readings cannot tell")),
       field("next_reading", object({field("layers", integer("over the tip")),
                                     field("pace_metres_per_second", number(Unit::metre_per_second, "pace")),
                                     field("text", text("in words"))},
                                    "which reading would tell most")),
       field("calibration", calibration_shape())},
      "what the steamer delivers, how sure");
}

double unknown_value(const steam::HeadOnCloth& head, std::size_t k) {
  switch (k) {
    case 0:
      return head.dew_celsius;
    case 1:
      return head.film_watts_per_m2_kelvin;
    case 2:
      return head.vapour_efficiency;
    default:
      return head.forced_gas_metres_per_second;
  }
}

Json posterior_json(const steam::Calibration& calibration) {
  const std::size_t n = calibration.weights.size();
  std::vector<std::vector<double>> values(steam::k_unknown_count, std::vector<double>(n));
  for (std::size_t i = 0; i < n; ++i) {
    const auto head = steam::head_on_cloth(
        steam::calibrated_scores(calibration, calibration.cloth_key, static_cast<int>(i)),
        calibration.pressure_pascal, calibration.towel);
    for (std::size_t k = 0; k < steam::k_unknown_count; ++k) values[k][i] = unknown_value(head, k);
  }
  Json out;
  for (std::size_t k = 0; k < steam::k_unknown_count; ++k) {
    double mean = 0, square = 0;
    for (std::size_t i = 0; i < n; ++i) mean += calibration.weights[i] * values[k][i];
    for (std::size_t i = 0; i < n; ++i)
      square += calibration.weights[i] * (values[k][i] - mean) * (values[k][i] - mean);
    const auto quantile = [&](double p) { return weighted_quantile(values[k], calibration.weights, p); };
    out[k_names[k].key] = {{"mean", mean},
                           {"sd", std::sqrt(square)},
                           {"quantiles",
                            {{"p05", quantile(0.05)},
                             {"p25", quantile(0.25)},
                             {"p50", quantile(0.5)},
                             {"p75", quantile(0.75)},
                             {"p95", quantile(0.95)}}}};
  }
  return out;
}

// The tested depths, shallow first, each with the stack in which it was tested.
struct TestedPlace {
  int layers;
  double depth_metres;
  steam::Stack stack;
};

std::vector<TestedPlace> tested_places(const ReadFoldTest& read) {
  std::vector<TestedPlace> places;
  for (std::size_t i = 0; i < read.test.readings.size(); ++i) {
    const steam::FoldReading& reading = read.test.readings[i];
    const bool known = std::any_of(places.begin(), places.end(), [&](const TestedPlace& place) {
      return place.layers == read.layers[i] && place.depth_metres == reading.depth_metres;
    });
    if (!known) places.push_back({read.layers[i], reading.depth_metres, reading.stack});
  }
  std::sort(places.begin(), places.end(),
            [](const TestedPlace& a, const TestedPlace& b) { return a.depth_metres < b.depth_metres; });
  return places;
}

struct LayeredPoint {
  int layers;
  FoldPoint point;
};

Result<std::vector<LayeredPoint>> forecast(const ReadFoldTest& read, const steam::Calibration& calibration) {
  std::vector<double> paces(steam::k_paces.begin() + 1, steam::k_paces.end() - 1);
  const double working = read.working_pace_metres_per_second;
  if (std::find(paces.begin(), paces.end(), working) == paces.end()) paces.push_back(working);
  std::sort(paces.begin(), paces.end());
  std::vector<LayeredPoint> out;
  for (const TestedPlace& place : tested_places(read)) {
    const auto points = steam::fold_forecast(calibration, read.test, place.stack, {place.depth_metres}, paces,
                                             k_forecast_samples);
    if (!points) return refuse(points.error());
    for (const FoldPoint& point : *points) out.push_back({place.layers, point});
  }
  return out;
}

const char* layer_word(int layers) {
  return layers == 1 ? "layer" : "layers";
}

std::vector<std::string> words_of(const ReadFoldTest& read, const Json& posterior,
                                  const std::vector<LayeredPoint>& points) {
  std::vector<std::string> words;
  const double working = read.working_pace_metres_per_second;
  for (const LayeredPoint& p : points) {
    if (p.point.pace_metres_per_second != working) continue;
    words.push_back(fmt::format(
        "At {:.3g} mm/s the fold under {} {} reaches about {:.0f} C (90 % between {:.0f} and {:.0f} C).",
        1e3 * working, p.layers, layer_word(p.layers), p.point.fold_celsius.p50, p.point.fold_celsius.p05,
        p.point.fold_celsius.p95));
  }
  const Json& dew = posterior.at("dew_temperature_celsius").at("quantiles");
  words.push_back(fmt::format("No wet cloth under this head gets hotter than {:.0f} to {:.0f} C.",
                              dew.at("p05").get<double>(), dew.at("p95").get<double>()));
  double fastest = 0;
  int layers = 0;
  for (const LayeredPoint& p : points) layers = std::max(layers, p.layers);
  for (const LayeredPoint& p : points) {
    if (p.layers == layers && p.point.lethal_share >= k_sure)
      fastest = std::max(fastest, p.point.pace_metres_per_second);
  }
  words.push_back(
      fastest > 0
          ? fmt::format(
                "Under {} {} of this fold it kills eggs with 95 % confidence at {:.3g} mm/s and slower.",
                layers, layer_word(layers), 1e3 * fastest)
          : fmt::format(
                "Under {} {} of this fold no pace down to {:.3g} mm/s kills eggs with 95 % confidence.",
                layers, layer_word(layers), 1e3 * steam::k_paces[1]));
  return words;
}

Result<Answer> solve(const Json& request) {
  const auto read = read_fold_test(request, "");
  if (!read) return refuse(read.error());
  const auto fit = steam::calibrate(read->test, read->samples);
  if (!fit) return refuse(fit.error());
  const steam::Calibration& calibration = fit->calibration;
  const auto points = forecast(*read, calibration);
  if (!points) return refuse(points.error());

  Answer answer;
  answer.warnings = read->warnings;
  answer.data_keys = {"materials/1", "mortality/1"};
  Json& out = answer.result;
  out["posterior"] = posterior_json(calibration);
  out["samples"] = read->samples;
  out["effective_samples"] = calibration.effective_samples;

  const double working = read->working_pace_metres_per_second;
  const FoldPoint* shallow = nullptr;
  const LayeredPoint* deep = nullptr;
  int shallow_layers = 0;
  for (const LayeredPoint& p : *points) {
    if (p.point.pace_metres_per_second != working) continue;
    if (shallow == nullptr) {
      shallow = &p.point;
      shallow_layers = p.layers;
    }
    deep = &p;
  }
  const bool enough = calibration.effective_samples >= k_least_effective_share * read->samples;
  const double share = deep->point.lethal_share;
  const std::string verdict = !enough               ? "not_proven"
                              : share >= k_sure     ? "lethal"
                              : share <= 1 - k_sure ? "short"
                                                    : "not_proven";
  out["verdict"] = verdict;
  out["verdict_reason"] =
      !enough
          ? reason("few_effective_samples", fmt::format("The readings leave only {:.0f} effective samples of "
                                                        "{}; the model cannot follow them. Look for a "
                                                        "misread value, or repeat the test",
                                                        calibration.effective_samples, read->samples))
          : reason("share_at_working_pace",
                   fmt::format("At {:.3g} mm/s under {} {}, eggs, nymphs and unfed adults die in {:.0f} of "
                               "100 cases that fit the readings",
                               1e3 * working, deep->layers, layer_word(deep->layers), 100 * share));
  const double reaching = shallow->practice_share;
  const std::string reached = !enough                  ? "not_proven"
                              : reaching >= k_sure     ? "yes"
                              : reaching <= 1 - k_sure ? "no"
                                                       : "not_proven";
  out["practice"] = {
      {"low_celsius", steam::k_practice_low_celsius},
      {"high_celsius", steam::k_practice_high_celsius},
      {"pace_metres_per_second", working},
      {"layers", shallow_layers},
      {"reached", reached},
      {"probability", std::min(reaching, 0.99)},
      {"text",
       fmt::format(
           "Common practice asks for 71 to 82 C in the fold at working pace; under {} {} at {:.3g} mm/s this "
           "head reaches 71 C in {:.0f} of 100 cases that fit the readings",
           shallow_layers, layer_word(shallow_layers), 1e3 * working, 100 * reaching)}};
  out["fold_celsius_at"] = Json::array();
  const LayeredPoint* least_sure = &points->front();
  for (const LayeredPoint& p : *points) {
    out["fold_celsius_at"].push_back({{"pace_metres_per_second", p.point.pace_metres_per_second},
                                      {"layers", p.layers},
                                      {"depth_metres", p.point.depth_metres},
                                      {"quantiles", to_json(p.point.fold_celsius)},
                                      {"lethal_share", p.point.lethal_share}});
    if (p.point.probe_spread_kelvin > least_sure->point.probe_spread_kelvin) least_sure = &p;
  }
  out["readings"] = Json::array();
  for (std::size_t i = 0; i < fit->expected_celsius.size(); ++i) {
    Json row{{"index", i},
             {"measured_celsius", read->test.readings[i].peak_celsius},
             {"expected_celsius", fit->expected_celsius[i]},
             {"standard_score", fit->standard_scores[i]}};
    if (std::fabs(fit->standard_scores[i]) > k_odd_score) {
      row["remark"] = fmt::format(
          "does not fit the others: {:.0f} C where {:.0f} C is expected; check the tip's place and the pace",
          read->test.readings[i].peak_celsius, fit->expected_celsius[i]);
    }
    out["readings"].push_back(std::move(row));
  }
  out["words"] = words_of(*read, out["posterior"], *points);
  out["unidentified"] = Json::array();
  for (std::size_t k = 0; k < steam::k_unknown_count; ++k) {
    if (fit->narrowing[k] > k_unidentified_narrowing) out["unidentified"].push_back(k_names[k].key);
  }
  out["next_reading"] = {
      {"layers", least_sure->layers},
      {"pace_metres_per_second", least_sure->point.pace_metres_per_second},
      {"text",
       fmt::format(
           "A reading under {} {} at {:.3g} mm/s: there the model is least sure ({:.0f} K either way)",
           least_sure->layers, layer_word(least_sure->layers), 1e3 * least_sure->point.pace_metres_per_second,
           least_sure->point.probe_spread_kelvin)}};
  out["calibration"] = to_json(calibration, read->covering);
  return answer;
}

}  // namespace

const Question& fold_test_question() {
  static const Question question{
      "fold_test", "What a thermometer in a fold says about this machine, head and towel.",
      object(fold_test_fields(), "the kit, the fold and its readings"), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
