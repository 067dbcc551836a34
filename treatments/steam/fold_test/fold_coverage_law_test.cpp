// The intervals of a fold test must hold what is true, also where the cloth or the head follows another law
// than the fit assumes (WrongLaw), the probe another time constant, the hand is off its pace and the
// thermometer errs: each of the four unknowns by itself, temperatures in the fold, the fastest pace.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "physics/numerics/sanitized_for_tests.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_test/fold_fit.h"
#include "treatments/steam/fold_test/fold_steamers_for_tests.h"
#include "treatments/steam/fold_test/next_reading.h"

namespace lastegg::steam {
namespace {

constexpr std::array<const char*, 9> k_quantities{"dew temperature",       "film",
                                                  "vapour efficiency",     "forced gas",
                                                  "1 layer at 20 mm/s",    "2 layers at 11 mm/s",
                                                  "2 layers at 1 in/s",    "3 layers at 8 mm/s",
                                                  "fastest pace, 2 layers"};
constexpr std::size_t k_first_forecast = k_unknown_count, k_forecasts = 4;

FoldTest test_of(std::uint32_t steamer) {
  FoldTest test;
  test.head_key = "head|covered";
  test.cloth_key = "cloth|covered";
  const Towel towels[] = {Towel::none, Towel::wrapped, Towel::laid};
  test.towel = towels[steamer % 3];
  test.head_length_metres = 0.08;
  test.pressure_pascal = steamer % 4 == 0 ? 83428 : 101325;
  test.start_celsius = 19;
  test.probe_time_constant_seconds = 0.2 + 0.2 * (steamer % 6);
  test.probe_log_spread = 0.25;
  // A hand slows down where a towel lies on the cloth.
  const double slower = test.towel == Towel::laid ? 0.6 : 1;
  for (const double pace : {0.008, 0.014, 0.020, 0.028}) {
    for (const int layers : {1, 2}) test.readings.push_back(fold_pass(slower * pace, layers));
  }
  // Every second one also rests the head on the fold, every third runs it over a coupon.
  if (steamer % 2 == 1) test.readings.push_back(fold_rest(90, 1));
  if (steamer % 5 == 0) test.readings.push_back(coupon_pass(0.010));
  return test;
}

int from_environment(const char* name, int otherwise) {
  const char* text = std::getenv(name);
  return text == nullptr ? otherwise : std::atoi(text);
}

// LASTEGG_LONG: 500 steamers and 256 samples; LASTEGG_SAMPLES and LASTEGG_FIRST_STEAMER choose others.
void expect_coverage(WrongLaw law) {
  const bool full = std::getenv("LASTEGG_LONG") != nullptr;
  const int steamers = full ? 500 : k_sanitized ? 2 : 40;
  const int samples = from_environment("LASTEGG_SAMPLES", full ? 256 : 128);
  const int first = from_environment("LASTEGG_FIRST_STEAMER", 0);
  std::array<int, k_quantities.size()> inside{};
  int weak = 0;
  double effective = 0;
  const std::vector<double> paces(k_paces.begin(), k_paces.end());
  for (int number = first; number < first + steamers; ++number) {
    const auto steamer = static_cast<std::uint32_t>(number);
    FoldTest test = test_of(steamer);
    const TrueSteamer truth(steamer, 1, law);
    truth.take_readings(test);
    const auto fit = calibrate(test, samples);
    ASSERT_TRUE(fit) << fit.error().message;
    const Calibration& calibration = fit->calibration;
    const std::vector<double>& weights = calibration.weights;
    weak += calibration.effective_samples < samples * 400.0 / 1024 ? 1 : 0;
    effective += calibration.effective_samples / samples / steamers;

    const auto count = [&](std::size_t k, double value, const std::vector<double>& values) {
      inside[k] += value >= weighted_quantile(values, weights, 0.05) - 1e-9 &&
                           value <= weighted_quantile(values, weights, 0.95) + 1e-9
                       ? 1
                       : 0;
    };
    for (std::size_t k = 0; k < k_unknown_count; ++k) {
      std::vector<double> scores;  // each unknown is a monotone function of its score
      for (int i = 0; i < samples; ++i) scores.push_back(own_scores(calibration, i)[k]);
      count(k, truth.truth()[k], scores);
    }

    std::vector<FoldReading> asked{fold_pass(0.020, 1), fold_pass(0.011, 2), fold_pass(0.0254, 2),
                                   fold_pass(0.008, 3)};
    for (const double pace : paces) asked.push_back(fold_pass(pace, 2));
    const auto forecast = forecast_readings(calibration, test, asked, samples);
    ASSERT_TRUE(forecast) << forecast.error().message;
    for (std::size_t k = 0; k < k_forecasts; ++k)
      count(k_first_forecast + k, truth.answer(test, asked[k]).target_peak_celsius,
            (*forecast)[k].fold_celsius);
    std::vector<double> fastest, margins(paces.size());
    for (std::size_t i = 0; i < static_cast<std::size_t>(samples); ++i) {
      for (std::size_t p = 0; p < paces.size(); ++p)
        margins[p] = (*forecast)[k_forecasts + p].lethal_margin[i];
      fastest.push_back(log_fastest_pace(paces, margins));
    }
    for (std::size_t p = 0; p < paces.size(); ++p)
      margins[p] = truth.answer(test, asked[k_forecasts + p]).kill.worst() - 0.30103;
    count(k_quantities.size() - 1, log_fastest_pace(paces, margins), fastest);
  }
  int all = 0;
  for (std::size_t k = 0; k < k_quantities.size(); ++k) {
    const double share = static_cast<double>(inside[k]) / steamers;
    std::printf("  %-24s %.3f\n", k_quantities[k], share);
    all += inside[k];
    if (!full) continue;
    EXPECT_GE(share, 0.85) << k_quantities[k];
    // How far a law shifts the unknowns was estimated from wrong laws of the cloth; under others an interval
    // may be wider than need be, never narrower. A true share of 0.95 is seen one and a half standard errors
    // higher in seven runs of a hundred.
    const double sampling = 1.5 * std::sqrt(0.95 * 0.05 / steamers);
    EXPECT_LE(share, law == WrongLaw::cloth ? 0.95 + sampling : 1.0) << k_quantities[k];
  }
  const double coverage = static_cast<double>(all) / (steamers * static_cast<double>(k_quantities.size()));
  std::printf(
      "coverage of 90 %% intervals: %.3f over %d steamers; effective share %.2f; %d below the guard\n",
      coverage, steamers, effective, weak);
  if (k_sanitized) {
    std::printf("under sanitizers only %d steamers are fitted and their coverage is not judged\n", steamers);
    return;
  }
  EXPECT_GE(coverage, full ? 0.85 : 0.82);
  EXPECT_LE(coverage, full ? 0.95 : 0.97);
}

TEST(FoldCoverageLaw, NinetyPercentIntervalsCoverOtherLawsOfTheCloth) {
  expect_coverage(WrongLaw::cloth);
}

TEST(FoldCoverageLaw, NinetyPercentIntervalsCoverOtherLawsOfTheHead) {
  expect_coverage(WrongLaw::head);
}

}  // namespace
}  // namespace lastegg::steam
