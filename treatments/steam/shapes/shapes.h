// From the shape of an edge to layers that the one-dimensional engine can march: a flat stack, a fold of
// several cloths, a cord, a crack, a cover over a void. Each says how its figure stands to the real place.
// Plain values; pure functions.
#pragma once

#include <vector>

#include "treatments/steam/pace/pace.h"

namespace lastegg::steam {

/// How the temperature that is computed stands to that of the real place.
enum class Claim {
  as_computed,  ///< one dimension describes the place
  bound         ///< the place is at least as warm: the figure is on the safe side, never proof of "too cold"
};

/// An edge as the engine marches it.
struct ShapedPlace {
  std::vector<UncertainLayer> stack;  ///< from the steamed surface
  double least_depth_metres = 0;      ///< where eggs may sit, below the steamed surface
  double most_depth_metres = 0;
  Claim claim = Claim::as_computed;
  double depth_factor = 1;          ///< a depth is marched as so many times itself ...
  double least_marched_metres = 0;  ///< ... and as no less than this
};

/// Where eggs may sit below a surface.
struct DepthRange {
  double least_metres = 0;
  double most_metres = 0;
};

/// Still air between two cloths that touch, W/(m K), at room temperature. Source: 0.026, from memory, to be
/// checked.
constexpr double k_still_air_watts_per_metre_kelvin = 0.026;

/// Loss of a cloth's back to a void: at least what a hot plate loses to still air. Source: natural convection
/// from a plate 60 K warmer gives about 6 W/(m2 K) (correlation for hot plates, from memory, to be checked);
/// 10 leaves a margin and is what the front of the cloth meets.
constexpr double k_void_film_watts_per_m2_kelvin = 10;

/// Layers that take from the back of a cloth at least what a void behind it takes.
/// Model:   a film that conducts heat and vapour like moving air (Lewis), then a sponge that stays at the
///          start temperature and dry. A real void warms and fills with vapour, and so takes less.
/// Source:  own derivation, docs/decisions/023-void-behind-a-cover.md
/// Checked: treatments/steam/shapes/shapes_law_test.cpp, docs/shapes.md (two-dimensional solution)
std::vector<UncertainLayer> void_behind();

/// Cloths one on the other with a little air at each contact.
struct Fold {
  UncertainLayer cloth;  ///< one of them
  double cloths = 1;
  double contact_gap_metres = 0;  ///< air between two cloths that touch
  double least_cloths = 1;        ///< cloths over the eggs, fewest and most
  double most_cloths = 1;
  double hollow_radius_metres = 0;  ///< the steamed surface is a pit of this radius; 0: flat
};

/// Depth below `cloths` cloths, each contact counted as cloth of the same thermal resistance.
/// Model:   n t + (n - 1) g k_cloth / k_air: as much resistance to heat as the gap, more to vapour and more
///          capacity.
/// Source:  own derivation, docs/decisions/021-fold-of-cloths.md
double fold_depth_metres(const Fold& fold, double cloths);

/// A fold over what lies behind it. In a pit the cloth is given the heat capacity of its widest shell and
/// what lies behind the capacity and conductivity of a shell twice as deep.
/// Inputs:  `depth` in metres where it is known so; the deeper of it and the cloths counts
/// Source:  own derivation, docs/decisions/021-fold-of-cloths.md
/// Checked: treatments/steam/shapes/shapes_law_test.cpp, docs/shapes.md
ShapedPlace fold(const Fold& fold, const DepthRange& depth, const std::vector<UncertainLayer>& behind);

/// What a cord stands out of its panel lessens the depth by so many times its share of the bare cord's
/// radius, up to a share of a third: the panel lies so much nearer to the crease, and is filled with what is
/// lighter than cloth. Source: chosen, and held against a two-dimensional solution, docs/shapes.md.
constexpr double k_relief_counts = 1.5;
constexpr double k_most_relief_share = 1.0 / 3;

/// A covered cord that stands out of its panel.
struct Cord {
  UncertainLayer cover;
  double cord_metres = 0;       ///< its diameter without the cover
  double stands_out_share = 0;  ///< how far it stands out of the panel, as a share of its covered radius
};

/// The crease beside a covered cord, by the straight way through cloth from the panel's face.
/// Model:   flat cloth as thick as cover and cord, eggs down to the level of the cord's axis, less what the
///          cord stands out of its panel. The cover counts whole: it takes heat from the crease.
/// Source:  own derivation, docs/decisions/022-cord-and-crack.md
/// Checked: treatments/steam/shapes/shapes_law_test.cpp, docs/shapes.md (two-dimensional solution)
ShapedPlace cord(const Cord& cord, const DepthRange& depth, const std::vector<UncertainLayer>& behind);

/// Where a crack opens.
enum class Mouth {
  flat_face,     ///< both lips lie in one steamed face
  inside_corner  ///< the lips stand at an angle, as where a leg meets its frame
};

/// A depth in a crack at an inside corner counts so many times: there heat spreads to the far lip as well.
/// Source: chosen, and held against a two-dimensional solution, docs/shapes.md.
constexpr double k_inside_corner_factor = 3;
/// Nearer to the mouth than this the factor was not enough; such a place is taken to lie here.
constexpr double k_inside_corner_least_metres = 0.001;

/// A place in a crack between solids, by the way through the solid from its steamed lip.
/// Model:   the solid without the crack, from a face or, at an inside corner, from three times as far. Vapour
/// and
///          jet that enter the crack only add heat.
/// Source:  own derivation, docs/decisions/022-cord-and-crack.md
/// Checked: treatments/steam/shapes/shapes_law_test.cpp, docs/shapes.md (two-dimensional solution)
ShapedPlace crack(const UncertainLayer& solid, const DepthRange& depth, Mouth mouth);

/// Layers one under the other. Without anything behind a cloth the void takes its heat.
ShapedPlace flat(std::vector<UncertainLayer> over, const std::vector<UncertainLayer>& behind,
                 const DepthRange& depth);

}  // namespace lastegg::steam
