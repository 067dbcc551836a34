// Blocks of the report that the record alone fills: found, done, measured, hidden spots, damage from before.
#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "job/reports/report.h"
#include "treatments/choice/choice.h"
#include "words/say.h"

namespace lastegg::reports {
namespace {

std::string found_words(const Json& look) {
  if (text_in(look, "look") == "none_seen") return say("nothing seen");
  if (text_in(look, "look") == "not_accessible") return say("could not be looked at");
  std::vector<std::string> seen;
  const auto add = [&](const char* key, const std::string& one, const std::string& many) {
    const long count = static_cast<long>(number_in(look, key));
    if (count > 0) seen.push_back(counted(count, one, many));
  };
  add("adults", say("live adult"), say("live adults"));
  add("nymphs", say("live nymph"), say("live nymphs"));
  add("eggs", say("egg"), say("eggs"));
  add("cast_skins", say("cast skin"), say("cast skins"));
  if (is_true(look, "spots")) seen.emplace_back(say("dark spots"));
  if (is_true(look, "dead")) seen.emplace_back(say("dead bugs only"));
  if (seen.empty()) return say("signs, not counted");
  std::string words = seen.front();
  for (std::size_t i = 1; i < seen.size(); ++i) words += ", " + seen[i];
  return words;
}

std::string palm_words(const std::string& palm) {
  if (palm == "cold") return say("cold to the back of a hand");
  if (palm == "hot") return say("hot to the back of a hand");
  return say("warm to the back of a hand");
}

}  // namespace

Json found_block(const ReportInput& input) {
  Block block{"found", say("What was found"), {}, {}};
  const Names names{input.treated};
  for (const Json& look : list_in(input.state, "evidence")) {
    const std::string place = names.place(look, input.state), words = found_words(look);
    Json parameters{{"place", place}};
    for (const char* key : {"look", "adults", "nymphs", "eggs", "cast_skins", "spots", "dead", "how"}) {
      if (look.contains(key)) parameters[key] = look.at(key);
    }
    block.rows.push_back(row(line("found_at", parameters, fmt::format("{}: {}.", place, words)),
                             text_in(look, "item"), text_in(look, "edge")));
  }
  if (block.rows.empty())
    block.lines.push_back(line("nothing_recorded", {}, say("No inspection is on record.")));
  else
    block.lines.push_back(
        line("found_limits", {},
             say("This is what was seen. Bed bugs hide well, so nothing seen does not mean none there.")));
  return block.json();
}

Json treated_block(const ReportInput& input) {
  Block block{"treated", say("What was done"), {}, {}};
  for (const Json& visit : list_in(input.state, "visits")) {
    const std::string on = text_in(visit, "on"), title = text_in(visit, "title");
    block.lines.push_back(line("visit", {{"title", title}, {"on", on}},
                               on.empty() ? title + "." : say("{} on {}.", title, on)));
  }
  for (const Json& item : list_in(input.treated, "items")) {
    const Json& done = item.at("counts").at("treated");
    const long edges = done.at("edges").get<long>(), passes = done.at("passes").get<long>();
    const std::string id = text_in(item, "id"), title = text_in(item, "title"),
                      method = text_in(item, "method");
    if (passes > 0) {
      block.rows.push_back(row(line("steamed",
                                    {{"item", title},
                                     {"passes", passes},
                                     {"edges", edges},
                                     {"metres", done.at("metres")},
                                     {"seconds", done.at("seconds")}},
                                    say("{}: steam, {} over {}, {:.1f} m in {}.", title,
                                        counted(passes, say("timed pass"), say("timed passes")),
                                        counted(edges, say("edge"), say("edges")), number_in(done, "metres"),
                                        time_words(number_in(done, "seconds")))),
                               id));
    }
    long practice = 0;
    for (const Json& edge : list_in(item, "edges"))
      practice += text_in(edge.at("cause"), "code") == "by_practice" ? 1 : 0;
    if (practice > 0)
      block.rows.push_back(row(line("by_practice", {{"item", title}, {"edges", practice}},
                                    say("{}: {} steamed as practice has it, without a timed pass.", title,
                                        counted(practice, say("edge"), say("edges")))),
                               id));
    if (!method.empty() && method != "steam") {
      std::string reason;
      for (const Json& choice : list_in(input.state, "methods")) {
        if (text_in(choice, "item") == id) reason = text_in(choice, "reason");
      }
      block.rows.push_back(
          row(line("method_chosen", {{"item", title}, {"method", method}, {"reason", reason}},
                   say("{}: {} was chosen{}.", title, method_choice::in_words(method),
                       reason.empty() ? "" : say(", because {}", reason))),
              id));
    }
  }
  if (block.rows.empty())
    block.lines.push_back(line("nothing_recorded", {}, say("No treatment is on record.")));
  return block.json();
}

Json measured_block(const ReportInput& input) {
  Block block{"measured", say("What was measured"), {}, {}};
  const Names names{input.treated};
  for (const Json& test : list_in(input.state, "fold_tests")) {
    const Json& readings = list_in(test, "readings");
    if (readings.empty()) continue;
    double lowest = 1e9, highest = -1e9;
    for (const Json& reading : readings) {
      const double celsius = number_in(reading, "peak_celsius", number_in(reading, "gun_celsius"));
      lowest = std::min(lowest, celsius);
      highest = std::max(highest, celsius);
    }
    block.rows.push_back(line(
        "fold_test",
        {{"title", text_in(test, "title")},
         {"readings", readings.size()},
         {"lowest_celsius", lowest},
         {"highest_celsius", highest}},
        say("Test of this steamer, {}: {} inside a fold of cloth, {:.0f} to {:.0f} C.",
            text_in(test, "title"),
            counted(static_cast<long>(readings.size()), say("reading"), say("readings")), lowest, highest)));
  }
  for (const Json& reading : list_in(input.state, "spot_readings")) {
    const std::string place = names.place(reading, input.state);
    const bool by_gun = reading.contains("gun_celsius") && reading.at("gun_celsius").is_number();
    const std::string shown =
        by_gun ? say("{:.0f} C by an infrared thermometer", number_in(reading, "gun_celsius"))
               : palm_words(text_in(reading, "palm"));
    Json parameters{{"place", place}, {"seconds_after", number_in(reading, "seconds_after")}};
    for (const char* key : {"gun_celsius", "palm", "at_metres"}) {
      if (reading.contains(key)) parameters[key] = reading.at(key);
    }
    block.rows.push_back(
        row(line("spot_reading", parameters,
                 say("{}: {}, {:.0f} s after the head.", place, shown, number_in(reading, "seconds_after"))),
            text_in(reading, "item"), text_in(reading, "edge")));
  }
  for (const Json& check : list_in(input.state, "probe_checks")) {
    const bool ice = text_in(check, "in") == "melting_ice";
    block.rows.push_back(line(
        "probe_check", {{"in", text_in(check, "in")}, {"shown_celsius", number_in(check, "shown_celsius")}},
        say("The thermometer in {}: {:.1f} C.", ice ? say("melting ice") : say("boiling water"),
            number_in(check, "shown_celsius"))));
  }
  if (block.rows.empty())
    block.lines.push_back(line(
        "nothing_measured", {},
        say("Nothing was measured. What is computed below then stands on what is usual of such equipment.")));
  return block.json();
}

Json hidden_spot_block(const ReportInput& input) {
  Block block{"hidden_spots", say("Tests on hidden spots"), {}, {}};
  for (const Json& item : list_in(input.state, "items")) {
    const double held = number_in(item, "hidden_spot_seconds"),
                 wet = number_in(item, "wetting_limit_grams_per_m2");
    if (held <= 0 && wet <= 0) continue;
    std::string words;
    if (held > 0) words = say("the head stood for {:.0f} s and left no mark", held);
    if (wet > 0) words += (words.empty() ? "" : "; ") + say("{:.0f} g/m2 of water left no mark", wet);
    block.rows.push_back(
        row(line("hidden_spot", {{"item", text_in(item, "title")}, {"seconds", held}, {"grams_per_m2", wet}},
                 fmt::format("{}: {}.", text_in(item, "title"), words)),
            text_in(item, "id")));
  }
  if (block.rows.empty())
    block.lines.push_back(line("no_hidden_spot", {}, say("No test on a hidden spot is on record.")));
  return block.json();
}

Json damage_block(const ReportInput& input) {
  Block block{"damage_before", say("Damage that was there before"), {}, {}};
  const Names names{input.treated};
  for (const Json& damage : list_in(input.state, "damages")) {
    const std::string place = names.place(damage, input.state), what = text_in(damage, "what");
    block.rows.push_back(
        row(line("damage", {{"place", place}, {"what", what}},
                 fmt::format("{}: {}.", place, what.empty() ? say("see the photo in the record") : what)),
            text_in(damage, "item"), text_in(damage, "edge")));
  }
  if (block.rows.empty()) block.lines.push_back(line("no_damage", {}, say("None is on record.")));
  return block.json();
}

}  // namespace lastegg::reports
