// Which further reading would tell most about the fastest pace that kills. Plain values; pure functions.
#pragma once

#include <span>
#include <vector>

#include "treatments/steam/fold_test/fold_forecast.h"

namespace lastegg::steam {

/// Natural logarithm of the fastest pace that kills, of one sample whose margins log10(R/2) are known at
/// ascending paces.
/// Model:   margins linear in the logarithm of the pace between the paces looked at; beyond them along the
///          outermost two, at most a factor of two.
double log_fastest_pace(std::span<const double> paces, std::span<const double> margins);

/// What each candidate would do to the spread of a quantity.
struct ReadingWorth {
  double spread_now = 0;            ///< standard deviation of the quantity
  std::vector<double> spread_then;  ///< expected after each candidate
  std::size_t best = 0;             ///< of the candidates
};

/// Expected standard deviation of `quantity` after each candidate has been read.
/// Model:   quantity and reading taken as jointly normal over the weighted samples: the variance falls by
///          cov(q, y)^2 / (var y + error^2), whatever the reading shows. Error: that of the reading, and the
///          error of the march where it applies.
/// Inputs:  weights sum to 1; one forecast per candidate over the same samples; at least one candidate.
/// Cost:    samples x candidates additions: no pass.
/// Source:  regression of the quantity on the data as in expected value of sample information, Strong,
///          Oakley and Brennan 2014 (from memory, to be checked)
/// Checked: treatments/steam/fold_test/next_reading_agreement_test.cpp (agreement with nested reweighting)
ReadingWorth worth_of_readings(const FoldTest& test, const std::vector<FoldForecast>& candidates,
                               const std::vector<double>& quantity, const std::vector<double>& weights);

/// Error of a candidate reading, one standard deviation, in kelvin.
double candidate_error_kelvin(const FoldTest& test, const FoldForecast& candidate,
                              const std::vector<double>& weights);

}  // namespace lastegg::steam
