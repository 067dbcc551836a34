// Question `pass`: one pass of a known head over a known stack.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/numerics/elementary.h"
#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/kill.h"
#include "treatments/steam/steamer/unknowns.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

constexpr double k_series_step_kelvin = 0.5;
constexpr double k_nearest_boiling_kelvin = 0.3;
constexpr double k_surface_times_seconds[] = {0, 0.3, 0.5, 1, 2, 3, 5};
constexpr std::size_t k_thinning = 4;  // every so many steps of the shown resolution are printed

std::vector<Field> request_fields() {
  std::vector<Field> fields{
      field("head", head_shape(true)),
      field("stack", stack_shape("layers from the steamed surface down")),
      field("vapour_efficiency", ratio("how well vapour moves in this cloth, against the model's cloth (phi)")
                                     .at_least(0)
                                     .at_most(1.5)),
      with_default("start_celsius",
                   number(Unit::celsius, "temperature of cloth and bugs before").at_least(-25).at_most(60),
                   20),
      with_default("start_activity", ratio("relative humidity in the pores before").at_least(0).at_most(0.95),
                   0.5),
      optional(
          "air",
          object(
              {with_default(
                   "film_watts_per_m2_kelvin",
                   number(Unit::watt_per_m2_kelvin, "exchange with room air").at_least(1).at_most(100), 10),
               optional("celsius",
                        number(Unit::celsius, "room temperature; the start temperature if left out")
                            .at_least(-25)
                            .at_most(60)),
               with_default("relative_humidity", ratio("of the room").at_least(0).at_most(1), 0.5)},
              "room air around the pass")),
      with_default("passes", integer("passes one after the other").at_least(1).at_most(10), 1),
      with_default("gap_seconds", number(Unit::second, "time between passes").at_least(0.1).at_most(3600),
                   20),
      field("depths_metres",
            list(number(Unit::metre, "depth below the steamed surface").at_least(0), "places asked for")
                .items(1, 64)),
      with_default("observe_seconds",
                   number(Unit::second, "time watched after the last pass").at_least(1).at_most(3600), 60)};
  for (Field& pressure : pressure_fields()) fields.push_back(std::move(pressure));
  return fields;
}

Shape answer_shape() {
  const Shape ratio_of_stage = ratio("log10 of the dose ratio R at the worst z, body lag included");
  return object(
      {field("depths",
             list(object({field("depth_metres", number(Unit::metre, "as asked")),
                          field("peak_celsius", number(Unit::celsius, "highest temperature")),
                          field("peak_seconds",
                                number(Unit::second, "when, from the arrival of the leading skirt")),
                          field("log10_egg_dose",
                                ratio("log10 of the equivalent minutes at 48 C with z = 4 K over 71.5, "
                                      "without onset, cap or lag"))},
                         "one place"),
                  "the places asked for")),
       field("dose", list(object({field("egg", ratio_of_stage), field("nymph", ratio_of_stage),
                                  field("adult", ratio_of_stage), field("engorged_adult", ratio_of_stage)},
                                 "per stage"),
                          "per depth: what counts for a verdict")),
       field("water_gain_at_cover_end_grams_per_m2",
             number(Unit::gram_per_m2, "water gained when the head has passed")),
       field("water_gain_at_liftoff_grams_per_m2",
             number(Unit::gram_per_m2, "water gained when the steam ends")),
       field("condensate_at_liftoff_grams_per_m2",
             number(Unit::gram_per_m2, "of it not vapour in the pores")),
       field("liftoff_seconds", number(Unit::second, "when the steam ends")),
       field("surface_after_celsius",
             list(object({field("seconds_after", number(Unit::second, "after the steam ends")),
                          field("celsius", number(Unit::celsius, "of the surface"))},
                         "a moment"),
                  "the surface afterwards")),
       field("highest_celsius", number(Unit::celsius, "highest temperature of any place while steamed")),
       field("times_seconds",
             list(number(Unit::second, "from the arrival of the leading skirt"), "times of the table")),
       field("temperatures_celsius",
             list(list(number(Unit::celsius, "temperature"), "per depth"), "per time")),
       field("ledger",
             object({field("energy_error_relative", ratio("energy that the march lost, of what came in")),
                     field("water_error_relative", ratio("water that the march lost, of what came in"))},
                    "closure of the books")),
       field("branches", shape::text("hash of the discrete choices of the run"))},
      "what the pass did");
}

// log10 of the equivalent minutes at 48 C, z = 4 K, over 71.5: the plain measure of the contract.
double plain_log_dose(const steam::Series& series) {
  const double rate_per_kelvin = std::log(10.0) / 4.0;
  double seconds = 0;
  for (std::size_t i = 1; i < series.seconds.size(); ++i) {
    const double dt = series.seconds[i] - series.seconds[i - 1];
    const double a = rate_per_kelvin * (series.celsius[i - 1] - 48.0);
    const double b = rate_per_kelvin * (series.celsius[i] - 48.0);
    const double mean = std::fabs(b - a) < 1e-7 ? numerics::exp(0.5 * (a + b))
                                                : (numerics::exp(b) - numerics::exp(a)) / (b - a);
    seconds += dt * mean;
  }
  return numerics::log10(seconds / 60.0 / 71.5);
}

double value_at(const steam::Series& series, double seconds) {
  const auto after = std::lower_bound(series.seconds.begin(), series.seconds.end(), seconds);
  if (after == series.seconds.begin()) return series.celsius.front();
  if (after == series.seconds.end()) return series.celsius.back();
  const auto i = static_cast<std::size_t>(after - series.seconds.begin());
  const double share = (seconds - series.seconds[i - 1]) / (series.seconds[i] - series.seconds[i - 1]);
  return series.celsius[i - 1] + share * (series.celsius[i] - series.celsius[i - 1]);
}

Result<steam::PassProblem> read_problem(const Json& request) {
  steam::PassProblem problem;
  const Json& head = request.at("head");
  problem.head = read_head(head);
  problem.pace_metres_per_second = number_of(head, "pace_metres_per_second");
  auto stack = read_stack(request.at("stack"), "/stack");
  if (!stack) return refuse(stack.error());
  problem.stack = std::move(*stack);
  auto pressure = read_pressure(request);
  if (!pressure) return refuse(pressure.error());
  problem.pressure_pascal = *pressure;
  problem.vapour_efficiency = number_of(request, "vapour_efficiency");
  problem.start_celsius = number_of(request, "start_celsius");
  problem.start_activity = number_of(request, "start_activity");
  problem.air.celsius = problem.start_celsius;
  if (const Json* air = member_if(request, "air")) {
    problem.air.film_watts_per_m2_kelvin = number_of(*air, "film_watts_per_m2_kelvin");
    problem.air.celsius = number_if(*air, "celsius").value_or(problem.start_celsius);
    problem.air.relative_humidity = number_of(*air, "relative_humidity");
  }
  problem.passes = request.at("passes").get<int>();
  problem.gap_seconds = number_of(request, "gap_seconds");
  problem.observe_seconds = number_of(request, "observe_seconds");
  problem.depths_metres = numbers_of(request, "depths_metres");
  const double limit = steam::boiling_celsius(problem.pressure_pascal) - k_nearest_boiling_kelvin;
  if (problem.head.dew_celsius > limit) {
    return refuse(
        {ErrorKind::bad_input,
         say("dew_celsius is {:g} C; it must be at most {:.2f} C, which is 0.3 K below boiling at {:.0f} Pa: "
             "nearer, the model diverges",
             problem.head.dew_celsius, limit, problem.pressure_pascal),
         "/head/dew_celsius", fmt::format("{:g}", problem.head.dew_celsius), fmt::format("{:.2f}", limit),
         "C"});
  }
  return problem;
}

Result<Answer> solve(const Json& request) {
  const auto problem = read_problem(request);
  if (!problem) return refuse(problem.error());
  const auto history = steam::run_pass(*problem, steam::shown_resolution(), true);
  if (!history) return refuse(history.error());

  Answer answer;
  Json& out = answer.result;
  out["depths"] = Json::array();
  out["dose"] = Json::array();
  steam::Series series;
  for (std::size_t d = 0; d < problem->depths_metres.size(); ++d) {
    steam::fine_series(*history, history->celsius[d], k_series_step_kelvin, series);
    const steam::Peak peak = steam::peak_of(series);
    out["depths"].push_back({{"depth_metres", problem->depths_metres[d]},
                             {"peak_celsius", peak.celsius},
                             {"peak_seconds", peak.seconds},
                             {"log10_egg_dose", plain_log_dose(series)}});
    const steam::PlaceKill kill = steam::kill_of(series);
    out["dose"].push_back({{"egg", kill.egg},
                           {"nymph", kill.mobile},
                           {"adult", kill.mobile},
                           {"engorged_adult", kill.engorged}});
  }
  const double gain = history->water_gain_at_liftoff_kilograms_per_m2;
  out["water_gain_at_cover_end_grams_per_m2"] = 1e3 * history->water_gain_at_cover_end_kilograms_per_m2;
  out["water_gain_at_liftoff_grams_per_m2"] = 1e3 * gain;
  out["condensate_at_liftoff_grams_per_m2"] =
      1e3 * (gain - history->pore_vapour_gain_at_liftoff_kilograms_per_m2);
  out["liftoff_seconds"] = history->liftoff_seconds;
  steam::fine_series(*history, history->surface_celsius, k_series_step_kelvin, series);
  out["surface_after_celsius"] = Json::array();
  for (const double after : k_surface_times_seconds) {
    if (after > problem->observe_seconds) break;
    out["surface_after_celsius"].push_back(
        {{"seconds_after", after}, {"celsius", value_at(series, history->liftoff_seconds + after)}});
  }
  out["highest_celsius"] = history->highest_celsius;
  out["times_seconds"] = Json::array();
  out["temperatures_celsius"] = Json::array();
  for (std::size_t i = 0; i < history->seconds.size(); ++i) {
    if (i % k_thinning != 0 && i + 1 != history->seconds.size()) continue;
    out["times_seconds"].push_back(history->seconds[i]);
    Json row = Json::array();
    for (const auto& depth : history->celsius) row.push_back(depth[i]);
    out["temperatures_celsius"].push_back(std::move(row));
  }
  const steam::Ledger& ledger = history->ledger;
  const auto relative = [](double in, double held) {
    return std::fabs(in - held) / std::max(std::fabs(in), 1e-12);
  };
  out["ledger"] = {
      {"energy_error_relative", relative(ledger.energy_in_joules_per_m2, ledger.energy_held_joules_per_m2)},
      {"water_error_relative",
       relative(ledger.water_in_kilograms_per_m2, ledger.water_held_kilograms_per_m2)}};
  out["branches"] = fmt::format("{:016x}", history->branches);
  answer.data_keys = {"materials/1", "mortality/1"};
  answer.warnings.push_back(
      {"one_dimensional", say("computed through the thickness only; displaced air, wicking, heat of sorption "
                              "and gas escaping sideways are not in the model")});
  return answer;
}

}  // namespace

const Question& pass_question() {
  static const Question question{
      "pass", "What one pass of a known head does in a stack: temperatures, dose, water, the surface after.",
      object(request_fields(), "a head, a stack, a pace"), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
