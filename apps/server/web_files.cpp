#include "apps/server/web_files.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "words/say.h"

namespace lastegg::server {
namespace {

Error missing(std::string message, const std::filesystem::path& path) {
  Error error;
  error.kind = ErrorKind::not_found;
  error.message = std::move(message);
  error.value = path.string();
  return error;
}

bool read_bytes(const std::filesystem::path& path, std::string& bytes) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return false;
  bytes.assign(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
  return !file.bad();
}

// FNV-1a, 64 bits: tells versions of one file apart; it guards nothing.
std::string tag_of(std::string_view bytes) {
  std::uint64_t hash = 14695981039346656037ULL;
  for (const char byte : bytes) hash = (hash ^ static_cast<unsigned char>(byte)) * 1099511628211ULL;
  return fmt::format("{:016x}-{:x}", hash, bytes.size());
}

bool ends_with(std::string_view text, std::string_view ending) {
  return text.size() >= ending.size() && text.substr(text.size() - ending.size()) == ending;
}

std::string_view trimmed(std::string_view text) {
  const auto blank = [](char c) { return c == ' ' || c == '\t'; };
  while (!text.empty() && blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && blank(text.back())) text.remove_suffix(1);
  return text;
}

std::vector<std::string_view> split(std::string_view text, char separator) {
  std::vector<std::string_view> parts;
  while (true) {
    const std::size_t end = text.find(separator);
    parts.push_back(trimmed(text.substr(0, end)));
    if (end == std::string_view::npos) return parts;
    text.remove_prefix(end + 1);
  }
}

bool inside(const std::filesystem::path& folder, const std::filesystem::path& file) {
  const auto [in_folder, in_file] = std::mismatch(folder.begin(), folder.end(), file.begin(), file.end());
  return in_folder == folder.end() && in_file != file.end();
}

}  // namespace

std::string media_type_of(std::string_view file_name) {
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 18> k_types{{
      {".html", "text/html; charset=utf-8"},
      {".js", "text/javascript; charset=utf-8"},
      {".mjs", "text/javascript; charset=utf-8"},
      {".css", "text/css; charset=utf-8"},
      {".wasm", "application/wasm"},
      {".json", "application/json"},
      {".map", "application/json"},
      {".webmanifest", "application/manifest+json"},
      {".svg", "image/svg+xml"},
      {".png", "image/png"},
      {".jpg", "image/jpeg"},
      {".webp", "image/webp"},
      {".ico", "image/vnd.microsoft.icon"},
      {".woff2", "font/woff2"},
      {".txt", "text/plain; charset=utf-8"},
      {".ndjson", "application/x-ndjson"},
      {".lastegg", "application/zip"},
      {".pdf", "application/pdf"},
  }};
  for (const auto& [ending, type] : k_types) {
    if (ends_with(file_name, ending)) return std::string(type);
  }
  return "application/octet-stream";
}

Result<WebFiles> read_web_files(const std::filesystem::path& folder) {
  std::error_code failure;
  const std::filesystem::path root = std::filesystem::canonical(folder, failure);
  if (failure || !std::filesystem::is_directory(root, failure))
    return refuse(missing(say("there is no folder {} with the built web app", folder.string()), folder));
  WebFiles files;
  std::filesystem::recursive_directory_iterator entry(root, failure);
  for (; !failure && entry != std::filesystem::recursive_directory_iterator(); entry.increment(failure)) {
    const std::filesystem::path& path = entry->path();
    if (path.filename().string().front() == '.') {
      entry.disable_recursion_pending();
      continue;
    }
    std::error_code unreadable;
    const std::filesystem::path target = std::filesystem::canonical(path, unreadable);
    if (unreadable || !inside(root, target) || !entry->is_regular_file(unreadable)) continue;
    WebFile file;
    if (!read_bytes(path, file.bytes)) return refuse(missing(say("cannot read {}", path.string()), path));
    const std::string name = "/" + std::filesystem::relative(path, root, unreadable).generic_string();
    file.media_type = media_type_of(name);
    file.entity_tag = tag_of(file.bytes);
    file.name_has_hash = name.rfind("/assets/", 0) == 0;
    files.emplace(name, std::move(file));
  }
  if (failure) return refuse(missing(say("cannot read the folder {}", root.string()), root));
  for (auto file = files.begin(); file != files.end();) {
    const auto plain = ends_with(file->first, ".br")
                           ? files.find(file->first.substr(0, file->first.size() - 3))
                           : files.end();
    if (plain == files.end()) {
      ++file;
      continue;
    }
    plain->second.brotli_bytes = std::move(file->second.bytes);
    file = files.erase(file);
  }
  if (files.find("/index.html") == files.end())
    return refuse(
        missing(say("the folder {} holds no index.html; build the web app first", root.string()), root));
  return files;
}

const WebFile* web_file_for(const WebFiles& files, std::string_view path) {
  const auto found = files.find(path);
  if (found != files.end()) return &found->second;
  const std::size_t slash = path.rfind('/');
  const bool names_a_file =
      slash == std::string_view::npos || path.substr(slash).find('.') != std::string_view::npos;
  if (names_a_file) return nullptr;
  const auto index = files.find("/index.html");
  return index == files.end() ? nullptr : &index->second;
}

bool tag_matches(std::string_view if_none_match, std::string_view tag) {
  for (std::string_view part : split(if_none_match, ',')) {
    if (part == "*") return true;
    if (part.rfind("W/", 0) == 0) part.remove_prefix(2);
    if (part.size() == tag.size() + 2 && part.front() == '"' && part.back() == '"' &&
        part.substr(1, tag.size()) == tag)
      return true;
  }
  return false;
}

bool accepts_brotli(std::string_view accept_encoding) {
  for (const std::string_view part : split(accept_encoding, ',')) {
    const std::vector<std::string_view> words = split(part, ';');
    if (words.front() != "br") continue;
    return std::none_of(words.begin() + 1, words.end(), [](std::string_view word) {
      return word.rfind("q=0", 0) == 0 && word.find_first_of("123456789") == std::string_view::npos;
    });
  }
  return false;
}

}  // namespace lastegg::server
