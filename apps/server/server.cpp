#include "apps/server/server.h"

#include <atomic>
#include <cerrno>
#include <charconv>
#include <chrono>
#include <cstring>
#include <thread>
#include <utility>

#include <httplib.h>
#include <sys/socket.h>

#include "apps/server/problem.h"
#include "apps/server/web_files.h"
#include "engine/ask.h"
#include "engine/document.h"
#include "words/say.h"

namespace lastegg::server {
namespace {

// Enough for a browser's six connections from each of ten devices; a thread waits for each open connection.
constexpr std::size_t k_worker_threads = 64;
// Seconds; an idle connection delays stop() by as much as the first. (estimate: long enough for a page's next
// request)
constexpr int k_keep_alive_seconds = 1;
constexpr int k_read_seconds = 5;
constexpr int k_write_seconds = 10;
// Connections that may wait to be taken up; the library's five make a burst of clients wait a second each.
constexpr int k_waiting_connections = 128;
// How much of a body that is too large is still read, so that the refusal reaches a client that is still
// sending.
constexpr std::size_t k_drained_bytes = 4 * k_longest_request_bytes;

constexpr const char* k_ask_prefix = "/api/ask/";

// Scripts and WebAssembly only from here, none inline; inline style attributes are what the drawings use.
constexpr const char* k_content_security_policy =
    "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'unsafe-inline'; "
    "img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src "
    "'self'; "
    "object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

Error http_error(ErrorKind kind, std::string message, std::string value = "", std::string limit = "",
                 std::string unit = "") {
  Error error;
  error.kind = kind;
  error.message = std::move(message);
  error.value = std::move(value);
  error.limit = std::move(limit);
  error.unit = std::move(unit);
  return error;
}

// A body of known length goes out through a provider: the HTTP library would otherwise compress it again on
// every request.
void send_bytes(httplib::Response& response, const std::string& bytes, const std::string& media_type) {
  if (bytes.empty()) {
    response.set_content("", media_type);
    return;
  }
  response.set_content_provider(bytes.size(), media_type,
                                [&bytes](std::size_t offset, std::size_t length, httplib::DataSink& sink) {
                                  return sink.write(bytes.data() + offset, length);
                                });
}

void send_problem(httplib::Response& response, const Problem& problem) {
  response.status = problem.status;
  response.set_header("Cache-Control", "no-store");
  response.set_content(problem.text, k_problem_type);
}

void refuse_method(const httplib::Request& request, httplib::Response& response, const char* allowed) {
  response.set_header("Allow", allowed);
  send_problem(response, problem_from_http(405, http_error(ErrorKind::bad_input,
                                                           "the address " + request.path + " takes " +
                                                               allowed + ", not " + request.method,
                                                           request.method, allowed)));
}

void send_web_file(const WebFile& file, const httplib::Request& request, httplib::Response& response) {
  const bool brotli =
      !file.brotli_bytes.empty() && accepts_brotli(request.get_header_value("Accept-Encoding"));
  const std::string tag = brotli ? file.entity_tag + "-br" : file.entity_tag;
  response.set_header("ETag", "\"" + tag + "\"");
  response.set_header("Cache-Control",
                      file.name_has_hash ? "public, max-age=31536000, immutable" : "no-cache");
  if (!file.brotli_bytes.empty()) response.set_header("Vary", "Accept-Encoding");
  if (tag_matches(request.get_header_value("If-None-Match"), tag)) {
    response.status = 304;
    return;
  }
  if (brotli) response.set_header("Content-Encoding", "br");
  send_bytes(response, brotli ? file.brotli_bytes : file.bytes, file.media_type);
}

bool is_json(const std::string& content_type) {
  const std::string media_type = content_type.substr(0, content_type.find(';'));
  return media_type.empty() || media_type.rfind("application/json", 0) == 0;
}

// Reads a body up to the engine's limit. False: too large, or the client went away.
bool read_body(const httplib::ContentReader& read, std::string& body) {
  std::size_t received = 0;
  const bool complete = read([&](const char* bytes, std::size_t length) {
    received += length;
    if (received <= k_longest_request_bytes) body.append(bytes, length);
    return received <= k_drained_bytes;
  });
  return complete && received <= k_longest_request_bytes;
}

void answer_question(const httplib::Request& request, httplib::Response& response,
                     const httplib::ContentReader& read) {
  std::string body;
  if (request.is_multipart_form_data() || !is_json(request.get_header_value("Content-Type"))) {
    if (!request.is_multipart_form_data()) read_body(read, body);
    const std::string type = request.get_header_value("Content-Type");
    send_problem(response,
                 problem_from_http(415, http_error(ErrorKind::bad_input,
                                                   "a question's body is JSON: send it with Content-Type "
                                                   "application/json, not " +
                                                       type,
                                                   type, "application/json")));
    return;
  }
  if (!read_body(read, body)) {
    const std::string limit = std::to_string(k_longest_request_bytes);
    send_problem(response, problem_from_http(
                               413, http_error(ErrorKind::bad_input,
                                               "the body is larger than the limit of " + limit + " bytes",
                                               request.get_header_value("Content-Length"), limit, "bytes")));
    return;
  }
  const AskOutcome outcome = ask(request.path.substr(std::strlen(k_ask_prefix)), body);
  if (!outcome.ok) {
    send_problem(response, problem_from_engine(outcome.text));
    return;
  }
  response.status = 200;
  response.set_header("Cache-Control", "no-store");
  response.set_content(outcome.text, "application/json");
}

}  // namespace

Result<Listen> read_listen(const std::string& text) {
  Listen listen{"127.0.0.1", 0};
  std::string port;
  const std::size_t colon = text.rfind(':');
  if (!text.empty() && text.front() == '[') {
    const std::size_t bracket = text.find(']');
    listen.host = text.substr(1, bracket == std::string::npos ? bracket : bracket - 1);
    if (bracket != std::string::npos && colon != std::string::npos && colon > bracket)
      port = text.substr(colon + 1);
  } else {
    if (colon != 0 && !text.empty()) listen.host = text.substr(0, colon);
    if (colon != std::string::npos) port = text.substr(colon + 1);
  }
  if (port.empty()) return listen;
  const auto [end, failure] = std::from_chars(port.data(), port.data() + port.size(), listen.port);
  if (failure != std::errc() || end != port.data() + port.size() || listen.port < 0 || listen.port > 65535)
    return refuse(http_error(ErrorKind::bad_input,
                             say("a port is a whole number from 0 to 65535, not {}", port), port, "65535"));
  return listen;
}

bool is_loopback(const std::string& host) {
  return host == "localhost" || host == "::1" || host.rfind("127.", 0) == 0;
}

// The library's server, whose queue of waiting connections can be made longer.
class Listener : public httplib::Server {
 public:
  bool widen_queue() { return ::listen(svr_sock_, k_waiting_connections) == 0; }
};

struct Server::Parts {
  Settings settings;
  WebFiles files;
  Listener http;
  int port = 0;
  std::atomic<bool> stopping{false};
  std::atomic<bool> inside_run{false};

  void get(const httplib::Request& request, httplib::Response& response) const;
  void set_up();
};

void Server::Parts::get(const httplib::Request& request, httplib::Response& response) const {
  if (request.path == "/api/health") {
    response.set_header("Cache-Control", "no-store");
    response.set_content(
        dumped({{"status", "ok"}, {"engine", LASTEGG_VERSION}, {"questions", questions().size()}}),
        "application/json");
    return;
  }
  if (request.path.rfind(k_ask_prefix, 0) == 0) {
    refuse_method(request, response, "POST");
    return;
  }
  const bool is_page = request.path.rfind("/api/", 0) != 0;
  const WebFile* file = is_page ? web_file_for(files, request.path) : nullptr;
  if (file != nullptr) {
    send_web_file(*file, request, response);
    return;
  }
  const std::string reason = files.empty() && is_page
                                 ? "the web app is not served here: it has not been built"
                                 : "there is nothing at " + request.path;
  send_problem(response, problem_from_http(404, http_error(ErrorKind::not_found, reason, request.path)));
}

void Server::Parts::set_up() {
  // The library's default would share a port with another server and hand out its files.
  http.set_socket_options([](socket_t socket) {
    const int yes = 1;
    setsockopt(socket, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof yes);
  });
  http.new_task_queue = [] { return new httplib::ThreadPool(k_worker_threads); };
  http.set_keep_alive_timeout(k_keep_alive_seconds);
  http.set_keep_alive_max_count(1000);
  http.set_read_timeout(k_read_seconds);
  http.set_write_timeout(k_write_seconds);
  http.set_tcp_nodelay(true);
  http.set_payload_max_length(k_longest_request_bytes);
  http.set_default_headers({{"Content-Security-Policy", k_content_security_policy},
                            {"X-Content-Type-Options", "nosniff"},
                            {"Referrer-Policy", "no-referrer"},
                            {"Cross-Origin-Opener-Policy", "same-origin"},
                            {"Cross-Origin-Resource-Policy", "same-origin"}});
  http.Get(".*",
           [this](const httplib::Request& request, httplib::Response& response) { get(request, response); });
  http.Post(".*", [](const httplib::Request& request, httplib::Response& response,
                     const httplib::ContentReader& read) {
    if (request.path.rfind(k_ask_prefix, 0) == 0)
      answer_question(request, response, read);
    else
      refuse_method(request, response, "GET");
  });
  const auto no_such_method = [](const httplib::Request& request, httplib::Response& response,
                                 const httplib::ContentReader&) {
    refuse_method(request, response, "GET, POST");
  };
  http.Put(".*", no_such_method);
  http.Patch(".*", no_such_method);
  http.Delete(".*", no_such_method);
  // Refusals that arise in the HTTP library itself arrive here without a body.
  const httplib::Server::HandlerWithResponse on_error = [](const httplib::Request& request,
                                                           httplib::Response& response) {
    if (response.body.empty() && response.status >= 400) {
      const Error error = http_error(ErrorKind::bad_input, "the request could not be read", request.path);
      send_problem(response, problem_from_http(response.status, error));
    }
    return httplib::Server::HandlerResponse::Handled;
  };
  http.set_error_handler(on_error);
}

Server::Server(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}

Server::~Server() {
  stop();
}

Result<std::unique_ptr<Server>> Server::bind(Settings settings) {
  auto parts = std::make_unique<Parts>();
  parts->settings = std::move(settings);
  if (!parts->settings.web_folder.empty()) {
    Result<WebFiles> files = read_web_files(parts->settings.web_folder);
    if (!files) return refuse(files.error());
    parts->files = std::move(*files);
  }
  parts->set_up();
  const std::string& host = parts->settings.host;
  const int wanted = parts->settings.port;
  errno = 0;
  bool bound = wanted == 0 ? (parts->port = parts->http.bind_to_any_port(host)) > 0
                           : parts->http.bind_to_port(host, wanted);
  bound = bound && parts->http.widen_queue();
  if (!bound) {
    const int reason = errno;
    const std::string why = reason == EADDRINUSE ? say("another program already listens there")
                            : reason != 0        ? std::string(std::strerror(reason))
                                                 : say("the address is not one of this machine's");
    return refuse(http_error(ErrorKind::bad_input, say("cannot listen on {} port {}: {}", host, wanted, why),
                             host + ":" + std::to_string(wanted)));
  }
  if (wanted != 0) parts->port = wanted;
  return std::unique_ptr<Server>(new Server(std::move(parts)));
}

int Server::port() const {
  return parts_->port;
}

std::string Server::address() const {
  const std::string& host = parts_->settings.host;
  const bool bare_ipv6 = host.find(':') != std::string::npos;
  return "http://" + (bare_ipv6 ? "[" + host + "]" : host) + ":" + std::to_string(parts_->port) + "/";
}

void Server::run() {
  parts_->inside_run = true;
  if (!parts_->stopping) parts_->http.listen_after_bind();
  parts_->inside_run = false;
}

void Server::stop() {
  if (parts_->stopping.exchange(true)) return;
  // The library forgets a stop that comes before it listens.
  while (parts_->inside_run && !parts_->http.is_running())
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
  parts_->http.stop();
}

}  // namespace lastegg::server
