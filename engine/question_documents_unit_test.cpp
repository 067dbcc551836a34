#include "engine/question_documents.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

#include "engine/ask.h"
#include "engine/trial_question.h"

namespace lastegg {
namespace {

std::map<std::string, std::string> examples() {
  std::map<std::string, std::string> found;
  const std::filesystem::path folder = std::filesystem::path(LASTEGG_SOURCE_DIR) / "examples";
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (!entry.is_regular_file() || entry.path().extension() != ".json") continue;
    std::ifstream file(entry.path(), std::ios::binary);
    found[entry.path().filename().string()] =
        std::string(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
  }
  return found;
}

TEST(Examples, EveryQuestionHasOne) {
  std::set<std::string> asked;
  for (const auto& [file_name, text] : examples()) asked.insert(question_of_example(file_name));
  for (const Question& question : questions())
    EXPECT_EQ(asked.count(question.name), 1U) << "examples/" << question.name << ".json is missing";
}

TEST(Examples, EveryOneIsAnsweredInItsShape) {
  for (const auto& [file_name, text] : examples()) {
    const Result<const Question*> question = question_named(question_of_example(file_name));
    ASSERT_TRUE(question) << "examples/" << file_name << ": " << question.error().message;
    const AskOutcome outcome = ask(**question, text);
    ASSERT_TRUE(outcome.ok) << "examples/" << file_name << ": " << outcome.text;
    Json answer = Json::parse(outcome.text);
    for (const Field& field : fields_of_every_answer()) {
      EXPECT_TRUE(answer.contains(field.key)) << file_name;
      answer.erase(field.key);
    }
    const Result<Json> checked = check_answer(**question, answer);
    EXPECT_TRUE(checked) << "examples/" << file_name << ": " << checked.error().message;
  }
}

// The words of one shape and all below it.
void expect_described(const Shape& shape, const std::string& path) {
  for (const Field& field : shape.fields) {
    EXPECT_FALSE(field.shape.text.empty()) << path << "." << field.key << " says nothing about its meaning";
    expect_described(field.shape, path + "." + field.key);
  }
  for (const Shape& element : shape.element) expect_described(element, path + "[]");
  for (const Shape& alternative : shape.alternatives) expect_described(alternative, path);
  EXPECT_TRUE(shape.kind != Shape::Kind::choice || !shape.choices.empty()) << path;
  for (const Choice& choice : shape.choices)
    EXPECT_FALSE(choice.text.empty()) << path << ": the word " << choice.word << " is not explained";
}

TEST(Questions, EveryKeyAndEveryWordIsExplained) {
  for (const Question& question : questions()) {
    EXPECT_FALSE(question.text.empty()) << question.name;
    EXPECT_EQ(question.request.kind, Shape::Kind::object) << question.name;
    expect_described(question.request, question.name + " request");
    expect_described(question.answer, question.name + " answer");
  }
}

TEST(Questions, NamesAreDistinct) {
  std::set<std::string> names;
  for (const Question& question : questions())
    EXPECT_TRUE(names.insert(question.name).second) << question.name;
}

// Defaults go through the reader as given values do; one that does not fit would refuse every request without
// the key.
void expect_fitting_defaults(const Shape& shape, const std::string& path) {
  for (const Field& field : shape.fields) {
    if (!field.fallback.is_null()) {
      const Result<Json> fits = read(field.shape, field.fallback);
      EXPECT_TRUE(fits) << path << "." << field.key << ": " << fits.error().message;
    }
    expect_fitting_defaults(field.shape, path + "." + field.key);
  }
  for (const Shape& element : shape.element) expect_fitting_defaults(element, path + "[]");
  for (const Shape& alternative : shape.alternatives) expect_fitting_defaults(alternative, path);
}

TEST(Questions, DefaultsFit) {
  for (const Question& question : questions()) expect_fitting_defaults(question.request, question.name);
}

TEST(QuestionDocuments, SchemaOfAnAnswerHasWhatEveryAnswerHas) {
  const Json schema = schema_document(trial_question(), Side::answer);
  EXPECT_EQ(schema["$schema"], "https://json-schema.org/draft/2020-12/schema");
  EXPECT_EQ(schema["title"], "trial: answer");
  EXPECT_EQ(schema["required"], Json({"read", "engine", "data", "warnings"}));
}

TEST(QuestionDocuments, TypesNameEveryQuestion) {
  const std::string types = types_document();
  for (const Question& question : questions())
    EXPECT_NE(types.find("\n  " + question.name + ": { request: "), std::string::npos) << question.name;
}

TEST(QuestionDocuments, ExamplesBelongToTheQuestionBeforeTheDot) {
  EXPECT_EQ(question_of_example("saturation.json"), "saturation");
  EXPECT_EQ(question_of_example("saturation.elevation.json"), "saturation");
}

TEST(QuestionDocuments, ThePageHasASectionPerQuestion) {
  const std::string page = questions_document(examples());
  for (const Question& question : questions())
    EXPECT_NE(page.find("\n## " + question.name + "\n"), std::string::npos) << question.name;
}

}  // namespace
}  // namespace lastegg
