// What a calibrated head reaches in the test fold over pace, and how sure the model is of a further reading
// there. Pure functions.
#pragma once

#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/pace.h"

namespace lastegg::steam {

/// The fold at one pace and one depth.
struct FoldPoint {
  double pace_metres_per_second;
  double depth_metres;
  Spread fold_celsius;         ///< true peak in the fold
  double lethal_share;         ///< weight with R >= 2 for eggs, nymphs, unfed adults
  double practice_share;       ///< weight at or above the practice target
  double probe_spread_kelvin;  ///< standard deviation of what the probe would show
};

/// Lower end of the practice target in the fold. Common practice: 71-82 C (160-180 F) at working pace.
constexpr double k_practice_low_celsius = 71;
constexpr double k_practice_high_celsius = 82;

/// Forecast at each pace and depth, over the first `samples` samples of the calibration.
/// Model:   as expected_peaks(), in the stack of the test fold; weights renormalised over the samples used.
/// Errors:  as run_pass().
/// Cost:    paces x samples passes.
/// Checked: treatments/steam/calibration_law_test.cpp
Result<std::vector<FoldPoint>> fold_forecast(const Calibration& calibration, const FoldTest& test,
                                             const Stack& stack, const std::vector<double>& depths_metres,
                                             const std::vector<double>& paces, int samples);

}  // namespace lastegg::steam
