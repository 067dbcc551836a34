// SUNDIALS CVODE (BDF, Newton with a banded difference-quotient Jacobian) behind one function, and what tests
// of a pass measure on its output. For tests only.
#pragma once

#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <functional>
#include <span>
#include <vector>

#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg::steam {

/// dy/dt of a state; false asks for a smaller step.
using Rate = std::function<bool(std::span<const double> state, std::span<double> rate)>;
/// Called with the time since the phase's start, in order.
using Observer = std::function<void(double seconds, std::span<const double> state)>;

inline std::span<double> values_of(N_Vector v) {
  return {N_VGetArrayPointer(v), static_cast<std::size_t>(N_VGetLength(v))};
}

/// Integrates one phase and leaves the end in `state`; every step is observed at four of its points. False:
/// the library gave up.
inline bool integrate_phase(std::vector<double>& state, double seconds, const Rate& rate, int half_bandwidth,
                            double relative_tolerance, std::span<const double> absolute_tolerances,
                            const Observer& observe) {
  SUNContext context = nullptr;
  if (SUNContext_Create(nullptr, &context) != 0) return false;
  const auto n = static_cast<sunindextype>(state.size());
  N_Vector y = N_VNew_Serial(n, context);
  N_Vector at = N_VNew_Serial(n, context);
  N_Vector tolerance = N_VNew_Serial(n, context);
  std::copy(state.begin(), state.end(), values_of(y).begin());
  std::copy(absolute_tolerances.begin(), absolute_tolerances.end(), values_of(tolerance).begin());
  void* cvode = CVodeCreate(CV_BDF, context);
  const CVRhsFn call = [](realtype, N_Vector from, N_Vector to, void* user) {
    return (*static_cast<const Rate*>(user))(values_of(from), values_of(to)) ? 0 : 1;
  };
  SUNMatrix matrix = SUNBandMatrix(n, half_bandwidth, half_bandwidth, context);
  SUNLinearSolver solver = SUNLinSol_Band(y, matrix, context);
  bool good = CVodeInit(cvode, call, 0.0, y) == CV_SUCCESS &&
              CVodeSVtolerances(cvode, relative_tolerance, tolerance) == CV_SUCCESS &&
              CVodeSetUserData(cvode, const_cast<Rate*>(&rate)) == CV_SUCCESS &&
              CVodeSetLinearSolver(cvode, solver, matrix) == CV_SUCCESS &&
              CVodeSetMaxNumSteps(cvode, -1) == CV_SUCCESS && CVodeSetStopTime(cvode, seconds) == CV_SUCCESS;
  // The library writes why it gives up to stderr; a test then fails by itself.
  double now = 0;
  for (long steps = 0; good && now < seconds; ++steps) {
    const double before = now;
    const int result = CVode(cvode, seconds, y, &now, CV_ONE_STEP);
    good = (result == CV_SUCCESS || result == CV_TSTOP_RETURN) && steps < 2'000'000;
    for (int part = 1; good && part <= 4; ++part) {
      const double t = part == 4 ? now : before + (now - before) * part / 4;
      good = part == 4 || CVodeGetDky(cvode, t, 0, at) == CV_SUCCESS;
      if (good) observe(t, values_of(part == 4 ? y : at));
    }
  }
  std::copy(values_of(y).begin(), values_of(y).end(), state.begin());
  CVodeFree(&cvode);
  SUNLinSolFree(solver);
  SUNMatDestroy(matrix);
  N_VDestroy(y);
  N_VDestroy(at);
  N_VDestroy(tolerance);
  SUNContext_Free(&context);
  return good;
}

/// A phase of a pass as the equations see it: steam at a factor, or room air.
struct SteamPhase {
  double seconds;
  double factor;  ///< 0: room air
};

inline std::vector<SteamPhase> steam_phases(const PassProblem& problem) {
  const double skirt = problem.head.skirt_length_metres / problem.pace_metres_per_second;
  const double cover = problem.head.length_metres / problem.pace_metres_per_second;
  std::vector<SteamPhase> phases;
  for (int pass = 0; pass < problem.passes; ++pass) {
    if (pass > 0) phases.push_back({problem.gap_seconds, 0});
    phases.push_back({skirt, problem.head.skirt_factor});
    phases.push_back({cover, 1});
    phases.push_back({skirt, problem.head.skirt_factor});
  }
  phases.push_back({problem.observe_seconds, 0});
  return phases;
}

/// Peak and log10 of the plain dose (minutes at 48 C, z = 4 K, over 71.5) of one place.
struct PlaceSummary {
  double peak_celsius;
  double log10_dose;
};

inline PlaceSummary summary_of(const Series& series) {
  double seconds = 0;
  for (std::size_t i = 1; i < series.seconds.size(); ++i) {
    const double a = std::log(10.0) * (series.celsius[i - 1] - 48) / 4;
    const double b = std::log(10.0) * (series.celsius[i] - 48) / 4;
    const double mean =
        std::fabs(b - a) < 1e-6 ? std::exp(0.5 * (a + b)) : (std::exp(b) - std::exp(a)) / (b - a);
    seconds += mean * (series.seconds[i] - series.seconds[i - 1]);
  }
  return {peak_of(series).celsius, std::log10(seconds / 60 / 71.5)};
}

inline std::vector<PlaceSummary> summaries_of(const PassHistory& history) {
  std::vector<PlaceSummary> summaries;
  for (const auto& celsius : history.celsius) {
    Series series;
    fine_series(history, celsius, 0.1, series);
    summaries.push_back(summary_of(series));
  }
  return summaries;
}

}  // namespace lastegg::steam
