#include "job/furniture/edge_changes.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "job/furniture/catalogue.h"

using namespace lastegg;
using namespace lastegg::furniture;

namespace {

Item sofa() {
  ItemRequest request;
  request.kind = "sofa";
  return *build_item(request);
}

EdgeChange of(EdgeChange::What what, std::string edge) {
  EdgeChange change;
  change.what = what;
  change.edge = std::move(edge);
  return change;
}

double length_of(const Item& item) {
  double sum = 0;
  for (const Edge& edge : item.edges) sum += edge.length_metres;
  return sum;
}

}  // namespace

TEST(EdgeChanges, SplitKeepsTheLineAndItsLength) {
  const Item item = sofa();
  for (const Edge& edge : item.edges) {
    EdgeChange split = of(EdgeChange::What::split, edge.id);
    split.at_share = 0.37;
    if (std::min(0.37, 0.63) * edge.length_metres < k_shortest_piece_metres) continue;
    const auto changed = with_changes(item, std::span(&split, 1));
    ASSERT_TRUE(changed) << edge.id;
    ASSERT_EQ(changed->edges.size(), item.edges.size() + 1);
    const auto first = std::find_if(changed->edges.begin(), changed->edges.end(),
                                    [&](const Edge& one) { return one.id == edge.id + ".1"; });
    ASSERT_NE(first, changed->edges.end());
    EXPECT_NEAR(first->length_metres, 0.37 * edge.length_metres, 1e-9) << edge.id;
    EXPECT_NEAR(length_of(*changed), length_of(item), 1e-9) << edge.id;
    EXPECT_GE(first->height_metres, first->lowest_metres - 1e-12);
    EXPECT_LE(first->height_metres, first->highest_metres + 1e-12);
  }
}

TEST(EdgeChanges, AddRenameAndLeaveOut) {
  const Item item = sofa();
  const std::string known = item.edges.front().id, gone = item.edges.back().id;
  EdgeChange rename = of(EdgeChange::What::renamed, known);
  rename.title = "The torn seam";
  EdgeChange added = of(EdgeChange::What::added, "");
  added.id = "mended_tear";
  added.title = "Mended tear";
  added.length_metres = 0.3;
  added.height_metres = 0.5;
  const EdgeChange changes[] = {rename, of(EdgeChange::What::left_out, gone), added};
  const auto changed = with_changes(item, changes);
  ASSERT_TRUE(changed);
  EXPECT_EQ(changed->edges.size(), item.edges.size());
  EXPECT_EQ(changed->edges.front().title, "The torn seam");
  EXPECT_EQ(changed->edges.back().id, "mended_tear");
  EXPECT_EQ(changed->edges.back().layers.covering, item.edges.front().layers.covering);
  EXPECT_TRUE(changed->edges.back().points.empty());
}

TEST(EdgeChanges, RefuseWithThePlace) {
  const Item item = sofa();
  const EdgeChange unknown = of(EdgeChange::What::left_out, "no_such_edge");
  const auto first = with_changes(item, std::span(&unknown, 1));
  ASSERT_FALSE(first);
  EXPECT_EQ(first.error().where, "/changes/0/edge");
  EdgeChange near_the_end = of(EdgeChange::What::split, item.edges.front().id);
  near_the_end.at_share = 0.0001;
  const auto second = with_changes(item, std::span(&near_the_end, 1));
  ASSERT_FALSE(second);
  EXPECT_EQ(second.error().where, "/changes/0/at_share");
  EXPECT_EQ(second.error().limit, "0.02");
  EXPECT_EQ(second.error().unit, "m");
  EdgeChange twice = of(EdgeChange::What::added, "");
  twice.id = item.edges.front().id;
  twice.title = "Again";
  twice.length_metres = 1;
  const auto third = with_changes(item, std::span(&twice, 1));
  ASSERT_FALSE(third);
  EXPECT_EQ(third.error().where, "/changes/0/id");
}
