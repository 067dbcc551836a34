// Sizes that furniture is built with when nobody has measured it, from data/dimensions.json, which is
// compiled in. Read once, never changed, safe from any thread.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "job/furniture/item.h"
#include "physics/quantities/error.h"

namespace lastegg::furniture {

/// One size: its usual value, the limits of what may be entered instead, and where it comes from.
struct Dimension {
  std::string name;
  double value = 0.0;
  double lowest = 0.0;
  double highest = 0.0;
  std::string unit;
  std::string source;   ///< in words
  std::string quality;  ///< handbook, practice, estimate, from memory
};

/// A named mattress size, metres.
struct MattressSize {
  std::string name;
  std::string title;
  double width_metres = 0.0;
  double length_metres = 0.0;
  std::string source;
  std::string quality;
};

struct DimensionTable;

/// The refusal of a mattress size that is not listed, naming those that are.
Error unknown_size(const DimensionTable& table, const std::string& size);

struct DimensionTable {
  std::string key;  ///< "furniture_dimensions/1"
  std::vector<Dimension> dimensions;
  std::vector<MattressSize> mattress_sizes;
};

/// The table compiled into the engine.
/// Errors:  internal when the data file does not have the form its README states
/// Checked: dimensions_unit_test.cpp: unit
const Result<DimensionTable>& furniture_dimensions();

/// Reads a table from JSON text. Numbers must be finite, values within their limits, names unique, sources
/// resolved. Errors:  internal, naming the entry Checked: dimensions_unit_test.cpp: unit
Result<DimensionTable> read_dimensions(std::string_view text);

/// Takes sizes out of a table, one by one, noting each one used. The first refusal is kept and every later
/// call is idle, so that a list of sizes can be taken and the refusal looked at once.
class Measuring {
 public:
  explicit Measuring(const DimensionTable& table) : table_(table) {}

  /// The size as given, or the usual one, also where the given one is refused. `key` is the request's key,
  /// empty for a size that cannot be given.
  double take(std::string_view name, std::string_view key, std::optional<double> given);

  /// A size that no request can change.
  double usual(std::string_view name) { return take(name, {}, std::nullopt); }

  /// A size that follows from a named mattress size.
  double take_known(std::string_view name, double value, const MattressSize& size);

  /// Keeps a refusal unless there is one already.
  void refuse_with(Error error);

  /// Refuses `value` unless it lies in [lowest, highest], and tells whether it does; `what` begins the
  /// sentence.
  bool require(std::string_view what, std::string_view key, double value, double lowest, double highest);

  const std::optional<Error>& refusal() const { return refusal_; }
  const std::vector<UsedDimension>& used() const { return used_; }

 private:
  void note(UsedDimension dimension);

  const DimensionTable& table_;
  std::vector<UsedDimension> used_;
  std::optional<Error> refusal_;
};

}  // namespace lastegg::furniture
