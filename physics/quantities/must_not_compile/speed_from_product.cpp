// A length times a duration is not a speed.
#include "physics/quantities/quantities.h"

namespace lastegg {
#ifdef LASTEGG_WRONG
const Speed result = metres(1) * seconds(2);
#else
const Speed result = metres(1) / seconds(2);
#endif
}  // namespace lastegg
