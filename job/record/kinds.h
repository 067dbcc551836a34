// The kinds of events that this version understands, as one table: the check below, the shapes of the
// question fold_events and the page docs/record.md follow it. Constant data and a pure check.
#pragma once

#include <limits>
#include <optional>
#include <string_view>
#include <vector>

#include "job/record/event.h"
#include "physics/quantities/error.h"
#include "physics/quantities/unit_text.h"

namespace lastegg::record {

/// One key of an event's data.
struct DataField {
  enum class Type {
    text,
    id,    ///< UUID of another entity, which may arrive later
    date,  ///< "2026-03-02"
    number,
    integer,
    flag,
    word,    ///< one of `words`
    layers,  ///< how many layers of cloth lie over the probe's tip, or a list that names each
    object,  ///< with `fields`; further keys may be there
    list     ///< of objects with `fields`
  };
  std::string_view key;
  Type type = Type::text;
  bool is_required = false;
  std::string_view text;  ///< what it means
  Unit unit = Unit::none;
  /// Of a number. Estimates, wide, to catch slips of the hand and of the unit; none is a limit of safety.
  double least = -std::numeric_limits<double>::infinity();
  double most = std::numeric_limits<double>::infinity();
  bool least_excluded = false;
  std::vector<std::string_view> words = {};
  std::vector<DataField> fields = {};
};

/// How a kind's data must look. Keys that are not listed are kept and not judged; null is taken as absent.
struct KindRule {
  std::string_view kind;
  std::string_view list;  ///< where its entities stand in the state; empty: in a place of their own
  std::string_view text;  ///< what an event of this kind states
  std::vector<DataField> fields;
  /// Groups of keys of which at least one whole group must be there; empty: none is asked for.
  std::vector<std::vector<std::string_view>> any_of = {};
};

/// All kinds, in the order of the documentation.
const std::vector<KindRule>& kind_rules();

/// The rule of a kind; null for a kind that this version does not know.
const KindRule* rule_of(std::string_view kind);

/// What is wrong with the data of an event, if anything is. Light: presence, type and range of the listed
/// keys. Errors:  bad_input with a JSON pointer into the event, value, limit and unit Checked:
/// job/record/kinds_unit_test.cpp: unit
std::optional<Error> fault_of(const KindRule& rule, const Json& data);

}  // namespace lastegg::record
