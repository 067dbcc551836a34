// Four lanes: what every 64-bit processor of the x86 and ARM families and WebAssembly have.
#include "treatments/steam/lanes/lane_kernel.h"
#include "treatments/steam/lanes/lane_kernels.h"

namespace lastegg::steam {

const PackKernel k_four_lanes = run_lanes<4>;

}  // namespace lastegg::steam
