#include "engine/calibration_json.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "physics/materials/materials.h"

namespace lastegg {

using namespace shape;

namespace {

// A probe slower than this lags more than a correction can carry: at working pace a 5 s probe shows 16 K too
// little (computed; the limit itself is judgement).
constexpr double k_slowest_probe_seconds = 4.0;
constexpr double k_slow_probe_seconds = 1.0;
constexpr double k_standard_layer_metres =
    0.001;  // the recipe's cloth: estimate, ten layers measure about 10 mm
constexpr double k_standard_base_metres = 0.03;  // the cushion or folded blanket below: estimate
constexpr int k_least_fold_layers = 3;

// Layers over the tip, then at least one more of the same cloth and three in all, then the base.
Result<steam::FoldReading> place_of_tip(const Json& reading, const steam::Stack& above,
                                        const steam::Stack& base) {
  steam::FoldReading out{};
  out.stack = above;
  out.depth_metres = steam::thickness_metres(above);
  const std::size_t total = std::max<std::size_t>(k_least_fold_layers, above.size() + 1);
  while (out.stack.size() < total) out.stack.push_back(above.back());
  out.stack.insert(out.stack.end(), base.begin(), base.end());
  out.peak_celsius = number_of(reading, "peak_celsius");
  out.pace_metres_per_second = has(reading, "pace_metres_per_second")
                                   ? number_of(reading, "pace_metres_per_second")
                                   : number_of(reading, "distance_metres") / number_of(reading, "seconds");
  return out;
}

Result<steam::Layer> single_layer(const Json& layer, const std::string& where) {
  auto stack = read_stack(Json::array({layer}), where);
  if (!stack) return refuse(stack.error());
  return stack->front();
}

}  // namespace

Shape towel_shape(std::string text) {
  return choice({{"none", "the bare head"},
                 {"wrapped", "a dry towel wrapped around the head"},
                 {"laid", "a dry towel laid on the cloth, the head moves over it"}},
                std::move(text));
}

steam::Towel read_towel(const std::string& word) {
  return word == "wrapped" ? steam::Towel::wrapped : word == "laid" ? steam::Towel::laid : steam::Towel::none;
}

const char* word(steam::Towel towel) {
  switch (towel) {
    case steam::Towel::wrapped:
      return "wrapped";
    case steam::Towel::laid:
      return "laid";
    case steam::Towel::none:
      break;
  }
  return "none";
}

std::string head_key(const std::string& machine, const std::string& head, steam::Towel towel) {
  return "head|" + machine + "|" + head + "|" + word(towel);
}

std::string cloth_key(const std::string& machine, const std::string& head, const std::string& covering) {
  return "cloth|" + machine + "|" + head + "|" + covering;
}

std::vector<Field> fold_test_fields() {
  Shape reading =
      object({optional("pace_metres_per_second",
                       number(Unit::metre_per_second, "speed of the head").at_least(0.001).at_most(0.3)),
              optional("distance_metres", number(Unit::metre, "way of the head").above(0).at_most(10)),
              optional("seconds", number(Unit::second, "time for that way").above(0).at_most(600)),
              field("layers", either({integer("layers of the test fold over the tip").at_least(1).at_most(8),
                                      stack_shape("the layers over the tip, from the steamed surface down")},
                                     "what lay over the tip")),
              field("peak_celsius",
                    number(Unit::celsius, "highest reading of the pass").at_least(-20).at_most(120))},
             "one pass over the fold");
  reading.exactly_one_of({{"pace_metres_per_second"}, {"distance_metres", "seconds"}});
  std::vector<Field> fields{
      field("machine", text("name of the machine")),
      field(
          "head",
          either(
              {text("name of the head"),
               object(
                   {field("name", text("name of the head")),
                    with_default(
                        "length_metres",
                        number(Unit::metre, "contact length along the travel").at_least(0.01).at_most(0.6),
                        0.08),
                    with_default("width_metres",
                                 number(Unit::metre, "across the travel").at_least(0.005).at_most(0.6), 0.2)},
                   "the head with its size")},
              "the head; without a size, 80 mm along the travel and 200 mm across (estimate)")),
      with_default("towel", towel_shape("towel during the test"), "none"),
      optional("probe", object({field("time_constant_seconds",
                                      number(Unit::second, "time in which the probe covers 63 % of a jump")
                                          .at_least(0)
                                          .at_most(60))},
                               "the thermometer; without it no lag is corrected, which can only read low")),
      with_default(
          "start_celsius",
          number(Unit::celsius, "temperature of the fold before each pass").at_least(-20).at_most(50), 20),
      with_default("covering", text("what the fold was made of: a covering of the furniture, or test_fold"),
                   "test_fold"),
      optional("cloth", stack_shape("one layer of the test fold, when readings count layers").items(1, 1)),
      optional("under", stack_shape("what lies under the fold")),
      with_default("working_pace_metres_per_second",
                   number(Unit::metre_per_second, "pace at which the practice target is judged")
                       .at_least(0.002)
                       .at_most(0.1),
                   0.0254),
      with_default("samples", integer("size of the ensemble; verdicts use 1024").at_least(64).at_most(4096),
                   1024),
      field("readings", list(reading, "the passes").items(1, 64))};
  for (Field& pressure : pressure_fields()) fields.push_back(std::move(pressure));
  return fields;
}

Result<ReadFoldTest> read_fold_test(const Json& request, const std::string& where) {
  ReadFoldTest out;
  steam::FoldTest& test = out.test;
  const Json& head = request.at("head");
  const std::string machine = text_of(request, "machine");
  const std::string head_name = head.is_string() ? head.get<std::string>() : text_of(head, "name");
  if (head.is_object()) {
    test.head_length_metres = number_of(head, "length_metres");
    out.head_width_metres = number_of(head, "width_metres");
  } else {
    out.warnings.push_back(
        {"head_size_assumed", "the head's size was not given: 80 mm along the travel is assumed (estimate)"});
  }
  test.towel = read_towel(text_of(request, "towel"));
  out.covering = text_of(request, "covering");
  test.head_key = head_key(machine, head_name, test.towel);
  test.cloth_key = cloth_key(machine, head_name, out.covering);
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
    test.probe_time_constant_seconds = number_of(*probe, "time_constant_seconds");
    if (test.probe_time_constant_seconds > k_slowest_probe_seconds) {
      return refuse({ErrorKind::bad_input,
                     fmt::format("the probe's time constant is {:g} s; it must be at most {:g} s: a slower "
                                 "probe lags more than can "
                                 "be corrected for. Use a thinner one",
                                 test.probe_time_constant_seconds, k_slowest_probe_seconds),
                     where + "/probe/time_constant_seconds",
                     fmt::format("{:g}", test.probe_time_constant_seconds),
                     fmt::format("{:g}", k_slowest_probe_seconds), "s"});
    }
    if (test.probe_time_constant_seconds > k_slow_probe_seconds) {
      out.warnings.push_back(
          {"slow_probe",
           fmt::format("a probe of {:g} s reads several kelvin low at working pace; the fit corrects "
                       "for it, a thinner probe (under 1 s) is surer",
                       test.probe_time_constant_seconds)});
    }
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
  const auto under = read_stack(base, where + "/under");
  if (!under) return refuse(under.error());
  const Json& readings = request.at("readings");
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const std::string place = fmt::format("{}/readings/{}", where, i);
    const Json& layers = readings[i].at("layers");
    steam::Stack above;
    if (layers.is_number()) {
      const auto layer = single_layer(cloth, where + "/cloth");
      if (!layer) return refuse(layer.error());
      above.assign(static_cast<std::size_t>(layers.get<int>()), *layer);
    } else {
      auto stack = read_stack(layers, place + "/layers");
      if (!stack) return refuse(stack.error());
      above = std::move(*stack);
    }
    out.layers.push_back(static_cast<int>(above.size()));
    auto reading = place_of_tip(readings[i], above, *under);
    if (!reading) return refuse(reading.error());
    const double boiling = steam::boiling_celsius(test.pressure_pascal);
    if (reading->peak_celsius > boiling + 3) {
      return refuse({ErrorKind::bad_input,
                     fmt::format("reading {} is {:g} C; under steam it must be at most the boiling point, "
                                 "{:.1f} C here, and 3 K of "
                                 "thermometer error: check the thermometer",
                                 i + 1, reading->peak_celsius, boiling),
                     place + "/peak_celsius", fmt::format("{:g}", reading->peak_celsius),
                     fmt::format("{:.1f}", boiling + 3), "C"});
    }
    if (reading->peak_celsius < test.start_celsius - 5) {
      return refuse({ErrorKind::bad_input,
                     fmt::format("reading {} is {:g} C; it must be at least the start temperature, {:g} C, "
                                 "less 5 K of thermometer "
                                 "error",
                                 i + 1, reading->peak_celsius, test.start_celsius),
                     place + "/peak_celsius", fmt::format("{:g}", reading->peak_celsius),
                     fmt::format("{:g}", test.start_celsius - 5), "C"});
    }
    if (!(reading->pace_metres_per_second >= 0.001 && reading->pace_metres_per_second <= 0.3)) {
      return refuse({ErrorKind::bad_input,
                     fmt::format("the pace of reading {} is {:g} m/s; it must lie between 0.001 and 0.3 m/s",
                                 i + 1, reading->pace_metres_per_second),
                     place, fmt::format("{:g}", reading->pace_metres_per_second),
                     reading->pace_metres_per_second < 0.001 ? "0.001" : "0.3", "m/s"});
    }
    test.readings.push_back(std::move(*reading));
  }
  return out;
}

Shape calibration_shape() {
  return object(
      {field("tested", flag("whether readings stand behind it; false: the prior")),
       field("head_key", text("machine, head and towel")), field("cloth_key", text("head and covering")),
       field("covering", text("covering that was tested")),
       field("towel", towel_shape("towel during the test")),
       field("head_length_metres",
             number(Unit::metre, "contact length along the travel").at_least(0.01).at_most(0.6)),
       field("pressure_pascal",
             number(Unit::pascal, "air pressure at the test").at_least(50000).at_most(110000)),
       field("mode",
             list(ratio("normal score").at_least(-12).at_most(12), "most probable scores").items(4, 4)),
       field("factor", list(list(ratio("entry").at_least(-2).at_most(2), "row").items(4, 4),
                            "lower triangle of the Laplace map")
                           .items(4, 4)),
       field("weights",
             list(ratio("weight").at_least(0).at_most(1), "of the samples, sum 1").items(16, 4096))},
      "what a fold test found, in the form that pace and plan take");
}

Json to_json(const steam::Calibration& calibration, const std::string& covering) {
  Json factor = Json::array();
  for (const auto& row : calibration.factor) factor.push_back(row);
  return {{"tested", calibration.tested},
          {"head_key", calibration.head_key},
          {"cloth_key", calibration.cloth_key},
          {"covering", covering},
          {"towel", word(calibration.towel)},
          {"head_length_metres", calibration.head_length_metres},
          {"pressure_pascal", calibration.pressure_pascal},
          {"mode", calibration.mode},
          {"factor", factor},
          {"weights", calibration.weights}};
}

Result<steam::Calibration> read_calibration(const Json& given, const std::string& where) {
  const auto weights = numbers_of(given, "weights");
  steam::Calibration calibration =
      steam::prior_calibration(text_of(given, "head_key"), text_of(given, "cloth_key"),
                               read_towel(text_of(given, "towel")), number_of(given, "head_length_metres"),
                               number_of(given, "pressure_pascal"), static_cast<int>(weights.size()));
  calibration.tested = given.at("tested").get<bool>();
  const Json& factor = given.at("factor");
  for (std::size_t row = 0; row < steam::k_unknown_count; ++row) {
    calibration.mode[row] = given.at("mode")[row].get<double>();
    for (std::size_t column = 0; column < steam::k_unknown_count; ++column) {
      calibration.factor[row][column] = factor[row][column].get<double>();
    }
  }
  double sum = 0, squares = 0;
  for (const double weight : weights) {
    sum += weight;
    squares += weight * weight;
  }
  if (std::fabs(sum - 1) > 1e-6) {
    return refuse({ErrorKind::bad_input,
                   fmt::format("the weights add up to {:g}; they must add up to 1", sum), where + "/weights",
                   fmt::format("{:g}", sum), "1", ""});
  }
  calibration.weights = weights;
  calibration.effective_samples = sum * sum / squares;
  return calibration;
}

}  // namespace lastegg
