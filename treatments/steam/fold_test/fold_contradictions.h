// Readings that cannot all be right: found from what every steamer must do, before any fit. Plain values;
// pure functions.
#pragma once

#include <optional>
#include <vector>

#include "treatments/steam/fold_test/fold_reading.h"

namespace lastegg::steam {

struct Contradiction {
  enum class Kind {
    slower_is_colder,  ///< `first` was passed more slowly than `second`, no deeper, and is colder
    deeper_is_hotter,  ///< `first` lay shallower than `second` at the same pace and is colder
    repeats_differ,    ///< the same pace and place twice
    rest_is_colder,    ///< `first` is the head at rest, and colder than the pass `second` no shallower
    above_boiling      ///< `first` alone: hotter than water boils here
  };
  Kind kind;
  std::size_t first;
  std::optional<std::size_t> second;
  double kelvin;                       ///< by how much they disagree
  std::optional<std::size_t> suspect;  ///< the one that disagrees with several others
};

/// Two readings disagree when they differ the wrong way round by more than this many errors of their
/// difference. Source: judgement; of readings that should be equal one pair in 44 does so by chance.
constexpr double k_contradiction_errors = 2;
/// Above boiling by more than this no cloth can be: 2 K by which a dry hygroscopic cloth may pass the steam
/// that wets it (computed), and 1 K of the thermometer's class. Source: estimate.
constexpr double k_above_boiling_kelvin = 3;

/// Model:   in one covering a slower pass, a shallower tip and a head at rest can only be hotter. Pairs that
///          break this are told once per reading that breaks it most often.
/// Checked: treatments/steam/fold_test/fold_contradictions_law_test.cpp
std::vector<Contradiction> contradictions(const FoldTest& test);

}  // namespace lastegg::steam
