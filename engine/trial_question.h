// A question made up for the tests of the reader and the writers: it holds every kind of shape once, and its
// solution only hands back what was read.
#pragma once

#include "engine/question.h"

namespace lastegg {

inline Shape trial_request() {
  using namespace shape;
  const Shape front =
      either({object({field("kind", choice({{"fixed", "Held at a temperature."}}, "What the face does.")),
                      field("celsius", number(Unit::celsius, "Temperature of the face.").at_least(-273.15))},
                     "A held face."),
              object({field("kind", choice({{"flux", "Heated at a rate."}}, "What the face does.")),
                      field("flux_watts_per_m2", number(Unit::watt_per_m2, "Heat into the face."))},
                     "A heated face.")},
             "The front face.");
  return object(
             {field("pace_metres_per_second",
                    number(Unit::metre_per_second, "Pace of the head.").above(0).at_most(1)),
              with_default("towel",
                           choice({{"none", "The bare head."}, {"wrapped", "A towel around the head."}},
                                  "Cloth between head and fabric."),
                           "none"),
              optional("readings",
                       list(object({field("celsius", number(Unit::celsius, "Peak.").at_least(-273.15)),
                                    optional("remark", text("Words."))},
                                   "One reading."),
                            "Peaks, in the order of the passes.")
                           .items(1, 3)),
              optional("treated_on", date("Day of the visit.")),
              optional("share", ratio("A share.").at_most(1)),
              optional("distance_metres", number(Unit::metre, "Length of the pass.").above(0)),
              optional("seconds", number(Unit::second, "Time of the pass.").above(0)),
              with_default("passes", integer("How often.").at_least(1).at_most(9), 1),
              optional("damp", flag("Whether the fabric is damp.")), optional("front", front),
              optional("found", table(integer("How many.").at_least(0), "Finds by stage.")),
              optional("until", number(Unit::second, "End, or null for none.").or_null()),
              optional("job",
                       object({optional("title", text("Its name."))}, "A job of any version.").allow_more())},
             "A trial.")
      .exactly_one_of({{"share"}, {"distance_metres", "seconds"}});
}

inline Question trial_question() {
  using namespace shape;
  return {"trial", "Hands back what was read.", trial_request(),
          object({field("read", anything("What was read."))}, "What was read."),
          [](const Json& request) -> Result<Answer> { return Answer{Json{{"read", request}}, {}, {}}; }};
}

}  // namespace lastegg
