// Whether a machine still does what its last test said. Plain values; pure functions.
#pragma once

#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/fold_test/fold_fit.h"

namespace lastegg::steam {

struct Drift {
  enum class Verdict { unchanged, weaker, stronger, not_proven };
  Verdict verdict = Verdict::not_proven;
  int readings = 0;        ///< compared
  double probability = 1;  ///< of readings as far from the last test's forecast, if nothing had changed
  double mean_kelvin = 0;  ///< by which the readings lie above that forecast
  double dew_shift_kelvin = 0, dew_shift_spread_kelvin = 0;  ///< now less before
  double film_ratio = 1, film_ratio_log_spread = 0;          ///< now over before
  double weaker_dew_probability = 0.5, weaker_film_probability = 0.5;
};

/// Below this probability a machine counts as changed. Source: usual (one in twenty).
constexpr double k_drift_probability = 0.05;
/// Fewer readings say nothing about a change.
constexpr int k_least_drift_readings = 2;

/// Compares new readings with what the last test of the same machine, head and towel makes expect.
/// Model:   posterior-predictive check: forecasts y of each new reading over the old ensemble give mean and
///          covariance; with the errors of reading and march the squared distance of the readings is compared
///          with chi-squared (Wilson and Hilferty's cube root). Shifts are differences of the posterior
///          means, and their probabilities normal; both posteriors lean on the same prior, so shifts are told
///          too small, never too large.
/// Inputs:  left_out marks readings that contradict others; they are not compared.
/// Errors:  as run_pass()
/// Source:  predictive check: Gelman, Meng and Stern 1996; chi-squared: Wilson and Hilferty 1931 (both from
///          memory, to be checked)
/// Checked: treatments/steam/fold_test/drift_law_test.cpp
Result<Drift> drift_since(const Calibration& before, const FoldTest& now, const Calibration& after,
                          const std::vector<bool>& left_out, int samples);

/// Probability that chi-squared of `freedom` degrees exceeds `value`.
/// Model:   (value/freedom)^(1/3) is nearly normal, mean 1 - 2/(9 freedom), variance 2/(9 freedom); absolute
///          error below 0.006 from two degrees on.
/// Checked: treatments/steam/fold_test/drift_law_test.cpp (agreement with Boost.Math)
double chi_squared_exceedance(double value, int freedom);

}  // namespace lastegg::steam
