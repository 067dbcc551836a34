#include "job/priority/where_bugs_sit.h"

#include <string_view>

#include "physics/evidence/json.h"

namespace lastegg::embedded {
extern const std::string_view job_priority_data_where_bugs_sit_json;
}

namespace lastegg {
namespace {

WhereBugsSit load() {
  WhereBugsSit table;
  const auto data = nlohmann::json::parse(embedded::job_priority_data_where_bugs_sit_json, nullptr, false);
  for (const auto& entry : data.at("items")) table.share_of_class[entry.at("key")] = entry.at("value");
  for (const auto& entry : data.at("seen")) table.factor_of_seen[entry.at("key")] = entry.at("value");
  for (const auto& [group, kinds] : data.at("counted_as").items())
    for (const auto& kind : kinds) table.class_of_kind[kind] = group;
  return table;
}

}  // namespace

const std::string& WhereBugsSit::class_of(const std::string& kind) const {
  static const std::string elsewhere = "elsewhere";
  const auto found = class_of_kind.find(kind);
  return found != class_of_kind.end() ? found->second : elsewhere;
}

const WhereBugsSit& where_bugs_sit() {
  static const WhereBugsSit loaded = load();
  return loaded;
}

}  // namespace lastegg
