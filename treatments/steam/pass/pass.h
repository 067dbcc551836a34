// One pass of a steam head over a stack: the phases it brings (skirt, cover, skirt, air), the march through
// them, and what a place in the stack lived through. Plain values and pure functions; the double-precision
// reference of the product.
#pragma once

#include <cstdint>
#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/pass/march.h"
#include "treatments/steam/pass/stack.h"

namespace lastegg::steam {

/// A head with its towel, as the cloth feels it.
struct Head {
  double length_metres = 0;  ///< contact length along the travel
  double dew_celsius = 0;
  double film_watts_per_m2_kelvin = 0;
  double flux_cap_watts_per_m2 = 0;
  double forced_gas_metres_per_second = 0;
  double skirt_length_metres = 0.02;  ///< estimate, docs/decisions/011-skirt.md
  double skirt_factor = 0.25;
};

struct RoomAir {
  double film_watts_per_m2_kelvin = 10;
  double celsius = 20;
  double relative_humidity = 0.5;
};

struct PassProblem {
  Head head;
  double pace_metres_per_second = 0.025;
  Stack stack;
  double vapour_efficiency = 0.6;  ///< phi
  double pressure_pascal = 101325;
  double start_celsius = 20;
  double start_activity = 0.5;
  RoomAir air;
  int passes = 1;
  double gap_seconds = 20;      ///< cooling between passes
  double observe_seconds = 60;  ///< air phase after the last pass
  std::vector<double> depths_metres;
};

/// How finely to compute. The default serves ensembles; `shown()` serves single answers.
struct Resolution {
  int cells = 32;
  int refine = 1;      ///< each step of the base schedule is cut into this many
  int most_redos = 7;  ///< doublings of `refine` when cutting single steps did not help
  /// Stop the air phase once no cell can reach `stop_below_celsius` any more; none: run to the end.
  double stop_below_celsius = -1000;
  double largest_mismatch_kelvin = k_largest_mismatch_kelvin;
};
constexpr Resolution shown_resolution() {
  return {.cells = 192, .refine = 8, .most_redos = 5};
}

/// The history of chosen places: times from the arrival of the leading skirt, and one row of temperatures per
/// time.
struct PassHistory {
  std::vector<double> seconds;
  std::vector<std::size_t> phase_starts;     ///< indices into seconds where the boundary changes; first is 0
  std::vector<double> surface_celsius;       ///< per time
  std::vector<std::vector<double>> celsius;  ///< per depth, per time
  double liftoff_seconds = 0;                ///< end of the last trailing skirt
  double water_gain_at_cover_end_kilograms_per_m2 = 0;
  double water_gain_at_liftoff_kilograms_per_m2 = 0;
  double pore_vapour_gain_at_liftoff_kilograms_per_m2 = 0;
  double highest_celsius = 0;
  Ledger ledger;
  double activity_excess = -1;
  std::uint64_t branches = 0;
  int most_parts = 1;  ///< parts into which a step of the base schedule had to be cut
};

/// Boiling point by the march's own saturation curve, in celsius: exactly where the march diverges.
double boiling_celsius(double pressure_pascal);

/// Refusals shared by all users of a pass: the model has no answer there.
/// Errors:  bad_input with limits: stack empty, thickness, pace, dew within 0.25 K of boiling, depth outside
/// the stack ...
Result<void> check(const PassProblem& problem);

/// Marches a pass and returns the history at the asked depths.
/// Model:   treatments/steam/README.md; head of length b at pace v: leading skirt s/v at f = skirt factor,
/// cover b/v, trailing skirt s/v, then
///          room air for observe_seconds (between passes: gap_seconds).
/// Errors:  as check(); out_of_domain if every redo with smaller steps ended in a fault (the last fault is
/// named). Cost:    about 0.1 ms at the default resolution, 20 ms at shown_resolution(). Source:  own
/// derivation, treatments/steam/README.md Checked: treatments/steam/pass/pass_reference_test.cpp,
/// pass_law_test.cpp, pass_agreement_test.cpp
Result<PassHistory> run_pass(const PassProblem& problem, const Resolution& resolution,
                             bool diagnostics = false);

}  // namespace lastegg::steam
