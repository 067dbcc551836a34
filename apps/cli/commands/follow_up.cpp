// lastegg follow-up FILE [--treated-on DAY] [--uncertainty "1 C"] [--calendar OUT.ics] [--json]
#include <unistd.h>

#include <fmt/format.h>

#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "apps/cli/temperature_log.h"
#include "engine/ask.h"
#include "engine/document.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

struct FollowUpCommand {
  std::string file;
  std::string treated_on;
  std::string uncertainty;
  std::string calendar;
  bool json = false;
};

// A request of the question, or a logger's table with the day of the treatment beside it.
Result<Json> request_of(const FollowUpCommand& command) {
  const auto text = text_of_file(command.file);
  if (!text) return refuse(text.error());
  Json request;
  if (command.file.ends_with(".csv")) {
    const auto log = read_temperature_log(*text);
    if (!log) return refuse(log.error());
    request["series"] = {{"seconds", log->seconds}, {"celsius", log->celsius}};
  } else {
    const auto document = parse_document(*text);
    if (!document) return refuse(document.error());
    request = *document;
  }
  if (!command.treated_on.empty()) request["treated_on"] = command.treated_on;
  if (!command.uncertainty.empty()) {
    const auto kelvin = temperature_difference_kelvin(command.uncertainty);
    if (!kelvin) return refuse(kelvin.error());
    request["uncertainty_celsius"] = *kelvin;
  }
  return request;
}

void print(const Json& answer) {
  std::cout << answer["text"].get<std::string>() << "\n\n";
  const auto row = [&](const std::string& name, const char* key) {
    std::cout << fmt::format(
        "  {:<50}{}\n", name,
        answer[key].is_null() ? say("no date") : say("day {:.1f}", answer[key].get<double>()));
  };
  row(say("a fresh egg hatches, at the earliest"), "first_hatch_days");
  row(say("every surviving egg has hatched"), "last_hatch_days");
  row(say("the first of their young may be grown up"), "next_adult_days");
  row(say("and may have laid"), "first_new_egg_days");
  std::cout << say("\n  counted with {:.1f} to {:.1f} C ({:.0f} to {:.0f} F)\n",
                   answer["lowest_celsius"].get<double>(), answer["highest_celsius"].get<double>(),
                   1.8 * answer["lowest_celsius"].get<double>() + 32,
                   1.8 * answer["highest_celsius"].get<double>() + 32);
  std::cout << "\n" << answer["custom"]["text"].get<std::string>() << "\n";
  for (const Json& warning : answer["warnings"])
    std::cout << "  ! " << warning["text"].get<std::string>() << "\n";
}

int run(const FollowUpCommand& command) {
  const auto request = request_of(command);
  if (!request) return report(request.error());
  const AskOutcome outcome = ask("follow_up", dumped(*request));
  const Json answer = Json::parse(outcome.text, nullptr, false);
  if (!outcome.ok) {
    std::cerr << outcome.text << "\n";
    return answer["error"].value("kind", "internal") == "internal" ? k_internal : k_bad_input;
  }
  if (command.json)
    std::cout << (isatty(STDOUT_FILENO) != 0 ? dumped(answer, 2) : outcome.text) << "\n";
  else
    print(answer);
  if (answer["calendar"].is_null()) return k_answer_is_no;
  if (!command.calendar.empty()) {
    const auto written = write_file(command.calendar, answer["calendar"].get<std::string>());
    if (!written) return report(written.error());
    if (!command.json) std::cout << say("\n{} holds the window for a calendar.\n", command.calendar);
  }
  return k_done;
}

}  // namespace

void add_follow_up(CLI::App& app, Action& action) {
  const auto options = std::make_shared<FollowUpCommand>();
  CLI::App* command = app.add_subcommand(
      "follow-up", in_language("When every surviving egg has hatched, and the window of the return visit"));
  command
      ->add_option(
          "file", options->file,
          in_language(
              "A request of the question follow_up (.json), or a logger's table since the treatment (.csv)"))
      ->required();
  command->add_option("--treated-on", options->treated_on,
                      in_language("Day of the treatment, 2026-03-02; a table needs it"));
  command->add_option("--uncertainty", options->uncertainty, in_language("Of the temperatures: \"1 C\""));
  command->add_option("--calendar", options->calendar,
                      in_language("Write the window as a calendar file (.ics)"));
  command->add_flag("--json", options->json, in_language("Print the answer as JSON"));
  command->callback([options, &action] { action = [options] { return run(*options); }; });
}

}  // namespace lastegg::cli
