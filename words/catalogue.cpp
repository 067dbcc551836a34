#include "words/catalogue.h"

#include <nlohmann/json.hpp>
#include <utility>

namespace lastegg::embedded {
#ifndef LASTEGG_SPANISH_APART
extern const std::string_view words_data_es_json;
#endif
extern const std::string_view words_data_en_GB_json;
}  // namespace lastegg::embedded

namespace lastegg {
namespace {

Catalogue read(std::string_view text) {
  Catalogue all;
  const auto document = nlohmann::json::parse(text, nullptr, false);
  const auto sections = document.is_object() ? document.find("sections") : document.end();
  if (!document.is_object() || sections == document.end() || !sections->is_object()) return all;
  for (const auto& [name, section] : sections->items()) {
    if (!section.is_object()) continue;
    for (const auto& [english, sentence] : section.items())
      if (sentence.is_string()) all.emplace(english, sentence.get<std::string>());
  }
  return all;
}

Catalogue& held(Language language) {
  static Catalogue none;
  static Catalogue british = read(embedded::words_data_en_GB_json);
#ifdef LASTEGG_SPANISH_APART
  static Catalogue spanish;
#else
  static Catalogue spanish = read(embedded::words_data_es_json);
#endif
  switch (language) {
    case Language::british:
      return british;
    case Language::spanish:
      return spanish;
    case Language::american:
      break;
  }
  return none;
}

}  // namespace

const Catalogue& catalogue_of(Language language) {
  return held(language);
}

bool take_catalogue(Language language, std::string_view text) {
  Catalogue taken = read(text);
  if (language == Language::american || taken.empty()) return false;
  held(language) = std::move(taken);
  return true;
}

std::string_view counterpart(std::string_view english) {
  const Language language = language_in_force();
  if (language == Language::american) return english;
  const Catalogue& catalogue = catalogue_of(language);
  const auto found = catalogue.find(english);
  return found == catalogue.end() ? english : std::string_view(found->second);
}

}  // namespace lastegg
