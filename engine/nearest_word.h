// Finds the word a person probably meant, for messages that refuse a misspelt one. Pure functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lastegg {

/// The word of `known` nearest to `typed`, or empty when none is near enough to be worth proposing.
/// Model:   a known word that begins with or contains `typed` (three letters or more) wins; otherwise the
/// least edit
///          distance (insert, delete, replace, swap of neighbours), if it is at most a third of the longer
///          length
/// Cost:    length of `typed` (cut at 64) times the total length of `known`
/// Source:  own choice of limits
/// Checked: engine/nearest_word_unit_test.cpp
std::string nearest_word(std::string_view typed, const std::vector<std::string>& known);

/// "a, b or c" of the words given.
std::string any_of(const std::vector<std::string>& words);

/// "a, b and c" of the words given.
std::string all_of(const std::vector<std::string>& words);

}  // namespace lastegg
