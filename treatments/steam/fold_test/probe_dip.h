// How slow a thermometer is, from a dip into boiling water with a watch. Plain values; pure functions.
#pragma once

#include <optional>
#include <vector>

#include "physics/quantities/error.h"

namespace lastegg::steam {

struct DipPoint {
  double seconds;  ///< since the tip went in
  double celsius;  ///< shown
};

/// A dip from the start temperature into water that boils. At least one of the three is given.
struct ProbeDip {
  double start_celsius = 20;
  double boiling_celsius = 100;
  std::vector<DipPoint> points;
  std::optional<double> seconds_to_63;  ///< until 63 % of the way to boiling shows
  std::optional<double> seconds_to_90;  ///< until 90 %
};

struct ProbeLag {
  double time_constant_seconds = 0;
  double log_spread = 0;     ///< standard deviation of its logarithm, in a fold
  double low = 0, high = 0;  ///< 5 % and 95 %
  double dead_seconds = 0;   ///< the start that shows nothing, if more than one mark tells
  bool is_one_rate = true;   ///< the marks lie on one exponential within their errors
  int used_marks = 0;
};

/// A fold is no pot of boiling water: how far the time constant there may differ, standard deviation of the
/// logarithm. Source: judgement; in still air the same tips are ten times slower and more.
constexpr double k_dip_to_fold_spread = 0.25;

/// Error of a mark: the watch and the eye, seconds; the display, kelvin. Source: estimates.
constexpr double k_watch_error_seconds = 0.3;
constexpr double k_display_error_kelvin = 1.0;

/// A probe slower than this cannot be corrected for: at an inch per second it shows about 13 K too little,
/// and what is not known of its time constant (a quarter) is then more than the error of a reading. Source:
/// judgement on computed readings, docs/decisions/030-fold-test.md.
constexpr double k_slowest_probe_seconds = 4.0;

/// Time constant of a probe from its dip.
/// Model:   T = T_b - (T_b - T_0) exp(-t / tau). Each mark at share s of the way gives t = tau x,
///          x = -ln(1 - s); weighted least squares of t on x through the origin, weights from the errors of
///          watch and display. Two marks or more also give tau with a dead time free; half the logarithm of
///          the ratio of both counts as spread, and so does what a fold may do.
/// Inputs:  start at least 30 K below boiling; marks between 10 % and 95 % of the way are used.
///          The spread is held at a factor of two: a probe so fast that the watch cannot time it lags little
///          anyhow.
/// Errors:  bad_input: no mark, none that can be used, times not ascending, temperatures outside start and
///          boiling; out_of_domain: tau is not known within a factor of two and may exceed what can be
///          corrected (with where = /points, /seconds_to_90 ...)
/// Source:  own derivation; 63 % and 90 % of a first-order step: textbook
/// Checked: treatments/steam/fold_test/probe_dip_law_test.cpp; probe_dip_reference_test.cpp (published
/// response times)
Result<ProbeLag> probe_lag(const ProbeDip& dip);

}  // namespace lastegg::steam
