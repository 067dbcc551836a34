#include "job/record/kind_builders.h"
#include "job/record/kind_groups.h"

namespace lastegg::record {

using Type = DataField::Type;

std::vector<KindRule> equipment_kinds() {
  return {
      kind("vacuum/1", "vacuums", "A vacuum cleaner.",
           {title(), of_type(Type::flag, "fine_filter", k_optional, "a filter that holds fine dust"),
            typed()}),
      kind("dryer/1", "dryers", "A tumble dryer that may be used.",
           {title(), positive("load_kilograms", k_optional, Unit::kilogram, 100, "dry clothes it takes"),
            typed()}),
      kind("circuit/1", "circuits", "An electric circuit of the home.",
           {title(), positive("volts", k_optional, Unit::volt, 500, "nominal voltage"),
            positive("breaker_amperes", k_required, Unit::ampere, 200, "rating of its breaker"),
            whole("outlets", 1, 100, "outlets on it"),
            number("other_load_watts", k_optional, Unit::watt, 0, 50000, "of what else runs on it"),
            id("room", k_optional, "where its outlets are")}),
      kind("weighing/1", "weighings", "A steamer on a scale before and after some minutes of steam.",
           {id("machine", k_required, "the steamer"),
            number("before_kilograms", k_required, Unit::kilogram, 0, 200, "before"),
            number("after_kilograms", k_required, Unit::kilogram, 0, 200, "after"),
            positive("minutes", k_required, Unit::minute, 60, "of steam between")}),
      kind("probe_check/1", "probe_checks", "A probe held into melting ice or boiling water.",
           {id("probe", k_required, "the probe"),
            word("in", k_required, {"melting_ice", "boiling_water"}, "into what"),
            number("shown_celsius", k_required, Unit::celsius, -25, 130, "what it showed"),
            number("pressure_pascal", k_optional, Unit::pascal, 50000, 110000, "of the air, by a barometer"),
            elevation(), of_type(Type::date, "on", k_optional, "the day"), typed()}),
      kind("jet_check/1", "jet_checks", "What the steam of a head did to a strip of tissue.",
           {id("head", k_required, "the head"),
            positive("distance_metres", k_required, Unit::metre, 2, "between opening and tissue"),
            word("seen", k_required, {"stays", "flutters", "blown_off"}, "what the tissue did"), typed()}),
      kind("start_check/1", "start_checks", "Checks of a steamer before work begins.",
           {id("machine", k_required, "the steamer"),
            of_type(Type::flag, "hose_sound", k_optional, "no leak, no crack"),
            of_type(Type::flag, "gasket_sound", k_optional, "seal of the cap and of the head"),
            of_type(Type::flag, "warmed_up", k_optional, "steam comes dry"),
            of_type(Type::flag, "first_spit_away", k_optional, "first water let off away from the work"),
            of_type(Type::flag, "towel_dry", k_optional, "the towel is dry"),
            of_type(Type::flag, "hands_and_eyes", k_optional, "gloves and eye protection are on"),
            of_type(Type::date, "on", k_optional, "the day")})};
}

}  // namespace lastegg::record
