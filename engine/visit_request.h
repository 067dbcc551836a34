// Request of the question `visit`: its shape, and reading it into the tasks' plain values.
#pragma once

#include <optional>

#include "engine/question.h"
#include "job/visits/visit_tasks.h"

namespace lastegg {

Shape visit_request_shape();

/// What the boiler says about the steam of the visit.
struct BoilerPart {
  Json answer;  ///< of the question boiler; null: the machine is not known well enough
  visits::Steamer steamer;
};

struct VisitRequest {
  visits::Visit visit;
  BoilerPart boiler;
  double steam_minutes = 0;
};

/// Errors:  bad_input with the place in the request.
Result<VisitRequest> read_visit(const Json& request);

}  // namespace lastegg
