#include "bugs/lifecycle/hatch_window.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "words/say.h"

namespace lastegg::bugs {
namespace {

constexpr double k_coldest_celsius = -40, k_hottest_celsius = 60;  // beyond these a logger is broken
constexpr double k_most_kelvin = 0.05, k_most_days = 0.125;        // of one step of the sum

// One step of the log: what its temperature lay between, for so long.
struct Step {
  double days = 0;
  CelsiusRange range;
};

Result<void> check(const RoomLog& log) {
  const auto bad = [](const char* list, std::size_t i, const std::string& message, double value,
                      const std::string& limit, const char* unit) {
    return refuse({ErrorKind::bad_input, message, fmt::format("/series/{}/{}", list, i),
                   std::isfinite(value) ? fmt::format("{:g}", value) : std::string(), limit, unit});
  };
  if (log.days.empty() || log.days.size() != log.celsius.size()) {
    return refuse({ErrorKind::bad_input,
                   say("{} times and {} temperatures; one of each for every reading", log.days.size(),
                       log.celsius.size()),
                   "/series", "", "", ""});
  }
  for (std::size_t i = 0; i < log.days.size(); ++i) {
    if (!std::isfinite(log.days[i]) || log.days[i] < 0 || (i > 0 && !(log.days[i] > log.days[i - 1])))
      return bad("days", i, say("reading {}: times must go forwards from the treatment on", i + 1),
                 log.days[i], i > 0 ? fmt::format("{:g}", log.days[i - 1]) : "0", "d");
    if (!(log.celsius[i] >= k_coldest_celsius && log.celsius[i] <= k_hottest_celsius))
      return bad("celsius", i,
                 say("reading {} is {:g} C; a room lies between {:g} and {:g} C", i + 1, log.celsius[i],
                     k_coldest_celsius, k_hottest_celsius),
                 log.celsius[i], fmt::format("{:g}", k_hottest_celsius), "C");
  }
  return {};
}

// The log cut into steps so short that the middle of each stands for all of it.
std::vector<Step> steps_of(const RoomLog& log, bool& has_gaps) {
  const double u = log.uncertainty_kelvin;
  std::vector<Step> steps;
  if (log.days.front() > 0)  // before the first reading: as the first
    steps.push_back({log.days.front(), {log.celsius.front() - u, log.celsius.front() + u}});
  for (std::size_t i = 1; i < log.days.size(); ++i) {
    const double days = log.days[i] - log.days[i - 1];
    const double from = log.celsius[i - 1], to = log.celsius[i];
    if (days > k_longest_interval_days && from != to) {
      has_gaps = true;
      steps.push_back({days, {std::min(from, to) - u, std::max(from, to) + u}});
      continue;
    }
    const double pieces =
        std::max(1.0, std::ceil(std::max(std::abs(to - from) / k_most_kelvin, days / k_most_days)));
    for (double p = 0; p < pieces; ++p) {
      const double middle = from + (to - from) * (p + 0.5) / pieces;
      steps.push_back({days / pieces, {middle - u, middle + u}});
    }
  }
  return steps;
}

// Coldest and warmest whole day of the steps; of less than a day the lowest and highest temperature.
CelsiusRange coldest_and_warmest_day(const std::vector<Step>& steps, const RoomLog& log) {
  CelsiusRange means{1e9, -1e9};
  double days = 0, low = 0, high = 0;
  bool any = false;
  for (const Step& step : steps) {
    double left = step.days;
    while (left > 0) {
      const double taken = std::min(left, 1 - days);
      low += taken * step.range.low;
      high += taken * step.range.high;
      days += taken;
      left -= taken;
      if (days < 1 - 1e-12) continue;
      means = {std::min(means.low, low), std::max(means.high, high)};
      any = true;
      days = low = high = 0;
    }
  }
  if (any) return means;
  const auto [lowest, highest] = std::minmax_element(log.celsius.begin(), log.celsius.end());
  return {*lowest - log.uncertainty_kelvin, *highest + log.uncertainty_kelvin};
}

// Walks through the steps and, after them, through days like `after`.
class Clock {
 public:
  Clock(const std::vector<Step>& steps, CelsiusRange after, Bound bound)
      : steps_(steps), after_(after), bound_(bound) {}

  // The day on which a phase that begins now ends; none if it never does.
  std::optional<double> finish(Phase phase) {
    double share = 0;
    while (at_ < steps_.size()) {
      const Step& step = steps_[at_];
      const double rate = rate_per_day(phase, step.range, bound_);
      const double left = step.days - into_;
      if (rate > 0 && share + rate * left >= 1) {
        const double taken = (1 - share) / rate;
        into_ += taken;
        day_ += taken;
        return named();
      }
      share += rate * left;
      day_ += left;
      ++at_;
      into_ = 0;
    }
    is_extended_ = true;
    const double rate = rate_per_day(phase, after_, bound_);
    if (!(rate > 0)) return std::nullopt;
    day_ += (1 - share) / rate;
    return named();
  }

  bool is_extended() const { return is_extended_; }

 private:
  std::optional<double> named() const { return day_ <= k_last_day ? std::optional(day_) : std::nullopt; }

  const std::vector<Step>& steps_;
  CelsiusRange after_;
  Bound bound_;
  std::size_t at_ = 0;
  double into_ = 0, day_ = 0;
  bool is_extended_ = false;
};

}  // namespace

Result<HatchWindow> hatch_window(const RoomLog& log) {
  if (auto data = development_data_state(); !data) return refuse(data.error());
  if (auto sound = check(log); !sound) return refuse(sound.error());
  HatchWindow out;
  const std::vector<Step> steps = steps_of(log, out.has_gaps);
  const CelsiusRange after = coldest_and_warmest_day(steps, log);
  const auto [lowest, highest] = std::minmax_element(log.celsius.begin(), log.celsius.end());
  out.met = {*lowest - log.uncertainty_kelvin, *highest + log.uncertainty_kelvin};
  Clock slow(steps, after, Bound::slow), fast(steps, after, Bound::fast), growing(steps, after, Bound::fast);
  out.last_hatch_days = slow.finish(Phase::egg);
  out.first_hatch_days = fast.finish(Phase::egg);
  out.next_adult_days = growing.finish(Phase::nymph);
  if (out.next_adult_days) out.first_new_egg_days = growing.finish(Phase::first_egg);
  const bool is_log = log.days.size() > 1;
  out.is_extended = is_log && (slow.is_extended() || fast.is_extended());
  return out;
}

}  // namespace lastegg::bugs
