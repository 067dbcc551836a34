#include "job/safety/preparation.h"

#include <algorithm>
#include <string>
#include <utility>

namespace lastegg::embedded {
extern const std::string_view job_safety_data_sentences_json;
}

namespace lastegg::safety {
namespace {

Result<std::vector<Sentence>> load() {
  const Error broken{ErrorKind::internal, "sentences.json cannot be read", "", "", "", ""};
  const auto document = nlohmann::json::parse(embedded::job_safety_data_sentences_json, nullptr, false);
  const auto list = document.is_object() ? document.find("sentences") : document.end();
  if (!document.is_object() || list == document.end() || !list->is_array()) return refuse(broken);
  std::vector<Sentence> out;
  for (const auto& entry : *list) {
    Sentence sentence;
    sentence.code = text_member(entry, "code");
    sentence.text = text_member(entry, "text");
    sentence.source = text_member(entry, "source");
    sentence.locator = text_member(entry, "locator");
    sentence.who = text_member(entry, "who") == "firm" ? Who::firm : Who::home;
    const std::string time = text_member(entry, "time");
    sentence.time = time == "day" ? Time::day : time == "after" ? Time::after : Time::before;
    sentence.quality = quality_named(text_member(entry, "quality")).value_or(Quality::from_memory);
    if (const auto when = entry.find("when"); when != entry.end() && when->is_object())
      for (const auto& [key, word] : when->items())
        if (word.is_string()) sentence.when[key] = word.get<std::string>();
    if (const auto stops = entry.find("hard_stop"); stops != entry.end() && stops->is_array())
      for (const auto& method : *stops)
        if (method.is_string()) sentence.hard_stop.push_back(method.get<std::string>());
    if (const auto params = entry.find("params"); params != entry.end() && params->is_object()) {
      for (const auto& [key, value] : params->items()) {
        auto datum = read_datum(value, value.is_object() ? text_member(value, "unit") : "",
                                "sentences.json: " + sentence.code + "/" + key);
        if (!datum) return refuse(datum.error());
        sentence.params[key] = std::move(*datum);
      }
    }
    out.push_back(std::move(sentence));
  }
  return out;
}

const Result<std::vector<Sentence>>& all() {
  static const Result<std::vector<Sentence>> loaded = load();
  return loaded;
}

/// Whether one of the words of "a|b|c" is in the set.
bool any_in(const std::string& words, const std::set<std::string>& known) {
  for (std::size_t begin = 0; begin <= words.size();) {
    const std::size_t end = std::min(words.find('|', begin), words.size());
    if (known.contains(words.substr(begin, end - begin))) return true;
    begin = end + 1;
  }
  return false;
}

}  // namespace

std::vector<Sentence> sentences_for(const Home& home) {
  std::vector<Sentence> out;
  if (!all()) return out;
  for (const Sentence& sentence : *all()) {
    bool holds = true;
    for (const auto& [what, words] : sentence.when) {
      if (what == "trait") holds &= any_in(words, home.traits);
      if (what == "risk") holds &= any_in(words, home.risks);
      if (what == "method") holds &= any_in(words, home.methods);
      if (what == "equipment") holds &= any_in(words, home.equipment);
    }
    if (holds) out.push_back(sentence);
  }
  return out;
}

Result<bool> data_state() {
  if (!all()) return refuse(all().error());
  return true;
}

}  // namespace lastegg::safety
