// A length and a duration have no sum.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const auto result = metres(1) + seconds(1);
#else
const auto result = metres(1) + millimetres(1);
#endif
}  // namespace lastegg
