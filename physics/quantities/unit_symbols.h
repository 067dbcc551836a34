// The table of unit symbols and the units of keys behind unit_text.h: dimensions and factors. Constant
// data only.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/quantities/unit_text.h"

namespace lastegg::unit_symbols {

/// Exponents of metre, second, kilogram, kelvin, ampere.
using Dimension = std::array<int, 5>;

/// A factor to SI as a quotient, so that "3 mm" becomes the double nearest to 0.003.
struct Factor {
  double numerator = 1.0;
  double denominator = 1.0;
};

enum class TemperatureScale { none, celsius, fahrenheit, kelvin };

struct Symbol {
  std::string_view spelling;
  Dimension dimension;
  Factor factor;
  TemperatureScale scale =
      TemperatureScale::none;  ///< what the symbol means standing alone for a temperature
};

/// The symbol spelt so; if none is, the one whose spelling differs only in upper and lower case and is
/// the only such.
const Symbol* find_symbol(std::string_view spelling);

/// Why a spelling is refused although people use it ("oz"), and what to write; empty if it is not such
/// a one.
std::string_view ambiguity(std::string_view spelling);

struct UnitFacts {
  Unit unit;
  std::string_view name;
  std::string_view sign;
  Dimension dimension;
  Factor factor;
  std::vector<std::string_view> spellings;
};

const UnitFacts& unit_facts(Unit unit);

}  // namespace lastegg::unit_symbols
