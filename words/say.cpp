#include "words/say.h"

#include <algorithm>
#include <optional>

namespace lastegg {
namespace {

constexpr std::string_view k_between = ", ";

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

// The end of the number that begins at `at`: digits, and a point with digits after it.
std::size_t end_of_number(std::string_view text, std::size_t at) {
  while (at < text.size() && is_digit(text[at])) ++at;
  if (at + 1 < text.size() && text[at] == '.' && is_digit(text[at + 1])) {
    ++at;
    while (at < text.size() && is_digit(text[at])) ++at;
  }
  return at;
}

// Puts the numbers back: {} takes the next one, {1} the second.
std::string filled(std::string_view pattern, const std::vector<std::string_view>& numbers) {
  std::string out;
  std::size_t next = 0;
  for (std::size_t at = 0; at < pattern.size(); ++at) {
    const std::size_t end = pattern[at] == '{' ? pattern.find('}', at) : pattern.npos;
    if (end == pattern.npos) {
      out += pattern[at];
      continue;
    }
    std::size_t index = end == at + 1 ? next++ : 0;
    for (std::size_t i = at + 1; i < end; ++i)
      index = 10 * index + static_cast<std::size_t>(pattern[i] - '0');
    if (index < numbers.size()) out += numbers[index];
    at = end;
  }
  return out;
}

// The text with {} for each number, and the numbers.
struct Pattern {
  std::string text;
  std::vector<std::string_view> numbers;
};

Pattern pattern_of(std::string_view english) {
  Pattern out;
  for (std::size_t at = 0; at < english.size();) {
    if (!is_digit(english[at])) {
      out.text += english[at++];
      continue;
    }
    const std::size_t end = end_of_number(english, at);
    out.numbers.push_back(english.substr(at, end - at));
    out.text += "{}";
    at = end;
  }
  return out;
}

// A piece in the language in force; nothing where the catalogue does not hold it.
std::optional<std::string> told(std::string_view piece) {
  const Pattern pattern = pattern_of(piece);
  const Catalogue& catalogue = catalogue_of(language_in_force());
  const auto found = catalogue.find(pattern.text);
  if (found == catalogue.end()) return std::nullopt;
  return filled(found->second, pattern.numbers);
}

}  // namespace

std::vector<std::string_view> pieces_of_title(std::string_view english) {
  std::vector<std::string_view> pieces;
  while (!english.empty()) {
    const std::size_t end = std::min(english.find(k_between, 1), english.size());
    pieces.push_back(english.substr(0, end));
    english.remove_prefix(end);
  }
  return pieces;
}

std::string title_in_language(std::string_view english) {
  if (language_in_force() == Language::american) return std::string(english);
  if (auto whole = told(english)) return *whole;
  std::string out;
  bool any = false;
  for (const std::string_view piece : pieces_of_title(english)) {
    const auto one = told(piece);
    any = any || one;
    out += one ? *one : std::string(piece);
  }
  return out;
}

}  // namespace lastegg
