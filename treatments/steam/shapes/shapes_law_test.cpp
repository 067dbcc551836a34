// Laws of the shapes: what stands in for a gap, a void or a pit is never warmer than a stack that spells it
// out, and deeper eggs are never warmer.
#include "treatments/steam/shapes/shapes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "treatments/steam/pass/cvode_for_tests.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg::steam {
namespace {

// What the time steps of the default schedule leave undecided, shown_resolution().
constexpr double k_numerical_kelvin = 0.02;
constexpr double k_numerical_log10 = 0.005;

// Properties of realistic size, not measurements.
const Layer k_cotton{0.0008, 520e3, 0.065, true, 0.68, 2.0, 32};
const Layer k_velvet{0.0022, 325e3, 0.050, true, 0.82, 1.56, 1.2};
const Layer k_spunbond{0.0004, 333e3, 0.050, true, 0.80, 1.63, 0.05};
const Layer k_foam{0.03, 45e3, 0.04, true, 0.97, 1.3, 0.55};
const Layer k_wood{0.015, 800e3, 0.13, false, 0, 1, 0};
const Layer k_air{0.0001, 1.2e3, k_still_air_watts_per_metre_kelvin, true, 0.99, 1.0, 0.05};

Stack plain(const std::vector<UncertainLayer>& layers) {
  Stack stack;
  for (const UncertainLayer& layer : layers) stack.push_back(layer.layer);
  return stack;
}

PassProblem problem_of(Stack stack, double pace, double efficiency, double forced,
                       std::vector<double> depths) {
  PassProblem problem;
  problem.head = {0.08, 95, 700, 65e3, forced, 0.02, 0.25};
  problem.pace_metres_per_second = pace;
  problem.stack = std::move(stack);
  problem.vapour_efficiency = efficiency;
  problem.start_celsius = problem.air.celsius = 20;
  problem.depths_metres = std::move(depths);
  return problem;
}

std::vector<PlaceSummary> march(const PassProblem& problem) {
  const auto history = run_pass(problem, shown_resolution());
  EXPECT_TRUE(history) << (history ? "" : history.error().message);
  return history ? summaries_of(*history) : std::vector<PlaceSummary>(problem.depths_metres.size());
}

struct Way {
  double pace, efficiency, forced;
};
const std::vector<Way> k_ways{{0.006, 0.6, 0.004}, {0.015, 0.6, 0.004}, {0.030, 0.9, 0.008},
                              {0.010, 0.2, 0.0},   {0.005, 0.02, 0.0},  {0.010, 1.0, 0.0}};

std::string said(const Way& way) {
  return std::to_string(way.pace) + " m/s, phi " + std::to_string(way.efficiency) + ", u0 " +
         std::to_string(way.forced);
}

TEST(FoldLaw, ContactsCountedAsClothAreNeverWarmerThanContactsSpeltOut) {
  for (const Layer& cloth : {k_cotton, k_velvet}) {
    const Fold folded{{cloth}, 3, k_air.thickness_metres, 2, 2, 0};
    const auto place = fold(folded, {0, 0}, {{k_foam}});
    EXPECT_NEAR(place.most_depth_metres,
                2 * cloth.thickness_metres + k_air.thickness_metres *
                                                 cloth.conductivity_watts_per_metre_kelvin /
                                                 k_still_air_watts_per_metre_kelvin,
                1e-12);
    for (const Way& way : k_ways) {
      const Stack spelt{cloth, k_air, cloth, k_air, cloth, k_foam};
      const auto real = march(problem_of(spelt, way.pace, way.efficiency, way.forced,
                                         {2 * cloth.thickness_metres + k_air.thickness_metres}));
      const auto computed = march(
          problem_of(plain(place.stack), way.pace, way.efficiency, way.forced, {place.most_depth_metres}));
      EXPECT_LE(computed[0].peak_celsius, real[0].peak_celsius + k_numerical_kelvin) << said(way);
      EXPECT_LE(computed[0].log10_dose, real[0].log10_dose + k_numerical_log10) << said(way);
    }
  }
}

TEST(VoidLaw, TheFilmBehindIsNeverWarmerThanADeepStillVoid) {
  Layer air = k_air;
  air.thickness_metres = 0.04;
  for (const Layer& cloth : {k_spunbond, k_cotton}) {
    const Fold folded{{cloth}, 2, 0, 1, 2, 0};
    const auto place = fold(folded, {0, 0}, {});
    EXPECT_EQ(place.claim, Claim::bound);
    const std::vector<double> depths{place.least_depth_metres, place.most_depth_metres};
    for (const Way& way : k_ways) {
      Layer twice = cloth;
      twice.thickness_metres *= 2;
      // A cover with wood behind 40 mm of air that does not move.
      const auto real = march(problem_of({twice, air, k_wood}, way.pace, way.efficiency, way.forced, depths));
      const auto computed =
          march(problem_of(plain(place.stack), way.pace, way.efficiency, way.forced, depths));
      for (std::size_t d = 0; d < depths.size(); ++d) {
        EXPECT_LE(computed[d].peak_celsius, real[d].peak_celsius + k_numerical_kelvin) << said(way);
        EXPECT_LE(computed[d].log10_dose, real[d].log10_dose + k_numerical_log10) << said(way);
      }
    }
  }
}

// Every shell of a pit as a layer of its own: areas grow with the square of the radius.
TEST(FoldLaw, APitIsNeverWarmerThanItsShellsSpeltOut) {
  const double radius = 0.012;
  const Fold folded{{k_cotton}, 4, 0, 1, 2, radius};
  const auto place = fold(folded, {0.001, 0.0025}, {{k_foam}});
  EXPECT_EQ(place.claim, Claim::bound);
  const auto shells = [&](const Layer& layer, double top, double bottom, int count, Stack& to) {
    for (int i = 0; i < count; ++i) {
      const double from = top + (bottom - top) * i / count, until = top + (bottom - top) * (i + 1) / count;
      const double middle = 1 + 0.5 * (from + until) / radius;
      const double area = middle * middle;
      Layer shell = layer;
      shell.thickness_metres = until - from;
      shell.heat_capacity_joules_per_m3_kelvin *= area;
      shell.conductivity_watts_per_metre_kelvin *= area;
      shell.sorption_scale_kilograms_per_m3 *= area;
      // No more than 0.999 of a shell is gas for the engine: what the vapour's way lacks is taken from its
      // length, and what its store lacks is nothing beside the sorption.
      shell.porosity = std::min(0.999, layer.porosity * area);
      shell.tortuosity = std::max(1.0, shell.porosity / (layer.porosity / layer.tortuosity * area));
      to.push_back(shell);
    }
  };
  Stack spelt;
  const double bottom = 4 * k_cotton.thickness_metres;
  shells(k_cotton, 0, bottom, 8, spelt);
  shells(k_foam, bottom, bottom + 0.008, 6, spelt);
  for (const Way& way : k_ways) {
    const std::vector<double> depths{0.001, 0.0016, 0.0025};
    const auto real = march(problem_of(spelt, way.pace, way.efficiency, way.forced, depths));
    const auto computed = march(problem_of(plain(place.stack), way.pace, way.efficiency, way.forced, depths));
    for (std::size_t d = 0; d < depths.size(); ++d) {
      EXPECT_LE(computed[d].peak_celsius, real[d].peak_celsius + k_numerical_kelvin) << said(way);
      EXPECT_LE(computed[d].log10_dose, real[d].log10_dose + k_numerical_log10) << said(way);
    }
  }
}

TEST(ShapeLaw, DeeperIsNeverWarmer) {
  const std::vector<ShapedPlace> places{fold({{k_cotton}, 4, 0.00005, 1, 3, 0}, {0, 0}, {{k_foam}}),
                                        fold({{k_cotton}, 2, 0.00005, 1, 2, 0}, {0, 0}, {{k_wood}}),
                                        fold({{k_spunbond}, 2, 0.00005, 1, 2, 0}, {0, 0}, {}),
                                        fold({{k_cotton}, 4, 0, 1, 2, 0.012}, {0.001, 0.003}, {{k_foam}}),
                                        cord({{k_cotton}, 0.004, 1.0 / 3}, {0.001, 0.003}, {{k_foam}}),
                                        crack({k_wood}, {0.002, 0.005}, Mouth::flat_face),
                                        crack({k_wood}, {0.001, 0.002}, Mouth::inside_corner),
                                        flat({{k_cotton}}, {{k_foam}}, {0.001, 0.005})};
  for (std::size_t p = 0; p < places.size(); ++p) {
    const ShapedPlace& place = places[p];
    ASSERT_LE(place.least_depth_metres, place.most_depth_metres);
    ASSERT_LE(place.depth_factor * place.most_depth_metres,
              thickness_metres(plain(place.stack)) * (1 + 1e-12));
    std::vector<double> depths;
    for (int i = 0; i <= 4; ++i)
      depths.push_back(
          place.depth_factor *
          (place.least_depth_metres + 0.25 * i * (place.most_depth_metres - place.least_depth_metres)));
    const auto found = march(problem_of(plain(place.stack), 0.012, 0.6, 0.003, depths));
    for (std::size_t d = 1; d < depths.size(); ++d) {
      EXPECT_LE(found[d].peak_celsius, found[d - 1].peak_celsius + k_numerical_kelvin) << "place " << p;
      EXPECT_LE(found[d].log10_dose, found[d - 1].log10_dose + k_numerical_log10) << "place " << p;
    }
  }
}

TEST(CordLaw, AThickerCordIsNeverWarmerAndAThickCoverCounts) {
  const auto thin = cord({{k_cotton}, 0.003, 0}, {0.001, 0.002}, {{k_foam}});
  const auto thick = cord({{k_cotton}, 0.006, 0}, {0.001, 0.002}, {{k_foam}});
  const auto proud = cord({{k_cotton}, 0.006, 0.2}, {0.001, 0.002}, {{k_foam}});
  EXPECT_NEAR(thin.most_depth_metres, 0.0023, 1e-12);
  EXPECT_NEAR(thick.most_depth_metres, 0.0038, 1e-12);
  EXPECT_NEAR(proud.most_depth_metres, 0.0008 + 0.7 * 0.003, 1e-12);
  EXPECT_NEAR(cord({{k_cotton}, 0.006, 1}, {}, {}).most_depth_metres, 0.0008 + 0.5 * 0.003, 1e-12);
  EXPECT_NEAR(cord({{k_velvet}, 0.003, 0}, {0.001, 0.002}, {}).least_depth_metres, 0.0022, 1e-12);
  const auto at = [](const ShapedPlace& place) {
    return march(problem_of(plain(place.stack), 0.01, 0.6, 0.003, {place.most_depth_metres}))[0].peak_celsius;
  };
  EXPECT_GT(at(thin), at(thick));
  EXPECT_GT(at(proud), at(thick));
}

}  // namespace
}  // namespace lastegg::steam
