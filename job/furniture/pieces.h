// What many pieces of furniture have in common: legs, dust covers, padded blocks, slatted decks, screws. Each
// call adds bodies and edges to the part that the assembly is at.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "job/furniture/assembly.h"

namespace lastegg::furniture {

constexpr const char* k_practice = "common practice, no source";

/// A rectangle on the floor plan.
struct Plan {
  double left = 0.0, front = 0.0, right = 0.0, back = 0.0;

  Plan shrunk(double by) const { return {left + by, front + by, right - by, back - by}; }
  double width() const { return right - left; }
  double depth() const { return back - front; }
};

/// A box over a plan.
Block slab(Assembly& a, std::string name, const Plan& plan, double bottom, double top);

/// Four legs under a plan, each with the joint around its top; `legs` begins their names.
void add_legs(Assembly& a, const Plan& plan, double height, double side, const Layers& layers);

/// The cloth stapled under a frame: its turned edges and staple lines. Returns the height of its underside.
double add_dust_cover(Assembly& a, const Plan& plan, double underside);

/// A padded block with welts around its upper side, upright seams at its corners and, below, the line where
/// the cloth is stapled or sewn; `hidden` are sides out of sight.
Block add_padded(Assembly& a, const std::string& name, const std::string& title, const Plan& plan,
                 double bottom, double top, const std::vector<Side>& hidden = {});

/// Slats across between two ledges and over a middle beam, with the lines along their ends. `z` is the top of
/// the ledges. Names begin with `name`.
void add_slats(Assembly& a, const std::string& name, const std::string& title, const Plan& plan, double z);

/// Posts at the four corners outside a plan, from the floor up: front left, front right, back left, back
/// right.
std::array<Block, 4> add_posts(Assembly& a, const Plan& inner, double side, double height);

/// Rails around a plan that stand between four corner posts, with the joints at the posts.
struct Rails {
  Block left, right, front, back;
};
Rails add_rails(Assembly& a, const std::string& name, const std::string& title, const Plan& between_posts,
                double thickness, double bottom, double top);

/// The recess of a screw or bolt head on one side of a block: a ring around `centre`.
void add_screw(Assembly& a, const Block& block, Side side, const Vertex& centre, const std::string& id,
               const std::string& title, const Layers& layers, bool in_sight = k_in_sight);

/// The middle of one side of a block.
Vertex middle_of(const Block& block, Side side);

}  // namespace lastegg::furniture
