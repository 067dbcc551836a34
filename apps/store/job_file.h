// The `.lastegg` file, in which a job travels: a zip with the record as text, the blobs it names, and a
// manifest that says what should be in it. docs/job_file.md describes it for other programs. Bytes in, bytes
// out; plain values; every refusal is an error that names the entry.
#pragma once

#include <cstddef>
#include <filesystem>
#include <map>
#include <string>
#include <string_view>

#include "engine/json.h"
#include "job/record/event_set.h"
#include "physics/quantities/error.h"

namespace lastegg::store {

constexpr int k_job_file_version = 1;

/// What a file may hold. Own choice: far above any job, far below what would fill a computer's memory.
struct JobFileLimits {
  std::size_t file_bytes = std::size_t{1} << 30;
  std::size_t unpacked_bytes = std::size_t{1} << 30;  ///< of all entries together
  std::size_t events_bytes = std::size_t{1} << 28;
  std::size_t entries = 20'000;
  /// An entry above `free_bytes` that grows more than so many times when unpacked is taken for a zip bomb;
  /// text of events shrinks some 10 to 50 times.
  std::size_t growth = 200;
  std::size_t free_bytes = std::size_t{1} << 24;
};

struct JobFile {
  record::EventSet events;
  std::map<std::string, std::string> blobs;  ///< SHA-256 of the content, in hexadecimal, to the content
  /// Members of the manifest and entries of the zip that this version does not know; written back unchanged.
  Json more_manifest = Json::object();
  std::map<std::string, std::string> more_entries;
  bool hash_was_promised = true;  ///< the manifest read held a state hash, and it was right
};

/// The bytes of a `.lastegg` file. The same job gives the same bytes (with one version of zlib).
/// Errors:  bad_input when a blob does not have the hash that is its name
/// Checked: apps/store/job_file_unit_test.cpp: unit
Result<std::string> job_file_bytes(const JobFile& job);

/// The job in the bytes of a `.lastegg` file.
/// Errors:  bad_input, naming the entry: no zip or a damaged one; an entry that unpacks beyond the limits, is
///          encrypted, a link, there twice, or named so that it would leave its folder; events or blobs that
///          are not what the manifest or their name promises; a version newer than this program
/// Checked: apps/store/job_file_unit_test.cpp: unit
Result<JobFile> read_job_file(std::string_view bytes, const JobFileLimits& limits = {});

/// The job in the plain text of events, a line each.
/// Errors:  bad_input naming the line that is no event
Result<JobFile> read_events(const std::string& text);

/// The job in a file: a `.lastegg` file, or the plain text of events, a line each.
/// Errors:  not_found; those of read_job_file; bad_input naming the line that is no event
Result<JobFile> load_job(const std::filesystem::path& path);

/// Everything of both.
/// Errors:  bad_input when they are different jobs
Result<JobFile> merged(const JobFile& one, const JobFile& other);

}  // namespace lastegg::store
