#include "bugs/lifecycle/development.h"

#include <algorithm>
#include <optional>
#include <string>

#include "physics/evidence/datum.h"
#include "physics/numerics/elementary.h"

namespace lastegg::embedded {
extern const std::string_view bugs_lifecycle_data_development_json;
}

namespace lastegg::bugs {
namespace {

// days(T) = at_cool exp(-slope (T - cool))
struct LogLinear {
  double at_cool = 1, slope = 0, cool = 0;
  double days(double celsius) const { return at_cool * numerics::exp(-slope * (celsius - cool)); }
};

struct Data {
  LogLinear egg, adult, first_egg;
  double heat_sum_kelvin_days = 0, heat_sum_over_celsius = 0, fastest_share = 1;
  DevelopmentLimits limits;
};

Result<Data> read_data() {
  const auto document = parse_data(embedded::bugs_lifecycle_data_development_json, k_development_data_key);
  if (!document) return refuse(document.error());
  std::optional<Error> failure;
  const auto number = [&](const char* group, const char* name, std::string_view unit) {
    const auto read = read_datum(document->at(group).at(name), unit, std::string(group) + "/" + name);
    if (read) return read->value;
    if (!failure) failure = read.error();
    return 1.0;
  };
  const double cool = number("anchors", "cool", "C"), warm = number("anchors", "warm", "C");
  const auto through = [&](const char* group) {
    const double at_cool = number(group, "cool", "d"), at_warm = number(group, "warm", "d");
    return LogLinear{at_cool, numerics::log(at_cool / at_warm) / (warm - cool), cool};
  };
  Data data;
  data.egg = through("egg");
  data.adult = through("adult");
  data.first_egg = through("first_egg");
  data.heat_sum_kelvin_days = number("egg", "heat_sum", "K d");
  data.heat_sum_over_celsius = number("egg", "heat_sum_over", "C");
  data.fastest_share = number("adult", "fastest_share", "1");
  data.limits = {.no_hatch_below_celsius = number("limits", "no_hatch_below", "C"),
                 .known_from_celsius = number("limits", "known_from", "C"),
                 .held_above_celsius = number("limits", "held_above", "C"),
                 .heat_above_celsius = number("limits", "heat_above", "C"),
                 .usual_uncertainty_kelvin = number("uncertainty", "temperature", "K"),
                 .custom_days = number("custom", "days", "d")};
  if (failure) return refuse(*failure);
  return data;
}

const Result<Data>& loaded() {
  static const Result<Data> data = read_data();
  return data;
}

const Data& data() {
  static const Data none;
  return loaded() ? *loaded() : none;
}

double held(double celsius) {
  return std::min(celsius, data().limits.held_above_celsius);
}

double days_of(Phase phase, double celsius, Bound bound) {
  switch (phase) {
    case Phase::egg:
      return egg_days(celsius, bound);
    case Phase::nymph:
      return nymph_days(celsius);
    case Phase::first_egg:
      return first_egg_days(celsius);
  }
  return egg_days(celsius, bound);
}

}  // namespace

Result<void> development_data_state() {
  if (!loaded()) return refuse(loaded().error());
  return {};
}

const DevelopmentLimits& development_limits() {
  return data().limits;
}

double egg_days(double celsius, Bound bound) {
  const double at = held(celsius);
  const double curved = data().egg.days(at);
  const double straight = data().heat_sum_kelvin_days / (at - data().heat_sum_over_celsius);
  return bound == Bound::slow ? std::max(curved, straight) : std::min(curved, straight);
}

double adult_days(double celsius) {
  return data().adult.days(held(celsius));
}

double nymph_days(double celsius) {
  return data().fastest_share * (adult_days(celsius) - data().egg.days(held(celsius)));
}

double first_egg_days(double celsius) {
  return data().first_egg.days(held(celsius));
}

double rate_per_day(Phase phase, CelsiusRange range, Bound bound) {
  const DevelopmentLimits& limits = data().limits;
  if (bound == Bound::slow) {
    if (range.low < limits.no_hatch_below_celsius || range.high > limits.heat_above_celsius) return 0;
    return 1 / days_of(phase, range.low, bound);
  }
  if (range.high < limits.no_hatch_below_celsius) return 0;
  return 1 / days_of(phase, range.high, bound);
}

}  // namespace lastegg::bugs
