#include "job/record/fold.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "job/record/kinds.h"
#include "job/record/sha256.h"

namespace lastegg::record {
namespace {

using Statements = std::vector<const Event*>;

bool all_say_the_same(const Statements& statements) {
  return std::all_of(statements.begin(), statements.end(),
                     [&](const Event* event) { return same_value(event->data, statements.front()->data); });
}

// Of several statements the one to show. By hash: a choice by id would be a choice by the writer's clock.
const Event& shown_of(const Statements& statements) {
  if (statements.size() == 1) return *statements.front();
  std::map<std::string, const Event*> by_hash;
  for (const Event* event : statements) by_hash.emplace(sha256_hex(event->bytes), event);
  return *by_hash.begin()->second;
}

std::vector<std::string> ids_of(const Statements& statements) {
  std::vector<std::string> ids;
  for (const Event* event : statements) ids.push_back(event->id);
  return ids;
}

Entity entity_of(const Statements& statements) {
  const Event& shown = shown_of(statements);
  return {shown.kind, shown.subject, shown.id, ids_of(statements), shown.data};
}

bool says_removed(const Event& event) {
  const auto removed = event.data.find("removed");
  return removed == event.data.end() || removed->get<bool>();
}

class Folder {
 public:
  explicit Folder(const EventSet& record) : standing_(standing_of(record)) {
    folded_.event_count = record.size();
    folded_.state_hash = record.state_hash();
    folded_.refused = standing_.refused;
    count_unknown(record);
    for (const Event* event : standing_.statements)
      if (rule_of(event->kind) != nullptr) by_kind_[event->kind][event->subject].push_back(event);
  }

  Folded fold() {
    find_conflicts();
    for (const auto& [subject, statements] : by_kind_["removed/1"])
      if (std::all_of(statements.begin(), statements.end(),
                      [](const Event* event) { return says_removed(*event); }))
        removed_.emplace(subject, ids_of(statements));

    JobState& state = folded_.state;
    state.job = the_one("job/1");
    state.settings = the_one("settings/1");
    for (const KindRule& rule : kind_rules())
      if (!rule.list.empty()) state.lists[rule.list] = entities(std::string(rule.kind));
    if (const auto& dwellings = state.lists["dwellings"]; dwellings.size() == 1)
      state.dwelling = dwellings.front();
    gather_fold_tests();
    const auto before = [](const auto& one, const auto& other) {
      return std::tie(one.subject, one.kind) < std::tie(other.subject, other.kind);
    };
    std::sort(folded_.conflicts.begin(), folded_.conflicts.end(), before);
    std::sort(state.removed.begin(), state.removed.end(), [](const Removed& one, const Removed& other) {
      return std::tie(one.entity.id, one.entity.kind) < std::tie(other.entity.id, other.entity.kind);
    });
    return std::move(folded_);
  }

 private:
  void count_unknown(const EventSet& record) {
    std::map<std::string, std::size_t> counts;
    for (const Event& event : record.events())
      if (rule_of(event.kind) == nullptr) ++counts[event.kind];
    for (const auto& [kind, count] : counts) folded_.unknown.push_back({kind, count});
  }

  void find_conflicts() {
    for (const auto& [kind, subjects] : by_kind_)
      for (const auto& [subject, statements] : subjects)
        if (!all_say_the_same(statements)) add_conflict(subject, kind, statements);
  }

  void add_conflict(const std::string& subject, const std::string& kind, const Statements& statements) {
    Conflict conflict;
    conflict.subject = subject;
    conflict.kind = kind;
    conflict.rivals = ids_of(statements);
    for (const Event* event : statements) conflict.values.push_back(event->data);
    folded_.conflicts.push_back(std::move(conflict));
  }

  // Entities of a kind by id; the removed ones go to the list of the removed.
  std::vector<Entity> entities(const std::string& kind) {
    std::vector<Entity> found;
    for (const auto& [subject, statements] : by_kind_[kind]) {
      if (const auto gone = removed_.find(subject); gone != removed_.end())
        folded_.state.removed.push_back({entity_of(statements), gone->second});
      else
        found.push_back(entity_of(statements));
    }
    return found;
  }

  // The entity of a kind of which a job has one. Several subjects are rivals too.
  std::optional<Entity> the_one(const std::string& kind) {
    const std::vector<Entity> found = entities(kind);
    if (found.empty()) return std::nullopt;
    if (found.size() == 1) return found.front();
    std::map<std::string, const Entity*> by_hash;
    Statements rivals;
    for (const Entity& entity : found) {
      by_hash.emplace(sha256_hex(entity.id), &entity);
      const Statements& statements = by_kind_[kind][entity.id];
      rivals.insert(rivals.end(), statements.begin(), statements.end());
    }
    std::sort(rivals.begin(), rivals.end(),
              [](const Event* one, const Event* other) { return one->id < other->id; });
    const Entity& shown = *by_hash.begin()->second;
    std::erase_if(folded_.conflicts,
                  [&](const Conflict& known) { return known.kind == kind && known.subject == shown.id; });
    add_conflict(shown.id, kind, rivals);
    return shown;
  }

  void gather_fold_tests() {
    JobState& state = folded_.state;
    std::map<std::string, std::size_t> places;
    for (Entity& test : entities("fold_test/1")) {
      places.emplace(test.id, state.fold_tests.size());
      state.fold_tests.push_back({std::move(test), {}});
    }
    for (Entity& reading : entities("reading/1")) {
      const std::string test = reading.data.at("fold_test").get<std::string>();
      if (const auto place = places.find(test); place != places.end())
        state.fold_tests[place->second].readings.push_back(std::move(reading));
      else if (const auto gone = removed_.find(test); gone != removed_.end())
        state.removed.push_back({std::move(reading), gone->second});
      else
        state.readings_without_test.push_back(std::move(reading));
    }
  }

  Standing standing_;
  Folded folded_;
  std::map<std::string, std::map<std::string, Statements>> by_kind_;
  std::map<std::string, std::vector<std::string>> removed_;  // subject to the events that say so
};

}  // namespace

Folded fold(const EventSet& record) {
  return Folder(record).fold();
}

}  // namespace lastegg::record
