#include "engine/fold_test_answer.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/fold_test_words.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/uncertainty/weighted.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

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

Shape kind_shape(std::string text) {
  return choice({{"pass", "one pass over the fold"},
                 {"stationary", "head at rest on the fold"},
                 {"coupon", "one pass over a plate"},
                 {"under_real_edge", "one pass over a real edge"},
                 {"surface", "what lies on top some seconds after a pass"}},
                std::move(text));
}

Shape contradiction_shape() {
  return choice({{"slower_is_colder", "a slower pass is colder"},
                 {"deeper_is_hotter", "a deeper tip is hotter"},
                 {"repeats_differ", "pace and place are the same, the readings are not"},
                 {"rest_is_colder", "a head at rest is colder than one that passes"},
                 {"above_boiling", "hotter than water boils there"}},
                "what cannot be");
}

Shape shift_shape(Shape value) {
  return object(
      {field("value", std::move(value)),
       field("spread", ratio("standard deviation, of a ratio that of its logarithm")),
       field("probability_weaker", ratio("that it is lower now"))},
      "a change that the readings suggest; told too small, since both tests lean on the same prior");
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

}  // namespace

Shape fold_test_answer_shape() {
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
                          optional("covering", text("of a real edge; the test's own if left out")),
                          field("depth_metres", number(Unit::metre, "below the surface")),
                          field("quantiles", spread_shape(Unit::celsius, "peak in the fold")),
                          field("lethal_share", ratio("weight that kills eggs, nymphs and unfed adults"))},
                         "one pace and depth"),
                  "the fold over pace")),
       field("readings",
             list(object({field("index", integer("from 0")), field("kind", kind_shape("what was done")),
                          field("layers", integer("over the tip; 0 for a coupon")),
                          field("measured_celsius",
                                number(Unit::celsius,
                                       "as given; of a surface the one behind what a gun showed, "
                                       "or the nearest that a palm's word allows")),
                          field("expected_celsius", number(Unit::celsius, "what the model expects there")),
                          field("standard_score",
                                ratio("(measured - expected) / error of this kind of reading")),
                          optional("remark", text("when it does not fit"))},
                         "one reading"),
                  "how the readings fit")),
       field("words", list(text("sentence"), "what your steamer does, in words")),
       field("unidentified", list(text("key of the posterior"), "what the readings cannot tell")),
       field("contradictions",
             list(object({field("code", contradiction_shape()),
                          field("readings", list(integer("from 0"), "the pair, or the one")),
                          optional("suspect", integer("the one that disagrees with several others, from 0")),
                          field("kelvin", number(Unit::kelvin_difference, "by how much they disagree")),
                          field("text", text("in words")), field("advice", text("what to do"))},
                         "readings that cannot all be right"),
                  "which hold the verdict at not proven where it hangs on them")),
       field(
           "next_reading",
           object({field("code", choice({{"tells_most", "worth taking"},
                                         {"little_to_gain", "no single reading would tell much"}},
                                        "whether it is worth the water")),
                   field("kind", kind_shape("what to do")),
                   field("layers", integer("over the tip; 0 for a coupon")),
                   optional("pace_metres_per_second", number(Unit::metre_per_second, "pace")),
                   optional("hold_seconds", number(Unit::second, "of a head at rest")),
                   field("spread_now", ratio("standard deviation of ln(fastest lethal pace), as known now")),
                   field("spread_then", ratio("the same, expected after the reading")),
                   field("text", text("in words")),
                   field("candidates", list(object({field("kind", kind_shape("what to do")),
                                                    field("layers", integer("over the tip")),
                                                    optional("pace_metres_per_second",
                                                             number(Unit::metre_per_second, "pace")),
                                                    field("spread_then", ratio("expected after it"))},
                                                   "one that was compared"),
                                            "best first"))},
                  "which reading would tell most")),
       optional("probe", object({field("time_constant_seconds", number(Unit::second, "63 % of a jump")),
                                 field("low", number(Unit::second, "5 %, in a fold")),
                                 field("high", number(Unit::second, "95 %, in a fold")),
                                 field("text", text("in words"))},
                                "what the dip tells of the probe")),
       optional("drift",
                object({field("verdict", choice({{"unchanged", "as the last test makes expect"},
                                                 {"weaker", "colder than that"},
                                                 {"stronger", "hotter than that"},
                                                 {"not_proven", "too few readings to compare"}},
                                                "whether the machine has changed")),
                        field("readings", integer("compared")),
                        field("probability", ratio("of readings so far off, if nothing had changed")),
                        field("mean_kelvin", number(Unit::kelvin_difference, "readings less expected")),
                        field("dew_shift", shift_shape(number(Unit::kelvin_difference, "now less before"))),
                        field("film_ratio", shift_shape(ratio("now over before"))),
                        field("text", text("in words")), field("advice", text("what to do"))},
                       "against the earlier test, if one was given")),
       optional(
           "edge_calibrations",
           list(calibration_shape(), "for the coverings of real edges that were read, beside calibration")),
       field("calibration", calibration_shape())},
      "what the steamer delivers, how sure");
}

const char* unknown_key(std::size_t k) {
  return k_names[k].key;
}

Json posterior_json(const steam::Calibration& calibration) {
  const std::size_t n = calibration.weights.size();
  std::vector<std::vector<double>> values(steam::k_unknown_count, std::vector<double>(n));
  for (std::size_t i = 0; i < n; ++i) {
    const auto head = steam::head_on_cloth(steam::own_scores(calibration, static_cast<int>(i)),
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

Json fold_over_pace_json(const ReadFoldTest& read, const Outlook& outlook) {
  Json out = Json::array();
  for (const OutlookPoint& p : outlook.points) {
    Json row{{"pace_metres_per_second", p.forecast.reading.pace_metres_per_second},
             {"layers", p.layers},
             {"depth_metres", p.forecast.reading.depth_metres},
             {"quantiles", to_json(p.point.fold_celsius)},
             {"lethal_share", p.point.lethal_share}};
    if (p.covering > 0) row["covering"] = read.coverings[p.covering];
    out.push_back(std::move(row));
  }
  return out;
}

Json readings_json(const ReadFoldTest& read, const steam::FitReport& fit) {
  Json out = Json::array();
  for (std::size_t i = 0; i < fit.expected_celsius.size(); ++i) {
    const steam::FoldReading& reading = read.test.readings[i];
    Json row{{"index", i},
             {"kind", word(reading.kind)},
             {"layers", read.layers[i]},
             {"measured_celsius",
              reading.high_celsius
                  ? std::clamp(fit.expected_celsius[i], reading.peak_celsius, *reading.high_celsius)
                  : reading.peak_celsius},
             {"expected_celsius", fit.expected_celsius[i]},
             {"standard_score", fit.standard_scores[i]}};
    if (std::fabs(fit.standard_scores[i]) > k_odd_score) {
      row["remark"] = say(
          "does not fit the others: {:.0f} C where {:.0f} C is expected; check the tip's place and the pace",
          reading.peak_celsius, fit.expected_celsius[i]);
    }
    out.push_back(std::move(row));
  }
  return out;
}

Json contradictions_json(const ReadFoldTest& read, const std::vector<steam::Contradiction>& contradictions) {
  Json out = Json::array();
  for (const steam::Contradiction& one : contradictions) {
    Json row = contradiction_words(read, one);
    row["kelvin"] = one.kelvin;
    row["readings"] = Json::array({one.first});
    if (one.second) row["readings"].push_back(*one.second);
    if (one.suspect) row["suspect"] = *one.suspect;
    out.push_back(std::move(row));
  }
  return out;
}

Json next_reading_json(const NextReading& next) {
  const auto row_of = [](const CandidateReading& candidate) {
    Json row{{"kind", word(candidate.reading.kind)},
             {"layers", candidate.layers},
             {"spread_then", candidate.spread_then}};
    if (candidate.reading.kind != steam::ReadingKind::stationary)
      row["pace_metres_per_second"] = candidate.reading.pace_metres_per_second;
    return row;
  };
  const CandidateReading& best = next.candidates.front();
  Json out = row_of(best);
  if (best.reading.kind == steam::ReadingKind::stationary) out["hold_seconds"] = best.reading.hold_seconds;
  out["code"] = next_code(next);
  out["spread_now"] = next.spread_now;
  out["text"] = next_words(next);
  out["candidates"] = Json::array();
  for (const CandidateReading& candidate : next.candidates) out["candidates"].push_back(row_of(candidate));
  return out;
}

Json drift_json(const steam::Drift& drift) {
  using Verdict = steam::Drift::Verdict;
  Json out = drift_words(drift);
  out["verdict"] = drift.verdict == Verdict::unchanged  ? "unchanged"
                   : drift.verdict == Verdict::weaker   ? "weaker"
                   : drift.verdict == Verdict::stronger ? "stronger"
                                                        : "not_proven";
  out["readings"] = drift.readings;
  out["probability"] = drift.probability;
  out["mean_kelvin"] = drift.mean_kelvin;
  out["dew_shift"] = {{"value", drift.dew_shift_kelvin},
                      {"spread", drift.dew_shift_spread_kelvin},
                      {"probability_weaker", drift.weaker_dew_probability}};
  out["film_ratio"] = {{"value", drift.film_ratio},
                       {"spread", drift.film_ratio_log_spread},
                       {"probability_weaker", drift.weaker_film_probability}};
  return out;
}

}  // namespace lastegg
