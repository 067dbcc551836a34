// Many passes of a steam head that go through the march side by side, in single precision: what they share,
// what each has of its own, and what comes out. Plain numbers, so that one kernel source can be compiled for
// several widths of vector and chosen at run time. The double-precision March stays the reference.
#pragma once

#include <array>
#include <cstdint>
#include <span>

namespace lastegg::steam {

constexpr int k_pack = 16;  ///< passes in a pack: the widest vector
constexpr int k_most_pack_layers = 10;
constexpr int k_most_pack_cells = 96;
constexpr int k_most_pack_phases = 32;

/// One number of each pass.
using Pack = std::array<float, k_pack>;

/// What all passes share: the cells' order and their share of their layer.
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
  int blocks = 1, steps = 1;
  float ratio = 1;
};

/// Rows of schedules from which each pass takes one (schedule.h).
constexpr int k_pack_rows = 6;

/// One phase of every pass.
struct PackPhasePlan {
  PackPhase phase = PackPhase::air;
  std::array<PackSteps, k_pack_rows> rows{};
  int pieces = 1;       ///< into which a step is cut when the dose is summed
  bool watched = true;  ///< whether its highest temperatures count (not: cooling between passes)
};

/// Bodies whose dose is summed: an egg, an unfed and an engorged bug.
constexpr int k_pack_bodies = 3;

/// How dose is counted; all bodies share onset, cap and both ends of z.
struct PackDose {
  std::array<float, k_pack_bodies> lag_seconds{};
  std::array<float, 2> inverse_z{};  ///< 1/K
  float onset_celsius = 0, cap_celsius = 0;
};

/// How all passes are marched.
struct PackPlan {
  std::array<PackPhasePlan, k_most_pack_phases> phases{};
  int phase_count = 0;
  float stop_below_celsius = -1000;      ///< an air phase ends once no cell is hotter
  float largest_mismatch_kelvin = 0.5f;  ///< of a linearised step before it counts as too long
  int most_halvings = 3;                 ///< of such a step, before its pass counts as faulty
  PackDose dose{};
};

/// A layer of each pass.
struct PackLayer {
  Pack thickness{}, capacity{}, conductivity{}, porosity{}, openness{},
      sorption{};  ///< SI; openness: porosity/tortuosity
};

/// What sixteen passes have of their own. Places without a pass repeat another.
struct PackInput {
  Pack dew{}, film{}, flux_cap{}, forced_gas{}, skirt_factor{};
  Pack vapour_efficiency{}, pressure{}, start{}, start_activity{};
  Pack air_celsius{}, air_film{}, air_humidity{};
  Pack highest_allowed{};  ///< a temperature above it is a fault
  Pack probe_lag{};        ///< seconds
  Pack target_offset{};    ///< metres by which the watched depth lies below the face that stands for it
  Pack surface_limit{};    ///< celsius, for the seconds above it
  std::array<PackLayer, k_most_pack_layers> layers{};
  std::array<Pack, k_most_pack_phases> phase_seconds{};
  std::array<std::int32_t, k_pack> row{};  ///< of schedules
};

struct PackOutput {
  /// Seconds at the cap that count as much: per body and end of z.
  std::array<std::array<Pack, 2>, k_pack_bodies> cap_seconds{};
  Pack target_peak{}, probe_peak{}, surface_peak{}, surface_seconds_above{};
  Pack water_gain{};  ///< kg/m2 at the end of the last phase under steam
  std::array<bool, k_pack> faulty{};
  std::array<bool, k_pack> cut{};  ///< a step was taken in halves
};

/// Runs `passes` passes that lie in packs one after the other, with vectors of one width; `outputs` has as
/// many packs. A lane that has finished its pass takes the next, so no lane waits for another.
using PackKernel = void (*)(const PackShape&, const PackPlan&, std::span<const PackInput>, int passes,
                            std::span<PackOutput> outputs);

}  // namespace lastegg::steam
