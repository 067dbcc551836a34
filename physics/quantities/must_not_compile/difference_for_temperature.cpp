// A difference of temperatures is not a temperature.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const Temperature result = kelvin_difference(51);
#else
const Temperature result = celsius(0) + kelvin_difference(51);
#endif
}  // namespace lastegg
