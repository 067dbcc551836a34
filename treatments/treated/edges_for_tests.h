// Edges of realistic shape for tests; property values are placeholders of realistic size, not measurements.
#pragma once

#include "treatments/treated/treated.h"

namespace lastegg::treated {

inline steam::PaceProblem welt_for_tests(int samples) {
  steam::PaceProblem problem;
  problem.calibration =
      steam::prior_calibration("treated|head", "treated|cloth", steam::Towel::none, 0.08, 101325, samples);
  // A head that was tested well: few unknowns are left.
  problem.calibration.known_head = steam::Head{0.08, 96, 800, 65e3, 0.005, 0.02, 0.25};
  problem.cloth_key = "treated|cloth";
  problem.stack_key = "treated|stack";
  problem.stack = {{{0.002, 480e3, 0.055, true, 0.68, 2.0, 2.0}, 0.1, 0.1, 0.1},
                   {{0.010, 19.5e3, 0.04, true, 0.985, 1.05, 0.074}, 0, 0.1, 0.2},
                   {{0.050, 45e3, 0.04, true, 0.97, 1.3, 0.55}}};
  problem.target_depth_metres = 0.0015;
  problem.harm.wetting_kilograms_per_m2 = 0.110;
  problem.start_celsius = problem.air.celsius = 21;
  return problem;
}

inline TreatedEdge even_treatment(const steam::PaceProblem& problem, double length_metres, double pace) {
  TreatedEdge edge;
  edge.length_metres = length_metres;
  edge.problems.push_back(problem);
  TreatedPass pass;
  pass.marks = {{0, 0}, {length_metres, length_metres / pace}};
  pass.began_seconds = 0;
  pass.problem = 0;
  edge.passes.push_back(pass);
  return edge;
}

}  // namespace lastegg::treated
