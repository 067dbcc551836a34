// The one door to the engine: a question's name and a request as text in, an answer as text out. Used alike
// by the command line, the server and the WebAssembly build. It keeps nothing between calls; any thread may
// ask. A request without `language` is answered in the language that is in force on the thread
// (words/language.h): American English unless the program has set another.
#pragma once

#include <string>
#include <string_view>

#include "engine/question.h"

namespace lastegg {

struct AskOutcome {
  bool ok = false;
  std::string text;  ///< JSON object: the answer with `engine`, `data` and `warnings`; or {"error":{...}}
};

/// Answers `question` for the JSON object `request`. Never throws: every refusal is an outcome with ok =
/// false. Errors:  the text {"error":{"kind","message","where","value"?,"limit"?,"unit"?}}; kinds as in
///          physics/quantities/error.h; value and limit are numbers where they are numbers
/// Checked: engine/ask_unit_test.cpp
AskOutcome ask(std::string_view question, std::string_view request) noexcept;

/// The same for a question that need not be in the table.
AskOutcome ask(const Question& question, std::string_view request) noexcept;

/// The question of that name.
/// Errors:  not_found, naming the nearest name
Result<const Question*> question_named(std::string_view name);

/// Checks what a question answered: the result against the answer shape, and every number finite. Tests run
/// it over every example, and debug builds over every answer.
Result<Json> check_answer(const Question& question, const Json& result);

/// The {"error":{...}} object of an error.
Json error_object(const Error& error);

/// JSON text of a value; bytes that are not UTF-8 are replaced, never refused.
std::string dumped(const Json& value, int indent = -1);

/// The member that every request may carry besides its own: the language of what is answered. ask() takes it
/// out before the question sees the request.
Field field_of_every_request();

/// The shapes of the members that every answer carries besides its own: engine, data, warnings.
std::vector<Field> fields_of_every_answer();

}  // namespace lastegg
