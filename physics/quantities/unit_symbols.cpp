#include "physics/quantities/unit_symbols.h"

#include <cctype>

#include "words/say.h"

namespace lastegg::unit_symbols {
namespace {

constexpr Dimension k_number{0, 0, 0, 0, 0};
constexpr Dimension k_length{1, 0, 0, 0, 0};
constexpr Dimension k_time{0, 1, 0, 0, 0};
constexpr Dimension k_mass{0, 0, 1, 0, 0};
constexpr Dimension k_temperature{0, 0, 0, 1, 0};
constexpr Dimension k_current{0, 0, 0, 0, 1};
constexpr Dimension k_volume{3, 0, 0, 0, 0};
constexpr Dimension k_speed{1, -1, 0, 0, 0};
constexpr Dimension k_volume_flow{3, -1, 0, 0, 0};
constexpr Dimension k_pressure{-1, -2, 1, 0, 0};
constexpr Dimension k_energy{2, -2, 1, 0, 0};
constexpr Dimension k_power{2, -3, 1, 0, 0};
constexpr Dimension k_voltage{2, -3, 1, 0, -1};

// Factors: NIST SP 811 (2008), appendix B. Exact: in, ft, yd, mi, lb, Btu(IT), degree F. psi, inHg and
// inH2O are the rounded or conventional values of that table (from memory, to be checked).
constexpr Symbol k_symbols[] = {
    // length
    {"m", k_length, {1, 1}},
    {"metre", k_length, {1, 1}},
    {"metres", k_length, {1, 1}},
    {"meter", k_length, {1, 1}},
    {"meters", k_length, {1, 1}},
    {"cm", k_length, {1, 100}},
    {"centimetre", k_length, {1, 100}},
    {"centimetres", k_length, {1, 100}},
    {"centimeter", k_length, {1, 100}},
    {"centimeters", k_length, {1, 100}},
    {"mm", k_length, {1, 1000}},
    {"millimetre", k_length, {1, 1000}},
    {"millimetres", k_length, {1, 1000}},
    {"millimeter", k_length, {1, 1000}},
    {"millimeters", k_length, {1, 1000}},
    {"um", k_length, {1, 1e6}},
    {"km", k_length, {1000, 1}},
    {"in", k_length, {254, 10000}},
    {"inch", k_length, {254, 10000}},
    {"inches", k_length, {254, 10000}},
    {"\"", k_length, {254, 10000}},
    {"ft", k_length, {3048, 10000}},
    {"foot", k_length, {3048, 10000}},
    {"feet", k_length, {3048, 10000}},
    {"'", k_length, {3048, 10000}},
    {"yd", k_length, {9144, 10000}},
    {"yard", k_length, {9144, 10000}},
    {"yards", k_length, {9144, 10000}},
    // time
    {"s", k_time, {1, 1}},
    {"sec", k_time, {1, 1}},
    {"second", k_time, {1, 1}},
    {"seconds", k_time, {1, 1}},
    {"ms", k_time, {1, 1000}},
    {"min", k_time, {60, 1}},
    {"minute", k_time, {60, 1}},
    {"minutes", k_time, {60, 1}},
    {"h", k_time, {3600, 1}},
    {"hr", k_time, {3600, 1}},
    {"hrs", k_time, {3600, 1}},
    {"hour", k_time, {3600, 1}},
    {"hours", k_time, {3600, 1}},
    {"d", k_time, {86400, 1}},
    {"day", k_time, {86400, 1}},
    {"days", k_time, {86400, 1}},
    {"week", k_time, {604800, 1}},
    {"weeks", k_time, {604800, 1}},
    // speed and flow by their own names
    {"mph", k_speed, {44704, 100000}},
    {"fpm", k_speed, {3048, 600000}},
    {"ips", k_speed, {254, 10000}},
    {"kph", k_speed, {1000, 3600}},
    {"cfm", k_volume_flow, {28316846592.0, 60e12}},
    // mass
    {"kg", k_mass, {1, 1}},
    {"kilogram", k_mass, {1, 1}},
    {"kilograms", k_mass, {1, 1}},
    {"g", k_mass, {1, 1000}},
    {"gram", k_mass, {1, 1000}},
    {"grams", k_mass, {1, 1000}},
    {"mg", k_mass, {1, 1e6}},
    {"lb", k_mass, {45359237, 1e8}},
    {"lbs", k_mass, {45359237, 1e8}},
    {"pound", k_mass, {45359237, 1e8}},
    {"pounds", k_mass, {45359237, 1e8}},
    // volume
    {"L", k_volume, {1, 1000}},
    {"litre", k_volume, {1, 1000}},
    {"litres", k_volume, {1, 1000}},
    {"liter", k_volume, {1, 1000}},
    {"liters", k_volume, {1, 1000}},
    {"mL", k_volume, {1, 1e6}},
    {"millilitre", k_volume, {1, 1e6}},
    {"millilitres", k_volume, {1, 1e6}},
    {"milliliter", k_volume, {1, 1e6}},
    {"milliliters", k_volume, {1, 1e6}},
    // temperature: a scale when alone, a difference inside a product
    {"C", k_temperature, {1, 1}, TemperatureScale::celsius},
    {"degC", k_temperature, {1, 1}, TemperatureScale::celsius},
    {"celsius", k_temperature, {1, 1}, TemperatureScale::celsius},
    {"F", k_temperature, {5, 9}, TemperatureScale::fahrenheit},
    {"degF", k_temperature, {5, 9}, TemperatureScale::fahrenheit},
    {"fahrenheit", k_temperature, {5, 9}, TemperatureScale::fahrenheit},
    {"K", k_temperature, {1, 1}, TemperatureScale::kelvin},
    {"kelvin", k_temperature, {1, 1}, TemperatureScale::kelvin},
    {"deltaC", k_temperature, {1, 1}},
    {"deltaK", k_temperature, {1, 1}},
    {"deltaF", k_temperature, {5, 9}},
    // pressure
    {"Pa", k_pressure, {1, 1}},
    {"pascal", k_pressure, {1, 1}},
    {"pascals", k_pressure, {1, 1}},
    {"hPa", k_pressure, {100, 1}},
    {"kPa", k_pressure, {1000, 1}},
    {"MPa", k_pressure, {1e6, 1}},
    {"bar", k_pressure, {1e5, 1}},
    {"mbar", k_pressure, {100, 1}},
    {"millibar", k_pressure, {100, 1}},
    {"atm", k_pressure, {101325, 1}},
    {"psi", k_pressure, {6894.757, 1}},
    {"psia", k_pressure, {6894.757, 1}},
    {"inHg", k_pressure, {3386.389, 1}},
    {"mmHg", k_pressure, {133.3224, 1}},
    {"inH2O", k_pressure, {249.0889, 1}},
    // energy, power, electricity
    {"J", k_energy, {1, 1}},
    {"joule", k_energy, {1, 1}},
    {"joules", k_energy, {1, 1}},
    {"kJ", k_energy, {1000, 1}},
    {"MJ", k_energy, {1e6, 1}},
    {"Wh", k_energy, {3600, 1}},
    {"kWh", k_energy, {3.6e6, 1}},
    {"Btu", k_energy, {105505585262.0, 1e8}},
    {"W", k_power, {1, 1}},
    {"watt", k_power, {1, 1}},
    {"watts", k_power, {1, 1}},
    {"kW", k_power, {1000, 1}},
    {"kilowatt", k_power, {1000, 1}},
    {"kilowatts", k_power, {1000, 1}},
    {"V", k_voltage, {1, 1}},
    {"volt", k_voltage, {1, 1}},
    {"volts", k_voltage, {1, 1}},
    {"mV", k_voltage, {1, 1000}},
    {"uV", k_voltage, {1, 1e6}},
    {"microvolt", k_voltage, {1, 1e6}},
    {"microvolts", k_voltage, {1, 1e6}},
    {"A", k_current, {1, 1}},
    {"amp", k_current, {1, 1}},
    {"amps", k_current, {1, 1}},
    {"ampere", k_current, {1, 1}},
    {"amperes", k_current, {1, 1}},
    // ratios
    {"%", k_number, {1, 100}},
    {"percent", k_number, {1, 100}},
    // products that are written without a separator
    {"mK", {1, 0, 0, 1, 0}, {1, 1}},
    {"kgK", {0, 0, 1, 1, 0}, {1, 1}},
};

struct Ambiguity {
  std::string_view spelling;
  std::string_view text;
};

constexpr Ambiguity k_ambiguities[] = {
    {"oz", to_say("can be a mass or a volume; write g or lb, or mL")},
    {"ounce", to_say("can be a mass or a volume; write g or lb, or mL")},
    {"ounces", to_say("can be a mass or a volume; write g or lb, or mL")},
    {"fl", to_say("differs between countries; write mL")},
    {"gal", to_say("differs between countries; write L")},
    {"gallon", to_say("differs between countries; write L")},
    {"gallons", to_say("differs between countries; write L")},
    {"gpm", to_say("differs between countries; write L/min")},
    {"qt", to_say("differs between countries; write L")},
    {"pt", to_say("differs between countries; write L")},
    {"pint", to_say("differs between countries; write L")},
    {"quart", to_say("differs between countries; write L")},
    {"cup", to_say("differs between countries; write mL")},
    {"ton", to_say("has several sizes; write kg or lb")},
    {"tons", to_say("has several sizes; write kg or lb")},
    {"psig", to_say("is counted from the air pressure; add the air pressure and write psi")},
    {"barg", to_say("is counted from the air pressure; add the air pressure and write bar")},
    {"mil", to_say("can be a thousandth of an inch or a millimetre; write in or mm")},
    {"mils", to_say("can be a thousandth of an inch or a millimetre; write in or mm")},
    {"deg", to_say("does not say which scale; write C or F")},
    {"degree", to_say("does not say which scale; write C or F")},
    {"degrees", to_say("does not say which scale; write C or F")},
    {"hp", to_say("has several sizes; write W or kW")},
    {"cal", to_say("has several sizes; write J")},
};

std::string lower_case(std::string_view text) {
  std::string lower;
  for (const char c : text) lower += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return lower;
}

const std::vector<UnitFacts>& all_units() {
  static const std::vector<UnitFacts> facts = {
      {Unit::none, "", "", k_number, {1, 1}, {"a number without a unit"}},
      {Unit::metre, to_say("metres"), "m", k_length, {1, 1}, {"mm", "cm", "m", "in", "ft"}},
      {Unit::square_metre, "m2", "m2", {2, 0, 0, 0, 0}, {1, 1}, {"m2", "cm2", "ft2", "in2"}},
      {Unit::cubic_metre, "m3", "m3", k_volume, {1, 1}, {"m3", "L", "mL", "ft3"}},
      {Unit::second, to_say("seconds"), "s", k_time, {1, 1}, {"s", "min", "h"}},
      {Unit::minute, to_say("minutes"), "min", k_time, {60, 1}, {"s", "min", "h"}},
      {Unit::hour, to_say("hours"), "h", k_time, {3600, 1}, {"min", "h", "days"}},
      {Unit::day, to_say("days"), "d", k_time, {86400, 1}, {"h", "days", "weeks"}},
      {Unit::metre_per_second,
       to_say("metres per second"),
       "m/s",
       k_speed,
       {1, 1},
       {"mm/s", "m/s", "in/s", "ft/min"}},
      {Unit::celsius, to_say("celsius"), "C", k_temperature, {1, 1}, {"C", "F", "K"}},
      {Unit::kelvin, to_say("kelvin"), "K", k_temperature, {1, 1}, {"C", "F", "K"}},
      {Unit::kelvin_difference, to_say("kelvin"), "K", k_temperature, {1, 1}, {"K", "delta C", "delta F"}},
      {Unit::kelvin_per_second,
       to_say("kelvin per second"),
       "K/s",
       {0, -1, 0, 1, 0},
       {1, 1},
       {"K/s", "C/min", "F/min"}},
      {Unit::pascal, to_say("pascal"), "Pa", k_pressure, {1, 1}, {"Pa", "kPa", "hPa", "bar", "psi", "inHg"}},
      {Unit::kilogram, to_say("kilograms"), "kg", k_mass, {1, 1}, {"g", "kg", "lb"}},
      {Unit::kilogram_per_second,
       to_say("kilograms per second"),
       "kg/s",
       {0, -1, 1, 0, 0},
       {1, 1},
       {"g/s", "g/min", "kg/h", "lb/h"}},
      {Unit::gram_per_second,
       to_say("grams per second"),
       "g/s",
       {0, -1, 1, 0, 0},
       {1, 1000},
       {"g/s", "g/min", "kg/h", "lb/h"}},
      {Unit::kilogram_per_m3,
       to_say("kilograms per m3"),
       "kg/m3",
       {-3, 0, 1, 0, 0},
       {1, 1},
       {"kg/m3", "g/L", "lb/ft3"}},
      {Unit::gram_per_m2, to_say("grams per m2"), "g/m2", {-2, 0, 1, 0, 0}, {1, 1000}, {"g/m2", "kg/m2"}},
      {Unit::cubic_metre_per_second,
       to_say("m3 per second"),
       "m3/s",
       k_volume_flow,
       {1, 1},
       {"m3/s", "m3/h", "L/s", "cfm"}},
      {Unit::watt, to_say("watts"), "W", k_power, {1, 1}, {"W", "kW", "Btu/h"}},
      {Unit::watt_per_kelvin,
       to_say("watts per kelvin"),
       "W/K",
       {2, -3, 1, -1, 0},
       {1, 1},
       {"W/K", "Btu/(h F)"}},
      {Unit::watt_per_m2, to_say("watts per m2"), "W/m2", {0, -3, 1, 0, 0}, {1, 1}, {"W/m2", "kW/m2"}},
      {Unit::watt_per_m2_kelvin,
       to_say("watts per m2 kelvin"),
       "W/(m2 K)",
       {0, -3, 1, -1, 0},
       {1, 1},
       {"W/(m2 K)", "Btu/(h ft2 F)"}},
      {Unit::watt_per_metre_kelvin,
       to_say("watts per metre kelvin"),
       "W/(m K)",
       {1, -3, 1, -1, 0},
       {1, 1},
       {"W/(m K)", "Btu/(h ft F)"}},
      {Unit::square_metre_kelvin_per_watt,
       to_say("m2 kelvin per watt"),
       "m2 K/W",
       {0, 3, -1, 1, 0},
       {1, 1},
       {"m2 K/W", "h ft2 F/Btu"}},
      {Unit::joule_per_m2,
       to_say("joules per m2"),
       "J/m2",
       {0, -2, 1, 0, 0},
       {1, 1},
       {"J/m2", "kJ/m2", "MJ/m2"}},
      {Unit::joule_per_kelvin,
       to_say("joules per kelvin"),
       "J/K",
       {2, -2, 1, -1, 0},
       {1, 1},
       {"J/K", "kJ/K", "Wh/K"}},
      {Unit::joule_per_m3_kelvin,
       to_say("joules per m3 kelvin"),
       "J/(m3 K)",
       {-1, -2, 1, -1, 0},
       {1, 1},
       {"J/(m3 K)", "kJ/(m3 K)"}},
      {Unit::joule_per_kilogram,
       to_say("joules per kilogram"),
       "J/kg",
       {2, -2, 0, 0, 0},
       {1, 1},
       {"J/kg", "kJ/kg", "Btu/lb"}},
      {Unit::joule_per_kilogram_kelvin,
       to_say("joules per kilogram kelvin"),
       "J/(kg K)",
       {2, -2, 0, -1, 0},
       {1, 1},
       {"J/(kg K)", "kJ/(kg K)", "Btu/(lb F)"}},
      {Unit::volt, to_say("volts"), "V", k_voltage, {1, 1}, {"V", "mV"}},
      {Unit::ampere, to_say("amperes"), "A", k_current, {1, 1}, {"A"}},
      {Unit::microvolt, to_say("microvolts"), "uV", k_voltage, {1, 1e6}, {"uV", "mV"}},
      {Unit::fraction, to_say("fraction"), "", k_number, {1, 1}, {"0.8", "80 %"}},
  };
  return facts;
}

}  // namespace

const Symbol* find_symbol(std::string_view spelling) {
  for (const Symbol& symbol : k_symbols)
    if (symbol.spelling == spelling) return &symbol;
  const std::string lower = lower_case(spelling);
  const Symbol* found = nullptr;
  for (const Symbol& symbol : k_symbols) {
    if (lower_case(symbol.spelling) != lower) continue;
    // m is milli and M is mega: mJ and MJ are never taken for each other. Whole words and mm, min, ms
    // may be in capitals.
    if (symbol.spelling.front() != spelling.front() && lower.front() == 'm' &&
        lower_case(symbol.spelling) != symbol.spelling)
      continue;
    if (found != nullptr) return nullptr;
    found = &symbol;
  }
  return found;
}

std::string_view ambiguity(std::string_view spelling) {
  const std::string lower = lower_case(spelling);
  for (const Ambiguity& entry : k_ambiguities)
    if (entry.spelling == lower) return entry.text;
  return {};
}

const UnitFacts& unit_facts(Unit unit) {
  for (const UnitFacts& facts : all_units())
    if (facts.unit == unit) return facts;
  return all_units().front();
}

}  // namespace lastegg::unit_symbols
