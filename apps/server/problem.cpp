#include "apps/server/problem.h"

#include "engine/ask.h"
#include "engine/json.h"

namespace lastegg::server {
namespace {

std::string_view title_of(int status) {
  switch (status) {
    case 400:
      return "Bad Request";
    case 404:
      return "Not Found";
    case 405:
      return "Method Not Allowed";
    case 413:
      return "Content Too Large";
    case 414:
      return "URI Too Long";
    case 415:
      return "Unsupported Media Type";
    case 416:
      return "Range Not Satisfiable";
    case 422:
      return "Unprocessable Content";
    default:
      return status >= 500 ? "Internal Server Error" : "Request Refused";
  }
}

Problem problem_of(int status, const Json& error) {
  Json document = {{"type", "about:blank"}, {"title", title_of(status)}, {"status", status}};
  document["detail"] = error.value("message", std::string("the request was refused"));
  for (const auto& [key, value] : error.items()) document[key] = value;
  return {status, dumped(document)};
}

}  // namespace

int status_of(std::string_view kind) {
  if (kind == "bad_input") return 400;
  if (kind == "not_found") return 404;
  if (kind == "out_of_domain") return 422;
  return 500;
}

Problem problem_from_engine(std::string_view error_text) {
  const Json document = Json::parse(error_text, nullptr, false);
  const bool usable = document.is_object() && document.contains("error") && document["error"].is_object() &&
                      document["error"].contains("kind") && document["error"]["kind"].is_string() &&
                      document["error"].contains("message") && document["error"]["message"].is_string();
  if (!usable) {
    Error error;
    error.message = "the engine refused without a readable reason";
    return problem_from_http(500, error);
  }
  return problem_of(status_of(document["error"]["kind"].get<std::string>()), document["error"]);
}

Problem problem_from_http(int status, const Error& error) {
  return problem_of(status, error_object(error)["error"]);
}

}  // namespace lastegg::server
