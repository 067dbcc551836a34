// The data files damage_limits.json and coverings.json.
#include <fmt/format.h>

#include <array>

#include "physics/materials/materials.h"
#include "words/say.h"

namespace lastegg::embedded {
extern const std::string_view physics_materials_data_damage_limits_json;
extern const std::string_view physics_materials_data_coverings_json;
}  // namespace lastegg::embedded

namespace lastegg {
namespace {

using Json = nlohmann::json;

constexpr std::array<std::pair<HarmAction, std::string_view>, 6> k_action_words{{
    {HarmAction::allow, "allow"},
    {HarmAction::short_dwell, "short_dwell"},
    {HarmAction::avoid, "avoid"},
    {HarmAction::stop, "stop"},
    {HarmAction::hidden_test, "hidden_test"},
    {HarmAction::ask, "ask"},
}};

Error defect(const std::string& where, const std::string& what) {
  return {ErrorKind::internal, fmt::format("damage limits, {}: {}", where, what), where, "", "", ""};
}

Result<HarmAction> read_action(const Json& object, const std::string& where) {
  const std::string word = text_member(object, "action");
  for (const auto& [action, known] : k_action_words) {
    if (known == word) return action;
  }
  return refuse(defect(where, "no action of the closed list"));
}

Result<DamageLimit> read_limit(const Json& object) {
  DamageLimit limit;
  limit.key = text_member(object, "key");
  limit.title = text_member(object, "title");
  limit.when = text_member(object, "when");
  limit.effect = text_member(object, "effect");
  limit.source = text_member(object, "source");
  limit.locator = text_member(object, "locator");
  limit.note = text_member(object, "note");
  if (limit.key.empty() || limit.title.empty() || limit.effect.empty() || limit.source.empty())
    return refuse(defect(limit.key, "key, title, effect or source is missing"));
  const auto action = read_action(object, limit.key);
  if (!action) return refuse(action.error());
  limit.action = *action;
  if (const auto found = object.find("limit"); found != object.end()) {
    auto datum = read_datum(*found, "C", limit.key + "/limit");
    if (!datum) return refuse(datum.error());
    limit.limit_celsius = std::move(*datum);
  }
  const auto quality = quality_named(text_member(object, "quality"));
  if (!quality) return refuse(defect(limit.key, "no quality"));
  limit.quality = *quality;
  if (const auto found = object.find("seconds_allowed"); found != object.end()) {
    auto datum = read_datum(*found, "s", limit.key + "/seconds_allowed");
    if (!datum) return refuse(datum.error());
    limit.seconds_allowed = std::move(*datum);
  }
  if ((limit.action == HarmAction::short_dwell) != limit.seconds_allowed.has_value())
    return refuse(defect(limit.key, "short_dwell and seconds_allowed belong together"));
  return limit;
}

Result<std::vector<DamageLimit>> read_limits() {
  const auto document =
      parse_data(embedded::physics_materials_data_damage_limits_json, k_damage_limits_data_key);
  if (!document) return refuse(document.error());
  const auto entries = document->find("limits");
  if (entries == document->end() || !entries->is_array())
    return refuse(defect("limits", "the list is missing"));
  std::vector<DamageLimit> limits;
  for (const Json& object : *entries) {
    auto limit = read_limit(object);
    if (!limit) return refuse(limit.error());
    limits.push_back(std::move(*limit));
  }
  return limits;
}

const Result<std::vector<DamageLimit>>& limits_data() {
  static const Result<std::vector<DamageLimit>> read = read_limits();
  return read;
}

Result<Covering> read_covering(const Json& object) {
  Covering covering;
  covering.word = text_member(object, "covering");
  covering.title = text_member(object, "title");
  covering.material = text_member(object, "material");
  covering.reason = text_member(object, "reason");
  if (covering.word.empty() || covering.title.empty() || covering.reason.empty())
    return refuse(defect(covering.word, "covering, title or reason is missing"));
  const auto action = read_action(object, covering.word);
  if (!action) return refuse(action.error());
  covering.action = *action;
  if (const auto material = find_material(covering.material); !material)
    return refuse(defect(covering.word, material.error().message));
  const auto limits = object.find("damage_limits");
  if (limits == object.end() || !limits->is_array() || limits->empty())
    return refuse(defect(covering.word, "damage_limits is missing"));
  for (const Json& key : *limits) {
    if (!key.is_string()) return refuse(defect(covering.word, "damage_limits holds keys"));
    const auto known = find_damage_limit(key.get<std::string>());
    if (!known) return refuse(defect(covering.word, known.error().message));
    covering.damage_limits.push_back(known->key);
  }
  return covering;
}

Result<std::vector<Covering>> read_coverings() {
  const auto document = parse_data(embedded::physics_materials_data_coverings_json, k_coverings_data_key);
  if (!document) return refuse(document.error());
  const auto entries = document->find("coverings");
  if (entries == document->end() || !entries->is_array())
    return refuse(defect("coverings", "the list is missing"));
  std::vector<Covering> coverings;
  for (const Json& object : *entries) {
    auto covering = read_covering(object);
    if (!covering) return refuse(covering.error());
    coverings.push_back(std::move(*covering));
  }
  return coverings;
}

const Result<std::vector<Covering>>& coverings_data() {
  static const Result<std::vector<Covering>> read = read_coverings();
  return read;
}

}  // namespace

std::string_view action_word(HarmAction action) {
  for (const auto& [known, word] : k_action_words) {
    if (known == action) return word;
  }
  return "stop";
}

const std::vector<DamageLimit>& all_damage_limits() {
  static const std::vector<DamageLimit> nothing;
  return limits_data() ? *limits_data() : nothing;
}

Result<DamageLimit> find_damage_limit(std::string_view key) {
  if (!limits_data()) return refuse(limits_data().error());
  std::string similar;
  for (const DamageLimit& limit : *limits_data()) {
    if (limit.key == key) return limit;
    if (!key.empty() && limit.key.find(key.substr(0, 4)) != std::string::npos)
      similar += (similar.empty() ? "" : ", ") + limit.key;
  }
  return refuse({ErrorKind::not_found,
                 similar.empty() ? say("there is no finish \"{}\"", key.substr(0, 80))
                                 : say("there is no finish \"{}\"; there are {}", key.substr(0, 80), similar),
                 "", std::string(key.substr(0, 80)), "", ""});
}

const std::vector<Covering>& all_coverings() {
  static const std::vector<Covering> nothing;
  return coverings_data() ? *coverings_data() : nothing;
}

Result<Covering> find_covering(std::string_view word) {
  if (!coverings_data()) return refuse(coverings_data().error());
  std::string known;
  for (const Covering& covering : *coverings_data()) {
    if (covering.word == word) return covering;
    known += (known.empty() ? "" : ", ") + covering.word;
  }
  return refuse({ErrorKind::not_found,
                 say("there is no covering \"{}\"; there are {}", word.substr(0, 80), known), "",
                 std::string(word.substr(0, 80)), "", ""});
}

Result<bool> material_data_state() {
  if (const auto known = find_material("softwood"); !known) return refuse(known.error());
  if (!limits_data()) return refuse(limits_data().error());
  if (!coverings_data()) return refuse(coverings_data().error());
  return true;
}

}  // namespace lastegg
