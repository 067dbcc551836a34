#include "treatments/touch/touch.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "physics/numerics/elementary.h"
#include "physics/uncertainty/normal.h"
#include "physics/water/vapour.h"
#include "treatments/steam/fold_test/fold_fit.h"
#include "treatments/steam/pass/exposure.h"

namespace lastegg::touch {
namespace {

constexpr double k_series_step_kelvin = 1.0;
constexpr double k_half_second = 0.5;
constexpr double k_pi = 3.14159265358979323846;

// Hot corners of an ensemble: three standard deviations and more for the exchange, 1.65 for a hand.
constexpr double k_hot_film_factor = 3.0;
constexpr double k_slow_hand = 1.65;
constexpr double k_most_forced = 0.020;
// Steam pushed deep into a cloth that lets little vapour diffuse out again cools slowest.
constexpr double k_least_efficiency = 0.1;

double value_at(const steam::Series& series, double seconds) {
  const auto after = std::lower_bound(series.seconds.begin(), series.seconds.end(), seconds);
  if (after == series.seconds.begin()) return series.celsius.front();
  if (after == series.seconds.end()) return series.celsius.back();
  const auto i = static_cast<std::size_t>(after - series.seconds.begin());
  const double span = series.seconds[i] - series.seconds[i - 1];
  if (span <= 0) return series.celsius[i];
  return series.celsius[i - 1] +
         (seconds - series.seconds[i - 1]) / span * (series.celsius[i] - series.celsius[i - 1]);
}

double fourth_power(double celsius) {
  const double kelvin = celsius + k_zero_celsius_in_kelvin;
  return kelvin * kelvin * kelvin * kelvin;
}

// Last time at which a row of a history stands above a limit; none if it ends above.
std::optional<double> last_above(const steam::PassHistory& history, std::span<const double> celsius,
                                 double limit) {
  steam::Series series;
  steam::fine_series(history, celsius, k_series_step_kelvin, series);
  if (series.celsius.back() > limit) return std::nullopt;
  for (std::size_t i = series.celsius.size(); i-- > 1;) {
    const double before = series.celsius[i - 1], after = series.celsius[i];
    if (before <= limit) continue;
    const double share = (before - limit) / (before - after);
    return series.seconds[i - 1] + share * (series.seconds[i] - series.seconds[i - 1]);
  }
  return history.liftoff_seconds;
}

}  // namespace

double seconds_to_burn(double celsius) {
  if (celsius < k_burns.front().celsius) return std::numeric_limits<double>::infinity();
  std::size_t i = 1;
  while (i + 1 < k_burns.size() && celsius > k_burns[i].celsius) ++i;
  const BurnRow &low = k_burns[i - 1], &high = k_burns[i];
  const double slope =
      (numerics::log(high.seconds) - numerics::log(low.seconds)) / (high.celsius - low.celsius);
  return numerics::exp(numerics::log(low.seconds) + slope * (celsius - low.celsius));
}

Result<std::optional<double>> bare_hand_seconds(steam::PassProblem pass) {
  const double reach = std::min(k_hand_depth_metres, steam::thickness_metres(pass.stack));
  pass.depths_metres = {0.5 * reach, reach};
  pass.observe_seconds = k_longest_seconds;
  const auto history = steam::run_pass(pass, {.stop_below_celsius = k_bare_hand_celsius});
  if (!history) return refuse(history.error());
  double latest = history->liftoff_seconds;
  for (std::size_t row = 0; row < 3; ++row) {
    const auto last = last_above(*history, row == 2 ? history->surface_celsius : history->celsius[row],
                                 k_bare_hand_celsius);
    if (!last) return std::optional<double>();
    latest = std::max(latest, *last);
  }
  return std::optional<double>(latest - history->liftoff_seconds);
}

steam::PassProblem middle_pass(const steam::PaceProblem& problem, double pace) {
  const steam::DrawnHead median = steam::median_head(problem.calibration, problem.cloth_key);
  steam::PassProblem pass;
  pass.head = median.head;
  pass.vapour_efficiency = median.vapour_efficiency;
  pass.pace_metres_per_second = pace;
  pass.pressure_pascal = problem.calibration.pressure_pascal;
  pass.start_celsius = problem.start_celsius;
  pass.start_activity = problem.start_activity;
  pass.air = problem.air;
  pass.passes = problem.passes;
  pass.gap_seconds = problem.gap_seconds;
  if (problem.calibration.towel == steam::Towel::laid) pass.stack.push_back(steam::laid_towel());
  for (const steam::UncertainLayer& layer : problem.stack) pass.stack.push_back(layer.layer);
  return pass;
}

Result<std::optional<double>> bare_hand_seconds(const steam::PaceProblem& problem, double pace) {
  steam::PassProblem hot = middle_pass(problem, pace * numerics::exp(-k_slow_hand * steam::k_hand_spread));
  // A laid towel is taken off before anyone touches the cloth under it; its heat is not counted away.
  hot.head.dew_celsius = std::max(hot.head.dew_celsius, steam::cleanest_dew_celsius(hot.pressure_pascal));
  hot.head.film_watts_per_m2_kelvin =
      std::min(10000.0, k_hot_film_factor * hot.head.film_watts_per_m2_kelvin);
  struct Corner {
    double efficiency, forced;
  };
  const Corner corners[] = {
      {hot.vapour_efficiency, hot.head.forced_gas_metres_per_second},
      {1.0, std::max(k_most_forced, hot.head.forced_gas_metres_per_second)},
      {k_least_efficiency, std::max(k_most_forced, hot.head.forced_gas_metres_per_second)}};
  double longest = 0;
  for (const Corner& corner : corners) {
    hot.vapour_efficiency = corner.efficiency;
    hot.head.forced_gas_metres_per_second = corner.forced;
    const auto seconds = bare_hand_seconds(hot);
    if (!seconds) return refuse(seconds.error());
    if (!*seconds) return std::optional<double>();
    longest = std::max(longest, **seconds);
  }
  return std::optional<double>(longest);
}

double share_of_spot(double strip_metres, double spot_metres) {
  if (strip_metres >= spot_metres) return 1;
  if (strip_metres <= 0) return 0;
  const double u = strip_metres / spot_metres;
  return 2 / k_pi * (std::asin(u) + u * std::sqrt(1 - u * u));
}

double gun_shows_celsius(double strip, double room, double strip_metres, const Gun& gun, double emissivity) {
  const double share = share_of_spot(strip_metres, gun.spot_metres);
  const double around = fourth_power(room);
  const double seen = share * emissivity * fourth_power(strip) + (1 - share) * emissivity * around +
                      (1 - emissivity) * around;
  const double shown = (seen - (1 - gun.emissivity_setting) * around) / gun.emissivity_setting;
  return std::sqrt(std::sqrt(shown)) - k_zero_celsius_in_kelvin;
}

double surface_celsius(double shown, double room, double strip_metres, const Gun& gun, double emissivity) {
  const double share = share_of_spot(strip_metres, gun.spot_metres);
  const double around = fourth_power(room);
  const double seen = gun.emissivity_setting * fourth_power(shown) + (1 - gun.emissivity_setting) * around;
  const double strip =
      (seen - (1 - share) * emissivity * around - (1 - emissivity) * around) / (share * emissivity);
  return std::sqrt(std::sqrt(std::max(0.0, strip))) - k_zero_celsius_in_kelvin;
}

Result<std::vector<ExpectedReading>> expected_readings(steam::PassProblem pass,
                                                       std::span<const SurfaceReading> readings) {
  double longest = 1;
  for (const SurfaceReading& reading : readings) longest = std::max(longest, reading.seconds_after + 1);
  pass.observe_seconds = longest;
  pass.depths_metres = {0};
  const auto history = steam::run_pass(pass, {});
  if (!history) return refuse(history.error());
  steam::Series series;
  steam::fine_series(*history, history->surface_celsius, k_series_step_kelvin, series);
  std::vector<ExpectedReading> out;
  for (const SurfaceReading& reading : readings) {
    const auto seen = [&](double after) {
      const double surface = value_at(series, history->liftoff_seconds + std::max(0.0, after));
      return reading.gun_celsius
                 ? gun_shows_celsius(surface, pass.air.celsius, reading.strip_metres, reading.gun)
                 : surface;
    };
    const double from = std::max(0.0, reading.seconds_after - k_half_second);
    const double to = reading.seconds_after + k_half_second;
    out.push_back({seen(reading.seconds_after), (seen(to) - seen(from)) / (to - from)});
  }
  return out;
}

double log_likelihood(const SurfaceReading& reading, const ExpectedReading& expected) {
  const double timing = expected.kelvin_per_second * k_timing_error_seconds;
  if (reading.gun_celsius) {
    // How the emissivity's spread shows: a share of the excess over the room, at most of 80 K.
    const double emissivity = k_emissivity_spread / k_emissivity * std::max(0.0, expected.celsius - 20);
    const double error =
        std::sqrt(k_gun_error_kelvin * k_gun_error_kelvin + timing * timing + emissivity * emissivity);
    const double score = (*reading.gun_celsius - expected.celsius) / error;
    const double freedom = steam::k_likelihood_freedom;
    return -numerics::log(error) - 0.5 * (freedom + 1) * numerics::log(1 + score * score / freedom);
  }
  const double error = std::sqrt(k_palm_error_kelvin * k_palm_error_kelvin + timing * timing);
  const double below_cold = normal_probability((k_palm_cold_celsius - expected.celsius) / error);
  const double below_hot = normal_probability((k_palm_hot_celsius - expected.celsius) / error);
  const double probability = reading.palm == Palm::cold   ? below_cold
                             : reading.palm == Palm::warm ? below_hot - below_cold
                                                          : 1 - below_hot;
  constexpr double k_slip = 0.02;  // a palm may simply err (judgement)
  return numerics::log(k_slip / 3 + (1 - k_slip) * std::max(0.0, probability));
}

}  // namespace lastegg::touch
