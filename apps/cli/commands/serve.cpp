// lastegg serve [--listen HOST:PORT] [--web DIR] [--demo] [--open]: the local web server.
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <future>
#include <iostream>
#include <memory>
#include <thread>

#include "apps/cli/commands/command.h"
#include "apps/cli/files.h"
#include "apps/server/server.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

// Idle connections end within a second; a long answer that is still being computed is given up after this.
constexpr std::chrono::milliseconds k_patience_at_the_end{1800};

struct ServeOptions {
  std::string listen = "127.0.0.1:0";
  std::string web;
  bool demo = false;
  bool open = false;
};

// Where the built page lies, seen from the command: beside the build folder of a checkout.
std::filesystem::path default_web_folder() {
  std::error_code failure;
  const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", failure);
  const std::filesystem::path web =
      program.parent_path().parent_path().parent_path() / "apps" / "web" / "dist";
  return std::filesystem::exists(web / "index.html", failure) ? web : std::filesystem::path();
}

bool has_display() {
  return std::getenv("DISPLAY") != nullptr || std::getenv("WAYLAND_DISPLAY") != nullptr;
}

// A browser that does not open is no failure: the address has been printed. Its messages are not ours to
// show.
void open_browser(std::string address) {
  std::string program = "xdg-open";
  char* const words[] = {program.data(), address.data(), nullptr};
  posix_spawn_file_actions_t silent;
  posix_spawn_file_actions_init(&silent);
  posix_spawn_file_actions_addopen(&silent, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
  posix_spawn_file_actions_addopen(&silent, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
  posix_spawnattr_t attributes;
  posix_spawnattr_init(&attributes);
  sigset_t none;
  sigemptyset(&none);
  posix_spawnattr_setsigmask(&attributes, &none);
  posix_spawnattr_setflags(&attributes, POSIX_SPAWN_SETSIGMASK);
  pid_t child = 0;
  if (posix_spawnp(&child, words[0], &silent, &attributes, words, environ) == 0)
    std::thread([child] { waitpid(child, nullptr, 0); }).detach();
  posix_spawnattr_destroy(&attributes);
  posix_spawn_file_actions_destroy(&silent);
}

int serve(const ServeOptions& options) {
  const Result<server::Listen> listen = server::read_listen(options.listen);
  if (!listen) return report(listen.error());
  server::Settings settings;
  settings.host = listen->host;
  settings.port = listen->port;
  settings.web_folder = options.web.empty() ? default_web_folder() : std::filesystem::path(options.web);
  const bool has_page = !settings.web_folder.empty();

  // Blocked in every thread, so that they wait for sigwait() below instead of ending the program anywhere.
  sigset_t ends;
  sigemptyset(&ends);
  sigaddset(&ends, SIGINT);
  sigaddset(&ends, SIGTERM);
  sigaddset(&ends, SIGHUP);
  pthread_sigmask(SIG_BLOCK, &ends, nullptr);
  std::signal(SIGPIPE, SIG_IGN);

  Result<std::unique_ptr<server::Server>> bound = server::Server::bind(std::move(settings));
  if (!bound) return report(bound.error());
  server::Server& server = **bound;
  std::promise<void> ended;
  std::thread runner([&] {
    server.run();
    ended.set_value();
    kill(getpid(), SIGTERM);  // wakes the wait below if the server ends of itself
  });

  const std::string address = server.address() + (options.demo ? "?demo" : "");
  std::cout << say("Last Egg is at {}", address) << "\n";
  if (!has_page)
    std::cout << say("The page has not been built; questions are answered at {}api/ask/.", address) << "\n";
  if (!server::is_loopback(listen->host))
    std::cout << say(
        "Caution: anybody who reaches this machine on the network can open it; there is no password.\n");
  std::cout << say("Ctrl-C stops it.\n") << std::flush;
  if (options.open && has_display()) open_browser(address);

  int signal = 0;
  sigwait(&ends, &signal);
  server.stop();
  if (ended.get_future().wait_for(k_patience_at_the_end) == std::future_status::ready) {
    runner.join();
    std::cout << say("Stopped.\n");
    return k_done;
  }
  std::cout << say("Stopped; an unfinished answer was given up.\n") << std::flush;
  std::_Exit(k_done);  // nothing is stored here, so nothing is lost
}

}  // namespace

void add_serve(CLI::App& app, Action& action) {
  const auto options = std::make_shared<ServeOptions>();
  CLI::App* command =
      app.add_subcommand("serve", in_language("Serve the page and the questions to browsers"));
  command->add_option("--listen", options->listen, in_language("HOST:PORT; port 0 takes any free one"))
      ->capture_default_str();
  command->add_option("--web", options->web,
                      in_language("Folder of the built page (default: apps/web/dist of this checkout)"));
  command->add_flag("--demo", options->demo, in_language("The address opens the invented demo job"));
  command->add_flag("--open", options->open, in_language("Open a browser, where there is a display"));
  command->callback([options, &action] { action = [options] { return serve(*options); }; });
}

}  // namespace lastegg::cli
