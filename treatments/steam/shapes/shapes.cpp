#include "treatments/steam/shapes/shapes.h"

#include <algorithm>
#include <cmath>

#include "treatments/steam/pass/constants.h"

namespace lastegg::steam {
namespace {

/// Vapour efficiency from which on the film of a void passes as much vapour as the Lewis relation asks for.
constexpr double k_full_film_from_efficiency = 0.45;

// The engine scales every permeable layer with the cloth's vapour efficiency; the film is made thinner for
// it.
constexpr double k_film_metres = k_full_film_from_efficiency * k_vapour_transport /
                                 (k_evaporation_per_film * k_void_film_watts_per_m2_kelvin);

// More capacity than air has makes the cloth colder and the march calmer.
constexpr double k_film_capacity = 20e3;

constexpr double k_sponge_metres = 0.010;
constexpr double k_sponge_capacity = 4e6;

// A solid reaches so many times deeper than the deepest egg: its far side must not hold the heat back.
constexpr double k_solid_beyond = 1.5;

// The widest the engine takes, docs/decisions/012-input-box.md.
constexpr double k_most_capacity = 1e7;
constexpr double k_most_conductivity = 5;
constexpr double k_most_sorption = 200;

double thickness_of(const std::vector<UncertainLayer>& layers) {
  double sum = 0;
  for (const UncertainLayer& layer : layers) sum += layer.layer.thickness_metres;
  return sum;
}

void append(std::vector<UncertainLayer>& to, const std::vector<UncertainLayer>& what) {
  to.insert(to.end(), what.begin(), what.end());
}

// Shell of a sphere at a depth below a pit, against its opening.
double shell(double depth_metres, double radius_metres) {
  const double ratio = 1 + depth_metres / radius_metres;
  return ratio * ratio;
}

}  // namespace

std::vector<UncertainLayer> void_behind() {
  UncertainLayer film, sponge;
  film.layer.thickness_metres = k_film_metres;
  film.layer.heat_capacity_joules_per_m3_kelvin = k_film_capacity;
  film.layer.conductivity_watts_per_metre_kelvin = k_void_film_watts_per_m2_kelvin * k_film_metres;
  film.layer.permeable = true;
  film.layer.porosity = 0.99;
  film.layer.tortuosity = 1;
  film.layer.sorption_scale_kilograms_per_m3 = 0.05;
  sponge.layer.thickness_metres = k_sponge_metres;
  sponge.layer.heat_capacity_joules_per_m3_kelvin = k_sponge_capacity;
  sponge.layer.conductivity_watts_per_metre_kelvin = 5;
  sponge.layer.permeable = true;
  sponge.layer.porosity = 0.99;
  sponge.layer.tortuosity = 1;
  sponge.layer.sorption_scale_kilograms_per_m3 = k_most_sorption;
  return {film, sponge};
}

double fold_depth_metres(const Fold& fold, double cloths) {
  const double contacts = std::max(cloths - 1, 0.0);
  const Layer& cloth = fold.cloth.layer;
  return cloths * cloth.thickness_metres + contacts * fold.contact_gap_metres *
                                               cloth.conductivity_watts_per_metre_kelvin /
                                               k_still_air_watts_per_metre_kelvin;
}

ShapedPlace fold(const Fold& fold, const DepthRange& depth, const std::vector<UncertainLayer>& behind) {
  ShapedPlace place;
  place.least_depth_metres = std::max(depth.least_metres, fold_depth_metres(fold, fold.least_cloths));
  place.most_depth_metres = std::max(depth.most_metres, fold_depth_metres(fold, fold.most_cloths));
  UncertainLayer cloth = fold.cloth;
  cloth.layer.thickness_metres = std::max(fold_depth_metres(fold, fold.cloths), place.most_depth_metres);
  std::vector<UncertainLayer> below = behind.empty() ? void_behind() : behind;
  if (behind.empty()) place.claim = Claim::bound;
  if (fold.hollow_radius_metres > 0) {
    place.claim = Claim::bound;
    const double bottom = cloth.layer.thickness_metres;
    const double widest = shell(bottom, fold.hollow_radius_metres);
    cloth.layer.heat_capacity_joules_per_m3_kelvin *= widest;
    cloth.layer.sorption_scale_kilograms_per_m3 *= widest;
    const double beyond = shell(2 * bottom, fold.hollow_radius_metres);
    for (UncertainLayer& layer : below) {
      Layer& scaled = layer.layer;
      scaled.heat_capacity_joules_per_m3_kelvin =
          std::min(scaled.heat_capacity_joules_per_m3_kelvin * beyond, k_most_capacity);
      scaled.conductivity_watts_per_metre_kelvin =
          std::min(scaled.conductivity_watts_per_metre_kelvin * beyond, k_most_conductivity);
      scaled.sorption_scale_kilograms_per_m3 =
          std::min(scaled.sorption_scale_kilograms_per_m3 * beyond, k_most_sorption);
    }
  }
  // Eggs that lie against something solid lie at the end of the cloth, however thick it is.
  if (!below.front().layer.permeable) cloth.thickness_spread = 0;
  place.stack.push_back(cloth);
  append(place.stack, below);
  return place;
}

ShapedPlace cord(const Cord& cord, const DepthRange& depth, const std::vector<UncertainLayer>& behind) {
  ShapedPlace place;
  place.claim = Claim::bound;
  const double cover = cord.cover.layer.thickness_metres;
  const double relief = std::min(cord.stands_out_share, k_most_relief_share);
  const double axis = cover + (1 - k_relief_counts * relief) * 0.5 * cord.cord_metres;
  place.most_depth_metres = std::max(depth.most_metres, axis);
  place.least_depth_metres = std::min(std::max(depth.least_metres, cover), place.most_depth_metres);
  UncertainLayer through = cord.cover;
  through.layer.thickness_metres = std::max(cover + cord.cord_metres, place.most_depth_metres);
  place.stack.push_back(through);
  append(place.stack, behind.empty() ? void_behind() : behind);
  return place;
}

ShapedPlace crack(const UncertainLayer& solid, const DepthRange& depth, Mouth mouth) {
  ShapedPlace place{{solid}, depth.least_metres, depth.most_metres, Claim::bound, 1, 0};
  if (mouth == Mouth::inside_corner) {
    place.depth_factor = k_inside_corner_factor;
    place.least_marched_metres = k_inside_corner_factor * k_inside_corner_least_metres;
  }
  double& thickness = place.stack.front().layer.thickness_metres;
  thickness = std::max(thickness, k_solid_beyond * place.depth_factor * depth.most_metres);
  return place;
}

ShapedPlace flat(std::vector<UncertainLayer> over, const std::vector<UncertainLayer>& behind,
                 const DepthRange& depth) {
  ShapedPlace place;
  place.stack = std::move(over);
  append(place.stack, behind.empty() ? void_behind() : behind);
  if (behind.empty()) place.claim = Claim::bound;
  const double thickness = thickness_of(place.stack);
  place.least_depth_metres = std::min(depth.least_metres, thickness);
  place.most_depth_metres = std::min(depth.most_metres, thickness);
  return place;
}

}  // namespace lastegg::steam
