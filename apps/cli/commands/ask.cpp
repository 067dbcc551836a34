// lastegg ask QUESTION [FILE|-] and lastegg ask --stream.
#include "engine/ask.h"

#include <unistd.h>

#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "engine/document.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

struct AskOptions {
  std::string question;
  std::string file = "-";
  bool stream = false;
};

int exit_code_of(const AskOutcome& outcome) {
  if (outcome.ok) return k_done;
  const Json document = Json::parse(outcome.text, nullptr, false);
  return document["error"].value("kind", "internal") == "internal" ? k_internal : k_bad_input;
}

int ask_once(const AskOptions& options) {
  if (const auto found = question_named(options.question); !found) return report(found.error());
  const Result<std::string> request = text_of_file(options.file);
  if (!request) return report(request.error());
  const AskOutcome outcome = ask(options.question, *request);
  std::ostream& out = outcome.ok ? std::cout : std::cerr;
  if (outcome.ok && isatty(STDOUT_FILENO) != 0)
    out << dumped(Json::parse(outcome.text, nullptr, false), 2) << "\n";
  else
    out << outcome.text << "\n";
  return exit_code_of(outcome);
}

AskOutcome answer_line(const std::string& line) {
  const Result<Json> document = parse_document(line);
  if (!document) return {false, dumped(error_object(document.error()))};
  const Shape shape = shape::object({shape::field("question", shape::text("Name of the question.")),
                                     shape::field("request", shape::anything("Its request."))},
                                    "One line of a stream.");
  const Result<Json> asked = read(shape, *document);
  if (!asked) return {false, dumped(error_object(asked.error()))};
  return ask((*asked)["question"].get<std::string>(), dumped((*asked)["request"]));
}

// One line in, one line out, in order; refusals are lines as well. The exit code is that of the worst line.
int ask_stream() {
  std::string line;
  int worst = k_done;
  while (std::getline(std::cin, line)) {
    if (line.find_first_not_of(" \t\r") == std::string::npos) continue;
    const AskOutcome outcome = answer_line(line);
    std::cout << outcome.text << "\n" << std::flush;
    worst = std::max(worst, exit_code_of(outcome));
  }
  return worst;
}

}  // namespace

void add_ask(CLI::App& app, Action& action) {
  const auto options = std::make_shared<AskOptions>();
  CLI::App* command =
      app.add_subcommand("ask", in_language("Answer one question: a JSON object in, a JSON object out"));
  CLI::Option* question = command->add_option("question", options->question,
                                              in_language("Name of the question (see: lastegg questions)"));
  command->add_option("file", options->file, in_language("File with the request, or - for standard input"));
  command
      ->add_flag("--stream", options->stream,
                 in_language("Read lines {\"question\":...,\"request\":...} and print one line for each"))
      ->excludes(question);
  command->callback([options, question, &action] {
    if (!options->stream && question->empty()) throw CLI::RequiredError("question");
    action = [options] { return options->stream ? ask_stream() : ask_once(*options); };
  });
}

}  // namespace lastegg::cli
