// Question `dose`: the lethal dose of a series of temperatures, and the verdict.
#include <fmt/format.h>

#include <cmath>
#include <string>

#include "bugs/mortality/mortality.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

// A practice statement shown where people expect it: bugs and eggs die within a minute above 49 C (120 F).
constexpr double k_practice_celsius = 49;
constexpr double k_practice_seconds = 60;

Shape request_shape() {
  return object(
      {field("stage", choice({{"egg", "the stage that stands heat longest"},
                              {"nymph", "taken over from adults: no times by instar are known"},
                              {"adult", "unfed; a fed adult is shown apart"}},
                             "stage of the bug")),
       field("series",
             object({field("seconds",
                           list(number(Unit::second, "time of a reading"), "times, strictly increasing")
                               .items(2, 1000000)),
                     field("celsius",
                           list(number(Unit::celsius, "temperature of a reading"),
                                "temperatures at the coldest place where a bug can sit, one for each time")
                               .items(2, 1000000))},
                    "readings, joined by straight lines")),
       with_default("exposure",
                    choice({{"air", "hot air, or a core heated through; credit stops at 55 C"},
                            {"steam", "steam contact; credit stops at 70 C"}},
                           "what heats the place"),
                    "air"),
       with_default("uncertainty_celsius",
                    number(Unit::kelvin_difference, "taken off every reading").at_least(0).at_most(20), 0),
       optional(
           "longest_gap_seconds",
           number(
               Unit::second,
               "longer intervals are gaps and earn nothing; if left out, more than four usual intervals of a "
               "log of six readings or more")
               .above(0)),
       optional("z_kelvin",
                number(Unit::kelvin_difference, "override, for checking").at_least(1).at_most(20)),
       optional("onset_celsius",
                number(Unit::celsius, "override, for checking").at_least(-273.15).at_most(100)),
       optional("cap_celsius", number(Unit::celsius, "override, for checking").at_least(30).at_most(1000))},
      "a stage and a series of temperatures");
}

Shape verdict_shape() {
  return choice(
      {{"lethal", "at least twice the dose that kills 99 %, at the worse z, and nothing speaks against it"},
       {"short", "less than that"},
       {"not_proven", "too near to call, or something is missing; the reason says what"}},
      "verdict for this stage");
}

Shape reason_shape() {
  return object(
      {field("code", choice({{"enough", "the dose is enough"},
                             {"too_little", "the dose is too small"},
                             {"near_limit", "the dose is within the error of the calculation"},
                             {"slow_ramp", "eggs may harden on a slow rise"},
                             {"gap", "nobody knows what happened in a hole of the log"},
                             {"coarse_readings", "the readings lie too far apart for what they claim"},
                             {"body_lag", "enough for the place, not for the body"},
                             {"overridden", "parameters were changed by hand"}},
                            "why")),
       field("text", text("in a sentence"))},
      "what the verdict rests on");
}

Shape answer_shape() {
  return object(
      {field("equivalent_minutes",
             number(Unit::minute, "dose at the worse z, in minutes at the reference temperature")),
       field("reference_celsius", number(Unit::celsius, "reference temperature of the stage")),
       field("lt99_minutes", number(Unit::minute, "dose that kills 99 %")),
       field("ratio_to_lt99", ratio("R, the dose over it")),
       field("required_ratio", ratio("R that a verdict lethal asks for")), field("verdict", verdict_shape()),
       field("verdict_reason", reason_shape()),
       field("by_z", list(object({field("z_kelvin", number(Unit::kelvin_difference,
                                                           "temperature difference of a "
                                                           "tenfold change of time")),
                                  field("equivalent_minutes", number(Unit::minute, "dose"))},
                                 "one z"),
                          "both ends of the range of z")),
       field("onset_celsius", number(Unit::celsius, "below it nothing is earned")),
       field("cap_celsius", number(Unit::celsius, "above it nothing more is earned")),
       field("highest_celsius", number(Unit::celsius, "highest reading, uncertainty taken off")),
       field("ratio_with_body_lag", ratio("R of the body: of an egg, or of an unfed nymph or adult")),
       optional("ratio_engorged", ratio("R of a fed adult, shown apart: it is large and in sight")),
       optional("ramp_kelvin_per_minute",
                ratio("mean rate of the rise, in K/min, from the onset to the egg's reference")),
       field("gaps", list(object({field("from_seconds", number(Unit::second, "last reading before")),
                                  field("to_seconds", number(Unit::second, "first reading after"))},
                                 "one hole"),
                          "holes of the log that earned nothing")),
       field("kill_probability", ratio("share of bugs of this stage that this kills, over the disagreement "
                                       "of studies; at most 0.99"))},
      "dose and verdict");
}

std::string reason_text(const bugs::DoseReport& report, const bugs::KillRules& rules) {
  using bugs::VerdictReason;
  switch (report.reason) {
    case VerdictReason::enough:
      return say("{:.3g} times the dose that kills 99 %; {:g} is asked for", report.ratio,
                 rules.required_ratio);
    case VerdictReason::too_little:
      return say("{:.3g} times the dose that kills 99 %; {:g} is asked for", report.ratio,
                 rules.required_ratio);
    case VerdictReason::near_limit:
      return say("{:.3g} times the dose that kills 99 % is too near to the {:g} asked for", report.ratio,
                 rules.required_ratio);
    case VerdictReason::slow_ramp:
      return say(
          "the dose is enough, but it rose at {:.2g} K/min and eggs may harden below {:g} K/min; reach {:g} "
          "C at this "
          "place (the highest was {:.1f} C)",
          report.ramp_kelvin_per_minute.value_or(0), rules.slow_ramp_kelvin_per_minute,
          rules.slow_ramp_celsius, report.highest_celsius);
    case VerdictReason::gap:
      return report.gaps.size() == 1
                 ? say("{} hole in the log: what happened there is not known", report.gaps.size())
                 : say("{} holes in the log: what happened there is not known", report.gaps.size());
    case VerdictReason::coarse_readings:
      return say(
          "readings more than {:g} min apart: by the lower of neighbouring readings the dose is {:.3g} of "
          "the {:g} asked for",
          rules.coarse_seconds / 60, report.cautious_ratio, rules.required_ratio);
    case VerdictReason::body_lag:
      return say("enough for the place, but the body follows slowly: {:.3g} of the {:g} asked for",
                 report.ratio_with_lag, rules.required_ratio);
    case VerdictReason::overridden:
      return say("z, onset or cap were given by hand: such a dose proves nothing");
  }
  return {};
}

double seconds_above(const bugs::TemperatureSeries& series, double celsius) {
  double sum = 0;
  for (std::size_t i = 1; i < series.seconds.size(); ++i) {
    const double low = std::fmin(series.celsius[i - 1], series.celsius[i]);
    const double high = std::fmax(series.celsius[i - 1], series.celsius[i]);
    if (high <= celsius) continue;
    const double share = low >= celsius ? 1 : (high - celsius) / (high - low);
    sum += share * (series.seconds[i] - series.seconds[i - 1]);
  }
  return sum;
}

std::vector<Warning> warnings_of(const bugs::DoseReport& report, const bugs::DoseProblem& problem,
                                 const bugs::TemperatureSeries& series) {
  std::vector<Warning> warnings;
  if (problem.uncertainty_celsius == 0) {
    warnings.push_back({"no_uncertainty", say("no uncertainty of the sensor was given; one kelvin too much "
                                              "on it is a dose 1.6 to 1.9 times too "
                                              "high")});
  }
  for (const bugs::Gap& gap : report.gaps) {
    warnings.push_back({"gap", say("no reading for {:.0f} s after {:.0f} s; this time earns nothing",
                                   gap.to_seconds - gap.from_seconds, gap.from_seconds)});
  }
  if (series.celsius[0] >= bugs::law_of(problem).onset_celsius && problem.exposure == bugs::Exposure::air) {
    warnings.push_back({"rise_not_seen", say("the series begins hot: whether it rose slowly, so that eggs "
                                             "may have hardened, cannot be seen")});
  }
  if (report.verdict != bugs::Verdict::lethal &&
      seconds_above(series, k_practice_celsius) >= k_practice_seconds) {
    warnings.push_back(
        {"practice_is_less_cautious",
         say("common practice has bugs and eggs die within a minute above 49 C (120 F); laboratory times for "
             "eggs are longer, and this verdict goes by them")});
  }
  return warnings;
}

// The core names places below the series; the request calls it "/series".
Refusal in_request(Error error) {
  if (error.kind == ErrorKind::bad_input) error.where = "/series" + error.where;
  return refuse(std::move(error));
}

Result<Answer> solve(const Json& request) {
  const std::string stage = text_of(request, "stage");
  bugs::DoseProblem problem;
  problem.stage = stage == "egg"     ? bugs::Stage::egg
                  : stage == "nymph" ? bugs::Stage::nymph
                                     : bugs::Stage::adult;
  problem.exposure = text_of(request, "exposure") == "steam" ? bugs::Exposure::steam : bugs::Exposure::air;
  problem.uncertainty_celsius = number_of(request, "uncertainty_celsius");
  problem.longest_interval_seconds = number_if(request, "longest_gap_seconds");
  problem.z_kelvin = number_if(request, "z_kelvin");
  problem.onset_celsius = number_if(request, "onset_celsius");
  problem.cap_celsius = number_if(request, "cap_celsius");
  const bugs::KillLaw law = bugs::law_of(problem);
  if (!(law.cap_celsius > law.onset_celsius)) {
    return refuse({ErrorKind::bad_input,
                   say("cap_celsius is {:g} C; it has to lie above the onset of {:g} C", law.cap_celsius,
                       law.onset_celsius),
                   problem.cap_celsius ? "/cap_celsius" : "/onset_celsius",
                   fmt::format("{:g}", law.cap_celsius), fmt::format("{:g}", law.onset_celsius), "C"});
  }

  const std::vector<double> seconds = numbers_of(request.at("series"), "seconds");
  const std::vector<double> celsius = numbers_of(request.at("series"), "celsius");
  const bugs::TemperatureSeries series{seconds, celsius};
  const auto report = bugs::judge_series(series, problem);
  if (!report) return in_request(report.error());

  Answer answer;
  Json& out = answer.result;
  out["equivalent_minutes"] =
      std::fmin(report->equivalent_minutes_by_z[0], report->equivalent_minutes_by_z[1]);
  out["reference_celsius"] = law.reference_celsius;
  out["lt99_minutes"] = law.lt99_minutes;
  out["ratio_to_lt99"] = report->ratio;
  out["required_ratio"] = bugs::required_ratio();
  out["verdict"] = bugs::verdict_word(report->verdict);
  out["verdict_reason"] = {{"code", bugs::reason_word(report->reason)},
                           {"text", reason_text(*report, bugs::kill_rules())}};
  out["by_z"] = Json::array();
  for (std::size_t z = 0; z < (problem.z_kelvin ? 1u : 2u); ++z) {
    out["by_z"].push_back(
        {{"z_kelvin", law.z_kelvin[z]}, {"equivalent_minutes", report->equivalent_minutes_by_z[z]}});
  }
  out["onset_celsius"] = law.onset_celsius;
  out["cap_celsius"] = law.cap_celsius;
  out["highest_celsius"] = report->highest_celsius;
  out["ratio_with_body_lag"] = report->ratio_with_lag;
  if (report->engorged_ratio) out["ratio_engorged"] = *report->engorged_ratio;
  if (report->ramp_kelvin_per_minute) out["ramp_kelvin_per_minute"] = *report->ramp_kelvin_per_minute;
  out["gaps"] = Json::array();
  for (const bugs::Gap& gap : report->gaps)
    out["gaps"].push_back({{"from_seconds", gap.from_seconds}, {"to_seconds", gap.to_seconds}});
  out["kill_probability"] = bugs::printed_probability(
      bugs::expected_kill(problem.stage, numerics::log10(report->ratio_with_lag), problem.exposure));
  answer.data_keys = {std::string(bugs::k_kill_data_key)};
  answer.warnings = warnings_of(*report, problem, series);
  return answer;
}

}  // namespace

const Question& dose_question() {
  static const Question question{"dose",
                                 "What a series of temperatures at one place does to eggs, nymphs or adults "
                                 "there, and whether it is lethal.",
                                 request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
