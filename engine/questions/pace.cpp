// Question `pace`: how fast to move along one edge.
#include <fmt/format.h>

#include "engine/edge_pace.h"
#include "engine/questions/questions.h"

namespace lastegg {
namespace {

using namespace shape;

Shape request_shape() {
  std::vector<Field> fields = pace_kit_fields();
  fields.push_back(field("edge", edge_shape()));
  fields.push_back(optional(
      "gap_seconds",
      number(Unit::second, fmt::format("pause to cool between repeat passes, where they are tried; {:g} (an "
                                       "estimate) if left out",
                                       steam::k_gap_seconds))
          .at_least(0.1)
          .at_most(3600)));
  Shape request = object(std::move(fields), "a kit and an edge");
  return request;
}

Result<Answer> solve(const Json& request) {
  auto basis = read_pace_basis(request);
  if (!basis) return refuse(basis.error());
  auto result = pace_of_edge(*basis, request.at("edge"), read_edge_settings(request), "/edge");
  if (!result) return refuse(result.error());
  return Answer{std::move(*result),
                std::move(basis->warnings),
                {"coverings/1", "damage_limits/1", "edge_kinds/3", "materials/1", "mortality/1"}};
}

}  // namespace

const Question& pace_question() {
  static const Question question{
      "pace",
      "How fast to move along one edge: the pace that kills there and does no harm, and what limits it.",
      request_shape(), object(pace_answer_fields(), "the pace of the edge"), solve};
  return question;
}

}  // namespace lastegg
