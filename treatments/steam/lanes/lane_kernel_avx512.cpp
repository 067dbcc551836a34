// Sixteen lanes, compiled for AVX-512; empty where the compiler was not told so (CMakeLists.txt).
#ifdef __AVX512F__
#include "treatments/steam/lanes/lane_kernel.h"
#include "treatments/steam/lanes/lane_kernels.h"

namespace lastegg::steam {

const PackKernel k_sixteen_lanes = run_lanes<16>;

}  // namespace lastegg::steam
#endif
