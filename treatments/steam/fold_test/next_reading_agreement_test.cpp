// The shortcut for the worth of a reading against what it stands for: imagine the reading's outcomes one by
// one, weigh the ensemble anew by each, and average the variance that is left.
#include "treatments/steam/fold_test/next_reading.h"

#include <gtest/gtest.h>

#include <cmath>

#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_test/fold_fit.h"
#include "treatments/steam/fold_test/fold_steamers_for_tests.h"

namespace lastegg::steam {
namespace {

double nested_spread(const std::vector<double>& reading, double error, const std::vector<double>& quantity,
                     const std::vector<double>& weights) {
  // Three outcomes per sample: Gauss-Hermite points of the error.
  const double places[] = {-std::sqrt(3.0), 0, std::sqrt(3.0)}, shares[] = {1.0 / 6, 2.0 / 3, 1.0 / 6};
  double left = 0;
  std::vector<double> posterior(weights.size());
  for (std::size_t i = 0; i < weights.size(); ++i) {
    for (int p = 0; p < 3; ++p) {
      const double outcome = reading[i] + error * places[p];
      for (std::size_t j = 0; j < weights.size(); ++j) {
        const double z = (outcome - reading[j]) / error;
        posterior[j] = weights[j] * std::exp(-0.5 * z * z);
      }
      const double spread = weighted_deviation(quantity, posterior);
      left += weights[i] * shares[p] * spread * spread;
    }
  }
  return std::sqrt(left);
}

TEST(NextReadingAgreement, AgreesWithNestedReweighting) {
  const std::vector<double> paces(k_paces.begin(), k_paces.end());
  for (const std::uint32_t steamer : {1U, 4U, 9U}) {
    FoldTest test;
    test.head_key = "head|n";
    test.cloth_key = "cloth|n";
    test.probe_time_constant_seconds = 0.3;
    test.readings = {fold_pass(0.010, 1), fold_pass(0.020, 1)};
    TrueSteamer(steamer, 0).take_readings(test);
    const auto fit = calibrate(test, 512);
    ASSERT_TRUE(fit);
    std::vector<FoldReading> asked;
    for (const double pace : paces) asked.push_back(fold_pass(pace, 2));
    asked.push_back(fold_pass(0.010, 1));
    asked.push_back(fold_rest(90, 1));
    asked.push_back(coupon_pass(0.010));
    const auto forecast = forecast_readings(fit->calibration, test, asked, 512);
    ASSERT_TRUE(forecast);
    const std::vector<double> weights = leading_weights(fit->calibration.weights, 512);
    std::vector<double> fastest, margins(paces.size());
    for (std::size_t i = 0; i < weights.size(); ++i) {
      for (std::size_t p = 0; p < paces.size(); ++p) margins[p] = (*forecast)[p].lethal_margin[i];
      fastest.push_back(log_fastest_pace(paces, margins));
    }
    const ReadingWorth worth = worth_of_readings(test, *forecast, fastest, weights);
    double best_nested = 1e9;
    for (std::size_t k = 0; k < forecast->size(); ++k) {
      const double error = candidate_error_kelvin(test, (*forecast)[k], weights);
      const double nested = nested_spread((*forecast)[k].probe_celsius, error, fastest, weights);
      EXPECT_NEAR(worth.spread_then[k], nested, 0.15 * worth.spread_now) << "candidate " << k;
      best_nested = std::min(best_nested, nested);
      EXPECT_LE(worth.spread_then[k], worth.spread_now + 1e-12);
    }
    const double error = candidate_error_kelvin(test, (*forecast)[worth.best], weights);
    EXPECT_LE(nested_spread((*forecast)[worth.best].probe_celsius, error, fastest, weights),
              best_nested + 0.1 * worth.spread_now)
        << "what is advised is nearly the best there is";
    EXPECT_LT(worth.spread_then[worth.best], 0.9 * worth.spread_now);
  }
}

TEST(NextReadingAgreement, TheFastestPaceIsWhereTheMarginEnds) {
  const std::vector<double> paces{0.002, 0.004, 0.008, 0.016};
  EXPECT_NEAR(log_fastest_pace(paces, std::vector<double>{3, 1, -1, -3}), std::log(0.004 * std::sqrt(2.0)),
              1e-12);
  EXPECT_NEAR(log_fastest_pace(paces, std::vector<double>{4, 3, 2, 1}), std::log(0.032) - 2e-4, 3e-4)
      << "never more than a factor of two beyond";
  EXPECT_LT(log_fastest_pace(paces, std::vector<double>{-1, -3, -300, -300}), std::log(0.002));
}

}  // namespace
}  // namespace lastegg::steam
