// The written-out forms of the table of questions: schemas for programs, types for the browser, a page for
// people. They are generated, committed, and compared with a fresh run by the tests. Pure functions; files
// belong to apps.
#pragma once

#include <map>
#include <string>

#include "engine/question.h"

namespace lastegg {

/// The shape of the whole answer: the question's own members and those that every answer has.
Shape whole_answer(const Question& question);

/// The shape of the whole request: the question's own members and the language.
Shape whole_request(const Question& question);

/// A complete JSON Schema document of the request or the answer.
/// Checked: engine/question_documents_unit_test.cpp
Json schema_document(const Question& question, Side side);

/// The TypeScript file with the types of every request and answer, and of refusals.
/// Checked: engine/question_documents_unit_test.cpp
std::string types_document();

/// The Markdown page of all questions. Each is shown with its examples and what it answers to them; long
/// answers are cut, and numbers rounded to six digits, so that the page is the same on every target. Inputs:
/// examples: file name ("saturation.json", "saturation.elevation.json") to request text Checked:
/// engine/question_documents_unit_test.cpp
std::string questions_document(const std::map<std::string, std::string>& examples);

/// The question that an example file asks: its name up to the first dot.
std::string question_of_example(const std::string& file_name);

}  // namespace lastegg
