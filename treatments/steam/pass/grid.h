// The grid of a steam pass: cells fine at the steamed surface, at every interface and at every depth that is
// asked for, growing away from them. Pure function.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "treatments/steam/pass/stack.h"

namespace lastegg::steam {

struct GridCell {
  double thickness_metres;
  std::size_t layer;  ///< index into the stack
};

/// Cells of a stack from the surface down; about `cells` of them, never fewer than three in a layer.
/// Model:   wanted size s(x) = min over anchors (size_j + growth |x - x_j|), anchors at the surface, the
/// interfaces and the
///          depths; each layer gets a share of the cells in proportion to its integral of dx/s, spaced to
///          equal integral.
/// Inputs:  stack with positive thicknesses; cells >= 8; depths inside the stack.
/// Source:  own derivation (mesh density equidistribution); sizes tuned in docs/decisions/010-steam-grid.md
/// Checked: treatments/steam/pass/pass_law_test.cpp (refinement)
std::vector<GridCell> make_grid(std::span<const Layer> stack, std::span<const double> depths_metres,
                                int cells);

}  // namespace lastegg::steam
