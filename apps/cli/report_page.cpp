#include "apps/cli/report_page.h"

#include <utility>

#include "engine/ask.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

// JSON inside a script element must not hold "<", or a text could end the element.
std::string for_script(const Json& data) {
  std::string out;
  for (const char c : dumped(data)) {
    if (c == '<')
      out += "\\u003c";
    else
      out += c;
  }
  return out;
}

std::string for_text(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '&')
      out += "&amp;";
    else if (c == '<')
      out += "&lt;";
    else
      out += c;
  }
  return out;
}

bool put(std::string& page, std::string_view before, std::string_view old, const std::string& fresh) {
  const std::size_t at = page.find(std::string(before) + std::string(old));
  if (at == std::string::npos) return false;
  page.replace(at + before.size(), old.size(), fresh);
  return true;
}

}  // namespace

Result<std::string> report_page(std::string_view page, const Json& data) {
  std::string out(page);
  const Json& report = data.at("report");
  const bool done =
      put(out, "<title>", "Treatment report", for_text(report.at("title").at("text").get<std::string>())) &&
      put(out, "<html lang=\"", "en", report.at("language").get<std::string>()) &&
      put(out, "<script id=\"report-data\" type=\"application/json\">", "null", for_script(data));
  if (!done)
    return refuse({ErrorKind::internal,
                   say("the report page of the web build has no place for data; build it anew"), "", "", "",
                   ""});
  return out;
}

std::filesystem::path built_report_page() {
  std::error_code failure;
  const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", failure);
  return program.parent_path().parent_path().parent_path() / "apps" / "web" / "dist" / "report.html";
}

}  // namespace lastegg::cli
