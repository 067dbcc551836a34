// What lies on top of a fold some seconds after a pass, and how that answers to the four unknowns. Plain
// values; pure functions.
#pragma once

#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/fold_test/fold_reading.h"

namespace lastegg::steam {

struct SurfaceAfter {
  double celsius = 0;
  double kelvin_per_second = 0;
};

/// The surface `reading.seconds_after` the trailing skirt has left, at given scores. With a laid towel it is
/// the towel's. Errors:  as run_pass() Cost:    one reference pass, about a millisecond
Result<SurfaceAfter> surface_after(const FoldTest& test, const FoldReading& reading, const Scores& scores);

/// The same over all scores without a march.
/// Model:   a cubic in dew temperature, logarithm of the film, vapour efficiency and forced gas, fitted by
/// least
///          squares to k_response_passes reference passes at scores drawn a quarter wider than the prior;
///          scores beyond 3.5 are taken there. What it leaves over, each pass predicted from all
///          others, counts as an error of the reading.
/// Checked: treatments/steam/fold_test/surface_response_law_test.cpp
struct SurfaceResponse {
  std::vector<double> coefficients;
  double residual_kelvin = 0;    ///< root mean square that the cubic leaves over
  double kelvin_per_second = 0;  ///< root mean square of the slope

  double celsius(const FoldTest& test, const Scores& scores) const;
};
/// Errors:  as run_pass()
Result<SurfaceResponse> surface_response(const FoldTest& test, const FoldReading& reading);
constexpr int k_response_passes = 256;

}  // namespace lastegg::steam
