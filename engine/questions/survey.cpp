// Question `survey`: what an inspection amounts to, item by item and for the home, and where to look next.
#include <fmt/format.h>

#include <string>
#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/survey_request.h"
#include "engine/survey_words.h"
#include "job/survey/hazards.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

Shape level_shape(std::string text) {
  return choice({{"confirmed", "live bugs or eggs, surely bed bugs"},
                 {"probable",
                  "skins, spots or dead bugs where nothing was treated as far as is known, or live "
                  "ones that nobody has identified"},
                 {"old", "skins, spots or dead bugs after a treatment"},
                 {"suspected", "told, caught near by, or not surely bed bugs"},
                 {"none", "looked at, none seen: no proof that there are none"},
                 {"not_looked", "nobody has looked"}},
                std::move(text));
}

Shape how_shape(std::string text) {
  return choice(survey_how_choices(), std::move(text));
}

Shape answer_shape() {
  std::vector<Field> place = {field("id", shape::text("as given")), field("level", level_shape("how surely")),
                              field("live", integer("adults and nymphs counted")),
                              field("eggs", integer("eggs counted that look alive"))};
  std::vector<Field> item = place;
  item.push_back(field("reached", flag("false: somebody could not look at it")));
  item.push_back(field("prior_share", ratio("of the home's bugs, before anything was seen")));
  item.push_back(field("share", ratio("of the home's bugs, expected now")));
  item.push_back(field("share_sd", ratio("standard deviation of that share")));
  item.push_back(field("covered", ratio("chance that bugs in it would have been found so far")));
  item.push_back(field("text", shape::text("in words")));
  const Shape next =
      object({field("id", shape::text("the item")), field("rank", integer("from 1")),
              field("missed_share", ratio("of the home's bugs: expected in it and not found so far")),
              field("code", choice({{"not_looked", "nobody has looked"},
                                    {"not_accessible", "could not be reached"},
                                    {"unsure", "what was found is not surely a bed bug"},
                                    {"signs", "signs without a bug"},
                                    {"trap", "a trap beneath it caught bugs"},
                                    {"part", "only some edges were looked at"},
                                    {"by_eye", "looked at whole, none seen"},
                                    {"live", "bugs were found in part of it"}},
                                   "why")),
              field("how", how_shape("how to look")), field("text", shape::text("the reason in words"))},
             "a place to look at");
  const Shape caution = object(
      {field("id", shape::text("of the risk, as given")), field("what", shape::text("word of the risk")),
       field("stop", choice({{"hard", "no heat there until the one named has decided"},
                             {"caution", "to be known and kept in mind"}},
                            "how far it reaches")),
       field("settled",
             flag("dealt with, a hard stop by the word of a role that decides; it is still shown")),
       field("settled_by",
             list(shape::text(
                      "occupant, owner, manager, doctor, fire_authority, licensed_contractor, supplier"),
                  "roles whose word settles it")),
       optional("room", shape::text("where, if given")), optional("item", shape::text("where, if given")),
       field("text", shape::text("what to know")), field("who_decides", shape::text("who decides")),
       field("source", shape::text("where the fact comes from")),
       field("quality", shape::text("measured, handbook, practice, estimate, from memory"))},
      "a caution");
  return object({field("level", level_shape("of the home")),
                 field("live", integer("adults and nymphs counted by eye and in traps")),
                 field("eggs", integer("eggs counted that look alive")),
                 field("count_class", choice({{"none_counted", "no live bug counted"},
                                              {"up_to_12", "12 or fewer counted"},
                                              {"from_13_to_30", "13 to 30 counted"},
                                              {"over_30", "more than 30 counted"}},
                                             "class of the count")),
                 field("count_is_least", flag("places were not looked at: there may be more")),
                 field("unlisted_share", ratio("of the home's bugs: expected in parts that are not listed")),
                 field("text", shape::text("in words")),
                 field("items", list(object(std::move(item), "an item"), "as given")),
                 field("rooms", list(object(std::move(place), "a room with what stands in it"), "as given")),
                 field("next", list(next, "where to look next, first first")),
                 field("cautions", list(caution, "hard stops first"))},
                "the inspection");
}

Json judged_json(const std::string& id, const survey::Judged& judged) {
  return {{"id", id}, {"level", survey_word(judged.level)}, {"live", judged.live}, {"eggs", judged.eggs}};
}

Json cautions_of(const Json& request) {
  Json hard = Json::array(), others = Json::array();
  const Json* risks = member_if(request, "risks");
  if (risks == nullptr) return hard;
  for (const Json& risk : *risks) {
    const std::string what = text_of(risk, "what");
    for (const survey::Hazard& hazard : survey::hazards()) {
      if (hazard.key != what) continue;
      Json caution = {
          {"id", text_of(risk, "id")},
          {"what", what},
          {"stop", hazard.hard ? "hard" : "caution"},
          {"settled",
           hazard.settled(risk.at("settled").get<bool>(), text_if(risk, "settled_by").value_or(""))},
          {"settled_by", hazard.settled_by},
          {"text", in_language(hazard.text)},
          {"who_decides", in_language(hazard.who_decides)},
          {"source", in_language(hazard.source) + (hazard.locator.empty() ? "" : ": " + hazard.locator)},
          {"quality", hazard.quality}};
      for (const char* key : {"room", "item"})
        if (has(risk, key)) caution[key] = risk.at(key);
      (hazard.hard ? hard : others).push_back(std::move(caution));
    }
  }
  for (Json& caution : others) hard.push_back(std::move(caution));
  return hard;
}

std::vector<Warning> warnings_of(const SurveyRequest& asked, const survey::Outcome& outcome,
                                 bool before_known) {
  std::vector<Warning> warnings;
  if (!asked.survey.items.empty() && !asked.has_bed)
    warnings.push_back(
        {"no_bed", say("No bed is listed. Most bugs sit on beds: list every place where somebody sleeps.")});
  if (outcome.home.level == survey::Level::confirmed)
    warnings.push_back(
        {"neighbors",
         say("Of the apartments beside, above and below an infested one about half had bed bugs too "
             "(53 %, Wang and others 2010): ask for a look at them.")});
  if (outcome.home.level == survey::Level::probable && !before_known)
    warnings.push_back(
        {"treated_before",
         say("Nobody said whether anything was tried before. After a treatment skins and spots alone "
             "are old evidence.")});
  for (const survey::ItemJudged& item : outcome.items) {
    if (item.why != survey::Why::unsure) continue;
    warnings.push_back(
        {"identify", say("Something was found that is not surely a bed bug: identify it before treating.")});
    break;
  }
  warnings.push_back(
      {"one_trial",
       say("Where bugs sit before anything is seen comes from one trial of thirteen homes; how much a "
           "look finds is mostly an estimate. None seen never means that there are none.")});
  return warnings;
}

Result<Answer> solve(const Json& request) {
  const auto asked = read_survey(request);
  if (!asked) return refuse(asked.error());
  const survey::Outcome outcome = survey::judge(asked->survey);
  Answer answer;
  Json& out = answer.result;
  out["level"] = survey_word(outcome.home.level);
  out["live"] = outcome.home.live;
  out["eggs"] = outcome.home.eggs;
  out["count_class"] = survey_word(outcome.count_class);
  out["count_is_least"] = outcome.count_is_least;
  out["unlisted_share"] = outcome.unlisted_share;
  out["text"] = home_text(asked->survey, outcome);
  out["items"] = Json::array();
  out["next"] = Json::array();
  for (std::size_t i = 0; i < outcome.items.size(); ++i) {
    const survey::ItemJudged& item = outcome.items[i];
    Json row = judged_json(asked->item_ids[i], item);
    row["reached"] = item.reached;
    row["prior_share"] = item.prior_share;
    row["share"] = item.share;
    row["share_sd"] = item.share_sd;
    row["covered"] = item.covered;
    row["text"] = item_text(item);
    out["items"].push_back(std::move(row));
  }
  for (std::size_t rank = 1; rank <= outcome.items.size(); ++rank) {
    for (std::size_t i = 0; i < outcome.items.size(); ++i) {
      const survey::ItemJudged& item = outcome.items[i];
      if (item.rank != rank) continue;
      out["next"].push_back({{"id", asked->item_ids[i]},
                             {"rank", rank},
                             {"missed_share", item.missed_share},
                             {"code", survey_word(item.why)},
                             {"how", survey_word(item.how_next)},
                             {"text", next_text(asked->survey.items[i], item)}});
    }
  }
  out["rooms"] = Json::array();
  for (std::size_t i = 0; i < outcome.rooms.size(); ++i)
    out["rooms"].push_back(judged_json(asked->room_ids[i], outcome.rooms[i]));
  out["cautions"] = cautions_of(request);
  answer.warnings = warnings_of(*asked, outcome, text_of(request, "treated_before") != "not_known");
  return answer;
}

}  // namespace

const Question& survey_question() {
  static const Question question{
      "survey",
      "What an inspection amounts to: how surely there are bed bugs, how many were "
      "counted, where the rest is expected, where to look next, what to beware of.",
      survey_request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
