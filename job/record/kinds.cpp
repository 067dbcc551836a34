#include "job/record/kinds.h"

#include <algorithm>
#include <utility>

#include "job/record/kind_builders.h"
#include "job/record/kind_groups.h"

namespace lastegg::record {
namespace {

using Type = DataField::Type;

std::vector<KindRule> place_kinds() {
  return {
      kind("job/1", "", "What the job is called. Its subject is the job's id.",
           {title(), of_type(Type::date, "opened_on", k_optional, "the day the job began"), elevation(),
            typed()}),
      kind("dwelling/1", "dwellings", "A home that is looked at or treated.",
           {title(), of_type(Type::text, "kind", k_optional, "apartment, house, ..."),
            of_type(Type::id, "job", k_optional, "the job it belongs to"), elevation(), typed()}),
      kind(
          "room/1", "rooms", "A room of a dwelling.",
          {title(), of_type(Type::id, "dwelling", k_optional, "the dwelling it is in"),
           object(
               "outline",
               {number("x_metres", k_required, Unit::metre, -1000, 1000, "left wall, on the dwelling's plan"),
                number("y_metres", k_required, Unit::metre, -1000, 1000, "far wall, on the dwelling's plan"),
                positive("width_metres", k_required, Unit::metre, 200, "left to right"),
                positive("depth_metres", k_required, Unit::metre, 200, "far to near")},
               "where its walls stand")}),
      kind(
          "item/1", "items",
          "A piece of furniture. What it is and how large goes on to the question furniture.",
          {title(),
           of_type(Type::text, "kind", k_required, "a word of the question catalogue, as furniture takes it"),
           of_type(Type::id, "room", k_optional, "the room it stands in"),
           whole("seats", 1, 20, "of a sofa or sectional"),
           of_type(Type::text, "size", k_optional, "name of a mattress size"),
           positive("length_metres", k_optional, Unit::metre, 20, "where measured"),
           positive("width_metres", k_optional, Unit::metre, 20, "where measured"),
           positive("depth_metres", k_optional, Unit::metre, 20, "where measured"),
           positive("height_metres", k_optional, Unit::metre, 20, "where measured"),
           of_type(Type::text, "covering", k_required,
                   "the cloth, a word the question furniture takes; unknown if not known"),
           of_type(Type::text, "finish", k_optional, "what is on the cloth or wood, if known"),
           number("wetting_limit_grams_per_m2", k_optional, Unit::gram_per_m2, 5, 500,
                  "water the covering took without a mark in a hidden-spot test"),
           number("hidden_spot_seconds", k_optional, Unit::second, 1, 120,
                  "for which the head was held on a hidden spot and left no mark"),
           object("water_drop",
                  {word("face", k_optional, {"not_tried", "soaks", "beads"}, "a drop of water on its face"),
                   word("back", k_optional, {"not_seen", "open", "coated"}, "its back, where it can be seen"),
                   number("seconds", k_optional, Unit::second, 0, 3600, "until the drop had soaked in")},
                  "the water-drop check of its covering"),
           of_type(Type::flag, "sleeps_here", k_optional, "somebody sleeps or long sits on it"),
           object("place",
                  {number("x_metres", k_required, Unit::metre, -1000, 1000,
                          "its middle, from the room's left wall"),
                   number("y_metres", k_required, Unit::metre, -1000, 1000,
                          "its middle, from the room's far wall"),
                   number("turn_degrees", k_optional, Unit::none, -360, 360,
                          "turned clockwise, seen from above")},
                  "where in the room it stands")})};
}

std::vector<KindRule> kit_kinds() {
  std::vector<KindRule> rules = {
      kind("machine/1", "machines", "A steamer.",
           {title(), positive("power_watts", k_optional, Unit::watt, 50000, "as its plate says"),
            word("tank", k_optional, {"continuous", "pressurised", "kettle"}, "kind of tank"),
            positive("water_kilograms", k_optional, Unit::kilogram, 50, "full tank or reservoir"),
            number("gauge_pascal", k_optional, Unit::pascal, 0, 1.2e6, "working pressure above the room"),
            of_type(Type::date, "serviced_on", k_optional, "descaled or repaired last: older tests are due"),
            typed()}),
      kind("head/1", "heads", "A steam head.",
           {title(), of_type(Type::id, "machine", k_optional, "the machine it belongs to"),
            positive("length_metres", k_required, Unit::metre, 2, "along the pass"),
            positive("width_metres", k_optional, Unit::metre, 2, "across the pass"), typed()}),
      kind("towel/1", "towels", "A way of using a towel.",
           {title(),
            word("use", k_required, {"none", "wrapped", "laid"},
                 "no towel, around the head, or lying on the cloth"),
            positive("thickness_metres", k_optional, Unit::metre, 0.1, "as it lies"), typed()}),
      kind("probe/1", "probes", "A thermometer probe.",
           {title(),
            positive("time_constant_seconds", k_optional, Unit::second, 600,
                     "until 63 % of a sudden change shows"),
            object("dip",
                   {number("start_celsius", k_optional, Unit::celsius, -25, 60, "shown before the dip"),
                    positive("seconds_to_63", k_optional, Unit::second, 600, "until 63 % of the way shows"),
                    positive("seconds_to_90", k_optional, Unit::second, 600, "until 90 % of the way shows")},
                   "a dip into boiling water, where it was timed"),
            typed()})};
  rules.back().any_of = {{"time_constant_seconds"}, {"dip"}};
  return rules;
}

std::vector<KindRule> test_kinds() {
  std::vector<KindRule> rules = {
      kind("fold_test/1", "", "A test of one head with one towel: a probe's tip in a folded cloth.",
           {title(), of_type(Type::id, "machine", k_optional, "the machine used"),
            of_type(Type::id, "head", k_optional, "the head used"),
            of_type(Type::id, "towel", k_optional, "the towel used"),
            of_type(Type::id, "probe", k_optional, "the probe used"),
            number("start_celsius", k_optional, Unit::celsius, -25, 60, "of the cloth before the passes"),
            elevation(), of_type(Type::text, "covering", k_optional, "the kind of cloth that was folded"),
            of_type(Type::text, "cloth", k_optional, "material of one layer of the fold"),
            of_type(Type::date, "on", k_optional, "the day of the readings"),
            of_type(Type::id, "taken_from", k_optional, "the job in which it was made, where not this one"),
            typed()}),
      kind("reading/1", "",
           "One reading of a fold test: a pass and the highest temperature that the probe showed, a head at "
           "rest, or what the surface showed after a pass.",
           {of_type(Type::id, "fold_test", k_required, "the test it belongs to"),
            positive("pace_metres_per_second", k_optional, Unit::metre_per_second, 2, "speed of the head"),
            positive("distance_metres", k_optional, Unit::metre, 20, "length of the pass"),
            positive("seconds", k_optional, Unit::second, 3600, "time for that length"),
            word("kind", k_optional, {"pass", "stationary", "coupon", "under_real_edge", "surface"},
                 "what was done; a pass over the fold if left out"),
            positive("hold_seconds", k_optional, Unit::second, 3600, "how long the head rested"),
            of_type(Type::text, "covering", k_optional, "of the real edge that was read"),
            of_type(Type::layers, "layers", k_required,
                    "over the tip: how many, or a list that names each; a plate or a surface counts as one"),
            number("peak_celsius", k_optional, Unit::celsius, -25, 150, "highest temperature shown"),
            number("gun_celsius", k_optional, Unit::celsius, -25, 150,
                   "of a surface: what an infrared gun showed"),
            word("palm", k_optional, {"cold", "warm", "hot"}, "of a surface: what the back of a hand said"),
            number("seconds_after", k_optional, Unit::second, 0, 300,
                   "of a surface: since the head had left the place"),
            positive("spot_metres", k_optional, Unit::metre, 1, "of a gun: diameter of what it looks at"),
            number("emissivity_setting", k_optional, Unit::none, 0.3, 1, "of a gun: the setting"), typed()})};
  // What was done, and what was shown.
  std::vector<std::vector<std::string_view>> groups;
  for (const std::string_view shown : {"peak_celsius", "gun_celsius", "palm"}) {
    groups.push_back({"pace_metres_per_second", shown});
    groups.push_back({"distance_metres", "seconds", shown});
  }
  groups.push_back({"hold_seconds", "peak_celsius"});
  rules.back().any_of = std::move(groups);
  return rules;
}

std::vector<KindRule> other_kinds() {
  return {kind("settings/1", "", "How this job is shown.",
               {word("temperature", k_optional, {"C", "F"}, "unit of temperatures"),
                word("length", k_optional, {"mm", "in"}, "unit of small lengths and of paces"),
                of_type(Type::text, "language", k_optional, "language tag, such as en"),
                of_type(Type::id, "fold_test", k_optional, "the fold test that the plan rests on"),
                whole("fold_test_days", 1, 3660, "after which the firm makes a fold test again")}),
          kind("removed/1", "", "Its subject is off the lists. Nothing is deleted.",
               {of_type(Type::flag, "removed", k_optional,
                        "false, in a correction, puts it back; true if left out"),
                of_type(Type::text, "reason", k_optional, "why")})};
}

}  // namespace

const std::vector<KindRule>& kind_rules() {
  static const std::vector<KindRule> table = [] {
    std::vector<KindRule> all;
    for (std::vector<KindRule> part : {place_kinds(), kit_kinds(), test_kinds(), inspection_kinds(),
                                       equipment_kinds(), visit_kinds(), other_kinds()})
      all.insert(all.end(), part.begin(), part.end());
    return all;
  }();
  return table;
}

const KindRule* rule_of(std::string_view kind) {
  const std::vector<KindRule>& rules = kind_rules();
  const auto found =
      std::find_if(rules.begin(), rules.end(), [&](const KindRule& rule) { return rule.kind == kind; });
  return found == rules.end() ? nullptr : &*found;
}

}  // namespace lastegg::record
