#include "engine/nearest_word.h"

#include <algorithm>
#include <cstddef>

#include "words/say.h"

namespace lastegg {
namespace {

// Optimal string alignment distance, three rows at a time.
std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before_last(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const bool same = a[i - 1] == b[j - 1];
      row[j] = std::min({row[j - 1] + 1, last[j] + 1, last[j - 1] + (same ? 0U : 1U)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before_last[j - 2] + 1);
    }
    before_last.swap(last);
    last.swap(row);
  }
  return last[b.size()];
}

std::string joined(const std::vector<std::string>& words, std::string_view last) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += i + 1 == words.size() ? last : std::string_view(", ");
    text += words[i];
  }
  return text;
}

}  // namespace

std::string nearest_word(std::string_view typed, const std::vector<std::string>& known) {
  typed = typed.substr(0, 64);
  if (typed.size() >= 3) {
    for (const std::string& word : known)
      if (word.starts_with(typed)) return word;
    for (const std::string& word : known)
      if (word.find(typed) != std::string::npos) return word;
  }
  std::string best;
  std::size_t least = 0;
  for (const std::string& word : known) {
    const std::size_t distance = edit_distance(typed, word);
    if (distance * 3 > std::max(typed.size(), word.size())) continue;
    if (best.empty() || distance < least) {
      best = word;
      least = distance;
    }
  }
  return best;
}

std::string any_of(const std::vector<std::string>& words) {
  return joined(words, say(" or "));
}

std::string all_of(const std::vector<std::string>& words) {
  return joined(words, say(" and "));
}

}  // namespace lastegg
