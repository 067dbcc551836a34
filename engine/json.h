// The one JSON type of the engine: keys keep the order in which the documentation shows them.
#pragma once

#include "physics/evidence/json.h"

namespace lastegg {
using Json = nlohmann::ordered_json;
}
