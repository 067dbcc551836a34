// The whole kernel against another discretisation of the same equations: nodes on the surface and on every
// interface with linear elements between them, temperature and water per node as the state, centred fluxes
// throughout, saturation from IAPWS-IF97, a grid of its own, CVODE in time. It shares neither cells, nor
// upwind rules, nor interface rules with the kernel; an error in those cannot hide here.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "physics/water/water.h"
#include "treatments/steam/pass/constants.h"
#include "treatments/steam/pass/cvode_for_tests.h"
#include "treatments/steam/pass/problems_for_tests.h"

namespace lastegg::steam {
namespace {

// What display accuracy asks for.
constexpr double k_peak_tolerance_kelvin = 0.2;
constexpr double k_dose_tolerance_log10 = 0.04;

constexpr double k_liquid = 4180;
// Water on an impermeable top before it counts as a wet surface, kg/m2: a film has no thickness, this is
// small.
constexpr double k_film_scale = 2e-5;

double latent(double t) {
  return 2500.9e3 - t * (2365.5 + 0.89 * t);
}
double vapour_enthalpy(double t) {
  return k_liquid * t + latent(t);
}

double saturation(double celsius) {
  const auto pressure = saturation_pressure(Temperature::from_kelvin(celsius + 273.15));
  return pressure ? in_pascals(*pressure) : std::nan("");
}

double density(double celsius) {
  return saturation(celsius) * k_water_molar_mass / (k_gas_constant * (celsius + 273.15));
}

// Everything per m2 of what belongs to the node: half an element on each side.
struct Node {
  double depth = 0, capacity = 0, sorption = 0, pores = 0;
};
struct Element {
  double heat = 0, vapour = 0;  // conductances
  bool forced = false;
};
struct Shown {
  double t, lambda, x, h;
};

class VertexEquations {
 public:
  VertexEquations(const PassProblem& problem, double density_of_nodes) : problem_(problem) {
    nodes_.push_back({});
    double top = 0;
    bool run = true;
    for (std::size_t l = 0; l < problem.stack.size(); ++l) {
      const Layer& layer = problem.stack[l];
      run = run && layer.permeable;
      const bool last = l + 1 == problem.stack.size();
      const int count = static_cast<int>((last ? 120 : 80) * density_of_nodes);
      for (int i = 1; i <= count; ++i) {
        const double u = static_cast<double>(i) / count;
        // The last layer grows away from its top, others are fine at both ends.
        const double share =
            last ? std::expm1(5 * u) / std::expm1(5.0) : 0.15 * u + 0.85 * u * u * (3 - 2 * u);
        const double depth = top + layer.thickness_metres * share;
        const double half = 0.5 * (depth - nodes_.back().depth);
        nodes_.push_back({.depth = depth});
        Element element{.heat = layer.conductivity_watts_per_metre_kelvin / (2 * half), .forced = run};
        if (layer.permeable) {
          element.vapour =
              problem.vapour_efficiency * k_vapour_transport * layer.porosity / layer.tortuosity / (2 * half);
        }
        elements_.push_back(element);
        for (Node* node : {&nodes_[nodes_.size() - 2], &nodes_.back()}) {
          node->capacity += half * layer.heat_capacity_joules_per_m3_kelvin;
          if (!layer.permeable) continue;
          node->sorption += half * layer.sorption_scale_kilograms_per_m3;
          node->pores += half * layer.porosity;
        }
      }
      top += layer.thickness_metres;
    }
    if (nodes_[0].sorption == 0) nodes_[0].sorption = k_film_scale;
    shown_.resize(nodes_.size());
  }

  std::vector<double> start() const {
    std::vector<double> state;
    const double u = 1 - std::sqrt(1 - problem_.start_activity);
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
      const bool film = i == 0 && !problem_.stack[0].permeable;
      const double scale = nodes_[i].sorption + nodes_[i].pores * density(problem_.start_celsius);
      state.push_back(problem_.start_celsius);
      state.push_back(film ? 0 : 2 * scale * u);
    }
    return state;
  }

  void begin(double factor) {
    factor_ = factor;
    const double dew = problem_.head.dew_celsius;
    const double y = saturation(dew) / problem_.pressure_pascal;
    dew_x_ = k_mass_ratio * y / (1 - y);
    gas_ = elements_[0].forced
               ? (1 - y) * problem_.pressure_pascal * k_air_molar_mass / (k_gas_constant * (dew + 273.15)) *
                     problem_.head.forced_gas_metres_per_second * factor
               : 0;
  }

  bool rate(std::span<const double> state, std::span<double> rate) {
    const std::size_t n = nodes_.size();
    for (std::size_t i = 0; i < n; ++i) {
      if (!show(i, state[2 * i], state[2 * i + 1])) return false;
    }
    std::fill(rate.begin(), rate.end(), 0.0);  // first energy and water per m2, then T and W
    surface(rate[0], rate[1]);
    for (std::size_t i = 0; i + 1 < n; ++i) {
      const Element& element = elements_[i];
      const Shown &a = shown_[i], &b = shown_[i + 1];
      double water = element.vapour * (a.lambda - b.lambda);
      if (element.forced) water += gas_ * 0.5 * (a.x + b.x);
      const double energy = element.heat * (a.t - b.t) + water * 0.5 * (a.h + b.h);
      rate[2 * i] -= energy;
      rate[2 * i + 1] -= water;
      rate[2 * i + 2] += energy;
      rate[2 * i + 3] += water;
      const bool exit = element.forced && (i + 2 == n || !elements_[i + 1].forced);
      if (exit) {
        rate[2 * i + 2] -= gas_ * b.x * b.h;
        rate[2 * i + 3] -= gas_ * b.x;
      }
    }
    for (std::size_t i = 0; i < n; ++i)
      to_temperature(i, state[2 * i], state[2 * i + 1], rate[2 * i], rate[2 * i + 1]);
    return true;
  }

  double temperature_at(std::span<const double> state, double depth) const {
    std::size_t i = 1;
    while (i + 1 < nodes_.size() && nodes_[i].depth < depth) ++i;
    const double share = (depth - nodes_[i - 1].depth) / (nodes_[i].depth - nodes_[i - 1].depth);
    return state[2 * i - 2] + share * (state[2 * i] - state[2 * i - 2]);
  }

  std::size_t size() const { return nodes_.size(); }

 private:
  double activity(std::size_t i, double rho, double water) const {
    const double u = water / (2 * (nodes_[i].sorption + nodes_[i].pores * rho));
    return u >= 1 ? 1 : u < 0 ? 2 * u : u * (2 - u);
  }

  bool show(std::size_t i, double t, double water) {
    double y = 0;
    if (nodes_[i].sorption > 0) y = activity(i, density(t), water) * saturation(t) / problem_.pressure_pascal;
    shown_[i] = {t, -std::log1p(-y), k_mass_ratio * y / (1 - y), vapour_enthalpy(t)};
    return y < 0.9999 && std::isfinite(t) && std::isfinite(y);
  }

  // E = (C + c W) T + eps a(W, T) rho h_fg, differentiated: what energy and water do to the temperature.
  void to_temperature(std::size_t i, double t, double water, double& energy_rate, double water_rate) const {
    const Node& node = nodes_[i];
    double by_t = node.capacity + k_liquid * water;
    double by_w = k_liquid * t;
    if (node.pores > 0) {
      constexpr double step = 1e-3;
      const auto stored = [&](double at) {
        const double rho = density(at);
        return node.pores * activity(i, rho, water) * rho * latent(at);
      };
      by_t += (stored(t + step) - stored(t - step)) / (2 * step);
      const double rho = density(t);
      const double scale = node.sorption + node.pores * rho;
      const double u = water / (2 * scale);
      by_w += node.pores * rho * latent(t) * (u >= 1 ? 0 : u < 0 ? 2 : 2 - 2 * u) / (2 * scale);
    }
    energy_rate = (energy_rate - by_w * water_rate) / by_t;
  }

  void surface(double& energy, double& water) const {
    const Shown& top = shown_[0];
    if (factor_ > 0) {
      const Head& head = problem_.head;
      const double flux = factor_ * std::min(head.film_watts_per_m2_kelvin * (head.dew_celsius - top.t),
                                             head.flux_cap_watts_per_m2);
      water = flux / (vapour_enthalpy(head.dew_celsius) - k_liquid * top.t) + gas_ * dew_x_;
      energy = water * vapour_enthalpy(head.dew_celsius);
      return;
    }
    const RoomAir& air = problem_.air;
    const double room = air.relative_humidity * saturation(air.celsius) / problem_.pressure_pascal;
    water = k_evaporation_per_film * air.film_watts_per_m2_kelvin * (-std::log1p(-room) - top.lambda);
    energy = air.film_watts_per_m2_kelvin * (air.celsius - top.t) +
             water * (water > 0 ? vapour_enthalpy(air.celsius) : top.h);
  }

  PassProblem problem_;
  std::vector<Node> nodes_;
  std::vector<Element> elements_;
  std::vector<Shown> shown_;
  double factor_ = 0, gas_ = 0, dew_x_ = 0;
};

std::vector<PlaceSummary> by_vertices(const PassProblem& problem, double density_of_nodes, bool& good) {
  VertexEquations equations(problem, density_of_nodes);
  std::vector<double> state = equations.start();
  std::vector<double> tolerances;
  for (std::size_t i = 0; i < equations.size(); ++i) tolerances.insert(tolerances.end(), {1e-5, 1e-9});
  std::vector<Series> series(problem.depths_metres.size());
  double begin = 0;
  const auto observe = [&](double seconds, std::span<const double> y) {
    for (std::size_t d = 0; d < series.size(); ++d) {
      series[d].seconds.push_back(begin + seconds);
      series[d].celsius.push_back(equations.temperature_at(y, problem.depths_metres[d]));
    }
  };
  observe(0, state);
  good = true;
  for (const SteamPhase& phase : steam_phases(problem)) {
    equations.begin(phase.factor);
    const auto rate = [&](std::span<const double> y, std::span<double> to) { return equations.rate(y, to); };
    good = good && integrate_phase(state, phase.seconds, rate, 3, 1e-6, tolerances, observe);
    begin += phase.seconds;
  }
  std::vector<PlaceSummary> summaries;
  for (const Series& one : series) summaries.push_back(summary_of(one));
  return summaries;
}

TEST(VertexAgreement, ShownResolutionMatchesOnEveryStack) {
  double worst_peak = 0, worst_dose = 0;
  for (const NamedProblem& named : problems_for_tests()) {
    bool good = false;
    const auto expected = by_vertices(named.problem, 1.0, good);
    ASSERT_TRUE(good) << named.name;
    const auto history = run_pass(named.problem, shown_resolution());
    ASSERT_TRUE(history) << named.name << ": " << history.error().message;
    const auto shown = summaries_of(*history);
    for (std::size_t d = 0; d < expected.size(); ++d) {
      EXPECT_NEAR(shown[d].peak_celsius, expected[d].peak_celsius, k_peak_tolerance_kelvin)
          << named.name << ", depth " << d;
      EXPECT_NEAR(shown[d].log10_dose, expected[d].log10_dose, k_dose_tolerance_log10)
          << named.name << ", depth " << d;
      worst_peak = std::max(worst_peak, std::fabs(shown[d].peak_celsius - expected[d].peak_celsius));
      worst_dose = std::max(worst_dose, std::fabs(shown[d].log10_dose - expected[d].log10_dose));
    }
  }
  RecordProperty("worst_peak_kelvin", std::to_string(worst_peak));
  RecordProperty("worst_log10_dose", std::to_string(worst_dose));
}

}  // namespace
}  // namespace lastegg::steam
