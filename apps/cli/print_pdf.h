// Printing an HTML file by a headless Chromium as a tagged PDF. Starts a process of its own with a profile
// folder of its own, which is removed again.
#pragma once

#include <filesystem>
#include <string>

#include "physics/quantities/error.h"

namespace lastegg::cli {

/// The Chromium to print with: the one named by `asked`, else LASTEGG_CHROMIUM, else the first of the usual
/// names on PATH. Errors:  not_found, saying what to install
Result<std::string> find_chromium(const std::string& asked);

/// Writes `pdf` from `html`. What lay at `pdf` before stays there unless the print has succeeded.
/// Errors:  internal when Chromium fails, or takes longer than a minute and a half
Result<void> print_pdf(const std::string& chromium, const std::filesystem::path& html,
                       const std::filesystem::path& pdf);

}  // namespace lastegg::cli
