#include <gtest/gtest.h>

#include <fstream>
#include <set>
#include <sstream>

#include "engine/ask.h"
#include "engine/document.h"
#include "engine/questions/questions.h"

namespace lastegg {
namespace {

Result<Answer> answer_to(const std::string& text) {
  const Question& question = furniture_question();
  return parse_document(text)
      .and_then([&](const Json& request) { return read(question.request, request); })
      .and_then([&](const Json& request) { return question.solve(request); });
}

Error refusal_of(const std::string& text) {
  const auto answer = answer_to(text);
  return answer ? Error{} : answer.error();
}

std::string example() {
  const std::ifstream file(std::string(LASTEGG_SOURCE_DIR) + "/examples/furniture.json");
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

}  // namespace

TEST(furniture_question, the_example_is_answered_in_the_stated_shape) {
  const auto answer = answer_to(example());
  ASSERT_TRUE(answer.has_value()) << answer.error().message;
  const auto checked = check_answer(furniture_question(), answer->result);
  EXPECT_TRUE(checked.has_value()) << checked.error().message << checked.error().where;
  EXPECT_EQ(answer->data_keys, std::vector<std::string>{"furniture_dimensions/1"});
  ASSERT_EQ(answer->warnings.size(), 1U);
  EXPECT_EQ(answer->warnings[0].code, "usual_dimensions");
}

TEST(furniture_question, every_kind_and_size_is_answered_in_the_stated_shape) {
  for (const char* request :
       {R"({"item":"sofa","seats":1})", R"({"item":"sofa","seats":2,"skirted":true,"tufted":true})",
        R"({"item":"sofa","seats":4,"covering":"leather","finish":"wax"})", R"({"item":"mattress"})",
        R"({"item":"mattress","size":"california_king"})", R"({"item":"mattress","size":"160x200"})",
        R"({"item":"mattress","width_metres":"35 in","length_metres":1.8,"base_height_metres":0})"}) {
    const auto answer = answer_to(request);
    ASSERT_TRUE(answer.has_value()) << request << answer.error().message;
    const auto checked = check_answer(furniture_question(), answer->result);
    EXPECT_TRUE(checked.has_value()) << request << checked.error().message << checked.error().where;
  }
}

TEST(furniture_question, faces_and_edges_refer_to_what_is_there) {
  const auto answer = answer_to(R"({"item":"sofa","skirted":true})");
  ASSERT_TRUE(answer.has_value());
  const Json& item = answer->result;
  std::set<std::string> parts;
  std::set<std::string> faces;
  for (const Json& part : item.at("parts")) parts.insert(part.at("name").get<std::string>());
  for (const Json& face : item.at("faces")) {
    EXPECT_EQ(parts.count(face.at("part").get<std::string>()), 1U);
    faces.insert(face.at("name").get<std::string>());
    for (const Json& vertex : face.at("vertices")) {
      EXPECT_LT(vertex.get<std::size_t>(), item.at("vertices_metres").size());
    }
  }
  for (const Json& edge : item.at("edges")) {
    EXPECT_EQ(parts.count(edge.at("part").get<std::string>()), 1U);
    EXPECT_EQ(edge.at("kind"), edge.at("treat").at("kind"));
    for (const Json& face : edge.at("faces")) EXPECT_EQ(faces.count(face.get<std::string>()), 1U) << face;
  }
}

TEST(furniture_question, refusals_name_value_limit_unit_and_place) {
  Error error = refusal_of(R"({"item":"sofa","width_metres":9})");
  EXPECT_EQ(error.where, "/width_metres");
  EXPECT_EQ(error.value, "9");
  EXPECT_EQ(error.limit, "3");
  EXPECT_EQ(error.unit, "m");
  error = refusal_of(R"({"item":"sofa","seats":0})");
  EXPECT_EQ(error.where, "/seats");
  EXPECT_EQ(error.value, "0");
  EXPECT_EQ(error.limit, "1");
  error = refusal_of(R"({"item":"mattress","thickness_metres":"3 in"})");
  EXPECT_EQ(error.where, "/thickness_metres");
  EXPECT_EQ(error.limit, "0.08");
  EXPECT_EQ(refusal_of(R"({"item":"sofa","covering":"silk"})").where, "/covering");
  EXPECT_EQ(refusal_of(R"({"item":"mattress","size":"emperor"})").where, "/size");
  EXPECT_EQ(refusal_of(R"({"item":"mattress","seats":3})").where, "/seats");
  EXPECT_EQ(refusal_of(R"({"item":"mattress","finish":"wax"})").where, "/finish");
  EXPECT_EQ(refusal_of(R"({"item":"sofa","size":"queen"})").where, "/size");
  EXPECT_EQ(refusal_of(R"({"item":"bookcase"})").where, "/item");
}

}  // namespace lastegg
