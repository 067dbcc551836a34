#include "bugs/mortality/body_lag.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace lastegg::bugs {
namespace {

TEST(BodyLagLaw, ConstantStaysConstant) {
  for (const double tau : {0.0, 0.18, 6.5}) {
    BodyLag body(tau, 63.25);
    int pieces = 0;
    for (int i = 0; i < 50; ++i) {
      body.follow(63.25, 63.25, 0.7, [&](double a, double b, double s) {
        EXPECT_EQ(a, 63.25);
        EXPECT_EQ(b, 63.25);
        EXPECT_EQ(s, 0.7);
        ++pieces;
      });
    }
    EXPECT_EQ(body.celsius(), 63.25);
    EXPECT_EQ(pieces, 50);
  }
}

TEST(BodyLagLaw, StepResponse) {
  BodyLag body(0.5, 20);
  body.skip(90, 90, 0.5);
  EXPECT_NEAR(body.celsius(), 90 - 70 / std::exp(1.0), 1e-12);
}

TEST(BodyLagLaw, RampLagsByTauTimesSlope) {
  BodyLag body(0.5, 20);
  body.skip(20, 20 + 3 * 40, 40);
  EXPECT_NEAR(body.celsius(), 140 - 3 * 0.5, 1e-12);
}

TEST(BodyLagLaw, PiecesMakeUpTheTimeAndMeetAtExactPoints) {
  std::mt19937_64 generator(9);
  std::uniform_real_distribution<double> celsius(20, 95), duration(0.01, 30), tau_of(0.05, 8);
  for (int i = 0; i < 300; ++i) {
    const double tau = tau_of(generator);
    BodyLag pieces(tau, celsius(generator));
    BodyLag whole = pieces;
    double here = celsius(generator);
    for (int k = 0; k < 10; ++k) {
      const double next = celsius(generator), seconds = duration(generator);
      double sum = 0, last = pieces.celsius();
      pieces.follow(here, next, seconds, [&](double a, double b, double s) {
        EXPECT_EQ(a, last);
        EXPECT_GT(s, 0);
        last = b;
        sum += s;
      });
      whole.skip(here, next, seconds);
      EXPECT_NEAR(sum, seconds, 1e-9);
      EXPECT_EQ(pieces.celsius(), whole.celsius());
      EXPECT_EQ(last, whole.celsius());
      here = next;
    }
  }
}

// The chord promise: halfway through each piece, the exact body is within k_chord_kelvin of the straight
// line.
TEST(BodyLagLaw, ChordsStayClose) {
  for (const double tau : {0.18, 0.5, 6.5}) {
    BodyLag body(tau, 22);
    double t = 0;
    const double slope = (95.0 - 60.0) / 20;
    const auto exact = [&](double at) {
      return 60 + slope * (at - tau) + (22 - 60 + slope * tau) * std::exp(-at / tau);
    };
    body.follow(60, 95, 20, [&](double a, double b, double s) {
      EXPECT_NEAR(exact(t + s / 2), 0.5 * (a + b), BodyLag::k_chord_kelvin * 1.0001);
      t += s;
      EXPECT_NEAR(exact(t), b, 1e-9);
    });
    EXPECT_NEAR(t, 20, 1e-9);
  }
}

TEST(BodyLagLaw, NeverOvershoots) {
  std::mt19937_64 generator(10);
  std::uniform_real_distribution<double> celsius(20, 95);
  BodyLag body(0.5, 20);
  double low = 20, high = 20, here = 20;
  for (int i = 0; i < 1000; ++i) {
    const double next = celsius(generator);
    low = std::min(low, next);
    high = std::max(high, next);
    body.skip(here, next, 0.3);
    here = next;
    EXPECT_GE(body.celsius(), low);
    EXPECT_LE(body.celsius(), high);
  }
}

}  // namespace
}  // namespace lastegg::bugs
