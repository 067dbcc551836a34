// What stands behind a stroke: the calibration of its head with its fold test, or what is usual of that head.
// Fits are made once and kept for the other edges of the same answer.
#pragma once

#include <map>
#include <set>
#include <string>

#include "engine/json.h"
#include "physics/quantities/error.h"

namespace lastegg {

class TreatedBases {
 public:
  TreatedBases(const Json& state, int samples) : state_(state), samples_(samples) {}

  struct Basis {
    std::string key;             ///< strokes of one key are judged together
    std::set<std::string> uses;  ///< ids of what it rests on
    std::size_t readings = 0;    ///< of its fold test
  };
  /// Which basis stands behind a stroke: the fold test it names, else the one in use if that has the stroke's
  /// head.
  Basis of(const Json& stroke) const;

  /// Everything that a basis is made from, so that equal texts mean equal answers. Costs no fit.
  Json identity(const Basis& basis) const;

  /// The members of a request of as_treated for a basis: `calibration`, or `prior` with samples and
  /// elevation. Errors:  those of the fold test
  Result<Json> kit(const Basis& basis);

 private:
  Json prior_of(const std::string& head) const;
  const Json& state_;
  int samples_;
  std::map<std::string, Json> kits_;
};

}  // namespace lastegg
