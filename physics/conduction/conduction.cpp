#include "physics/conduction/conduction.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>
#include <string>

#include "physics/conduction/grid.h"
#include "physics/numerics/tridiagonal.h"
#include "words/say.h"

namespace lastegg {
namespace {

constexpr std::size_t k_most_layers = 100;
/// Length of the very first step in diffusion times of a first cell.
constexpr double k_first_step_in_cell_times = 0.25;
/// A stack asked only at the start still needs a grid; any time will do.
constexpr double k_only_start_seconds = 1.0;
/// However late the first asked time, a layer has cells enough for its curved profile.
constexpr double k_most_first_cell_share = 1.0 / 16.0;

// TR-BDF2: trapezium over the share gamma of the step, then a backward difference; one matrix serves both.
constexpr double k_root_two = 1.41421356237309504880;
constexpr double k_gamma = 2.0 - k_root_two;
constexpr double k_implicit_share = 0.5 * k_gamma;
constexpr double k_middle_weight = 1.0 / (k_gamma * (2.0 - k_gamma));
constexpr double k_old_weight = (1.0 - k_gamma) * (1.0 - k_gamma) / (k_gamma * (2.0 - k_gamma));
constexpr double k_flux_weight =
    0.25 * k_root_two;  ///< of the old and the middle fluxes; k_implicit_share of the new

Error bad(const std::string& where, const std::string& what, double value, const std::string& limit,
          const char* unit) {
  return {
      ErrorKind::bad_input,
      say("{} of {:.6g}{}{} must be {}.", in_language(what), value, *unit == '\0' ? "" : " ", unit, limit),
      where,
      fmt::format("{:.9g}", value),
      limit,
      unit};
}

bool is_positive(double value) {
  return value > 0.0 && std::isfinite(value);
}

std::optional<Error> check_layers(const std::vector<ConductionLayer>& layers) {
  if (layers.empty() || layers.size() > k_most_layers)
    return bad("/layers", to_say("A number of layers"), static_cast<double>(layers.size()),
               say("from 1 to {}", k_most_layers), "");
  for (std::size_t i = 0; i < layers.size(); ++i) {
    const std::string where = fmt::format("/layers/{}", i);
    const ConductionLayer& layer = layers[i];
    if (!is_positive(layer.thickness.si()))
      return bad(where + "/thickness", to_say("A thickness"), layer.thickness.si(), say("above 0"), "m");
    if (!is_positive(layer.conductivity.si()))
      return bad(where + "/conductivity", to_say("A conductivity"), layer.conductivity.si(), say("above 0"),
                 "W/(m K)");
    if (!is_positive(layer.heat_capacity.si()))
      return bad(where + "/heat_capacity", to_say("A heat capacity"), layer.heat_capacity.si(),
                 say("above 0"), "J/(m3 K)");
    if (!std::isfinite(layer.start.kelvin()))
      return bad(where + "/start", to_say("A start temperature"), layer.start.kelvin(), say("finite"), "K");
  }
  return std::nullopt;
}

std::optional<Error> check_boundary(const Boundary& boundary, const std::string& where) {
  if (boundary.kind == Boundary::Kind::convective && !is_positive(boundary.film.si()))
    return bad(where + "/film", to_say("A film coefficient"), boundary.film.si(), say("above 0"), "W/(m2 K)");
  if (!std::isfinite(boundary.heat.si()))
    return bad(where + "/flux", to_say("A flux"), boundary.heat.si(), say("finite"), "W/m2");
  if (!std::isfinite(boundary.temperature.kelvin()))
    return bad(where + "/temperature", to_say("A temperature"), boundary.temperature.kelvin(), say("finite"),
               "K");
  return std::nullopt;
}

std::optional<Error> check(const ConductionProblem& problem, double total) {
  if (auto error = check_layers(problem.layers)) return error;
  if (auto error = check_boundary(problem.front, "/front")) return error;
  if (auto error = check_boundary(problem.back, "/back")) return error;
  for (std::size_t i = 0; i < problem.depths.size(); ++i) {
    const double depth = problem.depths[i].si();
    // The sum of the thicknesses is rounded: the back face may be asked for as the user adds it up.
    if (!(depth >= 0.0 && depth <= total * (1.0 + 1e-12)))
      return bad(fmt::format("/depths/{}", i), to_say("A depth"), depth, say("from 0 to {:.9g}", total), "m");
  }
  for (std::size_t i = 0; i < problem.times.size(); ++i) {
    const double time = problem.times[i].si();
    if (!(time >= 0.0 && std::isfinite(time)))
      return bad(fmt::format("/times/{}", i), to_say("A time"), time, say("0 or more"), "s");
  }
  return std::nullopt;
}

/// The stack as a system C dT/dt = -K T + b on the nodes, with the fluxes through its faces.
/// Temperatures are counted from the start of the first layer, so that rounding scales with what
/// happens and not with 300 K.
class Body {
 public:
  Body(const ConductionProblem& problem, const conduction::Grid& grid)
      : reference_(problem.layers.front().start.kelvin()),
        front_(problem.front),
        back_(problem.back),
        capacity_(grid.nodes.size(), 0.0),
        temperature_(grid.nodes.size(), 0.0) {
    const std::size_t n = grid.nodes.size();
    conductance_.reserve(n - 1);
    for (std::size_t i = 0; i + 1 < n; ++i) {
      const ConductionLayer& layer = problem.layers[grid.layer_of_cell[i]];
      const double length = grid.nodes[i + 1] - grid.nodes[i];
      conductance_.push_back(layer.conductivity.si() / length);
      const double half = 0.5 * length * layer.heat_capacity.si();
      for (const std::size_t node : {i, i + 1}) {
        capacity_[node] += half;
        temperature_[node] += half * above_reference(layer.start);
      }
    }
    // A node between layers that start at different temperatures starts at the mean of its two halves:
    // no heat is lost.
    for (std::size_t i = 0; i < n; ++i) temperature_[i] /= capacity_[i];
    start_ = temperature_;
    set_fixed(0, front_, in_front_);
    set_fixed(n - 1, back_, in_back_);
  }

  std::size_t size() const { return temperature_.size(); }
  Temperature temperature(std::size_t node) const {
    return Temperature::from_kelvin(reference_ + temperature_[node]);
  }

  void step(double dt) {
    const std::size_t n = size();
    factor(dt);
    const std::vector<double> old = temperature_;
    const std::vector<double> old_flux = net_fluxes();
    const double old_front = front_flux(), old_back = back_flux();

    for (std::size_t i = 0; i < n; ++i)
      temperature_[i] = capacity_[i] * old[i] + k_implicit_share * dt * (old_flux[i] + source(i));
    solve();
    const double middle_front = front_flux(), middle_back = back_flux();

    for (std::size_t i = 0; i < n; ++i)
      temperature_[i] = capacity_[i] * (k_middle_weight * temperature_[i] - k_old_weight * old[i]) +
                        k_implicit_share * dt * source(i);
    solve();
    in_front_ += dt * (k_flux_weight * (old_front + middle_front) + k_implicit_share * front_flux());
    in_back_ += dt * (k_flux_weight * (old_back + middle_back) + k_implicit_share * back_flux());
  }

  EnergyLedger ledger() const {
    double stored = 0.0;
    for (std::size_t i = 0; i < size(); ++i) stored += capacity_[i] * (temperature_[i] - start_[i]);
    return {joules_per_m2(in_front_), joules_per_m2(in_back_), joules_per_m2(stored)};
  }

 private:
  double above_reference(Temperature temperature) const { return temperature.kelvin() - reference_; }

  /// A face held at a temperature takes up at once the heat of its half cell.
  void set_fixed(std::size_t node, const Boundary& boundary, double& heat_in) {
    if (boundary.kind != Boundary::Kind::fixed) return;
    heat_in += capacity_[node] * (above_reference(boundary.temperature) - temperature_[node]);
    temperature_[node] = above_reference(boundary.temperature);
  }

  bool is_fixed(std::size_t node) const {
    return (node == 0 && front_.kind == Boundary::Kind::fixed) ||
           (node + 1 == size() && back_.kind == Boundary::Kind::fixed);
  }

  static double film(const Boundary& boundary) {
    return boundary.kind == Boundary::Kind::convective ? boundary.film.si() : 0.0;
  }

  /// Heat flux into the stack through a face whose node is `face` and whose neighbour is `inner`.
  double face_flux(const Boundary& boundary, std::size_t face, std::size_t inner) const {
    switch (boundary.kind) {
      case Boundary::Kind::fixed:
        return conductance_[std::min(face, inner)] * (temperature_[face] - temperature_[inner]);
      case Boundary::Kind::convective:
        return film(boundary) * (above_reference(boundary.temperature) - temperature_[face]);
      case Boundary::Kind::flux:
        return boundary.heat.si();
      case Boundary::Kind::insulated:
        break;
    }
    return 0.0;
  }
  double front_flux() const { return face_flux(front_, 0, 1); }
  double back_flux() const { return face_flux(back_, size() - 1, size() - 2); }

  /// The part of a node's net inflow that does not depend on its temperatures.
  double source(std::size_t node) const {
    double heat = 0.0;
    if (is_fixed(node)) return heat;
    for (const auto& [boundary, face] : {std::pair(&front_, std::size_t{0}), std::pair(&back_, size() - 1)}) {
      if (face != node) continue;
      if (boundary->kind == Boundary::Kind::flux) heat += boundary->heat.si();
      heat += film(*boundary) * above_reference(boundary->temperature);
    }
    return heat;
  }

  /// Net inflow of every node at the present temperatures; nothing for a node held fixed.
  std::vector<double> net_fluxes() const {
    const std::size_t n = size();
    std::vector<double> net(n, 0.0);
    for (std::size_t i = 0; i + 1 < n; ++i) {
      const double flow = conductance_[i] * (temperature_[i] - temperature_[i + 1]);
      net[i] -= flow;
      net[i + 1] += flow;
    }
    if (front_.kind != Boundary::Kind::fixed) net[0] += front_flux();
    if (back_.kind != Boundary::Kind::fixed) net[n - 1] += back_flux();
    if (is_fixed(0)) net[0] = 0.0;
    if (is_fixed(n - 1)) net[n - 1] = 0.0;
    return net;
  }

  void factor(double dt) {
    if (factors_ && dt == factored_dt_) return;
    const std::size_t n = size();
    std::vector<double> lower(n, 0.0), diagonal = capacity_, upper(n, 0.0);
    const double share = k_implicit_share * dt;
    for (std::size_t i = 0; i < n; ++i) {
      if (is_fixed(i)) continue;
      if (i > 0) lower[i] = -share * conductance_[i - 1];
      if (i + 1 < n) upper[i] = -share * conductance_[i];
      diagonal[i] -= lower[i] + upper[i];
      if (i == 0) diagonal[i] += share * film(front_);
      if (i + 1 == n) diagonal[i] += share * film(back_);
    }
    factors_.emplace(lower, diagonal, upper);
    factored_dt_ = dt;
  }

  void solve() { factors_->solve_in_place(temperature_); }

  double reference_;  ///< kelvin
  Boundary front_, back_;
  std::vector<double> capacity_;     ///< J/(m2 K) of each node
  std::vector<double> conductance_;  ///< W/(m2 K) between node i and i + 1
  std::vector<double> temperature_, start_;
  double in_front_ = 0.0, in_back_ = 0.0;
  std::optional<numerics::TridiagonalFactors> factors_;
  double factored_dt_ = 0.0;
};

struct Plan {
  conduction::Grid grid;
  double first_step;
};

Plan plan(const ConductionProblem& problem, const ConductionResolution& resolution) {
  double first_time = std::numeric_limits<double>::infinity();
  for (const Duration time : problem.times)
    if (time.si() > 0.0) first_time = std::min(first_time, time.si());
  if (!std::isfinite(first_time)) first_time = k_only_start_seconds;

  std::vector<conduction::GridLayer> layers;
  double begin = 0.0;
  for (const ConductionLayer& layer : problem.layers) {
    const double diffusivity = (layer.conductivity / layer.heat_capacity).si();
    const double first_cell = resolution.first_cell * std::sqrt(diffusivity * first_time);
    layers.push_back({begin, begin + layer.thickness.si(),
                      std::min(first_cell, k_most_first_cell_share * layer.thickness.si())});
    begin += layer.thickness.si();
  }
  std::vector<double> depths;
  for (const Length depth : problem.depths) depths.push_back(depth.si());
  const double cell_time = resolution.first_cell * resolution.first_cell * first_time;
  return {conduction::graded_grid(layers, depths, resolution.cell_growth),
          k_first_step_in_cell_times * cell_time};
}

std::size_t nearest_node(const std::vector<double>& nodes, double depth) {
  const auto above = std::lower_bound(nodes.begin(), nodes.end(), depth);
  if (above == nodes.begin()) return 0;
  if (above == nodes.end()) return nodes.size() - 1;
  const auto index = static_cast<std::size_t>(above - nodes.begin());
  return *above - depth < depth - nodes[index - 1] ? index : index - 1;
}

}  // namespace

Boundary Boundary::fixed(Temperature temperature) {
  Boundary boundary;
  boundary.kind = Kind::fixed;
  boundary.temperature = temperature;
  return boundary;
}

Boundary Boundary::convective(HeatTransferCoefficient film, Temperature fluid) {
  Boundary boundary;
  boundary.kind = Kind::convective;
  boundary.film = film;
  boundary.temperature = fluid;
  return boundary;
}

Boundary Boundary::flux(HeatFlux heat) {
  Boundary boundary;
  boundary.kind = Kind::flux;
  boundary.heat = heat;
  return boundary;
}

Boundary Boundary::insulated() {
  return {};
}

Result<ConductionAnswer> conduct(const ConductionProblem& problem, const ConductionResolution& resolution) {
  double total = 0.0;
  for (const ConductionLayer& layer : problem.layers) total += layer.thickness.si();
  if (auto error = check(problem, total)) return refuse(*std::move(error));

  const Plan prepared = plan(problem, resolution);
  Body body(problem, prepared.grid);
  std::vector<std::size_t> nodes;
  for (const Length depth : problem.depths) nodes.push_back(nearest_node(prepared.grid.nodes, depth.si()));

  std::vector<std::size_t> order(problem.times.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](auto a, auto b) { return problem.times[a] < problem.times[b]; });

  ConductionAnswer answer;
  answer.nodes = body.size();
  answer.temperatures.resize(problem.times.size());
  double now = 0.0;
  for (const std::size_t index : order) {
    const double until = problem.times[index].si();
    while (now < until) {
      const double wanted = std::max(prepared.first_step, resolution.step_share * now);
      const double left = until - now;
      // The last two steps before an asked time share what is left: no sliver of a step.
      const double dt = left <= wanted ? left : (left < 2.0 * wanted ? 0.5 * left : wanted);
      body.step(dt);
      now = dt == left ? until : now + dt;
      ++answer.steps;
    }
    for (const std::size_t node : nodes) answer.temperatures[index].push_back(body.temperature(node));
  }
  answer.ledger = body.ledger();
  return answer;
}

}  // namespace lastegg
