// A film times a temperature is not a flux; it takes a difference.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const HeatFlux result = watts_per_m2_kelvin(600) * celsius(97);
#else
const HeatFlux result = watts_per_m2_kelvin(600) * (celsius(97) - celsius(20));
#endif
}  // namespace lastegg
