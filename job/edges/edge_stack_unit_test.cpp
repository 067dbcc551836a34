// Every kind of edge in every covering over every fill gives layers and says what its figure is, or says why
// not.
#include "job/edges/edge_stack.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "job/furniture/item.h"
#include "physics/materials/materials.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg {
namespace {

constexpr Fill k_all_fills[] = {Fill::batting_foam, Fill::foam, Fill::wood, Fill::none};

double thickness_of(const EdgeStack& stack) {
  double sum = 0;
  for (const auto& layer : stack.layers) sum += layer.layer.thickness_metres;
  return sum;
}

EdgeKind kind_of(const char* key) {
  const auto kind = find_edge_kind(key);
  EXPECT_TRUE(kind) << key;
  return kind ? *kind : EdgeKind{};
}

TEST(EdgeKinds, NameWhatFurnitureHasAndWhatRoomsHave) {
  std::set<std::string> keys;
  for (const EdgeKind& kind : edge_kinds()) keys.insert(kind.key);
  for (const auto& meaning : furniture::k_edge_kinds)
    EXPECT_TRUE(keys.contains(std::string(meaning.name))) << meaning.name;
  for (const char* key : {"wood_joint", "screw_hole", "drawer_runner", "headboard_back", "skirting_gap",
                          "carpet_edge", "pile", "curtain_heading"})
    EXPECT_TRUE(keys.contains(key)) << key;
  EXPECT_EQ(keys.size(), furniture::k_edge_kinds.size() + 1) << "and the pile of a rug";
}

TEST(EdgeStack, EveryKindAndCoveringAndFillAnswers) {
  for (const EdgeKind& kind : edge_kinds()) {
    for (const Covering& covering : all_coverings()) {
      for (const Fill fill : k_all_fills) {
        const auto stack = edge_stack(kind.key, covering.word, fill);
        if (kind.family == ShapeFamily::none) {
          ASSERT_FALSE(stack) << kind.key;
          EXPECT_EQ(stack.error().value, "shape_not_modelled");
          continue;
        }
        ASSERT_TRUE(stack) << kind.key << " in " << covering.word << ": " << stack.error().message;
        EXPECT_GE(stack->target_depth_metres, stack->middle_depth_metres);
        EXPECT_GT(stack->middle_depth_metres, 0);
        EXPECT_LE(stack->depth_factor * stack->target_depth_metres, thickness_of(*stack));
        EXPECT_GE(stack->target_depth_metres, kind.depth.least_metres);
        EXPECT_GE(stack->target_depth_metres,
                  kind.depth.least_metres + 0.9 * (kind.depth.most_metres - kind.depth.least_metres) - 1e-12);
      }
    }
  }
}

TEST(EdgeStack, TheEngineTakesEveryStack) {
  for (const EdgeKind& kind : edge_kinds()) {
    for (const Fill fill : k_all_fills) {
      const auto stack = edge_stack(kind.key, "wool", fill);
      if (!stack) continue;
      steam::PassProblem pass;
      pass.head = {0.08, 95, 700, 65e3, 0.003, 0.02, 0.25};
      for (const auto& layer : stack->layers) pass.stack.push_back(layer.layer);
      pass.depths_metres = {
          std::max(stack->depth_factor * stack->target_depth_metres, stack->least_marched_metres)};
      const auto checked = steam::check(pass);
      EXPECT_TRUE(checked) << kind.key << ": " << (checked ? "" : checked.error().message);
    }
  }
}

TEST(EdgeStack, EggsLieUnderNoLessThanOneCoveringCloth) {
  for (const char* key : {"seam", "fold", "pleat", "skirt", "zip", "tuft", "welt", "curtain_heading"}) {
    for (const Covering& covering : all_coverings()) {
      const auto material = find_material(covering.material);
      ASSERT_TRUE(material);
      const auto stack = edge_stack(key, covering.word, Fill::batting_foam);
      ASSERT_TRUE(stack) << key;
      EXPECT_GE(stack->middle_depth_metres, material->thickness->value - 1e-12)
          << key << " in " << covering.word;
    }
  }
}

TEST(EdgeStack, SaysWhereTheFigureIsABound) {
  for (const EdgeKind& kind : edge_kinds()) {
    const auto stack = edge_stack(kind.key, "cotton", Fill::foam);
    if (!stack) continue;
    const bool expected = kind.bound || kind.family == ShapeFamily::crack ||
                          kind.family == ShapeFamily::cylinder ||
                          kind.family == ShapeFamily::cover_over_void || kind.hollow_radius_metres > 0;
    EXPECT_EQ(stack->claim == steam::Claim::bound, expected) << kind.key;
  }
  // A hollow behind any cloth makes it one.
  EXPECT_EQ(edge_stack("pleat", "cotton", Fill::none)->claim, steam::Claim::bound);
}

TEST(EdgeStack, CracksAreTheSolidAloneWhateverCoversThem) {
  const auto olefin = edge_stack("leg_joint", "olefin", Fill::wood);
  const auto cotton = edge_stack("leg_joint", "cotton", Fill::foam);
  ASSERT_TRUE(olefin && cotton);
  ASSERT_EQ(olefin->layers.size(), 1U);
  EXPECT_FALSE(olefin->layers[0].layer.permeable);
  EXPECT_EQ(olefin->layers[0].layer.conductivity_watts_per_metre_kelvin,
            cotton->layers[0].layer.conductivity_watts_per_metre_kelvin);
  EXPECT_EQ(olefin->target_depth_metres, cotton->target_depth_metres);
  // Where the lips stand at an angle the way counts three times.
  EXPECT_EQ(olefin->depth_factor, 3);
  EXPECT_EQ(edge_stack("gap", "cotton", Fill::foam)->depth_factor, 1);
  EXPECT_NEAR(olefin->target_depth_metres, 0.0047, 1e-9);
}

TEST(EdgeStack, EggsAgainstWoodStayAtTheEndOfTheCloth) {
  const auto stack = edge_stack("staple_line", "olefin", Fill::foam);
  ASSERT_TRUE(stack);
  ASSERT_EQ(stack->layers.size(), 2U);
  EXPECT_FALSE(stack->layers[1].layer.permeable);
  EXPECT_EQ(stack->layers[0].thickness_spread, 0);
  EXPECT_LE(stack->target_depth_metres, stack->layers[0].layer.thickness_metres);
}

TEST(EdgeStack, AHollowTakesHeatFromTheBackOfTheCloth) {
  const auto open = edge_stack("dust_cover_edge", "olefin", Fill::wood);
  ASSERT_TRUE(open);
  ASSERT_EQ(open->layers.size(), 3U);  // cover, film, sponge
  EXPECT_NEAR(open->layers[0].layer.thickness_metres, 0.0008 + 0.00005 * 0.05 / 0.026, 1e-9);
  EXPECT_EQ(kind_of("dust_cover_edge").family, ShapeFamily::cover_over_void);
  EXPECT_FALSE(kind_of("dust_cover_edge").not_covered.empty());
}

TEST(EdgeStack, RefusesWordsItDoesNotKnow) {
  EXPECT_EQ(edge_stack("seem", "cotton", Fill::foam).error().kind, ErrorKind::not_found);
  EXPECT_EQ(edge_stack("seam", "cloth of gold", Fill::foam).error().kind, ErrorKind::not_found);
}

}  // namespace
}  // namespace lastegg
