// The law of heat death of one stage as plain numbers, and its rate as inline code for hot loops. The numbers
// come from bugs/mortality/data/mortality.json through kill_law(). Plain values; pure functions; any thread.
#pragma once

#include <algorithm>
#include <array>
#include <limits>
#include <string_view>

#include "physics/numerics/elementary.h"
#include "physics/quantities/error.h"

namespace lastegg::bugs {

enum class Stage { egg, nymph, adult };

/// What heats the bug. Steam contact credits temperatures further up than hot air or a heated core does.
enum class Exposure { air, steam };

/// Accumulation of dose at a temperature.
/// Model:   rate = 10^((min(T, cap) - reference) / z) for T >= onset, 0 below; equivalent seconds at the
///          reference temperature per second.
/// Source:  bugs/mortality/README.md
class DoseRate {
 public:
  constexpr DoseRate(double reference_celsius, double z_kelvin, double onset_celsius, double cap_celsius)
      : reference_celsius_(reference_celsius),
        onset_celsius_(onset_celsius),
        cap_celsius_(cap_celsius),
        decades_per_kelvin_(1 / z_kelvin),
        rate_at_cap_(numerics::pow10((cap_celsius - reference_celsius) / z_kelvin)) {}

  /// Equivalent seconds per second.
  constexpr double at(double celsius) const {
    if (celsius < onset_celsius_) return 0;
    if (celsius >= cap_celsius_) return rate_at_cap_;
    return numerics::pow10((celsius - reference_celsius_) * decades_per_kelvin_);
  }

  /// Equivalent seconds of a straight piece of history, in closed form: onset and cap are met exactly.
  /// Model:   z / (s ln 10) (10^((T2 - Tref)/z) - 10^((T1 - Tref)/z)) between onset and cap, s in K/s
  /// Checked: bugs/mortality/mortality_reference_test.cpp, mortality_law_test.cpp
  constexpr double of_piece(double from_celsius, double to_celsius, double seconds) const {
    const double low = std::min(from_celsius, to_celsius);
    const double high = std::max(from_celsius, to_celsius);
    if (low >= cap_celsius_) return seconds * rate_at_cap_;
    if (high < onset_celsius_) return 0;
    if (high == low) return seconds * at(low);
    const double seconds_per_kelvin = seconds / (high - low);
    const double start = std::max(low, onset_celsius_);
    const double end = std::min(high, cap_celsius_);
    double dose = 0;
    if (end > start) {
      const double exponent = k_ln10 * decades_per_kelvin_ * (end - start);
      dose = (end - start) * at(end) * mean_decay(exponent);
    }
    if (high > cap_celsius_) dose += (high - cap_celsius_) * rate_at_cap_;
    return dose * seconds_per_kelvin;
  }

  constexpr double onset_celsius() const { return onset_celsius_; }
  constexpr double cap_celsius() const { return cap_celsius_; }
  constexpr double reference_celsius() const { return reference_celsius_; }

 private:
  static constexpr double k_ln10 = 2.302585092994045684;

  /// (1 - e^-x) / x for x >= 0: the mean of a piece over its hottest rate. Never overflows.
  static constexpr double mean_decay(double x) {
    if (x > 0.5) return (1 - numerics::exp(-x)) / x;
    // Taylor series to x^13 / 14!, whose first omitted term is below 1e-16.
    double sum = 1;
    for (int n = 14; n >= 2; --n) sum = 1 - x / n * sum;
    return sum;
  }

  double reference_celsius_;
  double onset_celsius_;
  double cap_celsius_;
  double decades_per_kelvin_;
  double rate_at_cap_;
};

/// The law of one stage under one exposure. As made by default it credits nothing.
struct KillLaw {
  double reference_celsius = 0;
  double lt99_minutes = std::numeric_limits<double>::infinity();  ///< 99 % dead at the reference temperature
  std::array<double, 2> z_kelvin{4, 4};  ///< both ends of its range; the lower dose counts
  double onset_celsius = 0;
  double cap_celsius = 0;
  double spread = 1;            ///< log10 of dose, bug to bug within a batch
  double study_spread = 1;      ///< log10 of dose, study to study; enters printed probabilities only
  double body_lag_seconds = 0;  ///< time constant of the body; of an unfed body for nymphs and adults
  std::array<double, 2> contact_share{1, 1};  ///< share reached at all: uniform between these

  DoseRate rate(double z) const { return {reference_celsius, z, onset_celsius, cap_celsius}; }
};

/// Numbers of verdicts that no stage owns.
struct KillRules {
  double required_ratio = std::numeric_limits<double>::infinity();  ///< R asked for a verdict "lethal"
  double near_limit = 1;           ///< |log10(R / required)| below this is too near to call
  double highest_probability = 0;  ///< printed probabilities stop here
  double slow_ramp_kelvin_per_minute = 0;
  double slow_ramp_celsius = 0;                      ///< asked for eggs after a slow ramp
  double reset_seconds = 0;                          ///< longer below the onset clears the dose
  double engorged_lag_seconds = 0;                   ///< body of a fed adult
  double gap_of_cadences = 0;                        ///< a hole of more than so many usual intervals is a gap
  std::array<double, 2> shortest_gap_seconds{0, 0};  ///< never a gap: air, steam
  double coarse_seconds = 0;  ///< longer intervals count at their lower end in verdicts
};

/// Law of a stage, from the data file.
/// Source:  bugs/mortality/data/mortality.json
/// Checked: bugs/mortality/mortality_data_test.cpp
const KillLaw& kill_law(Stage stage, Exposure exposure);

/// Rules of verdicts, from the data file.
const KillRules& kill_rules();

/// Whether the data file could be read; the reason if not. Then laws credit nothing and no verdict is lethal.
Result<bool> kill_data_state();

/// Key of the data file in answers.
constexpr std::string_view k_kill_data_key = "mortality/1";

/// R that a verdict "lethal" asks for.
inline double required_ratio() {
  return kill_rules().required_ratio;
}

}  // namespace lastegg::bugs
