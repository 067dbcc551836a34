// Readings of the surface after a pass: what is learnt of them agrees with the march, and they teach the fit
// little and never wrongly.
#include "treatments/steam/fold_test/surface_response.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>

#include "physics/numerics/sanitized_for_tests.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_test/fold_fit.h"
#include "treatments/steam/fold_test/fold_forecast.h"
#include "treatments/steam/fold_test/fold_steamers_for_tests.h"

namespace lastegg::steam {
namespace {

FoldTest plain_test(Towel towel = Towel::none) {
  FoldTest test;
  test.head_key = "head|surface";
  test.cloth_key = "cloth|surface";
  test.towel = towel;
  test.start_celsius = 20;
  return test;
}

// The cubic at other scores than those it was fitted to: it errs by no more than it says of itself.
TEST(SurfaceResponseLaw, AgreesWithTheMarchWithinWhatItLeavesOver) {
  for (const Towel towel : {Towel::none, Towel::laid}) {
    for (const FoldReading& reading : {surface_reading(0.010, 3), surface_reading(0.025, 15)}) {
      const FoldTest test = plain_test(towel);
      const auto response = surface_response(test, reading);
      ASSERT_TRUE(response) << response.error().message;
      double square = 0;
      const int count = k_sanitized ? 4 : 100;
      for (int i = 0; i < count; ++i) {
        Scores scores;
        for (unsigned k = 0; k < k_unknown_count; ++k)
          scores[k] = SobolStream("elsewhere", k).normal(static_cast<std::uint32_t>(i));
        const auto after = surface_after(test, reading, scores);
        ASSERT_TRUE(after);
        const double off = response->celsius(test, scores) - after->celsius;
        square += off * off / count;
      }
      EXPECT_LT(std::sqrt(square), 1.2 * response->residual_kelvin);
      EXPECT_LT(response->residual_kelvin, 2) << "well below the error of a gun";
    }
  }
}

TEST(SurfaceResponseLaw, SurfacesCoolAfterAPass) {
  const FoldTest test = plain_test();
  double before = 200;
  for (const double seconds : {1.0, 3.0, 10.0, 30.0}) {
    const auto after = surface_after(test, surface_reading(0.012, seconds), {});
    ASSERT_TRUE(after);
    EXPECT_LT(after->celsius, before);
    EXPECT_LT(after->kelvin_per_second, 0);
    before = after->celsius;
  }
}

// How far another law moves the surface, at the same scores. k_surface_law_kelvin stands for it.
TEST(SurfaceResponseLaw, OtherLawsMoveTheSurfaceByAboutTheErrorAllowed) {
  double square = 0;
  int count = 0;
  const std::uint32_t steamers = k_sanitized ? 4 : 60;
  for (const WrongLaw law : {WrongLaw::cloth, WrongLaw::head}) {
    for (std::uint32_t number = 0; number < steamers; ++number) {
      const FoldTest test = plain_test(number % 2 == 0 ? Towel::none : Towel::wrapped);
      const TrueSteamer steamer(number, 1, law);
      for (const double seconds : {3.0, 10.0}) {
        const FoldReading reading = surface_reading(0.015, seconds);
        const auto marched = surface_after(test, reading, steamer.truth());
        ASSERT_TRUE(marched);
        const double off = steamer.surface_celsius(test, reading, 0) - marched->celsius;
        square += off * off;
        ++count;
      }
    }
  }
  const double kelvin = std::sqrt(square / count);
  std::printf("other laws move the surface by %.2f K (root mean square)\n", kelvin);
  if (k_sanitized) return;
  EXPECT_LT(kelvin, k_surface_law_kelvin);
  EXPECT_GT(kelvin, 0.4 * k_surface_law_kelvin);
}

double spread_of_fold(const FoldTest& test) {
  const auto fit = calibrate(test, 256);
  EXPECT_TRUE(fit) << (fit ? "" : fit.error().message);
  const auto forecast = forecast_readings(fit->calibration, test, {fold_pass(0.015, 1)}, 256);
  EXPECT_TRUE(forecast);
  return weighted_deviation(forecast->front().fold_celsius, fit->calibration.weights);
}

// A gun narrows what is known of the fold, a palm hardly, a probe in the fold much more than either.
TEST(SurfaceResponseLaw, AGunTellsSomethingAPalmLessAProbeMore) {
  FoldTest test = plain_test();
  test.readings = {fold_pass(0.028, 2)};
  test.readings[0].peak_celsius = 50;
  const double alone = spread_of_fold(test);
  FoldTest gun = test;
  gun.readings.push_back(surface_reading(0.015, 5));
  gun.readings[1].peak_celsius = surface_after(test, gun.readings[1], {})->celsius;
  FoldTest palm = gun;
  palm.readings[1].peak_celsius = 32;
  palm.readings[1].high_celsius = 80;
  palm.readings[1].instrument_error_kelvin = 4;
  FoldTest probe = test;
  probe.readings.push_back(fold_pass(0.015, 1));
  probe.readings[1].peak_celsius = (*expected_peaks(probe, {}))[1];
  const double by_gun = spread_of_fold(gun), by_palm = spread_of_fold(palm), by_probe = spread_of_fold(probe);
  EXPECT_LT(by_gun, alone);
  EXPECT_GT(by_palm, by_gun);
  EXPECT_NEAR(by_palm, alone, 0.2 * alone);
  EXPECT_LT(by_probe, by_gun);
}

}  // namespace
}  // namespace lastegg::steam
