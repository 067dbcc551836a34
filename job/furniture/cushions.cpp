#include "job/furniture/cushions.h"

#include <algorithm>

namespace lastegg::furniture {
namespace {

constexpr double k_shoulder = 0.03;      // from the welt to the first step of the crown, as drawn: estimate
constexpr double k_slope = 0.1;          // from the welt to the level top of the crown, as drawn: estimate
constexpr double k_strip_margin = 0.06;  // share of a side between the zip strip and each corner: estimate

}  // namespace

const CushionNames& seat_cushion_names() {
  static const CushionNames names = {
      {"front", "right", "back", "left"}, "bottom", "top", "lower_rim", "upper_rim"};
  return names;
}

const CushionNames& back_cushion_names() {
  static const CushionNames names = {
      {"bottom", "right", "top", "left"}, "rear", "front", "rear_rim", "front_rim"};
  return names;
}

CushionShape cushion_shape(double width, double length, double thickness, double bulge, double rim,
                           double crown) {
  const double room = 0.35 * std::min(width, length);
  return {
      width, length, thickness, bulge, rim, crown, std::min(k_shoulder, 0.3 * room), std::min(k_slope, room)};
}

void add_welts(Item& item, const Cushion& cushion, const CushionNames& names, const std::string& title,
               const std::array<bool, 8>& hidden, const Layers& layers) {
  const std::string& body = cushion.body.name;
  for (const bool is_outer : {true, false}) {
    const Corners& corners = is_outer ? cushion.outer : cushion.inner;
    for (std::size_t side = 0; side < 4; ++side) {
      const std::string& side_name = names.sides[side];
      const std::string rim = "." + side_name + "_" + (is_outer ? names.outer_rim : names.inner_rim);
      const std::string panel =
          is_outer ? "." + names.outer_panel + "_shoulder_" + side_name : "." + names.inner_panel;
      const std::string id = (is_outer ? "." : "." + names.inner_panel + "_") + side_name + "_welt";
      const std::string panel_title = is_outer ? names.outer_panel : names.inner_panel;
      add_edge(item, {body + id,
                      "Welt, " + panel_title + " panel, " + side_name + " side, " + title,
                      EdgeKind::welt,
                      cushion.body.part,
                      {body + rim, body + panel},
                      {corners[side], corners[(side + 1) % 4]},
                      !hidden[side + (is_outer ? 0 : 4)],
                      layers});
    }
  }
}

void add_zip(Item& item, const Cushion& cushion, const CushionNames& names, const std::string& title,
             std::size_t first, const std::array<std::string, 2>& ends, const Layers& layers) {
  const std::string& body = cushion.body.name;
  const std::string& part = cushion.body.part;
  const std::string face = body + "." + names.sides[first];
  const auto at = [&](const Corners& corners, double share) {
    return between(corners[first], corners[(first + 1) % 4], share);
  };
  const auto half_way = [&](double share) {
    return between(at(cushion.inner_full, share), at(cushion.outer_full, share), 0.5);
  };
  const std::array<double, 2> shares = {k_strip_margin, 1.0 - k_strip_margin};
  add_edge(item, {body + ".zip",
                  "Zip in the boxing, " + names.sides[first] + " side, " + title,
                  EdgeKind::zip,
                  part,
                  {face},
                  {half_way(shares[0]), half_way(shares[1])},
                  false,
                  layers});
  for (std::size_t end = 0; end < 2; ++end) {
    add_edge(item,
             {body + "." + ends[end] + "_boxing_seam",
              "Seam at the end of the zip strip, " + names.sides[first] + " " + ends[end] + ", " + title,
              EdgeKind::seam,
              part,
              {face + "_" + names.inner_rim, face, face + "_" + names.outer_rim},
              {at(cushion.inner, shares[end]), at(cushion.inner_full, shares[end]),
               at(cushion.outer_full, shares[end]), at(cushion.outer, shares[end])},
              false,
              layers});
  }
}

}  // namespace lastegg::furniture
