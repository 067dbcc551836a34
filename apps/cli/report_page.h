// The report as one HTML file: the page that the web build leaves, with the data of a job put into it.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "engine/json.h"
#include "physics/quantities/error.h"

namespace lastegg::cli {

/// The page with `data` in its place for data, and its title and language.
/// Errors:  internal when the page has no such place
/// Checked: apps/cli/report_page_unit_test.cpp
Result<std::string> report_page(std::string_view page, const Json& data);

/// Where the web build of this checkout leaves the page.
std::filesystem::path built_report_page();

}  // namespace lastegg::cli
