// Question `jet`: what comes out of a head, and what that does to loose bugs, cracks and strips.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/materials/materials.h"
#include "treatments/jet/jet.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  Shape opening = object(
      {field("kind", choice({{"round", "a tip with one hole"},
                             {"slot", "a brush or bar with a slot, or a wide head"}},
                            "form of the opening")),
       field("size_metres",
             number(Unit::metre, "diameter of the hole, or gap of the slot").at_least(1e-4).at_most(0.05)),
       with_default("width_metres", number(Unit::metre, "of a slot").at_least(1e-4).at_most(0.6), 0.2)},
      "where the steam comes out");
  Shape crack = object(
      {field("gap_metres", number(Unit::metre, "width of the crack").at_least(1e-5).at_most(0.1)),
       with_default("material", text("key of a material: its walls"), "softwood"),
       with_default("seconds",
                    number(Unit::second, "that the head stands over its mouth").at_least(0.05).at_most(3600),
                    2),
       optional("through_metres_per_second",
                number(Unit::metre_per_second, "of steam through it, if it is open behind")
                    .at_least(0)
                    .at_most(50)),
       with_default("dew_celsius",
                    number(Unit::celsius, "of the steam at its mouth").at_least(40).at_most(110), 97),
       with_default("start_celsius", number(Unit::celsius, "of its walls before").at_least(-20).at_most(50),
                    20)},
      "a crack to be steamed");
  Shape strip = object(
      {field("width_metres", number(Unit::metre, "of the head, across the travel").above(0).at_most(0.6)),
       field("face_metres", number(Unit::metre, "width of the face to cover").above(0).at_most(10)),
       with_default("material", text("key of the material on top"), "polyester_fabric"),
       with_default("seconds", number(Unit::second, "under the head").at_least(0.05).at_most(3600), 3)},
      "strips side by side");
  std::vector<Field> fields{
      field("opening", std::move(opening)),
      with_default("supply_grams_per_second",
                   number(Unit::gram_per_second, "of steam").at_least(0.01).at_most(5), 0.6),
      with_default(
          "distances_metres",
          list(number(Unit::metre, "from the opening").at_least(0).at_most(2), "where the speed is asked")
              .items(1, 50),
          Json::array({0.0, 0.03, 0.06, 0.1})),
      optional("crack", std::move(crack)), optional("strips", std::move(strip))};
  for (Field& pressure : pressure_fields()) fields.push_back(std::move(pressure));
  return object(std::move(fields), "a head and what it meets");
}

Shape answer_shape() {
  const Shape scatter = choice({{"stays", "even a loose first nymph stays where it is"},
                                {"may_scatter", "loose bugs may be moved; whether they hold on is not known"},
                                {"scatters", "loose bugs are blown off, and those that hold on poorly"}},
                               "what the stream does");
  return object(
      {field("speeds",
             list(object({field("distance_metres", number(Unit::metre, "from the opening")),
                          field("metres_per_second",
                                number(Unit::metre_per_second, "on the axis, no more than this").or_null()),
                          field("scatter", scatter)},
                         "one distance"),
                  "speed of the stream")),
       field("moved_at",
             list(object({field("who", text("a body")),
                          field("metres_per_second", number(Unit::metre_per_second, "that moves it"))},
                         "one body"),
                  "for comparison")),
       field(
           "crack",
           object({field("closed_reach_metres", number(Unit::metre, "heated at most so deep, closed behind")),
                   field("open_reach_metres",
                         number(Unit::metre, "steam used up after so much, open behind").or_null()),
                   field("text", text("in words"))},
                  "the crack")
               .or_null()),
       field("strips",
             object({field("counted_width_metres", number(Unit::metre, "of the head's width")),
                     field("overlap_metres", number(Unit::metre, "of neighbouring strips")),
                     field("strips", integer("that cover the face; 0: this head has no width that counts")),
                     field("text", text("in words"))},
                    "strips")
                 .or_null()),
       field("text", text("in words"))},
      "what the head does");
}

const char* word(jet::Scatter scatter) {
  return scatter == jet::Scatter::stays         ? "stays"
         : scatter == jet::Scatter::may_scatter ? "may_scatter"
                                                : "scatters";
}

Result<Material> material_at(const Json& object, const char* where) {
  auto material = find_material(text_of(object, "material"));
  if (!material) {
    Error error = material.error();
    error.where = where;
    return refuse(error);
  }
  return material;
}

Result<Json> crack_json(const Json& given) {
  const auto material = material_at(given, "/crack/material");
  if (!material) return refuse(material.error());
  jet::Crack crack;
  crack.gap_metres = number_of(given, "gap_metres");
  crack.wall_effusivity =
      std::sqrt(material->conductivity.value * material->heat_capacity_joules_per_m3_kelvin());
  crack.seconds = number_of(given, "seconds");
  const auto closed = jet::closed_reach(crack);
  if (!closed) return refuse(closed.error());
  Json open = nullptr;
  if (const auto through = number_if(given, "through_metres_per_second")) {
    const auto reach =
        jet::open_reach(crack, *through, number_of(given, "dew_celsius"), number_of(given, "start_celsius"));
    if (!reach) return refuse(reach.error());
    open = *reach;
  }
  std::string words = say("closed behind, the crack is heated no deeper than {:.1f} mm in {:g} s",
                          1e3 * *closed, crack.seconds);
  if (!open.is_null()) words += say("; open behind, steam reaches about {:.0f} mm", 1e3 * open.get<double>());
  return Json{{"closed_reach_metres", *closed},
              {"open_reach_metres", open},
              {"text", words + say(". Eggs deeper in are not proven: open the joint, or another method")}};
}

Result<Json> strips_json(const Json& given) {
  const auto material = material_at(given, "/strips/material");
  if (!material) return refuse(material.error());
  const double diffusivity = material->conductivity.value / material->heat_capacity_joules_per_m3_kelvin();
  const double width = number_of(given, "width_metres");
  const double counted = jet::counted_width(width, diffusivity, number_of(given, "seconds"));
  const int strips = jet::strips_for(number_of(given, "face_metres"), counted);
  return Json{
      {"counted_width_metres", counted},
      {"overlap_metres", width - counted},
      {"strips", strips},
      {"text", strips == 0
                   ? say("the head is too narrow: all of it is rim")
                   : say("{} strips, each over {:.0f} mm of the one before; only {:.0f} mm of the head count",
                         strips, 1e3 * (width - counted), 1e3 * counted)}};
}

std::string words_of(jet::Scatter worst) {
  switch (worst) {
    case jet::Scatter::stays:
      return say("slow enough at these distances that even loose bugs stay");
    case jet::Scatter::may_scatter:
      return say("loose bugs may be blown about: keep the head in contact, or take a wider head and a towel");
    case jet::Scatter::scatters:
      break;
  }
  return say(
      "this stream blows bugs away before it kills them: a wide head or a towel that spreads it, in "
      "contact with the cloth");
}

Result<Answer> solve(const Json& request) {
  jet::Nozzle nozzle;
  const Json& opening = request.at("opening");
  nozzle.opening = text_of(opening, "kind") == "slot" ? jet::Opening::slot : jet::Opening::round;
  nozzle.size_metres = number_of(opening, "size_metres");
  nozzle.width_metres = number_of(opening, "width_metres");
  nozzle.supply_kilograms_per_second = number_of(request, "supply_grams_per_second") / 1e3;
  const auto pressure = read_pressure(request);
  if (!pressure) return refuse(pressure.error());
  nozzle.room_pascal = *pressure;
  Answer answer;
  Json& out = answer.result;
  out["speeds"] = Json::array();
  jet::Scatter worst = jet::Scatter::stays;
  for (const double distance : numbers_of(request, "distances_metres")) {
    const auto speed = jet::speed_at(nozzle, distance);
    Json shown = nullptr;
    jet::Scatter scatter = jet::Scatter::scatters;  // faster than its sound: no number, and no doubt
    if (speed) {
      shown = *speed;
      scatter = jet::scatter_at(*speed);
    } else if (speed.error().kind != ErrorKind::out_of_domain) {
      return refuse(speed.error());
    }
    worst = std::max(worst, scatter);
    out["speeds"].push_back(
        {{"distance_metres", distance}, {"metres_per_second", shown}, {"scatter", word(scatter)}});
  }
  out["moved_at"] = Json::array();
  for (const jet::Body& body : jet::k_bodies)
    out["moved_at"].push_back({{"who", body.key}, {"metres_per_second", jet::moving_speed(body)}});
  out["crack"] = nullptr;
  if (const Json* crack = member_if(request, "crack")) {
    auto found = crack_json(*crack);
    if (!found) return refuse(found.error());
    out["crack"] = std::move(*found);
  }
  out["strips"] = nullptr;
  if (const Json* strips = member_if(request, "strips")) {
    auto found = strips_json(*strips);
    if (!found) return refuse(found.error());
    out["strips"] = std::move(*found);
  }
  out["text"] = words_of(worst);
  answer.data_keys = {"materials/1"};
  answer.warnings.push_back(
      {"adhesion_unknown",
       say("how bugs hold on to cloth, and when heat makes them let go, nobody has measured: these "
           "are bounds, not numbers of bugs")});
  return answer;
}

}  // namespace

const Question& jet_question() {
  static const Question question{"jet",
                                 "What comes out of a head: speed at the cloth, whether loose bugs scatter, "
                                 "how far a crack is heated, strips side by side.",
                                 request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
