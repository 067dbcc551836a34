// Holds the steam engine and its shapes against finite elements: flat stacks have to agree, bounds must not
// be warmer. Writes a table as markdown to stdout; exit 1 where a figure is outside of what is allowed.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "checks/elements.h"
#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/pass.h"
#include "treatments/steam/pass/problems_for_tests.h"
#include "treatments/steam/shapes/shapes.h"

namespace lastegg {
namespace {

using namespace steam;

constexpr double k_peak_kelvin = 0.1, k_dose_log10 = 0.03;  // flat stacks
// What the grids of the two-dimensional solutions leave open.
constexpr double k_bound_kelvin = 0.1, k_bound_log10 = 0.03;
constexpr double k_no_dose = -6;  // a dose below a millionth is none: no more is asked of it

int failures = 0;

// Properties of realistic size, not measurements.
const Layer k_cotton{0.0008, 520e3, 0.065, true, 0.68, 2.0, 32};
const Layer k_spunbond{0.0004, 333e3, 0.050, true, 0.80, 1.63, 0.05};
const Layer k_batting{0.012, 19.5e3, 0.04, true, 0.985, 1.05, 0.074};
const Layer k_foam{0.03, 45e3, 0.04, true, 0.97, 1.3, 0.55};
const Layer k_wood{0.015, 1120e3, 0.18, false, 0, 1, 0};
const elements::Medium k_gas{1.2e3, k_still_air_watts_per_metre_kelvin, true, 0.999, 1, 0.001, 1};
const elements::Medium k_dry_gap{1.2e3, k_still_air_watts_per_metre_kelvin, false, 0, 1, 0, 1};

elements::Medium medium_of(const Layer& layer, double efficiency) {
  return {layer.heat_capacity_joules_per_m3_kelvin,
          layer.conductivity_watts_per_metre_kelvin,
          layer.permeable,
          layer.porosity,
          layer.tortuosity,
          layer.sorption_scale_kilograms_per_m3,
          efficiency};
}

elements::Steam steam_of(const PassProblem& p) {
  elements::Steam s;
  s.head_metres = p.head.length_metres;
  s.pace = p.pace_metres_per_second;
  s.dew_celsius = p.head.dew_celsius;
  s.film = p.head.film_watts_per_m2_kelvin;
  s.cap = p.head.flux_cap_watts_per_m2;
  s.forced = p.head.forced_gas_metres_per_second;
  s.skirt_metres = p.head.skirt_length_metres;
  s.skirt_factor = p.head.skirt_factor;
  s.pressure = p.pressure_pascal;
  s.start_celsius = p.start_celsius;
  s.start_activity = p.start_activity;
  s.room_celsius = p.air.celsius;
  s.room_film = p.air.film_watts_per_m2_kelvin;
  s.room_humidity = p.air.relative_humidity;
  s.observe_seconds = p.observe_seconds;
  return s;
}

PassProblem pass_at(double pace, double forced, double efficiency) {
  PassProblem p;
  p.head = {0.08, 95, 700, 65e3, forced, 0.02, 0.25};
  p.pace_metres_per_second = pace;
  p.vapour_efficiency = efficiency;
  p.start_celsius = p.air.celsius = 20;
  return p;
}

Stack plain(const std::vector<UncertainLayer>& layers) {
  Stack stack;
  for (const UncertainLayer& layer : layers) stack.push_back(layer.layer);
  return stack;
}

// Peak and dose of a place by the engine, the dose as the elements count it.
std::vector<elements::Found> by_engine(PassProblem problem, Stack stack, std::vector<double> depths) {
  problem.stack = std::move(stack);
  problem.depths_metres = std::move(depths);
  const auto history = run_pass(problem, shown_resolution());
  std::vector<elements::Found> found;
  if (!history) {
    std::fprintf(stderr, "%s\n", history.error().message.c_str());
    ++failures;
    found.resize(problem.depths_metres.size());
    return found;
  }
  for (const auto& row : history->celsius) {
    Series series;
    fine_series(*history, row, 0.1, series);
    double dose = 0;
    for (std::size_t i = 1; i < series.seconds.size(); ++i) {
      const double a = std::pow(10.0, (series.celsius[i - 1] - 48) / 4);
      const double b = std::pow(10.0, (series.celsius[i] - 48) / 4);
      const double mean = std::fabs(std::log(b / a)) < 1e-6 ? a : (b - a) / std::log(b / a);
      dose += mean * (series.seconds[i] - series.seconds[i - 1]);
    }
    found.push_back({peak_of(series).celsius, std::log10(dose / 60 / 71.5)});
  }
  return found;
}

// A stack as a line of elements; `depths` become grid points.
elements::Body line_of(const Stack& stack, double efficiency, bool forced,
                       const std::vector<double>& depths) {
  elements::Body body;
  std::vector<double> ends{0};
  bool run = true;
  for (const Layer& layer : stack) {
    body.media.push_back(medium_of(layer, efficiency));
    run = run && layer.permeable;
    ends.push_back(ends.back() + layer.thickness_metres);
    if (run && forced) body.forced_until = ends.back();
  }
  std::vector<double> marks = ends;
  for (const double depth : depths) {
    if (std::none_of(marks.begin(), marks.end(), [&](double m) { return std::fabs(m - depth) < 1e-9; }))
      marks.push_back(depth);
  }
  std::sort(marks.begin(), marks.end());
  for (std::size_t i = 1; i < marks.size(); ++i) {
    const bool last = i + 1 == marks.size();
    const double length = marks[i] - marks[i - 1];
    elements::append_lines(
        body.z, elements::graded(marks[i - 1], marks[i], last ? 36 : 40, std::min(4e-6, length / 60), !last));
  }
  body.medium = [ends](double, double z) {
    std::size_t i = 1;
    while (i + 1 < ends.size() && z > ends[i]) ++i;
    return int(i) - 1;
  };
  body.exposed = [](double, double z, double, double) { return z < 1e-9 ? 1.0 : 0.0; };
  for (const double depth : depths) body.places.push_back({0, depth});
  return body;
}

void row(const std::string& what, double pace, double depth, const elements::Found& ours,
         const elements::Found& theirs, bool bound) {
  const double kelvin = ours.peak_celsius - theirs.peak_celsius;
  const double dose = ours.log10_dose - theirs.log10_dose;
  const bool counted = ours.log10_dose > k_no_dose || theirs.log10_dose > k_no_dose;
  const bool good = bound
                        ? !counted || (kelvin <= k_bound_kelvin && dose <= k_bound_log10)
                        : std::fabs(kelvin) <= k_peak_kelvin && (!counted || std::fabs(dose) <= k_dose_log10);
  if (!good) ++failures;
  std::printf("| %s | %g | %.2f | %.2f | %.2f | %+.2f | %+.3f |%s\n", what.c_str(), 1e3 * pace, 1e3 * depth,
              ours.peak_celsius, theirs.peak_celsius, kelvin, dose, good ? "" : " MISSED");
  std::fflush(stdout);
}

void head(const char* title, const char* text) {
  std::printf("\n## %s\n\n%s\n\n", title, text);
  std::printf("| case | pace mm/s | depth mm | ours C | elements C | difference K | in log10 dose |\n");
  std::printf("|---|---|---|---|---|---|---|\n");
}

constexpr double k_long_head_metres = 0.15;

const elements::Fineness k_fine{2, 0.4};
const elements::Fineness k_plane{1, 0.8};
const elements::Fineness k_cord{1, 1.5};

void flat_stacks() {
  head("Flat stacks",
       "Both are to agree within 0.1 K and 0.03 in log10 of the dose; a dose below a millionth of the lethal "
       "is "
       "not compared. The engine with 192 cells.");
  for (const NamedProblem& named : problems_for_tests()) {
    const PassProblem& p = named.problem;
    const auto ours = by_engine(p, p.stack, p.depths_metres);
    const auto body = line_of(p.stack, p.vapour_efficiency, true, p.depths_metres);
    const auto theirs = elements::solve_line(body, steam_of(p), k_fine);
    for (std::size_t d = 0; d < ours.size(); ++d)
      row(named.name, p.pace_metres_per_second, p.depths_metres[d], ours[d], theirs.places[d], false);
  }
}

void bounds_on_a_line() {
  head(
      "Folds, hollows and pits",
      "Ours is the bound; the elements spell out the air at contacts, 40 mm of still air behind a cover, and "
      "the shells of a pit of 12 mm. Ours must not be warmer.");
  for (const double pace : {0.006, 0.015}) {
    const PassProblem p = pass_at(pace, 0.003, 0.6);
    {
      const double gap = 0.00005;
      const auto place = fold({{k_cotton}, 3, gap, 2, 2, 0}, {0, 0}, {{k_batting}});
      const Layer air{gap, 1.2e3, k_still_air_watts_per_metre_kelvin, true, 0.999, 1, 0.001};
      const double depth = 2 * k_cotton.thickness_metres + gap;
      const auto ours = by_engine(p, plain(place.stack), {place.most_depth_metres});
      const auto body =
          line_of({k_cotton, air, k_cotton, air, k_cotton, k_batting}, p.vapour_efficiency, true, {depth});
      row("under two cloths of three", pace, depth, ours[0],
          elements::solve_line(body, steam_of(p), k_fine).places[0], true);
    }
    {
      const auto place = fold({{k_spunbond}, 2, 0, 1, 2, 0}, {0, 0}, {});
      Layer cover = k_spunbond;
      cover.thickness_metres *= 2;
      const Layer air{0.04, 1.2e3, k_still_air_watts_per_metre_kelvin, true, 0.999, 1, 0.001};
      const std::vector<double> depths{place.least_depth_metres, place.most_depth_metres};
      const auto ours = by_engine(p, plain(place.stack), depths);
      auto body = line_of({cover, air, k_wood}, p.vapour_efficiency, true, depths);
      body.media[1] = k_gas;  // free gas: no cloth slows its vapour
      const auto theirs = elements::solve_line(body, steam_of(p), k_fine);
      for (std::size_t d = 0; d < depths.size(); ++d)
        row("cover over a hollow", pace, depths[d], ours[d], theirs.places[d], true);
    }
    {
      PassProblem still = p;
      still.head.forced_gas_metres_per_second = 0;
      const double radius = 0.012;
      const auto place = fold({{k_cotton}, 4, 0, 1, 2, radius}, {0.001, 0.0025}, {{k_batting}});
      Layer cloth = k_cotton;
      cloth.thickness_metres = 4 * k_cotton.thickness_metres;
      const std::vector<double> depths{0.001, 0.0025};
      const auto ours = by_engine(still, plain(place.stack), depths);
      auto body = line_of({cloth, k_batting}, still.vapour_efficiency, false, depths);
      body.area = [radius](double z) { return (1 + z / radius) * (1 + z / radius); };
      const auto theirs = elements::solve_line(body, steam_of(still), k_fine);
      for (std::size_t d = 0; d < depths.size(); ++d)
        row("pit of a tuft", pace, depths[d], ours[d], theirs.places[d], true);
    }
  }
}

// Half of a crack between two wooden parts whose lips lie in one steamed face; the mouth is open to steam.
void cracks() {
  head("Cracks in a steamed face",
       "Two dimensions: a slot in hardwood, open to steam at its mouth, vapour diffusing into it, no jet. "
       "Ours "
       "is the wood alone and must not be warmer where more than a millionth of the lethal dose arrives "
       "(below, "
       "walls that dry into the crack may be cooler); the difference is what the crack brings.");
  const std::vector<double> depths{0.001, 0.002, 0.003, 0.005};
  for (const double width : {0.0005, 0.002}) {
    for (const double pace : {0.004, 0.015}) {
      const PassProblem p = pass_at(pace, 0, 0.6);
      elements::Body body;
      body.media = {medium_of(k_wood, 0.6), k_gas};
      elements::append_lines(body.x, elements::graded(0, 0.5 * width, 6, 0.1 * width, false));
      elements::append_lines(body.x, elements::graded(0.5 * width, 0.010, 24, 3e-5, false));
      elements::append_lines(body.z, elements::graded(0, 0.001, 22, 1.2e-5, false));
      elements::append_lines(body.z, elements::graded(0.001, 0.002, 10, 1e-4, false));
      elements::append_lines(body.z, elements::graded(0.002, 0.003, 8, 1e-4, false));
      elements::append_lines(body.z, elements::graded(0.003, 0.005, 10, 1.5e-4, false));
      elements::append_lines(body.z, elements::graded(0.005, 0.015, 16, 2e-4, false));
      body.medium = [width](double x, double) { return x < 0.5 * width ? 1 : 0; };
      body.exposed = [](double, double z, double, double) { return z < 1e-9 ? 1.0 : 0.0; };
      for (const double depth : depths) body.places.push_back({0.5 * width, depth});
      const auto ours = by_engine(p, {k_wood}, depths);
      const auto theirs = elements::solve_plane(body, steam_of(p), k_plane);
      for (std::size_t d = 0; d < depths.size(); ++d)
        row(fmt::format("crack of {:g} mm", 1e3 * width), pace, depths[d], ours[d], theirs.places[d], true);
    }
  }
}

// A leg under its frame: the crack lies behind an inside corner, no steam in it, and the egg on the far wall.
void inside_corners() {
  head("Cracks at an inside corner",
       "Two dimensions: a crack of 0.5 mm that no steam enters, between a part steamed on its face and "
       "another "
       "steamed up to the corner; the eggs on the wall of the latter, which is the colder. Ours is the wood "
       "alone at three times the depth.");
  const std::vector<double> depths{0.001, 0.002, 0.003};
  const double width = 0.0005;
  struct Way {
    double pace, head_metres;
  };
  for (const auto& [pace, head_metres] :
       {Way{0.002, k_long_head_metres}, Way{0.002, 0.08}, Way{0.005, 0.08}, Way{0.015, 0.08}}) {
    PassProblem p = pass_at(pace, 0, 0.6);
    p.head.length_metres = head_metres;
    elements::Body body;
    body.media = {medium_of(k_wood, 0.6), k_dry_gap};
    const auto mirrored = [](std::vector<double> lines) {
      std::vector<double> out;
      for (auto value = lines.rbegin(); value != lines.rend(); ++value) out.push_back(-*value);
      return out;
    };
    elements::append_lines(body.x, mirrored(elements::graded(0, 0.012, 24, 3e-5, false)));
    elements::append_lines(body.x, elements::graded(0, 0.001, 14, 3e-5, false));
    elements::append_lines(body.x, elements::graded(0.001, 0.002, 8, 1.2e-4, false));
    elements::append_lines(body.x, elements::graded(0.002, 0.003, 7, 1.4e-4, false));
    elements::append_lines(body.x, elements::graded(0.003, 0.014, 18, 1.5e-4, false));
    auto above = mirrored(elements::graded(0, 0.012, 24, 3e-5, false));
    for (double& value : above) value -= width;
    elements::append_lines(body.z, above);
    elements::append_lines(body.z, elements::graded(-width, 0, 6, 6e-5, true));
    elements::append_lines(body.z, elements::graded(0, 0.012, 24, 3e-5, false));
    body.medium = [width](double x, double z) {
      if (z < -width) return 0;
      if (x < 0) return -1;
      return z < 0 ? 1 : 0;
    };
    body.exposed = [width](double x, double z, double nx, double nz) {
      if (nz > 0.5 && std::fabs(z + width) < 1e-9 && x < 0) return 1.0;
      if (nx < -0.5 && std::fabs(x) < 1e-9 && z > 0) return 1.0;
      return 0.0;
    };
    std::vector<double> marched;
    for (const double depth : depths) {
      body.places.push_back({depth, -width});
      marched.push_back(k_inside_corner_factor * depth);
    }
    const auto ours = by_engine(p, {k_wood}, marched);
    const auto theirs = elements::solve_plane(body, steam_of(p), k_plane);
    for (std::size_t d = 0; d < depths.size(); ++d)
      row(fmt::format("far wall at a corner, head {:g} mm", 1e3 * head_metres), pace, depths[d], ours[d],
          theirs.places[d], true);
  }
}

// A covered cord in the seam of two panels over batting, half of it. Beside the cord the panel's cloth turns
// down along it to the stitches, and the crease above is taken as filled with cloth. The egg lies at the
// level of the axis, between the cover and the turned cloth.
struct Welt {
  Layer cloth, behind;
  double cord_radius = 0.002;
  double out_share = 0;  ///< how far it stands out of its panel, as a share of its covered radius

  double radius() const { return cord_radius + cloth.thickness_metres; }
  double out() const { return out_share * radius(); }
};

elements::Body body_of(const Welt& welt, double efficiency) {
  const double radius = welt.radius(), out = welt.out(), cloth = welt.cloth.thickness_metres;
  const double wall = radius + cloth;          // the turned cloth ends here
  const double stitches = 2 * radius + cloth;  // and reaches down to here
  elements::Body body;
  body.media = {medium_of(welt.cloth, efficiency), medium_of(welt.behind, efficiency)};
  const auto even = [](double from, double until, double cell) {
    std::vector<double> lines;
    const int cells = std::max(2, int(std::ceil((until - from) / cell)));
    for (int i = 0; i <= cells; ++i) lines.push_back(from + (until - from) * i / cells);
    return lines;
  };
  elements::append_lines(body.x, even(0, radius, 1.2e-4));
  elements::append_lines(body.x, even(radius, wall, 1.0e-4));
  elements::append_lines(body.x, elements::graded(wall, wall + 0.006, 12, 1.2e-4, false));
  if (out > 1e-6) elements::append_lines(body.z, even(0, out, 1.0e-4));
  if (out < radius - 1e-6) {
    const double panel = std::min(out + cloth, radius);
    elements::append_lines(body.z, elements::graded(out, panel, 12, 2.5e-5, false));
    if (panel < radius - 1e-6) elements::append_lines(body.z, even(panel, radius, 1.5e-4));
  }
  elements::append_lines(body.z, elements::graded(std::max(out, radius), stitches, 14, 5e-5, false));
  elements::append_lines(body.z, elements::graded(stitches, stitches + 0.010, 12, 1.5e-4, false));
  const auto cap = [radius](double x, double z) { return std::hypot(x, z - radius) <= radius; };
  body.medium = [=](double x, double z) {
    if (z < out) return cap(x, z) ? 0 : -1;
    if (z < out + cloth) return 0;
    return x < wall && z < stitches ? 0 : 1;
  };
  // Steps of the grid have more surface than the circle: each face counts by its share of the normal.
  body.exposed = [=](double x, double z, double nx, double nz) {
    if (z > out + 1e-9) return 0.0;
    if (z > out - 1e-9) return nz < -0.5 ? 1.0 : 0.0;
    if (x < 1e-9) return 0.0;
    const double away = std::hypot(x, z - radius);
    return std::fabs(nx * x + nz * (z - radius)) / away;
  };
  body.places = {{radius, radius}};
  return body;
}

void covered_cords() {
  head("A covered cord",
       "Two dimensions: a cord under its cover that stands out of its panel, steamed over its curve and the "
       "panel; eggs beside it at the level of its axis. How far it stands out is a share of its covered "
       "radius. Ours is flat cloth.");
  const Layer pile{0.0022, 325e3, 0.050, true, 0.82, 1.56, 1.2};
  const Layer tight{0.0005, 600e3, 0.09, true, 0.35, 3.0, 3.0};
  struct Case {
    const char* name;
    Welt welt;
    double efficiency;
  };
  const Case cases[] = {{"4 mm under cotton", {k_cotton, k_batting, 0.002}, 0.6},
                        {"4 mm under cotton on foam", {k_cotton, k_foam, 0.002}, 0.6},
                        {"6 mm under cotton", {k_cotton, k_batting, 0.003}, 0.6},
                        {"4 mm under pile", {pile, k_batting, 0.002}, 0.6},
                        {"3 mm under pile", {pile, k_batting, 0.0015}, 0.6},
                        {"4 mm under tight cloth", {tight, k_batting, 0.002}, 0.2}};
  const auto compare = [](const Case& one, double out_share, double pace) {
    Welt welt = one.welt;
    welt.out_share = out_share;
    const PassProblem p = pass_at(pace, 0, one.efficiency);
    const auto place = cord({{welt.cloth}, 2 * welt.cord_radius, out_share}, {}, {{welt.behind}});
    const auto ours = by_engine(p, plain(place.stack), {place.most_depth_metres});
    const auto theirs = elements::solve_plane(body_of(welt, one.efficiency), steam_of(p), k_cord);
    row(fmt::format("{}, {:.2f} out", one.name, out_share), pace, place.most_depth_metres, ours[0],
        theirs.places[0], true);
  };
  for (const Case& one : cases) {
    for (const double pace : {0.004, 0.008, 0.015, 0.025}) compare(one, k_most_relief_share, pace);
    for (const double share : {0.0, 0.5 * k_most_relief_share}) compare(one, share, 0.006);
  }
}

}  // namespace
}  // namespace lastegg

int main(int count, char** arguments) {
  using namespace lastegg;
  const std::string_view only = count > 1 ? arguments[1] : "";
  if (only.empty() || only == "flat") flat_stacks();
  if (only.empty() || only == "line") bounds_on_a_line();
  if (only.empty() || only == "crack") cracks();
  if (only.empty() || only == "corner") inside_corners();
  if (only.empty() || only == "cord") covered_cords();
  if (failures > 0) std::fprintf(stderr, "%d figures lie outside of what is allowed\n", failures);
  return failures > 0 ? 1 : 0;
}
