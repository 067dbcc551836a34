// A quantity does not turn into a number by itself: the unit must be named.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const double result = kilopascals(2.5);
#else
const double result = in_pascals(kilopascals(2.5));
#endif
}  // namespace lastegg
