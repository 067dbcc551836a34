// Whatever stands in a catalogue must be formatted with the values of its English sentence, at any time,
// without a throw: in WebAssembly that would end the instance.
#include "words/catalogue.h"

#include <fmt/args.h>
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lastegg {
namespace {

using Placeholders = std::map<std::size_t, std::vector<std::string>>;  // index of the value -> its formats

// Placeholders as fmt reads them; none for a text that is no format string.
std::optional<Placeholders> placeholders_of(const std::string& text) {
  Placeholders out;
  std::size_t next = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] == '}') return std::nullopt;
    if (text[at] != '{') continue;
    const std::size_t end = text.find('}', at);
    if (end == std::string::npos) return std::nullopt;
    const std::string inside = text.substr(at + 1, end - at - 1);
    const std::string index = inside.substr(0, inside.find(':'));
    if (index.find_first_not_of("0123456789") != std::string::npos) return std::nullopt;
    const std::string format = inside.substr(std::min(inside.size(), index.size()));
    out[index.empty() ? next++ : std::stoul(index)].push_back(format);
    at = end;
  }
  return out;
}

// {name} of the preparation sheet, whose sentences are not format strings.
std::vector<std::string> names_in(const std::string& text) {
  std::vector<std::string> names;
  for (std::size_t at = text.find('{'); at != std::string::npos; at = text.find('{', at + 1)) {
    if (const std::string name = text.substr(at, text.find('}', at) - at);
        name.find(' ') == std::string::npos)
      names.push_back(name);
  }
  std::sort(names.begin(), names.end());
  return names;
}

std::string formatted(const std::string& text, const Placeholders& placeholders) {
  fmt::dynamic_format_arg_store<fmt::format_context> values;
  for (std::size_t i = 0; i < placeholders.size(); ++i) {
    const std::string& format = placeholders.at(i).front();
    const char kind = format.empty() ? 's' : format.back();
    if (kind == 'g' || kind == 'f' || kind == 'e')
      values.push_back(1.5);
    else
      values.push_back(fmt::format("<{}>", i));
  }
  return fmt::vformat(text, values);
}

class EveryCatalogue : public testing::TestWithParam<Language> {};
INSTANTIATE_TEST_SUITE_P(Languages, EveryCatalogue, testing::Values(Language::british, Language::spanish));

TEST_P(EveryCatalogue, IsReadAndHoldsSentences) {
  EXPECT_GT(catalogue_of(GetParam()).size(), GetParam() == Language::spanish ? 1500U : 30U);
}

TEST_P(EveryCatalogue, HasThePlaceholdersOfItsEnglishAndFormats) {
  for (const auto& [english, told] : catalogue_of(GetParam())) {
    const auto wanted = placeholders_of(english), found = placeholders_of(told);
    ASSERT_EQ(wanted.has_value(), found.has_value()) << english << "\n" << told;
    if (!wanted) {
      EXPECT_EQ(names_in(english), names_in(told)) << english << "\n" << told;
      continue;
    }
    ASSERT_EQ(*wanted, *found) << english << "\n" << told;
    const std::string text = formatted(told, *found);
    EXPECT_FALSE(text.empty()) << english;
    for (std::size_t i = 0; i < found->size(); ++i) {
      const std::string& format = found->at(i).front();
      if (format.empty()) {
        EXPECT_NE(text.find(fmt::format("<{}>", i)), std::string::npos) << text;
      }
    }
  }
}

TEST_P(EveryCatalogue, KeepsTheSpacesAndLineBreaksAtTheEnds) {
  for (const auto& [english, told] : catalogue_of(GetParam())) {
    EXPECT_EQ(english.front() == ' ' || english.front() == '\n', told.front() == ' ' || told.front() == '\n')
        << english;
    EXPECT_EQ(english.back() == ' ' || english.back() == '\n', told.back() == ' ' || told.back() == '\n')
        << english;
  }
}

TEST(Catalogue, AmericanEnglishHasNone) {
  EXPECT_TRUE(catalogue_of(Language::american).empty());
}

TEST(Catalogue, TakesOnlyWhatIsACatalogue) {
  for (const char* text : {"", "{", "[]", "{}", R"({"sections":{}})", R"({"sections":[1]})"})
    EXPECT_FALSE(take_catalogue(Language::spanish, text)) << text;
  const Catalogue before = catalogue_of(Language::british);
  EXPECT_TRUE(take_catalogue(Language::british, R"({"sections":{"code":{"not proven":"unproved"}}})"));
  EXPECT_EQ(catalogue_of(Language::british).size(), 1U);
  std::ifstream file(LASTEGG_SOURCE_DIR "/words/data/en-GB.json");
  EXPECT_TRUE(take_catalogue(Language::british, std::string(std::istreambuf_iterator<char>(file), {})));
  EXPECT_EQ(catalogue_of(Language::british), before);
  EXPECT_FALSE(take_catalogue(Language::american, R"({"sections":{"code":{"not proven":"unproved"}}})"));
}

TEST(Catalogue, ReadsPlaceholdersAsFmtDoes) {
  EXPECT_EQ(placeholders_of("{} {:g} C"), (Placeholders{{0, {""}}, {1, {":g"}}}));
  EXPECT_EQ(placeholders_of("{1:g} C, {0}"), placeholders_of("{} {:g}"));
  EXPECT_NE(placeholders_of("{:.1f}"), placeholders_of("{:.2f}"));
  EXPECT_FALSE(placeholders_of("{name}"));
  EXPECT_FALSE(placeholders_of("with { and }x}"));
}

}  // namespace
}  // namespace lastegg
