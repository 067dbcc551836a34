#include "treatments/boiler/boiler.h"

#include <fmt/format.h>

#include <algorithm>

#include "physics/water/water.h"
#include "words/say.h"

namespace lastegg::boiler {
namespace {

constexpr double k_longest_seconds = 24 * 3600;
constexpr double k_step_seconds = 1;

struct Curve {
  double pressure_pascal, celsius, liquid, vapour;  // enthalpies, J/kg
};

Result<Curve> at_pressure(double pressure_pascal) {
  const auto found = saturation_at(pascals(pressure_pascal));
  if (!found) return refuse(found.error());
  return Curve{pressure_pascal, in_celsius(found->temperature),
               in_joules_per_kilogram(found->liquid.enthalpy),
               in_joules_per_kilogram(found->vapour.enthalpy)};
}

double working_pascal(const Machine& machine) {
  return machine.room_pascal + (machine.tank == Tank::kettle ? 0 : machine.gauge_pascal);
}

Result<void> check(const Machine& machine) {
  const struct {
    const char* name;
    const char* where;
    double value, least, most;
    const char* unit;
  } rows[] = {
      {to_say("power"), "/power_watts", machine.power_watts, 200, 12000, "W"},
      {to_say("water"), "/water_kilograms", machine.water_kilograms, 0.1, 50, "kg"},
      {to_say("gauge pressure"), "/gauge_pascal", machine.gauge_pascal, 0, 1.2e6, "Pa"},
      {to_say("room pressure"), "/pressure_pascal", machine.room_pascal, 50e3, 110e3, "Pa"},
      {to_say("room temperature"), "/room_celsius", machine.room_celsius, -10, 50, "C"},
      {to_say("temperature of the water"), "/cold_water_celsius", machine.cold_water_celsius, 1, 60, "C"},
      {to_say("cooling time"), "/cooling_minutes", machine.shortest_cooling_seconds, 0, 6 * 3600, "s"}};
  for (const auto& row : rows) {
    if (row.value >= row.least && row.value <= row.most) continue;
    return refuse({ErrorKind::bad_input,
                   say("{} is {:g} {}; it must lie between {:g} and {:g} {}", in_language(row.name),
                       row.value, row.unit, row.least, row.most, row.unit),
                   row.where, fmt::format("{:g}", row.value),
                   fmt::format("{:g}", row.value < row.least ? row.least : row.most), row.unit});
  }
  return {};
}

// The state of the boiler and its books. Enthalpy of liquid over temperature is taken as a straight line
// between filling and working temperature, both ends exact: within 0.3 % of IAPWS-IF97 between.
class Boiler {
 public:
  Boiler(const Machine& machine, const Curve& cold, const Curve& working, double low_celsius)
      : machine_(machine),
        working_(working),
        low_celsius_(low_celsius),
        heat_per_kelvin_((working.liquid - cold.liquid) / (working.celsius - cold.celsius)),
        cold_(cold),
        celsius_(machine.cold_water_celsius),
        boiler_kilograms_(continuous() ? k_continuous_boiler_kilograms : machine.water_kilograms),
        tank_kilograms_(machine.water_kilograms) {
    start_joules_ = stored();
  }

  bool continuous() const { return machine_.tank == Tank::continuous; }
  bool hot() const { return celsius_ >= working_.celsius - 1e-9; }
  bool sagged() const { return celsius_ < low_celsius_; }
  bool empty() const {
    return continuous() ? tank_kilograms_ <= 1e-9
                        : boiler_kilograms_ <= k_reserve_share * machine_.water_kilograms + 1e-9;
  }
  double celsius() const { return celsius_; }
  double water() const { return continuous() ? tank_kilograms_ : boiler_kilograms_; }

  /// One second; returns the steam given off.
  double step(bool heating, double steam_rate, Timetable& books) {
    double out = steam_rate * k_step_seconds;
    const double available =
        continuous() ? tank_kilograms_ : boiler_kilograms_ - k_reserve_share * machine_.water_kilograms;
    out = std::clamp(out, 0.0, std::max(0.0, available));
    const double vapour = liquid_at(celsius_) + (working_.vapour - working_.liquid);
    const double in = continuous() ? out : 0;
    const double lost = k_loss_watts_per_kelvin * (celsius_ - machine_.room_celsius) * k_step_seconds;
    const double given = out * vapour, fed = in * cold_.liquid;
    double joules = stored() + fed - given - lost;
    boiler_kilograms_ += in - out;
    if (continuous()) tank_kilograms_ -= out;
    double electric = 0;
    if (heating) {
      const double full = stored_at(working_.celsius);
      electric = std::clamp(full - joules, 0.0, machine_.power_watts * k_step_seconds);
      joules += electric;
    }
    celsius_ = celsius_of(joules);
    books.electric_joules += electric;
    books.fed_joules += fed;
    books.given_joules += given;
    books.lost_joules += lost;
    books.steam_kilograms += out;
    return out;
  }

  void refill(Timetable& books) {
    const double missing = continuous() ? machine_.water_kilograms - tank_kilograms_
                                        : machine_.water_kilograms - boiler_kilograms_;
    if (continuous()) {
      tank_kilograms_ += missing;
      return;
    }
    const double joules = stored() + missing * cold_.liquid;
    books.fed_joules += missing * cold_.liquid;
    boiler_kilograms_ += missing;
    celsius_ = celsius_of(joules);
  }

  double stored() const { return stored_at(celsius_); }
  double stored_since_start() const { return stored() - start_joules_; }

 private:
  double liquid_at(double celsius) const {
    return cold_.liquid + heat_per_kelvin_ * (celsius - cold_.celsius);
  }
  double stored_at(double celsius) const {
    return boiler_kilograms_ * liquid_at(celsius) + k_shell_joules_per_kelvin * celsius;
  }
  double celsius_of(double joules) const {
    const double fixed = boiler_kilograms_ * (cold_.liquid - heat_per_kelvin_ * cold_.celsius);
    return (joules - fixed) / (boiler_kilograms_ * heat_per_kelvin_ + k_shell_joules_per_kelvin);
  }

  const Machine& machine_;
  Curve working_;
  double low_celsius_, heat_per_kelvin_;
  Curve cold_;
  double celsius_, boiler_kilograms_, tank_kilograms_, start_joules_ = 0;
};

Result<Curve> cold_curve(const Machine& machine) {
  const auto found = saturation_at(celsius(machine.cold_water_celsius));
  if (!found) return refuse(found.error());
  return Curve{in_pascals(found->pressure), machine.cold_water_celsius,
               in_joules_per_kilogram(found->liquid.enthalpy),
               in_joules_per_kilogram(found->vapour.enthalpy)};
}

void book(Timetable& table, PhaseKind kind, const Boiler& boiler, double seconds, double steam_seconds,
          double steam_kilograms) {
  if (table.phases.empty() || table.phases.back().kind != kind) {
    table.phases.push_back({});
    table.phases.back().kind = kind;
    table.phases.back().from_seconds = table.seconds;
  }
  Phase& phase = table.phases.back();
  phase.seconds += seconds;
  phase.steam_seconds += steam_seconds;
  phase.steam_kilograms += steam_kilograms;
  phase.end_celsius = boiler.celsius();
  phase.end_kilograms = boiler.water();
  table.seconds += seconds;
  table.steam_seconds += steam_seconds;
  if (kind != PhaseKind::steam) table.waiting_seconds += seconds;
}

}  // namespace

Result<double> sustained_supply(const Machine& machine) {
  if (auto checked = check(machine); !checked) return refuse(checked.error());
  const auto working = at_pressure(working_pascal(machine));
  if (!working) return refuse(working.error());
  const auto cold = cold_curve(machine);
  if (!cold) return refuse(cold.error());
  const double net =
      machine.power_watts - k_loss_watts_per_kelvin * (working->celsius - machine.room_celsius);
  const double in = machine.tank == Tank::continuous ? cold->liquid : working->liquid;
  if (!(net > 0)) {
    return refuse({ErrorKind::out_of_domain,
                   say("the power does not even cover what the boiler loses to the room"), "/power_watts",
                   fmt::format("{:g}", machine.power_watts), "", "W"});
  }
  return net / (working->vapour - in);
}

Result<double> weighed_supply(double before_kilograms, double after_kilograms, double seconds) {
  if (!(before_kilograms > after_kilograms) || !(seconds > 0)) {
    return refuse({ErrorKind::bad_input, say("the machine must be lighter after the steaming than before"),
                   "/weighing", fmt::format("{:g}", before_kilograms - after_kilograms), "0", "kg"});
  }
  return (before_kilograms - after_kilograms) / seconds;
}

Result<Timetable> timetable(const Machine& machine, double supply, double duty, double steam_seconds) {
  const auto sustained = sustained_supply(machine);
  if (!sustained) return refuse(sustained.error());
  if (!(supply >= 1e-5 && supply <= 5e-3)) {
    return refuse({ErrorKind::bad_input,
                   say("the supply is {:g} g/s; it must lie between 0.01 and 5 g/s", 1e3 * supply), "/supply",
                   fmt::format("{:g}", 1e3 * supply), "", "g/s"});
  }
  if (!(duty >= 0.05 && duty <= 1) || !(steam_seconds >= 1 && steam_seconds <= 8 * 3600)) {
    return refuse({ErrorKind::bad_input,
                   say("the share of steaming must be 0.05 to 1, and the steam 1 s to 8 h"), "/steam_minutes",
                   fmt::format("{:g}", steam_seconds / 60), "", "min"});
  }
  const auto working = at_pressure(working_pascal(machine));
  const auto cold = cold_curve(machine);
  const double gauge = machine.tank == Tank::kettle ? 0 : machine.gauge_pascal;
  const auto low = at_pressure(machine.room_pascal + k_sagged_share * gauge);
  if (!working) return refuse(working.error());
  if (!cold) return refuse(cold.error());
  if (!low) return refuse(low.error());
  // Without pressure there is nothing to sag: a kettle gives what its power boils off.
  if (gauge <= 0) supply = std::min(supply, *sustained / duty);
  Boiler boiler(machine, *cold, *working, low->celsius - (gauge > 0 ? 0 : 1));
  Timetable table;
  PhaseKind kind = PhaseKind::heat_up;
  double since = 0;  // start of a phase of cooling or refilling
  while (table.steam_seconds < steam_seconds - 1e-9 && table.seconds < k_longest_seconds) {
    switch (kind) {
      case PhaseKind::heat_up:
      case PhaseKind::recover:
        if (boiler.hot()) {
          kind = PhaseKind::steam;
          break;
        }
        boiler.step(true, 0, table);
        book(table, kind, boiler, k_step_seconds, 0, 0);
        break;
      case PhaseKind::steam: {
        if (boiler.empty()) {
          kind = boiler.continuous() ? PhaseKind::refill : PhaseKind::cool;
          since = table.seconds;
          break;
        }
        if (boiler.sagged()) {
          kind = PhaseKind::recover;
          break;
        }
        const double out = boiler.step(true, supply * duty, table);
        const double flowing = std::min(out / supply, steam_seconds - table.steam_seconds);
        book(table, kind, boiler, k_step_seconds, flowing, out);
        break;
      }
      case PhaseKind::cool:
        if (boiler.celsius() <= k_open_celsius && table.seconds - since >= machine.shortest_cooling_seconds) {
          kind = PhaseKind::refill;
          since = table.seconds;
          break;
        }
        boiler.step(false, 0, table);
        book(table, kind, boiler, k_step_seconds, 0, 0);
        break;
      case PhaseKind::refill:
        if (table.seconds - since >= (boiler.continuous() ? k_top_up_seconds : k_refill_seconds) - 1e-9) {
          boiler.refill(table);
          ++table.refills;
          kind = PhaseKind::heat_up;
          break;
        }
        boiler.step(boiler.continuous(), 0, table);
        book(table, kind, boiler, k_step_seconds, 0, 0);
        break;
    }
  }
  table.stored_joules = boiler.stored_since_start();
  return table;
}

}  // namespace lastegg::boiler
