// Every kind of edge in every covering gives layers or says why not.
#include "job/edges/edge_stack.h"

#include <gtest/gtest.h>

#include "physics/materials/materials.h"

namespace lastegg {
namespace {

TEST(EdgeStack, EveryKindAndCoveringAnswers) {
  EXPECT_EQ(edge_kinds().size(), 16U);
  for (const EdgeKind& kind : edge_kinds()) {
    for (const Covering& covering : all_coverings()) {
      const auto stack = edge_stack(kind.key, covering.word, Fill::batting_foam);
      if (!kind.modelled) {
        ASSERT_FALSE(stack) << kind.key;
        EXPECT_EQ(stack.error().value, "shape_not_modelled");
        continue;
      }
      ASSERT_TRUE(stack) << kind.key << " in " << covering.word << ": " << stack.error().message;
      double thickness = 0;
      for (const auto& layer : stack->layers) thickness += layer.layer.thickness_metres;
      EXPECT_GT(stack->target_depth_metres, stack->middle_depth_metres);
      EXPECT_LT(stack->target_depth_metres, thickness);
      EXPECT_GE(stack->target_depth_metres, kind.least_depth_metres);
      EXPECT_LE(stack->target_depth_metres, kind.most_depth_metres);
    }
  }
}

TEST(EdgeStack, RefusesWordsItDoesNotKnow) {
  EXPECT_EQ(edge_stack("seem", "cotton", Fill::foam).error().kind, ErrorKind::not_found);
  EXPECT_EQ(edge_stack("seam", "cloth of gold", Fill::foam).error().kind, ErrorKind::not_found);
}

}  // namespace
}  // namespace lastegg
