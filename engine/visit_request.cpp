#include "engine/visit_request.h"

#include <algorithm>

#include "engine/questions/questions.h"
#include "engine/request_values.h"

namespace lastegg {

using namespace shape;

namespace {

constexpr int k_most_crew = 4;

Shape item_shape() {
  const Shape steam = object(
      {with_default("minutes",
                    number(Unit::minute, "of steaming on edges in sight").at_least(0).at_most(1440), 0),
       with_default("edges", integer("how many they are").at_least(0).at_most(10000), 0),
       with_default("hidden_minutes",
                    number(Unit::minute, "on edges that show only when it is turned or opened")
                        .at_least(0)
                        .at_most(1440),
                    0),
       with_default("hidden_edges", integer("how many they are").at_least(0).at_most(10000), 0),
       with_default("edges_without_pace", integer("edges that steam cannot treat").at_least(0), 0)},
      "from the question plan");
  return object(
      {optional("id", text("name of the item")), field("title", text("what people call it")),
       with_default("room", text("its room"), ""),
       optional("method", text("a word of the question method; nothing is done if left out")),
       with_default("bed", flag("somebody sleeps in it, or it carries the bed"), false),
       with_default("turns", flag("two people turn it over"), false),
       with_default("dismantles", flag("it is taken apart, cushions or slats"), false),
       with_default("legs", flag("it has legs that go into leg traps"), false),
       with_default("encased", flag("a cover goes on afterwards"), false),
       with_default("dust_cover", flag("it has a dust cover underneath"), false),
       with_default("dust_cover_consent", flag("the client lets it be opened"), false),
       with_default("dismantle_consent", flag("the client lets it be taken apart"), true),
       with_default("hands_minutes", number(Unit::minute, "of other methods").at_least(0).at_most(1440), 0),
       with_default("clock_minutes", number(Unit::minute, "of other methods").at_least(0).at_most(20160), 0),
       optional("steam", steam),
       optional("dry_minutes",
                list(number(Unit::minute, "until dry to the touch").at_least(0).at_most(2880), "low, high")
                    .items(2, 2))},
      "one item with its method");
}

Shape circuit_shape() {
  return object({field("title", text("what people call it")), with_default("room", text("its room"), ""),
                 with_default("volts", number(Unit::volt, "nominal").at_least(90).at_most(500), 120),
                 field("breaker_amperes", number(Unit::ampere, "of the breaker").at_least(1).at_most(200)),
                 with_default("other_load_watts",
                              number(Unit::watt, "of what else runs").at_least(0).at_most(50000), 0)},
                "one circuit");
}

// The steamer as the question boiler takes it, without the work.
Shape steamer_shape() {
  std::vector<Field> fields;
  for (const Field& asked : boiler_question().request.fields) {
    if (asked.key == "steam_minutes" || asked.key == "length_metres" ||
        asked.key == "pace_metres_per_second" || asked.key == "towelled_head")
      continue;
    Field copy = asked;
    if (copy.key == "tank" || copy.key == "water_kilograms") copy.required = false;
    fields.push_back(std::move(copy));
  }
  return object(
      std::move(fields),
      "the steamer, as the question boiler takes it; without tank and water its pauses are not known");
}

visits::Work read_work(const Json& item) {
  visits::Work work;
  const auto flag_of = [&](const char* key) { return item.at(key).get<bool>(); };
  work.title = text_of(item, "title");
  work.room = text_of(item, "room");
  work.method = text_if(item, "method").value_or("");
  work.bed = flag_of("bed");
  work.turns = flag_of("turns");
  work.dismantles = flag_of("dismantles");
  work.legs = flag_of("legs");
  work.encased = flag_of("encased") || work.method == "encase";
  work.dust_cover = flag_of("dust_cover");
  work.dust_cover_consent = flag_of("dust_cover_consent");
  work.dismantle_consent = flag_of("dismantle_consent");
  work.hands_minutes = number_of(item, "hands_minutes");
  work.clock_minutes = number_of(item, "clock_minutes");
  if (const Json* steam = member_if(item, "steam"); steam != nullptr && work.method == "steam") {
    work.steam_minutes = number_of(*steam, "minutes");
    work.hidden_steam_minutes = number_of(*steam, "hidden_minutes");
    work.edges = steam->at("edges").get<int>();
    work.hidden_edges = steam->at("hidden_edges").get<int>();
  }
  if (const Json* dry = member_if(item, "dry_minutes"))
    work.dry_minutes = {(*dry)[0].get<double>(), (*dry)[1].get<double>()};
  return work;
}

/// Heating up, short pauses and refills out of the boiler's own timetable.
Result<BoilerPart> boiler_part(const Json& request, double steam_minutes) {
  BoilerPart part;
  const Json* asked = member_if(request, "steamer");
  if (asked == nullptr) return part;
  if (const auto watts = number_if(*asked, "power_watts")) part.steamer.watts = *watts;
  if (!has(*asked, "tank") || !has(*asked, "water_kilograms") || steam_minutes < 0.1) return part;
  Json question = *asked;
  question["steam_minutes"] = steam_minutes;
  auto read_question = read(boiler_question().request, question, "/steamer");
  if (!read_question) return refuse(read_question.error());
  auto answer = boiler_question().solve(*read_question);
  if (!answer) {
    Error error = answer.error();
    error.where = "/steamer" + error.where;
    return refuse(error);
  }
  part.answer = std::move(answer->result);
  double steam = 0, working = 0;
  part.steamer.heat_up_minutes = 0;
  for (const Json& phase : part.answer.at("phases")) {
    const std::string kind = text_of(phase, "kind");
    const double minutes = number_of(phase, "minutes");
    if (kind == "heat_up" && steam == 0 && working == 0) {
      part.steamer.heat_up_minutes += minutes;
    } else if (kind == "cool" || kind == "refill" || kind == "heat_up") {
      if (!part.steamer.pauses.empty() && part.steamer.pauses.back().after_steam_minutes == steam)
        part.steamer.pauses.back().minutes += minutes;
      else
        part.steamer.pauses.push_back({steam, minutes});
    } else {
      working += minutes;
      steam += number_of(phase, "steam_minutes");
    }
  }
  // The plan's minutes are of the head on the edge with steam; the time between edges is counted apart, so of
  // the boiler's time only what it adds beyond the trigger's share stretches them.
  if (steam > 0) part.steamer.stretch = std::max(1.0, working * number_of(*asked, "trigger_share") / steam);
  return part;
}

}  // namespace

Shape visit_request_shape() {
  const Shape load =
      object({field("title", text("what it is")), with_default("room", text("where it comes from"), ""),
              with_default("minutes", number(Unit::minute, "of the drum").at_least(5).at_most(600), 40),
              with_default("bedding", flag("the bed waits for it"), false)},
             "one load");
  const Shape edge =
      object({field("item", text("title of its item")), optional("item_id", text("of its item")),
              optional("id", text("of the edge")), field("title", text("name of the edge")),
              field("seconds", number(Unit::second, "of steaming").above(0).at_most(86400)),
              field("bug_share", ratio("of all bugs, from the question plan").at_least(0).at_most(1)),
              field("killed_share_per_minute", ratio("from the question plan").at_least(0))},
             "one edge with a pace");
  std::vector<Field> fields{
      with_default("crew", integer("people who work").at_least(1).at_most(k_most_crew), 1),
      optional("minutes", number(Unit::minute, "time there is").at_least(1).at_most(1440)),
      field("items", list(item_shape(), "in the order of steaming").items(1, 100)),
      with_default("machines", integer("steamers, all alike").at_least(0).at_most(4), 1),
      optional("steamer", steamer_shape()),
      with_default("vacuums", integer("vacuum cleaners").at_least(0).at_most(4), 1),
      optional("vacuum_watts", number(Unit::watt, "of one").at_least(100).at_most(5000)),
      with_default("heater_watts", number(Unit::watt, "of the heater of a tent").at_least(200).at_most(12000),
                   1500),
      with_default("dryers", integer("dryers that may be used").at_least(0).at_most(10), 1),
      with_default("loads", list(load, "laundry").items(0, 40), Json::array()),
      with_default("circuits", list(circuit_shape(), "circuits of the home").items(0, 40), Json::array()),
      with_default(
          "waits_for_bed",
          flag("the crew stays until the bed is dry, covered and put back; else the people of the home "
               "do that"),
          true),
      optional("minutes_left", number(Unit::minute, "time left for steaming").at_least(0).at_most(1440)),
      optional("edges", list(edge, "edges with a pace, for minutes_left").items(0, 4000)),
      optional(
          "rates",
          object({field("currency", text("ISO 4217, such as USD")),
                  with_default("per_visit", ratio("for coming at all").at_least(0).at_most(1e6), 0),
                  with_default("per_hour", ratio("for an hour of one person").at_least(0).at_most(1e6), 0)},
                 "what the firm asks"))};
  return object(std::move(fields), "a visit: items with methods, people, machines, circuits, time");
}

Result<VisitRequest> read_visit(const Json& request) {
  VisitRequest out;
  visits::Visit& visit = out.visit;
  visit.crew = request.at("crew").get<int>();
  visit.machines = request.at("machines").get<int>();
  visit.vacuums = request.at("vacuums").get<int>();
  visit.dryers = request.at("dryers").get<int>();
  visit.waits_for_bed = request.at("waits_for_bed").get<bool>();
  visit.heater_watts = number_of(request, "heater_watts");
  if (const auto watts = number_if(request, "vacuum_watts")) visit.vacuum_watts = *watts;
  for (const Json& circuit : request.at("circuits"))
    visit.circuits.push_back({text_of(circuit, "title"), text_of(circuit, "room"),
                              number_of(circuit, "volts"), number_of(circuit, "breaker_amperes"),
                              number_of(circuit, "other_load_watts")});
  for (const Json& load : request.at("loads"))
    visit.loads.push_back({text_of(load, "title"), text_of(load, "room"), number_of(load, "minutes"),
                           load.at("bedding").get<bool>()});
  for (const Json& item : request.at("items")) visit.work.push_back(read_work(item));
  if (const Json* steamer = member_if(request, "steamer"))
    if (const auto watts = number_if(*steamer, "power_watts")) visit.steamer.watts = *watts;
  // Only what is steamed draws on the tank: undersides may be left out for want of a second person.
  const auto tasks = visits::tasks_of(visit, visits::Spread::likely);
  if (!tasks) return refuse(tasks.error());
  for (const visits::TaskNote& note : tasks->notes) {
    if (note.kind == "steam") out.steam_minutes += visit.work[*note.item].steam_minutes;
    if (note.kind == "steam_hidden") out.steam_minutes += visit.work[*note.item].hidden_steam_minutes;
  }
  auto boiler = boiler_part(request, out.steam_minutes);
  if (!boiler) return refuse(boiler.error());
  out.boiler = std::move(*boiler);
  visit.steamer = out.boiler.steamer;
  return out;
}

}  // namespace lastegg
