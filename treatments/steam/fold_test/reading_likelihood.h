// How well readings fit, and the errors behind them that nobody asks for. For the fit of a fold test.
#pragma once

#include "treatments/steam/fold_test/score_map.h"

namespace lastegg::steam {

/// Minus twice the log of the Student-t likelihood of one standardised residual, up to a constant, and the
/// weight that such a residual has in a quadratic fit.
double misfit(double score);
double likelihood_weight(double score);

/// Standard normal errors that move the readings linearly, at their own most probable values, found by
/// iterated weighting, and integrated out by Laplace's rule.
struct IntegratedErrors {
  double value = 0;  ///< minus twice the logarithm, up to a constant, without the misfits
  Vector scores;     ///< what is left of each reading
};
/// slopes: of each reading over each error; missed: the residuals without errors, both standardised.
IntegratedErrors integrate_errors(const Matrix& slopes, const Vector& missed);

}  // namespace lastegg::steam
