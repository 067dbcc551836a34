#include "job/survey/looks.h"

#include <map>
#include <string>
#include <string_view>

#include "physics/evidence/json.h"

namespace lastegg::embedded {
extern const std::string_view job_survey_data_looks_json;
}

namespace lastegg::survey {
namespace {

Looks load() {
  const auto data = nlohmann::json::parse(embedded::job_survey_data_looks_json, nullptr, false);
  std::map<std::string, double> values;
  for (const char* list : {"finds", "beliefs", "classes"})
    for (const auto& entry : data.at(list)) values[entry.at("key")] = entry.at("value");
  Looks table;
  table.finds = {values.at("eye"), values.at("light_and_card"), values.at("opened"), values.at("trap"),
                 values.at("told")};
  table.prior_weight_bugs = values.at("prior_weight_bugs");
  table.bed_weight_bugs = values.at("bed_weight_bugs");
  table.edge_share = values.at("edge_share");
  table.fall_metres = values.at("fall_metres");
  table.other_room_metres = values.at("other_room_metres");
  table.up_to_12 = static_cast<int>(values.at("up_to_12"));
  table.up_to_30 = static_cast<int>(values.at("up_to_30"));
  return table;
}

}  // namespace

const Looks& looks() {
  static const Looks loaded = load();
  return loaded;
}

}  // namespace lastegg::survey
