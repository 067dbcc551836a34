// What one head of a machine says about another: both are fed by the same boiler through the same hose. Plain
// values; pure functions.
#pragma once

#include <span>

#include "treatments/steam/fold_test/fold_reading.h"
#include "treatments/steam/steamer/calibration.h"

namespace lastegg::steam {

/// Correlation of the dew temperatures of two heads of one machine. Below one because each head, towel and
/// hand lets in air of its own. Source: estimate (judgement), docs/decisions/030-fold-test.md.
constexpr double k_shared_boiler = 0.5;

/// What is believed of a head's dew temperature once other heads of its machine were tested.
/// Model:   scores of two heads jointly normal with correlation rho: mean rho m, variance
///          1 - rho^2 (1 - s^2), where m and s are those of the other head's posterior, s at most 1. Of
///          several heads only the one known best speaks: they share the boiler with each other too. So the
///          belief never gets narrower than sqrt(1 - rho^2), 0.87 of the prior. Film, vapour efficiency and
///          forced gas belong to head, towel and covering and are not shared.
/// Inputs:  calibrations of other heads of the same machine; none: the prior.
/// Checked: treatments/steam/fold_test/same_machine_law_test.cpp
DewBelief belief_from_machine(std::span<const Calibration> others);

/// The same beside readings of the head itself: the middle moves, the spread stays the prior's. So a head
/// that was tested is never known better for what another one showed. Source:  judgement Checked:
/// treatments/steam/fold_test/same_machine_law_test.cpp
DewBelief belief_beside_own_test(std::span<const Calibration> others);

/// The prior of a head and towel that nobody has tested, with what the machine's others say of its steam.
/// Film, vapour efficiency and forced gas stay the prior's; with no belief it is prior_calibration(). Model:
/// the belief holds for the head's own dew temperature; what a cloth shows of it keeps the prior's
///          part of the cloth.
/// Checked: treatments/steam/fold_test/same_machine_law_test.cpp
Calibration prior_of_machine(Calibration prior, const DewBelief& belief);

}  // namespace lastegg::steam
