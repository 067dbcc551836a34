#include "apps/cli/print_pdf.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fmt/format.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <sstream>
#include <thread>
#include <vector>

#include "apps/store/durable_file.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

namespace fs = std::filesystem;

constexpr std::chrono::seconds k_patience{90};
constexpr std::size_t k_most_bytes = std::size_t{1} << 28;

bool is_program(const fs::path& path) {
  std::error_code failure;
  return fs::is_regular_file(path, failure) && access(path.c_str(), X_OK) == 0;
}

// Runs a program without a terminal; its exit code, or none when it was stopped for want of patience.
Result<int> run(const std::vector<std::string>& words) {
  std::vector<char*> arguments;
  for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t silent;
  posix_spawn_file_actions_init(&silent);
  for (const int stream : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
    posix_spawn_file_actions_addopen(&silent, stream, "/dev/null", O_RDWR, 0);
  posix_spawnattr_t attributes;
  posix_spawnattr_init(&attributes);
  posix_spawnattr_setflags(&attributes, POSIX_SPAWN_SETPGROUP);  // so that its children end with it
  pid_t child = 0;
  const int failed = posix_spawn(&child, words[0].c_str(), &silent, &attributes, arguments.data(), environ);
  posix_spawnattr_destroy(&attributes);
  posix_spawn_file_actions_destroy(&silent);
  if (failed != 0)
    return refuse({ErrorKind::internal, say("{} could not be started", words[0]), "", "", "", ""});
  const auto end = std::chrono::steady_clock::now() + k_patience;
  int status = 0;
  while (waitpid(child, &status, WNOHANG) == 0) {
    if (std::chrono::steady_clock::now() > end) {
      kill(-child, SIGKILL);
      waitpid(child, &status, 0);
      return refuse({ErrorKind::internal,
                     say("{} took longer than {} s to print and was stopped", words[0], k_patience.count()),
                     "", "", "", ""});
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
  }
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128;
}

}  // namespace

Result<std::string> find_chromium(const std::string& asked) {
  const char* named = std::getenv("LASTEGG_CHROMIUM");
  const std::string wanted = !asked.empty() ? asked : named != nullptr ? named : "";
  if (!wanted.empty()) {
    if (is_program(wanted)) return wanted;
    return refuse({ErrorKind::not_found, say("{} is no program; name a Chromium that prints", wanted), "",
                   wanted, "", ""});
  }
  const char* path = std::getenv("PATH");
  for (const char* name : {"chromium", "chromium-browser"}) {
    std::stringstream folders(path != nullptr ? path : "/usr/bin");
    for (std::string folder; std::getline(folders, folder, ':');) {
      if (is_program(fs::path(folder) / name)) return (fs::path(folder) / name).string();
    }
  }
  return refuse(
      {ErrorKind::not_found,
       say("no Chromium was found to print with; install the package chromium, or name one with --chromium. "
           "--html needs none, and any browser prints what it writes"),
       "", "chromium", "", ""});
}

Result<void> print_pdf(const std::string& chromium, const fs::path& html, const fs::path& pdf) {
  std::error_code failure;
  std::string pattern = (fs::temp_directory_path(failure) / "lastegg-print-XXXXXX").string();
  if (mkdtemp(pattern.data()) == nullptr)
    return refuse({ErrorKind::internal, say("no folder could be made for the print"), "", "", "", ""});
  const fs::path folder = pattern, printed = folder / "report.pdf";
  std::vector<std::string> words{chromium,
                                 "--headless",
                                 "--disable-gpu",
                                 "--no-first-run",
                                 "--disable-background-networking",
                                 "--disable-component-update",
                                 "--disable-sync",
                                 "--no-pdf-header-footer",
                                 "--generate-pdf-document-outline",
                                 "--user-data-dir=" + (folder / "profile").string(),
                                 "--print-to-pdf=" + printed.string()};
  if (geteuid() == 0) words.emplace_back("--no-sandbox");  // Chromium refuses its sandbox to root
  words.push_back("file://" + fs::absolute(html).string());
  const auto code = run(words);
  Result<void> done;
  if (!code) {
    done = refuse(code.error());
  } else if (const auto bytes = store::bytes_of_file(printed, k_most_bytes); !bytes || *code != 0) {
    done = refuse({ErrorKind::internal, say("{} ended with code {} and printed nothing", chromium, *code), "",
                   "", "", ""});
  } else if (const auto written = store::write_durably(pdf, *bytes); !written) {
    done = refuse(written.error());
  }
  fs::remove_all(folder, failure);
  return done;
}

}  // namespace lastegg::cli
