// Heat conduction through a stack of layers, one-dimensional: temperatures at asked depths and times.
// No moisture, no phase change: that is treatments/steam. Pure functions of plain values.
#pragma once

#include <cstddef>
#include <vector>

#include "physics/quantities/error.h"
#include "physics/quantities/quantities.h"

namespace lastegg {

struct ConductionLayer {
  Length thickness;
  ThermalConductivity conductivity;
  VolumetricHeatCapacity heat_capacity;
  Temperature start;  ///< of the whole layer
};

/// What happens at a face of the stack; flux counts positive into the stack.
struct Boundary {
  enum class Kind { fixed, convective, flux, insulated };

  Kind kind = Kind::insulated;
  Temperature temperature = kelvin(0.0);  ///< of the face (fixed) or of the fluid (convective)
  HeatTransferCoefficient film = watts_per_m2_kelvin(0.0);  ///< convective
  HeatFlux heat = watts_per_m2(0.0);                        ///< flux

  static Boundary fixed(Temperature temperature);
  static Boundary convective(HeatTransferCoefficient film, Temperature fluid);
  static Boundary flux(HeatFlux heat);
  static Boundary insulated();
};

struct ConductionProblem {
  std::vector<ConductionLayer> layers;  ///< from the front face inwards
  Boundary front, back;
  std::vector<Length> depths;   ///< below the front face
  std::vector<Duration> times;  ///< after the start, in any order
};

/// Fineness of grid and steps. The defaults keep the error below 0.01 K for a jump of 75 K.
struct ConductionResolution {
  double cell_growth =
      0.03;  ///< cells grow by this share of their distance from the nearest face or interface
  double first_cell = 0.012;  ///< first cell in diffusion lengths sqrt(a t) of the first asked time
  double step_share = 0.04;   ///< time step as a share of the time passed
};

/// Heat balance from the start to the last asked time, per area.
struct EnergyLedger {
  EnergyPerArea in_through_front, in_through_back, stored;
};

struct ConductionAnswer {
  std::vector<std::vector<Temperature>> temperatures;  ///< per time as asked, per depth as asked
  EnergyLedger ledger;
  std::size_t nodes = 0, steps = 0;
};

/// Temperatures at the asked depths and times.
/// Model:   C dT/dt = d/dx (k dT/dx) per layer, temperature and flux continuous between layers. Finite
///          volumes about nodes that lie on faces, interfaces and asked depths (nothing is
///          interpolated), cells growing away from faces and interfaces. TR-BDF2 in time (second order,
///          L-stable), steps growing with the time passed, so that a sudden change at the start is
///          resolved. Error <= 0.01 K of exact solutions for a jump of 75 K.
/// Inputs:  1..100 layers with thickness, conductivity and heat capacity above zero; depths within the
///          stack; times >= 0; film > 0 where convective.
/// Errors:  bad_input with `where` as a JSON pointer ("/layers/1/thickness"), value and limit.
/// Cost:    about 900 nodes and 400 steps (30 ms) for one layer and times over three decades; grows
///          with layers and the logarithm of that range.
/// Source:  TR-BDF2: Bank et al. 1985, with the coefficients of Hosea and Shampine 1996 (from memory,
///          checked by the order of convergence)
/// Checked: physics/conduction/conduction_reference_test.cpp, conduction_law_test.cpp
Result<ConductionAnswer> conduct(const ConductionProblem& problem,
                                 const ConductionResolution& resolution = {});

}  // namespace lastegg
