// lastegg questions: the list, a name and a sentence per line.
#include <algorithm>
#include <iostream>

#include "apps/cli/commands/command.h"
#include "engine/question.h"
#include "words/say.h"

namespace lastegg::cli {

void add_questions(CLI::App& app, Action& action) {
  CLI::App* command = app.add_subcommand("questions", in_language("List the questions that can be asked"));
  command->callback([&action] {
    action = [] {
      std::size_t width = 0;
      for (const Question& question : questions()) width = std::max(width, question.name.size());
      for (const Question& question : questions())
        std::cout << question.name << std::string(width + 2 - question.name.size(), ' ') << question.text
                  << "\n";
      return k_done;
    };
  });
}

}  // namespace lastegg::cli
