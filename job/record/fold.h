// The state of a job: what its record says now. A pure function of the set of events, so every device that
// holds the same events shows the same job, whatever order they came in and whatever its clock says.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "job/record/event_set.h"
#include "job/record/standing.h"

namespace lastegg::record {

/// One thing that the record speaks about, as its standing statement describes it.
struct Entity {
  std::string kind;                 ///< "room/1"
  std::string id;                   ///< the subject of its events
  std::string event;                ///< the statement whose data these are
  std::vector<std::string> events;  ///< every standing statement; several either agree or are a conflict
  Json data;
};

struct FoldTest {
  Entity test;
  std::vector<Entity> readings;  ///< by id
};

/// An entity that is off the lists, and the removed/1 events to correct so that it comes back.
struct Removed {
  Entity entity;
  std::vector<std::string> by;
};

/// Entities by id, without the removed ones.
struct JobState {
  std::optional<Entity> job;
  std::optional<Entity> dwelling;                         ///< when there is exactly one
  std::map<std::string_view, std::vector<Entity>> lists;  ///< by the name of the list that their kind states
  const std::vector<Entity>& list(std::string_view name) const { return lists.at(name); }
  std::vector<FoldTest> fold_tests;
  std::vector<Entity> readings_without_test;  ///< whose test has not arrived
  std::optional<Entity> settings;
  std::vector<Removed> removed;  ///< a removed fold test takes its readings along
};

/// Statements that contradict each other and of which none corrects the other. One of them has to be shown,
/// and the choice is by hash, so that it means nothing; who computes must take the worst over `values`.
struct Conflict {
  std::string subject;
  std::string kind;
  std::vector<std::string> rivals;  ///< ids of events, sorted
  std::vector<Json> values;         ///< their data, in the same order
};

struct UnknownKind {
  std::string kind;
  std::size_t count = 0;
};

struct Folded {
  JobState state;
  std::vector<Conflict> conflicts;   ///< by subject, then kind
  std::vector<UnknownKind> unknown;  ///< kinds of newer versions, kept and not read
  std::vector<Refused> refused;
  std::size_t event_count = 0;
  std::string state_hash;
};

/// The state of the job that a record describes.
/// Model:   Of each subject and kind the standing statements are taken (standing.h). One, or several that say
///          the same, describe the entity; several that differ are a conflict. A subject is off the lists
///          when all its standing removed/1 say so. Two jobs, or two settings, in one record are a conflict
///          as well.
/// Checked: job/record/fold_law_test.cpp: law; job/record/fold_unit_test.cpp: unit
Folded fold(const EventSet& record);

}  // namespace lastegg::record
