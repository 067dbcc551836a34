// Question `probe_check`: is a thermometer right, by melting ice or boiling water.
#include <fmt/format.h>

#include <cmath>
#include <string>
#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "job/probes/probe_check.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;
using probes::Verdict;

Shape request_shape() {
  std::vector<Field> fields{
      field("in", choice({{"melting_ice", "crushed ice and clean water, stirred"},
                          {"boiling_water", "water at a rolling boil in an open pot"}},
                         "what the probe was held into")),
      field("shown_celsius",
            number(Unit::celsius, "what it showed when it stood still").at_least(-25).at_most(130))};
  for (Field& pressure : pressure_fields()) fields.push_back(std::move(pressure));
  return object(std::move(fields), "what a probe showed in a bath of known temperature");
}

Shape answer_shape() {
  return object(
      {field("bath_celsius", number(Unit::celsius, "of the bath")),
       field("bath_spread_kelvin", number(Unit::kelvin_difference, "of the bath, up and down")),
       field("error_kelvin", number(Unit::kelvin_difference, "shown less bath; above zero: reads too hot")),
       field("tolerance_kelvin", number(Unit::kelvin_difference, "that a probe may be off")),
       field("verdict", choice({{"sound", "within the tolerance"},
                                {"not_proven", "the bath is not known well enough to tell"},
                                {"off", "beyond the tolerance"}},
                               "whether its readings can prove anything")),
       field("reason", reason_shape("the verdict in words"))},
      "whether the probe is right");
}

Json reason_of(const probes::ProbeCheck& check, bool weather_decides) {
  const double off = std::fabs(check.error_kelvin);
  const bool hot = check.error_kelvin > 0;
  switch (check.verdict) {
    case Verdict::sound:
      return reason("sound", say("within {:g} K of the bath", probes::k_tolerance_kelvin));
    case Verdict::not_proven:
      if (weather_decides)
        return reason("weather",
                      hot ? say("it shows {:.1f} K too hot; the weather alone may explain it: use melting "
                                "ice, or a barometer",
                                off)
                          : say("it shows {:.1f} K too cold; the weather alone may explain it: use "
                                "melting ice, or a barometer",
                                off));
      return reason("near",
                    hot ? say("it shows {:.1f} K too hot; too near the tolerance to tell: check it in the "
                              "other bath",
                              off)
                        : say("it shows {:.1f} K too cold; too near the tolerance to tell: check it in the "
                              "other bath",
                              off));
    case Verdict::off:
      break;
  }
  return hot ? reason("reads_hot",
                      say("it shows {:.1f} K too hot: what it calls lethal may not be. Do not prove "
                          "anything with it",
                          off))
             : reason("reads_cold", say("it shows {:.1f} K too cold: do not prove anything with it", off));
}

Result<Answer> solve(const Json& request) {
  const auto pressure = read_pressure(request);
  if (!pressure) return refuse(pressure.error());
  const bool boils = text_of(request, "in") == "boiling_water";
  const bool by_barometer = number_if(request, "pressure_pascal").has_value();
  const auto bath = probes::bath_temperature(boils ? probes::Bath::boiling_water : probes::Bath::melting_ice,
                                             pascals(*pressure), by_barometer);
  if (!bath) return refuse(bath.error());
  const probes::ProbeCheck check = probes::check_probe(number_of(request, "shown_celsius"), *bath);
  Answer answer;
  if (boils && !by_barometer && !number_if(request, "elevation_metres")) {
    answer.warnings.push_back(
        {"elevation_unknown",
         say("neither elevation nor pressure is given; sea level is taken, and water boils "
             "about 1 K colder every 300 m higher")});
  }
  // Where it boiled is not known: then nothing is, for 1 km is 3 K.
  const bool unknown_place = !answer.warnings.empty();
  const char* verdict = unknown_place || check.verdict == Verdict::not_proven ? "not_proven"
                        : check.verdict == Verdict::sound                     ? "sound"
                                                                              : "off";
  answer.result = {{"bath_celsius", check.bath.celsius},
                   {"bath_spread_kelvin", check.bath.spread_kelvin},
                   {"error_kelvin", check.error_kelvin},
                   {"tolerance_kelvin", probes::k_tolerance_kelvin},
                   {"verdict", verdict},
                   {"reason", unknown_place ? reason("place_unknown",
                                                     say("how high above the sea it was boiled is not known"))
                                            : reason_of(check, boils && !by_barometer)}};
  return answer;
}

}  // namespace

const Question& probe_check_question() {
  static const Question question{
      "probe_check",
      "Whether a thermometer is right, by what it showed in melting ice or boiling "
      "water.",
      request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
