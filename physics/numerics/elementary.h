// Exponentials and logarithms that give the same digits on every target: only IEEE additions,
// multiplications and divisions in a fixed order, no call into the platform's mathematical library
// (whose results differ between systems in the last digits). Everything is inline because the steam
// kernel calls it per cell. Pure functions, no state. The build must not contract multiply-add
// (-ffp-contract=off) and must round to nearest.
#pragma once

#include <bit>
#include <cstdint>
#include <limits>

namespace lastegg::numerics {

namespace elementary_detail {

inline constexpr double k_infinity = std::numeric_limits<double>::infinity();
inline constexpr double k_ln2 = 0x1.62e42fefa39efp-1;
/// ln 2 in two parts; the first has 21 trailing zero bits, so that a binary exponent times it is exact.
inline constexpr double k_ln2_high = 0x1.62e42feep-1;
inline constexpr double k_ln2_low = 0x1.a39ef35793c76p-33;
inline constexpr double k_log2_e = 0x1.71547652b82fep+0;
/// log2(e) in two parts, the first with 21 trailing zero bits.
inline constexpr double k_log2_e_high = 0x1.71547652p+0;
inline constexpr double k_log2_e_low = 0x1.705fc2eefa200p-33;
inline constexpr double k_log2_10 = 0x1.a934f0979a371p+1;
inline constexpr double k_ln10 = 0x1.26bb1bbb55516p+1;
/// log10(2) in two parts, the first with 21 trailing zero bits.
inline constexpr double k_log10_2_high = 0x1.34413508p-2;
inline constexpr double k_log10_2_low = 0x1.f79fef311f12bp-34;
inline constexpr double k_log10_e = 0x1.bcb7b1526e50ep-2;

/// Adding and taking away 1.5 * 2^52 rounds a double of moderate size to the nearest whole number (ties
/// to even).
inline constexpr double k_rounder = 6755399441055744.0;

/// 2^k for a normal result, -1022 <= k <= 1023.
constexpr double power_of_two(std::int64_t k) {
  return std::bit_cast<double>(static_cast<std::uint64_t>(k + 1023) << 52);
}

/// 2^k * value, rounded once, for -2044 <= k <= 2046.
constexpr double scaled(double value, std::int64_t k) {
  const std::int64_t half = k / 2;
  return value * power_of_two(half) * power_of_two(k - half);
}

/// exp(r) for |r| <= 0.35: the Taylor series to r^13, whose first omitted term is below 5e-18.
constexpr double exp_near_zero(double r) {
  double tail = 1.0 / 6227020800.0;
  tail = tail * r + 1.0 / 479001600.0;
  tail = tail * r + 1.0 / 39916800.0;
  tail = tail * r + 1.0 / 3628800.0;
  tail = tail * r + 1.0 / 362880.0;
  tail = tail * r + 1.0 / 40320.0;
  tail = tail * r + 1.0 / 5040.0;
  tail = tail * r + 1.0 / 720.0;
  tail = tail * r + 1.0 / 120.0;
  tail = tail * r + 1.0 / 24.0;
  tail = tail * r + 1.0 / 6.0;
  tail = tail * r + 0.5;
  return 1.0 + (r + r * r * tail);
}

/// A positive finite number as 2^exponent * (1 + fraction), with 1 + fraction between sqrt(1/2) and
/// sqrt(2).
struct BinaryParts {
  double exponent;
  double fraction;
};

constexpr BinaryParts binary_parts(double x) {
  std::int64_t exponent = 0;
  if (x < std::numeric_limits<double>::min()) {  // subnormal
    x *= 0x1p54;
    exponent = -54;
  }
  const auto bits = std::bit_cast<std::uint64_t>(x);
  exponent += static_cast<std::int64_t>(bits >> 52) - 1023;
  double mantissa = std::bit_cast<double>((bits & 0x000fffffffffffffULL) | 0x3ff0000000000000ULL);
  if (mantissa > 0x1.6a09e667f3bcdp+0) {
    mantissa *= 0.5;
    ++exponent;
  }
  return {static_cast<double>(exponent), mantissa - 1.0};
}

/// log(1 + f) - f + f*f/2 for |f| <= sqrt(2) - 1, from log(1+f) = 2 artanh(s), s = f / (2 + f). The
/// first omitted term of the series in s*s is below 1e-18 of the sum.
constexpr double log_remainder(double f) {
  const double s = f / (2.0 + f);
  const double z = s * s;
  double series = 2.0 / 23.0;
  series = series * z + 2.0 / 21.0;
  series = series * z + 2.0 / 19.0;
  series = series * z + 2.0 / 17.0;
  series = series * z + 2.0 / 15.0;
  series = series * z + 2.0 / 13.0;
  series = series * z + 2.0 / 11.0;
  series = series * z + 2.0 / 9.0;
  series = series * z + 2.0 / 7.0;
  series = series * z + 2.0 / 5.0;
  series = series * z + 2.0 / 3.0;
  return s * (0.5 * f * f + z * series);
}

/// True for the arguments that every logarithm treats apart: not positive, infinite, not a number.
constexpr bool is_special_for_log(double x) {
  return !(x > 0.0) || x == k_infinity;
}

constexpr double special_log(double x) {
  if (x == 0.0) return -k_infinity;
  if (x == k_infinity) return x;
  return std::numeric_limits<double>::quiet_NaN();
}

}  // namespace elementary_detail

/// 2^x. Relative error below 1.5 ulp; exact for whole x; 0 below -1075, infinity from 1024 on;
/// subnormals are rounded once.
/// Model:   x = k + f with k whole and |f| <= 1/2; 2^k exp(f ln 2), the exponential by its Taylor
///          series.
/// Source:  own derivation (range reduction and Taylor series)
/// Checked: physics/numerics/elementary_reference_test.cpp: reference (long double library over the
///          whole range)
constexpr double exp2(double x) {
  using namespace elementary_detail;
  if (!(x < 1024.0)) return x != x ? x : k_infinity;
  if (x < -1076.0) return 0.0;
  const double shifted = x + k_rounder;
  const double whole = shifted - k_rounder;
  return scaled(exp_near_zero((x - whole) * k_ln2), static_cast<std::int64_t>(whole));
}

/// e^x. Relative error below 1.5 ulp; overflows to infinity, underflows through subnormals to 0.
/// Model:   x = k ln 2 + r with ln 2 in two parts; 2^k exp(r).
/// Source:  own derivation; the two-part constant after Cody and Waite
/// Checked: physics/numerics/elementary_reference_test.cpp: reference
constexpr double exp(double x) {
  using namespace elementary_detail;
  if (!(x < 709.8)) return x != x ? x : k_infinity;
  if (x < -746.0) return 0.0;
  const double whole = (x * k_log2_e + k_rounder) - k_rounder;
  const double r = (x - whole * k_ln2_high) - whole * k_ln2_low;
  return scaled(exp_near_zero(r), static_cast<std::int64_t>(whole));
}

/// 10^x. Relative error below 2 ulp; overflows to infinity, underflows through subnormals to 0.
/// Model:   x = k log10(2) + r with log10(2) in two parts; 2^k exp(r ln 10).
/// Source:  own derivation
/// Checked: physics/numerics/elementary_reference_test.cpp: reference
constexpr double pow10(double x) {
  using namespace elementary_detail;
  if (!(x < 308.3)) return x != x ? x : k_infinity;
  if (x < -324.0) return 0.0;
  const double whole = (x * k_log2_10 + k_rounder) - k_rounder;
  const double r = (x - whole * k_log10_2_high) - whole * k_log10_2_low;
  return scaled(exp_near_zero(r * k_ln10), static_cast<std::int64_t>(whole));
}

/// Natural logarithm. Relative error below 1.5 ulp; -infinity at 0, not a number below 0.
/// Model:   x = 2^k (1 + f); k ln 2 + f - f^2/2 + remainder(f), small terms added first.
/// Source:  own code; the splitting into f - f^2/2 + s(f^2/2 + R) follows FreeBSD msun e_log.c
/// Checked: physics/numerics/elementary_reference_test.cpp: reference
constexpr double log(double x) {
  using namespace elementary_detail;
  if (is_special_for_log(x)) return special_log(x);
  const auto [k, f] = binary_parts(x);
  const double small = log_remainder(f) + k * k_ln2_low;
  return k * k_ln2_high + (f - (0.5 * f * f - small));
}

/// Logarithm to base 2. Relative error below 1.5 ulp; exact for powers of two.
/// Model:   as log(), with f - f^2/2 held in two parts before the multiplication by log2(e).
/// Source:  own code; the two-part product follows FreeBSD msun e_log2.c
/// Checked: physics/numerics/elementary_reference_test.cpp: reference
constexpr double log2(double x) {
  using namespace elementary_detail;
  if (is_special_for_log(x)) return special_log(x);
  const auto [k, f] = binary_parts(x);
  const double half_square = 0.5 * f * f;
  const double leading = f - half_square;
  const double high = std::bit_cast<double>(std::bit_cast<std::uint64_t>(leading) & 0xffffffff00000000ULL);
  const double low = (f - high) - half_square + log_remainder(f);
  const double product_high = high * k_log2_e_high;
  const double product_low = (low + high) * k_log2_e_low + low * k_log2_e_high;
  const double sum = k + product_high;
  return sum + (product_low + ((k - sum) + product_high));
}

/// Logarithm to base 10. Relative error below 2 ulp away from 1, 3 ulp near it.
/// Model:   k log10(2) in two parts + log(1+f) log10(e).
/// Source:  own derivation
/// Checked: physics/numerics/elementary_reference_test.cpp: reference
constexpr double log10(double x) {
  using namespace elementary_detail;
  if (is_special_for_log(x)) return special_log(x);
  const auto [k, f] = binary_parts(x);
  const double fraction_log = f - (0.5 * f * f - log_remainder(f));
  return k * k_log10_2_high + (fraction_log * k_log10_e + k * k_log10_2_low);
}

/// log(1 + x), accurate for small x too. Relative error below 3 ulp; -infinity at -1.
/// Model:   log(u) x / (u - 1) with u = 1 + x rounded: the rounding of u cancels in the quotient.
/// Source:  Kahan's identity as given by Goldberg 1991, ACM Computing Surveys 23:5, theorem 4 (from
///          memory)
/// Checked: physics/numerics/elementary_reference_test.cpp: reference
constexpr double log1p(double x) {
  const double u = 1.0 + x;
  if (u == 1.0) return x;
  if (u == elementary_detail::k_infinity) return u;
  return log(u) * (x / (u - 1.0));
}

/// x^y for x > 0, as 2^(y log2 x): the relative error grows with the exponent, about |y log2 x| * 2e-16
/// + 3e-16. 0^y is 0 for y > 0, 1 for y = 0, infinity for y < 0; a negative x gives "not a number".
/// Checked: physics/numerics/elementary_reference_test.cpp: reference
constexpr double pow(double x, double y) {
  if (y == 0.0) return 1.0;
  if (x == 0.0) return y > 0.0 ? 0.0 : elementary_detail::k_infinity;
  return exp2(y * log2(x));
}

}  // namespace lastegg::numerics
