#include "job/record/kind_builders.h"
#include "job/record/kind_groups.h"

namespace lastegg::record {
namespace {

using Type = DataField::Type;

// Where something is: any of these; the finest that is known.
std::vector<DataField> where_it_is() {
  return {id("room", k_optional, "the room"), id("item", k_optional, "the item"),
          text("edge", "name of the edge, as the question furniture gives it, or the id of an added edge")};
}

std::vector<DataField> placed(std::vector<DataField> fields) {
  for (DataField& field : where_it_is()) fields.push_back(std::move(field));
  return fields;
}

DataField counted(std::string_view key, std::string_view meaning) {
  return whole(key, 0, 100000, meaning);
}

}  // namespace

std::vector<KindRule> inspection_kinds() {
  return {
      kind("arrival/1", "arrivals", "In what state the home was found, and what was decided.",
           {word("state", k_required, {"prepared", "partly", "not_prepared"}, "of the preparation"),
            word("decision", k_optional, {"treat", "treat_part", "reschedule"}, "what was decided"),
            of_type(Type::date, "on", k_optional, "the day")}),
      kind("evidence/1", "evidence", "What one look at a place found.",
           placed({word("look", k_required, {"found", "none_seen", "not_accessible"}, "result of the look"),
                   counted("adults", "live adults"), counted("nymphs", "live nymphs"),
                   counted("eggs", "eggs that look alive"), counted("cast_skins", "cast skins"),
                   of_type(Type::flag, "spots", k_optional, "dark spots of droppings"),
                   of_type(Type::flag, "dead", k_optional, "dead bugs only"),
                   word("how", k_optional, {"eye", "light_and_card", "opened", "trap", "told"},
                        "how it was looked: by eye, with light and a card along the edge, taken apart, "
                        "from a trap, told by the people there"),
                   of_type(Type::flag, "certain", k_optional, "sure that it is a bed bug")})),
      kind("trap/1", "traps", "A trap that stands somewhere.",
           placed(
               {title(), word("type", k_optional, {"leg_trap", "other"}, "what it is"),
                object("place",
                       {number("x_metres", k_required, Unit::metre, -1000, 1000, "from the room's left wall"),
                        number("y_metres", k_required, Unit::metre, -1000, 1000, "from the room's far wall")},
                       "where in the room"),
                of_type(Type::date, "set_on", k_optional, "since when")})),
      kind("trap_check/1", "trap_checks", "What a trap held when it was looked at.",
           {id("trap", k_required, "the trap"), of_type(Type::date, "on", k_optional, "the day"),
            counted("adults", "adults"), counted("nymphs", "nymphs"),
            of_type(Type::flag, "certain", k_optional, "sure that they are bed bugs"),
            of_type(Type::flag, "missing", k_optional, "it was gone, moved or dusty, so it tells nothing")}),
      kind("edge/1", "edge_changes", "A change to the edges that an item has by itself.",
           {id("item", k_required, "the item"),
            word("change", k_required, {"added", "renamed", "split", "left_out"}, "what was changed"),
            text("edge", "name of the edge that is renamed, split or left out"),
            text("title", "what people call it"),
            text("kind", "kind of an added edge, as the question furniture names kinds"),
            text("part", "part of the item that an added edge is on"),
            positive("length_metres", k_optional, Unit::metre, 100, "of an added edge"),
            number("height_metres", k_optional, Unit::metre, 0, 10, "of an added edge, above the floor"),
            of_type(Type::flag, "in_sight", k_optional, "of an added edge"),
            number("at_share", k_optional, Unit::none, 0, 1, "where a split lies along the edge"),
            text("reason", "why it is left out")}),
      kind("damage/1", "damages", "Damage that was there before anything was done.",
           placed({text("what", "what is damaged"), text("photo", "name of the photo's blob")})),
      kind("photo/1", "photos", "A photo; its bytes are a blob, without the position data of the camera.",
           placed({of_type(Type::text, "blob", k_required, "SHA-256 of its bytes"),
                   of_type(Type::text, "media_type", k_required, "such as image/jpeg"),
                   whole("width", 1, 100000, "pixels"), whole("height", 1, 100000, "pixels"),
                   whole("bytes", 1, 100000000, "of the blob"),
                   id("of", k_optional, "the entity that it shows")})),
      kind(
          "risk/1", "risks", "Somebody or something that heat, steam, water or a visit could harm.",
          placed({word("what", k_required, {"infant",         "pregnant",         "frail",      "asthma",
                                            "heat_sensitive", "oxygen",           "pets",       "aquarium",
                                            "medicines",      "pressurised_cans", "ammunition", "needles",
                                            "smoke_detector", "heat_detector",    "sprinkler",  "fuel_heater",
                                            "loose_wiring",   "asbestos_or_lead", "mould",      "weak_floor",
                                            "other"},
                       "what it is"),
                  of_type(Type::flag, "settled", k_optional, "dealt with; the note says how"),
                  text("settled_by", "role of who decided or approved")})),
      kind("prior_treatment/1", "prior_treatments", "What was tried before.",
           {word("what", k_required,
                 {"steam", "hot_room", "cold", "spray", "dust", "vacuum", "encasement", "washing",
                  "discarding", "other", "not_known"},
                 "kind of treatment"),
            of_type(Type::date, "on", k_optional, "when"), text("by", "role of who did it")}),
      kind("consent/1", "consents", "What was asked of the client, and the answer.",
           {word("to", k_required,
                 {"steam", "open_dust_cover", "dismantle", "hot_room", "discard", "photos", "neighbours",
                  "other"},
                 "what was asked"),
            word("answer", k_required, {"given", "refused", "not_asked"}, "the answer"),
            id("item", k_optional, "for one item alone"), text("by", "role of who answered")})};
}

}  // namespace lastegg::record
