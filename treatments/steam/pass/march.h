// One march of heat and water through a stack: the two-unknown finite-volume scheme of
// treatments/steam/README.md, one implicit step at a time. A March owns its cells; it is not shared between
// threads. It knows nothing of paces, bugs or samples.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "treatments/steam/pass/grid.h"
#include "treatments/steam/pass/stack.h"

namespace lastegg::steam {

/// What the cloth meets on its upper side during one phase.
struct Boundary {
  bool steam = false;  ///< steam under the head or its skirt; otherwise room air
  // steam
  double factor = 1;  ///< f: 1 under the head, less under the skirt
  double dew_celsius = 0;
  double film_watts_per_m2_kelvin = 0;
  double flux_cap_watts_per_m2 = 0;
  double forced_gas_metres_per_second = 0;
  // room air
  double air_celsius = 20;
  double air_film_watts_per_m2_kelvin = 10;
  double air_relative_humidity = 0.5;
};

/// Energy and water that crossed the borders of the stack since the start, per m2, and what the stack holds.
struct Ledger {
  double energy_in_joules_per_m2 = 0;
  double water_in_kilograms_per_m2 = 0;
  double energy_held_joules_per_m2 = 0;
  double water_held_kilograms_per_m2 = 0;
};

/// Why a march has left the range where its linearisation can be trusted.
enum class MarchFault { none, not_finite, water_below_zero, temperature_out_of_range, step_too_long };

/// Above this temperature a pass is faulty: what the steam allows in a cell drier than itself (its
/// equilibrium is a y_sat(T) = y_d, and the driest cells still have the activity of the start), with a
/// margin; in celsius.
double highest_allowed_celsius(double dew_celsius, double start_celsius, double room_celsius,
                               double start_activity);

/// A step whose linearisation leaves a cell this far from T(E, W) was too long. Tuned on 360 passes drawn
/// from the prior and 360 of the wide box of robustness_law_test.cpp: without it peaks came out up to 7 and
/// 14 K too high, with it 0.5 and 1.4 K, for a sixth more steps.
constexpr double k_largest_mismatch_kelvin = 0.5;

class March {
 public:
  /// Inputs:  stack and grid of make_grid(); vapour_efficiency 0..1.5; pressure in pascal; start temperature
  /// in celsius;
  ///          start_activity 0..0.95 of the permeable layers (impermeable ones start without water).
  March(std::span<const Layer> stack, std::span<const GridCell> grid, double vapour_efficiency,
        double pressure_pascal, double start_celsius, double start_activity);

  /// Starts a phase with new conditions on the surface.
  void set_boundary(const Boundary& boundary);

  /// One step of SDIRK2 (gamma = 1 - 1/sqrt 2) with one Newton linearisation per stage; energy and water are
  /// moved by the linearised fluxes and so conserved to rounding. Source:  scheme: own derivation,
  /// treatments/steam/README.md; SDIRK2: Alexander 1977 (from memory, to be checked) Checked:
  /// treatments/steam/pass/pass_law_test.cpp, pass_agreement_test.cpp
  void step(double seconds);

  /// Temperature in celsius at a depth, between nodes in proportion to the thermal resistance.
  double temperature_at(double depth_metres) const;
  double surface_celsius() const { return cells_.front().temperature; }
  double highest_celsius() const;

  /// Water gained by the whole stack since the start (forced vapour that left again is not counted), kg/m2.
  double water_gain_kilograms_per_m2() const;
  /// Vapour that stands in the pores now, kg/m2.
  double pore_vapour_kilograms_per_m2() const;

  Ledger ledger() const;
  MarchFault fault() const { return fault_; }
  /// Largest a y_sat(T) - y_d seen during steam: never above zero for the exact equations.
  double activity_excess() const { return activity_excess_; }
  /// Hash of the discrete choices made so far (donor sides, saturation, cap), to compare targets.
  std::uint64_t branch_hash() const { return branch_hash_; }
  /// Keeps branch_hash() and activity_excess(), which cost time.
  void keep_diagnostics(bool keep) { diagnostics_ = keep; }
  /// What counts as a step that was too long, in kelvin.
  void set_largest_mismatch(double kelvin) { largest_mismatch_ = kelvin; }

 private:
  struct Cell {
    // fixed
    double thickness, capacity, conductivity, porosity, vapour_openness, sorption;
    double up_half, down_half;  // distance from the node to the cell's upper and lower face
    bool permeable, has_water, in_run;
    // state
    double energy, water, temperature;
    double energy_increment, water_increment;  // of the first stage
    // evaluated at the state
    double lambda, lambda_t, lambda_w, x, x_t, x_w, h_v, h_v_t, e, e_t, e_w;
    bool saturated;
    // of the solve: row eliminated to  unknown_i = d - u unknown_(i+1)
    double u_tt, u_tw, u_wt, u_ww, d_t, d_w;
  };
  struct Face {
    double heat_conductance, vapour_conductance;
    double j, j_ti, j_wi, j_tj,
        j_wj;  // water flux downwards and its derivatives to the cell above (i) and below (j)
    double f, f_ti, f_wi, f_tj, f_wj;  // energy flux
  };

  void evaluate(Cell& cell) const;
  void evaluate_faces();
  void surface_flux(double& j, double& j_t, double& j_w, double& f, double& f_t, double& f_w);
  void stage(double weight, double history);
  void mark(std::uint64_t choice);
  void look_for_fault();

  std::vector<Cell> cells_;
  std::vector<Face> faces_;  // faces_[i] lies between cells i and i+1
  std::size_t run_end_ = 0;  // number of cells in the permeable run from the surface; 0: impermeable top
  double pressure_;
  double start_activity_;
  bool evaluated_ = false;  // the evaluated part of every cell belongs to its state
  Boundary boundary_;
  double forced_ = 0;  // J_a, kg of dry gas per m2 s
  double dew_fraction_ = 0, dew_x_ = 0, dew_h_v_ = 0, room_lambda_ = 0, room_h_v_ = 0;
  double start_water_ = 0, start_energy_ = 0, lowest_, highest_allowed_;
  // the ledger of boundary fluxes, which follows the recursion of the steps
  double water_in_ = 0, energy_in_ = 0, water_in_increment_ = 0, energy_in_increment_ = 0;
  MarchFault fault_ = MarchFault::none;
  double activity_excess_ = -1;
  std::uint64_t branch_hash_ = 1469598103934665603ULL;
  bool diagnostics_ = false;
  double largest_mismatch_ = k_largest_mismatch_kelvin;
};

}  // namespace lastegg::steam
