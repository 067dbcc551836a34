// The cells of one pass per lane: the equations and the implicit step of march.cpp in single precision.
// Included once per vector width (lane_kernel_*.cpp), each compiled for its instructions; so nothing here may
// be shared between translation units.
//
// Differences to march.cpp: energy and water move by the linearised row, E = e + e_t dT + e_w dW, which
// equals the fluxes' sum up to the rounding of the solve.
#pragma once

#include <utility>

#include "physics/numerics/lanes.h"
#include "treatments/steam/lanes/lane_pack.h"
#include "treatments/steam/pass/constants.h"

namespace lastegg::steam {
namespace {

namespace ln = numerics::lanes;

constexpr float k_lane_gamma = 0.29289321881345254f;
constexpr float k_lane_history = static_cast<float>((1 - 2 * 0.29289321881345254) / 0.29289321881345254);
constexpr float k_lane_water = static_cast<float>(k_liquid_heat_capacity);
constexpr float k_lane_mass_ratio = static_cast<float>(k_mass_ratio);
constexpr float k_lane_vapour_gas = static_cast<float>(k_gas_constant / k_water_molar_mass);
constexpr float k_lane_highest_fraction = 0.9995f;
constexpr float k_lane_lowest_water = -0.46e-3f;
constexpr float k_lane_below_start = 8;

/// What a cell is made of.
template <class F>
struct LaneCell {
  F inverse_thickness, capacity, porosity, sorption;
  F heat_conductance, vapour_conductance;  // of the face below
  F start_water;
};

/// What a cell holds, and what follows from it: energy e(T, W) and its slopes, and what neighbours need.
template <class F>
struct LaneState {
  F energy, water, temperature;
  F e, e_t, e_w;
  F lambda, lambda_t, lambda_w, x, x_t, x_w, h_v, h_v_t;
};

/// What the elimination leaves in a cell for the way back, and how the first stage moved it.
template <class F>
struct LaneRow {
  F u_tt, u_tw, u_wt, u_ww, d_t, d_w;
  F energy_increment, water_increment;
};

/// What a pass has of its own besides its cells.
template <class F>
struct LaneSetting {
  F per_pascal, target_share, lowest, highest_allowed;
  F dew, dew_x, dew_h_v, steam_film, flux_cap, skirt_factor, forced_gas;
  F room, room_lambda, room_h_v, air_film;
  // Of the phase it is in.
  ln::Mask<F> steam;
  F film, cap, forced;
};

// Fluxes through a face and their derivatives to the cell above (i) and below (j).
template <class F>
struct LaneFlux {
  F j, j_ti, j_wi, j_tj, j_wj, f, f_ti, f_wi, f_tj, f_wj;
};

template <class F>
struct LaneVapour {
  F density, density_t;
};

/// Density of saturated vapour in kg/m3 and its slope: the fourth power of a polynomial.
/// Source:  coefficients from tools/fit_lane_functions.py
template <class F>
LASTEGG_LANE_FUNCTION LaneVapour<F> lane_saturated_vapour(F celsius) {
  static constexpr float c[] = {0.490422206f,     0.437235984f,   0.0762484777f,    -0.0185211814f,
                                -0.000640583803f, 0.00127047826f, -0.000160297666f, -5.91925993e-05f};
  static constexpr float slope[] = {c[1], 2 * c[2], 3 * c[3], 4 * c[4], 5 * c[5], 6 * c[6], 7 * c[7]};
  const ln::Powers<F> s = ln::powers((celsius - 42.5f) * (1.0f / 72.5f));
  const F root = ln::polynomial<8>(c, s);
  const F square = root * root;
  return {square * square, square * root * ln::polynomial<7>(slope, s) * (4.0f / 72.5f)};
}

template <class F>
LASTEGG_LANE_FUNCTION F lane_vapour_enthalpy(F t) {
  return (2500.9e3f - 2365.5f * t - 0.89f * t * t) + k_lane_water * t;
}

/// Copies one lane of a struct that is made of F alone.
template <class F, class S>
void copy_lane(S& to, int to_lane, const S& from, int from_lane) {
  static_assert(sizeof(S) % sizeof(F) == 0);
  for (std::size_t k = 0; k < sizeof(S); k += sizeof(F))
    __builtin_memcpy(reinterpret_cast<char*>(&to) + k + 4 * to_lane,
                     reinterpret_cast<const char*>(&from) + k + 4 * from_lane, 4);
}

/// Copies the lanes of a mask.
template <class F, class S>
void copy_lanes(S& to, ln::Mask<F> lanes, const S& from) {
  static_assert(sizeof(S) % sizeof(F) == 0);
  for (std::size_t k = 0; k < sizeof(S); k += sizeof(F)) {
    F a, b;
    __builtin_memcpy(&a, reinterpret_cast<const char*>(&from) + k, sizeof(F));
    __builtin_memcpy(&b, reinterpret_cast<const char*>(&to) + k, sizeof(F));
    b = ln::select<F>(lanes, a, b);
    __builtin_memcpy(reinterpret_cast<char*>(&to) + k, &b, sizeof(F));
  }
}

template <int Width>
class LaneCells {
 public:
  using F = typename numerics::Lanes<Width>::Floats;
  using Mask = ln::Mask<F>;

  LaneCells(const PackShape& shape, float largest_mismatch_kelvin)
      : shape_(shape), largest_mismatch_kelvin_(largest_mismatch_kelvin) {
    while (run_end_ < shape_.cells && permeable(run_end_)) ++run_end_;
  }

  /// Lays out the passes `first`, `first` + 1 ... of a pack at their start.
  void start(const PackInput& input, int first) {
    const auto load = [first](const Pack& pack) {
      F out;
      __builtin_memcpy(&out, pack.data() + first, sizeof(F));
      return out;
    };
    set(input, load);
    const F start = load(input.start);
    const F phi = load(input.vapour_efficiency) * static_cast<float>(k_vapour_transport);
    const F start_u = 1.0f - root(1.0f - load(input.start_activity));
    const F rho_s = lane_saturated_vapour(start).density;
    // Half resistances of the cell above, carried on to its lower face.
    F heat_above = F{}, vapour_above = F{}, per_conductivity_above = F{};
    for (int i = 0; i < shape_.cells; ++i) {
      const PackLayer& layer =
          input.layers[static_cast<std::size_t>(shape_.layer_of_cell[static_cast<std::size_t>(i)])];
      LaneCell<F>& cell = cells_[i];
      const F thickness = load(layer.thickness) * shape_.share_of_layer[static_cast<std::size_t>(i)];
      const F per_conductivity = 1.0f / load(layer.conductivity);
      cell.inverse_thickness = 1.0f / thickness;
      cell.capacity = load(layer.capacity);
      cell.porosity = permeable(i) ? load(layer.porosity) : F{};
      cell.sorption =
          permeable(i) ? load(layer.sorption) : ln::splat<F>(static_cast<float>(k_film_sorption_scale));
      cell.heat_conductance = cell.vapour_conductance = F{};
      const F up = i == 0 ? F{} : on_interface(i) ? thickness : 0.5f * thickness;
      const F down = i == 0 ? thickness : on_interface(i) ? F{} : 0.5f * thickness;
      const F per_openness = permeable(i) ? 1.0f / load(layer.openness) : F{};
      if (i > 0) {
        LaneCell<F>& above = cells_[i - 1];
        above.heat_conductance = 1.0f / (heat_above + up * per_conductivity);
        if (permeable(i - 1) && permeable(i))
          above.vapour_conductance = phi / (vapour_above + up * per_openness);
        if (i == shape_.target_cell) {
          const F offset = load(input.target_offset);
          const F beyond = offset * ln::select<F>(offset > 0.0f, per_conductivity, per_conductivity_above);
          setting_.target_share = ln::larger(F{}, heat_above + beyond) * above.heat_conductance;
        }
      }
      heat_above = down * per_conductivity;
      per_conductivity_above = per_conductivity;
      vapour_above = down * per_openness;
      LaneState<F>& state = (*now_)[i];
      state.temperature = start;
      state.water = permeable(i) ? 2.0f * (cell.sorption + cell.porosity * rho_s) * start_u : F{};
      cell.start_water = state.water;
      evaluate(i, state);
      state.energy = state.e;
    }
  }

  /// Takes over one lane, or all of them, from cells that were laid out by start().
  void take(int lane, const LaneCells& fresh, int fresh_lane) {
    copy_lane<F>(setting_, lane, fresh.setting_, fresh_lane);
    for (int i = 0; i < shape_.cells; ++i) {
      copy_lane<F>(cells_[i], lane, fresh.cells_[i], fresh_lane);
      copy_lane<F>((*now_)[i], lane, (*fresh.now_)[i], fresh_lane);
    }
  }
  void take(const LaneCells& fresh) {
    setting_ = fresh.setting_;
    for (int i = 0; i < shape_.cells; ++i) {
      cells_[i] = fresh.cells_[i];
      (*now_)[i] = (*fresh.now_)[i];
    }
  }

  void begin(int lane, PackPhase phase) {
    LaneSetting<F>& s = setting_;
    const bool steam = phase == PackPhase::skirt || phase == PackPhase::cover;
    const float factor = phase == PackPhase::cover ? 1 : s.skirt_factor[lane];
    s.steam[lane] = steam ? -1 : 0;
    s.film[lane] = steam ? s.steam_film[lane] * factor : s.air_film[lane];
    s.cap[lane] = s.flux_cap[lane] * factor;
    s.forced[lane] = steam ? s.forced_gas[lane] * factor : 0;
  }

  /// Tries a step of so many seconds in each lane; says in which it was too long for a linearisation.
  Mask advance(F seconds) {
    stage<true>(k_lane_gamma * seconds);
    stage<false>(k_lane_gamma * seconds);
    Mask faulty{};
    for (int i = 0; i < shape_.cells; ++i) {
      LaneState<F>& state = (*next_)[i];
      evaluate(i, state);
      const Mask fine = (state.temperature >= setting_.lowest - k_lane_below_start) &
                        (state.temperature <= setting_.highest_allowed) &
                        (state.water >= k_lane_lowest_water * cells_[i].inverse_thickness) &
                        (state.water <= 1e9f) &
                        (ln::absolute(state.energy - state.e) <= largest_mismatch_kelvin_ * state.e_t);
      faulty |= ~fine;
    }
    return faulty;
  }

  /// Ends a step: the lanes of `back` stay as they were before it.
  void settle(Mask back) {
    if (ln::any_of<Width>(back))
      for (int i = 0; i < shape_.cells; ++i) copy_lanes<F>((*next_)[i], back, (*now_)[i]);
    std::swap(now_, next_);
  }

  F target() const {
    const int t = shape_.target_cell;
    const F above = (*now_)[t > 0 ? t - 1 : 0].temperature;
    const F below = (*now_)[t < shape_.cells ? t : shape_.cells - 1].temperature;
    return t > 0 && t < shape_.cells ? above + setting_.target_share * (below - above) : below;
  }
  F surface() const { return (*now_)[0].temperature; }
  F hottest() const {
    F out = (*now_)[0].temperature;
    for (int i = 1; i < shape_.cells; ++i) out = ln::larger(out, (*now_)[i].temperature);
    return out;
  }
  F water_gain() const {
    F sum = F{};
    for (int i = 0; i < shape_.cells; ++i)
      sum += ((*now_)[i].water - cells_[i].start_water) / cells_[i].inverse_thickness;
    return sum;
  }

 private:
  bool permeable(int cell) const {
    return shape_.permeable[static_cast<std::size_t>(shape_.layer_of_cell[static_cast<std::size_t>(cell)])];
  }
  bool has_water(int cell) const { return cell == 0 || permeable(cell); }
  bool on_interface(int cell) const {
    return cell > 0 && cell + 1 < shape_.cells && permeable(cell) && !permeable(cell + 1);
  }

  static F root(F x) {
    F out;
    for (int lane = 0; lane < Width; ++lane) out[lane] = __builtin_sqrtf(x[lane]);
    return out;
  }

  template <class Load>
  void set(const PackInput& input, const Load& load) {
    LaneSetting<F>& s = setting_;
    const F pressure = load(input.pressure);
    s = LaneSetting<F>{};
    s.per_pascal = 1.0f / pressure;
    s.lowest = ln::smaller(load(input.start), load(input.air_celsius));
    s.highest_allowed = load(input.highest_allowed);
    s.dew = load(input.dew);
    const F dew_kelvin = s.dew + static_cast<float>(k_zero_celsius_in_kelvin);
    const F dew_fraction =
        lane_saturated_vapour(s.dew).density * dew_kelvin * k_lane_vapour_gas * s.per_pascal;
    s.dew_x = k_lane_mass_ratio * dew_fraction / (1.0f - dew_fraction);
    s.dew_h_v = lane_vapour_enthalpy(s.dew);
    s.steam_film = load(input.film);
    s.flux_cap = load(input.flux_cap);
    s.skirt_factor = load(input.skirt_factor);
    if (run_end_ > 0) {
      s.forced_gas = (1.0f - dew_fraction) * pressure *
                     static_cast<float>(k_air_molar_mass / k_gas_constant) / dew_kelvin *
                     load(input.forced_gas);
    }
    s.room = load(input.air_celsius);
    const F room_kelvin = s.room + static_cast<float>(k_zero_celsius_in_kelvin);
    const F y = load(input.air_humidity) * lane_saturated_vapour(s.room).density * room_kelvin *
                k_lane_vapour_gas * s.per_pascal;
    s.room_lambda = -ln::log(1.0f - y);
    s.room_h_v = lane_vapour_enthalpy(s.room);
    s.air_film = load(input.air_film);
  }

  __attribute__((always_inline)) void evaluate(int i, LaneState<F>& point) const {
    const LaneCell<F>& cell = cells_[i];
    const F t = point.temperature;
    const F w = point.water;
    point.e_t = cell.capacity + k_lane_water * w;
    point.e_w = k_lane_water * t;
    point.e = point.e_t * t;
    if (!has_water(i)) return;  // nothing else of the point is read
    const F h_fg = 2500.9e3f - 2365.5f * t - 0.89f * t * t;
    const F h_fg_t = -2365.5f - 1.78f * t;
    point.h_v = h_fg + point.e_w;
    point.h_v_t = h_fg_t + k_lane_water;
    const LaneVapour<F> saturated = lane_saturated_vapour(t);
    // y_s = psat / p with psat = rho R T / M
    const F per_density =
        (t + static_cast<float>(k_zero_celsius_in_kelvin)) * (k_lane_vapour_gas * setting_.per_pascal);
    const F y_s = saturated.density * per_density;
    const F y_s_t =
        saturated.density_t * per_density + saturated.density * (k_lane_vapour_gas * setting_.per_pascal);
    const F pore_density = cell.porosity * saturated.density;
    const F pore_density_t = cell.porosity * saturated.density_t;
    const F half_inverse = 0.5f / (cell.sorption + pore_density);
    // Activity: 2u - u^2 up to u = 1, where all is wet; 2u below nothing.
    const F u = ln::smaller(w * half_inverse, ln::splat<F>(1));
    const F positive = ln::larger(u, F{});
    const F a = 2.0f * u - positive * positive;
    const F a_w = (2.0f - 2.0f * positive) * half_inverse;
    const F a_t = -2.0f * (a_w * u) * pore_density_t;
    const F y = a * y_s;
    const F y_t = a_t * y_s + a * y_s_t;
    const F y_w = a_w * y_s;
    const F dry = 1.0f - ln::smaller(y, ln::splat<F>(k_lane_highest_fraction));
    const F per_dry = 1.0f / dry;
    const F over = ln::larger(F{}, y - k_lane_highest_fraction) * per_dry;
    point.lambda = over - ln::log(dry);
    point.lambda_t = y_t * per_dry;
    point.lambda_w = y_w * per_dry;
    const F x_slope = k_lane_mass_ratio * per_dry;
    point.x = x_slope * (y + over);
    point.x_t = x_slope * point.lambda_t;
    point.x_w = x_slope * point.lambda_w;
    const F latent = pore_density * h_fg;
    point.e += latent * a;
    point.e_t += latent * a_t + (pore_density * h_fg_t + pore_density_t * h_fg) * a;
    point.e_w += latent * a_w;
  }

  LaneFlux<F> face(int i, const LaneState<F>& above, const LaneState<F>& below) const {
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
    if (i + 1 < run_end_) add_forced(out, above);
    return out;
  }

  void add_forced(LaneFlux<F>& out, const LaneState<F>& above) const {
    const F j = setting_.forced * above.x;
    const F j_t = setting_.forced * above.x_t;
    const F j_w = setting_.forced * above.x_w;
    out.j += j;
    out.j_ti += j_t;
    out.j_wi += j_w;
    out.f += j * above.h_v;
    out.f_ti += j_t * above.h_v + j * above.h_v_t;
    out.f_wi += j_w * above.h_v;
  }

  // Through the upper face of the first cell: from the head or from the room.
  LaneFlux<F> surface_flux(const LaneState<F>& top) const {
    const LaneSetting<F>& s = setting_;
    const F wanted = s.film * (s.dew - top.temperature);
    const Mask capped = wanted > s.cap;
    const F q = ln::select<F>(capped, s.cap, wanted);
    const F q_t = ln::select<F>(capped, F{}, -s.film);
    const F per_heat = 1.0f / (s.dew_h_v - k_lane_water * top.temperature);
    const F condensing = q * per_heat;
    LaneFlux<F> steam{};
    steam.j = condensing + s.forced * s.dew_x;
    steam.j_tj = q_t * per_heat + condensing * k_lane_water * per_heat;
    steam.f = steam.j * s.dew_h_v;
    steam.f_tj = steam.j_tj * s.dew_h_v;

    const F beta = static_cast<float>(k_evaporation_per_film) * s.film;
    LaneFlux<F> out{};
    out.j = beta * (s.room_lambda - top.lambda);
    out.j_tj = -beta * top.lambda_t;
    out.j_wj = -beta * top.lambda_w;
    const Mask drying = out.j <= 0.0f;
    const F h = ln::select<F>(drying, top.h_v, s.room_h_v);
    out.f = s.film * (s.room - top.temperature) + out.j * h;
    out.f_tj = out.j_tj * h - s.film + ln::select<F>(drying, out.j * top.h_v_t, F{});
    out.f_wj = out.j_wj * h;
    copy_lanes<F>(out, s.steam, steam);
    return out;
  }

  // One implicit stage: the first of a step, from cells that are evaluated, or the second.
  template <bool first>
  void stage(F weight) {
    const int n = shape_.cells;
    LaneState<F>* const from = first ? *now_ : *next_;
    if (!first) evaluate(0, from[0]);
    LaneFlux<F> in = surface_flux(from[0]);
    for (int i = 0; i < n; ++i) {
      const LaneState<F>& here = from[i];
      LaneRow<F>& row = rows_[i];
      LaneFlux<F> to_next{};
      if (i + 1 < n) {
        if (!first) evaluate(i + 1, from[i + 1]);
        to_next = face(i, here, from[i + 1]);
      }
      LaneFlux<F> out = to_next;
      if (i + 1 == run_end_) add_forced(out, here);  // leaves the stack; the next cell gets none of it
      const F r = weight * cells_[i].inverse_thickness;
      F m_tt = here.e_t - r * (in.f_tj - out.f_ti);
      F b_t = here.energy - here.e + r * (in.f - out.f);
      if (!first) b_t += k_lane_history * row.energy_increment;
      F l_tt = -r * in.f_ti, l_tw = -r * in.f_wi;
      if (!has_water(i)) {
        if (i > 0) {
          const LaneRow<F>& above = rows_[i - 1];
          m_tt -= l_tt * above.u_tt + l_tw * above.u_wt;
          b_t -= l_tt * above.d_t + l_tw * above.d_w;
        }
        const F inverse = 1.0f / m_tt;
        row.u_tt = r * out.f_tj * inverse;
        row.d_t = b_t * inverse;
        row.u_tw = row.u_wt = row.u_ww = row.d_w = F{};
      } else {
        F m_tw = here.e_w - r * (in.f_wj - out.f_wi);
        F m_wt = -r * (in.j_tj - out.j_ti);
        F m_ww = 1.0f - r * (in.j_wj - out.j_wi);
        F b_w = r * (in.j - out.j);
        if (!first) b_w += k_lane_history * row.water_increment;
        const F c_tt = r * out.f_tj, c_tw = r * out.f_wj, c_wt = r * out.j_tj, c_ww = r * out.j_wj;
        if (i > 0) {
          const F l_wt = -r * in.j_ti, l_ww = -r * in.j_wi;
          const LaneRow<F>& above = rows_[i - 1];
          m_tt -= l_tt * above.u_tt + l_tw * above.u_wt;
          m_tw -= l_tt * above.u_tw + l_tw * above.u_ww;
          m_wt -= l_wt * above.u_tt + l_ww * above.u_wt;
          m_ww -= l_wt * above.u_tw + l_ww * above.u_ww;
          b_t -= l_tt * above.d_t + l_tw * above.d_w;
          b_w -= l_wt * above.d_t + l_ww * above.d_w;
        }
        const F inverse = 1.0f / (m_tt * m_ww - m_tw * m_wt);
        const F i_tt = m_ww * inverse, i_tw = m_tw * inverse, i_wt = m_wt * inverse, i_ww = m_tt * inverse;
        row.u_tt = i_tt * c_tt - i_tw * c_wt;
        row.u_tw = i_tt * c_tw - i_tw * c_ww;
        row.u_wt = i_ww * c_wt - i_wt * c_tt;
        row.u_ww = i_ww * c_ww - i_wt * c_tw;
        row.d_t = i_tt * b_t - i_tw * b_w;
        row.d_w = i_ww * b_w - i_wt * b_t;
      }
      in = to_next;
    }
    LaneState<F>* const to = *next_;
    F below_t = F{}, below_w = F{};
    for (int i = n - 1; i >= 0; --i) {
      LaneRow<F>& row = rows_[i];
      const LaneState<F>& here = from[i];
      const F dt = row.d_t - row.u_tt * below_t - row.u_tw * below_w;
      const F dw = row.d_w - row.u_wt * below_t - row.u_ww * below_w;
      const F moved = here.e + here.e_t * dt + here.e_w * dw;
      row.energy_increment = moved - here.energy;
      row.water_increment = dw;
      to[i].energy = moved;
      to[i].temperature = here.temperature + dt;
      to[i].water = here.water + dw;
      below_t = dt;
      below_w = dw;
    }
  }

  using States = LaneState<F>[k_most_pack_cells];

  const PackShape& shape_;
  float largest_mismatch_kelvin_;
  int run_end_ = 0;  // of the cells from the surface that let vapour through
  LaneSetting<F> setting_;
  LaneCell<F> cells_[k_most_pack_cells];
  LaneRow<F> rows_[k_most_pack_cells];
  States one_, other_;
  States* now_ = &one_;
  States* next_ = &other_;
};

}  // namespace
}  // namespace lastegg::steam
