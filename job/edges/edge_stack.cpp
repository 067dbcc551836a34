#include "job/edges/edge_stack.h"

#include <fmt/format.h>

#include <algorithm>

#include "physics/evidence/json.h"
#include "physics/materials/materials.h"
#include "treatments/steam/material_layer.h"

namespace lastegg::embedded {
extern const std::string_view job_edges_data_edge_kinds_json;
}

namespace lastegg {
namespace {

using nlohmann::json;

constexpr double k_target_quantile = 0.9;

// Fills behind a covering (estimates: usual upholstery).
constexpr double k_batting_metres = 0.010;
constexpr double k_foam_metres = 0.050;
constexpr double k_wood_metres = 0.015;

std::vector<EdgeKind> load() {
  std::vector<EdgeKind> kinds;
  const json data = json::parse(embedded::job_edges_data_edge_kinds_json, nullptr, false);
  for (const json& entry : data.at("kinds")) {
    EdgeKind kind;
    kind.key = entry.at("key");
    kind.title = entry.at("title");
    kind.text = entry.at("text");
    kind.modelled = entry.at("modelled");
    if (kind.modelled) {
      kind.cloth_metres = entry.at("cloth_metres");
      kind.least_depth_metres = entry.at("depth_metres")[0];
      kind.most_depth_metres = entry.at("depth_metres")[1];
    }
    kinds.push_back(std::move(kind));
  }
  return kinds;
}

Result<steam::UncertainLayer> uncertain(const std::string& material_key, double thickness_metres) {
  const auto material = find_material(material_key);
  if (!material) return refuse(material.error());
  return steam::uncertain_layer_of(*material, thickness_metres);
}

}  // namespace

const std::vector<EdgeKind>& edge_kinds() {
  static const std::vector<EdgeKind> kinds = load();
  return kinds;
}

Result<EdgeStack> edge_stack(std::string_view kind_key, std::string_view covering_key, Fill fill) {
  const auto& kinds = edge_kinds();
  const auto kind =
      std::find_if(kinds.begin(), kinds.end(), [&](const EdgeKind& k) { return k.key == kind_key; });
  if (kind == kinds.end()) {
    return refuse({ErrorKind::not_found, fmt::format("there is no edge kind \"{}\"", kind_key), "/kind",
                   std::string(kind_key), "", ""});
  }
  if (!kind->modelled) {
    return refuse(
        {ErrorKind::out_of_domain,
         fmt::format("no pace: {}. Steam it by the practice of the trade and count it as not proven",
                     kind->text),
         "/kind", "shape_not_modelled", "", ""});
  }
  const auto covering = find_covering(covering_key);
  if (!covering) return refuse(covering.error());
  const auto cloth_material = find_material(covering->material);
  if (!cloth_material) return refuse(cloth_material.error());

  EdgeStack stack;
  const double cloth =
      std::max(kind->cloth_metres, (cloth_material->thickness ? cloth_material->thickness->value : 0.0));
  struct Part {
    std::string material;
    double thickness_metres;
  };
  std::vector<Part> parts{{covering->material, cloth}};
  if (fill == Fill::batting_foam) parts.push_back({"polyester_batting", k_batting_metres});
  if (fill == Fill::batting_foam || fill == Fill::foam) parts.push_back({"pu_foam_seat", k_foam_metres});
  if (fill == Fill::wood) parts.push_back({"softwood", k_wood_metres});
  for (const Part& part : parts) {
    auto layer = uncertain(part.material, part.thickness_metres);
    if (!layer) return refuse(layer.error());
    stack.layers.push_back(*layer);
  }
  const double span = kind->most_depth_metres - kind->least_depth_metres;
  double thickness = 0;
  for (const auto& layer : stack.layers) thickness += layer.layer.thickness_metres;
  stack.middle_depth_metres = std::min(kind->least_depth_metres + 0.5 * span, thickness);
  stack.target_depth_metres = std::min(kind->least_depth_metres + k_target_quantile * span, thickness);
  return stack;
}

}  // namespace lastegg
