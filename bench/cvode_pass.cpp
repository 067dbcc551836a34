#include "bench/cvode_pass.h"

#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/water/vapour.h"
#include "treatments/steam/pass/constants.h"
#include "treatments/steam/pass/grid.h"

namespace lastegg::bench {
namespace {

using namespace lastegg::steam;

constexpr double k_kelvin_tolerance =
    10;  // absolute tolerances, times the relative one: of energy in kelvin of the dry cell
constexpr double k_water_tolerance = 20;     // kg/m3; by trial the fastest that keep the errors
constexpr int k_most_steps = 5000;           // of a phase; more is counted as lost
constexpr double k_inversion_kelvin = 0.01;  // of a temperature, whose slopes do the rest
constexpr int k_points_per_step = 3;         // of the history, from CVODE's own interpolant
constexpr double k_highest_fraction = 0.9995;

struct Cell {
  double size, capacity, porosity, sorption, heat_conductance,
      vapour_conductance;  // conductances of the face below
  bool permeable, wet;
};

// A cell at a state, with derivatives to temperature and water.
struct Point {
  double t, w, lambda, lambda_t, lambda_w, x, x_t, x_w, h, h_t, e, e_t, e_w;
};

// Density of saturated vapour, as the lanes have it (tools/fit_lane_functions.py): a fourth power.
struct Saturated {
  double rho, rho_t;
};
Saturated saturated(double celsius) {
  constexpr double c[] = {0.490422206,     0.437235984,   0.0762484777,    -0.0185211814,
                          -0.000640583803, 0.00127047826, -0.000160297666, -5.91925993e-05};
  const double s = (celsius - 42.5) * (1 / 72.5);
  double root = c[7], slope = 7 * c[7];
  for (int k = 6; k >= 0; --k) root = root * s + c[k];
  for (int k = 6; k >= 1; --k) slope = slope * s + k * c[k];
  const double square = root * root;
  return {square * square, square * root * slope * (4 / 72.5)};
}

struct Flux {
  double j = 0, j_ti = 0, j_wi = 0, j_tj = 0, j_wj = 0, f = 0, f_ti = 0, f_wi = 0, f_tj = 0, f_wj = 0;
};

struct Equations {
  const PassProblem& problem;
  std::vector<Cell> cells;
  std::vector<Point> points;
  std::vector<Flux> flux;  // through the upper face of each cell; the last is zero
  std::size_t run_end = 0, target = 0;
  double target_share = 0;
  Point above_target{}, below_target{};
  bool steam = false;
  std::vector<Point> good_points;  // where the phase began
  std::vector<double> known;       // state that the points belong to
  double per_pascal = 0;
  double factor = 0, forced = 0, dew_x = 0, dew_h = 0, room_lambda = 0, room_h = 0;

  Equations(const PassProblem& p, int wanted) : problem(p), per_pascal(1 / p.pressure_pascal) {
    const auto grid = make_grid(p.stack, p.depths_metres, wanted);
    cells.resize(grid.size());
    points.resize(grid.size());
    known.resize(2 * grid.size());
    flux.resize(grid.size() + 1);
    std::vector<double> up(grid.size()), down(grid.size());
    for (std::size_t i = 0; i < grid.size(); ++i) {
      const Layer& layer = p.stack[grid[i].layer];
      const bool on_interface =
          i > 0 && layer.permeable && i + 1 < grid.size() && !p.stack[grid[i + 1].layer].permeable;
      const double size = grid[i].thickness_metres;
      up[i] = i == 0 ? 0 : on_interface ? size : size / 2;
      down[i] = i == 0 ? size : on_interface ? 0 : size / 2;
      cells[i] = {size,
                  layer.heat_capacity_joules_per_m3_kelvin,
                  layer.permeable ? layer.porosity : 0,
                  layer.permeable ? layer.sorption_scale_kilograms_per_m3 : k_film_sorption_scale,
                  0,
                  0,
                  layer.permeable,
                  layer.permeable || i == 0};
    }
    double node = 0, top = 0;
    for (std::size_t i = 0; i + 1 < grid.size(); ++i) {
      const Layer& above = p.stack[grid[i].layer];
      const Layer& below = p.stack[grid[i + 1].layer];
      const double r_above = down[i] / above.conductivity_watts_per_metre_kelvin;
      cells[i].heat_conductance = 1 / (r_above + up[i + 1] / below.conductivity_watts_per_metre_kelvin);
      if (above.permeable && below.permeable)
        cells[i].vapour_conductance =
            p.vapour_efficiency * k_vapour_transport /
            (down[i] * above.tortuosity / above.porosity + up[i + 1] * below.tortuosity / below.porosity);
      node = top + up[i];
      top += cells[i].size;
      const double next = top + up[i + 1], depth = p.depths_metres.front();
      if (depth >= node && depth <= next) {
        target = i;
        const double to_depth = depth <= top
                                    ? (depth - node) / above.conductivity_watts_per_metre_kelvin
                                    : r_above + (depth - top) / below.conductivity_watts_per_metre_kelvin;
        target_share = to_depth * cells[i].heat_conductance;
      }
    }
    while (run_end < cells.size() && cells[run_end].permeable) ++run_end;
  }

  std::vector<double> start() {
    std::vector<double> y;
    const double rho = saturated_vapour_density(problem.start_celsius).kilograms_per_m3;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const Cell& cell = cells[i];
      const double w = cell.permeable ? 2 * (cell.sorption + cell.porosity * rho) *
                                            (1 - std::sqrt(1 - problem.start_activity))
                                      : 0;
      evaluate(i, problem.start_celsius, w, points[i]);
      y.push_back(points[i].e);
      y.push_back(w);
    }
    return y;
  }

  void begin(bool is_steam, double f) {
    steam = is_steam;
    factor = f;
    const Head& head = problem.head;
    const double y = saturation_fit(head.dew_celsius).pressure_pascal / problem.pressure_pascal;
    dew_x = k_mass_ratio * y / (1 - y);
    dew_h = vapour_enthalpy_fit(head.dew_celsius);
    forced = steam && run_end > 0 ? (1 - y) * problem.pressure_pascal * k_air_molar_mass /
                                        (k_gas_constant * (head.dew_celsius + k_zero_celsius_in_kelvin)) *
                                        head.forced_gas_metres_per_second * factor
                                  : 0;
    const double room = problem.air.relative_humidity * saturation_fit(problem.air.celsius).pressure_pascal /
                        problem.pressure_pascal;
    room_lambda = -numerics::log(1 - room);
    room_h = vapour_enthalpy_fit(problem.air.celsius);
  }

  void evaluate(std::size_t i, double t, double w, Point& p) const {
    const Cell& cell = cells[i];
    const double h_fg = latent_heat_fit(t), h_fg_t = latent_heat_fit_slope(t);
    p.t = t, p.w = w;
    p.h = k_liquid_heat_capacity * t + h_fg, p.h_t = k_liquid_heat_capacity + h_fg_t;
    p.e_t = cell.capacity + k_liquid_heat_capacity * w, p.e_w = k_liquid_heat_capacity * t;
    p.e = p.e_t * t;
    if (!cell.wet) return;
    const Saturated s = saturated(t);
    const double gas = k_gas_constant / k_water_molar_mass * per_pascal,
                 kelvin = (t + k_zero_celsius_in_kelvin) * gas;
    const double y_s = s.rho * kelvin, y_s_t = s.rho_t * kelvin + s.rho * gas;
    const double half = 0.5 / (cell.sorption + cell.porosity * s.rho), u = w * half;
    double a = 1, a_w = 0, a_t = 0;
    if (u < 1) {
      const double positive = std::max(u, 0.0), slope = 2 - 2 * positive;
      a = 2 * u - positive * positive;
      a_w = slope * half;
      a_t = -2 * a_w * u * cell.porosity * s.rho_t;
    }
    const double y = std::min(a * y_s, k_highest_fraction);
    const double y_t = a_t * y_s + a * y_s_t, y_w = a_w * y_s;
    const double per_dry = 1 / (1 - y);
    p.lambda = std::log(per_dry), p.lambda_t = y_t * per_dry, p.lambda_w = y_w * per_dry;
    p.x = k_mass_ratio * y * per_dry;
    p.x_t = k_mass_ratio * p.lambda_t * per_dry, p.x_w = k_mass_ratio * p.lambda_w * per_dry;
    const double pore = cell.porosity * s.rho;
    p.e += pore * a * h_fg;
    p.e_t += pore * (a_t * h_fg + a * h_fg_t) + cell.porosity * s.rho_t * a * h_fg;
    p.e_w += pore * a_w * h_fg;
  }

  // One cell from its energy and water: the last state's slopes tell the temperature, one evaluation the
  // rest, whose own slopes take away what is missing. More only where that is much.
  bool invert_cell(std::size_t i, const double* y, Point& p) const {
    const double e = y[2 * i], w = y[2 * i + 1];
    double t = p.t + (e - p.e - p.e_w * (w - p.w)) / p.e_t;
    for (int round = 0; round < 40; ++round) {
      if (!(t > -100 && t < 250)) return false;
      evaluate(i, t, w, p);
      const double off = (e - p.e) / p.e_t;
      if (std::fabs(off) < k_inversion_kelvin) {
        p.t += off, p.lambda += p.lambda_t * off, p.x += p.x_t * off, p.h += p.h_t * off;
        p.e = e, p.e_w += k_liquid_heat_capacity * off;
        return true;
      }
      t += off;
    }
    return false;
  }

  // All cells; what was evaluated last is known.
  bool invert(const double* y) {
    if (std::equal(known.begin(), known.end(), y)) return true;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (!invert_cell(i, y, points[i])) {
        points = good_points;
        known.assign(known.size(), 0);
        return false;
      }
    }
    std::copy(y, y + known.size(), known.begin());
    return true;
  }

  void add_forced(Flux& f, const Point& p) const {
    f.j += forced * p.x, f.j_ti += forced * p.x_t, f.j_wi += forced * p.x_w;
    f.f += forced * p.x * p.h, f.f_ti += forced * (p.x_t * p.h + p.x * p.h_t), f.f_wi += forced * p.x_w * p.h;
  }

  void fluxes() {
    const Point& top = points.front();
    Flux& in = flux[0] = {};
    if (steam) {
      const double film = problem.head.film_watts_per_m2_kelvin * factor,
                   cap = problem.head.flux_cap_watts_per_m2 * factor;
      const double wanted = film * (problem.head.dew_celsius - top.t);
      const double q = std::min(wanted, cap), q_t = wanted > cap ? 0 : -film;
      const double per_kg = 1 / (dew_h - k_liquid_heat_capacity * top.t), c = q * per_kg;
      in.j = c + forced * dew_x, in.j_tj = q_t * per_kg + c * k_liquid_heat_capacity * per_kg;
      in.f = in.j * dew_h, in.f_tj = in.j_tj * dew_h;
    } else {
      const double film = problem.air.film_watts_per_m2_kelvin, beta = k_evaporation_per_film * film;
      in.j = beta * (room_lambda - top.lambda), in.j_tj = -beta * top.lambda_t,
      in.j_wj = -beta * top.lambda_w;
      const double h = in.j <= 0 ? top.h : room_h;
      in.f = film * (problem.air.celsius - top.t) + in.j * h;
      in.f_tj = -film + in.j_tj * h + (in.j <= 0 ? in.j * top.h_t : 0), in.f_wj = in.j_wj * h;
    }
    for (std::size_t i = 0; i + 1 < cells.size(); ++i) {
      const Point& a = points[i];
      const Point& b = points[i + 1];
      Flux& f = flux[i + 1] = {};
      const double g_c = cells[i].heat_conductance, g = cells[i].vapour_conductance;
      f.f = g_c * (a.t - b.t), f.f_ti = g_c, f.f_tj = -g_c;
      if (g > 0) {
        const double j = g * (a.lambda - b.lambda), h = j >= 0 ? a.h : b.h;
        f.j = j, f.j_ti = g * a.lambda_t, f.j_wi = g * a.lambda_w, f.j_tj = -g * b.lambda_t,
        f.j_wj = -g * b.lambda_w;
        f.f += j * h, f.f_ti += f.j_ti * h + (j >= 0 ? j * a.h_t : 0), f.f_wi = f.j_wi * h;
        f.f_tj += f.j_tj * h + (j >= 0 ? 0 : j * b.h_t), f.f_wj = f.j_wj * h;
      }
      if (forced > 0 && i + 1 < run_end) add_forced(f, a);
    }
    flux[cells.size()] = {};
  }

  // Fluxes out of cell i: those into the next, and forced gas that leaves the stack here.
  Flux out_of(std::size_t i) const {
    Flux out = flux[i + 1];
    if (forced > 0 && i + 1 == run_end) add_forced(out, points[i]);
    return out;
  }

  bool rate(const double* y, double* dy) {
    if (!invert(y)) return false;
    fluxes();
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const Flux out = out_of(i);
      dy[2 * i] = (flux[i].f - out.f) / cells[i].size;
      dy[2 * i + 1] = cells[i].wet ? (flux[i].j - out.j) / cells[i].size : 0;
    }
    return true;
  }

  bool jacobian(const double* y, SUNMatrix matrix) {
    if (!invert(y)) return false;
    fluxes();
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const Flux& in = flux[i];
      const Flux out = out_of(i);
      const auto row = static_cast<sunindextype>(2 * i);
      const double per_m = 1 / cells[i].size;
      // At constant water a cell's temperature follows its energy, at constant energy its water.
      const auto put = [&](std::ptrdiff_t shift, double f_t, double f_w, double j_t, double j_w) {
        const auto other = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(i) + shift);
        const auto column = static_cast<sunindextype>(2 * other);
        const double t_e = 1 / points[other].e_t, t_w = -points[other].e_w * t_e;
        if (!cells[i].wet) j_t = j_w = 0;
        SM_ELEMENT_B(matrix, row, column) = per_m * f_t * t_e;
        SM_ELEMENT_B(matrix, row, column + 1) = per_m * (f_w + f_t * t_w);
        SM_ELEMENT_B(matrix, row + 1, column) = per_m * j_t * t_e;
        SM_ELEMENT_B(matrix, row + 1, column + 1) = per_m * (j_w + j_t * t_w);
      };
      put(0, in.f_tj - out.f_ti, in.f_wj - out.f_wi, in.j_tj - out.j_ti, in.j_wj - out.j_wi);
      if (i > 0) put(-1, in.f_ti, in.f_wi, in.j_ti, in.j_wi);
      if (i + 1 < cells.size()) put(1, -out.f_tj, -out.f_wj, -out.j_tj, -out.j_wj);
    }
    return true;
  }

  // From the two cells beside the depth alone.
  bool target_celsius(const double* y, double& celsius) {
    if (!invert_cell(target, y, above_target) || !invert_cell(target + 1, y, below_target)) return false;
    celsius = above_target.t + target_share * (below_target.t - above_target.t);
    return true;
  }
};

int rate_of(realtype, N_Vector y, N_Vector dy, void* equations) {
  return static_cast<Equations*>(equations)->rate(N_VGetArrayPointer(y), N_VGetArrayPointer(dy)) ? 0 : 1;
}
int jacobian_of(realtype, N_Vector y, N_Vector, SUNMatrix matrix, void* equations, N_Vector, N_Vector,
                N_Vector) {
  return static_cast<Equations*>(equations)->jacobian(N_VGetArrayPointer(y), matrix) ? 0 : 1;
}

}  // namespace

Series cvode_pass(const PassProblem& problem, const CvodeOptions& options) {
  Equations equations(problem, options.cells);
  const std::vector<double> start = equations.start();
  const auto n = static_cast<sunindextype>(start.size());
  SUNContext context = nullptr;
  if (SUNContext_Create(nullptr, &context) != 0) return {};
  N_Vector y = N_VNew_Serial(n, context), at = N_VNew_Serial(n, context),
           tolerance = N_VNew_Serial(n, context);
  std::copy(start.begin(), start.end(), N_VGetArrayPointer(y));
  for (sunindextype i = 0; i < n; ++i)
    N_VGetArrayPointer(tolerance)[i] =
        options.relative_tolerance *
        (i % 2 == 0 ? k_kelvin_tolerance * equations.cells[static_cast<std::size_t>(i / 2)].capacity
                    : k_water_tolerance);
  void* cvode = CVodeCreate(CV_BDF, context);
  SUNMatrix matrix = SUNBandMatrix(n, 3, 3, context);
  SUNLinearSolver solver = SUNLinSol_Band(y, matrix, context);
  CVodeInit(cvode, rate_of, 0.0, y);
  CVodeSVtolerances(cvode, options.relative_tolerance, tolerance);
  CVodeSetUserData(cvode, &equations);
  CVodeSetLinearSolver(cvode, solver, matrix);
  CVodeSetJacFn(cvode, jacobian_of);
  CVodeSetErrHandlerFn(
      cvode, [](int, const char*, const char*, char*, void*) {}, nullptr);  // what is lost is counted

  const double skirt = problem.head.skirt_length_metres / problem.pace_metres_per_second;
  const double cover = problem.head.length_metres / problem.pace_metres_per_second;
  struct Phase {
    double seconds, factor;
  };
  const Phase phases[] = {{skirt, problem.head.skirt_factor},
                          {cover, 1},
                          {skirt, problem.head.skirt_factor},
                          {problem.observe_seconds, 0}};
  Series series{{0}, {problem.start_celsius}};
  double begin = 0;
  bool good = true;
  for (const Phase& phase : phases) {
    if (begin > 0) good = good && equations.invert(N_VGetArrayPointer(y));
    equations.begin(phase.factor > 0, phase.factor);
    equations.good_points = equations.points;
    equations.above_target = equations.points[equations.target];
    equations.below_target = equations.points[equations.target + 1];
    const double end = begin + phase.seconds;
    CVodeReInit(cvode, begin, y);
    CVodeSetStopTime(cvode, end);
    int steps = 0;
    for (double now = begin; good && now < end;) {
      const double before = now;
      good = CVode(cvode, end, y, &now, CV_ONE_STEP) >= 0 && ++steps < k_most_steps;
      for (int k = 1; good && k <= k_points_per_step; ++k) {
        const double t = before + (now - before) * k / k_points_per_step;
        CVodeGetDky(cvode, t, 0, at);
        double celsius = 0;
        if (!equations.target_celsius(N_VGetArrayPointer(at), celsius)) continue;
        series.seconds.push_back(t);
        series.celsius.push_back(celsius);
      }
      if (phase.factor == 0) {
        double hottest = -1e9;
        for (const Point& point : equations.points) hottest = std::max(hottest, point.t);
        if (hottest < options.stop_below_celsius) break;
      }
    }
    begin = end;
  }
  CVodeFree(&cvode);
  SUNLinSolFree(solver);
  SUNMatDestroy(matrix);
  for (N_Vector v : {y, at, tolerance}) N_VDestroy(v);
  SUNContext_Free(&context);
  return good ? series : Series{};
}

}  // namespace lastegg::bench
