// Feeds the engine's one door: the first line of the input names the question, the rest is the request. Half
// of the mutations change the request as JSON (a member gone, doubled, of another type, an extreme number),
// since bytes changed at random seldom get past the syntax.
#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <random>
#include <string>
#include <string_view>
#include <vector>

#include "engine/ask.h"
#include "engine/document.h"
#include "engine/json.h"

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* bytes, std::size_t size, std::size_t most);

namespace {

using lastegg::Json;

[[noreturn]] void fail(const char* what, const std::string& text) {
  std::fprintf(stderr, "%s: %s\n", what, text.c_str());
  std::abort();
}

struct Asked {
  std::string_view question, request;
};

Asked split(const std::uint8_t* bytes, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(bytes), size);
  const std::size_t end = text.find('\n');
  if (end == std::string_view::npos) return {text, {}};
  return {text.substr(0, end), text.substr(end + 1)};
}

// Questions that run an ensemble take seconds under the sanitizers even at its smallest. A short run only
// reads their requests; with LASTEGG_FUZZ_DEEP set they are solved as well, with the smallest ensemble.
bool is_slow(std::string_view question) {
  return question == "fold_test" || question == "pace" || question == "plan";
}

void read_slow(const Asked& asked) noexcept {
  const lastegg::Result<const lastegg::Question*> question = lastegg::question_named(asked.question);
  const lastegg::Result<Json> document = lastegg::parse_document(asked.request);
  if (!question || !document) return;
  const lastegg::Result<Json> request = lastegg::read((*question)->request, *document);
  if (!request && request.error().kind == lastegg::ErrorKind::internal)
    fail("an internal error", request.error().message);
  static const bool is_deep = std::getenv("LASTEGG_FUZZ_DEEP") != nullptr;
  if (!request || !is_deep || !request->contains("samples")) return;
  Json small = *request;
  small["samples"] = 64;
  const lastegg::Result<lastegg::Answer> answer = (*question)->solve(small);
  if (!answer && answer.error().kind == lastegg::ErrorKind::internal)
    fail("an internal error", answer.error().message);
}

// ask() is noexcept: whatever is thrown inside ends the program.
void ask_one(const Asked& asked) {
  if (is_slow(asked.question)) return read_slow(asked);
  const lastegg::AskOutcome outcome = lastegg::ask(asked.question, asked.request);
  const Json answer = Json::parse(outcome.text, nullptr, false);
  if (!answer.is_object()) fail("the outcome is no JSON object", outcome.text);
  if (!outcome.ok) {
    if (!answer.contains("error") || !answer["error"].contains("kind"))
      fail("a refusal without a kind", outcome.text);
    if (answer["error"]["kind"] == "internal") fail("an internal error", outcome.text);
    return;
  }
  if (!answer.contains("engine") || !answer.contains("warnings"))
    fail("an answer without its frame", outcome.text);
}

// All places of a document, by their parents: what a mutation may change.
void collect(Json& value, std::vector<Json*>& places) {
  places.push_back(&value);
  if (!value.is_structured()) return;
  for (Json& part : value) collect(part, places);
}

Json odd_value(std::mt19937& random) {
  static const std::array<const char*, 22> k_values = {
      "null",   "true",    "0",          "-1",       "1",         "1e308",   "-1e308", "1e-308",
      "4e9",    "-0.0",    "0.5",        "100",      "[]",        "{}",      "\"\"",   "[[]]",
      "273.15", "1000000", "\"1 in/s\"", "\"71 C\"", "\"160 F\"", "\"none\""};
  return Json::parse(k_values[random() % k_values.size()]);
}

void change(Json& document, std::mt19937& random) {
  std::vector<Json*> places;
  collect(document, places);
  Json& place = *places[random() % places.size()];
  switch (random() % 6) {
    case 0:
      place = odd_value(random);
      break;
    case 1:
      if (place.is_number()) place = place.get<double>() * (random() % 2 == 0 ? 10.0 : 0.1);
      break;
    case 2:
      if (place.is_number()) place = -place.get<double>();
      break;
    case 3:
      if (place.is_array() && !place.empty()) place.push_back(place[random() % place.size()]);
      break;
    case 4:
      if (place.is_array() && !place.empty()) place.erase(random() % place.size());
      if (place.is_object() && !place.empty()) {
        auto member = place.begin();
        std::advance(member, random() % place.size());
        place.erase(member);
      }
      break;
    default:
      if (place.is_object()) place["unheard_of"] = odd_value(random);
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  ask_one(split(bytes, size));
  return 0;
}

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* bytes, std::size_t size, std::size_t most,
                                               unsigned int seed) {
  std::mt19937 random(seed);
  const Asked asked = split(bytes, size);
  Json document = Json::parse(asked.request, nullptr, false);
  if (document.is_discarded() || random() % 2 == 0) return LLVMFuzzerMutate(bytes, size, most);
  for (std::size_t changes = 1 + random() % 3; changes > 0; --changes) change(document, random);
  const std::string text = std::string(asked.question) + "\n" + lastegg::dumped(document);
  if (text.size() > most) return LLVMFuzzerMutate(bytes, size, most);
  std::memcpy(bytes, text.data(), text.size());
  return text.size();
}
