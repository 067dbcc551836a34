// Question `catalogue`: the kinds of items that the question `furniture` builds, with what each of them
// takes: what pickers are made of.
#include <algorithm>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "job/furniture/catalogue.h"
#include "job/furniture/dimensions.h"
#include "words/say.h"
namespace lastegg {
namespace {

using namespace shape;

std::vector<Choice> group_choices() {
  std::vector<Choice> choices;
  for (const auto& meaning : furniture::k_groups) {
    choices.push_back({std::string(meaning.name), std::string(meaning.text)});
  }
  return choices;
}

Shape request_shape() {
  return object({optional("group", choice(group_choices(), "only kinds of this group"))},
                "nothing need be told");
}

Shape answer_shape() {
  const Shape measure = object(
      {field("key", shape::text("key of a request of the question furniture")),
       field("text", shape::text("what it means")), field("usual_metres", number(Unit::metre, "if left out")),
       field("lowest_metres", number(Unit::metre, "smallest accepted")),
       field("highest_metres", number(Unit::metre, "largest accepted")),
       field("source", shape::text("where the usual value comes from"))},
      "a length");
  const Shape count =
      object({field("key", shape::text("key of a request")), field("text", shape::text("what it counts")),
              field("usual", integer("if left out")), field("lowest", integer("fewest")),
              field("highest", integer("most"))},
             "a number of like pieces");
  const Shape option =
      object({field("key", shape::text("key of a request")), field("text", shape::text("what is there"))},
             "something that is there or not");
  const Shape kind = object(
      {field("item", shape::text("word for the question furniture")), field("title", shape::text("in words")),
       field("group", choice(group_choices(), "where it stands in a list")),
       field("measures", list(measure, "lengths")), field("counts", list(count, "numbers")),
       field("options", list(option, "switches")),
       optional("size", shape::text("usual mattress size, where it takes one")),
       optional("covering", shape::text("usual covering, where it takes one")),
       field("finish", flag("takes the finish of its wood or metal"))},
      "a kind of item");
  return object({field("kinds", list(kind, "group by group")),
                 field("sizes", list(object({field("size", shape::text("word")),
                                             field("title", shape::text("in words")),
                                             field("width_metres", number(Unit::metre, "across")),
                                             field("length_metres", number(Unit::metre, "foot to head"))},
                                            "a mattress size"),
                                     "sizes that beds take"))},
                "the catalogue");
}

Json json_of(const furniture::Kind& kind) {
  const auto& dimensions = furniture::furniture_dimensions()->dimensions;
  Json measures = Json::array();
  for (const furniture::Measure& measure : kind.measures) {
    const auto found = std::find_if(dimensions.begin(), dimensions.end(), [&](const auto& dimension) {
      return dimension.name == measure.dimension;
    });
    if (found == dimensions.end()) continue;  // no kind names one that is missing: catalogue_unit_test.cpp
    measures.push_back({{"key", measure.key},
                        {"text", in_language(measure.text)},
                        {"usual_metres", found->value},
                        {"lowest_metres", found->lowest},
                        {"highest_metres", found->highest},
                        {"source", found->source}});
  }
  Json counts = Json::array();
  for (const furniture::Count& count : kind.counts) {
    counts.push_back({{"key", count.key},
                      {"text", in_language(count.text)},
                      {"usual", count.usual},
                      {"lowest", count.lowest},
                      {"highest", count.highest}});
  }
  Json options = Json::array();
  for (const furniture::Option& option : kind.options)
    options.push_back({{"key", option.key}, {"text", in_language(option.text)}});
  Json out = {{"item", kind.name},
              {"title", in_language(kind.title)},
              {"group", std::string(name_of(kind.group))},
              {"measures", std::move(measures)},
              {"counts", std::move(counts)},
              {"options", std::move(options)},
              {"finish", kind.finished}};
  if (!kind.usual_size.empty()) out["size"] = kind.usual_size;
  if (kind.usual_covering) out["covering"] = std::string(name_of(*kind.usual_covering));
  return out;
}

Result<Answer> solve(const Json& request) {
  const auto& table = furniture::furniture_dimensions();
  if (!table) return refuse(table.error());
  const auto group = text_if(request, "group");
  Answer answer{{{"kinds", Json::array()}, {"sizes", Json::array()}}, {}, {table->key}};
  for (const furniture::Kind& kind : furniture::catalogue()) {
    if (!group || *group == name_of(kind.group)) answer.result["kinds"].push_back(json_of(kind));
  }
  for (const furniture::MattressSize& size : table->mattress_sizes) {
    answer.result["sizes"].push_back({{"size", size.name},
                                      {"title", in_language(size.title)},
                                      {"width_metres", size.width_metres},
                                      {"length_metres", size.length_metres}});
  }
  return answer;
}

}  // namespace

const Question& catalogue_question() {
  static const Question question = {"catalogue",
                                    "The kinds of items that furniture builds, and what each of them takes.",
                                    request_shape(), answer_shape(), &solve};
  return question;
}

}  // namespace lastegg
