#include "engine/question_documents.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

#include "engine/ask.h"

namespace lastegg {
namespace {

constexpr std::size_t k_shown_entries = 4;

// "room_network" to "RoomNetwork".
std::string type_name(const std::string& question) {
  std::string name;
  bool up = true;
  for (const char c : question) {
    if (c == '_') {
      up = true;
      continue;
    }
    name += up && c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    up = false;
  }
  return name;
}

Json rounded(double number) {
  const std::string digits = fmt::format("{:.6g}", number);
  return Json(std::strtod(digits.c_str(), nullptr));
}

// A value as the page shows it: the first entries of lists, six digits of numbers.
Json abridged(const Json& value) {
  if (value.is_number_float()) return rounded(value.get<double>());
  if (value.is_array()) {
    Json list = Json::array();
    for (const Json& entry : value) {
      if (list.size() == k_shown_entries) {
        list.push_back(fmt::format("... {} more", value.size() - k_shown_entries));
        break;
      }
      list.push_back(abridged(entry));
    }
    return list;
  }
  if (!value.is_object()) return value;
  Json object = Json::object();
  for (const auto& [key, member] : value.items()) object[key] = abridged(member);
  return object;
}

std::string example_section(const std::string& question, const std::string& file_name,
                            const std::string& text) {
  const AskOutcome outcome = ask(question, text);
  const Json answer = abridged(Json::parse(outcome.text, nullptr, false));
  const Json request = Json::parse(text, nullptr, false);
  return fmt::format(
      "Example: `lastegg ask {} examples/{}`\n\n```json\n{}\n```\n\nanswers\n\n```json\n{}\n```\n\n",
      question, file_name, dumped(abridged(request), 2), dumped(answer, 2));
}

std::string groups_sentence(const Shape& shape) {
  if (shape.one_of.empty()) return "";
  std::string sentence = "Give exactly one of these: ";
  for (std::size_t i = 0; i < shape.one_of.size(); ++i) {
    if (i > 0) sentence += ", or ";
    for (std::size_t j = 0; j < shape.one_of[i].size(); ++j)
      sentence += (j > 0 ? " with `" : "`") + shape.one_of[i][j] + "`";
  }
  return sentence + ".\n\n";
}

std::string table_of(const std::string& heading, const Shape& shape) {
  const std::string rows = to_markdown(shape);
  if (rows.empty()) return "";
  return heading + "\n\n" + groups_sentence(shape) +
         "| key | kind or unit | range | meaning |\n|---|---|---|---|\n" + rows + "\n";
}

// The closed lists of a question, each once with all the keys that take its words.
std::string lists_of(const Question& question) {
  std::vector<std::pair<std::string, std::string>> lists;  // keys, words
  for (const Shape* shape : {&question.request, &question.answer}) {
    for (const auto& [path, choices] : closed_lists(*shape)) {
      std::string words;
      for (const Choice& choice : choices) words += fmt::format("- `{}`: {}\n", choice.word, choice.text);
      const std::string key = "`" + path + "`";
      const auto same =
          std::find_if(lists.begin(), lists.end(), [&](const auto& one) { return one.second == words; });
      if (same == lists.end())
        lists.emplace_back(key, words);
      else if (same->first.find(key) == std::string::npos)
        same->first += ", " + key;
    }
  }
  std::string text;
  for (const auto& [keys, words] : lists) text += fmt::format("Words of {}:\n\n{}\n", keys, words);
  return text;
}

// The shape with further members.
Shape extended(Shape shape, const std::vector<Field>& more) {
  if (shape.kind == Shape::Kind::object) shape.fields.insert(shape.fields.end(), more.begin(), more.end());
  for (Shape& alternative : shape.alternatives)
    if (alternative.kind == Shape::Kind::object)
      alternative.fields.insert(alternative.fields.end(), more.begin(), more.end());
  return shape;
}

}  // namespace

Shape whole_answer(const Question& question) {
  return extended(question.answer, fields_of_every_answer());
}

Shape whole_request(const Question& question) {
  return extended(question.request, {field_of_every_request()});
}

Json schema_document(const Question& question, Side side) {
  Json document = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                   {"title", question.name + (side == Side::request ? ": request" : ": answer")}};
  const Json schema =
      to_json_schema(side == Side::request ? whole_request(question) : whole_answer(question), side);
  for (const auto& [key, member] : schema.items()) document[key] = member;
  return document;
}

std::string types_document() {
  std::string text =
      "// Made by `lastegg types` from the engine's table of questions. Do not edit.\n\n"
      "/** A quantity in the unit of its key, or text with a unit, such as \"1 in/s\". */\n"
      "export type Quantity = number | string;\n\n"
      "export interface EngineError {\n"
      "  kind: \"bad_input\" | \"not_found\" | \"out_of_domain\" | \"internal\";\n"
      "  message: string;\n"
      "  /** JSON pointer into the request; empty for the whole of it. */\n"
      "  where: string;\n"
      "  value?: number | string;\n"
      "  limit?: number | string;\n"
      "  unit?: string;\n"
      "}\n\n"
      "export interface Refusal {\n"
      "  error: EngineError;\n"
      "}\n";
  std::string table = "\nexport interface Questions {\n";
  std::string names = "\nexport const question_names = [\n";
  for (const Question& question : questions()) {
    const std::string name = type_name(question.name);
    text += fmt::format("\n/** {} */\nexport type {}Request = {};\n", question.text, name,
                        to_typescript(whole_request(question), Side::request));
    text += fmt::format("\nexport type {}Answer = {};\n", name,
                        to_typescript(whole_answer(question), Side::answer));
    table += fmt::format("  {0}: {{ request: {1}Request; answer: {1}Answer }};\n", question.name, name);
    names += fmt::format("  \"{}\",\n", question.name);
  }
  return text + table + "}\n\nexport type QuestionName = keyof Questions;\n" + names +
         "] as const satisfies readonly QuestionName[];\n";
}

std::string questions_document(const std::map<std::string, std::string>& examples) {
  std::string text =
      "# Questions\n\n"
      "Made by `lastegg docs` from the engine's table of questions. Do not edit.\n\n"
      "`lastegg ask QUESTION [FILE|-]` reads one JSON object and prints one. Over HTTP the same text is "
      "posted to\n"
      "`/api/ask/QUESTION`. The unit of a number is spelled out in its key. Where a unit stands in the "
      "second column of\n"
      "a request, text with a unit is read as well (`\"1 in/s\"`, `\"160 F\"`, `\"1/4 in\"`); text that "
      "could mean two\n"
      "things is refused. Any object of a request may carry a `note`, which is not read. Unknown keys are "
      "refused.\n\n"
      "Any request may carry `language` (`en-US`, which also holds if left out, `en-GB`, `es`) beside its "
      "own "
      "members: the\n"
      "language of the sentences in the answer or refusal. It changes no number, code or key. What was "
      "computed in one "
      "language and\n"
      "is handed in again (`known`, `known_paces`, `treated`) keeps its sentences.\n\n"
      "Every answer also has `engine` (version), `data` (data files it rests on) and `warnings` (list of "
      "`code` and\n"
      "`text`). A request that cannot be answered exits with 2 and `{\"error\":{...}}` on standard error: "
      "`kind`\n"
      "(`bad_input`, `not_found`, `out_of_domain`, `internal`), `message`, `where` (a JSON pointer into the "
      "request),\n"
      "and, where they exist, `value`, `limit` and `unit`.\n\n";
  for (const Question& question : questions())
    text += fmt::format("- [{0}](#{0}): {1}\n", question.name, question.text);
  for (const Question& question : questions()) {
    text += fmt::format("\n## {}\n\n{}\n\n", question.name, question.text);
    text += table_of("Request:", question.request);
    text += table_of("Answer:", question.answer);
    text += lists_of(question);
    for (const auto& [file_name, example] : examples)
      if (question_of_example(file_name) == question.name)
        text += example_section(question.name, file_name, example);
    while (text.ends_with("\n\n")) text.pop_back();
  }
  return text;
}

std::string question_of_example(const std::string& file_name) {
  return file_name.substr(0, file_name.find('.'));
}

}  // namespace lastegg
