// Question `furniture`: an item of the catalogue with its faces and every edge that a head runs along.
#include <algorithm>
#include <array>
#include <map>
#include <string_view>
#include <utility>

#include "engine/finish.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/water_drop.h"
#include "job/furniture/catalogue.h"
#include "job/furniture/dimensions.h"
#include "job/furniture/edge_changes.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

constexpr double k_longest_metres = 20;
constexpr double k_most_of_a_count = 12;

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

/// Electronics is told by the catalogue alone.
std::vector<Choice> finishes_that_can_be_told() {
  std::vector<Choice> choices = choices_of(furniture::k_finishes);
  std::erase_if(choices, [](const Choice& choice) { return choice.word == "electronics"; });
  return choices;
}

std::vector<Choice> kind_choices() {
  std::vector<Choice> choices;
  for (const furniture::Kind& kind : furniture::catalogue()) choices.push_back({kind.name, kind.title});
  return choices;
}

/// What a key means, with the kinds that take it: "seats side by side (sofa, sofa_bed)".
template <class List>
std::vector<std::pair<std::string, std::string>> keys_of(List furniture::Kind::* list) {
  std::vector<std::pair<std::string, std::string>> keys;  // key and text, in the order of the catalogue
  std::map<std::string, std::vector<std::pair<std::string, std::string>>> meanings;
  for (const furniture::Kind& kind : furniture::catalogue()) {
    for (const auto& entry : kind.*list) {
      auto& texts = meanings[entry.key];
      if (texts.empty()) keys.emplace_back(entry.key, "");
      const auto known = std::find_if(texts.begin(), texts.end(),
                                      [&](const auto& text) { return text.first == entry.text; });
      if (known == texts.end()) {
        texts.emplace_back(entry.text, kind.name);
      } else {
        known->second += ", " + kind.name;
      }
    }
  }
  for (auto& [key, text] : keys) {
    for (const auto& [meaning, kinds] : meanings.at(key)) {
      text += (text.empty() ? "" : "; ") + meaning + " (" + kinds + ")";
    }
  }
  return keys;
}

Shape change_shape() {
  return object(
      {field("change", choice({{"added", "a further edge"},
                               {"renamed", "another title"},
                               {"split", "two edges in place of one"},
                               {"left_out", "not on the list"}},
                              "what was changed")),
       optional("id", shape::text("name of an added edge")),
       optional("edge", shape::text("the edge that is renamed, split or left out")),
       optional("title", shape::text("of an added or renamed edge")),
       with_default("kind", choice(choices_of(furniture::k_edge_kinds), "of an added edge"), "seam"),
       optional("part", shape::text("of an added edge; the first part if left out")),
       optional("length_metres", number(Unit::metre, "of an added edge").above(0).at_most(100)),
       with_default("height_metres", number(Unit::metre, "of an added edge").at_least(0).at_most(10), 0.5),
       with_default("in_sight", flag("of an added edge"), true),
       optional("at_share",
                ratio("where a split lies along the edge; the middle if left out").at_least(0).at_most(1))},
      "one change");
}

/// Every key that some kind takes; the limits are those of the data file, told again with the place when
/// passed.
Shape request_shape() {
  std::vector<Field> fields = {field("item", choice(kind_choices(), "kind of item"))};
  fields.push_back(optional(
      "size", choice(size_choices(), "beds: named mattress size; the kind's usual one if left out")));
  for (const auto& [key, text] : keys_of(&furniture::Kind::measures)) {
    fields.push_back(optional(key, number(Unit::metre, text).at_least(0).at_most(k_longest_metres)));
  }
  for (const auto& [key, text] : keys_of(&furniture::Kind::counts)) {
    fields.push_back(optional(key, integer(text).at_least(1).at_most(k_most_of_a_count)));
  }
  for (const auto& [key, text] : keys_of(&furniture::Kind::options))
    fields.push_back(optional(key, flag(text)));
  fields.push_back(optional("covering", choice(choices_of(furniture::k_coverings),
                                               "cloth; mattress_tick for mattresses and bases, unknown for "
                                               "everything else if left out")));
  fields.push_back(optional("finish", choice(finishes_that_can_be_told(), "finish of its wood or metal")));
  fields.push_back(
      optional("wetting_limit_grams_per_m2",
               number(Unit::gram_per_m2,
                      "most water the covering takes up without a mark, by a hidden-spot wetting test")
                   .at_least(5)
                   .at_most(500)));
  fields.push_back(optional("hidden_spot_seconds", hidden_spot_seconds()));
  fields.push_back(optional("water_drop", water_drop_shape()));
  fields.push_back(
      optional("changes", list(change_shape(), "what a person changed of its edges").items(0, 400)));
  return object(std::move(fields), "the item; measures that are left out take usual values");
}

Shape edge_shape() {
  const Shape names = list(shape::text("name of a face"), "faces on which the line runs");
  const Shape treat = object(
      {field("kind", choice(choices_of(furniture::k_edge_kinds), "kind of edge")),
       field("covering", choice(choices_of(furniture::k_coverings), "cloth over it")),
       field("fill", choice(choices_of(furniture::k_fills), "what lies under the cloth")),
       optional("finish", choice(choices_of(furniture::k_finishes),
                                 "finish of the wood or metal met there; electronics is barred")),
       optional("wetting_limit_grams_per_m2", number(Unit::gram_per_m2, "by the wetting test of the item")),
       optional("hidden_spot_seconds", number(Unit::second, "by the hidden spot of the item")),
       optional("water_drop", water_drop_shape())},
      "what lies between head and bug; handed on unchanged as `edge` of the question pace");
  return object(
      {field("id", shape::text("stable name, from build to build")), field("title", shape::text("in words")),
       field("kind", choice(choices_of(furniture::k_edge_kinds), "kind of edge")),
       field("part", shape::text("name of its part")), field("faces", names),
       field("points_metres",
             list(list(number(Unit::metre, "x, y or z"), "a point").items(3, 3),
                  "the line; the first point comes again at the end of a closed one; an added "
                  "edge has none")
                 .items(0, 1000)),
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
                                "what the item was built with")),
       field("cautions", list(object({field("text", shape::text("what to know before it is worked on")),
                                      field("source", shape::text("where it comes from"))},
                                     "a caution"),
                              "to be shown with the item")),
       optional("water_drop", water_drop_answer_shape())},
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
  Json cautions = Json::array();
  for (const furniture::Caution& caution : item.cautions) {
    cautions.push_back({{"text", caution.text}, {"source", caution.source}});
  }
  return {{"item", item.kind},
          {"title", item.title},
          {"vertices_metres", std::move(vertices)},
          {"faces", std::move(faces)},
          {"parts", std::move(parts)},
          {"edges", std::move(edges)},
          {"dimensions", std::move(dimensions)},
          {"cautions", std::move(cautions)}};
}

/// The request as the catalogue takes it. A key that does not belong to the kind is refused there.
furniture::ItemRequest item_request(const Json& request) {
  furniture::ItemRequest item;
  item.kind = text_of(request, "item");
  for (const furniture::Kind& kind : furniture::catalogue()) {
    for (const furniture::Measure& measure : kind.measures) {
      if (const auto given = number_if(request, measure.key)) item.measures[measure.key] = *given;
    }
    for (const furniture::Count& count : kind.counts) {
      if (has(request, count.key)) item.counts[count.key] = request.at(count.key).get<int>();
    }
    for (const furniture::Option& option : kind.options) {
      if (has(request, option.key) && request.at(option.key).get<bool>()) item.options.insert(option.key);
    }
  }
  item.size = text_if(request, "size");
  if (const auto word = text_if(request, "covering")) item.covering = furniture::covering_named(*word);
  if (const auto word = text_if(request, "finish")) item.finish = furniture::finish_named(*word);
  return item;
}

std::vector<furniture::EdgeChange> changes_of(const Json& request) {
  using What = furniture::EdgeChange::What;
  static const std::map<std::string, What> k_words{{"added", What::added},
                                                   {"renamed", What::renamed},
                                                   {"split", What::split},
                                                   {"left_out", What::left_out}};
  std::vector<furniture::EdgeChange> changes;
  const Json* list = member_if(request, "changes");
  if (list == nullptr) return changes;
  for (const Json& told : *list) {
    furniture::EdgeChange change;
    change.what = k_words.at(text_of(told, "change"));
    change.id = text_if(told, "id").value_or("");
    change.edge = text_if(told, "edge").value_or("");
    change.title = text_if(told, "title").value_or("");
    change.kind = furniture::edge_kind_named(text_of(told, "kind")).value_or(furniture::EdgeKind::seam);
    change.part = text_if(told, "part").value_or("");
    change.length_metres = number_if(told, "length_metres").value_or(0);
    change.height_metres = number_of(told, "height_metres");
    change.in_sight = told.at("in_sight").get<bool>();
    change.at_share = number_if(told, "at_share");
    changes.push_back(std::move(change));
  }
  return changes;
}

Result<Answer> solve(const Json& request) {
  const auto built = furniture::build_item(item_request(request));
  if (!built) return refuse(built.error());
  const auto item = furniture::with_changes(*built, changes_of(request));
  if (!item) return refuse(item.error());
  Answer answer{json_of(*item), {}, {furniture::furniture_dimensions()->key}};
  for (const char* told : {"wetting_limit_grams_per_m2", "hidden_spot_seconds"}) {
    if (const auto value = number_if(request, told)) {
      for (Json& edge : answer.result["edges"]) edge["treat"][told] = *value;
    }
  }
  if (const Json* drop = member_if(request, "water_drop")) {
    for (Json& edge : answer.result["edges"]) edge["treat"]["water_drop"] = *drop;
    answer.result["water_drop"] = to_json(read_water_drop(request));
  }
  const bool all_given = std::all_of(item->dimensions.begin(), item->dimensions.end(),
                                     [](const auto& used) { return used.quality == "given"; });
  if (!all_given) {
    answer.warnings.push_back(
        {"usual_dimensions",
         say("Some measures are usual values or estimates, not taken from the piece itself; "
             "lengths and the time they cost follow from them. Measure it where that matters.")});
  }
  return answer;
}

}  // namespace

const Question& furniture_question() {
  static const Question question = {"furniture",
                                    "A piece of furniture or a part of a room in three dimensions, with "
                                    "every edge that a steam head runs along.",
                                    request_shape(), answer_shape(), &solve};
  return question;
}

}  // namespace lastegg
