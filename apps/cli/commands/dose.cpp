// lastegg dose LOG.csv --stage egg [--exposure air|steam] [--uncertainty "1 C"] [--longest-gap "10 min"]
// [--json]
#include <unistd.h>

#include <fmt/format.h>

#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "apps/cli/spoken.h"
#include "apps/cli/temperature_log.h"
#include "engine/ask.h"
#include "engine/json.h"
#include "physics/quantities/unit_text.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

struct DoseCommand {
  std::string file;
  std::string stage;
  std::string exposure = "air";
  std::string uncertainty;
  std::string longest_gap;
  bool json = false;
};

// "/series/celsius/3" becomes the line on which that reading stands.
void name_the_line(Json& error, const TemperatureLog& log) {
  const std::string where = error.value("where", "");
  for (const std::string list : {"/series/seconds/", "/series/celsius/"}) {
    if (where.rfind(list, 0) != 0) continue;
    const auto i = static_cast<std::size_t>(std::strtoul(where.c_str() + list.size(), nullptr, 10));
    if (i >= log.lines.size()) return;
    error["message"] = say("line {}: {}", log.lines[i], error.value("message", ""));
    error["where"] = fmt::format("line {}", log.lines[i]);
  }
}

std::string said_verdict(const std::string& word) {
  return spoken(word == "not_proven" ? "not proven" : word);
}

void print_for_people(const Json& answer, const std::string& stage, std::size_t readings) {
  const auto number = [&](const char* key) { return answer[key].get<double>(); };
  std::cout << fmt::format("{}: {}\n", spoken(stage), said_verdict(answer["verdict"].get<std::string>()));
  std::cout << "  " << answer["verdict_reason"]["text"].get<std::string>() << "\n\n";
  const auto row = [](const std::string& name, const std::string& value) {
    std::cout << fmt::format("  {:<28}{}\n", name, value);
  };
  row(say("readings"), fmt::format("{}", readings));
  row(say("highest"), say("{:.1f} C ({:.1f} F), uncertainty taken off", number("highest_celsius"),
                          1.8 * number("highest_celsius") + 32));
  row(say("dose"), say("{:.4g} min at {:g} C", number("equivalent_minutes"), number("reference_celsius")));
  row(say("kills 99 %"), fmt::format("{:g} min", number("lt99_minutes")));
  row(say("times that dose"),
      say("{:.3g} ({:g} asked for)", number("ratio_to_lt99"), number("required_ratio")));
  for (const Json& at : answer["by_z"]) {
    row(say("  with z = {:g} K", at["z_kelvin"].get<double>()),
        fmt::format("{:.4g} min", at["equivalent_minutes"].get<double>()));
  }
  if (answer.contains("ratio_engorged"))
    row(say("fed adult, times its dose"), say("{:.3g} (shown apart)", number("ratio_engorged")));
  if (answer.contains("ramp_kelvin_per_minute"))
    row(say("rise"), fmt::format("{:.2g} C/min", number("ramp_kelvin_per_minute")));
  row(say("kill probability"), fmt::format("{:.2f}", number("kill_probability")));
  for (const Json& warning : answer["warnings"]) std::cout << "\n  ! " << warning["text"].get<std::string>();
  if (!answer["warnings"].empty()) std::cout << "\n";
}

Result<Json> request_of(const DoseCommand& command, const TemperatureLog& log) {
  Json request = {{"stage", command.stage},
                  {"exposure", command.exposure},
                  {"series", {{"seconds", log.seconds}, {"celsius", log.celsius}}}};
  if (!command.uncertainty.empty()) {
    const auto kelvin = temperature_difference_kelvin(command.uncertainty);
    if (!kelvin) return refuse(kelvin.error());
    request["uncertainty_celsius"] = *kelvin;
  }
  if (!command.longest_gap.empty()) {
    const auto seconds = parse_quantity(command.longest_gap, Unit::second);
    if (!seconds) return refuse(seconds.error());
    request["longest_gap_seconds"] = *seconds;
  }
  return request;
}

int run(const DoseCommand& command) {
  const auto text = text_of_file(command.file);
  if (!text) return report(text.error());
  const auto log = read_temperature_log(*text);
  if (!log) return report(log.error());
  const auto request = request_of(command, *log);
  if (!request) return report(request.error());
  const AskOutcome outcome = ask("dose", dumped(*request));
  Json answer = Json::parse(outcome.text, nullptr, false);
  if (!outcome.ok) {
    name_the_line(answer["error"], *log);
    std::cerr << dumped(answer) << "\n";
    return answer["error"].value("kind", "internal") == "internal" ? k_internal : k_bad_input;
  }
  if (command.json)
    std::cout << (isatty(STDOUT_FILENO) != 0 ? dumped(answer, 2) : outcome.text) << "\n";
  else
    print_for_people(answer, command.stage, log->seconds.size());
  return answer["verdict"] == "lethal" ? k_done : k_answer_is_no;
}

}  // namespace

void add_dose(CLI::App& app, Action& action) {
  const auto options = std::make_shared<DoseCommand>();
  CLI::App* command =
      app.add_subcommand("dose", in_language("What a logger's temperatures did to eggs, nymphs or adults"));
  command
      ->add_option(
          "file", options->file,
          in_language("Table with the columns seconds and celsius (or fahrenheit); - for standard input"))
      ->required();
  command->add_option("--stage", options->stage, in_language("egg, nymph or adult"))
      ->required()
      ->check(CLI::IsMember({"egg", "nymph", "adult"}));
  command->add_option("--exposure", options->exposure, in_language("air (default) or steam"))
      ->check(CLI::IsMember({"air", "steam"}));
  command->add_option("--uncertainty", options->uncertainty,
                      in_language("Of the sensor, taken off every reading: \"1 C\""));
  command->add_option("--longest-gap", options->longest_gap,
                      in_language("Longer holes earn nothing: \"10 min\""));
  command->add_flag("--json", options->json, in_language("Print the answer as JSON"));
  command->callback([options, &action] { action = [options] { return run(*options); }; });
}

}  // namespace lastegg::cli
