// The questions `saturation` and `conduction` through the one door: the documented shapes, numbers that
// anyone can look up, and refusals with their place.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>
#include <string>

#include "engine/ask.h"

namespace lastegg {
namespace {

Json answered(const char* question, const std::string& request) {
  const AskOutcome outcome = ask(question, request);
  EXPECT_TRUE(outcome.ok) << request << " -> " << outcome.text;
  return Json::parse(outcome.text);
}

Json refused(const char* question, const std::string& request) {
  const AskOutcome outcome = ask(question, request);
  EXPECT_FALSE(outcome.ok) << request << " -> " << outcome.text;
  return Json::parse(outcome.text).at("error");
}

std::string example(const std::string& name) {
  std::ifstream file(LASTEGG_SOURCE_DIR "/examples/" + name);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

TEST(SaturationQuestion, AnswersByTemperaturePressureAndElevation) {
  // Saturation table of python3-iapws 1.5.3 (IF97) at 60 C: 19.94580 kPa, rho_v 0.13042, hf 251.154, hg
  // 2608.845 kJ/kg.
  const Json by_temperature = answered("saturation", R"({"temperature_celsius": 60})");
  EXPECT_NEAR(by_temperature.at("pressure_pascal"), 19945.80, 0.006);
  EXPECT_NEAR(by_temperature.at("vapour_density_kilograms_per_m3"), 0.13042, 6e-6);
  EXPECT_NEAR(by_temperature.at("liquid_density_kilograms_per_m3"), 983.175, 6e-4);
  EXPECT_NEAR(by_temperature.at("liquid_enthalpy_joules_per_kilogram"), 251154.0, 0.6);
  EXPECT_NEAR(by_temperature.at("vapour_enthalpy_joules_per_kilogram"), 2608845.0, 0.6);
  EXPECT_NEAR(by_temperature.at("latent_heat_joules_per_kilogram"), 2357691.0, 0.6);
  EXPECT_EQ(by_temperature.at("temperature_celsius"), 60.0);

  const Json by_pressure = answered("saturation", R"({"pressure_pascal": 101325})");
  EXPECT_NEAR(by_pressure.at("temperature_celsius"), 99.9743, 6e-5);
  EXPECT_NEAR(by_pressure.at("latent_heat_joules_per_kilogram"), 2256541.0, 0.6);

  const Json by_elevation = answered("saturation", R"({"elevation_metres": 1609.344})");
  EXPECT_NEAR(by_elevation.at("pressure_pascal"), 83428, 1.0);
  EXPECT_NEAR(by_elevation.at("temperature_celsius"), 94.62, 0.006);
  EXPECT_EQ(by_elevation.at("warnings").at(0).at("code"), "standard_atmosphere");
}

TEST(SaturationQuestion, AnswersTheDewTemperatureOfAMixture) {
  const Json dew = answered("saturation", R"({"pressure_pascal": 101325, "steam_fraction": 0.8})");
  EXPECT_NEAR(dew.at("dew_temperature_celsius"), 93.84, 0.006);
  EXPECT_NEAR(dew.at("steam_pressure_pascal"), 81060.0, 1e-6);
  EXPECT_FALSE(dew.contains("condenses"));
  EXPECT_TRUE(answered("saturation",
                       R"({"temperature_celsius": 90, "pressure_pascal": 101325, "steam_fraction": 0.8})")
                  .at("condenses"));
  EXPECT_FALSE(answered("saturation",
                        R"({"temperature_celsius": 95, "elevation_metres": 0, "steam_fraction": "80 %"})")
                   .at("condenses"));
}

TEST(SaturationQuestion, ReadsUnits) {
  EXPECT_EQ(answered("saturation", R"({"temperature_celsius": "212 F"})").at("pressure_pascal"),
            answered("saturation", R"({"temperature_celsius": 100})").at("pressure_pascal"));
  EXPECT_NEAR(answered("saturation", R"({"elevation_metres": "5280 ft"})").at("pressure_pascal"), 83428, 1.0);
}

TEST(SaturationQuestion, RefusesWithThePlace) {
  EXPECT_EQ(refused("saturation", R"({"temperature_celsius": 400})").at("where"), "/temperature_celsius");
  EXPECT_EQ(refused("saturation", R"({"pressure_pascal": 100})").at("where"), "/pressure_pascal");
  EXPECT_EQ(refused("saturation", R"({"elevation_metres": 9000})").at("limit"), 6000);
  EXPECT_EQ(refused("saturation", R"({"pressure_pascal": 101325, "steam_fraction": 1.2})").at("where"),
            "/steam_fraction");
  const Json too_dry = refused("saturation", R"({"pressure_pascal": 101325, "steam_fraction": 0.001})");
  EXPECT_EQ(too_dry.at("where"), "/steam_fraction");
  EXPECT_EQ(too_dry.at("kind"), "out_of_domain");
  EXPECT_EQ(refused("saturation", "{}").at("kind"), "bad_input");
  EXPECT_EQ(refused("saturation", R"({"steam_fraction": 0.8})").at("kind"), "bad_input");
  EXPECT_EQ(refused("saturation", R"({"temperature_celsius": 60, "pressure_pascal": 101325})").at("kind"),
            "bad_input");
}

std::string conduction_request(const std::string& front, const std::string& back, const std::string& depths) {
  return R"({"layers":[{"thickness_metres":0.1,"conductivity_watts_per_metre_kelvin":0.05,)"
         R"("heat_capacity_joules_per_m3_kelvin":390000}],"start_celsius":20,"front":)" +
         front + R"(,"back":)" + back + R"(,"depths_metres":)" + depths + R"(,"times_seconds":[4]})";
}

TEST(ConductionQuestion, AnswersTheExactSolutions) {
  const std::string insulated = R"({"kind":"insulated"})";
  const Json fixed = answered(
      "conduction", conduction_request(R"({"kind":"fixed","celsius":95})", insulated, "[0.001,0.002]"));
  EXPECT_NEAR(fixed.at("temperatures_celsius").at(0).at(0), 44.258, 0.01);
  EXPECT_NEAR(fixed.at("temperatures_celsius").at(0).at(1), 23.621, 0.01);
  const Json film = answered(
      "conduction", conduction_request(R"({"kind":"convective","celsius":95,"film_watts_per_m2_kelvin":300})",
                                       insulated, "[0.001]"));
  EXPECT_NEAR(film.at("temperatures_celsius").at(0).at(0), 39.153, 0.01);
  const Json flux = answered(
      "conduction", conduction_request(R"({"kind":"flux","flux_watts_per_m2":5000})", insulated, "[0]"));
  EXPECT_NEAR(flux.at("temperatures_celsius").at(0).at(0), 100.805, 0.01);
  EXPECT_NEAR(flux.at("energy").at("front_joules_per_m2"), 20000.0, 1e-6);
  EXPECT_NEAR(flux.at("energy").at("stored_joules_per_m2"), 20000.0, 1e-4);
  const Json behind =
      answered("conduction", conduction_request(insulated, R"({"kind":"fixed","celsius":95})", "[0.099]"));
  EXPECT_NEAR(behind.at("temperatures_celsius").at(0).at(0), 44.258, 0.01);
}

TEST(ConductionQuestion, RefusesWithThePlace) {
  const std::string insulated = R"({"kind":"insulated"})", hot = R"({"kind":"fixed","celsius":95})";
  EXPECT_EQ(refused("conduction", conduction_request(hot, insulated, "[0.05,0.2]")).at("where"),
            "/depths_metres/1");
  EXPECT_EQ(refused("conduction", conduction_request(hot, insulated, "[]")).at("where"), "/depths_metres");
  EXPECT_EQ(refused("conduction", conduction_request(R"({"kind":"fixed"})", insulated, "[0]")).at("where"),
            "/front/celsius");
  EXPECT_EQ(refused("conduction", conduction_request(R"({"kind":"melting"})", insulated, "[0]")).at("kind"),
            "bad_input");
  EXPECT_EQ(refused("conduction",
                    conduction_request(R"({"kind":"convective","celsius":9,"film_watts_per_m2_kelvin":0})",
                                       insulated, "[0]"))
                .at("where"),
            "/front/film_watts_per_m2_kelvin");
}

TEST(PhysicsQuestions, AnswerTheirExamplesWithinTheirShapes) {
  for (const char* name : {"saturation", "conduction"}) {
    const Json answer = answered(name, example(std::string(name) + ".json"));
    Json result = answer;
    for (const char* key : {"engine", "data", "warnings"}) result.erase(key);
    const auto checked = check_answer(**question_named(name), result);
    EXPECT_TRUE(checked) << checked.error().message;
  }
}

}  // namespace
}  // namespace lastegg
