#include "treatments/treated/treated.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <string>

#include "physics/numerics/elementary.h"
#include "treatments/treated/judge.h"
#include "words/say.h"

namespace lastegg::treated {
namespace {

constexpr double k_infinity = std::numeric_limits<double>::infinity();
constexpr double k_finest_place_metres = 0.005;  // places closer than this are not told apart
constexpr std::size_t k_most_places = 400;

double head_length(const steam::Calibration& calibration) {
  return calibration.known_head ? calibration.known_head->length_metres : calibration.head_length_metres;
}

std::vector<PlaceVisit> visits_at(const TreatedEdge& edge, double at) {
  std::vector<PlaceVisit> all;
  for (std::size_t p = 0; p < edge.passes.size(); ++p) {
    const TreatedPass& pass = edge.passes[p];
    const double head = head_length(edge.problems[pass.problem.value_or(0)].calibration);
    // Visits of an only pass are timed among themselves even if nobody knows when it was.
    std::optional<double> began = pass.began_seconds;
    if (edge.passes.size() == 1) began = began.value_or(0);
    for (const Visit& visit : visits_of(pass.marks, head, steam::k_slowest_pace, at)) {
      PlaceVisit place{
          p, pass.problem, 0, std::isfinite(visit.kill_pace) && visit.kill_pace > 0, visit.harm_pace, {}};
      if (place.earns)
        place.kill_step = static_cast<int>(std::ceil(numerics::log(visit.kill_pace) / k_pace_step - 1e-9));
      if (began) place.at_seconds = *began + visit.seconds;
      all.push_back(place);
    }
  }
  return all;
}

// What the judgement of a place depends on.
std::string key_of(const std::vector<PlaceVisit>& visits) {
  std::string key;
  for (const PlaceVisit& visit : visits) {
    const double at = visit.at_seconds.value_or(-1);
    const double earlier = visits.front().at_seconds.value_or(-1);
    key += fmt::format(
        "{} {} {} {} {:.0f} {:.0f};", visit.pass, visit.problem ? 1 : 0, visit.earns ? 1 : 0, visit.kill_step,
        visit.harm_pace > 0 ? numerics::log(visit.harm_pace) / k_pace_step : -1e6, at - earlier);
  }
  return key;
}

// Neighbours that are judged alike become one stretch, which has the worst of both.
bool join(TreatedStretch& before, const TreatedStretch& next) {
  if (before.verdict != next.verdict || before.cause != next.cause || before.harm != next.harm ||
      before.visits != next.visits || before.counted_together != next.counted_together)
    return false;
  before.to_metres = next.to_metres;
  before.slowest = std::min(before.slowest, next.slowest);
  before.fastest = std::max(before.fastest, next.fastest);
  before.lethal_margin = std::min(before.lethal_margin, next.lethal_margin);
  before.short_margin = std::min(before.short_margin, next.short_margin);
  before.depth_reached_metres = std::min(before.depth_reached_metres, next.depth_reached_metres);
  return true;
}

}  // namespace

Result<TreatedReport> judge(const TreatedEdge& edge) {
  if (edge.problems.empty() || !(edge.length_metres > 0)) {
    return refuse({ErrorKind::bad_input, say("an edge needs a length and a model"), "/length_metres",
                   fmt::format("{:g}", edge.length_metres), "0", "m"});
  }
  for (std::size_t p = 0; p < edge.passes.size(); ++p) {
    if (auto checked = check_marks(edge.passes[p].marks, edge.length_metres); !checked) {
      Error error = checked.error();
      error.where = fmt::format("/passes/{}{}", p, error.where);
      return refuse(error);
    }
  }
  const auto places = std::clamp<std::size_t>(
      static_cast<std::size_t>(std::ceil(edge.length_metres / k_finest_place_metres - 1e-9)), 1,
      k_most_places);
  const double width = edge.length_metres / static_cast<double>(places);
  Judge judge_of(edge);
  TreatedReport report;
  std::map<std::string, TreatedStretch> known;
  std::vector<PlaceVisit> worst_visits;
  double worst_margin = 0;
  for (std::size_t i = 0; i < places; ++i) {
    const auto visits = visits_at(edge, (static_cast<double>(i) + 0.5) * width);
    const std::string key = key_of(visits);
    auto found = known.find(key);
    if (found == known.end()) {
      auto stretch = judge_of.stretch(visits);
      if (!stretch) return refuse(stretch.error());
      found = known.emplace(key, *stretch).first;
    }
    TreatedStretch stretch = found->second;
    stretch.from_metres = static_cast<double>(i) * width;
    stretch.to_metres = static_cast<double>(i + 1) * width;
    if (i == 0 || stretch.lethal_margin < worst_margin) {
      worst_margin = stretch.lethal_margin;
      worst_visits = visits;
    }
    if (report.stretches.empty() || !join(report.stretches.back(), stretch))
      report.stretches.push_back(stretch);
  }
  const auto worse = [](const TreatedStretch& x, const TreatedStretch& y) {
    return x.lethal_margin < y.lethal_margin;
  };
  report.worst = static_cast<std::size_t>(
      std::min_element(report.stretches.begin(), report.stretches.end(), worse) - report.stretches.begin());
  report.verdict = bugs::Verdict::lethal;
  report.depth_reached_metres = k_infinity;
  for (const TreatedStretch& stretch : report.stretches) {
    report.depth_reached_metres = std::min(report.depth_reached_metres, stretch.depth_reached_metres);
    if (stretch.verdict == bugs::Verdict::lethal) {
      report.lethal_metres += stretch.to_metres - stretch.from_metres;
    } else if (stretch.verdict == bugs::Verdict::too_short || report.verdict == bugs::Verdict::lethal) {
      report.verdict = stretch.verdict;
    }
  }
  report.effective_samples = k_infinity;
  for (const steam::PaceProblem& problem : edge.problems) {
    report.effective_samples = std::min(report.effective_samples, problem.calibration.effective_samples);
    report.samples = static_cast<int>(problem.calibration.weights.size());
  }
  if (auto added = judge_of.add_probabilities(worst_visits, report); !added) return refuse(added.error());
  return report;
}

}  // namespace lastegg::treated
