#include "engine/fold_test_request.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/materials/materials.h"

namespace lastegg {

using steam::FoldReading;
using steam::ReadingKind;

namespace {

constexpr double k_slow_probe_seconds = 1.0;
constexpr double k_standard_layer_metres =
    0.001;  // the recipe's cloth: estimate, ten layers measure about 10 mm
constexpr double k_standard_base_metres = 0.03;  // the cushion or folded blanket below: estimate
constexpr std::size_t k_least_fold_layers = 3;
constexpr double k_most_above_boiling_kelvin = 8;  // more is no error of a thermometer but a slip
constexpr double k_below_start_kelvin = 5;
constexpr double k_same_covering_layer_metres = k_standard_layer_metres;

const char* const k_standard_coupon = "acrylic_sheet";

Refusal refuse_number(const std::string& text, const std::string& where, double value, double limit,
                      const char* unit) {
  return refuse(
      {ErrorKind::bad_input, text, where, fmt::format("{:g}", value), fmt::format("{:g}", limit), unit});
}

Refusal refuse_member(const std::string& text, const std::string& where) {
  return refuse({ErrorKind::bad_input, text, where, "", "", ""});
}

struct Places {
  const steam::Layer& cloth;
  const steam::Stack& base;
  const steam::FoldTest& test;
  const std::string& machine;
  const std::string& head;
  const std::string& covering;
};

Result<ReadingKind> kind_of(const Json& reading, const std::string& where) {
  const bool holds = has(reading, "hold_seconds");
  const std::string kind = text_if(reading, "kind").value_or(holds ? "stationary" : "pass");
  if ((kind == "stationary") != holds) {
    return refuse_member(
        holds ? fmt::format("hold_seconds belongs to a stationary reading; this one is \"{}\"", kind)
              : "a stationary reading has no pace; give hold_seconds, how long the head rested",
        where);
  }
  const bool is_coupon = kind == "coupon", is_edge = kind == "under_real_edge";
  if (is_coupon && has(reading, "layers"))
    return refuse_member("a coupon has nothing over the tip but itself; leave layers out", where + "/layers");
  if (!is_coupon && !has(reading, "layers"))
    return refuse_member("layers is missing: what lay over the tip", where);
  if (!is_coupon && has(reading, "coupon"))
    return refuse_member("coupon belongs to a reading of the kind coupon", where + "/coupon");
  if (is_edge && !has(reading, "covering"))
    return refuse_member("covering is missing: a reading under a real edge is of that edge's cloth", where);
  if (!is_edge && has(reading, "covering")) {
    return refuse_member(
        "covering belongs to a reading of the kind under_real_edge; the fold's own stands beside the "
        "readings",
        where + "/covering");
  }
  return is_coupon              ? ReadingKind::coupon
         : is_edge              ? ReadingKind::under_real_edge
         : kind == "stationary" ? ReadingKind::stationary
                                : ReadingKind::pass;
}

// Layers over the tip, then at least one more of the same cloth and three in all, then the base.
void lay_fold(const steam::Stack& above, const steam::Stack& base, FoldReading& out) {
  out.stack = above;
  out.depth_metres = steam::thickness_metres(above);
  const std::size_t total = std::max<std::size_t>(k_least_fold_layers, above.size() + 1);
  while (out.stack.size() < total) out.stack.push_back(above.back());
  out.stack.insert(out.stack.end(), base.begin(), base.end());
}

Result<steam::Layer> material_layer(const std::string& material, double thickness, const std::string& where) {
  const auto stack =
      read_stack(Json::array({{{"material", material}, {"thickness_metres", thickness}}}), where);
  if (!stack) return refuse(stack.error());
  return stack->front();
}

Result<steam::Layer> coupon_of(const Json& reading, const std::string& where) {
  const Json* given = member_if(reading, "coupon");
  if (given == nullptr) return material_layer(k_standard_coupon, k_standard_layer_metres, where);
  if (given->is_object()) return steam::metal_coupon(number_of(*given, "heat_capacity_joules_per_m2_kelvin"));
  const auto stack = read_stack(*given, where + "/coupon");
  if (!stack) return refuse(stack.error());
  if (stack->front().permeable) {
    return refuse_member(
        "the coupon lets vapour in; it must be impermeable, since only then it tells the film apart from the "
        "cloth",
        where + "/coupon");
  }
  return stack->front();
}

Result<FoldReading> place_of_tip(const Json& reading, const Places& places, const std::string& where,
                                 int& layers) {
  FoldReading out{};
  const auto kind = kind_of(reading, where);
  if (!kind) return refuse(kind.error());
  out.kind = *kind;
  out.cloth_key = places.test.cloth_key;
  out.peak_celsius = number_of(reading, "peak_celsius");
  if (*kind == ReadingKind::stationary) {
    out.hold_seconds = number_of(reading, "hold_seconds");
    out.pace_metres_per_second = places.test.head_length_metres / out.hold_seconds;
  } else {
    out.pace_metres_per_second = has(reading, "pace_metres_per_second")
                                     ? number_of(reading, "pace_metres_per_second")
                                     : number_of(reading, "distance_metres") / number_of(reading, "seconds");
  }
  if (*kind == ReadingKind::coupon) {
    const auto coupon = coupon_of(reading, where);
    if (!coupon) return refuse(coupon.error());
    out.stack = {*coupon};
    out.stack.insert(out.stack.end(), places.base.begin(), places.base.end());
    out.depth_metres = coupon->thickness_metres;
    layers = 0;
    return out;
  }
  steam::Layer cloth = places.cloth;
  if (*kind == ReadingKind::under_real_edge) {
    const std::string covering = text_of(reading, "covering");
    out.cloth_key = cloth_key(places.machine, places.head, covering);
    if (covering != places.covering && reading.at("layers").is_number()) {
      const auto known = find_covering(covering);
      if (!known) {
        Error error = known.error();
        error.where = where + "/covering";
        return refuse(error);
      }
      const auto layer = material_layer(known->material, k_same_covering_layer_metres, where);
      if (!layer) return refuse(layer.error());
      cloth = *layer;
    }
  }
  const Json& given = reading.at("layers");
  steam::Stack above;
  if (given.is_number()) {
    above.assign(static_cast<std::size_t>(given.get<int>()), cloth);
  } else {
    auto stack = read_stack(given, where + "/layers");
    if (!stack) return refuse(stack.error());
    above = std::move(*stack);
  }
  layers = static_cast<int>(above.size());
  lay_fold(above, places.base, out);
  return out;
}

// What no reading of this place and probe can be.
Result<void> judge(const FoldReading& reading, std::size_t i, const steam::FoldTest& test,
                   const std::string& where) {
  const double boiling = steam::boiling_celsius(test.pressure_pascal);
  const double hottest = boiling + k_most_above_boiling_kelvin;
  if (reading.peak_celsius > hottest) {
    return refuse(
        {ErrorKind::bad_input,
         fmt::format("reading {} is {:g} C; under steam it must be at most the boiling point, {:.1f} C "
                     "here, and {:g} K of error: check the thermometer and the unit",
                     i + 1, reading.peak_celsius, boiling, k_most_above_boiling_kelvin),
         where + "/peak_celsius", fmt::format("{:g}", reading.peak_celsius), fmt::format("{:.1f}", hottest),
         "C"});
  }
  if (reading.peak_celsius < test.start_celsius - k_below_start_kelvin) {
    return refuse_number(
        fmt::format("reading {} is {:g} C; it must be at least the start temperature, {:g} C, less "
                    "{:g} K of thermometer error",
                    i + 1, reading.peak_celsius, test.start_celsius, k_below_start_kelvin),
        where + "/peak_celsius", reading.peak_celsius, test.start_celsius - k_below_start_kelvin, "C");
  }
  const double tau = test.probe_time_constant_seconds;
  if (reading.kind == ReadingKind::stationary) {
    const double least = steam::k_stationary_time_constants * tau;
    if (reading.hold_seconds < least) {
      return refuse_number(
          fmt::format("reading {} rested {:g} s; with this probe ({:.2g} s) it must rest at least "
                      "{:.0f} s, four time constants, to stand still",
                      i + 1, reading.hold_seconds, tau, std::ceil(least)),
          where + "/hold_seconds", reading.hold_seconds, std::ceil(least), "s");
    }
    return {};
  }
  if (tau > steam::k_slowest_probe_seconds) {
    return refuse_number(
        fmt::format("the probe's time constant is {:.3g} s; for a moving head it must be at most {:g} "
                    "s: a slower probe lags more than can be corrected for. Use a thinner one, or "
                    "only readings with the head at rest",
                    tau, steam::k_slowest_probe_seconds),
        "/probe", tau, steam::k_slowest_probe_seconds, "s");
  }
  if (!(reading.pace_metres_per_second >= 0.001 && reading.pace_metres_per_second <= 0.3)) {
    return refuse_number(
        fmt::format("the pace of reading {} is {:g} m/s; it must lie between 0.001 and 0.3 m/s", i + 1,
                    reading.pace_metres_per_second),
        where, reading.pace_metres_per_second, reading.pace_metres_per_second < 0.001 ? 0.001 : 0.3, "m/s");
  }
  return {};
}

Result<void> read_probe(const Json& probe, ReadFoldTest& out, const std::string& where) {
  steam::FoldTest& test = out.test;
  if (const Json* given = member_if(probe, "dip")) {
    steam::ProbeDip dip;
    dip.start_celsius = number_of(*given, "start_celsius");
    dip.boiling_celsius = steam::boiling_celsius(test.pressure_pascal);
    dip.seconds_to_63 = number_if(*given, "seconds_to_63");
    dip.seconds_to_90 = number_if(*given, "seconds_to_90");
    if (const Json* points = member_if(*given, "points")) {
      for (const Json& point : *points)
        dip.points.push_back({number_of(point, "seconds"), number_of(point, "celsius")});
    }
    const auto lag = steam::probe_lag(dip);
    if (!lag) {
      Error error = lag.error();
      error.where = where + "/dip" + error.where;
      return refuse(error);
    }
    out.dip = *lag;
    test.probe_time_constant_seconds = lag->time_constant_seconds;
    test.probe_log_spread = lag->log_spread;
    if (!lag->is_one_rate) {
      out.warnings.push_back(
          {"dip_not_one_rate",
           "the marks of the dip do not lie on one curve of a simple probe: a thick sheath, or a "
           "watch started late; the fit leaves more room for it"});
    }
  } else {
    test.probe_time_constant_seconds = number_of(probe, "time_constant_seconds");
    test.probe_log_spread = steam::k_dip_to_fold_spread;
  }
  if (test.probe_time_constant_seconds > k_slow_probe_seconds) {
    out.warnings.push_back(
        {"slow_probe",
         fmt::format("a probe of {:.2g} s reads several kelvin low at working pace; the fit corrects "
                     "for it, a thinner probe (under 1 s) is surer",
                     test.probe_time_constant_seconds)});
  }
  return {};
}

}  // namespace

const char* word(ReadingKind kind) {
  switch (kind) {
    case ReadingKind::stationary:
      return "stationary";
    case ReadingKind::coupon:
      return "coupon";
    case ReadingKind::under_real_edge:
      return "under_real_edge";
    case ReadingKind::pass:
      break;
  }
  return "pass";
}

Result<ReadFoldTest> read_fold_test(const Json& request, const std::string& where) {
  ReadFoldTest out;
  steam::FoldTest& test = out.test;
  const Json& head = request.at("head");
  out.machine = text_of(request, "machine");
  out.head = head.is_string() ? head.get<std::string>() : text_of(head, "name");
  if (head.is_object()) {
    test.head_length_metres = number_of(head, "length_metres");
    out.head_width_metres = number_of(head, "width_metres");
  } else {
    out.warnings.push_back(
        {"head_size_assumed", "the head's size was not given: 80 mm along the travel is assumed (estimate)"});
  }
  test.towel = read_towel(text_of(request, "towel"));
  out.covering = text_of(request, "covering");
  test.head_key = head_key(out.machine, out.head, test.towel);
  test.cloth_key = cloth_key(out.machine, out.head, out.covering);
  const auto pressure = read_pressure(request);
  if (!pressure) {
    Error error = pressure.error();
    error.where = where + error.where;
    return refuse(error);
  }
  test.pressure_pascal = *pressure;
  test.start_celsius = number_of(request, "start_celsius");
  out.working_pace_metres_per_second = number_of(request, "working_pace_metres_per_second");
  out.samples = request.at("samples").get<int>();

  if (const Json* probe = member_if(request, "probe")) {
    if (auto done = read_probe(*probe, out, where + "/probe"); !done) return refuse(done.error());
  } else {
    out.warnings.push_back(
        {"probe_lag_unknown",
         "the probe's time constant is unknown and no lag was corrected: the true fold may "
         "have been hotter, never colder"});
  }

  Json cloth{{"material", "cotton_fabric"}, {"thickness_metres", k_standard_layer_metres}};
  if (const auto known = find_covering(out.covering))
    cloth["material"] = known->material;  // the fold is of that cloth
  if (const Json* given = member_if(request, "cloth")) cloth = given->front();
  Json base = Json::array({{{"material", "pu_foam_seat"}, {"thickness_metres", k_standard_base_metres}}});
  if (const Json* given = member_if(request, "under")) base = *given;
  const auto layer = read_stack(Json::array({cloth}), where + "/cloth");
  if (!layer) return refuse(layer.error());
  auto under = read_stack(base, where + "/under");
  if (!under) return refuse(under.error());
  out.cloth = layer->front();
  out.base = std::move(*under);
  out.coverings = {out.covering};
  const Json& readings = request.at("readings");
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const std::string place = fmt::format("{}/readings/{}", where, i);
    int layers = 0;
    auto reading = place_of_tip(readings[i], {out.cloth, out.base, test, out.machine, out.head, out.covering},
                                place, layers);
    if (!reading) return refuse(reading.error());
    if (auto judged = judge(*reading, i, test, place); !judged) {
      Error error = judged.error();
      if (error.where == "/probe") error.where = where + error.where;
      return refuse(error);
    }
    if (const auto covering = text_if(readings[i], "covering")) {
      if (std::find(out.coverings.begin(), out.coverings.end(), *covering) == out.coverings.end())
        out.coverings.push_back(*covering);
    }
    out.layers.push_back(layers);
    test.readings.push_back(std::move(*reading));
  }
  return out;
}

Result<std::vector<FittedCovering>> fit_coverings(const ReadFoldTest& read) {
  std::vector<FittedCovering> out;
  for (const std::string& covering : read.coverings) {
    steam::FoldTest test = read.test;
    test.cloth_key = cloth_key(read.machine, read.head, covering);
    auto fit = steam::calibrate(test, read.samples);
    if (!fit) return refuse(fit.error());
    out.push_back({covering, std::move(*fit)});
  }
  return out;
}

FoldReading imagined_reading(const ReadFoldTest& read, ReadingKind kind, int layers,
                             double pace_metres_per_second) {
  FoldReading out{};
  out.kind = kind;
  out.cloth_key = read.test.cloth_key;
  out.pace_metres_per_second = pace_metres_per_second;
  if (kind == ReadingKind::coupon) {
    const auto coupon = material_layer(k_standard_coupon, k_standard_layer_metres, "");
    if (coupon) out.stack = {*coupon};
    out.stack.insert(out.stack.end(), read.base.begin(), read.base.end());
    out.depth_metres = out.stack.front().thickness_metres;
    return out;
  }
  if (kind == ReadingKind::stationary) {
    out.hold_seconds = std::max(k_usual_hold_seconds, std::ceil(steam::k_stationary_time_constants *
                                                                read.test.probe_time_constant_seconds));
    out.pace_metres_per_second = read.test.head_length_metres / out.hold_seconds;
  }
  lay_fold(steam::Stack(static_cast<std::size_t>(layers), read.cloth), read.base, out);
  return out;
}

}  // namespace lastegg
