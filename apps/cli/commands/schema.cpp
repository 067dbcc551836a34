// lastegg schema [FOLDER]: writes the JSON Schemas of every request and answer.
#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "engine/ask.h"
#include "engine/question_documents.h"
#include "words/say.h"

namespace lastegg::cli {

void add_schema(CLI::App& app, Action& action) {
  const auto folder = std::make_shared<std::string>("schema");
  CLI::App* command =
      app.add_subcommand("schema", in_language("Write the JSON Schemas of all requests and answers"));
  command->add_option("folder", *folder, in_language("Folder to write to"))->capture_default_str();
  command->callback([folder, &action] {
    action = [folder]() -> int {
      for (const Question& question : questions()) {
        for (const auto& [side, word] :
             {std::pair{Side::request, "request"}, std::pair{Side::answer, "answer"}}) {
          const auto path = std::filesystem::path(*folder) / (question.name + "." + word + ".json");
          const auto written = write_file(path, dumped(schema_document(question, side), 2) + "\n");
          if (!written) return report(written.error());
        }
      }
      return k_done;
    };
  });
}

}  // namespace lastegg::cli
