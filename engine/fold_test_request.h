// The request of a fold test, read and judged: machine, head, towel, place, probe, cloth, readings of four
// kinds, and what other tests of the machine say. What the questions fold_test, pace and plan share.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/calibration_json.h"
#include "treatments/steam/fold_test/fold_fit.h"
#include "treatments/steam/fold_test/probe_dip.h"

namespace lastegg {

/// Fields of a fold test by itself.
std::vector<Field> fold_test_fields();

/// The same with other tests beside it: the last one of this head and towel, and those of others of the
/// machine.
std::vector<Field> fold_test_fields_with_others();

/// What a fold test says beyond what the fit needs.
struct ReadFoldTest {
  steam::FoldTest test;
  std::string machine, head;
  std::string covering;     ///< of the cloth the fold was made of; "test_fold" for the standard fold
  std::vector<int> layers;  ///< over the tip, per reading; 0 for a coupon
  /// Of the readings: the test's own covering first, then those of real edges.
  std::vector<std::string> coverings;
  steam::Layer cloth;                  ///< one layer of the test fold
  steam::Stack base;                   ///< what lies below
  std::optional<steam::ProbeLag> dip;  ///< if the time constant comes from one
  double working_pace_metres_per_second = 0.0254;
  double head_width_metres = 0.2;
  int samples = 1024;
  std::vector<Warning> warnings;
};

/// Reads a checked fold test.
/// Errors:  bad_input with place: a probe too slow to correct for, an unknown material, no pressure, a
/// reading whose members do not belong to its kind ...
Result<ReadFoldTest> read_fold_test(const Json& request, const std::string& where);

/// What was found for one covering of a test.
struct FittedCovering {
  std::string covering;
  steam::FitReport fit;
};

/// Fits a test for each of its coverings, its own first.
/// Errors:  as calibrate()
Result<std::vector<FittedCovering>> fit_coverings(const ReadFoldTest& read);

/// A further reading in the test's own fold, or over a coupon, as nobody has taken it yet.
steam::FoldReading imagined_reading(const ReadFoldTest& read, steam::ReadingKind kind, int layers,
                                    double pace_metres_per_second);
constexpr double k_usual_hold_seconds = 60;

const char* word(steam::ReadingKind kind);

}  // namespace lastegg
