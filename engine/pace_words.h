// The sentences of a pace answer. Numbers in SI units; apps that show other units write their own from the
// fields.
#pragma once

#include <string>

#include "engine/json.h"
#include "job/edges/edge_stack.h"
#include "treatments/steam/pace/pace.h"

namespace lastegg {

struct PaceWords {
  std::string basis;
  bool tested_here = false;  ///< readings were made in this covering
  std::string kind, covering;
  double wetting_limit_grams_per_m2 = 50;
  bool wetting_tested = false;
  double target_depth_metres = 0;
  double confidence = 0.95;
  bool bound = false;  ///< the eggs are at least as warm as computed
};

/// Why there is no window, and which measurement would open it.
Json no_window_reason(const PaceWords& words, const steam::PaceReport& report);

/// What limits a window on both sides.
Json window_reason(const PaceWords& words, const steam::PaceReport& report);

std::string inch_words(const steam::AtPace& at, bool bound);
std::string engorged_words();
std::string few_samples_words(const steam::PaceReport& report);
std::string barred_words(const std::string& title, const std::string& effect);
Json low_word(steam::SlowLimit limit);
Json high_word(steam::FastLimit limit);
Fill read_fill(const std::string& word);

}  // namespace lastegg
