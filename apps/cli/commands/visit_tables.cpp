#include "apps/cli/commands/visit_tables.h"

#include <fmt/format.h>

#include "apps/cli/spoken.h"
#include "treatments/choice/choice.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

std::string word(const Json& object, const char* key) {
  return object.at(key).get<std::string>();
}

std::string spaced(std::string text) {
  for (char& c : text)
    if (c == '_') c = ' ';
  return text;
}

std::string kill_words(const Json& offer) {
  if (!offer.at("kill_probability").is_null())
    return say("{:.0f} of 100", 100 * offer.at("kill_probability").get<double>());
  return offer.at("role") == "kill" ? say("not computed") : say("none today");
}

std::string clock_words(double minutes) {
  return minutes < 180 ? fmt::format("{:.0f} min", minutes) : fmt::format("{:.0f} h", minutes / 60);
}

std::string who_words(const Json& task) {
  std::string out;
  for (const Json& person : task.at("who"))
    out += (out.empty() ? "" : "+") + std::to_string(person.get<int>());
  return out.empty() ? "-" : out;
}

std::string wait_words(const Json& tasks, const Json& waits) {
  const std::string code = word(waits, "code");
  if (code == "none") return "";
  const std::string other =
      waits.at("task").is_null() ? "" : word(tasks[waits.at("task").get<std::size_t>()], "text");
  return code == "after" ? say("after {}", other) : say("{} in use: {}", spoken(code), other);
}

}  // namespace

std::string method_table(const Json& answer) {
  std::string out;
  for (const Json& item : answer.at("items")) {
    out += "\n" + word(item, "text") + "\n";
    out += say("  #   method                  may it be used  kill of eggs   hands    clock    wet\n");
    for (const Json& offer : item.at("methods")) {
      out += fmt::format("  {:<3} {:<22}  {:<14}  {:<13}  {:<7}  {:<7}  {}\n", offer.at("rank").get<int>(),
                         word(offer, "title"), spoken(spaced(word(offer, "standing"))), kill_words(offer),
                         clock_words(offer.at("hands_minutes")), clock_words(offer.at("clock_minutes")),
                         spoken(word(offer, "wetting")));
      for (const Json& reason : offer.at("reasons"))
        out += fmt::format("        {}: {} ({}, {})\n", spoken(spaced(word(reason, "standing"))),
                           word(reason, "text"), word(reason, "source"), spoken(word(reason, "quality")));
    }
    if (const Json& chosen = item.at("override"); !chosen.is_null())
      out +=
          word(chosen, "reason").empty()
              ? say("  A person chose {}: {}\n", method_choice::in_words(word(chosen, "method")),
                    word(chosen, "text"))
              : say("  A person chose {}, because {}: {}\n", method_choice::in_words(word(chosen, "method")),
                    word(chosen, "reason"), word(chosen, "text"));
  }
  return out + "\n" + word(answer, "recorded_only") + "\n";
}

std::string visit_table(const Json& answer) {
  std::string out = word(answer, "text") + "\n\n" + say("Timetable, minutes from the start") + "\n";
  out += say("  from    to  who    task                                              why not earlier\n");
  const Json& tasks = answer.at("tasks");
  for (const Json& task : tasks)
    out += fmt::format("  {:>4}  {:>4}  {:<5}  {:<48}  {}\n", task.at("from_minutes").get<int>(),
                       task.at("to_minutes").get<int>(), who_words(task), word(task, "text"),
                       wait_words(tasks, task.at("waits")));
  for (const Json& left : answer.at("left_out")) out += say("  left out: {}\n", word(left, "text"));
  out += "\n" + say("Can they sleep in it tonight?") + "\n  " + word(answer.at("sleep"), "text") + "\n";
  for (const Json& missing : answer.at("sleep").at("missing")) out += "  - " + word(missing, "text") + "\n";
  if (!answer.at("in_minutes_left").is_null())
    out += "\n" + say("What matters most in the minutes left?") + "\n  " +
           word(answer.at("in_minutes_left"), "text") + "\n";
  out += "\n" + say("Water") + "\n  " + word(answer.at("water"), "text") + "\n\n" +
         say("Circuits: {}", spoken(spaced(word(answer.at("load"), "verdict")))) + "\n";
  for (const Json& circuit : answer.at("load").at("circuits"))
    out += say("  {:<24} {:5.1f} A at most, {:5.1f} A allowed\n", word(circuit, "title"),
               circuit.at("peak_amperes").get<double>(), circuit.at("allowed_amperes").get<double>());
  for (const Json& refused : answer.at("load").at("refused")) out += "  " + word(refused, "text") + "\n";
  if (!answer.at("quote").is_null())
    out += "\n" + say("Quote") + "\n  " + word(answer.at("quote"), "text") + "\n";
  for (const Json& warning : answer.at("warnings")) out += say("Note: {}.\n", word(warning, "text"));
  return out;
}

std::string preparation_table(const Json& answer) {
  std::string out;
  const std::pair<const char*, std::string> groups[] = {{"home", say("For the people of the home")},
                                                        {"firm", say("For those who work")}};
  const std::pair<const char*, std::string> times[] = {
      {"before", say("Before")}, {"day", say("On the day")}, {"after", say("Afterwards")}};
  for (const auto& [group, title] : groups) {
    out += "\n" + title + "\n";
    for (const auto& [time, heading] : times)
      for (const Json& sentence : answer.at(group))
        if (sentence.at("time") == time) out += fmt::format("  {:<11} {}\n", heading, word(sentence, "text"));
  }
  return out;
}

}  // namespace lastegg::cli
