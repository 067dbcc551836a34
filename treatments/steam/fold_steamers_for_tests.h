// Random steamers whose fold tests are made by another law of the cloth than the fit assumes. For tests.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "physics/uncertainty/sobol.h"
#include "treatments/steam/fold_reading.h"

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

/// One steamer: its scores by the prior, and how its cloth, hand and thermometer differ from what the fit
/// assumes.
class TrueSteamer {
 public:
  /// error 0: exactly the law of the fit, read without noise; 1: as below.
  TrueSteamer(std::uint32_t number, double error) : number_(number), error_(error) {
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
                                                   : answer(with_probe, done).probe_peak_celsius) +
          1.5 * error_ * score(key + "/display");
    }
  }

  /// What really happens at the tip under a moving head.
  LaneAnswer answer(const FoldTest& test, const FoldReading& reading) const {
    const FoldReading real = really(reading);
    const Stack stack = stack_of_reading(test, real);
    LaneBatch batch = batch_of(test);
    batch.observe_seconds = 60;
    const LanePass pass = real_pass(test, real, stack);
    const auto answers = run_passes(batch, {&pass, 1});
    return answers ? answers->front() : LaneAnswer{};
  }

  /// What the tip shows at the end of a long rest on damp cloth, marched by the reference.
  double steady_celsius(const FoldTest& test, const FoldReading& reading) const {
    const FoldReading real = really(reading);
    const Stack stack = stack_of_reading(test, real);
    LanePass pass = real_pass(test, real, stack);
    pass.pace_metres_per_second = 0.01;
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
  Scores truth_{};
};

}  // namespace lastegg::steam
