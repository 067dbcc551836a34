#include "apps/cli/files.h"

#include <fstream>
#include <iostream>
#include <iterator>

#include "apps/cli/commands/command.h"
#include "engine/ask.h"
#include "engine/document.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

Error file_error(ErrorKind kind, const std::string& message, const std::string& path) {
  Error error;
  error.kind = kind;
  error.message = fmt::format("{} {}", path, message);
  error.value = path;
  return error;
}

Result<std::string> text_of_stream(std::istream& stream, const std::string& path) {
  std::string text;
  char block[65536];
  while (stream.read(block, sizeof block), stream.gcount() > 0) {
    text.append(block, static_cast<std::size_t>(stream.gcount()));
    // One byte too many is enough for the engine to refuse it; an endless stream must not fill the memory.
    if (text.size() > k_longest_request_bytes) break;
  }
  if (stream.bad()) return refuse(file_error(ErrorKind::not_found, say("cannot be read"), path));
  return text;
}

}  // namespace

Result<std::string> text_of_file(const std::string& path) {
  if (path == "-") return text_of_stream(std::cin, say("standard input"));
  if (std::filesystem::is_directory(path))
    return refuse(file_error(ErrorKind::not_found, say("is a folder, not a file"), path));
  std::ifstream file(path, std::ios::binary);
  if (!file) return refuse(file_error(ErrorKind::not_found, say("cannot be opened"), path));
  return text_of_stream(file, path);
}

Result<bool> write_file(const std::filesystem::path& path, const std::string& text) {
  std::error_code problem;
  if (path.has_parent_path()) std::filesystem::create_directories(path.parent_path(), problem);
  if (std::ifstream old(path, std::ios::binary); old) {
    const std::string before((std::istreambuf_iterator<char>(old)), std::istreambuf_iterator<char>());
    if (before == text) return false;
  }
  std::ofstream file(path, std::ios::binary | std::ios::trunc);
  file << text;
  file.close();
  if (!file) return refuse(file_error(ErrorKind::internal, say("cannot be written"), path.string()));
  return true;
}

Result<std::map<std::string, std::string>> json_files(const std::filesystem::path& folder) {
  std::error_code problem;
  std::map<std::string, std::string> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder, problem)) {
    if (!entry.is_regular_file() || entry.path().extension() != ".json") continue;
    Result<std::string> text = text_of_file(entry.path().string());
    if (!text) return refuse(text.error());
    files[entry.path().filename().string()] = *std::move(text);
  }
  if (problem) return refuse(file_error(ErrorKind::not_found, say("cannot be opened"), folder.string()));
  return files;
}

int report(const Error& error) {
  std::cerr << dumped(error_object(error)) << "\n";
  return error.kind == ErrorKind::internal ? k_internal : k_bad_input;
}

}  // namespace lastegg::cli
