#include "engine/treated_from_job.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "engine/ask.h"
#include "engine/edge_problem.h"
#include "engine/job_requests.h"
#include "engine/questions/questions.h"
#include "engine/request_values.h"
#include "engine/treated_basis.h"
#include "engine/treated_passes.h"
#include "engine/treated_states.h"
#include "job/record/sha256.h"
#include "words/say.h"

namespace lastegg {
namespace {

std::string text_in(const Json& one, const char* key) {
  const Json* found = one.is_object() ? member_if(one, key) : nullptr;
  return found != nullptr && found->is_string() ? found->get<std::string>() : std::string();
}

const Json& list_in(const Json& state, const char* list) {
  static const Json none = Json::array();
  const Json* found = member_if(state, list);
  return found != nullptr && found->is_array() ? *found : none;
}

Result<Json> asked(const Question& question, const Json& request) {
  const auto read_request = read(question.request, request);
  if (!read_request) return refuse(read_request.error());
  const auto answer = question.solve(*read_request);
  if (!answer) return refuse(answer.error());
  return answer->result;
}

// The method that was chosen for an item; empty where nobody chose one.
std::string method_of(const Json& state, const std::string& item) {
  for (const Json& choice : list_in(state, "methods")) {
    if (text_in(choice, "item") == item) return text_in(choice, "method");
  }
  return "";
}

std::string room_title(const Json& state, const Json& item) {
  for (const Json& room : list_in(state, "rooms")) {
    if (text_in(room, "id") == text_in(item, "room")) return text_in(room, "title");
  }
  return "";
}

class Job {
 public:
  explicit Job(const TreatedJobQuestion& question)
      : question_(question), bases_(question.state, question.samples), known_(question.known) {}

  Result<Json> item(const Json& item);
  const std::set<std::string>& warned() const { return warned_; }

 private:
  Result<Json> edge(const Json& item, const Json& edge, const std::string& method);
  Result<std::optional<Json>> best_answer(const Json& edge, const EdgeRecord& record, bool& is_contested,
                                          std::string& refusal);
  Result<Json> judged(const TreatedBases::Basis& basis, const Json& edge, const std::vector<Json>& passes,
                      const std::vector<Json>& spot_readings);
  bool contested(const std::string& id) const { return !id.empty() && question_.contested.count(id) > 0; }
  bool contested(const std::vector<Json>& entries) const {
    return std::any_of(entries.begin(), entries.end(),
                       [&](const Json& one) { return contested(text_in(one, "id")); });
  }

  const TreatedJobQuestion& question_;
  TreatedBases bases_;
  std::map<std::string, Json> known_;  // hash of what was asked -> what is kept of the answer
  std::set<std::string> warned_;
};

// Readings of the surface as the question takes them: one statement each, and the gun says more than the
// palm.
Json readings_of(const std::vector<Json>& spot_readings) {
  Json rows = Json::array();
  for (const Json& reading : spot_readings) {
    Json row;
    for (const char* part : {"gun_celsius", "palm", "seconds_after", "at_metres"}) {
      if (const Json* told = member_if(reading, part)) row[part] = *told;
    }
    if (row.contains("gun_celsius")) row.erase("palm");
    rows.push_back(std::move(row));
  }
  return rows;
}

// What as_treated says of passes on a basis, as the job keeps it. What was asked before is not asked again.
Result<Json> Job::judged(const TreatedBases::Basis& basis, const Json& edge, const std::vector<Json>& passes,
                         const std::vector<Json>& spot_readings) {
  Json request{{"edge", edge.at("treat")}, {"length_metres", edge.at("length_metres")}, {"passes", passes}};
  const Json readings = readings_of(spot_readings);
  Json identity{{"basis", bases_.identity(basis)},
                {"request", request},
                {"readings", readings},
                {"samples", question_.samples},
                {"engine", LASTEGG_VERSION}};
  // What is kept holds sentences: those of another language are no answer to this question.
  if (language_in_force() != Language::american) identity["language"] = tag_of(language_in_force());
  const std::string key = record::sha256_hex(dumped(identity));
  if (const auto found = known_.find(key); found != known_.end()) return found->second;
  const auto kit = bases_.kit(basis);
  if (!kit) return refuse(kit.error());
  request.update(*kit);
  std::optional<Json> answer;
  if (!readings.empty()) {
    Json with = request;
    with["spot_readings"] = readings;
    const auto informed = asked(as_treated_question(), with);
    if (informed)
      answer = *informed;
    else
      warned_.insert("readings_not_placed");
  }
  if (!answer) {
    const auto plain = asked(as_treated_question(), request);
    if (!plain) return refuse(plain.error());
    answer = *plain;
  }
  known_[key] = modelled_json(*answer, key);
  return known_[key];
}

// The best of the answers for the strokes of each basis; none where nothing was passed or every record was
// refused.
Result<std::optional<Json>> Job::best_answer(const Json& edge, const EdgeRecord& record, bool& is_contested,
                                             std::string& refusal) {
  std::map<std::string, std::vector<Json>> groups;
  std::map<std::string, TreatedBases::Basis> bases;
  for (const Json& stroke : record.strokes) {
    const TreatedBases::Basis basis = bases_.of(stroke);
    groups[basis.key].push_back(stroke);
    bases[basis.key] = basis;
  }
  std::optional<Json> best;
  for (const auto& [key, strokes] : groups) {
    const auto answer = judged(bases[key], edge,
                               passes_of(strokes, record, question_.state, number_of(edge, "length_metres")),
                               record.spot_readings);
    if (!answer) {
      refusal = answer.error().message;
      continue;
    }
    for (const std::string& id : bases[key].uses) is_contested = is_contested || contested(id);
    if (!best || better_treated(*answer, *best)) best = *answer;
  }
  return best;
}

Result<Json> Job::edge(const Json& item, const Json& edge, const std::string& method) {
  const std::string name = text_in(edge, "id");
  const EdgeRecord record = record_of_edge(question_.state, text_in(item, "id"), name);
  Json row{{"id", name},
           {"title", edge.at("title")},
           {"part", edge.at("part")},
           {"kind", edge.at("kind")},
           {"length_metres", edge.at("length_metres")},
           {"in_sight", edge.at("in_sight")}};
  double metres = 0, seconds = 0;
  for (const Json& stroke : record.strokes) {
    metres += number_of(stroke, "length_metres");
    seconds += number_of(stroke, "seconds");
  }
  row["treated"] = {{"passes", record.strokes.size()}, {"metres", metres}, {"seconds", seconds}};
  Json marks = Json::array();
  for (const Json& mark : record.marks) {
    Json one{{"what", mark.at("what")}};
    for (const char* part : {"reason", "at_metres"}) {
      if (const Json* told = member_if(mark, part)) one[part] = *told;
    }
    marks.push_back(std::move(one));
  }
  row["marks"] = std::move(marks);
  row["spot_readings"] = record.spot_readings.size();

  bool is_contested = contested(text_in(item, "id")) || contested(record.strokes) ||
                      contested(record.marks) || contested(record.spot_readings);
  std::string refusal;
  auto best = best_answer(edge, record, is_contested, refusal);
  if (!best) return refuse(best.error());
  row["modelled"] = *best ? **best : Json(nullptr);

  // Whether steam is barred here is a matter of the edge alone, not of any head.
  static const auto usual =
      read(as_treated_question().request, {{"prior", Json::object()},
                                           {"samples", 64},
                                           {"passes", Json::array()},
                                           {"edge", {{"kind", "seam"}, {"covering", "cotton"}}}});
  const auto edge_read = read(edge_shape(), edge.at("treat"), "/edge");
  bool is_barred = false;
  if (usual && edge_read) {
    static const auto basis = read_pace_basis(*usual);
    const auto problem = basis ? read_edge(*basis, *edge_read, read_edge_settings(*usual), "/edge")
                               : Result<EdgeProblem>(refuse(basis.error()));
    is_barred = problem && problem->finish.barred();
  }
  const EdgeFacts facts{.record = record,
                        .modelled = *best,
                        .refusal = refusal,
                        .method = method,
                        .is_barred = is_barred,
                        .is_contested = is_contested};
  add_state(facts, row);
  return row;
}

Result<Json> Job::item(const Json& item) {
  const std::string id = text_in(item, "id"), method = method_of(question_.state, id);
  Json out{{"id", id},
           {"title", text_in(item, "title")},
           {"kind", text_in(item, "kind")},
           {"room", room_title(question_.state, item)},
           {"method", method.empty() ? Json(nullptr) : Json(method)},
           {"furniture", furniture_request_of(item, question_.state)},
           {"edges", Json::array()},
           {"error", nullptr}};
  const auto built = asked(furniture_question(), out["furniture"]);
  if (!built) {
    out["error"] = built.error().message;
    out["counts"] = counts_of(out["edges"]);
    return out;
  }
  for (const Json& one : built->at("edges")) {
    auto row = edge(item, one, method);
    if (!row) return refuse(row.error());
    out["edges"].push_back(std::move(*row));
  }
  out["counts"] = counts_of(out["edges"]);
  return out;
}

}  // namespace

Result<Answer> treated_job(const TreatedJobQuestion& question) {
  Job job(question);
  Answer answer;
  Json& out = answer.result;
  out["items"] = Json::array();
  Json all = Json::array();
  for (const Json& item : list_in(question.state, "items")) {
    if (text_in(item, "id").empty()) continue;
    if (!question.items.empty() && question.items.count(text_in(item, "id")) == 0) continue;
    auto row = job.item(item);
    if (!row) return refuse(row.error());
    for (const Json& edge : row->at("edges")) all.push_back(edge);
    out["items"].push_back(std::move(*row));
  }
  out["counts"] = counts_of(all);
  out["samples"] = question.samples;
  answer.data_keys = {"coverings/1", "damage_limits/1", "edge_kinds/3", "materials/1", "mortality/1"};
  if (job.warned().count("readings_not_placed") > 0)
    answer.warnings.push_back(
        {"readings_not_placed",
         say("a reading of the surface lies where no clear pass went; it was not used")});
  for (const Json& item : out["items"]) {
    if (!item.at("error").is_null())
      answer.warnings.push_back({"item_not_built", fmt::format("{}: {}", item.at("title").get<std::string>(),
                                                               item.at("error").get<std::string>())});
  }
  return answer;
}

}  // namespace lastegg
