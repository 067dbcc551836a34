#include "engine/pace_explanation.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

using steam::Influence;
using steam::Lever;

constexpr double k_worth_saying = 1.05;  // factor of pace; less is nothing to a hand
constexpr double k_share_worth_saying = 0.2;

struct InfluenceWords {
  Influence what;
  const char* word;
  const char* text;
  const char* remedy;
};
constexpr std::array k_influences{
    InfluenceWords{Influence::steam_temperature, "steam_temperature",
                   to_say("how hot the steam is under the head"),
                   to_say("a reading with the head held still tells")},
    InfluenceWords{Influence::exchange, "exchange", to_say("how well this head brings its heat to the cloth"),
                   to_say("a fold test with this head and towel tells")},
    InfluenceWords{Influence::cloth_vapour, "cloth_vapour", to_say("how vapour moves in this very cloth"),
                   to_say("a probe under the real edge tells")},
    InfluenceWords{Influence::forced_flow, "forced_flow",
                   to_say("how strongly steam is pushed into this cloth"),
                   to_say("a probe under the real edge tells")},
    InfluenceWords{Influence::layers, "layers", to_say("how thick and dense the layers are"),
                   to_say("measuring the cloth tells")},
    InfluenceWords{Influence::hand, "hand", to_say("how steady the hand is"),
                   to_say("the pace guide steadies it")}};

struct LeverWords {
  Lever lever;
  const char* word;
  const char* text;     ///< what is changed
  const char* held_by;  ///< what holds the heat back, when this lever gains most
};
constexpr std::array k_levers{
    LeverWords{Lever::longer_head, "longer_head", to_say("a head half as long again along the travel"), ""},
    LeverWords{Lever::second_pass, "second_pass", to_say("a second pass after a pause to cool"), ""},
    LeverWords{Lever::hotter_steam, "hotter_steam", to_say("steam 2 K hotter under the head"), ""},
    LeverWords{Lever::better_exchange, "better_exchange", to_say("twice the exchange and supply of heat"),
               to_say("how fast the head brings heat to the surface")},
    LeverWords{Lever::opener_cloth, "opener_cloth", to_say("a cloth twice as open to vapour"),
               to_say("vapour moving through the cloth")},
    LeverWords{Lever::stronger_push, "stronger_push", to_say("steam pushed in twice as fast"),
               to_say("how little steam is pushed into the cloth")},
    LeverWords{Lever::conducting_layers, "conducting_layers", to_say("layers that conduct twice as well"),
               to_say("conduction through the layers")}};

const InfluenceWords& words_of(Influence what) {
  return *std::find_if(k_influences.begin(), k_influences.end(),
                       [what](const InfluenceWords& one) { return one.what == what; });
}
const LeverWords& words_of(Lever lever) {
  return *std::find_if(k_levers.begin(), k_levers.end(),
                       [lever](const LeverWords& one) { return one.lever == lever; });
}

double gain_of(const std::vector<steam::LeverGain>& gains, Lever lever) {
  for (const steam::LeverGain& gain : gains)
    if (gain.lever == lever) return gain.factor;
  return 1;
}

std::string sentence(const PaceWords& words, const std::vector<steam::InfluenceShare>& influences,
                     const std::vector<steam::LeverGain>& gains) {
  const auto kind = std::find_if(edge_kinds().begin(), edge_kinds().end(),
                                 [&](const EdgeKind& one) { return one.key == words.kind; });
  std::string out = say("Eggs {:.1f} mm deep in {} ({})", 1e3 * words.target_depth_metres, words.covering,
                        kind == edge_kinds().end() ? words.kind : in_language(kind->title));
  if (gains.empty()) {
    out += say(": steam does not reach them in the middle case.");
  } else {
    out += say("; held back by {}", in_language(words_of(bottleneck(gains)).held_by));
    const double longer = gain_of(gains, Lever::longer_head);
    if (longer >= k_worth_saying) out += say("; a head half as long again would give {:.1f}x", longer);
    out += ".";
  }
  if (!influences.empty() && influences.front().share >= k_share_worth_saying) {
    const InfluenceWords& most = words_of(influences.front().what);
    out += say(" Of the doubt in this pace {:.0f} % is {}: {}.", 100 * influences.front().share,
               in_language(most.text), in_language(most.remedy));
  }
  return out;
}

}  // namespace

std::vector<Field> explanation_fields() {
  std::vector<Choice> influences, levers;
  for (const InfluenceWords& one : k_influences) influences.push_back({one.word, one.text});
  for (const LeverWords& one : k_levers) levers.push_back({one.word, one.text});
  return {
      field("explanation", text("what holds the heat back, and what is least known, in words").or_null()),
      field("what_matters",
            list(object({field("what", choice(std::move(influences), "unknown")),
                         field("share", ratio("of the variance of the fastest pace")),
                         field("text", text("in words")), field("remedy", text("what would tell"))},
                        "one unknown"),
                 "first-order sensitivity of the fastest pace, largest first; unknowns that a "
                 "fold test has tied together share theirs")),
      field("levers", list(object({field("lever", choice(std::move(levers), "what is changed")),
                                   field("factor", ratio("fastest pace of the middle case with it over that "
                                                         "without")),
                                   field("text", text("in words"))},
                                  "one change"),
                           "what would make it faster"))};
}

void explain(const PaceWords& words, const std::vector<steam::InfluenceShare>& influences,
             const std::vector<steam::LeverGain>& gains, Json& answer) {
  explain_nothing(answer);
  answer["explanation"] = sentence(words, influences, gains);
  for (const steam::InfluenceShare& one : influences) {
    const InfluenceWords& said = words_of(one.what);
    answer["what_matters"].push_back({{"what", said.word},
                                      {"share", one.share},
                                      {"text", in_language(said.text)},
                                      {"remedy", in_language(said.remedy)}});
  }
  for (const steam::LeverGain& gain : gains) {
    const LeverWords& said = words_of(gain.lever);
    answer["levers"].push_back(
        {{"lever", said.word}, {"factor", gain.factor}, {"text", in_language(said.text)}});
  }
}

void explain_nothing(Json& answer) {
  answer["explanation"] = nullptr;
  answer["what_matters"] = Json::array();
  answer["levers"] = Json::array();
}

}  // namespace lastegg
