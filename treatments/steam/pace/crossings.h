// Where falling functions of one variable cross zero, for many similar ones at once: each evaluation takes a
// whole batch, and what is learnt from the first crossings predicts the later ones. Where only a weighted
// quantile of the crossings is asked for, few functions besides those near it have to be evaluated. Pure
// functions; any thread.
#pragma once

#include <functional>
#include <span>
#include <vector>

#include "physics/quantities/error.h"

namespace lastegg::steam {

struct Crossing {
  double x =
      0;  ///< minus infinity: below zero already at the low end; infinity: above zero still at the high end
  double slope = 0;        ///< of the function there, negative; 0: not known, outside
  double error = 0;        ///< in x, that remains beside the usual error of a crossing found finely
  bool evaluated = false;  ///< else predicted
};

struct CrossingSearch {
  double low = 0, high = 1;  ///< ends of x
  double start = 0.5;        ///< first guess of the first functions
  double start_slope = -1;
  double close_enough = 0.1;  ///< |value| from which the slope does the rest
  double largest_step = 0.7;
  std::size_t learnt = 144;  ///< near a quantile: functions found before it is looked for
  bool closes_in = true;     ///< else the others are left at what the regression says of them: a first look
};

/// A weighted quantile of (crossing - offset) over the functions.
struct CrossingQuantile {
  double share = 0.5;
  std::span<const double> weights, offsets;  ///< one per function
};

/// Values of the functions `which` at `xs`, cheaply or as well as they can be had.
enum class Effort { rough, fine };
using EvaluateMany = std::function<Result<std::vector<double>>(std::span<const std::size_t> which,
                                                               std::span<const double> xs, Effort effort)>;

/// Crossings of all functions, finely.
/// Model:   Newton steps with a predicted slope, then secants within a bracket; predictions by ridge
///          regression of the crossings found so far on each function's features. Points of evaluation lie on
///          a grid of 1/1024, so that the last digits of a prediction, which differ between machines, change
///          nothing.
/// Inputs:  features: one row per function, all of one length
/// Errors:  those of `evaluate`
/// Cost:    about 1.3 evaluations per function
/// Source:  own derivation
/// Checked: treatments/steam/pace/crossings_law_test.cpp
Result<std::vector<Crossing>> find_crossings(const std::vector<std::vector<double>>& features,
                                             const CrossingSearch& search, const EvaluateMany& evaluate);

/// Crossings near a quantile; of the others as much as is needed to know their side of it.
/// Model:   the first functions are found roughly and teach a regression, whose errors are seen by leaving
///          each function out in turn; a function whose known or predicted crossing lies nearer to the
///          quantile than nearly all of those errors is evaluated there, until there is none left. Rough
///          values err alike near one place: the mean error of a few moves all crossings.
/// Inputs:  as find_crossings()
/// Errors:  those of `evaluate`
/// Cost:    about 1.3 rough evaluations of each function learnt, 1.5 of each in the band around the quantile,
///          and a few fine ones
/// Source:  own derivation, docs/decisions/015-few-marches.md
/// Checked: treatments/steam/pace/crossings_law_test.cpp
Result<std::vector<Crossing>> find_crossings_near(const CrossingQuantile& quantile,
                                                  const std::vector<std::vector<double>>& features,
                                                  const CrossingSearch& search, const EvaluateMany& evaluate);

}  // namespace lastegg::steam
