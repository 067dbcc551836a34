// Blocks of the report that rest on what was computed: in short, edge by edge, not treated, to do again,
// harm.
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>
#include <vector>

#include "job/reports/report.h"
#include "words/say.h"

namespace lastegg::reports {
namespace {

constexpr std::size_t k_most_named = 3;  // more are counted

std::string state_words(const std::string& state) {
  if (state == "lethal") return say("lethal");
  if (state == "short") return say("short");
  if (state == "barred") return say("steam barred");
  if (state == "not_treated") return say("not treated");
  return say("not proven");
}

// "97 in 100", never 100 in 100.
std::string in_hundred(double share) {
  return say("{:.0f} in 100", std::min(99.0, 100 * share));
}

}  // namespace

Json summary_block(const ReportInput& input) {
  Block block{"summary", say("In short"), {}, {}};
  const Json& counts = input.treated.at("counts");
  const auto count = [&](const char* key) { return counts.at(key).get<long>(); };
  if (is_true(input.state.contains("job") ? input.state.at("job") : Json(), "invented"))
    block.lines.push_back(line(
        "invented", {}, say("Everything in this report is invented: it shows what a report looks like.")));
  const long steamed = counts.at("treated").at("edges").get<long>();
  block.lines.push_back(line("steamed_edges", {{"steamed", steamed}, {"edges", count("edges")}},
                             say("{} of {} were steamed with a timed pass.", steamed,
                                 counted(count("edges"), say("edge"), say("edges")))));
  for (const auto& [state, text] :
       {std::pair{"lethal",
                  say("the whole edge got a deadly dose, down to the deepest place where eggs may lie")},
        {"not_proven", say("it may be done, but what was recorded does not show it")},
        {"short", say("at least one place surely got too little")},
        {"barred", say("steam would ruin the finish")},
        {"not_treated", say("the reasons stand below")}})
    block.rows.push_back(row(
        line("count", {{"state", state}, {"edges", count(state)}},
             say("{} {}: {}.", counted(count(state), say("edge"), say("edges")), state_words(state), text)),
        "", "", state));
  if (count("redo_open") > 0)
    block.lines.push_back(line("redo_open", {{"edges", count("redo_open")}},
                               say("The work is not finished: {} still to be done again or explained.",
                                   counted(count("redo_open"), say("edge is"), say("edges are")))));
  if (input.has_contradictions)
    block.lines.push_back(line("contradictions", {},
                               say("The record holds statements that contradict each other. What rests on "
                                   "them counts as not proven.")));
  block.lines.push_back(
      line("not_the_home", {},
           say("This report speaks of the places it names. Whether the home is clear is shown by the looks "
               "and traps of the coming weeks, not by this page.")));
  return block.json();
}

Json modelled_block(const ReportInput& input) {
  Block block{"modelled", say("What was computed"), {}, {}};
  for (const Json& item : list_in(input.treated, "items")) {
    for (const Json& edge : list_in(item, "edges")) {
      const Json& modelled = edge.at("modelled");
      if (modelled.is_null()) continue;
      const std::string state = text_in(edge, "state"), title = text_in(edge, "title"),
                        harm = text_in(edge, "harm");
      std::string words = fmt::format("{}, {}: {}", text_in(item, "title"), title, state_words(state));
      if (modelled.at("kill_probability").is_number())
        words += say(", kills at its worst place at least {}",
                     in_hundred(number_in(modelled, "kill_probability")));
      if (state != "lethal") words += fmt::format(" ({})", text_in(edge.at("cause"), "text"));
      block.rows.push_back(row(line("edge_verdict",
                                    {{"item", text_in(item, "title")},
                                     {"edge", title},
                                     {"state", state},
                                     {"cause", text_in(edge.at("cause"), "code")},
                                     {"cause_text", text_in(edge.at("cause"), "text")},
                                     {"kill_probability", modelled.at("kill_probability")},
                                     {"lethal_metres", modelled.at("lethal_metres")},
                                     {"length_metres", edge.at("length_metres")},
                                     {"basis", modelled.at("basis")},
                                     {"harm", harm}},
                                    words + "."),
                               text_in(item, "id"), text_in(edge, "id"), state));
    }
  }
  block.lines.push_back(block.rows.empty() ? line("nothing_computed", {},
                                                  say("Nothing was computed: no timed pass is on record."))
                                           : line("computed_note", {},
                                                  say("Nobody can put a thermometer into every seam. These "
                                                      "verdicts are computed from the timed "
                                                      "passes and from the tests above; they were not "
                                                      "measured there. The number says how many of "
                                                      "100 "
                                                      "bugs or eggs at the worst place are expected to die: "
                                                      "some may walk away from the heat, and "
                                                      "studies differ.")));
  return block.json();
}

Json not_treated_block(const ReportInput& input) {
  Block block{"not_treated", say("What was not treated, and why"), {}, {}};
  for (const Json& item : list_in(input.treated, "items")) {
    std::map<std::tuple<std::string, std::string, std::string>, long> groups;  // state, code, text
    for (const Json& edge : list_in(item, "edges")) {
      const std::string state = text_in(edge, "state");
      if (state == "not_treated" || state == "barred")
        ++groups[{state, text_in(edge.at("cause"), "code"), text_in(edge.at("cause"), "text")}];
    }
    for (const auto& [key, edges] : groups) {
      const auto& [state, code, text] = key;
      block.rows.push_back(row(
          line("not_treated",
               {{"item", text_in(item, "title")}, {"edges", edges}, {"cause", code}, {"cause_text", text}},
               fmt::format("{}, {}: {}.", text_in(item, "title"), counted(edges, say("edge"), say("edges")),
                           text)),
          text_in(item, "id"), "", state));
    }
    if (item.at("error").is_string())
      block.rows.push_back(
          row(line("item_not_built", {{"item", text_in(item, "title")}},
                   say("{}: its edges could not be listed; it was not judged.", text_in(item, "title"))),
              text_in(item, "id")));
  }
  if (block.rows.empty())
    block.lines.push_back(line("all_treated", {}, say("Every edge that is listed was treated.")));
  return block.json();
}

Json redo_block(const ReportInput& input) {
  Block block{"redo", say("What is done again"), {}, {}};
  for (const Json& item : list_in(input.treated, "items")) {
    // Edges that were passed stand by themselves; the others are counted by their reason. What steam is not
    // for has its reason in the block before.
    std::map<std::tuple<std::string, std::string, std::string>, long> groups;  // redo, code, why
    for (const Json& edge : list_in(item, "edges")) {
      const Json& redo = edge.at("redo");
      const std::string state = text_in(redo, "state"), why = text_in(redo, "reason");
      if (state == "none" || text_in(edge, "state") == "barred" ||
          text_in(edge.at("cause"), "code") == "other_method")
        continue;
      const std::string cause = text_in(edge.at("cause"), "text"), code = text_in(edge.at("cause"), "code");
      if (edge.at("treated").at("passes").get<long>() == 0) {
        ++groups[{state, code, state == "explained" ? why : cause}];
        continue;
      }
      const std::string ends =
          state == "explained" ? say("not done again: {}", why) : say("to be done again");
      block.rows.push_back(row(
          line(state == "explained" ? "explained" : "to_redo",
               {{"item", text_in(item, "title")},
                {"edge", text_in(edge, "title")},
                {"cause", code},
                {"cause_text", cause},
                {"reason", why}},
               fmt::format("{}, {}: {}; {}.", text_in(item, "title"), text_in(edge, "title"), cause, ends)),
          text_in(item, "id"), text_in(edge, "id"), text_in(edge, "state")));
    }
    for (const auto& [key, edges] : groups) {
      const auto& [state, code, why] = key;
      const bool explained = state == "explained";
      block.rows.push_back(row(
          line(explained ? "explained_group" : "to_redo_group",
               {{"item", text_in(item, "title")}, {"edges", edges}, {"cause", code}, {"reason", why}},
               fmt::format("{}, {}: {}{}.", text_in(item, "title"), counted(edges, say("edge"), say("edges")),
                           why, explained ? "" : say("; to be treated or explained"))),
          text_in(item, "id")));
    }
  }
  if (block.rows.empty())
    block.lines.push_back(line("redo_empty", {}, say("The list is empty: every edge is lethal.")));
  return block.json();
}

Json harm_block(const ReportInput& input) {
  Block block{"harm", say("Look at these when they are dry"), {}, {}};
  const auto words_of = [](const std::string& harm) {
    if (harm == "scorch") return say("the surface may have become too hot");
    if (harm == "soak") return say("the covering may have taken up too much water");
    if (harm == "barred") return say("it was steamed although its finish forbids it");
    return say("nobody knows how it bears steam");
  };
  for (const Json& item : list_in(input.treated, "items")) {
    std::map<std::string, std::vector<std::string>> found;
    for (const Json& edge : list_in(item, "edges")) {
      const std::string harm = text_in(edge, "harm");
      if (!edge.at("modelled").is_null() && harm != "none") found[harm].push_back(text_in(edge, "title"));
    }
    for (const auto& [harm, titles] : found) {
      const long edges = static_cast<long>(titles.size());
      std::string which = counted(edges, say("edge"), say("edges"));
      if (titles.size() <= k_most_named) {
        which = titles.front();
        for (std::size_t i = 1; i < titles.size(); ++i) which += "; " + titles[i];
      }
      block.rows.push_back(
          row(line("may_harm", {{"item", text_in(item, "title")}, {"edges", edges}, {"harm", harm}},
                   fmt::format("{}, {}: {}.", text_in(item, "title"), which, words_of(harm))),
              text_in(item, "id")));
    }
  }
  if (block.rows.empty())
    block.lines.push_back(line("no_harm", {}, say("No harm is expected at any edge that was steamed.")));
  return block.json();
}

}  // namespace lastegg::reports
