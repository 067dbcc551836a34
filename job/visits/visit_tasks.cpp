#include "job/visits/visit_tasks.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "job/visits/task_minutes.h"

namespace lastegg::visits {
namespace {

using Index = std::size_t;

constexpr double k_seconds_per_minute = 60;

int whole(double minutes) {
  return static_cast<int>(std::ceil(minutes - 1e-9));
}

/// A mattress, which is lifted off before its base or frame is worked on.
bool lies_on_a_frame(const Work& work) {
  return work.bed && work.turns && !work.legs;
}

class Builder {
 public:
  Builder(const Visit& visit, const TaskMinutes& minutes, Spread spread)
      : visit_(visit), minutes_(minutes), spread_(spread) {
    out_.project.resources = {{"people", static_cast<double>(visit.crew)},
                              {"steamers", static_cast<double>(visit.machines)},
                              {"vacuums", static_cast<double>(visit.vacuums)},
                              {"dryers", static_cast<double>(visit.dryers)}};
    for (const Circuit& circuit : visit.circuits)
      out_.project.resources.push_back({circuit.title, circuit.free_amperes()});
  }

  Tasks build();

 private:
  Index add(TaskNote note, double minutes, std::vector<Index> after, std::vector<Need> needs = {},
            bool tail = false) {
    if (note.people > 0) needs.push_back({k_people, static_cast<double>(note.people)});
    if (note.circuit) needs.push_back({k_first_circuit + *note.circuit, note.amperes});
    std::sort(after.begin(), after.end());
    after.erase(std::unique(after.begin(), after.end()), after.end());
    out_.project.tasks.push_back({whole(minutes), std::move(after), std::move(needs), tail});
    out_.notes.push_back(std::move(note));
    return out_.notes.size() - 1;
  }

  double usual(const char* task) const { return at(minutes_.tasks.at(task), spread_); }

  TaskNote note(const char* kind, std::optional<Index> item, int people) const {
    TaskNote out;
    out.kind = kind;
    out.item = item;
    out.people = people;
    if (item) out.subject = visit_.work[*item].title;
    return out;
  }

  /// Puts a device on a circuit: of the room if that carries it, else the one with most to spare. False:
  /// none does.
  bool plug_in(TaskNote& task, const char* device, double watts, const std::string& room, Index item) {
    task.device = device;
    if (visit_.circuits.empty()) return true;
    std::optional<Index> best;
    bool best_here = false;
    double best_spare = -1, least = 0, limit = 0;
    for (Index i = 0; i < visit_.circuits.size(); ++i) {
      const Circuit& circuit = visit_.circuits[i];
      const double amperes = watts / circuit.volts;
      const double spare = circuit.free_amperes() - amperes;
      if (i == 0 || circuit.free_amperes() > limit) {
        limit = circuit.free_amperes();
        least = amperes;
      }
      const bool here = !room.empty() && circuit.room == room;
      if (spare < -k_capacity_tolerance) continue;
      if (best && (best_here || !here) && (best_here != here || spare <= best_spare)) continue;
      best = i;
      best_here = here;
      best_spare = spare;
    }
    if (!best) {
      out_.left_out.push_back({"no_circuit", item, task.kind, least, limit});
      return false;
    }
    task.circuit = best;
    task.amperes = watts / visit_.circuits[*best].volts;
    task.cord_from_other_room = !room.empty() && !visit_.circuits[*best].room.empty() && !best_here;
    return true;
  }

  /// Minutes on the clock for so much steam, with the refills that fall into it.
  double steaming(double steam_minutes, int edges) {
    const double spread = at(minutes_.numbers.at("steam_spread"), spread_);
    double clock =
        steam_minutes * spread * visit_.steamer.stretch + edges * usual("edge_change") / k_seconds_per_minute;
    const double before = steamed_;
    steamed_ += steam_minutes;
    for (const Pause& pause : visit_.steamer.pauses)
      if (pause.after_steam_minutes > before && pause.after_steam_minutes <= steamed_) clock += pause.minutes;
    return clock;
  }

  std::optional<Index> add_steam(const char* kind, Index item, double minutes, int edges,
                                 std::vector<Index> after) {
    TaskNote task = note(kind, item, 1);
    if (minutes <= 0) return std::nullopt;
    if (visit_.machines == 0) {
      out_.left_out.push_back({"no_machine", item, kind, 0, 0});
      return std::nullopt;
    }
    if (!plug_in(task, "steamer", visit_.steamer.watts, visit_.work[item].room, item)) return std::nullopt;
    after.push_back(hot_);
    return add(std::move(task), steaming(minutes, edges), std::move(after), {{k_machines, 1}});
  }

  void add_item(Index item);
  void add_steamed(Index item, Index begin);
  void add_chamber(Index item, Index begin);
  void finish_item(Index item, std::vector<Index> treated);
  void add_loads();
  void put_beds_back();

  const Visit& visit_;
  const TaskMinutes& minutes_;
  Spread spread_;
  Tasks out_;
  Index arrived_ = 0, hot_ = 0;
  double steamed_ = 0;
  std::map<std::string, std::vector<Index>> lifted_;     // by room: what lay on the bed's frame is treated
  std::map<std::string, Index> stripped_;                // by room
  std::map<std::string, std::vector<Index>> room_ends_;  // last tasks with hands, by room
  std::map<std::string, std::vector<Index>> bed_ends_;   // what the bed of the room waits for besides
  std::vector<Index> ends_;                              // what handing over waits for
};

void Builder::add_chamber(Index item, Index begin) {
  const Work& work = visit_.work[item];
  TaskNote hold = note("hold", item, 0);
  if (!plug_in(hold, "heater", visit_.heater_watts, work.room, item)) return;
  const Index set = add(note("chamber_setting", item, 1), usual("chamber_setting"), {begin});
  const Index held = add(std::move(hold), work.clock_minutes, {set});
  finish_item(item, {add(note("chamber_clearing", item, 1), usual("chamber_clearing"), {held})});
}

void Builder::add_steamed(Index item, Index begin) {
  const Work& work = visit_.work[item];
  Index last = begin;
  bool reaches_hidden = true;
  if (work.dismantles) {
    if (work.dismantle_consent)
      last = add(note("dismantle", item, 1), usual("dismantle"), {last});
    else
      out_.left_out.push_back({"no_consent", item, "dismantle", 0, 0});
  }
  if (const auto steam = add_steam("steam", item, work.steam_minutes, work.edges, {last})) last = *steam;
  if (work.hidden_steam_minutes > 0 && work.turns) {
    if (visit_.crew < 2) {
      out_.left_out.push_back({"no_second_person", item, "turn", 0, 0});
      reaches_hidden = false;
    } else {
      last = add(note("turn", item, 2), usual("turn"), {last});
    }
  }
  if (work.dust_cover && reaches_hidden) {
    if (work.dust_cover_consent)
      last = add(note("open_cover", item, 1), usual("open_cover"), {last});
    else
      out_.left_out.push_back({"no_consent", item, "open_cover", 0, 0});
  }
  if (reaches_hidden)
    if (const auto steam =
            add_steam("steam_hidden", item, work.hidden_steam_minutes, work.hidden_edges, {last}))
      last = *steam;
  finish_item(item, {last});
}

void Builder::finish_item(Index item, std::vector<Index> treated) {
  const Work& work = visit_.work[item];
  Index last = treated.back();
  ends_.push_back(last);
  if (lies_on_a_frame(work)) lifted_[work.room].push_back(last);
  const bool bed_waits = work.bed && visit_.waits_for_bed;
  if (work.method == "steam" && work.dry_minutes) {
    const double dry = spread_ == Spread::low ? work.dry_minutes->first : work.dry_minutes->second;
    const bool waited_for = bed_waits || work.encased;
    if (waited_for && visit_.waits_for_bed)
      last = add(note("dry", item, 0), dry, {last});
    else
      add(note("dry", item, 0), dry, {last}, {}, true);
  }
  if (work.encased && visit_.waits_for_bed) {
    last = add(note("encase", item, 1), usual("encase"), {last});
    ends_.push_back(last);
  }
  if (work.legs && (work.bed || work.method == "isolate")) {
    last = add(note("isolate", item, 1), usual("isolate"), {last});
    ends_.push_back(last);
  }
  (work.bed ? bed_ends_ : room_ends_)[work.room].push_back(last);
}

void Builder::add_item(Index item) {
  const Work& work = visit_.work[item];
  if (work.method.empty()) {
    out_.left_out.push_back({"no_method", item, "treat", 0, 0});
    return;
  }
  if (work.method == "hot_room") {
    out_.left_out.push_back({"other_visit", item, "hot_room", 0, 0});
    return;
  }
  Index begin = arrived_;
  if (work.bed)
    if (const auto strip = stripped_.find(work.room); strip != stripped_.end()) begin = strip->second;
  std::vector<Index> before{begin};
  if (work.bed && work.legs) {  // what lies on it is lifted off first
    const std::vector<Index>& lifted = lifted_[work.room];
    before.insert(before.end(), lifted.begin(), lifted.end());
  }
  TaskNote vacuum = note("vacuum", item, 1);
  if (visit_.vacuums > 0 && plug_in(vacuum, "vacuum", visit_.vacuum_watts, work.room, item))
    begin = add(std::move(vacuum), usual("vacuum"), before, {{k_vacuums, 1}});
  else if (visit_.vacuums == 0)
    out_.left_out.push_back({"no_vacuum", item, "vacuum", 0, 0});
  if (work.method == "steam") {
    add_steamed(item, begin);
  } else if (work.method == "hot_chamber") {
    add_chamber(item, begin);
  } else if (work.method == "discard") {
    if (visit_.crew < 2) {
      out_.left_out.push_back({"no_second_person", item, "discard", 0, 0});
      return;
    }
    ends_.push_back(add(note("discard", item, 2), usual("discard"), {begin}));
  } else if (work.method == "dryer" || work.method == "wash") {
    const Index carry = add(note("carry_load", item, 1), usual("carry_load"), {begin});
    TaskNote drum = note("load", item, 0);
    drum.device = "dryer";
    const Index load = add(std::move(drum), work.clock_minutes, {carry}, {{k_dryers, 1}});
    finish_item(item, {add(note("fold_load", item, 1), usual("fold_load"), {load})});
  } else if (work.method == "freezer") {
    finish_item(item, {add(note("bag", item, 1), work.hands_minutes, {begin})});
  } else {  // vacuum, encase, isolate: what finish_item adds
    finish_item(item, {begin});
  }
}

void Builder::add_loads() {
  for (const Load& load : visit_.loads) {
    if (visit_.dryers == 0) {
      out_.left_out.push_back({"no_dryer", 0, "load", 0, 0});
      return;
    }
    const auto named = [&](const char* kind, int people) {
      TaskNote out = note(kind, std::nullopt, people);
      out.subject = load.title;
      return out;
    };
    const auto strip = stripped_.find(load.room);
    const Index begin = load.bedding && strip != stripped_.end() ? strip->second : arrived_;
    const Index carry = add(named("carry_load", 1), usual("carry_load"), {begin});
    TaskNote drum = named("load", 0);
    drum.device = "dryer";
    const Index hot = add(std::move(drum), load.minutes, {carry}, {{k_dryers, 1}});
    const Index clean = add(named("fold_load", 1), usual("fold_load"), {hot});
    ends_.push_back(clean);
    if (load.bedding) bed_ends_[load.room].push_back(clean);
  }
}

void Builder::put_beds_back() {
  if (!visit_.waits_for_bed) return;
  for (const auto& [room, strip] : stripped_) {
    std::vector<Index> after = bed_ends_[room];
    after.insert(after.end(), room_ends_[room].begin(), room_ends_[room].end());
    after.push_back(strip);
    TaskNote task = note("put_back", std::nullopt, 1);
    task.subject = room;
    ends_.push_back(add(std::move(task), usual("put_back"), std::move(after)));
  }
}

Tasks Builder::build() {
  arrived_ = add(note("arrive", std::nullopt, 1), usual("arrive"), {});
  const bool steams = std::any_of(visit_.work.begin(), visit_.work.end(),
                                  [](const Work& work) { return work.method == "steam"; });
  hot_ = arrived_;
  if (steams && visit_.machines > 0) {
    TaskNote heat = note("heat_up", std::nullopt, 0);
    const Index checked = add(note("start_check", std::nullopt, 1), usual("start_check"), {arrived_});
    if (plug_in(heat, "steamer", visit_.steamer.watts, "", 0)) {
      hot_ = add(std::move(heat), visit_.steamer.heat_up_minutes, {checked},
                 {{k_machines, static_cast<double>(visit_.machines)}});
    } else {
      out_.left_out.clear();  // every item will say so itself
      hot_ = checked;
    }
  }
  for (Index i = 0; i < visit_.work.size(); ++i) {
    const Work& work = visit_.work[i];
    if (!work.bed || stripped_.contains(work.room)) continue;
    TaskNote task = note("strip", std::nullopt, 1);
    task.subject = work.room;
    stripped_[work.room] = add(std::move(task), usual("strip"), {arrived_});
  }
  add_loads();
  for (const bool on_top : {true, false})
    for (Index i = 0; i < visit_.work.size(); ++i)
      if (lies_on_a_frame(visit_.work[i]) == on_top) add_item(i);
  put_beds_back();
  ends_.push_back(hot_);
  add(note("hand_over", std::nullopt, 1), usual("hand_over"), ends_);
  return std::move(out_);
}

}  // namespace

double Circuit::free_amperes() const {
  const double share = task_minutes() ? task_minutes()->numbers.at("continuous_share").value : 0;
  return std::max(0.0, share * breaker_amperes - other_watts / volts);
}

Result<Tasks> tasks_of(const Visit& visit, Spread spread) {
  if (!task_minutes()) return refuse(task_minutes().error());
  return Builder(visit, *task_minutes(), spread).build();
}

std::vector<std::vector<int>> persons(const Visit& visit, const Tasks& tasks, const Schedule& schedule) {
  std::vector<std::vector<int>> out(tasks.notes.size());
  std::vector<Index> order(tasks.notes.size());
  for (Index i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(),
                   [&](Index a, Index b) { return schedule.start[a] < schedule.start[b]; });
  std::vector<int> free_at(static_cast<std::size_t>(visit.crew), 0);
  std::vector<std::string> last(static_cast<std::size_t>(visit.crew));
  for (const Index task : order) {
    for (int need = 0; need < tasks.notes[task].people; ++need) {
      int best = -1;
      for (int person = 0; person < visit.crew; ++person) {
        const auto p = static_cast<std::size_t>(person);
        if (free_at[p] > schedule.start[task]) continue;
        const bool same = !tasks.notes[task].subject.empty() && last[p] == tasks.notes[task].subject;
        if (best < 0 || same) best = person;
        if (same) break;
      }
      if (best < 0) break;  // cannot be while people are a resource
      const auto p = static_cast<std::size_t>(best);
      free_at[p] = schedule.start[task] + tasks.project.tasks[task].minutes;
      last[p] = tasks.notes[task].subject;
      out[task].push_back(best + 1);
    }
    std::sort(out[task].begin(), out[task].end());
  }
  return out;
}

std::vector<Wait> waits(const Tasks& tasks, const Schedule& schedule) {
  constexpr const char* k_codes[] = {"people", "machine", "vacuum", "dryer", "circuit"};
  const auto& project = tasks.project;
  std::vector<Wait> out(tasks.notes.size());
  const auto end_of = [&](Index task) { return schedule.start[task] + project.tasks[task].minutes; };
  for (Index i = 0; i < out.size(); ++i) {
    out[i].code = "none";
    if (schedule.start[i] == 0) continue;
    for (const Index before : project.tasks[i].after)
      if (end_of(before) == schedule.start[i]) out[i] = {"after", before};
    if (out[i].code == "after") continue;
    // What was short in the minute before: a task that ends now and shares a resource with this one.
    for (const Need& need : project.tasks[i].needs) {
      double used = need.amount;
      std::optional<Index> blocks;
      for (Index k = 0; k < out.size(); ++k) {
        if (k == i || schedule.start[k] >= schedule.start[i] || end_of(k) < schedule.start[i]) continue;
        for (const Need& other : project.tasks[k].needs)
          if (other.resource == need.resource) {
            used += other.amount;
            if (end_of(k) == schedule.start[i]) blocks = k;
          }
      }
      if (!blocks || used <= project.resources[need.resource].capacity + k_capacity_tolerance) continue;
      out[i] = {k_codes[std::min<Index>(need.resource, k_first_circuit)], blocks};
    }
  }
  return out;
}

}  // namespace lastegg::visits
