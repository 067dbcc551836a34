#include "engine/job_requests.h"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

#include "engine/request_values.h"
#include "engine/state_values.h"
#include "job/furniture/catalogue.h"
#include "words/say.h"

namespace lastegg {
namespace {

constexpr std::size_t k_most_relatives = 3;  // each costs a fit
constexpr double k_layer_metres = 0.001;     // of a fold's cloth told by its material

void copy(const Json& from, Json& to, std::initializer_list<const char*> keys) {
  for (const char* key : keys) {
    const Json* member = member_if(from, key);
    if (member == nullptr || (member->is_string() && member->get_ref<const std::string&>().empty())) continue;
    to[key] = *member;
  }
}

// A text of a state; what is no text counts as absent.
std::string text_or(const Json& one, const char* key, const char* without) {
  const Json* member = member_if(one, key);
  return member != nullptr && member->is_string() ? member->get<std::string>() : without;
}

// The entities of a list; what has no id is none.
Json entries(const Json& state, const char* list) {
  Json out = Json::array();
  if (const Json* found = member_if(state, list)) {
    for (const Json& one : *found) {
      if (one.is_object() && has(one, "id")) out.push_back(one);
    }
  }
  return out;
}

Json kit_entries(const Json& state, const char* list) {
  const Json* kit = member_if(state, "kit");
  return kit != nullptr ? entries(*kit, list) : Json::array();
}

Json entity(const Json& list, const Json& owner, const char* key) {
  const Json* id = member_if(owner, key);
  if (id == nullptr) return nullptr;
  for (const Json& one : list) {
    if (one.at("id") == *id) return one;
  }
  return nullptr;
}

std::string title_of(const Json& one, const char* without) {
  return text_or(one, "title", without);
}

// What a test was made with; null entries where nothing was named.
struct Kit {
  Json machine, head, towel, probe;

  std::string use() const { return text_or(towel, "use", "none"); }
  std::string head_name() const { return title_of(head, "head"); }
  bool is_same_machine(const Kit& other) const {
    return machine.is_object() && other.machine.is_object() && machine.at("id") == other.machine.at("id");
  }
  bool is_same_head(const Kit& other) const {
    return machine == other.machine && head == other.head && use() == other.use();
  }
};

Kit kit_of(const Json& test, const Json& state) {
  return {entity(kit_entries(state, "machines"), test, "machine"),
          entity(kit_entries(state, "heads"), test, "head"),
          entity(kit_entries(state, "towels"), test, "towel"),
          entity(kit_entries(state, "probes"), test, "probe")};
}

bool has_readings(const Json& test) {
  return !entries(test, "readings").empty();
}

// Of a test: where it was made, else the home's.
void copy_elevation(const Json& state, const Json& test, Json& to) {
  to.update(home_elevation(state));
  if (test.is_object()) copy(test, to, {"elevation_metres"});
}

Json reading_request(const Json& reading) {
  Json row;
  const std::string kind = text_or(reading, "kind", "pass");
  if (has(reading, "pace_metres_per_second"))
    copy(reading, row, {"pace_metres_per_second"});
  else if (has(reading, "hold_seconds"))
    copy(reading, row, {"hold_seconds"});
  else
    copy(reading, row, {"distance_metres", "seconds"});
  copy(reading, row,
       {"kind", "covering", "peak_celsius", "gun_celsius", "palm", "seconds_after", "spot_metres",
        "emissivity_setting"});
  if (kind != "coupon" && kind != "surface") copy(reading, row, {"layers"});
  return row;
}

// The test by itself, without what other tests say.
Json bare_request(const Json& test, const Json& state) {
  const Kit kit = kit_of(test, state);
  Json out;
  out["machine"] = title_of(kit.machine, "machine");
  out["head"] = kit.head_name();
  if (kit.head.is_object() && has(kit.head, "length_metres")) {
    Json named{{"name", kit.head_name()}};
    copy(kit.head, named, {"length_metres", "width_metres"});
    out["head"] = std::move(named);
  }
  out["towel"] = kit.use();
  if (kit.probe.is_object()) {
    Json lag = Json::object();
    if (has(kit.probe, "dip"))
      copy(kit.probe, lag, {"dip"});
    else
      copy(kit.probe, lag, {"time_constant_seconds"});
    if (!lag.empty()) out["probe"] = std::move(lag);
  }
  copy_elevation(state, test, out);
  copy(test, out, {"start_celsius", "covering"});
  if (const std::string cloth = text_or(test, "cloth", ""); !cloth.empty())
    out["cloth"] = Json::array({{{"material", cloth}, {"thickness_metres", k_layer_metres}}});
  out["readings"] = Json::array();
  for (const Json& reading : entries(test, "readings")) out["readings"].push_back(reading_request(reading));
  return out;
}

// Of each other head and towel of the machine the latest test: what an older one said is stale.
void add_relatives(const Kit& own, const Json& state, Json& out) {
  std::vector<Kit> seen;
  Json relatives = Json::array();
  const Json tests = entries(state, "fold_tests");
  for (std::size_t i = tests.size(); i-- > 0 && relatives.size() < k_most_relatives;) {
    const Kit kit = kit_of(tests[i], state);
    const bool is_known =
        std::any_of(seen.begin(), seen.end(), [&](const Kit& one) { return one.is_same_head(kit); });
    // Heads of one name are one head to the fit.
    const bool is_own = kit.head_name() == own.head_name() && kit.use() == own.use();
    if (!has_readings(tests[i]) || !kit.is_same_machine(own) || is_own || is_known) continue;
    seen.push_back(kit);
    relatives.push_back(bare_request(tests[i], state));
  }
  if (!relatives.empty()) out["same_machine"] = std::move(relatives);
}

// The test whose head and towel are asked for; null without any.
Json asked_test(const Json& state) {
  const Json tests = entries(state, "fold_tests");
  if (const Json* settings = member_if(state, "settings")) {
    Json named = entity(tests, *settings, "fold_test");
    if (named.is_object()) return named;
  }
  for (std::size_t i = tests.size(); i-- > 0;) {
    if (has_readings(tests[i])) return tests[i];
  }
  return tests.empty() ? Json() : tests.back();
}

// Tests with readings of the asked head and towel: the asked one first, then the latest of each covering.
std::vector<Json> own_tests(const Json& asked, const Json& state) {
  std::vector<Json> own;
  if (!asked.is_object()) return own;
  if (has_readings(asked)) own.push_back(asked);
  const Kit kit = kit_of(asked, state);
  const Json tests = entries(state, "fold_tests");
  for (std::size_t i = tests.size(); i-- > 0;) {
    if (!has_readings(tests[i]) || !kit_of(tests[i], state).is_same_head(kit)) continue;
    const bool is_known = std::any_of(own.begin(), own.end(), [&](const Json& one) {
      return text_or(one, "covering", "") == text_or(tests[i], "covering", "");
    });
    if (!is_known) own.push_back(tests[i]);
  }
  return own;
}

Json last_of(const Json& list) {
  return list.empty() ? Json() : list.back();
}

}  // namespace

Json furniture_request_of(const Json& item, const Json& state) {
  const std::string word = text_or(item, "kind", "");
  Json piece{{"item", word}};
  copy(item, piece,
       {"size", "covering", "finish", "wetting_limit_grams_per_m2", "hidden_spot_seconds", "water_drop"});
  if (const furniture::Kind* kind = furniture::kind_named(word)) {
    const auto copy_all = [&](const auto& keys) {
      for (const auto& entry : keys) copy(item, piece, {entry.key.c_str()});
    };
    copy_all(kind->measures);
    copy_all(kind->counts);
    copy_all(kind->options);
  }
  Json changes = Json::array();
  for (const Json& change : entries(state, "edge_changes")) {
    const Json* of = member_if(change, "item");
    if (of == nullptr || *of != item.at("id")) continue;
    Json row{{"id", change.at("id")}};
    copy(change, row,
         {"change", "edge", "title", "kind", "part", "length_metres", "height_metres", "in_sight",
          "at_share"});
    changes.push_back(std::move(row));
  }
  if (!changes.empty()) piece["changes"] = std::move(changes);
  return piece;
}

Json fold_test_request_of(const Json& test, const Json& state) {
  if (!has_readings(test)) return nullptr;
  Json out = bare_request(test, state);
  const Kit kit = kit_of(test, state);
  if (kit.machine.is_null()) return out;
  for (const Json& before : entries(state, "fold_tests")) {
    if (before.at("id") == test.at("id")) break;
    if (has_readings(before) && kit_of(before, state).is_same_head(kit))
      out["earlier"] = bare_request(before, state);
  }
  add_relatives(kit, state, out);
  return out;
}

Json pace_kit_of(const Json& state) {
  const Json asked = asked_test(state);
  Json out = Json::object();
  const std::vector<Json> own = own_tests(asked, state);
  if (!own.empty()) {
    out["fold_test"] = Json::array();
    for (const Json& test : own) {
      Json request = bare_request(test, state);
      add_relatives(kit_of(test, state), state, request);
      out["fold_test"].push_back(std::move(request));
    }
    out.update(home_elevation(state));
    return out;
  }
  Kit kit{last_of(kit_entries(state, "machines")), last_of(kit_entries(state, "heads")), Json(), Json()};
  if (asked.is_object()) {
    const Kit named = kit_of(asked, state);
    if (named.machine.is_object()) kit.machine = named.machine;
    if (named.head.is_object()) kit.head = named.head;
    kit.towel = named.towel;
  }
  Json prior{{"machine", title_of(kit.machine, "machine")}, {"head", kit.head_name()}, {"towel", kit.use()}};
  if (kit.head.is_object()) copy(kit.head, prior, {"length_metres"});
  add_relatives(kit, state, prior);
  out["prior"] = std::move(prior);
  copy_elevation(state, asked, out);
  return out;
}

Json test_in_use(const Json& state) {
  const std::vector<Json> own = own_tests(asked_test(state), state);
  return own.empty() ? Json() : own.front().at("id");
}

Result<Json> plan_request_of(const Json& state) {
  const Json items = entries(state, "items");
  if (items.empty()) {
    return refuse({ErrorKind::bad_input, say("the job has no items yet; a plan needs at least one"), "/items",
                   "0", "1", "items"});
  }
  Json request = pace_kit_of(state);
  request["items"] = Json::array();
  for (const Json& item : items) request["items"].push_back(furniture_request_of(item, state));
  return request;
}

}  // namespace lastegg
