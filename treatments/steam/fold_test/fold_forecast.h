// What a calibrated head would do and show in readings that nobody has taken yet, over the ensemble. Pure
// functions.
#pragma once

#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/fold_test/fold_reading.h"
#include "treatments/steam/pace/pace.h"

namespace lastegg::steam {

/// One reading in each sample.
struct FoldForecast {
  FoldReading reading;                ///< its peak has no meaning
  std::vector<double> fold_celsius;   ///< true peak at the tip
  std::vector<double> probe_celsius;  ///< what the probe would show
  std::vector<double> lethal_margin;  ///< log10(R/2) for eggs, nymphs, unfed adults; of a moving head
};

/// The fold at one reading, over the ensemble.
struct FoldPoint {
  Spread fold_celsius;         ///< true peak in the fold
  double lethal_share;         ///< weight with R >= 2 for eggs, nymphs, unfed adults
  double practice_share;       ///< weight at or above the practice target
  double probe_spread_kelvin;  ///< standard deviation of what the probe would show
};

/// Lower end of the practice target in the fold. Common practice: 71-82 C (160-180 F) at working pace.
constexpr double k_practice_low_celsius = 71;
constexpr double k_practice_high_celsius = 82;

/// Weights of the first `samples` samples, renormalised.
std::vector<double> leading_weights(const std::vector<double>& weights, int samples);

/// Forecast of each reading over the first `samples` samples of the calibration.
/// Model:   as expected_peaks(); readings in another covering than the calibration's draw it from its prior.
/// Errors:  as run_pass().
/// Cost:    readings x samples passes.
/// Checked: treatments/steam/fold_test/next_reading_agreement_test.cpp
Result<std::vector<FoldForecast>> forecast_readings(const Calibration& calibration, const FoldTest& test,
                                                    const std::vector<FoldReading>& readings, int samples);

FoldPoint summary_of(const FoldForecast& forecast, const std::vector<double>& weights);

}  // namespace lastegg::steam
