// Two temperatures on a scale have no sum.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const auto result = celsius(71) + celsius(2);
#else
const auto result = celsius(71) + kelvin_difference(2);
#endif
}  // namespace lastegg
