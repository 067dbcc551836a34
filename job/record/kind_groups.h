// The tables of kinds by what they are about; kinds.cpp joins them. Constant data.
#pragma once

#include <vector>

#include "job/record/kinds.h"

namespace lastegg::record {

/// What an inspection found, and who and what is at risk.
std::vector<KindRule> inspection_kinds();

/// Equipment besides the steamer, and the checks of all of it.
std::vector<KindRule> equipment_kinds();

/// What was decided, done, read and handed over during visits.
std::vector<KindRule> visit_kinds();

}  // namespace lastegg::record
