// One pass integrated by SUNDIALS CVODE: the fair rival of the steam engine. Energy and water of each cell
// are the unknowns (in temperature and water the saturation of a cell is a jump that stops the integrator),
// with the engine's own inexpensive property fits and an analytic banded Jacobian, so that nothing slows it
// but what a general integrator has to do. For the bench only.
#pragma once

#include <vector>

#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg::bench {

struct CvodeOptions {
  int cells = 32;
  double relative_tolerance = 3e-3;
  double stop_below_celsius = 40;
};

/// Temperatures at the first depth of the problem; empty when the library gives up.
steam::Series cvode_pass(const steam::PassProblem& problem, const CvodeOptions& options);

}  // namespace lastegg::bench
