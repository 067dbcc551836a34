#include "job/furniture/item.h"

namespace lastegg::furniture {
namespace {

template <class List, class Word>
std::string_view name_in(const List& list, Word word) {
  for (const auto& meaning : list) {
    if (meaning.word == word) return meaning.name;
  }
  return "unknown";
}

template <class Word, std::size_t count>
std::optional<Word> word_in(const std::array<Meaning<Word>, count>& list, std::string_view name) {
  for (const auto& meaning : list) {
    if (meaning.name == name) return meaning.word;
  }
  return std::nullopt;
}

}  // namespace

std::string_view name_of(EdgeKind kind) {
  return name_in(k_edge_kinds, kind);
}

std::string_view name_of(Covering covering) {
  return name_in(k_coverings, covering);
}

std::string_view name_of(Fill fill) {
  return name_in(k_fills, fill);
}

std::string_view name_of(Finish finish) {
  return name_in(k_finishes, finish);
}

std::optional<Covering> covering_named(std::string_view name) {
  return word_in(k_coverings, name);
}

std::optional<Finish> finish_named(std::string_view name) {
  return word_in(k_finishes, name);
}

std::optional<EdgeKind> edge_kind_named(std::string_view name) {
  return word_in(k_edge_kinds, name);
}

}  // namespace lastegg::furniture
