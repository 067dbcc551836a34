// Question `preparation`: the sheet for the people of the home, and what the firm looks after.
#include <fmt/format.h>

#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/visit_shapes.h"
#include "job/safety/preparation.h"
#include "words/say.h"
namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  std::vector<Field> fields{
      field("items",
            list(object({with_default("traits", list(text("a trait"), "as the question method gives them"),
                                      Json::array()),
                         optional("method", text("as the question method gives it"))},
                        "one item"),
                 "items with their methods")
                .items(0, 100)),
      with_default("equipment",
                   list(text("what the home has: dryer, washer, freezer"), "of the home").items(0, 20),
                   Json::array())};
  fields.push_back(circumstance_fields().front());
  return object(std::move(fields), "what the visit does and what is at risk");
}

Shape answer_shape() {
  const Shape param =
      object({field("name", text("as it stands in the text")), field("value", ratio("in the unit beside it")),
              field("unit", text("min, C, m or 1")), field("source", text("key of the bibliography"))},
             "a number of the sentence");
  Shape sentence = sourced_text("one sentence");
  sentence.fields.push_back(field("template", text("the text with {name} where a number stands")));
  sentence.fields.push_back(field("params", list(param, "numbers of the sentence")));
  sentence.fields.push_back(field(
      "time",
      choice({{"before", "before the visit"}, {"day", "on the day"}, {"after", "afterwards"}}, "when")));
  sentence.fields.push_back(
      field("hard_stop", list(text("a method"), "methods that are barred until it is settled")));
  return object({field("home", list(sentence, "for the people of the home")),
                 field("firm", list(sentence, "for those who work")),
                 field("hard_stops", integer("sentences for the firm that bar a method"))},
                "the sheet");
}

Json to_json(const safety::Sentence& sentence) {
  const std::string pattern = in_language(sentence.text);
  std::string text = pattern;
  Json params = Json::array();
  for (const auto& [name, datum] : sentence.params) {
    params.push_back(
        {{"name", name}, {"value", datum.value}, {"unit", datum.unit}, {"source", datum.source}});
    const std::string shown = datum.unit == "C"   ? fmt::format("{:g} C", datum.value)
                              : datum.unit == "m" ? fmt::format("{:g} m", datum.value)
                                                  : fmt::format("{:g}", datum.value);
    const std::string mark = "{" + name + "}";
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark))
      text.replace(at, mark.size(), shown);
  }
  constexpr const char* k_times[] = {"before", "day", "after"};
  return {{"code", sentence.code},
          {"text", text},
          {"template", pattern},
          {"params", std::move(params)},
          {"time", k_times[static_cast<std::size_t>(sentence.time)]},
          {"hard_stop", sentence.hard_stop},
          {"source", sentence.source},
          {"locator", sentence.locator},
          {"quality", quality_name(sentence.quality)}};
}

Result<Answer> solve(const Json& request) {
  if (const auto state = safety::data_state(); !state) return refuse(state.error());
  safety::Home home;
  for (const Json& item : request.at("items")) {
    for (const Json& trait : item.at("traits")) home.traits.insert(trait.get<std::string>());
    if (const auto method = text_if(item, "method")) home.methods.insert(*method);
  }
  for (const Json& thing : request.at("equipment")) home.equipment.insert(thing.get<std::string>());
  if (const Json* risks = member_if(request, "risks"))
    for (const Json& risk : *risks) home.risks.insert(text_of(risk, "what"));
  Answer answer;
  answer.result = {{"home", Json::array()}, {"firm", Json::array()}, {"hard_stops", 0}};
  for (const safety::Sentence& sentence : safety::sentences_for(home)) {
    const bool firm = sentence.who == safety::Who::firm;
    if (firm && !sentence.hard_stop.empty())
      answer.result["hard_stops"] = answer.result["hard_stops"].get<int>() + 1;
    answer.result[firm ? "firm" : "home"].push_back(to_json(sentence));
  }
  answer.data_keys = {std::string(safety::k_data_key)};
  return answer;
}

}  // namespace

const Question& preparation_question() {
  static const Question question{
      "preparation",
      "What the people of the home do before, on the day and after, and what the firm "
      "looks after.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
