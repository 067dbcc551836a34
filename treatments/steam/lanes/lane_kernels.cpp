#include "treatments/steam/lanes/lane_kernels.h"

namespace lastegg::steam {

std::vector<WideKernel> kernels_here() {
  std::vector<WideKernel> kernels{{4, k_four_lanes}};
#ifdef LASTEGG_X86_LANES
  if (__builtin_cpu_supports("avx2")) kernels.push_back({8, k_eight_lanes});
  if (__builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512vl") &&
      __builtin_cpu_supports("avx512dq"))
    kernels.push_back({16, k_sixteen_lanes});
#endif
  return kernels;
}

PackKernel widest_kernel() {
  return kernels_here().back().run;
}

}  // namespace lastegg::steam
