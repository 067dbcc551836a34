// Sample i of an edge: the layers of its stack and the hand that moves the head, drawn by their keys, and the
// normal scores behind them. Pure functions.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "treatments/steam/pace/pace.h"

namespace lastegg::steam {

/// The stack of sample i, at least as thick as the target is deep.
Stack drawn_stack(const PaceProblem& problem, std::uint32_t i);
/// The same from scores as stack_scores() gives them.
Stack stack_at(const PaceProblem& problem, std::span<const double> scores);

/// Pace of the hand in sample i over the pace that was planned.
double drawn_hand(std::uint32_t i);

/// The independent normal scores that the stack of sample i was drawn from; as many in every sample.
std::vector<double> stack_scores(const PaceProblem& problem, std::uint32_t i);

/// The stack at the middle of everything.
Stack middle_stack(const PaceProblem& problem);

}  // namespace lastegg::steam
