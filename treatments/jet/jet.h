// What comes out of a head: how fast it meets the cloth, what that does to loose bugs, how far it gets into a
// crack, and how much of a strip's width counts. Bounds and plain rules; pure functions.
#pragma once

#include <array>

#include "physics/quantities/error.h"

namespace lastegg::jet {

enum class Opening {
  round,  ///< a tip with one hole
  slot    ///< a brush or bar, long against its gap
};

struct Nozzle {
  Opening opening = Opening::round;
  double size_metres = 0.003;  ///< diameter of the hole, or gap of the slot
  double width_metres = 0.1;   ///< of a slot
  double supply_kilograms_per_second = 0.6e-3;
  double room_pascal = 101325;
};

/// Decay constants of free turbulent jets: u/u0 = K_round (d/x) s, K_slot sqrt(gap/x) sqrt(s), s =
/// sqrt(rho_jet/rho_air).
/// Source:  from memory, to be checked (textbooks give 6.2 to 6.4 and 2.4 to 2.5); one measurement read
///          gives 6.11 at Reynolds number 19400 ([abdel_rahman_1996])
constexpr double k_round_decay = 6.2;
constexpr double k_slot_decay = 2.4;

/// Speed on the jet's axis at a distance, m/s; the speed at the opening within its core.
/// Model:   free jet of steam at its boiling point into still air; steam that condenses on the way loses
///          drive, so this is no less than what arrives.
/// Inputs:  size 0.1 mm..50 mm, width up to 0.6 m, supply 0.01..5 g/s, distance 0..2 m
/// Errors:  bad_input outside; out_of_domain where the steam would leave faster than its own sound: then
///          it comes under pressure and faster than this model says.
/// Checked: treatments/jet/jet_reference_test.cpp
Result<double> speed_at(const Nozzle& nozzle, double distance_metres);

/// What a stream does to bugs.
enum class Scatter {
  stays,        ///< even a loose first nymph stays where it is
  may_scatter,  ///< loose bugs move; those that hold on stay
  scatters      ///< those that hold on poorly are blown off too
};

/// Bodies that a stream may move.
/// Source:  masses: adult 5.4 mg derived from a measured safety factor ([dwyer_joyce_2024]: 0.8 mN is 15
///          times the weight); first nymph 0.1 mg, frontal areas 2 and 0.15 mm2, friction 0.4, drag
///          coefficient 1: from memory or estimates, to be checked. A bug that feels heat lets go, so the
///          loose value decides.
struct Body {
  const char* key;
  double hold_newtons;  ///< what keeps it there
  double area_m2;
};
constexpr double k_gravity = 9.81;
constexpr double k_friction = 0.4;
constexpr double k_drag_coefficient = 1.0;
constexpr std::array<Body, 4> k_bodies{{{"first_nymph_loose", k_friction * 0.1e-6 * k_gravity, 0.15e-6},
                                        {"adult_loose", k_friction * 5.4e-6 * k_gravity, 2e-6},
                                        {"adult_holding_poorly", 0.2e-3, 2e-6},
                                        {"adult_holding_well", 7.1e-3, 2e-6}}};

/// Speed at which a stream moves a body, m/s.
/// Model:   1/2 rho u^2 C_d A = hold
/// Checked: treatments/jet/jet_reference_test.cpp
double moving_speed(const Body& body, double gas_kilograms_per_m3 = 0.7);

/// Limits between the words, m/s.
/// Source:  own rule: the loose first nymph; poorly holding adults less a margin.
constexpr double k_stays_below = 2.5;
constexpr double k_scatters_above = 15;
Scatter scatter_at(double metres_per_second);

/// A crack, and how it takes heat from the steam in it.
struct Crack {
  double gap_metres = 0.002;
  double wall_effusivity = 322.5;  ///< sqrt(k rho c) of its walls, W s^0.5/(m2 K); softwood
  double seconds = 2;              ///< that the head stands over it
};

/// Depth from the mouth to which a closed crack is heated, m: vapour diffuses in through air that cannot
/// leave.
/// Model:   L = sqrt(k_v gap / (2 h)), h = e / sqrt(pi t): a fin whose walls take heat; k_v = 1 W/mK, the
///          conduction that diffusing vapour stands for near 75 C. A bound for a mouth in full steam: no
///          more.
/// Source:  own derivation
/// Checked: treatments/jet/jet_reference_test.cpp
Result<double> closed_reach(const Crack& crack);

/// Depth to which steam that flows through an open crack is used up by its walls, m.
/// Model:   L = rho u gap h_fg / (2 h (T_steam - T_wall)); rho = 0.6 kg/m3
/// Inputs:  speed in the gap 0..50 m/s; steam at least 5 K warmer than the walls
/// Source:  own derivation (energy)
/// Checked: treatments/jet/jet_reference_test.cpp
Result<double> open_reach(const Crack& crack, double metres_per_second, double steam_celsius,
                          double wall_celsius);

/// Width at each side of a strip that does not count.
/// Source:  own rule: steam is thinned at the edge of a head; neighbours that overlap by twice this much
///          meet. Estimate; conduction alone blunts less.
constexpr double k_lost_side_metres = 0.005;

/// What a strip's side loses by conduction alone, m: where 95 % of the rise is left.
/// Model:   (1 + erf(y / (2 sqrt(alpha t)))) / 2 = 0.95, y = 2.326 sqrt(alpha t)
/// Checked: treatments/jet/jet_reference_test.cpp
double conduction_side(double diffusivity_m2_per_second, double seconds);

/// Width of a head's strip that counts, m; zero for a head that is all edge.
double counted_width(double head_width_metres, double diffusivity_m2_per_second, double seconds);

/// Strips side by side that cover a face, so that counted widths meet; 0 if the head has none.
int strips_for(double face_width_metres, double counted_width_metres);

}  // namespace lastegg::jet
