#include "apps/store/durable_file.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <utility>

#include "words/say.h"

namespace lastegg::store {
namespace {

Error problem_with(ErrorKind kind, const std::filesystem::path& path, std::string_view what, int code) {
  Error error;
  error.kind = kind;
  error.message = fmt::format("{} {}: {}", path.string(), what, std::strerror(code));
  error.value = path.string();
  return error;
}

class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() { close(); }

  bool is_open() const { return number_ >= 0; }
  int number() const { return number_; }
  bool close() { return number_ < 0 || ::close(std::exchange(number_, -1)) == 0; }

 private:
  int number_;
};

bool write_all(int descriptor, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t count = ::write(descriptor, bytes.data(), bytes.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(count));
  }
  return true;
}

}  // namespace

Result<std::string> bytes_of_file(const std::filesystem::path& path, std::size_t most_bytes) {
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (!file.is_open())
    return refuse(problem_with(ErrorKind::not_found, path, say("cannot be opened"), errno));
  std::string bytes;
  char block[65536];
  for (;;) {
    const ssize_t count = ::read(file.number(), block, sizeof block);
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return refuse(problem_with(ErrorKind::not_found, path, say("cannot be read"), errno));
    if (count == 0) return bytes;
    bytes.append(block, static_cast<std::size_t>(count));
    if (bytes.size() > most_bytes) {
      Error error;
      error.kind = ErrorKind::bad_input;
      error.message = say("{} is longer than {} bytes", path.string(), most_bytes);
      error.limit = std::to_string(most_bytes);
      error.unit = "bytes";
      return refuse(std::move(error));
    }
  }
}

Result<std::size_t> write_durably(const std::filesystem::path& path, std::string_view bytes) {
  const std::filesystem::path folder =
      path.has_parent_path() ? path.parent_path() : std::filesystem::path(".");
  std::string temporary = (folder / (path.filename().string() + ".XXXXXX")).string();
  Descriptor file(::mkostemp(temporary.data(), O_CLOEXEC));
  if (!file.is_open())
    return refuse(problem_with(ErrorKind::not_found, path, say("cannot be written"), errno));
  constexpr mode_t k_readable_by_all = S_IRUSR | S_IWUSR | S_IRGRP | S_IROTH;
  const bool is_written = write_all(file.number(), bytes) &&
                          ::fchmod(file.number(), k_readable_by_all) == 0 && ::fsync(file.number()) == 0 &&
                          file.close() && ::rename(temporary.c_str(), path.c_str()) == 0;
  if (!is_written) {
    const int code = errno;
    ::unlink(temporary.c_str());
    return refuse(problem_with(ErrorKind::internal, path, say("cannot be written"), code));
  }
  const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!directory.is_open() || ::fsync(directory.number()) != 0)
    return refuse(
        problem_with(ErrorKind::internal, path, say("is written, but its folder cannot be flushed"), errno));
  return bytes.size();
}

}  // namespace lastegg::store
