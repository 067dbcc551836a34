#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <set>

#include "job/furniture/dimensions.h"
#include "job/furniture/mattress.h"
#include "job/furniture/sofa.h"

namespace lastegg::furniture {
namespace {

Error refusal_of(const SofaRequest& request) {
  const auto item = build_sofa(request);
  return item ? Error{} : item.error();
}

std::set<EdgeKind> kinds_of(const Item& item) {
  std::set<EdgeKind> kinds;
  for (const Edge& edge : item.edges) kinds.insert(edge.kind);
  return kinds;
}

const Edge* edge_named(const Item& item, const std::string& id) {
  const auto found =
      std::find_if(item.edges.begin(), item.edges.end(), [&](const Edge& edge) { return edge.id == id; });
  return found == item.edges.end() ? nullptr : &*found;
}

}  // namespace

TEST(sofa_unit, seats_outside_one_to_four_are_refused) {
  SofaRequest request;
  request.seats = 0;
  Error error = refusal_of(request);
  EXPECT_EQ(error.kind, ErrorKind::bad_input);
  EXPECT_EQ(error.where, "/seats");
  EXPECT_EQ(error.value, "0");
  EXPECT_EQ(error.limit, "1");
  request.seats = 5;
  error = refusal_of(request);
  EXPECT_EQ(error.value, "5");
  EXPECT_EQ(error.limit, "4");
}

TEST(sofa_unit, a_width_of_nine_metres_is_refused_with_value_limit_unit_and_place) {
  SofaRequest request;
  request.width_metres = 9.0;
  const Error error = refusal_of(request);
  EXPECT_EQ(error.kind, ErrorKind::bad_input);
  EXPECT_EQ(error.where, "/width_metres");
  EXPECT_EQ(error.value, "9");
  EXPECT_EQ(error.limit, "3");
  EXPECT_EQ(error.unit, "m");
  EXPECT_NE(error.message.find("9"), std::string::npos);
}

TEST(sofa_unit, what_is_not_a_number_is_refused) {
  SofaRequest request;
  request.depth_metres = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(refusal_of(request).where, "/depth_metres");
  request.depth_metres = std::numeric_limits<double>::infinity();
  EXPECT_EQ(refusal_of(request).where, "/depth_metres");
}

TEST(sofa_unit, measures_that_do_not_go_together_blame_one_that_was_given) {
  SofaRequest request;
  request.seats = 4;
  request.width_metres = 1.95;  // 0.393 m a seat
  EXPECT_EQ(refusal_of(request).where, "/width_metres");
  EXPECT_EQ(refusal_of(request).limit, "1.98");

  request = {};
  request.leg_height_metres = 0.25;  // leaves no rail under the usual seat
  EXPECT_EQ(refusal_of(request).where, "/leg_height_metres");

  request = {};
  request.arm_height_metres = 0.46;
  EXPECT_EQ(refusal_of(request).where, "/arm_height_metres");

  request = {};
  request.height_metres = 0.7;  // lower than the usual arms allow
  EXPECT_EQ(refusal_of(request).where, "/height_metres");

  request = {};
  request.depth_metres = 0.7;
  request.back_cushion_thickness_metres = 0.28;
  EXPECT_EQ(refusal_of(request).where, "/depth_metres");
}

TEST(sofa_unit, has_what_an_upholsterer_would_look_for) {
  SofaRequest request;
  request.skirted = true;
  request.tufted = true;
  const Item item = build_sofa(request).value();
  const std::set<EdgeKind> expected = {EdgeKind::seam,     EdgeKind::welt,        EdgeKind::fold,
                                       EdgeKind::tuft,     EdgeKind::pleat,       EdgeKind::skirt,
                                       EdgeKind::zip,      EdgeKind::staple_line, EdgeKind::dust_cover_edge,
                                       EdgeKind::leg_joint};
  EXPECT_EQ(kinds_of(item), expected);
  const std::vector<std::string> parts = {"seat", "back", "arm_left", "arm_right", "base", "underside"};
  ASSERT_EQ(item.parts.size(), parts.size());
  for (std::size_t i = 0; i < parts.size(); ++i) EXPECT_EQ(item.parts[i].name, parts[i]);
  for (const char* id :
       {"seat_cushion_1.front_welt", "seat_cushion_3.bottom_back_welt", "seat_cushion_2.zip",
        "seat.arm_left_crevice", "seat.crevice_1_2", "seat.crevice_2_3", "seat.arm_right_crevice",
        "seat.back_crevice_2", "back_cushion_1.zip", "back.crevice_1_2", "arm_left.front_welt",
        "arm_right.inside_seam", "base.deck_back_crevice", "underside.staples_front",
        "underside.dust_cover_back_edge", "underside.leg_front_left_joint", "skirt.front_1_2_pleat"}) {
    EXPECT_NE(edge_named(item, id), nullptr) << id;
  }
}

TEST(sofa_unit, in_sight_means_without_lifting_or_turning) {
  const Item item = build_sofa({}).value();
  for (const char* id :
       {"seat_cushion_1.front_welt", "seat.crevice_1_2", "arm_left.front_welt", "seat.back_crevice_1"}) {
    EXPECT_TRUE(edge_named(item, id)->in_sight) << id;
  }
  for (const char* id : {"seat_cushion_1.zip", "seat_cushion_1.bottom_back_welt", "base.deck_back_crevice",
                         "underside.staples_left", "back_cushion_2.rear_left_welt"}) {
    EXPECT_FALSE(edge_named(item, id)->in_sight) << id;
  }
}

TEST(sofa_unit, layers_follow_covering_and_finish) {
  SofaRequest request;
  request.covering = Covering::velvet;
  request.leg_finish = Finish::shellac;
  const Item item = build_sofa(request).value();
  const Layers cushion = edge_named(item, "seat_cushion_1.front_welt")->layers;
  EXPECT_EQ(cushion.covering, Covering::velvet);
  EXPECT_EQ(cushion.fill, Fill::batting_foam);
  EXPECT_FALSE(cushion.finish.has_value());
  const Layers joint = edge_named(item, "underside.leg_front_left_joint")->layers;
  EXPECT_EQ(joint.fill, Fill::wood);
  EXPECT_EQ(joint.finish, Finish::shellac);
}

TEST(sofa_unit, long_frames_get_middle_legs) {
  SofaRequest request;
  request.width_metres = 1.79;
  EXPECT_EQ(edge_named(build_sofa(request).value(), "underside.leg_front_middle_joint"), nullptr);
  request.width_metres = 1.81;
  EXPECT_NE(edge_named(build_sofa(request).value(), "underside.leg_front_middle_joint"), nullptr);
}

TEST(mattress_unit, unknown_size_is_refused_with_the_known_ones) {
  MattressRequest request;
  request.size = "emperor";
  const auto item = build_mattress(request);
  ASSERT_FALSE(item.has_value());
  EXPECT_EQ(item.error().kind, ErrorKind::not_found);
  EXPECT_EQ(item.error().where, "/size");
  EXPECT_EQ(item.error().value, "emperor");
  EXPECT_NE(item.error().limit.find("california_king"), std::string::npos);
}

TEST(mattress_unit, measures_outside_their_limits_are_refused) {
  MattressRequest request;
  request.thickness_metres = 1.0;
  const auto item = build_mattress(request);
  ASSERT_FALSE(item.has_value());
  EXPECT_EQ(item.error().where, "/thickness_metres");
  EXPECT_EQ(item.error().value, "1");
  EXPECT_EQ(item.error().limit, "0.45");
  EXPECT_EQ(item.error().unit, "m");
}

TEST(mattress_unit, has_tapes_quilting_handles_vents_and_label) {
  const Item item = build_mattress({}).value();
  const std::set<EdgeKind> expected = {EdgeKind::tape_edge, EdgeKind::quilting, EdgeKind::handle,
                                       EdgeKind::vent,      EdgeKind::label,    EdgeKind::seam};
  EXPECT_EQ(kinds_of(item), expected);
}

TEST(mattress_unit, a_given_measure_says_so_and_a_size_names_its_source) {
  MattressRequest request;
  request.size = "king";
  request.width_metres = 1.9;
  const Item item = build_mattress(request).value();
  for (const UsedDimension& dimension : item.dimensions) {
    if (dimension.name == "mattress.width") {
      EXPECT_EQ(dimension.quality, "given");
    }
    if (dimension.name == "mattress.length") {
      EXPECT_EQ(dimension.quality, "handbook");
      EXPECT_DOUBLE_EQ(dimension.value_metres, 2.032);
    }
  }
}

// Inches as the table Bed size prints them (see data/dimensions.json): twin 39 x 75, full 54 x 75, queen 60 x
// 80, king 76 x 80, California king 72 x 84; continental sizes in centimetres. One inch is 0.0254 m.
TEST(mattress_reference, sizes_are_those_printed_in_the_table_of_common_sizes) {
  struct Printed {
    const char* name;
    double width, length, unit_metres;
  };
  for (const Printed& printed :
       {Printed{"twin", 39, 75, 0.0254}, Printed{"full", 54, 75, 0.0254}, Printed{"queen", 60, 80, 0.0254},
        Printed{"king", 76, 80, 0.0254}, Printed{"california_king", 72, 84, 0.0254},
        Printed{"90x200", 90, 200, 0.01}, Printed{"140x200", 140, 200, 0.01},
        Printed{"160x200", 160, 200, 0.01}, Printed{"180x200", 180, 200, 0.01}}) {
    MattressRequest request;
    request.size = printed.name;
    const Item item = build_mattress(request).value();
    double width = 0.0;
    double length = 0.0;
    for (const Vertex& vertex : item.vertices) {
      width = std::max(width, vertex.x);
      length = std::max(length, vertex.y);
    }
    EXPECT_NEAR(width, printed.width * printed.unit_metres, 1e-12) << printed.name;
    EXPECT_NEAR(length, printed.length * printed.unit_metres, 1e-12) << printed.name;
  }
}

TEST(dimensions_unit, the_compiled_table_reads) {
  const auto& table = furniture_dimensions();
  ASSERT_TRUE(table.has_value()) << table.error().message;
  EXPECT_EQ(table->key, "furniture_dimensions/1");
  EXPECT_GE(table->dimensions.size(), 40U);
  EXPECT_GE(table->mattress_sizes.size(), 10U);
}

TEST(dimensions_unit, spoilt_tables_are_refused) {
  const std::string head =
      R"({"key":"k","sources":{"s":{"text":"a book"}},"mattress_sizes":[],"dimensions":[)";
  const std::string good =
      R"({"name":"a","value":1,"unit":"m","lowest":0,"highest":2,"source":"s","locator":"p. 1","quality":"handbook"})";
  EXPECT_TRUE(read_dimensions(head + good + "]}").has_value());
  const auto spoilt = [&](const std::string& from, const std::string& to) {
    std::string entry = good;
    entry.replace(entry.find(from), from.size(), to);
    return !read_dimensions(head + entry + "]}").has_value();
  };
  EXPECT_TRUE(spoilt("\"value\":1", "\"value\":3"));
  EXPECT_TRUE(spoilt("\"value\":1", "\"value\":\"1\""));
  EXPECT_TRUE(spoilt("\"source\":\"s\"", "\"source\":\"t\""));
  EXPECT_TRUE(spoilt("handbook", "assumed"));
  EXPECT_TRUE(spoilt("handbook", "estimate"));  // tells no how
  EXPECT_TRUE(spoilt("p. 1", ""));
  EXPECT_FALSE(read_dimensions(head + good + "," + good + "]}").has_value());
  EXPECT_FALSE(read_dimensions("{").has_value());
  EXPECT_FALSE(read_dimensions("[]").has_value());
  EXPECT_FALSE(read_dimensions(R"({"key":"k","dimensions":[1],"mattress_sizes":[]})").has_value());
}

}  // namespace lastegg::furniture
