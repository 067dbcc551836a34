#include "apps/cli/job_requests.h"

#include <algorithm>
#include <string>

#include "job/furniture/catalogue.h"

namespace lastegg::cli {
namespace {

const Json* entity(const Json& list, const Json& owner, const char* key) {
  if (!owner.contains(key)) return nullptr;
  for (const Json& one : list) {
    if (one.at("id") == owner.at(key)) return &one;
  }
  return nullptr;
}

void copy(const Json& from, Json& to, std::initializer_list<const char*> keys) {
  for (const char* key : keys) {
    if (from.contains(key) && !from.at(key).is_null()) to[key] = from.at(key);
  }
}

/// What was told of an item, as far as its kind takes it.
Json furniture_request_of(const Json& item) {
  Json piece{{"item", item.at("kind")}};
  copy(item, piece, {"size", "covering", "finish", "wetting_limit_grams_per_m2"});
  const furniture::Kind* kind = furniture::kind_named(item.at("kind").get<std::string>());
  if (kind == nullptr) return piece;  // the plan refuses it with its name
  const auto copy_all = [&](const auto& entries) {
    for (const auto& entry : entries) copy(item, piece, {entry.key.c_str()});
  };
  copy_all(kind->measures);
  copy_all(kind->counts);
  copy_all(kind->options);
  return piece;
}

Json fold_test_of(const Json& test, const Json& state) {
  const Json& kit = state.at("kit");
  Json out;
  const Json* machine = entity(kit.at("machines"), test, "machine");
  const Json* head = entity(kit.at("heads"), test, "head");
  const Json* towel = entity(kit.at("towels"), test, "towel");
  const Json* probe = entity(kit.at("probes"), test, "probe");
  out["machine"] = machine != nullptr ? machine->value("title", "machine") : "machine";
  out["head"] = "head";
  if (head != nullptr) {
    Json named{{"name", head->value("title", "head")}};
    copy(*head, named, {"length_metres", "width_metres"});
    out["head"] = named;
  }
  if (towel != nullptr) out["towel"] = towel->value("use", "none");
  if (probe != nullptr) {
    Json lag = Json::object();
    if (probe->contains("dip") && probe->at("dip").is_object())
      copy(*probe, lag, {"dip"});
    else
      copy(*probe, lag, {"time_constant_seconds"});
    if (!lag.empty()) out["probe"] = lag;
  }
  for (const char* owner : {"job", "dwelling"}) {
    if (state.contains(owner) && state.at(owner).is_object())
      copy(state.at(owner), out, {"elevation_metres"});
  }
  copy(test, out, {"start_celsius", "elevation_metres", "covering"});
  if (test.contains("cloth"))
    out["cloth"] = Json::array({{{"material", test.at("cloth")}, {"thickness_metres", 0.001}}});
  out["readings"] = Json::array();
  for (const Json& reading : test.at("readings")) {
    Json row;
    if (reading.contains("pace_metres_per_second"))
      copy(reading, row, {"pace_metres_per_second"});
    else if (reading.contains("hold_seconds"))
      copy(reading, row, {"hold_seconds"});
    else
      copy(reading, row, {"distance_metres", "seconds"});
    copy(reading, row, {"kind", "covering", "peak_celsius"});
    if (reading.value("kind", "pass") != "coupon") copy(reading, row, {"layers"});
    out["readings"].push_back(std::move(row));
  }
  return out;
}

}  // namespace

Result<Json> plan_request_of(const Json& state) {
  Json request;
  request["items"] = Json::array();
  for (const Json& item : state.at("items")) {
    request["items"].push_back(furniture_request_of(item));
  }
  if (request["items"].empty()) {
    return refuse({ErrorKind::bad_input, "the job has no items yet; a plan needs at least one", "/items", "0",
                   "1", "items"});
  }
  std::vector<const Json*> tests;
  for (const Json& test : state.at("fold_tests")) {
    if (!test.at("readings").empty()) tests.push_back(&test);
  }
  if (state.contains("settings") && state.at("settings").is_object() &&
      state.at("settings").contains("fold_test")) {
    const auto named = std::find_if(tests.begin(), tests.end(), [&](const Json* test) {
      return test->at("id") == state.at("settings").at("fold_test");
    });
    if (named != tests.end()) std::rotate(tests.begin(), named, named + 1);
  }
  if (tests.empty()) return request;
  request["fold_test"] = Json::array();
  for (const Json* test : tests) request["fold_test"].push_back(fold_test_of(*test, state));
  return request;
}

}  // namespace lastegg::cli
