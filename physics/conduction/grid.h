// Nodes through a stack of layers: on every face, interface and asked depth, close together near faces
// and interfaces. Internal to this room. Plain SI numbers.
#pragma once

#include <cstddef>
#include <vector>

namespace lastegg::conduction {

struct GridLayer {
  double begin, end;  ///< metres below the front face
  double first_cell;  ///< metres, at both ends of the layer
};

struct Grid {
  std::vector<double> nodes;               ///< metres, strictly increasing
  std::vector<std::size_t> layer_of_cell;  ///< of the cell between node i and i + 1
};

/// Nodes such that the cell at distance d from the nearest end of its layer is about first_cell +
/// growth * d long.
/// Inputs:  adjoining layers from the front; depths within them; growth > 0.
/// Model:   between two neighbouring compulsory nodes the integral of dx / (first_cell + growth d) is
///          divided evenly.
Grid graded_grid(const std::vector<GridLayer>& layers, std::vector<double> depths, double growth);

}  // namespace lastegg::conduction
