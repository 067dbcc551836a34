#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "job/furniture/catalogue.h"
#include "job/furniture/dimensions.h"
#include "job/furniture/item_laws.h"

namespace lastegg::furniture {
namespace {

const Dimension& dimension_named(const std::string& name) {
  const auto& all = furniture_dimensions()->dimensions;
  const auto found = std::find_if(all.begin(), all.end(), [&](const Dimension& d) { return d.name == name; });
  if (found != all.end()) return *found;
  ADD_FAILURE() << "no dimension " << name;
  static const Dimension none;
  return none;
}

/// Kinds whose measures have to go together, so that not every choice within the limits can be built.
bool has_laws_between_measures(const Kind& kind) {
  return kind.name == "sectional" ||
         std::any_of(kind.measures.begin(), kind.measures.end(),
                     [](const Measure& m) { return m.dimension == "sofa.arm_width"; });
}

/// Any request of that kind with every measure given in whole millimetres within its limits; near the usual
/// value where measures have to go together.
ItemRequest any_request(const Kind& kind) {
  ItemRequest request;
  request.kind = kind.name;
  for (const Measure& measure : kind.measures) {
    const Dimension& dimension = dimension_named(measure.dimension);
    double low = dimension.lowest;
    double high = dimension.highest;
    if (has_laws_between_measures(kind)) {
      low = std::max(low, 0.94 * dimension.value);
      high = std::min(high, 1.06 * dimension.value);
    }
    const int millimetres = *rc::gen::inRange(static_cast<int>(std::ceil(1000.0 * low - 1e-6)),
                                              static_cast<int>(std::floor(1000.0 * high + 1e-6)) + 1);
    request.measures[measure.key] = millimetres / 1000.0;
  }
  for (const Count& count : kind.counts) {
    // Widths near the usual ones suit the usual number of seats.
    if (!has_laws_between_measures(kind))
      request.counts[count.key] = *rc::gen::inRange(count.lowest, count.highest + 1);
  }
  for (const Option& option : kind.options) {
    if (*rc::gen::arbitrary<bool>()) request.options.insert(option.key);
  }
  if (kind.usual_covering)
    request.covering = *rc::gen::element(Covering::velvet, Covering::leather, Covering::coated);
  if (kind.finished) request.finish = *rc::gen::element(Finish::wax, Finish::paint);
  return request;
}

std::string words_of(const ItemRequest& request) {
  std::string words = request.kind;
  for (const auto& [key, value] : request.measures) words += " " + key + " " + std::to_string(value);
  for (const auto& [key, value] : request.counts) words += " " + key + " " + std::to_string(value);
  for (const std::string& option : request.options) words += " " + option;
  return words;
}

Item built(const ItemRequest& request) {
  RC_LOG() << words_of(request) << "\n";
  auto item = build_item(request);
  if (!item) RC_FAIL(item.error().message);
  return *std::move(item);
}

double extent(const Item& item, double Vertex::* axis) {
  const auto [low, high] =
      std::minmax_element(item.vertices.begin(), item.vertices.end(),
                          [&](const Vertex& a, const Vertex& b) { return a.*axis < b.*axis; });
  return *high.*axis - *low.*axis;
}

/// Runs a law over requests of every kind; each kind is a property of its own, so that a failure names it.
template <class Law>
void for_every_kind(const Law& law) {
  for (const Kind& kind : catalogue()) {
    EXPECT_TRUE(rc::check(kind.name, [&] { law(kind, any_request(kind)); })) << kind.name;
  }
}

}  // namespace

TEST(catalogue_law, items_of_usual_measures_obey) {
  for (const Kind& kind : catalogue()) {
    for (const bool with_options : {false, true}) {
      ItemRequest request;
      request.kind = kind.name;
      if (with_options) {
        for (const Option& option : kind.options) request.options.insert(option.key);
      }
      const auto item = build_item(request);
      ASSERT_TRUE(item.has_value()) << kind.name << ": " << item.error().message;
      EXPECT_EQ(laws::all(*item), laws::Complaints{}) << kind.name;
    }
  }
}

TEST(catalogue_law, items_of_any_measures_obey_keep_their_names_and_tell_what_was_given) {
  for_every_kind([](const Kind& kind, const ItemRequest& request) {
    const Item item = built(request);
    const laws::Complaints complaints = laws::all(item);
    if (!complaints.empty()) RC_FAIL(complaints.front());

    // Names depend on counts and options only. Rows of quilting and middle legs come with length.
    ItemRequest usual = request;
    usual.measures.clear();
    const auto names = [](const Item& of) {
      std::set<std::string> ids;
      for (const Edge& edge : of.edges) {
        const bool grows = edge.id.find("top_quilting_") != std::string::npos ||
                           edge.id.find("_middle_joint") != std::string::npos;
        if (!grows) ids.insert(edge.id);
      }
      return ids;
    };
    RC_ASSERT(names(item) == names(built(usual)));

    // Each measure that was given is told as given, and nothing else is.
    std::multiset<double> given;
    for (const UsedDimension& used : item.dimensions) {
      if (used.quality == "given") given.insert(used.value_metres);
    }
    std::multiset<double> asked;
    for (const auto& [key, value] : request.measures) asked.insert(value);
    RC_ASSERT(given == asked);

    for (const Edge& edge : item.edges) {
      RC_ASSERT(!edge.layers.finish || *edge.layers.finish == request.finish.value_or(Finish::unknown) ||
                edge.kind == EdgeKind::wood_joint || edge.kind == EdgeKind::electrical_cover);
    }
    RC_ASSERT(!kind.title.empty());
  });
}

TEST(catalogue_law, cases_and_chairs_fill_their_measures) {
  const std::set<std::string> boxes = {"night_table", "dresser",      "wardrobe", "bookcase",
                                       "desk",        "dining_chair", "ottoman",  "luggage"};
  for_every_kind([&](const Kind& kind, const ItemRequest& request) {
    if (boxes.count(kind.name) == 0) return;
    const Item item = built(request);
    const auto near = [](double a, double b) { return std::fabs(a - b) < 1e-9; };
    RC_ASSERT(near(extent(item, &Vertex::x), request.measures.at("width_metres")));
    RC_ASSERT(near(extent(item, &Vertex::y), request.measures.at("depth_metres")));
    RC_ASSERT(near(extent(item, &Vertex::z), request.measures.at("height_metres")));
  });
}

TEST(catalogue_law, a_longer_run_has_longer_edges_and_no_other_ones) {
  for (const char* kind : {"baseboard", "carpet_edge", "wall_joint"}) {
    EXPECT_TRUE(rc::check(kind, [&] {
      ItemRequest shorter = any_request(*kind_named(kind));
      shorter.measures["length_metres"] = *rc::gen::inRange(200, 19000) / 1000.0;
      ItemRequest longer = shorter;
      const double more = *rc::gen::inRange(1, 1000) / 1000.0;
      longer.measures["length_metres"] += more;
      const Item small = built(shorter);
      const Item large = built(longer);
      RC_ASSERT(small.edges.size() == large.edges.size());
      for (std::size_t i = 0; i < small.edges.size(); ++i) {
        const double growth = large.edges[i].length_metres - small.edges[i].length_metres;
        RC_ASSERT(std::fabs(growth) < 1e-9 || std::fabs(growth - more) < 1e-9);
      }
      RC_ASSERT(std::fabs(large.edges[0].length_metres - small.edges[0].length_metres - more) < 1e-9);
    }));
  }
}

}  // namespace lastegg::furniture
