#include "words/language.h"

namespace lastegg {
namespace {

thread_local Language in_force = Language::american;

}  // namespace

std::optional<Language> language_tagged(std::string_view tag) {
  for (const LanguageTag& known : k_languages)
    if (known.tag == tag) return known.language;
  return std::nullopt;
}

std::string_view tag_of(Language language) {
  for (const LanguageTag& known : k_languages)
    if (known.language == language) return known.tag;
  return k_languages.front().tag;
}

Language language_in_force() {
  return in_force;
}

InLanguage::InLanguage(Language language) : before_(in_force) {
  in_force = language;
}

InLanguage::~InLanguage() {
  in_force = before_;
}

}  // namespace lastegg
