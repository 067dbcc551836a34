// Reading a logger's table of times and temperatures, "seconds,celsius". Whatever is wrong with it is refused
// with the number of its line; nothing is skipped or mended silently.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "physics/quantities/error.h"

namespace lastegg::cli {

struct TemperatureLog {
  std::vector<double> seconds;
  std::vector<double> celsius;
  std::vector<std::size_t> lines;  ///< line of the file on which each reading stands
};

/// Readings of a table with the columns `seconds` and `celsius` or `fahrenheit`; other columns are ignored.
/// Columns are separated by commas, semicolons or tabs. Empty lines and lines that begin with # are skipped.
/// Errors:  bad_input, naming the line: no header, a missing, double or contradictory column, a row with too
/// few
///          cells, a cell that is no number (a decimal comma, NaN), a time that does not go forwards.
/// Checked: apps/cli/temperature_log_unit_test.cpp
Result<TemperatureLog> read_temperature_log(std::string_view text);

/// A difference of temperatures as people write it, in kelvin: "1 C", "1.8 F", "1 K", "2 delta F".
/// Errors:  bad_input with the accepted spellings
/// Checked: apps/cli/temperature_log_unit_test.cpp
Result<double> temperature_difference_kelvin(const std::string& text);

}  // namespace lastegg::cli
