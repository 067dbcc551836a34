// A temporary folder for tests of the server, removed with its owner. One per test; not shared between
// threads.
#pragma once

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <unistd.h>

namespace lastegg::server {

class WebFolder {
 public:
  WebFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "lastegg-web-XXXXXX").string();
    if (mkdtemp(name.data()) != nullptr) path_ = name;
  }
  ~WebFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  WebFolder(const WebFolder&) = delete;
  WebFolder& operator=(const WebFolder&) = delete;

  const std::filesystem::path& path() const { return path_; }

  void write(const std::string& name, const std::string& bytes) const {
    std::filesystem::create_directories((path_ / name).parent_path());
    std::ofstream(path_ / name, std::ios::binary) << bytes;
  }

 private:
  std::filesystem::path path_;
};

}  // namespace lastegg::server
