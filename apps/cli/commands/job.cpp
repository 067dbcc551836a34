// lastegg job show|check|merge|pack|unpack: jobs as files.
#include <fmt/format.h>

#include <filesystem>
#include <iostream>
#include <memory>
#include <vector>

#include "apps/cli/commands/command.h"
#include "apps/cli/commands/job_text.h"
#include "apps/cli/files.h"
#include "apps/store/durable_file.h"
#include "apps/store/job_file.h"
#include "engine/ask.h"
#include "job/record/fold.h"
#include "job/record/sha256.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

namespace fs = std::filesystem;

struct JobOptions {
  std::string file;
  std::vector<std::string> more_files;
  std::string out;
  std::string blobs;
  bool as_json = false;
};

int show(const JobOptions& options) {
  const Result<store::JobFile> job = store::load_job(options.file);
  if (!job) return report(job.error());
  if (!options.as_json) {
    std::cout << job_text(record::fold(job->events));
    return k_done;
  }
  Json request = {{"lines", Json::array()}};
  for (const record::Event& event : job->events.events()) request["lines"].push_back(event.bytes);
  const AskOutcome outcome = ask("fold_events", dumped(request));
  (outcome.ok ? std::cout : std::cerr) << outcome.text << "\n";
  return outcome.ok ? k_done : k_bad_input;
}

// 0: whole, and nothing for a person to settle; 1: whole, but something is open.
int check(const JobOptions& options) {
  const Result<store::JobFile> job = store::load_job(options.file);
  if (!job) return report(job.error());
  const record::Folded folded = record::fold(job->events);
  const std::string attention = attention_text(folded);
  if (options.as_json) {
    std::cout << dumped(Json{{"event_count", folded.event_count},
                             {"state_hash", folded.state_hash},
                             {"blob_count", job->blobs.size()},
                             {"hash_was_promised", job->hash_was_promised},
                             {"nothing_open", attention.empty()}})
              << "\n";
  } else {
    std::cout << (job->hash_was_promised ? say("{} events, {} blobs, state {}, as promised",
                                               folded.event_count, job->blobs.size(), folded.state_hash)
                                         : say("{} events, {} blobs, state {} (no hash was promised)",
                                               folded.event_count, job->blobs.size(), folded.state_hash))
              << "\n"
              << attention;
  }
  return attention.empty() ? k_done : k_answer_is_no;
}

int write_job(const store::JobFile& job, const std::string& path) {
  const Result<std::string> bytes = store::job_file_bytes(job);
  if (!bytes) return report(bytes.error());
  const Result<std::size_t> written = store::write_durably(path, *bytes);
  if (!written) return report(written.error());
  std::cout << say("{}: {} events, {} blobs, state {}\n", path, job.events.size(), job.blobs.size(),
                   job.events.state_hash());
  return k_done;
}

int merge(const JobOptions& options) {
  Result<store::JobFile> all = store::load_job(options.file);
  if (!all) return report(all.error());
  for (const std::string& file : options.more_files) {
    const Result<store::JobFile> next = store::load_job(file);
    if (!next) return report(next.error());
    all = store::merged(*all, *next);
    if (!all) return report(all.error());
  }
  return write_job(*all, options.out);
}

int pack(const JobOptions& options) {
  Result<store::JobFile> job = store::load_job(options.file);
  if (!job) return report(job.error());
  std::error_code problem;
  if (!options.blobs.empty()) {
    for (const auto& entry : fs::directory_iterator(options.blobs, problem)) {
      if (!entry.is_regular_file()) continue;
      const Result<std::string> content =
          store::bytes_of_file(entry.path(), store::JobFileLimits().file_bytes);
      if (!content) return report(content.error());
      job->blobs.emplace(record::sha256_hex(*content), *content);
    }
  }
  if (problem) {
    Error error;
    error.kind = ErrorKind::not_found;
    error.message = say("{} cannot be opened: {}", options.blobs, problem.message());
    error.value = options.blobs;
    return report(error);
  }
  return write_job(*job, options.out);
}

// Only names that the reader has found harmless, and none that is there already.
int unpack(const JobOptions& options) {
  const Result<store::JobFile> job = store::load_job(options.file);
  if (!job) return report(job.error());
  std::vector<std::pair<std::string, std::string>> files = {{"events.ndjson", job->events.ndjson()}};
  for (const auto& [name, content] : job->blobs) files.emplace_back("blobs/" + name, content);
  for (const auto& [name, content] : job->more_entries) files.emplace_back(name, content);
  for (const auto& [name, content] : files) {
    const fs::path path = fs::path(options.out) / name;
    if (fs::exists(fs::symlink_status(path))) {
      Error error;
      error.kind = ErrorKind::bad_input;
      error.message = say("{} is there already; nothing is overwritten", path.string());
      error.value = path.string();
      return report(error);
    }
  }
  for (const auto& [name, content] : files) {
    const fs::path path = fs::path(options.out) / name;
    std::error_code problem;
    fs::create_directories(path.parent_path(), problem);
    const Result<std::size_t> written = store::write_durably(path, content);
    if (!written) return report(written.error());
  }
  std::cout << say("{} files in {}\n", files.size(), options.out);
  return k_done;
}

}  // namespace

void add_job(CLI::App& app, Action& action) {
  CLI::App* job =
      app.add_subcommand("job", in_language("Look at, check, merge, pack and unpack the files of jobs"));
  job->require_subcommand(1);
  const auto options = std::make_shared<JobOptions>();
  const auto sub = [&](const char* name, const std::string& text, int (*run)(const JobOptions&)) {
    CLI::App* command = job->add_subcommand(name, text);
    command
        ->add_option("file", options->file, in_language("A .lastegg file, or a text of events, one a line"))
        ->required();
    command->callback([options, run, &action] { action = [options, run] { return run(*options); }; });
    return command;
  };
  sub("show", in_language("Print what a job holds"), show)
      ->add_flag("--json", options->as_json, in_language("Print the answer of fold_events"));
  sub("check", in_language("Check a file; exit 1 if something in it is open"), check)
      ->add_flag("--json", options->as_json, in_language("Print JSON"));
  CLI::App* merging =
      sub("merge", in_language("Write everything that any of several files of one job holds"), merge);
  merging->add_option("files", options->more_files, in_language("The other files"))->required();
  merging->add_option("-o,--out", options->out, in_language("The file to write"))->required();
  CLI::App* packing = sub("pack", in_language("Make a .lastegg file from events"), pack);
  packing->add_option("--blobs", options->blobs, in_language("Folder of photographs and logs to take along"));
  packing->add_option("-o,--out", options->out, in_language("The file to write"))->required();
  sub("unpack", in_language("Write the contents of a .lastegg file into a folder"), unpack)
      ->add_option("-o,--out", options->out, in_language("The folder"))
      ->required();
}

}  // namespace lastegg::cli
