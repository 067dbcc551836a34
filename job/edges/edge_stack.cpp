#include "job/edges/edge_stack.h"

#include <fmt/format.h>

#include <algorithm>

#include "physics/materials/materials.h"
#include "treatments/steam/pace/material_layer.h"
#include "words/say.h"

namespace lastegg {
namespace {

constexpr double k_target_quantile = 0.9;

// Fills behind a covering (estimates: usual upholstery).
constexpr double k_batting_metres = 0.010;
constexpr double k_foam_metres = 0.050;
constexpr double k_wood_metres = 0.015;

using Layers = std::vector<steam::UncertainLayer>;

Result<steam::UncertainLayer> uncertain(const std::string& material_key, double thickness_metres) {
  const auto material = find_material(material_key);
  if (!material) return refuse(material.error());
  return steam::uncertain_layer_of(*material, thickness_metres);
}

Result<Layers> layers_of(const std::vector<LayerOf>& parts) {
  Layers layers;
  for (const LayerOf& part : parts) {
    auto layer = uncertain(part.material, part.thickness_metres);
    if (!layer) return refuse(layer.error());
    layers.push_back(*layer);
  }
  return layers;
}

// What lies behind the cloth; nothing: a hollow.
Result<Layers> behind(const EdgeKind& kind, Fill fill) {
  if (!kind.under.empty()) return layers_of(kind.under);
  if (kind.family == ShapeFamily::cover_over_void || kind.behind == "void") return Layers{};
  if (kind.behind == "foam") fill = Fill::foam;
  if (kind.behind == "wood") fill = Fill::wood;
  std::vector<LayerOf> parts;
  if (fill == Fill::batting_foam) parts.push_back({"polyester_batting", k_batting_metres});
  if (fill == Fill::batting_foam || fill == Fill::foam) parts.push_back({"pu_foam_seat", k_foam_metres});
  if (fill == Fill::wood) parts.push_back({"softwood", k_wood_metres});
  return layers_of(parts);
}

Result<steam::ShapedPlace> flat_place(const EdgeKind& kind, steam::UncertainLayer cloth,
                                      const Layers& below) {
  auto over = layers_of(kind.over);
  if (!over) return refuse(over.error());
  double above = 0;
  for (const auto& layer : *over) above += layer.layer.thickness_metres;
  cloth.layer.thickness_metres = std::max(kind.cloth_metres, cloth.layer.thickness_metres);
  over->push_back(cloth);
  // A carpet's pile stands on its backing: eggs lie no deeper, however long it is.
  if (!below.empty() && !below.front().layer.permeable) over->back().thickness_spread = 0;
  return steam::flat(std::move(*over), below,
                     {above + kind.depth.least_metres, above + kind.depth.most_metres});
}

Result<steam::ShapedPlace> place_of(const EdgeKind& kind, const std::string& covering_material, Fill fill) {
  if (kind.family == ShapeFamily::crack) {
    const auto solid = uncertain(kind.material, k_wood_metres);
    if (!solid) return refuse(solid.error());
    return steam::crack(*solid, kind.depth, kind.mouth);
  }
  const auto material = find_material(kind.material.empty() ? covering_material : kind.material);
  if (!material) return refuse(material.error());
  const double one_cloth = material->thickness ? material->thickness->value : kind.cloth_metres;
  const auto cloth = steam::uncertain_layer_of(
      *material, kind.under.empty() ? one_cloth : std::max(one_cloth, kind.cloth_metres));
  if (!cloth) return refuse(cloth.error());
  const auto below = behind(kind, fill);
  if (!below) return refuse(below.error());
  switch (kind.family) {
    case ShapeFamily::flat_stack:
      return flat_place(kind, *cloth, *below);
    case ShapeFamily::fold:
    case ShapeFamily::cover_over_void:
      return steam::fold({*cloth, kind.cloths, kind.contact_gap_metres, kind.least_cloths, kind.most_cloths,
                          kind.hollow_radius_metres},
                         kind.depth, *below);
    case ShapeFamily::cylinder:
      return steam::cord({*cloth, kind.cord_metres, kind.stands_out_share}, kind.depth, *below);
    case ShapeFamily::crack:
    case ShapeFamily::none:
      break;
  }
  return refuse({ErrorKind::out_of_domain,
                 say("no pace: {}. Its shape has no honest model: treat it by the practice of the "
                     "trade, look again, and count it as not proven",
                     in_language(kind.text)),
                 "/kind", "shape_not_modelled", "", ""});
}

}  // namespace

Result<EdgeStack> edge_stack(std::string_view kind_key, std::string_view covering_key, Fill fill) {
  const auto kind = find_edge_kind(kind_key);
  if (!kind) return refuse(kind.error());
  const auto covering = find_covering(covering_key);
  if (!covering) return refuse(covering.error());
  auto place = place_of(*kind, covering->material, fill);
  if (!place) return refuse(place.error());
  EdgeStack stack;
  stack.claim = kind->bound ? steam::Claim::bound : place->claim;
  stack.layers = std::move(place->stack);
  stack.depth_factor = place->depth_factor;
  stack.least_marched_metres = place->least_marched_metres;
  const double span = place->most_depth_metres - place->least_depth_metres;
  double thickness = 0;
  for (const auto& layer : stack.layers) thickness += layer.layer.thickness_metres;
  const double bottom = thickness / stack.depth_factor;
  stack.middle_depth_metres = std::min(place->least_depth_metres + 0.5 * span, bottom);
  stack.target_depth_metres = std::min(place->least_depth_metres + k_target_quantile * span, bottom);
  return stack;
}

}  // namespace lastegg
