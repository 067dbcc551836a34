// All kinds of furniture and of room parts that can be built: one table that says what each is called, which
// measures it takes and how it is made. Pure functions; the table is read once and never changed.
#pragma once

#include <array>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "job/furniture/item.h"
#include "physics/quantities/error.h"

namespace lastegg::furniture {

class Assembly;

/// Where a kind stands in a list to choose from.
enum class Group { bed, seat, storage, small, room };

inline constexpr std::array<Meaning<Group>, 5> k_groups = {{
    {Group::bed, "bed", "beds and what belongs to them"},
    {Group::seat, "seat", "seats"},
    {Group::storage, "storage", "tables and cupboards"},
    {Group::small, "small", "things that are moved about"},
    {Group::room, "room", "parts of the room"},
}};

std::string_view name_of(Group group);

/// A length that may be told of an item.
struct Measure {
  std::string key;        ///< of a request: "width_metres"
  std::string dimension;  ///< its entry of data/dimensions.json, with usual value and limits
  std::string text;       ///< what it means
};

/// A number of like pieces that may be told.
struct Count {
  std::string key;  ///< "drawers"
  int usual = 0, lowest = 0, highest = 0;
  std::string text;
};

/// Something that is there or not.
struct Option {
  std::string key;  ///< "skirted"
  std::string text;
};

struct Kind {
  std::string name;  ///< "night_table"
  std::string title;
  Group group = Group::small;
  void (*build)(Assembly&) = nullptr;
  std::vector<Measure> measures = {};
  std::optional<Covering> usual_covering = {};  ///< absent: it has no covering
  bool finished = false;                        ///< has wood or metal with a finish
  std::vector<Count> counts = {};
  std::vector<Option> options = {};
  std::string usual_size = {};  ///< a named mattress size; empty where the kind takes none
};

/// What is known of an item; whatever is absent takes its usual value. Keys are those of the kind.
struct ItemRequest {
  std::string kind;
  std::map<std::string, double, std::less<>> measures;  ///< metres
  std::map<std::string, int, std::less<>> counts;
  std::set<std::string, std::less<>> options;
  std::optional<std::string> size;
  std::optional<Covering> covering;
  std::optional<Finish> finish;
};

/// Every kind, group by group.
const std::vector<Kind>& catalogue();

/// The kind with that name, or null.
const Kind* kind_named(std::string_view name);

/// The item with its parts and edges.
/// Inputs:  a kind of the catalogue; measures within the limits of data/dimensions.json
/// Errors:  not_found for a kind or size that is not listed; bad_input with value, limit, unit and the
///          request's key for a key that is not the kind's or a value outside its limits
/// Source:  data/dimensions.json; construction: common practice, see README.md
/// Checked: catalogue_law_test.cpp: law; catalogue_unit_test.cpp: unit
Result<Item> build_item(const ItemRequest& request);

}  // namespace lastegg::furniture
