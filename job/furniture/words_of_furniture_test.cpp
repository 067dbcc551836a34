// Every title, part, caution and measure of every kind has its Spanish, and the section "furniture" of the
// catalogue holds nothing that no kind says. Builders put titles together, so they are built rather than
// searched for in the source.
#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <string>

#include "job/furniture/catalogue.h"
#include "job/furniture/dimensions.h"
#include "words/say.h"

namespace lastegg::furniture {
namespace {

std::set<std::string> held() {
  std::ifstream file(LASTEGG_SOURCE_DIR "/words/data/es.json");
  const auto document = nlohmann::json::parse(file);
  std::set<std::string> keys;
  for (const auto& [english, told] : document.at("sections").at("furniture").items()) keys.insert(english);
  return keys;
}

// "Tuft row 2" as its entry: "Tuft row {}".
std::string entry_of(std::string_view piece) {
  std::string out;
  for (std::size_t i = 0; i < piece.size(); ++i) {
    const bool digit = piece[i] >= '0' && piece[i] <= '9';
    const bool point = piece[i] == '.' && i > 0 && i + 1 < piece.size() && piece[i - 1] >= '0' &&
                       piece[i - 1] <= '9' && piece[i + 1] >= '0' && piece[i + 1] <= '9';
    if (!digit && !point)
      out += piece[i];
    else if (out.empty() || !out.ends_with("{}"))
      out += "{}";
  }
  return out;
}

class Said {
 public:
  explicit Said(std::set<std::string> keys) : keys_(std::move(keys)) {}

  void text(const std::string& english) {
    if (!has_words(english)) return;
    if (keys_.contains(english))
      said_.insert(english);
    else
      missing_.insert(english);
  }

  void title(const std::string& english) {
    if (const std::string whole = entry_of(english); keys_.contains(whole)) {
      said_.insert(whole);
      return;
    }
    for (const std::string_view piece : pieces_of_title(english)) text(entry_of(piece));
  }

  const std::set<std::string>& missing() const { return missing_; }
  std::set<std::string> unsaid() const {
    std::set<std::string> out;
    for (const std::string& key : keys_)
      if (!said_.contains(key)) out.insert(key);
    return out;
  }

 private:
  // A size such as "80 x 200 cm" is the same in every language.
  static bool has_words(const std::string& text) {
    const std::string entry = entry_of(text);
    return entry != "{} x {} cm" && !entry.empty();
  }

  std::set<std::string> keys_, said_, missing_;
};

void tell(const Item& item, Said& said) {
  said.title(item.title);
  for (const Part& part : item.parts) said.title(part.title);
  for (const Edge& edge : item.edges) said.title(edge.title);
  for (const Caution& caution : item.cautions) said.text(caution.text);
}

ItemRequest plain(const Kind& kind) {
  ItemRequest request;
  request.kind = kind.name;
  return request;
}

// Every way in which a kind can be asked for, as far as its words depend on it.
std::vector<ItemRequest> requests_of(const Kind& kind) {
  std::vector<ItemRequest> all{plain(kind)};
  for (const Option& option : kind.options) {
    const std::size_t size = all.size();
    for (std::size_t i = 0; i < size; ++i) {
      all.push_back(all[i]);
      all.back().options.insert(option.key);
    }
  }
  for (const Count& count : kind.counts) {
    const std::size_t size = all.size();
    for (std::size_t i = 0; i < size; ++i) {
      for (int value = count.lowest; value <= count.highest; ++value) {
        all.push_back(all[i]);
        all.back().counts[count.key] = value;
      }
    }
  }
  if (!kind.usual_size.empty()) {
    for (const MattressSize& size : furniture_dimensions()->mattress_sizes) {
      all.push_back(plain(kind));
      all.back().size = size.name;
    }
    all.push_back(plain(kind));
    all.back().measures["width_metres"] = 1.55;
  }
  return all;
}

TEST(WordsOfFurniture, AreAllHeldAndNoneIsHeldInVain) {
  Said said(held());
  std::size_t built = 0;
  for (const Kind& kind : catalogue()) {
    said.text(kind.title);
    for (const Measure& measure : kind.measures) said.text(measure.text);
    for (const Count& count : kind.counts) said.text(count.text);
    for (const Option& option : kind.options) said.text(option.text);
    for (const ItemRequest& request : requests_of(kind)) {
      const auto item = build_item(request);
      if (!item) continue;  // more seats than its usual width takes
      ++built;
      tell(*item, said);
    }
  }
  for (const MattressSize& size : furniture_dimensions()->mattress_sizes) said.text(size.title);
  EXPECT_GT(built, 200U);
  for (const std::string& english : said.missing()) ADD_FAILURE() << "no Spanish for: " << english;
  for (const std::string& english : said.unsaid()) ADD_FAILURE() << "no kind says: " << english;
}

TEST(WordsOfFurniture, ChangeNothingButTheWords) {
  for (const Kind& kind : catalogue()) {
    const auto english = build_item(plain(kind));
    const InLanguage spoken(Language::spanish);
    const auto spanish = build_item(plain(kind));
    ASSERT_TRUE(english && spanish);
    EXPECT_NE(english->title + english->edges.front().title, spanish->title + spanish->edges.front().title);
    ASSERT_EQ(english->edges.size(), spanish->edges.size());
    for (std::size_t i = 0; i < english->edges.size(); ++i) {
      EXPECT_EQ(english->edges[i].id, spanish->edges[i].id);
      EXPECT_EQ(english->edges[i].part, spanish->edges[i].part);
      EXPECT_EQ(english->edges[i].length_metres, spanish->edges[i].length_metres);
    }
  }
}

}  // namespace
}  // namespace lastegg::furniture
