// Three fully specified passes against converged solutions of an independent discretisation of the same
// equations (other state, other grid, other time integrator, saturation pressure straight from IAPWS-IF97).
// They test the numerics and say nothing of the world: the material values are placeholders of realistic
// size.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <span>
#include <string>
#include <vector>

#include "treatments/steam/pass/exposure.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg::steam {
namespace {

// What display accuracy asks for; the stated uncertainty of each reference value comes on top.
constexpr double k_peak_tolerance_kelvin = 0.2;
constexpr double k_dose_tolerance_log10 = 0.04;
constexpr double k_water_tolerance_grams_per_m2 = 0.2;
constexpr double k_surface_tolerance_kelvin = 0.2;
// Times are printed to 0.01 s without an allowance of their own; tops are flat, so a time is asked less
// strictly.
constexpr double k_time_tolerance_seconds = 0.05;

// The plain dose of the reference: minutes at 48 C with z = 4 K, over 71.5 of them.
constexpr double k_dose_celsius = 48.0;
constexpr double k_dose_z_kelvin = 4.0;
constexpr double k_dose_minutes = 71.5;

struct ReferenceDepth {
  double depth_metres, peak_celsius, peak_seconds, peak_uncertainty_kelvin;
  double log10_dose_60_seconds, log10_dose_15_seconds, log10_dose_uncertainty;
};

struct ReferenceCase {
  std::string name;
  Stack stack;
  Head head;
  double pace_metres_per_second, vapour_efficiency, air_film_watts_per_m2_kelvin;
  std::vector<ReferenceDepth> depths;
  double gain_at_cover_end, gain_at_liftoff, pore_vapour_at_liftoff, condensate_at_liftoff;  // g/m2
  double water_uncertainty;                                                                  // g/m2
  double surface_celsius[4];  // at lift-off and 1, 3, 5 s later
  double surface_uncertainty_kelvin;
  double highest_minus_dew_kelvin;
};

constexpr double k_seconds_after_liftoff[4] = {0, 1, 3, 5};

// Layer: thickness, heat capacity, conductivity, permeable, porosity, tortuosity, sorption scale.
// Head: length, dew, film, cap, forced gas, skirt length, skirt factor. Everything starts at 22 C in a room
// of 22 C and 50 % relative humidity, permeable layers at activity 0.5, at 101325 Pa.
std::vector<ReferenceCase> reference_cases() {
  return {
      {"seat: fabric, batting, foam",
       {{0.0008, 480000, 0.055, true, 0.68, 2.0, 2.0},
        {0.008, 19500, 0.04, true, 0.985, 1.05, 0.074},
        {0.03, 45000, 0.04, true, 0.97, 1.3, 0.55}},
       {0.06, 95.5, 800, 65000, 0.004, 0.02, 0.25},
       0.03,
       0.65,
       10,
       {{0.0008, 84.276, 2.76, 0.005, 5.3228, 5.3228, 0.001},
        {0.003, 76.827, 3.41, 0.005, 3.4492, 3.4492, 0.001},
        {0.006, 64.067, 3.78, 0.005, 0.3532, 0.3532, 0.0012}},
       14.734,
       15.527,
       1.609,
       13.918,
       0.003,
       {86.833, 63.642, 50.657, 43.626},
       0.003,
       -5.17},
      {"vinyl on foam",
       {{0.001, 1680000, 0.14, false, 0, 1, 0}, {0.03, 45000, 0.04, true, 0.97, 1.3, 0.55}},
       {0.065, 96, 900, 65000, 0.003, 0.02, 0.25},
       0.012,
       0.6,
       12,
       {{0.0003, 75.021, 8.83, 0.005, 3.4824, 3.4824, 0.001},
        {0.0006, 69.46, 9.32, 0.005, 2.0411, 2.0411, 0.001},
        {0.001, 66.742, 10.35, 0.005, 1.4745, 1.4745, 0.001}},
       35.448,
       37.494,
       0.056,
       37.438,
       0.003,
       {81.928, 63.991, 56.162, 52.504},
       0.003,
       -7.828},
      {"softwood",
       {{0.015, 800000, 0.13, false, 0, 1, 0}},
       {0.065, 96, 900, 65000, 0.003, 0.02, 0.25},
       0.016,
       0.6,
       10,
       {{0.00025, 77.55, 5.36, 0.005, 3.8432, 3.8432, 0.001},
        {0.0005, 67.191, 5.68, 0.005, 1.4211, 1.4211, 0.001},
        {0.001, 52.652, 7.22, 0.005, -2.1498, -2.1498, 0.001}},
       22.026,
       23.569,
       0.0,
       23.569,
       0.003,
       {81.141, 58.24, 47.199, 41.81},
       0.003,
       -6.911},
  };
}

PassProblem problem_of(const ReferenceCase& reference, double observe_seconds) {
  PassProblem problem;
  problem.stack = reference.stack;
  problem.head = reference.head;
  problem.pace_metres_per_second = reference.pace_metres_per_second;
  problem.vapour_efficiency = reference.vapour_efficiency;
  problem.pressure_pascal = 101325;
  problem.start_celsius = 22;
  problem.start_activity = 0.5;
  problem.air = {reference.air_film_watts_per_m2_kelvin, 22, 0.5};
  problem.observe_seconds = observe_seconds;
  for (const ReferenceDepth& at : reference.depths) problem.depths_metres.push_back(at.depth_metres);
  return problem;
}

Series series_of(const PassHistory& history, std::span<const double> celsius) {
  Series series;
  fine_series(history, celsius, 0.1, series);
  return series;
}

// log10 of the dose; 10^((T-48)/4) is integrated exactly between the points of the series.
double log10_dose(const Series& series) {
  double seconds = 0;
  for (std::size_t i = 1; i < series.seconds.size(); ++i) {
    const double a = (series.celsius[i - 1] - k_dose_celsius) / k_dose_z_kelvin * std::log(10.0);
    const double b = (series.celsius[i] - k_dose_celsius) / k_dose_z_kelvin * std::log(10.0);
    const double mean =
        std::fabs(b - a) < 1e-6 ? std::exp(0.5 * (a + b)) : (std::exp(b) - std::exp(a)) / (b - a);
    seconds += mean * (series.seconds[i] - series.seconds[i - 1]);
  }
  return std::log10(seconds / 60.0 / k_dose_minutes);
}

double value_at(const Series& series, double seconds) {
  std::size_t i = 1;
  while (i + 1 < series.seconds.size() && series.seconds[i] < seconds) ++i;
  const double share = (seconds - series.seconds[i - 1]) / (series.seconds[i] - series.seconds[i - 1]);
  return series.celsius[i - 1] + share * (series.celsius[i] - series.celsius[i - 1]);
}

class PassReference : public testing::TestWithParam<std::size_t> {
 protected:
  // Keeps the deviation in the report, so that a later change shows what it did to the results.
  void note(const std::string& what, double deviation) { RecordProperty(what, std::to_string(deviation)); }
};

TEST_P(PassReference, PeaksTheirTimesAndDosesAtDepth) {
  const ReferenceCase reference = reference_cases()[GetParam()];
  const auto long_run = run_pass(problem_of(reference, 60), shown_resolution());
  const auto short_run = run_pass(problem_of(reference, 15), shown_resolution());
  ASSERT_TRUE(long_run) << long_run.error().message;
  ASSERT_TRUE(short_run) << short_run.error().message;
  for (std::size_t d = 0; d < reference.depths.size(); ++d) {
    const ReferenceDepth& expected = reference.depths[d];
    SCOPED_TRACE(reference.name + " at " + std::to_string(expected.depth_metres * 1e3) + " mm");
    const Series sixty = series_of(*long_run, long_run->celsius[d]);
    const Series fifteen = series_of(*short_run, short_run->celsius[d]);
    const Peak peak = peak_of(sixty);
    EXPECT_NEAR(peak.celsius, expected.peak_celsius,
                k_peak_tolerance_kelvin + expected.peak_uncertainty_kelvin);
    EXPECT_NEAR(peak_of(fifteen).celsius, expected.peak_celsius,
                k_peak_tolerance_kelvin + expected.peak_uncertainty_kelvin);
    EXPECT_NEAR(peak.seconds, expected.peak_seconds, k_time_tolerance_seconds + 0.005);
    EXPECT_NEAR(log10_dose(sixty), expected.log10_dose_60_seconds,
                k_dose_tolerance_log10 + expected.log10_dose_uncertainty);
    EXPECT_NEAR(log10_dose(fifteen), expected.log10_dose_15_seconds,
                k_dose_tolerance_log10 + expected.log10_dose_uncertainty);
    note("peak_kelvin_" + std::to_string(d), peak.celsius - expected.peak_celsius);
    note("peak_seconds_" + std::to_string(d), peak.seconds - expected.peak_seconds);
    note("log10_dose_60_" + std::to_string(d), log10_dose(sixty) - expected.log10_dose_60_seconds);
    note("log10_dose_15_" + std::to_string(d), log10_dose(fifteen) - expected.log10_dose_15_seconds);
  }
}

TEST_P(PassReference, WaterAtCoverEndAndLiftoff) {
  const ReferenceCase reference = reference_cases()[GetParam()];
  const auto history = run_pass(problem_of(reference, 60), shown_resolution(), true);
  ASSERT_TRUE(history) << history.error().message;
  SCOPED_TRACE(reference.name);
  const double tolerance = k_water_tolerance_grams_per_m2 + reference.water_uncertainty;
  const double cover = 1e3 * history->water_gain_at_cover_end_kilograms_per_m2;
  const double liftoff = 1e3 * history->water_gain_at_liftoff_kilograms_per_m2;
  const double vapour = 1e3 * history->pore_vapour_gain_at_liftoff_kilograms_per_m2;
  EXPECT_NEAR(cover, reference.gain_at_cover_end, tolerance);
  EXPECT_NEAR(liftoff, reference.gain_at_liftoff, tolerance);
  EXPECT_NEAR(vapour, reference.pore_vapour_at_liftoff, tolerance);
  EXPECT_NEAR(liftoff - vapour, reference.condensate_at_liftoff, tolerance);
  note("gain_at_cover_end", cover - reference.gain_at_cover_end);
  note("gain_at_liftoff", liftoff - reference.gain_at_liftoff);
  note("pore_vapour_at_liftoff", vapour - reference.pore_vapour_at_liftoff);
}

TEST_P(PassReference, SurfaceAfterLiftoffAndHighestTemperature) {
  const ReferenceCase reference = reference_cases()[GetParam()];
  const auto history = run_pass(problem_of(reference, 60), shown_resolution());
  ASSERT_TRUE(history) << history.error().message;
  SCOPED_TRACE(reference.name);
  const double tolerance = k_surface_tolerance_kelvin + reference.surface_uncertainty_kelvin;
  EXPECT_NEAR(history->liftoff_seconds,
              (reference.head.length_metres + 2 * reference.head.skirt_length_metres) /
                  reference.pace_metres_per_second,
              1e-9);
  const Series surface = series_of(*history, history->surface_celsius);
  for (std::size_t i = 0; i < 4; ++i) {
    const double value = value_at(surface, history->liftoff_seconds + k_seconds_after_liftoff[i]);
    EXPECT_NEAR(value, reference.surface_celsius[i], tolerance)
        << k_seconds_after_liftoff[i] << " s after lift-off";
    note("surface_kelvin_" + std::to_string(i), value - reference.surface_celsius[i]);
  }
  EXPECT_NEAR(history->highest_celsius - reference.head.dew_celsius, reference.highest_minus_dew_kelvin,
              tolerance);
}

INSTANTIATE_TEST_SUITE_P(Cases, PassReference, testing::Values(0u, 1u, 2u));

}  // namespace
}  // namespace lastegg::steam
