// What the surface of an edge bears: from the finish that was named, else from its covering, else from a
// hidden spot. Reads the damage limits of physics/materials. Pure functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/question.h"
#include "physics/materials/materials.h"

namespace lastegg {

/// What a trial on a hidden spot showed.
enum class HiddenSpot { not_tried, unharmed, marked };

struct Finish {
  std::string title, effect;
  HarmAction action = HarmAction::hidden_test;
  std::optional<double> surface_celsius;  ///< the surface stays below it, but for seconds_allowed
  double seconds_allowed = 0;
  std::vector<DamageLimit> limits;  ///< what this rests on, the decisive one first
  HiddenSpot hidden_spot = HiddenSpot::not_tried;
  std::optional<double> held_seconds;  ///< for which the head stood on the hidden spot and left no mark

  /// Whether steaming is out of the question: a barred finish, or a hidden spot that was marked.
  bool barred() const { return is_barred(action) || hidden_spot == HiddenSpot::marked; }
  /// Whether nobody knows yet: neither its kind nor a hidden spot says that it bears steam.
  bool unknown() const;
};

/// The finish of a covering, or the one that was named: a finish of wood as furniture names it, or a key
/// of the damage limits. A hidden spot that was unharmed settles what was unknown; it never lifts a bar.
/// Where the head was held still on it, the surface was above its limit for nearly all of that time: so long
/// a dwell is then known to be borne, in place of an estimate that is shorter.
/// Errors:  not_found for an unknown name.
/// Checked: engine/finish_unit_test.cpp
Result<Finish> finish_of(const Covering& covering, const std::optional<std::string>& named,
                         HiddenSpot hidden_spot, std::optional<double> held_seconds = std::nullopt);

/// Field of an edge with which a trial on a hidden spot is told, and its reading.
Shape hidden_spot_shape();
HiddenSpot read_hidden_spot(const std::string& word);
Shape hidden_spot_seconds();

/// A finish in an answer, with the source of each limit.
Shape finish_shape();
Json to_json(const Finish& finish);

}  // namespace lastegg
