// Whole files: read with a limit, written so that after a crash at any moment either the old or the new
// content is there, never a part. The name to write to must be on a local file system.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "physics/quantities/error.h"

namespace lastegg::store {

/// The bytes of a file.
/// Errors:  not_found when it cannot be opened or read; bad_input when it is longer than `most_bytes`
Result<std::string> bytes_of_file(const std::filesystem::path& path, std::size_t most_bytes);

/// Writes a file under a temporary name beside it, flushes it to the disk, gives it its name, and flushes the
/// folder. On success the bytes are on the disk.
/// Errors:  not_found when the folder cannot be written to; internal when the disk refuses; in both cases
/// what
///          was at `path` before is unchanged and the temporary file is gone
/// Checked: apps/store/durable_file_unit_test.cpp: unit
Result<std::size_t> write_durably(const std::filesystem::path& path, std::string_view bytes);

}  // namespace lastegg::store
