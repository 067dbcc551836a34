// The catalogues: for each language but that of the code, which sentence stands for an English one. Read from
// words/data once, or handed in before anything is asked, and then never changed; any thread may look things
// up.
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

/// Takes the text of words/data/es.json, or of another language's file, in place of what is held; false for a
/// text that is none, and for American English. The WebAssembly engine comes without Spanish, so that only
/// those who read it load it. Called before anything is asked, by one thread. Checked:
/// words/catalogue_unit_test.cpp
bool take_catalogue(Language language, std::string_view text);

/// What stands for `english` in the language in force; `english` itself where the catalogue has nothing. The
/// text lives as long as the program, or as long as `english`.
std::string_view counterpart(std::string_view english);

}  // namespace lastegg
