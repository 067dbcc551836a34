#include "engine/fold_test_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"
#include "words/say.h"

namespace lastegg {

using steam::Contradiction;
using steam::ReadingKind;

namespace {

// Below this share of the spread a further reading is not worth the water. Source: judgement.
constexpr double k_worth_taking = 0.93;

const char* contradiction_code(Contradiction::Kind kind) {
  switch (kind) {
    case Contradiction::Kind::slower_is_colder:
      return "slower_is_colder";
    case Contradiction::Kind::deeper_is_hotter:
      return "deeper_is_hotter";
    case Contradiction::Kind::repeats_differ:
      return "repeats_differ";
    case Contradiction::Kind::rest_is_colder:
      return "rest_is_colder";
    case Contradiction::Kind::above_boiling:
      break;
  }
  return "above_boiling";
}

std::string place_words(const ReadFoldTest& read, const OutlookPoint& point) {
  if (point.covering == 0) return say("the fold under {}", layers_words(point.layers));
  return say("the real edge in {} under {}", in_language(read.coverings[point.covering]),
             layers_words(point.layers));
}

std::string candidate_words(const CandidateReading& candidate) {
  const double pace = 1e3 * candidate.reading.pace_metres_per_second;
  switch (candidate.reading.kind) {
    case ReadingKind::stationary:
      return say("Rest the head {:.0f} s on the fold, {} over the tip, and note where the probe stands still",
                 candidate.reading.hold_seconds, layers_words(candidate.layers));
    case ReadingKind::coupon:
      return say("One pass at {:.3g} mm/s over a 1 mm acrylic plate with the tip taped behind it", pace);
    case ReadingKind::pass:
    case ReadingKind::under_real_edge:
    case ReadingKind::surface:
      break;
  }
  return say("A pass at {:.3g} mm/s with {} over the tip", pace, layers_words(candidate.layers));
}

std::string why_words(ReadingKind kind) {
  switch (kind) {
    case ReadingKind::stationary:
      return say("it shows the steam's own temperature");
    case ReadingKind::coupon:
      return say("no vapour enters a plate, so it shows how fast heat crosses from the steam");
    case ReadingKind::pass:
    case ReadingKind::under_real_edge:
    case ReadingKind::surface:
      break;
  }
  return say("there the cases that fit so far differ most");
}

}  // namespace

std::string layers_words(int layers) {
  return fmt::format("{} {}", layers, layers == 1 ? say("layer") : say("layers"));
}

std::string reading_words(const ReadFoldTest& read, std::size_t i) {
  const steam::FoldReading& reading = read.test.readings[i];
  const std::string how =
      reading.kind == ReadingKind::stationary ? say("head at rest, {}", layers_words(read.layers[i]))
      : reading.kind == ReadingKind::coupon ? say("plate, {:.3g} mm/s", 1e3 * reading.pace_metres_per_second)
      : reading.kind == ReadingKind::surface
          ? say("surface, {:.3g} mm/s, {:g} s after", 1e3 * reading.pace_metres_per_second,
                reading.seconds_after)
          : fmt::format("{:.3g} mm/s, {}", 1e3 * reading.pace_metres_per_second,
                        layers_words(read.layers[i]));
  return say("reading {} ({}, {:.0f} C)", i + 1, how, reading.peak_celsius);
}

std::string percent_words(double log_spread) {
  return fmt::format("{:.0f} %", 100 * (numerics::exp(log_spread) - 1));
}

std::vector<std::string> steamer_words(const ReadFoldTest& read, const Json& posterior,
                                       const Outlook& outlook, double tested_depth_metres) {
  std::vector<std::string> words;
  const double working = read.working_pace_metres_per_second;
  if (outlook.is_imagined)
    words.push_back(say("No reading lay in a fold yet; what is said of one layer rests on usual cloths."));
  for (const OutlookPoint& p : outlook.points) {
    if (p.forecast.reading.pace_metres_per_second != working) continue;
    words.push_back(say("At {:.3g} mm/s {} reaches about {:.0f} C (90 % between {:.0f} and {:.0f} C).",
                        1e3 * working, place_words(read, p), p.point.fold_celsius.p50,
                        p.point.fold_celsius.p05, p.point.fold_celsius.p95));
  }
  const Json& dew = posterior.at("dew_temperature_celsius").at("quantiles");
  words.push_back(say("No wet cloth under this head gets hotter than {:.0f} to {:.0f} C.",
                      dew.at("p05").get<double>(), dew.at("p95").get<double>()));
  const OutlookPoint& deep = outlook.points[outlook.deep];
  double fastest = 0;
  for (const OutlookPoint& p : outlook.points) {
    if (p.layers == deep.layers && p.covering == deep.covering && p.point.lethal_share >= k_sure)
      fastest = std::max(fastest, p.forecast.reading.pace_metres_per_second);
  }
  const std::string under = deep.covering == 0 ? say("Under {} of this fold", layers_words(deep.layers))
                                               : say("In {}", place_words(read, deep));
  words.push_back(fastest > 0 ? say("{} it kills eggs with 95 % confidence at {:.3g} mm/s and slower.", under,
                                    1e3 * fastest)
                              : say("{} no pace down to {:.3g} mm/s kills eggs with 95 % confidence.", under,
                                    1e3 * outlook.paces.front()));
  if (tested_depth_metres > 0) {
    words.push_back(
        say("These readings speak for up to {:.1f} mm of this cloth over the bug (1.5 times what "
            "was tested); deeper is extrapolation.",
            1e3 * steam::k_trusted_depth_ratio * tested_depth_metres));
  }
  return words;
}

Json contradiction_words(const ReadFoldTest& read, const Contradiction& one) {
  const std::string first = reading_words(read, one.first);
  std::string text, advice;
  if (one.kind == Contradiction::Kind::above_boiling) {
    text = say("{} is {:.0f} K hotter than water boils here", first, one.kelvin);
    advice = say("Check the thermometer in boiling water; until then none of its readings proves a kill");
  } else {
    const std::string second = reading_words(read, *one.second);
    const std::string why =
        one.kind == Contradiction::Kind::slower_is_colder   ? say("though the slower head must heat more")
        : one.kind == Contradiction::Kind::deeper_is_hotter ? say("though it lay under less cloth")
        : one.kind == Contradiction::Kind::rest_is_colder
            ? say("though a head at rest heats more than one that passes")
            : say("though pace and place are the same");
    text = say("{} is {:.0f} K colder than {}, {}", first, one.kelvin, second, why);
    advice = one.suspect
                 ? say("Reading {} disagrees with several others: repeat that one; tip in the middle of the "
                       "head's path, fold cooled down, steam dry",
                       *one.suspect + 1)
                 : say("One of the two is wrong: repeat both; tip in the middle of the head's path, fold "
                       "cooled down, "
                       "steam dry");
  }
  if (text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
  return {{"code", contradiction_code(one.kind)}, {"text", text}, {"advice", advice}};
}

Json drift_words(const steam::Drift& drift) {
  using Verdict = steam::Drift::Verdict;
  const std::string chance =
      say("chance of that in an unchanged machine: {}",
          drift.probability < 0.01 ? say("below 1 in 100") : say("{:.0f} in 100", 100 * drift.probability));
  switch (drift.verdict) {
    case Verdict::unchanged:
      return {{"text", say("The readings are such as the last test makes expect ({:+.0f} K in the mean; {})",
                           drift.mean_kelvin, chance)},
              {"advice", say("Nothing to do; both tests stand")}};
    case Verdict::weaker:
      return {
          {"text", say("The machine seems weaker: the readings lie {:.0f} K below what the last test makes "
                       "expect ({})",
                       -drift.mean_kelvin, chance)},
          {"advice",
           say("Common practice, no source: water level, pressure reached, scale in the boiler, gasket and "
               "hose, "
               "a "
               "towel wetter or thicker than last time; then repeat the test. Plan with these readings until "
               "then")}};
    case Verdict::stronger:
      return {
          {"text", say("The readings lie {:+.0f} K from what the last test makes expect ({})",
                       drift.mean_kelvin, chance)},
          {"advice",
           say("Before trusting the better figures check the probe in boiling water, the towel and the fold; "
               "plan with "
               "the worse of the two tests until a repeat agrees")}};
    case Verdict::not_proven:
      break;
  }
  return {{"text", say("Too few readings that do not contradict each other to compare with the last test; "
                       "two are needed")},
          {"advice", say("Repeat two readings of the last test at the same pace and layers")}};
}

const char* next_code(const NextReading& next) {
  return next.candidates.front().spread_then > k_worth_taking * next.spread_now ? "little_to_gain"
                                                                                : "tells_most";
}

std::string next_words(const NextReading& next) {
  const CandidateReading& best = next.candidates.front();
  const std::string gain = say("the fastest pace that kills, now known within {}, would be known within {}",
                               percent_words(next.spread_now), percent_words(best.spread_then));
  if (next_code(next) == std::string("little_to_gain")) {
    return say("No single further reading would tell much. The best: {}; {}", candidate_words(best), gain);
  }
  return say("{}: {}, and {}", candidate_words(best), why_words(best.reading.kind), gain);
}

std::string probe_words(const ReadFoldTest& read) {
  const steam::ProbeLag& dip = *read.dip;
  return say(
      "By the dip the probe covers 63 % of a jump in {:.2g} s; in a fold between {:.2g} and {:.2g} s "
      "(90 %), which the fit corrects for and counts as unsure",
      dip.time_constant_seconds, dip.low, dip.high);
}

}  // namespace lastegg
