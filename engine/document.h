// From request text to a JSON value, refusing what no question should ever see: text that is not JSON or not
// UTF-8, keys given twice, numbers too large for a double, and documents too large or too deep. Nothing is
// thrown.
#pragma once

#include <string_view>

#include "engine/json.h"
#include "physics/quantities/error.h"

namespace lastegg {

/// Limits of one request.
constexpr std::size_t k_longest_request_bytes = 16U * 1024U * 1024U;
constexpr std::size_t k_most_request_values = 2'000'000;
constexpr int k_deepest_request_levels = 64;

/// The JSON value of `text`.
/// Errors:  bad_input; syntax errors name line and column, others the place as a JSON pointer
/// Checked: engine/document_unit_test.cpp
Result<Json> parse_document(std::string_view text);

}  // namespace lastegg
