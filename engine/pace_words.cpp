#include "engine/pace_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/steam_shapes.h"
#include "words/say.h"

namespace lastegg {
namespace {

double millimetres_per_second(double metres_per_second) {
  return 1e3 * metres_per_second;
}

std::string harm_words(const PaceWords& words, steam::SlowLimit limit) {
  switch (limit) {
    case steam::SlowLimit::soak:
      return say("water left in the covering (limit {:g} g/m2, {})", words.wetting_limit_grams_per_m2,
                 words.wetting_tested ? say("by its wetting test") : say("an estimate"));
    case steam::SlowLimit::scorch:
      return say("the heat its surface bears");
    case steam::SlowLimit::steady_hand:
      break;
  }
  return say("a hand that stays steady");
}

// Whether half the ensemble has a window: then it is uncertainty that closes it, not physics.
bool half_has_window(const steam::PaceReport& report) {
  return std::any_of(report.curve.begin(), report.curve.end(), [](const steam::AtPace& at) {
    return at.lethal_share >= 0.5 && at.harmless_share >= 0.5;
  });
}

std::string opening_measurement(const PaceWords& words, const steam::PaceReport& report) {
  if (half_has_window(report) && !words.tested_here) {
    return say(
        "What closes it is not knowing how vapour moves in this covering: a fold test with the tip under the "
        "{} itself "
        "would narrow it",
        words.covering);
  }
  if (report.slow_limit == steam::SlowLimit::soak) {
    return say(
        "What closes it is the wetting limit: a wetting test on a hidden spot (weigh a cloth, or see that "
        "it dries without a mark) "
        "may allow more; or open the edge so that less cloth lies over the eggs");
  }
  if (report.slow_limit == steam::SlowLimit::scorch) {
    return say(
        "What closes it is the finish: a hidden spot test shows what it bears; otherwise another method");
  }
  return say(
      "Steam does not reach that deep here at any pace a hand can hold: another method, or open the edge");
}

}  // namespace

Json no_window_reason(const PaceWords& words, const steam::PaceReport& report) {
  const double fastest = millimetres_per_second(report.fastest_metres_per_second);
  const double slowest = millimetres_per_second(report.slowest_metres_per_second);
  const double depth = 1e3 * words.target_depth_metres;
  const auto percent = std::lround(100 * words.confidence);
  const std::string kill =
      report.fastest_metres_per_second > steam::k_slowest_pace
          ? say("to kill eggs {:.1f} mm deep with {} % confidence the head must not go faster than {:.1f} "
                "mm/s",
                depth, percent, fastest)
          : say("no pace down to 2 mm/s kills eggs {:.1f} mm deep with {} % confidence", depth, percent);
  const std::string harm =
      report.slowest_metres_per_second <= steam::k_paces.back()
          ? say("and not slower than {:.1f} mm/s for {}", slowest, harm_words(words, report.slow_limit))
          : say("and every pace passes the limit of {}", harm_words(words, report.slow_limit));
  const char* code = report.slow_limit == steam::SlowLimit::soak     ? "soaks_before_it_kills"
                     : report.slow_limit == steam::SlowLimit::scorch ? "scorches_before_it_kills"
                                                                     : "too_deep_for_steam";
  const std::string safe_side =
      words.bound ? say(" The eggs are at least as warm as this figure takes them.") : "";
  return reason(code, say("No pace does both: {}, {}. {}.{}", kill, harm, opening_measurement(words, report),
                          safe_side));
}

Json window_reason(const PaceWords& words, const steam::PaceReport& report) {
  return reason(
      "window",
      say("Eggs {:.1f} mm deep in {}: not faster than {:.1f} mm/s, or {} would live; not "
          "slower than {:.1f} mm/s for {}.",
          1e3 * words.target_depth_metres, words.covering,
          millimetres_per_second(report.fastest_metres_per_second),
          report.fast_limit == steam::FastLimit::mobile ? say("nymphs and adults") : say("eggs"),
          millimetres_per_second(report.slowest_metres_per_second), harm_words(words, report.slow_limit)));
}

std::string inch_words(const steam::AtPace& at, bool bound) {
  return say(
      "One inch per second, the customary pace, would bring the eggs to {}{:.0f} C (90 % between {:.0f} and "
      "{:.0f} C) and kill them in {}{:.0f} of 100 cases",
      bound ? say("at least ") : "", at.target_celsius.p50, at.target_celsius.p05, at.target_celsius.p95,
      bound ? say("at least ") : "", 100 * at.lethal_share);
}

std::string engorged_words() {
  return say(
      "a bug full of blood warms slowly and can outlast one pass; it is large and easily seen: look "
      "behind the head and pass again");
}

std::string few_samples_words(const steam::PaceReport& report) {
  return say(
      "The readings leave only {:.0f} effective samples of {}: not proven. Look for a misread value, or "
      "repeat the fold test",
      report.effective_samples, report.samples);
}

std::string barred_words(const std::string& title, const std::string& effect) {
  return say("{} is not steamed: {}. Use another method", title, effect);
}

Json low_word(steam::SlowLimit limit) {
  switch (limit) {
    case steam::SlowLimit::soak:
      return "soak";
    case steam::SlowLimit::scorch:
      return "scorch";
    case steam::SlowLimit::steady_hand:
      break;
  }
  return "steady_hand";
}

Json high_word(steam::FastLimit limit) {
  switch (limit) {
    case steam::FastLimit::egg:
      return "egg";
    case steam::FastLimit::mobile:
      return "mobile";
    case steam::FastLimit::none:
      break;
  }
  return nullptr;
}

Fill read_fill(const std::string& word) {
  return word == "foam"   ? Fill::foam
         : word == "wood" ? Fill::wood
         : word == "none" ? Fill::none
                          : Fill::batting_foam;
}

}  // namespace lastegg
