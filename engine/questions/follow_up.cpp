// Question `follow_up`: when surviving eggs have hatched, and until when a return visit comes before new
// eggs.
#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <utility>

#include "bugs/lifecycle/hatch_window.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "job/reports/calendar_file.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;
using std::chrono::days;
using std::chrono::sys_days;

constexpr double k_seconds_per_day = 86400;

Shape request_shape() {
  Shape series = object(
      {optional("days", list(number(Unit::day, "since the treatment"), "times").items(2, 100000)),
       optional("seconds", list(number(Unit::second, "since the treatment"), "times").items(2, 100000)),
       field("celsius",
             list(number(Unit::celsius, "where eggs lie, or of the room"), "one temperature for each time")
                 .items(2, 100000))},
      "a log of the room since the treatment, joined by straight lines");
  series.exactly_one_of({{"days"}, {"seconds"}});
  return object({optional("temperature_celsius",
                          number(Unit::celsius, "of the home until the return visit, where eggs lie")
                              .at_least(-40)
                              .at_most(60)),
                 optional("series", series), field("treated_on", date("day of the treatment")),
                 with_default(
                     "uncertainty_celsius",
                     number(Unit::kelvin_difference, "of these temperatures, up and down; widens both ends")
                         .at_least(0)
                         .at_most(10),
                     1),
                 optional("title", text("what the calendar entry is about; no names of persons"))},
                "a temperature and the day of the treatment")
      .exactly_one_of({{"temperature_celsius"}, {"series"}});
}

Shape answer_shape() {
  const auto days_or_none = [](std::string meaning) {
    return number(Unit::day, std::move(meaning)).or_null();
  };
  return object(
      {field("first_hatch_days",
             days_or_none("an egg laid on the day of the treatment hatches no sooner "
                          "(fast bound); older eggs hatch before, from the first day on")),
       field("last_hatch_days", days_or_none("by then all surviving eggs have hatched (slow bound)")),
       field("return_from", date("first day of the return window").or_null()),
       field("return_to", date("its last day, before new eggs").or_null()),
       field("return_from_days", integer("days after the treatment").or_null()),
       field("return_to_days", integer("days after the treatment").or_null()),
       field(
           "next_adult_days",
           days_or_none("no nymph from a surviving egg is grown up sooner (fast bound, from an egg that was "
                        "about to hatch)")),
       field("first_new_egg_days", days_or_none("no egg of such an adult is laid sooner")),
       field("adult_from_fresh_egg_days",
             days_or_none("from laying to adult at the middle temperature, as tables print it; for "
                          "comparison, the window does not use it")),
       field("reason", reason_shape("whether there is a window, and why not")),
       field("custom",
             object({field("days", number(Unit::day, "the customary interval")), field("on", date("its day")),
                     field("verdict", choice({{"too_early", "before all surviving eggs have hatched"},
                                              {"inside", "inside the window"},
                                              {"too_late", "new eggs may lie by then"},
                                              {"no_date", "there is no window to compare with"}},
                                             "against the window")),
                     field("text", text("in words"))},
                    "common practice, no source")),
       field("lowest_celsius", number(Unit::celsius, "that was counted with, uncertainty taken off")),
       field("highest_celsius", number(Unit::celsius, "that was counted with, uncertainty added")),
       field("text", text("in one sentence")),
       field("calendar", text("an iCalendar file (.ics) with the window; null without one").or_null())},
      "the window of the return visit");
}

sys_days day_of(const std::string& date) {
  const auto part = [&](std::size_t from, std::size_t count) {
    int value = 0;
    std::from_chars(date.data() + from, date.data() + from + count, value);
    return value;
  };
  return std::chrono::year{part(0, 4)} / part(5, 2) / part(8, 2);
}

Result<bugs::RoomLog> read_log(const Json& request) {
  bugs::RoomLog log;
  log.uncertainty_kelvin = number_of(request, "uncertainty_celsius");
  if (const auto steady = number_if(request, "temperature_celsius")) {
    log.days = {0};
    log.celsius = {*steady};
    return log;
  }
  const Json& series = request.at("series");
  const bool in_seconds = has(series, "seconds");
  log.days = numbers_of(series, in_seconds ? "seconds" : "days");
  if (in_seconds) {
    for (double& day : log.days) day /= k_seconds_per_day;
  }
  log.celsius = numbers_of(series, "celsius");
  return log;
}

struct Window {
  std::optional<int> from, to;
  bool is_open() const { return from && to && *from <= *to; }
};

// Inwards: not before the last egg has hatched, and not on the day of the first new egg.
Window window_of(const bugs::HatchWindow& hatch) {
  Window out;
  if (hatch.last_hatch_days) out.from = static_cast<int>(std::ceil(*hatch.last_hatch_days - 1e-9));
  if (hatch.first_new_egg_days)
    out.to = std::max(0, static_cast<int>(std::floor(*hatch.first_new_egg_days)) - 1);
  return out;
}

Json reason_of(const bugs::HatchWindow& hatch, const Window& window) {
  const bugs::DevelopmentLimits& limits = bugs::development_limits();
  if (window.is_open())
    return reason(
        "window",
        say("inside the window every surviving egg has hatched and none of its young can have laid"));
  if (window.from && window.to)
    return reason("window_closed",
                  say("the temperature is known too poorly for one visit: come before day {} and again "
                      "after day {}, and log the room between visits",
                      *window.to, *window.from));
  if (hatch.met.high > limits.heat_above_celsius)
    return reason("too_hot",
                  say("no date: above {:g} C heat itself harms eggs, and the times of hatching do not "
                      "hold; judge such a log by its dose",
                      limits.heat_above_celsius));
  return reason("too_cold",
                say("no date: below {:g} C eggs do not hatch and do not die of it soon; count again from "
                    "the day on which the home is warm, with a log of the room",
                    limits.no_hatch_below_celsius));
}

Json custom_of(const Window& window, sys_days treated) {
  const double custom = bugs::development_limits().custom_days;
  const int days_after = static_cast<int>(custom);
  std::string verdict = "no_date", words = say("there is no window to compare it with");
  if (window.from && days_after < *window.from) {
    verdict = "too_early";
    words =
        say("too early here: surviving eggs may hatch until day {}, and a look before proves "
            "nothing of them",
            *window.from);
  } else if (window.to && days_after > *window.to) {
    verdict = "too_late";
    words = say("too late here: new eggs may lie from day {} on", *window.to + 1);
  } else if (window.is_open()) {
    verdict = "inside";
    words = say("inside the window here");
  }
  return {{"days", custom},
          {"on", reports::day_text(treated + days{days_after})},
          {"verdict", verdict},
          {"text", say("The customary {} days (common practice, no source) are {}. At 20 C and colder "
                       "they are always too early.",
                       days_after, words)}};
}

std::vector<Warning> warnings_of(const bugs::HatchWindow& hatch, bool is_log) {
  const bugs::DevelopmentLimits& limits = bugs::development_limits();
  std::vector<Warning> out{
      {"derived", say("times of hatching are derived from few published points, some of them from memory; "
                      "two bounds are "
                      "shown because the points disagree")},
      {"survivors_of_other_stages",
       say("the window speaks of surviving eggs; nymphs or adults that outlived the treatment may lay at any "
           "time")}};
  if (hatch.met.low < limits.no_hatch_below_celsius && hatch.last_hatch_days)
    out.push_back({"cold_spells", say("below {:g} C no egg hatches: cold spells were not counted by the "
                                      "slow bound",
                                      limits.no_hatch_below_celsius)});
  else if (hatch.met.low < limits.known_from_celsius && hatch.last_hatch_days)
    out.push_back({"extrapolated", say("nothing is published below {:g} C; the times there are extrapolated",
                                       limits.known_from_celsius)});
  if (hatch.met.high > limits.held_above_celsius)
    out.push_back({"held", say("warmer than {:g} C is not taken for faster", limits.held_above_celsius)});
  if (hatch.met.high > limits.heat_above_celsius)
    out.push_back({"heat", say("above {:g} C heat harms, which this answer does not count: see the dose of "
                               "the log",
                               limits.heat_above_celsius)});
  if (hatch.is_extended)
    out.push_back({"log_ends",
                   say("the log ends before these days; the slow bound goes on at its coldest day, the fast "
                       "one at its warmest: ask again with the whole log")});
  if (hatch.has_gaps)
    out.push_back({"gaps", say("intervals longer than six hours count by their worse end")});
  if (!is_log)
    out.push_back(
        {"not_logged", say("the temperature is a statement: log the room between visits and ask again")});
  return out;
}

Json or_null(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Result<Answer> solve(const Json& request) {
  const auto log = read_log(request);
  if (!log) return refuse(log.error());
  const auto hatch = bugs::hatch_window(*log);
  if (!hatch) return refuse(hatch.error());
  const std::string treated_on = text_of(request, "treated_on");
  const sys_days treated = day_of(treated_on);
  const Window window = window_of(*hatch);
  const auto date_or_null = [&](const std::optional<int>& day) {
    return day ? Json(reports::day_text(treated + days{*day})) : Json(nullptr);
  };
  const auto day_or_null = [](const std::optional<int>& day) { return day ? Json(*day) : Json(nullptr); };
  const bool is_log = log->days.size() > 1;

  Answer answer;
  answer.data_keys = {std::string(bugs::k_development_data_key)};
  answer.warnings = warnings_of(*hatch, is_log);
  Json& out = answer.result;
  out["first_hatch_days"] = or_null(hatch->first_hatch_days);
  out["last_hatch_days"] = or_null(hatch->last_hatch_days);
  out["next_adult_days"] = or_null(hatch->next_adult_days);
  out["first_new_egg_days"] = or_null(hatch->first_new_egg_days);
  const double middle = (hatch->met.low + hatch->met.high) / 2;
  const bugs::DevelopmentLimits& limits = bugs::development_limits();
  out["adult_from_fresh_egg_days"] =
      !is_log && middle >= limits.no_hatch_below_celsius && middle <= limits.heat_above_celsius
          ? Json(bugs::adult_days(middle))
          : Json(nullptr);
  out["return_from"] = date_or_null(window.from);
  out["return_to"] = date_or_null(window.to);
  out["return_from_days"] = day_or_null(window.from);
  out["return_to_days"] = day_or_null(window.to);
  out["reason"] = reason_of(*hatch, window);
  out["custom"] = custom_of(window, treated);
  out["lowest_celsius"] = hatch->met.low;
  out["highest_celsius"] = hatch->met.high;
  out["calendar"] = nullptr;
  if (window.is_open()) {
    const std::string from = out["return_from"], to = out["return_to"];
    out["text"] =
        say("Come back from {} to {}, {} to {} days after the treatment of {}, and early in that "
            "time: young bugs feed and walk.",
            from, to, *window.from, *window.to, treated_on);
    const std::string title = text_if(request, "title").value_or("");
    reports::CalendarEntry entry;
    entry.id = fmt::format("follow-up-{}-{}-{}@lastegg", treated_on, *window.from, *window.to);
    entry.from = treated + days{*window.from};
    entry.to = treated + days{*window.to};
    entry.title = title.empty() ? say("Bed bug follow-up visit") : say("Bed bug follow-up visit: {}", title);
    entry.text = say("{}\nBy then every surviving egg has hatched, and none of its young can have laid.\n{}",
                     out["text"].get<std::string>(), out["custom"]["text"].get<std::string>());
    entry.remind = true;
    out["calendar"] = reports::calendar_file(treated, {entry});
  } else {
    out["text"] = say("There is no window to name. {}.", out["reason"]["text"].get<std::string>());
  }
  return answer;
}

}  // namespace

const Question& follow_up_question() {
  static const Question question{
      "follow_up",
      "When every surviving egg has hatched, and until when a return visit comes before "
      "new eggs.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
