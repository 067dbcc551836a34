#include "job/reports/report_lines.h"

#include <fmt/format.h>

#include "words/say.h"

namespace lastegg::reports {

Json line(std::string code, Json parameters, std::string text) {
  if (parameters.is_null()) parameters = Json::object();
  return {{"code", std::move(code)}, {"parameters", std::move(parameters)}, {"text", std::move(text)}};
}

Json row(Json made, const std::string& item, const std::string& edge, const std::string& state) {
  if (!item.empty()) made["item"] = item;
  if (!edge.empty()) made["edge"] = edge;
  if (!state.empty()) made["state"] = state;
  return made;
}

Json Block::json() const {
  return {{"code", code}, {"heading", heading}, {"lines", lines}, {"rows", rows}};
}

std::string text_in(const Json& one, const char* key) {
  if (!one.is_object()) return "";
  const auto found = one.find(key);
  return found != one.end() && found->is_string() ? found->get<std::string>() : std::string();
}

const Json& list_in(const Json& one, const char* key) {
  static const Json none = Json::array();
  if (!one.is_object()) return none;
  const auto found = one.find(key);
  return found != one.end() && found->is_array() ? *found : none;
}

bool is_true(const Json& one, const char* key) {
  return one.is_object() && one.contains(key) && one.at(key).is_boolean() && one.at(key).get<bool>();
}

double number_in(const Json& one, const char* key, double without) {
  if (!one.is_object()) return without;
  const auto found = one.find(key);
  return found != one.end() && found->is_number() ? found->get<double>() : without;
}

std::string counted(long count, const std::string& one, const std::string& many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string time_words(double seconds) {
  return seconds < 90 ? fmt::format("{:.0f} s", seconds) : fmt::format("{:.0f} min", seconds / 60);
}

std::string Names::item(const std::string& id) const {
  for (const Json& one : list_in(treated, "items")) {
    if (text_in(one, "id") == id) return text_in(one, "title");
  }
  return "";
}

std::string Names::edge(const std::string& item, const std::string& edge) const {
  for (const Json& one : list_in(treated, "items")) {
    if (text_in(one, "id") != item) continue;
    for (const Json& known : list_in(one, "edges")) {
      if (text_in(known, "id") == edge) return text_in(known, "title");
    }
  }
  return edge;
}

std::string Names::place(const Json& entity, const Json& state) const {
  const std::string item_id = text_in(entity, "item"), edge_id = text_in(entity, "edge");
  const std::string title = item(item_id);
  if (!title.empty()) return edge_id.empty() ? title : fmt::format("{}, {}", title, edge(item_id, edge_id));
  for (const Json& room : list_in(state, "rooms")) {
    if (text_in(room, "id") == text_in(entity, "room")) return text_in(room, "title");
  }
  return say("The home");
}

}  // namespace lastegg::reports
