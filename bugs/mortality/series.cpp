// Series of temperatures: checks, gaps, dose, heating rate.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "bugs/mortality/body_lag.h"
#include "bugs/mortality/mortality.h"
#include "words/say.h"

namespace lastegg::bugs {
namespace {

constexpr double k_coldest_celsius = -100;  // beyond these a logger is broken or the unit is wrong
constexpr double k_hottest_celsius = 300;
constexpr std::size_t k_fewest_readings_with_cadence = 6;

Refusal bad_reading(const std::string& message, const char* list, std::size_t i, double value,
                    const std::string& limit, const char* unit) {
  return refuse({ErrorKind::bad_input, message, fmt::format("/{}/{}", list, i),
                 std::isfinite(value) ? fmt::format("{:g}", value) : std::string(), limit, unit});
}

// Dose at two z, cleared by a long cold time; the best stretch is kept.
class Sum {
 public:
  Sum(const KillLaw& law, double reset_seconds)
      : rates_{law.rate(law.z_kelvin[0]), law.rate(law.z_kelvin[1])}, reset_seconds_(reset_seconds) {}

  double onset() const { return rates_[0].onset_celsius(); }

  void piece(double from, double to, double seconds) {
    const double low = std::min(from, to), high = std::max(from, to);
    if (high < onset()) {
      cold(seconds);
      return;
    }
    const double cold_share = low < onset() ? (onset() - low) / (high - low) : 0;
    if (cold_share > 0 && from < to) cold(cold_share * seconds);
    cold_seconds_ = 0;
    for (std::size_t z = 0; z < 2; ++z) now_[z] += rates_[z].of_piece(from, to, seconds);
    if (cold_share > 0 && from > to) cold(cold_share * seconds);
  }

  void cold(double seconds) {
    cold_seconds_ += seconds;
    if (cold_seconds_ > reset_seconds_) {
      best_ = minutes();
      now_ = {0, 0};
    }
  }

  std::array<double, 2> minutes() const {
    return {std::max(best_[0], now_[0] / 60), std::max(best_[1], now_[1] / 60)};
  }

 private:
  std::array<DoseRate, 2> rates_;
  double reset_seconds_;
  double cold_seconds_ = 0;
  std::array<double, 2> now_{0, 0}, best_{0, 0};
};

}  // namespace

Result<bool> check_series(const TemperatureSeries& series) {
  const auto& [seconds, celsius] = series;
  if (seconds.size() != celsius.size()) {
    return refuse({ErrorKind::bad_input,
                   say("the series has {} times and {} temperatures; each reading needs both", seconds.size(),
                       celsius.size()),
                   "", fmt::format("{}", celsius.size()), fmt::format("{}", seconds.size()), ""});
  }
  if (seconds.size() < 2) {
    return refuse({ErrorKind::bad_input,
                   say("the series has {} readings; a dose needs at least 2", seconds.size()), "",
                   fmt::format("{}", seconds.size()), "2", ""});
  }
  for (std::size_t i = 0; i < seconds.size(); ++i) {
    if (!std::isfinite(seconds[i]))
      return bad_reading(say("time {} is not a number", i + 1), "seconds", i, seconds[i], "", "s");
    if (!std::isfinite(celsius[i]))
      return bad_reading(say("temperature {} is not a number", i + 1), "celsius", i, celsius[i], "", "C");
    if (i > 0 && !(seconds[i] > seconds[i - 1])) {
      return bad_reading(
          say("time {} is {:g} s, not later than the {:g} s before it; times have to go forwards", i + 1,
              seconds[i], seconds[i - 1]),
          "seconds", i, seconds[i], fmt::format("{:g}", seconds[i - 1]), "s");
    }
    if (celsius[i] < k_coldest_celsius || celsius[i] > k_hottest_celsius) {
      const double limit = celsius[i] < 0 ? k_coldest_celsius : k_hottest_celsius;
      return bad_reading(say("temperature {} is {:g} C; it has to lie between {:g} and {:g} C", i + 1,
                             celsius[i], k_coldest_celsius, k_hottest_celsius),
                         "celsius", i, celsius[i], fmt::format("{:g}", limit), "C");
    }
  }
  return true;
}

double longest_interval_seconds(const TemperatureSeries& series, Exposure exposure) {
  const auto& seconds = series.seconds;
  if (seconds.size() < k_fewest_readings_with_cadence) return std::numeric_limits<double>::infinity();
  std::vector<double> intervals(seconds.size() - 1);
  for (std::size_t i = 0; i + 1 < seconds.size(); ++i) intervals[i] = seconds[i + 1] - seconds[i];
  const auto middle = intervals.begin() + static_cast<std::ptrdiff_t>(intervals.size() / 2);
  std::nth_element(intervals.begin(), middle, intervals.end());
  const KillRules& rules = kill_rules();
  return std::max(rules.gap_of_cadences * *middle,
                  rules.shortest_gap_seconds[exposure == Exposure::steam ? 1 : 0]);
}

std::array<double, 2> equivalent_minutes(const TemperatureSeries& series, const KillLaw& law,
                                         const DoseOptions& options) {
  const auto& [seconds, celsius] = series;
  if (seconds.empty()) return {0, 0};
  const double off = options.uncertainty_celsius;
  Sum sum(law, kill_rules().reset_seconds);
  BodyLag body(options.body_lag_seconds, celsius[0] - off);
  for (std::size_t i = 1; i < seconds.size(); ++i) {
    const double duration = seconds[i] - seconds[i - 1];
    double from = celsius[i - 1] - off, to = celsius[i] - off;
    if (duration > options.longest_interval_seconds) {
      if (options.gap_is_cold) sum.cold(duration);
      body = BodyLag(options.body_lag_seconds, std::min(body.celsius(), to));
      continue;
    }
    if (duration > options.coarse_seconds) from = to = std::min(from, to);
    if (std::max({from, to, body.celsius()}) < sum.onset()) {
      body.skip(from, to, duration);
      sum.cold(duration);
      continue;
    }
    body.follow(from, to, duration, [&sum](double a, double b, double s) { sum.piece(a, b, s); });
  }
  return sum.minutes();
}

double ratio_to_lt99(const std::array<double, 2>& equivalent_minutes_by_z, const KillLaw& law) {
  return std::min(equivalent_minutes_by_z[0], equivalent_minutes_by_z[1]) / law.lt99_minutes;
}

double log10_ratio(const TemperatureSeries& series, const KillLaw& law, double body_lag_seconds) {
  const auto& [seconds, celsius] = series;
  if (seconds.empty()) return -std::numeric_limits<double>::infinity();
  const DoseRate first = law.rate(law.z_kelvin[0]), second = law.rate(law.z_kelvin[1]);
  double dose_first = 0, dose_second = 0;
  BodyLag body(body_lag_seconds, celsius[0]);
  for (std::size_t i = 1; i < seconds.size(); ++i) {
    const double duration = seconds[i] - seconds[i - 1];
    if (std::max({celsius[i - 1], celsius[i], body.celsius()}) < law.onset_celsius) {
      body.skip(celsius[i - 1], celsius[i], duration);
      continue;
    }
    body.follow(celsius[i - 1], celsius[i], duration, [&](double a, double b, double s) {
      dose_first += first.of_piece(a, b, s);
      dose_second += second.of_piece(a, b, s);
    });
  }
  return numerics::log10(std::min(dose_first, dose_second) / 60 / law.lt99_minutes);
}

std::optional<double> ramp_kelvin_per_minute(const TemperatureSeries& series, double onset_celsius,
                                             double reference_celsius, double uncertainty_celsius) {
  const auto& [seconds, readings] = series;
  const auto at = [&](std::size_t i) { return readings[i] - uncertainty_celsius; };
  if (readings.empty() || at(0) >= onset_celsius) return std::nullopt;
  const double peak = *std::max_element(readings.begin(), readings.end()) - uncertainty_celsius;
  if (peak <= onset_celsius) return std::nullopt;
  const double goal = std::min(reference_celsius, onset_celsius + 0.9 * (peak - onset_celsius));
  const auto crossing = [&](std::size_t i, double level) {
    return seconds[i - 1] + (level - at(i - 1)) / (at(i) - at(i - 1)) * (seconds[i] - seconds[i - 1]);
  };
  double left_onset = seconds[0];
  for (std::size_t i = 1; i < readings.size(); ++i) {
    if (at(i - 1) < onset_celsius && at(i) >= onset_celsius) left_onset = crossing(i, onset_celsius);
    if (at(i - 1) < goal && at(i) >= goal)
      return 60 * (goal - onset_celsius) / (crossing(i, goal) - left_onset);
  }
  return std::nullopt;
}

}  // namespace lastegg::bugs
