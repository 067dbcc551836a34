// A dip must give back the time constant that made it, whatever the marks, and refuse what tells nothing.
#include "treatments/steam/fold_test/probe_dip.h"

#include <gtest/gtest.h>

#include <cmath>

#include "physics/uncertainty/sobol.h"

namespace lastegg::steam {
namespace {

ProbeDip exact_dip(double tau, double start, double boiling, int marks, double dead = 0) {
  ProbeDip dip;
  dip.start_celsius = start;
  dip.boiling_celsius = boiling;
  for (int i = 1; i <= marks; ++i) {
    const double t = dead + 2.2 * tau * i / marks;
    dip.points.push_back({t, boiling - (boiling - start) * std::exp(-(t - dead) / tau)});
  }
  return dip;
}

TEST(ProbeDipLaw, ExactMarksGiveTheTimeConstantBack) {
  for (std::uint32_t i = 0; i < 200; ++i) {
    const double tau = 0.3 + 3.7 * SobolStream("exact/tau", 0).uniform(i);
    const double start = 35 * SobolStream("exact/start", 0).uniform(i);
    const double boiling = 89 + 12 * SobolStream("exact/boiling", 0).uniform(i);
    const int marks = 1 + static_cast<int>(11 * SobolStream("exact/marks", 0).uniform(i));
    SCOPED_TRACE(testing::Message() << tau << " s, from " << start << " to " << boiling << " C, marks "
                                    << marks);
    const auto lag = probe_lag(exact_dip(tau, start, boiling, marks));
    ASSERT_TRUE(lag.has_value()) << lag.error().message;
    EXPECT_NEAR(lag->time_constant_seconds, tau, 1e-9 * tau);
    EXPECT_LT(lag->low, tau);
    EXPECT_GT(lag->high, tau);
    EXPECT_GE(lag->log_spread, k_dip_to_fold_spread);
  }
}

TEST(ProbeDipLaw, TheMarksOfAFirstOrderStepAgree) {
  ProbeDip dip;
  dip.seconds_to_63 = 2.0;
  EXPECT_NEAR(probe_lag(dip)->time_constant_seconds, 2.0, 1e-12);
  dip.seconds_to_63.reset();
  dip.seconds_to_90 = 2.0 * std::log(10.0);
  EXPECT_NEAR(probe_lag(dip)->time_constant_seconds, 2.0, 1e-12);
  dip.seconds_to_63 = 2.0;
  const auto both = probe_lag(dip);
  EXPECT_NEAR(both->time_constant_seconds, 2.0, 1e-12);
  EXPECT_TRUE(both->is_one_rate);
  EXPECT_NEAR(both->dead_seconds, 0, 1e-9);
}

// 90 % intervals over random dips read with the errors that the estimate assumes.
TEST(ProbeDipLaw, IntervalsCoverNoisyDips) {
  int inside = 0;
  constexpr int k_dips = 400;
  for (std::uint32_t i = 0; i < k_dips; ++i) {
    const double in_water = 0.4 * std::exp(1.1 * SobolStream("dip/tau", 0).normal(i));
    ProbeDip dip = exact_dip(in_water, 20, 98, 5);
    for (std::size_t k = 0; k < dip.points.size(); ++k) {
      const SobolStream watch("dip/watch/" + std::to_string(k), 0);
      dip.points[k].seconds += 0.05 * watch.normal(i);
    }
    bool ascending = dip.points.front().seconds > 0;
    for (std::size_t k = 1; k < dip.points.size(); ++k)
      ascending = ascending && dip.points[k].seconds > dip.points[k - 1].seconds;
    if (!ascending) {
      ++inside;  // refused as such; the next test sees to it
      continue;
    }
    const auto lag = probe_lag(dip);
    ASSERT_TRUE(lag) << lag.error().message;
    const double in_fold = in_water * std::exp(k_dip_to_fold_spread * SobolStream("dip/fold", 0).normal(i));
    inside += in_fold >= lag->low && in_fold <= lag->high ? 1 : 0;
  }
  EXPECT_GE(inside, 0.85 * k_dips);
}

TEST(ProbeDipLaw, ADeadStartIsNoticedAndWidens) {
  const auto plain = probe_lag(exact_dip(2.5, 20, 100, 8));
  const auto late = probe_lag(exact_dip(2.5, 20, 100, 8, 2.0));
  ASSERT_TRUE(plain && late);
  EXPECT_FALSE(late->is_one_rate);
  EXPECT_NEAR(late->dead_seconds, 2.0, 0.2);
  EXPECT_GT(late->log_spread, plain->log_spread);
}

TEST(ProbeDipLaw, WhatTellsNothingIsRefused) {
  ProbeDip dip;
  EXPECT_EQ(probe_lag(dip).error().kind, ErrorKind::bad_input);
  dip.seconds_to_90 = 1.0;
  dip.seconds_to_63 = 2.0;
  EXPECT_EQ(probe_lag(dip).error().where, "/seconds_to_90");
  dip = {};
  dip.points = {{1, 99.5}, {2, 99.9}};  // too late: the rise is over
  EXPECT_EQ(probe_lag(dip).error().where, "/points");
  dip.points = {{2, 60}, {1, 80}};
  EXPECT_EQ(probe_lag(dip).error().where, "/points/1/seconds");
  dip.points = {{1, 60}, {2, 130}};
  EXPECT_EQ(probe_lag(dip).error().where, "/points/1/celsius");
  dip.points = {{1, 60}};
  dip.start_celsius = 90;
  EXPECT_EQ(probe_lag(dip).error().where, "/start_celsius");
}

}  // namespace
}  // namespace lastegg::steam
