// The fold test: thermometer readings in a fold turned into what this machine, head and towel deliver, as a
// weighted ensemble. A calibration is a deterministic map of the same normal scores that every other room
// draws, so nothing is resampled. Plain values; pure functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/unknowns.h"

namespace lastegg::steam {

/// One reading: the tip lies under `above` layers, the hottest value of a pass is noted.
struct FoldReading {
  double pace_metres_per_second;
  Stack stack;          ///< from the cloth's surface to the base
  double depth_metres;  ///< of the tip
  double peak_celsius;
};

struct FoldTest {
  std::string head_key;   ///< machine + head + towel
  std::string cloth_key;  ///< head + covering of the test fold
  Towel towel = Towel::none;
  double head_length_metres = 0.08;
  double pressure_pascal = 101325;
  double start_celsius = 20;
  double probe_time_constant_seconds = 0;
  std::vector<FoldReading> readings;
};

/// One standard deviation of a peak reading, hand scatter included. Source: estimate (judgement).
constexpr double k_reading_error_kelvin = 2.5;

/// Degrees of freedom of the Student-t likelihood that lets one bad reading lose its pull. Source: judgement.
constexpr double k_likelihood_freedom = 4;

struct Calibration {
  bool tested = false;  ///< false: the prior
  std::string head_key, cloth_key;
  Towel towel = Towel::none;
  double head_length_metres = 0.08;
  double pressure_pascal = 101325;
  Scores mode{};  ///< most probable scores
  std::array<std::array<double, k_unknown_count>, k_unknown_count>
      factor{};                 ///< lower triangle L: scores = mode + L xi
  std::vector<double> weights;  ///< per sample, sum 1
  double effective_samples = 0;
  std::optional<Head> known_head;  ///< a head whose effect is known: its values replace the drawn ones
  std::optional<double> known_vapour_efficiency;  ///< with known_head: the cloth's, if known too
};

/// The prior as a calibration of `samples` equal weights.
Calibration prior_calibration(const std::string& head_key, const std::string& cloth_key, Towel towel,
                              double head_length_metres, double pressure_pascal, int samples);

/// Sample i of a calibration: its scores. With `cloth_key` of another covering the last two come from their
/// prior again.
Scores calibrated_scores(const Calibration& calibration, const std::string& cloth_key, int i);

/// Sample i of a calibration as a head on a cloth, and the vapour efficiency of that cloth.
struct DrawnHead {
  Head head;
  double vapour_efficiency;
};
DrawnHead drawn_head(const Calibration& calibration, const std::string& cloth_key, int i);

/// The head and cloth at the middle of a calibration; in another covering the cloth's prior median.
DrawnHead median_head(const Calibration& calibration, const std::string& cloth_key);

/// What the model expects the probe to show for each reading, in celsius, at given scores.
Result<std::vector<double>> expected_peaks(const FoldTest& test, const Scores& scores);

struct FitReport {
  Calibration calibration;
  std::vector<double> expected_celsius;  ///< per reading, at the mode
  std::vector<double> standard_scores;   ///< (measured - expected) / error
  Scores narrowing{};                    ///< posterior over prior standard deviation of each score
};

/// Infers the scores from the readings: mode by damped Gauss-Newton on a Student-t likelihood and the
/// standard normal prior, Laplace factor there, a Student-t map of the same scores, then every sample
/// weighted by posterior over the map's density. Inputs:  at least one reading; samples >= 16. Errors:  as
/// run_pass(), with where = /readings/i. Cost:    (samples + about 40) x distinct paces passes. Source:  own
/// derivation, README.md; Student-t weights: Lange, Little and Taylor 1989 (from memory, to be checked)
/// Checked: treatments/steam/calibration_law_test.cpp (recovery and coverage)
Result<FitReport> calibrate(const FoldTest& test, int samples);

}  // namespace lastegg::steam
