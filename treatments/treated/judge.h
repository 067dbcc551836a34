// Judges the visits of one place: margins over the ensemble, the depth reached, harm. Keeps what it has
// marched, because most places of an edge were treated alike. Not shared between threads.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "treatments/treated/sample.h"
#include "treatments/treated/treated.h"

namespace lastegg::treated {

/// Paces this close, in the logarithm, are treated as one.
constexpr double k_pace_step = 0.02;

/// A visit of a place and the pass it belongs to.
struct PlaceVisit {
  std::size_t pass;
  std::optional<std::size_t> problem;
  int kill_step = 0;   ///< ln(pace) in steps, rounded towards the faster; only if it earns kill
  bool earns = false;  ///< its pace is known
  double harm_pace = 0;
  std::optional<double> at_seconds;  ///< on the common clock
};

/// log10(R/2) over the ensemble.
struct Margins {
  double lethal = -9;    ///< that the asked confidence of the weight exceeds
  double shortfall = 9;  ///< that one minus the confidence exceeds
};

class Judge {
 public:
  /// `edge` outlives it.
  explicit Judge(const TreatedEdge& edge) : edge_(edge), limits_(edge.problems.size()) {}

  /// Everything about a stretch but its place.
  Result<TreatedStretch> stretch(const std::vector<PlaceVisit>& visits);

  /// Mean probabilities of the best of the visits.
  Result<void> add_probabilities(const std::vector<PlaceVisit>& visits, TreatedReport& report);

 private:
  struct Judged {
    Margins margins;
    double single_shortfall = 9;  ///< of the best visit by itself
    int together = 0;
  };
  using DepthTable = std::vector<std::pair<double, double>>;  ///< depth, fastest lethal pace

  const Samples& samples(std::size_t problem);
  Result<const std::vector<steam::SampleLimits>*> limits(std::size_t problem);
  Margins margins_of(std::vector<double> lower, const std::vector<double>& upper, std::size_t problem) const;
  Result<Margins> single(std::size_t problem, int step);
  Result<Margins> together(std::size_t problem, int count, int step, int gap_step);
  Result<Judged> judge_visits(const std::vector<PlaceVisit>& earning);
  Result<bool> lethal_after_bug(const std::vector<PlaceVisit>& visits);
  Result<DepthTable> depth_table(std::size_t problem);
  Result<double> depth_reached(const std::vector<PlaceVisit>& earning, bool lethal);
  Result<Harm> harm_of(const std::vector<PlaceVisit>& visits);

  const TreatedEdge& edge_;
  std::vector<std::vector<steam::SampleLimits>> limits_;
  std::map<std::size_t, Samples> samples_;
  std::map<std::pair<std::size_t, int>, Margins> singles_;
  std::map<std::tuple<std::size_t, int, int, int>, Margins> repeats_;
  std::map<std::size_t, DepthTable> depths_;
  std::map<std::tuple<std::size_t, std::size_t>, std::vector<steam::SampleLimits>> harm_limits_;
};

}  // namespace lastegg::treated
