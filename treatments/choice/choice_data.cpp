#include "treatments/choice/choice_data.h"

#include <fmt/format.h>

#include <utility>

namespace lastegg::embedded {
extern const std::string_view treatments_choice_data_methods_json;
extern const std::string_view treatments_choice_data_rules_json;
extern const std::string_view treatments_choice_data_item_traits_json;
}  // namespace lastegg::embedded

namespace lastegg::method_choice {
namespace {

using nlohmann::json;

Error broken(const std::string& where, const std::string& what) {
  return {ErrorKind::internal, fmt::format("{}: {}", where, what), where, "", "", ""};
}

json document_of(std::string_view text) {
  return json::parse(text, nullptr, false);
}

const json& list_of(const json& document, const char* key) {
  static const json none = json::array();
  if (!document.is_object()) return none;
  const auto found = document.find(key);
  return found == document.end() || !found->is_array() ? none : *found;
}

Quality quality_of(const json& entry) {
  return quality_named(text_member(entry, "quality")).value_or(Quality::from_memory);
}

std::optional<double> number_member(const json& entry, const char* key) {
  const auto found = entry.find(key);
  return found == entry.end() || !found->is_number() ? std::nullopt
                                                     : std::optional<double>(found->get<double>());
}

Role role_named(const std::string& word) {
  return word == "first"     ? Role::first
         : word == "contain" ? Role::contain
         : word == "remove"  ? Role::remove
                             : Role::kill;
}

Result<Method> read_method(const json& entry, const std::string& where) {
  Method method;
  method.key = text_member(entry, "key");
  method.title = text_member(entry, "title");
  method.text = text_member(entry, "text");
  method.wetting = text_member(entry, "wetting");
  method.harm = text_member(entry, "harm");
  method.role = role_named(text_member(entry, "role"));
  const std::pair<const char*, Datum*> numbers[] = {{"hands_minutes", &method.hands_minutes},
                                                    {"clock_minutes", &method.clock_minutes},
                                                    {"watts", &method.watts}};
  for (const auto& [key, target] : numbers) {
    const auto found = entry.find(key);
    if (found == entry.end()) return refuse(broken(where, std::string("no ") + key));
    auto datum = read_datum(*found, std::string_view(key) == "watts" ? "W" : "min", where + "/" + key);
    if (!datum) return refuse(datum.error());
    *target = std::move(*datum);
  }
  for (const json& one : list_of(entry, "evidence"))
    method.evidence.push_back({text_member(one, "stage"), text_member(one, "text"),
                               text_member(one, "source"), text_member(one, "locator"),
                               number_member(one, "celsius"), number_member(one, "minutes"),
                               quality_of(one)});
  return method;
}

Rule read_rule(const json& entry) {
  Rule rule;
  rule.code = text_member(entry, "code");
  rule.text = text_member(entry, "text");
  rule.source = text_member(entry, "source");
  rule.locator = text_member(entry, "locator");
  rule.quality = quality_of(entry);
  for (const json& method : list_of(entry, "methods"))
    if (method.is_string()) rule.methods.push_back(method.get<std::string>());
  if (const auto when = entry.find("when"); when != entry.end() && when->is_object())
    for (const auto& [key, value] : when->items())
      if (value.is_string()) rule.when[key] = value.get<std::string>();
  const std::string standing = text_member(entry, "standing"), grounds = text_member(entry, "grounds");
  rule.standing = standing == "barred"          ? Standing::barred
                  : standing == "needs_consent" ? Standing::needs_consent
                                                : Standing::needs_check;
  rule.grounds = grounds == "hazard"   ? Grounds::hazard
                 : grounds == "damage" ? Grounds::damage
                                       : Grounds::practical;
  const auto role = entry.find("needs_role");
  rule.needs_role = role != entry.end() && role->is_boolean() && role->get<bool>();
  return rule;
}

Result<Tables> load() {
  Tables out;
  const json methods = document_of(embedded::treatments_choice_data_methods_json);
  const json rules = document_of(embedded::treatments_choice_data_rules_json);
  const json traits = document_of(embedded::treatments_choice_data_item_traits_json);
  const json& listed = list_of(methods, "methods");
  for (std::size_t i = 0; i < listed.size(); ++i) {
    auto method = read_method(listed[i], fmt::format("methods.json: /methods/{}", i));
    if (!method) return refuse(method.error());
    out.methods.push_back(std::move(*method));
  }
  for (const json& entry : list_of(rules, "rules")) out.rules.push_back(read_rule(entry));
  for (const json& entry : list_of(traits, "kinds"))
    for (const json& trait : list_of(entry, "traits"))
      if (trait.is_string()) out.traits[text_member(entry, "kind")].insert(trait.get<std::string>());
  if (out.methods.empty()) return refuse(broken("methods.json", "no methods"));
  if (out.rules.empty()) return refuse(broken("rules.json", "no rules"));
  if (out.traits.empty()) return refuse(broken("item_traits.json", "no kinds"));
  return out;
}

}  // namespace

const Result<Tables>& tables() {
  static const Result<Tables> loaded = load();
  return loaded;
}

const std::vector<Method>& methods() {
  static const std::vector<Method> none;
  return tables() ? tables()->methods : none;
}

const Method* method_named(std::string_view key) {
  for (const Method& method : methods())
    if (method.key == key) return &method;
  return nullptr;
}

const std::set<std::string>* traits_of(std::string_view kind) {
  if (!tables()) return nullptr;
  const auto found = tables()->traits.find(kind);
  return found == tables()->traits.end() ? nullptr : &found->second;
}

Result<bool> data_state() {
  if (!tables()) return refuse(tables().error());
  return true;
}

}  // namespace lastegg::method_choice
