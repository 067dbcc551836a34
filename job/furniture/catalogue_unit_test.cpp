#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <set>

#include "job/furniture/catalogue.h"
#include "job/furniture/dimensions.h"

namespace lastegg::furniture {
namespace {

Item usual(const std::string& kind) {
  ItemRequest request;
  request.kind = kind;
  return build_item(request).value();
}

Error refusal_of(const ItemRequest& request) {
  const auto item = build_item(request);
  return item ? Error{} : item.error();
}

const Edge& edge_named(const Item& item, const std::string& id) {
  const auto found =
      std::find_if(item.edges.begin(), item.edges.end(), [&](const Edge& edge) { return edge.id == id; });
  if (found != item.edges.end()) return *found;
  ADD_FAILURE() << "no edge " << id;
  static const Edge none;
  return none;
}

long count_of(const Item& item, EdgeKind kind) {
  return std::count_if(item.edges.begin(), item.edges.end(),
                       [&](const Edge& edge) { return edge.kind == kind; });
}

}  // namespace

TEST(catalogue_unit, names_are_unique_and_every_measure_has_its_dimension) {
  std::set<std::string> names;
  const auto& dimensions = furniture_dimensions()->dimensions;
  for (const Kind& kind : catalogue()) {
    EXPECT_TRUE(names.insert(kind.name).second) << kind.name;
    EXPECT_EQ(kind_named(kind.name), &kind);
    std::set<std::string> keys;
    for (const Measure& measure : kind.measures) {
      EXPECT_TRUE(keys.insert(measure.key).second) << kind.name << measure.key;
      EXPECT_FALSE(measure.text.empty());
      EXPECT_TRUE(
          std::any_of(dimensions.begin(), dimensions.end(),
                      [&](const Dimension& d) { return d.name == measure.dimension && d.unit == "m"; }))
          << kind.name << " " << measure.dimension;
    }
    for (const Count& count : kind.counts) {
      EXPECT_TRUE(keys.insert(count.key).second);
      EXPECT_LE(count.lowest, count.usual);
      EXPECT_LE(count.usual, count.highest);
    }
    for (const Option& option : kind.options) EXPECT_TRUE(keys.insert(option.key).second);
  }
  EXPECT_EQ(names.size(), 36U);
  EXPECT_EQ(kind_named("aquarium"), nullptr);
}

TEST(catalogue_unit, items_bear_the_name_of_their_kind_and_parts_that_hold_something) {
  for (const Kind& kind : catalogue()) {
    const Item item = usual(kind.name);
    EXPECT_EQ(item.kind, kind.name);
    EXPECT_FALSE(item.title.empty());
    std::set<std::string> parts;
    for (const Part& part : item.parts) {
      EXPECT_TRUE(parts.insert(part.name).second) << kind.name << part.name;
      EXPECT_FALSE(part.title.empty());
    }
    std::set<std::string> dimensions;
    for (const UsedDimension& used : item.dimensions) {
      EXPECT_TRUE(dimensions.insert(used.name).second) << kind.name << " tells " << used.name << " twice";
      EXPECT_FALSE(used.source.empty());
    }
    for (const Caution& caution : item.cautions) {
      EXPECT_GT(caution.text.size(), 20U);
      EXPECT_FALSE(caution.source.empty());
    }
  }
}

TEST(catalogue_unit, every_word_for_an_edge_is_met_somewhere) {
  std::set<EdgeKind> met;
  for (const Kind& kind : catalogue()) {
    ItemRequest request;
    request.kind = kind.name;
    for (const Option& option : kind.options) request.options.insert(option.key);
    const Item item = build_item(request).value();
    for (const Edge& edge : item.edges) met.insert(edge.kind);
  }
  for (const auto& meaning : k_edge_kinds) EXPECT_EQ(met.count(meaning.word), 1U) << meaning.name;
}

TEST(catalogue_unit, what_a_kind_does_not_take_is_refused_with_its_key) {
  ItemRequest request;
  request.kind = "aquarium";
  EXPECT_EQ(refusal_of(request).kind, ErrorKind::not_found);
  EXPECT_EQ(refusal_of(request).where, "/item");
  request.kind = "bookcase";
  request.measures["seat_height_metres"] = 0.4;
  EXPECT_EQ(refusal_of(request).where, "/seat_height_metres");
  request.measures = {};
  request.counts["doors"] = 2;
  EXPECT_EQ(refusal_of(request).where, "/doors");
  request.counts = {{"shelves", 9}};
  EXPECT_EQ(refusal_of(request).where, "/shelves");
  EXPECT_EQ(refusal_of(request).limit, "8");
  request.counts = {};
  request.options = {"tufted"};
  EXPECT_EQ(refusal_of(request).where, "/tufted");
  request.options = {};
  request.size = "queen";
  EXPECT_EQ(refusal_of(request).where, "/size");
  request.size = {};
  request.covering = Covering::velvet;
  EXPECT_EQ(refusal_of(request).where, "/covering");
  request.covering = {};
  request.kind = "socket_plate";
  request.finish = Finish::paint;
  EXPECT_EQ(refusal_of(request).where, "/finish");
  request.finish = {};
  request.kind = "slatted_frame";
  request.size = "emperor";
  EXPECT_EQ(refusal_of(request).kind, ErrorKind::not_found);
  EXPECT_EQ(refusal_of(request).where, "/size");
}

TEST(catalogue_unit, measures_outside_their_limits_and_numbers_that_are_none_are_refused_by_every_kind) {
  for (const Kind& kind : catalogue()) {
    for (const Measure& measure : kind.measures) {
      for (const double wrong :
           {-1.0, 1e6, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        ItemRequest request;
        request.kind = kind.name;
        request.measures[measure.key] = wrong;
        const Error error = refusal_of(request);
        EXPECT_EQ(error.kind, ErrorKind::bad_input) << kind.name << measure.key;
        EXPECT_EQ(error.where, "/" + measure.key) << kind.name << " " << error.message;
        EXPECT_EQ(error.unit, "m");
      }
    }
  }
}

TEST(catalogue_unit, a_sectional_leaves_room_for_its_seats) {
  ItemRequest request;
  request.kind = "sectional";
  request.counts["seats"] = 4;  // in 90 in
  EXPECT_EQ(refusal_of(request).where, "/width_metres");
  request.counts = {{"return_seats", 4}};
  EXPECT_EQ(refusal_of(request).where, "/length_metres");
  request.measures["length_metres"] = 3.6;
  EXPECT_TRUE(build_item(request).has_value());
}

TEST(catalogue_unit, sizes_go_around_the_mattress) {
  ItemRequest request;
  request.kind = "slatted_frame";
  request.size = "king";  // 76 x 80 in
  const Item item = build_item(request).value();
  EXPECT_NEAR(edge_named(item, "deck_ledge_left.slat_ends").length_metres, 80 * 0.0254, 1e-12);
  double width = 0.0;
  for (const Vertex& vertex : item.vertices) width = std::max(width, vertex.x);
  EXPECT_NEAR(width, 76 * 0.0254 + 2 * 0.05, 1e-12);
}

TEST(catalogue_unit, chests_have_the_edges_of_their_drawers) {
  ItemRequest request;
  request.kind = "dresser";
  request.counts = {{"columns", 2}, {"drawers", 3}};
  request.measures = {
      {"width_metres", 1.2}, {"depth_metres", 0.5}, {"height_metres", 0.9}, {"leg_height_metres", 0.1}};
  const Item item = build_item(request).value();
  EXPECT_EQ(count_of(item, EdgeKind::drawer_runner), 12);
  // Between boards of 18 mm two columns of 0.573 m and three rows of 0.7640/3 m; fronts stand 3 mm off all
  // around.
  EXPECT_NEAR(edge_named(item, "drawer_1_2_front.gap").length_metres, 2 * (0.573 - 0.006 + 0.764 / 3 - 0.006),
              1e-12);
  // A runner goes from the front, 18 mm thick, to 20 mm before the back panel of 6 mm.
  EXPECT_NEAR(edge_named(item, "drawer_2_3_runner_left.slot").length_metres, 0.5 - 0.018 - 0.006 - 0.020,
              1e-12);
  EXPECT_FALSE(edge_named(item, "drawer_2_3_runner_left.slot").in_sight);
}

TEST(catalogue_unit, a_bookcase_has_two_joints_for_each_shelf) {
  ItemRequest request;
  request.kind = "bookcase";
  request.counts["shelves"] = 5;
  request.measures = {{"width_metres", 0.8}, {"depth_metres", 0.3}};
  const Item item = build_item(request).value();
  for (int i = 1; i <= 5; ++i) {
    for (const char* side : {"upper", "lower"}) {
      // Along the left, the back and the right, inside boards of 18 mm and a back of 6 mm.
      EXPECT_NEAR(edge_named(item, "shelf_" + std::to_string(i) + "." + side + "_joint").length_metres,
                  0.8 - 0.036 + 2 * (0.3 - 0.006), 1e-12);
    }
  }
  EXPECT_EQ(count_of(item, EdgeKind::screw_hole), 4);
}

TEST(catalogue_unit, what_has_wiring_says_so) {
  const Item plate = usual("socket_plate");
  ASSERT_EQ(plate.edges.size(), 1U);
  EXPECT_EQ(plate.edges[0].kind, EdgeKind::electrical_cover);
  EXPECT_EQ(plate.edges[0].layers.finish, Finish::electronics);
  EXPECT_NEAR(plate.edges[0].length_metres, 2 * (0.0699 + 0.1143), 1e-12);
  for (const char* kind : {"hospital_bed", "vehicle_seat"})
    EXPECT_EQ(count_of(usual(kind), EdgeKind::electrical_cover), 1) << kind;
  for (const char* kind :
       {"hospital_bed", "recliner", "sofa_bed", "socket_plate", "vehicle_seat", "wheelchair"}) {
    EXPECT_FALSE(usual(kind).cautions.empty()) << kind;
  }
}

TEST(catalogue_unit, coverings_and_finishes_reach_the_layers) {
  ItemRequest request;
  request.kind = "recliner";
  request.covering = Covering::leather;
  const Item recliner = build_item(request).value();
  EXPECT_EQ(edge_named(recliner, "seat_cushion_1.front_welt").layers.covering, Covering::leather);
  EXPECT_EQ(edge_named(recliner, "footrest.left_seam").layers.covering, Covering::leather);
  request = {};
  request.kind = "night_table";
  request.finish = Finish::shellac;
  const Item table = build_item(request).value();
  for (const Edge& edge : table.edges) EXPECT_EQ(edge.layers.finish, Finish::shellac) << edge.id;
}

TEST(catalogue_unit, a_mattress_on_the_floor_lies_there_and_a_sofa_bed_has_no_solid_base) {
  EXPECT_DOUBLE_EQ(edge_named(usual("floor_mattress"), "mattress.bottom_foot_tape").height_metres, 0.0);
  const Item bed = usual("sofa_bed");
  for (const Face& face : bed.faces) EXPECT_NE(face.body, "base");
  EXPECT_FALSE(edge_named(bed, "leaf_upper.left_tape").in_sight);
}

}  // namespace lastegg::furniture
