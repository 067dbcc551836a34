// Errors are values of a closed list. Every function of the core that can refuse returns Result<T>;
// nothing is thrown across the core's edge, because a throw would end a WebAssembly instance. Plain
// values, no shared state.
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>

namespace lastegg {

enum class ErrorKind {
  bad_input,      ///< a value cannot be used: outside its limits, of the wrong type, missing, misspelt
  not_found,      ///< a name that the data files or the job do not hold
  out_of_domain,  ///< a valid value for which the model gives no answer
  internal        ///< a defect of ours
};

/// What was refused, in words a person can act on, with the value, the limit and the unit apart for
/// programs.
struct Error {
  ErrorKind kind = ErrorKind::internal;
  std::string message;  ///< full sentence naming value, limit and unit
  std::string where;    ///< JSON pointer into the request ("/head/dew_celsius"); empty: the whole request
  std::string value;    ///< as given; empty if it has none
  std::string limit;    ///< the limit passed over; empty if it has none
  std::string unit;     ///< unit of value and limit; empty if it has none
};

template <class T>
using Result = tl::expected<T, Error>;

using Refusal = tl::unexpected<Error>;

/// Wraps an error for a `return`.
inline Refusal refuse(Error error) {
  return Refusal(std::move(error));
}

}  // namespace lastegg
