// Loose cushions with boxing: the welts around their panels and the zip in their boxing. Used by sofas of
// every shape. Pure functions on an item.
#pragma once

#include <array>
#include <string>

#include "job/furniture/item.h"
#include "job/furniture/solid.h"

namespace lastegg::furniture {

/// What the faces of a cushion are called that lies on a deck, and of one that stands against a back.
const CushionNames& seat_cushion_names();
const CushionNames& back_cushion_names();

/// A cushion of that boxing whose crown rises in two steps, as drawn.
CushionShape cushion_shape(double width, double length, double thickness, double bulge, double rim,
                           double crown);

/// The welts around both panels. `hidden` tells for the sides of the outer panel and then of the inner one
/// whether the welt is out of sight.
void add_welts(Item& item, const Cushion& cushion, const CushionNames& names, const std::string& title,
               const std::array<bool, 8>& hidden, const Layers& layers);

/// The zip in the middle of one side of the boxing, and the two seams where its strip meets the rest of the
/// boxing. All are out of sight. The side runs from corner `first` to the next one; `ends` says what lies at
/// its two ends.
void add_zip(Item& item, const Cushion& cushion, const CushionNames& names, const std::string& title,
             std::size_t first, const std::array<std::string, 2>& ends, const Layers& layers);

}  // namespace lastegg::furniture
