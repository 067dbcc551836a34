// lastegg treated JOB [--samples N] [--json]: what was done, measured and computed, edge by edge, and the
// redo list.
#include <unistd.h>

#include <fmt/format.h>

#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "apps/cli/job_answers.h"
#include "apps/cli/spoken.h"
#include "engine/ask.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

struct TreatedCommand {
  std::string file;
  int samples = 1024;
  bool as_json = false;
};

std::string state_words(const std::string& state) {
  return spoken(state == "not_proven" ? "not proven" : state == "not_treated" ? "not treated" : state);
}

void print(const Json& answer) {
  for (const Json& item : answer["items"]) {
    const Json& counts = item["counts"];
    std::cout << say("\n{}: {} edges, {} with a timed pass, {} lethal\n", item["title"].get<std::string>(),
                     counts["edges"].get<int>(), counts["treated"]["edges"].get<int>(),
                     counts["lethal"].get<int>());
    for (const Json& edge : item["edges"]) {
      const bool is_told = edge["treated"]["passes"].get<int>() > 0 || !edge["marks"].empty() ||
                           !edge["redo"]["reason"].is_null();
      const std::string code = edge["cause"]["code"];
      if (!is_told || code == "barred" || code == "other_method") continue;
      const Json& modelled = edge["modelled"];
      const std::string kill = !modelled.is_null() && modelled["kill_probability"].is_number()
                                   ? say("{:.0f} in 100", 100 * modelled["kill_probability"].get<double>())
                                   : std::string("-");
      std::cout << fmt::format("  {:<11} {:>9}  {:<9} {}\n", state_words(edge["state"]), kill,
                               spoken(edge["redo"]["state"].get<std::string>()),
                               edge["title"].get<std::string>());
      if (edge["state"] != "lethal")
        std::cout << "               " << edge["cause"]["text"].get<std::string>() << "\n";
    }
    if (counts["not_treated"].get<int>() + counts["barred"].get<int>() > 0)
      std::cout << say("  not treated {}, barred {}\n", counts["not_treated"].get<int>(),
                       counts["barred"].get<int>());
  }
  const Json& counts = answer["counts"];
  std::cout << say(
      "\nTreated   {} passes over {} edges, {:.1f} m, {:.0f} min\nMeasured  {} readings behind the head\n"
      "Modelled  {} edges, {:.1f} m of them lethal\n",
      counts["treated"]["passes"].get<int>(), counts["treated"]["edges"].get<int>(),
      counts["treated"]["metres"].get<double>(), counts["treated"]["seconds"].get<double>() / 60,
      counts["spot_readings"].get<int>(), counts["modelled"]["edges"].get<int>(),
      counts["modelled"]["lethal_metres"].get<double>());
  std::cout << say(
      "Edges     {} lethal, {} not proven, {} short, {} barred, {} not treated\nRedo      {} open, {} "
      "explained\n",
      counts["lethal"].get<int>(), counts["not_proven"].get<int>(), counts["short"].get<int>(),
      counts["barred"].get<int>(), counts["not_treated"].get<int>(), counts["redo_open"].get<int>(),
      counts["redo_explained"].get<int>());
  for (const Json& warning : answer["warnings"])
    std::cout << "  ! " << warning["text"].get<std::string>() << "\n";
}

int run(const TreatedCommand& command) {
  const auto folded = folded_job(command.file);
  if (!folded) return report(folded.error());
  const auto answer = treated_answer(*folded, command.samples);
  if (!answer) return report(answer.error());
  if (command.as_json)
    std::cout << dumped(*answer, isatty(STDOUT_FILENO) != 0 ? 2 : -1) << "\n";
  else
    print(*answer);
  return (*answer)["counts"]["redo_open"].get<int>() == 0 ? k_done : k_answer_is_no;
}

}  // namespace

void add_treated(CLI::App& app, Action& action) {
  const auto options = std::make_shared<TreatedCommand>();
  CLI::App* command = app.add_subcommand(
      "treated",
      in_language("What the treatment of a job did, edge by edge; exit 1 while edges wait on the redo list"));
  command->add_option("job", options->file, in_language("A .lastegg file or its events (.ndjson)"))
      ->required();
  command->add_option("--samples", options->samples, in_language("Size of the ensemble; verdicts use 1024"))
      ->check(CLI::Range(64, 4096));
  command->add_flag("--json", options->as_json, in_language("The whole answer as JSON"));
  command->callback([options, &action] { action = [options] { return run(*options); }; });
}

}  // namespace lastegg::cli
