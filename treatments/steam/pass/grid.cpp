#include "treatments/steam/pass/grid.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lastegg::steam {
namespace {

// Relative sizes of the cells at the anchors, in metres before scaling to the wanted count (tuned, see the
// header).
constexpr double k_surface_size = 8e-6;
constexpr double k_interface_size = 60e-6;
constexpr double k_depth_size = 100e-6;
constexpr double k_growth = 0.16;
constexpr int k_least_cells_per_layer = 3;
constexpr int k_samples = 48;  // of the density inside one layer

struct Anchor {
  double position;
  double size;
};

double wanted_size(double x, std::span<const Anchor> anchors) {
  double size = 1.0;
  for (const Anchor& anchor : anchors)
    size = std::min(size, anchor.size + k_growth * std::fabs(x - anchor.position));
  return size;
}

// Positions in a layer where the density is sampled: dense at both ends, since sizes shrink there.
double sample_position(double top, double thickness, int i) {
  const double u = static_cast<double>(i) / k_samples;
  const double eased = u * u * (3.0 - 2.0 * u);
  return top + thickness * (0.75 * eased + 0.25 * u);
}

}  // namespace

std::vector<GridCell> make_grid(std::span<const Layer> stack, std::span<const double> depths_metres,
                                int cells) {
  std::vector<Anchor> anchors;
  anchors.push_back({0.0, k_surface_size});
  double bottom = 0;
  for (std::size_t i = 0; i < stack.size(); ++i) {
    bottom += stack[i].thickness_metres;
    if (i + 1 < stack.size()) anchors.push_back({bottom, k_interface_size});
  }
  for (double depth : depths_metres) anchors.push_back({depth, k_depth_size});

  // Integral of the density over each layer, and its running values.
  std::vector<std::array<double, k_samples + 1>> running(stack.size());
  double total = 0;
  double top = 0;
  for (std::size_t layer = 0; layer < stack.size(); ++layer) {
    running[layer][0] = 0;
    double x = top;
    double density = 1.0 / wanted_size(x, anchors);
    for (int i = 1; i <= k_samples; ++i) {
      const double next_x = sample_position(top, stack[layer].thickness_metres, i);
      const double next_density = 1.0 / wanted_size(next_x, anchors);
      running[layer][static_cast<std::size_t>(i)] =
          running[layer][static_cast<std::size_t>(i - 1)] + 0.5 * (density + next_density) * (next_x - x);
      x = next_x;
      density = next_density;
    }
    total += running[layer][k_samples];
    top += stack[layer].thickness_metres;
  }

  std::vector<GridCell> grid;
  grid.reserve(static_cast<std::size_t>(cells) + stack.size() * k_least_cells_per_layer);
  top = 0;
  for (std::size_t layer = 0; layer < stack.size(); ++layer) {
    const auto& integral = running[layer];
    const int count =
        std::max(k_least_cells_per_layer, static_cast<int>(std::lround(cells * integral[k_samples] / total)));
    double previous = top;
    std::size_t i = 1;
    for (int c = 1; c <= count; ++c) {
      double edge = top + stack[layer].thickness_metres;
      if (c < count) {
        const double wanted = integral[k_samples] * c / count;
        while (integral[i] < wanted) ++i;
        const double x0 = sample_position(top, stack[layer].thickness_metres, static_cast<int>(i) - 1);
        const double x1 = sample_position(top, stack[layer].thickness_metres, static_cast<int>(i));
        edge = x0 + (x1 - x0) * (wanted - integral[i - 1]) / (integral[i] - integral[i - 1]);
      }
      grid.push_back({edge - previous, layer});
      previous = edge;
    }
    top += stack[layer].thickness_metres;
  }
  return grid;
}

}  // namespace lastegg::steam
