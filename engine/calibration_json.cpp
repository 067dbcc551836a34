#include "engine/calibration_json.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/request_values.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

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
       optional("tested_depth_metres",
                number(Unit::metre, "deepest tip of the readings in this covering").at_least(0).at_most(0.2)),
       field("mode",
             list(ratio("normal score").at_least(-12).at_most(12),
                  "most probable scores: the four unknowns as the tested covering shows them, then what the "
                  "head's own dew temperature and film differ by")
                 .items(6, 6)),
       field("factor", list(list(ratio("entry").at_least(-2).at_most(2), "row").items(6, 6),
                            "lower triangle of the Laplace map")
                           .items(6, 6)),
       field("weights",
             list(ratio("weight").at_least(0).at_most(1), "of the samples, sum 1").items(16, 4096))},
      "what a fold test found, in the form that pace and plan take");
}

Json to_json(const steam::Calibration& calibration, const std::string& covering) {
  Json factor = Json::array();
  for (const auto& row : calibration.factor) factor.push_back(row);
  Json out{{"tested", calibration.tested},
           {"head_key", calibration.head_key},
           {"cloth_key", calibration.cloth_key},
           {"covering", covering},
           {"towel", word(calibration.towel)},
           {"head_length_metres", calibration.head_length_metres},
           {"pressure_pascal", calibration.pressure_pascal},
           {"mode", calibration.mode},
           {"factor", factor},
           {"weights", calibration.weights}};
  if (calibration.tested_depth_metres > 0) out["tested_depth_metres"] = calibration.tested_depth_metres;
  return out;
}

Result<steam::Calibration> read_calibration(const Json& given, const std::string& where) {
  const auto weights = numbers_of(given, "weights");
  steam::Calibration calibration =
      steam::prior_calibration(text_of(given, "head_key"), text_of(given, "cloth_key"),
                               read_towel(text_of(given, "towel")), number_of(given, "head_length_metres"),
                               number_of(given, "pressure_pascal"), static_cast<int>(weights.size()));
  calibration.tested = given.at("tested").get<bool>();
  calibration.tested_depth_metres = number_if(given, "tested_depth_metres").value_or(0);
  const Json& factor = given.at("factor");
  for (std::size_t row = 0; row < steam::k_fitted_count; ++row) {
    calibration.mode[row] = given.at("mode")[row].get<double>();
    for (std::size_t column = 0; column < steam::k_fitted_count; ++column) {
      calibration.factor[row][column] = factor[row][column].get<double>();
    }
  }
  double sum = 0, squares = 0;
  for (const double weight : weights) {
    sum += weight;
    squares += weight * weight;
  }
  if (std::fabs(sum - 1) > 1e-6) {
    return refuse({ErrorKind::bad_input, say("the weights add up to {:g}; they must add up to 1", sum),
                   where + "/weights", fmt::format("{:g}", sum), "1", ""});
  }
  calibration.weights = weights;
  calibration.effective_samples = sum * sum / squares;
  return calibration;
}

}  // namespace lastegg
