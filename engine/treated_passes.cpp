#include "engine/treated_passes.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <optional>

#include "engine/state_values.h"

namespace lastegg {
namespace {

bool has_numbers(const Json& one, std::initializer_list<const char*> keys) {
  return std::all_of(keys.begin(), keys.end(),
                     [&](const char* key) { return value_of(one, key).has_value(); });
}

// A state that did not come from a fold may hold anything; what lacks its members says nothing.
bool is_whole(const Json& one, const std::string& list) {
  if (list == "edge_marks") return !word_of(one, "what").empty();
  if (list == "redo_notes") return !word_of(one, "reason").empty();
  if (list == "spot_readings") return has_numbers(one, {"seconds_after"});
  if (!has_numbers(one, {"length_metres", "seconds"})) return false;
  const Json* marks = member_if(one, "marks");
  return marks == nullptr ||
         (marks->is_array() && std::all_of(marks->begin(), marks->end(), [](const Json& mark) {
            return has_numbers(mark, {"at_metres", "seconds"});
          }));
}

std::vector<Json> entries_about(const Json& state, const char* list, const std::string& item,
                                const std::string& edge) {
  std::vector<Json> out;
  for (const Json& one : list_of(state, list)) {
    if (word_of(one, "item") == item && word_of(one, "edge") == edge && is_whole(one, list))
      out.push_back(one);
  }
  return out;
}

bool is_told(const Json& one, const char* key) {
  const Json* found = member_if(one, key);
  return found != nullptr && found->is_boolean() && found->get<bool>();
}

// The day of the visit of a stroke or mark; empty where it is not known.
std::string day_of_visit(const Json& one, const Json& state) {
  const std::string visit = word_of(one, "visit");
  if (visit.empty()) return "";
  for (const Json& known : list_of(state, "visits")) {
    if (word_of(known, "id") == visit) return word_of(known, "on");
  }
  return "";
}

bool came_after(const Json& stroke, const Json& bug, const Json& state) {
  if (!word_of(bug, "id").empty() && word_of(stroke, "follows") == word_of(bug, "id")) return true;
  const std::string day = day_of_visit(stroke, state), day_of_bug = day_of_visit(bug, state);
  return !day.empty() && !day_of_bug.empty() && day > day_of_bug;  // "2026-03-02" sorts as its day
}

// Marks a whole way, or the interval around a place, as not known.
void break_at(Json& marks, const std::optional<double>& place) {
  for (std::size_t i = 1; i < marks.size(); ++i) {
    const double from = number_of(marks[i - 1], "at_metres"), to = number_of(marks[i], "at_metres");
    if (!place || (*place >= std::min(from, to) && *place <= std::max(from, to)))
      marks[i]["interrupted"] = true;
  }
}

Json mark(double at_metres, double seconds, bool interrupted) {
  return {{"at_metres", at_metres}, {"seconds", seconds}, {"interrupted", interrupted}};
}

}  // namespace

bool EdgeRecord::is_marked(const char* what) const {
  return std::any_of(marks.begin(), marks.end(),
                     [&](const Json& one) { return word_of(one, "what") == what; });
}

std::string EdgeRecord::reason_of(const char* what) const {
  for (const Json& one : marks) {
    if (word_of(one, "what") == what && !word_of(one, "reason").empty()) return word_of(one, "reason");
  }
  return "";
}

EdgeRecord record_of_edge(const Json& state, const std::string& item, const std::string& edge) {
  return {entries_about(state, "strokes", item, edge), entries_about(state, "edge_marks", item, edge),
          entries_about(state, "spot_readings", item, edge), entries_about(state, "redo_notes", item, edge)};
}

Json pass_of_stroke(const Json& stroke, const std::vector<Json>& marks_of_edge, double edge_metres) {
  const double length = number_of(stroke, "length_metres"), seconds = number_of(stroke, "seconds");
  Json marks = Json::array();
  bool any_break = false;
  if (const Json* told = member_if(stroke, "marks")) {
    for (const Json& one : *told) {
      any_break = any_break || is_told(one, "interrupted");
      marks.push_back(
          mark(number_of(one, "at_metres"), number_of(one, "seconds"), is_told(one, "interrupted")));
    }
  }
  double from = 0;
  if (!marks.empty() && number_of(marks.front(), "seconds") <= 0)
    from = number_of(marks.front(), "at_metres");
  else
    marks.insert(marks.begin(), mark(0, 0, false));
  if (marks.size() < 2 || number_of(marks.back(), "seconds") < seconds)
    marks.push_back(mark(from + length, seconds, false));
  for (Json* end : {&marks.front(), &marks.back()}) {
    if (std::abs(number_of(*end, "at_metres") - edge_metres) <= k_measured_to_metres)
      (*end)["at_metres"] = edge_metres;
  }
  if (is_told(stroke, "interrupted") && !any_break) break_at(marks, std::nullopt);
  for (const Json& one : marks_of_edge) {
    if (word_of(one, "what") != "towel_changed") continue;
    if (word_of(one, "visit") != word_of(stroke, "visit")) continue;
    break_at(marks, has_numbers(one, {"at_metres"}) ? number_if(one, "at_metres") : std::nullopt);
  }
  Json pass{{"marks", std::move(marks)}};
  if (const std::string towel = word_of(stroke, "towel"); !towel.empty()) pass["towel"] = towel;
  return pass;
}

std::vector<Json> passes_of(const std::vector<Json>& strokes, const EdgeRecord& record, const Json& state,
                            double edge_metres) {
  std::vector<Json> bugs;
  for (const Json& one : record.marks) {
    if (word_of(one, "what") == "live_bug") bugs.push_back(one);
  }
  std::vector<Json> before, after;
  for (const Json& stroke : strokes) {
    const bool is_after = !bugs.empty() && std::all_of(bugs.begin(), bugs.end(), [&](const Json& bug) {
      return came_after(stroke, bug, state);
    });
    (is_after ? after : before).push_back(pass_of_stroke(stroke, record.marks, edge_metres));
  }
  if (!bugs.empty() && !before.empty()) before.back()["saw_live_bug"] = true;
  before.insert(before.end(), after.begin(), after.end());
  return before;
}

}  // namespace lastegg
