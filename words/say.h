// Saying something in the language in force. The English stands in the code and is the key; the catalogues in
// words/data hold what stands for it. Pure but for the language of the thread (words/language.h).
//
// tools/check_languages.py finds every sentence by these three names, so their first argument is a literal.
#pragma once

#include <fmt/format.h>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "words/catalogue.h"

namespace lastegg {

/// The sentence with its values. The compiler checks the English; words/catalogue_unit_test.cpp the others,
/// which may name their values by number in another order.
template <class... Values>
std::string say(fmt::format_string<Values...> english, Values&&... values) {
  const fmt::string_view text = english;
  const std::string_view told = counterpart({text.data(), text.size()});
  return fmt::vformat(fmt::string_view(told.data(), told.size()), fmt::make_format_args(values...));
}

/// A text without values: of a table, of a data file, or handed in.
inline std::string in_language(std::string_view english) {
  return std::string(counterpart(english));
}

/// Marks a text of a table that is said later, by in_language().
constexpr const char* to_say(const char* english) {
  return english;
}

/// A title that was put together in English by furniture, such as "Row of tufts 2 from below, left". The
/// catalogue holds it whole, or in the pieces that a comma parts: "Row of tufts {} from below" and ", left",
/// with {} for each number, so that one entry serves all numbers and sides. A piece that it does not hold
/// stays English. Checked: words/say_unit_test.cpp
std::string title_in_language(std::string_view english);

/// The pieces of a title: what stands before the first comma, then each rest from its comma on.
std::vector<std::string_view> pieces_of_title(std::string_view english);

}  // namespace lastegg
