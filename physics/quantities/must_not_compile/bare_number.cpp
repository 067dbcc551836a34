// A bare number is not a length: its unit is missing.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const Length result = 3.0;
#else
const Length result = millimetres(3);
#endif
}  // namespace lastegg
