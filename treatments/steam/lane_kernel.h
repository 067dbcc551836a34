// The march of march.cpp with one pass per lane: the same equations, scheme and detector, in single
// precision, and the dose of kill.cpp summed from the steps. Included once per vector width
// (lane_kernel_*.cpp), each compiled for its instructions; so nothing here may be shared between translation
// units.
//
// Differences to march.cpp: energy and water move by the linearised row, E = e + e_t dT + e_w dW, which
// equals the fluxes' sum up to the rounding of the solve; a pass with a fault is not cut into smaller steps
// here, its lane is only marked.
#pragma once

#include <memory>

#include "physics/numerics/lanes.h"
#include "treatments/steam/constants.h"
#include "treatments/steam/lane_pack.h"

namespace lastegg::steam {
namespace {

namespace ln = numerics::lanes;

constexpr float k_lane_gamma = 0.29289321881345254f;
constexpr float k_lane_history = static_cast<float>((1 - 2 * 0.29289321881345254) / 0.29289321881345254);
constexpr float k_lane_water = static_cast<float>(k_liquid_heat_capacity);
constexpr float k_lane_mass_ratio = static_cast<float>(k_mass_ratio);
constexpr float k_lane_highest_fraction = 0.9995f;
constexpr float k_lane_lowest_water = -0.46e-3f;
constexpr float k_lane_below_start = 8;
constexpr float k_lane_log2_e = 1.44269504f;

template <class F>
struct LaneCell {
  F inverse_thickness, capacity, porosity, sorption;
  F heat_conductance, vapour_conductance;  // of the face below
  F energy, water, temperature, energy_increment, water_increment;
  F e, e_t, e_w;
  F u_tt, u_tw, u_wt, u_ww, d_t, d_w;
};

// What neighbours need of a cell.
template <class F>
struct LanePoint {
  F temperature, lambda, lambda_t, lambda_w, x, x_t, x_w, h_v, h_v_t;
};

// Fluxes through a face and their derivatives to the cell above (i) and below (j).
template <class F>
struct LaneFlux {
  F j, j_ti, j_wi, j_tj, j_wj, f, f_ti, f_wi, f_tj, f_wj;
};

template <class F>
struct LaneState {
  F energy, water, temperature;
};

template <class F>
struct LaneVapour {
  F density, density_t;
};

/// Density of saturated vapour in kg/m3 and its slope.
/// Source:  coefficients from tools/fit_lane_functions.py
template <class F>
LASTEGG_LANE_FUNCTION LaneVapour<F> lane_saturated_vapour(F celsius) {
  static constexpr float c[] = {-4.11161255f,    5.14496446f,      -1.39637108f,
                                0.345048432f,    -0.0807439703f,   0.0218145457f,
                                -0.00651605322f, -7.30027457e-05f, 0.000935705023f};
  static constexpr float slope[] = {c[1],     2 * c[2], 3 * c[3], 4 * c[4],
                                    5 * c[5], 6 * c[6], 7 * c[7], 8 * c[8]};
  const ln::Powers<F> s = ln::powers((celsius - 42.5f) * (1.0f / 72.5f));
  const F density = ln::exp2(ln::polynomial<9>(c, s));
  return {density, density * ln::polynomial<8>(slope, s) * (0.693147181f / 72.5f)};
}

template <class F>
LASTEGG_LANE_FUNCTION F lane_vapour_enthalpy(F t) {
  return (2500.9e3f - 2365.5f * t - 0.89f * t * t) + k_lane_water * t;
}

template <int Width>
class LaneMarch {
  using F = typename numerics::Lanes<Width>::Floats;
  using Mask = ln::Mask<F>;

 public:
  LaneMarch(const PackShape& shape, const PackInput& input) : shape_(shape), input_(input) {}

  void run(int first, PackOutput& output) {
    first_ = first;
    start();
    F water_at_liftoff = F{};
    for (int p = 0; p < input_.phase_count; ++p) {
      const PackSteps& phase = input_.phases[static_cast<std::size_t>(p)];
      const bool steam = phase.phase == PackPhase::skirt || phase.phase == PackPhase::cover;
      begin(phase, steam);
      march(phase, p);
      if (steam) water_at_liftoff = water_gain();
    }
    write(output.water_gain, water_at_liftoff);
    for (int lane = 0; lane < Width; ++lane) {
      output.faulty[static_cast<std::size_t>(first_ + lane)] = faulty_[lane] != 0;
      output.cut[static_cast<std::size_t>(first_ + lane)] = cut_[lane] != 0;
    }
    sum_up(output);
  }

 private:
  F load(const Pack& pack) const {
    F out;
    __builtin_memcpy(&out, pack.data() + first_, sizeof(F));
    return out;
  }
  void write(Pack& pack, F value) const { __builtin_memcpy(pack.data() + first_, &value, sizeof(F)); }

  bool permeable(int cell) const {
    return shape_.permeable[static_cast<std::size_t>(shape_.layer_of_cell[static_cast<std::size_t>(cell)])];
  }
  bool has_water(int cell) const { return cell == 0 || permeable(cell); }
  bool on_interface(int cell) const {
    return cell > 0 && cell + 1 < shape_.cells && permeable(cell) && !permeable(cell + 1);
  }

  void start() {
    pressure_ = load(input_.pressure);
    per_pascal_ = 1.0f / pressure_;
    const F start = load(input_.start);
    const F phi = load(input_.vapour_efficiency) * static_cast<float>(k_vapour_transport);
    const F start_u = 1.0f - root(1.0f - load(input_.start_activity));
    const F rho_s = lane_saturated_vapour(start).density;
    lowest_ = start;
    highest_allowed_ = load(input_.highest_allowed);
    faulty_ = cut_ = Mask{};
    const int n = shape_.cells;
    // Half resistances of the cell above, carried on to its lower face.
    F heat_above = F{}, vapour_above = F{};
    for (int i = 0; i < n; ++i) {
      const PackLayer& layer =
          input_.layers[static_cast<std::size_t>(shape_.layer_of_cell[static_cast<std::size_t>(i)])];
      LaneCell<F>& cell = cells_[i];
      const F thickness = load(layer.thickness) * shape_.share_of_layer[static_cast<std::size_t>(i)];
      const F per_conductivity = 1.0f / load(layer.conductivity);
      cell.inverse_thickness = 1.0f / thickness;
      cell.capacity = load(layer.capacity);
      cell.porosity = permeable(i) ? load(layer.porosity) : F{};
      cell.sorption =
          permeable(i) ? load(layer.sorption) : ln::splat<F>(static_cast<float>(k_film_sorption_scale));
      const F up = i == 0 ? F{} : on_interface(i) ? thickness : 0.5f * thickness;
      const F down = i == 0 ? thickness : on_interface(i) ? F{} : 0.5f * thickness;
      const F per_openness = permeable(i) ? 1.0f / load(layer.openness) : F{};
      if (i > 0) {
        LaneCell<F>& above = cells_[i - 1];
        const F below_heat = up * per_conductivity;
        above.heat_conductance = 1.0f / (heat_above + below_heat);
        above.vapour_conductance =
            permeable(i - 1) && permeable(i) ? phi / (vapour_above + up * per_openness) : F{};
        if (i == shape_.target_cell) target_share_ = heat_above * above.heat_conductance;
      }
      heat_above = down * per_conductivity;
      vapour_above = down * per_openness;
      cell.temperature = start;
      cell.water = permeable(i) ? 2.0f * (cell.sorption + cell.porosity * rho_s) * start_u : F{};
      start_water_[i] = cell.water;
      evaluate(i, points_[i]);
      cell.energy = cell.e;
    }
    run_end_ = 0;
    while (run_end_ < n && permeable(run_end_)) ++run_end_;
    steps_ = 0;
    going_ = ~Mask{};
    record(0, ln::splat<F>(0));
  }

  static F root(F x) {
    F out;
    for (int lane = 0; lane < Width; ++lane) out[lane] = __builtin_sqrtf(x[lane]);
    return out;
  }

  void begin(const PackSteps& phase, bool steam) {
    steam_ = steam;
    forced_ = F{};
    if (steam) {
      factor_ = phase.phase == PackPhase::cover ? ln::splat<F>(1) : load(input_.skirt_factor);
      dew_ = load(input_.dew);
      const F kelvin = dew_ + static_cast<float>(k_zero_celsius_in_kelvin);
      dew_fraction_ = lane_saturated_vapour(dew_).density * kelvin *
                      static_cast<float>(k_gas_constant / k_water_molar_mass) * per_pascal_;
      dew_x_ = k_lane_mass_ratio * dew_fraction_ / (1.0f - dew_fraction_);
      dew_h_v_ = lane_vapour_enthalpy(dew_);
      film_ = load(input_.film) * factor_;
      cap_ = load(input_.flux_cap) * factor_;
      if (run_end_ > 0) {
        forced_ = (1.0f - dew_fraction_) * pressure_ * static_cast<float>(k_air_molar_mass / k_gas_constant) /
                  kelvin * load(input_.forced_gas) * factor_;
      }
    } else {
      room_ = load(input_.air_celsius);
      const F kelvin = room_ + static_cast<float>(k_zero_celsius_in_kelvin);
      const F y = load(input_.air_humidity) * lane_saturated_vapour(room_).density * kelvin *
                  static_cast<float>(k_gas_constant / k_water_molar_mass) * per_pascal_;
      room_lambda_ = -ln::log(1.0f - y);
      room_h_v_ = lane_vapour_enthalpy(room_);
      film_ = load(input_.air_film);
      lowest_ = ln::smaller(lowest_, room_);
    }
  }

  void march(const PackSteps& phase, int index) {
    float sum = 0, growth = 1;
    for (int block = 0; block < phase.blocks; ++block, growth *= phase.ratio) sum += growth;
    F step = load(phase.seconds) * (1.0f / (static_cast<float>(phase.steps) * sum));
    if (phase.phase == PackPhase::air) going_ &= hottest() >= input_.stop_below_celsius;
    for (int block = 0; block < phase.blocks; ++block, step *= phase.ratio) {
      if (!any(going_)) break;
      for (int i = 0; i < phase.steps; ++i) {
        advance(step, going_, 0);
        record(index, step);
      }
      if (phase.phase == PackPhase::air) going_ &= hottest() >= input_.stop_below_celsius;
    }
  }

  // One step; in the lanes of `wanted` where it was too long, two of half its length instead, and so on. The
  // other lanes keep what the whole step gave, so that no lane's result depends on its neighbours.
  void advance(F step, Mask wanted, int level) {
    const int n = shape_.cells;
    LaneState<F>* const before = before_[level];
    for (int i = 0; i < n; ++i) before[i] = {cells_[i].energy, cells_[i].water, cells_[i].temperature};
    stage<true>(k_lane_gamma * step);
    stage<false>(k_lane_gamma * step);
    const Mask faulty = evaluate_all() & wanted;
    if (!any(faulty)) return;
    cut_ |= faulty;
    if (level == input_.most_halvings) {
      faulty_ |= faulty;
      return;
    }
    LaneState<F>* const after = after_[level];
    for (int i = 0; i < n; ++i) {
      LaneCell<F>& cell = cells_[i];
      after[i] = {cell.energy, cell.water, cell.temperature};
      cell.energy = before[i].energy, cell.water = before[i].water, cell.temperature = before[i].temperature;
    }
    evaluate_all();
    advance(0.5f * step, faulty, level + 1);
    advance(0.5f * step, faulty, level + 1);
    for (int i = 0; i < n; ++i) {
      LaneCell<F>& cell = cells_[i];
      cell.energy = ln::select<F>(faulty, cell.energy, after[i].energy);
      cell.water = ln::select<F>(faulty, cell.water, after[i].water);
      cell.temperature = ln::select<F>(faulty, cell.temperature, after[i].temperature);
    }
    evaluate_all();
  }

  static bool any(Mask mask) {
    for (int lane = 0; lane < Width; ++lane)
      if (mask[lane] != 0) return true;
    return false;
  }

  F hottest() const {
    F out = cells_[0].temperature;
    for (int i = 1; i < shape_.cells; ++i) out = ln::larger(out, cells_[i].temperature);
    return out;
  }

  F water_gain() const {
    F sum = F{};
    for (int i = 0; i < shape_.cells; ++i)
      sum += (cells_[i].water - start_water_[i]) / cells_[i].inverse_thickness;
    return sum;
  }

  void record(int phase, F step) {
    const int t = shape_.target_cell;
    const F above = cells_[t > 0 ? t - 1 : 0].temperature;
    const F below = cells_[t < shape_.cells ? t : shape_.cells - 1].temperature;
    Moment& moment = moments_[steps_++];
    moment.phase = phase;
    moment.step = step;
    moment.going = going_;
    moment.target = t > 0 && t < shape_.cells ? above + target_share_ * (below - above) : below;
    moment.surface = cells_[0].temperature;
  }

  // Evaluates every cell; the lanes in which one is beyond what a linearisation can be trusted with.
  Mask evaluate_all() {
    Mask faulty{};
    for (int i = 0; i < shape_.cells; ++i) {
      evaluate(i, points_[i]);
      const LaneCell<F>& cell = cells_[i];
      const Mask fine = (cell.temperature >= lowest_ - k_lane_below_start) &
                        (cell.temperature <= highest_allowed_) &
                        (cell.water >= k_lane_lowest_water * cell.inverse_thickness) & (cell.water <= 1e9f) &
                        (ln::absolute(cell.energy - cell.e) <= input_.largest_mismatch_kelvin * cell.e_t);
      faulty |= ~fine;
    }
    return faulty;
  }

  __attribute__((always_inline)) void evaluate(int i, LanePoint<F>& point) {
    LaneCell<F>& cell = cells_[i];
    const F t = cell.temperature;
    const F w = cell.water;
    point.temperature = t;
    cell.e_t = cell.capacity + k_lane_water * w;
    cell.e_w = k_lane_water * t;
    cell.e = cell.e_t * t;
    if (!has_water(i)) return;  // nothing else of the point is read
    const F h_fg = 2500.9e3f - 2365.5f * t - 0.89f * t * t;
    const F h_fg_t = -2365.5f - 1.78f * t;
    point.h_v = h_fg + cell.e_w;
    point.h_v_t = h_fg_t + k_lane_water;
    const LaneVapour<F> saturated = lane_saturated_vapour(t);
    // y_s = psat / p with psat = rho R T / M
    const F per_density = (t + static_cast<float>(k_zero_celsius_in_kelvin)) *
                          (static_cast<float>(k_gas_constant / k_water_molar_mass) * per_pascal_);
    const F y_s = saturated.density * per_density;
    const F y_s_t =
        saturated.density_t * per_density +
        saturated.density * (static_cast<float>(k_gas_constant / k_water_molar_mass) * per_pascal_);
    const F half_inverse = 0.5f / (cell.sorption + cell.porosity * saturated.density);
    const F u = w * half_inverse;
    const F positive = ln::larger(u, F{});
    const Mask wet = u >= 1.0f;
    const F slope = ln::select<F>(wet, F{}, 2.0f - 2.0f * positive);
    const F a = ln::select<F>(wet, ln::splat<F>(1), 2.0f * u - positive * positive);
    const F a_w = slope * half_inverse;
    const F a_t = -2.0f * a_w * u * cell.porosity * saturated.density_t;
    const F y = a * y_s;
    const F y_t = a_t * y_s + a * y_s_t;
    const F y_w = a_w * y_s;
    const F dry = 1.0f - ln::smaller(y, ln::splat<F>(k_lane_highest_fraction));
    const F per_dry = 1.0f / dry;
    const F over = ln::larger(F{}, y - k_lane_highest_fraction) * per_dry;
    point.lambda = over - ln::log(dry);
    point.lambda_t = y_t * per_dry;
    point.lambda_w = y_w * per_dry;
    point.x = k_lane_mass_ratio * (y + over) * per_dry;
    point.x_t = k_lane_mass_ratio * point.lambda_t * per_dry;
    point.x_w = k_lane_mass_ratio * point.lambda_w * per_dry;
    const F pore_density = cell.porosity * saturated.density;
    cell.e += pore_density * a * h_fg;
    cell.e_t += pore_density * (a_t * h_fg + a * h_fg_t) + cell.porosity * saturated.density_t * a * h_fg;
    cell.e_w += pore_density * a_w * h_fg;
  }

  LaneFlux<F> face(int i, const LanePoint<F>& above, const LanePoint<F>& below) const {
    const LaneCell<F>& cell = cells_[i];
    LaneFlux<F> out{};
    const F g_c = cell.heat_conductance;
    out.f = g_c * (above.temperature - below.temperature);
    out.f_ti = g_c;
    out.f_tj = -g_c;
    if (permeable(i) && permeable(i + 1)) {
      const F g = cell.vapour_conductance;
      const F j = g * (above.lambda - below.lambda);
      const Mask downwards = j >= 0.0f;
      const F h = ln::select<F>(downwards, above.h_v, below.h_v);
      out.j = j;
      out.j_ti = g * above.lambda_t;
      out.j_wi = g * above.lambda_w;
      out.j_tj = -g * below.lambda_t;
      out.j_wj = -g * below.lambda_w;
      out.f += j * h;
      out.f_ti += out.j_ti * h + ln::select<F>(downwards, j * above.h_v_t, F{});
      out.f_wi = out.j_wi * h;
      out.f_tj += out.j_tj * h + ln::select<F>(downwards, F{}, j * below.h_v_t);
      out.f_wj = out.j_wj * h;
    }
    if (steam_ && i + 1 < run_end_) add_forced(out, above);
    return out;
  }

  void add_forced(LaneFlux<F>& out, const LanePoint<F>& above) const {
    out.j += forced_ * above.x;
    out.j_ti += forced_ * above.x_t;
    out.j_wi += forced_ * above.x_w;
    out.f += forced_ * above.x * above.h_v;
    out.f_ti += forced_ * (above.x_t * above.h_v + above.x * above.h_v_t);
    out.f_wi += forced_ * above.x_w * above.h_v;
  }

  LaneFlux<F> surface_flux(const LanePoint<F>& top) const {
    LaneFlux<F> out{};
    if (steam_) {
      const F wanted = film_ * (dew_ - top.temperature);
      const Mask capped = wanted > cap_;
      const F q = ln::select<F>(capped, cap_, wanted);
      const F q_t = ln::select<F>(capped, F{}, -film_);
      const F per_heat = 1.0f / (dew_h_v_ - k_lane_water * top.temperature);
      const F condensing = q * per_heat;
      out.j = condensing + forced_ * dew_x_;
      out.j_tj = q_t * per_heat + condensing * k_lane_water * per_heat;
      out.f = out.j * dew_h_v_;
      out.f_tj = out.j_tj * dew_h_v_;
    } else {
      const F beta = static_cast<float>(k_evaporation_per_film) * film_;
      out.j = beta * (room_lambda_ - top.lambda);
      out.j_tj = -beta * top.lambda_t;
      out.j_wj = -beta * top.lambda_w;
      const Mask drying = out.j <= 0.0f;
      const F h = ln::select<F>(drying, top.h_v, room_h_v_);
      out.f = film_ * (room_ - top.temperature) + out.j * h;
      out.f_tj = out.j_tj * h - film_ + ln::select<F>(drying, out.j * top.h_v_t, F{});
      out.f_wj = out.j_wj * h;
    }
    return out;
  }

  // One implicit stage, the first (of cells just evaluated) or the second of a step.
  template <bool first>
  void stage(F weight) {
    const int n = shape_.cells;
    if (!first) evaluate(0, points_[0]);
    LaneFlux<F> in = surface_flux(points_[0]);
    for (int i = 0; i < n; ++i) {
      LaneCell<F>& cell = cells_[i];
      const LanePoint<F>& here = points_[i];
      LaneFlux<F> to_next{};
      if (i + 1 < n) {
        if (!first) evaluate(i + 1, points_[i + 1]);
        to_next = face(i, here, points_[i + 1]);
      }
      LaneFlux<F> out = to_next;
      if (steam_ && i + 1 == run_end_)
        add_forced(out, here);  // leaves the stack; the next cell gets none of it
      const F r = weight * cell.inverse_thickness;
      F m_tt = cell.e_t - r * (in.f_tj - out.f_ti);
      F b_t = cell.energy - cell.e + r * (in.f - out.f);
      if (!first) b_t += k_lane_history * cell.energy_increment;
      F l_tt = -r * in.f_ti, l_tw = -r * in.f_wi;
      if (!has_water(i)) {
        if (i > 0) {
          const LaneCell<F>& above = cells_[i - 1];
          m_tt -= l_tt * above.u_tt + l_tw * above.u_wt;
          b_t -= l_tt * above.d_t + l_tw * above.d_w;
        }
        const F inverse = 1.0f / m_tt;
        cell.u_tt = r * out.f_tj * inverse;
        cell.d_t = b_t * inverse;
        cell.u_tw = cell.u_wt = cell.u_ww = cell.d_w = F{};
      } else {
        F m_tw = cell.e_w - r * (in.f_wj - out.f_wi);
        F m_wt = -r * (in.j_tj - out.j_ti);
        F m_ww = 1.0f - r * (in.j_wj - out.j_wi);
        F b_w = r * (in.j - out.j);
        if (!first) b_w += k_lane_history * cell.water_increment;
        const F c_tt = r * out.f_tj, c_tw = r * out.f_wj, c_wt = r * out.j_tj, c_ww = r * out.j_wj;
        if (i > 0) {
          const F l_wt = -r * in.j_ti, l_ww = -r * in.j_wi;
          const LaneCell<F>& above = cells_[i - 1];
          m_tt -= l_tt * above.u_tt + l_tw * above.u_wt;
          m_tw -= l_tt * above.u_tw + l_tw * above.u_ww;
          m_wt -= l_wt * above.u_tt + l_ww * above.u_wt;
          m_ww -= l_wt * above.u_tw + l_ww * above.u_ww;
          b_t -= l_tt * above.d_t + l_tw * above.d_w;
          b_w -= l_wt * above.d_t + l_ww * above.d_w;
        }
        const F inverse = 1.0f / (m_tt * m_ww - m_tw * m_wt);
        const F i_tt = m_ww * inverse, i_tw = m_tw * inverse, i_wt = m_wt * inverse, i_ww = m_tt * inverse;
        cell.u_tt = i_tt * c_tt - i_tw * c_wt;
        cell.u_tw = i_tt * c_tw - i_tw * c_ww;
        cell.u_wt = i_ww * c_wt - i_wt * c_tt;
        cell.u_ww = i_ww * c_ww - i_wt * c_tw;
        cell.d_t = i_tt * b_t - i_tw * b_w;
        cell.d_w = i_ww * b_w - i_wt * b_t;
      }
      in = to_next;
    }
    F below_t = F{}, below_w = F{};
    for (int i = n - 1; i >= 0; --i) {
      LaneCell<F>& cell = cells_[i];
      const F dt = cell.d_t - cell.u_tt * below_t - cell.u_tw * below_w;
      const F dw = cell.d_w - cell.u_wt * below_t - cell.u_ww * below_w;
      const F moved = cell.e + cell.e_t * dt + cell.e_w * dw;
      cell.energy_increment = moved - cell.energy;
      cell.water_increment = dw;
      cell.energy = moved;
      cell.temperature += dt;
      cell.water += dw;
      below_t = dt;
      below_w = dw;
    }
  }

  // ---- what the places lived through ----

  struct Moment {
    F step, target, surface;
    Mask going;
    int phase;
  };

  // The cubic of one step, from slopes of the parabolas through neighbouring moments of the same phase.
  struct Cubic {
    F start, linear, square, cube, end;
    F at(float u) const { return start + u * (linear + u * (square + u * cube)); }
  };

  Cubic cubic(F Moment::* place, int from, int first, int last) const {
    const auto value = [&](int k) { return moments_[k].*place; };
    const F h = moments_[from + 1].step;
    const F rise = value(from + 1) - value(from);
    // Slopes times h at both ends. A lane whose air phase ends here has no later neighbour.
    F s0 = rise, s1 = rise;
    const bool has_before = from > first, has_after = from + 1 < last;
    if (has_before) {
      const F before = moments_[from].step;
      const F secant = (value(from) - value(from - 1)) * (h / before);
      s0 = secant + (rise - secant) * (before / (before + h));
      s1 = rise + (rise - secant) * (h / (before + h));
    }
    if (has_after) {
      const F after = moments_[from + 2].step;
      const F secant = (value(from + 2) - value(from + 1)) * (h / after);
      const F bend = (secant - rise) * (h / (h + after));
      s1 = ln::select<F>(moments_[from + 2].going, rise + bend, s1);
      if (!has_before) s0 = ln::select<F>(moments_[from + 2].going, rise - bend, s0);
    }
    if (from == first)
      s0 = ln::larger(ln::smaller(s0, ln::larger(F{}, 3.0f * rise)), ln::smaller(F{}, 3.0f * rise));
    return {value(from), s0, 3.0f * rise - 2.0f * s0 - s1, s0 + s1 - 2.0f * rise, value(from + 1)};
  }

  void sum_up(PackOutput& output) const {
    const PackDose& dose = input_.dose;
    const F limit = load(input_.surface_limit);
    const F probe_lag = load(input_.probe_lag);
    F bodies[k_pack_bodies], rates[k_pack_bodies][2], sums[k_pack_bodies][2];
    for (int b = 0; b < k_pack_bodies; ++b) {
      bodies[b] = moments_[0].target;
      for (int z = 0; z < 2; ++z) {
        rates[b][z] = rate(bodies[b], z);
        sums[b][z] = F{};
      }
    }
    F probe = moments_[0].target, probe_peak = probe, target_peak = probe;
    F surface_peak = moments_[0].surface, seconds_above = F{};
    for (int first = 0, last = 0; first + 1 < steps_; first = last) {
      last = first + 1;
      while (last + 1 < steps_ && moments_[last + 1].phase == moments_[first + 1].phase) ++last;
      const PackSteps& phase = input_.phases[static_cast<std::size_t>(moments_[first + 1].phase)];
      const int pieces = phase.pieces;
      const float per_piece = 1.0f / static_cast<float>(pieces);
      for (int from = first; from < last; ++from) {
        const Mask going = moments_[from + 1].going;
        const F h = moments_[from + 1].step * per_piece;
        const Cubic target = cubic(&Moment::target, from, first, last);
        const Cubic surface = cubic(&Moment::surface, from, first, last);
        F half_fade[k_pack_bodies];
        for (int b = 0; b < k_pack_bodies; ++b)
          half_fade[b] =
              ln::exp2(h * (-0.5f * k_lane_log2_e / dose.lag_seconds[static_cast<std::size_t>(b)]));
        const F probe_fade = ln::exp2(-k_lane_log2_e * h / ln::larger(probe_lag, ln::splat<F>(1e-3f)));
        F a = target.start, skin = surface.start;
        for (int k = 1; k <= pieces; ++k) {
          const F c = k == pieces ? target.end : target.at(per_piece * static_cast<float>(k));
          const F skin_next = k == pieces ? surface.end : surface.at(per_piece * static_cast<float>(k));
          const F rise = c - a;
          target_peak = ln::select<F>(going, ln::larger(target_peak, c), target_peak);
          probe = c + lagged(rise, h, probe_lag, probe - a, probe_fade);
          probe_peak = ln::select<F>(going, ln::larger(probe_peak, probe), probe_peak);
          if (phase.watched)
            surface_peak = ln::select<F>(going, ln::larger(surface_peak, skin_next), surface_peak);
          seconds_above += ln::select<F>(going, time_above(skin - limit, skin_next - limit, h), F{});
          for (int b = 0; b < k_pack_bodies; ++b) {
            const F lag = ln::splat<F>(dose.lag_seconds[static_cast<std::size_t>(b)]);
            const F offset = bodies[b] - a;
            const F middle = a + 0.5f * rise + lagged(0.5f * rise, 0.5f * h, lag, offset, half_fade[b]);
            const F end = c + lagged(rise, h, lag, offset, half_fade[b] * half_fade[b]);
            const F hottest = ln::larger(bodies[b], ln::larger(middle, end));
            bodies[b] = end;
            if (!any(hottest >= dose.onset_celsius)) {
              rates[b][0] = rates[b][1] = F{};
              continue;
            }
            for (int z = 0; z < 2; ++z) {
              const F later = rate(end, z);
              const F sum = (h * (1.0f / 6.0f)) * (rates[b][z] + 4.0f * rate(middle, z) + later);
              sums[b][z] += ln::select<F>(going, sum, F{});
              rates[b][z] = later;
            }
          }
          a = c;
          skin = skin_next;
        }
      }
    }
    for (int b = 0; b < k_pack_bodies; ++b)
      for (int z = 0; z < 2; ++z)
        write(output.cap_seconds[static_cast<std::size_t>(b)][static_cast<std::size_t>(z)], sums[b][z]);
    write(output.target_peak, target_peak);
    write(output.probe_peak, probe_peak);
    write(output.surface_peak, surface_peak);
    write(output.surface_seconds_above, seconds_above);
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
    const PackDose& dose = input_.dose;
    const F below_cap = ln::smaller(celsius, ln::splat<F>(dose.cap_celsius)) - dose.cap_celsius;
    const F value = ln::exp2(below_cap * (3.32192809f * dose.inverse_z[static_cast<std::size_t>(z)]));
    return ln::select<F>(celsius >= dose.onset_celsius, value, F{});
  }

  const PackShape& shape_;
  const PackInput& input_;
  int first_ = 0;  // lane of the pack that is lane 0 here
  bool steam_ = false;
  int run_end_ = 0;
  int steps_ = 0;
  F pressure_, per_pascal_, target_share_, lowest_, highest_allowed_;
  F factor_, dew_, dew_fraction_, dew_x_, dew_h_v_, film_, cap_, forced_, room_, room_lambda_, room_h_v_;
  Mask faulty_, cut_, going_;  // lanes in which a fault was seen, a step was cut, the air phase has not ended
  LaneCell<F> cells_[k_most_pack_cells];
  LanePoint<F> points_[k_most_pack_cells];
  LaneState<F> before_[k_most_pack_halvings + 1][k_most_pack_cells],
      after_[k_most_pack_halvings][k_most_pack_cells];
  F start_water_[k_most_pack_cells];
  Moment moments_[k_most_pack_steps];
};

template <int Width>
void run_lanes(const PackShape& shape, const PackInput& input, int passes, PackOutput& output) {
  const auto march = std::make_unique<LaneMarch<Width>>(shape, input);
  for (int first = 0; first < passes; first += Width) march->run(first, output);
}

}  // namespace
}  // namespace lastegg::steam
