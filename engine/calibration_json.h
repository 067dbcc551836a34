// Fold tests and calibrations as JSON: what the questions fold_test, pace and plan share.
#pragma once

#include <vector>

#include "engine/question.h"
#include "treatments/steam/calibration.h"

namespace lastegg {

/// Fields of a fold test: machine, head, towel, place, probe, cloth, readings.
std::vector<Field> fold_test_fields();

/// What a fold test says beyond what the fit needs.
struct ReadFoldTest {
  steam::FoldTest test;
  std::string covering;     ///< of the cloth the fold was made of; "test_fold" for the standard fold
  std::vector<int> layers;  ///< over the tip, per reading
  double working_pace_metres_per_second = 0.0254;
  double head_width_metres = 0.2;
  int samples = 1024;
  std::vector<Warning> warnings;
};

/// Reads a checked fold test.
/// Errors:  bad_input with place: a probe too slow to correct for, an unknown material, no pressure ...
Result<ReadFoldTest> read_fold_test(const Json& request, const std::string& where);

/// Shape and JSON of a calibration: the compact form in which a fold test's result is handed to `pace` and
/// `plan`.
Shape calibration_shape();
Json to_json(const steam::Calibration& calibration, const std::string& covering);
Result<steam::Calibration> read_calibration(const Json& calibration, const std::string& where);

/// Keys under which the unknowns are drawn: machine + head + towel, and head + covering.
std::string head_key(const std::string& machine, const std::string& head, steam::Towel towel);
std::string cloth_key(const std::string& machine, const std::string& head, const std::string& covering);

Shape towel_shape(std::string text);
steam::Towel read_towel(const std::string& word);
const char* word(steam::Towel towel);

}  // namespace lastegg
