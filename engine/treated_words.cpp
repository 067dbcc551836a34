#include "engine/treated_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "engine/steam_shapes.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

struct CauseWords {
  treated::Cause cause;
  const char* word;
  const char* meaning;
  const char* todo;
};
constexpr std::array<CauseWords, 7> k_causes{{
    {treated::Cause::none, "none", to_say("it is lethal"), ""},
    {treated::Cause::too_fast, "too_fast", to_say("the head went over it too fast"),
     to_say("pass again at the planned pace")},
    {treated::Cause::near_limit, "near_limit",
     to_say("it may be lethal, but it cannot be told with the stated confidence"),
     to_say("pass again at the planned pace, or measure in this covering")},
    {treated::Cause::unclear_record, "unclear_record",
     to_say("somebody was there, but nobody knows for how long"),
     to_say("pass again and mark start and end")},
    {treated::Cause::not_passed, "not_passed", to_say("no pass went over it"), to_say("pass it")},
    {treated::Cause::saw_live_bug, "saw_live_bug",
     to_say("hot enough by the model, and yet a bug was seen alive"),
     to_say("pass the whole edge again, more slowly, and look behind the head")},
    {treated::Cause::no_model, "no_model", to_say("passed with a head or towel that nothing is known of"),
     to_say("test this head and towel, or pass again with one that was tested")},
}};

const CauseWords& words_of(treated::Cause cause) {
  for (const CauseWords& known : k_causes) {
    if (known.cause == cause) return known;
  }
  return k_causes.front();
}

int rank(bugs::Verdict verdict) {
  return verdict == bugs::Verdict::lethal ? 0 : verdict == bugs::Verdict::not_proven ? 1 : 2;
}

}  // namespace

Shape cause_shape() {
  std::vector<Choice> choices;
  for (const CauseWords& known : k_causes) choices.push_back({known.word, known.meaning});
  return choice(std::move(choices), "why it is not lethal");
}

Shape treated_harm_shape() {
  return choice({{"none", "no harm with the stated confidence"},
                 {"scorch", "the surface may have passed its limit"},
                 {"soak", "the covering may have taken up too much water"},
                 {"barred", "the finish must not be steamed"},
                 {"unknown", "nobody knows: look at it when it is dry"}},
                "harm, apart from kill");
}

std::string harm_word(const treated::TreatedStretch& stretch, const EdgeProblem& edge) {
  const bool untouched = stretch.visits == 0 && stretch.harm == treated::Harm::none;
  if (untouched) return "none";
  if (edge.finish.barred()) return "barred";
  if (edge.finish.unknown() || edge.drop.shuts_vapour_out()) return "unknown";
  switch (stretch.harm) {
    case treated::Harm::soak:
      return "soak";
    case treated::Harm::scorch:
      return "scorch";
    case treated::Harm::unknown:
      return "unknown";
    case treated::Harm::none:
      break;
  }
  return "none";
}

std::string worse_harm(const std::string& a, const std::string& b) {
  constexpr std::array<const char*, 5> order{"none", "unknown", "soak", "scorch", "barred"};
  const auto place = [&](const std::string& word) {
    return std::find_if(order.begin(), order.end(), [&](const char* known) { return word == known; });
  };
  return place(a) < place(b) ? b : a;
}

Json stretch_json(const treated::TreatedStretch& stretch, const std::string& harm) {
  Json slowest = nullptr, fastest = nullptr;
  if (stretch.visits > 0) {
    slowest = stretch.slowest;
    fastest = stretch.fastest;
  }
  return {{"from_metres", stretch.from_metres},
          {"to_metres", stretch.to_metres},
          {"visits", stretch.visits},
          {"slowest_metres_per_second", slowest},
          {"fastest_metres_per_second", fastest},
          {"counted_together", stretch.counted_together},
          {"verdict", bugs::verdict_word(stretch.verdict)},
          {"cause", words_of(stretch.cause).word},
          {"depth_reached_metres", stretch.depth_reached_metres},
          {"harm", harm}};
}

Json redo_json(const treated::TreatedReport& report) {
  Json redo = Json::array();
  const auto add = [&](double from, double to, treated::Cause cause) {
    const CauseWords& words = words_of(cause);
    redo.push_back({{"from_metres", from},
                    {"to_metres", to},
                    {"cause", words.word},
                    {"text", say("{:.2f} to {:.2f} m: {}; {}", from, to, in_language(words.meaning),
                                 in_language(words.todo))}});
  };
  for (const treated::TreatedStretch& stretch : report.stretches) {
    if (stretch.cause == treated::Cause::saw_live_bug) {
      add(report.stretches.front().from_metres, report.stretches.back().to_metres, stretch.cause);
      return redo;
    }
  }
  for (std::size_t i = 0; i < report.stretches.size();) {
    const treated::TreatedStretch& first = report.stretches[i];
    std::size_t last = i;
    while (last + 1 < report.stretches.size() && report.stretches[last + 1].cause == first.cause) ++last;
    if (first.verdict != bugs::Verdict::lethal)
      add(first.from_metres, report.stretches[last].to_metres, first.cause);
    i = last + 1;
  }
  return redo;
}

Json treated_reason(const treated::TreatedReport& report, double length_metres) {
  if (report.verdict == bugs::Verdict::lethal) {
    return reason("lethal_everywhere",
                  say("every place of {:.2f} m got a lethal dose down to {:.1f} mm at least", length_metres,
                      1e3 * report.depth_reached_metres));
  }
  // The first stretch with the edge's verdict names the cause.
  for (const treated::TreatedStretch& stretch : report.stretches) {
    if (stretch.verdict != report.verdict) continue;
    const CauseWords& words = words_of(stretch.cause);
    return reason(words.word,
                  say("{:.2f} of {:.2f} m are lethal; from {:.2f} to {:.2f} m {}", report.lethal_metres,
                      length_metres, stretch.from_metres, stretch.to_metres, in_language(words.meaning)));
  }
  return reason("not_passed", say("no pass is on record"));
}

bool is_worse(bugs::Verdict a, bugs::Verdict b) {
  return rank(a) > rank(b);
}

}  // namespace lastegg
