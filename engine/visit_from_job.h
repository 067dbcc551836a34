// From the state of a job (as the question fold_events gives it) and the answer of the question plan to the
// requests of `method`, `visit` and `preparation`. Pure functions; what the state lacks is left out.
#pragma once

#include "engine/json.h"
#include "physics/quantities/error.h"

namespace lastegg {

/// What evidence says of each item: a finding of the question plan, by index of the item in the state. An
/// edge that the furniture does not have counts for the whole item.
Json seen_of(const Json& state, const Json& furniture);

/// Request of `method`. `plan` may be null.
Json method_request_of(const Json& state, const Json& plan, const Json& options);

/// Request of `visit`, with what `method` answered.
Json visit_request_of(const Json& state, const Json& plan, const Json& options, const Json& method_answer);

/// Request of `preparation`.
Json preparation_request_of(const Json& method_request, const Json& method_answer);

}  // namespace lastegg
