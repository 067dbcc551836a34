// Readings of the surface behind the head, as questions are given them, and what they teach of the unknowns.
// Pure functions.
#pragma once

#include <string>
#include <vector>

#include "engine/pace_basis.h"
#include "engine/question.h"
#include "treatments/touch/touch.h"
#include "treatments/treated/treated.h"

namespace lastegg {

Shape surface_reading_shape();

/// An edge whose samples were weighed by readings.
struct LearntFromSurface {
  treated::TreatedEdge edge;
  double effective_samples = 0;
  std::vector<std::string> shown;             ///< per reading: what was read
  std::vector<std::vector<double>> expected;  ///< per reading: 5 %, 50 %, 95 % of what was to be expected
};

/// Weighs every sample of the head of a reading's pass by the likelihood of what it lets expect.
/// Errors:  bad_input with place: a pass that is not there, a place that it did not reach.
/// Cost:    one reference pass per sample and pace
/// Checked: engine/around_pass_unit_test.cpp
Result<LearntFromSurface> learn_from_surface(const treated::TreatedEdge& edge, const Json& readings,
                                             const std::string& where);

/// Calibrations of the basis as the readings weigh them, in the form that `pace` takes; those of heads that
/// are known beforehand are left out.
Json learnt_calibrations(const LearntFromSurface& learnt, const PaceBasis& basis);

Shape learnt_shape();
Json learnt_json(const LearntFromSurface& learnt, const PaceBasis& basis,
                 const treated::TreatedReport& before, const treated::TreatedReport& after);

}  // namespace lastegg
