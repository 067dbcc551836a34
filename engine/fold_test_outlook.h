// What follows from a fitted fold test: the fold over pace, the verdict that stands whichever contradictory
// reading is wrong, the reading that would tell most, and what became of the machine since its last test.
#pragma once

#include <string>
#include <vector>

#include "engine/fold_test_request.h"
#include "treatments/steam/fold_test/drift.h"
#include "treatments/steam/fold_test/fold_contradictions.h"
#include "treatments/steam/fold_test/fold_forecast.h"

namespace lastegg {

/// The fold, or a real edge, at one pace and depth.
struct OutlookPoint {
  int layers = 0;
  std::size_t covering = 0;  ///< of ReadFoldTest::coverings
  steam::FoldForecast forecast;
  steam::FoldPoint point;
};

struct Outlook {
  std::vector<OutlookPoint> points;
  std::vector<double> paces;  ///< ascending
  std::size_t shallow = 0;    ///< of the points: shallowest tested place at working pace
  std::size_t deep = 0;       ///< deepest one, which the verdict is about
  bool is_imagined = false;   ///< no reading lay in a fold: one layer of the test's cloth is looked at
};

/// Forecasts every tested place over pace, with an ensemble of k_outlook_samples.
/// Errors:  as run_pass()
Result<Outlook> outlook_of(const ReadFoldTest& read, const std::vector<FittedCovering>& fits);
constexpr int k_outlook_samples = 256;  // the curves; verdicts of edges use all samples

/// Share of the weight that kills at the deepest place, and that reaches the practice target at the
/// shallowest: the whole test's, and the least and most over leaving out either reading of a contradiction.
struct Judgement {
  bool enough = true;          ///< effective samples
  bool enough_without = true;  ///< and still some without either reading of a contradiction
  double lethal_share = 0, least_lethal = 0, most_lethal = 0;
  double practice_share = 0, least_practice = 0, most_practice = 0;
  /// Lethal with readings of the surface and not without: it says little of the fold, and grants no verdict.
  bool lethal_only_by_surface = false;
};
Judgement judge_fold(const ReadFoldTest& read, const std::vector<FittedCovering>& fits,
                     const Outlook& outlook, const std::vector<steam::Contradiction>& contradictions);
constexpr double k_least_effective_share = 400.0 / 1024;  // below: not proven (judgement)
constexpr double k_least_share_without = 60.0 / 1024;     // the same without a disputed reading
constexpr double k_sure = 0.95;

/// A reading that could be taken next, and the spread of the logarithm of the fastest lethal pace after it.
struct CandidateReading {
  steam::FoldReading reading;
  int layers = 0;
  double spread_then = 0;
};
struct NextReading {
  double spread_now = 0;
  std::vector<CandidateReading> candidates;  ///< best first
};
/// Errors:  as run_pass()
Result<NextReading> next_reading(const ReadFoldTest& read, const FittedCovering& own, const Outlook& outlook);

}  // namespace lastegg
