// lastegg report JOB [--html OUT] [--pdf OUT] [--paper A4|Letter] [--temperature "68 F"] [--treated-on DAY]
// [--json]
#include <unistd.h>

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <memory>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "apps/cli/job_answers.h"
#include "apps/cli/print_pdf.h"
#include "apps/cli/report_page.h"
#include "apps/store/durable_file.h"
#include "engine/ask.h"
#include "physics/quantities/unit_text.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

constexpr std::size_t k_most_page_bytes = std::size_t{1} << 26;

struct ReportCommand {
  std::string file, html, pdf, paper, temperature, treated_on, on, chromium, page;
  int samples = 1024;
  bool as_json = false;
};

// The last day on which the record says that something was treated; empty if none.
std::string treated_on(const ReportCommand& command, const Json& state) {
  if (!command.treated_on.empty()) return command.treated_on;
  std::string last;
  for (const Json& visit : state.at("visits")) {
    if (visit.value("purpose", "") != "inspect") last = std::max(last, visit.value("on", ""));
  }
  return last;
}

Result<Json> report_answer(const ReportCommand& command, const Json& folded) {
  const auto treated = treated_answer(folded, command.samples);
  if (!treated) return refuse(treated.error());
  Json request{{"state", folded.at("state")},
               {"treated", Json::array({*treated})},
               {"conflicts", folded.at("conflicts")},
               {"state_hash", folded.at("state_hash")},
               {"event_count", folded.at("event_count")}};
  if (!command.on.empty()) request["on"] = command.on;
  const std::string day = treated_on(command, folded.at("state"));
  if (!command.temperature.empty()) {
    const auto celsius = parse_quantity(command.temperature, Unit::celsius);
    if (!celsius) return refuse(celsius.error());
    if (day.empty())
      return refuse({ErrorKind::bad_input,
                     say("no visit of the record says when it was treated; give --treated-on"),
                     "--treated-on", "", "", ""});
    const auto follow_up = answer_to("follow_up", {{"temperature_celsius", *celsius}, {"treated_on", day}});
    if (!follow_up) return refuse(follow_up.error());
    request["follow_up"] = *follow_up;
  }
  return answer_to("report", request);
}

// What the page draws: the document, the furniture behind its pictures, units and paper.
Result<Json> page_data(const ReportCommand& command, const Json& report, const Json& state) {
  Json settings = state.at("settings");
  if (!settings.is_object()) settings = Json::object();
  const std::string length = settings.value("length", "in");
  Json data{{"report", report},
            {"furniture", Json::object()},
            {"units", {{"temperature", settings.value("temperature", "F")}, {"length", length}}},
            {"paper", !command.paper.empty() ? command.paper
                      : length == "in"       ? "Letter"
                                             : "A4"}};
  for (const Json& item : report.at("items")) {
    const auto furniture = answer_to("furniture", item.at("furniture"));
    if (furniture)
      data["furniture"][item.at("id").get<std::string>()] = *furniture;  // else the table speaks alone
  }
  return data;
}

void print(const Json& report, const Json& units) {
  std::cout << report["title"]["text"].get<std::string>() << "\n";
  for (const Json& block : report["blocks"]) {
    std::cout << "\n" << block["heading"].get<std::string>() << "\n";
    for (const char* part : {"lines", "rows"})
      for (const Json& line : block[part])
        std::cout << (part[0] == 'r' ? "  - " : "  ") << line["text"].get<std::string>() << "\n";
  }
  std::cout << say("\nRecord {}, {} facts, engine {}, {} samples. Units of the job: {}.\n",
                   report["basis"]["state_hash"].get<std::string>().substr(0, 12),
                   report["basis"]["event_count"].get<int>(), report["basis"]["engine"].get<std::string>(),
                   report["basis"]["samples"].get<int>(), units.dump());
}

int run(const ReportCommand& command) {
  std::string chromium;
  if (!command.pdf.empty()) {  // said before anything is computed
    const auto found = find_chromium(command.chromium);
    if (!found) return report(found.error());
    chromium = *found;
  }
  const bool wants_page = !command.pdf.empty() || !command.html.empty();
  std::string page;
  if (wants_page) {
    const std::filesystem::path path =
        command.page.empty() ? built_report_page() : std::filesystem::path(command.page);
    const auto text = store::bytes_of_file(path, k_most_page_bytes);
    if (!text)
      return report(
          {ErrorKind::not_found,
           say("the report page is not at {}; build the web page first (tools/build_web.sh)", path.string()),
           "", path.string(), "", ""});
    page = *text;
  }
  const auto folded = folded_job(command.file);
  if (!folded) return report(folded.error());
  const auto answer = report_answer(command, *folded);
  if (!answer) return report(answer.error());
  const auto data = page_data(command, *answer, folded->at("state"));
  if (!data) return report(data.error());
  if (command.as_json)
    std::cout << dumped(*answer, isatty(STDOUT_FILENO) != 0 ? 2 : -1) << "\n";
  else if (!wants_page)
    print(*answer, data->at("units"));
  if (!wants_page) return k_done;

  const auto filled = report_page(page, *data);
  if (!filled) return report(filled.error());
  std::filesystem::path html = command.html;
  const bool is_kept = !command.html.empty();
  if (!is_kept) html = std::filesystem::path(command.pdf).concat(".html");
  const auto written = store::write_durably(html, *filled);
  if (!written) return report(written.error());
  if (is_kept && !command.as_json)
    std::cout << say("{}: {} KiB, opens without a network\n", html.string(), filled->size() / 1024);
  if (command.pdf.empty()) return k_done;
  const auto printed = print_pdf(chromium, html, command.pdf);
  std::error_code failure;
  if (!is_kept) std::filesystem::remove(html, failure);
  if (!printed) return report(printed.error());
  if (!command.as_json)
    std::cout << fmt::format("{}: {} KiB, {}\n", command.pdf,
                             std::filesystem::file_size(command.pdf, failure) / 1024,
                             data->at("paper").get<std::string>());
  return k_done;
}

}  // namespace

void add_report(CLI::App& app, Action& action) {
  const auto options = std::make_shared<ReportCommand>();
  CLI::App* command = app.add_subcommand(
      "report", in_language("The client report of a job: in words, as a page, or as a PDF"));
  command->add_option("job", options->file, in_language("A .lastegg file or its events (.ndjson)"))
      ->required();
  command->add_option("--html", options->html, in_language("Write it as one page that needs no network"));
  command->add_option("--pdf", options->pdf, in_language("Print it as a tagged PDF by a headless Chromium"));
  command
      ->add_option("--paper", options->paper,
                   in_language("A4 or Letter; by the units of the job if left out"))
      ->check(CLI::IsMember({"A4", "Letter"}));
  command->add_option("--temperature", options->temperature,
                      in_language("Of the home until the return visit: \"68 F\"; adds its dates"));
  command->add_option("--treated-on", options->treated_on,
                      in_language("Day of the treatment; that of the last visit if left out"));
  command->add_option("--on", options->on, in_language("Day that stands on the report, 2026-03-02"));
  command->add_option("--samples", options->samples, in_language("Size of the ensemble; verdicts use 1024"))
      ->check(CLI::Range(64, 4096));
  command->add_option("--chromium", options->chromium, in_language("The program that prints"));
  command->add_option("--page", options->page,
                      in_language("The report page (default: apps/web/dist/report.html of this checkout)"));
  command->add_flag("--json", options->as_json, in_language("The answer as JSON"));
  command->callback([options, &action] { action = [options] { return run(*options); }; });
}

}  // namespace lastegg::cli
