#include "treatments/steam/pass/pass.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "physics/water/vapour.h"
#include "treatments/steam/pass/schedule.h"
#include "words/say.h"

namespace lastegg::steam {
namespace {

// A step that ends in a fault is taken again in up to this many parts before the whole pass is redone with a
// finer schedule.
constexpr int k_most_parts_per_step = 32;

constexpr double k_found_kelvin =
    1e-9;  // Newton doubles its digits: the step after one so short changes nothing

enum class PhaseKind { skirt, cover, last_skirt, gap, air };

struct Phase {
  PhaseKind kind;
  double seconds;
};

std::vector<Phase> phases_of(const PassProblem& problem) {
  const double skirt = problem.head.skirt_length_metres / problem.pace_metres_per_second;
  const double cover = problem.head.length_metres / problem.pace_metres_per_second;
  std::vector<Phase> phases;
  for (int pass = 0; pass < problem.passes; ++pass) {
    if (pass > 0) phases.push_back({PhaseKind::gap, problem.gap_seconds});
    if (skirt > 0) phases.push_back({PhaseKind::skirt, skirt});
    phases.push_back({PhaseKind::cover, cover});
    if (skirt > 0) phases.push_back({PhaseKind::last_skirt, skirt});
  }
  phases.push_back({PhaseKind::air, problem.observe_seconds});
  return phases;
}

Schedule schedule_of(const PassProblem& problem, PhaseKind kind) {
  const Schedules& schedules =
      k_usual_schedules[schedule_row(problem.head.length_metres / problem.pace_metres_per_second)];
  switch (kind) {
    case PhaseKind::cover:
      return schedules.cover;
    case PhaseKind::gap:
      return schedules.gap;
    case PhaseKind::air:
      return schedules.air;
    case PhaseKind::skirt:
    case PhaseKind::last_skirt:
      break;
  }
  return schedules.skirt;
}

Boundary boundary_of(const PassProblem& problem, PhaseKind kind) {
  Boundary boundary;
  boundary.steam = kind == PhaseKind::skirt || kind == PhaseKind::cover || kind == PhaseKind::last_skirt;
  boundary.factor = kind == PhaseKind::cover ? 1.0 : problem.head.skirt_factor;
  boundary.dew_celsius = problem.head.dew_celsius;
  boundary.film_watts_per_m2_kelvin = problem.head.film_watts_per_m2_kelvin;
  boundary.flux_cap_watts_per_m2 = problem.head.flux_cap_watts_per_m2;
  boundary.forced_gas_metres_per_second = problem.head.forced_gas_metres_per_second;
  boundary.air_celsius = problem.air.celsius;
  boundary.air_film_watts_per_m2_kelvin = problem.air.film_watts_per_m2_kelvin;
  boundary.air_relative_humidity = problem.air.relative_humidity;
  return boundary;
}

MarchFault march_pass(const PassProblem& problem, std::span<const GridCell> grid,
                      const Resolution& resolution, int refine, bool diagnostics, PassHistory& history) {
  March march(problem.stack, grid, problem.vapour_efficiency, problem.pressure_pascal, problem.start_celsius,
              problem.start_activity);
  march.keep_diagnostics(diagnostics);
  march.set_largest_mismatch(resolution.largest_mismatch_kelvin);
  const double start_vapour = diagnostics ? march.pore_vapour_kilograms_per_m2() : 0;
  history = PassHistory{};
  history.most_parts = refine;
  history.celsius.resize(problem.depths_metres.size());
  history.highest_celsius = problem.start_celsius;
  double now = 0;
  const auto record = [&] {
    history.seconds.push_back(now);
    history.surface_celsius.push_back(march.surface_celsius());
    for (std::size_t d = 0; d < problem.depths_metres.size(); ++d) {
      history.celsius[d].push_back(march.temperature_at(problem.depths_metres[d]));
    }
  };
  const auto truncate = [&](std::size_t size) {
    history.seconds.resize(size);
    history.surface_celsius.resize(size);
    for (auto& row : history.celsius) row.resize(size);
  };
  record();
  int parts = refine;
  const int most_parts = refine * k_most_parts_per_step;
  for (const Phase& phase : phases_of(problem)) {
    history.phase_starts.push_back(history.seconds.size() - 1);
    march.set_boundary(boundary_of(problem, phase.kind));
    const Schedule schedule = schedule_of(problem, phase.kind);
    double step = first_step_seconds(schedule, phase.seconds);
    const double begin = now;
    double elapsed = 0;
    for (int block = 0; block < schedule.blocks; ++block, step *= schedule.ratio) {
      for (int i = 0; i < schedule.steps; ++i) {
        // One step of the schedule in `parts` equal parts; after a fault again in more parts, from where it
        // began.
        const March before = march;
        const std::size_t recorded = history.seconds.size();
        for (;; parts *= 2) {
          for (int part = 0; part < parts && march.fault() == MarchFault::none; ++part) {
            march.step(step / parts);
            now = begin + elapsed + step * (part + 1) / parts;
            record();
          }
          if (march.fault() == MarchFault::none) break;
          if (parts >= most_parts) return march.fault();
          march = before;
          truncate(recorded);
        }
        elapsed += step;
        history.most_parts = std::max(history.most_parts, parts);
        if (parts > refine) parts /= 2;
      }
      if (phase.kind != PhaseKind::gap) {
        history.highest_celsius = std::max(history.highest_celsius, march.highest_celsius());
      }
      if (phase.kind == PhaseKind::air && march.highest_celsius() < resolution.stop_below_celsius) break;
    }
    if (phase.kind == PhaseKind::cover) {
      history.water_gain_at_cover_end_kilograms_per_m2 = march.water_gain_kilograms_per_m2();
    }
    if (phase.kind == PhaseKind::cover || phase.kind == PhaseKind::last_skirt) {
      history.liftoff_seconds = now;
      history.water_gain_at_liftoff_kilograms_per_m2 = march.water_gain_kilograms_per_m2();
      if (diagnostics) {
        history.pore_vapour_gain_at_liftoff_kilograms_per_m2 =
            march.pore_vapour_kilograms_per_m2() - start_vapour;
      }
    }
  }
  history.ledger = march.ledger();
  history.activity_excess = march.activity_excess();
  history.branches = march.branch_hash() ^ static_cast<std::uint64_t>(history.most_parts);
  return MarchFault::none;
}

const char* words(MarchFault fault) {
  switch (fault) {
    case MarchFault::not_finite:
      return to_say("the solution became infinite");
    case MarchFault::water_below_zero:
      return to_say("the water of a cell fell below zero");
    case MarchFault::temperature_out_of_range:
      return to_say("a temperature left the range that start and steam allow");
    case MarchFault::step_too_long:
      return to_say("a step changed the state by more than its linearisation can follow");
    case MarchFault::none:
      break;
  }
  return to_say("no fault");
}

}  // namespace

double boiling_celsius(double pressure_pascal) {
  double celsius = 97;
  double step = 1;
  for (int i = 0; i < 12 && std::fabs(step) > k_found_kelvin; ++i) {
    const SaturationPoint point = saturation_fit(celsius);
    step = numerics::log(pressure_pascal / point.pressure_pascal) * point.pressure_pascal /
           point.slope_pascal_per_kelvin;
    celsius += step;
  }
  return celsius;
}

Result<PassHistory> run_pass(const PassProblem& problem, const Resolution& resolution, bool diagnostics) {
  if (auto checked = check(problem); !checked) return refuse(checked.error());
  const std::vector<GridCell> grid = make_grid(problem.stack, problem.depths_metres, resolution.cells);
  PassHistory history;
  MarchFault fault = MarchFault::none;
  int refine = resolution.refine;
  for (int redo = 0; redo <= resolution.most_redos; ++redo, refine *= 2) {
    fault = march_pass(problem, grid, resolution, refine, diagnostics, history);
    if (fault == MarchFault::none) return history;
  }
  return refuse({ErrorKind::out_of_domain,
                 say("no stable solution of this pass was found with steps down to 1/{} of the usual: {}",
                     refine / 2 * k_most_parts_per_step, in_language(words(fault))),
                 "", "", "", ""});
}

}  // namespace lastegg::steam
