#include "engine/survey_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "words/say.h"

namespace lastegg {
namespace {

using survey::CountClass;
using survey::How;
using survey::Level;
using survey::Why;

/// "about 23 in 100", "under 1 in 100".
std::string in_hundred(double share) {
  const int count = static_cast<int>(std::lround(100 * share));
  return count < 1 ? say("under 1 in 100") : say("about {} in 100", std::min(99, count));
}

std::string bugs(int count) {
  return count == 1 ? say("1 live bug") : say("{} live bugs", count);
}

std::string how_to_look(How how) {
  return how == How::opened ? say("take it apart or turn it over as far as it goes, with a light")
                            : say("run a card and a light along every edge");
}

}  // namespace

const char* survey_word(Level level) {
  switch (level) {
    case Level::none:
      return "none";
    case Level::suspected:
      return "suspected";
    case Level::old:
      return "old";
    case Level::probable:
      return "probable";
    case Level::confirmed:
      return "confirmed";
    case Level::not_looked:
      break;
  }
  return "not_looked";
}

const char* survey_word(CountClass count_class) {
  switch (count_class) {
    case CountClass::up_to_12:
      return "up_to_12";
    case CountClass::from_13_to_30:
      return "from_13_to_30";
    case CountClass::over_30:
      return "over_30";
    case CountClass::none_counted:
      break;
  }
  return "none_counted";
}

const char* survey_word(How how) {
  switch (how) {
    case How::light_and_card:
      return "light_and_card";
    case How::opened:
      return "opened";
    case How::trap:
      return "trap";
    case How::told:
      return "told";
    case How::eye:
      break;
  }
  return "eye";
}

const char* survey_word(Why why) {
  switch (why) {
    case Why::not_accessible:
      return "not_accessible";
    case Why::unsure:
      return "unsure";
    case Why::signs:
      return "signs";
    case Why::trap:
      return "trap";
    case Why::part:
      return "part";
    case Why::by_eye:
      return "by_eye";
    case Why::live:
      return "live";
    case Why::not_looked:
      break;
  }
  return "not_looked";
}

std::string home_text(const survey::Survey& survey, const survey::Outcome& outcome) {
  const auto looked = std::count_if(outcome.items.begin(), outcome.items.end(),
                                    [](const auto& item) { return item.level != Level::not_looked; });
  const std::string extent = say("{} of {} listed items were looked at", looked, survey.items.size());
  switch (outcome.home.level) {
    case Level::confirmed:
      return outcome.home.live == 0 ? say("Bed bugs confirmed by eggs; no live bug counted; {}.", extent)
                                    : say("Bed bugs confirmed: {} counted{}; {}.", bugs(outcome.home.live),
                                          outcome.count_is_least ? say(", at least") : "", extent);
    case Level::probable:
      return say("Bed bugs are probable; a live one, surely identified, would confirm them; {}.", extent);
    case Level::old:
      return say("Only signs after an earlier treatment: they may be old; {}.", extent);
    case Level::suspected:
      return say("Suspected only: nothing surely of bed bugs was found; {}.", extent);
    case Level::none:
      return say("None seen so far, which proves nothing yet; {}.", extent);
    case Level::not_looked:
      break;
  }
  return say("Nobody has looked yet.");
}

std::string item_text(const survey::ItemJudged& item) {
  const std::string share = say("{} of the home's bugs are expected here", in_hundred(item.share));
  if (item.live > 0) return say("{} counted; {}.", bugs(item.live), share);
  switch (item.level) {
    case Level::confirmed:
      return say("Eggs found; {}.", share);
    case Level::probable:
      return say("Signs of use; {}.", share);
    case Level::old:
      return say("Signs, perhaps from before the treatment; {}.", share);
    case Level::suspected:
      return say("Suspected; {}.", share);
    case Level::none:
      return say("None seen; {} all the same.", share);
    case Level::not_looked:
      break;
  }
  return fmt::format("{}; {}.", item.reached ? say("Not looked at") : say("Could not be reached"), share);
}

std::string next_text(const survey::Item& item, const survey::ItemJudged& judged) {
  const std::string share = in_hundred(judged.missed_share);
  const std::string look = how_to_look(judged.how_next);
  switch (judged.why) {
    case Why::not_looked:
      return say("Nobody has looked here, where {} of the home's bugs are expected{}: {}.", share,
                 item.sleeps_here ? say(", since somebody sleeps or sits long on it") : "", look);
    case Why::not_accessible:
      return say("It could not be reached, and {} of the home's bugs may sit in it: make it free, then {}.",
                 share, look);
    case Why::unsure:
      return say("Something here is not surely a bed bug: catch it on tape and compare; then {}.", look);
    case Why::signs:
      return say("Signs but no bug yet: {} of the home's bugs may sit unseen along its other edges; {}.",
                 share, look);
    case Why::trap:
      return say("The trap here caught bugs: {} of the home's bugs may sit in it; {}.", share, look);
    case Why::part:
      return say("Only {} looked at: {} of the home's bugs may sit along the others; {}.",
                 judged.edges_looked == 1 ? say("one edge was") : say("{} edges were", judged.edges_looked),
                 share, look);
    case Why::by_eye:
      return say("None seen, but such a look misses many: {} of the home's bugs may still sit in it; {}.",
                 share, look);
    case Why::live:
      break;
  }
  return say("Bugs sit in groups: {} of the home's bugs may sit unseen in the rest of it; {}.", share, look);
}

}  // namespace lastegg
