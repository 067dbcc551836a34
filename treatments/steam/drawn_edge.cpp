#include "treatments/steam/drawn_edge.h"

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
  Stack stack;
  for (std::size_t k = 0; k < problem.stack.size(); ++k) {
    const UncertainLayer& uncertain = problem.stack[k];
    Layer layer = uncertain.layer;
    const auto scatter = [&](unsigned dimension) {
      const double spread = spreads(uncertain)[dimension];
      return spread > 0 ? numerics::exp(spread * SobolStream(layer_key(problem, k), dimension).normal(i)) : 1;
    };
    layer.thickness_metres *= scatter(0);
    layer.conductivity_watts_per_metre_kelvin *= scatter(1);
    layer.heat_capacity_joules_per_m3_kelvin *= scatter(2);
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
    for (unsigned dimension = 0; dimension < 3; ++dimension) {
      if (spreads(problem.stack[k])[dimension] > 0)
        scores.push_back(SobolStream(layer_key(problem, k), dimension).normal(i));
    }
  }
  return scores;
}

Stack middle_stack(const PaceProblem& problem) {
  Stack stack;
  for (const UncertainLayer& layer : problem.stack) stack.push_back(layer.layer);
  return stack;
}

}  // namespace lastegg::steam
