// The local web server: hands out the built web app and answers the engine's questions over HTTP. It stores
// nothing and computes nothing itself. One Server per address; run() serves from its own pool of threads
// until stop(), which any thread may call.
#pragma once

#include <filesystem>
#include <memory>
#include <string>

#include "physics/quantities/error.h"

namespace lastegg::server {

struct Settings {
  std::string host = "127.0.0.1";    ///< loopback: nobody else on the network reaches it
  int port = 0;                      ///< 0: any free port
  std::filesystem::path web_folder;  ///< the built web app; empty: the page is not served, questions are
};

/// Where a server listens, read from "HOST:PORT", "[IPv6]:PORT", "HOST" or ":PORT".
struct Listen {
  std::string host;
  int port = 0;
};

/// Reads HOST:PORT; a missing host is loopback, a missing port 0 (any free port).
/// Errors:  bad_input for a port outside 0 to 65535 or no number
/// Checked: apps/server/server_unit_test.cpp
Result<Listen> read_listen(const std::string& text);

/// Whether `host` names only this machine: 127.0.0.0/8, ::1, localhost.
/// Checked: apps/server/server_unit_test.cpp
bool is_loopback(const std::string& host);

class Server {
 public:
  /// A server that already holds its port (a taken port is refused, never shared).
  /// Errors:  bad_input when the address cannot be listened on; not_found as read_web_files()
  /// Checked: apps/server/server_unit_test.cpp
  static Result<std::unique_ptr<Server>> bind(Settings settings);

  ~Server();
  Server(const Server&) = delete;
  Server& operator=(const Server&) = delete;

  /// The port in use.
  int port() const;

  /// The address to open, "http://127.0.0.1:40123/".
  std::string address() const;

  /// Serves until stop(). Returns when the open connections are closed; an idle one is closed within a
  /// second.
  void run();

  /// Ends run(); harmless when it is not running.
  void stop();

 private:
  struct Parts;
  explicit Server(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

}  // namespace lastegg::server
