#include "job/survey/hazards.h"

#include <algorithm>
#include <string_view>

#include "physics/evidence/json.h"
#include "words/say.h"

namespace lastegg::embedded {
extern const std::string_view job_survey_data_hazards_json;
}

namespace lastegg::survey {
namespace {

std::vector<Hazard> load() {
  const auto data = nlohmann::json::parse(embedded::job_survey_data_hazards_json, nullptr, false);
  const auto& sources = data.at("sources");
  std::vector<Hazard> all;
  for (const auto& entry : data.at("hazards")) {
    Hazard hazard;
    hazard.key = entry.at("key");
    hazard.hard = entry.at("stop") == "hard";
    hazard.text = entry.at("text");
    hazard.who_decides = entry.at("who_decides");
    const std::string source = entry.at("source");
    hazard.source = sources.contains(source)      ? sources.at(source).at("text").get<std::string>()
                    : source == "memory"          ? to_say("From memory, to be checked")
                    : source == "common_practice" ? to_say("Common practice, no source")
                                                  : source;
    hazard.locator = entry.value("locator", "");
    hazard.quality = entry.at("quality");
    for (const auto& role : entry.at("settled_by")) hazard.settled_by.push_back(role);
    all.push_back(std::move(hazard));
  }
  return all;
}

}  // namespace

bool Hazard::settled(bool said, const std::string& role) const {
  return said && (!hard || std::find(settled_by.begin(), settled_by.end(), role) != settled_by.end());
}

const std::vector<Hazard>& hazards() {
  static const std::vector<Hazard> loaded = load();
  return loaded;
}

}  // namespace lastegg::survey
