// The two JSON types of the product. Their members are compiled once, in json.cpp: instantiated anew in every
// file that touches JSON they would take half of the build's time.
#pragma once

#include <nlohmann/json.hpp>

extern template class nlohmann::basic_json<>;
extern template class nlohmann::basic_json<nlohmann::ordered_map>;
