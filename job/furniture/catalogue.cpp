#include "job/furniture/catalogue.h"

#include <fmt/format.h>

#include <algorithm>

#include "job/furniture/assembly.h"
#include "job/furniture/catalogue_rows.h"
#include "job/furniture/dimensions.h"
#include "words/say.h"

namespace lastegg::furniture {
namespace {

Error bad_input(std::string message, const std::string& key, std::string value) {
  return {ErrorKind::bad_input, std::move(message), "/" + key, std::move(value), "", ""};
}

template <class List>
bool lists(const List& list, const std::string& key) {
  return std::any_of(list.begin(), list.end(), [&](const auto& entry) { return entry.key == key; });
}

Error misplaced(const Kind& kind, const std::string& key, std::string value) {
  return bad_input(say("'{}' does not belong to this kind: {}", key, in_language(kind.title)), key,
                   std::move(value));
}

/// The refusal of what the kind does not take, if there is any.
std::optional<Error> refusal_of(const Kind& kind, const ItemRequest& request) {
  for (const auto& [key, value] : request.measures) {
    if (!lists(kind.measures, key)) return misplaced(kind, key, fmt::format("{:.6g}", value));
  }
  for (const std::string& key : request.options) {
    if (!lists(kind.options, key)) return misplaced(kind, key, "true");
  }
  for (const auto& [key, value] : request.counts) {
    const auto count =
        std::find_if(kind.counts.begin(), kind.counts.end(), [&](const Count& c) { return c.key == key; });
    if (count == kind.counts.end()) return misplaced(kind, key, std::to_string(value));
    if (value >= count->lowest && value <= count->highest) continue;
    Error error =
        bad_input(say("'{}' is {}; it goes from {} to {}", key, value, count->lowest, count->highest), key,
                  std::to_string(value));
    error.limit = std::to_string(value < count->lowest ? count->lowest : count->highest);
    error.unit = key;
    return error;
  }
  if (request.size && kind.usual_size.empty()) return misplaced(kind, "size", *request.size);
  // A covering or finish that is not known tells nothing and is let pass.
  if (request.covering.value_or(Covering::unknown) != Covering::unknown && !kind.usual_covering) {
    return misplaced(kind, "covering", std::string(name_of(*request.covering)));
  }
  if (request.finish.value_or(Finish::unknown) != Finish::unknown && !kind.finished) {
    return misplaced(kind, "finish", std::string(name_of(*request.finish)));
  }
  return std::nullopt;
}

std::vector<Kind> all_kinds() {
  std::vector<Kind> kinds = bed_kinds();
  for (const auto& more : {seat_kinds(), storage_kinds(), small_kinds(), room_kinds()}) {
    kinds.insert(kinds.end(), more.begin(), more.end());
  }
  return kinds;
}

// Builders put titles together in English; here they are told in the language in force. The catalogues hold
// each title whole, with its numbers left out, so that no piece of another grammar is glued to the next.
Result<Item> told(Result<Item> built) {
  if (!built) return built;
  built->title = title_in_language(built->title);
  for (Part& part : built->parts) part.title = title_in_language(part.title);
  for (Edge& edge : built->edges) edge.title = title_in_language(edge.title);
  for (Caution& caution : built->cautions) caution.text = in_language(caution.text);
  return built;
}

}  // namespace

std::string_view name_of(Group group) {
  for (const auto& meaning : k_groups) {
    if (meaning.word == group) return meaning.name;
  }
  return "small";
}

const std::vector<Kind>& catalogue() {
  static const std::vector<Kind> kinds = all_kinds();
  return kinds;
}

const Kind* kind_named(std::string_view name) {
  for (const Kind& kind : catalogue()) {
    if (kind.name == name) return &kind;
  }
  return nullptr;
}

Result<Item> build_item(const ItemRequest& request) {
  const auto& table = furniture_dimensions();
  if (!table) return refuse(table.error());
  const Kind* kind = kind_named(request.kind);
  if (kind == nullptr) {
    return refuse({ErrorKind::not_found, say("There is no kind of item '{}'", request.kind), "/item",
                   request.kind, "", ""});
  }
  if (auto refusal = refusal_of(*kind, request)) return refuse(*std::move(refusal));
  Assembly assembly(*table, *kind, request);
  kind->build(assembly);
  return told(assembly.finished());
}

}  // namespace lastegg::furniture
