#include "apps/cli/commands/job_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "words/say.h"

namespace lastegg::cli {
namespace {

using record::Entity;

std::string title_of(const Entity& entity) {
  const auto title = entity.data.find("title");
  return title != entity.data.end() && title->is_string() ? title->get<std::string>() : entity.id;
}

std::string member_text(const Entity& entity, const char* key) {
  const auto member = entity.data.find(key);
  if (member == entity.data.end() || member->is_null()) return "";
  return member->is_string() ? member->get<std::string>() : member->dump();
}

std::string title_in(const std::vector<Entity>& list, const std::string& id) {
  const auto found =
      std::find_if(list.begin(), list.end(), [&](const Entity& entity) { return entity.id == id; });
  return found == list.end() ? "-" : title_of(*found);
}

std::string item_line(const Entity& item) {
  std::string text = fmt::format("    {}: {}", title_of(item), member_text(item, "kind"));
  for (const char* key : {"seats", "size", "covering", "finish"})
    if (const std::string value = member_text(item, key); !value.empty())
      text += fmt::format(", {} {}", key, value);
  return text + "\n";
}

std::string rooms_text(const record::JobState& state) {
  std::string text;
  std::vector<const Entity*> elsewhere;
  for (const Entity& item : state.list("items")) {
    const std::string room = member_text(item, "room");
    const auto is_its_room = [&](const Entity& one) { return one.id == room; };
    if (std::none_of(state.list("rooms").begin(), state.list("rooms").end(), is_its_room))
      elsewhere.push_back(&item);
  }
  for (const Entity& room : state.list("rooms")) {
    text += fmt::format("  {}\n", title_of(room));
    for (const Entity& item : state.list("items"))
      if (member_text(item, "room") == room.id) text += item_line(item);
  }
  if (!elsewhere.empty()) text += say("  in no room\n");
  for (const Entity* item : elsewhere) text += item_line(*item);
  return text;
}

std::string kit_text(const record::JobState& state) {
  std::string text;
  const auto tell = [&](const std::string& what, const std::vector<Entity>& list) {
    for (const Entity& entity : list) text += fmt::format("  {}: {}\n", what, title_of(entity));
  };
  tell(say("machine"), state.list("machines"));
  tell(say("head"), state.list("heads"));
  tell(say("towel"), state.list("towels"));
  tell(say("probe"), state.list("probes"));
  return text;
}

std::string reading_line(const Entity& reading) {
  const auto pace = reading.data.find("pace_metres_per_second");
  double metres_per_second = 0;
  if (pace != reading.data.end() && pace->is_number())
    metres_per_second = pace->get<double>();
  else
    metres_per_second =
        reading.data.at("distance_metres").get<double>() / reading.data.at("seconds").get<double>();
  const auto& layers = reading.data.at("layers");
  const std::size_t count = layers.is_array() ? layers.size() : layers.get<std::size_t>();
  const std::string counted = count == 1 ? say("layer ") : say("layers");
  return fmt::format("    {:6.1f} mm/s  {} {}  {:5.1f} C\n", 1000 * metres_per_second, count, counted,
                     reading.data.at("peak_celsius").get<double>());
}

std::string fold_tests_text(const record::JobState& state) {
  std::string text;
  for (const record::FoldTest& test : state.fold_tests) {
    text += say("  {}: {} with {}, probe {}\n", title_of(test.test),
                title_in(state.list("heads"), member_text(test.test, "head")),
                title_in(state.list("towels"), member_text(test.test, "towel")),
                title_in(state.list("probes"), member_text(test.test, "probe")));
    for (const Entity& reading : test.readings) text += reading_line(reading);
  }
  return text;
}

}  // namespace

std::string attention_text(const record::Folded& folded) {
  std::string text;
  for (const record::Conflict& conflict : folded.conflicts) {
    text += say("open contradiction about {} {}:\n", conflict.kind, conflict.subject);
    for (std::size_t i = 0; i < conflict.rivals.size(); ++i)
      text += say("  {} says {}\n", conflict.rivals[i], conflict.values[i].dump());
  }
  for (const record::Refused& refused : folded.refused)
    if (!refused.settled)
      text += say("does not count: {} {}: {}\n", refused.id, refused.error.where, refused.error.message);
  for (const Entity& reading : folded.state.readings_without_test)
    text += say("reading {} belongs to a fold test that is not here\n", reading.id);
  for (const record::UnknownKind& unknown : folded.unknown)
    text += say("kept, not read: {} of kind {}, from a newer version\n", unknown.count, unknown.kind);
  return text;
}

std::string job_text(const record::Folded& folded) {
  const record::JobState& state = folded.state;
  std::string text =
      say("{}\n{} events, state {}\n", state.job ? title_of(*state.job) : say("(no job stated)"),
          folded.event_count, folded.state_hash.substr(0, 6));
  if (state.job && state.job->data.value("invented", false))
    text += say("All its measured values are invented.\n");
  const auto section = [&](const std::string& title, const std::string& body) {
    if (!body.empty()) text += fmt::format("\n{}\n{}", title, body);
  };
  section(say("Rooms"), rooms_text(state));
  section(say("Kit"), kit_text(state));
  section(say("Fold tests"), fold_tests_text(state));
  std::string removed;
  for (const record::Removed& one : state.removed)
    removed += fmt::format("  {} {}\n", one.entity.kind, title_of(one.entity));
  section(say("Off the lists"), removed);
  section(say("To look at"), attention_text(folded));
  return text;
}

}  // namespace lastegg::cli
