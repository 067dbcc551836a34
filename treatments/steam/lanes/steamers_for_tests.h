// Steamers drawn from what is believed before a test, on the stacks for tests: what lanes are tested and
// timed with.
#pragma once

#include <cmath>
#include <memory>
#include <string>
#include <vector>

#include "physics/uncertainty/sobol.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/pass/problems_for_tests.h"
#include "treatments/steam/steamer/unknowns.h"

namespace lastegg::steam {

struct DrawnPasses {
  std::string name;
  LaneBatch batch;
  std::unique_ptr<std::vector<Stack>> stacks;  ///< where the passes' stacks lie
  std::vector<LanePass> passes;
};

/// `count` passes over one stack; paces and thicknesses scatter too.
inline DrawnPasses drawn_passes(const NamedProblem& named, int count, double pace_spread) {
  DrawnPasses drawn;
  drawn.name = named.name;
  drawn.batch.start_celsius = named.problem.start_celsius;
  drawn.batch.air = named.problem.air;
  drawn.batch.probe_time_constant_seconds = 0.3;
  drawn.batch.surface_limit_celsius = 80;
  drawn.batch.stop_below_celsius = 40;
  drawn.stacks = std::make_unique<std::vector<Stack>>(static_cast<std::size_t>(count), named.problem.stack);
  for (int i = 0; i < count; ++i) {
    const auto score = [&](unsigned k) {
      return SobolStream("lanes/" + named.name, k).normal(static_cast<std::uint32_t>(i));
    };
    const HeadOnCloth head = head_on_cloth({score(0), score(1), score(2), score(3)}, 101325, Towel::none);
    LanePass pass;
    pass.head = named.problem.head;
    pass.head.dew_celsius = head.dew_celsius;
    pass.head.film_watts_per_m2_kelvin = head.film_watts_per_m2_kelvin;
    pass.head.forced_gas_metres_per_second = head.forced_gas_metres_per_second;
    pass.head.flux_cap_watts_per_m2 = flux_cap_watts_per_m2(Towel::none);
    pass.vapour_efficiency = head.vapour_efficiency;
    pass.pace_metres_per_second = named.problem.pace_metres_per_second * std::exp(pace_spread * score(4));
    Stack& stack = (*drawn.stacks)[static_cast<std::size_t>(i)];
    for (Layer& layer : stack) layer.thickness_metres *= std::exp(0.1 * score(5));
    pass.stack = &stack;
    pass.target_depth_metres = named.problem.depths_metres[1];
    drawn.passes.push_back(pass);
  }
  return drawn;
}

}  // namespace lastegg::steam
