// The kernels of the lanes, one per vector width, and which of them this machine can run.
#pragma once

#include <vector>

#include "treatments/steam/lanes/lane_pack.h"

namespace lastegg::steam {

struct WideKernel {
  int lanes;
  PackKernel run;
};

/// Kernels that this machine can run, narrowest first.
std::vector<WideKernel> kernels_here();

/// The widest of them.
PackKernel widest_kernel();

extern const PackKernel k_four_lanes;
#ifdef LASTEGG_X86_LANES
extern const PackKernel k_eight_lanes, k_sixteen_lanes;
#endif

}  // namespace lastegg::steam
