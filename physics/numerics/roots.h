// Root of a continuous function between two points where its signs differ. Header-only, no state.
#pragma once

#include <cmath>
#include <limits>

#include "physics/quantities/error.h"

namespace lastegg::numerics {

/// A place x with f(x) = 0 within `tolerance` of a change of sign.
/// Model:   Chandrupatla's hybrid: inverse quadratic interpolation where three points allow it,
///          bisection otherwise, so that the bracket never fails to shrink. Stops when the bracket is
///          narrower than 2 (tolerance + 2 eps |x|).
/// Inputs:  low < high, f finite on the bracket, f(low) and f(high) of opposite sign or zero; tolerance
///          >= 0 in x.
/// Errors:  out_of_domain when the signs agree or a value is not finite.
/// Source:  Chandrupatla 1997, Advances in Engineering Software 28:145 (algorithm from memory, checked
///          by its tests)
/// Checked: physics/numerics/roots_unit_test.cpp: unit, agreement with Boost.Math toms748
template <class Function>
Result<double> bracketed_root(Function&& f, double low, double high, double tolerance = 0.0) {
  constexpr int most_steps = 200;  // bisection alone needs at most about 130 for doubles of one sign
  double newest = low, opposite = high;
  double f_newest = f(newest), f_opposite = f(opposite);
  if (f_newest == 0.0) return newest;
  if (f_opposite == 0.0) return opposite;
  if (!std::isfinite(f_newest) || !std::isfinite(f_opposite) || (f_newest > 0.0) == (f_opposite > 0.0))
    return refuse({ErrorKind::out_of_domain, "The equation has no change of sign between the two limits.", "",
                   "", "", ""});

  double share = 0.5;  // where the next point lies between newest and opposite
  for (int step = 0; step < most_steps; ++step) {
    const double x = newest + share * (opposite - newest);
    const double f_x = f(x);
    if (!std::isfinite(f_x))
      return refuse(
          {ErrorKind::out_of_domain, "The equation has no finite value inside its limits.", "", "", "", ""});
    double previous, f_previous;
    if ((f_x > 0.0) == (f_newest > 0.0)) {
      previous = newest, f_previous = f_newest;
    } else {
      previous = opposite, f_previous = f_opposite;
      opposite = newest, f_opposite = f_newest;
    }
    newest = x, f_newest = f_x;

    const bool newest_is_best = std::fabs(f_newest) < std::fabs(f_opposite);
    const double best = newest_is_best ? newest : opposite;
    const double f_best = newest_is_best ? f_newest : f_opposite;
    const double width = std::fabs(opposite - newest);
    const double allowed = 2.0 * std::numeric_limits<double>::epsilon() * std::fabs(best) + tolerance;
    if (f_best == 0.0 || width <= 2.0 * allowed) return best;

    const double edge = allowed / width;
    const double xi = (newest - opposite) / (previous - opposite);
    const double phi = (f_newest - f_opposite) / (f_previous - f_opposite);
    if (phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi) {
      share = f_newest / (f_opposite - f_newest) * f_previous / (f_opposite - f_previous) +
              (previous - newest) / (opposite - newest) * f_newest / (f_previous - f_newest) * f_opposite /
                  (f_previous - f_opposite);
    } else {
      share = 0.5;
    }
    if (!(share > edge)) share = edge;
    if (!(share < 1.0 - edge)) share = 1.0 - edge;
  }
  return newest;
}

}  // namespace lastegg::numerics
