#include "physics/water/if97.h"

#include <cmath>

#include "physics/numerics/elementary.h"

namespace lastegg::if97 {
namespace {

struct ResidualTerm {
  int pressure_power;
  int temperature_power;
  double coefficient;
};

struct IdealTerm {
  int temperature_power;
  double coefficient;
};

// IAPWS R7-97(2012), table 2
constexpr ResidualTerm k_region1[] = {
    {0, -2, 0.14632971213167},       {0, -1, -0.84548187169114},      {0, 0, -3.756360367204},
    {0, 1, 3.3855169168385},         {0, 2, -0.95791963387872},       {0, 3, 0.15772038513228},
    {0, 4, -0.016616417199501},      {0, 5, 0.00081214629983568},     {1, -9, 0.00028319080123804},
    {1, -7, -0.00060706301565874},   {1, -1, -0.018990068218419},     {1, 0, -0.032529748770505},
    {1, 1, -0.021841717175414},      {1, 3, -5.283835796993e-05},     {2, -3, -0.00047184321073267},
    {2, 0, -0.00030001780793026},    {2, 1, 4.7661393906987e-05},     {2, 3, -4.4141845330846e-06},
    {2, 17, -7.2694996297594e-16},   {3, -4, -3.1679644845054e-05},   {3, 0, -2.8270797985312e-06},
    {3, 6, -8.5205128120103e-10},    {4, -5, -2.2425281908e-06},      {4, -2, -6.5171222895601e-07},
    {4, 10, -1.4341729937924e-13},   {5, -8, -4.0516996860117e-07},   {8, -11, -1.2734301741641e-09},
    {8, -6, -1.7424871230634e-10},   {21, -29, -6.8762131295531e-19}, {23, -31, 1.4478307828521e-20},
    {29, -38, 2.6335781662795e-23},  {30, -39, -1.1947622640071e-23}, {31, -40, 1.8228094581404e-24},
    {32, -41, -9.3537087292458e-26},
};

// IAPWS R7-97(2012), table 10
constexpr IdealTerm k_region2_ideal[] = {
    {0, -9.6927686500217},   {1, 10.086655968018},    {-5, -0.005608791128302},
    {-4, 0.071452738081455}, {-3, -0.40710498223928}, {-2, 1.4240819171444},
    {-1, -4.383951131945},   {2, -0.28408632460772},  {3, 0.021268463753307},
};

// IAPWS R7-97(2012), table 11
constexpr ResidualTerm k_region2_residual[] = {
    {1, 0, -0.0017731742473213},    {1, 1, -0.017834862292358},     {1, 2, -0.045996013696365},
    {1, 3, -0.057581259083432},     {1, 6, -0.05032527872793},      {2, 1, -3.3032641670203e-05},
    {2, 2, -0.00018948987516315},   {2, 4, -0.0039392777243355},    {2, 7, -0.043797295650573},
    {2, 36, -2.6674547914087e-05},  {3, 0, 2.0481737692309e-08},    {3, 1, 4.3870667284435e-07},
    {3, 3, -3.227767723857e-05},    {3, 6, -0.0015033924542148},    {3, 35, -0.040668253562649},
    {4, 1, -7.8847309559367e-10},   {4, 2, 1.2790717852285e-08},    {4, 3, 4.8225372718507e-07},
    {5, 7, 2.2922076337661e-06},    {6, 3, -1.6714766451061e-11},   {6, 16, -0.0021171472321355},
    {6, 35, -23.895741934104},      {7, 0, -5.905956432427e-18},    {7, 11, -1.2621808899101e-06},
    {7, 25, -0.038946842435739},    {8, 8, 1.1256211360459e-11},    {8, 36, -8.2311340897998},
    {9, 13, 1.9809712802088e-08},   {10, 4, 1.0406965210174e-19},   {10, 10, -1.0234747095929e-13},
    {10, 14, -1.0018179379511e-09}, {16, 29, -8.0882908646985e-11}, {16, 50, 0.10693031879409},
    {18, 57, -0.33662250574171},    {20, 20, 8.9185845355421e-25},  {20, 35, 3.0629316876232e-13},
    {20, 48, -4.2002467698208e-06}, {21, 21, -5.9056029685639e-26}, {22, 53, 3.7826947613457e-06},
    {23, 39, -1.2768608934681e-15}, {24, 26, 7.3087610595061e-29},  {24, 40, 5.5414715350778e-17},
    {24, 58, -9.436970724121e-07},
};

// IAPWS R7-97(2012), table 34
constexpr double k_saturation[] = {1167.0521452767,   -724213.16703206, -17.073846940092, 12020.82470247,
                                   -3232555.0322333,  14.91510861353,   -4823.2657361591, 405113.40542057,
                                   -0.23855557567849, 650.17534844798};

// IAPWS R7-97(2012), table 1
constexpr double k_vapour_limit[] = {348.05185628969, -1.1671859879975, 0.0010192970039326};

/// base^power by repeated squaring: the same digits on every target.
double whole_power(double base, int power) {
  double result = 1.0;
  double square = power < 0 ? 1.0 / base : base;
  for (int rest = std::abs(power); rest > 0; rest /= 2) {
    if (rest % 2 == 1) result *= square;
    square *= square;
  }
  return result;
}

/// The dimensionless Gibbs energy and its derivatives by reduced pressure (p) and reciprocal
/// temperature (t).
struct Gibbs {
  double value = 0.0, by_p = 0.0, by_pp = 0.0, by_t = 0.0, by_tt = 0.0, by_pt = 0.0;
};

/// Adds coefficient * x^i * y^j, where x changes with p at `x_slope` and y with t at 1.
void add_term(Gibbs& sum, const ResidualTerm& term, double x, double x_slope, double y) {
  const double i = term.pressure_power, j = term.temperature_power;
  const double x_power = whole_power(x, term.pressure_power);
  const double y_power = whole_power(y, term.temperature_power);
  const double product = term.coefficient * x_power * y_power;
  sum.value += product;
  sum.by_p += x_slope * i * product / x;
  sum.by_pp += i * (i - 1.0) * product / (x * x);
  sum.by_t += j * product / y;
  sum.by_tt += j * (j - 1.0) * product / (y * y);
  sum.by_pt += x_slope * i * j * product / (x * y);
}

/// The relations of IAPWS R7-97(2012), tables 3 and 12, which are the same for both regions.
Properties properties(const Gibbs& g, double reduced_pressure, double reciprocal_temperature, double kelvin,
                      double pascal) {
  const double energy = k_gas_constant * kelvin;
  const double t = reciprocal_temperature;
  const double mixed = g.by_p - t * g.by_pt;
  Properties result;
  result.specific_volume = reduced_pressure * g.by_p * energy / pascal;
  result.enthalpy = energy * t * g.by_t;
  result.entropy = k_gas_constant * (t * g.by_t - g.value);
  result.heat_capacity = -k_gas_constant * t * t * g.by_tt;
  result.sound_speed = std::sqrt(energy * g.by_p * g.by_p / (mixed * mixed / (t * t * g.by_tt) - g.by_pp));
  return result;
}

}  // namespace

Properties liquid(double kelvin, double pascal) {
  const double p = pascal / 16.53e6;
  const double t = 1386.0 / kelvin;
  Gibbs sum;
  for (const ResidualTerm& term : k_region1) add_term(sum, term, 7.1 - p, -1.0, t - 1.222);
  return properties(sum, p, t, kelvin, pascal);
}

Properties vapour(double kelvin, double pascal) {
  const double p = pascal / 1e6;
  const double t = 540.0 / kelvin;
  Gibbs sum;
  sum.value = numerics::log(p);
  sum.by_p = 1.0 / p;
  sum.by_pp = -1.0 / (p * p);
  for (const IdealTerm& term : k_region2_ideal) {
    const double j = term.temperature_power;
    const double product = term.coefficient * whole_power(t, term.temperature_power);
    sum.value += product;
    sum.by_t += j * product / t;
    sum.by_tt += j * (j - 1.0) * product / (t * t);
  }
  for (const ResidualTerm& term : k_region2_residual) add_term(sum, term, p, 1.0, t - 0.5);
  return properties(sum, p, t, kelvin, pascal);
}

double saturation_pascal(double kelvin) {
  const auto& n = k_saturation;
  const double theta = kelvin + n[8] / (kelvin - n[9]);
  const double a = theta * theta + n[0] * theta + n[1];
  const double b = n[2] * theta * theta + n[3] * theta + n[4];
  const double c = n[5] * theta * theta + n[6] * theta + n[7];
  const double root = 2.0 * c / (-b + std::sqrt(b * b - 4.0 * a * c));
  return 1e6 * (root * root) * (root * root);
}

double saturation_kelvin(double pascal) {
  const auto& n = k_saturation;
  const double beta = std::sqrt(std::sqrt(pascal / 1e6));
  const double e = beta * beta + n[2] * beta + n[5];
  const double f = n[0] * beta * beta + n[3] * beta + n[6];
  const double g = n[1] * beta * beta + n[4] * beta + n[7];
  const double d = 2.0 * g / (-f - std::sqrt(f * f - 4.0 * e * g));
  const double sum = n[9] + d;
  return 0.5 * (sum - std::sqrt(sum * sum - 4.0 * (n[8] + n[9] * d)));
}

double vapour_limit_pascal(double kelvin) {
  const auto& n = k_vapour_limit;
  return 1e6 * (n[0] + n[1] * kelvin + n[2] * kelvin * kelvin);
}

}  // namespace lastegg::if97
