// A number with its evidence: unit, range, source, where in the source, and how good it is. Data files of all
// wings are written in this form; here it is read. Plain values; pure functions; nothing is thrown.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/evidence/json.h"
#include "physics/quantities/error.h"

namespace lastegg {

/// How good a number is.
enum class Quality {
  measured,    ///< read in the publication that measured it
  handbook,    ///< read in a handbook, a standard or a table of one
  practice,    ///< what the trade does; nobody measured it
  estimate,    ///< ours; its note says how it was made
  from_memory  ///< not read in its source; to be checked
};

/// Lowest and highest value that the evidence allows.
struct DatumRange {
  double low = 0;
  double high = 0;
};

struct Datum {
  double value = 0;  ///< the value to calculate with
  std::optional<DatumRange> range;
  std::string unit;
  std::string source;   ///< key in references/sources.bib
  std::string locator;  ///< where in the source
  Quality quality = Quality::from_memory;
  std::string note;

  /// Standard deviation of the logarithm: the range is taken as the middle 95 % of a log-normal spread.
  /// Zero without a range or when the range touches zero.
  /// Model:   ln(high / low) / 3.92
  /// Source:  own convention: evidence gives ranges without saying what share they hold
  /// Checked: physics/evidence/datum_unit_test.cpp
  double log_spread() const;
};

std::string_view quality_name(Quality quality);

/// The quality of that name; none for any other word.
std::optional<Quality> quality_named(std::string_view name);

/// The document of a data file.
/// Errors:  internal when it is no JSON object or has another key than `key`.
Result<nlohmann::json> parse_data(std::string_view text, std::string_view key);

/// One datum in the unit that the caller calculates in.
/// Inputs:  where: path of the datum in its document, for the message.
/// Errors:  internal when a member is missing, of the wrong type, in another unit, outside its own range, or
///          when an estimate does not say how it was made.
/// Checked: physics/evidence/datum_unit_test.cpp
Result<Datum> read_datum(const nlohmann::json& object, std::string_view unit, const std::string& where);

/// A text member of an object; empty when it is absent.
std::string text_member(const nlohmann::json& object, const char* key);

}  // namespace lastegg
