#include <fmt/format.h>

#include <algorithm>

#include "treatments/steam/pass/pass.h"
#include "words/say.h"

namespace lastegg::steam {
namespace {

constexpr double k_least_distance_from_boiling_kelvin = 0.25;  // question `pass` refuses from 0.3 K on

struct Range {
  double least, most;
  const char* unit;
};

Refusal outside(const char* name, const std::string& where, double value, const Range& range) {
  const bool low = !(value > range.most);
  return refuse({ErrorKind::bad_input,
                 low ? say("{} is {:g} {}; it must be at least {:g} {}", in_language(name), value, range.unit,
                           range.least, range.unit)
                     : say("{} is {:g} {}; it must be at most {:g} {}", in_language(name), value, range.unit,
                           range.most, range.unit),
                 where, fmt::format("{:g}", value), fmt::format("{:g}", low ? range.least : range.most),
                 range.unit});
}

bool inside(double value, const Range& range) {
  return value >= range.least && value <= range.most;
}

// Limits within which the model was exercised (docs/decisions/012-input-box.md); they are wide on purpose.
constexpr Range k_thickness{1e-5, 0.5, "m"};
constexpr Range k_capacity{1e3, 1e7, "J/m3K"};
constexpr Range k_conductivity{0.005, 5, "W/mK"};
constexpr Range k_porosity{0.01, 0.999, ""};
constexpr Range k_tortuosity{1, 20, ""};
constexpr Range k_sorption{0.01, 200, "kg/m3"};
constexpr Range k_pace{0.0005, 1, "m/s"};
constexpr Range k_length{0.002, 1, "m"};
constexpr Range k_film{10, 10000, "W/m2K"};
constexpr Range k_cap{1e3, 1e6, "W/m2"};
constexpr Range k_forced{0, 0.1, "m/s"};
constexpr Range k_skirt{0, 0.2, "m"};
constexpr Range k_skirt_factor{0, 1, ""};
constexpr Range k_efficiency{0, 1.5, ""};
constexpr Range k_pressure{50000, 110000, "Pa"};
constexpr Range k_start{-25, 60, "C"};
constexpr Range k_activity{0, 0.95, ""};
constexpr Range k_air_film{1, 100, "W/m2K"};
constexpr Range k_humidity{0, 1, ""};
constexpr Range k_passes{1, 10, ""};
constexpr Range k_gap{0.1, 3600, "s"};
constexpr Range k_observe{1, 3600, "s"};

}  // namespace

Result<void> check(const PassProblem& problem) {
  if (problem.stack.empty()) {
    return refuse({ErrorKind::bad_input, say("the stack has no layer; it needs at least 1"), "/stack", "0",
                   "1", "layers"});
  }
  for (std::size_t i = 0; i < problem.stack.size(); ++i) {
    const Layer& layer = problem.stack[i];
    const auto at = [i](const char* key) { return fmt::format("/stack/{}/{}", i, key); };
    if (!inside(layer.thickness_metres, k_thickness))
      return outside(to_say("thickness"), at("thickness_metres"), layer.thickness_metres, k_thickness);
    if (!inside(layer.heat_capacity_joules_per_m3_kelvin, k_capacity))
      return outside(to_say("heat capacity"), at("heat_capacity_joules_per_m3_kelvin"),
                     layer.heat_capacity_joules_per_m3_kelvin, k_capacity);
    if (!inside(layer.conductivity_watts_per_metre_kelvin, k_conductivity))
      return outside(to_say("conductivity"), at("conductivity_watts_per_metre_kelvin"),
                     layer.conductivity_watts_per_metre_kelvin, k_conductivity);
    if (!layer.permeable) continue;
    if (!inside(layer.porosity, k_porosity))
      return outside(to_say("porosity"), at("porosity"), layer.porosity, k_porosity);
    if (!inside(layer.tortuosity, k_tortuosity))
      return outside(to_say("tortuosity"), at("tortuosity"), layer.tortuosity, k_tortuosity);
    if (!inside(layer.sorption_scale_kilograms_per_m3, k_sorption))
      return outside(to_say("sorption scale"), at("sorption_scale_kilograms_per_m3"),
                     layer.sorption_scale_kilograms_per_m3, k_sorption);
  }
  struct Item {
    const char* name;
    const char* where;
    double value;
    const Range& range;
  };
  const Item items[] = {
      {to_say("pressure"), "/pressure_pascal", problem.pressure_pascal, k_pressure},
      {to_say("pace"), "/head/pace_metres_per_second", problem.pace_metres_per_second, k_pace},
      {to_say("head length"), "/head/length_metres", problem.head.length_metres, k_length},
      {to_say("film coefficient"), "/head/film_watts_per_m2_kelvin", problem.head.film_watts_per_m2_kelvin,
       k_film},
      {to_say("flux cap"), "/head/flux_cap_watts_per_m2", problem.head.flux_cap_watts_per_m2, k_cap},
      {to_say("forced gas speed"), "/head/forced_gas_metres_per_second",
       problem.head.forced_gas_metres_per_second, k_forced},
      {to_say("skirt length"), "/head/skirt_length_metres", problem.head.skirt_length_metres, k_skirt},
      {to_say("skirt factor"), "/head/skirt_factor", problem.head.skirt_factor, k_skirt_factor},
      {to_say("vapour efficiency"), "/vapour_efficiency", problem.vapour_efficiency, k_efficiency},
      {to_say("start temperature"), "/start_celsius", problem.start_celsius, k_start},
      {to_say("start activity"), "/start_activity", problem.start_activity, k_activity},
      {to_say("air temperature"), "/air/celsius", problem.air.celsius, k_start},
      {to_say("air film coefficient"), "/air/film_watts_per_m2_kelvin", problem.air.film_watts_per_m2_kelvin,
       k_air_film},
      {to_say("relative humidity"), "/air/relative_humidity", problem.air.relative_humidity, k_humidity},
      {to_say("number of passes"), "/passes", static_cast<double>(problem.passes), k_passes},
      {to_say("time between passes"), "/gap_seconds", problem.gap_seconds, k_gap},
      {to_say("observed time"), "/observe_seconds", problem.observe_seconds, k_observe},
  };
  for (const Item& item : items) {
    if (!inside(item.value, item.range)) return outside(item.name, item.where, item.value, item.range);
  }
  const double boiling = boiling_celsius(problem.pressure_pascal);
  const double warmest = std::max(problem.start_celsius, problem.air.celsius);
  const Range dew{warmest + 1.0, boiling - k_least_distance_from_boiling_kelvin, "C"};
  if (!inside(problem.head.dew_celsius, dew)) {
    return refuse({ErrorKind::bad_input,
                   say("dew temperature is {:g} C; it must lie between {:.2f} C (1 K above cloth and "
                       "room) and {:.2f} C "
                       "(0.25 K below boiling at {:.0f} Pa, where the model diverges)",
                       problem.head.dew_celsius, dew.least, dew.most, problem.pressure_pascal),
                   "/head/dew_celsius", fmt::format("{:g}", problem.head.dew_celsius),
                   fmt::format("{:.2f}", problem.head.dew_celsius < dew.least ? dew.least : dew.most), "C"});
  }
  const double bottom = thickness_metres(problem.stack);
  for (std::size_t d = 0; d < problem.depths_metres.size(); ++d) {
    const double depth = problem.depths_metres[d];
    if (!(depth >= 0 && depth <= bottom * (1 + 1e-12)))
      return outside(to_say("depth"), fmt::format("/depths_metres/{}", d), depth, {0, bottom, "m"});
  }
  return {};
}

}  // namespace lastegg::steam
