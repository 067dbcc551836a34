// The march against exact solutions: a condensation front that forced vapour drives through foam, and the
// half space under a head in its two limits, a film and a constant flux.
//
// Front. Dry gas J_a (kg/m2 s) enters at the dew temperature d with humidity ratio X_d and leaves the front
// at the start temperature 0, saturated, with X_0. Behind a front of speed s everything stands at d,
// saturated, and holds the water W_d; ahead at 0 it holds W_0. Across the front
//   water    s (W_d - W_0) = J_a (X_d - X_0)
//   energy   s (E_d - E_0) = J_a (X_d h_v(d) - X_0 h_v(0)),   E = (C + c W) T + eps rho_s h_fg
// The first gives c W_d d = c W_0 d + c d J_a (X_d - X_0)/s; put into the second, with h_v(T) = c T +
// h_fg(T),
//   s = J_a (X_d h_fg(d) - X_0 h_fg(0) + c X_0 (d - 0)) /
//       ((C + c W_0)(d - 0) + eps (rho_d h_fg(d) - rho_0 h_fg(0)))
// and J_a X_d = rho_d u0. Without vapour storage eps = 0 and W_0 = 0.
//
// Half space, k = 0.05 W/mK, C = 390 kJ/m3K, 4 s, from 20 C: the classical solutions with erfc (Carslaw and
// Jaeger 1959, sections 2.4, 2.7 and 2.9, from memory, to be checked), for 95 C or 5 kW/m2. Condensate
// carries heat of its own, in proportion to the square of the temperature step while the rest is linear: so
// the steps here are a hundred-thousandth of that, and temperatures are scaled back.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <span>
#include <string>
#include <vector>

#include "physics/water/vapour.h"
#include "treatments/steam/pass/constants.h"
#include "treatments/steam/pass/march.h"

namespace lastegg::steam {
namespace {

constexpr double k_front_tolerance_relative = 0.01;
constexpr double k_start_celsius = 20;
constexpr double k_foam_capacity = 45e3;  // J/m3K
constexpr double k_forced_metres_per_second = 0.005;
constexpr double k_forced_way_metres = 0.010;  // u0 t

std::vector<GridCell> even_grid(double thickness_metres, int cells) {
  return std::vector<GridCell>(static_cast<std::size_t>(cells), GridCell{thickness_metres / cells, 0});
}

double humidity_ratio(double celsius) {
  const double y = saturation_fit(celsius).pressure_pascal / k_standard_pressure_pascal;
  return k_mass_ratio * y / (1 - y);
}

// Depth of the exact front after the forced gas has gone `k_forced_way_metres`.
double exact_front_metres(double dew, double porosity, double water_ahead) {
  const double rho_d = saturated_vapour_density(dew).kilograms_per_m3;
  const double rho_0 = saturated_vapour_density(k_start_celsius).kilograms_per_m3;
  const double dry_gas = rho_d * k_forced_way_metres / humidity_ratio(dew);  // kg/m2 in all
  const double rise = dew - k_start_celsius;
  const double x_0 = humidity_ratio(k_start_celsius);
  const double brought =
      dry_gas * (humidity_ratio(dew) * latent_heat_fit(dew) - x_0 * latent_heat_fit(k_start_celsius) +
                 k_liquid_heat_capacity * x_0 * rise);
  const double taken = (k_foam_capacity + k_liquid_heat_capacity * water_ahead) * rise +
                       porosity * (rho_d * latent_heat_fit(dew) - rho_0 * latent_heat_fit(k_start_celsius));
  return brought / taken;
}

// Depth at which the marched temperature passes the mean of start and dew.
double marched_front_metres(double dew, double porosity, double sorption, double cell_metres) {
  constexpr double depth = 0.008;
  const Stack stack{{depth, k_foam_capacity, 1e-6, true, porosity, 1.3, sorption}};
  const auto cells = static_cast<int>(std::lround(depth / cell_metres));
  March march(stack, even_grid(depth, cells), 0.0, k_standard_pressure_pascal, k_start_celsius, 1.0);
  Boundary steam;
  steam.steam = true;
  steam.dew_celsius = dew;
  steam.film_watts_per_m2_kelvin = 1e-6;
  steam.flux_cap_watts_per_m2 = 1e6;
  steam.forced_gas_metres_per_second = k_forced_metres_per_second;
  march.set_boundary(steam);
  const double seconds = k_forced_way_metres / k_forced_metres_per_second;
  const int steps = 6 * cells;
  for (int i = 0; i < steps; ++i) march.step(seconds / steps);
  EXPECT_EQ(march.fault(), MarchFault::none);
  const double middle = 0.5 * (dew + k_start_celsius);
  double low = 0, high = depth;
  while (high - low > 1e-9) {
    const double at = 0.5 * (low + high);
    (march.temperature_at(at) > middle ? low : high) = at;
  }
  return 0.5 * (low + high);
}

struct FrontRow {
  double dew_celsius, with_storage_millimetres, without_storage_millimetres;
};
constexpr FrontRow k_fronts[] = {{85, 2.1524, 2.70}, {95, 2.5356, 3.33}, {98, 2.6558, 3.54}};

std::string error_key(double dew, double cell_metres) {
  return "relative_error_" + std::to_string(std::lround(dew)) + "_celsius_" +
         std::to_string(std::lround(1e6 * cell_metres)) + "_micrometres";
}

// The jump condition itself against its published digits; ahead stands vapour alone, W_0 = eps rho_0.
TEST(FrontReference, JumpGivesThePrintedDepths) {
  const double rho_0 = saturated_vapour_density(k_start_celsius).kilograms_per_m3;
  for (const FrontRow& row : k_fronts) {
    EXPECT_NEAR(1e3 * exact_front_metres(row.dew_celsius, 0.97, 0.97 * rho_0), row.with_storage_millimetres,
                6e-4);
    EXPECT_NEAR(1e3 * exact_front_metres(row.dew_celsius, 0, 0), row.without_storage_millimetres, 0.006);
  }
}

TEST(FrontReference, MarchedFrontWithVapourStorage) {
  for (const FrontRow& row : k_fronts) {
    // The isotherm reaches a = 1 at W = 2 (W_h + eps rho_s): that is what stands ahead.
    constexpr double sorption = 0.01;
    const double ahead = 2 * (sorption + 0.97 * saturated_vapour_density(k_start_celsius).kilograms_per_m3);
    for (const double cell : {0.1e-3, 0.04e-3}) {
      const double marched = marched_front_metres(row.dew_celsius, 0.97, sorption, cell);
      const double error = marched / exact_front_metres(row.dew_celsius, 0.97, ahead) - 1;
      RecordProperty(error_key(row.dew_celsius, cell), std::to_string(error));
      EXPECT_LT(std::fabs(error), k_front_tolerance_relative) << row.dew_celsius << " C, cell " << cell;
    }
  }
}

TEST(FrontReference, MarchedFrontWithoutVapourStorage) {
  for (const FrontRow& row : k_fronts) {
    constexpr double sorption = 1e-3;
    for (const double cell : {0.1e-3, 0.04e-3}) {
      const double marched = marched_front_metres(row.dew_celsius, 0, sorption, cell);
      const double error = marched / exact_front_metres(row.dew_celsius, 0, 2 * sorption) - 1;
      RecordProperty(error_key(row.dew_celsius, cell), std::to_string(error));
      EXPECT_LT(std::fabs(error), k_front_tolerance_relative) << row.dew_celsius << " C, cell " << cell;
    }
  }
}

constexpr double k_conductivity = 0.05;
constexpr double k_capacity = 390e3;
constexpr double k_seconds = 4.0;

// Rise of a half space under a film h (infinite: a given surface), per kelvin of step.
double exact_share(double depth, double film) {
  const double reach = std::sqrt(k_conductivity / k_capacity * k_seconds);
  const double eta = depth / (2 * reach);
  if (std::isinf(film)) return std::erfc(eta);
  const double g = film / k_conductivity;
  return std::erfc(eta) - std::exp(g * depth + g * g * reach * reach) * std::erfc(eta + g * reach);
}

// Rise under a constant flux.
double exact_flux_rise(double depth, double flux) {
  const double reach = std::sqrt(k_conductivity / k_capacity * k_seconds);
  const double eta = depth / (2 * reach);
  return flux / k_conductivity *
         (2 * reach / std::sqrt(std::acos(-1.0)) * std::exp(-eta * eta) - depth * std::erfc(eta));
}

constexpr double k_scale = 1e-5;  // of the temperature step and of the flux

// Temperature rises at the depths, in kelvin, scaled back.
std::vector<double> half_space_rises(Boundary steam, std::span<const double> depths_metres) {
  constexpr double thickness = 0.012;
  const Stack stack{{thickness, k_capacity, k_conductivity, false, 0, 1, 0}};
  March march(stack, even_grid(thickness, 1200), 0.5, k_standard_pressure_pascal, k_start_celsius, 0.5);
  steam.steam = true;
  march.set_boundary(steam);
  // Steps that grow with time, since the flux at the start is steep.
  double now = 0;
  for (int i = 1; i <= 400; ++i) {
    const double next = k_seconds * std::pow(i / 400.0, 2);
    march.step(next - now);
    now = next;
  }
  EXPECT_EQ(march.fault(), MarchFault::none);
  std::vector<double> rises;
  for (const double depth : depths_metres)
    rises.push_back((march.temperature_at(depth) - k_start_celsius) / k_scale);
  return rises;
}

TEST(HalfSpaceReference, UnderAFilm) {
  Boundary steam;
  steam.dew_celsius = k_start_celsius + 75 * k_scale;
  steam.film_watts_per_m2_kelvin = 300;
  steam.flux_cap_watts_per_m2 = 1e5;
  const double depths[] = {0.001, 0.002, 0.003}, printed[] = {39.153, 22.580, 20.148};
  const auto rises = half_space_rises(steam, depths);
  steam.film_watts_per_m2_kelvin = 1200;  // a quarter of it under the skirt is the same
  steam.factor = 0.25;
  const auto skirt = half_space_rises(steam, depths);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(k_start_celsius + 75 * exact_share(depths[i], 300), printed[i], 6e-4);
    EXPECT_NEAR(rises[i], 75 * exact_share(depths[i], 300), 0.01);
    EXPECT_NEAR(skirt[i], rises[i], 1e-6);
  }
}

TEST(HalfSpaceReference, UnderAFilmSoGoodThatTheSurfaceIsGiven) {
  Boundary steam;
  steam.dew_celsius = k_start_celsius + 75 * k_scale;
  steam.film_watts_per_m2_kelvin = 1e7;
  steam.flux_cap_watts_per_m2 = 1e9;
  const double depths[] = {0.0005, 0.001, 0.002, 0.003}, printed[] = {66.613, 44.258, 23.621, 20.229};
  const auto rises = half_space_rises(steam, depths);
  for (std::size_t i = 0; i < 4; ++i) {
    const double exact = 75 * exact_share(depths[i], std::numeric_limits<double>::infinity());
    EXPECT_NEAR(k_start_celsius + exact, printed[i], 6e-4);
    EXPECT_NEAR(rises[i], exact, 0.01);
  }
}

TEST(HalfSpaceReference, UnderTheFluxThatTheSupplyCanBring) {
  Boundary steam;
  steam.dew_celsius = k_start_celsius + 500 * k_scale;  // far above what the flux can reach
  steam.film_watts_per_m2_kelvin = 1e8;
  steam.flux_cap_watts_per_m2 = 5e3 * k_scale;
  const double depths[] = {0, 0.001, 0.002}, printed[] = {80.8049, 17.2835, 1.8392};
  const auto rises = half_space_rises(steam, depths);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(exact_flux_rise(depths[i], 5e3), printed[i], 6e-5);
    EXPECT_NEAR(rises[i], exact_flux_rise(depths[i], 5e3), 0.01);
  }
}

}  // namespace
}  // namespace lastegg::steam
