// A body that follows the temperature of its place with a time constant. Exact for a history of straight
// pieces: the body's temperature is an exponential plus a straight line, given out as short straight pieces.
#pragma once

#include <cmath>

#include "physics/numerics/elementary.h"

namespace lastegg::bugs {

/// Model:   dT_b/dt = (T - T_b) / tau
/// Checked: bugs/mortality/body_lag_law_test.cpp
class BodyLag {
 public:
  /// Between the exact points that follow() gives out, the body lies at most so far from the straight line.
  static constexpr double k_chord_kelvin = 0.01;

  BodyLag(double time_constant_seconds, double start_celsius)
      : time_constant_seconds_(time_constant_seconds), body_celsius_(start_celsius) {}

  double celsius() const { return body_celsius_; }

  /// Moves the body through one straight piece of its place's history.
  void skip(double from_celsius, double to_celsius, double seconds) {
    body_celsius_ = end_of(from_celsius, to_celsius, seconds);
  }

  /// As skip(), and gives the body's history as pieces: visit(from_celsius, to_celsius, seconds).
  template <class Visit>
  void follow(double from_celsius, double to_celsius, double seconds, Visit visit) {
    const double tau = time_constant_seconds_;
    if (tau <= 0) {
      visit(from_celsius, to_celsius, seconds);
      body_celsius_ = to_celsius;
      return;
    }
    const double slope = (to_celsius - from_celsius) / seconds;
    const double offset = body_celsius_ - from_celsius + slope * tau;  // fades with exp(-t / tau)
    double done = 0, here = body_celsius_, faded = offset;
    while (std::fabs(faded) > k_chord_kelvin) {
      // The curvature is |faded| / tau^2, falling; over a step h the chord is off by at most an eighth of it.
      const double step = tau * std::sqrt(8 * k_chord_kelvin / std::fabs(faded));
      if (done + step >= seconds) break;
      done += step;
      faded = offset * numerics::exp(-done / tau);
      const double next = from_celsius + slope * (done - tau) + faded;
      visit(here, next, step);
      here = next;
    }
    body_celsius_ = end_of(from_celsius, to_celsius, seconds);
    visit(here, body_celsius_, seconds - done);
  }

 private:
  double end_of(double from_celsius, double to_celsius, double seconds) const {
    const double tau = time_constant_seconds_;
    if (tau <= 0) return to_celsius;
    const double slope = (to_celsius - from_celsius) / seconds;
    const double offset = body_celsius_ - from_celsius + slope * tau;
    return from_celsius + slope * (seconds - tau) + offset * numerics::exp(-seconds / tau);
  }

  double time_constant_seconds_;
  double body_celsius_;
};

}  // namespace lastegg::bugs
