// What cupboards and chests have in common: a carcass with its back panel, shelves, drawers on runners,
// doors. Used by storage.cpp.
#pragma once

#include <string>

#include "job/furniture/assembly.h"
#include "job/furniture/pieces.h"

namespace lastegg::furniture {

/// The room inside a carcass, open at the front.
struct Hollow {
  Plan plan;
  double bottom = 0.0, top = 0.0;

  double height() const { return top - bottom; }
  /// The hollow's share from the top, `number` of `count` counted from 0, and likewise from the left.
  Hollow row(int number, int count) const;
  Hollow column(int number, int count, double board) const;
};

/// Two sides, bottom, top and a back panel in a groove; ids begin with `name`. `open` tells whether the
/// joints inside are in sight.
Hollow add_carcass(Assembly& a, const std::string& name, const Plan& outer, double bottom, double top,
                   bool open);

/// A shelf across a hollow, with the joint around its upper and its lower side. Returns its block.
Block add_shelf(Assembly& a, const std::string& name, const std::string& title, const Hollow& hollow,
                double z, bool in_sight);

/// A drawer that fills a hollow: its front, its box, its runners.
void add_drawer(Assembly& a, const std::string& name, const std::string& title, const Hollow& hollow);

/// Doors side by side in front of a hollow, `y` being their front.
void add_doors(Assembly& a, int count, const Hollow& hollow, double y);

/// A base board between the sides below a carcass, with the floor gap in front of it.
void add_plinth(Assembly& a, const Plan& outer, double height);

}  // namespace lastegg::furniture
