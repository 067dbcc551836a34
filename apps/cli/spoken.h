// Words of closed lists as the command prints them.
#pragma once

#include <string>

namespace lastegg::cli {

/// A word of an answer ("not_proven", or spaced out, "not proven") in the language in force; in English, and
/// where nobody knows the word, as it is.
std::string spoken(const std::string& word);

}  // namespace lastegg::cli
