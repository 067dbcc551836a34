// The ratio of two temperatures on a scale is not offered: in Celsius it would mean nothing.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const double result = celsius(40) / celsius(20);
#else
const double result = (celsius(40) - celsius(20)) / (celsius(60) - celsius(20));
#endif
}  // namespace lastegg
