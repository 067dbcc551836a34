// Where falling functions of one variable cross zero, for many similar ones at once: each evaluation takes a
// whole batch, and what is learnt from the first crossings predicts the later ones, so that most need one or
// two evaluations. Pure function; any thread.
#pragma once

#include <functional>
#include <span>
#include <vector>

#include "physics/quantities/error.h"

namespace lastegg::steam {

struct Crossing {
  double x =
      0;  ///< minus infinity: below zero already at the low end; infinity: above zero still at the high end
  double slope = 0;        ///< of the function there, negative
  bool predicted = false;  ///< not evaluated at all
};

/// Whether a function's crossing has to be found where it is predicted at x with a standard error; those
/// known so far are at hand. Where it need not, the prediction stays.
using Matters =
    std::function<bool(std::size_t which, double x, double standard_error, std::span<const Crossing> known)>;

struct CrossingSearch {
  double low = 0, high = 1;  ///< ends of x
  double start = 0.5;        ///< first guess of the first functions
  double start_slope = -1;
  double close_enough = 0.1;  ///< |value| from which the slope does the rest
  double largest_step = 0.7;
  Matters matters;  ///< none: every function does
};

/// Values of the functions `which` at `xs`.
using EvaluateMany = std::function<Result<std::vector<double>>(std::span<const std::size_t> which,
                                                               std::span<const double> xs)>;

/// Crossings of all functions.
/// Model:   Newton steps with a predicted slope, then secants within a bracket; predictions by ridge
/// regression of the
///          crossings found so far on each function's features. Points of evaluation lie on a grid of 1/1024,
///          so that the last digits of a prediction, which differ between machines, change nothing.
/// Inputs:  features: one row per function, all of one length
/// Errors:  those of `evaluate`
/// Cost:    about 1.3 evaluations per function
/// Source:  own derivation
/// Checked: treatments/steam/crossings_law_test.cpp
Result<std::vector<Crossing>> find_crossings(const std::vector<std::vector<double>>& features,
                                             const CrossingSearch& search, const EvaluateMany& evaluate);

}  // namespace lastegg::steam
