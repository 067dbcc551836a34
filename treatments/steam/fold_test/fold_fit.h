// The fold test: readings of a thermometer turned into what this machine, head and towel deliver. Pure
// functions.
#pragma once

#include <vector>

#include "treatments/steam/fold_test/fold_reading.h"
#include "treatments/steam/steamer/calibration.h"

namespace lastegg::steam {

/// Degrees of freedom of the Student-t likelihood that lets one bad reading lose its pull. Source: judgement.
constexpr double k_likelihood_freedom = 4;

/// How far the march may be from a real cloth, one standard deviation in kelvin half-way between start and
/// boiling (none at either end): everywhere alike, per e-fold of pace around 15 mm/s, and per e-fold of depth
/// around 1.5 mm.
/// Source:  estimate: over 150 random steamers whose cloths follow other laws (fold_steamers_for_tests.h) the
/// root
///          mean squares of what vapour efficiency and forced gas do not take up were 1.7, 2.3 and 2.9, by
///          linear fit; docs/decisions/030-fold-test.md
struct LawError {
  double level_kelvin = 3, per_pace_kelvin = 2.5, per_depth_kelvin = 3;
};
constexpr LawError k_law_error{};

struct FitReport {
  Calibration calibration;
  std::vector<double> expected_celsius;  ///< per reading, at the mode
  std::vector<double> standard_scores;   ///< (measured - expected) / error
  /// Posterior over prior standard deviation of the head's own scores and of those of the covering.
  Scores narrowing{};
  /// Per sample and reading: by how many errors it misses. For weights without some of the readings.
  std::vector<std::vector<double>> sample_scores;
};

/// Infers the scores from the readings.
/// Model:   unknowns are the scores of dew temperature, film, vapour efficiency and forced gas as each
///          covering that was read shows them, the head's own dew temperature and film behind them (which a
///          head at rest and a plate tell alone), and what the probe's time constant and the march itself may
///          be wrong by;
///          mode by damped Gauss-Newton on a Student-t likelihood and the standard normal prior, Laplace
///          factor of the physical scores there, a Student-t map of the same scores, then every sample
///          weighted by posterior over the map's density, the errors integrated out by Laplace's rule. The
///          calibration is the leading block: head and the covering test.cloth_key.
/// Inputs:  at least one reading; samples >= 16.
/// Errors:  as run_pass(), with where = /readings.
/// Cost:    (samples + about 40) x readings passes.
/// Source:  own derivation, treatments/steam/README.md; Student-t weights: Lange, Little and Taylor 1989
/// (from memory, to be
///          checked); error of the model as an unknown: Kennedy and O'Hagan 2001 (from memory, to be checked)
/// Checked: treatments/steam/steamer/calibration_law_test.cpp (recovery), fold_coverage_law_test.cpp
Result<FitReport> calibrate(const FoldTest& test, int samples);

/// Weights of a fit as if the readings marked in `left_out` had not been taken.
/// Model:   posterior weight over the Student-t likelihood of those readings.
std::vector<double> weights_without(const FitReport& report, const std::vector<bool>& left_out);

}  // namespace lastegg::steam
