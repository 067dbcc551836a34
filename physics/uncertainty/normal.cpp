#include "physics/uncertainty/normal.h"

#include <cmath>
#include <limits>

#include "physics/numerics/elementary.h"

namespace lastegg {
namespace {

constexpr double k_inverse_root_two_pi = 0.39894228040143267794;
constexpr double k_series_limit = 1.5;
constexpr double k_underflow_limit = 40.0;  // beyond, the tail is below the smallest double
constexpr double k_infinity = std::numeric_limits<double>::infinity();

/// exp(-x^2/2) / sqrt(2 pi), with x^2 split so that its rounding does not enter the exponential.
double density(double x) {
  const double coarse = std::floor(x * 16.0) / 16.0;
  const double rest = (x - coarse) * (x + coarse);
  return k_inverse_root_two_pi * numerics::exp(-0.5 * coarse * coarse) * numerics::exp(-0.5 * rest);
}

/// Probability above x for x >= k_series_limit. The fraction's error falls as exp(-2 x sqrt(2 levels)).
double upper_tail(double x) {
  if (x > k_underflow_limit) return 0.0;
  const int levels = 20 + static_cast<int>(400.0 / (x * x));
  double fraction = x;
  for (int k = levels; k >= 1; --k) fraction = x + k / fraction;
  return density(x) / fraction;
}

double polynomial(const double (&coefficients)[8], double x) {
  double sum = coefficients[7];
  for (int k = 6; k >= 0; --k) sum = sum * x + coefficients[k];
  return sum;
}

// AS 241, PPND16: numerators and denominators for the middle, the tails, and the far tails.
constexpr double k_a[8] = {3.3871328727963666080e0, 1.3314166789178437745e2, 1.9715909503065514427e3,
                           1.3731693765509461125e4, 4.5921953931549871457e4, 6.7265770927008700853e4,
                           3.3430575583588128105e4, 2.5090809287301226727e3};
constexpr double k_b[8] = {1.0,
                           4.2313330701600911252e1,
                           6.8718700749205790830e2,
                           5.3941960214247511077e3,
                           2.1213794301586595867e4,
                           3.9307895800092710610e4,
                           2.8729085735721942674e4,
                           5.2264952788528545610e3};
constexpr double k_c[8] = {1.42343711074968357734e0,  4.63033784615654529590e0, 5.76949722146069140550e0,
                           3.64784832476320460504e0,  1.27045825245236838258e0, 2.41780725177450611770e-1,
                           2.27238449892691845833e-2, 7.74545014278341407640e-4};
constexpr double k_d[8] = {1.0,
                           2.05319162663775882187e0,
                           1.67638483018380384940e0,
                           6.89767334985100004550e-1,
                           1.48103976427480074590e-1,
                           1.51986665636164571966e-2,
                           5.47593808499534494600e-4,
                           1.05075007164441684324e-9};
constexpr double k_e[8] = {6.65790464350110377720e0,  5.46378491116411436990e0,  1.78482653991729133580e0,
                           2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3,
                           2.71155556874348757815e-5, 2.01033439929228813265e-7};
constexpr double k_f[8] = {1.0,
                           5.99832206555887937690e-1,
                           1.36929880922735805310e-1,
                           1.48753612908506148525e-2,
                           7.86869131145613259100e-4,
                           1.84631831751005468180e-5,
                           1.42151175831644588870e-7,
                           2.04426310338993978564e-15};

}  // namespace

double normal_probability(double x) {
  if (x != x) return x;
  if (x >= k_series_limit) return 1.0 - upper_tail(x);
  if (x <= -k_series_limit) return upper_tail(-x);
  double term = x;
  double sum = x;
  for (double odd = 3.0; std::fabs(term) > 1e-18 * std::fabs(sum); odd += 2.0) {
    term *= x * x / odd;
    sum += term;
  }
  return 0.5 + density(x) * sum;
}

double normal_quantile(double p) {
  if (!(p >= 0.0 && p <= 1.0)) return std::numeric_limits<double>::quiet_NaN();
  if (p == 0.0) return -k_infinity;
  if (p == 1.0) return k_infinity;
  const double q = p - 0.5;
  if (std::fabs(q) <= 0.425) {
    const double r = 0.180625 - q * q;
    return q * polynomial(k_a, r) / polynomial(k_b, r);
  }
  const double r = std::sqrt(-numerics::log(q < 0.0 ? p : 1.0 - p));
  const double score = r <= 5.0 ? polynomial(k_c, r - 1.6) / polynomial(k_d, r - 1.6)
                                : polynomial(k_e, r - 5.0) / polynomial(k_f, r - 5.0);
  return q < 0.0 ? -score : score;
}

}  // namespace lastegg
