// A pressure is not compared with a flux.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const bool result = pascals(1) < watts_per_m2(1);
#else
const bool result = pascals(1) < kilopascals(1);
#endif
}  // namespace lastegg
