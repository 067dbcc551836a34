// lastegg docs [FOLDER]: the page docs/questions.md, with the examples of a folder.
#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "engine/question_documents.h"
#include "words/language.h"
#include "words/say.h"

namespace lastegg::cli {

void add_docs(CLI::App& app, Action& action) {
  const auto folder = std::make_shared<std::string>("examples");
  CLI::App* command = app.add_subcommand("docs", in_language("Print the page that describes every question"));
  command->add_option("folder", *folder, in_language("Folder with the examples"))->capture_default_str();
  command->callback([folder, &action] {
    action = [folder]() -> int {
      const InLanguage english(Language::american);  // the page is one for all, whoever writes it
      const auto examples = json_files(*folder);
      if (!examples) return report(examples.error());
      std::cout << questions_document(*examples);
      return k_done;
    };
  });
}

}  // namespace lastegg::cli
