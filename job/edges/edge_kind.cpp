#include "job/edges/edge_kind.h"

#include <fmt/format.h>

#include <algorithm>

#include "physics/evidence/json.h"
#include "words/say.h"

namespace lastegg::embedded {
extern const std::string_view job_edges_data_edge_kinds_json;
}

namespace lastegg {
namespace {

using nlohmann::json;

struct FamilyWords {
  ShapeFamily family;
  std::string_view word, meaning;
};
constexpr FamilyWords k_families[] = {
    {ShapeFamily::flat_stack, "flat_stack", to_say("layers that lie flat one under the other")},
    {ShapeFamily::fold, "fold", to_say("several cloths one on the other")},
    {ShapeFamily::cylinder, "cylinder", to_say("a covered cord")},
    {ShapeFamily::crack, "crack", to_say("a crack or joint between hard parts")},
    {ShapeFamily::cover_over_void, "void", to_say("a cover with a hollow behind it")},
    {ShapeFamily::none, "none", to_say("a shape without an honest model")}};

std::string text_in(const json& entry, const char* key) {
  const auto found = entry.find(key);
  return found == entry.end() ? std::string() : found->get<std::string>();
}

double number_in(const json& entry, const char* key) {
  const auto found = entry.find(key);
  return found == entry.end() ? 0.0 : found->get<double>();
}

struct Range {
  double least = 0, most = 0;
};
Range range_in(const json& entry, const char* key) {
  const auto found = entry.find(key);
  if (found == entry.end()) return {};
  return {(*found)[0].get<double>(), (*found)[1].get<double>()};
}

std::vector<LayerOf> layers_in(const json& entry, const char* key) {
  std::vector<LayerOf> layers;
  const auto found = entry.find(key);
  if (found == entry.end()) return layers;
  for (const json& layer : *found)
    layers.push_back({layer.at("material").get<std::string>(), layer.at("thickness_metres").get<double>()});
  return layers;
}

std::vector<EdgeKind> load() {
  std::vector<EdgeKind> kinds;
  const json data = json::parse(embedded::job_edges_data_edge_kinds_json, nullptr, false);
  for (const json& entry : data.at("kinds")) {
    EdgeKind kind;
    kind.key = entry.at("key").get<std::string>();
    kind.title = entry.at("title").get<std::string>();
    kind.text = entry.at("text").get<std::string>();
    kind.not_covered = text_in(entry, "not_covered");
    const std::string family = text_in(entry, "family");
    for (const FamilyWords& words : k_families) {
      if (words.word == family) kind.family = words.family;
    }
    kind.bound = entry.value("bound", false);
    kind.material = text_in(entry, kind.family == ShapeFamily::crack ? "solid" : "material");
    kind.behind = text_in(entry, "behind");
    kind.over = layers_in(entry, "over");
    kind.under = layers_in(entry, "under");
    kind.cloth_metres = number_in(entry, "cloth_metres");
    kind.cloths = number_in(entry, "cloths");
    kind.contact_gap_metres = number_in(entry, "contact_gap_metres");
    kind.hollow_radius_metres = number_in(entry, "hollow_radius_metres");
    if (text_in(entry, "mouth") == "inside_corner") kind.mouth = steam::Mouth::inside_corner;
    kind.cord_metres = number_in(entry, "cord_metres");
    kind.stands_out_share = number_in(entry, "stands_out_share");
    const Range depth = range_in(entry, "depth_metres");
    kind.depth = {depth.least, depth.most};
    const Range cloths = range_in(entry, "depth_cloths");
    kind.least_cloths = cloths.least;
    kind.most_cloths = cloths.most;
    kinds.push_back(std::move(kind));
  }
  return kinds;
}

const FamilyWords& words_of(ShapeFamily family) {
  for (const FamilyWords& words : k_families) {
    if (words.family == family) return words;
  }
  return k_families[5];
}

}  // namespace

std::string_view word(ShapeFamily family) {
  return words_of(family).word;
}

std::string_view meaning(ShapeFamily family) {
  return words_of(family).meaning;
}

const std::vector<ShapeFamily>& shape_families() {
  static const std::vector<ShapeFamily> families = [] {
    std::vector<ShapeFamily> all;
    for (const FamilyWords& words : k_families) all.push_back(words.family);
    return all;
  }();
  return families;
}

const std::vector<EdgeKind>& edge_kinds() {
  static const std::vector<EdgeKind> kinds = load();
  return kinds;
}

Result<EdgeKind> find_edge_kind(std::string_view key) {
  const auto& kinds = edge_kinds();
  const auto kind = std::find_if(kinds.begin(), kinds.end(), [&](const EdgeKind& k) { return k.key == key; });
  if (kind != kinds.end()) return *kind;
  return refuse(
      {ErrorKind::not_found, say("there is no edge kind \"{}\"", key), "/kind", std::string(key), "", ""});
}

}  // namespace lastegg
