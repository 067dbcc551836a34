#include "job/furniture/sofa_measures.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "job/furniture/dimensions.h"

namespace lastegg::furniture {
namespace {

// How much of one thing must stand out past another so that the sofa can be made at all: own judgement.
constexpr double k_least_rail = 0.05;            // height of the front rail under the deck
constexpr double k_least_arm_above_seat = 0.04;  // upright part of an arm above the cushion
constexpr double k_least_back_above_arm = 0.03;
constexpr double k_least_seat_depth = 0.35;  // in front of the back cushion
constexpr double k_no_limit = std::numeric_limits<double>::max();

Error wrong_seats(int seats) {
  const int limit = seats < k_fewest_seats ? k_fewest_seats : k_most_seats;
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message =
      fmt::format("'seats' is {}; a sofa has {} to {} seats", seats, k_fewest_seats, k_most_seats);
  error.where = "/seats";
  error.value = fmt::format("{}", seats);
  error.limit = fmt::format("{}", limit);
  error.unit = "seats";
  return error;
}

/// Fills `m` with what can be taken one by one.
void take_all(const SofaRequest& request, Measuring& measuring, SofaMeasures& m) {
  m.seats = request.seats;
  m.width = measuring.take(fmt::format("sofa.width.{}", request.seats), "width_metres", request.width_metres);
  m.depth = measuring.take("sofa.depth", "depth_metres", request.depth_metres);
  m.height = measuring.take("sofa.height", "height_metres", request.height_metres);
  m.seat_height = measuring.take("sofa.seat_height", "seat_height_metres", request.seat_height_metres);
  m.arm_height = measuring.take("sofa.arm_height", "arm_height_metres", request.arm_height_metres);
  m.arm_width = measuring.take("sofa.arm_width", "arm_width_metres", request.arm_width_metres);
  m.leg_height = measuring.take("sofa.leg_height", "leg_height_metres", request.leg_height_metres);
  m.seat_thickness = measuring.take("sofa.seat_cushion_thickness", "seat_cushion_thickness_metres",
                                    request.seat_cushion_thickness_metres);
  m.back_thickness = measuring.take("sofa.back_cushion_thickness", "back_cushion_thickness_metres",
                                    request.back_cushion_thickness_metres);
  m.back_lean = std::tan(measuring.usual("sofa.back_angle_degrees") * std::numbers::pi / 180.0);
  m.frame_thickness = measuring.usual("sofa.back_frame_thickness");
  m.frame_height = m.height - measuring.usual("sofa.back_frame_below_cushions");
  m.base_recess = measuring.usual("sofa.base_recess");
  m.arm_rounding = std::min(measuring.usual("sofa.arm_rounding"), 0.4 * m.arm_width);
  m.frame_rounding = measuring.usual("sofa.back_rounding");
  m.seat_crown = measuring.usual("sofa.seat_crown");
  m.back_crown = measuring.usual("sofa.back_crown");
  m.bulge = measuring.usual("sofa.cushion_bulge");
  m.cushion_rim = measuring.usual("sofa.cushion_rim");
  m.leg_side = measuring.usual("sofa.leg_side");
  m.leg_foot_side = measuring.usual("sofa.leg_foot_side");
  m.leg_inset = measuring.usual("sofa.leg_inset");
  m.middle_legs = m.width > measuring.usual("sofa.middle_legs_from_width");
  m.dust_cover_inset = measuring.usual("sofa.dust_cover_inset");
  m.staple_inset = measuring.usual("sofa.staple_inset");
  m.cloth = measuring.usual("sofa.cloth_thickness");
  if (request.skirted) {
    m.skirt_overlap = measuring.usual("sofa.skirt_overlap");
    m.skirt_clearance = measuring.usual("sofa.skirt_clearance");
  }
}

void derive(SofaMeasures& m) {
  m.deck_height = m.seat_height - m.seat_crown - m.seat_thickness;
  m.inside_back = m.depth - m.frame_thickness - (m.frame_height - m.seat_height) * m.back_lean;
  m.cushion_width = (m.width - 2.0 * m.arm_width) / static_cast<double>(m.seats);
  m.arm_straight = m.arm_height - m.arm_rounding;
  m.frame_straight = m.frame_height - m.frame_rounding;
}

/// The key to point at when two measures do not go together: one that was given rather than a usual value.
std::string_view blamed(std::string_view first, const std::optional<double>& first_given,
                        std::string_view second, const std::optional<double>& second_given) {
  return !first_given && second_given ? second : first;
}

}  // namespace

Result<MeasuredSofa> measure_sofa(const SofaRequest& request) {
  if (request.seats < k_fewest_seats || request.seats > k_most_seats)
    return refuse(wrong_seats(request.seats));
  const auto& table = furniture_dimensions();
  if (!table) return refuse(table.error());
  Measuring measuring(*table);
  SofaMeasures m;
  take_all(request, measuring, m);
  derive(m);

  const double least = measuring.usual("sofa.least_cushion_width");
  const double greatest = measuring.usual("sofa.greatest_cushion_width");
  const double seats = static_cast<double>(m.seats);
  measuring.require(
      fmt::format("The width of a sofa with {} seats and arms {:.4g} m wide", m.seats, m.arm_width),
      blamed("width_metres", request.width_metres, "arm_width_metres", request.arm_width_metres), m.width,
      2.0 * m.arm_width + seats * least, 2.0 * m.arm_width + seats * greatest);
  measuring.require(fmt::format("The seat height over legs of {:.4g} m and a cushion of {:.4g} m",
                                m.leg_height, m.seat_thickness),
                    blamed("seat_height_metres", request.seat_height_metres, "leg_height_metres",
                           request.leg_height_metres),
                    m.seat_height, m.leg_height + k_least_rail + m.seat_thickness + m.seat_crown, k_no_limit);
  measuring.require(fmt::format("The arm height over a seat height of {:.4g} m", m.seat_height),
                    blamed("arm_height_metres", request.arm_height_metres, "seat_height_metres",
                           request.seat_height_metres),
                    m.arm_height, m.seat_height + m.arm_rounding + k_least_arm_above_seat, k_no_limit);
  measuring.require(
      fmt::format("The height of a sofa with arms of {:.4g} m", m.arm_height),
      blamed("height_metres", request.height_metres, "arm_height_metres", request.arm_height_metres),
      m.height, m.arm_height + k_least_back_above_arm + m.frame_rounding + (m.height - m.frame_height),
      k_no_limit);
  measuring.require(fmt::format("The depth of a sofa {:.4g} m high with back cushions of {:.4g} m", m.height,
                                m.back_thickness),
                    blamed("depth_metres", request.depth_metres, "back_cushion_thickness_metres",
                           request.back_cushion_thickness_metres),
                    m.depth, m.depth - m.inside_back + m.back_thickness + m.back_crown + k_least_seat_depth,
                    k_no_limit);
  if (measuring.refusal()) return refuse(*measuring.refusal());
  return MeasuredSofa{m, measuring.used()};
}

}  // namespace lastegg::furniture
