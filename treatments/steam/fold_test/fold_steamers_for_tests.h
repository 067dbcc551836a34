// Random steamers whose fold tests are made by another law of the cloth than the fit assumes. For tests.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "physics/uncertainty/sobol.h"
#include "treatments/steam/fold_test/fold_reading.h"

namespace lastegg::steam {

inline const Layer k_test_cloth{0.001, 530e3, 0.065, true, 0.68, 2.0, 39};
inline const Layer k_test_base{0.03, 45e3, 0.04, true, 0.97, 1.3, 0.55};
inline const Layer k_test_coupon{0.001, 1.7255e6, 0.19, false, 0, 1, 0};

inline FoldReading fold_pass(double pace, int layers) {
  return {pace, {k_test_cloth, k_test_cloth, k_test_cloth, k_test_base}, 0.001 * layers, 0};
}
inline FoldReading fold_rest(double seconds, int layers) {
  FoldReading reading = fold_pass(0.01, layers);
  reading.kind = ReadingKind::stationary;
  reading.hold_seconds = seconds;
  return reading;
}
inline FoldReading coupon_pass(double pace) {
  return {pace, {k_test_coupon, k_test_base}, k_test_coupon.thickness_metres, 0, ReadingKind::coupon};
}

inline FoldReading surface_reading(double pace, double seconds_after) {
  FoldReading reading = fold_pass(pace, 1);
  reading.kind = ReadingKind::surface;
  reading.depth_metres = 0;
  reading.seconds_after = seconds_after;
  reading.instrument_error_kelvin = 3;
  return reading;
}

/// What the fit has wrong besides hand and thermometer.
enum class WrongLaw {
  cloth,  ///< conduction, capacity, sorption, pores, gaps between the layers, a pressed top layer, vapour
          ///< hindered by water, the skirt's reach
  head    ///< steam that air thins the faster the head goes, exchange that depends on pace, supply, the
          ///< skirt's strength, a cloth drier or damper than told, what lies below the fold, each layer's
          ///< thickness and conduction by itself
};

/// One steamer: its scores by the prior, and how its cloth, hand and thermometer differ from what the fit
/// assumes.
class TrueSteamer {
 public:
  /// error 0: exactly the law of the fit, read without noise; 1: as below.
  TrueSteamer(std::uint32_t number, double error, WrongLaw law = WrongLaw::cloth)
      : number_(number), error_(error), law_(law) {
    for (unsigned k = 0; k < k_unknown_count; ++k) truth_[k] = score("truth/" + std::to_string(k));
  }

  const Scores& truth() const { return truth_; }
  /// Air drawn in and less heat: the machine has aged.
  void weaken(double dew_scores, double film_scores) {
    truth_[0] -= dew_scores;
    truth_[1] -= film_scores;
  }

  /// The fold test's readings as the thermometer of this steamer shows them.
  void take_readings(FoldTest& test) const {
    for (std::size_t r = 0; r < test.readings.size(); ++r) {
      FoldReading& reading = test.readings[r];
      const std::string key = "reading/" + std::to_string(r);
      FoldReading done = reading;
      done.pace_metres_per_second *= std::exp(0.08 * error_ * score(key + "/pace"));
      FoldTest with_probe = test;
      with_probe.probe_time_constant_seconds *= std::exp(0.25 * error_ * score("probe"));
      reading.peak_celsius =
          (reading.kind == ReadingKind::stationary ? steady_celsius(test, done)
           : reading.kind == ReadingKind::surface
               ? surface_celsius(test, done, error_ * score(key + "/seconds"))
               : answer(with_probe, done).probe_peak_celsius) +
          (reading.kind == ReadingKind::surface ? 3 : 1.5) * error_ * score(key + "/display");
    }
  }

  /// What really happens at the tip under a moving head.
  LaneAnswer answer(const FoldTest& test, const FoldReading& reading) const {
    const FoldReading real = really(reading);
    const Stack stack = stack_of_reading(test, real);
    LaneBatch batch = batch_of(test);
    batch.observe_seconds = 60;
    if (law_ == WrongLaw::head)
      batch.start_activity = std::clamp(0.5 + 0.2 * error_ * score("activity"), 0.1, 0.9);
    const LanePass pass = real_pass(test, real, stack);
    const auto answers = run_passes(batch, {&pass, 1});
    return answers ? answers->front() : LaneAnswer{};
  }

  /// What lies on top so many seconds after a pass, counted by half a second too early or too late.
  double surface_celsius(const FoldTest& test, const FoldReading& reading, double counted_scores) const {
    const FoldReading real = really(reading);
    const Stack stack = stack_of_reading(test, real);
    LaneBatch batch = batch_of(test);
    const double after = std::max(0.0, reading.seconds_after + 0.5 * counted_scores);
    batch.observe_seconds = after + 1;
    const auto history = run_pass(lane_problem(batch, real_pass(test, real, stack)), {});
    if (!history) return 0;
    for (std::size_t i = 0; i < history->seconds.size(); ++i) {
      if (history->seconds[i] >= history->liftoff_seconds + after) return history->surface_celsius[i];
    }
    return history->surface_celsius.back();
  }

  /// What the tip shows at the end of a long rest on damp cloth, marched by the reference.
  double steady_celsius(const FoldTest& test, const FoldReading& reading) const {
    const FoldReading real = really(reading);
    const Stack stack = stack_of_reading(test, real);
    LanePass pass = real_pass(test, real, stack);
    pass.pace_metres_per_second = 0.002;
    pass.head.length_metres = pass.pace_metres_per_second * reading.hold_seconds;
    pass.head.skirt_length_metres = 0;
    LaneBatch batch = batch_of(test);
    batch.start_activity = 0.95;
    const auto history = run_pass(lane_problem(batch, pass), {});
    if (!history) return 0;
    return history->celsius[0][history->phase_starts[1]];
  }

 private:
  FoldReading really(const FoldReading& reading) const {
    return law_ == WrongLaw::cloth ? in_other_cloth(reading) : in_uneven_layers(reading);
  }

  FoldReading in_uneven_layers(const FoldReading& reading) const {
    FoldReading real = reading;
    real.depth_metres = 0;
    double assumed = 0;
    for (std::size_t i = 0; i < real.stack.size(); ++i) {
      Layer& layer = real.stack[i];
      const bool above_tip = assumed < reading.depth_metres - 1e-6;
      assumed += layer.thickness_metres;
      const bool is_base = layer.thickness_metres > 0.01;
      const std::string key = is_base ? "base" : "layer/" + std::to_string(i);
      if (layer.permeable) {
        if (!is_base) layer.thickness_metres *= std::exp(0.12 * error_ * score(key + "/thickness"));
        layer.conductivity_watts_per_metre_kelvin *= std::exp(0.25 * error_ * score(key + "/conductivity"));
        layer.heat_capacity_joules_per_m3_kelvin *= std::exp(0.15 * error_ * score(key + "/capacity"));
      }
      if (above_tip) real.depth_metres += layer.thickness_metres;
    }
    return real;
  }

  FoldReading in_other_cloth(const FoldReading& reading) const {
    FoldReading real = reading;
    real.stack.clear();
    real.depth_metres = 0;
    double assumed = 0;
    bool is_top = true;
    for (const Layer& layer : reading.stack) {
      const bool above_tip = assumed < reading.depth_metres - 1e-6;
      assumed += layer.thickness_metres;
      Layer other = layer;
      if (layer.permeable && layer.thickness_metres < 0.01) {
        other.thickness_metres *= std::exp(0.08 * error_ * score("thickness"));
        other.conductivity_watts_per_metre_kelvin *= std::exp(0.20 * error_ * score("conductivity"));
        other.heat_capacity_joules_per_m3_kelvin *= std::exp(0.15 * error_ * score("capacity"));
        other.sorption_scale_kilograms_per_m3 *= std::exp(0.40 * error_ * score("sorption"));
        other.porosity =
            std::clamp(1 - (1 - layer.porosity) * std::exp(0.20 * error_ * score("porosity")), 0.3, 0.97);
        const double pressed = is_top ? 0.25 * error_ * score("top layer") : 0;
        other.tortuosity =
            std::max(1.0, layer.tortuosity * std::exp(0.30 * error_ * score("tortuosity") + pressed));
      }
      real.stack.push_back(other);
      if (above_tip) real.depth_metres += other.thickness_metres;
      // A gap of air between the layers: contact is not perfect.
      const double gap = 1e-4 * error_ * std::fabs(score("gap"));
      if (error_ > 0 && layer.permeable && layer.thickness_metres < 0.01 && gap > 2e-5) {
        real.stack.push_back({gap, 1.2e3, 0.026, true, 0.99, 1.0, 0.01});
        if (above_tip) real.depth_metres += gap;
      }
      is_top = false;
    }
    return real;
  }

  LanePass real_pass(const FoldTest& test, const FoldReading& real, const Stack& stack) const {
    LanePass pass = pass_of_reading(test, real, truth_, stack);
    if (law_ == WrongLaw::head) {
      const double over = real.kind == ReadingKind::stationary
                              ? 0
                              : std::log(std::max(1.0, real.pace_metres_per_second / 0.008));
      pass.head.dew_celsius -= error_ * std::fabs(score("air")) * over;
      pass.head.film_watts_per_m2_kelvin *= std::exp(0.15 * error_ * score("film") * over);
      pass.head.flux_cap_watts_per_m2 *= std::exp(0.2 * error_ * score("supply"));
      pass.head.skirt_factor =
          std::min(1.0, pass.head.skirt_factor * std::exp(0.5 * error_ * score("skirt")));
      return pass;
    }
    // A wet cloth hinders vapour: what it passes depends on the water left, and so on the pace.
    const double pace = real.kind == ReadingKind::stationary ? 0.004 : real.pace_metres_per_second;
    pass.vapour_efficiency =
        std::min(1.5, pass.vapour_efficiency * std::pow(pace / 0.015, 0.2 * error_ * score("wetting")));
    pass.head.skirt_length_metres *= std::exp(0.3 * error_ * score("skirt"));
    return pass;
  }

  double score(const std::string& key) const { return SobolStream("steamer/" + key, 0).normal(number_); }
  std::uint32_t number_;
  double error_;
  WrongLaw law_;
  Scores truth_{};
};

}  // namespace lastegg::steam
