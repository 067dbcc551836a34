// The rows of the catalogue, a function for each group. Used by catalogue.cpp only.
#pragma once

#include <vector>

#include "job/furniture/catalogue.h"

namespace lastegg::furniture {

std::vector<Kind> bed_kinds();
std::vector<Kind> seat_kinds();
std::vector<Kind> storage_kinds();
std::vector<Kind> small_kinds();
std::vector<Kind> room_kinds();

}  // namespace lastegg::furniture
