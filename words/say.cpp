#include "words/say.h"

#include <vector>

namespace lastegg {
namespace {

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
    for (std::size_t i = at + 1; i < end; ++i) index = 10 * index + static_cast<std::size_t>(pattern[i] - '0');
    if (index < numbers.size()) out += numbers[index];
    at = end;
  }
  return out;
}

}  // namespace

std::string in_language_with_numbers(std::string_view english) {
  if (language_in_force() == Language::american) return std::string(english);
  std::string pattern;
  std::vector<std::string_view> numbers;
  for (std::size_t at = 0; at < english.size();) {
    if (!is_digit(english[at])) {
      pattern += english[at++];
      continue;
    }
    const std::size_t end = end_of_number(english, at);
    numbers.push_back(english.substr(at, end - at));
    pattern += "{}";
    at = end;
  }
  const std::string_view told = counterpart(pattern);
  return told == pattern ? std::string(english) : filled(told, numbers);
}

}  // namespace lastegg
