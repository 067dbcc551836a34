#include "apps/cli/chosen_language.h"

#include <gtest/gtest.h>

#include <map>
#include <vector>

namespace lastegg::cli {
namespace {

Environment with(std::map<std::string, std::string> variables) {
  return [variables](const char* name) {
    const auto found = variables.find(name);
    return found == variables.end() ? std::string() : found->second;
  };
}

TEST(ChosenLanguage, WhatWasAskedForGoesBeforeTheEnvironment) {
  EXPECT_EQ(*chosen_language("en-GB", with({{"LASTEGG_LANGUAGE", "es"}})), Language::british);
  EXPECT_EQ(*chosen_language("", with({{"LASTEGG_LANGUAGE", "es"}, {"LC_ALL", "C"}})), Language::spanish);
}

TEST(ChosenLanguage, IsReadBeforeTheParserSoThatHelpSpeaksItToo) {
  const auto in = [](std::vector<const char*> words) {
    return language_in(static_cast<int>(words.size()), words.data());
  };
  EXPECT_EQ(in({"lastegg", "plan", "--language", "es", "job"}), "es");
  EXPECT_EQ(in({"lastegg", "--language=en-GB", "--help"}), "en-GB");
  EXPECT_EQ(in({"lastegg", "--languages", "es"}), "");
  EXPECT_EQ(in({"lastegg", "--language"}), "");
}

TEST(ChosenLanguage, FollowsTheLocaleInTheOrderOfPosix) {
  EXPECT_EQ(*chosen_language("", with({})), Language::american);
  EXPECT_EQ(*chosen_language("", with({{"LANG", "es_MX.UTF-8"}})), Language::spanish);
  EXPECT_EQ(*chosen_language("", with({{"LANG", "es"}})), Language::spanish);
  EXPECT_EQ(*chosen_language("", with({{"LANG", "est_EE"}})), Language::american);
  EXPECT_EQ(*chosen_language("", with({{"LANG", "en_GB.UTF-8"}})), Language::british);
  EXPECT_EQ(*chosen_language("", with({{"LANG", "es_ES"}, {"LC_MESSAGES", "en_GB"}})), Language::british);
  EXPECT_EQ(*chosen_language("", with({{"LC_MESSAGES", "en_GB"}, {"LC_ALL", "C"}})), Language::american);
}

TEST(ChosenLanguage, RefusesATagThatIsNotKnown) {
  for (const auto& [asked, own] : std::map<std::string, std::string>{{"fr", ""}, {"", "ES"}}) {
    const auto refused = chosen_language(asked, with({{"LASTEGG_LANGUAGE", own}}));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, ErrorKind::bad_input);
    EXPECT_NE(refused.error().message.find(asked + own), std::string::npos) << refused.error().message;
    EXPECT_NE(refused.error().message.find("en-US, en-GB, es"), std::string::npos) << refused.error().message;
  }
}

}  // namespace
}  // namespace lastegg::cli
