#include "engine/treated_record.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>

#include "engine/calibration_json.h"
#include "engine/request_values.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

Shape mark_shape() {
  return object(
      {field("at_metres", number(Unit::metre, "place of the head's middle, from the start of the edge")),
       field("seconds", number(Unit::second, "from the start of the pass").at_least(0).at_most(86400)),
       with_default("interrupted", flag("what happened since the mark before is not known"), false),
       with_default("saw_live_bug", flag("a live bug was seen behind the head here"), false)},
      "the head was here then");
}

// Digits of `text` from `at` on; none if something else stands there.
std::optional<int> digits(const std::string& text, std::size_t at, std::size_t count) {
  int value = 0;
  for (std::size_t i = at; i < at + count; ++i) {
    if (i >= text.size() || text[i] < '0' || text[i] > '9') return std::nullopt;
    value = 10 * value + (text[i] - '0');
  }
  return value;
}

Result<std::optional<double>> began_of(const Json& pass, const std::string& where) {
  const Json* at = member_if(pass, "at");
  if (at == nullptr) return std::optional<double>();
  if (at->is_number()) return std::optional<double>(at->get<double>());
  const auto seconds = seconds_of_timestamp(at->get<std::string>());
  if (!seconds) {
    return refuse({ErrorKind::bad_input,
                   say("\"{}\" is no time; write 2026-03-02T10:15:00Z, or seconds on a clock of the visit",
                       at->get<std::string>().substr(0, 80)),
                   where + "/at", "", "", ""});
  }
  return seconds;
}

double length_of(const treated::TreatedPass& pass) {
  return pass.marks.back().seconds;
}

}  // namespace

std::optional<double> seconds_of_timestamp(const std::string& text) {
  const auto year = digits(text, 0, 4), month = digits(text, 5, 2), day = digits(text, 8, 2);
  const auto hour = digits(text, 11, 2), minute = digits(text, 14, 2), second = digits(text, 17, 2);
  if (!year || !month || !day || !hour || !minute || !second) return std::nullopt;
  if (text[4] != '-' || text[7] != '-' || (text[10] != 'T' && text[10] != 't' && text[10] != ' ') ||
      text[13] != ':' || text[16] != ':')
    return std::nullopt;
  const std::chrono::year_month_day date{std::chrono::year{*year},
                                         std::chrono::month{static_cast<unsigned>(*month)},
                                         std::chrono::day{static_cast<unsigned>(*day)}};
  if (!date.ok() || *hour > 23 || *minute > 59 || *second > 60) return std::nullopt;
  double seconds = 86400.0 * static_cast<double>(std::chrono::sys_days(date).time_since_epoch().count()) +
                   3600.0 * *hour + 60.0 * *minute + *second;
  std::size_t at = 19;
  if (at < text.size() && text[at] == '.') {
    double unit = 0.1;
    for (++at; at < text.size() && text[at] >= '0' && text[at] <= '9'; ++at, unit /= 10)
      seconds += unit * (text[at] - '0');
  }
  if (at == text.size()) return seconds;
  if ((text[at] == 'Z' || text[at] == 'z') && at + 1 == text.size()) return seconds;
  const auto zone_hour = digits(text, at + 1, 2), zone_minute = digits(text, at + 4, 2);
  if ((text[at] != '+' && text[at] != '-') || !zone_hour || !zone_minute || at + 6 != text.size() ||
      text[at + 3] != ':')
    return std::nullopt;
  const double zone = 3600.0 * *zone_hour + 60.0 * *zone_minute;
  return text[at] == '+' ? seconds - zone : seconds + zone;
}

Shape treated_pass_shape() {
  Shape pass = object(
      {optional(
           "marks",
           list(mark_shape(), "where the head was when; between two marks it moved evenly").items(2, 1000)),
       optional("length_metres", number(Unit::metre, "way of an even pass").above(0).at_most(100)),
       optional("seconds", number(Unit::second, "time of an even pass").above(0).at_most(86400)),
       with_default("from_metres", number(Unit::metre, "where an even pass began").at_least(0).at_most(100),
                    0),
       optional("towel", towel_shape("towel of this pass; left out: that of the fold test")),
       optional("at", either({number(Unit::second, "on a clock that all passes share"),
                              text("2026-03-02T10:15:00Z")},
                             "when the pass began; without it passes are judged one by one")),
       with_default("saw_live_bug", flag("a live bug was seen behind the head"), false)},
      "one pass along the edge");
  pass.exactly_one_of({{"marks"}, {"length_metres", "seconds"}});
  return pass;
}

Result<TreatedRecord> read_treated_record(const Json& passes, const std::string& where) {
  TreatedRecord record;
  std::size_t timed = 0, texts = 0;
  for (std::size_t p = 0; p < passes.size(); ++p) {
    const Json& given = passes[p];
    const std::string place = fmt::format("{}/{}", where, p);
    RecordedPass recorded;
    treated::TreatedPass& pass = recorded.pass;
    pass.saw_live_bug = given.at("saw_live_bug").get<bool>();
    if (const Json* marks = member_if(given, "marks")) {
      for (const Json& mark : *marks) {
        pass.marks.push_back(
            {number_of(mark, "at_metres"), number_of(mark, "seconds"), mark.at("interrupted").get<bool>()});
        pass.saw_live_bug = pass.saw_live_bug || mark.at("saw_live_bug").get<bool>();
      }
    } else {
      const double from = number_of(given, "from_metres");
      pass.marks = {{from, 0}, {from + number_of(given, "length_metres"), number_of(given, "seconds")}};
    }
    for (const treated::Mark& mark : pass.marks)
      record.reach_metres = std::max(record.reach_metres, mark.at_metres);
    const auto began = began_of(given, place);
    if (!began) return refuse(began.error());
    pass.began_seconds = *began;
    if (*began) {
      ++timed;
      texts += given.at("at").is_string() ? 1U : 0U;
    }
    if (const auto towel = text_if(given, "towel")) recorded.towel = read_towel(*towel);
    record.passes.push_back(std::move(recorded));
  }
  if (texts != 0 && texts != timed) {
    return refuse({ErrorKind::bad_input,
                   say("some passes have a date and time, others seconds; give all in one way"), where, "",
                   "", ""});
  }
  if (timed != record.passes.size()) return record;
  std::stable_sort(record.passes.begin(), record.passes.end(),
                   [](const RecordedPass& a, const RecordedPass& b) {
                     return *a.pass.began_seconds < *b.pass.began_seconds;
                   });
  for (std::size_t p = 1; p < record.passes.size(); ++p) {
    const treated::TreatedPass &before = record.passes[p - 1].pass, &pass = record.passes[p].pass;
    if (*pass.began_seconds + 1e-6 < *before.began_seconds + length_of(before)) {
      return refuse({ErrorKind::bad_input,
                     say("two passes overlap in time; `at` is when a pass began, and one head makes one pass "
                         "at a time"),
                     where, "", "", ""});
    }
  }
  return record;
}

}  // namespace lastegg
