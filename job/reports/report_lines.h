// The pieces a report is made of: lines with a code, the values that stand in them, and their English text.
// Another language needs the code and the values alone. Plain JSON values; pure functions.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "physics/evidence/json.h"

namespace lastegg::reports {

using Json = nlohmann::json;

/// {"code", "parameters", "text"}
Json line(std::string code, Json parameters, std::string text);

/// A line about an item, and about an edge of it.
Json row(Json line, const std::string& item, const std::string& edge = "", const std::string& state = "");

/// {"code", "heading", "lines", "rows"}
struct Block {
  std::string code, heading;
  std::vector<Json> lines, rows;
  Json json() const;
};

/// Members of a state, which may hold anything.
std::string text_in(const Json& one, const char* key);
const Json& list_in(const Json& one, const char* key);
bool is_true(const Json& one, const char* key);
double number_in(const Json& one, const char* key, double without = 0);

/// "1 edge", "4 edges"
std::string counted(long count, const std::string& one, const std::string& many);

/// Minutes and seconds for people: "40 s", "21 min".
std::string time_words(double seconds);

/// An item's title, an edge's title: from the answer of `treated`.
struct Names {
  const Json& treated;
  std::string item(const std::string& id) const;
  std::string edge(const std::string& item, const std::string& edge) const;
  /// "Ottoman, lower seam of the top, front"; the item alone without an edge, the room's title without an
  /// item.
  std::string place(const Json& entity, const Json& state) const;
};

}  // namespace lastegg::reports
