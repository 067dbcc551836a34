// Calibrations as JSON, and the keys of machine, head, towel and covering: what the questions fold_test, pace
// and plan share.
#pragma once

#include <string>

#include "engine/question.h"
#include "treatments/steam/steamer/calibration.h"

namespace lastegg {

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
