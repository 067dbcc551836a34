// Zip archives in memory, on libzip: entries in, bytes out, and back. Checks what concerns the container
// alone.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "apps/store/job_file.h"
#include "physics/quantities/error.h"

namespace lastegg::store {

struct ZipEntry {
  std::string name;
  std::string content;
  bool is_compressed = true;  ///< deflate, else stored; of what is written
};

/// The bytes of a zip with these entries in this order, without times, owners or extra fields.
/// Errors:  internal
Result<std::string> zip_bytes(const std::vector<ZipEntry>& entries);

/// All entries of a zip but folders.
/// Errors:  bad_input, see read_job_file
Result<std::vector<ZipEntry>> zip_entries(std::string_view bytes, const JobFileLimits& limits);

}  // namespace lastegg::store
