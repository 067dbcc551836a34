// What the places of finished passes lived through: temperatures between the moments of their steps, dose,
// peaks. One pass per lane. Included once per vector width, as lane_cells.h.
#pragma once

#include <algorithm>
#include <vector>

#include "treatments/steam/lanes/lane_cells.h"

namespace lastegg::steam {
namespace {

constexpr float k_lane_log2_e = 1.44269504f;

/// The end of a step: how long it was, and the temperatures it led to. The first moment of a phase is the
/// last of the phase before.
template <class F>
struct LaneMoment {
  F step, target, surface;
};

/// The moments of as many passes as there are lanes, phase by phase.
template <int Width>
class LaneMoments {
 public:
  using F = typename numerics::Lanes<Width>::Floats;
  using Mask = ln::Mask<F>;
  using Moment = LaneMoment<F>;

  explicit LaneMoments(const PackPlan& plan) {
    int moments = 0;
    for (int p = 0; p < plan.phase_count; ++p) {
      int uncut = 0;
      for (const PackSteps& row : plan.phases[static_cast<std::size_t>(p)].rows)
        uncut = std::max(uncut, row.blocks * row.steps);
      first_.push_back(moments);
      most_steps_.push_back(2 * uncut + k_spare_steps);
      moments += most_steps_.back() + 1;
    }
    moments_.resize(static_cast<std::size_t>(moments), Moment{});
    steps_.resize(first_.size(), Mask{});
  }

  Moment* of_phase(int phase) { return &moments_[static_cast<std::size_t>(first_[index(phase)])]; }
  const Moment* of_phase(int phase) const {
    return &moments_[static_cast<std::size_t>(first_[index(phase)])];
  }
  Mask& steps(int phase) { return steps_[index(phase)]; }  ///< so far, in each lane
  const Mask& steps(int phase) const { return steps_[index(phase)]; }
  int most_steps(int phase) const { return most_steps_[index(phase)]; }

 private:
  static constexpr int k_spare_steps = 128;  // for those that are cut
  static std::size_t index(int phase) { return static_cast<std::size_t>(phase); }
  std::vector<int> first_, most_steps_;
  std::vector<Moment> moments_;
  std::vector<Mask> steps_;
};

/// Collects finished passes until there is one in each lane, and sums them up side by side.
template <int Width>
class LaneDose {
 public:
  using F = typename numerics::Lanes<Width>::Floats;
  using Mask = ln::Mask<F>;
  using Moment = LaneMoment<F>;

  LaneDose(const PackPlan& plan, std::span<const PackInput> packs, std::span<PackOutput> outputs)
      : plan_(plan), packs_(packs), outputs_(outputs), moments_(plan) {}

  /// Takes the moments of a lane whose pass has ended.
  void add(int pass, const LaneMoments<Width>& from, int lane) {
    for (int p = 0; p < plan_.phase_count; ++p) {
      const auto steps = static_cast<int>(from.steps(p)[lane]);
      moments_.steps(p)[held_] = steps;
      for (int k = 0; k <= steps; ++k)
        copy_lane<F>(moments_.of_phase(p)[k], held_, from.of_phase(p)[k], lane);
    }
    const PackInput& input = packs_[static_cast<std::size_t>(pass / k_pack)];
    limit_[held_] = input.surface_limit[static_cast<std::size_t>(pass % k_pack)];
    probe_lag_[held_] = input.probe_lag[static_cast<std::size_t>(pass % k_pack)];
    passes_[held_++] = pass;
    if (held_ == Width) sum_up();
  }

  /// Sums up what is held.
  void sum_up() {
    for (int b = 0; b < k_pack_bodies; ++b) {
      bodies_[b] = moments_.of_phase(0)[0].target;
      for (int z = 0; z < 2; ++z) {
        rates_[b][z] = rate(bodies_[b], z);
        sums_[b][z] = F{};
      }
    }
    probe_ = probe_peak_ = target_peak_ = moments_.of_phase(0)[0].target;
    surface_peak_ = moments_.of_phase(0)[0].surface;
    seconds_above_ = F{};
    for (int p = 0; p < plan_.phase_count; ++p) {
      const Mask steps = moments_.steps(p);
      for (int k = 0; ln::any_of<Width>(steps > k); ++k) add_step(p, k, steps);
    }
    for (int held = 0; held < held_; ++held) write(held);
    held_ = 0;
  }

 private:
  // The cubic of one step, from slopes of the parabolas through neighbouring moments of the same phase.
  struct Cubic {
    F start, linear, square, cube, end;
    F at(float u) const { return start + u * (linear + u * (square + u * cube)); }
  };

  static Cubic cubic(F Moment::* place, const Moment* moments, int from, Mask has_after) {
    const auto value = [&](int k) { return moments[k].*place; };
    const F h = moments[from + 1].step;
    const F rise = value(from + 1) - value(from);
    // Slopes times h at both ends.
    F s0 = rise, s1 = rise;
    if (from > 0) {
      const F before = moments[from].step;
      const F secant = (value(from) - value(from - 1)) * (h / before);
      s0 = secant + (rise - secant) * (before / (before + h));
      s1 = rise + (rise - secant) * (h / (before + h));
    }
    if (ln::any_of<Width>(has_after)) {
      const F after = moments[from + 2].step;
      const F secant = (value(from + 2) - value(from + 1)) * (h / after);
      const F bend = (secant - rise) * (h / (h + after));
      s1 = ln::select<F>(has_after, rise + bend, s1);
      if (from == 0) s0 = ln::select<F>(has_after, rise - bend, s0);
    }
    if (from == 0)
      s0 = ln::larger(ln::smaller(s0, ln::larger(F{}, 3.0f * rise)), ln::smaller(F{}, 3.0f * rise));
    return {value(from), s0, 3.0f * rise - 2.0f * s0 - s1, s0 + s1 - 2.0f * rise, value(from + 1)};
  }

  // Step k of a phase, in the lanes that took it.
  void add_step(int phase_index, int k, Mask steps) {
    const PackPhasePlan& phase = plan_.phases[static_cast<std::size_t>(phase_index)];
    const Moment* const moments = moments_.of_phase(phase_index);
    const Mask taken = steps > k;
    const float per_piece = 1.0f / static_cast<float>(phase.pieces);
    const F h = moments[k + 1].step * per_piece;
    const Cubic target = cubic(&Moment::target, moments, k, steps > k + 1);
    const Cubic surface = cubic(&Moment::surface, moments, k, steps > k + 1);
    const PackDose& dose = plan_.dose;
    F half_fade[k_pack_bodies];
    for (int b = 0; b < k_pack_bodies; ++b)
      half_fade[b] = ln::exp2(h * (-0.5f * k_lane_log2_e / dose.lag_seconds[static_cast<std::size_t>(b)]));
    const F probe_fade = ln::exp2(-k_lane_log2_e * h / ln::larger(probe_lag_, ln::splat<F>(1e-3f)));
    F a = target.start, skin = surface.start;
    for (int piece = 1; piece <= phase.pieces; ++piece) {
      const bool last = piece == phase.pieces;
      const F c = last ? target.end : target.at(per_piece * static_cast<float>(piece));
      const F skin_next = last ? surface.end : surface.at(per_piece * static_cast<float>(piece));
      target_peak_ = ln::select<F>(taken, ln::larger(target_peak_, c), target_peak_);
      probe_ = ln::select<F>(taken, c + lagged(c - a, h, probe_lag_, probe_ - a, probe_fade), probe_);
      probe_peak_ = ln::larger(probe_peak_, probe_);
      if (phase.watched)
        surface_peak_ = ln::select<F>(taken, ln::larger(surface_peak_, skin_next), surface_peak_);
      seconds_above_ += ln::select<F>(taken, time_above(skin - limit_, skin_next - limit_, h), F{});
      for (int b = 0; b < k_pack_bodies; ++b) add_piece(b, taken, a, c, h, half_fade[b]);
      a = c;
      skin = skin_next;
    }
  }

  // A straight piece from a to c, for one body.
  void add_piece(int b, Mask taken, F a, F c, F h, F half_fade) {
    const F lag = ln::splat<F>(plan_.dose.lag_seconds[static_cast<std::size_t>(b)]);
    const F rise = c - a;
    const F offset = bodies_[b] - a;
    const F middle = a + 0.5f * rise + lagged(0.5f * rise, 0.5f * h, lag, offset, half_fade);
    const F end = c + lagged(rise, h, lag, offset, half_fade * half_fade);
    const F hottest = ln::larger(bodies_[b], ln::larger(middle, end));
    bodies_[b] = ln::select<F>(taken, end, bodies_[b]);
    const bool cold = !ln::any_of<Width>((hottest >= plan_.dose.onset_celsius) & taken);
    for (int z = 0; z < 2; ++z) {
      if (cold) {
        rates_[b][z] = ln::select<F>(taken, F{}, rates_[b][z]);
        continue;
      }
      const F later = rate(end, z);
      const F sum = (h * (1.0f / 6.0f)) * (rates_[b][z] + 4.0f * rate(middle, z) + later);
      sums_[b][z] += ln::select<F>(taken, sum, F{});
      rates_[b][z] = ln::select<F>(taken, later, rates_[b][z]);
    }
  }

  void write(int held) const {
    PackOutput& output = outputs_[static_cast<std::size_t>(passes_[held] / k_pack)];
    const auto place = static_cast<std::size_t>(passes_[held] % k_pack);
    for (std::size_t b = 0; b < k_pack_bodies; ++b)
      for (std::size_t z = 0; z < 2; ++z) output.cap_seconds[b][z][place] = sums_[b][z][held];
    output.target_peak[place] = target_peak_[held];
    output.probe_peak[place] = probe_peak_[held];
    output.surface_peak[place] = surface_peak_[held];
    output.surface_seconds_above[place] = seconds_above_[held];
  }

  // How far a body with a lag is from its place at the end of a straight piece; `offset` at its start.
  static F lagged(F rise, F h, F lag, F offset, F fade) {
    const F behind = rise * lag / h;
    return (offset + behind) * fade - behind;
  }

  static F time_above(F from, F to, F h) {
    const F high = ln::larger(from, to);
    const F low = ln::smaller(from, to);
    const F share = high / ln::larger(high - low, ln::splat<F>(1e-6f));
    return ln::select<F>(high <= 0.0f, F{}, ln::select<F>(low >= 0.0f, h, h * share));
  }

  F rate(F celsius, int z) const {
    const PackDose& dose = plan_.dose;
    const F below_cap = ln::smaller(celsius, ln::splat<F>(dose.cap_celsius)) - dose.cap_celsius;
    const F value = ln::exp2(below_cap * (3.32192809f * dose.inverse_z[static_cast<std::size_t>(z)]));
    return ln::select<F>(celsius >= dose.onset_celsius, value, F{});
  }

  const PackPlan& plan_;
  std::span<const PackInput> packs_;
  std::span<PackOutput> outputs_;
  LaneMoments<Width> moments_;
  int passes_[Width] = {};
  int held_ = 0;
  F limit_{}, probe_lag_{};
  F bodies_[k_pack_bodies], rates_[k_pack_bodies][2], sums_[k_pack_bodies][2];
  F probe_, probe_peak_, target_peak_, surface_peak_, seconds_above_;
};

}  // namespace
}  // namespace lastegg::steam
