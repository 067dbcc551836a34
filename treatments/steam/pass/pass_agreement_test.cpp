// The kernel's time integration against SUNDIALS CVODE on the same cells: energy and water per cell as the
// state, temperature found by inversion, saturation pressure from IAPWS-IF97, all written again from the
// equations of README.md. It shows that the steps are right; whether the cells are is the business of
// vertex_agreement_test.cpp and pass_reference_test.cpp.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "physics/water/water.h"
#include "treatments/steam/pass/constants.h"
#include "treatments/steam/pass/cvode_for_tests.h"
#include "treatments/steam/pass/grid.h"
#include "treatments/steam/pass/problems_for_tests.h"

namespace lastegg::steam {
namespace {

constexpr int k_cells = 32;
constexpr double k_liquid = 4180;

double latent(double t) {
  return 2500.9e3 - t * (2365.5 + 0.89 * t);
}
double vapour_enthalpy(double t) {
  return k_liquid * t + latent(t);
}

// Pascal; negative outside the range of the equation.
double saturation(double celsius) {
  const auto pressure = saturation_pressure(Temperature::from_kelvin(celsius + 273.15));
  return pressure ? in_pascals(*pressure) : -1;
}

// What one cell is: how far its node lies from its faces, and its layer.
struct Place {
  Layer layer;
  double size, node, top;
  bool wet;         // can hold water
  bool forced;      // forced gas passes
  double sorption;  // W_h
  double pores;     // eps, 0 where nothing enters
};

// What a cell shows to its neighbours.
struct Shown {
  double t, lambda, x, h;
};

class Equations {
 public:
  explicit Equations(const PassProblem& problem) : problem_(problem) {
    double top = 0;
    const auto grid = make_grid(problem.stack, problem.depths_metres, k_cells);
    for (std::size_t i = 0; i < grid.size(); ++i) {
      const Layer& layer = problem.stack[grid[i].layer];
      const bool film = i == 0 && !layer.permeable;
      const bool on_interface =
          layer.permeable && i + 1 < grid.size() && !problem.stack[grid[i + 1].layer].permeable;
      const double size = grid[i].thickness_metres;
      places_.push_back({layer, size,
                         i == 0         ? 0
                         : on_interface ? top + size
                                        : top + size / 2,
                         top, layer.permeable || film, layer.permeable && (i == 0 || places_.back().forced),
                         film ? 10.0 : layer.sorption_scale_kilograms_per_m3,
                         layer.permeable ? layer.porosity : 0});
      top += size;
    }
    guess_.assign(places_.size(), problem.start_celsius);
  }

  std::vector<double> start() const {
    std::vector<double> state;
    const double t = problem_.start_celsius;
    const double rho = saturation(t) * k_water_molar_mass / (k_gas_constant * (t + 273.15));
    for (const Place& place : places_) {
      // a = u (2 - u) gives u = 1 - sqrt(1 - a), and W = 2 S u.
      const double a = place.layer.permeable ? problem_.start_activity : 0;
      const double water = 2 * (place.sorption + place.pores * rho) * (1 - std::sqrt(1 - a));
      state.push_back((place.layer.heat_capacity_joules_per_m3_kelvin + k_liquid * water) * t +
                      place.pores * a * rho * latent(t));
      state.push_back(water);
    }
    return state;
  }

  void begin(double factor) {
    factor_ = factor;
    const double dew = problem_.head.dew_celsius;
    const double y = saturation(dew) / problem_.pressure_pascal;
    dew_x_ = k_mass_ratio * y / (1 - y);
    gas_ = places_[0].forced
               ? (1 - y) * problem_.pressure_pascal * k_air_molar_mass / (k_gas_constant * (dew + 273.15)) *
                     problem_.head.forced_gas_metres_per_second * factor
               : 0;
  }

  // False: a state outside the equations.
  bool refresh(std::span<const double> state) {
    shown_.resize(places_.size());
    for (std::size_t i = 0; i < places_.size(); ++i) {
      const Place& place = places_[i];
      const double energy = state[2 * i], water = state[2 * i + 1];
      const double capacity = place.layer.heat_capacity_joules_per_m3_kelvin + k_liquid * water;
      double t = place.pores > 0 ? guess_[i] : energy / capacity;
      double y = 0;
      if (place.wet) {
        for (int round = 0;; ++round) {
          const double p = saturation(t);
          if (p < 0 || round > 60) return false;
          const double kelvin = t + 273.15;
          const double rho = p * k_water_molar_mass / (k_gas_constant * kelvin);
          const double u = water / (2 * (place.sorption + place.pores * rho));
          const double a = u >= 1 ? 1 : u < 0 ? 2 * u : u * (2 - u);
          y = a * p / problem_.pressure_pascal;
          if (place.pores == 0) break;
          const double miss = capacity * t + place.pores * a * rho * latent(t) - energy;
          // The slope of the saturation line by Clapeyron's rule is good to 2 %: enough for quick rounds.
          const double rho_t =
              rho * (latent(t) * k_water_molar_mass / (k_gas_constant * kelvin * kelvin) - 1 / kelvin);
          const double a_u = u >= 1 ? 0 : u < 0 ? 2 : 2 - 2 * u;
          const double a_t = -a_u * u * place.pores * rho_t / (place.sorption + place.pores * rho);
          const double slope =
              capacity + place.pores * ((a_t * rho + a * rho_t) * latent(t) - a * rho * (2365.5 + 1.78 * t));
          const double step = miss / slope;
          t -= step;
          if (std::fabs(step) < 1e-12 * (1 + std::fabs(t))) break;
        }
      }
      if (!(y < 0.9999) || !std::isfinite(t)) return false;
      guess_[i] = t;
      shown_[i] = {t, -std::log1p(-y), k_mass_ratio * y / (1 - y), vapour_enthalpy(t)};
    }
    return true;
  }

  bool rate(std::span<const double> state, std::span<double> rate) {
    if (!refresh(state)) return false;
    const auto n = places_.size();
    double in_water, in_energy;
    surface(in_water, in_energy);
    for (std::size_t i = 0; i < n; ++i) {
      double out_water = 0, out_energy = 0;
      const Shown& here = shown_[i];
      if (places_[i].forced && (i + 1 == n || !places_[i + 1].forced)) {
        // The gas leaves the stack here with its vapour; nothing of it enters the cell below.
        out_water = gas_ * here.x;
        out_energy = out_water * here.h;
      }
      double on_water = 0, on_energy = 0;  // to the cell below
      if (i + 1 < n) {
        const Shown& below = shown_[i + 1];
        on_energy = (here.t - below.t) /
                    resistance(i, [](const Layer& l) { return l.conductivity_watts_per_metre_kelvin; });
        if (places_[i].layer.permeable && places_[i + 1].layer.permeable) {
          const double path = resistance(i, [](const Layer& l) { return l.porosity / l.tortuosity; });
          on_water = problem_.vapour_efficiency * k_vapour_transport * (here.lambda - below.lambda) / path;
          on_energy += on_water * (on_water >= 0 ? here.h : below.h);
        }
        if (places_[i].forced && places_[i + 1].forced) {
          on_water += gas_ * here.x;
          on_energy += gas_ * here.x * here.h;
        }
      }
      rate[2 * i] = (in_energy - out_energy - on_energy) / places_[i].size;
      rate[2 * i + 1] = (in_water - out_water - on_water) / places_[i].size;
      in_water = on_water;
      in_energy = on_energy;
    }
    return true;
  }

  // Temperature at a depth: linear between nodes over the thermal resistance from the surface.
  double temperature_at(double depth) const {
    const double wanted = resistance_to(depth);
    double previous = 0;
    for (std::size_t i = 0; i < places_.size(); ++i) {
      const double own = resistance_to(places_[i].node);
      if (wanted <= own) {
        if (i == 0) return shown_[0].t;
        const double share = (wanted - previous) / (own - previous);
        return shown_[i - 1].t + share * (shown_[i].t - shown_[i - 1].t);
      }
      previous = own;
    }
    return shown_.back().t;
  }

 private:
  // Integral of dx over a property from node i to the next.
  template <class Property>
  double resistance(std::size_t i, Property property) const {
    const double face = places_[i + 1].top;
    return (face - places_[i].node) / property(places_[i].layer) +
           (places_[i + 1].node - face) / property(places_[i + 1].layer);
  }

  double resistance_to(double depth) const {
    double sum = 0, top = 0;
    for (const Layer& layer : problem_.stack) {
      sum += std::clamp(depth - top, 0.0, layer.thickness_metres) / layer.conductivity_watts_per_metre_kelvin;
      top += layer.thickness_metres;
    }
    return sum;
  }

  void surface(double& water, double& energy) const {
    const Shown& top = shown_.front();
    if (factor_ > 0) {
      const Head& head = problem_.head;
      const double flux = factor_ * std::min(head.film_watts_per_m2_kelvin * (head.dew_celsius - top.t),
                                             head.flux_cap_watts_per_m2);
      const double h_dew = vapour_enthalpy(head.dew_celsius);
      water = flux / (h_dew - k_liquid * top.t) + gas_ * dew_x_;
      energy = water * h_dew;
    } else {
      const RoomAir& air = problem_.air;
      const double room =
          -std::log1p(-air.relative_humidity * saturation(air.celsius) / problem_.pressure_pascal);
      water = k_evaporation_per_film * air.film_watts_per_m2_kelvin * (room - top.lambda);
      energy = air.film_watts_per_m2_kelvin * (air.celsius - top.t) +
               water * (water > 0 ? vapour_enthalpy(air.celsius) : top.h);
    }
  }

  PassProblem problem_;
  std::vector<Place> places_;
  std::vector<double> guess_;
  std::vector<Shown> shown_;
  double factor_ = 0, gas_ = 0, dew_x_ = 0;
};

// Every asked depth of a pass by CVODE.
std::vector<PlaceSummary> by_cvode(const PassProblem& problem, bool& good) {
  Equations equations(problem);
  std::vector<double> state = equations.start();
  std::vector<double> tolerances;
  for (std::size_t i = 0; i < state.size(); i += 2) tolerances.insert(tolerances.end(), {1e-3, 1e-8});
  std::vector<Series> series(problem.depths_metres.size());
  double begin = 0;
  const auto observe = [&](double seconds, std::span<const double> y) {
    if (!equations.refresh(y)) return;
    for (std::size_t d = 0; d < series.size(); ++d) {
      series[d].seconds.push_back(begin + seconds);
      series[d].celsius.push_back(equations.temperature_at(problem.depths_metres[d]));
    }
  };
  observe(0, state);
  good = true;
  for (const SteamPhase& phase : steam_phases(problem)) {
    equations.begin(phase.factor);
    good = good &&
           integrate_phase(
               state, phase.seconds,
               [&](std::span<const double> y, std::span<double> rate) { return equations.rate(y, rate); }, 3,
               1e-8, tolerances, observe);
    begin += phase.seconds;
  }
  std::vector<PlaceSummary> summaries;
  for (const Series& one : series) summaries.push_back(summary_of(one));
  return summaries;
}

// The stacks at their own pace; slower from a warm start in a cold, moist room; faster at altitude with the
// poorer steam of a lower pressure; and one twice.
std::vector<NamedProblem> agreement_problems() {
  std::vector<NamedProblem> all;
  for (const NamedProblem& named : problems_for_tests()) {
    all.push_back(named);
    NamedProblem slow = named;
    slow.name += ", slow";
    slow.problem.pace_metres_per_second *= 0.6;
    slow.problem.start_celsius = 27;
    slow.problem.start_activity = 0.35;
    slow.problem.air = {14, 16, 0.8};
    all.push_back(slow);
    NamedProblem fast = named;
    fast.name += ", fast";
    fast.problem.pace_metres_per_second *= 1.8;
    fast.problem.pressure_pascal = 80000;
    fast.problem.head.dew_celsius -= 6;
    all.push_back(fast);
  }
  NamedProblem twice = problems_for_tests().front();
  twice.name += ", twice";
  twice.problem.passes = 2;
  twice.problem.gap_seconds = 8;
  all.push_back(twice);
  return all;
}

TEST(PassAgreement, FineStepsMatchCvodeAndUsualStepsStayNear) {
  std::vector<double> usual_peak, usual_dose;
  double worst_peak = 0, worst_dose = 0;
  for (const NamedProblem& named : agreement_problems()) {
    bool good = false;
    const auto exact = by_cvode(named.problem, good);
    ASSERT_TRUE(good) << named.name;
    const auto fine_run = run_pass(named.problem, {.cells = k_cells, .refine = 64});
    const auto usual_run = run_pass(named.problem, {.cells = k_cells});
    ASSERT_TRUE(fine_run) << named.name << ": " << fine_run.error().message;
    ASSERT_TRUE(usual_run) << named.name << ": " << usual_run.error().message;
    const auto fine = summaries_of(*fine_run), usual = summaries_of(*usual_run);
    for (std::size_t d = 0; d < exact.size(); ++d) {
      EXPECT_NEAR(fine[d].peak_celsius, exact[d].peak_celsius, 0.02) << named.name << ", depth " << d;
      EXPECT_NEAR(fine[d].log10_dose, exact[d].log10_dose, 0.005) << named.name << ", depth " << d;
      worst_peak = std::max(worst_peak, std::fabs(fine[d].peak_celsius - exact[d].peak_celsius));
      worst_dose = std::max(worst_dose, std::fabs(fine[d].log10_dose - exact[d].log10_dose));
      usual_peak.push_back(std::fabs(usual[d].peak_celsius - exact[d].peak_celsius));
      usual_dose.push_back(std::fabs(usual[d].log10_dose - exact[d].log10_dose));
    }
  }
  const auto p95 = [](std::vector<double> errors) {
    std::sort(errors.begin(), errors.end());
    return errors[static_cast<std::size_t>(std::ceil(0.95 * static_cast<double>(errors.size()))) - 1];
  };
  RecordProperty("fine_worst_peak_kelvin", std::to_string(worst_peak));
  RecordProperty("fine_worst_log10_dose", std::to_string(worst_dose));
  RecordProperty("usual_p95_peak_kelvin", std::to_string(p95(usual_peak)));
  RecordProperty("usual_p95_log10_dose", std::to_string(p95(usual_dose)));
  EXPECT_LE(p95(usual_peak), 0.15);
}

}  // namespace
}  // namespace lastegg::steam
