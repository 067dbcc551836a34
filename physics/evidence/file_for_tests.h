// Reads a file as text with the C library: the C++ library for WebAssembly has no file streams. For tests
// only.
#pragma once

#include <cstdio>
#include <memory>
#include <string>

namespace lastegg {

/// The whole text of the file at `path`, a full path; empty where it cannot be read.
inline std::string text_of_file(const std::string& path) {
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "rb"), std::fclose);
  std::string text;
  char part[4096];
  while (const std::size_t count = file ? std::fread(part, 1, sizeof part, file.get()) : 0)
    text.append(part, count);
  return text;
}

}  // namespace lastegg
