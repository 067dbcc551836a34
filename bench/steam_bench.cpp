// How fast and how right the steam engine is: errors first, then times as ratios within one run. Usage:
// steam_bench
// [--quick]. Exits 1 when an error gate or a floor is missed. See bench/README.md.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>
#include <string>
#include <thread>
#include <vector>

#include "bench/cvode_pass.h"
#include "physics/numerics/elementary.h"
#include "physics/uncertainty/sobol.h"
#include "treatments/steam/kill.h"
#include "treatments/steam/lane_pass.h"
#include "treatments/steam/pace.h"
#include "treatments/steam/steamers_for_tests.h"

namespace lastegg::bench {
namespace {

using namespace lastegg::steam;

constexpr double k_least_log10_ratio = -2, k_most_log10_ratio = 2.5;  // beyond them no verdict is near
constexpr int k_rounds = 5;
constexpr double k_fine_tolerance = 1e-6;
constexpr int k_fine_cells = 192;

double seconds_of(const std::function<void()>& work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

double quantile(std::vector<double> values, double share) {
  std::sort(values.begin(), values.end());
  return values[std::min(values.size() - 1,
                         static_cast<std::size_t>(share * static_cast<double>(values.size())))];
}

struct Case {
  DrawnPasses drawn;
  std::vector<double> peak, egg;  // of the fine solution
};

std::vector<Case> cases(int count) {
  std::vector<Case> out;
  for (const NamedProblem& named : problems_for_tests()) {
    Case one{drawn_passes(named, count, 0), {}, {}};
    for (const LanePass& pass : one.drawn.passes) {
      const Series fine =
          cvode_pass(lane_problem(one.drawn.batch, pass), {k_fine_cells, k_fine_tolerance, 38});
      one.peak.push_back(fine.seconds.empty() ? std::nan("") : peak_of(fine).celsius);
      one.egg.push_back(fine.seconds.empty() ? std::nan("") : kill_of(fine).egg);
    }
    out.push_back(std::move(one));
  }
  return out;
}

struct Method {
  std::string name;
  std::function<void(const Case&, std::vector<double>& peak, std::vector<double>& egg)> run;
  std::vector<double> peak_error, dose_error, seconds{};
  int lost = 0;
  double seconds_median() const { return quantile(seconds, 0.5); }
};

Method cvode(double tolerance) {
  return {fmt::format("CVODE, 32 cells, rtol {:g}", tolerance),
          [tolerance](const Case& one, std::vector<double>& peak, std::vector<double>& egg) {
            for (const LanePass& pass : one.drawn.passes) {
              const Series series = cvode_pass(lane_problem(one.drawn.batch, pass),
                                               {32, tolerance, one.drawn.batch.stop_below_celsius});
              peak.push_back(series.seconds.empty() ? std::nan("") : peak_of(series).celsius);
              egg.push_back(series.seconds.empty() ? std::nan("") : kill_of(series).egg);
            }
          },
          {},
          {},
          {},
          0};
}

Method scalar() {
  return {"reference, scalar double, usual steps",
          [](const Case& one, std::vector<double>& peak, std::vector<double>& egg) {
            Series series;
            for (const LanePass& pass : one.drawn.passes) {
              const auto history = run_pass(lane_problem(one.drawn.batch, pass),
                                            {.cells = lane_cells(LaneAccuracy::usual),
                                             .stop_below_celsius = one.drawn.batch.stop_below_celsius,
                                             .largest_mismatch_kelvin = 1});
              fine_series(*history, history->celsius[0], 1.5, series);
              peak.push_back(peak_of(series).celsius);
              egg.push_back(kill_of(series).egg);
            }
          },
          {},
          {},
          {},
          0};
}

Method lanes(LaneAccuracy accuracy, const WideKernel& kernel) {
  return {fmt::format("{} lanes, {}", kernel.lanes,
                      accuracy == LaneAccuracy::preview ? "preview" : "usual steps"),
          [accuracy, kernel](const Case& one, std::vector<double>& peak, std::vector<double>& egg) {
            const auto answers = run_passes(one.drawn.batch, one.drawn.passes, accuracy, kernel.run);
            for (const LaneAnswer& answer : *answers) {
              peak.push_back(answer.target_peak_celsius);
              egg.push_back(answer.kill.egg);
            }
          },
          {},
          {},
          {},
          0};
}

std::vector<Method> measure(const std::vector<Case>& all) {
  std::vector<Method> methods{cvode(1e-2), cvode(3e-3), cvode(1e-3), scalar()};
  for (const WideKernel& kernel : kernels_here())
    for (const LaneAccuracy accuracy : {LaneAccuracy::usual, LaneAccuracy::preview})
      methods.push_back(lanes(accuracy, kernel));
  for (int round = 0; round < k_rounds; ++round) {
    for (Method& method : methods) {
      std::vector<std::vector<double>> peak(all.size()), egg(all.size());
      method.seconds.push_back(seconds_of([&] {
        for (std::size_t c = 0; c < all.size(); ++c) method.run(all[c], peak[c], egg[c]);
      }));
      if (round > 0) continue;
      for (std::size_t c = 0; c < all.size(); ++c) {
        for (std::size_t i = 0; i < all[c].peak.size(); ++i) {
          if (std::isnan(all[c].peak[i])) continue;
          if (std::isnan(peak[c][i])) {
            ++method.lost;
            continue;
          }
          method.peak_error.push_back(std::fabs(peak[c][i] - all[c].peak[i]));
          if (all[c].egg[i] > k_least_log10_ratio && all[c].egg[i] < k_most_log10_ratio)
            method.dose_error.push_back(std::fabs(std::max(egg[c][i], k_least_log10_ratio) - all[c].egg[i]));
        }
      }
    }
  }
  return methods;
}

bool gate(const char* what, double value, double limit, bool at_least) {
  const bool good = at_least ? value >= limit : value <= limit;
  std::printf("  %-66s %8.3g  %s %g: %s\n", what, value, at_least ? "at least" : "at most", limit,
              good ? "held" : "MISSED");
  return good;
}

PaceProblem edge(int index, int samples) {
  const UncertainLayer tick{{0.0008, 480e3, 0.055, true, 0.68, 2.0, 2.0}, 0.2, 0.1, 0.1};
  const UncertainLayer fold{{0.0024, 480e3, 0.055, true, 0.68, 2.0, 2.0}, 0.2, 0.1, 0.1};
  const UncertainLayer batting{{0.009, 19.5e3, 0.04, true, 0.985, 1.05, 0.074}, 0.2, 0.1, 0.1};
  const UncertainLayer foam{{0.03, 45e3, 0.04, true, 0.97, 1.3, 0.55}, 0, 0.1, 0.1};
  const std::string key = std::to_string(index);
  PaceProblem p;
  p.calibration = prior_calibration("head|bench", "cloth|" + key, Towel::none, 0.08, 101325, samples);
  p.cloth_key = "cloth|" + key;
  p.stack_key = "stack|" + key;
  const int kind = index % 3;
  p.stack = kind == 0   ? std::vector{fold, foam}
            : kind == 1 ? std::vector{tick, batting, foam}
                        : std::vector{tick, foam};
  p.target_depth_metres = kind == 0 ? 0.0015 : kind == 1 ? 0.004 : 0.0009;
  p.harm.wetting_kilograms_per_m2 = 0.1;
  p.harm.surface_celsius = 90;
  p.harm.seconds_allowed_above = 5;
  return p;
}

double home_seconds(int edges, int samples, unsigned threads) {
  return seconds_of([&] {
    std::vector<std::thread> workers;
    for (unsigned t = 0; t < threads; ++t) {
      workers.emplace_back([=] {
        for (int i = static_cast<int>(t); i < edges; i += static_cast<int>(threads))
          if (!sample_limits(edge(i, samples), Marched::those_near_the_window)) std::abort();
      });
    }
    for (std::thread& worker : workers) worker.join();
  });
}

int run(bool quick) {
  bool held = true;
  const std::vector<Case> all = cases(quick ? 16 : 64);
  const std::vector<Method> methods = measure(all);
  const double passes = static_cast<double>(all.size() * all.front().drawn.passes.size());
  std::printf("One pass, six stacks of %zu steamers; errors against CVODE with %d cells, rtol %g\n",
              all.front().drawn.passes.size(), k_fine_cells, k_fine_tolerance);
  std::printf("  %-40s %9s %9s %9s %9s %9s %6s\n", "", "us/pass", "K p95", "lg p95", "lg max", "ratio",
              "lost");
  const Method* rival = nullptr;
  const Method* plain = &methods[3];
  for (const Method& method : methods) {
    const bool meets = quantile(method.dose_error, 0.95) <= 0.05 && quantile(method.peak_error, 0.95) <= 0.35;
    if (method.name.starts_with("CVODE") && meets &&
        (rival == nullptr || method.seconds_median() < rival->seconds_median()))
      rival = &method;
  }
  if (rival == nullptr) rival = &methods[2];
  for (const Method& method : methods) {
    std::printf("  %-40s %9.1f %9.3f %9.4f %9.3f %9.1f %6d\n", method.name.c_str(),
                1e6 * method.seconds_median() / passes, quantile(method.peak_error, 0.95),
                quantile(method.dose_error, 0.95), quantile(method.dose_error, 1),
                rival->seconds_median() / method.seconds_median(), method.lost);
  }
  std::printf("  ratio: against %s, the fastest CVODE within 0.05 and 0.35 K\n", rival->name.c_str());
  const Method& preview = methods.back();
  const Method& usual = methods[methods.size() - 2];
  held &= gate("usual steps, peak error p95, K", quantile(usual.peak_error, 0.95), 0.15, false);
  held &= gate("usual steps, log10 dose error p95", quantile(usual.dose_error, 0.95), 0.03, false);
  held &= gate("usual steps, largest log10 dose error", quantile(usual.dose_error, 1), 0.08, false);
  held &= gate("preview, peak error p95, K", quantile(preview.peak_error, 0.95), 0.35, false);
  held &= gate("preview, log10 dose error p95", quantile(preview.dose_error, 0.95), 0.05, false);
  const bool wide = kernels_here().back().lanes == 16;
  held &=
      gate("preview against CVODE", rival->seconds_median() / preview.seconds_median(), wide ? 70 : 35, true);
  held &= gate("usual steps against the scalar reference", plain->seconds_median() / usual.seconds_median(),
               wide ? 8 : 4, true);

  const int samples = quick ? 512 : 4096, edges = quick ? 6 : 60;
  const double one = home_seconds(edges, samples, 1), two = home_seconds(edges, samples, 2);
  std::printf(
      "Fastest and slowest pace: %d edges x %d samples, %.2f s on one core, %.2f s on two; %.1f us a sample "
      "and core\n",
      edges, samples, one, two, 1e6 * one / (edges * samples));
  std::printf("  a root search of six CVODE passes would take %.0f times as long\n",
              6 * rival->seconds_median() / passes / (one / (edges * samples)));
  held &= gate("home plan of 60 edges x 4096 samples on two cores, s",
               two * (60.0 * 4096) / (edges * samples), 6, false);
  return held ? 0 : 1;
}

}  // namespace
}  // namespace lastegg::bench

int main(int count, char** words) {
  return lastegg::bench::run(count > 1 && std::string(words[1]) == "--quick");
}
