// From a temperature series at a place under steam to the dose ratios of bugs/mortality, worst z and cap of
// steam contact.
#pragma once

#include "bugs/mortality/mortality.h"
#include "treatments/steam/pass/exposure.h"

namespace lastegg::steam {

/// log10 of R = dose / LT99 at the worst z, with the body's lag; floored so that "nothing" stays finite.
struct PlaceKill {
  double egg = 0;
  double mobile = 0;    ///< nymphs and unfed adults
  double engorged = 0;  ///< shown apart, never part of the verdict
  double worst() const { return egg < mobile ? egg : mobile; }
};

constexpr double k_no_kill = -9;  ///< floor of the logarithms

/// Dose ratios of a series under steam contact.
/// Source:  bugs/mortality/README.md
/// Checked: treatments/steam/pass/exposure_law_test.cpp
PlaceKill kill_of(const Series& series);

}  // namespace lastegg::steam
