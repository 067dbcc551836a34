// The built web app, read once into memory when the server starts: what is served is one consistent set of
// files whatever happens on the disk later, and a request can name only a file that was in the folder.
// Read-only after read_web_files(), so every thread may use it.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <string_view>

#include "physics/quantities/error.h"

namespace lastegg::server {

struct WebFile {
  std::string bytes;
  std::string brotli_bytes;  ///< the file `NAME.br` beside it; empty if there is none
  std::string media_type;
  std::string entity_tag;      ///< without quotes; of `bytes`
  bool name_has_hash = false;  ///< lies under /assets/: its name changes with its content
};

/// Files by their path in a request, "/index.html".
using WebFiles = std::map<std::string, WebFile, std::less<>>;

/// All regular files below `folder`; links that lead out of it are left out, as is every file whose name
/// begins with a dot. Errors:  not_found when the folder or its index.html is missing or a file cannot be
/// read Checked: apps/server/web_files_unit_test.cpp
Result<WebFiles> read_web_files(const std::filesystem::path& folder);

/// The file for a request's path: the file itself; index.html for "/" and for a path whose last part has no
/// dot (the app reads such addresses itself). Null if there is none. Checked:
/// apps/server/web_files_unit_test.cpp
const WebFile* web_file_for(const WebFiles& files, std::string_view path);

/// Media type of a file name by its ending; "application/octet-stream" for an unknown one.
/// Source:  IANA media types registry (names from memory, checked against browsers' use of them)
std::string media_type_of(std::string_view file_name);

/// Whether an If-None-Match header holds `tag` (given without quotes): a list, weak tags and "*" are
/// understood. Source:  RFC 9110 section 13.1.2 (weak comparison) Checked:
/// apps/server/web_files_unit_test.cpp
bool tag_matches(std::string_view if_none_match, std::string_view tag);

/// Whether an Accept-Encoding header allows "br": named without q=0.
/// Source:  RFC 9110 section 12.5.3
/// Checked: apps/server/web_files_unit_test.cpp
bool accepts_brotli(std::string_view accept_encoding);

}  // namespace lastegg::server
