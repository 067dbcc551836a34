#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

#include "job/furniture/dimensions.h"
#include "job/furniture/item_laws.h"
#include "job/furniture/mattress.h"
#include "job/furniture/sofa.h"

namespace lastegg::furniture {
namespace {

/// A number of whole millimetres between two limits, in metres.
rc::Gen<double> metres(double low, double high) {
  return rc::gen::map(rc::gen::inRange(static_cast<int>(std::ceil(1000.0 * low - 1e-6)),
                                       static_cast<int>(std::floor(1000.0 * high + 1e-6)) + 1),
                      [](int millimetres) { return millimetres / 1000.0; });
}

double usual(const std::string& name) {
  for (const Dimension& dimension : furniture_dimensions()->dimensions) {
    if (dimension.name == name) return dimension.value;
  }
  ADD_FAILURE() << name;
  return 0.0;
}

double used(const Item& item, const std::string& name) {
  for (const UsedDimension& dimension : item.dimensions) {
    if (dimension.name == name) return dimension.value_metres;
  }
  ADD_FAILURE() << name;
  return 0.0;
}

/// A sofa whose measures go together, all of them given.
rc::Gen<SofaRequest> any_sofa() {
  return rc::gen::exec([] {
    SofaRequest sofa;
    sofa.seats = *rc::gen::inRange(k_fewest_seats, k_most_seats + 1);
    sofa.skirted = *rc::gen::arbitrary<bool>();
    sofa.tufted = *rc::gen::arbitrary<bool>();
    const double arm = *metres(0.08, 0.4);
    const double leg = *metres(0.03, 0.15);
    const double cushion = *metres(0.08, 0.18);
    const double seat = *metres(std::max(0.33, leg + cushion + 0.075), 0.48);
    const double arm_height = *metres(std::max(0.45, seat + 0.1), 0.65);
    const double height = *metres(std::max(0.65, arm_height + 0.11), 1.15);
    const double back = *metres(0.08, 0.28);
    double lowest_width = 0.0;
    double highest_width = 0.0;
    for (const Dimension& dimension : furniture_dimensions()->dimensions) {
      if (dimension.name != "sofa.width." + std::to_string(sofa.seats)) continue;
      lowest_width = std::max(dimension.lowest, 2.0 * arm + sofa.seats * 0.4 + 0.001);
      highest_width = std::min(dimension.highest, 2.0 * arm + sofa.seats * 1.0 - 0.001);
    }
    sofa.width_metres = *metres(lowest_width, highest_width);
    sofa.depth_metres = *metres(std::max(0.7, 0.61 + back), 1.25);
    sofa.height_metres = height;
    sofa.seat_height_metres = seat;
    sofa.arm_height_metres = arm_height;
    sofa.arm_width_metres = arm;
    sofa.leg_height_metres = leg;
    sofa.seat_cushion_thickness_metres = cushion;
    sofa.back_cushion_thickness_metres = back;
    return sofa;
  });
}

/// For the report of a falsified property.
std::string words_of(const SofaRequest& sofa) {
  std::string words = std::to_string(sofa.seats) + " seats";
  for (const auto& measure :
       {sofa.width_metres, sofa.depth_metres, sofa.height_metres, sofa.seat_height_metres,
        sofa.arm_height_metres, sofa.arm_width_metres, sofa.leg_height_metres,
        sofa.seat_cushion_thickness_metres, sofa.back_cushion_thickness_metres}) {
    words += ", " + (measure ? std::to_string(*measure) : "usual");
  }
  return words;
}

Item built(const SofaRequest& request) {
  auto item = build_sofa(request);
  RC_LOG() << words_of(request) << "\n";
  if (!item) RC_FAIL(item.error().message);
  return *std::move(item);
}

void expect_laws(const Item& item) {
  const laws::Complaints complaints = laws::all(item);
  if (!complaints.empty()) RC_FAIL(complaints.front());
}

std::map<std::string, double> lengths_of(const Item& item) {
  std::map<std::string, double> lengths;
  for (const Edge& edge : item.edges) lengths[edge.id] = edge.length_metres;
  return lengths;
}

double sum_of(const Item& item, const std::vector<std::string>& ids) {
  const auto lengths = lengths_of(item);
  double sum = 0.0;
  for (const std::string& id : ids) sum += lengths.at(id);
  return sum;
}

/// Volume of a stack of rectangles with straight sides between them, by the prismatoid rule.
double prismatoid(double width_0, double length_0, double width_1, double length_1, double height) {
  const double middle = (width_0 + width_1) * (length_0 + length_1) / 4.0;
  return height / 6.0 * (width_0 * length_0 + 4.0 * middle + width_1 * length_1);
}

}  // namespace

TEST(furniture_law, usual_sofas_and_mattresses_obey) {
  for (int seats = k_fewest_seats; seats <= k_most_seats; ++seats) {
    for (const bool skirted : {false, true}) {
      SofaRequest request;
      request.seats = seats;
      request.skirted = skirted;
      request.tufted = skirted;
      EXPECT_EQ(laws::all(build_sofa(request).value()), laws::Complaints{}) << seats;
    }
  }
  for (const MattressSize& size : furniture_dimensions()->mattress_sizes) {
    MattressRequest request;
    request.size = size.name;
    EXPECT_EQ(laws::all(build_mattress(request).value()), laws::Complaints{}) << size.name;
  }
}

TEST(furniture_law, sofas_of_any_measures_obey) {
  EXPECT_TRUE(rc::check("sofa", [] { expect_laws(built(*any_sofa())); }));
}

TEST(furniture_law, mattresses_of_any_measures_obey) {
  EXPECT_TRUE(rc::check("mattress", [] {
    MattressRequest request;
    request.width_metres = *metres(0.6, 2.2);
    request.length_metres = *metres(1.2, 2.3);
    request.thickness_metres = *metres(0.08, 0.45);
    request.base_height_metres = *metres(0.0, 0.9);
    const auto item = build_mattress(request);
    RC_ASSERT(item.has_value());
    expect_laws(*item);
  }));
}

TEST(furniture_law, a_sofa_fills_its_measures) {
  EXPECT_TRUE(rc::check("extent", [] {
    const SofaRequest request = *any_sofa();
    const Item item = built(request);
    const double cloth = request.skirted ? used(item, "sofa.cloth_thickness") : 0.0;
    const auto extent = [&](double Vertex::* axis) {
      const auto [low, high] =
          std::minmax_element(item.vertices.begin(), item.vertices.end(),
                              [&](const Vertex& a, const Vertex& b) { return a.*axis < b.*axis; });
      return std::pair{*low.*axis, *high.*axis};
    };
    const auto near = [](double a, double b) { return std::fabs(a - b) < 1e-9; };
    RC_ASSERT(near(extent(&Vertex::x).first, -cloth) &&
              near(extent(&Vertex::x).second, *request.width_metres + cloth));
    RC_ASSERT(near(extent(&Vertex::y).first, -cloth) &&
              near(extent(&Vertex::y).second, *request.depth_metres + cloth));
    RC_ASSERT(near(extent(&Vertex::z).first, 0.0) && near(extent(&Vertex::z).second, *request.height_metres));
  }));
}

TEST(furniture_law, a_sofa_is_its_own_mirror_image) {
  EXPECT_TRUE(rc::check("mirror", [] {
    const SofaRequest request = *any_sofa();
    const Item item = built(request);
    const auto same = [](const Vertex& a, const Vertex& b) {
      return std::fabs(a.x - b.x) < 1e-9 && std::fabs(a.y - b.y) < 1e-9 && std::fabs(a.z - b.z) < 1e-9;
    };
    for (const Edge& edge : item.edges) {
      std::vector<Vertex> mirrored = edge.points;
      for (Vertex& point : mirrored) point.x = *request.width_metres - point.x;
      const auto twin_of = [&](const Edge& other) {
        if (other.kind != edge.kind || other.in_sight != edge.in_sight) return false;
        if (other.points.size() != mirrored.size() || other.layers.fill != edge.layers.fill) return false;
        const bool forward = std::equal(mirrored.begin(), mirrored.end(), other.points.begin(), same);
        const bool backward = std::equal(mirrored.rbegin(), mirrored.rend(), other.points.begin(), same);
        // A closed loop may start at any of its corners.
        const bool as_set =
            edge.kind == EdgeKind::leg_joint &&
            std::all_of(mirrored.begin(), mirrored.end(), [&](const Vertex& point) {
              return std::any_of(other.points.begin(), other.points.end(),
                                 [&](const Vertex& candidate) { return same(point, candidate); });
            });
        return forward || backward || as_set;
      };
      if (std::count_if(item.edges.begin(), item.edges.end(), twin_of) != 1)
        RC_FAIL(edge.id + " has no twin");
    }
  }));
}

TEST(furniture_law, a_wider_sofa_has_no_shorter_edge) {
  EXPECT_TRUE(rc::check("growth", [] {
    SofaRequest narrow = *any_sofa();
    SofaRequest wide = narrow;
    const double lower = 2.0 * *narrow.arm_width_metres + 0.4 * narrow.seats + 0.001;
    const double least = std::max(lower, usual("sofa.width." + std::to_string(narrow.seats)) * 0.8);
    narrow.width_metres = *metres(least, least + 0.05);
    wide.width_metres = *narrow.width_metres + *metres(0.01, 0.1);
    const Item small = built(narrow);
    const Item large = built(wide);
    const auto lengths = lengths_of(large);
    double small_sum = 0.0;
    double large_sum = 0.0;
    for (const Edge& edge : small.edges) {
      RC_ASSERT(lengths.count(edge.id) == 1);
      RC_ASSERT(lengths.at(edge.id) >= edge.length_metres - 1e-9);
      small_sum += edge.length_metres;
      large_sum += lengths.at(edge.id);
    }
    // Lines that run across the whole width between the arms: four welts and a zip strip of 0.88 on seat and
    // back cushions each, a seat and a frame crevice, deck seam and crevice, the back's top seam, two sides
    // of the dust cover and of its staples.
    const double growth = *wide.width_metres - *narrow.width_metres;
    RC_ASSERT(large_sum - small_sum >= (2.0 * 4.88 + 2.0 + 3.0 + 4.0) * growth - 1e-9);
    RC_ASSERT(lengths.at("seat_cushion_1.front_welt") > lengths_of(small).at("seat_cushion_1.front_welt"));
  }));
}

TEST(furniture_law, names_do_not_depend_on_measures) {
  EXPECT_TRUE(rc::check("names", [] {
    SofaRequest request = *any_sofa();
    const Item item = built(request);
    SofaRequest plain;
    plain.seats = request.seats;
    plain.skirted = request.skirted;
    plain.tufted = request.tufted;
    const auto is_middle_leg = [](const std::string& id) { return id.find("_middle_") != std::string::npos; };
    const auto names = [&](const Item& of) {
      std::set<std::string> ids;
      for (const Edge& edge : of.edges) {
        if (!is_middle_leg(edge.id)) ids.insert(edge.id);
      }
      return ids;
    };
    RC_ASSERT(names(item) == names(built(plain)));
  }));
}

TEST(furniture_law, perimeters_and_volumes_follow_from_the_measures) {
  EXPECT_TRUE(rc::check("sofa", [] {
    const SofaRequest request = *any_sofa();
    const Item item = built(request);
    const auto near = [](double a, double b) { return std::fabs(a - b) < 1e-9; };
    const double bulge = used(item, "sofa.cushion_bulge");
    const double rim = used(item, "sofa.cushion_rim");
    const double crown = used(item, "sofa.seat_crown");
    const double width = (*request.width_metres - 2.0 * *request.arm_width_metres) / request.seats;
    const double lean = std::tan(10.0 * std::numbers::pi / 180.0);
    const double frame_height = *request.height_metres - used(item, "sofa.back_frame_below_cushions");
    const double length = *request.depth_metres - used(item, "sofa.back_frame_thickness") -
                          lean * (frame_height - *request.seat_height_metres);
    const double perimeter = 2.0 * (width + length - 4.0 * bulge);
    RC_ASSERT(near(sum_of(item, {"seat_cushion_1.front_welt", "seat_cushion_1.right_welt",
                                 "seat_cushion_1.back_welt", "seat_cushion_1.left_welt"}),
                   perimeter));
    RC_ASSERT(near(sum_of(item, {"seat_cushion_1.bottom_front_welt", "seat_cushion_1.bottom_right_welt",
                                 "seat_cushion_1.bottom_back_welt", "seat_cushion_1.bottom_left_welt"}),
                   perimeter));
    const double inset = used(item, "sofa.dust_cover_inset");
    const double cover_width = *request.width_metres - 2.0 * inset;
    const double cover_depth = *request.depth_metres - 2.0 * inset - used(item, "sofa.base_recess");
    RC_ASSERT(near(sum_of(item, {"underside.dust_cover_front_edge", "underside.dust_cover_right_edge",
                                 "underside.dust_cover_back_edge", "underside.dust_cover_left_edge"}),
                   2.0 * (cover_width + cover_depth)));
    RC_ASSERT(near(sum_of(item, {"underside.staples_front", "underside.staples_right",
                                 "underside.staples_back", "underside.staples_left"}),
                   2.0 * (cover_width + cover_depth) - 8.0 * used(item, "sofa.staple_inset")));
    RC_ASSERT(near(sum_of(item, {"underside.leg_back_left_joint"}), 4.0 * used(item, "sofa.leg_side")));

    const double thickness = *request.seat_cushion_thickness_metres;
    const double deck = *request.seat_height_metres - crown - thickness;
    RC_ASSERT(near(laws::volume_of(item, "base"), width * request.seats *
                                                      (length - used(item, "sofa.base_recess")) *
                                                      (deck - *request.leg_height_metres)));
    RC_ASSERT(near(laws::volume_of(item, "dust_cover"),
                   cover_width * cover_depth * used(item, "sofa.cloth_thickness")));
    const double foot = used(item, "sofa.leg_foot_side");
    const double top = used(item, "sofa.leg_side");
    RC_ASSERT(near(laws::volume_of(item, "leg_front_left"),
                   (*request.leg_height_metres - used(item, "sofa.cloth_thickness")) / 3.0 *
                       (foot * foot + foot * top + top * top)));
    // Up to the welts; what the crown adds lies between nothing and a full slab.
    const double panel_width = width - 2.0 * bulge;
    const double panel_length = length - 2.0 * bulge;
    const double boxed = 2.0 * prismatoid(panel_width, panel_length, width, length, rim) +
                         width * length * (thickness - 2.0 * rim);
    const double crown_volume = laws::volume_of(item, "seat_cushion_1") - boxed;
    RC_ASSERT(crown_volume > 0.3 * crown * panel_width * panel_length);
    RC_ASSERT(crown_volume < crown * panel_width * panel_length);
  }));
  EXPECT_TRUE(rc::check("mattress", [] {
    MattressRequest request;
    request.width_metres = *metres(0.6, 2.2);
    request.length_metres = *metres(1.2, 2.3);
    request.thickness_metres = *metres(0.08, 0.45);
    const auto item = build_mattress(request);
    RC_ASSERT(item.has_value());
    const double radius = used(*item, "mattress.corner_radius");
    const double chord = 2.0 * radius * std::sin(std::numbers::pi / 16.0);  // a quarter circle in four chords
    const double perimeter =
        2.0 * (*request.width_metres + *request.length_metres) - 8.0 * radius + 16.0 * chord;
    for (const std::string panel : {"top", "bottom"}) {
      const std::string start = "mattress." + panel;
      RC_ASSERT(std::fabs(sum_of(*item, {start + "_foot_tape", start + "_right_tape", start + "_head_tape",
                                         start + "_left_tape"}) -
                          perimeter) < 1e-9);
    }
    const double cut_corners = radius * radius * (4.0 - 8.0 * std::sin(std::numbers::pi / 8.0));
    const double area = *request.width_metres * *request.length_metres - cut_corners;
    RC_ASSERT(std::fabs(laws::volume_of(*item, "mattress") - area * *request.thickness_metres) < 1e-9);
  }));
}

}  // namespace lastegg::furniture
