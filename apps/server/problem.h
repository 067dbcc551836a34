// Refusals over HTTP: RFC 9457 problem details that carry the same members as the engine's own errors, so
// that a program reads one shape wherever it asks. Pure functions.
#pragma once

#include <string>
#include <string_view>

#include "physics/quantities/error.h"

namespace lastegg::server {

/// An HTTP refusal: the status and the text of an application/problem+json document.
struct Problem {
  int status = 500;
  std::string text;
};

/// The media type of a Problem's text.
constexpr const char* k_problem_type = "application/problem+json";

/// Status for a kind of error: bad_input 400, not_found 404, out_of_domain 422, internal 500.
/// Source:  RFC 9110 section 15 (meaning of the codes)
/// Checked: apps/server/problem_unit_test.cpp
int status_of(std::string_view kind);

/// Problem details of the engine's `{"error":{...}}` text. Members: type, title, status, detail, and the
/// error's own kind, message, where, value, limit, unit. Text that is no such object becomes an internal
/// error (500). Source:  RFC 9457 section 3 Checked: apps/server/problem_unit_test.cpp
Problem problem_from_engine(std::string_view error_text);

/// Problem details of a refusal that arises in HTTP itself (no such page, body too large, wrong method).
/// Source:  RFC 9457 section 3
/// Checked: apps/server/problem_unit_test.cpp
Problem problem_from_http(int status, const Error& error);

}  // namespace lastegg::server
