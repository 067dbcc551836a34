// The samples of an edge as passes of the lanes, drawn as a pace draws them. Not shared between threads.
#pragma once

#include <vector>

#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/pace/pace.h"

namespace lastegg::treated {

/// All samples with their stacks, ready for steam::run_passes(); paces are still to be set.
class Samples {
 public:
  explicit Samples(const steam::PaceProblem& problem);
  Samples(const Samples&) = delete;  // the passes point at the stacks
  Samples& operator=(const Samples&) = delete;

  std::size_t size() const { return passes_.size(); }

  /// Runs all of them at a pace, scattered by their hands.
  /// Errors:  as steam::run_pass().
  Result<std::vector<steam::LaneAnswer>> run(double pace_metres_per_second, int passes, double gap_seconds,
                                             double observe_seconds = 60) const;

 private:
  steam::LaneBatch batch_;
  std::vector<steam::Stack> stacks_;
  std::vector<steam::LanePass> passes_;
  std::vector<double> hands_;
};

}  // namespace lastegg::treated
