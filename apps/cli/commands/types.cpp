// lastegg types: the TypeScript types of every question, for the browser's side.
#include <iostream>

#include "apps/cli/commands/command.h"
#include "engine/question_documents.h"
#include "words/say.h"

namespace lastegg::cli {

void add_types(CLI::App& app, Action& action) {
  CLI::App* command =
      app.add_subcommand("types", in_language("Print the TypeScript types of all requests and answers"));
  command->callback([&action] {
    action = [] {
      std::cout << types_document();
      return k_done;
    };
  });
}

}  // namespace lastegg::cli
