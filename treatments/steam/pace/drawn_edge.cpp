#include "treatments/steam/pace/drawn_edge.h"

#include <array>
#include <string>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"

namespace lastegg::steam {
namespace {

constexpr double k_spare_metres = 0.1e-3;  // below a target that a thin draw would have lost

std::string layer_key(const PaceProblem& problem, std::size_t layer) {
  return problem.stack_key + "/" + std::to_string(layer);
}

std::array<double, 3> spreads(const UncertainLayer& layer) {
  return {layer.thickness_spread, layer.conductivity_spread, layer.capacity_spread};
}

}  // namespace

Stack drawn_stack(const PaceProblem& problem, std::uint32_t i) {
  return stack_at(problem, stack_scores(problem, i));
}

Stack stack_at(const PaceProblem& problem, std::span<const double> scores) {
  Stack stack;
  stack.reserve(problem.stack.size());
  std::size_t next = 0;
  for (const UncertainLayer& uncertain : problem.stack) {
    Layer layer = uncertain.layer;
    double* const properties[] = {&layer.thickness_metres, &layer.conductivity_watts_per_metre_kelvin,
                                  &layer.heat_capacity_joules_per_m3_kelvin};
    const std::array<double, 3> spread = spreads(uncertain);
    for (std::size_t dimension = 0; dimension < spread.size(); ++dimension)
      if (spread[dimension] > 0) *properties[dimension] *= numerics::exp(spread[dimension] * scores[next++]);
    stack.push_back(layer);
  }
  // A thin draw must not lose the target: the last layer makes up for it.
  const double missing = problem.target_depth_metres - thickness_metres(stack);
  if (missing >= 0) stack.back().thickness_metres += missing + k_spare_metres;
  return stack;
}

double drawn_hand(std::uint32_t i) {
  return numerics::exp(k_hand_spread * SobolStream("hand", 0).normal(i));
}

std::vector<double> stack_scores(const PaceProblem& problem, std::uint32_t i) {
  std::vector<double> scores;
  for (std::size_t k = 0; k < problem.stack.size(); ++k) {
    const std::string key = layer_key(problem, k);
    for (unsigned dimension = 0; dimension < 3; ++dimension)
      if (spreads(problem.stack[k])[dimension] > 0) scores.push_back(SobolStream(key, dimension).normal(i));
  }
  return scores;
}

Stack middle_stack(const PaceProblem& problem) {
  Stack stack;
  for (const UncertainLayer& layer : problem.stack) stack.push_back(layer.layer);
  return stack;
}

}  // namespace lastegg::steam
