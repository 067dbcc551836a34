#include "treatments/jet/jet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "physics/water/vapour.h"
#include "physics/water/water.h"
#include "words/say.h"

namespace lastegg::jet {
namespace {

constexpr double k_pi = 3.14159265358979323846;
constexpr double k_air_kilograms_per_m3 = 1.2;  // room air, 20 C
constexpr double k_diffusing_vapour_conductivity = 1.0;
constexpr double k_steam_kilograms_per_m3 = 0.6;  // at 100 C, saturation table 0.598
constexpr double k_most_strips = 1000;

Refusal outside(const char* what, const char* where, double value, double least, double most,
                const char* unit) {
  return refuse({ErrorKind::bad_input,
                 say("{} is {:g} {}; it must lie between {:g} and {:g} {}", in_language(what), value, unit,
                     least, most, unit),
                 where, fmt::format("{:g}", value), fmt::format("{:g}", value < least ? least : most), unit});
}

bool within(double value, double least, double most) {
  return value >= least && value <= most;
}

double wall_film(const Crack& crack) {
  return crack.wall_effusivity / std::sqrt(k_pi * crack.seconds);
}

Result<void> check(const Crack& crack) {
  if (!within(crack.gap_metres, 1e-5, 0.1))
    return outside(to_say("the gap"), "/crack/gap_metres", crack.gap_metres, 1e-5, 0.1, "m");
  if (!within(crack.wall_effusivity, 10, 40000))
    return outside(to_say("the effusivity of the walls"), "/crack/wall", crack.wall_effusivity, 10, 40000,
                   "W s^0.5/m2K");
  if (!within(crack.seconds, 0.05, 3600))
    return outside(to_say("the time"), "/crack/seconds", crack.seconds, 0.05, 3600, "s");
  return {};
}

}  // namespace

Result<double> speed_at(const Nozzle& nozzle, double distance) {
  if (!within(nozzle.size_metres, 1e-4, 0.05))
    return outside(to_say("the opening"), "/nozzle/size_metres", nozzle.size_metres, 1e-4, 0.05, "m");
  const bool slot = nozzle.opening == Opening::slot;
  if (slot && !within(nozzle.width_metres, nozzle.size_metres, 0.6))
    return outside(to_say("the width of the slot"), "/nozzle/width_metres", nozzle.width_metres,
                   nozzle.size_metres, 0.6, "m");
  if (!within(nozzle.supply_kilograms_per_second, 1e-5, 5e-3))
    return outside(to_say("the supply"), "/supply", nozzle.supply_kilograms_per_second, 1e-5, 5e-3, "kg/s");
  if (!within(distance, 0, 2))
    return outside(to_say("the distance"), "/distance_metres", distance, 0, 2, "m");
  const auto steam = saturation_at(pascals(nozzle.room_pascal));
  if (!steam) return refuse(steam.error());
  const double density = in_kilograms_per_m3(steam->vapour.density());
  const double area =
      slot ? nozzle.size_metres * nozzle.width_metres : 0.25 * k_pi * nozzle.size_metres * nozzle.size_metres;
  const double at_opening = nozzle.supply_kilograms_per_second / (density * area);
  const double sound = in_metres_per_second(steam->vapour.sound_speed);
  if (at_opening > sound) {
    return refuse(
        {ErrorKind::out_of_domain,
         say("the steam would leave at {:.0f} m/s, faster than its sound of {:.0f} m/s: it comes under "
             "pressure, and blows away whatever is loose",
             at_opening, sound),
         "/nozzle/size_metres", fmt::format("{:.0f}", at_opening), fmt::format("{:.0f}", sound), "m/s"});
  }
  if (distance <= 0) return at_opening;
  const double thin = std::sqrt(density / k_air_kilograms_per_m3);
  const double decay = slot ? k_slot_decay * std::sqrt(nozzle.size_metres / distance * thin)
                            : k_round_decay * nozzle.size_metres / distance * thin;
  return at_opening * std::min(1.0, decay);
}

double moving_speed(const Body& body, double gas_kilograms_per_m3) {
  return std::sqrt(2 * body.hold_newtons / (gas_kilograms_per_m3 * k_drag_coefficient * body.area_m2));
}

Scatter scatter_at(double speed) {
  return speed < k_stays_below      ? Scatter::stays
         : speed < k_scatters_above ? Scatter::may_scatter
                                    : Scatter::scatters;
}

Result<double> closed_reach(const Crack& crack) {
  if (auto checked = check(crack); !checked) return refuse(checked.error());
  return std::sqrt(k_diffusing_vapour_conductivity * crack.gap_metres / (2 * wall_film(crack)));
}

Result<double> open_reach(const Crack& crack, double speed, double steam_celsius, double wall_celsius) {
  if (auto checked = check(crack); !checked) return refuse(checked.error());
  if (!within(speed, 0, 50))
    return outside(to_say("the speed in the crack"), "/crack/through_metres_per_second", speed, 0, 50, "m/s");
  if (!(steam_celsius >= wall_celsius + 5))
    return outside(to_say("the steam"), "/dew_celsius", steam_celsius, wall_celsius + 5, 110, "C");
  return k_steam_kilograms_per_m3 * speed * crack.gap_metres * latent_heat_fit(steam_celsius) /
         (2 * wall_film(crack) * (steam_celsius - wall_celsius));
}

double conduction_side(double diffusivity, double seconds) {
  // erf(y / (2 sqrt(alpha t))) = 0.9 at y = 1.16309 x 2 sqrt(alpha t)
  return 2 * 1.1630871536766743 * std::sqrt(diffusivity * seconds);
}

double counted_width(double head_width, double diffusivity, double seconds) {
  const double lost = std::max(k_lost_side_metres, conduction_side(diffusivity, seconds));
  return std::max(0.0, head_width - 2 * lost);
}

int strips_for(double face_width, double counted) {
  if (!(counted > 0) || !(face_width > 0)) return 0;
  return static_cast<int>(std::min(k_most_strips, std::ceil(face_width / counted - 1e-9)));
}

}  // namespace lastegg::jet
