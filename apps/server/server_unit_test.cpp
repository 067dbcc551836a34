#include "apps/server/server.h"

#include <chrono>
#include <future>
#include <thread>

#include <gtest/gtest.h>
#include <httplib.h>

#include "apps/server/web_folder_for_tests.h"
#include "engine/json.h"

namespace lastegg::server {
namespace {

using Clock = std::chrono::steady_clock;

class RunningServer : public testing::Test {
 protected:
  void SetUp() override {
    folder_.write("index.html", "<!doctype html><title>page</title>");
    folder_.write("demo/apartment.ndjson", "{\"id\":\"one\"}\n{\"id\":\"two\"}\n");
    folder_.write("lastegg.wasm", std::string("\0asm", 4));
    folder_.write("assets/app-1a2b.js", "export const answer = 42;");
    folder_.write("assets/app-1a2b.js.br", "packed");
    Settings settings;
    settings.web_folder = folder_.path();
    Result<std::unique_ptr<Server>> server = Server::bind(std::move(settings));
    ASSERT_TRUE(server.has_value()) << server.error().message;
    server_ = std::move(*server);
    runner_ = std::thread([this] { server_->run(); });
  }
  void TearDown() override {
    if (server_) server_->stop();
    if (runner_.joinable()) runner_.join();
  }
  httplib::Client client() const {
    httplib::Client client("127.0.0.1", server_->port());
    client.set_read_timeout(20);
    client.set_write_timeout(20);
    return client;
  }
  static void expect_problem(const httplib::Result& response, int status, const std::string& kind) {
    ASSERT_TRUE(response);
    EXPECT_EQ(response->status, status);
    EXPECT_EQ(response->get_header_value("Content-Type"), "application/problem+json");
    const Json problem = Json::parse(response->body, nullptr, false);
    ASSERT_TRUE(problem.is_object()) << response->body;
    EXPECT_EQ(problem["status"], status);
    EXPECT_EQ(problem["kind"], kind);
    EXPECT_FALSE(problem["message"].get<std::string>().empty());
    EXPECT_EQ(problem["detail"], problem["message"]);
  }

  WebFolder folder_;
  std::unique_ptr<Server> server_;
  std::thread runner_;
};

TEST_F(RunningServer, ServesThePageWithItsSafetyHeaders) {
  for (const char* path : {"/", "/index.html", "/plan/sofa"}) {
    const httplib::Result page = client().Get(path);
    ASSERT_TRUE(page);
    EXPECT_EQ(page->status, 200) << path;
    EXPECT_EQ(page->body, "<!doctype html><title>page</title>");
    EXPECT_EQ(page->get_header_value("Content-Type"), "text/html; charset=utf-8");
    EXPECT_EQ(page->get_header_value("Cache-Control"), "no-cache");
    EXPECT_EQ(page->get_header_value("X-Content-Type-Options"), "nosniff");
    const std::string policy = page->get_header_value("Content-Security-Policy");
    EXPECT_NE(policy.find("script-src 'self' 'wasm-unsafe-eval';"), std::string::npos) << policy;
  }
}

TEST_F(RunningServer, ServesWebAssemblyWithOneMediaType) {
  const httplib::Result engine = client().Get("/lastegg.wasm");
  ASSERT_TRUE(engine);
  EXPECT_EQ(engine->status, 200);
  EXPECT_EQ(engine->get_header_value_count("Content-Type"), 1U);
  EXPECT_EQ(engine->get_header_value("Content-Type"), "application/wasm");
  EXPECT_EQ(engine->body, std::string("\0asm", 4));
}

TEST_F(RunningServer, AnswersNotModifiedForAKnownTag) {
  const httplib::Result first = client().Get("/index.html");
  ASSERT_TRUE(first);
  const std::string tag = first->get_header_value("ETag");
  ASSERT_FALSE(tag.empty());
  const httplib::Result again = client().Get("/index.html", {{"If-None-Match", tag}});
  ASSERT_TRUE(again);
  EXPECT_EQ(again->status, 304);
  EXPECT_TRUE(again->body.empty());
  EXPECT_EQ(again->get_header_value("ETag"), tag);
  const httplib::Result other = client().Get("/index.html", {{"If-None-Match", "\"other\""}});
  ASSERT_TRUE(other);
  EXPECT_EQ(other->status, 200);
}

TEST_F(RunningServer, SendsThePackedFileToClientsThatReadIt) {
  httplib::Client browser = client();
  browser.set_decompress(false);
  const httplib::Result packed = browser.Get("/assets/app-1a2b.js", {{"Accept-Encoding", "gzip, br"}});
  ASSERT_TRUE(packed);
  EXPECT_EQ(packed->body, "packed");
  EXPECT_EQ(packed->get_header_value("Content-Encoding"), "br");
  EXPECT_EQ(packed->get_header_value("Vary"), "Accept-Encoding");
  EXPECT_EQ(packed->get_header_value("Cache-Control"), "public, max-age=31536000, immutable");
  const httplib::Result plain = browser.Get("/assets/app-1a2b.js", {{"Accept-Encoding", "gzip"}});
  ASSERT_TRUE(plain);
  EXPECT_EQ(plain->body, "export const answer = 42;");
  EXPECT_FALSE(plain->has_header("Content-Encoding"));
  EXPECT_NE(plain->get_header_value("ETag"), packed->get_header_value("ETag"));
}

TEST_F(RunningServer, RefusesToLeaveItsFolder) {
  for (const char* path :
       {"/../../etc/passwd.txt", "/%2e%2e/%2e%2e/etc/hosts.txt", "/assets/..%2f..%2fsecret.txt",
        "/assets/../../../etc/ld.so.conf", "//etc/ld.so.conf", "/%00.txt"}) {
    const httplib::Result response = client().Get(path);
    ASSERT_TRUE(response) << path;
    EXPECT_EQ(response->status, 404) << path << " gave " << response->body;
  }
}

TEST_F(RunningServer, SaysNotFoundInProblemDetails) {
  expect_problem(client().Get("/gone.js"), 404, "not_found");
  expect_problem(client().Get("/api/nothing"), 404, "not_found");
  expect_problem(client().Get("/demo.lastegg"), 404, "not_found");
}

TEST_F(RunningServer, SaysWhichMethodAnAddressTakes) {
  const httplib::Result get = client().Get("/api/ask/saturation");
  expect_problem(get, 405, "bad_input");
  EXPECT_EQ(get->get_header_value("Allow"), "POST");
  expect_problem(client().Post("/index.html", "{}", "application/json"), 405, "bad_input");
  expect_problem(client().Put("/index.html", "{}", "application/json"), 405, "bad_input");
  expect_problem(client().Delete("/index.html"), 405, "bad_input");
}

TEST_F(RunningServer, TellsItsHealth) {
  const httplib::Result health = client().Get("/api/health");
  ASSERT_TRUE(health);
  EXPECT_EQ(health->status, 200);
  const Json document = Json::parse(health->body);
  EXPECT_EQ(document["status"], "ok");
  EXPECT_EQ(document["engine"], LASTEGG_VERSION);
  EXPECT_GE(document["questions"].get<int>(), 1);
}

TEST_F(RunningServer, HandsOutTheDemoJob) {
  const httplib::Result demo = client().Get("/demo/apartment.ndjson");
  ASSERT_TRUE(demo);
  EXPECT_EQ(demo->status, 200);
  EXPECT_EQ(demo->body, "{\"id\":\"one\"}\n{\"id\":\"two\"}\n");
  EXPECT_EQ(demo->get_header_value("Content-Type"), "application/x-ndjson");
}

// 373.124 K: boiling point at 101325 Pa, IAPWS-IF97 region 4 (the same figure as in physics/water's tests).
TEST_F(RunningServer, AnswersAQuestion) {
  const httplib::Result answer =
      client().Post("/api/ask/saturation", R"({"pressure_pascal":101325})", "application/json");
  ASSERT_TRUE(answer);
  ASSERT_EQ(answer->status, 200) << answer->body;
  EXPECT_EQ(answer->get_header_value("Content-Type"), "application/json");
  EXPECT_EQ(answer->get_header_value("Cache-Control"), "no-store");
  const Json document = Json::parse(answer->body);
  EXPECT_NEAR(document["temperature_celsius"].get<double>(), 99.974, 0.001);
  EXPECT_EQ(document["engine"], LASTEGG_VERSION);
}

TEST_F(RunningServer, CarriesTheEnginesRefusal) {
  const httplib::Result refusal =
      client().Post("/api/ask/saturation", R"({"temperature_celsius":"hot"})", "application/json");
  expect_problem(refusal, 400, "bad_input");
  EXPECT_EQ(Json::parse(refusal->body)["where"], "/temperature_celsius");
  expect_problem(client().Post("/api/ask/saturation", "{", "application/json"), 400, "bad_input");
  expect_problem(client().Post("/api/ask/saturation", "", "application/json"), 400, "bad_input");
  expect_problem(client().Post("/api/ask/nonsense", "{}", "application/json"), 404, "not_found");
  expect_problem(client().Post("/api/ask/", "{}", "application/json"), 404, "not_found");
}

TEST_F(RunningServer, RefusesBodiesThatAreNotJson) {
  expect_problem(
      client().Post("/api/ask/saturation", "temperature_celsius=100", "application/x-www-form-urlencoded"),
      415, "bad_input");
  const httplib::MultipartFormDataItems form = {{"file", "{}", "request.json", "application/json"}};
  expect_problem(client().Post("/api/ask/saturation", form), 415, "bad_input");
}

TEST_F(RunningServer, RefusesABodyPastItsLimit) {
  const std::size_t limit = 16U * 1024U * 1024U;
  const std::string large(limit + 1, ' ');
  const httplib::Result whole = client().Post("/api/ask/saturation", large, "application/json");
  expect_problem(whole, 413, "bad_input");
  const Json problem = Json::parse(whole->body);
  EXPECT_EQ(problem["limit"], limit);
  EXPECT_EQ(problem["value"], limit + 1);
  EXPECT_EQ(problem["unit"], "bytes");
  const httplib::Result in_pieces = client().Post(
      "/api/ask/saturation",
      [&](std::size_t offset, httplib::DataSink& sink) {
        const std::size_t piece = std::min<std::size_t>(large.size() - offset, 1U << 20U);
        sink.write(large.data() + offset, piece);
        if (offset + piece == large.size()) sink.done();
        return true;
      },
      "application/json");
  expect_problem(in_pieces, 413, "bad_input");
}

TEST_F(RunningServer, AnswersManyClientsAtOnce) {
  std::vector<std::future<std::string>> clients;
  for (int index = 0; index < 60; ++index) {
    clients.push_back(std::async(std::launch::async, [this]() -> std::string {
      for (int question = 0; question < 5; ++question) {
        const httplib::Result answer =
            client().Post("/api/ask/saturation", R"({"temperature_celsius":100})", "application/json");
        if (!answer) return "no answer: " + httplib::to_string(answer.error());
        if (answer->status != 200) return answer->body;
      }
      return "all answered";
    }));
  }
  for (std::future<std::string>& one : clients) EXPECT_EQ(one.get(), "all answered");
}

TEST_F(RunningServer, RefusesAPortThatIsTaken) {
  Settings settings;
  settings.port = server_->port();
  const Result<std::unique_ptr<Server>> second = Server::bind(std::move(settings));
  ASSERT_FALSE(second.has_value());
  EXPECT_NE(second.error().message.find("another program already listens there"), std::string::npos)
      << second.error().message;
}

// The promise is two seconds; an idle kept-alive connection is the slow case.
TEST_F(RunningServer, StopsWhileAClientStaysConnected) {
  httplib::Client idle = client();
  idle.set_keep_alive(true);
  ASSERT_TRUE(idle.Get("/"));
  const Clock::time_point start = Clock::now();
  server_->stop();
  runner_.join();
  EXPECT_LT(Clock::now() - start, std::chrono::seconds(10));
  httplib::Client late = client();
  late.set_connection_timeout(2);
  EXPECT_FALSE(late.Get("/"));
}

TEST(Server, MayBeStoppedBeforeItRuns) {
  Result<std::unique_ptr<Server>> server = Server::bind({});
  ASSERT_TRUE(server.has_value());
  (*server)->stop();
  (*server)->run();
  SUCCEED() << "run() returned";
}

TEST(Server, WithoutAPageStillAnswers) {
  Result<std::unique_ptr<Server>> server = Server::bind({});
  ASSERT_TRUE(server.has_value());
  std::thread runner([&] { (*server)->run(); });
  httplib::Client client("127.0.0.1", (*server)->port());
  const httplib::Result page = client.Get("/");
  (*server)->stop();
  runner.join();
  ASSERT_TRUE(page);
  EXPECT_EQ(page->status, 404);
  EXPECT_NE(page->body.find("has not been built"), std::string::npos) << page->body;
}

TEST(Listen, ReadsHostAndPort) {
  const auto host_and_port = [](const char* text) {
    const Result<Listen> listen = read_listen(text);
    return listen ? listen->host + " " + std::to_string(listen->port) : "refused: " + listen.error().value;
  };
  EXPECT_EQ(host_and_port("127.0.0.1:8123"), "127.0.0.1 8123");
  EXPECT_EQ(host_and_port(":8123"), "127.0.0.1 8123");
  EXPECT_EQ(host_and_port("0.0.0.0"), "0.0.0.0 0");
  EXPECT_EQ(host_and_port("[::1]:9000"), "::1 9000");
  EXPECT_EQ(host_and_port("[::1]"), "::1 0");
  EXPECT_EQ(host_and_port(""), "127.0.0.1 0");
  EXPECT_EQ(host_and_port("localhost:65536"), "refused: 65536");
  EXPECT_EQ(host_and_port("localhost:-1"), "refused: -1");
  EXPECT_EQ(host_and_port("localhost:80x"), "refused: 80x");
}

TEST(Listen, KnowsLoopback) {
  EXPECT_TRUE(is_loopback("127.0.0.1"));
  EXPECT_TRUE(is_loopback("127.8.0.1"));
  EXPECT_TRUE(is_loopback("::1"));
  EXPECT_TRUE(is_loopback("localhost"));
  EXPECT_FALSE(is_loopback("0.0.0.0"));
  EXPECT_FALSE(is_loopback("::"));
}

}  // namespace
}  // namespace lastegg::server
