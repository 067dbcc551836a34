#include "engine/visit_from_job.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "engine/state_values.h"
#include "job/furniture/catalogue.h"
#include "treatments/choice/choice.h"
#include "words/say.h"

namespace lastegg {
namespace {

void copy(const Json& from, Json& to, std::initializer_list<const char*> keys) {
  for (const char* key : keys)
    if (const Json* found = member_if(from, key)) to[key] = *found;
}

const Json& last_of(const Json& list) {
  static const Json none = Json::object();
  return list.empty() ? none : list.back();
}

/// Titles of rooms by id; two rooms never share one.
std::map<std::string, std::string> room_titles(const Json& state) {
  std::map<std::string, std::string> out;
  std::set<std::string> used;
  for (const Json& room : list_of(state, "rooms")) {
    const std::string base = word_of(room, "title");
    std::string title = base;
    for (int n = 2; !used.insert(title).second; ++n) title = base + " " + std::to_string(n);
    out[word_of(room, "id")] = title;
  }
  return out;
}

std::string title_in(const std::map<std::string, std::string>& rooms, const std::string& id) {
  const auto found = rooms.find(id);
  return found == rooms.end() ? std::string() : found->second;
}

struct SteamSums {
  int edges = 0, hidden_edges = 0, without = 0;
  double seconds = 0, hidden_seconds = 0, bug_share = 0, length_without = 0;
  std::optional<double> kill;
  std::optional<std::pair<double, double>> dry;
};

/// Sums of the plan's edges, item by item.
std::vector<SteamSums> sums_of(const Json& plan, std::size_t items) {
  std::vector<SteamSums> out(items);
  for (const Json& edge : list_of(plan, "edges")) {
    const auto index = edge.at("item_index").get<std::size_t>();
    if (index >= items) continue;
    SteamSums& sum = out[index];
    sum.bug_share += value_of(edge, "bug_share").value_or(0);
    const auto seconds = value_of(edge, "seconds");
    if (!seconds) {
      ++sum.without;
      sum.length_without += value_of(edge, "length_metres").value_or(0);
      continue;
    }
    const bool in_sight = edge.at("in_sight").get<bool>();
    (in_sight ? sum.seconds : sum.hidden_seconds) += *seconds;
    ++(in_sight ? sum.edges : sum.hidden_edges);
    const auto& paces = list_of(plan, "paces");
    const auto pace_index = edge.at("pace_index").get<std::size_t>();
    if (pace_index >= paces.size()) continue;
    const Json& pace = paces[pace_index];
    if (const Json* stages = member_if(pace, "kill_by_stage"))
      if (const auto egg = value_of(*stages, "egg")) sum.kill = std::min(sum.kill.value_or(1), *egg);
    if (const Json& dry = list_of(pace, "dry_minutes"); dry.size() == 2) {
      const auto before = sum.dry.value_or(std::pair(0.0, 0.0));
      sum.dry = {std::max(before.first, dry[0].get<double>()), std::max(before.second, dry[1].get<double>())};
    }
  }
  return out;
}

bool is_given(const Json& state, const char* to, const std::string& item, const char* answer) {
  for (const Json& consent : list_of(state, "consents")) {
    if (word_of(consent, "to") != to || word_of(consent, "answer") != answer) continue;
    const std::string named = word_of(consent, "item");
    if (named.empty() || named == item) return true;
  }
  return false;
}

/// The steamer that the fold test of the settings was made with, else the last one.
const Json& machine_of(const Json& state) {
  static const Json none = Json::object();
  const Json* kit = member_if(state, "kit");
  const Json& machines = kit == nullptr ? none : list_of(*kit, "machines");
  std::string wanted;
  if (const Json* settings = member_if(state, "settings"))
    for (const Json& test : list_of(state, "fold_tests"))
      if (word_of(test, "id") == word_of(*settings, "fold_test")) wanted = word_of(test, "machine");
  for (const Json& machine : machines)
    if (word_of(machine, "id") == wanted) return machine;
  return last_of(machines);
}

Json equipment_of(const Json& state, const Json& options) {
  std::set<std::string> out{"cover", "leg_traps"};  // used up at every visit, so the firm carries them
  const Json* kit = member_if(state, "kit");
  if (kit != nullptr) {
    if (!list_of(*kit, "machines").empty()) out.insert("steamer");
    if (!list_of(*kit, "vacuums").empty()) out.insert("vacuum");
    if (!list_of(*kit, "dryers").empty()) out.insert("dryer");
  }
  for (const Json& more : list_of(options, "equipment")) out.insert(more.get<std::string>());
  return Json(out);
}

Json risks_of(const Json& state) {
  Json out = Json::array();
  for (const Json& risk : list_of(state, "risks")) {
    Json one{{"what", word_of(risk, "what")}};
    copy(risk, one, {"settled", "settled_by", "item", "room"});
    out.push_back(std::move(one));
  }
  return out;
}

Json steamer_of(const Json& state) {
  const Json& machine = machine_of(state);
  Json out{{"power_watts", value_of(machine, "power_watts").value_or(1500)}};
  copy(machine, out, {"tank", "water_kilograms", "gauge_pascal", "cooling_minutes"});
  for (const Json& weighing : list_of(state, "weighings"))
    if (word_of(weighing, "machine") == word_of(machine, "id")) {
      Json weighed;
      copy(weighing, weighed, {"before_kilograms", "after_kilograms", "minutes"});
      out["weighing"] = weighed;
    }
  out.update(home_elevation(state));
  return out;
}

/// Edges with a pace of the items that are steamed.
Json edges_of(const Json& plan, const Json& items, const Json& answered) {
  Json out = Json::array();
  for (const Json& edge : list_of(plan, "edges")) {
    const auto seconds = value_of(edge, "seconds");
    const auto index = edge.at("item_index").get<std::size_t>();
    if (!seconds || *seconds <= 0 || index >= items.size()) continue;
    if (word_of(answered[index], "method") != "steam") continue;
    out.push_back({{"item", word_of(items[index], "title")},
                   {"item_id", word_of(items[index], "id")},
                   {"id", word_of(edge, "id")},
                   {"title", word_of(edge, "title")},
                   {"seconds", *seconds},
                   {"bug_share", value_of(edge, "bug_share").value_or(0)},
                   {"killed_share_per_minute", value_of(edge, "killed_share_per_minute").value_or(0)}});
  }
  return out;
}

/// The offer of the method that an item gets; null: none.
const Json* offer_of(const Json& answered) {
  for (const Json& offer : list_of(answered, "methods"))
    if (offer.at("method") == answered.at("method")) return &offer;
  return nullptr;
}

Json visit_item(const Json& state, const Json& item, const Json& answered, const SteamSums& sum,
                const std::string& room, bool planned) {
  std::set<std::string> traits;
  for (const Json& trait : list_of(answered, "traits")) traits.insert(trait.get<std::string>());
  const std::string id = word_of(item, "id");
  Json out{{"id", id}, {"title", word_of(item, "title")}, {"room", room}};
  copy(answered, out, {"method"});
  const std::pair<const char*, const char*> flags[] = {
      {"bed", "bed"},   {"turns", "turn"},        {"dismantles", "dismantle"},
      {"legs", "legs"}, {"encased", "encasable"}, {"dust_cover", "dust_cover"}};
  for (const auto& [key, trait] : flags) out[key] = traits.contains(trait);
  out["dust_cover_consent"] = is_given(state, "open_dust_cover", id, "given");
  out["dismantle_consent"] = !is_given(state, "dismantle", id, "refused");
  if (const Json* offer = offer_of(answered)) copy(*offer, out, {"hands_minutes", "clock_minutes"});
  if (word_of(answered, "method") == "steam" && planned && sum.edges + sum.hidden_edges == 0) {
    // By the practice of the trade: its minutes are those of the offer.
    out["steam"] = {{"minutes", out.value("hands_minutes", 0.0)},
                    {"edges", sum.without},
                    {"edges_without_pace", sum.without}};
  } else if (word_of(answered, "method") == "steam" && planned) {
    out["steam"] = {{"minutes", sum.seconds / 60},
                    {"edges", sum.edges},
                    {"hidden_minutes", sum.hidden_seconds / 60},
                    {"hidden_edges", sum.hidden_edges},
                    {"edges_without_pace", sum.without}};
    if (sum.dry) out["dry_minutes"] = {sum.dry->first, sum.dry->second};
  }
  return out;
}

Json circuits_of(const Json& state, const std::map<std::string, std::string>& rooms) {
  Json out = Json::array();
  for (const Json& circuit : list_of(state, "circuits")) {
    Json one{{"title", word_of(circuit, "title")}, {"room", title_in(rooms, word_of(circuit, "room"))}};
    copy(circuit, one, {"volts", "breaker_amperes", "other_load_watts"});
    out.push_back(std::move(one));
  }
  return out;
}

}  // namespace

Json seen_of(const Json& state, const Json& furniture) {
  Json out = Json::array();
  const Json& items = list_of(state, "items");
  for (const Json& look : list_of(state, "evidence")) {
    if (word_of(look, "look") != "found") continue;
    for (std::size_t i = 0; i < items.size(); ++i) {
      if (word_of(items[i], "id") != word_of(look, "item") || word_of(look, "item").empty()) continue;
      const bool live = value_of(look, "adults").value_or(0) + value_of(look, "nymphs").value_or(0) > 0;
      Json finding{{"item_index", i}, {"what", live ? "live" : "signs"}};
      const std::string edge = word_of(look, "edge");
      if (!edge.empty() && i < furniture.size())
        for (const Json& known : list_of(furniture[i], "edges"))
          if (word_of(known, "id") == edge) finding["id"] = edge;
      out.push_back(std::move(finding));
    }
  }
  return out;
}

Json method_request_of(const Json& state, const Json& plan, const Json& options) {
  const Json& items = list_of(state, "items");
  const std::vector<SteamSums> sums = sums_of(plan, items.size());
  const Json seen = seen_of(state, Json::array());
  Json out{{"items", Json::array()}, {"equipment", equipment_of(state, options)}, {"risks", risks_of(state)}};
  if (const auto watts = value_of(machine_of(state), "power_watts")) out["steamer_watts"] = *watts;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Json& item = items[i];
    const furniture::Kind* kind = furniture::kind_named(word_of(item, "kind"));
    Json one{{"id", word_of(item, "id")}, {"item", word_of(item, "kind")}, {"title", word_of(item, "title")}};
    copy(item, one, {"room", "hidden_spot_seconds"});
    if (kind != nullptr && kind->usual_covering) copy(item, one, {"covering"});
    if (kind != nullptr && kind->finished) copy(item, one, {"finish"});
    std::string what = "none";
    for (const Json& finding : seen)
      if (finding.at("item_index") == i && what != "live") what = text_of(finding, "what");
    one["seen"] = what;
    if (!plan.is_null()) {
      const SteamSums& sum = sums[i];
      one["steam"] = {{"edges", sum.edges + sum.hidden_edges + sum.without},
                      {"edges_with_pace", sum.edges + sum.hidden_edges},
                      {"minutes", (sum.seconds + sum.hidden_seconds) / 60},
                      {"length_without_pace_metres", sum.length_without}};
      if (sum.kill) one["steam"]["kill_probability"] = *sum.kill;
    }
    for (const Json& method : list_of(state, "methods"))
      if (word_of(method, "item") == word_of(item, "id")) {
        one["chosen"] = {{"method", word_of(method, "method")}};
        copy(method, one["chosen"], {"reason"});
      }
    out["items"].push_back(std::move(one));
  }
  out["consents"] = Json::array();
  for (const Json& consent : list_of(state, "consents")) {
    Json one{{"to", word_of(consent, "to")}, {"answer", word_of(consent, "answer")}};
    copy(consent, one, {"item"});
    out["consents"].push_back(std::move(one));
  }
  out["prior_treatments"] = Json::array();
  for (const Json& prior : list_of(state, "prior_treatments"))
    out["prior_treatments"].push_back(word_of(prior, "what"));
  return out;
}

Json visit_request_of(const Json& state, const Json& plan, const Json& options, const Json& method_answer) {
  const Json& items = list_of(state, "items");
  const auto rooms = room_titles(state);
  const std::vector<SteamSums> sums = sums_of(plan, items.size());
  std::vector<std::size_t> order(items.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return sums[a].bug_share > sums[b].bug_share; });
  Json out{{"items", Json::array()}, {"circuits", circuits_of(state, rooms)}, {"steamer", steamer_of(state)}};
  std::set<std::string> bed_rooms;
  const Json& answered = list_of(method_answer, "items");
  for (const std::size_t i : order) {
    const std::string room = title_in(rooms, word_of(items[i], "room"));
    out["items"].push_back(visit_item(state, items[i], answered[i], sums[i], room, !plan.is_null()));
    if (out["items"].back().at("bed").get<bool>()) bed_rooms.insert(room);
  }
  const Json* kit = member_if(state, "kit");
  const Json none = Json::object();
  const auto count = [&](const char* list) { return list_of(kit == nullptr ? none : *kit, list).size(); };
  out["machines"] = std::min<std::size_t>(1, count("machines"));
  out["vacuums"] = std::min<std::size_t>(4, count("vacuums"));
  out["dryers"] = std::min<std::size_t>(10, count("dryers"));
  out["loads"] = Json::array();
  if (count("dryers") > 0) {
    const method_choice::Method* dryer = method_choice::method_named("dryer");
    for (const std::string& room : bed_rooms)
      out["loads"].push_back({{"title", room.empty() ? say("bedding") : say("bedding, {}", room)},
                              {"room", room},
                              {"minutes", dryer == nullptr ? 60 : dryer->clock_minutes.value},
                              {"bedding", true}});
  }
  const Json& visit = last_of(list_of(state, "visits"));
  copy(visit, out, {"crew", "minutes"});
  if (const Json& rates = last_of(list_of(state, "rates")); rates.contains("currency")) {
    out["rates"] = Json::object();
    copy(rates, out["rates"], {"currency", "per_visit", "per_hour"});
  }
  copy(options, out, {"crew", "minutes", "minutes_left", "machines", "waits_for_bed"});
  if (out.contains("minutes_left")) out["edges"] = edges_of(plan, items, answered);
  return out;
}

Json preparation_request_of(const Json& method_request, const Json& method_answer) {
  Json out{{"items", Json::array()}, {"risks", method_request.at("risks")}, {"equipment", Json::array()}};
  for (const Json& item : list_of(method_answer, "items")) {
    Json one{{"traits", item.at("traits")}};
    copy(item, one, {"method"});
    out["items"].push_back(std::move(one));
  }
  for (const Json& thing : method_request.at("equipment"))
    if (thing == "dryer" || thing == "washer" || thing == "freezer") out["equipment"].push_back(thing);
  return out;
}

}  // namespace lastegg
