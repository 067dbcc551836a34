// Many passes at once: packs of them go through the lanes, and what faults there is done again with smaller
// steps, in the end by the double-precision reference. So no pass is lost. Plain values; pure functions.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/lanes/lane_kernels.h"
#include "treatments/steam/pass/kill.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg::steam {

/// What one pass has of its own. Everything else of a PassProblem is shared by the batch.
struct LanePass {
  Head head;
  double vapour_efficiency = 0.6;
  double pace_metres_per_second = 0.025;
  const Stack* stack = nullptr;
  double target_depth_metres = 0;
};

/// What the passes of a batch share.
struct LaneBatch {
  double pressure_pascal = 101325;
  double start_celsius = 20;
  double start_activity = 0.5;
  RoomAir air;
  int passes = 1;
  double gap_seconds = 20;
  double observe_seconds = 60;
  double probe_time_constant_seconds = 0;
  std::optional<double> surface_limit_celsius;  ///< seconds above it are counted
  double stop_below_celsius = -1000;            ///< as in Resolution
};

enum class LaneAccuracy { preview, usual };

/// Ensembles up to 128 samples serve previews and are marched as such.
constexpr LaneAccuracy accuracy_for(int samples) {
  return samples <= 128 ? LaneAccuracy::preview : LaneAccuracy::usual;
}

struct LaneAnswer {
  PlaceKill kill;  ///< at the target
  double target_peak_celsius = 0;
  double probe_peak_celsius = 0;
  double surface_peak_celsius = 0;
  double surface_seconds_above = 0;
  double water_gain_kilograms_per_m2 = 0;  ///< at lift-off
  bool steps_were_cut = false;
};

/// A pass made ready for the lanes.
struct ReadyPass {
  LanePass pass;
  Stack split;                      ///< with a border of layers at the target
  double target_offset_metres = 0;  ///< of the target below that border, some micrometres at most
  double highest_allowed_celsius = 0;
  std::size_t group = 0;
};

/// Passes made ready to be marched at many paces: checked, with a border of layers at the target, sorted into
/// groups that may share packs.
class ReadyPasses {
 public:
  /// Errors:  as run_pass(), at the paces of the passes
  static Result<ReadyPasses> of(const LaneBatch& batch, std::span<const LanePass> passes);

  std::size_t size() const { return passes_.size(); }

  /// The passes `which` at `paces`, in that order. `batch` may differ from that of of() in what is observed.
  /// Errors:  as run_pass()
  /// Cost:    8 to 30 us a pass with sixteen lanes, by stack; about two and a half times that with four
  ///          (bench/README.md)
  /// Source:  treatments/steam/README.md, "Lanes"
  /// Checked: treatments/steam/lanes/lane_agreement_test.cpp
  Result<std::vector<LaneAnswer>> run(const LaneBatch& batch, std::span<const std::size_t> which,
                                      std::span<const double> paces_metres_per_second,
                                      LaneAccuracy accuracy = LaneAccuracy::usual,
                                      PackKernel kernel = widest_kernel()) const;

 private:
  /// What passes that go through the lanes together have in common: layers alike to vapour, the target in the
  /// same one. The cells are those of the first of them.
  struct Group {
    PackShape usual, preview;
    bool fits_lanes = true;  ///< else its passes are for the reference
  };
  struct Asked {
    const LaneBatch& batch;
    std::span<const std::size_t> which;
    std::span<const double> paces;
    LaneAccuracy accuracy;
    PackKernel kernel;
  };
  std::vector<std::size_t> march(const Asked& asked, const Group& group, std::vector<std::size_t> waiting,
                                 std::vector<LaneAnswer>& answers) const;

  std::vector<ReadyPass> passes_;
  std::vector<Group> groups_;
};

/// Runs all passes once, each at its own pace; answers in their order.
Result<std::vector<LaneAnswer>> run_passes(const LaneBatch& batch, std::span<const LanePass> passes,
                                           LaneAccuracy accuracy = LaneAccuracy::usual,
                                           PackKernel kernel = widest_kernel());

/// The pass that a lane marches, as a problem of the reference: the same, with a border of layers at the
/// target, so that at lane_cells() both have the same grid.
PassProblem lane_problem(const LaneBatch& batch, const LanePass& pass);
int lane_cells(LaneAccuracy accuracy);

}  // namespace lastegg::steam
