// The command line. Every command is in its own file under commands/; here they are only brought together,
// and whatever goes wrong becomes one of the exit codes that scripts rely on.
#include <cstdlib>
#include <exception>
#include <iostream>

#include "apps/cli/chosen_language.h"
#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

/// The headings and the help of the parser in the language in force. What the parser itself refuses, it says
/// in English.
void speak(CLI::App& app) {
  for (const char* label : {to_say("Usage"), to_say("Positionals"), to_say("OPTIONS"), to_say("SUBCOMMAND"),
                            to_say("REQUIRED"), to_say("Excludes")})
    app.get_formatter()->label(label, in_language(label));
  app.option_defaults()->group(in_language("Options"));
  app.set_help_flag("-h,--help", in_language("Print this help message and exit"));
  app.failure_message([](const CLI::App* failed, const CLI::Error& problem) {
    return std::string(problem.what()) + "\n" +
           say("Run with {} for more information.\n", failed->get_help_ptr()->get_name());
  });
}

/// The headings under which commands, and the help of each, are listed.
void speak_commands(CLI::App& app) {
  for (CLI::App* command : app.get_subcommands({})) {
    command->group(in_language("Subcommands"));
    command->get_help_ptr()->group(in_language("Options"));
    speak_commands(*command);
  }
}

}  // namespace
}  // namespace lastegg::cli

int main(int argc, char** argv) {
  using namespace lastegg::cli;
  std::ios::sync_with_stdio(false);
  try {
    const auto chosen = chosen_language(language_in(argc, argv), [](const char* name) {
      const char* value = std::getenv(name);
      return std::string(value == nullptr ? "" : value);
    });
    if (!chosen) return report(chosen.error());
    const lastegg::InLanguage spoken(*chosen);
    CLI::App app(lastegg::in_language("Last Egg: heat and steam against bed bugs, planned and proven."),
                 "lastegg");
    speak(app);
    app.set_version_flag("--version", LASTEGG_VERSION,
                         lastegg::in_language("Display program version information and exit"));
    app.require_subcommand(1);
    app.fallthrough();     // so that --language may stand after the command too
    std::string language;  // was read above: the help speaks it already
    app.add_option(
        "--language", language,
        lastegg::in_language(
            "Of what the command says: en-US, en-GB or es. Else LASTEGG_LANGUAGE, else the locale"));
    Action action;
    add_ask(app, action);
    add_questions(app, action);
    add_schema(app, action);
    add_types(app, action);
    add_docs(app, action);
    add_job(app, action);
    add_serve(app, action);
    add_foldtest(app, action);
    add_plan(app, action);
    add_method(app, action);
    add_visit(app, action);
    add_practice(app, action);
    add_demo(app, action);
    add_dose(app, action);
    add_follow_up(app, action);
    add_treated(app, action);
    add_report(app, action);
    speak_commands(app);
    try {
      app.parse(argc, argv);
    } catch (const CLI::ParseError& problem) {
      return app.exit(problem) == 0 ? k_done : k_bad_input;
    }
    const int code = action ? action() : k_bad_input;
    std::cout.flush();
    return std::cout.good() ? code : k_internal;
  } catch (const std::exception& problem) {
    lastegg::Error error;
    error.message = problem.what();
    return report(error);
  }
}
