// The samples that judge a treatment are those that planned its pace.
#include <gtest/gtest.h>

#include "physics/uncertainty/weighted.h"
#include "treatments/treated/edges_for_tests.h"
#include "treatments/treated/sample.h"
#include "treatments/treated/treated.h"

namespace lastegg::treated {
namespace {

// Marched at the planned pace the ensemble says what the pace said: whatever pace lies below the fastest is
// lethal.
TEST(TreatedAgreement, AnEvenTreatmentHasTheVerdictOfThePace) {
  const steam::PaceProblem problem = welt_for_tests(256);
  const auto limits = steam::sample_limits(problem, steam::Marched::all);
  ASSERT_TRUE(limits);
  std::vector<double> fastest;
  for (const auto& sample : *limits) fastest.push_back(sample.fastest);
  const auto& weights = problem.calibration.weights;
  const double surely = weighted_quantile(fastest, weights, 1 - problem.confidence);
  const double hardly = weighted_quantile(fastest, weights, problem.confidence);
  const auto verdict = [&](double pace) {
    const auto report = judge(even_treatment(problem, 1.5, pace));
    EXPECT_TRUE(report) << report.error().message;
    return report->verdict;
  };
  EXPECT_EQ(verdict(0.95 * surely), bugs::Verdict::lethal);
  EXPECT_EQ(verdict(1.06 * surely), bugs::Verdict::not_proven);
  EXPECT_EQ(verdict(0.94 * hardly), bugs::Verdict::not_proven);
  EXPECT_EQ(verdict(1.06 * hardly), bugs::Verdict::too_short);
}

// The march of one pass through the same lanes: its share of lethal samples is that of the limits.
TEST(TreatedAgreement, MarchedSharesAgreeWithLimits) {
  const steam::PaceProblem problem = welt_for_tests(256);
  const auto limits = steam::sample_limits(problem, steam::Marched::all);
  ASSERT_TRUE(limits);
  const Samples samples(problem);
  const double required = 0.30102999566398120;  // log10 2
  for (const double pace : {0.008, 0.012, 0.02}) {
    const auto answers = samples.run(pace, 1, 1);
    ASSERT_TRUE(answers);
    double marched = 0, predicted = 0;
    for (std::size_t i = 0; i < answers->size(); ++i) {
      const double weight = problem.calibration.weights[i];
      if ((*answers)[i].kill.worst() >= required) marched += weight;
      if (pace <= (*limits)[i].fastest) predicted += weight;
    }
    EXPECT_NEAR(marched, predicted, 0.02) << pace;
  }
}

}  // namespace
}  // namespace lastegg::treated
