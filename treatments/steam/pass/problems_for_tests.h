// Stacks of realistic shape for tests; property values are placeholders of realistic size, not measurements.
#pragma once

#include <string>
#include <vector>

#include "treatments/steam/pass/pass.h"

namespace lastegg::steam {

struct NamedProblem {
  std::string name;
  PassProblem problem;
};

inline std::vector<NamedProblem> problems_for_tests() {
  const Layer fabric{0.0008, 480e3, 0.055, true, 0.68, 2.0, 2.0};
  const Layer cotton{0.0030, 520e3, 0.065, true, 0.68, 2.0, 32};
  const Layer batting{0.008, 19.5e3, 0.04, true, 0.985, 1.05, 0.074};
  const Layer foam{0.03, 45e3, 0.04, true, 0.97, 1.3, 0.55};
  const Layer vinyl{0.001, 1680e3, 0.14, false, 0, 1, 0};
  const Layer wood{0.015, 800e3, 0.13, false, 0, 1, 0};
  const Head bare{0.06, 95.5, 800, 65e3, 0.004, 0.02, 0.25};
  const auto problem = [](Head head, double pace, Stack stack, double phi, std::vector<double> depths) {
    PassProblem p;
    p.head = head;
    p.pace_metres_per_second = pace;
    p.stack = std::move(stack);
    p.vapour_efficiency = phi;
    p.start_celsius = 22;
    p.air.celsius = 22;
    p.depths_metres = std::move(depths);
    return p;
  };
  return {
      {"seat", problem(bare, 0.03, {fabric, batting, foam}, 0.65, {0.0008, 0.003, 0.006})},
      {"cotton fold",
       problem({0.08, 94, 500, 60e3, 0.003, 0.02, 0.25}, 0.014, {cotton, foam}, 0.6, {0.001, 0.002, 0.003})},
      {"vinyl on foam",
       problem({0.065, 96, 900, 65e3, 0.003, 0.02, 0.25}, 0.012, {vinyl, foam}, 0.6, {0.0003, 0.001})},
      {"wood", problem({0.065, 96, 900, 65e3, 0.003, 0.02, 0.25}, 0.016, {wood}, 0.6, {0.00025, 0.001})},
      // A permeable layer on an impermeable one: water stands on their interface. Schemes that look right
      // fail here.
      {"fabric on wood", problem(bare, 0.012, {fabric, wood}, 0.65, {0.0004, 0.0008, 0.0013})},
      {"cotton on vinyl on foam", problem(bare, 0.010, {cotton, vinyl, foam}, 0.5, {0.0015, 0.003, 0.0035})}};
}

}  // namespace lastegg::steam
