#include "engine/edge_family.h"

#include <fmt/format.h>

#include "engine/steam_shapes.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

std::string claim_words(steam::Claim claim) {
  return claim == steam::Claim::bound ? say("bound: the place is at least as warm as computed")
                                      : say("computed as it lies");
}

// What the bound leaves out.
std::string left_out(ShapeFamily family) {
  switch (family) {
    case ShapeFamily::crack:
      return say("through the solid from its lip alone, without the steam that enters the crack");
    case ShapeFamily::cylinder:
      return say("straight through cover and cord, without the steam around the curve");
    case ShapeFamily::cover_over_void:
      return say("with a hollow behind that stays cold and dry");
    default:
      return say("no more than is sure");
  }
}

}  // namespace

Field edge_family_field() {
  std::vector<Choice> families;
  for (const ShapeFamily family : shape_families())
    families.push_back({std::string(word(family)), std::string(meaning(family))});
  return optional(
      "shape",
      object(
          {field("family", choice(std::move(families), "how the edge is modelled")),
           field("bound", flag("the place is at least as warm as computed; never proof of too cold")),
           field("text", text("in words")),
           field("not_covered", text("places of such an edge that the figure says nothing about").or_null())},
          "the shape of the edge; absent where the layers were given"));
}

Json edge_family_json(const EdgeKind& kind, steam::Claim claim) {
  Json not_covered = nullptr;
  if (!kind.not_covered.empty()) not_covered = in_language(kind.not_covered);
  return {{"family", std::string(word(kind.family))},
          {"bound", claim == steam::Claim::bound},
          {"text", fmt::format("{}; {}", in_language(meaning(kind.family)), claim_words(claim))},
          {"not_covered", not_covered}};
}

Json bound_reason(const EdgeKind& kind, double target_depth_metres, double confidence) {
  const std::string tail =
      kind.not_covered.empty() ? "" : say(" Not looked at: {}.", in_language(kind.not_covered));
  return reason(
      "bound_not_lethal",
      say("Nothing is proven of eggs {:.1f} mm deep with {:.0f} % confidence when they are warmed {}. "
          "They are warmer than that, nobody has measured by how much: steam it slowly by the "
          "practice of the trade, at a crack with the towel off, look again, and count it as not "
          "proven; or lay the place open and steam it there.{}",
          1e3 * target_depth_metres, 100 * confidence, left_out(kind.family), tail));
}

bool is_bare(const EdgeKind& kind) {
  return kind.family == ShapeFamily::crack;
}

}  // namespace lastegg
