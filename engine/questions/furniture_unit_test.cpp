#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

#include "engine/ask.h"
#include "engine/document.h"
#include "engine/questions/questions.h"
#include "job/furniture/catalogue.h"

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

TEST(FurnitureQuestion, TheExampleIsAnsweredInTheStatedShape) {
  const auto answer = answer_to(example());
  ASSERT_TRUE(answer.has_value()) << answer.error().message;
  const auto checked = check_answer(furniture_question(), answer->result);
  EXPECT_TRUE(checked.has_value()) << checked.error().message << checked.error().where;
  EXPECT_EQ(answer->data_keys, std::vector<std::string>{"furniture_dimensions/1"});
  ASSERT_EQ(answer->warnings.size(), 1U);
  EXPECT_EQ(answer->warnings[0].code, "usual_dimensions");
}

TEST(FurnitureQuestion, EveryKindOfTheCatalogueIsAnsweredInTheStatedShape) {
  for (const furniture::Kind& kind : furniture::catalogue()) {
    const std::string request = R"({"item":")" + kind.name + R"("})";
    const auto answer = answer_to(request);
    ASSERT_TRUE(answer.has_value()) << request << answer.error().message;
    const auto checked = check_answer(furniture_question(), answer->result);
    EXPECT_TRUE(checked.has_value()) << request << checked.error().message << checked.error().where;
    EXPECT_EQ(answer->result.at("item"), kind.name);
  }
}

TEST(FurnitureQuestion, EveryKeyOfEveryKindIsRead) {
  for (const furniture::Kind& kind : furniture::catalogue()) {
    Json request = {{"item", kind.name}};
    for (const furniture::Count& count : kind.counts) request[count.key] = count.usual;
    for (const furniture::Option& option : kind.options) request[option.key] = true;
    if (kind.usual_covering) request["covering"] = "wool";
    if (kind.finished) request["finish"] = "wax";
    if (!kind.usual_size.empty()) request["size"] = kind.usual_size;
    const auto usual = answer_to(request.dump());
    ASSERT_TRUE(usual.has_value()) << request << usual.error().message;
    std::set<std::string> treated;
    for (const Json& edge : usual->result.at("edges")) treated.insert(edge.at("treat").dump());
    const auto told = [&](const char* word) {
      return std::any_of(treated.begin(), treated.end(),
                         [&](const std::string& t) { return t.find(word) != std::string::npos; });
    };
    EXPECT_EQ(told("wool"), kind.usual_covering.has_value()) << kind.name;
    EXPECT_EQ(told("wax"), kind.finished) << kind.name;
    for (const furniture::Measure& measure : kind.measures) {
      Json measured = request;
      measured[measure.key] = 20.5;
      EXPECT_EQ(refusal_of(measured.dump()).where, "/" + measure.key) << kind.name;
    }
  }
}

TEST(FurnitureQuestion, ACoveringThatIsNotKnownIsLetPassWhereThereIsNone) {
  EXPECT_TRUE(answer_to(R"({"item":"bookcase","covering":"unknown"})").has_value());
  EXPECT_EQ(refusal_of(R"({"item":"bookcase","covering":"wool"})").where, "/covering");
  EXPECT_EQ(refusal_of(R"({"item":"bookcase","finish":"electronics"})").where, "/finish");
}

TEST(FurnitureQuestion, CautionsAreHandedOn) {
  const auto answer = answer_to(R"({"item":"hospital_bed"})");
  ASSERT_TRUE(answer.has_value());
  ASSERT_FALSE(answer->result.at("cautions").empty());
  for (const Json& caution : answer->result.at("cautions")) {
    EXPECT_EQ(caution.at("source"), "common practice, no source");
  }
  EXPECT_TRUE(answer_to(R"({"item":"sofa"})")->result.at("cautions").empty());
}

TEST(FurnitureQuestion, EveryKindAndSizeIsAnsweredInTheStatedShape) {
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

TEST(FurnitureQuestion, FacesAndEdgesReferToWhatIsThere) {
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

TEST(FurnitureQuestion, RefusalsNameValueLimitUnitAndPlace) {
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
  EXPECT_EQ(refusal_of(R"({"item":"aquarium"})").where, "/item");
  error = refusal_of(R"({"item":"bookcase","shelves":9})");
  EXPECT_EQ(error.where, "/shelves");
  EXPECT_EQ(error.value, "9");
  EXPECT_EQ(error.limit, "8");
}

TEST(CatalogueQuestion, EachKindItListsCanBeAskedForWithinTheLimitsItGives) {
  const Question& question = catalogue_question();
  const auto answer = read(question.request, Json::object()).and_then([&](const Json& request) {
    return question.solve(request);
  });
  ASSERT_TRUE(answer.has_value());
  EXPECT_TRUE(check_answer(question, answer->result).has_value());
  EXPECT_EQ(answer->result.at("kinds").size(), furniture::catalogue().size());
  for (const Json& kind : answer->result.at("kinds")) {
    for (const Json& measure : kind.at("measures")) {
      const double above = measure.at("highest_metres").get<double>() * 1.01 + 0.001;
      const std::string key = measure.at("key").get<std::string>();
      const Json request = {{"item", kind.at("item")}, {key, above}};
      EXPECT_EQ(refusal_of(request.dump()).where, "/" + key) << kind.at("item");
    }
  }
  const auto seats = read(question.request, Json{{"group", "seat"}}).and_then([&](const Json& request) {
    return question.solve(request);
  });
  ASSERT_TRUE(seats.has_value());
  for (const Json& kind : seats->result.at("kinds")) EXPECT_EQ(kind.at("group"), "seat");
}

}  // namespace lastegg
