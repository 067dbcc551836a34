// What a steam head meets: thermal and vapour properties of materials, what heat and water do to finishes,
// and which of both stand behind the covering words of an item. Read once from the data files of this room;
// plain values; any thread.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/evidence/datum.h"
#include "physics/quantities/error.h"

namespace lastegg {

/// A material. Properties of permeable materials only: porosity, tortuosity, sorption_scale.
struct Material {
  std::string key;
  std::string title;
  bool permeable = false;               ///< whether vapour enters within seconds
  Datum density;                        ///< kg/m3, dry
  Datum conductivity;                   ///< W/(m K), dry
  Datum specific_heat;                  ///< J/(kg K), dry
  std::optional<Datum> thickness;       ///< m, usual; its range is what occurs
  std::optional<Datum> regain;          ///< water per dry mass at 65 % relative humidity
  std::optional<Datum> porosity;        ///< share of gas
  std::optional<Datum> tortuosity;      ///< lengthening of the gas paths
  std::optional<Datum> sorption_scale;  ///< kg/m3, W_h of the isotherm in treatments/steam
  std::optional<Datum> flow;  ///< m2 (gas permeability) or m/s (air speed through it): kept for later models
  std::string note;

  double heat_capacity_joules_per_m3_kelvin() const { return density.value * specific_heat.value; }
  /// Standard deviation of the logarithm of the heat capacity: density and specific heat vary independently.
  double heat_capacity_log_spread() const;
};

/// All materials, in the order of the data file; empty when the file cannot be read.
const std::vector<Material>& all_materials();

/// Errors:  not_found, naming the known keys that resemble `key`
/// Source:  physics/materials/data/materials.json
/// Checked: physics/materials/materials_data_test.cpp
Result<Material> find_material(std::string_view key);

/// Conductivity of wood across the grain, W/(m K), good to 20 %.
/// Model:   k = G (0.1941 + 0.004064 x) + 0.01864
/// Inputs:  G specific gravity 0.1..1.2; x moisture in percent 0..25
/// Errors:  bad_input outside
/// Source:  [fpl_wood_handbook] equation 4-15
/// Checked: physics/materials/materials_data_test.cpp
Result<double> wood_conductivity_watts_per_metre_kelvin(double specific_gravity, double moisture_percent);

/// Thermal resistance between layers that touch, m2 K/W.
Datum contact_resistance();

/// What follows for steaming.
enum class HarmAction {
  allow,        ///< heat below 100 C does no harm
  short_dwell,  ///< bears so many seconds above its limit
  avoid,        ///< barred
  stop,         ///< barred
  hidden_test,  ///< unknown until a hidden spot was tested
  ask           ///< depends on a rating only the maker or owner knows
};

/// allow, short_dwell, ...
std::string_view action_word(HarmAction action);

/// Whether the finish is not steamed at all.
constexpr bool is_barred(HarmAction action) {
  return action == HarmAction::avoid || action == HarmAction::stop;
}

struct DamageLimit {
  std::string key;
  std::string title;
  std::optional<Datum> limit_celsius;  ///< calculated with: the low end of its range
  HarmAction action = HarmAction::stop;
  std::optional<Datum> seconds_allowed;  ///< above the limit, for short_dwell
  std::string when;                      ///< the condition under which it holds
  std::string effect;
  std::string source, locator;
  Quality quality = Quality::from_memory;
  std::string note;
};

const std::vector<DamageLimit>& all_damage_limits();

/// Errors:  not_found, naming the known keys that resemble `key`
/// Source:  physics/materials/data/damage_limits.json
/// Checked: physics/materials/materials_data_test.cpp
Result<DamageLimit> find_damage_limit(std::string_view key);

/// What stands behind a covering word: the material to calculate with, the damage limits that bear on it (the
/// decisive one first), what follows for steaming, and why.
struct Covering {
  std::string word;
  std::string title;
  std::string material;                    ///< key of a Material
  std::vector<std::string> damage_limits;  ///< keys of DamageLimits
  HarmAction action = HarmAction::hidden_test;
  std::string reason;
};

const std::vector<Covering>& all_coverings();

/// Errors:  not_found with the closed list of covering words
/// Source:  physics/materials/data/coverings.json
/// Checked: physics/materials/materials_data_test.cpp
Result<Covering> find_covering(std::string_view word);

/// Whether all three data files could be read; the reason if not.
Result<bool> material_data_state();

constexpr std::string_view k_materials_data_key = "materials/1";
constexpr std::string_view k_damage_limits_data_key = "damage_limits/1";
constexpr std::string_view k_coverings_data_key = "coverings/1";

}  // namespace lastegg
