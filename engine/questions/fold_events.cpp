// Question `fold_events`: the state of a job from the events of its record.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "engine/ask.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "job/record/fold.h"
#include "job/record/kinds.h"
#include "words/say.h"

namespace lastegg {
namespace {

using namespace shape;
using record::DataField;

Shape id_shape(std::string meaning) {
  return shape::text(std::move(meaning));
}

std::vector<Field> data_fields(const std::vector<DataField>& known);

Shape data_shape(const DataField& known) {
  const std::string meaning(known.text);
  const auto ranged = [&](Shape made) {
    if (std::isfinite(known.least))
      known.least_excluded ? made.above(known.least) : made.at_least(known.least);
    if (std::isfinite(known.most)) made.at_most(known.most);
    return made;
  };
  switch (known.type) {
    case DataField::Type::text:
      return shape::text(meaning);
    case DataField::Type::id:
      return id_shape(meaning);
    case DataField::Type::date:
      return date(meaning);
    case DataField::Type::number:
      return ranged(known.unit == Unit::none ? ratio(meaning) : number(known.unit, meaning));
    case DataField::Type::integer:
      return ranged(integer(meaning));
    case DataField::Type::flag:
      return flag(meaning);
    case DataField::Type::word: {
      std::vector<Choice> choices;
      for (const std::string_view word : known.words)
        choices.push_back({std::string(word), std::string(word)});
      return choice(std::move(choices), meaning);
    }
    case DataField::Type::layers:
      return either({integer("how many"), list(anything("one layer"), "each layer")}, meaning);
    case DataField::Type::object:
      return object(data_fields(known.fields), meaning).allow_more();
    case DataField::Type::list:
      return list(object(data_fields(known.fields), "an entry").allow_more(), meaning);
  }
  return anything(meaning);
}

std::vector<Field> data_fields(const std::vector<DataField>& known) {
  std::vector<Field> fields;
  for (const DataField& one : known) {
    fields.push_back(optional(std::string(one.key), data_shape(one)));
    fields.back().required = one.is_required;
  }
  return fields;
}

// An entity: who and which events, then its data as recorded.
Shape entity_shape(const std::string& kind, std::vector<Field> more = {}) {
  const record::KindRule* rule = record::rule_of(kind);
  std::vector<Field> fields{
      field("id", id_shape("subject of its events")),
      field("event", id_shape("the statement shown; a correction names it")),
      field("events",
            list(id_shape("an event"), "all standing statements about it; several agree or conflict"))};
  for (Field& member : data_fields(rule->fields)) fields.push_back(std::move(member));
  for (Field& member : more) fields.push_back(std::move(member));
  return object(std::move(fields), std::string(rule->text)).allow_more();
}

Shape entities_shape(const std::string& kind, std::string meaning) {
  return list(entity_shape(kind), std::move(meaning));
}

// Lists of things that a technician brings stand together under `kit`.
bool is_equipment(std::string_view list) {
  static constexpr std::array<std::string_view, 6> k_equipment{"machines", "heads",   "towels",
                                                               "probes",   "vacuums", "dryers"};
  return std::find(k_equipment.begin(), k_equipment.end(), list) != k_equipment.end();
}

Shape state_shape() {
  const Shape removed = object(
      {field("kind", shape::text("kind of the entity")),
       field("entity", object({field("id", id_shape("its subject")), field("event", id_shape("as above")),
                               field("events", list(id_shape("an event"), "as above"))},
                              "the entity as it was")
                           .allow_more()),
       field("removed_by", list(id_shape("an event"), "the removals; a correction of each puts it back"))},
      "an entity off the lists");
  std::vector<Field> fields{field("job", entity_shape("job/1").or_null()),
                            field("dwelling", entity_shape("dwelling/1").or_null())};
  std::vector<Field> kit;
  for (const record::KindRule& rule : record::kind_rules()) {
    if (rule.list.empty()) continue;
    std::vector<Field>& place = is_equipment(rule.list) ? kit : fields;
    place.push_back(field(std::string(rule.list), entities_shape(std::string(rule.kind), "by id")));
  }
  fields.push_back(field("kit", object(std::move(kit), "equipment")));
  fields.push_back(
      field("fold_tests",
            list(entity_shape("fold_test/1",
                              {field("readings", entities_shape("reading/1", "of this test, by id"))}),
                 "by id")));
  fields.push_back(
      field("readings_without_test", entities_shape("reading/1", "whose fold test has not arrived")));
  fields.push_back(field("settings", entity_shape("settings/1").or_null()));
  fields.push_back(field("removed", list(removed, "by id, a fold test with its readings")));
  return object(std::move(fields), "what the record says now; dwelling is null unless there is one");
}

Shape answer_shape() {
  const Shape error =
      object({field("kind", shape::text("kind of error")), field("message", shape::text("a sentence")),
              field("where", shape::text("JSON pointer into the event"))},
             "why")
          .allow_more();
  return object(
      {field("state", state_shape()),
       field("conflicts",
             list(object({field("subject", id_shape("the entity")),
                          field("kind", shape::text("kind of the statements")),
                          field("rivals",
                                list(id_shape("an event"), "statements of which none corrects another")),
                          field("values", list(anything("data"), "what each says, in the same order"))},
                         "one open contradiction"),
                  "open contradictions; a verdict must hold for the worst of the values")),
       field("unknown",
             list(object({field("kind", shape::text("kind")), field("count", integer("how many events"))},
                         "a kind of a newer version"),
                  "kept, not read")),
       field("refused", list(object({field("id", id_shape("the event")), field("error", error),
                                     field("settled", flag("a sound correction has replaced it"))},
                                    "an event that does not count"),
                             "kept, not part of the state")),
       field("not_events", list(object({field("where", shape::text("JSON pointer into the request")),
                                        field("error", error)},
                                       "an entry that holds no event"),
                                "cannot be kept in a record")),
       field("event_count", integer("events of the record, refused and unknown ones too")),
       field("state_hash",
             shape::text(
                 "SHA-256 of the lines sorted by id, each with a line feed; equal hash, equal record"))},
      "the job");
}

Json to_json(const record::Entity& entity) {
  Json json = {{"id", entity.id}, {"event", entity.event}, {"events", entity.events}};
  for (const auto& [key, value] : entity.data.items())
    if (!value.is_null() && !json.contains(key)) json[key] = value;
  return json;
}

Json to_json(const std::vector<record::Entity>& entities) {
  Json list = Json::array();
  for (const record::Entity& entity : entities) list.push_back(to_json(entity));
  return list;
}

Json to_json(const std::optional<record::Entity>& entity) {
  return entity ? to_json(*entity) : Json();
}

Json to_json(const record::JobState& state) {
  Json json;
  json["job"] = to_json(state.job);
  json["dwelling"] = to_json(state.dwelling);
  for (const auto& [name, entities] : state.lists)
    (is_equipment(name) ? json["kit"] : json)[std::string(name)] = to_json(entities);
  json["fold_tests"] = Json::array();
  for (const record::FoldTest& test : state.fold_tests) {
    Json entity = to_json(test.test);
    entity["readings"] = to_json(test.readings);
    json["fold_tests"].push_back(std::move(entity));
  }
  json["readings_without_test"] = to_json(state.readings_without_test);
  json["settings"] = to_json(state.settings);
  json["removed"] = Json::array();
  for (const record::Removed& removed : state.removed)
    json["removed"].push_back(
        {{"kind", removed.entity.kind}, {"entity", to_json(removed.entity)}, {"removed_by", removed.by}});
  return json;
}

Json error_json(const Error& error) {
  return error_object(error).at("error");
}

Json to_json(const record::Folded& folded) {
  Json json;
  json["state"] = to_json(folded.state);
  json["conflicts"] = Json::array();
  for (const record::Conflict& conflict : folded.conflicts)
    json["conflicts"].push_back({{"subject", conflict.subject},
                                 {"kind", conflict.kind},
                                 {"rivals", conflict.rivals},
                                 {"values", conflict.values}});
  json["unknown"] = Json::array();
  for (const record::UnknownKind& unknown : folded.unknown)
    json["unknown"].push_back({{"kind", unknown.kind}, {"count", unknown.count}});
  json["refused"] = Json::array();
  for (const record::Refused& refused : folded.refused)
    json["refused"].push_back(
        {{"id", refused.id}, {"error", error_json(refused.error)}, {"settled", refused.settled}});
  return json;
}

Result<Answer> solve(const Json& request) {
  const bool as_lines = has(request, "lines");
  const std::string key = as_lines ? "lines" : "events";
  record::EventSet events;
  Json not_events = Json::array();
  std::size_t index = 0;
  for (const Json& entry : request.at(key)) {
    const Result<record::Added> added =
        events.add(as_lines ? entry.get_ref<const std::string&>() : dumped(entry));
    if (!added)
      not_events.push_back(
          {{"where", fmt::format("/{}/{}", key, index)}, {"error", error_json(added.error())}});
    ++index;
  }
  const record::Folded folded = record::fold(events);
  Answer answer;
  answer.result = to_json(folded);
  answer.result["not_events"] = std::move(not_events);
  answer.result["event_count"] = folded.event_count;
  answer.result["state_hash"] = folded.state_hash;
  if (!as_lines)
    answer.warnings.push_back(
        {"bytes_respelt",
         say("the events came as objects, so the hash is that of their compact spelling; give them "
             "as lines to have it over the bytes as recorded")});
  return answer;
}

}  // namespace

const Question& fold_events_question() {
  static const Question question{
      "fold_events",
      "What the record of a job says now: its state, open contradictions, and what could not be counted.",
      object(
          {optional("lines", list(shape::text("one event, exactly as recorded"), "lines of events.ndjson")),
           optional("events", list(anything("one event"), "events as objects, where bytes do not matter"))},
          "the events of a job, in any order, repeated or not")
          .exactly_one_of({{"lines"}, {"events"}}),
      answer_shape(), solve};
  return question;
}

}  // namespace lastegg
