// Question `boiler`: what the steamer gives, and the timetable of a visit by its tank.
#include <fmt/format.h>

#include <limits>
#include <string>
#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "treatments/boiler/boiler.h"
#include "treatments/boiler/head_and_towel.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

constexpr double k_minute = 60;
constexpr double k_short_rest_seconds = 600;
// So many pauses in a row are told as one row.
constexpr std::size_t k_pauses_told_singly = 3;

Shape tank_shape() {
  return choice({{"continuous", "fed by a pump from an open reservoir: filled at any time, no cooling"},
                 {"pressurised", "closed boiler: cools before it is opened"},
                 {"kettle", "small boiler without pressure: cools before it is opened"}},
                "kind of tank");
}

Shape request_shape() {
  std::vector<Field> fields{
      field("tank", tank_shape()),
      field("power_watts", number(Unit::watt, "electric power").at_least(200).at_most(12000)),
      field("water_kilograms", number(Unit::kilogram, "full tank or reservoir (one litre is one kilogram)")
                                   .at_least(0.1)
                                   .at_most(50)),
      with_default("gauge_pascal",
                   number(Unit::pascal, "working pressure above the room; a kettle has none")
                       .at_least(0)
                       .at_most(1.2e6),
                   300000),
      optional(
          "weighing",
          object(
              {field("before_kilograms", number(Unit::kilogram, "machine before").at_least(0).at_most(200)),
               field("after_kilograms", number(Unit::kilogram, "machine after").at_least(0).at_most(200)),
               field("minutes", number(Unit::minute, "of steam between").above(0).at_most(60))},
              "the machine on a scale before and after some minutes of steady steam")),
      optional("supply_grams_per_second",
               number(Unit::gram_per_second, "steam while the trigger is pulled, if known")
                   .at_least(0.01)
                   .at_most(5)),
      with_default("trigger_share",
                   ratio("share of the working time with the trigger pulled").at_least(0.05).at_most(1), 0.7),
      optional("steam_minutes",
               number(Unit::minute, "minutes of steam that the work needs").at_least(0.1).at_most(480)),
      optional("length_metres", number(Unit::metre, "or: length of all edges").above(0).at_most(2000)),
      optional("pace_metres_per_second",
               number(Unit::metre_per_second, "and their pace").at_least(0.001).at_most(0.5)),
      with_default("cold_water_celsius", number(Unit::celsius, "water from the tap").at_least(1).at_most(60),
                   15),
      with_default("room_celsius", number(Unit::celsius, "of the room").at_least(-10).at_most(50), 20),
      optional("cooling_minutes",
               number(Unit::minute, "before opening, by the maker; counts if longer than what is computed")
                   .at_least(0)
                   .at_most(360)),
      optional(
          "towelled_head",
          object({field("length_metres", number(Unit::metre, "along the travel").at_least(0.01).at_most(0.6)),
                  field("width_metres", number(Unit::metre, "across").at_least(0.01).at_most(0.6))},
                 "a head with a towel wrapped round it"))};
  for (Field& pressure : pressure_fields()) fields.push_back(std::move(pressure));
  Shape request = object(std::move(fields), "a steamer and the work of a visit");
  request.exactly_one_of({{"steam_minutes"}, {"length_metres", "pace_metres_per_second"}});
  return request;
}

Shape drips_shape(std::string text) {
  return object({field("seconds", number(Unit::second, "until steam comes instead of water")),
                 field("water_kilograms", number(Unit::kilogram, "that drips and spits until then"))},
                std::move(text));
}

Shape answer_shape() {
  Shape phase = object(
      {field("kind",
             choice({{"heat_up", "no steam: the boiler heats up"},
                     {"steam", "steam, with the trigger as often as stated"},
                     {"recover", "no steam: the pressure comes back"},
                     {"steam_with_pauses", "steam with many short pauses in which the pressure comes back"},
                     {"cool", "no steam: the closed boiler cools; it is never opened hot"},
                     {"refill", "at the tap"}},
                    "what happens")),
       field("from_minutes", number(Unit::minute, "since switching on")),
       field("minutes", number(Unit::minute, "how long")),
       field("steam_minutes", number(Unit::minute, "of them with the trigger pulled")),
       field("water_left_kilograms", number(Unit::kilogram, "in tank or reservoir at its end"))},
      "one part of the visit");
  return object(
      {field("supply",
             object({field("grams_per_second", number(Unit::gram_per_second, "while the trigger is pulled")),
                     field("basis", choice({{"weighing", "by weighing the machine"},
                                            {"given", "as given"},
                                            {"power", "what the power keeps up: weigh the machine to know"}},
                                           "where it comes from")),
                     field("kept_up_grams_per_second",
                           number(Unit::gram_per_second, "what the power keeps up without pauses"))},
                    "steam of the machine")),
       field("phases", list(phase, "in order of time")),
       field("minutes", number(Unit::minute, "from switching on to the end")),
       field("steam_minutes", number(Unit::minute, "of steam")),
       field("waiting_minutes", number(Unit::minute, "without steam: heating up, pauses, cooling, refills")),
       field("refills", integer("times at the tap")),
       field("water_kilograms", number(Unit::kilogram, "that left as steam")),
       field("energy_joules", ratio("electric, in joules")),
       field("drips", object({field("cold_start", drips_shape("hose and head at room temperature")),
                              field("after_ten_minutes", drips_shape("after a rest of ten minutes"))},
                             "water before steam: into a bucket, never on the work")),
       field("towel",
             object({field("likely_minutes", number(Unit::minute, "of steam until it is soaked")),
                     field("change_after_minutes",
                           number(Unit::minute, "of steam: 19 of 20 last longer; plan with this")),
                     field("change_after_metres", number(Unit::metre, "at the pace given").or_null()),
                     field("holds_kilograms", number(Unit::kilogram, "when soaked"))},
                    "the towel")
                 .or_null()),
       field("text", text("in words"))},
      "the visit as the boiler allows it");
}

Json drips_json(const boiler::WarmUp& drips) {
  return {{"seconds", drips.seconds}, {"water_kilograms", drips.water_kilograms}};
}

const char* word(boiler::PhaseKind kind) {
  switch (kind) {
    case boiler::PhaseKind::heat_up:
      return "heat_up";
    case boiler::PhaseKind::steam:
      return "steam";
    case boiler::PhaseKind::recover:
      return "recover";
    case boiler::PhaseKind::cool:
      return "cool";
    case boiler::PhaseKind::refill:
      break;
  }
  return "refill";
}

Json row(const char* kind, double from_seconds, double seconds, double steam_seconds, double water) {
  return {{"kind", kind},
          {"from_minutes", from_seconds / k_minute},
          {"minutes", seconds / k_minute},
          {"steam_minutes", steam_seconds / k_minute},
          {"water_left_kilograms", water}};
}

// Rows of the timetable; steam and pauses that alternate many times become one row.
Json rows_of(const boiler::Timetable& table) {
  Json rows = Json::array();
  const auto alternates = [](const boiler::Phase& phase) {
    return phase.kind == boiler::PhaseKind::steam || phase.kind == boiler::PhaseKind::recover;
  };
  for (std::size_t i = 0; i < table.phases.size();) {
    std::size_t end = i, pauses = 0;
    while (end < table.phases.size() && alternates(table.phases[end]))
      pauses += table.phases[end++].kind == boiler::PhaseKind::recover ? 1U : 0U;
    const boiler::Phase& first = table.phases[i];
    if (pauses <= k_pauses_told_singly) {
      rows.push_back(
          row(word(first.kind), first.from_seconds, first.seconds, first.steam_seconds, first.end_kilograms));
      ++i;
      continue;
    }
    double seconds = 0, steam = 0;
    for (std::size_t k = i; k < end; ++k) {
      seconds += table.phases[k].seconds;
      steam += table.phases[k].steam_seconds;
    }
    rows.push_back(
        row("steam_with_pauses", first.from_seconds, seconds, steam, table.phases[end - 1].end_kilograms));
    i = end;
  }
  return rows;
}

std::string words_of(const boiler::Machine& machine, const boiler::Timetable& table) {
  std::string words = say("{:.0f} minutes of steam take {:.0f} minutes with this machine, with {}.",
                          table.steam_seconds / k_minute, table.seconds / k_minute,
                          table.refills == 0   ? say("no refill")
                          : table.refills == 1 ? say("one refill")
                                               : say("{} refills", table.refills));
  if (machine.tank != boiler::Tank::continuous && table.refills > 0)
    words +=
        say(" Never open a hot boiler: it is off and cooled to {:g} C first, longer if its maker says so.",
            boiler::k_open_celsius);
  return words +
         say(" Let the first water out into a bucket, away from the work, at the start and after every rest, "
             "and put the towel on only then.");
}

struct Supply {
  double kilograms_per_second;
  const char* basis;
};

Result<Supply> supply_of(const Json& request, double kept_up) {
  if (const Json* weighing = member_if(request, "weighing")) {
    if (has(request, "supply_grams_per_second")) {
      return refuse({ErrorKind::bad_input, say("give either weighing or supply_grams_per_second, not both"),
                     "/weighing", "", "", ""});
    }
    const auto weighed = boiler::weighed_supply(number_of(*weighing, "before_kilograms"),
                                                number_of(*weighing, "after_kilograms"),
                                                k_minute * number_of(*weighing, "minutes"));
    if (!weighed) return refuse(weighed.error());
    return Supply{*weighed, "weighing"};
  }
  if (const auto given = number_if(request, "supply_grams_per_second")) return Supply{*given / 1e3, "given"};
  return Supply{kept_up, "power"};
}

Result<Answer> solve(const Json& request) {
  boiler::Machine machine;
  const std::string tank = text_of(request, "tank");
  machine.tank = tank == "continuous" ? boiler::Tank::continuous
                 : tank == "kettle"   ? boiler::Tank::kettle
                                      : boiler::Tank::pressurised;
  machine.power_watts = number_of(request, "power_watts");
  machine.water_kilograms = number_of(request, "water_kilograms");
  machine.gauge_pascal = machine.tank == boiler::Tank::kettle ? 0 : number_of(request, "gauge_pascal");
  machine.cold_water_celsius = number_of(request, "cold_water_celsius");
  machine.room_celsius = number_of(request, "room_celsius");
  machine.shortest_cooling_seconds = k_minute * number_if(request, "cooling_minutes").value_or(0);
  const auto pressure = read_pressure(request);
  if (!pressure) return refuse(pressure.error());
  machine.room_pascal = *pressure;
  const auto kept_up = boiler::sustained_supply(machine);
  if (!kept_up) return refuse(kept_up.error());
  const auto supply = supply_of(request, *kept_up);
  if (!supply) return refuse(supply.error());
  const auto pace = number_if(request, "pace_metres_per_second");
  const double steam_seconds = has(request, "steam_minutes") ? k_minute * number_of(request, "steam_minutes")
                                                             : number_of(request, "length_metres") / *pace;
  const auto table = boiler::timetable(machine, supply->kilograms_per_second,
                                       number_of(request, "trigger_share"), steam_seconds);
  if (!table) return refuse(table.error());
  const auto cold = boiler::warm_up(supply->kilograms_per_second, std::numeric_limits<double>::infinity(),
                                    machine.room_celsius);
  if (!cold) return refuse(cold.error());
  const auto rested =
      boiler::warm_up(supply->kilograms_per_second, k_short_rest_seconds, machine.room_celsius);
  if (!rested) return refuse(rested.error());

  Answer answer;
  Json& out = answer.result;
  out["supply"] = {{"grams_per_second", 1e3 * supply->kilograms_per_second},
                   {"basis", supply->basis},
                   {"kept_up_grams_per_second", 1e3 * *kept_up}};
  out["phases"] = rows_of(*table);
  out["minutes"] = table->seconds / k_minute;
  out["steam_minutes"] = table->steam_seconds / k_minute;
  out["waiting_minutes"] = table->waiting_seconds / k_minute;
  out["refills"] = table->refills;
  out["water_kilograms"] = table->steam_kilograms;
  out["energy_joules"] = table->electric_joules;
  out["drips"] = {{"cold_start", drips_json(*cold)}, {"after_ten_minutes", drips_json(*rested)}};
  out["towel"] = nullptr;
  if (const Json* head = member_if(request, "towelled_head")) {
    boiler::TowelWrap wrap;
    wrap.head_length_metres = number_of(*head, "length_metres");
    wrap.head_width_metres = number_of(*head, "width_metres");
    wrap.supply_kilograms_per_second = supply->kilograms_per_second;
    wrap.room_celsius = machine.room_celsius;
    const auto life = boiler::towel_life(wrap);
    if (!life) return refuse(life.error());
    Json metres = nullptr;
    if (pace) metres = life->shortest_seconds * *pace;
    out["towel"] = {{"likely_minutes", life->seconds / k_minute},
                    {"change_after_minutes", life->shortest_seconds / k_minute},
                    {"change_after_metres", metres},
                    {"holds_kilograms", life->water_kilograms}};
    answer.warnings.push_back(
        {"soaked_towel",
         say("a soaked towel wets the work and lets less steam through: a pace tested with a fresh one no "
             "longer holds")});
  }
  if (std::string(supply->basis) == "power")
    answer.warnings.push_back(
        {"not_weighed", say("the supply is computed from the power: weigh the machine before and after five "
                            "minutes of steam")});
  if (table->steam_seconds < steam_seconds - 1)
    answer.warnings.push_back(
        {"longer_than_a_day", say("the work does not fit into a day with this machine")});
  out["text"] = words_of(machine, *table);
  return answer;
}

}  // namespace

const Question& boiler_question() {
  static const Question question{"boiler",
                                 "What a steamer gives, and when: heating up, steam, pauses, cooling, "
                                 "refills, first drips, towel changes.",
                                 request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
