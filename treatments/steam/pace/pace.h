// The pace window of one edge: the fastest pace that still kills where the eggs sit and the slowest that does
// no harm, over the weighted ensemble of everything uncertain. Plain values; pure functions.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "bugs/mortality/mortality.h"
#include "physics/quantities/error.h"
#include "treatments/steam/steamer/calibration.h"

namespace lastegg::steam {

/// A layer with the spread of its properties over real goods: standard deviations of the logarithms.
struct UncertainLayer {
  Layer layer;
  double thickness_spread = 0;
  double conductivity_spread = 0;
  double capacity_spread = 0;
};

/// What the finish bears.
struct HarmLimits {
  std::optional<double> surface_celsius;    ///< none: heat alone does not harm it below 100 C
  double seconds_allowed_above = 0;         ///< short dwell
  double wetting_kilograms_per_m2 = 0.050;  ///< condensate with carried-over water; source: estimate
};

/// Pause to cool between passes over the same edge. Source: estimate: the next pass follows when half a metre
/// of edge was passed at an inch per second.
constexpr double k_gap_seconds = 20;

struct PaceProblem {
  Calibration calibration;
  std::string cloth_key;  ///< head + covering of this edge
  std::string stack_key;  ///< edge kind + covering: draws the layers' properties
  std::vector<UncertainLayer> stack;
  double target_depth_metres = 0;  ///< deepest place where an egg may plausibly lie
  HarmLimits harm;
  double start_celsius = 20;
  double start_activity = 0.5;
  RoomAir air;
  int passes = 1;
  double gap_seconds = k_gap_seconds;  ///< between them; of no effect for one pass
  double confidence = 0.95;
};

/// Paces of the curve that is shown, m/s; the first and last are the ends of the search. Slowest: below 2
/// mm/s no hand is steady (judgement). One inch per second is a member.
constexpr std::array<double, 6> k_paces{0.002, 0.0055, 0.0095, 0.0155, 0.0254, 0.045};
constexpr double k_one_inch_per_second = 0.0254;
constexpr double k_slowest_pace = 0.002;

/// Scatter of a hand around its planned pace: standard deviation of the logarithm. Source: judgement.
constexpr double k_hand_spread = 0.15;

enum class FastLimit { egg, mobile, none };
enum class SlowLimit { soak, scorch, steady_hand };

struct Spread {
  double p05, p25, p50, p75, p95;
};

/// The ensemble at one planned pace.
struct AtPace {
  double pace_metres_per_second = 0;
  double lethal_share = 0;  ///< weight of the samples with R >= 2 for eggs, nymphs and unfed adults
  double harmless_share = 0;
  double lethal_margin = 0;  ///< log10(R/2) that `confidence` of the weight exceeds
  double short_margin = 0;   ///< log10(R/2) that 1 - confidence of the weight exceeds
  Spread target_celsius{};
  Spread condensate_kilograms_per_m2{};
  double kill_egg = 0, kill_mobile = 0, kill_engorged = 0;  ///< mean probabilities, at most 0.99
  double soak_share = 0, scorch_share = 0;
};

/// What limits one sample, with the scatter of its hand: planned paces.
struct SampleLimits {
  double fastest = 0;        ///< m/s; 0: no pace kills; at most k_paces.back() over the hand's scatter
  double slowest = 0;        ///< m/s; 0: the slowest looked at does no harm; infinity: every pace harms
  double slope = -5;         ///< of log10 R over ln(pace) at the fastest
  bool egg_is_worst = true;  ///< at the fastest pace
  bool soaks_first = true;   ///< the wetting limit closes before that of the surface
  bool fastest_marched = false, slowest_marched = false;  ///< else predicted, and so is what limits them
};

struct PaceReport {
  double fastest_metres_per_second = 0;  ///< 0: no pace kills with the asked confidence
  double slowest_metres_per_second = 0;  ///< infinity: every pace harms
  bool has_window() const { return fastest_metres_per_second > slowest_metres_per_second; }
  FastLimit fast_limit = FastLimit::none;
  SlowLimit slow_limit = SlowLimit::steady_hand;
  std::vector<AtPace> curve;  ///< at k_paces
  std::optional<AtPace>
      planned;  ///< at the recommended pace; without a window at the slowest harmless one, if any
  double effective_samples = 0;
  int samples = 0;
  std::vector<SampleLimits> limits;  ///< per sample
};

/// Which samples are marched until their limits are known.
enum class Marched {
  all,
  those_near_the_window  ///< the others are marched as a preview or predicted from those that were
};

/// Limits of every sample: the fastest pace with R >= 2 at the target for the worst of eggs, nymphs, unfed
/// adults and of z, and the slowest with surface and condensate under their limits.
/// Model:   the window asks only on which side of its end a sample lies, so those clearly on one side are
///          left at what is predicted of them (crossings.h).
/// Errors:  as run_pass()
/// Cost:    of all: about 1.4 passes a sample, and 1.4 of their steamed part; near the window: about 250
///          previews and 1.5 passes of each sample in the band around its ends
/// Source:  own derivation, docs/decisions/015-few-marches.md
/// Checked: treatments/steam/pace/pace_agreement_test.cpp (root finding with the reference; both ways alike)
Result<std::vector<SampleLimits>> sample_limits(const PaceProblem& problem, Marched marched);

/// Sample i at a pace, without the scatter of its hand, as a problem of the reference.
PassProblem sample_pass(const PaceProblem& problem, int i, double pace_metres_per_second);

/// The window of the ensemble and what it brings.
/// Model:   window = [confidence quantile of the samples' slowest, 1 - confidence quantile of their fastest],
/// the
///          former no slower than a hand can be steady.
/// Errors:  as run_pass()
/// Cost:    about 0.7 passes per sample of 1024
/// Source:  own derivation, treatments/steam/README.md
/// Checked: treatments/steam/pace/pace_law_test.cpp
Result<PaceReport> find_pace(const PaceProblem& problem);

/// What one planned pace brings: every sample is marched at it.
/// Errors:  as run_pass()
/// Cost:    a pass of each sample, by preview up to 128 of them
/// Source:  as find_pace()
/// Checked: treatments/steam/pace/pace_agreement_test.cpp (find_pace at its own pace)
Result<AtPace> look_at_pace(const PaceProblem& problem, double planned_metres_per_second);

/// The pace to plan inside a window: its upper part, rounded down to what a hand can follow.
double recommended_pace(double slowest_metres_per_second, double fastest_metres_per_second);

}  // namespace lastegg::steam
