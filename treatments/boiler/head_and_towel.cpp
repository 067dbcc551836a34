#include "treatments/boiler/head_and_towel.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/water/vapour.h"
#include "words/say.h"

namespace lastegg::boiler {
namespace {

constexpr double k_steam_celsius = 100;
constexpr double k_terry_heat_capacity = 1340;  // J/(kg K), dry cotton (materials data, from memory)
constexpr double k_range_score = 1.96;          // a range holds the middle 95 %
constexpr double k_cautious_score = 1.645;      // 19 of 20 last longer
constexpr double k_loss_film = 10;              // W/m2K, to the room

Refusal outside(const char* what, const char* where, double value) {
  return refuse({ErrorKind::bad_input, say("{} is {:g}, which no steamer has", in_language(what), value),
                 where, fmt::format("{:g}", value), "", ""});
}

// Seconds until a wrap that holds so much is full.
double seconds_to_fill(const TowelWrap& wrap, double mass_per_m2, double holds, double carried_over) {
  const double footprint = wrap.head_length_metres * wrap.head_width_metres;
  const double area = k_wrap_per_footprint * footprint;
  const double mass = mass_per_m2 * area;
  const double latent = latent_heat_fit(wrap.dew_celsius);
  const double warming = wrap.dew_celsius - wrap.room_celsius;
  const double once = mass * k_terry_heat_capacity * warming / latent;
  const double rate =
      carried_over * wrap.supply_kilograms_per_second + k_loss_film * (area - footprint) * warming / latent;
  return std::max(0.0, holds * mass - once) / rate;
}

}  // namespace

Result<WarmUp> warm_up(double supply, double rest_seconds, double room_celsius) {
  if (!(supply >= 1e-5 && supply <= 5e-3)) return outside(to_say("the supply in kg/s"), "/supply", supply);
  if (!(rest_seconds >= 0)) return outside(to_say("the rest in seconds"), "/rest_seconds", rest_seconds);
  if (!(room_celsius >= -10 && room_celsius <= 50))
    return outside(to_say("the room in C"), "/room_celsius", room_celsius);
  const double cold =
      (k_steam_celsius - room_celsius) * (rest_seconds > 100 * k_hose_cooling_seconds
                                              ? 1
                                              : 1 - numerics::exp(-rest_seconds / k_hose_cooling_seconds));
  WarmUp out;
  out.water_kilograms = k_hose_and_head_joules_per_kelvin * cold / latent_heat_fit(k_steam_celsius);
  out.seconds = out.water_kilograms / supply;
  return out;
}

Result<TowelLife> towel_life(const TowelWrap& wrap) {
  if (!(wrap.head_length_metres >= 0.01 && wrap.head_length_metres <= 0.6))
    return outside(to_say("the length of the head in m"), "/head/length_metres", wrap.head_length_metres);
  if (!(wrap.head_width_metres >= 0.01 && wrap.head_width_metres <= 0.6))
    return outside(to_say("the width of the head in m"), "/head/width_metres", wrap.head_width_metres);
  if (!(wrap.supply_kilograms_per_second >= 1e-5 && wrap.supply_kilograms_per_second <= 5e-3))
    return outside(to_say("the supply in kg/s"), "/supply", wrap.supply_kilograms_per_second);
  TowelLife life;
  life.seconds = seconds_to_fill(wrap, k_terry_kilograms_per_m2, k_terry_holds, k_carried_over_share);
  // Each unknown at its worse end alone; together they are taken as independent spreads.
  const double alone[] = {
      seconds_to_fill(wrap, k_terry_least, k_terry_holds, k_carried_over_share),
      seconds_to_fill(wrap, k_terry_kilograms_per_m2, k_terry_holds_least, k_carried_over_share),
      seconds_to_fill(wrap, k_terry_kilograms_per_m2, k_terry_holds, k_carried_over_most)};
  double sum = 0;
  for (const double seconds : alone) {
    const double change = numerics::log(std::max(seconds, 1.0) / std::max(life.seconds, 1.0));
    sum += change * change;
  }
  life.shortest_seconds = life.seconds * numerics::exp(-k_cautious_score / k_range_score * std::sqrt(sum));
  life.water_kilograms = k_terry_kilograms_per_m2 * k_terry_holds * k_wrap_per_footprint *
                         wrap.head_length_metres * wrap.head_width_metres;
  return life;
}

}  // namespace lastegg::boiler
