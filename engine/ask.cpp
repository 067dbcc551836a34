#include "engine/ask.h"

#include <algorithm>
#include <cmath>

#include "engine/document.h"
#include "engine/nearest_word.h"
#include "words/say.h"

namespace lastegg {
namespace {

std::string_view word_of(ErrorKind kind) {
  switch (kind) {
    case ErrorKind::bad_input:
      return "bad_input";
    case ErrorKind::not_found:
      return "not_found";
    case ErrorKind::out_of_domain:
      return "out_of_domain";
    case ErrorKind::internal:
      return "internal";
  }
  return "internal";
}

// A text that spells a JSON number becomes that number, so that programs can compare it.
Json number_or_text(const std::string& text) {
  const bool may_be_number = !text.empty() && text.find_first_not_of("0123456789+-.eE") == std::string::npos;
  if (may_be_number) {
    Json number = Json::parse(text, nullptr, false);
    if (number.is_number()) return number;
  }
  return Json(text);
}

bool all_finite(const Json& value) {
  if (value.is_number_float()) return std::isfinite(value.get<double>());
  return !value.is_structured() || std::all_of(value.begin(), value.end(), all_finite);
}

Error defect(std::string message) {
  Error error;
  error.kind = ErrorKind::internal;
  error.message = std::move(message);
  return error;
}

std::vector<std::string> language_tags() {
  std::vector<std::string> tags;
  for (const LanguageTag& known : k_languages) tags.emplace_back(known.tag);
  return tags;
}

// Takes the language out of a request; without one it is that in force, so that a program can set it for all.
Result<Language> take_language(Json& request) {
  const auto told = request.is_object() ? request.find("language") : request.end();
  if (!request.is_object() || told == request.end()) return language_in_force();
  const auto language =
      told->is_string() ? language_tagged(told->get_ref<const std::string&>()) : std::nullopt;
  if (!language) {
    Error error;
    error.kind = ErrorKind::bad_input;
    error.where = "/language";
    error.value = told->is_string() ? told->get<std::string>().substr(0, 80) : dumped(*told).substr(0, 80);
    error.limit = any_of(language_tags());
    error.message = say("language is \"{}\"; it must be one of {}", error.value, error.limit);
    return refuse(std::move(error));
  }
  request.erase("language");
  return *language;
}

Result<Json> answer_to(const Question& question, std::string_view text) {
  Result<Json> document = parse_document(text);
  if (!document) return refuse(document.error());
  const Result<Language> language = take_language(*document);
  if (!language) return refuse(language.error());
  const InLanguage spoken(*language);
  const Result<Json> request = read(question.request, *document);
  if (!request) return refuse(request.error());
  Result<Answer> answer = question.solve(*request);
  if (!answer) return refuse(answer.error());
  if (!answer->result.is_object() || !all_finite(answer->result))
    return refuse(defect("the answer to " + question.name + " holds a number that is not finite"));
#ifdef LASTEGG_CHECK_ANSWERS
  const Result<Json> checked = check_answer(question, answer->result);
  if (!checked) return refuse(checked.error());
#endif
  Json result = std::move(answer->result);
  result["engine"] = LASTEGG_VERSION;
  std::vector<std::string>& keys = answer->data_keys;
  std::sort(keys.begin(), keys.end());
  keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
  result["data"] = keys;
  result["warnings"] = Json::array();
  for (const Warning& warning : answer->warnings)
    result["warnings"].push_back({{"code", warning.code}, {"text", warning.text}});
  return result;
}

}  // namespace

AskOutcome ask(std::string_view question, std::string_view request) noexcept {
  const Result<const Question*> found = question_named(question);
  if (!found) return {false, dumped(error_object(found.error()))};
  return ask(**found, request);
}

AskOutcome ask(const Question& question, std::string_view request) noexcept {
  const Result<Json> answer = answer_to(question, request);
  if (answer) return {true, dumped(*answer)};
  return {false, dumped(error_object(answer.error()))};
}

Result<const Question*> question_named(std::string_view name) {
  std::vector<std::string> names;
  for (const Question& question : questions()) {
    if (question.name == name) return &question;
    names.push_back(question.name);
  }
  Error error;
  error.kind = ErrorKind::not_found;
  error.value = name.substr(0, 80);
  const std::string nearest = nearest_word(name, names);
  error.message = nearest.empty()
                      ? say("there is no question named \"{}\"; there are {}", error.value, any_of(names))
                      : say("there is no question named \"{}\"; did you mean {}?", error.value, nearest);
  return refuse(std::move(error));
}

Result<Json> check_answer(const Question& question, const Json& result) {
  const Result<Json> checked = read(question.answer, result);
  if (checked) return checked;
  Error error = checked.error();
  error.kind = ErrorKind::internal;
  error.message = "the answer to " + question.name + " does not have its shape: " + error.message;
  return refuse(std::move(error));
}

Json error_object(const Error& error) {
  Json members = {{"kind", word_of(error.kind)}, {"message", error.message}, {"where", error.where}};
  if (!error.value.empty()) members["value"] = number_or_text(error.value);
  if (!error.limit.empty()) members["limit"] = number_or_text(error.limit);
  if (!error.unit.empty()) members["unit"] = error.unit;
  return Json{{"error", std::move(members)}};
}

std::string dumped(const Json& value, int indent) {
  return value.dump(indent, ' ', false, Json::error_handler_t::replace);
}

Field field_of_every_request() {
  using namespace shape;
  return optional("language",
                  choice({{"en-US", "English as in the United States, which also holds if left out"},
                          {"en-GB", "English as in Britain"},
                          {"es", "Spanish"}},
                         "language of the sentences in the answer or refusal; changes no number, "
                         "code or key"));
}

std::vector<Field> fields_of_every_answer() {
  using namespace shape;
  return {
      field("engine", text("Version of the engine that answered.")),
      field("data", list(text("A data file, name/version."), "Data files that the answer rests on.")),
      field("warnings", list(object({field("code", text("Stable word for programs.")),
                                     field("text", text("The warning in a sentence."))},
                                    "One warning."),
                             "What the person should know besides the answer.")),
  };
}

}  // namespace lastegg
