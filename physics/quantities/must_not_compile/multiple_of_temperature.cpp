// Twice a temperature means nothing.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const auto result = 2.0 * celsius(20);
#else
const auto result = 2.0 * kelvin_difference(20);
#endif
}  // namespace lastegg
