#include "treatments/steam/fold_test/probe_dip.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "physics/numerics/elementary.h"
#include "words/say.h"

namespace lastegg::steam {
namespace {

constexpr double k_least_step_kelvin = 30;
constexpr double k_least_share = 0.10, k_most_share = 0.95;
constexpr double k_widest_log_spread = 0.69;  // a factor of two
constexpr int k_weight_rounds = 4;
constexpr double k_one_rate_misfit = 3;  // errors, of the worst mark
constexpr double k_ninety_five_percent = 1.645;
constexpr double k_least_time_constant = 0.02;

struct Mark {
  double seconds;
  double share;
  double x() const { return -numerics::log(1 - share); }
};

Refusal refuse_input(const std::string& text, const std::string& where, double value,
                     const std::string& limit, const char* unit) {
  return refuse({ErrorKind::bad_input, text, where, fmt::format("{:g}", value), limit, unit});
}

Result<std::vector<Mark>> marks_of(const ProbeDip& dip) {
  const double step = dip.boiling_celsius - dip.start_celsius;
  if (!(step >= k_least_step_kelvin)) {
    return refuse_input(
        say("the dip starts at {:g} C; it must start at least {:g} K below boiling, {:.1f} C here",
            dip.start_celsius, k_least_step_kelvin, dip.boiling_celsius),
        "/start_celsius", dip.start_celsius, fmt::format("{:g}", dip.boiling_celsius - k_least_step_kelvin),
        "C");
  }
  std::vector<Mark> marks;
  double last = -1;
  for (std::size_t i = 0; i < dip.points.size(); ++i) {
    const DipPoint& point = dip.points[i];
    const std::string where = fmt::format("/points/{}", i);
    if (!(point.seconds > last)) {
      return refuse_input(
          say("the dip's times must ascend; {:g} s does not follow {:g} s", point.seconds, last),
          where + "/seconds", point.seconds, fmt::format("{:g}", last), "s");
    }
    last = point.seconds;
    const double display = 3 * k_display_error_kelvin;
    if (point.celsius < dip.start_celsius - display || point.celsius > dip.boiling_celsius + display) {
      return refuse_input(say("the dip shows {:g} C; it must lie between its start, {:g} C, and "
                              "boiling, {:.1f} C here",
                              point.celsius, dip.start_celsius, dip.boiling_celsius),
                          where + "/celsius", point.celsius, fmt::format("{:.1f}", dip.boiling_celsius), "C");
    }
    marks.push_back({point.seconds, (point.celsius - dip.start_celsius) / step});
  }
  if (dip.seconds_to_63 && dip.seconds_to_90 && !(*dip.seconds_to_90 > *dip.seconds_to_63)) {
    return refuse_input(say("90 % of the way shows after {:g} s; it must come after 63 %, {:g} s",
                            *dip.seconds_to_90, *dip.seconds_to_63),
                        "/seconds_to_90", *dip.seconds_to_90, fmt::format("{:g}", *dip.seconds_to_63), "s");
  }
  if (dip.seconds_to_63) marks.push_back({*dip.seconds_to_63, 1 - numerics::exp(-1.0)});
  if (dip.seconds_to_90) marks.push_back({*dip.seconds_to_90, 0.9});
  if (marks.empty()) {
    return refuse(
        {ErrorKind::bad_input,
         say("the dip has no mark; give points, or the seconds until 63 % or 90 % of the way to boiling"), "",
         "", "", ""});
  }
  std::erase_if(marks, [](const Mark& mark) {
    return !(mark.share >= k_least_share && mark.share <= k_most_share && mark.seconds > 0);
  });
  if (marks.empty()) {
    return refuse(
        {ErrorKind::bad_input,
         say("no mark of the dip lies between 10 % and 95 % of the way to boiling; only there the rise "
             "tells how fast the probe is: read it sooner, or film its display"),
         "/points", "", "", ""});
  }
  return marks;
}

}  // namespace

Result<ProbeLag> probe_lag(const ProbeDip& dip) {
  const auto marks = marks_of(dip);
  if (!marks) return refuse(marks.error());
  const double step = dip.boiling_celsius - dip.start_celsius;
  ProbeLag lag;
  lag.used_marks = static_cast<int>(marks->size());
  double tau = std::max(k_least_time_constant, marks->back().seconds / marks->back().x());
  double statistical = 0, free_tau = 0;
  std::vector<double> errors;
  for (int round = 0; round < k_weight_rounds; ++round) {
    errors.clear();
    double s = 0, sx = 0, sxx = 0, st = 0, sxt = 0;
    for (const Mark& mark : *marks) {
      const double by_display = k_display_error_kelvin * tau / (step * (1 - mark.share));
      const double error = std::sqrt(k_watch_error_seconds * k_watch_error_seconds + by_display * by_display);
      errors.push_back(error);
      const double w = 1 / (error * error), x = mark.x();
      s += w;
      sx += w * x;
      sxx += w * x * x;
      st += w * mark.seconds;
      sxt += w * x * mark.seconds;
    }
    tau = std::max(k_least_time_constant, sxt / sxx);
    statistical = 1 / (tau * std::sqrt(sxx));
    const double spread_of_x = s * sxx - sx * sx;
    free_tau = marks->size() > 1 && spread_of_x > 1e-9 * s * sxx ? (s * sxt - sx * st) / spread_of_x : tau;
    lag.dead_seconds = (st - free_tau * sx) / s;
  }
  if (marks->size() < 2) lag.dead_seconds = 0;
  const double ratio = free_tau > 0.2 * tau ? free_tau / tau : 0.2;
  const double shape = 0.5 * numerics::log(ratio);
  for (std::size_t i = 0; i < marks->size(); ++i) {
    const double missed = ((*marks)[i].seconds - tau * (*marks)[i].x()) / errors[i];
    if (std::fabs(missed) > k_one_rate_misfit) lag.is_one_rate = false;
  }
  const double dip_spread = std::sqrt(statistical * statistical + (lag.is_one_rate ? 0 : shape * shape));
  const double slowest = tau * (1 + k_ninety_five_percent * dip_spread);
  if (dip_spread > k_widest_log_spread && slowest > k_slowest_probe_seconds) {
    return refuse({ErrorKind::out_of_domain,
                   say("the dip does not tell how slow the probe is: {:.1f} s, but as well {:.1f} s; read "
                       "more marks between 20 % and 90 % of the way to boiling",
                       tau, slowest),
                   "/points", fmt::format("{:.1f}", slowest), fmt::format("{:g}", k_slowest_probe_seconds),
                   "s"});
  }
  lag.time_constant_seconds = tau;
  const double known = std::min(dip_spread, k_widest_log_spread);
  lag.log_spread = std::sqrt(known * known + k_dip_to_fold_spread * k_dip_to_fold_spread);
  lag.low = tau * numerics::exp(-k_ninety_five_percent * lag.log_spread);
  lag.high = tau * numerics::exp(k_ninety_five_percent * lag.log_spread);
  return lag;
}

}  // namespace lastegg::steam
