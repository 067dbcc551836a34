// The command line. Every command is in its own file under commands/; here they are only brought together,
// and whatever goes wrong becomes one of the exit codes that scripts rely on.
#include <cstdlib>
#include <exception>
#include <iostream>

#include "apps/cli/chosen_language.h"
#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"

int main(int argc, char** argv) {
  using namespace lastegg::cli;
  std::ios::sync_with_stdio(false);
  try {
    CLI::App app("Last Egg: heat and steam against bed bugs, planned and proven.", "lastegg");
    app.set_version_flag("--version", LASTEGG_VERSION);
    app.require_subcommand(1);
    app.fallthrough();  // so that --language may stand after the command too
    std::string language;
    app.add_option(
        "--language", language,
        "Of what the command says: en-US, en-GB or es. Else LASTEGG_LANGUAGE, else the locale. This help "
        "stays English");
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
    try {
      app.parse(argc, argv);
    } catch (const CLI::ParseError& problem) {
      return app.exit(problem) == 0 ? k_done : k_bad_input;
    }
    const auto chosen = chosen_language(language, [](const char* name) {
      const char* value = std::getenv(name);
      return std::string(value == nullptr ? "" : value);
    });
    if (!chosen) return report(chosen.error());
    const lastegg::InLanguage spoken(*chosen);
    const int code = action ? action() : k_bad_input;
    std::cout.flush();
    return std::cout.good() ? code : k_internal;
  } catch (const std::exception& problem) {
    lastegg::Error error;
    error.message = problem.what();
    return report(error);
  }
}
