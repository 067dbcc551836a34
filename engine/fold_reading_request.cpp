#include "engine/fold_reading_request.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/materials/materials.h"
#include "treatments/touch/touch.h"
#include "words/say.h"

namespace lastegg {

using steam::FoldReading;
using steam::ReadingKind;

namespace {

constexpr std::size_t k_least_fold_layers = 3;
constexpr double k_most_above_boiling_kelvin = 8;  // more is no error of a thermometer but a slip
constexpr double k_below_start_kelvin = 5;
constexpr double k_coldest_celsius = -20;  // of what a palm calls cold
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

}  // namespace

void lay_fold(const steam::Stack& above, const steam::Stack& base, FoldReading& out) {
  out.stack = above;
  out.depth_metres = steam::thickness_metres(above);
  const std::size_t total = std::max<std::size_t>(k_least_fold_layers, above.size() + 1);
  while (out.stack.size() < total) out.stack.push_back(above.back());
  out.stack.insert(out.stack.end(), base.begin(), base.end());
}

namespace {

// A probe shows a peak, a surface is read by gun or palm some seconds after.
Result<void> check_what_was_shown(const Json& reading, bool is_surface, const std::string& where) {
  if (!is_surface) {
    for (const char* key : {"gun_celsius", "palm", "seconds_after"}) {
      if (has(reading, key))
        return refuse_member(say("{} belongs to a reading of the kind surface", key), where + "/" + key);
    }
    if (!has(reading, "peak_celsius"))
      return refuse_member(say("peak_celsius is missing: the highest temperature shown"), where);
    return {};
  }
  if (has(reading, "peak_celsius")) {
    return refuse_member(say("a surface has no peak; give gun_celsius, or palm, and seconds_after"),
                         where + "/peak_celsius");
  }
  if (has(reading, "gun_celsius") == has(reading, "palm"))
    return refuse_member(say("a surface reading needs gun_celsius or palm, and not both"), where);
  if (!has(reading, "seconds_after"))
    return refuse_member(say("seconds_after is missing: how long after the head had left the place"), where);
  return {};
}

Result<ReadingKind> kind_of(const Json& reading, const std::string& where) {
  const bool holds = has(reading, "hold_seconds");
  const std::string kind = text_if(reading, "kind").value_or(holds ? "stationary" : "pass");
  if ((kind == "stationary") != holds) {
    return refuse_member(
        holds ? say("hold_seconds belongs to a stationary reading; this one is \"{}\"", kind)
              : say("a stationary reading has no pace; give hold_seconds, how long the head rested"),
        where);
  }
  const bool is_coupon = kind == "coupon", is_edge = kind == "under_real_edge",
             is_surface = kind == "surface";
  if (auto shown = check_what_was_shown(reading, is_surface, where); !shown) return refuse(shown.error());
  if (is_surface && has(reading, "layers"))
    return refuse_member(say("a surface reading has no tip; leave layers out"), where + "/layers");
  if (is_coupon && has(reading, "layers"))
    return refuse_member(say("a coupon has nothing over the tip but itself; leave layers out"),
                         where + "/layers");
  if (!is_coupon && !is_surface && !has(reading, "layers"))
    return refuse_member(say("layers is missing: what lay over the tip"), where);
  if (!is_coupon && has(reading, "coupon"))
    return refuse_member(say("coupon belongs to a reading of the kind coupon"), where + "/coupon");
  if (is_edge && !has(reading, "covering"))
    return refuse_member(say("covering is missing: a reading under a real edge is of that edge's cloth"),
                         where);
  if (!is_edge && has(reading, "covering")) {
    return refuse_member(
        say("covering belongs to a reading of the kind under_real_edge; the fold's own stands beside the "
            "readings"),
        where + "/covering");
  }
  return is_surface             ? ReadingKind::surface
         : is_coupon            ? ReadingKind::coupon
         : is_edge              ? ReadingKind::under_real_edge
         : kind == "stationary" ? ReadingKind::stationary
                                : ReadingKind::pass;
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
    return refuse_member(say("the coupon lets vapour in; it must be impermeable, since only then it tells "
                             "the film apart from the "
                             "cloth"),
                         where + "/coupon");
  }
  return stack->front();
}

// What a gun or a palm says of the surface.
void read_surface(const Json& reading, const ReadFoldTest& read, FoldReading& out) {
  out.seconds_after = number_of(reading, "seconds_after");
  if (const auto palm = text_if(reading, "palm")) {
    const double hottest = steam::boiling_celsius(read.test.pressure_pascal) + k_most_above_boiling_kelvin;
    out.peak_celsius = *palm == "cold"   ? k_coldest_celsius
                       : *palm == "warm" ? touch::k_palm_cold_celsius
                                         : touch::k_palm_hot_celsius;
    out.high_celsius = *palm == "cold"   ? touch::k_palm_cold_celsius
                       : *palm == "warm" ? touch::k_palm_hot_celsius
                                         : hottest;
    out.instrument_error_kelvin = touch::k_palm_error_kelvin;
    return;
  }
  const touch::Gun gun{number_of(reading, "spot_metres"), number_of(reading, "emissivity_setting")};
  const double shown = number_of(reading, "gun_celsius"), room = read.test.start_celsius;
  const auto surface = [&](double celsius, double emissivity) {
    return touch::surface_celsius(celsius, room, read.head_width_metres, gun, emissivity);
  };
  out.peak_celsius = surface(shown, touch::k_emissivity);
  const double by_gun = surface(shown + touch::k_gun_error_kelvin, touch::k_emissivity) - out.peak_celsius;
  const double by_emissivity =
      surface(shown, touch::k_emissivity - touch::k_emissivity_spread) - out.peak_celsius;
  out.instrument_error_kelvin = std::sqrt(by_gun * by_gun + by_emissivity * by_emissivity);
}

}  // namespace

Result<FoldReading> read_reading(const Json& reading, const ReadFoldTest& places, const std::string& where,
                                 int& layers) {
  FoldReading out{};
  const auto kind = kind_of(reading, where);
  if (!kind) return refuse(kind.error());
  out.kind = *kind;
  out.cloth_key = places.test.cloth_key;
  if (*kind != ReadingKind::surface) out.peak_celsius = number_of(reading, "peak_celsius");
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
  if (*kind == ReadingKind::surface) {
    read_surface(reading, places, out);
    lay_fold({places.cloth}, places.base, out);
    out.depth_metres = 0;
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

Result<void> judge_reading(const FoldReading& reading, std::size_t i, const steam::FoldTest& test,
                           const std::string& where) {
  const bool is_surface = reading.kind == ReadingKind::surface;
  const std::string shown = where + (is_surface ? "/gun_celsius" : "/peak_celsius");
  const double boiling = steam::boiling_celsius(test.pressure_pascal);
  const double hottest = boiling + k_most_above_boiling_kelvin;
  if (!reading.high_celsius && reading.peak_celsius > hottest) {
    return refuse({ErrorKind::bad_input,
                   say("reading {} is {:g} C; under steam it must be at most the boiling point, {:.1f} C "
                       "here, and {:g} K of error: check the thermometer and the unit",
                       i + 1, reading.peak_celsius, boiling, k_most_above_boiling_kelvin),
                   shown, fmt::format("{:g}", reading.peak_celsius), fmt::format("{:.1f}", hottest), "C"});
  }
  if (!reading.high_celsius && reading.peak_celsius < test.start_celsius - k_below_start_kelvin) {
    return refuse_number(say("reading {} is {:g} C; it must be at least the start temperature, {:g} C, less "
                             "{:g} K of thermometer error",
                             i + 1, reading.peak_celsius, test.start_celsius, k_below_start_kelvin),
                         shown, reading.peak_celsius, test.start_celsius - k_below_start_kelvin, "C");
  }
  const double tau = test.probe_time_constant_seconds;
  if (reading.kind == ReadingKind::stationary) {
    const double least = steam::k_stationary_time_constants * tau;
    if (reading.hold_seconds < least) {
      return refuse_number(say("reading {} rested {:g} s; with this probe ({:.2g} s) it must rest at least "
                               "{:.0f} s, four time constants, to stand still",
                               i + 1, reading.hold_seconds, tau, std::ceil(least)),
                           where + "/hold_seconds", reading.hold_seconds, std::ceil(least), "s");
    }
    return {};
  }
  if (!is_surface && tau > steam::k_slowest_probe_seconds) {
    return refuse_number(
        say("the probe's time constant is {:.3g} s; for a moving head it must be at most {:g} "
            "s: a slower probe lags more than can be corrected for. Use a thinner one, or "
            "only readings with the head at rest",
            tau, steam::k_slowest_probe_seconds),
        "/probe", tau, steam::k_slowest_probe_seconds, "s");
  }
  if (!(reading.pace_metres_per_second >= 0.001 && reading.pace_metres_per_second <= 0.3)) {
    return refuse_number(say("the pace of reading {} is {:g} m/s; it must lie between 0.001 and 0.3 m/s",
                             i + 1, reading.pace_metres_per_second),
                         where, reading.pace_metres_per_second,
                         reading.pace_metres_per_second < 0.001 ? 0.001 : 0.3, "m/s");
  }
  return {};
}

Result<steam::Layer> standard_coupon() {
  return material_layer(k_standard_coupon, k_standard_layer_metres, "");
}

const char* word(ReadingKind kind) {
  switch (kind) {
    case ReadingKind::stationary:
      return "stationary";
    case ReadingKind::coupon:
      return "coupon";
    case ReadingKind::under_real_edge:
      return "under_real_edge";
    case ReadingKind::surface:
      return "surface";
    case ReadingKind::pass:
      break;
  }
  return "pass";
}

}  // namespace lastegg
