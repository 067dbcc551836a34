// Which methods an item may be treated with: every method as allowed, to be checked first, to be agreed, or
// barred, with the reasons and what each costs. The rules, the traits of kinds and the customary times are
// data (data/rules.json, item_traits.json, methods.json). Plain values; pure functions; any thread.
#pragma once

#include <array>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "physics/evidence/datum.h"
#include "physics/quantities/error.h"

namespace lastegg::method_choice {

enum class Role {
  first,    ///< before any other: the vacuum
  kill,     ///< kills bugs and eggs
  contain,  ///< shuts in or shuts out
  remove    ///< takes the thing away
};

/// In the order in which methods are offered.
enum class Standing { allowed, needs_check, needs_consent, barred };

/// Why a method is barred: only `damage` may be overridden by a person.
enum class Grounds { hazard, damage, practical };

/// What a trial found, or what is customary.
struct Evidence {
  std::string stage, text, source, locator;
  std::optional<double> celsius, minutes;
  Quality quality = Quality::from_memory;
};

struct Method {
  std::string key, title, text, wetting, harm;
  Role role = Role::kill;
  Datum hands_minutes, clock_minutes, watts;
  std::vector<Evidence> evidence;
};

/// Time of the trade for a metre of edge, where the plan has no pace: it proves nothing.
/// Source:  [trade_steam_guide] 30 cm per 10 to 15 s; the slower end
constexpr double k_practice_seconds_per_metre = 15 / 0.3;

/// All methods, in the order of the data file.
const std::vector<Method>& methods();
const Method* method_named(std::string_view key);

/// Traits of a kind of the catalogue; null for a kind that the data do not hold.
const std::set<std::string>* traits_of(std::string_view kind);

/// A risk as it stands in the record.
struct Risk {
  bool settled = false;
  std::string settled_by;  ///< role of who decided; empty: nobody is named
};

enum class Answer { not_asked, given, refused };

/// What the covering or finish bears of steam, judged elsewhere.
struct Surface {
  bool barred = false;
  bool unknown = false;  ///< a hidden spot has to be tried first
  std::string text, source, locator;
  Quality quality = Quality::from_memory;
};

/// What the plan found for the item's edges.
struct SteamPlan {
  int edges = 0;
  int edges_with_pace = 0;
  double minutes = 0;                      ///< of steaming
  std::optional<double> kill_probability;  ///< of an egg at the weakest edge that has a pace
  double length_without_pace_metres = 0;
};

/// All that the choice for one item rests on. Unknown words in the sets are ignored by the rules.
struct Situation {
  std::set<std::string> traits;
  std::map<std::string, Risk> risks;       ///< that bear on this item
  std::map<std::string, Answer> consents;  ///< that were asked for it
  std::set<std::string> prior;             ///< kinds of treatments before: "spray", "dust"
  std::set<std::string> equipment;         ///< what there is: "steamer", "dryer" ...
  std::optional<Surface> surface;          ///< absent: no covering and no finish
  std::optional<SteamPlan> steam;          ///< absent: not planned yet
  std::optional<double> steamer_watts;
};

struct Reason {
  std::string code, text, source, locator;
  Quality quality = Quality::from_memory;
  Standing standing = Standing::allowed;
  Grounds grounds = Grounds::practical;
};

struct Offer {
  const Method* method = nullptr;
  Standing standing = Standing::allowed;
  std::vector<Reason> reasons;
  std::optional<double> kill_probability;  ///< computed; none: not computed
  bool whole = false;                      ///< reaches every place of the item, as far as is known
  double hands_minutes = 0, clock_minutes = 0;
  double energy_joules = 0;
  bool missing = false;      ///< what it takes is not on record
  bool unproven = false;     ///< steam by the practice of the trade alone
  bool overridable = false;  ///< barred for fear of damage alone
};

/// A method as a sentence names it: "hot chamber" for hot_chamber, in the language in force.
std::string in_words(const std::string& method);

/// Every method, the vacuum first, then as a person would try them.
/// Model:   every rule of data/rules.json whose conditions all hold adds a reason; the gravest decides. A
///          risk that was settled becomes a check, where the rule wants it only if the role of who settled
///          it is named. Consent that was given drops its rule, refused bars. Order: the vacuum; then what
///          may be used, what needs consent, what is barred; within it what there is equipment and proof
///          for; killing before containing before removing; what reaches the whole item; fewer checks, fewer
///          minutes of hands, the clock.
/// Source:  data/rules.json, data/methods.json, beside each line
/// Checked: treatments/choice/choice_unit_test.cpp, choice_law_test.cpp
std::vector<Offer> offers(const Situation& situation);

/// What the item gets: the method a person named where that is possible, else the first that kills and is
/// neither barred nor lacks its equipment, else the first that contains, else one whose equipment lacks.
struct Chosen {
  const Offer* offer = nullptr;  ///< null: nothing is possible
  bool by_person = false;
  std::string refused_code;  ///< why the person's choice was not taken: not_known, hazard, not_possible
};

/// Errors:  none; a name that is no method is told by refused_code.
Chosen choose(const std::vector<Offer>& offers, std::string_view wanted);

/// Whether the data files could be read; the reason if not.
Result<bool> data_state();

constexpr std::array<std::string_view, 3> k_data_keys = {"methods/1", "rules/1", "item_traits/1"};

}  // namespace lastegg::method_choice
