#include "treatments/steam/fold_test/drift.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/chi_squared.hpp>
#include <cmath>

#include "physics/numerics/sanitized_for_tests.h"
#include "treatments/steam/fold_test/fold_steamers_for_tests.h"

namespace lastegg::steam {
namespace {

FoldTest standard_test(std::uint32_t steamer, double error, const char* when, double weaker = 0) {
  FoldTest test;
  test.head_key = "head|d";
  test.cloth_key = "cloth|d";
  test.probe_time_constant_seconds = 0.3;
  test.probe_log_spread = 0.25;
  for (const double pace : {0.008, 0.014, 0.020}) {
    for (const int layers : {1, 2}) test.readings.push_back(fold_pass(pace, layers));
  }
  test.readings.push_back(fold_rest(90, 1));
  TrueSteamer truth(steamer, error);
  truth.weaken(2 * weaker, weaker);
  truth.take_readings(test);
  // Another day: other slips of hand and display.
  for (std::size_t r = 0; r < test.readings.size(); ++r) {
    test.readings[r].peak_celsius +=
        1.5 * error * SobolStream(std::string(when) + std::to_string(r), 0).normal(steamer);
  }
  return test;
}

TEST(DriftLaw, ChiSquaredAgreesWithALibrary) {
  for (const int freedom : {2, 3, 5, 9, 20, 64}) {
    const boost::math::chi_squared exact(freedom);
    for (const double share : {0.2, 0.7, 1.0, 1.4, 2.0, 3.0}) {
      const double value = share * freedom;
      EXPECT_NEAR(chi_squared_exceedance(value, freedom), boost::math::cdf(complement(exact, value)), 0.008)
          << freedom << " " << value;
    }
  }
}

TEST(DriftLaw, AnUnchangedMachineSeldomAlarms) {
  int alarms = 0;
  const std::uint32_t steamers = k_sanitized ? 2 : 16;
  for (std::uint32_t steamer = 0; steamer < steamers; ++steamer) {
    const auto before = calibrate(standard_test(steamer, 1, "before"), 128);
    const FoldTest now = standard_test(steamer, 1, "now");
    const auto after = calibrate(now, 128);
    ASSERT_TRUE(before && after);
    const auto drift = drift_since(before->calibration, now, after->calibration,
                                   std::vector<bool>(now.readings.size(), false), 128);
    ASSERT_TRUE(drift) << drift.error().message;
    alarms += drift->verdict == Drift::Verdict::unchanged ? 0 : 1;
    EXPECT_GT(drift->probability, 0);
  }
  EXPECT_LE(alarms, 3) << "one in twenty is expected";
}

TEST(DriftLaw, AWeakerMachineIsToldAsSuch) {
  int told = 0, colder = 0;
  const std::uint32_t steamers = k_sanitized ? 1 : 8;
  for (std::uint32_t steamer = 0; steamer < steamers; ++steamer) {
    const auto before = calibrate(standard_test(steamer, 1, "before"), 128);
    const FoldTest now = standard_test(steamer, 1, "now", 1.2);  // exchange to 0.43, steam some 7 K colder
    const auto after = calibrate(now, 128);
    ASSERT_TRUE(before && after);
    const auto drift = drift_since(before->calibration, now, after->calibration,
                                   std::vector<bool>(now.readings.size(), false), 128);
    ASSERT_TRUE(drift);
    told += drift->verdict == Drift::Verdict::weaker ? 1 : 0;
    EXPECT_LT(drift->mean_kelvin, 0);
    colder += drift->weaker_dew_probability > 0.5 ? 1 : 0;
    EXPECT_NE(drift->verdict, Drift::Verdict::stronger);
  }
  EXPECT_GE(told, static_cast<int>(steamers) - 2);
  EXPECT_GE(colder, static_cast<int>(steamers) - 1);
}

TEST(DriftLaw, OneReadingIsNotEnough) {
  const auto before = calibrate(standard_test(1, 1, "before"), 64);
  FoldTest now = standard_test(1, 1, "now");
  now.readings.resize(1);
  const auto after = calibrate(now, 64);
  ASSERT_TRUE(before && after);
  const auto drift = drift_since(before->calibration, now, after->calibration, {false}, 64);
  ASSERT_TRUE(drift);
  EXPECT_EQ(drift->verdict, Drift::Verdict::not_proven);
}

}  // namespace
}  // namespace lastegg::steam
