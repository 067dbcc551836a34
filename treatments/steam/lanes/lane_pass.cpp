#include "treatments/steam/lanes/lane_pass.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <string>

#include "physics/numerics/elementary.h"
#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/schedule.h"

namespace lastegg::steam {
namespace {

constexpr int k_usual_cells = 68, k_preview_cells = 35;
constexpr int k_finest_refine = 2;             // in the lanes; what faults there too is for the reference
constexpr double k_same_depth_metres = 10e-6;  // a thinner layer would cost digits
constexpr int k_most_phases_of_a_pass = 4;
constexpr std::size_t k_most_together = 16 * k_pack;  // passes for which there is memory at a time
static_assert(k_schedule_rows == k_pack_rows);
constexpr double k_series_step_kelvin = 1.0;
constexpr float k_largest_mismatch = 1.0f;  // kelvin
constexpr int k_most_halvings =
    5;  // of a step; a pass that needs more is marched anew with finer steps throughout

// Pieces of a step when the dose is summed: none spans more than about two kelvin in the usual schedule.
constexpr int k_skirt_pieces = 3, k_cover_pieces = 8, k_air_pieces = 6;

PackDose pack_dose() {
  using namespace bugs;
  const KillLaw& egg = kill_law(Stage::egg, Exposure::steam);
  const KillLaw& adult = kill_law(Stage::adult, Exposure::steam);
  PackDose dose;
  dose.lag_seconds = {static_cast<float>(egg.body_lag_seconds), static_cast<float>(adult.body_lag_seconds),
                      static_cast<float>(kill_rules().engorged_lag_seconds)};
  for (std::size_t z = 0; z < 2; ++z) dose.inverse_z[z] = static_cast<float>(1 / egg.z_kelvin[z]);
  dose.onset_celsius = static_cast<float>(egg.onset_celsius);
  dose.cap_celsius = static_cast<float>(egg.cap_celsius);
  return dose;
}

// log10 R at the worse end of z from seconds at the cap.
double log10_ratio_of(const std::array<std::array<Pack, 2>, k_pack_bodies>& cap_seconds, std::size_t body,
                      std::size_t lane, const bugs::KillLaw& law) {
  double worst = 1e9;
  for (std::size_t z = 0; z < 2; ++z) {
    const double seconds = static_cast<double>(cap_seconds[body][z][lane]);
    if (!(seconds > 0)) return k_no_kill;
    worst = std::min(worst, numerics::log10(seconds / (60 * law.lt99_minutes)) +
                                (law.cap_celsius - law.reference_celsius) / law.z_kelvin[z]);
  }
  return std::max(k_no_kill, worst);
}

// Passes that may share a pack: the same layers as to vapour, the target in the same one.
std::string key_of(const Stack& split, std::size_t target_layer) {
  std::string key;
  for (const Layer& layer : split) key += layer.permeable ? 'p' : 'i';
  return key + std::to_string(target_layer);
}

// A stack with a border at the target, and the layer that begins there.
struct Split {
  Stack stack;
  std::size_t target_layer = 0;
};
Split split_at(const Stack& stack, double depth) {
  Split out;
  double top = 0;
  bool found = depth < k_same_depth_metres;
  for (const Layer& layer : stack) {
    const double bottom = top + layer.thickness_metres;
    if (!found && depth < bottom - k_same_depth_metres && depth > top + k_same_depth_metres) {
      Layer upper = layer, lower = layer;
      upper.thickness_metres = depth - top;
      lower.thickness_metres = bottom - depth;
      out.stack.push_back(upper);
      out.target_layer = out.stack.size();
      out.stack.push_back(lower);
      found = true;
    } else {
      if (!found && depth <= top + k_same_depth_metres) {
        out.target_layer = out.stack.size();
        found = true;
      }
      out.stack.push_back(layer);
    }
    top = bottom;
  }
  if (!found) out.target_layer = out.stack.size();
  return out;
}

// Depth of the border that stands for the target.
double border_depth(const Split& split) {
  double depth = 0;
  for (std::size_t i = 0; i < split.target_layer; ++i) depth += split.stack[i].thickness_metres;
  return depth;
}

std::vector<GridCell> grid_of(const Split& split, int cells) {
  const std::vector<double> depths{border_depth(split)};
  return make_grid(split.stack, depths, cells);
}

PackShape shape_of(const Split& split, int cells) {
  PackShape shape;
  shape.layers = static_cast<int>(split.stack.size());
  for (std::size_t i = 0; i < split.stack.size(); ++i) shape.permeable[i] = split.stack[i].permeable;
  const std::vector<GridCell> grid = grid_of(split, cells);
  shape.cells = static_cast<int>(grid.size());
  shape.target_cell = shape.cells;
  for (std::size_t i = 0; i < grid.size(); ++i) {
    shape.layer_of_cell[i] = static_cast<int>(grid[i].layer);
    shape.share_of_layer[i] =
        static_cast<float>(grid[i].thickness_metres / split.stack[grid[i].layer].thickness_metres);
    if (grid[i].layer >= split.target_layer)
      shape.target_cell = std::min(shape.target_cell, static_cast<int>(i));
  }
  return shape;
}

PackPhasePlan phase_plan(PackPhase phase, const ScheduleRows& rows, Schedule Schedules::* schedule,
                         int refine) {
  PackPhasePlan plan;
  plan.phase = phase;
  for (std::size_t row = 0; row < rows.size(); ++row) {
    const Schedule& base = rows[row].*schedule;
    plan.rows[row] = {base.blocks, base.steps * refine, static_cast<float>(base.ratio)};
  }
  const int pieces = phase == PackPhase::cover   ? k_cover_pieces
                     : phase == PackPhase::skirt ? k_skirt_pieces
                                                 : k_air_pieces;
  plan.pieces = std::max(1, pieces / refine);
  plan.watched = phase != PackPhase::gap;
  return plan;
}

PackPlan plan_of(const LaneBatch& batch, LaneAccuracy accuracy, int refine) {
  const bool preview = accuracy == LaneAccuracy::preview;
  const ScheduleRows& rows = preview ? k_preview_schedules : k_usual_schedules;
  PackPlan plan;
  plan.dose = pack_dose();
  plan.stop_below_celsius = static_cast<float>(batch.stop_below_celsius);
  plan.largest_mismatch_kelvin = k_largest_mismatch;
  plan.most_halvings = k_most_halvings;
  const auto add = [&](PackPhase phase, Schedule Schedules::* schedule) {
    plan.phases[static_cast<std::size_t>(plan.phase_count++)] = phase_plan(phase, rows, schedule, refine);
  };
  for (int pass = 0; pass < batch.passes; ++pass) {
    if (pass > 0) add(PackPhase::gap, &Schedules::gap);
    add(PackPhase::skirt, &Schedules::skirt);
    add(PackPhase::cover, &Schedules::cover);
    add(PackPhase::skirt, &Schedules::skirt);
  }
  add(PackPhase::air, &Schedules::air);
  return plan;
}

void fill_lane(const LaneBatch& batch, const ReadyPass& ready, double pace, const PackPlan& plan,
               std::size_t lane, PackInput& input) {
  const LanePass& pass = ready.pass;
  const auto put = [lane](Pack& pack, double value) { pack[lane] = static_cast<float>(value); };
  put(input.dew, pass.head.dew_celsius);
  put(input.film, pass.head.film_watts_per_m2_kelvin);
  put(input.flux_cap, pass.head.flux_cap_watts_per_m2);
  put(input.forced_gas, pass.head.forced_gas_metres_per_second);
  put(input.skirt_factor, pass.head.skirt_factor);
  put(input.vapour_efficiency, pass.vapour_efficiency);
  put(input.pressure, batch.pressure_pascal);
  put(input.start, batch.start_celsius);
  put(input.start_activity, batch.start_activity);
  put(input.air_celsius, batch.air.celsius);
  put(input.air_film, batch.air.film_watts_per_m2_kelvin);
  put(input.air_humidity, batch.air.relative_humidity);
  put(input.highest_allowed, ready.highest_allowed_celsius);
  put(input.probe_lag, batch.probe_time_constant_seconds);
  put(input.target_offset, ready.target_offset_metres);
  put(input.surface_limit, batch.surface_limit_celsius.value_or(1000));
  const Stack& split = ready.split;
  for (std::size_t i = 0; i < split.size(); ++i) {
    PackLayer& layer = input.layers[i];
    put(layer.thickness, split[i].thickness_metres);
    put(layer.capacity, split[i].heat_capacity_joules_per_m3_kelvin);
    put(layer.conductivity, split[i].conductivity_watts_per_metre_kelvin);
    put(layer.porosity, split[i].porosity);
    put(layer.openness, split[i].permeable ? split[i].porosity / split[i].tortuosity : 1);
    put(layer.sorption, split[i].sorption_scale_kilograms_per_m3);
  }
  for (std::size_t p = 0; p < static_cast<std::size_t>(plan.phase_count); ++p) {
    const PackPhase phase = plan.phases[p].phase;
    const double seconds = phase == PackPhase::skirt   ? pass.head.skirt_length_metres / pace
                           : phase == PackPhase::cover ? pass.head.length_metres / pace
                           : phase == PackPhase::gap   ? batch.gap_seconds
                                                       : batch.observe_seconds;
    put(input.phase_seconds[p], seconds);
  }
  input.row[lane] = static_cast<std::int32_t>(schedule_row(pass.head.length_metres / pace));
}

LaneAnswer answer_of(const PackOutput& output, std::size_t lane, int refine) {
  using namespace bugs;
  const KillLaw& adult = kill_law(Stage::adult, Exposure::steam);
  const KillLaw& nymph = kill_law(Stage::nymph, Exposure::steam);
  LaneAnswer answer;
  answer.kill.egg = log10_ratio_of(output.cap_seconds, 0, lane, kill_law(Stage::egg, Exposure::steam));
  answer.kill.mobile = std::min(log10_ratio_of(output.cap_seconds, 1, lane, nymph),
                                log10_ratio_of(output.cap_seconds, 1, lane, adult));
  answer.kill.engorged = log10_ratio_of(output.cap_seconds, 2, lane, adult);
  answer.target_peak_celsius = static_cast<double>(output.target_peak[lane]);
  answer.probe_peak_celsius = static_cast<double>(output.probe_peak[lane]);
  answer.surface_peak_celsius = static_cast<double>(output.surface_peak[lane]);
  answer.surface_seconds_above = static_cast<double>(output.surface_seconds_above[lane]);
  answer.water_gain_kilograms_per_m2 = static_cast<double>(output.water_gain[lane]);
  answer.steps_were_cut = refine > 1 || output.cut[lane];
  return answer;
}

PassProblem problem_of(const LaneBatch& batch, const LanePass& pass) {
  PassProblem problem;
  problem.head = pass.head;
  problem.pace_metres_per_second = pass.pace_metres_per_second;
  problem.stack = *pass.stack;
  problem.vapour_efficiency = pass.vapour_efficiency;
  problem.pressure_pascal = batch.pressure_pascal;
  problem.start_celsius = batch.start_celsius;
  problem.start_activity = batch.start_activity;
  problem.air = batch.air;
  problem.passes = batch.passes;
  problem.gap_seconds = batch.gap_seconds;
  problem.observe_seconds = batch.observe_seconds;
  problem.depths_metres = {pass.target_depth_metres};
  return problem;
}

Result<LaneAnswer> answer_by_reference(const LaneBatch& batch, const LanePass& pass) {
  const auto history = run_pass(problem_of(batch, pass),
                                {.cells = k_usual_cells, .stop_below_celsius = batch.stop_below_celsius});
  if (!history) return refuse(history.error());
  LaneAnswer answer;
  Series series;
  fine_series(*history, history->celsius[0], k_series_step_kelvin, series);
  answer.kill = kill_of(series);
  answer.target_peak_celsius = peak_of(series).celsius;
  answer.probe_peak_celsius = lagged_peak(series, batch.probe_time_constant_seconds).celsius;
  fine_series(*history, history->surface_celsius, k_series_step_kelvin, series);
  answer.surface_peak_celsius = peak_of(series).celsius;
  if (batch.surface_limit_celsius)
    answer.surface_seconds_above = seconds_above(series, *batch.surface_limit_celsius);
  answer.water_gain_kilograms_per_m2 = history->water_gain_at_liftoff_kilograms_per_m2;
  answer.steps_were_cut = history->most_parts > 1;
  return answer;
}

}  // namespace

Result<ReadyPasses> ReadyPasses::of(const LaneBatch& batch, std::span<const LanePass> passes) {
  ReadyPasses ready;
  ready.passes_.reserve(passes.size());
  std::map<std::string, std::size_t> known;
  for (const LanePass& pass : passes) {
    if (auto checked = check(problem_of(batch, pass)); !checked) return refuse(checked.error());
    Split split = split_at(*pass.stack, pass.target_depth_metres);
    const auto [entry, is_new] =
        known.try_emplace(key_of(split.stack, split.target_layer), ready.groups_.size());
    if (is_new) {
      const bool fits = split.stack.size() <= k_most_pack_layers &&
                        static_cast<int>(grid_of(split, k_usual_cells).size()) <= k_most_pack_cells;
      ready.groups_.push_back(fits ? Group{shape_of(split, k_usual_cells), shape_of(split, k_preview_cells)}
                                   : Group{{}, {}, false});
    }
    const double offset = pass.target_depth_metres - border_depth(split);
    ready.passes_.push_back({pass, std::move(split.stack), offset,
                             highest_allowed_celsius(pass.head.dew_celsius, batch.start_celsius,
                                                     batch.air.celsius, batch.start_activity),
                             entry->second});
  }
  return ready;
}

Result<std::vector<LaneAnswer>> ReadyPasses::run(const LaneBatch& batch, std::span<const std::size_t> which,
                                                 std::span<const double> paces, LaneAccuracy accuracy,
                                                 PackKernel kernel) const {
  std::vector<LaneAnswer> answers(which.size());
  std::vector<std::vector<std::size_t>> members(groups_.size());
  for (std::size_t i = 0; i < which.size(); ++i) members[passes_[which[i]].group].push_back(i);
  for (std::size_t group = 0; group < groups_.size(); ++group) {
    const Asked asked{batch, which, paces, accuracy, kernel};
    for (const std::size_t i : march(asked, groups_[group], std::move(members[group]), answers)) {
      LanePass pass = passes_[which[i]].pass;
      pass.pace_metres_per_second = paces[i];
      auto answer = answer_by_reference(batch, pass);
      if (!answer) return refuse(answer.error());
      answers[i] = *answer;
    }
  }
  return answers;
}

// Marches the waiting ones of a group; finer where a lane faults. What is left over is for the reference.
std::vector<std::size_t> ReadyPasses::march(const Asked& asked, const Group& group,
                                            std::vector<std::size_t> waiting,
                                            std::vector<LaneAnswer>& answers) const {
  if (!group.fits_lanes || asked.batch.passes * k_most_phases_of_a_pass > k_most_pack_phases) return waiting;
  const PackShape& shape = asked.accuracy == LaneAccuracy::preview ? group.preview : group.usual;
  std::vector<PackInput> inputs;
  std::vector<PackOutput> outputs;
  for (int refine = 1; refine <= k_finest_refine && !waiting.empty(); refine *= 2) {
    const PackPlan plan = plan_of(asked.batch, asked.accuracy, refine);
    std::vector<std::size_t> faulty;
    for (std::size_t first = 0; first < waiting.size(); first += k_most_together) {
      const std::size_t count = std::min<std::size_t>(k_most_together, waiting.size() - first);
      const std::size_t packs = (count + k_pack - 1) / k_pack;
      inputs.resize(packs);
      outputs.resize(packs);
      for (std::size_t k = 0; k < packs * k_pack;
           ++k) {  // places without a pass of their own repeat the last
        const std::size_t i = waiting[first + std::min(k, count - 1)];
        fill_lane(asked.batch, passes_[asked.which[i]], asked.paces[i], plan, k % k_pack, inputs[k / k_pack]);
      }
      asked.kernel(shape, plan, inputs, static_cast<int>(count), outputs);
      for (std::size_t k = 0; k < count; ++k) {
        const std::size_t i = waiting[first + k];
        const PackOutput& output = outputs[k / k_pack];
        if (output.faulty[k % k_pack])
          faulty.push_back(i);
        else
          answers[i] = answer_of(output, k % k_pack, refine);
      }
    }
    waiting = std::move(faulty);
  }
  return waiting;
}

Result<std::vector<LaneAnswer>> run_passes(const LaneBatch& batch, std::span<const LanePass> passes,
                                           LaneAccuracy accuracy, PackKernel kernel) {
  const auto ready = ReadyPasses::of(batch, passes);
  if (!ready) return refuse(ready.error());
  std::vector<std::size_t> which(passes.size());
  std::iota(which.begin(), which.end(), 0);
  std::vector<double> paces;
  paces.reserve(passes.size());
  for (const LanePass& pass : passes) paces.push_back(pass.pace_metres_per_second);
  return ready->run(batch, which, paces, accuracy, kernel);
}

PassProblem lane_problem(const LaneBatch& batch, const LanePass& pass) {
  PassProblem problem = problem_of(batch, pass);
  problem.stack = split_at(*pass.stack, pass.target_depth_metres).stack;
  return problem;
}

int lane_cells(LaneAccuracy accuracy) {
  return accuracy == LaneAccuracy::preview ? k_preview_cells : k_usual_cells;
}

}  // namespace lastegg::steam
