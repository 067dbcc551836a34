// A piece of furniture as plain values: corners, flat faces, parts, and the edges along which a steam head
// runs. Made by catalogue.h; nothing here refers to anything outside itself, so an Item may be
// copied and shared freely.
//
// Axes: x is width, left to right as seen from the front; y is depth, front to back; z is height above the
// floor. All lengths are in metres. Faces are flat, and their corners run counter-clockwise as seen from
// outside.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastegg::furniture {

/// What kind of line an edge is. The words of edge_kind_name() are a closed list that outsiders rely on.
enum class EdgeKind {
  seam,
  welt,
  tape_edge,
  fold,
  tuft,
  quilting,
  pleat,
  skirt,
  zip,
  handle,
  label,
  vent,
  staple_line,
  dust_cover_edge,
  leg_joint,
  gap,
  wood_joint,
  metal_joint,
  screw_hole,
  drawer_runner,
  headboard_back,
  skirting_gap,
  carpet_edge,
  curtain_heading,
  wall_joint,
  heap,
  electrical_cover
};

/// Cloth or other sheet over an edge.
enum class Covering {
  cotton,
  linen,
  polyester,
  velvet,
  wool,
  viscose,
  acrylic,
  olefin,
  leather,
  coated,
  mattress_tick,
  unknown
};

/// What lies right under the covering.
enum class Fill { batting_foam, foam, wood, none };

/// Finish of the wood or metal that is met at an edge; electronics stands for what no head may touch.
enum class Finish { bare, oil, wax, shellac, lacquer, varnish, paint, unknown, electronics };

/// One word of a closed list and what it means, for schemas and documentation.
template <class Word>
struct Meaning {
  Word word;
  std::string_view name;
  std::string_view text;
};

inline constexpr std::array<Meaning<EdgeKind>, 27> k_edge_kinds = {{
    {EdgeKind::seam, "seam", "two pieces of cover sewn together"},
    {EdgeKind::welt, "welt", "a seam with a covered cord in it"},
    {EdgeKind::tape_edge, "tape_edge", "the bound edge where a mattress panel meets its border"},
    {EdgeKind::fold, "fold", "a crevice where parts or cushions press together"},
    {EdgeKind::tuft, "tuft", "a row of stitches or buttons drawn through the filling"},
    {EdgeKind::quilting, "quilting", "a stitched line that holds cover and padding together"},
    {EdgeKind::pleat, "pleat", "cloth folded over itself, as at the corners of a skirt"},
    {EdgeKind::skirt, "skirt", "the hem of a skirt"},
    {EdgeKind::zip, "zip", "a zipper and the flaps that hide it"},
    {EdgeKind::handle, "handle", "the outline of a strap sewn to a mattress border"},
    {EdgeKind::label, "label", "the free sides of a sewn-in label"},
    {EdgeKind::vent, "vent", "the rim of an air hole in a mattress border"},
    {EdgeKind::staple_line, "staple_line", "cloth stapled to the frame"},
    {EdgeKind::dust_cover_edge, "dust_cover_edge", "the turned-under edge of the cloth beneath a seat"},
    {EdgeKind::leg_joint, "leg_joint", "the line around a leg where it meets the frame"},
    {EdgeKind::gap, "gap", "an open slot between hard parts"},
    {EdgeKind::wood_joint, "wood_joint", "a joint of wooden parts: rails, slat ends, shelves, corners"},
    {EdgeKind::metal_joint, "metal_joint", "a joint, hinge or socket of metal parts"},
    {EdgeKind::screw_hole, "screw_hole", "the recess around a screw head, or a row of empty holes"},
    {EdgeKind::drawer_runner, "drawer_runner", "the slot along the runner of a drawer"},
    {EdgeKind::headboard_back, "headboard_back", "the groove around the panel at the back of a headboard"},
    {EdgeKind::skirting_gap, "skirting_gap", "the gap behind or below a baseboard"},
    {EdgeKind::carpet_edge, "carpet_edge", "the edge of a carpet along a wall"},
    {EdgeKind::curtain_heading, "curtain_heading", "the gathered top of a curtain with its tape and hooks"},
    {EdgeKind::wall_joint, "wall_joint", "the line where wall and ceiling meet, cracked or papered over"},
    {EdgeKind::heap, "heap", "a crevice between things that lie on each other: each is treated by itself"},
    {EdgeKind::electrical_cover, "electrical_cover",
     "the rim of a plate or housing with wiring behind it: never steamed"},
}};

inline constexpr std::array<Meaning<Covering>, 12> k_coverings = {{
    {Covering::cotton, "cotton", "cotton cloth"},
    {Covering::linen, "linen", "linen cloth"},
    {Covering::polyester, "polyester", "polyester cloth, microfibre included"},
    {Covering::velvet, "velvet", "pile cloth"},
    {Covering::wool, "wool", "wool cloth"},
    {Covering::viscose, "viscose", "viscose (rayon) cloth"},
    {Covering::acrylic, "acrylic", "acrylic cloth"},
    {Covering::olefin, "olefin", "olefin (polypropylene) cloth"},
    {Covering::leather, "leather", "leather of any tannage"},
    {Covering::coated, "coated", "cloth coated with vinyl or polyurethane"},
    {Covering::mattress_tick, "mattress_tick", "mattress tick"},
    {Covering::unknown, "unknown", "not known"},
}};

inline constexpr std::array<Meaning<Fill>, 4> k_fills = {{
    {Fill::batting_foam, "batting_foam", "batting over foam"},
    {Fill::foam, "foam", "foam right under the covering"},
    {Fill::wood, "wood", "wood right under the covering"},
    {Fill::none, "none", "nothing: a hollow or cloth alone"},
}};

inline constexpr std::array<Meaning<Finish>, 9> k_finishes = {{
    {Finish::bare, "bare", "unfinished wood"},
    {Finish::oil, "oil", "oiled"},
    {Finish::wax, "wax", "waxed"},
    {Finish::shellac, "shellac", "shellac or French polish"},
    {Finish::lacquer, "lacquer", "nitrocellulose lacquer"},
    {Finish::varnish, "varnish", "catalysed or polyurethane varnish"},
    {Finish::paint, "paint", "paint"},
    {Finish::unknown, "unknown", "not known; a hidden spot is tried first"},
    {Finish::electronics, "electronics", "wiring, motor or switch behind it: never steamed"},
}};

/// The name of a word of one of the closed lists above.
std::string_view name_of(EdgeKind kind);
std::string_view name_of(Covering covering);
std::string_view name_of(Fill fill);
std::string_view name_of(Finish finish);

/// The word with that name, if the list has it.
std::optional<Covering> covering_named(std::string_view name);
std::optional<Finish> finish_named(std::string_view name);
std::optional<EdgeKind> edge_kind_named(std::string_view name);

/// A place in the room, metres.
struct Vertex {
  double x = 0.0;
  double y = 0.0;
  double z = 0.0;
};

/// A flat piece of surface. Faces with the same `body` together close a solid.
struct Face {
  std::string name;  ///< unique in the item: "seat_cushion_1.top"
  std::string part;
  std::string body;                   ///< "seat_cushion_1"
  std::vector<std::size_t> vertices;  ///< counter-clockwise from outside
};

/// A group of bodies that is opened and drawn together.
struct Part {
  std::string name;
  std::string title;
};

/// What lies between the head and the bug at an edge; handed on unchanged to the question of the pace.
struct Layers {
  Covering covering = Covering::unknown;
  Fill fill = Fill::batting_foam;
  std::optional<Finish> finish;  ///< only where finished wood, metal or wiring is met
};

/// A line that a head runs along.
struct Edge {
  std::string id;  ///< stable from build to build: "seat_cushion_1.front_welt"
  std::string title;
  EdgeKind kind = EdgeKind::seam;
  std::string part;
  /// In sight: the whole line lies on each face named. Not in sight: each piece of the line lies on one of
  /// them.
  std::vector<std::string> faces;
  std::vector<Vertex> points;  ///< first and last are equal where the line closes
  double length_metres = 0.0;
  double height_metres = 0.0;  ///< mean above the floor, weighted with length
  double lowest_metres = 0.0;
  double highest_metres = 0.0;
  bool in_sight = true;  ///< reached without lifting a cushion, turning the item or opening anything
  Layers layers;
};

/// A measure the item was built with, and where it came from.
struct UsedDimension {
  std::string name;
  double value_metres = 0.0;
  std::string source;
  std::string quality;
};

/// What to know before an item is worked on.
struct Caution {
  std::string text;
  std::string source;  ///< in words; "common practice, no source" where nobody wrote it down
};

struct Item {
  std::string kind;  ///< a name of the catalogue: "sofa", "night_table"
  std::string title;
  std::vector<Vertex> vertices;
  std::vector<Face> faces;
  std::vector<Part> parts;
  std::vector<Edge> edges;
  std::vector<UsedDimension> dimensions;
  std::vector<Caution> cautions;
};

}  // namespace lastegg::furniture
