// Question `furniture`: a sofa or a mattress with its faces and every edge that a head runs along.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string_view>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "job/furniture/dimensions.h"
#include "job/furniture/mattress.h"
#include "job/furniture/sofa.h"

namespace lastegg {
namespace {

using namespace shape;

constexpr std::array k_sofa_keys = {"seats",
                                    "depth_metres",
                                    "height_metres",
                                    "skirted",
                                    "seat_height_metres",
                                    "arm_height_metres",
                                    "tufted",
                                    "arm_width_metres",
                                    "leg_height_metres",
                                    "finish",
                                    "seat_cushion_thickness_metres",
                                    "back_cushion_thickness_metres"};
constexpr std::array k_mattress_keys = {"size", "length_metres", "thickness_metres", "base_height_metres"};

template <class Word, std::size_t count>
std::vector<Choice> choices_of(const std::array<furniture::Meaning<Word>, count>& list) {
  std::vector<Choice> choices;
  for (const auto& meaning : list) choices.push_back({std::string(meaning.name), std::string(meaning.text)});
  return choices;
}

std::vector<Choice> size_choices() {
  std::vector<Choice> choices;
  if (const auto& table = furniture::furniture_dimensions()) {
    for (const auto& size : table->mattress_sizes) choices.push_back({size.name, size.title});
  }
  return choices;
}

/// A measure that may be left out; the limits are those of the data file, told again with the place when
/// passed.
Field measure(std::string key, std::string text) {
  return optional(std::move(key), number(Unit::metre, std::move(text)).at_least(0).at_most(10));
}

Shape request_shape() {
  return object(
      {field("item", choice({{"sofa", "a sofa with loose seat and back cushions, one to four seats"},
                             {"mattress", "a mattress on its base"}},
                            "kind of furniture")),
       optional("seats", integer("sofa: seats, three if left out").at_least(1).at_most(4)),
       optional("size", choice(size_choices(), "mattress: named size, queen if left out")),
       measure("width_metres", "over the arms of a sofa, across a mattress; wins over size"),
       measure("length_metres", "mattress: foot to head; wins over size"),
       measure("depth_metres", "sofa: front to back"),
       measure("height_metres", "sofa: floor to the top of the back cushions"),
       measure("seat_height_metres", "sofa: floor to the top of the seat cushions"),
       measure("arm_height_metres", "sofa: floor to the top of the arms"),
       measure("arm_width_metres", "sofa: one arm"),
       measure("leg_height_metres", "sofa: floor to the underside"),
       measure("seat_cushion_thickness_metres", "sofa: boxing of the seat cushions"),
       measure("back_cushion_thickness_metres", "sofa: boxing of the back cushions"),
       measure("thickness_metres", "mattress"),
       measure("base_height_metres", "mattress: floor to its underside; 0 lies on the floor"),
       optional("skirted", flag("sofa: a skirt hangs to the floor")),
       optional("tufted", flag("sofa: rows of buttons on the back cushions")),
       optional("covering", choice(choices_of(furniture::k_coverings),
                                   "cloth; unknown for a sofa and mattress_tick for a mattress if left out")),
       optional("finish", choice(choices_of(furniture::k_finishes), "sofa: finish of the wooden legs")),
       optional("wetting_limit_grams_per_m2",
                number(Unit::gram_per_m2,
                       "most water the covering takes up without a mark, by a hidden-spot wetting test")
                    .at_least(5)
                    .at_most(500))},
      "the piece of furniture; measures that are left out take usual values");
}

Shape edge_shape() {
  const Shape names = list(shape::text("name of a face"), "faces on which the line runs");
  const Shape treat = object(
      {field("kind", choice(choices_of(furniture::k_edge_kinds), "kind of edge")),
       field("covering", choice(choices_of(furniture::k_coverings), "cloth over it")),
       field("fill", choice(choices_of(furniture::k_fills), "what lies under the cloth")),
       optional("finish", choice(choices_of(furniture::k_finishes), "finish of the wood met there")),
       optional("wetting_limit_grams_per_m2", number(Unit::gram_per_m2, "by the wetting test of the item"))},
      "what lies between head and bug; handed on unchanged as `edge` of the question pace");
  return object(
      {field("id", shape::text("stable name, from build to build")), field("title", shape::text("in words")),
       field("kind", choice(choices_of(furniture::k_edge_kinds), "kind of edge")),
       field("part", shape::text("name of its part")), field("faces", names),
       field("points_metres", list(list(number(Unit::metre, "x, y or z"), "a point").items(3, 3),
                                   "the line; the first point comes again at the end of a closed one")
                                  .items(2, 1000)),
       field("length_metres", number(Unit::metre, "along the line").above(0)),
       field("height_metres", number(Unit::metre, "mean above the floor").at_least(0)),
       field("height_range_metres",
             list(number(Unit::metre, "lowest, highest").at_least(0), "above the floor").items(2, 2)),
       field("in_sight", flag("reached without lifting a cushion, turning the item or opening anything")),
       field("treat", treat)},
      "a line that a head runs along");
}

Shape answer_shape() {
  return object(
      {field("item", shape::text("as asked")), field("title", shape::text("in words")),
       field("vertices_metres",
             list(list(number(Unit::metre, "x, y or z"), "x to the right, y to the back, z up").items(3, 3),
                  "corners")),
       field("faces",
             list(object({field("name", shape::text("unique")), field("part", shape::text("its part")),
                          field("body", shape::text("faces of one body close it")),
                          field("vertices", list(integer("index of a corner").at_least(0),
                                                 "counter-clockwise from outside")
                                                .items(3, 1000))},
                         "a flat face"),
                  "faces of convex bodies that touch and do not overlap")),
       field("parts", list(object({field("name", shape::text("as faces and edges name it")),
                                   field("title", shape::text("in words"))},
                                  "a part"),
                           "parts to open one by one")),
       field("edges", list(edge_shape(), "every edge, part by part")),
       field("dimensions", list(object({field("name", shape::text("what was measured")),
                                        field("value_metres", number(Unit::metre, "as built")),
                                        field("source", shape::text("where the value comes from")),
                                        field("quality", shape::text("given, handbook, practice, estimate, "
                                                                     "from memory"))},
                                       "a measure"),
                                "what the item was built with"))},
      "the item");
}

Json point_of(const furniture::Vertex& point) {
  return Json::array({point.x, point.y, point.z});
}

Json edge_of(const furniture::Edge& edge) {
  Json points = Json::array();
  for (const furniture::Vertex& point : edge.points) points.push_back(point_of(point));
  const std::string kind(name_of(edge.kind));
  Json treat = {{"kind", kind},
                {"covering", std::string(name_of(edge.layers.covering))},
                {"fill", std::string(name_of(edge.layers.fill))}};
  if (edge.layers.finish) treat["finish"] = std::string(name_of(*edge.layers.finish));
  return {{"id", edge.id},
          {"title", edge.title},
          {"kind", kind},
          {"part", edge.part},
          {"faces", edge.faces},
          {"points_metres", std::move(points)},
          {"length_metres", edge.length_metres},
          {"height_metres", edge.height_metres},
          {"height_range_metres", Json::array({edge.lowest_metres, edge.highest_metres})},
          {"in_sight", edge.in_sight},
          {"treat", std::move(treat)}};
}

Json json_of(const furniture::Item& item) {
  Json vertices = Json::array();
  for (const furniture::Vertex& vertex : item.vertices) vertices.push_back(point_of(vertex));
  Json faces = Json::array();
  for (const furniture::Face& face : item.faces) {
    faces.push_back(
        {{"name", face.name}, {"part", face.part}, {"body", face.body}, {"vertices", face.vertices}});
  }
  Json parts = Json::array();
  for (const furniture::Part& part : item.parts)
    parts.push_back({{"name", part.name}, {"title", part.title}});
  Json edges = Json::array();
  for (const furniture::Edge& edge : item.edges) edges.push_back(edge_of(edge));
  Json dimensions = Json::array();
  for (const furniture::UsedDimension& used : item.dimensions) {
    dimensions.push_back({{"name", used.name},
                          {"value_metres", used.value_metres},
                          {"source", used.source},
                          {"quality", used.quality}});
  }
  return {{"item", item.kind},
          {"title", item.title},
          {"vertices_metres", std::move(vertices)},
          {"faces", std::move(faces)},
          {"parts", std::move(parts)},
          {"edges", std::move(edges)},
          {"dimensions", std::move(dimensions)}};
}

/// Refuses a key that belongs to the other kind of item.
template <std::size_t count>
std::optional<Error> misplaced(const Json& request, const std::array<const char*, count>& foreign,
                               std::string_view item) {
  for (const char* key : foreign) {
    if (!has(request, key)) continue;
    Error error;
    error.kind = ErrorKind::bad_input;
    error.message = fmt::format("'{}' does not belong to a {}", key, item);
    error.where = fmt::format("/{}", key);
    error.value = request.at(key).dump();
    return error;
  }
  return std::nullopt;
}

furniture::Covering covering_in(const Json& request, furniture::Covering fallback) {
  const auto word = text_if(request, "covering");
  return word ? furniture::covering_named(*word).value_or(furniture::Covering::unknown) : fallback;
}

Result<furniture::Item> sofa_from(const Json& request) {
  if (auto error = misplaced(request, k_mattress_keys, "sofa")) return refuse(*std::move(error));
  furniture::SofaRequest sofa;
  if (has(request, "seats")) sofa.seats = request.at("seats").get<int>();
  sofa.width_metres = number_if(request, "width_metres");
  sofa.depth_metres = number_if(request, "depth_metres");
  sofa.height_metres = number_if(request, "height_metres");
  sofa.seat_height_metres = number_if(request, "seat_height_metres");
  sofa.arm_height_metres = number_if(request, "arm_height_metres");
  sofa.arm_width_metres = number_if(request, "arm_width_metres");
  sofa.leg_height_metres = number_if(request, "leg_height_metres");
  sofa.seat_cushion_thickness_metres = number_if(request, "seat_cushion_thickness_metres");
  sofa.back_cushion_thickness_metres = number_if(request, "back_cushion_thickness_metres");
  sofa.skirted = has(request, "skirted") && request.at("skirted").get<bool>();
  sofa.tufted = has(request, "tufted") && request.at("tufted").get<bool>();
  sofa.covering = covering_in(request, furniture::Covering::unknown);
  if (const auto finish = text_if(request, "finish")) {
    sofa.leg_finish = furniture::finish_named(*finish).value_or(furniture::Finish::unknown);
  }
  return furniture::build_sofa(sofa);
}

Result<furniture::Item> mattress_from(const Json& request) {
  if (auto error = misplaced(request, k_sofa_keys, "mattress")) return refuse(*std::move(error));
  furniture::MattressRequest mattress;
  mattress.size = text_if(request, "size").value_or(mattress.size);
  mattress.width_metres = number_if(request, "width_metres");
  mattress.length_metres = number_if(request, "length_metres");
  mattress.thickness_metres = number_if(request, "thickness_metres");
  mattress.base_height_metres = number_if(request, "base_height_metres");
  mattress.covering = covering_in(request, furniture::Covering::mattress_tick);
  return furniture::build_mattress(mattress);
}

Result<Answer> solve(const Json& request) {
  const auto item = text_of(request, "item") == "sofa" ? sofa_from(request) : mattress_from(request);
  if (!item) return refuse(item.error());
  Answer answer{json_of(*item), {}, {furniture::furniture_dimensions()->key}};
  if (const auto wetting = number_if(request, "wetting_limit_grams_per_m2")) {
    for (Json& edge : answer.result["edges"]) edge["treat"]["wetting_limit_grams_per_m2"] = *wetting;
  }
  const bool all_given = std::all_of(item->dimensions.begin(), item->dimensions.end(),
                                     [](const auto& used) { return used.quality == "given"; });
  if (!all_given) {
    answer.warnings.push_back(
        {"usual_dimensions",
         "Some measures are usual values or estimates, not taken from the piece itself; "
         "lengths and the time they cost follow from them. Measure it where that matters."});
  }
  return answer;
}

}  // namespace

const Question& furniture_question() {
  static const Question question = {
      "furniture", "A sofa or a mattress in three dimensions, with every edge that a steam head runs along.",
      request_shape(), answer_shape(), &solve};
  return question;
}

}  // namespace lastegg
