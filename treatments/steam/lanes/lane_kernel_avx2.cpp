// Eight lanes, compiled for AVX2; empty where the compiler was not told so (CMakeLists.txt).
#ifdef __AVX2__
#include "treatments/steam/lanes/lane_kernel.h"
#include "treatments/steam/lanes/lane_kernels.h"

namespace lastegg::steam {

const PackKernel k_eight_lanes = run_lanes<8>;

}  // namespace lastegg::steam
#endif
