#include "treatments/treated/sample.h"

#include <cstdint>

#include "treatments/steam/pace/drawn_edge.h"

namespace lastegg::treated {
namespace {

constexpr double k_no_more_dose_celsius = 40;  // onset of mortality: below it no place gains dose

}  // namespace

Samples::Samples(const steam::PaceProblem& problem) {
  const steam::Calibration& calibration = problem.calibration;
  const std::size_t count = calibration.weights.size();
  stacks_.resize(count);
  batch_.pressure_pascal = calibration.pressure_pascal;
  batch_.start_celsius = problem.start_celsius;
  batch_.start_activity = problem.start_activity;
  batch_.air = problem.air;
  batch_.stop_below_celsius = k_no_more_dose_celsius;
  for (std::size_t i = 0; i < count; ++i) {
    const auto index = static_cast<std::uint32_t>(i);
    stacks_[i] = steam::drawn_stack(problem, index);
    double depth = problem.target_depth_metres;
    if (calibration.towel == steam::Towel::laid) {
      stacks_[i].insert(stacks_[i].begin(), steam::laid_towel());
      depth += stacks_[i].front().thickness_metres;
    }
    const steam::DrawnHead drawn = steam::drawn_head(calibration, problem.cloth_key, static_cast<int>(i));
    passes_.push_back({drawn.head, drawn.vapour_efficiency, 0, &stacks_[i], depth});
    hands_.push_back(steam::drawn_hand(index));
  }
}

Result<std::vector<steam::LaneAnswer>> Samples::run(double pace, int passes, double gap_seconds,
                                                    double observe_seconds) const {
  steam::LaneBatch batch = batch_;
  batch.passes = passes;
  batch.gap_seconds = gap_seconds;
  batch.observe_seconds = observe_seconds;
  std::vector<steam::LanePass> all = passes_;
  for (std::size_t i = 0; i < all.size(); ++i) all[i].pace_metres_per_second = pace * hands_[i];
  return steam::run_passes(batch, all, steam::accuracy_for(static_cast<int>(all.size())));
}

}  // namespace lastegg::treated
