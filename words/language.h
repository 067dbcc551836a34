// The languages in which people are spoken to, and the one in force. The language is a matter of one call: a
// scope sets it and its end puts back what was before. Each thread has its own
// (docs/decisions/080-languages.md).
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace lastegg {

enum class Language {
  american,  ///< English of the United States: the sentences as the code has them
  british,
  spanish
};

struct LanguageTag {
  Language language;
  std::string_view tag;  ///< BCP 47
};

inline constexpr std::array<LanguageTag, 3> k_languages = {
    {{Language::american, "en-US"}, {Language::british, "en-GB"}, {Language::spanish, "es"}}};

/// The language with that tag, spelt exactly so.
std::optional<Language> language_tagged(std::string_view tag);

std::string_view tag_of(Language language);

/// The language in force on this thread; American where nothing was said.
Language language_in_force();

/// Sets the language of this thread until the end of the scope.
class InLanguage {
 public:
  explicit InLanguage(Language language);
  ~InLanguage();
  InLanguage(const InLanguage&) = delete;
  InLanguage& operator=(const InLanguage&) = delete;

 private:
  Language before_;
};

}  // namespace lastegg
