// What furniture hands on must be understood by the question of the pace: every kind of edge, every finish.
#include <gtest/gtest.h>

#include <set>

#include "engine/edge_problem.h"
#include "engine/questions/questions.h"
#include "job/edges/edge_kind.h"
#include "job/furniture/catalogue.h"

namespace lastegg {
namespace {

Result<Json> furniture(const std::string& kind) {
  const Question& question = furniture_question();
  return read(question.request, Json{{"item", kind}})
      .and_then([&](const Json& request) { return question.solve(request); })
      .transform([](const Answer& answer) { return answer.result; });
}

Result<Json> pace_of(const Json& treat) {
  const Question& question = pace_question();
  const Json request = {{"prior", Json::object()}, {"edge", treat}};
  return read(question.request, request)
      .and_then([&](const Json& checked) { return question.solve(checked); })
      .transform([](const Answer& answer) { return answer.result; });
}

}  // namespace

TEST(catalogue_pace, every_kind_of_edge_is_known_to_the_pace) {
  for (const auto& kind : furniture::k_edge_kinds) {
    EXPECT_TRUE(find_edge_kind(kind.name).has_value()) << kind.name;
  }
}

TEST(catalogue_pace, every_edge_of_every_item_is_read_as_an_edge_of_the_pace) {
  const Shape shape = edge_shape();
  std::set<std::string> treats;
  for (const furniture::Kind& kind : furniture::catalogue()) {
    const auto item = furniture(kind.name);
    ASSERT_TRUE(item.has_value()) << kind.name;
    for (const Json& edge : item->at("edges")) {
      if (!treats.insert(edge.at("treat").dump()).second) continue;
      const auto checked = read(shape, edge.at("treat"));
      EXPECT_TRUE(checked.has_value()) << kind.name << " " << edge.at("id") << checked.error().message;
    }
  }
  EXPECT_GT(treats.size(), 30U);
}

TEST(catalogue_pace, an_outlet_plate_is_barred_and_has_no_pace) {
  const auto item = furniture("socket_plate");
  ASSERT_TRUE(item.has_value());
  const auto pace = pace_of(item->at("edges")[0].at("treat"));
  ASSERT_TRUE(pace.has_value()) << pace.error().message;
  EXPECT_EQ(pace->at("harm_at_recommended"), "barred");
  EXPECT_EQ(pace->at("reason").at("code"), "barred_finish");
  EXPECT_TRUE(pace->at("recommended_metres_per_second").is_null());
}

TEST(catalogue_pace, a_heap_has_no_pace_and_is_not_proven) {
  const auto item = furniture("clutter");
  ASSERT_TRUE(item.has_value());
  const auto pace = pace_of(item->at("edges")[0].at("treat"));
  ASSERT_TRUE(pace.has_value()) << pace.error().message;
  EXPECT_EQ(pace->at("reason").at("code"), "shape_not_modelled");
  EXPECT_EQ(pace->at("verdict_at_recommended"), "not_proven");
}

}  // namespace lastegg
