// The data files: they load, say where each number comes from, and hold the numbers of their sources.
#include <gtest/gtest.h>

#include <cmath>
#include <regex>
#include <set>

#include "physics/evidence/file_for_tests.h"
#include "physics/materials/materials.h"

namespace lastegg {
namespace {

using Json = nlohmann::json;

std::string text_of(const std::string& path) {
  return text_of_file(std::string(LASTEGG_SOURCE_DIR) + "/" + path);
}

std::set<std::string> bibliography() {
  const std::string text = text_of("references/sources.bib");
  const std::regex entry("@[a-z]+\\{([a-z0-9_]+),");
  std::set<std::string> keys;
  for (std::sregex_iterator i(text.begin(), text.end(), entry), end; i != end; ++i) keys.insert((*i)[1]);
  return keys;
}

const char* const k_files[] = {"physics/materials/data/materials.json",
                               "physics/materials/data/damage_limits.json",
                               "physics/materials/data/coverings.json", "bugs/mortality/data/mortality.json"};

// Calls `visit` with every object that names a source, at any depth.
template <class Visit>
void each_sourced(const Json& value, const Visit& visit) {
  if (value.is_object() && value.contains("source")) visit(value);
  if (value.is_structured())
    for (const Json& child : value) each_sourced(child, visit);
}

TEST(MaterialsData, Loads) {
  const auto state = material_data_state();
  ASSERT_TRUE(state) << state.error().message;
  EXPECT_EQ(all_materials().size(), 48u);
  EXPECT_EQ(all_damage_limits().size(), 50u);
  EXPECT_EQ(all_coverings().size(), 12u);
}

TEST(MaterialsData, EverySourceResolves) {
  const auto keys = bibliography();
  ASSERT_GT(keys.size(), 40u);
  std::size_t count = 0;
  for (const char* file : k_files) {
    const Json document = Json::parse(text_of(file), nullptr, false);
    ASSERT_TRUE(document.is_object()) << file;
    each_sourced(document, [&](const Json& object) {
      ++count;
      EXPECT_TRUE(keys.count(object["source"].get<std::string>())) << file << ": " << object;
      EXPECT_TRUE(object.contains("locator") && !object["locator"].get<std::string>().empty()) << object;
      EXPECT_TRUE(object.contains("quality") && quality_named(object["quality"].get<std::string>()))
          << object;
      // What comes from memory says so in its quality, and the other way round.
      if (object["source"] == "memory") {
        EXPECT_EQ(object["quality"], "from memory") << object;
      }
      if (object["source"] == "own_derivation") {
        EXPECT_EQ(object["quality"], "estimate") << object;
      }
    });
  }
  EXPECT_GT(count, 300u);
}

TEST(MaterialsData, NoSourceThatIsNone) {
  const std::regex forbidden("various|unknown|assumed", std::regex::icase);
  for (const char* file : k_files) {
    each_sourced(Json::parse(text_of(file), nullptr, false), [&](const Json& object) {
      const std::string words =
          object["source"].get<std::string>() + " " + object["locator"].get<std::string>();
      EXPECT_FALSE(std::regex_search(words, forbidden)) << file << ": " << object;
    });
  }
}

TEST(MaterialsData, ValuesLieWithinPhysicalBounds) {
  std::set<std::string> keys;
  for (const Material& m : all_materials()) {
    EXPECT_TRUE(keys.insert(m.key).second) << m.key << " twice";
    EXPECT_TRUE(std::regex_match(m.key, std::regex("[a-z][a-z0-9_]*"))) << m.key;
    EXPECT_GE(m.density.value, 10) << m.key;
    EXPECT_LE(m.density.value, 1600) << m.key;
    EXPECT_GE(m.conductivity.value, 0.024) << m.key << ": less than still air";
    EXPECT_LE(m.conductivity.value, 0.6) << m.key;
    EXPECT_GE(m.specific_heat.value, 800) << m.key;
    EXPECT_LE(m.specific_heat.value, 4200) << m.key;
    if (m.thickness) {
      EXPECT_GE(m.thickness->value, 1e-4) << m.key;
      EXPECT_LE(m.thickness->value, 0.2) << m.key;
    }
    if (m.permeable) {
      EXPECT_GT(m.porosity->value, 0.5) << m.key;
      EXPECT_LT(m.porosity->value, 1) << m.key;
      EXPECT_GE(m.tortuosity->value, 1) << m.key;
      EXPECT_LE(m.tortuosity->value, 3) << m.key;
      EXPECT_GE(m.sorption_scale->value, 0.05) << m.key;
    }
    EXPECT_LT(m.density.log_spread(), 0.6) << m.key;
    EXPECT_LT(m.conductivity.log_spread(), 0.6) << m.key;
    EXPECT_GE(m.heat_capacity_log_spread(), m.density.log_spread()) << m.key;
  }
}

TEST(MaterialsData, SorptionScaleFollowsItsRule) {
  for (const Material& m : all_materials()) {
    if (!m.permeable) continue;
    ASSERT_TRUE(m.regain) << m.key;
    const double rule = m.density.value * m.regain->value / 0.817;
    EXPECT_NEAR(m.sorption_scale->value, std::max(rule, 0.05), 0.03 * rule) << m.key;
  }
  // Design examples of the rule.
  EXPECT_NEAR(find_material("polyester_batting")->sorption_scale->value, 0.074, 0.0015);
  EXPECT_NEAR(find_material("pu_foam_seat")->sorption_scale->value, 0.55, 0.005);
  EXPECT_NEAR(find_material("polyester_fabric")->sorption_scale->value, 2, 0.05);
}

// Against the sources, number by number.
TEST(MaterialsData, HoldsTheNumbersOfItsSources) {
  const struct {
    const char* key;
    double density, conductivity, specific_heat;
  } rows[] = {
      {"softwood", 500, 0.13, 1600},          // prEN 12524
      {"hardwood", 700, 0.18, 1600},          // prEN 12524
      {"plywood", 540, 0.12, 1210},           // Modelica Buildings
      {"gypsum_board", 800, 0.25, 1000},      // DIN V 4108 record
      {"carpet_synthetic", 160, 0.06, 2500},  // CIBSE Guide A 3.37
      {"pvc_rigid", 1390, 0.17, 900},         // prEN 12524
      {"linoleum", 1200, 0.19, 1470},         // CIBSE Guide A 3.36
      {"pu_foam_seat", 30, 0.04, 1500},       // from memory
      {"leather", 900, 0.16, 1500},           // from memory
      {"velvet", 250, 0.05, 1300},            // from memory
      {"acrylic_sheet", 1190, 0.19, 1450},    // from memory
  };
  for (const auto& row : rows) {
    const auto m = find_material(row.key);
    ASSERT_TRUE(m) << row.key;
    EXPECT_EQ(m->density.value, row.density) << row.key;
    EXPECT_EQ(m->conductivity.value, row.conductivity) << row.key;
    EXPECT_EQ(m->specific_heat.value, row.specific_heat) << row.key;
  }
  EXPECT_EQ(find_material("cotton_fabric")->density.range->low, 300);
  EXPECT_EQ(find_material("cotton_fabric")->density.range->high, 500);
  EXPECT_EQ(find_material("cotton_fabric")->conductivity.range->high, 0.073);
  EXPECT_EQ(find_material("terry_dry")->thickness->range->high, 0.005);
  EXPECT_EQ(find_material("leather")->permeable, false);
  EXPECT_EQ(find_material("dust_cover")->permeable, true);
  EXPECT_EQ(contact_resistance().value, 0);
}

TEST(MaterialsData, WoodFormula) {
  // Its value for dry wood of specific gravity 0.5 and for 12 % moisture, worked out by hand.
  EXPECT_NEAR(*wood_conductivity_watts_per_metre_kelvin(0.5, 0), 0.11569, 1e-12);
  EXPECT_NEAR(*wood_conductivity_watts_per_metre_kelvin(0.5, 12), 0.140074, 1e-12);
  // Within its own 20 % of the softwood row.
  EXPECT_NEAR(
      *wood_conductivity_watts_per_metre_kelvin(0.5, 11) / find_material("softwood")->conductivity.value, 1,
      0.2);
  EXPECT_FALSE(wood_conductivity_watts_per_metre_kelvin(2, 10));
  EXPECT_FALSE(wood_conductivity_watts_per_metre_kelvin(0.5, std::nan("")));
}

TEST(DamageLimits, HoldTheNumbersOfTheirSources) {
  const struct {
    const char* key;
    double low, high;
    HarmAction action;
  } rows[] = {{"leather_vegetable_hydrolysable", 75, 80, HarmAction::stop},
              {"leather_chrome", 100, 120, HarmAction::avoid},
              {"leather_formaldehyde", 65, 70, HarmAction::stop},
              {"beeswax", 60, 65, HarmAction::stop},
              {"carnauba_wax", 83, 90, HarmAction::avoid},
              {"pvc_fabric", 60, 80, HarmAction::stop},
              {"gypsum_board", 52, 52, HarmAction::short_dwell},
              {"polyester_fibre", 70, 70, HarmAction::short_dwell},
              {"polypropylene", 130, 130, HarmAction::allow},
              {"contact_adhesive", 60, 80, HarmAction::short_dwell}};
  for (const auto& row : rows) {
    const auto limit = find_damage_limit(row.key);
    ASSERT_TRUE(limit) << row.key;
    ASSERT_TRUE(limit->limit_celsius) << row.key;
    EXPECT_EQ(limit->limit_celsius->value, row.low) << row.key;
    EXPECT_EQ(limit->limit_celsius->range ? limit->limit_celsius->range->high : row.low, row.high) << row.key;
    EXPECT_EQ(limit->action, row.action) << row.key;
  }
  for (const DamageLimit& limit : all_damage_limits()) {
    EXPECT_FALSE(limit.effect.empty()) << limit.key;
    if (limit.limit_celsius && limit.limit_celsius->range) {
      EXPECT_EQ(limit.limit_celsius->value, limit.limit_celsius->range->low) << limit.key;
    }
    if (limit.seconds_allowed) {
      EXPECT_EQ(limit.seconds_allowed->quality, Quality::estimate) << limit.key;
      EXPECT_LE(limit.seconds_allowed->value, 60) << limit.key;
    }
  }
}

TEST(Coverings, TheClosedList) {
  const std::set<std::string> expected{"cotton",  "linen",   "polyester",     "velvet",
                                       "wool",    "viscose", "acrylic",       "olefin",
                                       "leather", "coated",  "mattress_tick", "unknown"};
  std::set<std::string> words;
  for (const Covering& covering : all_coverings()) words.insert(covering.word);
  EXPECT_EQ(words, expected);
}

TEST(Coverings, NeverKinderThanTheirDecisiveLimit) {
  const auto severity = [](HarmAction action) {
    switch (action) {
      case HarmAction::allow:
        return 0;
      case HarmAction::short_dwell:
        return 1;
      case HarmAction::hidden_test:
      case HarmAction::ask:
        return 2;
      case HarmAction::avoid:
        return 3;
      case HarmAction::stop:
        return 4;
    }
    return 4;
  };
  for (const Covering& covering : all_coverings()) {
    if (covering.word == "velvet") continue;  // its decisive limit holds for one fibre only
    const auto first = find_damage_limit(covering.damage_limits.front());
    ASSERT_TRUE(first);
    EXPECT_GE(severity(covering.action), severity(first->action)) << covering.word;
  }
  EXPECT_EQ(find_covering("velvet")->action, HarmAction::hidden_test);
  EXPECT_FALSE(find_material(find_covering("leather")->material)->permeable);
  EXPECT_FALSE(find_material(find_covering("coated")->material)->permeable);
}

TEST(Finding, RefusesWithNearNames) {
  const auto material = find_material("leathr");
  ASSERT_FALSE(material);
  EXPECT_EQ(material.error().kind, ErrorKind::not_found);
  EXPECT_EQ(material.error().value, "leathr");
  EXPECT_NE(material.error().message.find("leather"), std::string::npos);
  EXPECT_FALSE(find_material(""));
  EXPECT_NE(find_damage_limit("leather").error().message.find("leather_chrome"), std::string::npos);
  EXPECT_NE(find_covering("silk").error().message.find("viscose"), std::string::npos);
}

}  // namespace
}  // namespace lastegg
