// lastegg foldtest FILE: readings of a thermometer in a fold, as a table or a request, to a verdict and a
// band.
#include <fmt/format.h>

#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "apps/cli/fold_test_table.h"
#include "apps/cli/spoken.h"
#include "engine/ask.h"
#include "engine/document.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

struct FoldTestOptions {
  std::string file;
  std::string machine = "machine", head = "head", head_length, towel, start, elevation, probe, dip, covering,
              earlier;
  int samples = 1024;
  bool as_json = false;
};

Result<Json> request_of(const FoldTestOptions& options) {
  const Result<std::string> text = text_of_file(options.file);
  if (!text) return refuse(text.error());
  const auto first = text->find_first_not_of(" \t\r\n");
  if (first != std::string::npos && (*text)[first] == '{') return parse_document(*text);
  Result<Json> request = read_fold_test_table(*text);
  if (!request) return request;
  Json& out = *request;
  out["machine"] = options.machine;
  out["head"] = options.head;
  if (!options.head_length.empty())
    out["head"] = {{"name", options.head}, {"length_metres", options.head_length}};
  if (!options.towel.empty()) out["towel"] = options.towel;
  if (!options.start.empty()) out["start_celsius"] = options.start;
  if (!options.elevation.empty()) out["elevation_metres"] = options.elevation;
  if (!options.probe.empty()) out["probe"] = {{"time_constant_seconds", options.probe}};
  if (!options.dip.empty()) out["probe"] = {{"dip", {{"seconds_to_90", options.dip}}}};
  if (!options.covering.empty()) out["covering"] = options.covering;
  out["samples"] = options.samples;
  return request;
}

// Puts the earlier test beside the request: an answer of fold_test, its calibration, or a request.
Result<Json> with_earlier(Json request, const std::string& file) {
  const Result<std::string> text = text_of_file(file);
  if (!text) return refuse(text.error());
  Result<Json> earlier = parse_document(*text);
  if (!earlier) return earlier;
  request["earlier"] = earlier->contains("calibration") ? earlier->at("calibration") : *earlier;
  return request;
}

void print_reading_remarks(const Json& answer) {
  for (const Json& one : answer["contradictions"]) {
    std::cout << say("\nContradiction: {}.\n  {}.\n", one["text"].get<std::string>(),
                     one["advice"].get<std::string>());
  }
  if (answer.contains("drift")) {
    const Json& drift = answer["drift"];
    std::cout << say("\nSince the last test: {}. {}.\n  {}.\n", spoken(drift["verdict"].get<std::string>()),
                     drift["text"].get<std::string>(), drift["advice"].get<std::string>());
  }
  if (answer.contains("probe"))
    std::cout << fmt::format("\n{}.\n", answer["probe"]["text"].get<std::string>());
}

void print(const Json& answer) {
  std::cout << say("Verdict: {}. {}.\n", spoken(answer["verdict"].get<std::string>()),
                   answer["verdict_reason"]["text"].get<std::string>());
  std::cout << say("Practice: {}. {}.\n\n", spoken(answer["practice"]["reached"].get<std::string>()),
                   answer["practice"]["text"].get<std::string>());
  for (const Json& sentence : answer["words"]) std::cout << sentence.get<std::string>() << "\n";
  std::cout << say("\n  pace          layers   fold (5 %, half, 95 %)    kills in\n");
  for (const Json& at : answer["fold_celsius_at"]) {
    const Json& q = at["quantiles"];
    std::cout << say(
        "  {:5.1f} mm/s  {:>6}   {:5.1f}  {:5.1f}  {:5.1f} C      {:3.0f} of 100 cases{}\n",
        1e3 * at["pace_metres_per_second"].get<double>(), at["layers"].get<int>(), q["p05"].get<double>(),
        q["p50"].get<double>(), q["p95"].get<double>(), 100 * at["lethal_share"].get<double>(),
        at.contains("covering") ? say("  real edge, {}", at["covering"].get<std::string>()) : "");
  }
  for (const Json& reading : answer["readings"]) {
    if (reading.contains("remark")) {
      std::cout << say("Reading {} {}\n", reading["index"].get<int>() + 1,
                       reading["remark"].get<std::string>());
    }
  }
  print_reading_remarks(answer);
  std::cout << say("\nWould tell most next: {}.\n", answer["next_reading"]["text"].get<std::string>());
  for (const Json& warning : answer["warnings"])
    std::cout << say("Note: {}.\n", warning["text"].get<std::string>());
}

int fold_test(const FoldTestOptions& options) {
  Result<Json> request = request_of(options);
  if (request && !options.earlier.empty()) request = with_earlier(*request, options.earlier);
  if (!request) return report(request.error());
  const AskOutcome outcome = ask("fold_test", dumped(*request));
  const Json answer = Json::parse(outcome.text, nullptr, false);
  if (!outcome.ok) {
    std::cerr << outcome.text << "\n";
    return answer["error"].value("kind", "internal") == "internal" ? k_internal : k_bad_input;
  }
  if (options.as_json)
    std::cout << outcome.text << "\n";
  else
    print(answer);
  return answer["verdict"] == "lethal" ? k_done : k_answer_is_no;
}

}  // namespace

void add_foldtest(CLI::App& app, Action& action) {
  const auto options = std::make_shared<FoldTestOptions>();
  CLI::App* command =
      app.add_subcommand("foldtest", in_language("Say what a thermometer in a fold says about your steamer"));
  command
      ->add_option(
          "file", options->file,
          in_language(
              "Table with the columns pace or distance and seconds, layers, peak, towel; kind (pass, "
              "stationary, "
              "coupon, under_real_edge), hold (seconds at rest), covering (of a real edge); or a request of "
              "fold_test; - for standard input"))
      ->required();
  command->add_option("--machine", options->machine, in_language("Name of the machine"));
  command->add_option("--head", options->head, in_language("Name of the head"));
  command->add_option("--head-length", options->head_length,
                      in_language("Contact length along the travel, as \"80 mm\""));
  command->add_option("--towel", options->towel, in_language("none, wrapped or laid"));
  command->add_option("--start", options->start, in_language("Temperature of the fold before, as \"20 C\""));
  command->add_option("--elevation", options->elevation, in_language("Height above sea level, as \"500 m\""));
  command->add_option("--probe", options->probe, in_language("Time constant of the probe, as \"0.5 s\""));
  command->add_option(
      "--dip", options->dip,
      in_language("Instead: seconds until 90 % of the way from 20 C to boiling shows, as \"1.5 s\""));
  command->add_option(
      "--earlier", options->earlier,
      in_language("The last test of this machine, head and towel: its answer as JSON, or its request"));
  command->add_option("--covering", options->covering, in_language("What the fold was made of"));
  command->add_option("--samples", options->samples, in_language("Size of the ensemble"));
  command->add_flag("--json", options->as_json, in_language("The whole answer as JSON"));
  command->callback([options, &action] { action = [options] { return fold_test(*options); }; });
}

}  // namespace lastegg::cli
