// From a history of temperature to a verdict: dose, its ratio to the dose that kills 99 %, survival, and the
// words lethal, short, not proven. Plain values; pure functions; any thread. Data: kill_law.h.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "bugs/mortality/kill_law.h"
#include "physics/quantities/error.h"

namespace lastegg::bugs {

/// Temperatures of the bug's place: as many seconds as celsius, joined by straight lines.
struct TemperatureSeries {
  std::span<const double> seconds;
  std::span<const double> celsius;
};

/// Refuses what is no series.
/// Errors:  bad_input, `where` a pointer below the series ("/celsius/3"): lengths differ, fewer than two
///          readings, not a number, time not going forwards, temperatures below -100 C or above 300 C.
/// Checked: bugs/mortality/series_law_test.cpp
Result<bool> check_series(const TemperatureSeries& series);

/// A hole in a log.
struct Gap {
  double from_seconds = 0;
  double to_seconds = 0;
};

/// Longest interval that is no gap: `rule` cadences of the log's median interval. A series of fewer than six
/// readings has no cadence, and none of its intervals is a gap: infinity.
/// Source:  bugs/mortality/README.md (own rule)
/// Checked: bugs/mortality/series_law_test.cpp
double longest_interval_seconds(const TemperatureSeries& series, Exposure exposure);

/// How a series is summed up.
struct DoseOptions {
  double uncertainty_celsius = 0;                                             ///< taken off every reading
  double longest_interval_seconds = std::numeric_limits<double>::infinity();  ///< longer earns nothing
  double body_lag_seconds = 0;
  double coarse_seconds = std::numeric_limits<double>::infinity();  ///< longer counts at its lower end
  bool gap_is_cold = false;  ///< a gap counts as time below the onset, which may clear the dose
};

/// Equivalent minutes at the reference temperature at the law's two z.
/// Model:   sum of closed-form pieces; more than reset_seconds below the onset clears the dose, and the best
///          uninterrupted stretch is returned.
/// Inputs:  a series that check_series() lets pass; body in equilibrium with the first reading.
/// Checked: bugs/mortality/mortality_reference_test.cpp, series_law_test.cpp
std::array<double, 2> equivalent_minutes(const TemperatureSeries& series, const KillLaw& law,
                                         const DoseOptions& options = {});

/// R: the lower of the two doses over LT99.
double ratio_to_lt99(const std::array<double, 2>& equivalent_minutes_by_z, const KillLaw& law);

/// log10 R of a place's series at the worst z with a body lag, as the ensemble of steam passes wants it:
/// no gaps, no resets. Minus infinity when nothing was earned.
double log10_ratio(const TemperatureSeries& series, const KillLaw& law, double body_lag_seconds);

/// Share of a batch that survives R.
/// Model:   1 - Phi(log10(R) / spread + 2.326): R = 1 leaves 1 %
/// Source:  bugs/mortality/README.md; shape after Schrader and Schmolz
/// Checked: bugs/mortality/mortality_agreement_test.cpp (Boost.Math)
double survival(double log10_ratio, const KillLaw& law);

/// Kill probability of a bug drawn from a study drawn at random, contact and escape included; not yet capped.
/// Model:   mean contact share times Phi((log10(R)/spread + 2.326) / sqrt(1 + (study_spread/spread)^2))
/// Checked: bugs/mortality/mortality_agreement_test.cpp (quadrature)
double expected_kill(Stage stage, double log10_ratio, Exposure exposure = Exposure::steam);

/// A probability as it may be printed: at most 0.99, since nothing measured reaches further.
double printed_probability(double probability);

/// Mean heating rate in K/min between the onset and the egg's reference temperature (or nine tenths of the
/// way to the peak, if that is lower), in the rise that first gets there; none when the series starts hotter
/// than the onset or never passes it.
/// Checked: bugs/mortality/series_law_test.cpp
std::optional<double> ramp_kelvin_per_minute(const TemperatureSeries& series, double onset_celsius,
                                             double reference_celsius, double uncertainty_celsius = 0);

enum class Verdict { lethal, too_short, not_proven };

/// lethal, short, not_proven
std::string_view verdict_word(Verdict verdict);

/// Why a verdict is what it is.
enum class VerdictReason {
  enough,           ///< lethal
  too_little,       ///< short
  near_limit,       ///< within the error of the calculation
  slow_ramp,        ///< eggs may harden; hotter asked for
  gap,              ///< what happened in a hole of the log is not known
  coarse_readings,  ///< intervals too long for what they claim
  body_lag,         ///< enough for the place, not for the body
  overridden        ///< parameters of the law were changed by hand
};

/// near_limit, slow_ramp, ...
std::string_view reason_word(VerdictReason reason);

/// Everything that a verdict rests on.
struct DoseReport {
  std::array<double, 2> equivalent_minutes_by_z{};
  double ratio = 0;           ///< R of the series as it stands
  double ratio_with_lag = 0;  ///< R of the body of an egg, or of an unfed nymph or adult
  double cautious_ratio = 0;  ///< as ratio_with_lag; coarse intervals at their lower end, gaps cold
  std::optional<double> engorged_ratio;  ///< of a fed adult, shown apart
  double highest_celsius = 0;            ///< uncertainty taken off
  std::optional<double> ramp_kelvin_per_minute;
  std::vector<Gap> gaps;
  double longest_interval_seconds = 0;
  Verdict verdict = Verdict::not_proven;
  VerdictReason reason = VerdictReason::overridden;
};

struct DoseProblem {
  Stage stage = Stage::egg;
  Exposure exposure = Exposure::air;
  double uncertainty_celsius = 0;
  std::optional<double> longest_interval_seconds = {};  ///< none: longest_interval_seconds()
  std::optional<double> z_kelvin = {}, onset_celsius = {}, cap_celsius = {};  ///< overrides for checking
};

/// The law of a problem, overrides applied.
KillLaw law_of(const DoseProblem& problem);

/// Dose and verdict of a series.
/// Errors:  as check_series().
/// Source:  bugs/mortality/README.md
/// Checked: bugs/mortality/verdict_law_test.cpp
Result<DoseReport> judge_series(const TemperatureSeries& series, const DoseProblem& problem);

}  // namespace lastegg::bugs
