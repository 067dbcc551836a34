#include "engine/treated_basis.h"

#include <string_view>
#include <utility>

#include "engine/calibration_json.h"
#include "engine/job_requests.h"
#include "engine/pace_basis.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/state_values.h"

namespace lastegg {
namespace {

std::string text_in(const Json& one, const char* key) {
  const Json* found = one.is_object() ? member_if(one, key) : nullptr;
  return found != nullptr && found->is_string() ? found->get<std::string>() : std::string();
}

Json entity_of(const Json& state, const char* list, const std::string& id) {
  const Json* found = member_if(state, list);
  if (found == nullptr || !found->is_array() || id.empty()) return nullptr;
  for (const Json& one : *found) {
    if (text_in(one, "id") == id) return one;
  }
  return nullptr;
}

// A fold test as as_treated takes it.
Shape fold_test_shape() {
  for (const Field& field : as_treated_question().request.fields) {
    if (field.key == "fold_test") return field.shape.alternatives.front();
  }
  return {};
}

// The members of a fold test that as_treated takes; `earlier` tells drift and is no part of it.
Json asked_test(const Json& told, int samples) {
  Json asked = Json::object();
  for (const Field& field : fold_test_shape().fields) {
    if (const Json* member = member_if(told, field.key)) asked[field.key] = *member;
  }
  asked["samples"] = samples;
  return asked;
}

constexpr std::string_view k_test = "test ", k_head = "head ";  // what a basis's key begins with

bool has_readings(const Json& test) {
  const Json* readings = test.is_object() ? member_if(test, "readings") : nullptr;
  return readings != nullptr && readings->is_array() && !readings->empty();
}

}  // namespace

TreatedBases::Basis TreatedBases::of(const Json& stroke) const {
  Json test = entity_of(state_, "fold_tests", text_in(stroke, "fold_test"));
  const std::string head = text_in(stroke, "head");
  if (!has_readings(test)) {
    const Json in_use = test_in_use(state_);
    test = entity_of(state_, "fold_tests", in_use.is_string() ? in_use.get<std::string>() : std::string());
    if (has_readings(test) && !head.empty() && text_in(test, "head") != head) test = nullptr;
  }
  Basis basis;
  if (has_readings(test)) {
    basis.key = std::string(k_test) + text_in(test, "id");
    basis.readings = test.at("readings").size();
    for (const char* key : {"id", "machine", "head", "towel", "probe"}) basis.uses.insert(text_in(test, key));
    for (const Json& reading : test.at("readings")) basis.uses.insert(text_in(reading, "id"));
    // A stroke with another head than the one that was tested stands on nothing that was measured.
    if (head.empty() || text_in(test, "head") == head) return basis;
  }
  basis = {};
  basis.key = std::string(k_head) + head;
  basis.uses.insert(head);
  return basis;
}

Json TreatedBases::prior_of(const std::string& head_id) const {
  Json kit;
  const Json* all = member_if(state_, "kit");
  const Json head = all != nullptr ? entity_of(*all, "heads", head_id) : Json();
  const Json machine = all != nullptr ? entity_of(*all, "machines", text_in(head, "machine")) : Json();
  Json prior{{"machine", machine.is_object() ? text_in(machine, "title") : "machine"},
             {"head", head.is_object() ? text_in(head, "title") : "head"}};
  if (head.is_object() && has(head, "length_metres")) prior["length_metres"] = head.at("length_metres");
  kit["prior"] = std::move(prior);
  kit["samples"] = samples_;
  kit.update(home_elevation(state_));
  return kit;
}

Json TreatedBases::identity(const Basis& basis) const {
  if (!basis.key.starts_with(k_test)) return prior_of(basis.key.substr(k_head.size()));
  const Json test = entity_of(state_, "fold_tests", basis.key.substr(k_test.size()));
  Json kit{{"fold_test", asked_test(fold_test_request_of(test, state_), samples_)}};
  kit.update(home_elevation(state_));
  return kit;
}

Result<Json> TreatedBases::kit(const Basis& basis) {
  if (const auto known = kits_.find(basis.key); known != kits_.end()) return known->second;
  Json kit = identity(basis);
  if (kit.contains("fold_test")) {
    const auto asked = read(fold_test_shape(), kit.at("fold_test"), "/fold_test");
    if (!asked) return refuse(asked.error());
    const auto found = read_pace_basis({{"fold_test", *asked}, {"samples", samples_}});
    if (!found) return refuse(found.error());
    kit = home_elevation(state_);
    kit["calibration"] = Json::array();
    for (std::size_t i = 0; i < found->calibrations.size(); ++i)
      kit["calibration"].push_back(to_json(found->calibrations[i], found->coverings[i]));
  }
  kits_[basis.key] = kit;
  return kit;
}

}  // namespace lastegg
