#include "engine/surface_readings.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/calibration_json.h"
#include "engine/request_values.h"
#include "physics/numerics/elementary.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/pace/drawn_edge.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

struct PlacedReading {
  touch::SurfaceReading reading;
  std::size_t pass = 0;
  double pace = 0;
};

double head_length(const steam::Calibration& calibration) {
  return calibration.known_head ? calibration.known_head->length_metres : calibration.head_length_metres;
}

// The clear pace with which a pass went over a place last, if it did.
std::optional<double> pace_at(const treated::TreatedEdge& edge, const treated::TreatedPass& pass, double at) {
  if (!pass.problem) return std::nullopt;
  const auto visits = treated::visits_of(pass.marks, head_length(edge.problems[*pass.problem].calibration),
                                         steam::k_slowest_pace, at);
  if (visits.empty() || !std::isfinite(visits.back().kill_pace)) return std::nullopt;
  return std::max(visits.back().kill_pace, steam::k_paces.front());
}

Result<PlacedReading> place(const treated::TreatedEdge& edge, const Json& given, const std::string& where) {
  PlacedReading out;
  const double at = number_of(given, "at_metres");
  const auto asked = number_if(given, "pass");
  std::optional<double> pace;
  for (std::size_t p = edge.passes.size(); p-- > 0 && !pace;) {
    if (asked && static_cast<double>(p + 1) != *asked) continue;
    pace = pace_at(edge, edge.passes[p], at);
    out.pass = p;
  }
  if (!pace) {
    return refuse({ErrorKind::bad_input,
                   say("no pass of a known head went over {:g} m at a clear pace{}", at,
                       asked ? say(" (pass {:g} was named)", *asked) : std::string()),
                   where + "/at_metres", fmt::format("{:g}", at), "", "m"});
  }
  out.pace = *pace;
  out.reading.seconds_after = number_of(given, "seconds_after");
  out.reading.gun_celsius = number_if(given, "gun_celsius");
  out.reading.gun.spot_metres = number_of(given, "spot_metres");
  out.reading.gun.emissivity_setting = number_of(given, "emissivity_setting");
  out.reading.strip_metres = number_of(given, "strip_metres");
  if (const auto palm = text_if(given, "palm"))
    out.reading.palm = *palm == "cold"  ? touch::Palm::cold
                       : *palm == "hot" ? touch::Palm::hot
                                        : touch::Palm::warm;
  return out;
}

// What sample i lets expect of a reading; the hand of the pass is known, so none is drawn.
Result<touch::ExpectedReading> expected_of(const steam::PaceProblem& problem, int i,
                                           const PlacedReading& placed) {
  const steam::DrawnHead drawn = steam::drawn_head(problem.calibration, problem.cloth_key, i);
  steam::PassProblem pass = touch::middle_pass(problem, placed.pace);
  pass.head = drawn.head;
  pass.vapour_efficiency = drawn.vapour_efficiency;
  const steam::Stack cloth = steam::drawn_stack(problem, static_cast<std::uint32_t>(i));
  const std::size_t towels = pass.stack.size() - problem.stack.size();
  std::copy(cloth.begin(), cloth.end(), pass.stack.begin() + static_cast<std::ptrdiff_t>(towels));
  const std::vector<touch::SurfaceReading> readings{placed.reading};
  const auto expected = touch::expected_readings(pass, readings);
  if (!expected) return refuse(expected.error());
  return expected->front();
}

std::string shown_words(const touch::SurfaceReading& reading) {
  if (reading.gun_celsius)
    return say("{:.0f} C by gun, {:g} s after", *reading.gun_celsius, reading.seconds_after);
  if (reading.palm == touch::Palm::cold) return say("cold to the palm, {:g} s after", reading.seconds_after);
  if (reading.palm == touch::Palm::hot) return say("hot to the palm, {:g} s after", reading.seconds_after);
  return say("warm to the palm, {:g} s after", reading.seconds_after);
}

}  // namespace

Shape surface_reading_shape() {
  Shape shape = object(
      {optional("gun_celsius",
                number(Unit::celsius, "what an infrared gun showed").at_least(-20).at_most(150)),
       optional("palm", choice({{"cold", "no warmer than the hand"},
                                {"warm", "warm, neither cold nor hot"},
                                {"hot", "hotter than one likes to hold"}},
                               "what the back of a hand said; only after the time for a bare hand")),
       with_default("at_metres", number(Unit::metre, "where along the edge").at_least(0).at_most(100), 0.1),
       field("seconds_after",
             number(Unit::second, "after the head had left the place").at_least(0).at_most(600)),
       optional("pass",
                integer("which pass, from 1; left out: the last that went there").at_least(1).at_most(50)),
       with_default("spot_metres",
                    number(Unit::metre, "diameter of what the gun looks at").above(0).at_most(1), 0.02),
       with_default("emissivity_setting", ratio("emissivity set on the gun").at_least(0.3).at_most(1), 0.95),
       with_default("strip_metres", number(Unit::metre, "width of what was steamed").above(0).at_most(2),
                    0.1)},
      "a reading of the surface behind the head");
  shape.exactly_one_of({{"gun_celsius"}, {"palm"}});
  return shape;
}

Result<LearntFromSurface> learn_from_surface(const treated::TreatedEdge& edge, const Json& readings,
                                             const std::string& where) {
  LearntFromSurface out;
  out.edge = edge;
  std::vector<std::vector<double>> log_weights;
  for (const steam::PaceProblem& problem : edge.problems)
    log_weights.emplace_back(problem.calibration.weights.size(), 0.0);
  for (std::size_t r = 0; r < readings.size(); ++r) {
    const auto placed = place(edge, readings[r], fmt::format("{}/{}", where, r));
    if (!placed) return refuse(placed.error());
    const std::size_t index = *edge.passes[placed->pass].problem;
    const steam::PaceProblem& problem = edge.problems[index];
    std::vector<double> celsius(problem.calibration.weights.size());
    for (std::size_t i = 0; i < celsius.size(); ++i) {
      const auto expected = expected_of(problem, static_cast<int>(i), *placed);
      if (!expected) return refuse(expected.error());
      celsius[i] = expected->celsius;
      log_weights[index][i] += touch::log_likelihood(placed->reading, *expected);
    }
    const auto quantile = [&](double p) {
      return weighted_quantile(celsius, problem.calibration.weights, p);
    };
    out.expected.push_back({quantile(0.05), quantile(0.5), quantile(0.95)});
    out.shown.push_back(shown_words(placed->reading));
  }
  out.effective_samples = std::numeric_limits<double>::infinity();
  for (std::size_t p = 0; p < edge.problems.size(); ++p) {
    auto& weights = out.edge.problems[p].calibration.weights;
    const double highest = *std::max_element(log_weights[p].begin(), log_weights[p].end());
    double sum = 0;
    for (std::size_t i = 0; i < weights.size(); ++i)
      sum += weights[i] *= numerics::exp(log_weights[p][i] - highest);
    for (double& weight : weights) weight /= sum;
    out.edge.problems[p].calibration.effective_samples = effective_sample_size(weights);
    out.effective_samples =
        std::min(out.effective_samples, out.edge.problems[p].calibration.effective_samples);
  }
  return out;
}

Json learnt_calibrations(const LearntFromSurface& learnt, const PaceBasis& basis) {
  Json out = Json::array();
  for (const steam::PaceProblem& problem : learnt.edge.problems) {
    const steam::Calibration& calibration = problem.calibration;
    if (calibration.known_head) continue;
    std::string covering;
    for (std::size_t i = 0; i < basis.calibrations.size(); ++i) {
      const steam::Calibration& one = basis.calibrations[i];
      if (one.head_key == calibration.head_key && one.cloth_key == calibration.cloth_key)
        covering = basis.coverings[i];
    }
    out.push_back(to_json(calibration, covering));
  }
  return out;
}

Shape learnt_shape() {
  return object(
      {field("readings", list(object({field("shown", text("what was read")),
                                      field("expected_celsius", list(number(Unit::celsius, "of the reading"),
                                                                     "5 %, half, 95 % of what was expected")
                                                                    .items(3, 3))},
                                     "one reading"),
                              "read, and expected before")),
       field("lethal_margin_before", ratio("log10(R/2) of the worst stretch without the readings")),
       field("lethal_margin_after", ratio("with them")), field("text", text("what was learnt")),
       field("calibrations", list(calibration_shape(),
                                  "of these heads, as the readings weigh them: for `pace` of what is left, "
                                  "in place of those before"))},
      "what the surface said");
}

Json learnt_json(const LearntFromSurface& learnt, const PaceBasis& basis,
                 const treated::TreatedReport& before, const treated::TreatedReport& after) {
  Json rows = Json::array();
  for (std::size_t r = 0; r < learnt.shown.size(); ++r)
    rows.push_back({{"shown", learnt.shown[r]}, {"expected_celsius", learnt.expected[r]}});
  const double was = before.stretches[before.worst].lethal_margin,
               is = after.stretches[after.worst].lethal_margin;
  return {
      {"readings", rows},
      {"lethal_margin_before", was},
      {"lethal_margin_after", is},
      {"text",
       is < was
           ? say("the surface speaks for less heat than was thought")
           : say("the surface agrees with the heat that was thought, or speaks for more; a verdict is not "
                 "raised by it: a probe in the fold would")},
      {"calibrations", learnt_calibrations(learnt, basis)}};
}

}  // namespace lastegg
