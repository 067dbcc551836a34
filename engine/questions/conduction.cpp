// Question `conduction`: temperatures inside a stack of dry layers.
#include <string>
#include <string_view>
#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "physics/conduction/conduction.h"

namespace lastegg {
namespace {

using namespace shape;

constexpr double k_lowest_celsius = -273.15;
constexpr double k_highest_celsius = 2000.0;

Shape temperature(const std::string& text) {
  return number(Unit::celsius, text).at_least(k_lowest_celsius).at_most(k_highest_celsius);
}

Field kind(const std::string& word, const std::string& text) {
  return field("kind", choice({{word, text}}, "what happens at the face"));
}

Shape boundary_shape(const std::string& text) {
  return either({object({kind("fixed", "held at a temperature"),
                         field("celsius", temperature("temperature of the face"))},
                        "a face held at a temperature"),
                 object({kind("convective", "washed by a fluid"),
                         field("celsius", temperature("temperature of the fluid")),
                         field("film_watts_per_m2_kelvin",
                               number(Unit::watt_per_m2_kelvin, "film coefficient").above(0).at_most(1e6))},
                        "a face washed by a fluid"),
                 object({kind("flux", "heated at a constant rate"),
                         field("flux_watts_per_m2",
                               number(Unit::watt_per_m2, "heat flux into the stack, negative if cooled")
                                   .at_least(-1e7)
                                   .at_most(1e7))},
                        "a face heated at a constant rate"),
                 object({kind("insulated", "no heat passes")}, "a face that no heat passes")},
                text);
}

Shape request_shape() {
  const Shape layer =
      object({field("thickness_metres", number(Unit::metre, "thickness").above(0).at_most(100)),
              field("conductivity_watts_per_metre_kelvin",
                    number(Unit::watt_per_metre_kelvin, "thermal conductivity").above(0).at_most(5000)),
              field("heat_capacity_joules_per_m3_kelvin",
                    number(Unit::joule_per_m3_kelvin, "heat capacity per volume: density times specific heat")
                        .above(0)
                        .at_most(1e8)),
              optional("start_celsius", temperature("start temperature of this layer, if it differs"))},
             "one layer");
  return object(
      {field("layers", list(layer, "layers from the front face inwards").items(1, 100)),
       field("start_celsius", temperature("temperature of the stack at the start")),
       field("front", boundary_shape("the front face")),
       with_default("back", boundary_shape("the back face; insulated if left out"), {{"kind", "insulated"}}),
       field("depths_metres",
             list(number(Unit::metre, "depth below the front face").at_least(0), "places asked for")
                 .items(1, 500)),
       field("times_seconds",
             list(number(Unit::second, "time after the start").at_least(0).at_most(1e10), "moments asked for")
                 .items(1, 1000))},
      "a stack of layers, its faces, places and moments");
}

Shape answer_shape() {
  const Shape row =
      list(number(Unit::celsius, "temperature"), "one temperature per depth, in the order asked");
  return object(
      {field("temperatures_celsius", list(row, "one row per time, in the order asked")),
       field("energy", object({field("front_joules_per_m2",
                                     number(Unit::joule_per_m2, "heat that came in through the front face")),
                               field("back_joules_per_m2",
                                     number(Unit::joule_per_m2, "heat that came in through the back face")),
                               field("stored_joules_per_m2",
                                     number(Unit::joule_per_m2, "heat stored since the start"))},
                              "heat balance up to the last asked time"))},
      "temperatures inside the stack");
}

Boundary boundary_of(const Json& face) {
  const std::string word = text_of(face, "kind");
  if (word == "fixed") return Boundary::fixed(celsius(number_of(face, "celsius")));
  if (word == "convective") {
    return Boundary::convective(watts_per_m2_kelvin(number_of(face, "film_watts_per_m2_kelvin")),
                                celsius(number_of(face, "celsius")));
  }
  if (word == "flux") return Boundary::flux(watts_per_m2(number_of(face, "flux_watts_per_m2")));
  return Boundary::insulated();
}

ConductionProblem problem_of(const Json& request) {
  ConductionProblem problem;
  const double start = number_of(request, "start_celsius");
  for (const Json& layer : request.at("layers")) {
    problem.layers.push_back({metres(number_of(layer, "thickness_metres")),
                              watts_per_metre_kelvin(number_of(layer, "conductivity_watts_per_metre_kelvin")),
                              joules_per_m3_kelvin(number_of(layer, "heat_capacity_joules_per_m3_kelvin")),
                              celsius(number_if(layer, "start_celsius").value_or(start))});
  }
  problem.front = boundary_of(request.at("front"));
  problem.back = boundary_of(request.at("back"));
  for (const double depth : numbers_of(request, "depths_metres")) problem.depths.push_back(metres(depth));
  for (const double time : numbers_of(request, "times_seconds")) problem.times.push_back(seconds(time));
  return problem;
}

/// The library's error with its place in the request: "/depths/3" is "/depths_metres/3" there. Every
/// other value that the library refuses is refused by the shape before.
Error in_request(Error error) {
  constexpr std::string_view ours = "/depths/", theirs = "/depths_metres/";
  if (error.where.starts_with(ours)) error.where.replace(0, ours.size(), theirs);
  return error;
}

Result<Answer> solve(const Json& request) {
  const Result<ConductionAnswer> solved = conduct(problem_of(request));
  if (!solved) return refuse(in_request(solved.error()));
  Json rows = Json::array();
  for (const auto& temperatures : solved->temperatures) {
    Json row = Json::array();
    for (const Temperature value : temperatures) row.push_back(in_celsius(value));
    rows.push_back(std::move(row));
  }
  Answer answer;
  answer.result = {{"temperatures_celsius", std::move(rows)},
                   {"energy",
                    {{"front_joules_per_m2", in_joules_per_m2(solved->ledger.in_through_front)},
                     {"back_joules_per_m2", in_joules_per_m2(solved->ledger.in_through_back)},
                     {"stored_joules_per_m2", in_joules_per_m2(solved->ledger.stored)}}}};
  return answer;
}

}  // namespace

const Question& conduction_question() {
  static const Question question{
      "conduction", "Temperatures by conduction inside a stack of dry layers, at depths and times.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
