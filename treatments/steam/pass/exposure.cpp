#include "treatments/steam/pass/exposure.h"

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"

namespace lastegg::steam {
namespace {

constexpr int k_most_pieces = 64;
// Where neighbouring steps differ by more than this factor (the schedules stay below it, steps cut after a
// fault do not), a parabola across both would carry the small step's slope far into the large one.
constexpr double k_largest_step_ratio = 3.0;

// Slope at t1 of the parabola through three points, or at t0 or t2 when asked there.
double parabola_slope(double t, double t0, double t1, double t2, double y0, double y1, double y2) {
  const double d01 = (y1 - y0) / (t1 - t0);
  const double d12 = (y2 - y1) / (t2 - t1);
  const double second = (d12 - d01) / (t2 - t0);
  return d01 + second * (2.0 * t - t0 - t1);
}

double slope_at(std::span<const double> t, std::span<const double> y, std::size_t i, std::size_t first,
                std::size_t last) {
  if (last - first < 2) return (y[last] - y[first]) / (t[last] - t[first]);
  const std::size_t middle = std::clamp(i, first + 1, last - 1);
  return parabola_slope(t[i], t[middle - 1], t[middle], t[middle + 1], y[middle - 1], y[middle],
                        y[middle + 1]);
}

// Last point of the stretch from `first` within which slopes may be taken across points: the phase's end, or
// sooner where the step changes abruptly.
std::size_t smooth_end(const PassHistory& history, std::size_t first) {
  const std::vector<double>& t = history.seconds;
  const auto next = std::upper_bound(history.phase_starts.begin(), history.phase_starts.end(), first);
  const std::size_t end = next == history.phase_starts.end() ? t.size() - 1 : *next;
  for (std::size_t i = first + 1; i < end; ++i) {
    const double ratio = (t[i + 1] - t[i]) / (t[i] - t[i - 1]);
    if (ratio > k_largest_step_ratio || ratio < 1.0 / k_largest_step_ratio) return i;
  }
  return end;
}

}  // namespace

void fine_series(const PassHistory& history, std::span<const double> y, double largest_step_kelvin,
                 Series& out) {
  const std::vector<double>& t = history.seconds;
  out.seconds.clear();
  out.celsius.clear();
  out.seconds.push_back(t.front());
  out.celsius.push_back(y[0]);
  for (std::size_t first = 0, last = 0; first + 1 < t.size(); first = last) {
    last = smooth_end(history, first);
    for (std::size_t i = first; i < last; ++i) {
      const double dt = t[i + 1] - t[i];
      const double secant = (y[i + 1] - y[i]) / dt;
      double s0 = slope_at(t, y, i, first, last);
      const double s1 = slope_at(t, y, i + 1, first, last);
      if (i == first) s0 = secant == 0 ? 0 : secant * std::clamp(s0 / secant, 0.0, 3.0);
      // y(u) = y0 + dt (s0 u + (3 secant - 2 s0 - s1) u^2 + (s0 + s1 - 2 secant) u^3)
      const double c2 = 3.0 * secant - 2.0 * s0 - s1;
      const double c3 = s0 + s1 - 2.0 * secant;
      const auto value = [&](double u) { return y[i] + dt * u * (s0 + u * (c2 + u * c3)); };
      double top = -1;  // u of an inner maximum
      if (s0 > 0 && s1 < 0) {
        const double root = std::sqrt(std::max(0.0, c2 * c2 - 3.0 * c3 * s0));
        top =
            s0 / (root - c2);  // the root of the derivative with falling sign, in a form without cancellation
        if (!(top > 0 && top < 1)) top = -1;
      }
      const double way = top > 0 ? std::fabs(value(top) - y[i]) + std::fabs(y[i + 1] - value(top))
                                 : std::fabs(y[i + 1] - y[i]);
      const int pieces = std::clamp(static_cast<int>(std::ceil(way / largest_step_kelvin)), 1, k_most_pieces);
      double previous = 0;
      for (int k = 1; k <= pieces; ++k) {
        const double u = static_cast<double>(k) / pieces;
        if (top > previous && top < u) {
          out.seconds.push_back(t[i] + top * dt);
          out.celsius.push_back(value(top));
        }
        out.seconds.push_back(k == pieces ? t[i + 1] : t[i] + u * dt);
        out.celsius.push_back(k == pieces ? y[i + 1] : value(u));
        previous = u;
      }
    }
  }
}

Peak peak_of(const Series& series) {
  Peak peak{series.celsius.front(), series.seconds.front()};
  for (std::size_t i = 1; i < series.celsius.size(); ++i) {
    if (series.celsius[i] > peak.celsius) peak = {series.celsius[i], series.seconds[i]};
  }
  return peak;
}

Peak lagged_peak(const Series& series, double tau) {
  if (tau <= 0) return peak_of(series);
  double probe = series.celsius.front();
  Peak peak{probe, series.seconds.front()};
  for (std::size_t i = 1; i < series.celsius.size(); ++i) {
    const double dt = series.seconds[i] - series.seconds[i - 1];
    if (dt <= 0) continue;
    const double slope = (series.celsius[i] - series.celsius[i - 1]) / dt;
    // T_p(t) = T(t) - slope tau + c exp(-t/tau)
    const double c = probe - series.celsius[i - 1] + slope * tau;
    // A maximum inside the piece: slope - (c/tau) exp(-t/tau) = 0 while the probe was rising.
    if (slope < 0 && c < 0 && probe < series.celsius[i - 1]) {
      const double at = tau * numerics::log(c / (slope * tau));
      if (at > 0 && at < dt) {
        const double value = series.celsius[i - 1] + slope * at;
        if (value > peak.celsius) peak = {value, series.seconds[i - 1] + at};
      }
    }
    probe = series.celsius[i] - slope * tau + c * numerics::exp(-dt / tau);
    if (probe > peak.celsius) peak = {probe, series.seconds[i]};
  }
  return peak;
}

double seconds_above(const Series& series, double celsius) {
  double sum = 0;
  for (std::size_t i = 1; i < series.celsius.size(); ++i) {
    const double a = series.celsius[i - 1] - celsius;
    const double b = series.celsius[i] - celsius;
    const double dt = series.seconds[i] - series.seconds[i - 1];
    if (a >= 0 && b >= 0)
      sum += dt;
    else if (a > 0 || b > 0)
      sum += dt * std::max(a, b) / std::fabs(a - b);
  }
  return sum;
}

}  // namespace lastegg::steam
