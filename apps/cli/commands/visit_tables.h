// The tables that lastegg visit and lastegg method print.
#pragma once

#include <string>

#include "engine/json.h"

namespace lastegg::cli {

std::string method_table(const Json& answer);
std::string visit_table(const Json& answer);
std::string preparation_table(const Json& answer);

}  // namespace lastegg::cli
