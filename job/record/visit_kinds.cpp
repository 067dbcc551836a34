#include "job/record/kind_builders.h"
#include "job/record/kind_groups.h"

namespace lastegg::record {
namespace {

using Type = DataField::Type;

DataField towel() {
  return word("towel", k_optional, {"none", "wrapped", "laid"}, "towel that was used");
}

DataField edge_name() {
  return of_type(Type::text, "edge", k_required,
                 "name of the edge, as the question furniture gives it, or the id of an added edge");
}

}  // namespace

std::vector<KindRule> visit_kinds() {
  std::vector<KindRule> rules = {
      kind("visit/1", "visits", "A visit: when, with how many, for how long.",
           {title(), of_type(Type::date, "on", k_optional, "the day"), whole("crew", 1, 20, "technicians"),
            positive("minutes", k_optional, Unit::minute, 1440, "time there is"),
            word("purpose", k_optional, {"inspect", "treat", "follow_up"}, "what for")}),
      kind("rates/1", "rates", "What the firm asks for its work.",
           {of_type(Type::text, "currency", k_required, "ISO 4217, such as USD"),
            number("per_visit", k_optional, Unit::none, 0, 1e6, "for coming at all"),
            number("per_hour", k_optional, Unit::none, 0, 1e6, "for an hour of one technician")}),
      kind("method/1", "methods", "The method that a person chose for an item.",
           {id("item", k_required, "the item"),
            of_type(Type::text, "method", k_required, "a word of the question method"),
            text("reason", "why, where it is not the one that was offered first")}),
      kind("edge_order/1", "edge_orders", "In which order the edges of an item are treated.",
           {id("item", k_required, "the item"),
            word("order", k_required, {"top_to_bottom", "bottom_to_top"}, "the order")}),
      kind("stroke/1", "strokes", "One pass of the head over an edge, as it was timed.",
           {id("item", k_required, "the item"), edge_name(),
            positive("length_metres", k_required, Unit::metre, 100, "of the edge that was passed"),
            number("seconds", k_required, Unit::second, 0, 86400, "from the first mark to the last"),
            list("marks",
                 {number("at_metres", k_required, Unit::metre, 0, 100, "place along the edge"),
                  number("seconds", k_required, Unit::second, 0, 86400, "since the first mark"),
                  of_type(Type::flag, "interrupted", k_optional,
                          "what happened since the mark before is not known")},
                 "marks on the way"),
            of_type(Type::flag, "interrupted", k_optional, "part of the time is not known"), towel(),
            id("head", k_optional, "the head"), id("fold_test", k_optional, "the test the pace rests on"),
            positive("planned_metres_per_second", k_optional, Unit::metre_per_second, 2,
                     "pace that was planned"),
            word("style", k_optional, {"glide", "place_hold_move"}, "how the head went"),
            id("visit", k_optional, "during which visit"),
            id("follows", k_optional, "the mark of a live bug that this pass answers")}),
      kind(
          "edge_mark/1", "edge_marks", "Something that was met at an edge while it was treated.",
          {id("item", k_required, "the item"), edge_name(),
           word("what", k_required,
                {"live_bug", "could_not_reach", "skipped", "towel_changed", "treated_by_practice"},
                "a live bug behind the head, could not be reached, left for later, towel changed, treated as "
                "practice has it without a computed pace"),
           number("at_metres", k_optional, Unit::metre, 0, 100, "where along the edge"),
           text("reason", "why"), id("visit", k_optional, "during which visit")}),
      kind("spot_reading/1", "spot_readings", "The surface behind the head, read by a gun or a palm.",
           {id("item", k_required, "the item"), edge_name(),
            number("gun_celsius", k_optional, Unit::celsius, -20, 150, "what an infrared gun showed"),
            word("palm", k_optional, {"cold", "warm", "hot"}, "what the back of a hand said"),
            number("seconds_after", k_required, Unit::second, 0, 600, "after the head had left the place"),
            number("at_metres", k_optional, Unit::metre, 0, 100, "where along the edge"), typed()}),
      kind("redo_note/1", "redo_notes", "Why an edge that fell short was not done again.",
           {id("item", k_required, "the item"), edge_name(),
            of_type(Type::text, "reason", k_required, "why")}),
      kind("issued/1", "issued", "A document that was handed over, with the answer it was made from.",
           {title(), word("document", k_required, {"report", "preparation_sheet", "quote"}, "what it is"),
            of_type(Type::date, "on", k_optional, "the day"),
            of_type(Type::text, "state_hash", k_required, "the record it was made from"),
            of_type(Type::text, "engine", k_optional, "version that computed it"),
            text("blob", "SHA-256 of its bytes, where they are kept"),
            object("answer", {}, "as it was computed")})};
  return rules;
}

}  // namespace lastegg::record
