// A temperature is not a difference of temperatures.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const TemperatureDifference result = celsius(51);
#else
const TemperatureDifference result = celsius(71) - celsius(20);
#endif
}  // namespace lastegg
