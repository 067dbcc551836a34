// A fold test that a person typed as a table: pace,distance,seconds,layers,peak,towel,
// kind,hold,covering.
#pragma once

#include <string>

#include "engine/json.h"
#include "physics/quantities/error.h"

namespace lastegg::cli {

/// The readings of a table, and its towel if the column is there, as members of a request of the question
/// fold_test. Units stand in the cells ("25 mm/s") or in a second row of units that then holds for bare
/// numbers. Errors:  bad_input naming the line: no header, unknown or repeated column, no readings, two
/// towels in one table Checked: apps/cli/fold_test_table_unit_test.cpp
Result<Json> read_fold_test_table(const std::string& text);

}  // namespace lastegg::cli
