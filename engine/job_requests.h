// From the state of a job, as the question fold_events gives it, to the requests that the other questions
// take. The only place that knows which recorded facts go where. Pure functions; what the state lacks is left
// out, and what does not fit is for the question to refuse.
#pragma once

#include "engine/json.h"
#include "physics/quantities/error.h"

namespace lastegg {

/// Request of `furniture` for an item of the state: every key that its kind takes, and what was changed of
/// its edges.
Json furniture_request_of(const Json& item, const Json& state);

/// Request of `fold_test` for a test of the state, with the last test of the same head and towel before it
/// (`earlier`) and the latest ones of other heads and towels of the machine; null while it has no readings.
Json fold_test_request_of(const Json& test, const Json& state);

/// What the requests of `pace` and `plan` share: `fold_test`, a list whose first entry is the test in use and
/// whose others are the latest of the same head and towel in other coverings; or else `prior`, with what the
/// machine's other heads and towels showed.
/// Model:   the head and towel asked for are those of the test that the settings name, else of the last test
///          with readings, else of the last test or of the last entries of the kit.
Json pace_kit_of(const Json& state);

/// Id of the test that pace_kit_of() puts first; null where it gives a prior.
Json test_in_use(const Json& state);

/// Request of the question `plan` for all items.
/// Errors:  bad_input when the job has no items
Result<Json> plan_request_of(const Json& state);

}  // namespace lastegg
