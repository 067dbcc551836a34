// A calibration: what this machine, head and towel deliver, as a weighted ensemble. It is a deterministic map
// of the same normal scores that every other room draws, so nothing is resampled. Where it comes from:
// fold_fit.h, or the prior. Plain values; pure functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "treatments/steam/steamer/unknowns.h"

namespace lastegg::steam {

/// Degrees of freedom of the Student-t map behind a test: even, and its tails heavier than any posterior
/// here, so that no sample can outweigh the rest.
constexpr unsigned k_map_freedom = 6;

/// What a fit finds: the four unknowns as the tested covering shows them, then what the head's own dew
/// temperature and film differ by from these.
constexpr std::size_t k_fitted_count = k_unknown_count + k_head_unknown_count;
using FittedScores = std::array<double, k_fitted_count>;

struct Calibration {
  bool tested = false;  ///< false: the prior
  std::string head_key, cloth_key;
  Towel towel = Towel::none;
  double head_length_metres = 0.08;
  double pressure_pascal = 101325;
  FittedScores mode{};                                ///< most probable scores
  std::array<FittedScores, k_fitted_count> factor{};  ///< lower triangle L: scores = mode + L xi
  std::vector<double> weights;                        ///< per sample, sum 1
  double effective_samples = 0;
  /// Deepest tip of the readings in this covering; 0: not known. Beyond 1.5 times it the model extrapolates.
  double tested_depth_metres = 0;
  std::optional<Head> known_head;  ///< a head whose effect is known: its values replace the drawn ones
  std::optional<double> known_vapour_efficiency;  ///< with known_head: the cloth's, if known too
};

/// How far beyond the deepest tested tip a calibration still speaks from readings. Source: judgement.
constexpr double k_trusted_depth_ratio = 1.5;

/// How much the Student-t map stretches the normal scores of sample i.
double map_stretch(const std::string& head_key, std::uint32_t i);

/// Which streams of a key draw what: of a head 0 and 1 its scores, 2 to 4 the stretch of the map, then the
/// rests; of a cloth 0 and 1 its scores, then what it adds to those of the head, then the rests of its own.
constexpr unsigned k_head_rest_stream = 8;
constexpr unsigned k_cloth_shift_stream = 2;
constexpr unsigned k_cloth_rest_stream = 4;

/// The prior as a calibration of `samples` equal weights.
Calibration prior_calibration(const std::string& head_key, const std::string& cloth_key, Towel towel,
                              double head_length_metres, double pressure_pascal, int samples);

/// Sample i of a calibration: its scores as the covering `cloth_key` shows them. In another covering than the
/// tested one the head keeps its own, that covering adds what it makes of them (k_own_share), and vapour
/// efficiency and forced gas come from their prior again.
Scores calibrated_scores(const Calibration& calibration, const std::string& cloth_key, int i);

/// Sample i of what the head itself and the tested covering itself have, whatever law the cloth follows.
/// Checked: treatments/steam/fold_test/fold_coverage_law_test.cpp
Scores own_scores(const Calibration& calibration, int i);

/// Scores, or sample i of a calibration, as a head on a cloth, and the vapour efficiency of that cloth.
struct DrawnHead {
  Head head;
  double vapour_efficiency;
};
DrawnHead head_at(const Calibration& calibration, const Scores& scores);
DrawnHead drawn_head(const Calibration& calibration, const std::string& cloth_key, int i);

/// The head and cloth at the middle of a calibration; in another covering the cloth's prior median.
DrawnHead median_head(const Calibration& calibration, const std::string& cloth_key);

}  // namespace lastegg::steam
