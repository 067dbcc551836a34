// What nobody knows of a head on a cloth before it is measured: four numbers, each a monotone function of a
// standard normal score. Samples, fits and verdicts all work on the scores. Plain values and pure functions.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "treatments/steam/pass/pass.h"

namespace lastegg::steam {

enum class Towel { none, wrapped, laid };

/// Order of the scores: the first two belong to machine + head + towel, the last two to head + covering.
enum class Unknown : std::size_t { dew_temperature, film, vapour_efficiency, forced_gas };
constexpr std::size_t k_unknown_count = 4;
constexpr std::size_t k_head_unknown_count = 2;  ///< of them the head's own
using Scores = std::array<double, k_unknown_count>;

/// What a cloth makes of an unknown: the march needs other values in a cloth that follows another law, and
/// takes them for the head's. Both scores are standard normal and share this part of their variance.
/// Source:  estimate: over 200 random steamers whose cloths follow other laws (fold_steamers_for_tests.h)
/// what
///          was found lay beside the truth by about half a score more than the fit knew, most in the dew
///          temperature; docs/decisions/030-fold-test.md
constexpr std::array<double, k_unknown_count> k_own_share{0.7, 0.8, 0.8, 0.8};

/// The score of unknown k as a cloth shows it, from the own one and what the cloth adds; and the own one from
/// what is shown.
double blended_score(std::size_t k, double score, double rest);

/// The unknowns themselves, in SI with celsius.
struct HeadOnCloth {
  double dew_celsius;
  double film_watts_per_m2_kelvin;
  double vapour_efficiency;
  double forced_gas_metres_per_second;
};

/// The unknowns at given scores; score 0 is the prior's median.
/// Model:   T_d normal Tsat(p) - 3 +- 3 K, truncated at the dew temperature of 99 % steam; ln h = ln 600 +
/// 0.7 z; phi normal 0.6 +- 0.35
///          truncated to 0..1; u0 in 0..20 mm/s with median 6 (bare) or 3 (towel), logit-normal with
///          spread 1.
/// Inputs:  pressure 50..110 kPa.
/// Source:  all estimates (judgement), docs/decisions/013-steam-priors.md; the logit form and its spread are
/// ours Checked: treatments/steam/steamer/unknowns_unit_test.cpp: law
HeadOnCloth head_on_cloth(const Scores& scores, double pressure_pascal, Towel towel);

/// Largest heat flux that the supply can bring, W/m2.
/// Source:  estimate: 70 kW/m2 bare, 60 towel, from a 1.5-2 kW boiler over a hand head
double flux_cap_watts_per_m2(Towel towel);

/// Dew temperature of steam with 1 % air, the clamp of the prior, in celsius.
double cleanest_dew_celsius(double pressure_pascal);

/// Dry terry laid on the cloth: 3 mm, under which depths still count from the cloth.
/// Source:  thickness estimate; properties of materials data `terry_dry`
Layer laid_towel();

}  // namespace lastegg::steam
