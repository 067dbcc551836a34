#include "physics/materials/materials.h"

#include <fmt/format.h>

#include <cmath>

#include "words/say.h"

namespace lastegg::embedded {
extern const std::string_view physics_materials_data_materials_json;
}

namespace lastegg {
namespace {

using Json = nlohmann::json;

struct MaterialData {
  std::vector<Material> materials;
  Datum contact_resistance;
  double wood[3] = {0, 0, 0};
};

Result<std::optional<Datum>> optional_datum(const Json& object, const char* key, std::string_view unit,
                                            const std::string& where) {
  const auto found = object.find(key);
  if (found == object.end()) return std::optional<Datum>();
  auto datum = read_datum(*found, unit, where + "/" + key);
  if (!datum) return refuse(datum.error());
  return std::optional<Datum>(std::move(*datum));
}

Refusal defect(const std::string& where, const std::string& what) {
  return refuse({ErrorKind::internal, fmt::format("materials, {}: {}", where, what), where, "", "", ""});
}

// Where the three required properties and the six optional ones of a material go.
Result<Material> read_material(const Json& object) {
  Material material;
  material.key = text_member(object, "key");
  material.title = text_member(object, "title");
  material.note = text_member(object, "note");
  const std::string& where = material.key;
  if (material.key.empty() || material.title.empty()) return defect(where, "no key or no title");
  const auto permeable = object.find("permeable");
  if (permeable == object.end() || !permeable->is_boolean()) return defect(where, "permeable is missing");
  material.permeable = permeable->get<bool>();

  const auto flow = object.find("flow");
  const std::string flow_unit = flow == object.end() ? "m2" : text_member(*flow, "unit");
  if (flow_unit != "m2" && flow_unit != "m/s") return defect(where, "flow is in m2 or m/s");
  struct {
    const char* key;
    std::string_view unit;
    Datum* required;
    std::optional<Datum>* wanted;
  } const properties[] = {
      {"density", "kg/m3", &material.density, nullptr},
      {"conductivity", "W/(m K)", &material.conductivity, nullptr},
      {"specific_heat", "J/(kg K)", &material.specific_heat, nullptr},
      {"thickness", "m", nullptr, &material.thickness},
      {"regain", "1", nullptr, &material.regain},
      {"porosity", "1", nullptr, &material.porosity},
      {"tortuosity", "1", nullptr, &material.tortuosity},
      {"sorption_scale", "kg/m3", nullptr, &material.sorption_scale},
      {"flow", flow_unit, nullptr, &material.flow},
  };
  for (const auto& property : properties) {
    auto datum = optional_datum(object, property.key, property.unit, where);
    if (!datum) return refuse(datum.error());
    if (property.wanted != nullptr) {
      *property.wanted = std::move(*datum);
    } else {
      if (!*datum || !((*datum)->value > 0)) return defect(where, fmt::format("{} is missing", property.key));
      *property.required = std::move(**datum);
    }
  }
  const bool has_pores = material.porosity && material.tortuosity && material.sorption_scale;
  if (material.permeable && !has_pores)
    return defect(where, "a permeable material needs porosity, tortuosity, sorption_scale");
  return material;
}

Result<MaterialData> read_data() {
  const auto document = parse_data(embedded::physics_materials_data_materials_json, k_materials_data_key);
  if (!document) return refuse(document.error());
  MaterialData data;
  auto contact = optional_datum(*document, "contact_resistance", "m2 K/W", "materials");
  if (!contact || !*contact) return defect("materials", "no contact_resistance");
  data.contact_resistance = std::move(**contact);
  const auto materials = document->find("materials");
  if (materials == document->end() || !materials->is_array()) return defect("materials", "no materials");
  for (const Json& object : *materials) {
    auto material = read_material(object);
    if (!material) return refuse(material.error());
    data.materials.push_back(std::move(*material));
  }
  const auto formulas = document->find("formulas");
  if (formulas == document->end() || !formulas->is_array() || formulas->size() != 1)
    return defect("formulas", "the formula for wood is missing");
  int i = 0;
  for (const char* coefficient : {"a", "b", "c"}) {
    const auto datum = optional_datum((*formulas)[0], coefficient, "W/(m K)", "formulas/0");
    if (!datum || !*datum) return defect("formulas/0", fmt::format("no {}", coefficient));
    data.wood[i++] = (*datum)->value;
  }
  return data;
}

const Result<MaterialData>& data() {
  static const Result<MaterialData> read = read_data();
  return read;
}

}  // namespace

double Material::heat_capacity_log_spread() const {
  return std::sqrt(density.log_spread() * density.log_spread() +
                   specific_heat.log_spread() * specific_heat.log_spread());
}

const std::vector<Material>& all_materials() {
  static const std::vector<Material> nothing;
  return data() ? data()->materials : nothing;
}

Result<Material> find_material(std::string_view key) {
  if (!data()) return refuse(data().error());
  std::string similar;
  for (const Material& material : data()->materials) {
    if (material.key == key) return material;
    if (!key.empty() && material.key.find(key.substr(0, 4)) != std::string::npos)
      similar += (similar.empty() ? "" : ", ") + material.key;
  }
  return refuse({ErrorKind::not_found,
                 similar.empty()
                     ? say("there is no material \"{}\"", key.substr(0, 80))
                     : say("there is no material \"{}\"; there are {}", key.substr(0, 80), similar),
                 "", std::string(key.substr(0, 80)), "", ""});
}

Datum contact_resistance() {
  return data() ? data()->contact_resistance : Datum{};
}

Result<double> wood_conductivity_watts_per_metre_kelvin(double specific_gravity, double moisture_percent) {
  if (!data()) return refuse(data().error());
  if (!(specific_gravity >= 0.1 && specific_gravity <= 1.2)) {
    return refuse({ErrorKind::bad_input,
                   say("specific gravity {:g} lies outside 0.1 to 1.2", specific_gravity), "",
                   fmt::format("{:g}", specific_gravity), specific_gravity < 0.1 ? "0.1" : "1.2", ""});
  }
  if (!(moisture_percent >= 0 && moisture_percent <= 25)) {
    return refuse({ErrorKind::bad_input, say("moisture {:g} % lies outside 0 to 25 %", moisture_percent), "",
                   fmt::format("{:g}", moisture_percent), moisture_percent < 0 ? "0" : "25", "%"});
  }
  const auto& [a, b, c] = data()->wood;
  return specific_gravity * (a + b * moisture_percent) + c;
}

}  // namespace lastegg
