#include "job/visits/task_minutes.h"

#include <string_view>
#include <utility>

namespace lastegg::embedded {
extern const std::string_view job_visits_data_task_minutes_json;
}

namespace lastegg::visits {
namespace {

constexpr const char* k_tasks[] = {
    "arrive",    "start_check", "strip",           "vacuum",           "carry_load", "fold_load",
    "dismantle", "turn",        "open_cover",      "edge_change",      "encase",     "isolate",
    "put_back",  "hand_over",   "chamber_setting", "chamber_clearing", "discard"};
constexpr const char* k_numbers[] = {"steam_spread", "continuous_share", "vacuum_watts"};

Result<void> check(const TaskMinutes& read) {
  const auto lacks = [](const char* key) {
    return refuse({ErrorKind::internal, std::string("task_minutes.json has no ") + key, "", "", "", ""});
  };
  for (const char* key : k_tasks)
    if (!read.tasks.contains(key)) return lacks(key);
  for (const char* key : k_numbers)
    if (!read.numbers.contains(key)) return lacks(key);
  return {};
}

Result<TaskMinutes> load() {
  TaskMinutes out;
  const auto document = nlohmann::json::parse(embedded::job_visits_data_task_minutes_json, nullptr, false);
  for (const char* group : {"tasks", "numbers"}) {
    const auto found = document.is_object() ? document.find(group) : document.end();
    if (!document.is_object() || found == document.end() || !found->is_object())
      return refuse({ErrorKind::internal, std::string("task_minutes.json has no ") + group, "", "", "", ""});
    for (const auto& [key, value] : found->items()) {
      const std::string unit = value.is_object() ? text_member(value, "unit") : "";
      auto datum = read_datum(value, unit, "task_minutes.json: /" + std::string(group) + "/" + key);
      if (!datum) return refuse(datum.error());
      (std::string_view(group) == "tasks" ? out.tasks : out.numbers)[key] = std::move(*datum);
    }
  }
  if (const auto whole = check(out); !whole) return refuse(whole.error());
  return out;
}

}  // namespace

const Result<TaskMinutes>& task_minutes() {
  static const Result<TaskMinutes> loaded = load();
  return loaded;
}

double at(const Datum& datum, Spread spread) {
  if (!datum.range || spread == Spread::likely) return datum.value;
  return spread == Spread::low ? datum.range->low : datum.range->high;
}

}  // namespace lastegg::visits
