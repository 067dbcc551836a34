// Sixteen passes of a steam head that go through the march side by side, in single precision: what they
// share, what each has of its own, and what comes out. Plain numbers, so that one kernel source can be
// compiled for several widths of vector and chosen at run time. The double-precision March stays the
// reference.
#pragma once

#include <array>
#include <cstdint>

namespace lastegg::steam {

constexpr int k_pack = 16;  ///< passes in a pack: the widest vector; narrower ones go over it in turns
constexpr int k_most_pack_layers = 10;
constexpr int k_most_pack_cells = 96;
constexpr int k_most_pack_phases = 32;
constexpr int k_most_pack_steps = 1024;
constexpr int k_most_pack_halvings = 4;

/// One number of each pass.
using Pack = std::array<float, k_pack>;

/// What all passes of a pack share: the cells' order and their share of their layer.
struct PackShape {
  int layers = 0;
  int cells = 0;
  std::array<bool, k_most_pack_layers> permeable{};
  std::array<int, k_most_pack_cells> layer_of_cell{};
  std::array<float, k_most_pack_cells> share_of_layer{};  ///< cell thickness over layer thickness
  int target_cell = 0;  ///< the watched depth is the upper face of this cell; `cells`: the bottom
};

enum class PackPhase { skirt, cover, gap, air };

/// Steps of one phase: `blocks` blocks of `steps` equal steps, each block's `ratio` times longer than the
/// last's.
struct PackSteps {
  PackPhase phase = PackPhase::air;
  int blocks = 1, steps = 1;
  float ratio = 1;
  int pieces = 1;       ///< into which a step is cut when the dose is summed
  Pack seconds{};       ///< of the whole phase
  bool watched = true;  ///< whether its highest temperatures count (not: cooling between passes)
};

/// A layer of each pass.
struct PackLayer {
  Pack thickness{}, capacity{}, conductivity{}, porosity{}, openness{},
      sorption{};  ///< SI; openness: porosity/tortuosity
};

/// Bodies whose dose is summed: an egg, an unfed and an engorged bug.
constexpr int k_pack_bodies = 3;

/// How dose is counted; all bodies share onset, cap and both ends of z.
struct PackDose {
  std::array<float, k_pack_bodies> lag_seconds{};
  std::array<float, 2> inverse_z{};  ///< 1/K
  float onset_celsius = 0, cap_celsius = 0;
};

struct PackInput {
  Pack dew{}, film{}, flux_cap{}, forced_gas{}, skirt_factor{};
  Pack vapour_efficiency{}, pressure{}, start{}, start_activity{};
  Pack air_celsius{}, air_film{}, air_humidity{};
  Pack highest_allowed{};  ///< a temperature above it is a fault
  Pack probe_lag{};        ///< seconds
  Pack surface_limit{};    ///< celsius, for the seconds above it
  std::array<PackLayer, k_most_pack_layers> layers{};
  std::array<PackSteps, k_most_pack_phases> phases{};
  int phase_count = 0;
  float stop_below_celsius = -1000;      ///< an air phase ends once no cell is hotter
  float largest_mismatch_kelvin = 0.5f;  ///< of a linearised step before it counts as too long
  int most_halvings = 3;                 ///< of such a step, before its pass counts as faulty
  PackDose dose{};
};

struct PackOutput {
  /// Seconds at the cap that count as much: per body and end of z.
  std::array<std::array<Pack, 2>, k_pack_bodies> cap_seconds{};
  Pack target_peak{}, probe_peak{}, surface_peak{}, surface_seconds_above{};
  Pack water_gain{};  ///< kg/m2 at the end of the last phase under steam
  std::array<bool, k_pack> faulty{};
  std::array<bool, k_pack> cut{};  ///< a step was taken in halves
};

/// Runs the first `passes` of a pack, with vectors of one width; the rest of the output is left as it was.
using PackKernel = void (*)(const PackShape&, const PackInput&, int passes, PackOutput&);

}  // namespace lastegg::steam
