#include "job/record/event.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <vector>

#include "job/record/uuid.h"
#include "words/say.h"

namespace lastegg::record {
namespace {

Error complaint(std::string message, std::string where = "", std::string value = "", std::string limit = "",
                std::string unit = "") {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = std::move(message);
  error.where = std::move(where);
  error.value = std::move(value);
  error.limit = std::move(limit);
  error.unit = std::move(unit);
  return error;
}

// At most so many characters of a refused value are repeated in a message.
std::string shortened(std::string_view text) {
  constexpr std::size_t k_most = 60;
  if (text.size() <= k_most) return std::string(text);
  std::size_t end = k_most;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0U) == 0x80U) --end;
  return std::string(text.substr(0, end)) + "...";
}

Result<Json> parse_line(std::string_view line) {
  std::vector<std::set<std::string>> keys(k_deepest_event_levels + 2);
  std::string repeated;
  bool is_repeated = false;
  bool is_deep = false;
  const auto watch = [&](int depth, Json::parse_event_t event, Json& parsed) {
    const auto level = static_cast<std::size_t>(depth);
    if (level > k_deepest_event_levels) {
      is_deep = true;
      return false;
    }
    if (event == Json::parse_event_t::object_start) keys[level + 1].clear();
    if (event == Json::parse_event_t::key &&
        !keys[level].insert(parsed.get_ref<const std::string&>()).second) {
      is_repeated = true;
      repeated = parsed.get_ref<const std::string&>();
    }
    return true;
  };
  Json value = Json::parse(line.begin(), line.end(), watch, false);
  if (is_deep)
    return refuse(complaint(say("the event is nested more than {} levels deep", k_deepest_event_levels), "",
                            "", std::to_string(k_deepest_event_levels), "levels"));
  if (value.is_discarded())
    return refuse(complaint(say("the line is not one JSON object in UTF-8"), "", shortened(line)));
  if (is_repeated)
    return refuse(complaint(say("the key \"{}\" is given twice in one object", shortened(repeated)), "",
                            shortened(repeated)));
  return value;
}

Result<std::string> text_member(const Json& event, const std::string& key) {
  const auto found = event.find(key);
  if (found == event.end()) return refuse(complaint(say("{} is missing", key), "/" + key));
  if (!found->is_string() || found->get_ref<const std::string&>().empty())
    return refuse(complaint(say("{} must be a text that is not empty", key), "/" + key));
  return found->get_ref<const std::string&>();
}

Result<std::string> uuid_member(const Json& event, const std::string& key) {
  Result<std::string> text = text_member(event, key);
  if (text && !is_uuid(*text))
    return refuse(
        complaint(say("{} is \"{}\"; it must be a UUID in lower case, with hyphens", key, shortened(*text)),
                  "/" + key, shortened(*text)));
  return text;
}

}  // namespace

Result<Event> parse_event(std::string_view line) {
  if (line.size() > k_longest_event_bytes)
    return refuse(complaint(
        say("the event is {} bytes long; it must be at most {} bytes", line.size(), k_longest_event_bytes),
        "", std::to_string(line.size()), std::to_string(k_longest_event_bytes), "bytes"));
  if (line.empty() || line.front() != '{' || line.back() != '}' ||
      line.find_first_of("\r\n") != std::string_view::npos)
    return refuse(complaint(in_language("an event is one line that begins with { and ends with }"), "",
                            shortened(line)));
  const Result<Json> parsed = parse_line(line);
  if (!parsed) return refuse(parsed.error());

  Event event;
  event.bytes = std::string(line);
  struct Member {
    const char* key;
    bool is_id;
    std::string Event::* place;
  };
  for (const Member& member :
       {Member{"id", true, &Event::id}, Member{"kind", false, &Event::kind},
        Member{"subject", true, &Event::subject}, Member{"device", false, &Event::device},
        Member{"actor", false, &Event::actor}, Member{"at", false, &Event::at}}) {
    Result<std::string> text =
        member.is_id ? uuid_member(*parsed, member.key) : text_member(*parsed, member.key);
    if (!text) return refuse(text.error());
    event.*member.place = *std::move(text);
  }
  if (const auto corrects = parsed->find("corrects"); corrects != parsed->end() && !corrects->is_null()) {
    Result<std::string> named = uuid_member(*parsed, "corrects");
    if (!named) return refuse(named.error());
    event.corrects = *std::move(named);
  }
  const auto data = parsed->find("data");
  if (data == parsed->end() || !data->is_object())
    return refuse(
        complaint(data == parsed->end() ? say("data is missing") : say("data must be an object"), "/data"));
  event.data = *data;
  return event;
}

std::string_view family_of(std::string_view kind) {
  return kind.substr(0, kind.find('/'));
}

bool same_value(const Json& one, const Json& other) {
  if (one.is_object() && other.is_object()) {
    if (one.size() != other.size()) return false;
    for (const auto& [key, value] : one.items()) {
      const auto found = other.find(key);
      if (found == other.end() || !same_value(value, *found)) return false;
    }
    return true;
  }
  if (one.is_array() && other.is_array())
    return std::equal(one.begin(), one.end(), other.begin(), other.end(), same_value);
  return one == other;
}

}  // namespace lastegg::record
