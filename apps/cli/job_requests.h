// From the state of a job to the requests that its questions take. The same mapping as the page's.
#pragma once

#include "engine/json.h"
#include "physics/quantities/error.h"

namespace lastegg::cli {

/// Request of the question `plan` for a job: its fold tests with readings (the one that the settings name
/// first), else the prior, and all items. Errors:  bad_input when the job has no items
Result<Json> plan_request_of(const Json& state);

}  // namespace lastegg::cli
