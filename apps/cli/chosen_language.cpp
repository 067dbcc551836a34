#include "apps/cli/chosen_language.h"

#include "words/say.h"

namespace lastegg::cli {
namespace {

// "es", "es_MX.UTF-8", "es-419"; not "est".
bool begins_with(const std::string& locale, const std::string& word) {
  return locale.starts_with(word) &&
         (locale.size() == word.size() || std::string("_-.@").find(locale[word.size()]) != std::string::npos);
}

Result<Language> tagged(const std::string& tag, const char* where) {
  if (const auto language = language_tagged(tag)) return *language;
  std::string known;
  for (const LanguageTag& one : k_languages) known += (known.empty() ? "" : ", ") + std::string(one.tag);
  return refuse({ErrorKind::bad_input,
                 say("{} is \"{}\"; it must be one of {}", where, tag.substr(0, 80), known), where,
                 tag.substr(0, 80), known, ""});
}

}  // namespace

std::string language_in(int argc, const char* const* argv) {
  constexpr std::string_view k_option = "--language";
  for (int i = 1; i < argc; ++i) {
    const std::string_view word = argv[i];
    if (word == k_option && i + 1 < argc) return argv[i + 1];
    if (word.size() > k_option.size() && word.starts_with(k_option) && word[k_option.size()] == '=')
      return std::string(word.substr(k_option.size() + 1));
  }
  return "";
}

Result<Language> chosen_language(const std::string& asked, const Environment& environment) {
  if (!asked.empty()) return tagged(asked, "--language");
  if (const std::string own = environment("LASTEGG_LANGUAGE"); !own.empty())
    return tagged(own, "LASTEGG_LANGUAGE");
  for (const char* variable : {"LC_ALL", "LC_MESSAGES", "LANG"}) {
    const std::string locale = environment(variable);
    if (locale.empty()) continue;
    if (begins_with(locale, "es")) return Language::spanish;
    return begins_with(locale, "en_GB") ? Language::british : Language::american;
  }
  return Language::american;
}

}  // namespace lastegg::cli
