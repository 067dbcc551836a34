#include "words/say.h"

#include <gtest/gtest.h>

#include <thread>

namespace lastegg {
namespace {

TEST(Say, SpeaksTheLanguageInForceAndEnglishWithoutOne) {
  EXPECT_EQ(say("entry {} of {}", 2, "x"), "entry 2 of x");
  const InLanguage spanish(Language::spanish);
  EXPECT_EQ(say("entry {} of {}", 2, "x"), "entrada 2 de x");
  EXPECT_EQ(in_language("not proven"), "no demostrado");
}

TEST(Say, FallsBackToEnglish) {
  const InLanguage spanish(Language::spanish);
  const std::string nobody_says = "a sentence {}";  // kept apart: the check of the languages reads say("...")
  EXPECT_EQ(in_language(nobody_says), nobody_says);
  const InLanguage british(Language::british);
  EXPECT_EQ(in_language("Outlets and electronics are never steamed."),
            "Sockets and electronics are never steamed.");
  EXPECT_EQ(in_language("not proven"), "not proven");
}

TEST(Say, TheLanguageEndsWithItsScopeAndStaysOnItsThread) {
  {
    const InLanguage spanish(Language::spanish);
    {
      const InLanguage british(Language::british);
      EXPECT_EQ(language_in_force(), Language::british);
    }
    EXPECT_EQ(language_in_force(), Language::spanish);
    Language elsewhere = Language::spanish;
    std::thread([&] { elsewhere = language_in_force(); }).join();
    EXPECT_EQ(elsewhere, Language::american);
  }
  EXPECT_EQ(language_in_force(), Language::american);
}

TEST(Say, LanguagesAreFoundByTheirTagAlone) {
  EXPECT_EQ(language_tagged("es"), Language::spanish);
  EXPECT_FALSE(language_tagged("ES"));
  EXPECT_FALSE(language_tagged(""));
  for (const LanguageTag& one : k_languages) EXPECT_EQ(language_tagged(tag_of(one.language)), one.language);
}

TEST(Titles, AreFoundWholeOrInPiecesWithTheirNumbers) {
  const char* const title = "Tuft row 2, back cushion 13";
  EXPECT_EQ(title_in_language(title), title);
  const InLanguage spanish(Language::spanish);
  EXPECT_EQ(title_in_language(title), "Fila de capitonés 2, cojín del respaldo 13");
  EXPECT_EQ(title_in_language("Sofa, 3 seats, 2.10 m wide"), "Sofá, 3 plazas, 2.10 m de ancho");
  EXPECT_EQ(title_in_language("The torn place, left"), "The torn place, a la izquierda");
}

TEST(Titles, PiecesMakeUpTheTitle) {
  EXPECT_EQ(pieces_of_title("a, b, c"), (std::vector<std::string_view>{"a", ", b", ", c"}));
  EXPECT_TRUE(pieces_of_title("").empty());
}

}  // namespace
}  // namespace lastegg
