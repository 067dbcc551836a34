// In which language the command speaks: what a person asked for, else what the environment says.
#pragma once

#include <functional>
#include <string>

#include "physics/quantities/error.h"
#include "words/language.h"

namespace lastegg::cli {

/// The value of a variable of the environment; empty where it is not set.
using Environment = std::function<std::string(const char*)>;

/// What stands after --language on the command line; empty without it.
std::string language_in(int argc, const char* const* argv);

/// The language named by `asked` (a tag, from --language), else by LASTEGG_LANGUAGE, else by the first of
/// LC_ALL, LC_MESSAGES and LANG that is set: Spanish where it begins with "es", British English for "en_GB",
/// American English for all others. Errors:  bad_input for a tag, asked for or in LASTEGG_LANGUAGE, that is
/// not known Checked: apps/cli/chosen_language_unit_test.cpp
Result<Language> chosen_language(const std::string& asked, const Environment& environment);

}  // namespace lastegg::cli
