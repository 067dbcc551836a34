// The catalogues: for each language but that of the code, which sentence stands for an English one. Read from
// words/data once and never changed; any thread may look things up.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "words/language.h"

namespace lastegg {

/// English sentence -> sentence, in one language; sections of the file (by where the English stands) become
/// one.
using Catalogue = std::map<std::string, std::string, std::less<>>;

/// The catalogue of a language; empty for American English, and for a file that cannot be read.
/// Checked: words/catalogue_unit_test.cpp
const Catalogue& catalogue_of(Language language);

/// What stands for `english` in the language in force; `english` itself where the catalogue has nothing. The
/// text lives as long as the program, or as long as `english`.
std::string_view counterpart(std::string_view english);

}  // namespace lastegg
