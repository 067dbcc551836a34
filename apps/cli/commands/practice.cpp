// lastegg practice: the page docs/practice.md, which puts the customary pace of one inch per second beside
// what is computed for it, and shows what stands open in the demo job.
#include <fmt/format.h>

#include <iostream>
#include <string>
#include <vector>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "apps/store/job_file.h"
#include "engine/ask.h"
#include "engine/document.h"
#include "engine/job_requests.h"
#include "words/say.h"

namespace lastegg::embedded {
extern const std::string_view examples_demo_ndjson;
}

namespace lastegg::cli {
namespace {

constexpr double k_practice_celsius = 71;  // lower end of the target of common practice, 160 F
constexpr double k_sure = 0.95;
constexpr int k_samples = 512;

struct Head {
  const char* title;
  double length_metres;
};
constexpr Head k_heads[] = {{"small head, 50 mm along the travel", 0.05},
                            {"large head, 120 mm along the travel", 0.12}};
constexpr const char* k_towels[] = {"none", "wrapped"};
constexpr const char* k_coverings[] = {"cotton", "polyester", "velvet", "mattress_tick"};
constexpr const char* k_kinds[] = {"label", "seam", "welt", "tape_edge"};

struct Tally {
  int rows = 0, warm = 0, sure = 0;
};

Result<Json> answer_of(const char* question, const Json& request) {
  const AskOutcome outcome = ask(question, dumped(request));
  const Json answer = Json::parse(outcome.text, nullptr, false);
  if (!outcome.ok)
    return refuse({ErrorKind::internal, answer["error"].value("message", ""), question, "", "", ""});
  return answer;
}

Result<std::string> table(const Head& head, const std::string& towel, Tally& tally) {
  std::string out =
      "| covering | edge | eggs down to | hottest there | kills in | water left "
      "|\n|---|---|---|---|---|---|\n";
  for (const char* covering : k_coverings) {
    for (const char* kind : k_kinds) {
      const auto answer = answer_of("pace", {{"samples", k_samples},
                                             {"prior",
                                              {{"machine", "untested"},
                                               {"head", head.title},
                                               {"towel", towel},
                                               {"length_metres", head.length_metres}}},
                                             {"edge", {{"kind", kind}, {"covering", covering}}}});
      if (!answer) return refuse(answer.error());
      const Json& inch = answer->at("one_inch_per_second");
      const Json& celsius = inch.at("target_celsius");
      const double middle = celsius.at("p50"), lethal = inch.at("lethal_share");
      ++tally.rows;
      tally.warm += middle >= k_practice_celsius ? 1 : 0;
      tally.sure += lethal >= k_sure ? 1 : 0;
      out +=
          fmt::format("| {} | {} | {:.1f} mm | {:.0f} C ({:.0f} to {:.0f}) | {:.0f} of 100 | {:.0f} g/m2 |\n",
                      covering, kind, 1e3 * answer->at("target_depth_metres").at("p90").get<double>(), middle,
                      celsius.at("p05").get<double>(), celsius.at("p95").get<double>(), 100 * lethal,
                      inch.at("condensate_grams_per_m2").get<double>());
    }
  }
  return out;
}

Result<std::string> demo() {
  const Result<store::JobFile> job = store::read_events(std::string(embedded::examples_demo_ndjson));
  if (!job) return refuse(job.error());
  Json events{{"lines", Json::array()}};
  for (const record::Event& event : job->events.events()) events["lines"].push_back(event.bytes);
  const auto folded = answer_of("fold_events", events);
  if (!folded) return refuse(folded.error());
  const auto request = plan_request_of(folded->at("state"));
  if (!request) return refuse(request.error());
  const auto plan = answer_of("plan", *request);
  if (!plan) return refuse(plan.error());
  std::string out = plan->at("summary").get<std::string>() + "\n";
  for (const Json& closed : plan->at("closed_by"))
    out += fmt::format("\n- {} edges without a pace: {}.", closed.at("edges").get<int>(),
                       closed.at("text").get<std::string>());
  return out + "\n";
}

int practice() {
  std::string tables;
  Tally by_towel[2];
  for (std::size_t t = 0; t < 2; ++t) {
    for (const Head& head : k_heads) {
      const auto rows = table(head, k_towels[t], by_towel[t]);
      if (!rows) return report(rows.error());
      tables += fmt::format("### {}, {}\n\n{}\n", head.title, t == 0 ? "bare" : "wrapped in a towel", *rows);
    }
  }
  const auto open = demo();
  if (!open) return report(open.error());
  std::cout
      << R"(# Practice beside physics

Written by `lastegg practice`; do not edit. Every figure is computed, none is measured.

Common practice (no source) moves the head at about one inch per second (25.4 mm/s) and looks for 71 to 82 C (160 to 180 F) in the
fold. Below is what the model expects at that pace of a steamer that **nobody has tested**, so the ranges are wide: 90 of 100 cases
lie between the two numbers in brackets. "Kills" counts the cases in which eggs, nymphs and unfed adults get twice the dose that
kills 99 of 100, at the deepest place where eggs may plausibly lie. Water is the median.

)" << tables
      << fmt::format(
             "## Where this contradicts practice, and why\n\n"
             "- Bare, the middle case reaches {:.0f} C in {} of {} rows; with a towel in {} of {}. So "
             "practice and model agree "
             "on the thin coverings and shallow places that practice measures, and part in deep ones: "
             "a tape edge or a "
             "welt is not done at one inch per second.\n"
             "- The model calls one inch per second sure (95 of 100 cases) in {} of {} rows bare and "
             "{} of {} with a towel. "
             "An untested steamer may be a weak one; a fold test removes most of that doubt, and is "
             "why it stands first.\n"
             "- Practice judges by a thermometer in a fold; the table asks for the deepest place where "
             "an egg may lie.\n"
             "- Practice has bugs and eggs dead within a minute above 49 C (120 F). Laboratory data "
             "for eggs ask for more, and "
             "the more cautious figure is taken (bugs/mortality/README.md).\n"
             "- Slower is hotter but wetter, and the limit of 50 g/m2 is an estimate that only a wetting "
             "test on a hidden spot can replace.\n\n",
             k_practice_celsius, by_towel[0].warm, by_towel[0].rows, by_towel[1].warm, by_towel[1].rows,
             by_towel[0].sure, by_towel[0].rows, by_towel[1].sure, by_towel[1].rows)
      << "## The demo job (invented)\n\n"
      << *open;
  return k_done;
}

}  // namespace

void add_practice(CLI::App& app, Action& action) {
  CLI::App* command = app.add_subcommand(
      "practice", in_language("Print what the customary pace is computed to bring, as a page"));
  command->callback([&action] { action = [] { return practice(); }; });
}

}  // namespace lastegg::cli
