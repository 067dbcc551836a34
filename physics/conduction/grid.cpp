#include "physics/conduction/grid.h"

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"

namespace lastegg::conduction {
namespace {

/// Nodes closer together than this share of a first cell are one node.
constexpr double k_same_place_share = 1e-6;

/// Number of cells between the begin of the layer and x, as a smooth count.
class CellCount {
 public:
  CellCount(const GridLayer& layer, double growth) : layer_(layer), growth_(growth) {
    middle_ = 0.5 * (layer.begin + layer.end);
    half_ = count_from_end(middle_ - layer.begin);
  }

  double at(double x) const {
    return x <= middle_ ? count_from_end(x - layer_.begin) : 2.0 * half_ - count_from_end(layer_.end - x);
  }

  double place(double count) const {
    return count <= half_ ? layer_.begin + distance(count) : layer_.end - distance(2.0 * half_ - count);
  }

 private:
  double count_from_end(double d) const { return numerics::log1p(growth_ * d / layer_.first_cell) / growth_; }
  double distance(double count) const {
    return layer_.first_cell * (numerics::exp(growth_ * count) - 1.0) / growth_;
  }

  GridLayer layer_;
  double growth_;
  double middle_, half_;
};

}  // namespace

Grid graded_grid(const std::vector<GridLayer>& layers, std::vector<double> depths, double growth) {
  std::sort(depths.begin(), depths.end());
  Grid grid;
  grid.nodes.push_back(layers.front().begin);
  for (std::size_t i = 0; i < layers.size(); ++i) {
    const GridLayer& layer = layers[i];
    const CellCount count(layer, growth);
    std::vector<double> compulsory;
    double last = layer.begin;
    const double apart = k_same_place_share * std::min(layer.first_cell, layer.end - layer.begin);
    for (const double depth : depths) {
      if (depth <= last + apart || depth >= layer.end - apart) continue;
      compulsory.push_back(depth);
      last = depth;
    }
    compulsory.push_back(layer.end);
    last = layer.begin;
    for (const double next : compulsory) {
      const double from = count.at(last), to = count.at(next);
      const double cells = std::max(1.0, std::ceil(to - from));
      for (double k = 1.0; k < cells; k += 1.0) {
        grid.nodes.push_back(count.place(from + (to - from) * k / cells));
        grid.layer_of_cell.push_back(i);
      }
      grid.nodes.push_back(next);
      grid.layer_of_cell.push_back(i);
      last = next;
    }
  }
  return grid;
}

}  // namespace lastegg::conduction
