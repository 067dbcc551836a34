// The pieces a sofa is put together from; each call adds bodies and their edges to the item. Used by sofa.cpp
// only.
#pragma once

#include <string>

#include "job/furniture/item.h"
#include "job/furniture/sofa.h"
#include "job/furniture/sofa_measures.h"

namespace lastegg::furniture {

/// Base under the seat, arms, back frame and the crevices between them.
void add_sofa_frame(Item& item, const SofaMeasures& m, const SofaRequest& request);

/// Seat and back cushions with their welts, zips, seams and crevices.
void add_sofa_cushions(Item& item, const SofaMeasures& m, const SofaRequest& request);

/// Dust cover, legs, and the skirt if there is one.
void add_sofa_underside(Item& item, const SofaMeasures& m, const SofaRequest& request);

}  // namespace lastegg::furniture
