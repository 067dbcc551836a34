// Against Boost.Math: the normal distribution, quadrature of the spread between studies, and an integrator of
// the body's differential equation.
#include <gtest/gtest.h>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>

#include "bugs/mortality/body_lag.h"
#include "bugs/mortality/mortality.h"
#include "bugs/mortality/series_for_tests.h"

namespace lastegg::bugs {
namespace {

using Normal = boost::math::normal_distribution<double>;
constexpr Stage k_stages[] = {Stage::egg, Stage::nymph, Stage::adult};

TEST(SurvivalAgreement, NormalDistribution) {
  for (const Stage stage : k_stages) {
    const KillLaw& law = kill_law(stage, Exposure::air);
    for (double lg = -1.5; lg < 1; lg += 0.003) {
      const double boost_value = cdf(complement(Normal(-2.326 * law.spread, law.spread), lg));
      EXPECT_NEAR(survival(lg, law), boost_value, 1e-12) << lg;
    }
  }
}

TEST(ExpectedKillAgreement, QuadratureOverStudies) {
  using boost::math::quadrature::gauss_kronrod;
  for (const Stage stage : k_stages) {
    const KillLaw& law = kill_law(stage, Exposure::steam);
    for (double lg = -2; lg < 3; lg += 0.05) {
      const auto one_study = [&](double shift) {
        return pdf(Normal(0, law.study_spread), shift) * cdf(Normal(), (lg - shift) / law.spread + 2.326);
      };
      const double reach = 12 * law.study_spread;
      const double kill = gauss_kronrod<double, 61>::integrate(one_study, -reach, reach, 15, 1e-13);
      const double contact = 0.5 * (law.contact_share[0] + law.contact_share[1]);
      EXPECT_NEAR(expected_kill(stage, lg), contact * kill, 1e-9) << lg;
    }
  }
}

// Dose of a lagged body through a pulse, against quadrature of the textbook answer of dT_b/dt = (T - T_b)/tau
// to a ramp up, a hold and a ramp down.
TEST(BodyLagAgreement, DoseThroughAPulse) {
  using boost::math::quadrature::gauss_kronrod;
  const OwnedSeries pulse{{0, 0.5, 2.5, 4, 60}, {22, 88, 88, 45, 22}};
  for (const Stage stage : k_stages)
    for (const double tau : {0.18, 0.5, 6.5}) {
      KillLaw law = kill_law(stage, Exposure::steam);
      law.z_kelvin = {5, 5};
      const DoseRate rate = law.rate(5);
      double body = 22, expected = 0;
      for (std::size_t i = 1; i < pulse.seconds.size(); ++i) {
        const double duration = pulse.seconds[i] - pulse.seconds[i - 1];
        const double from = pulse.celsius[i - 1], slope = (pulse.celsius[i] - from) / duration;
        const double start = body;
        const auto at = [=](double t) {
          return from + slope * t - slope * tau + (start - from + slope * tau) * std::exp(-t / tau);
        };
        constexpr int k_panels = 400;  // the rate has kinks at onset and cap
        for (int k = 0; k < k_panels; ++k) {
          expected +=
              gauss_kronrod<double, 15>::integrate([&](double t) { return rate.at(at(t)); },
                                                   duration * k / k_panels, duration * (k + 1) / k_panels, 0);
        }
        body = at(duration);
      }
      const double ours = equivalent_minutes(pulse.view(), law, {.body_lag_seconds = tau})[0];
      // Chords of at most 0.01 K: 0.01 ln(10) / 5 = 0.5 %, and the jump of the rate at the onset.
      EXPECT_NEAR(ours / (expected / 60), 1, 0.005) << tau;
      EXPECT_NEAR(log10_ratio(pulse.view(), law, tau), std::log10(expected / 60 / law.lt99_minutes), 0.0025);
    }
}

}  // namespace
}  // namespace lastegg::bugs
