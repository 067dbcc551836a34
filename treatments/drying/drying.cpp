#include "treatments/drying/drying.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/water/vapour.h"
#include "treatments/steam/pass/constants.h"
#include "treatments/steam/pass/grid.h"
#include "treatments/steam/pass/march.h"
#include "treatments/steam/pass/schedule.h"
#include "words/say.h"

namespace lastegg::drying {
namespace {

constexpr int k_cells = 24;
constexpr double k_first_step_seconds = 0.05;
constexpr double k_longest_step_seconds = 900;
constexpr double k_step_growth = 1.4;
constexpr double k_smallest_step_share = 1.0 / 4096;  // of the step that was wanted
constexpr double k_largest_mismatch_kelvin = 1.0;
// A step may not take more than this share of what is to be dried, so that the end is met within as much.
constexpr double k_largest_share_per_step = 0.1;

double lambda_of(double celsius, double activity, double pressure_pascal) {
  const double y = activity * saturation_fit(celsius).pressure_pascal / pressure_pascal;
  return -numerics::log(1 - std::min(y, 0.99));
}

steam::Boundary steam_boundary(const steam::PassProblem& problem, double factor) {
  steam::Boundary boundary;
  boundary.steam = true;
  boundary.factor = factor;
  boundary.dew_celsius = problem.head.dew_celsius;
  boundary.film_watts_per_m2_kelvin = problem.head.film_watts_per_m2_kelvin;
  boundary.flux_cap_watts_per_m2 = problem.head.flux_cap_watts_per_m2;
  boundary.forced_gas_metres_per_second = problem.head.forced_gas_metres_per_second;
  boundary.air_celsius = problem.air.celsius;
  boundary.air_relative_humidity = problem.air.relative_humidity;
  return boundary;
}

steam::Boundary air_boundary(const steam::RoomAir& air) {
  steam::Boundary boundary;
  boundary.air_celsius = air.celsius;
  boundary.air_film_watts_per_m2_kelvin = air.film_watts_per_m2_kelvin;
  boundary.air_relative_humidity = air.relative_humidity;
  return boundary;
}

// One step, in as many parts as it takes to be free of faults; the parts that were needed, 0 if none were
// enough.
double step_in_parts(steam::March& march, double seconds) {
  const steam::March before = march;
  for (double part = 1; part >= k_smallest_step_share; part /= 2) {
    march = before;
    double done = 0;
    for (; done < 1 - part / 2 && march.fault() == steam::MarchFault::none; done += part)
      march.step(part * seconds);
    if (march.fault() == steam::MarchFault::none) return part;
  }
  return 0;
}

bool march_phase(steam::March& march, const steam::Boundary& boundary, const steam::Schedule& schedule,
                 double seconds) {
  if (seconds <= 0) return true;
  march.set_boundary(boundary);
  double step = steam::first_step_seconds(schedule, seconds);
  for (int block = 0; block < schedule.blocks; ++block, step *= schedule.ratio) {
    for (int i = 0; i < schedule.steps; ++i) {
      if (step_in_parts(march, step) == 0) return false;
    }
  }
  return true;
}

bool march_passes(steam::March& march, const steam::PassProblem& pass) {
  const double skirt = pass.head.skirt_length_metres / pass.pace_metres_per_second;
  const double cover = pass.head.length_metres / pass.pace_metres_per_second;
  const steam::Schedules& schedules = steam::k_usual_schedules[steam::schedule_row(cover)];
  const steam::Boundary weak = steam_boundary(pass, pass.head.skirt_factor);
  for (int i = 0; i < pass.passes; ++i) {
    if (i > 0 && !march_phase(march, air_boundary(pass.air), schedules.gap, pass.gap_seconds)) return false;
    if (!march_phase(march, weak, schedules.skirt, skirt)) return false;
    if (!march_phase(march, steam_boundary(pass, 1), schedules.cover, cover)) return false;
    if (!march_phase(march, weak, schedules.skirt, skirt)) return false;
  }
  return true;
}

// Water that the stack holds in the end beyond what it began with, where the room is damper than the cloth
// was.
double resting_gain(const steam::PassProblem& pass, const steam::RoomAir& air) {
  const auto filled = [](double activity) { return 1 - std::sqrt(1 - std::min(activity, 1.0)); };
  const double more = 2 * (filled(air.relative_humidity) - filled(pass.start_activity));
  double sum = 0;
  for (const steam::Layer& layer : pass.stack) {
    if (!layer.permeable) break;
    const double pores = layer.porosity * saturated_vapour_density(air.celsius).kilograms_per_m3;
    sum += layer.thickness_metres * (layer.sorption_scale_kilograms_per_m3 + pores) * more;
  }
  return air.relative_humidity < 1 ? std::max(0.0, sum) : 0;
}

}  // namespace

double wet_bulb_celsius(const steam::RoomAir& air, double pressure_pascal) {
  const double far = lambda_of(air.celsius, air.relative_humidity, pressure_pascal);
  const auto balance = [&](double celsius) {
    return air.celsius - celsius -
           steam::k_evaporation_per_film * latent_heat_fit(celsius) *
               (lambda_of(celsius, 1, pressure_pascal) - far);
  };
  double low = air.celsius - 60, high = air.celsius;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    (balance(middle) > 0 ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

double free_surface_rate(const steam::RoomAir& air, double pressure_pascal) {
  const double celsius = wet_bulb_celsius(air, pressure_pascal);
  return air.film_watts_per_m2_kelvin * (air.celsius - celsius) / latent_heat_fit(celsius);
}

Result<Drying> dry(const DryingProblem& problem) {
  const steam::PassProblem& pass = problem.pass;
  if (auto checked = steam::check(pass); !checked) return refuse(checked.error());
  const std::array<double, 1> anchors{0};
  const auto grid = steam::make_grid(pass.stack, anchors, k_cells);
  steam::March march(pass.stack, grid, pass.vapour_efficiency, pass.pressure_pascal, pass.start_celsius,
                     pass.start_activity);
  march.set_largest_mismatch(k_largest_mismatch_kelvin);
  const Error unstable{
      ErrorKind::out_of_domain, say("no stable solution of this drying was found"), "", "", "", ""};
  if (!march_passes(march, pass)) return refuse(unstable);

  const double gained = std::max(0.0, march.water_gain_kilograms_per_m2());
  Drying out;
  out.water_kilograms_per_m2 = gained + problem.carried_over_kilograms_per_m2;
  const double dry_at = std::max(k_dry_share * out.water_kilograms_per_m2, k_dry_kilograms_per_m2);
  double seconds = 0;
  if (problem.carried_over_kilograms_per_m2 > 0) {
    const double rate = free_surface_rate(problem.air, pass.pressure_pascal);
    if (!(rate * k_longest_seconds > problem.carried_over_kilograms_per_m2)) return out;
    seconds = problem.carried_over_kilograms_per_m2 / rate;
  }
  march.set_boundary(air_boundary(problem.air));
  double step = k_first_step_seconds;
  const double resting = resting_gain(pass, problem.air);
  double left = gained - resting;
  while (left > dry_at) {
    if (seconds > k_longest_seconds) return out;
    const steam::March before = march;
    const double part = step_in_parts(march, step);
    if (part == 0) return refuse(unstable);
    const double now_left = march.water_gain_kilograms_per_m2() - resting;
    if (left - now_left > k_largest_share_per_step * gained && step > 2 * k_first_step_seconds) {
      march = before;
      step /= 2;
      continue;
    }
    // The end lies inside the step where the water falls past the threshold.
    if (now_left <= dry_at && left > now_left) {
      seconds += step * (left - dry_at) / (left - now_left);
    } else {
      seconds += step;
    }
    left = now_left;
    step = part < 1 ? step * part * 2 : std::min(step * k_step_growth, k_longest_step_seconds);
  }
  out.seconds = seconds;
  return out;
}

}  // namespace lastegg::drying
