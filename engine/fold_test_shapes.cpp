// The shapes of a fold test's request: what a person or program may write.
#include "engine/fold_test_request.h"
#include "engine/other_tests.h"
#include "engine/steam_shapes.h"

namespace lastegg {

using namespace shape;

namespace {

Shape probe_shape() {
  Shape point =
      object({field("seconds", number(Unit::second, "since the tip went in").at_least(0).at_most(600)),
              field("celsius", number(Unit::celsius, "shown").at_least(-20).at_most(120))},
             "one mark");
  Shape dip =
      object({with_default("start_celsius",
                           number(Unit::celsius, "shown before the dip").at_least(-20).at_most(60), 20),
              optional("points", list(point, "times and temperatures").items(1, 200)),
              optional("seconds_to_63",
                       number(Unit::second, "until 63 % of the way to boiling shows").above(0).at_most(600)),
              optional("seconds_to_90",
                       number(Unit::second, "until 90 % of the way to boiling shows").above(0).at_most(600))},
             "a dip into boiling water; boiling is taken at this air pressure");
  Shape probe = object(
      {optional(
           "time_constant_seconds",
           number(Unit::second, "time in which the probe covers 63 % of a jump").at_least(0).at_most(60)),
       optional("dip", dip)},
      "the thermometer; without it no lag is corrected, which can only read low");
  probe.exactly_one_of({{"time_constant_seconds"}, {"dip"}});
  return probe;
}

Shape reading_shape() {
  Shape reading = object(
      {optional("kind", choice({{"pass", "one pass over the fold: the highest value"},
                                {"stationary",
                                 "the head rests on the damp fold until the probe stands still: that value"},
                                {"coupon", "one pass over a plate that lets no vapour in, the tip behind it"},
                                {"under_real_edge", "one pass over a real edge, the tip where eggs may sit"},
                                {"surface", "what lies on top some seconds after a pass, by gun or palm"}},
                               "what was done; pass if left out, stationary if hold_seconds is given")),
       optional("pace_metres_per_second",
                number(Unit::metre_per_second, "speed of the head").at_least(0.001).at_most(0.3)),
       optional("distance_metres", number(Unit::metre, "way of the head").above(0).at_most(10)),
       optional("seconds", number(Unit::second, "time for that way").above(0).at_most(600)),
       optional("hold_seconds", number(Unit::second, "how long the head rested")
                                    .at_least(steam::k_least_hold_seconds)
                                    .at_most(90)),
       optional("layers", either({integer("layers of the test fold over the tip").at_least(1).at_most(8),
                                  stack_shape("the layers over the tip, from the steamed surface down")},
                                 "what lay over the tip; not for a coupon")),
       optional("covering", text("of the real edge: its covering, or any name with layers given as a stack")),
       optional("coupon",
                either({object({field("heat_capacity_joules_per_m2_kelvin",
                                      ratio("of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700")
                                          .at_least(500)
                                          .at_most(4500))},
                               "a metal plate"),
                        stack_shape("one layer that lets no vapour in").items(1, 1)},
                       "the plate; 1 mm of acrylic sheet if left out")),
       optional("peak_celsius", number(Unit::celsius,
                                       "highest reading; of a stationary one the steady value; "
                                       "all kinds but surface need it")
                                    .at_least(-20)
                                    .at_most(120)),
       optional("gun_celsius", number(Unit::celsius,
                                      "of a surface: what an infrared gun showed; its error, 2 K and what an "
                                      "unknown emissivity of 0.93 +- 0.03 makes, is an estimate")
                                   .at_least(-20)
                                   .at_most(150)),
       optional("palm",
                choice({{"cold", "no warmer than the hand"},
                        {"warm", "warm, neither cold nor hot"},
                        {"hot", "hotter than one likes to hold"}},
                       "of a surface: what the back of a hand said, which tells only a wide interval; only "
                       "after the time for a bare hand")),
       optional(
           "seconds_after",
           number(Unit::second, "of a surface: since the head had left the place").at_least(0).at_most(300)),
       with_default("spot_metres",
                    number(Unit::metre, "of a gun: diameter of what it looks at").above(0).at_most(1), 0.02),
       with_default("emissivity_setting", ratio("of a gun: the setting").at_least(0.3).at_most(1), 0.95)},
      "one reading");
  reading.exactly_one_of({{"pace_metres_per_second"}, {"distance_metres", "seconds"}, {"hold_seconds"}});
  return reading;
}

}  // namespace

std::vector<Field> fold_test_fields() {
  std::vector<Field> fields{
      field("machine", text("name of the machine")),
      field(
          "head",
          either(
              {text("name of the head"),
               object(
                   {field("name", text("name of the head")),
                    with_default(
                        "length_metres",
                        number(Unit::metre, "contact length along the travel").at_least(0.01).at_most(0.6),
                        0.08),
                    with_default("width_metres",
                                 number(Unit::metre, "across the travel").at_least(0.005).at_most(0.6), 0.2)},
                   "the head with its size")},
              "the head; without a size, 80 mm along the travel and 200 mm across (estimate)")),
      with_default("towel", towel_shape("towel during the test"), "none"),
      optional("probe", probe_shape()),
      with_default(
          "start_celsius",
          number(Unit::celsius, "temperature of the fold before each pass").at_least(-20).at_most(50), 20),
      with_default("covering", text("what the fold was made of: a covering of the furniture, or test_fold"),
                   "test_fold"),
      optional("cloth", stack_shape("one layer of the test fold, when readings count layers").items(1, 1)),
      optional("under", stack_shape("what lies under the fold")),
      with_default("working_pace_metres_per_second",
                   number(Unit::metre_per_second, "pace at which the practice target is judged")
                       .at_least(0.002)
                       .at_most(0.1),
                   0.0254),
      with_default("samples", integer("size of the ensemble; verdicts use 1024").at_least(64).at_most(4096),
                   1024),
      field("readings", list(reading_shape(), "the readings").items(1, 64))};
  for (Field& pressure : pressure_fields()) fields.push_back(std::move(pressure));
  return fields;
}

std::vector<Field> fold_test_fields_with_others() {
  std::vector<Field> fields = fold_test_fields();
  fields.push_back(optional(
      "earlier", other_test_shape("the last test of this machine, head and towel, to compare with")));
  fields.push_back(same_machine_field());
  return fields;
}

}  // namespace lastegg
