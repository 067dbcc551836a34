// Question `visit`: the timetable of a visit, and what follows from it.
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <utility>

#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/visit_answers.h"
#include "engine/visit_request.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;

Shape answer_shape() {
  const Shape task = object(
      {field("kind",
             text("arrive, start_check, heat_up, strip, carry_load, load, fold_load, vacuum, dismantle, "
                  "steam, turn, open_cover, steam_hidden, chamber_setting, hold, chamber_clearing, "
                  "bag, discard, dry, encase, isolate, put_back, hand_over")),
       field("subject", text("item, load or room; empty: the whole visit")),
       field("item_index", integer("item, from 0; null: none").or_null()),
       field("from_minutes", integer("from the start")), field("minutes", integer("how long")),
       field("to_minutes", integer("from the start")), field("people", integer("how many it takes")),
       field("who", list(integer("person, from 1"), "who")),
       field("device", text("steamer, vacuum, dryer, heater; empty: none")),
       field("circuit_index", integer("circuit it is plugged into; null: none or not known").or_null()),
       field("amperes", number(Unit::ampere, "that it draws there")),
       field("cord_from_other_room", flag("plugged in in another room: a heavy cord, and nobody trips")),
       field("after", list(integer("index in `tasks`"), "tasks that end before it")),
       field("tail", flag("may outlast the visit, such as drying")),
       field("waits", object({field("code", choice({{"none", "it waits for nothing"},
                                                    {"after", "a task before it"},
                                                    {"people", "nobody is free"},
                                                    {"machine", "the steamer is in use"},
                                                    {"vacuum", "the vacuum is in use"},
                                                    {"dryer", "the dryer is in use"},
                                                    {"circuit", "the circuit is full"}},
                                                   "why it begins no earlier")),
                              field("task", integer("index in `tasks`; null: none").or_null())},
                             "why it begins no earlier")),
       field("text", text("in words"))},
      "one task");
  const Shape left = object({field("code", choice({{"no_second_person", "it takes two"},
                                                   {"no_consent", "the client has not agreed"},
                                                   {"no_circuit", "no circuit carries it"},
                                                   {"other_visit", "a visit of its own"},
                                                   {"no_method", "no method was chosen"},
                                                   {"no_machine", "there is no steamer"},
                                                   {"no_vacuum", "there is no vacuum cleaner"},
                                                   {"no_dryer", "there is no dryer"}},
                                                  "why")),
                             field("item", text("title of the item")), field("task", text("kind of task")),
                             field("text", text("in words"))},
                            "one thing");
  const Shape water = object(
      {field("steam_minutes", number(Unit::minute, "of the head on edges")),
       field("refills", integer("times at the tap; null: not known").or_null()),
       field("water_kilograms", number(Unit::kilogram, "that leaves as steam; null: not known").or_null()),
       field("waiting_minutes",
             number(Unit::minute, "that the boiler makes wait; null: not known").or_null()),
       field("energy_joules", ratio("of steamer, vacuum and heater, in joules")),
       field("text", text("in words"))},
      "water and energy");
  return object(
      {field("minutes", integer("from coming to going")),
       field("range_minutes", list(integer("minutes"), "if all goes quickly, slowly").items(2, 2)),
       field("shortest_possible_minutes", integer("no timetable of these tasks is shorter")),
       field("fits", flag("within the minutes there are; null: not given").or_null()),
       field("tasks", list(task, "by their begin")),
       field("resources", list(object({field("name", text("what is shared")),
                                       field("capacity", ratio("how much there is")),
                                       field("peak", ratio("most that is used at once"))},
                                      "one thing"),
                               "people, steamers, vacuums, dryers, then amperes of the circuits")),
       field("left_out", list(left, "what is not done, and why")), field("sleep", sleep_shape()),
       field("in_minutes_left", minutes_left_shape().or_null()), field("load", load_shape()),
       field("water", water), field("quote", quote_shape().or_null()), field("text", text("in words"))},
      "the visit");
}

std::string people_words(int crew) {
  return crew == 1 ? say("one person") : say("{} people", crew);
}

Result<Timed> timed(const visits::Visit& visit, visits::Spread spread) {
  auto tasks = visits::tasks_of(visit, spread);
  if (!tasks) return refuse(tasks.error());
  const auto schedule = visits::schedule(tasks->project, visits::k_people);
  if (!schedule) return refuse(schedule.error());
  return Timed{std::move(*tasks), *schedule};
}

std::string words_of(const visits::TaskNote& note) {
  const std::string& on = note.subject;
  const std::map<std::string, std::string> words = {
      {"arrive", say("arrive, look round")},
      {"start_check", say("check hose and seals")},
      {"heat_up", say("steamer heats up")},
      {"strip", say("strip the bed, bag it: {}", on)},
      {"carry_load", say("carry and start: {}", on)},
      {"load", say("in the drum: {}", on)},
      {"fold_load", say("into clean bags: {}", on)},
      {"vacuum", say("vacuum: {}", on)},
      {"dismantle", say("take apart: {}", on)},
      {"steam", say("steam: {}", on)},
      {"turn", say("turn with two: {}", on)},
      {"open_cover", say("open the dust cover: {}", on)},
      {"steam_hidden", say("steam the underside: {}", on)},
      {"chamber_setting", say("set up tent and sensors: {}", on)},
      {"hold", say("hold hot: {}", on)},
      {"chamber_clearing", say("take the tent down: {}", on)},
      {"bag", say("bag for the freezer: {}", on)},
      {"discard", say("wrap, mark, carry out: {}", on)},
      {"dry", say("dries: {}", on)},
      {"encase", say("cover goes on: {}", on)},
      {"isolate", say("legs into traps: {}", on)},
      {"put_back", say("put the bed back: {}", on)},
      {"hand_over", say("hand over")}};
  const auto found = words.find(note.kind);
  return found == words.end() ? note.kind : found->second;
}

std::string left_words(const visits::LeftOut& left, const std::string& title) {
  const std::map<std::string, std::string> words = {
      {"no_second_person", say("takes two people and one is there: never alone")},
      {"no_consent", say("the client has not agreed to it")},
      {"no_circuit", say("no circuit carries it")},
      {"other_visit", say("a hot room is a visit of its own")},
      {"no_method", say("no method is chosen")},
      {"no_machine", say("there is no steamer")},
      {"no_vacuum", say("there is no vacuum cleaner")},
      {"no_dryer", say("there is no dryer")}};
  const std::map<std::string, std::string> tasks = {{"turn", say("turning")},
                                                    {"open_cover", say("opening the dust cover")},
                                                    {"dismantle", say("taking apart")},
                                                    {"steam", say("steaming")},
                                                    {"steam_hidden", say("steaming the underside")},
                                                    {"hot_room", say("the hot room")},
                                                    {"treat", say("treating")},
                                                    {"load", say("laundry")},
                                                    {"hold", say("the tent")},
                                                    {"discard", say("carrying it out")},
                                                    {"vacuum", say("vacuuming")}};
  const auto task = tasks.find(left.what), why = words.find(left.code);
  return say("{}: {} is left out; {}.", title, task == tasks.end() ? left.what : task->second,
             why == words.end() ? left.code : why->second);
}

void add_tasks(const visits::Visit& visit, const Timed& found, Json& out) {
  const auto who = visits::persons(visit, found.tasks, found.schedule);
  const auto waits = visits::waits(found.tasks, found.schedule);
  std::vector<std::size_t> order(found.tasks.notes.size()), place(order.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return found.schedule.start[a] < found.schedule.start[b];
  });
  for (std::size_t i = 0; i < order.size(); ++i) place[order[i]] = i;
  out["tasks"] = Json::array();
  for (const std::size_t i : order) {
    const visits::TaskNote& note = found.tasks.notes[i];
    const visits::Task& task = found.tasks.project.tasks[i];
    std::vector<std::size_t> after;
    for (const std::size_t before : task.after) after.push_back(place[before]);
    out["tasks"].push_back(
        {{"kind", note.kind},
         {"subject", note.subject},
         {"item_index", note.item ? Json(*note.item) : Json(nullptr)},
         {"from_minutes", found.schedule.start[i]},
         {"minutes", task.minutes},
         {"to_minutes", found.schedule.start[i] + task.minutes},
         {"people", note.people},
         {"who", who[i]},
         {"device", note.device},
         {"circuit_index", note.circuit ? Json(*note.circuit) : Json(nullptr)},
         {"amperes", note.amperes},
         {"cord_from_other_room", note.cord_from_other_room},
         {"after", after},
         {"tail", task.tail},
         {"waits",
          {{"code", waits[i].code}, {"task", waits[i].task ? Json(place[*waits[i].task]) : Json(nullptr)}}},
         {"text", words_of(note)}});
  }
  const auto most = visits::peaks(found.tasks.project, found.schedule);
  out["resources"] = Json::array();
  for (std::size_t r = 0; r < most.size(); ++r)
    out["resources"].push_back({{"name", found.tasks.project.resources[r].name},
                                {"capacity", found.tasks.project.resources[r].capacity},
                                {"peak", most[r]}});
  out["left_out"] = Json::array();
  for (const visits::LeftOut& left : found.tasks.left_out) {
    const std::string title = left.item < visit.work.size() ? visit.work[left.item].title : "";
    out["left_out"].push_back(
        {{"code", left.code}, {"item", title}, {"task", left.what}, {"text", left_words(left, title)}});
  }
}

Json water_of(const VisitRequest& asked, const Timed& found) {
  double joules = 0;
  for (std::size_t i = 0; i < found.tasks.notes.size(); ++i) {
    const visits::TaskNote& note = found.tasks.notes[i];
    const double watts = note.device == "vacuum"   ? asked.visit.vacuum_watts
                         : note.device == "heater" ? asked.visit.heater_watts
                         : note.device == "steamer" && asked.boiler.answer.is_null()
                             ? asked.visit.steamer.watts
                             : 0;
    joules += watts * 60 * found.tasks.project.tasks[i].minutes;
  }
  const Json& boiler = asked.boiler.answer;
  if (boiler.is_null())
    return {{"steam_minutes", asked.steam_minutes},
            {"refills", nullptr},
            {"water_kilograms", nullptr},
            {"waiting_minutes", nullptr},
            {"energy_joules", joules},
            {"text", say("Tank and water of the steamer are not on record: pauses and refills are not in the "
                         "timetable.")}};
  return {{"steam_minutes", asked.steam_minutes},
          {"refills", boiler.at("refills")},
          {"water_kilograms", boiler.at("water_kilograms")},
          {"waiting_minutes", boiler.at("waiting_minutes")},
          {"energy_joules", joules + number_of(boiler, "energy_joules")},
          {"text", say("{:.0f} minutes of steam, {:.1f} kg of water, {} refills, {:.0f} minutes in which the "
                       "boiler gives no steam. Never open a hot boiler.",
                       asked.steam_minutes, number_of(boiler, "water_kilograms"),
                       boiler.at("refills").get<int>(), number_of(boiler, "waiting_minutes"))}};
}

Result<Answer> solve(const Json& request) {
  const auto asked = read_visit(request);
  if (!asked) return refuse(asked.error());
  const auto likely = timed(asked->visit, visits::Spread::likely);
  if (!likely) return refuse(likely.error());
  const auto low = timed(asked->visit, visits::Spread::low);
  if (!low) return refuse(low.error());
  const auto high = timed(asked->visit, visits::Spread::high);
  if (!high) return refuse(high.error());
  const int minutes = likely->schedule.makespan;
  Answer answer;
  Json& out = answer.result;
  out["minutes"] = minutes;
  out["range_minutes"] = {std::min(low->schedule.makespan, minutes),
                          std::max(high->schedule.makespan, minutes)};
  out["shortest_possible_minutes"] = likely->schedule.lower_bound;
  const auto there_are = number_if(request, "minutes");
  out["fits"] = there_are ? Json(minutes <= *there_are) : Json(nullptr);
  add_tasks(asked->visit, *likely, out);
  out["sleep"] = sleep_answer(request, asked->visit, *likely);
  out["in_minutes_left"] = minutes_left_answer(request);
  out["load"] = load_answer(asked->visit, *likely);
  out["water"] = water_of(*asked, *likely);
  out["quote"] = quote_answer(request, low->schedule.makespan, minutes, high->schedule.makespan);
  out["text"] = say("{} minutes with {}, {} to {} as things go{}.", minutes, people_words(asked->visit.crew),
                    out["range_minutes"][0].get<int>(), out["range_minutes"][1].get<int>(),
                    !there_are              ? ""
                    : minutes <= *there_are ? say("; it fits")
                                            : say("; it does not fit into the time there is"));
  if (asked->visit.circuits.empty())
    answer.warnings.push_back(
        {"circuits_not_recorded",
         say("no circuit is on record: find breaker and outlets before anything is plugged in")});
  if (asked->boiler.answer.is_null())
    answer.warnings.push_back(
        {"boiler_not_known", say("without tank and water of the steamer its pauses and refills "
                                 "are not counted")});
  if (asked->visit.crew == 1)
    answer.warnings.push_back(
        {"works_alone", say("one person alone: somebody knows where and until when; nothing "
                            "heavy is lifted or turned")});
  answer.warnings.push_back(
      {"judged_minutes", say("minutes beside steaming are judgements with ranges, not measured")});
  answer.data_keys = {std::string(visits::k_task_minutes_data_key)};
  return answer;
}

}  // namespace

const Question& visit_question() {
  static const Question question{"visit",
                                 "The timetable of a visit: who does what when and why it waits, can they "
                                 "sleep in it tonight, what matters "
                                 "most in the minutes left, load of the circuits, water, and a quote.",
                                 visit_request_shape(), answer_shape(), solve};
  return question;
}

}  // namespace lastegg
