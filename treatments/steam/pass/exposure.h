// What a place in the stack lived through: the coarse steps of a pass turned into a fine piecewise-linear
// series, its peak, and what a slow probe would have shown of it. Pure functions.
#pragma once

#include <span>
#include <vector>

#include "treatments/steam/pass/pass.h"

namespace lastegg::steam {

struct Series {
  std::vector<double> seconds;
  std::vector<double> celsius;
};

struct Peak {
  double celsius = 0;
  double seconds = 0;
};

/// Fine piecewise-linear series of one place of a pass.
/// Model:   cubic Hermite within each phase, slopes from the parabola through three neighbouring times, never
///          across an abrupt change of the step; limited to monotone where such a stretch starts; pieces of
///          at most about `largest_step_kelvin`; a maximum inside a step becomes a point.
/// Inputs:  celsius: one value per history.seconds (surface_celsius or one row of celsius).
/// Source:  Hermite interpolation; limiter: Fritsch and Carlson 1980 (from memory, to be checked)
/// Checked: treatments/steam/pass/exposure_law_test.cpp
void fine_series(const PassHistory& history, std::span<const double> celsius, double largest_step_kelvin,
                 Series& out);

/// Highest point of a series.
Peak peak_of(const Series& series);

/// Highest reading of a probe that follows dT_p/dt = (T - T_p)/tau, in equilibrium at the start; exact for
/// the piecewise-linear series. tau 0: the series' own peak. Checked:
/// treatments/steam/pass/exposure_law_test.cpp
Peak lagged_peak(const Series& series, double time_constant_seconds);

/// Seconds that a series spends above a temperature.
double seconds_above(const Series& series, double celsius);

}  // namespace lastegg::steam
