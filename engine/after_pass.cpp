#include "engine/after_pass.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "physics/numerics/elementary.h"
#include "treatments/drying/drying.h"
#include "treatments/steam/pass/exposure.h"
#include "treatments/touch/touch.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

constexpr double k_room_humidity = 0.5;
constexpr double k_minute = 60;
constexpr double k_slower = 0.75;  // where the wet case is looked for
constexpr double k_surface_after_seconds[] = {0, 1, 2, 3, 5, 10, 20, 40, 60, 120};

std::optional<double> gained_at(steam::PassProblem pass, double pace) {
  pass.pace_metres_per_second = pace;
  pass.observe_seconds = 1;
  pass.depths_metres.clear();
  const auto history = steam::run_pass(pass, {});
  if (!history) return std::nullopt;
  return history->water_gain_at_liftoff_kilograms_per_m2;
}

// The slower pace at which about so much condenses in the middle case: water goes with a power of the pace.
double pace_for(const steam::PassProblem& pass, double gained, double water) {
  const double pace = pass.pace_metres_per_second;
  const auto slower = gained_at(pass, k_slower * pace);
  if (!slower || !(gained > 0) || !(*slower > gained) || !(water > gained)) return pace;
  const double power = numerics::log(*slower / gained) / numerics::log(k_slower);
  const double wanted = pace * numerics::exp(numerics::log(water / gained) / power);
  return std::clamp(wanted, std::min(pace, steam::k_slowest_pace), pace);
}

Json rounded_minutes(const std::optional<drying::Drying>& dried) {
  if (!dried || !dried->seconds) return nullptr;
  return *dried->seconds / k_minute;
}

std::optional<drying::Drying> dried(const steam::PassProblem& pass, double carried_over, double film) {
  const auto found = drying::dry({pass, carried_over, {film, pass.air.celsius, k_room_humidity}});
  if (!found) return std::nullopt;
  return *found;
}

Json surface_after(steam::PassProblem pass) {
  Json rows = Json::array();
  pass.depths_metres.clear();
  pass.observe_seconds = *std::rbegin(k_surface_after_seconds);
  const auto history = steam::run_pass(pass, {});
  if (!history) return rows;
  steam::Series series;
  steam::fine_series(*history, history->surface_celsius, 1.0, series);
  std::size_t i = 1;
  for (const double after : k_surface_after_seconds) {
    const double at = history->liftoff_seconds + after;
    while (i + 1 < series.seconds.size() && series.seconds[i] < at) ++i;
    const double span = series.seconds[i] - series.seconds[i - 1];
    const double share = span > 0 ? std::clamp((at - series.seconds[i - 1]) / span, 0.0, 1.0) : 1;
    rows.push_back(
        {{"seconds_after", after},
         {"celsius", series.celsius[i - 1] + share * (series.celsius[i] - series.celsius[i - 1])}});
  }
  return rows;
}

std::string hand_words(const Json& seconds) {
  if (seconds.is_null()) return say("no bare hand on it: it stays too hot for longer than is looked at");
  return say("no bare hand on it for {:.0f} s behind the head (glove or gun until then)",
             seconds.get<double>());
}

std::string dry_words(const Json& fan, const Json& still, bool mould) {
  std::string words = fan.is_null() ? say("how long it stays wet is not known")
                                    : say("dry in about {:.0f} min before a fan", fan.get<double>());
  if (!still.is_null()) words += say(", up to {:.0f} min in still air", still.get<double>());
  words += say(" of {:.0f} % humidity", 100 * k_room_humidity);
  if (mould)
    words += say("; it must be dried within a day, or mould may grow: a fan, warmth, a dehumidifier");
  return words + say("; encase or make the bed only when it is dry to the hand, inside folds too");
}

}  // namespace

Shape after_pass_shape() {
  return object(
      {field("bare_hand_seconds",
             number(Unit::second,
                    "after the steam until nothing near the surface is hotter than 48 C, in the hottest of "
                    "the likely cases; null: longer than a quarter of an hour")
                 .or_null()),
       field("surface_after_celsius",
             list(object({field("seconds_after", number(Unit::second, "after the steam")),
                          field("celsius", number(Unit::celsius, "of the surface, middle case"))},
                         "a moment"),
                  "the surface behind the head")),
       field("dry_minutes_fan", number(Unit::minute, "until dry before a fan, middle case").or_null()),
       field("dry_minutes_still", number(Unit::minute, "until dry in still air, middle case").or_null()),
       field("mould_caution", flag("it may stay wet for longer than a day in still air")),
       field("text", text("in words"))},
      "what follows the pass");
}

AfterPass after_pass(const steam::PaceProblem& problem, const steam::AtPace& planned) {
  const double pace = planned.pace_metres_per_second;
  const steam::PassProblem middle = touch::middle_pass(problem, pace);
  AfterPass out;
  Json hand = nullptr;
  if (const auto seconds = touch::bare_hand_seconds(problem, pace); seconds && *seconds)
    hand = std::ceil(**seconds / 5) * 5;  // nobody counts finer

  const auto gained = gained_at(middle, pace);
  std::optional<drying::Drying> fan, still, wet_still;
  if (gained) {
    // What the ensemble has beyond the condensate of the middle case came as droplets and lies on the
    // surface.
    const double carried = std::max(0.0, planned.condensate_kilograms_per_m2.p50 - *gained);
    fan = dried(middle, carried, drying::k_fan_film);
    still = dried(middle, carried, drying::k_still_film);
    steam::PassProblem wet = middle;
    wet.pace_metres_per_second = pace_for(middle, *gained, planned.condensate_kilograms_per_m2.p95 - carried);
    wet_still = dried(wet, carried, drying::k_still_film);
  }
  const Json fan_minutes = rounded_minutes(fan), still_minutes = rounded_minutes(still);
  const Json wet_minutes = rounded_minutes(wet_still);
  const bool mould = wet_still && (!wet_still->seconds || *wet_still->seconds > drying::k_mould_seconds);
  if (!fan_minutes.is_null() && !wet_minutes.is_null())
    out.dry_minutes = {fan_minutes, std::max(fan_minutes.get<double>(), wet_minutes.get<double>())};
  out.after = {{"bare_hand_seconds", hand},
               {"surface_after_celsius", surface_after(middle)},
               {"dry_minutes_fan", fan_minutes},
               {"dry_minutes_still", still_minutes},
               {"mould_caution", mould},
               {"text", hand_words(hand) + "; " + dry_words(fan_minutes, wet_minutes, mould)}};
  return out;
}

}  // namespace lastegg
