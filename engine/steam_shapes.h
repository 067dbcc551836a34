// Shapes and readings that the steam questions share: heads, stacks, layers, spreads over an ensemble.
#pragma once

#include "engine/question.h"
#include "treatments/steam/pace/pace.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg {

/// A list of layers from the steamed surface down; each a material of the data files or explicit properties.
Shape stack_shape(std::string text);

/// The layers of a checked stack.
/// Errors:  not_found with the nearest material; bad_input for a material that needs a thickness.
Result<steam::Stack> read_stack(const Json& stack, const std::string& where);

/// {"dew_celsius", "film_watts_per_m2_kelvin", ...}: a head whose effect is known.
Shape head_shape(bool with_pace);
steam::Head read_head(const Json& head);

/// The pressure of a request that has `pressure_pascal` or `elevation_metres` (neither: sea level).
std::vector<Field> pressure_fields();
Result<double> read_pressure(const Json& request);

/// {"p05", ..., "p95"} in one unit.
Shape spread_shape(Unit unit, std::string text);
Json to_json(const steam::Spread& spread, double scale = 1);

/// {"code", "text"}
Shape reason_shape(std::string text);
Json reason(const std::string& code, const std::string& text);

}  // namespace lastegg
