// Blocks of the report that say what it means for the people who live there: next visit, cautions, how sure.
#include "job/reports/report.h"
#include "words/say.h"

namespace lastegg::reports {

Json next_visit_block(const ReportInput& input) {
  Block block{"next_visit", say("When we come back"), {}, {}};
  const Json& answer = input.follow_up;
  if (!answer.is_object()) {
    block.lines.push_back(
        line("no_date_yet", {},
             say("The day is not fixed yet: it depends on how warm the home is, because eggs hatch later in "
                 "cool rooms.")));
    return block.json();
  }
  Json parameters = Json::object();
  for (const char* key :
       {"return_from", "return_to", "return_from_days", "return_to_days", "first_hatch_days",
        "last_hatch_days", "next_adult_days", "lowest_celsius", "highest_celsius"}) {
    if (answer.contains(key)) parameters[key] = answer.at(key);
  }
  block.lines.push_back(line("window", parameters, text_in(answer, "text")));
  block.lines.push_back(line(
      "why_then", {},
      say("By then every egg that may have survived has hatched, and none of the young can have laid eggs. "
          "One look then tells what no look today can tell.")));
  if (answer.contains("custom"))
    block.lines.push_back(line("custom", answer.at("custom"), text_in(answer.at("custom"), "text")));
  return block.json();
}

Json cautions_block(const ReportInput& input) {
  Block block{"cautions", say("Please mind"), {}, {}};
  block.lines.push_back(line("drying", {},
                             say("Steamed places are damp. Let them dry with a window open or a fan before "
                                 "they are covered, made up "
                                 "or used; look for mould in the days after.")));
  block.lines.push_back(line("stay", {},
                             say("Keep sleeping where you usually sleep once it is dry: sleeping in another "
                                 "room leads bugs there.")));
  block.lines.push_back(line("no_sprays", {},
                             say("Do not add sprays, dusts or heaters of your own: they can harm people and "
                                 "drive bugs into other rooms.")));
  block.lines.push_back(line(
      "traps", {}, say("Leave traps where they stand, and tell us of bites, bugs or fresh spots at once.")));
  for (const Json& risk : list_in(input.state, "risks")) {
    if (!risk.contains("settled") || risk.at("settled") != true)
      block.rows.push_back(
          line("open_risk", {{"what", text_in(risk, "what")}},
               say("Not settled before the treatment: {}.", in_language(text_in(risk, "what")))));
  }
  return block.json();
}

Json how_sure_block(const ReportInput&) {
  Block block{"how_sure", say("How sure this is"), {}, {}};
  block.lines.push_back(line(
      "meaning_lethal", {{"confidence", 0.95}, {"required_ratio", 2}},
      say("Lethal: with a confidence of 95 in 100, every place of the edge got at least twice the heat that "
          "kills 99 of "
          "100 eggs, nymphs and adults, down to the deepest place where eggs are likely to lie.")));
  block.lines.push_back(line(
      "meaning_not_proven", {},
      say("Not proven: this does not mean that bugs are alive there, and it is nobody's fault. It means that "
          "our "
          "records and tests are not good enough to show that they are dead. Such places are steamed again, "
          "treated in another way, or watched with traps, as listed above.")));
  block.lines.push_back(
      line("meaning_short", {},
           say("Short: some place of the edge surely got too little heat. It is done again, or "
               "the list above says why not.")));
  block.lines.push_back(
      line("not_certain", {},
           say("No treatment of bed bugs is certain. Bugs may sit where nobody looked, or come "
               "back from elsewhere. That is "
               "why we come again.")));
  block.lines.push_back(line("fed_adults", {},
                             say("An adult full of blood warms slowly and can outlast one pass. It is large; "
                                 "that is why the technician looks "
                                 "behind the head.")));
  return block.json();
}

}  // namespace lastegg::reports
