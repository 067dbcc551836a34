#include "treatments/treated/path.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "words/say.h"

namespace lastegg::treated {
namespace {

constexpr double k_beyond_edge_metres = 0.5;

enum class Kind { forwards, backwards, stop, unclear };

struct Segment {
  Kind kind;
  double from, to, seconds, began;
  double low() const { return std::min(from, to); }
  double high() const { return std::max(from, to); }
};

std::vector<Segment> segments_of(const std::vector<Mark>& marks, double slowest_pace) {
  std::vector<Segment> segments;
  for (std::size_t i = 1; i < marks.size(); ++i) {
    const Mark &a = marks[i - 1], &b = marks[i];
    Segment segment{Kind::stop, a.at_metres, b.at_metres, b.seconds - a.seconds, a.seconds};
    const double way = std::fabs(b.at_metres - a.at_metres);
    if (b.broken_before)
      segment.kind = Kind::unclear;
    else if (way < k_stop_metres)
      segment.kind = Kind::stop;
    else if (way < slowest_pace * segment.seconds * (1 - 1e-9))
      segment.kind = Kind::unclear;
    else
      segment.kind = b.at_metres > a.at_metres ? Kind::forwards : Kind::backwards;
    segments.push_back(segment);
  }
  return segments;
}

// Segments of one go: moving one way, with the stops on it.
struct Run {
  std::vector<Segment> segments;
  double low = 0, high = 0;
  bool moves = false;
};

void add(Run& run, const Segment& segment) {
  const bool first = run.segments.empty();
  run.low = first ? segment.low() : std::min(run.low, segment.low());
  run.high = first ? segment.high() : std::max(run.high, segment.high());
  run.moves = run.moves || segment.kind != Kind::stop;
  run.segments.push_back(segment);
}

std::vector<Run> runs_of(const std::vector<Segment>& segments) {
  std::vector<Run> runs;
  Kind way = Kind::stop;  // of the run being put together
  bool open = false;
  for (const Segment& segment : segments) {
    const bool turns = segment.kind != Kind::stop && way != Kind::stop && segment.kind != way;
    if (segment.kind == Kind::unclear) {
      open = false;
      way = Kind::stop;
      continue;
    }
    if (!open || turns) {
      runs.push_back({});
      open = true;
      way = Kind::stop;
    }
    if (segment.kind != Kind::stop) way = segment.kind;
    add(runs.back(), segment);
  }
  return runs;
}

}  // namespace

Result<void> check_marks(const std::vector<Mark>& marks, double edge_metres) {
  if (marks.size() < 2) {
    return refuse({ErrorKind::bad_input, say("a pass needs at least two marks, its start and its end"),
                   "/marks", fmt::format("{}", marks.size()), "2", ""});
  }
  for (std::size_t i = 0; i < marks.size(); ++i) {
    const Mark& mark = marks[i];
    if (!(mark.at_metres >= -k_beyond_edge_metres && mark.at_metres <= edge_metres + k_beyond_edge_metres)) {
      return refuse(
          {ErrorKind::bad_input,
           say("mark {} lies at {:g} m; the edge goes from 0 to {:g} m", i + 1, mark.at_metres, edge_metres),
           fmt::format("/marks/{}/at_metres", i), fmt::format("{:g}", mark.at_metres),
           fmt::format("{:g}", edge_metres), "m"});
    }
    if (!std::isfinite(mark.seconds) || (i > 0 && mark.seconds < marks[i - 1].seconds)) {
      return refuse({ErrorKind::bad_input,
                     say("mark {} is at {:g} s; time must not go backwards", i + 1, mark.seconds),
                     fmt::format("/marks/{}/seconds", i), fmt::format("{:g}", mark.seconds), "", "s"});
    }
  }
  return {};
}

std::vector<Visit> visits_of(const std::vector<Mark>& marks, double head, double slowest_pace, double at) {
  const std::vector<Segment> segments = segments_of(marks, slowest_pace);
  const double half = 0.5 * head;
  const double longest_stop = head / slowest_pace;
  std::vector<Visit> visits;
  for (const Run& run : runs_of(segments)) {
    const bool passed = run.moves && at >= run.low - 1e-9 && at <= run.high + 1e-9;
    double way = 0, time = 0, stopped = 0, stopped_for_kill = 0, first = -1;
    for (const Segment& segment : run.segments) {
      if (segment.kind == Kind::stop) {
        if (std::fabs(segment.from - at) > half) continue;
        stopped += segment.seconds;
        stopped_for_kill += std::min(segment.seconds, longest_stop);
        if (first < 0) first = segment.began;
        continue;
      }
      const double low = std::max(segment.low(), at - half), high = std::min(segment.high(), at + half);
      if (high <= low) continue;
      const double share = (high - low) / (segment.high() - segment.low());
      way += high - low;
      time += share * segment.seconds;
      if (first < 0) first = segment.began + (1 - share) * segment.seconds;
    }
    // The pace found in the window holds for all of it; without motion only stops cover the place.
    const double moving = passed && way > 0 ? head * time / way : 0;
    const double beside =
        !passed ? time : 0;  // the head's end went over it, but its middle never did: harm alone
    const double kill_seconds = moving + std::min(stopped_for_kill, longest_stop);
    const double harm_seconds = moving + beside + stopped;
    if (harm_seconds <= 0) continue;
    visits.push_back({kill_seconds > 0 ? head / kill_seconds : std::numeric_limits<double>::infinity(),
                      head / harm_seconds, std::max(first, 0.0)});
  }
  for (const Segment& segment : segments) {
    if (segment.kind != Kind::unclear) continue;
    // Somewhere on this way, for some of this time; before and behind it the head may have reached too.
    if (at < segment.low() - half || at > segment.high() + half) continue;
    visits.push_back({std::numeric_limits<double>::infinity(), 0, segment.began});
  }
  std::stable_sort(visits.begin(), visits.end(),
                   [](const Visit& a, const Visit& b) { return a.seconds < b.seconds; });
  return visits;
}

}  // namespace lastegg::treated
