// Why a pace is what it is: which unknown brings how much of the spread of the fastest pace, and by how much
// the fastest pace of the middle case would change if one thing were otherwise. Pure functions.
#pragma once

#include <vector>

#include "treatments/steam/pace/pace.h"

namespace lastegg::steam {

enum class Influence { steam_temperature, exchange, cloth_vapour, forced_flow, layers, hand };

struct InfluenceShare {
  Influence what = Influence::hand;
  double share = 0;  ///< of the variance of ln(fastest pace), 0..1
};

/// First-order sensitivity of the fastest pace to each group of unknowns, largest first.
/// Model:   share = Var(E[ln v | unknown]) / Var(ln v), the conditional mean by a cubic in the unknown's
/// normal
///          score fitted to the weighted samples, less what a fit of pure noise would show. Samples without a
///          limit inside the range of paces count at its end. Unknowns that a fold test has tied together
///          share their influence, and the shares then need not add up to one.
/// Inputs:  limits: one per sample, of sample_limits()
/// Source:  Saltelli et al. 2008, Global sensitivity analysis, ch. 1 (from memory, to be checked)
/// Checked: treatments/steam/pace/what_matters_law_test.cpp
std::vector<InfluenceShare> influences(const PaceProblem& problem, const std::vector<SampleLimits>& limits);

enum class Lever {
  longer_head,       ///< half as long again along the travel
  second_pass,       ///< after a pause to cool
  hotter_steam,      ///< dew temperature 2 K higher, where boiling allows
  better_exchange,   ///< film and supply of heat twice as large
  opener_cloth,      ///< vapour efficiency twice as large, at most 1
  stronger_push,     ///< forced flow twice as large
  conducting_layers  ///< conductivities twice as large
};

struct LeverGain {
  Lever lever = Lever::longer_head;
  double factor = 1;  ///< fastest pace with it over that without
};

/// What would make the middle case faster, in the order of Lever; empty when nothing kills in the middle
/// case. Model:   fastest pace of the medians, by interpolation of log10 R over ln(pace), with one thing
/// changed. Errors:  as run_pass() Cost:    130 previews Source:  own derivation; the sizes of the changes
/// are judgement Checked: treatments/steam/pace/what_matters_law_test.cpp
Result<std::vector<LeverGain>> lever_gains(const PaceProblem& problem);

/// What holds the heat back: of exchange, cloth and layers the one whose doubling gains most.
Lever bottleneck(const std::vector<LeverGain>& gains);

}  // namespace lastegg::steam
