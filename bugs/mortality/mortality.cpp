#include "bugs/mortality/mortality.h"

#include <algorithm>
#include <cmath>

#include "physics/uncertainty/normal.h"

namespace lastegg::bugs {
namespace {

// Standard normal score of the 99th percentile, to the digits of the law.
constexpr double k_score_of_99_percent = 2.326;

std::vector<Gap> gaps_of(const TemperatureSeries& series, double longest_interval) {
  std::vector<Gap> gaps;
  for (std::size_t i = 1; i < series.seconds.size(); ++i) {
    if (series.seconds[i] - series.seconds[i - 1] > longest_interval)
      gaps.push_back({series.seconds[i - 1], series.seconds[i]});
  }
  return gaps;
}

// Whether some reading beside a gap is hot enough that dose may have been missed in it.
bool gap_may_hide_dose(const TemperatureSeries& series, double longest_interval, double onset_celsius) {
  for (std::size_t i = 1; i < series.seconds.size(); ++i) {
    if (series.seconds[i] - series.seconds[i - 1] > longest_interval &&
        std::max(series.celsius[i - 1], series.celsius[i]) >= onset_celsius)
      return true;
  }
  return false;
}

struct Judgement {
  Verdict verdict;
  VerdictReason reason;
};

// The verdict, from everything else in the report.
Judgement judge(const DoseReport& report, const DoseProblem& problem, bool hidden_dose) {
  const KillRules& rules = kill_rules();
  if (problem.z_kelvin || problem.onset_celsius || problem.cap_celsius)
    return {Verdict::not_proven, VerdictReason::overridden};
  const auto near_limit = [&](double ratio) {
    return std::fabs(numerics::log10(ratio / rules.required_ratio)) < rules.near_limit;
  };
  if (near_limit(report.ratio)) return {Verdict::not_proven, VerdictReason::near_limit};
  if (report.ratio < rules.required_ratio) {
    return hidden_dose ? Judgement{Verdict::not_proven, VerdictReason::gap}
                       : Judgement{Verdict::too_short, VerdictReason::too_little};
  }
  if (near_limit(report.ratio_with_lag)) return {Verdict::not_proven, VerdictReason::near_limit};
  if (report.ratio_with_lag < rules.required_ratio) return {Verdict::not_proven, VerdictReason::body_lag};
  if (report.cautious_ratio < rules.required_ratio || near_limit(report.cautious_ratio)) {
    return {Verdict::not_proven, report.gaps.empty() ? VerdictReason::coarse_readings : VerdictReason::gap};
  }
  const bool slow = report.ramp_kelvin_per_minute.value_or(rules.slow_ramp_kelvin_per_minute) <
                    rules.slow_ramp_kelvin_per_minute;
  if (problem.stage == Stage::egg && slow && report.highest_celsius < rules.slow_ramp_celsius)
    return {Verdict::not_proven, VerdictReason::slow_ramp};
  return {Verdict::lethal, VerdictReason::enough};
}

}  // namespace

double survival(double log10_ratio, const KillLaw& law) {
  return normal_probability(-(log10_ratio / law.spread + k_score_of_99_percent));
}

double expected_kill(Stage stage, double log10_ratio, Exposure exposure) {
  const KillLaw& law = kill_law(stage, exposure);
  const double between = law.study_spread / law.spread;
  const double score = (log10_ratio / law.spread + k_score_of_99_percent) / std::sqrt(1 + between * between);
  return 0.5 * (law.contact_share[0] + law.contact_share[1]) * normal_probability(score);
}

double printed_probability(double probability) {
  return std::clamp(probability, 0.0, kill_rules().highest_probability);
}

std::string_view verdict_word(Verdict verdict) {
  switch (verdict) {
    case Verdict::lethal:
      return "lethal";
    case Verdict::too_short:
      return "short";
    case Verdict::not_proven:
      return "not_proven";
  }
  return "not_proven";
}

std::string_view reason_word(VerdictReason reason) {
  switch (reason) {
    case VerdictReason::enough:
      return "enough";
    case VerdictReason::too_little:
      return "too_little";
    case VerdictReason::near_limit:
      return "near_limit";
    case VerdictReason::slow_ramp:
      return "slow_ramp";
    case VerdictReason::gap:
      return "gap";
    case VerdictReason::coarse_readings:
      return "coarse_readings";
    case VerdictReason::body_lag:
      return "body_lag";
    case VerdictReason::overridden:
      return "overridden";
  }
  return "overridden";
}

KillLaw law_of(const DoseProblem& problem) {
  KillLaw law = kill_law(problem.stage, problem.exposure);
  if (problem.z_kelvin) law.z_kelvin = {*problem.z_kelvin, *problem.z_kelvin};
  if (problem.onset_celsius) law.onset_celsius = *problem.onset_celsius;
  if (problem.cap_celsius) law.cap_celsius = *problem.cap_celsius;
  return law;
}

Result<DoseReport> judge_series(const TemperatureSeries& series, const DoseProblem& problem) {
  if (const auto state = kill_data_state(); !state) return refuse(state.error());
  if (const auto checked = check_series(series); !checked) return refuse(checked.error());
  const KillLaw law = law_of(problem);
  const KillRules& rules = kill_rules();

  DoseReport report;
  report.longest_interval_seconds =
      problem.longest_interval_seconds.value_or(longest_interval_seconds(series, problem.exposure));
  report.gaps = gaps_of(series, report.longest_interval_seconds);
  DoseOptions options{.uncertainty_celsius = problem.uncertainty_celsius,
                      .longest_interval_seconds = report.longest_interval_seconds};
  report.equivalent_minutes_by_z = equivalent_minutes(series, law, options);
  report.ratio = ratio_to_lt99(report.equivalent_minutes_by_z, law);

  const auto ratio_with = [&](double lag_seconds) {
    options.body_lag_seconds = lag_seconds;
    return ratio_to_lt99(equivalent_minutes(series, law, options), law);
  };
  report.ratio_with_lag = ratio_with(law.body_lag_seconds);
  if (problem.stage == Stage::adult) report.engorged_ratio = ratio_with(rules.engorged_lag_seconds);
  options.coarse_seconds = rules.coarse_seconds;
  options.gap_is_cold = true;
  report.cautious_ratio = ratio_with(law.body_lag_seconds);

  report.highest_celsius =
      *std::max_element(series.celsius.begin(), series.celsius.end()) - problem.uncertainty_celsius;
  report.ramp_kelvin_per_minute = ramp_kelvin_per_minute(
      series, law.onset_celsius, kill_law(Stage::egg, problem.exposure).reference_celsius,
      problem.uncertainty_celsius);
  const Judgement judgement =
      judge(report, problem, gap_may_hide_dose(series, report.longest_interval_seconds, law.onset_celsius));
  report.verdict = judgement.verdict;
  report.reason = judgement.reason;
  return report;
}

}  // namespace lastegg::bugs
