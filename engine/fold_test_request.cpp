#include "engine/fold_test_request.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/fold_reading_request.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/materials/materials.h"
#include "words/say.h"

namespace lastegg {

using steam::FoldReading;
using steam::ReadingKind;

namespace {

constexpr double k_slow_probe_seconds = 1.0;
constexpr double k_standard_base_metres = 0.03;  // the cushion or folded blanket below: estimate

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
           say("the marks of the dip do not lie on one curve of a simple probe: a thick sheath, or a "
               "watch started late; the fit leaves more room for it")});
    }
  } else {
    test.probe_time_constant_seconds = number_of(probe, "time_constant_seconds");
    test.probe_log_spread = steam::k_dip_to_fold_spread;
  }
  if (test.probe_time_constant_seconds > k_slow_probe_seconds) {
    out.warnings.push_back(
        {"slow_probe", say("a probe of {:.2g} s reads several kelvin low at working pace; the fit corrects "
                           "for it, a thinner probe (under 1 s) is surer",
                           test.probe_time_constant_seconds)});
  }
  return {};
}

}  // namespace

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
        {"head_size_assumed",
         say("the head's size was not given: 80 mm along the travel is assumed (estimate)")});
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
         say("the probe's time constant is unknown and no lag was corrected: the true fold may "
             "have been hotter, never colder")});
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
    auto reading = read_reading(readings[i], out, place, layers);
    if (!reading) return refuse(reading.error());
    if (auto judged = judge_reading(*reading, i, test, place); !judged) {
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
    if (const auto coupon = standard_coupon()) out.stack = {*coupon};
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
