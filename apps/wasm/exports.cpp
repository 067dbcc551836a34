// What JavaScript can call. Memory belongs to the caller: it asks for room, writes question and request
// there, asks, reads the outcome, and frees all three. apps/wasm/lastegg_wasm.mjs does so.
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <string_view>

#include "engine/ask.h"
#include "words/catalogue.h"

namespace {

/// Head of an outcome in memory; `length` bytes of UTF-8 follow.
struct OutcomeHead {
  std::uint32_t ok;
  std::uint32_t length;
};

}  // namespace

extern "C" {

__attribute__((export_name("lastegg_alloc"))) void* lastegg_alloc(std::uint32_t bytes) {
  return std::malloc(bytes > 0 ? bytes : 1);
}

__attribute__((export_name("lastegg_free"))) void lastegg_free(void* memory) {
  std::free(memory);
}

/// The outcome of asking, as an OutcomeHead and its text; null when memory has run out.
__attribute__((export_name("lastegg_ask"))) void* lastegg_ask(const char* question,
                                                              std::uint32_t question_length,
                                                              const char* request,
                                                              std::uint32_t request_length) {
  const lastegg::AskOutcome outcome =
      lastegg::ask(std::string_view(question, question_length), std::string_view(request, request_length));
  const OutcomeHead head{outcome.ok ? 1U : 0U, static_cast<std::uint32_t>(outcome.text.size())};
  void* memory = std::malloc(sizeof head + outcome.text.size());
  if (memory == nullptr) return nullptr;
  std::memcpy(memory, &head, sizeof head);
  std::memcpy(static_cast<char*>(memory) + sizeof head, outcome.text.data(), outcome.text.size());
  return memory;
}

/// Takes the sentences of a language (words/data/es.json) before anything is asked in it: 1 when it has.
__attribute__((export_name("lastegg_words"))) std::uint32_t lastegg_words(const char* tag,
                                                                          std::uint32_t tag_length,
                                                                          const char* text,
                                                                          std::uint32_t text_length) {
  const auto language = lastegg::language_tagged(std::string_view(tag, tag_length));
  return language && lastegg::take_catalogue(*language, std::string_view(text, text_length)) ? 1U : 0U;
}

}  // extern "C"
