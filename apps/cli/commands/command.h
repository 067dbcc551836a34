// How a command of the command line is made: its file defines one add_...() that declares the command's words
// and options, and sets `action` when the person has chosen it. main() runs the action afterwards and gives
// its result as the exit code. A new command: a new file here, its add_...() declared below and called in
// main.cpp.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>

namespace lastegg::cli {

/// What scripts rely on.
enum ExitCode : int {
  k_done = 0,
  k_answer_is_no = 1,  ///< the question was answered, and the answer is no: not lethal, not clear
  k_bad_input = 2,
  k_internal = 3
};

using Action = std::function<int()>;

void add_ask(CLI::App& app, Action& action);
void add_questions(CLI::App& app, Action& action);
void add_schema(CLI::App& app, Action& action);
void add_types(CLI::App& app, Action& action);
void add_docs(CLI::App& app, Action& action);
void add_job(CLI::App& app, Action& action);
void add_serve(CLI::App& app, Action& action);
void add_foldtest(CLI::App& app, Action& action);
void add_plan(CLI::App& app, Action& action);
void add_method(CLI::App& app, Action& action);
void add_visit(CLI::App& app, Action& action);
void add_practice(CLI::App& app, Action& action);
void add_demo(CLI::App& app, Action& action);
void add_dose(CLI::App& app, Action& action);
void add_follow_up(CLI::App& app, Action& action);
void add_treated(CLI::App& app, Action& action);
void add_report(CLI::App& app, Action& action);

}  // namespace lastegg::cli
