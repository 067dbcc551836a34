// lastegg method JOB: every method for every item of a job. lastegg visit JOB: its timetable, answers and
// quote. Both plan the job first.
#include <fmt/format.h>

#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/commands/visit_tables.h"
#include "apps/cli/files.h"
#include "apps/store/job_file.h"
#include "engine/ask.h"
#include "engine/document.h"
#include "engine/job_requests.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

struct VisitOptions {
  std::string file;
  std::string question;  // method or visit
  int samples = 1024;
  int crew = 0;             // 0: as recorded
  double minutes = 0;       // 0: as recorded
  double minutes_left = 0;  // 0: not asked
  bool sheet = false, as_json = false;
};

Result<Json> answered(const char* question, const Json& request) {
  const AskOutcome outcome = ask(question, dumped(request));
  Json answer = Json::parse(outcome.text, nullptr, false);
  if (outcome.ok) return answer;
  const Json& error = answer["error"];
  const ErrorKind kind =
      error.value("kind", "internal") == "internal" ? ErrorKind::internal : ErrorKind::bad_input;
  return refuse({kind, error.value("message", ""), error.value("where", ""), "", "", ""});
}

/// The requests of method, visit and preparation of a job file, after planning it.
Result<Json> requests_of(const VisitOptions& options) {
  const Result<store::JobFile> job = store::load_job(options.file);
  if (!job) return refuse(job.error());
  Json events{{"lines", Json::array()}};
  for (const record::Event& event : job->events.events()) events["lines"].push_back(event.bytes);
  const Result<Json> folded = answered("fold_events", events);
  if (!folded) return folded;
  const Json& state = folded->at("state");
  Result<Json> plan_request = plan_request_of(state);
  if (!plan_request) return plan_request;
  Json asked{{"state", state}, {"plan_items", plan_request->at("items")}};
  const Result<Json> findings = answered("visit_requests", asked);
  if (!findings) return findings;
  (*plan_request)["seen"] = findings->at("seen");
  if (plan_request->contains("fold_test"))
    for (Json& test : (*plan_request)["fold_test"]) test["samples"] = options.samples;
  else
    (*plan_request)["samples"] = options.samples;
  const Result<Json> plan = answered("plan", *plan_request);
  if (!plan) return plan;
  asked["plan"] = *plan;
  if (options.crew > 0) asked["crew"] = options.crew;
  if (options.minutes > 0) asked["minutes"] = options.minutes;
  if (options.minutes_left > 0) asked["minutes_left"] = options.minutes_left;
  return answered("visit_requests", asked);
}

/// A request of the question itself, or those of a job.
Result<Json> request_of(const VisitOptions& options, const char* part) {
  if (options.file.ends_with(".json") || options.file == "-") {
    const Result<std::string> text = text_of_file(options.file);
    if (!text) return refuse(text.error());
    return parse_document(*text);
  }
  const Result<Json> requests = requests_of(options);
  if (!requests) return requests;
  return requests->at(part);
}

bool is_yes(const std::string& question, const Json& answer) {
  if (question != "visit") return true;
  return answer.at("load").at("verdict") != "refused" && answer.at("fits") != Json(false);
}

int run(const VisitOptions& options) {
  const std::string question = options.sheet ? "preparation" : options.question;
  const Result<Json> request = request_of(options, question.c_str());
  if (!request) return report(request.error());
  const Result<Json> answer = answered(question.c_str(), *request);
  if (!answer) return report(answer.error());
  if (options.as_json)
    std::cout << dumped(*answer) << "\n";
  else
    std::cout << (question == "visit"         ? visit_table(*answer)
                  : question == "preparation" ? preparation_table(*answer)
                                              : method_table(*answer));
  return is_yes(question, *answer) ? k_done : k_answer_is_no;
}

void add(CLI::App& app, Action& action, const char* name, const char* text) {
  const auto options = std::make_shared<VisitOptions>();
  options->question = name;
  CLI::App* command = app.add_subcommand(name, in_language(text));
  command
      ->add_option(
          "job", options->file,
          in_language("A .lastegg file or its events (.ndjson), or a request of the question (.json)"))
      ->required();
  command
      ->add_option("--samples", options->samples,
                   in_language("Size of the plan's ensemble; verdicts use 1024"))
      ->check(CLI::Range(64, 4096));
  command->add_flag("--json", options->as_json, in_language("The whole answer as JSON"));
  command->callback([options, &action] { action = [options] { return run(*options); }; });
  if (options->question == "visit") {
    command->add_option("--crew", options->crew, in_language("People, in place of the recorded visit"))
        ->check(CLI::Range(1, 4));
    command
        ->add_option("--minutes", options->minutes,
                     in_language("Time there is, in place of the recorded visit"))
        ->check(CLI::Range(1.0, 1440.0));
    command
        ->add_option("--minutes-left", options->minutes_left,
                     in_language("Also say what matters most in so many minutes"))
        ->check(CLI::Range(1.0, 1440.0));
    command->add_flag("--sheet", options->sheet,
                      in_language("The preparation sheet in place of the timetable"));
  }
}

}  // namespace

void add_method(CLI::App& app, Action& action) {
  add(app, action, "method",
      to_say("Show every method for every item of a job: allowed, to check, to agree, barred"));
}

void add_visit(CLI::App& app, Action& action) {
  add(app, action, "visit",
      to_say("Plan the visit: who does what when, sleep tonight, circuits, water, quote"));
}

}  // namespace lastegg::cli
