// The kinds of edges: how each is shaped, what it is made of and where eggs sit in it, from the data file.
// Plain values; pure functions.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "treatments/steam/shapes/shapes.h"

namespace lastegg {

/// The families of shapes; `none` is an edge without an honest model, which has no pace.
enum class ShapeFamily { flat_stack, fold, cylinder, crack, cover_over_void, none };

/// The word of a family in data and answers, and what it means.
std::string_view word(ShapeFamily family);
std::string_view meaning(ShapeFamily family);
const std::vector<ShapeFamily>& shape_families();

struct LayerOf {
  std::string material;
  double thickness_metres = 0;
};

struct EdgeKind {
  std::string key, title, text;
  std::string not_covered;  ///< places of such an edge that the figure says nothing about; empty: none
  ShapeFamily family = ShapeFamily::none;
  bool bound = false;          ///< the layers leave out what only warms
  std::string material;        ///< instead of the covering's
  std::string behind;          ///< foam, wood or void instead of what the edge says lies behind; empty: that
  std::vector<LayerOf> over;   ///< hard parts on the cloth
  std::vector<LayerOf> under;  ///< layers below instead of a fill
  double cloth_metres = 0;     ///< of all cloth; never thinner than one covering cloth
  double cloths = 0;           ///< cloths in a fold
  double contact_gap_metres = 0;    ///< air between two of them
  double hollow_radius_metres = 0;  ///< the surface is a pit; 0: it is not
  double cord_metres = 0;
  double stands_out_share = 0;  ///< of a cord: out of its panel, as a share of its covered radius
  steam::Mouth mouth = steam::Mouth::flat_face;  ///< of a crack
  steam::DepthRange depth;                       ///< below the surface, or below the hard parts on it
  double least_cloths = 0;                       ///< over the eggs
  double most_cloths = 0;
};

/// All kinds, in the order of the data file.
const std::vector<EdgeKind>& edge_kinds();

/// The kind with that key.
/// Errors:  not_found
Result<EdgeKind> find_edge_kind(std::string_view key);

}  // namespace lastegg
