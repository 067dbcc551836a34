#include "treatments/steam/pass/march.h"

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/water/vapour.h"
#include "treatments/steam/pass/constants.h"

namespace lastegg::steam {
namespace {

constexpr double k_gamma = 0.29289321881345254;  // 1 - 1/sqrt 2
constexpr double k_second_stage_history = (1 - 2 * k_gamma) / k_gamma;

// Beyond this mole fraction of vapour lambda is continued linearly; a run that ends up there is redone.
constexpr double k_highest_vapour_fraction = 0.9995;

// Detector of runs that must be redone with smaller steps (README.md): water below zero per area, and
// temperatures outside what boundary and start allow.
constexpr double k_lowest_water_kilograms_per_m2 = -0.46e-3;
constexpr double k_below_start_kelvin = 8;
constexpr double k_above_dew_kelvin = 15;
constexpr double k_margin_kelvin = 15;
constexpr double k_least_start_activity = 0.3;
constexpr double k_end_of_saturation_fit_celsius =
    120;  // the fit ends at 115 and is still good to a percent here

double hottest_dry_cell(double dew_celsius, double start_activity) {
  const double wanted =
      saturation_fit(dew_celsius).pressure_pascal / std::max(start_activity, k_least_start_activity);
  double celsius = dew_celsius;
  for (int i = 0; i < 6; ++i) {
    const SaturationPoint point = saturation_fit(celsius);
    celsius +=
        numerics::log(wanted / point.pressure_pascal) * point.pressure_pascal / point.slope_pascal_per_kelvin;
    celsius = std::min(celsius, k_end_of_saturation_fit_celsius);
  }
  return celsius;
}

}  // namespace

double highest_allowed_celsius(double dew_celsius, double start_celsius, double room_celsius,
                               double start_activity) {
  return std::max({start_celsius + k_above_dew_kelvin, room_celsius + k_above_dew_kelvin,
                   dew_celsius + k_above_dew_kelvin,
                   hottest_dry_cell(dew_celsius, start_activity) + k_margin_kelvin});
}

March::March(std::span<const Layer> stack, std::span<const GridCell> grid, double vapour_efficiency,
             double pressure_pascal, double start_celsius, double start_activity)
    : pressure_(pressure_pascal),
      start_activity_(start_activity),
      lowest_(start_celsius),
      highest_allowed_(start_celsius + k_above_dew_kelvin) {
  cells_.resize(grid.size());
  faces_.resize(grid.size() - 1);
  for (std::size_t i = 0; i < grid.size(); ++i) {
    const Layer& layer = stack[grid[i].layer];
    Cell& cell = cells_[i];
    cell = Cell{};
    cell.thickness = grid[i].thickness_metres;
    cell.capacity = layer.heat_capacity_joules_per_m3_kelvin;
    cell.conductivity = layer.conductivity_watts_per_metre_kelvin;
    cell.permeable = layer.permeable;
    cell.porosity = layer.permeable ? layer.porosity : 0;
    cell.vapour_openness = layer.permeable ? layer.porosity / layer.tortuosity : 0;
    cell.sorption = layer.permeable ? layer.sorption_scale_kilograms_per_m3 : k_film_sorption_scale;
    cell.has_water = layer.permeable || i == 0;
    cell.up_half = cell.down_half = 0.5 * cell.thickness;
  }
  // The first node lies on the surface, the last of a permeable layer above an impermeable one on their
  // interface.
  cells_[0].up_half = 0;
  cells_[0].down_half = cells_[0].thickness;
  for (std::size_t i = 1; i + 1 < cells_.size(); ++i) {
    if (cells_[i].permeable && !cells_[i + 1].permeable) {
      cells_[i].up_half = cells_[i].thickness;
      cells_[i].down_half = 0;
    }
  }
  while (run_end_ < cells_.size() && cells_[run_end_].permeable) cells_[run_end_++].in_run = true;

  for (std::size_t i = 0; i + 1 < cells_.size(); ++i) {
    const Cell& above = cells_[i];
    const Cell& below = cells_[i + 1];
    faces_[i] = Face{};
    faces_[i].heat_conductance =
        1.0 / (above.down_half / above.conductivity + below.up_half / below.conductivity);
    if (above.permeable && below.permeable) {
      faces_[i].vapour_conductance =
          vapour_efficiency * k_vapour_transport /
          (above.down_half / above.vapour_openness + below.up_half / below.vapour_openness);
    }
  }

  // a = u (2 - u) inverted for the start.
  const double start_u = 1.0 - std::sqrt(1.0 - start_activity);
  for (Cell& cell : cells_) {
    cell.temperature = start_celsius;
    if (cell.permeable) {
      const double scale =
          cell.sorption + cell.porosity * saturated_vapour_density(start_celsius).kilograms_per_m3;
      cell.water = 2.0 * scale * start_u;
    }
    evaluate(cell);
    cell.energy = cell.e;
    start_water_ += cell.water * cell.thickness;
    start_energy_ += cell.energy * cell.thickness;
  }
}

void March::set_boundary(const Boundary& boundary) {
  boundary_ = boundary;
  forced_ = 0;
  if (boundary_.steam) {
    const double dew = boundary_.dew_celsius;
    dew_fraction_ = saturation_fit(dew).pressure_pascal / pressure_;
    dew_x_ = k_mass_ratio * dew_fraction_ / (1.0 - dew_fraction_);
    dew_h_v_ = vapour_enthalpy_fit(dew);
    if (run_end_ > 0) {
      forced_ = (1.0 - dew_fraction_) * pressure_ * k_air_molar_mass /
                (k_gas_constant * (dew + k_zero_celsius_in_kelvin)) * boundary_.forced_gas_metres_per_second *
                boundary_.factor;
    }
    highest_allowed_ =
        std::max(highest_allowed_, highest_allowed_celsius(dew, lowest_, lowest_, start_activity_));
  } else {
    const double room = boundary_.air_celsius;
    const double y = boundary_.air_relative_humidity * saturation_fit(room).pressure_pascal / pressure_;
    room_lambda_ = -numerics::log(1.0 - y);
    room_h_v_ = vapour_enthalpy_fit(room);
    lowest_ = std::min(lowest_, room);
    highest_allowed_ = std::max(highest_allowed_, room + k_above_dew_kelvin);
  }
}

// Everything that depends on the state of one cell: activity, vapour potential lambda, humidity ratio X,
// energy, and their derivatives to temperature (_t) and water (_w).
void March::evaluate(Cell& cell) const {
  const double t = cell.temperature;
  const double w = cell.water;
  const double h_fg = latent_heat_fit(t);
  const double h_fg_t = latent_heat_fit_slope(t);
  cell.h_v = k_liquid_heat_capacity * t + h_fg;
  cell.h_v_t = k_liquid_heat_capacity + h_fg_t;
  cell.e = (cell.capacity + k_liquid_heat_capacity * w) * t;
  cell.e_t = cell.capacity + k_liquid_heat_capacity * w;
  cell.e_w = k_liquid_heat_capacity * t;
  cell.saturated = false;
  if (!cell.has_water) return;

  const SaturationPoint saturation = saturation_fit(t);
  const double kelvin = t + k_zero_celsius_in_kelvin;
  const double molar = k_water_molar_mass / (k_gas_constant * kelvin);
  const double rho_s = saturation.pressure_pascal * molar;
  const double rho_s_t = saturation.slope_pascal_per_kelvin * molar - rho_s / kelvin;
  const double scale = cell.sorption + cell.porosity * rho_s;
  const double half_inverse = 0.5 / scale;
  double u = w * half_inverse;
  double a = 1, a_w = 0, a_t = 0;
  cell.saturated = u >= 1.0;
  if (!cell.saturated) {
    const double slope = 2.0 - 2.0 * std::max(u, 0.0);
    a = 2.0 * u - std::max(u, 0.0) * std::max(u, 0.0);
    a_w = slope * half_inverse;
    a_t = -slope * u * cell.porosity * rho_s_t / scale;
  }
  const double y_s = saturation.pressure_pascal / pressure_;
  const double y = a * y_s;
  const double y_t = a_t * y_s + a * saturation.slope_pascal_per_kelvin / pressure_;
  const double y_w = a_w * y_s;
  const double dry = 1.0 - std::min(y, k_highest_vapour_fraction);
  const double over = std::max(0.0, y - k_highest_vapour_fraction) / dry;
  cell.lambda = -numerics::log(dry) + over;
  cell.lambda_t = y_t / dry;
  cell.lambda_w = y_w / dry;
  cell.x = k_mass_ratio * (y + over) / dry;
  cell.x_t = k_mass_ratio * y_t / (dry * dry);
  cell.x_w = k_mass_ratio * y_w / (dry * dry);

  const double pore = cell.porosity;
  cell.e += pore * a * rho_s * h_fg;
  cell.e_t += pore * (a_t * rho_s * h_fg + a * (rho_s_t * h_fg + rho_s * h_fg_t));
  cell.e_w += pore * a_w * rho_s * h_fg;
}

void March::evaluate_faces() {
  for (std::size_t i = 0; i < faces_.size(); ++i) {
    const Cell& above = cells_[i];
    const Cell& below = cells_[i + 1];
    Face& face = faces_[i];
    const double g = face.vapour_conductance;
    const double g_c = face.heat_conductance;
    face.f = g_c * (above.temperature - below.temperature);
    face.f_ti = g_c;
    face.f_tj = -g_c;
    face.f_wi = face.f_wj = 0;
    face.j = face.j_ti = face.j_wi = face.j_tj = face.j_wj = 0;
    if (g > 0) {
      const double diffusive = g * (above.lambda - below.lambda);
      const bool downwards = diffusive >= 0;
      if (diagnostics_) mark(downwards ? 1 : 2);
      const double h = downwards ? above.h_v : below.h_v;
      face.j = diffusive;
      face.j_ti = g * above.lambda_t;
      face.j_wi = g * above.lambda_w;
      face.j_tj = -g * below.lambda_t;
      face.j_wj = -g * below.lambda_w;
      face.f += diffusive * h;
      face.f_ti += face.j_ti * h + (downwards ? diffusive * above.h_v_t : 0);
      face.f_wi = face.j_wi * h;
      face.f_tj += face.j_tj * h + (downwards ? 0 : diffusive * below.h_v_t);
      face.f_wj = face.j_wj * h;
    }
    if (forced_ > 0 && i + 1 < run_end_) {
      face.j += forced_ * above.x;
      face.j_ti += forced_ * above.x_t;
      face.j_wi += forced_ * above.x_w;
      face.f += forced_ * above.x * above.h_v;
      face.f_ti += forced_ * (above.x_t * above.h_v + above.x * above.h_v_t);
      face.f_wi += forced_ * above.x_w * above.h_v;
    }
  }
}

void March::surface_flux(double& j, double& j_t, double& j_w, double& f, double& f_t, double& f_w) {
  const Cell& top = cells_.front();
  if (boundary_.steam) {
    const double film = boundary_.film_watts_per_m2_kelvin * boundary_.factor;
    const double cap = boundary_.flux_cap_watts_per_m2 * boundary_.factor;
    double q = film * (boundary_.dew_celsius - top.temperature);
    double q_t = -film;
    const bool capped = q > cap;
    if (diagnostics_) mark(capped ? 3 : 4);
    if (capped) {
      q = cap;
      q_t = 0;
    }
    const double heat_per_kilogram = dew_h_v_ - k_liquid_heat_capacity * top.temperature;
    const double condensing = q / heat_per_kilogram;
    j = condensing + forced_ * dew_x_;
    j_t = q_t / heat_per_kilogram + condensing * k_liquid_heat_capacity / heat_per_kilogram;
    j_w = 0;
    f = j * dew_h_v_;
    f_t = j_t * dew_h_v_;
    f_w = 0;
  } else {
    const double film = boundary_.air_film_watts_per_m2_kelvin;
    const double beta = k_evaporation_per_film * film;
    j = -beta * (top.lambda - room_lambda_);
    j_t = -beta * top.lambda_t;
    j_w = -beta * top.lambda_w;
    const bool drying = j <= 0;
    if (diagnostics_) mark(drying ? 5 : 6);
    const double h = drying ? top.h_v : room_h_v_;
    f = -film * (top.temperature - boundary_.air_celsius) + j * h;
    f_t = -film + j_t * h + (drying ? j * top.h_v_t : 0);
    f_w = j_w * h;
  }
}

// One implicit stage: new fluxes weigh `weight` seconds, the increments of the first stage `history`.
void March::stage(double weight, double history) {
  const std::size_t n = cells_.size();
  for (Cell& cell : cells_) {
    if (!evaluated_) evaluate(cell);
    if (diagnostics_ && cell.has_water) mark(cell.saturated ? 7 : 8);
  }
  evaluate_faces();
  double top_j, top_j_t, top_j_w, top_f, top_f_t, top_f_w;
  surface_flux(top_j, top_j_t, top_j_w, top_f, top_f_t, top_f_w);

  // Down: build the 2x2 rows of each cell and eliminate the coupling to the cell above.
  for (std::size_t i = 0; i < n; ++i) {
    Cell& cell = cells_[i];
    const double r = weight / cell.thickness;
    double in_j, in_f, in_j_t, in_j_w, in_f_t, in_f_w;  // inflow from above and its derivatives to this cell
    double low_jt = 0, low_jw = 0, low_ft = 0, low_fw = 0;  // to the cell above
    if (i == 0) {
      in_j = top_j, in_j_t = top_j_t, in_j_w = top_j_w;
      in_f = top_f, in_f_t = top_f_t, in_f_w = top_f_w;
    } else {
      const Face& face = faces_[i - 1];
      in_j = face.j, in_j_t = face.j_tj, in_j_w = face.j_wj;
      in_f = face.f, in_f_t = face.f_tj, in_f_w = face.f_wj;
      low_jt = face.j_ti, low_jw = face.j_wi, low_ft = face.f_ti, low_fw = face.f_wi;
    }
    double out_j = 0, out_f = 0, out_j_t = 0, out_j_w = 0, out_f_t = 0, out_f_w = 0;
    double up_jt = 0, up_jw = 0, up_ft = 0, up_fw = 0;  // derivatives of the outflow to the cell below
    if (i + 1 < n) {
      const Face& face = faces_[i];
      out_j = face.j, out_j_t = face.j_ti, out_j_w = face.j_wi;
      out_f = face.f, out_f_t = face.f_ti, out_f_w = face.f_wi;
      up_jt = face.j_tj, up_jw = face.j_wj, up_ft = face.f_tj, up_fw = face.f_wj;
    }
    if (forced_ > 0 && i + 1 == run_end_) {  // the forced gas leaves through its booked exit
      out_j += forced_ * cell.x;
      out_j_t += forced_ * cell.x_t;
      out_j_w += forced_ * cell.x_w;
      out_f += forced_ * cell.x * cell.h_v;
      out_f_t += forced_ * (cell.x_t * cell.h_v + cell.x * cell.h_v_t);
      out_f_w += forced_ * cell.x_w * cell.h_v;
    }
    double m_tt = cell.e_t - r * (in_f_t - out_f_t);
    double m_tw = cell.e_w - r * (in_f_w - out_f_w);
    double m_wt = -r * (in_j_t - out_j_t);
    double m_ww = 1.0 - r * (in_j_w - out_j_w);
    double b_t = (cell.energy - cell.e) + history * cell.energy_increment + r * (in_f - out_f);
    double b_w = history * cell.water_increment + r * (in_j - out_j);
    // upper diagonal block: + r dOut/d(below)
    double c_tt = r * up_ft, c_tw = r * up_fw, c_wt = r * up_jt, c_ww = r * up_jw;
    if (!cell.has_water) {  // no water can enter: its row is the identity
      m_tw = 0, m_wt = 0, m_ww = 1, b_w = 0, c_tw = 0, c_wt = 0, c_ww = 0;
    }
    if (i > 0) {
      // lower diagonal block: - r dIn/d(above)
      double l_tt = -r * low_ft, l_tw = -r * low_fw, l_wt = -r * low_jt, l_ww = -r * low_jw;
      if (!cell.has_water) l_wt = l_ww = 0;
      const Cell& above = cells_[i - 1];
      m_tt -= l_tt * above.u_tt + l_tw * above.u_wt;
      m_tw -= l_tt * above.u_tw + l_tw * above.u_ww;
      m_wt -= l_wt * above.u_tt + l_ww * above.u_wt;
      m_ww -= l_wt * above.u_tw + l_ww * above.u_ww;
      b_t -= l_tt * above.d_t + l_tw * above.d_w;
      b_w -= l_wt * above.d_t + l_ww * above.d_w;
    }
    const double inverse = 1.0 / (m_tt * m_ww - m_tw * m_wt);
    cell.u_tt = (m_ww * c_tt - m_tw * c_wt) * inverse;
    cell.u_tw = (m_ww * c_tw - m_tw * c_ww) * inverse;
    cell.u_wt = (m_tt * c_wt - m_wt * c_tt) * inverse;
    cell.u_ww = (m_tt * c_ww - m_wt * c_tw) * inverse;
    cell.d_t = (m_ww * b_t - m_tw * b_w) * inverse;
    cell.d_w = (m_tt * b_w - m_wt * b_t) * inverse;
  }

  // Up: the increments; then move energy and water by the linearised fluxes of the solve.
  double below_t = 0, below_w = 0;
  double out_j = 0, out_f = 0;
  double exit_j = 0, exit_f = 0;
  for (std::size_t i = n; i-- > 0;) {
    Cell& cell = cells_[i];
    const double dt = cell.d_t - cell.u_tt * below_t - cell.u_tw * below_w;
    const double dw = cell.d_w - cell.u_wt * below_t - cell.u_ww * below_w;
    if (i + 1 < n) {
      const Face& face = faces_[i];
      const double j = face.j + face.j_ti * dt + face.j_wi * dw + face.j_tj * below_t + face.j_wj * below_w;
      const double f = face.f + face.f_ti * dt + face.f_wi * dw + face.f_tj * below_t + face.f_wj * below_w;
      // The cell below now knows all its fluxes: add what comes in from here.
      Cell& below = cells_[i + 1];
      const double r = weight / below.thickness;
      below.energy_increment += r * f;
      below.water_increment += r * j;
      below.energy += below.energy_increment;
      below.water += below.water_increment;
      out_j = j;
      out_f = f;
    }
    if (forced_ > 0 && i + 1 == run_end_) {
      exit_j = forced_ * (cell.x + cell.x_t * dt + cell.x_w * dw);
      exit_f = forced_ * (cell.x * cell.h_v + (cell.x_t * cell.h_v + cell.x * cell.h_v_t) * dt +
                          cell.x_w * cell.h_v * dw);
      out_j += exit_j;
      out_f += exit_f;
    }
    const double r = weight / cell.thickness;
    cell.energy_increment = history * cell.energy_increment - r * out_f;
    cell.water_increment = history * cell.water_increment - r * out_j;
    if (!cell.has_water) cell.water_increment = 0;
    cell.temperature += dt;
    below_t = dt;
    below_w = dw;
  }
  Cell& top = cells_.front();
  const double r = weight / top.thickness;
  const double j = top_j + top_j_t * below_t + top_j_w * below_w;
  const double f = top_f + top_f_t * below_t + top_f_w * below_w;
  top.energy_increment += r * f;
  top.water_increment += r * j;
  top.energy += top.energy_increment;
  top.water += top.water_increment;

  energy_in_increment_ = history * energy_in_increment_ + weight * (f - exit_f);
  water_in_increment_ = history * water_in_increment_ + weight * (j - exit_j);
  energy_in_ += energy_in_increment_;
  water_in_ += water_in_increment_;
  evaluated_ = false;
}

void March::step(double seconds) {
  for (Cell& cell : cells_) cell.energy_increment = cell.water_increment = 0;
  energy_in_increment_ = water_in_increment_ = 0;
  stage(k_gamma * seconds, 0.0);
  stage(k_gamma * seconds, k_second_stage_history);
  for (Cell& cell : cells_) evaluate(cell);  // for the detector, and the next step begins with it
  evaluated_ = true;
  look_for_fault();
}

void March::look_for_fault() {
  if (fault_ != MarchFault::none) return;
  for (const Cell& cell : cells_) {
    if (!std::isfinite(cell.temperature) || !std::isfinite(cell.water)) {
      fault_ = MarchFault::not_finite;
      return;
    }
    if (cell.water * cell.thickness < k_lowest_water_kilograms_per_m2) fault_ = MarchFault::water_below_zero;
    if (cell.temperature < lowest_ - k_below_start_kelvin || cell.temperature > highest_allowed_) {
      fault_ = MarchFault::temperature_out_of_range;
    }
    if (std::fabs(cell.energy - cell.e) > largest_mismatch_ * cell.e_t) fault_ = MarchFault::step_too_long;
  }
  if (diagnostics_ && boundary_.steam) {
    for (std::size_t i = 0; i < run_end_; ++i) {
      const Cell& cell = cells_[i];
      activity_excess_ = std::max(activity_excess_, cell.x / (cell.x + k_mass_ratio) - dew_fraction_);
    }
  }
}

void March::mark(std::uint64_t choice) {
  branch_hash_ = (branch_hash_ ^ choice) * 1099511628211ULL;
}

double March::temperature_at(double depth_metres) const {
  double top = 0;
  double previous_node = 0;
  for (std::size_t i = 0; i < cells_.size(); ++i) {
    const Cell& cell = cells_[i];
    const double node = top + cell.up_half;
    if (depth_metres <= node || i + 1 == cells_.size()) {
      if (i == 0 || depth_metres >= node) return cell.temperature;
      const Cell& above = cells_[i - 1];
      // Resistance from the upper node to the depth, as a share of that between the nodes.
      const double r_above = above.down_half / above.conductivity;
      const double r_below = cell.up_half / cell.conductivity;
      const double to_depth = depth_metres <= top ? (depth_metres - previous_node) / above.conductivity
                                                  : r_above + (depth_metres - top) / cell.conductivity;
      const double share = std::clamp(to_depth / (r_above + r_below), 0.0, 1.0);
      return above.temperature + share * (cell.temperature - above.temperature);
    }
    previous_node = node;
    top += cell.thickness;
  }
  return cells_.back().temperature;
}

double March::highest_celsius() const {
  double highest = cells_.front().temperature;
  for (const Cell& cell : cells_) highest = std::max(highest, cell.temperature);
  return highest;
}

double March::water_gain_kilograms_per_m2() const {
  double held = 0;
  for (const Cell& cell : cells_) held += cell.water * cell.thickness;
  return held - start_water_;
}

double March::pore_vapour_kilograms_per_m2() const {
  double held = 0;
  for (const Cell& cell : cells_) {
    if (!cell.permeable) continue;
    Cell now = cell;
    evaluate(now);
    const double y = now.x / (now.x + k_mass_ratio);
    held += cell.porosity * y * pressure_ * k_water_molar_mass /
            (k_gas_constant * (cell.temperature + k_zero_celsius_in_kelvin)) * cell.thickness;
  }
  return held;
}

Ledger March::ledger() const {
  Ledger ledger;
  ledger.energy_in_joules_per_m2 = energy_in_;
  ledger.water_in_kilograms_per_m2 = water_in_;
  for (const Cell& cell : cells_) {
    ledger.energy_held_joules_per_m2 += cell.energy * cell.thickness;
    ledger.water_held_kilograms_per_m2 += cell.water * cell.thickness;
  }
  ledger.energy_held_joules_per_m2 -= start_energy_;
  ledger.water_held_kilograms_per_m2 -= start_water_;
  return ledger;
}

}  // namespace lastegg::steam
