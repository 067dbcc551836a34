// lastegg plan JOB: a pace or a stated reason for every edge of a job's items. lastegg demo: the same for the
// demo job, which is part of the command.
#include <fmt/format.h>

#include <iostream>
#include <map>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/commands/job_text.h"
#include "apps/cli/files.h"
#include "apps/cli/spoken.h"
#include "apps/store/durable_file.h"
#include "apps/store/job_file.h"
#include "engine/ask.h"
#include "engine/document.h"
#include "engine/job_requests.h"
#include "job/record/fold.h"
#include "words/say.h"

namespace lastegg::embedded {
extern const std::string_view examples_demo_ndjson;
}

namespace lastegg::cli {
namespace {

struct PlanOptions {
  std::string file;
  std::string out;
  int samples = 1024;
  double minutes_left = 0;  // 0: not asked
  bool as_json = false;
};

Result<Json> request_of(const store::JobFile& job, const PlanOptions& options) {
  Json events{{"lines", Json::array()}};
  for (const record::Event& event : job.events.events()) events["lines"].push_back(event.bytes);
  const AskOutcome folded = ask("fold_events", dumped(events));
  const Json answer = Json::parse(folded.text, nullptr, false);
  if (!folded.ok)
    return refuse({ErrorKind::bad_input, answer["error"].value("message", ""), options.file, "", "", ""});
  Result<Json> request = plan_request_of(answer.at("state"));
  if (request && request->contains("fold_test")) {
    for (Json& test : (*request)["fold_test"]) test["samples"] = options.samples;
  } else if (request) {
    (*request)["samples"] = options.samples;
  }
  return request;
}

std::string pace_words(const Json& pace) {
  if (pace["recommended_metres_per_second"].is_null()) return "-";
  const double recommended = pace["recommended_metres_per_second"];
  if (pace["style"] == "place_hold_move") {
    return say("hold {:.0f} s, move {:.0f} mm", pace["hold_seconds"].get<double>(),
               1e3 * pace["move_metres"].get<double>());
  }
  return say("{:.1f} mm/s ({:.0f} s per 30 cm)", 1e3 * recommended, 0.3 / recommended);
}

void print(const Json& plan) {
  const Json& edges = plan["edges"];
  std::map<std::pair<int, int>, int> printed;
  int item = -1;
  for (const Json& edge : edges) {
    if (edge["item_index"] != item) {
      item = edge["item_index"];
      std::cout << "\n" << plan["items"][static_cast<std::size_t>(item)]["title"].get<std::string>() << "\n";
      std::cout << say("  height   length   pace                        verdict      edge\n");
    }
    const Json& pace = plan["paces"][edge["pace_index"].get<std::size_t>()];
    std::cout << fmt::format("  {:4.2f} m  {:5.2f} m   {:<26}  {:<11}  {} [{}]\n",
                             edge["height_metres"].get<double>(), edge["length_metres"].get<double>(),
                             pace_words(pace), spoken(pace["verdict_at_recommended"].get<std::string>()),
                             edge["title"].get<std::string>(), edge["pace_index"].get<int>() + 1);
  }
  std::cout << "\n" << say("What limits each") << "\n";
  for (std::size_t i = 0; i < plan["paces"].size(); ++i) {
    const Json& reason = plan["paces"][i]["reason"];
    if (!reason.is_null()) std::cout << fmt::format("  [{}] {}\n", i + 1, reason["text"].get<std::string>());
  }
  std::cout << "\n" << plan["summary"].get<std::string>() << "\n";
  for (const Json& closed : plan["closed_by"]) {
    std::cout << say("  {} edges without a pace: {}\n", closed["edges"].get<int>(),
                     closed["text"].get<std::string>());
  }
  if (plan.contains("in_minutes_left")) {
    const Json& left = plan["in_minutes_left"];
    std::cout << "\n" << left["text"].get<std::string>() << "\n" << say("In this order") << "\n";
    for (const Json& index : left["edges"]) {
      const Json& edge = edges[index.get<std::size_t>()];
      std::cout << say("  {:>4.0f} s  {:4.1f} of 100 bugs  {}, {}\n", edge["seconds"].get<double>(),
                       100 * edge["bug_share"].get<double>(),
                       plan["items"][edge["item_index"].get<std::size_t>()]["title"].get<std::string>(),
                       edge["title"].get<std::string>());
    }
  }
  for (const Json& warning : plan["warnings"])
    std::cout << say("Note: {}.\n", warning["text"].get<std::string>());
  std::cout << say(
      "Steam burns. Never open a hot boiler; outlets and electronics are never steamed; unknown "
      "finish: a hidden spot first.\n");
}

// A job file or events, or a request of the question plan.
Result<Json> request_of(const PlanOptions& options) {
  if (options.file.ends_with(".json") || options.file == "-") {
    const Result<std::string> text = text_of_file(options.file);
    if (!text) return refuse(text.error());
    return parse_document(*text);
  }
  const Result<store::JobFile> job = store::load_job(options.file);
  if (!job) return refuse(job.error());
  return request_of(*job, options);
}

int answer_plan(const Result<Json>& request, const PlanOptions& options) {
  if (!request) return report(request.error());
  Json asked = *request;
  if (options.minutes_left > 0) asked["minutes_left"] = options.minutes_left;
  const AskOutcome outcome = ask("plan", dumped(asked));
  const Json answer = Json::parse(outcome.text, nullptr, false);
  if (!outcome.ok) {
    std::cerr << outcome.text << "\n";
    return answer["error"].value("kind", "internal") == "internal" ? k_internal : k_bad_input;
  }
  if (options.as_json)
    std::cout << outcome.text << "\n";
  else
    print(answer);
  return answer["edges_with_window"].get<int>() > 0 ? k_done : k_answer_is_no;
}

int demo(const PlanOptions& options) {
  const Result<store::JobFile> job = store::read_events(std::string(embedded::examples_demo_ndjson));
  if (!job) return report(job.error());
  if (!options.out.empty()) {
    const Result<std::string> bytes = store::job_file_bytes(*job);
    if (!bytes) return report(bytes.error());
    const Result<std::size_t> written = store::write_durably(options.out, *bytes);
    if (!written) return report(written.error());
    std::cout << say("{}: the demo job, {} events. Everything in it is invented.\n", options.out,
                     job->events.size());
    return k_done;
  }
  if (!options.as_json) {
    std::cout
        << job_text(record::fold(job->events))
        << say("\nPaces from the invented fold test. People, place, equipment and every measured value of "
               "this job are invented.\n")
        << std::flush;
  }
  return answer_plan(request_of(*job, options), options);
}

void add_plan_options(CLI::App* command, PlanOptions& options) {
  command->add_option("--samples", options.samples, in_language("Size of the ensemble; verdicts use 1024"))
      ->check(CLI::Range(64, 4096));
  command
      ->add_option("--minutes-left", options.minutes_left,
                   in_language("Also say which edges matter most in so many minutes of steaming"))
      ->check(CLI::Range(1.0, 1440.0));
  command->add_flag("--json", options.as_json, in_language("The whole answer as JSON"));
}

}  // namespace

void add_plan(CLI::App& app, Action& action) {
  const auto options = std::make_shared<PlanOptions>();
  CLI::App* command = app.add_subcommand(
      "plan", in_language("Plan a pace for every edge of a job, or say why there is none"));
  command
      ->add_option(
          "job", options->file,
          in_language("A .lastegg file or its events (.ndjson), or a request of the question plan (.json)"))
      ->required();
  add_plan_options(command, *options);
  command->callback(
      [options, &action] { action = [options] { return answer_plan(request_of(*options), *options); }; });
}

void add_demo(CLI::App& app, Action& action) {
  const auto options = std::make_shared<PlanOptions>();
  CLI::App* command = app.add_subcommand(
      "demo", in_language("Show an invented job and plan it, or write it as a file to try things on"));
  add_plan_options(command, *options);
  command->add_option("-o,--out", options->out,
                      in_language("Write the demo job as this .lastegg file instead"));
  command->callback([options, &action] { action = [options] { return demo(*options); }; });
}

}  // namespace lastegg::cli
