// What a place lived through: closed forms of the lagging probe, of time above a temperature and of known
// curves, and the promise that no peak is invented between the computed times.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "treatments/steam/pass/exposure.h"

namespace lastegg::steam {
namespace {

PassHistory history_of(std::vector<double> seconds, std::vector<std::size_t> phase_starts) {
  PassHistory history;
  history.seconds = std::move(seconds);
  history.phase_starts = std::move(phase_starts);
  return history;
}

Series fine(const PassHistory& history, const std::vector<double>& celsius, double step = 0.5) {
  Series series;
  fine_series(history, celsius, step, series);
  return series;
}

TEST(LaggedPeak, OfARampTrailsByTheLag) {
  constexpr double rate = 7.0, end = 5.0;
  for (const double tau : {0.05, 0.5, 3.0, 40.0}) {
    const double expected = 20 + rate * (end - tau * (1 - std::exp(-end / tau)));
    // One piece or many: the filter is exact for either.
    const Series one{{0, end}, {20, 20 + rate * end}};
    Series many;
    for (int i = 0; i <= 7; ++i) {
      const double t = end * i * i / 49;
      many.seconds.push_back(t);
      many.celsius.push_back(20 + rate * t);
    }
    EXPECT_NEAR(lagged_peak(one, tau).celsius, expected, 1e-9) << tau;
    EXPECT_NEAR(lagged_peak(many, tau).celsius, expected, 1e-9) << tau;
    EXPECT_EQ(lagged_peak(one, tau).seconds, end);
  }
}

TEST(LaggedPeak, OfASquarePulseIsItsChargingCurve) {
  constexpr double from = 1.5, length = 2.5, low = 21, high = 83;
  const Series pulse{{0, from, from, from + length, from + length, 20}, {low, low, high, high, low, low}};
  for (const double tau : {0.2, 1.0, 6.5}) {
    const Peak peak = lagged_peak(pulse, tau);
    EXPECT_NEAR(peak.celsius, low + (high - low) * (1 - std::exp(-length / tau)), 1e-9) << tau;
    EXPECT_NEAR(peak.seconds, from + length, 1e-12);
  }
}

TEST(LaggedPeak, OfATriangleLiesWhereProbeAndPlaceMeet) {
  constexpr double rate = 9.0, half = 4.0, base = 18.0;
  const Series triangle{{0, half, 2 * half}, {base, base + rate * half, base}};
  for (const double tau : {0.1, 0.8, 3.0}) {
    const double after = tau * std::log(2 - std::exp(-half / tau));
    const Peak peak = lagged_peak(triangle, tau);
    EXPECT_NEAR(peak.seconds, half + after, 1e-9) << tau;
    EXPECT_NEAR(peak.celsius, base + rate * (half - after), 1e-9) << tau;
  }
}

TEST(LaggedPeak, WithoutLagIsTheOwnPeakAndFallsAsLagGrows) {
  const Series series{{0, 1, 2, 3.5, 6}, {22, 60, 74, 71, 30}};
  EXPECT_EQ(lagged_peak(series, 0).celsius, peak_of(series).celsius);
  EXPECT_EQ(lagged_peak(series, 0).seconds, peak_of(series).seconds);
  EXPECT_EQ(peak_of(series).celsius, 74);
  EXPECT_EQ(peak_of(series).seconds, 2);
  EXPECT_NEAR(lagged_peak(series, 1e-6).celsius, 74, 1e-4);
  double before = 74;
  for (const double tau : {0.1, 0.3, 1.0, 3.0, 10.0}) {
    const double now = lagged_peak(series, tau).celsius;
    EXPECT_LT(now, before);
    before = now;
  }
}

TEST(FineSeries, PassesThroughEveryPointInPiecesOfTheAskedSize) {
  const PassHistory history = history_of({0, 0.4, 1, 1.9, 2.2, 3, 4.5, 7}, {0, 3});
  const std::vector<double> celsius{22, 30, 47, 81, 74, 60, 51, 44};
  const Series series = fine(history, celsius, 0.7);
  std::size_t at = 0;
  for (std::size_t i = 0; i < celsius.size(); ++i) {
    while (at < series.seconds.size() && series.seconds[at] < history.seconds[i]) ++at;
    ASSERT_LT(at, series.seconds.size());
    EXPECT_EQ(series.seconds[at], history.seconds[i]);
    EXPECT_EQ(series.celsius[at], celsius[i]);
  }
  EXPECT_TRUE(std::is_sorted(series.seconds.begin(), series.seconds.end()));
  // Pieces are equal in time, so one may take more than the mean of its step: three times at most by the
  // limiter.
  for (std::size_t i = 1; i < series.seconds.size(); ++i) {
    EXPECT_LE(std::fabs(series.celsius[i] - series.celsius[i - 1]), 3 * 0.7);
  }
}

TEST(FineSeries, ReproducesAParabolaOnUnevenTimes) {
  const auto parabola = [](double t) { return 25 + 40 * t - 6.5 * t * t; };  // top at t = 40/13
  std::vector<double> seconds{0, 0.5, 1.1, 1.9, 2.7, 3.9, 5.0};
  std::vector<double> celsius;
  for (const double t : seconds) celsius.push_back(parabola(t));
  const Series series = fine(history_of(seconds, {0}), celsius);
  for (std::size_t i = 0; i < series.seconds.size(); ++i) {
    EXPECT_NEAR(series.celsius[i], parabola(series.seconds[i]), 1e-9) << series.seconds[i];
  }
  EXPECT_NEAR(peak_of(series).seconds, 40.0 / 13, 1e-9);
  EXPECT_NEAR(peak_of(series).celsius, parabola(40.0 / 13), 1e-9);
}

TEST(FineSeries, FindsTheTopOfACoarselySampledSine) {
  // Eight points to half a wave, shifted so that the top lies between two of them.
  for (const double shift : {0.05, 0.15, 0.224, 0.3, 0.4}) {
    std::vector<double> seconds, celsius;
    for (int i = 0; i <= 7; ++i) {
      seconds.push_back(0.4488 * i);
      celsius.push_back(20 + 60 * std::sin(seconds.back() - 0.2 + shift));
    }
    const Series series = fine(history_of(seconds, {0}), celsius);
    const double highest_point = *std::max_element(celsius.begin(), celsius.end());
    EXPECT_GE(peak_of(series).celsius, highest_point);
    EXPECT_NEAR(peak_of(series).celsius, 80, 0.1) << shift;
    EXPECT_NEAR(peak_of(series).seconds, std::acos(-1.0) / 2 + 0.2 - shift, 0.05) << shift;
  }
}

// At lift-off the temperature breaks off sharply. The fall must begin at the break and must not swing
// upwards.
TEST(FineSeries, StaysMonotoneWhereAPhaseStarts) {
  std::vector<double> seconds{0, 1, 2, 3}, celsius{22, 50, 70, 84};
  for (const double after : {0.1, 0.2, 0.4, 0.8, 1.6, 3.2}) {
    seconds.push_back(3 + after);
    celsius.push_back(30 + 54 * std::exp(-after / 0.3));
  }
  const Series series = fine(history_of(seconds, {0, 3}), celsius);
  EXPECT_EQ(peak_of(series).celsius, 84);
  EXPECT_EQ(peak_of(series).seconds, 3);
  for (std::size_t i = 1; i < series.seconds.size(); ++i) {
    if (series.seconds[i] <= 3) {
      EXPECT_GE(series.celsius[i], series.celsius[i - 1]);
    } else if (series.seconds[i] <= 3.2 + 1e-12) {
      EXPECT_LE(series.celsius[i], series.celsius[i - 1]) << series.seconds[i];
    }
  }
}

// Steps that were cut after a fault are many times shorter than their neighbours, and the first of them may
// correct what the long step before left wrong. No peak may be read out of that correction.
TEST(FineSeries, InventsNoPeakWhereStepsChangeAbruptly) {
  const std::vector<double> seconds{6.5, 8.1, 9.8, 11.5, 11.55, 11.6, 11.65, 11.7, 13.4, 15.1};
  const std::vector<double> celsius{40, 60, 84, 107, 103, 104.5, 104.8, 104.9, 105.2, 105.3};
  const Series series = fine(history_of(seconds, {0}), celsius);
  EXPECT_LE(peak_of(series).celsius, 107.5);
  std::vector<double> falling(celsius.rbegin(), celsius.rend()), back;
  for (auto it = seconds.rbegin(); it != seconds.rend(); ++it) back.push_back(20 - *it);
  EXPECT_LE(peak_of(fine(history_of(back, {0}), falling)).celsius, 107.5);
}

TEST(SecondsAbove, IsExactForATriangle) {
  const Series triangle{{0, 2, 7}, {20, 70, 20}};
  EXPECT_NEAR(seconds_above(triangle, 50), 7 * 20.0 / 50, 1e-12);
  EXPECT_NEAR(seconds_above(triangle, 69.5), 7 * 0.5 / 50, 1e-12);
  EXPECT_NEAR(seconds_above(triangle, 20), 7, 1e-12);
  EXPECT_EQ(seconds_above(triangle, 70), 0);
  EXPECT_EQ(seconds_above(triangle, 90), 0);
  EXPECT_NEAR(seconds_above(triangle, -5), 7, 1e-12);
  // Cutting the legs into pieces changes nothing.
  const Series pieces{{0, 0.5, 2, 2.5, 4.5, 7}, {20, 32.5, 70, 65, 45, 20}};
  for (const double level : {21.0, 32.5, 45.0, 50.0, 66.0}) {
    EXPECT_NEAR(seconds_above(pieces, level), seconds_above(triangle, level), 1e-12) << level;
  }
}

}  // namespace
}  // namespace lastegg::steam
