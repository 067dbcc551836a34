// Building blocks of furniture: closed convex bodies with flat, named, outward faces, and the lines that can
// be read off them. Values in, values out; an Item is built by adding bodies and edges to it. All lengths in
// metres.
#pragma once

#include <array>
#include <string>
#include <utility>
#include <vector>

#include "job/furniture/item.h"

namespace lastegg::furniture {

Vertex operator+(const Vertex& a, const Vertex& b);
Vertex operator-(const Vertex& a, const Vertex& b);
Vertex operator*(double factor, const Vertex& a);

/// Distance between two points, metres.
double distance(const Vertex& a, const Vertex& b);

/// Length of a line through `points`, metres.
double length_of(const std::vector<Vertex>& points);

/// The point that divides the way from `a` to `b`; share 0 is a, 1 is b.
Vertex between(const Vertex& a, const Vertex& b, double share);

/// A point of a flat drawing.
struct Point {
  double u = 0.0;
  double v = 0.0;
};

/// A convex body before it is put into an item: its corners and its faces by name.
struct Body {
  std::string name;
  std::string part;
  std::vector<Vertex> corners;
  std::vector<std::pair<std::string, std::vector<std::size_t>>> faces;  ///< name without the body's
};

/// A box between two opposite corners. Faces: left, right (x), front, back (y), bottom, top (z).
Body box(std::string name, std::string part, const Vertex& low, const Vertex& high);

/// A square post, `top_side` wide above and `foot_side` wide below, around the vertical line through
/// `foot_centre`. Faces as of a box.
Body tapered_post(std::string name, std::string part, const Vertex& foot_centre, double foot_side,
                  double top_side, double height);

/// Which way a drawing is drawn out to a body: a drawing in (y, z) along x, in (x, z) along y, in (x, y)
/// along z.
enum class Direction { along_x, along_y, along_z };

/// A convex drawing drawn out from `from` to `to`. `side_names` has one name per side of the drawing, side i
/// running from corner i to corner i + 1. Faces: `start_name` at `from`, `end_name` at `to`, and the sides.
Body drawn_out(std::string name, std::string part, const std::vector<Point>& drawing, Direction direction,
               double from, double to, const std::string& start_name, const std::string& end_name,
               const std::vector<std::string>& side_names);

/// The corner `at` between `before` and `after` replaced by an arc of `segments` chords that starts `reach`
/// before the corner: segments + 1 points.
std::vector<Point> rounded_corner(const Point& before, const Point& at, const Point& after, double reach,
                                  int segments);

/// Where a cushion stands: its lower left corner and three unit directions: across its width, along its
/// panel, and through its thickness towards the crowned panel. They need not be at right angles to each
/// other.
struct CushionFrame {
  Vertex origin;
  Vertex across;
  Vertex along;
  Vertex through;
};

/// Sizes of a boxed cushion. Its boxing is as wide and long as stated; both panels are smaller by `bulge` on
/// every side, as those of a filled box are; the outer panel rises to the crown in two steps.
struct CushionShape {
  double width = 0.0;
  double length = 0.0;
  double thickness = 0.0;
  double bulge = 0.0;
  double rim = 0.0;  ///< from a welt down to where the boxing stands full
  double crown = 0.0;
  double shoulder = 0.0;  ///< from the welt to the first step of the crown
  double slope = 0.0;     ///< from the welt to the level top of the crown
};

/// What the faces of a cushion are called.
struct CushionNames {
  std::array<std::string, 4> sides;  ///< at the start of `along`, right, at the end of `along`, left
  std::string inner_panel;           ///< flat
  std::string outer_panel;           ///< crowned
  std::string inner_rim;             ///< sloping strip of each side next to the inner panel
  std::string outer_rim;
};

/// Corners in the order: left and right at the start of `along`, right and left at its end.
using Corners = std::array<Vertex, 4>;

/// A cushion and the lines around it, from the inner panel to the outer one.
struct Cushion {
  Body body;
  Corners inner;       ///< the inner panel's welt
  Corners inner_full;  ///< where the boxing becomes full
  Corners outer_full;  ///< where it ends being full: neighbours part here
  Corners outer;       ///< the outer panel's welt
  Corners crown;       ///< around the level top
};

Cushion boxed_cushion(std::string name, std::string part, const CushionFrame& frame,
                      const CushionShape& shape, const CushionNames& names);

/// Adds a body's corners and faces to the item; each face is turned so that its normal points out.
void add_body(Item& item, const Body& body);

/// What an edge is, apart from what follows from its points.
struct EdgeDraft {
  std::string id;
  std::string title;
  EdgeKind kind = EdgeKind::seam;
  std::string part;
  std::vector<std::string> faces;
  std::vector<Vertex> points;
  bool in_sight = true;
  Layers layers;
};

/// Adds an edge to the item with the length and heights that follow from its points.
void add_edge(Item& item, EdgeDraft draft);

}  // namespace lastegg::furniture
