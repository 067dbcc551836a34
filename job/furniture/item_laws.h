// What must hold for any piece of furniture, checked with arithmetic of its own. Each function returns
// complaints, none when the law holds, so that tests can also show that a spoilt item is noticed. For tests
// only.
#pragma once

#include <string>
#include <vector>

#include "job/furniture/item.h"

namespace lastegg::furniture::laws {

using Complaints = std::vector<std::string>;

/// Every face is flat; every body is closed, convex and turned outwards.
Complaints faces_close_bodies(const Item& item);

/// No two bodies share any volume.
Complaints bodies_do_not_overlap(const Item& item);

/// Edges lie on the faces they name, in the part's surface, inside the item; their lengths and heights follow
/// from their points; names are unique slugs.
Complaints edges_are_honest(const Item& item);

/// No stretch of any edge lies on another edge.
Complaints edges_do_not_repeat(const Item& item);

/// All of the above.
Complaints all(const Item& item);

/// Volume of one body by the divergence theorem, cubic metres.
double volume_of(const Item& item, const std::string& body);

}  // namespace lastegg::furniture::laws
