// The plain values of a request, one reader per kind, and the sentences in which any value is refused. Part
// of the reader in shape_read.cpp; questions use engine/shape.h.
#pragma once

#include "engine/place.h"
#include "engine/shape.h"

namespace lastegg {

/// The refusal "<place> is <given>; it must be <demand>".
Error refused(const Place& place, const Json& value, const std::string& given, const std::string& demand);

/// What a shape asks for, in words that follow "it must be".
std::string wanted(const Shape& shape);

/// The refusal of a value whose JSON type, or form, is not the shape's.
Refusal wrong_type(const Shape& shape, const Json& value, const Place& place);

Result<Json> read_number(const Shape& shape, const Json& value, const Place& place);
Result<Json> read_integer(const Shape& shape, const Json& value, const Place& place);
Result<Json> read_choice(const Shape& shape, const Json& value, const Place& place);
Result<Json> read_date(const Shape& shape, const Json& value, const Place& place);

}  // namespace lastegg
