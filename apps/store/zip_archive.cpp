#include "apps/store/zip_archive.h"

#include <fmt/format.h>
#include <sys/stat.h>
#include <zip.h>

#include <memory>
#include <optional>
#include <set>

#include "words/say.h"

namespace lastegg::store {
namespace {

struct CloseSource {
  void operator()(zip_source_t* source) const { zip_source_free(source); }
};
struct DiscardArchive {
  void operator()(zip_t* archive) const { zip_discard(archive); }
};
struct CloseEntry {
  void operator()(zip_file_t* file) const { zip_fclose(file); }
};
using Source = std::unique_ptr<zip_source_t, CloseSource>;
using Archive = std::unique_ptr<zip_t, DiscardArchive>;

class ZipError {
 public:
  ZipError() { zip_error_init(&error_); }
  ZipError(const ZipError&) = delete;
  ZipError& operator=(const ZipError&) = delete;
  ~ZipError() { zip_error_fini(&error_); }
  zip_error_t* get() { return &error_; }
  std::string text() { return zip_error_strerror(&error_); }

 private:
  zip_error_t error_{};
};

Error defect(std::string message) {
  Error error;
  error.message = std::move(message);
  return error;
}

Error bad_file(std::string message, std::string where = "", std::string value = "", std::string limit = "",
               std::string unit = "") {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = std::move(message);
  error.where = std::move(where);
  error.value = std::move(value);
  error.limit = std::move(limit);
  error.unit = std::move(unit);
  return error;
}

bool add_entry(zip_t* archive, const ZipEntry& entry) {
  zip_source_t* source = zip_source_buffer(archive, entry.content.data(), entry.content.size(), 0);
  if (source == nullptr) return false;
  const zip_int64_t added = zip_file_add(archive, entry.name.c_str(), source, ZIP_FL_ENC_UTF_8);
  if (added < 0) {
    zip_source_free(source);
    return false;
  }
  const auto index = static_cast<zip_uint64_t>(added);
  constexpr zip_uint16_t k_midnight = 0;
  constexpr zip_uint16_t k_first_of_january_1980 = 1U << 5 | 1U;  // the earliest day that a zip can hold
  constexpr zip_uint32_t k_plain_file = static_cast<zip_uint32_t>(S_IFREG | 0644) << 16;
  constexpr zip_uint32_t k_best = 9;
  return zip_file_set_dostime(archive, index, k_midnight, k_first_of_january_1980, 0) == 0 &&
         zip_file_set_external_attributes(archive, index, 0, ZIP_OPSYS_UNIX, k_plain_file) == 0 &&
         zip_set_file_compression(archive, index, entry.is_compressed ? ZIP_CM_DEFLATE : ZIP_CM_STORE,
                                  entry.is_compressed ? k_best : 0) == 0;
}

Result<std::string> content_of(zip_source_t* source) {
  zip_stat_t facts;
  if (zip_source_stat(source, &facts) != 0 || zip_source_open(source) != 0)
    return refuse(defect("the zip cannot be read back"));
  std::string bytes(facts.size, '\0');
  std::size_t filled = 0;
  while (filled < bytes.size()) {
    const zip_int64_t count = zip_source_read(source, bytes.data() + filled, bytes.size() - filled);
    if (count <= 0) break;
    filled += static_cast<std::size_t>(count);
  }
  zip_source_close(source);
  if (filled != bytes.size()) return refuse(defect("the zip cannot be read back"));
  return bytes;
}

// Names must be relative, in forward slashes, without steps upwards, and of plain characters: safe to unpack
// on any system.
bool is_safe_name(std::string_view name) {
  if (name.empty() || name.size() > 255 || name.front() == '/') return false;
  for (const char c : name) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                       c == '.' || c == '_' || c == '-' || c == '/';
    if (!plain) return false;
  }
  while (!name.empty()) {
    const std::size_t end = name.find('/');
    const std::string_view step = name.substr(0, end);
    if (step.empty() || step == "." || step == "..") return false;
    name.remove_prefix(end == std::string_view::npos ? name.size() : end + 1);
  }
  return true;
}

std::string printable(std::string_view name) {
  std::string text;
  for (const char c : name.substr(0, 80)) text += c >= ' ' && c <= '~' ? c : '?';
  return text;
}

class Reader {
 public:
  Reader(zip_t* archive, const JobFileLimits& limits) : archive_(archive), limits_(limits) {}

  Result<std::vector<ZipEntry>> all() {
    const auto count = static_cast<zip_uint64_t>(zip_get_num_entries(archive_, 0));
    if (count > limits_.entries)
      return refuse(
          bad_file(say("the file holds {} entries; it must hold at most {}", count, limits_.entries), "",
                   std::to_string(count), std::to_string(limits_.entries), "entries"));
    std::vector<ZipEntry> entries;
    for (zip_uint64_t i = 0; i < count; ++i) {
      zip_stat_t facts;
      if (zip_stat_index(archive_, i, 0, &facts) != 0)
        return refuse(bad_file(say("the zip's directory is damaged")));
      const char* raw_name = zip_get_name(archive_, i, ZIP_FL_ENC_RAW);
      const std::string name = raw_name == nullptr ? "" : raw_name;
      if (name.ends_with('/') && facts.size == 0 && is_safe_name(name.substr(0, name.size() - 1))) continue;
      if (const std::optional<Error> fault = fault_of(i, name, facts)) return refuse(*fault);
      Result<std::string> content = content_of_entry(i, name, facts);
      if (!content) return refuse(content.error());
      entries.push_back({name, *std::move(content), facts.comp_method != ZIP_CM_STORE});
    }
    return entries;
  }

 private:
  std::optional<Error> fault_of(zip_uint64_t index, const std::string& name, const zip_stat_t& facts) {
    constexpr zip_uint64_t k_needed =
        ZIP_STAT_SIZE | ZIP_STAT_COMP_SIZE | ZIP_STAT_COMP_METHOD | ZIP_STAT_ENCRYPTION_METHOD;
    const std::string shown = printable(name);
    if (!is_safe_name(name))
      return bad_file(
          say("the entry \"{}\" has a name that could leave the folder it is unpacked into", shown), shown);
    if (!names_.insert(name).second) return bad_file(say("the entry {} is there twice", shown), shown);
    if ((facts.valid & k_needed) != k_needed) return bad_file(say("the entry {} is damaged", shown), shown);
    if (facts.encryption_method != ZIP_EM_NONE)
      return bad_file(say("the entry {} is encrypted", shown), shown);
    if (facts.comp_method != ZIP_CM_STORE && facts.comp_method != ZIP_CM_DEFLATE)
      return bad_file(say("the entry {} is compressed in another way than deflate", shown), shown);
    zip_uint8_t system = 0;
    zip_uint32_t attributes = 0;
    if (zip_file_get_external_attributes(archive_, index, 0, &system, &attributes) != 0)
      return bad_file(say("the entry {} is damaged", shown), shown);
    const zip_uint32_t type = (attributes >> 16) & S_IFMT;
    if (system == ZIP_OPSYS_UNIX && type != 0 && type != S_IFREG)
      return bad_file(say("the entry {} is a link or a device, not a file", shown), shown);
    return size_fault(shown, facts);
  }

  std::optional<Error> size_fault(const std::string& shown, const zip_stat_t& facts) {
    const std::size_t left = limits_.unpacked_bytes - unpacked_;
    if (facts.size > left)
      return bad_file(
          say("the file unpacks to more than {} bytes, at the entry {}", limits_.unpacked_bytes, shown),
          shown, "", std::to_string(limits_.unpacked_bytes), "bytes");
    unpacked_ += facts.size;
    if (facts.size > limits_.free_bytes && facts.size / limits_.growth > facts.comp_size)
      return bad_file(
          say("the entry {} grows from {} to {} bytes when unpacked; at most {} times is accepted", shown,
              facts.comp_size, facts.size, limits_.growth),
          shown, std::to_string(facts.size), std::to_string(limits_.growth), "times");
    return std::nullopt;
  }

  // Never more than the size that the directory declares; libzip compares the checksum at the end.
  Result<std::string> content_of_entry(zip_uint64_t index, const std::string& name, const zip_stat_t& facts) {
    const std::unique_ptr<zip_file_t, CloseEntry> file(zip_fopen_index(archive_, index, 0));
    const auto damaged = [&] {
      return refuse(bad_file(
          say("the entry {} is damaged: its content does not match its checksum or size", name), name));
    };
    if (!file) return damaged();
    std::string content;
    char block[65536];
    for (;;) {
      const zip_int64_t count = zip_fread(file.get(), block, sizeof block);
      if (count < 0) return damaged();
      if (count == 0) break;
      content.append(block, static_cast<std::size_t>(count));
      if (content.size() > facts.size) return damaged();
    }
    if (content.size() != facts.size) return damaged();
    return content;
  }

  zip_t* archive_;
  const JobFileLimits& limits_;
  std::set<std::string> names_;
  std::size_t unpacked_ = 0;
};

}  // namespace

Result<std::string> zip_bytes(const std::vector<ZipEntry>& entries) {
  ZipError problem;
  const Source target(zip_source_buffer_create(nullptr, 0, 0, problem.get()));
  if (!target) return refuse(defect("no zip can be made: " + problem.text()));
  zip_source_keep(target.get());  // the archive takes one reference, content_of needs the other
  Archive archive(zip_open_from_source(target.get(), ZIP_TRUNCATE, problem.get()));
  if (!archive) {
    zip_source_free(target.get());
    return refuse(defect("no zip can be made: " + problem.text()));
  }
  for (const ZipEntry& entry : entries)
    if (!add_entry(archive.get(), entry))
      return refuse(defect(fmt::format("{}: {}", entry.name, zip_strerror(archive.get()))));
  if (zip_close(archive.get()) != 0)
    return refuse(defect(fmt::format("no zip can be made: {}", zip_strerror(archive.get()))));
  std::ignore = archive.release();  // closing freed it
  return content_of(target.get());
}

Result<std::vector<ZipEntry>> zip_entries(std::string_view bytes, const JobFileLimits& limits) {
  if (bytes.size() > limits.file_bytes)
    return refuse(
        bad_file(say("the file is {} bytes long; it must be at most {}", bytes.size(), limits.file_bytes), "",
                 std::to_string(bytes.size()), std::to_string(limits.file_bytes), "bytes"));
  ZipError problem;
  zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, problem.get());
  if (source == nullptr) return refuse(defect("the zip cannot be opened: " + problem.text()));
  const Archive archive(zip_open_from_source(source, ZIP_RDONLY | ZIP_CHECKCONS, problem.get()));
  if (!archive) {
    zip_source_free(source);
    if (zip_error_code_zip(problem.get()) == ZIP_ER_EXISTS)
      return refuse(bad_file(say("an entry of the zip is there twice")));
    return refuse(bad_file(say("this is not a .lastegg file, or it is damaged: {}", problem.text())));
  }
  return Reader(archive.get(), limits).all();
}

}  // namespace lastegg::store
