#include "checks/elements.h"

#include <deal.II/base/quadrature_lib.h>
#include <deal.II/base/table.h>
#include <deal.II/dofs/dof_handler.h>
#include <deal.II/dofs/dof_tools.h>
#include <deal.II/fe/fe_q.h>
#include <deal.II/fe/fe_values.h>
#include <deal.II/fe/mapping_q1.h>
#include <deal.II/grid/grid_generator.h>
#include <deal.II/grid/tria.h>
#include <deal.II/lac/dynamic_sparsity_pattern.h>
#include <deal.II/lac/sparse_direct.h>
#include <deal.II/lac/sparse_matrix.h>
#include <deal.II/lac/sparsity_pattern.h>
#include <deal.II/lac/vector.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace lastegg::elements {
namespace {

using namespace dealii;

constexpr double k_water_mass = 0.018015, k_air_mass = 0.028965, k_gas = 8.314462;
constexpr double k_liquid = 4180, k_transport = 2.1524e-5, k_lewis = 6.8e-4;
constexpr double k_film_store = 2e-5;  // kg/m2 of water that wet an impermeable surface
// The last correction of Newton, which converges quadratically: what it leaves is far smaller.
constexpr double k_newton_kelvin = 1e-4, k_newton_filling = 1e-5;
constexpr double k_most_growth = 1.8;  // of a step; BDF2 is stable up to 2.4
constexpr double k_mass_ratio = k_water_mass / k_air_mass;

// IAPWS-IF97 region 4, release of 2007, equation 30 with table 34.
double saturation(double celsius) {
  const double kelvin = celsius + 273.15;
  const double theta = kelvin - 0.23855557567849 / (kelvin - 650.17534844798);
  const double a = theta * theta + 1167.0521452767 * theta - 724213.16703206;
  const double b = -17.073846940092 * theta * theta + 12020.824702470 * theta - 3232555.0322333;
  const double c = 14.915108613530 * theta * theta - 4823.2657361591 * theta + 405113.40542057;
  const double root = 2 * c / (-b + std::sqrt(b * b - 4 * a * c));
  return 1e6 * root * root * root * root;
}
double latent(double t) {
  return 2500.9e3 - t * (2365.5 + 0.89 * t);
}
double latent_slope(double t) {
  return -2365.5 - 1.78 * t;
}
double vapour_enthalpy(double t) {
  return k_liquid * t + latent(t);
}

// What follows from the temperature and filling of a node, with slopes to both.
struct Gas {
  double p_s, p_s_t, rho, rho_t, a, a_u, lambda, lambda_t, lambda_u, x, x_t, x_u, h, h_t;
};
Gas gas_of(double t, double u, double pressure) {
  Gas g{};
  constexpr double d = 1e-3;
  g.p_s = saturation(t);
  g.p_s_t = (saturation(t + d) - saturation(t - d)) / (2 * d);
  const double kelvin = t + 273.15;
  g.rho = g.p_s * k_water_mass / (k_gas * kelvin);
  g.rho_t = g.p_s_t * k_water_mass / (k_gas * kelvin) - g.rho / kelvin;
  g.a = u >= 1 ? 1 : u < 0 ? 2 * u : u * (2 - u);
  g.a_u = u >= 1 ? 0 : u < 0 ? 2 : 2 - 2 * u;
  const double y = g.a * g.p_s / pressure;
  const double dry = std::max(1 - y, 1e-4);
  const double y_t = g.a * g.p_s_t / pressure, y_u = g.a_u * g.p_s / pressure;
  g.lambda = -std::log(dry);
  g.lambda_t = y_t / dry;
  g.lambda_u = y_u / dry;
  g.x = k_mass_ratio * y / dry;
  g.x_t = k_mass_ratio * y_t / (dry * dry);
  g.x_u = k_mass_ratio * y_u / (dry * dry);
  g.h = vapour_enthalpy(t);
  g.h_t = k_liquid + latent_slope(t);
  return g;
}

struct Share {
  std::size_t medium;
  double volume;
};

// A cell with its shape functions, quadrature point by quadrature point.
template <int dim>
struct ShapedCell {
  std::size_t medium = 0;
  std::vector<types::global_dof_index> index;
  std::vector<double> weight, depth, value;
  std::vector<Tensor<1, dim>> grad;
};

template <int dim>
class Solver {
 public:
  Solver(const Body& body, const Steam& steam, const Fineness& fineness)
      : body_(body),
        steam_(steam),
        fineness_(fineness),
        fe_(QGaussLobatto<1>(unsigned(fineness.degree) + 1)),
        dofs_(triangulation_) {
    make_grid();
    dofs_.distribute_dofs(fe_);
    n_ = dofs_.n_dofs();
    gather();
    gather_cells();
    make_matrix();
    start();
  }

  Outcome run() {
    Outcome outcome;
    outcome.unknowns = int(2 * n_);
    std::vector<std::vector<double>> rows(places_.size());
    std::vector<double> seconds;
    double now = 0;
    const auto record = [&] {
      seconds.push_back(now);
      for (std::size_t i = 0; i < places_.size(); ++i) rows[i].push_back(t_[places_[i]]);
    };
    record();
    const double skirt = steam_.skirt_metres / steam_.pace;
    const double cover = steam_.head_metres / steam_.pace;
    const std::array<std::pair<double, double>, 4> phases{{{skirt, steam_.skirt_factor},
                                                           {cover, 1.0},
                                                           {skirt, steam_.skirt_factor},
                                                           {steam_.observe_seconds, 0.0}}};
    for (const auto& [length, factor] : phases) {
      factor_ = factor;
      double elapsed = 0, step = 1e-5, last = 0;
      while (elapsed < length * (1 - 1e-12)) {
        step = std::min(step, length - elapsed);
        const double change = advance(step, last);
        if (change < 0) {
          step *= 0.4;
          if (step < 1e-9) throw std::runtime_error("Newton did not converge");
          continue;
        }
        elapsed += step;
        now += step;
        last = step;
        ++outcome.steps;
        record();
        const double wanted = fineness_.largest_change_kelvin / std::max(change, 1e-9);
        step = std::min({step * std::clamp(wanted, 0.5, k_most_growth), length / 15, 1.0});
        // Nothing that counts happens below 36 C any more.
        if (factor == 0 && *std::max_element(t_.begin(), t_.end()) < 36) break;
      }
    }
    for (const auto& row : rows) {
      Found found;
      double dose = 0;
      for (std::size_t i = 0; i < row.size(); ++i) {
        found.peak_celsius = std::max(found.peak_celsius, row[i]);
        if (i == 0) continue;
        const double a = std::pow(10.0, (row[i - 1] - 48) / 4), b = std::pow(10.0, (row[i] - 48) / 4);
        const double mean = std::fabs(std::log(b / a)) < 1e-6 ? a : (b - a) / std::log(b / a);
        dose += mean * (seconds[i] - seconds[i - 1]);
      }
      found.log10_dose = std::log10(dose / 60 / 71.5);
      outcome.places.push_back(found);
    }
    return outcome;
  }

 private:
  using Cell = ShapedCell<dim>;

  void make_grid() {
    const auto steps = [](const std::vector<double>& lines) {
      std::vector<double> out;
      for (std::size_t i = 1; i < lines.size(); ++i) out.push_back(lines[i] - lines[i - 1]);
      return out;
    };
    std::vector<std::vector<double>> spacing;
    Table<dim, types::material_id> kinds;
    Point<dim> corner;
    if constexpr (dim == 1) {
      spacing = {steps(body_.z)};
      kinds.reinit(TableIndices<1>(body_.z.size() - 1));
      for (unsigned j = 0; j + 1 < body_.z.size(); ++j)
        kinds(j) = types::material_id(body_.medium(0, 0.5 * (body_.z[j] + body_.z[j + 1])));
      corner[0] = body_.z[0];
    } else {
      spacing = {steps(body_.x), steps(body_.z)};
      kinds.reinit(TableIndices<2>(body_.x.size() - 1, body_.z.size() - 1));
      for (unsigned i = 0; i + 1 < body_.x.size(); ++i) {
        for (unsigned j = 0; j + 1 < body_.z.size(); ++j) {
          const int kind =
              body_.medium(0.5 * (body_.x[i] + body_.x[i + 1]), 0.5 * (body_.z[j] + body_.z[j + 1]));
          kinds[i][j] = kind < 0 ? numbers::invalid_material_id : types::material_id(kind);
        }
      }
      corner[0] = body_.x[0];
      corner[1] = body_.z[0];
    }
    GridGenerator::subdivided_hyper_rectangle(triangulation_, spacing, corner, kinds, false);
  }

  static double depth(const Point<dim>& point) { return point[dim - 1]; }
  static double across(const Point<dim>& point) { return dim == 1 ? 0.0 : point[0]; }

  void gather() {
    shares_.resize(n_);
    area_.assign(n_, 0.0);
    wet_.assign(n_, false);
    const QGaussLobatto<dim> nodes(unsigned(fineness_.degree) + 1);
    FEValues<dim> values(fe_, nodes, update_values | update_JxW_values | update_quadrature_points);
    std::vector<types::global_dof_index> index(fe_.n_dofs_per_cell());
    for (const auto& cell : dofs_.active_cell_iterators()) {
      values.reinit(cell);
      cell->get_dof_indices(index);
      for (unsigned q = 0; q < nodes.size(); ++q) {
        for (unsigned i = 0; i < index.size(); ++i) {
          if (values.shape_value(i, q) < 0.5) continue;
          const double volume = values.JxW(q) * body_.area(depth(values.quadrature_point(q)));
          auto& shares = shares_[index[i]];
          const auto found = std::find_if(shares.begin(), shares.end(),
                                          [&](const Share& s) { return s.medium == cell->material_id(); });
          if (found == shares.end())
            shares.push_back({cell->material_id(), volume});
          else
            found->volume += volume;
          if (body_.media[cell->material_id()].permeable) wet_[index[i]] = true;
        }
      }
    }
    // Exposed areas, node by node.
    for (const auto& cell : dofs_.active_cell_iterators()) {
      cell->get_dof_indices(index);
      for (const unsigned f : cell->face_indices()) {
        if (!cell->at_boundary(f)) continue;
        const Point<dim> centre = cell->face(f)->center();
        Tensor<1, dim> normal;
        normal[f / 2] = f % 2 == 0 ? -1 : 1;
        const double share =
            body_.exposed(across(centre), depth(centre), dim == 1 ? 0 : normal[0], normal[dim - 1]);
        if (share <= 0) continue;
        if constexpr (dim == 1) {
          area_[index[f == 0 ? 0 : 1]] += share * body_.area(depth(centre));
        } else {
          const QGaussLobatto<dim - 1> face_nodes(unsigned(fineness_.degree) + 1);
          FEFaceValues<dim> face(fe_, face_nodes,
                                 update_values | update_JxW_values | update_quadrature_points);
          face.reinit(cell, f);
          for (unsigned q = 0; q < face_nodes.size(); ++q) {
            for (unsigned i = 0; i < index.size(); ++i) {
              if (face.shape_value(i, q) > 0.5)
                area_[index[i]] += share * face.JxW(q) * body_.area(depth(face.quadrature_point(q)));
            }
          }
        }
      }
    }
    std::vector<Point<dim>> support(n_);
    DoFTools::map_dofs_to_support_points(MappingQ1<dim>(), dofs_, support);
    for (const auto& place : body_.places) {
      std::size_t best = 0;
      double nearest = 1e9;
      for (std::size_t i = 0; i < n_; ++i) {
        const double away = std::hypot(across(support[i]) - place[0], depth(support[i]) - place[1]);
        if (away < nearest) nearest = away, best = i;
      }
      if (nearest > 1e-7) throw std::runtime_error("a place is no grid point");
      places_.push_back(best);
    }
    if (body_.forced_until > 0) {
      double nearest = 1e9, top = 1e9;
      for (std::size_t i = 0; i < n_; ++i) {
        const double away = std::fabs(depth(support[i]) - body_.forced_until);
        if (away < nearest) nearest = away, exit_ = i;
        if (depth(support[i]) < top) top = depth(support[i]), entry_ = i;
      }
    }
    for (std::size_t i = 0; i < n_; ++i)
      film_.push_back(!wet_[i] && area_[i] > 0 ? k_film_store * area_[i] : 0);
    for (std::size_t i = 0; i < n_; ++i) {
      if (film_[i] > 0) wet_[i] = true;
    }
  }

  void make_matrix() {
    DynamicSparsityPattern nodes(n_);
    DoFTools::make_sparsity_pattern(dofs_, nodes);
    DynamicSparsityPattern both(2 * n_);
    for (std::size_t i = 0; i < n_; ++i) {
      for (auto entry = nodes.begin(i); entry != nodes.end(i); ++entry) {
        for (unsigned r = 0; r < 2; ++r) {
          for (unsigned c = 0; c < 2; ++c) both.add(2 * i + r, 2 * entry->column() + c);
        }
      }
    }
    pattern_.copy_from(both);
    matrix_.reinit(pattern_);
  }

  void start() {
    t_.assign(n_, steam_.start_celsius);
    u_.assign(n_, 0.0);
    const double u = 1 - std::sqrt(1 - steam_.start_activity);
    for (std::size_t i = 0; i < n_; ++i) {
      if (wet_[i] && film_[i] == 0) u_[i] = u;
    }
    energy_.resize(n_);
    water_.resize(n_);
    for (std::size_t i = 0; i < n_; ++i) {
      const Stored s = stored(i, t_[i], u_[i]);
      energy_[i] = s.e;
      water_[i] = s.w;
    }
    energy_before_ = energy_;
    water_before_ = water_;
  }

  struct Stored {
    double e, e_t, e_u, w, w_t, w_u;
  };
  Stored stored(std::size_t i, double t, double u) const {
    Stored s{};
    const Gas g = gas_of(t, u, steam_.pressure);
    const double h = latent(t), h_t = latent_slope(t);
    for (const Share& share : shares_[i]) {
      const Medium& m = body_.media[share.medium];
      s.e += share.volume * m.capacity * t;
      s.e_t += share.volume * m.capacity;
      if (!m.permeable) continue;
      const double hold = 2 * (m.sorption + m.porosity * g.rho), hold_t = 2 * m.porosity * g.rho_t;
      s.w += share.volume * hold * u;
      s.w_t += share.volume * hold_t * u;
      s.w_u += share.volume * hold;
      const double pores = share.volume * m.porosity;
      s.e += pores * g.a * g.rho * h;
      s.e_t += pores * g.a * (g.rho_t * h + g.rho * h_t);
      s.e_u += pores * g.a_u * g.rho * h;
    }
    s.w += 2 * film_[i] * u;
    s.w_u += 2 * film_[i];
    s.e += k_liquid * s.w * t;
    s.e_t += k_liquid * (s.w_t * t + s.w);
    s.e_u += k_liquid * s.w_u * t;
    return s;
  }

  // Shape functions of every cell at its quadrature points: the grid never changes.
  void gather_cells() {
    const QGauss<dim> points(unsigned(fineness_.degree) + 1);
    FEValues<dim> values(fe_, points,
                         update_values | update_gradients | update_JxW_values | update_quadrature_points);
    const unsigned k = fe_.n_dofs_per_cell();
    for (const auto& cell : dofs_.active_cell_iterators()) {
      values.reinit(cell);
      Cell known;
      known.medium = cell->material_id();
      known.index.resize(k);
      cell->get_dof_indices(known.index);
      for (unsigned q = 0; q < points.size(); ++q) {
        known.weight.push_back(values.JxW(q));
        known.depth.push_back(depth(values.quadrature_point(q)));
        for (unsigned i = 0; i < k; ++i) {
          known.value.push_back(values.shape_value(i, q));
          known.grad.push_back(values.shape_grad(i, q));
        }
      }
      cells_.push_back(std::move(known));
    }
  }

  // Residual (outflow + storage rate = 0) and its matrix at a trial state.
  void assemble(const std::vector<double>& t, const std::vector<double>& u, double a0, double a1, double a2,
                double step) {
    matrix_ = 0;
    residual_.reinit(2 * n_);
    std::vector<Gas> gas(n_);
    for (std::size_t i = 0; i < n_; ++i) gas[i] = gas_of(t[i], u[i], steam_.pressure);
    const unsigned k = fe_.n_dofs_per_cell();
    FullMatrix<double> local(2 * k, 2 * k);
    Vector<double> right(2 * k);
    std::vector<types::global_dof_index> both(2 * k);
    const double forced = forced_gas();
    for (const Cell& cell : cells_) {
      const auto& index = cell.index;
      const Medium& m = body_.media[cell.medium];
      const double vapour = m.permeable ? m.efficiency * k_transport * m.porosity / m.tortuosity : 0.0;
      local = 0;
      right = 0;
      for (unsigned i = 0; i < k; ++i) both[2 * i] = 2 * index[i], both[2 * i + 1] = 2 * index[i] + 1;
      for (unsigned q = 0; q < cell.weight.size(); ++q) {
        const double* value = &cell.value[q * k];
        const Tensor<1, dim>* shape_grad = &cell.grad[q * k];
        const double weight = cell.weight[q] * body_.area(cell.depth[q]);
        Tensor<1, dim> heat, potential;
        double h = 0;
        for (unsigned j = 0; j < k; ++j) {
          heat += t[index[j]] * shape_grad[j];
          if (vapour > 0) {
            potential += gas[index[j]].lambda * shape_grad[j];
            h += gas[index[j]].h * value[j];
          }
        }
        for (unsigned i = 0; i < k; ++i) {
          const Tensor<1, dim> grad = weight * shape_grad[i];
          right[2 * i] += m.conductivity * (grad * heat) + vapour * h * (grad * potential);
          right[2 * i + 1] += vapour * (grad * potential);
          for (unsigned j = 0; j < k; ++j) {
            const double g = grad * shape_grad[j];
            const Gas& at = gas[index[j]];
            local(2 * i, 2 * j) += m.conductivity * g;
            if (vapour == 0) continue;
            local(2 * i, 2 * j) += vapour * (h * g * at.lambda_t + (grad * potential) * at.h_t * value[j]);
            local(2 * i, 2 * j + 1) += vapour * h * g * at.lambda_u;
            local(2 * i + 1, 2 * j) += vapour * g * at.lambda_t;
            local(2 * i + 1, 2 * j + 1) += vapour * g * at.lambda_u;
          }
        }
        if (dim == 1 && forced > 0 && cell.depth[q] < body_.forced_until) {
          // Dry gas downwards carries X; what it carries over a face is interpolated between the nodes.
          const double line = cell.weight[q];
          for (unsigned i = 0; i < k; ++i) {
            const double grad = line * shape_grad[i][0];
            for (unsigned j = 0; j < k; ++j) {
              const Gas& at = gas[index[j]];
              const double flow = forced * grad * value[j];
              right[2 * i] -= flow * at.x * at.h;
              right[2 * i + 1] -= flow * at.x;
              local(2 * i, 2 * j) -= flow * (at.x_t * at.h + at.x * at.h_t);
              local(2 * i, 2 * j + 1) -= flow * at.x_u * at.h;
              local(2 * i + 1, 2 * j) -= flow * at.x_t;
              local(2 * i + 1, 2 * j + 1) -= flow * at.x_u;
            }
          }
        }
      }
      for (unsigned i = 0; i < 2 * k; ++i) residual_[both[i]] += right[i];
      matrix_.add(both, local);
    }
    if (forced > 0) {
      const Gas& at = gas[exit_];
      residual_[2 * exit_] += forced * at.x * at.h;
      residual_[2 * exit_ + 1] += forced * at.x;
      matrix_.add(2 * exit_, 2 * exit_, forced * (at.x_t * at.h + at.x * at.h_t));
      matrix_.add(2 * exit_, 2 * exit_ + 1, forced * at.x_u * at.h);
      matrix_.add(2 * exit_ + 1, 2 * exit_, forced * at.x_t);
      matrix_.add(2 * exit_ + 1, 2 * exit_ + 1, forced * at.x_u);
      const double y = saturation(steam_.dew_celsius) / steam_.pressure;
      const double x = k_mass_ratio * y / (1 - y);
      residual_[2 * entry_] -= forced * x * vapour_enthalpy(steam_.dew_celsius);
      residual_[2 * entry_ + 1] -= forced * x;
    }
    for (std::size_t i = 0; i < n_; ++i) {
      const Stored s = stored(i, t[i], u[i]);
      residual_[2 * i] += (a0 * s.e + a1 * energy_[i] + a2 * energy_before_[i]) / step;
      matrix_.add(2 * i, 2 * i, a0 * s.e_t / step);
      matrix_.add(2 * i, 2 * i + 1, a0 * s.e_u / step);
      residual_[2 * i + 1] += (a0 * s.w + a1 * water_[i] + a2 * water_before_[i]) / step;
      matrix_.add(2 * i + 1, 2 * i, a0 * s.w_t / step);
      matrix_.add(2 * i + 1, 2 * i + 1, a0 * s.w_u / step);
      if (area_[i] > 0) surface(i, t[i], gas[i]);
      if (!wet_[i]) {
        for (auto entry = matrix_.begin(2 * i + 1); entry != matrix_.end(2 * i + 1); ++entry)
          entry->value() = 0;
        matrix_.set(2 * i + 1, 2 * i + 1, 1);
        residual_[2 * i + 1] = 0;
      }
    }
  }

  double forced_gas() const {
    if (body_.forced_until <= 0 || factor_ <= 0) return 0;
    const double y = saturation(steam_.dew_celsius) / steam_.pressure;
    return (1 - y) * steam_.pressure * k_air_mass / (k_gas * (steam_.dew_celsius + 273.15)) * steam_.forced *
           factor_;
  }

  void surface(std::size_t i, double t, const Gas& gas) {
    double f, f_t, f_u, j, j_t, j_u;  // inwards
    if (factor_ > 0) {
      double q = factor_ * steam_.film * (steam_.dew_celsius - t), q_t = -factor_ * steam_.film;
      if (q > factor_ * steam_.cap) q = factor_ * steam_.cap, q_t = 0;
      const double per = vapour_enthalpy(steam_.dew_celsius) - k_liquid * t;
      j = q / per;
      j_t = q_t / per + j * k_liquid / per;
      j_u = 0;
      f = j * vapour_enthalpy(steam_.dew_celsius);
      f_t = j_t * vapour_enthalpy(steam_.dew_celsius);
      f_u = 0;
    } else {
      const double beta = k_lewis * steam_.room_film;
      const double y = steam_.room_humidity * saturation(steam_.room_celsius) / steam_.pressure;
      j = beta * (-std::log1p(-y) - gas.lambda);
      j_t = -beta * gas.lambda_t;
      j_u = -beta * gas.lambda_u;
      const bool in = j > 0;
      const double h = in ? vapour_enthalpy(steam_.room_celsius) : gas.h;
      f = steam_.room_film * (steam_.room_celsius - t) + j * h;
      f_t = -steam_.room_film + j_t * h + (in ? 0 : j * gas.h_t);
      f_u = j_u * h;
    }
    const double area = area_[i];
    residual_[2 * i] -= area * f;
    residual_[2 * i + 1] -= area * j;
    matrix_.add(2 * i, 2 * i, -area * f_t);
    matrix_.add(2 * i, 2 * i + 1, -area * f_u);
    matrix_.add(2 * i + 1, 2 * i, -area * j_t);
    matrix_.add(2 * i + 1, 2 * i + 1, -area * j_u);
  }

  // One step; the largest change of temperature, or below zero where Newton failed. `last` 0: no history.
  double advance(double step, double last) {
    double a0 = 1, a1 = -1, a2 = 0;
    std::vector<double> t = t_, u = u_;
    if (last > 0) {
      const double w = step / last;
      a0 = (1 + 2 * w) / (1 + w);
      a1 = -(1 + w);
      a2 = w * w / (1 + w);
    }
    // Newton starts from where the last step points to.
    if (last > 0) {
      for (std::size_t i = 0; i < n_; ++i) {
        t[i] += step / last * (t_[i] - t_before_[i]);
        u[i] += step / last * (u_[i] - u_before_[i]);
      }
    }
    bool good = false;
    for (int newton = 0; newton < 14 && !good; ++newton) {
      assemble(t, u, a0, a1, a2, step);
      residual_ *= -1;
      // Equal sizes of both kinds of rows for the pivots.
      SparseDirectUMFPACK direct;
      direct.solve(matrix_, residual_);
      double largest_t = 0, largest_u = 0;
      for (std::size_t i = 0; i < n_; ++i) {
        const double dt = residual_[2 * i], du = residual_[2 * i + 1];
        if (!std::isfinite(dt) || !std::isfinite(du)) return -1;
        t[i] += dt;
        u[i] += du;
        largest_t = std::max(largest_t, std::fabs(dt));
        largest_u = std::max(largest_u, std::fabs(du) / (1 + std::fabs(u[i])));
        if (std::fabs(dt) > 60 || t[i] > 130 || t[i] < -40) return -1;
      }
      good = largest_t < k_newton_kelvin && largest_u < k_newton_filling;
    }
    if (!good) return -1;
    double change = 0;
    for (std::size_t i = 0; i < n_; ++i) change = std::max(change, std::fabs(t[i] - t_[i]));
    if (change > 3 * fineness_.largest_change_kelvin) return -1;
    energy_before_ = energy_;
    water_before_ = water_;
    t_before_ = t_;
    u_before_ = u_;
    for (std::size_t i = 0; i < n_; ++i) {
      const Stored s = stored(i, t[i], u[i]);
      energy_[i] = s.e;
      water_[i] = s.w;
    }
    t_ = std::move(t);
    u_ = std::move(u);
    return change;
  }

  const Body& body_;
  const Steam& steam_;
  Fineness fineness_;
  Triangulation<dim> triangulation_;
  FE_Q<dim> fe_;
  DoFHandler<dim> dofs_;
  std::size_t n_ = 0, exit_ = 0, entry_ = 0;
  std::vector<Cell> cells_;
  std::vector<std::vector<Share>> shares_;
  std::vector<double> area_, film_;
  std::vector<bool> wet_;
  std::vector<std::size_t> places_;
  SparsityPattern pattern_;
  SparseMatrix<double> matrix_;
  Vector<double> residual_;
  std::vector<double> t_, u_, t_before_, u_before_, energy_, water_, energy_before_, water_before_;
  double factor_ = 0;
};

}  // namespace

Outcome solve_line(const Body& body, const Steam& steam, const Fineness& fineness) {
  return Solver<1>(body, steam, fineness).run();
}

Outcome solve_plane(const Body& body, const Steam& steam, const Fineness& fineness) {
  return Solver<2>(body, steam, fineness).run();
}

std::vector<double> graded(double from, double until, int cells, double smallest, bool both_ends) {
  // Geometric growth whose first cell is `smallest`, found by bisection; mirrored where both ends are fine.
  const double length = both_ends ? 0.5 * (until - from) : until - from;
  const int count = both_ends ? cells / 2 : cells;
  double low = 1 + 1e-9, high = 4;
  const auto sum = [&](double ratio) { return smallest * (std::pow(ratio, count) - 1) / (ratio - 1); };
  if (sum(low) >= length) high = low;
  for (int i = 0; i < 200 && high > low; ++i) {
    const double middle = 0.5 * (low + high);
    (sum(middle) < length ? low : high) = middle;
  }
  std::vector<double> half{0};
  double cell = 1;
  for (int i = 0; i < count; ++i, cell *= low) half.push_back(half.back() + cell);
  for (double& value : half) value *= length / half.back();
  std::vector<double> lines;
  for (const double value : half) lines.push_back(from + value);
  if (both_ends) {
    for (std::size_t i = half.size() - 1; i-- > 0;) lines.push_back(until - half[i]);
  }
  lines.back() = until;
  return lines;
}

void append_lines(std::vector<double>& to, const std::vector<double>& more) {
  for (const double value : more) {
    if (to.empty() || value > to.back() + 1e-12) to.push_back(value);
  }
}

}  // namespace lastegg::elements
