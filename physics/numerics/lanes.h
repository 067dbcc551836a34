// Several single-precision numbers that go through the same arithmetic side by side: one sample per lane.
// Built on the compilers' vector extensions, so that one source serves 4, 8 and 16 lanes and WebAssembly.
// Only IEEE additions, multiplications, divisions and square roots in a fixed order, never contracted: a
// lane's result depends neither on how many lanes there are nor on the machine. Everything is inline; no
// state; any thread.
#pragma once

#include <cstdint>

namespace lastegg::numerics {

/// The vector types of a number of lanes.
template <int Width>
struct Lanes {
  typedef float Floats __attribute__((vector_size(4 * Width)));
};

namespace lanes {

#define LASTEGG_LANE_FUNCTION static inline __attribute__((always_inline))

/// What a comparison of two F gives: all bits set in the lanes where it holds.
template <class F>
using Mask = decltype(F{} < F{});

template <class F>
LASTEGG_LANE_FUNCTION F splat(float x) {
  return F{} + x;
}
template <class F>
LASTEGG_LANE_FUNCTION F select(Mask<F> mask, F yes, F no) {
  return mask ? yes : no;
}
template <class F>
LASTEGG_LANE_FUNCTION F smaller(F a, F b) {
  return a < b ? a : b;
}
template <class F>
LASTEGG_LANE_FUNCTION F larger(F a, F b) {
  return a > b ? a : b;
}
template <class F>
LASTEGG_LANE_FUNCTION F absolute(F a) {
  return reinterpret_cast<F>(reinterpret_cast<Mask<F>>(a) & 0x7fffffff);
}
/// Whether a mask holds in any lane.
template <int Width>
LASTEGG_LANE_FUNCTION bool any_of(const decltype(typename Lanes<Width>::Floats{} <
                                                 typename Lanes<Width>::Floats{})& mask) {
  std::uint64_t halves[Width / 2];
  __builtin_memcpy(halves, &mask, sizeof(halves));
  std::uint64_t any = 0;
  for (const std::uint64_t half : halves) any |= half;
  return any != 0;
}
/// Powers of x that polynomial() needs: x, x^2, x^4, x^8.
template <class F>
struct Powers {
  F x, x2, x4, x8;
};
template <class F>
LASTEGG_LANE_FUNCTION Powers<F> powers(F x) {
  const F x2 = x * x, x4 = x2 * x2;
  return {x, x2, x4, x4 * x4};
}

/// Polynomial of up to sixteen coefficients, from the constant up, in halves (Estrin's scheme): its terms do
/// not wait for one another as those of Horner's do, which here takes a third of the time.
template <int Count, class F>
LASTEGG_LANE_FUNCTION F polynomial(const float* c, const Powers<F>& p) {
  if constexpr (Count == 1) {
    return splat<F>(c[0]);
  } else if constexpr (Count == 2) {
    return c[0] + c[1] * p.x;
  } else {
    constexpr int low = Count > 8 ? 8 : Count > 4 ? 4 : 2;
    const F power = low == 8 ? p.x8 : low == 4 ? p.x4 : p.x2;
    return polynomial<low>(c, p) + power * polynomial<Count - low>(c + low, p);
  }
}

/// 2^x. Relative error below 4e-7; x is held within -126..126.
/// Source:  coefficients from tools/fit_lane_functions.py
/// Checked: physics/numerics/lanes_agreement_test.cpp
template <class F>
LASTEGG_LANE_FUNCTION F exp2(F x) {
  static constexpr float coefficients[] = {
      1, 0.693147207f, 0.240226509f, 0.0555032723f, 0.00961805668f, 0.00134004282f, 0.000154614447f};
  constexpr float rounder = 12582912.0f;  // 1.5 * 2^23: adding it rounds to the nearest whole number
  x = smaller(larger(x, splat<F>(-126.0f)), splat<F>(126.0f));
  const F shifted = x + rounder;
  const F whole = shifted - rounder;
  const F fraction = polynomial<7>(coefficients, powers(x - whole));
  // The low bits of `shifted` hold the whole number; moved to the exponent they multiply by its power of two.
  return reinterpret_cast<F>(reinterpret_cast<Mask<F>>(fraction) +
                             (reinterpret_cast<Mask<F>>(shifted) << 23));
}

/// Natural logarithm of a positive normal number. Error below 1.2e-7 of the larger of 1 and the result.
/// Source:  coefficients from tools/fit_lane_functions.py
/// Checked: physics/numerics/lanes_agreement_test.cpp
template <class F>
LASTEGG_LANE_FUNCTION F log(F x) {
  static constexpr float coefficients[] = {0.333334154f, -0.250007026f, 0.199842232f, -0.166027189f,
                                           0.147038992f, -0.140308922f, 0.0904878443f};
  constexpr std::int32_t root_half = 0x3f3504f3;  // bits of sqrt(1/2)
  const Mask<F> bits = reinterpret_cast<Mask<F>>(x);
  const Mask<F> exponent = (bits - root_half) >> 23;
  const F f = reinterpret_cast<F>(bits - (exponent << 23)) - 1.0f;
  const Powers<F> p = powers(f);
  const F tail = p.x2 * (f * polynomial<7>(coefficients, p) - 0.5f);
  return __builtin_convertvector(exponent, F) * 0.693147181f + (f + tail);
}

}  // namespace lanes
}  // namespace lastegg::numerics
