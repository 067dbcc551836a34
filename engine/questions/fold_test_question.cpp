// Question `fold_test`: what a thermometer in a fold says about this steamer.
#include <fmt/format.h>

#include <algorithm>

#include "engine/fold_test_answer.h"
#include "engine/fold_test_words.h"
#include "engine/other_tests.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "treatments/steam/fold_test/same_machine.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

constexpr double k_unidentified_narrowing =
    0.75;  // posterior over prior spread above which readings told little
constexpr int k_drift_samples = 256;

struct Decision {
  std::string word, code, text;
};

// yes, no, or not_proven of a share that every case of `judgement` agrees on.
std::string decided(double least, double most, const char* yes, const char* no) {
  return least >= k_sure ? yes : most <= 1 - k_sure ? no : "not_proven";
}

Decision verdict_of(const ReadFoldTest& read, const Outlook& outlook, const Judgement& judgement,
                    const std::vector<steam::Contradiction>& contradictions, double effective_samples) {
  if (!judgement.enough) {
    return {"not_proven", "few_effective_samples",
            say("The readings leave only {:.0f} effective samples of {}; the model cannot follow them. Look "
                "for a misread value, or repeat the test",
                effective_samples, read.samples)};
  }
  if (std::any_of(contradictions.begin(), contradictions.end(), [](const steam::Contradiction& one) {
        return one.kind == steam::Contradiction::Kind::above_boiling;
      })) {
    return {"not_proven", "above_boiling",
            say("A reading is hotter than water boils here, so the thermometer is not to be trusted")};
  }
  if (!judgement.enough_without) {
    return {
        "not_proven", "contradictory_readings",
        say("The readings contradict each other so much that, without one of the pair, hardly a case that "
            "was looked at fits "
            "the rest; repeat them")};
  }
  const OutlookPoint& deep = outlook.points[outlook.deep];
  const double pace = 1e3 * read.working_pace_metres_per_second;
  if (judgement.lethal_only_by_surface) {
    return {"not_proven", "only_by_surface",
            say("At {:.3g} mm/s under {} it would kill only by what the surface showed, and a surface "
                "says little of the fold: take a reading there",
                pace, layers_words(deep.layers))};
  }
  const std::string whole = decided(judgement.lethal_share, judgement.lethal_share, "lethal", "short");
  const std::string verdict = decided(judgement.least_lethal, judgement.most_lethal, "lethal", "short");
  if (verdict != whole) {
    return {
        verdict, "contradictory_readings",
        say("At {:.3g} mm/s under {}, eggs, nymphs and unfed adults die in {:.0f} to {:.0f} of 100 cases, "
            "depending on which of the contradictory readings is wrong",
            pace, layers_words(deep.layers), 100 * judgement.least_lethal, 100 * judgement.most_lethal)};
  }
  return {
      verdict, "share_at_working_pace",
      say("At {:.3g} mm/s under {}, eggs, nymphs and unfed adults die in {:.0f} of 100 cases that fit the "
          "readings",
          pace, layers_words(deep.layers), 100 * judgement.lethal_share)};
}

Json practice_json(const ReadFoldTest& read, const Outlook& outlook, const Judgement& judgement,
                   bool is_trusted) {
  const OutlookPoint& shallow = outlook.points[outlook.shallow];
  const double working = read.working_pace_metres_per_second;
  return {
      {"low_celsius", steam::k_practice_low_celsius},
      {"high_celsius", steam::k_practice_high_celsius},
      {"pace_metres_per_second", working},
      {"layers", shallow.layers},
      {"reached",
       is_trusted ? decided(judgement.least_practice, judgement.most_practice, "yes", "no") : "not_proven"},
      {"probability", std::min(judgement.practice_share, 0.99)},
      {"text", say("Common practice asks for 71 to 82 C in the fold at working pace; under {} at {:.3g} mm/s "
                   "this head reaches 71 C in {:.0f} of 100 cases that fit the readings",
                   layers_words(shallow.layers), 1e3 * working, 100 * judgement.practice_share)}};
}

// Readings that any contradiction speaks of.
std::vector<bool> disputed(const ReadFoldTest& read,
                           const std::vector<steam::Contradiction>& contradictions) {
  std::vector<bool> out(read.test.readings.size(), false);
  for (const steam::Contradiction& one : contradictions) {
    if (one.suspect) {
      out[*one.suspect] = true;
      continue;
    }
    out[one.first] = true;
    if (one.second) out[*one.second] = true;
  }
  return out;
}

Result<Answer> solve(const Json& request) {
  auto read = read_fold_test(request, "");
  if (!read) return refuse(read.error());
  const auto relatives = same_machine_of(request, read->machine, read->test.head_key, "");
  if (!relatives) return refuse(relatives.error());
  const auto earlier = earlier_of(request, read->test.head_key);
  if (!earlier) return refuse(earlier.error());
  read->test.dew_belief = steam::belief_beside_own_test(*relatives);
  const auto fits = fit_coverings(*read);
  if (!fits) return refuse(fits.error());
  const steam::FitReport& fit = fits->front().fit;
  const steam::Calibration& calibration = fit.calibration;
  const auto outlook = outlook_of(*read, *fits);
  if (!outlook) return refuse(outlook.error());
  const std::vector<steam::Contradiction> contradictions = steam::contradictions(read->test);
  const Judgement judgement = judge_fold(*read, *fits, *outlook, contradictions);
  const auto next = next_reading(*read, fits->front(), *outlook);
  if (!next) return refuse(next.error());

  Answer answer;
  answer.warnings = read->warnings;
  if (!relatives->empty()) answer.warnings.push_back(same_machine_warning(relatives->size(), true));
  answer.data_keys = {"materials/1", "mortality/1"};
  Json& out = answer.result;
  out["posterior"] = posterior_json(calibration);
  out["samples"] = read->samples;
  out["effective_samples"] = calibration.effective_samples;
  const Decision decision =
      verdict_of(*read, *outlook, judgement, contradictions, calibration.effective_samples);
  out["verdict"] = decision.word;
  out["verdict_reason"] = reason(decision.code, decision.text);
  const bool is_trusted = judgement.enough && judgement.enough_without && decision.code != "above_boiling";
  out["practice"] = practice_json(*read, *outlook, judgement, is_trusted);
  out["fold_celsius_at"] = fold_over_pace_json(*read, *outlook);
  out["readings"] = readings_json(*read, fit);
  out["words"] = steamer_words(*read, out["posterior"], *outlook, calibration.tested_depth_metres);
  out["unidentified"] = Json::array();
  for (std::size_t k = 0; k < steam::k_unknown_count; ++k) {
    if (fit.narrowing[k] > k_unidentified_narrowing) out["unidentified"].push_back(unknown_key(k));
  }
  out["contradictions"] = contradictions_json(*read, contradictions);
  out["next_reading"] = next_reading_json(*next);
  if (read->dip) {
    out["probe"] = {{"time_constant_seconds", read->dip->time_constant_seconds},
                    {"low", read->dip->low},
                    {"high", read->dip->high},
                    {"text", probe_words(*read)}};
  }
  if (*earlier) {
    const auto drift = steam::drift_since(**earlier, read->test, calibration, disputed(*read, contradictions),
                                          k_drift_samples);
    if (!drift) return refuse(drift.error());
    out["drift"] = drift_json(*drift);
  }
  for (std::size_t c = 1; c < fits->size(); ++c)
    out["edge_calibrations"].push_back(to_json((*fits)[c].fit.calibration, (*fits)[c].covering));
  out["calibration"] = to_json(calibration, read->covering);
  return answer;
}

}  // namespace

const Question& fold_test_question() {
  static const Question question{"fold_test",
                                 "What a thermometer in a fold says about this machine, head and towel.",
                                 object(fold_test_fields_with_others(), "the kit, the fold and its readings"),
                                 fold_test_answer_shape(), solve};
  return question;
}

}  // namespace lastegg
