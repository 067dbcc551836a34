// The march of march.cpp with one pass per lane. Each lane goes at its own steps: one that was too long is
// taken again in halves, and a lane whose pass has ended takes the next, so that no lane waits for another
// and none's result depends on its neighbours. A pass that stays at fault is only marked. Included once per
// vector width (lane_kernel_*.cpp).
#pragma once

#include <memory>

#include "treatments/steam/lanes/lane_dose.h"

namespace lastegg::steam {
namespace {

template <int Width>
class LaneMarch {
  using F = typename numerics::Lanes<Width>::Floats;
  using Mask = ln::Mask<F>;

 public:
  LaneMarch(const PackShape& shape, const PackPlan& plan, std::span<const PackInput> packs, int passes,
            std::span<PackOutput> outputs)
      : plan_(plan),
        packs_(packs),
        outputs_(outputs),
        passes_(passes),
        cells_(shape, plan.largest_mismatch_kelvin),
        fresh_(shape, plan.largest_mismatch_kelvin),
        moments_(plan),
        dose_(plan, packs, outputs) {}

  void run() {
    prepare();
    cells_.take(fresh_);
    for (int lane = 0; lane < Width && next_ < passes_; ++lane) begin(lane);
    while (going_ > 0) {
      const Mask faulty = cells_.advance(seconds_);
      Mask back{};
      for (int lane = 0; lane < Width; ++lane)
        if (places_[lane].pass >= 0 && faulty[lane] != 0) back[lane] = -1;
      cells_.settle(back);
      target_ = cells_.target();
      surface_ = cells_.surface();
      hottest_known_ = water_known_ = false;
      for (int lane = 0; lane < Width; ++lane) {
        if (places_[lane].pass < 0) continue;
        if (back[lane] != 0)
          halve(lane);
        else
          go_on(lane);
      }
    }
    dose_.sum_up();
  }

 private:
  // Where a lane is in its pass.
  struct Place {
    int pass = -1;  // none
    int phase = 0, block = 0, step = 0;
    int halvings = 0;  // of the step to come
    int part = 0;      // of a whole step that is done, in parts of the finest cut
    float whole = 0;   // seconds of a whole step
  };

  int parts() const { return 1 << plan_.most_halvings; }

  const PackSteps& steps_of(const Place& place) const {
    return plan_.phases[static_cast<std::size_t>(place.phase)]
        .rows[static_cast<std::size_t>(input_of(place).row[place_in_pack(place)])];
  }
  const PackInput& input_of(const Place& place) const {
    return packs_[static_cast<std::size_t>(place.pass / k_pack)];
  }
  PackOutput& output_of(const Place& place) const {
    return outputs_[static_cast<std::size_t>(place.pass / k_pack)];
  }
  static std::size_t place_in_pack(const Place& place) {
    return static_cast<std::size_t>(place.pass % k_pack);
  }

  // Lays out the next passes, as many as there are lanes.
  void prepare() {
    fresh_first_ = next_;
    fresh_.start(packs_[static_cast<std::size_t>(next_ / k_pack)], next_ % k_pack);
    fresh_target_ = fresh_.target();
    fresh_surface_ = fresh_.surface();
  }

  // Begins the next pass in a lane whose cells it has.
  void begin(int lane) {
    Place& place = places_[lane];
    place = Place{};
    place.pass = next_++;
    ++going_;
    output_of(place).faulty[place_in_pack(place)] = false;
    output_of(place).cut[place_in_pack(place)] = false;
    const int fresh = place.pass - fresh_first_;
    target_[lane] = fresh_target_[fresh];
    surface_[lane] = fresh_surface_[fresh];
    for (int p = 0; p < plan_.phase_count; ++p) moments_.steps(p)[lane] = 0;
    begin_phase(lane);
  }

  void begin_phase(int lane) {
    Place& place = places_[lane];
    const PackSteps& steps = steps_of(place);
    float sum = 0, growth = 1;
    for (int block = 0; block < steps.blocks; ++block, growth *= steps.ratio) sum += growth;
    const float seconds =
        input_of(place).phase_seconds[static_cast<std::size_t>(place.phase)][place_in_pack(place)];
    place.whole = seconds * (1.0f / (static_cast<float>(steps.steps) * sum));
    place.block = place.step = place.part = place.halvings = 0;
    auto& moment = moments_.of_phase(place.phase)[0];
    moment.step[lane] = 0;
    moment.target[lane] = target_[lane];
    moment.surface[lane] = surface_[lane];
    cells_.begin(lane, plan_.phases[static_cast<std::size_t>(place.phase)].phase);
    seconds_[lane] = place.whole;
  }

  void halve(int lane) {
    Place& place = places_[lane];
    output_of(place).cut[place_in_pack(place)] = true;
    if (place.halvings == plan_.most_halvings) {
      output_of(place).faulty[place_in_pack(place)] = true;
      leave(lane);
      return;
    }
    ++place.halvings;
    seconds_[lane] *= 0.5f;
  }

  // A step is done: writes it down and finds the next.
  void go_on(int lane) {
    Place& place = places_[lane];
    const auto taken = static_cast<int>(moments_.steps(place.phase)[lane]);
    if (taken == moments_.most_steps(place.phase)) {
      output_of(place).faulty[place_in_pack(place)] = true;
      leave(lane);
      return;
    }
    moments_.steps(place.phase)[lane] = taken + 1;
    auto& moment = moments_.of_phase(place.phase)[taken + 1];
    moment.step[lane] = seconds_[lane];
    moment.target[lane] = target_[lane];
    moment.surface[lane] = surface_[lane];

    place.part += parts() >> place.halvings;
    if (place.part < parts()) {
      // The second half of a cut is as long as its first; what lies behind both may be longer again.
      while (place.halvings > 1 && place.part % (parts() >> (place.halvings - 1)) == 0) --place.halvings;
      seconds_[lane] = place.whole / static_cast<float>(1 << place.halvings);
      return;
    }
    place.part = 0;
    place.halvings = 0;
    const PackSteps& steps = steps_of(place);
    if (++place.step == steps.steps) {
      place.step = 0;
      place.whole *= steps.ratio;
      if (++place.block == steps.blocks) {
        end_phase(lane);
        return;
      }
      if (is_air(place) && cold(lane)) {
        finish(lane);
        return;
      }
    }
    seconds_[lane] = place.whole;
  }

  void end_phase(int lane) {
    Place& place = places_[lane];
    if (!is_air(place) && !is_gap(place)) output_of(place).water_gain[place_in_pack(place)] = water(lane);
    if (++place.phase == plan_.phase_count || (is_air(place) && cold(lane))) {
      finish(lane);
      return;
    }
    begin_phase(lane);
  }

  bool is_air(const Place& place) const {
    return plan_.phases[static_cast<std::size_t>(place.phase)].phase == PackPhase::air;
  }
  bool is_gap(const Place& place) const {
    return plan_.phases[static_cast<std::size_t>(place.phase)].phase == PackPhase::gap;
  }

  // Found for all lanes when the first asks.
  bool cold(int lane) {
    if (!hottest_known_) hottest_ = cells_.hottest();
    hottest_known_ = true;
    return hottest_[lane] < plan_.stop_below_celsius;
  }
  float water(int lane) {
    if (!water_known_) water_ = cells_.water_gain();
    water_known_ = true;
    return water_[lane];
  }

  void finish(int lane) {
    dose_.add(places_[lane].pass, moments_, lane);
    leave(lane);
  }

  // Frees a lane for the next pass, if there is one.
  void leave(int lane) {
    places_[lane].pass = -1;
    seconds_[lane] = 0;
    --going_;
    if (next_ == passes_) return;
    if (next_ == fresh_first_ + Width) prepare();
    cells_.take(lane, fresh_, next_ - fresh_first_);
    begin(lane);
  }

  const PackPlan& plan_;
  std::span<const PackInput> packs_;
  std::span<PackOutput> outputs_;
  const int passes_;
  int next_ = 0;         // pass that no lane has begun
  int fresh_first_ = 0;  // first of those that fresh_ holds at their start
  int going_ = 0;        // lanes with a pass
  LaneCells<Width> cells_, fresh_;
  LaneMoments<Width> moments_;
  LaneDose<Width> dose_;
  Place places_[Width];
  F seconds_{};  // of the step to come
  F target_{}, surface_{}, fresh_target_{}, fresh_surface_{}, hottest_{}, water_{};
  bool hottest_known_ = false, water_known_ = false;
};

template <int Width>
void run_lanes(const PackShape& shape, const PackPlan& plan, std::span<const PackInput> packs, int passes,
               std::span<PackOutput> outputs) {
  if (passes > 0) std::make_unique<LaneMarch<Width>>(shape, plan, packs, passes, outputs)->run();
}

}  // namespace
}  // namespace lastegg::steam
