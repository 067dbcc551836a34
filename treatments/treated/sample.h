// Sample i of an edge as a pass of the lanes: the same draw as in treatments/steam/pace.h. Pure function.
#pragma once

#include <cstdint>

#include "treatments/steam/lane_pass.h"
#include "treatments/steam/pace.h"

namespace lastegg::treated {

/// Layers of sample i, the last thick enough to hold the target.
/// Source:  own rule: keys `stack_key/k`, dimensions thickness, conductivity, heat capacity
/// Checked: treatments/treated/treated_agreement_test.cpp (steam::sample_pass)
steam::Stack drawn_stack(const steam::PaceProblem& problem, std::uint32_t i);

/// All samples with their stacks, ready for steam::run_passes(); paces are still to be set.
class Samples {
 public:
  explicit Samples(const steam::PaceProblem& problem);
  Samples(const Samples&) = delete;  // the passes point at the stacks
  Samples& operator=(const Samples&) = delete;

  std::size_t size() const { return passes_.size(); }
  /// What the hand of sample i makes of a planned pace.
  double hand(std::size_t i) const { return hands_[i]; }

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
