// Reading and writing of whole files for the commands. Errors are values that name the file.
#pragma once

#include <filesystem>
#include <map>
#include <string>

#include "physics/quantities/error.h"

namespace lastegg::cli {

/// Text of a file, or of standard input for "-".
/// Errors:  not_found when it cannot be opened or read; bad_input when it is longer than any request may be
Result<std::string> text_of_file(const std::string& path);

/// Writes a file, making its folder if need be; leaves the file alone when it already has this text.
/// Errors:  internal when it cannot be written
Result<bool> write_file(const std::filesystem::path& path, const std::string& text);

/// The *.json files of a folder, not of folders below it: name to text.
/// Errors:  not_found
Result<std::map<std::string, std::string>> json_files(const std::filesystem::path& folder);

/// Prints {"error":{...}} on standard error; returns the exit code for it.
int report(const Error& error);

}  // namespace lastegg::cli
