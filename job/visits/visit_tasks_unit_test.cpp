// From items to tasks: the chain, what is left out, circuits, pauses of the boiler.
#include "job/visits/visit_tasks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "job/visits/task_minutes.h"

namespace lastegg::visits {
namespace {

Visit bedroom(int crew) {
  Visit visit;
  visit.crew = crew;
  Work mattress;
  mattress.title = "mattress";
  mattress.room = "bedroom";
  mattress.method = "steam";
  mattress.bed = mattress.turns = mattress.encased = true;
  mattress.steam_minutes = 30;
  mattress.hidden_steam_minutes = 10;
  mattress.edges = 8;
  mattress.hidden_edges = 8;
  mattress.dry_minutes = {20, 60};
  Work base = mattress;
  base.title = "base";
  base.legs = base.dust_cover = true;
  base.steam_minutes = 0;
  visit.work = {mattress, base};
  visit.loads = {{"bedding", "bedroom", 40, true}};
  return visit;
}

std::optional<std::size_t> find(const Tasks& tasks, std::string_view kind,
                                std::optional<std::size_t> item = {}) {
  for (std::size_t i = 0; i < tasks.notes.size(); ++i)
    if (tasks.notes[i].kind == kind && (!item || tasks.notes[i].item == item)) return i;
  return std::nullopt;
}

bool is_left_out(const Tasks& tasks, std::string_view code, std::string_view what) {
  return std::any_of(tasks.left_out.begin(), tasks.left_out.end(),
                     [&](const LeftOut& one) { return one.code == code && one.what == what; });
}

TEST(VisitTasks, TheBedGoesBackLast) {
  const auto tasks = tasks_of(bedroom(2), Spread::likely);
  ASSERT_TRUE(tasks);
  const auto schedule = visits::schedule(tasks->project, k_people);
  ASSERT_TRUE(schedule);
  const std::size_t back = *find(*tasks, "put_back");
  for (const char* kind : {"fold_load", "encase", "isolate", "dry", "steam_hidden"}) {
    const auto task = find(*tasks, kind);
    ASSERT_TRUE(task) << kind;
    EXPECT_GE(schedule->start[back], schedule->start[*task] + tasks->project.tasks[*task].minutes) << kind;
  }
  EXPECT_EQ(tasks->notes.back().kind, "hand_over");
}

TEST(VisitTasks, TheMattressComesBeforeWhatItLiesOn) {
  Visit visit = bedroom(2);
  std::swap(visit.work[0], visit.work[1]);  // the base is named first
  const auto tasks = tasks_of(visit, Spread::likely);
  const auto schedule = visits::schedule(tasks->project, k_people);
  const std::size_t mattress = *find(*tasks, "steam_hidden", 1), base = *find(*tasks, "vacuum", 0);
  EXPECT_GE(schedule->start[base], schedule->start[mattress] + tasks->project.tasks[mattress].minutes);
}

TEST(VisitTasks, OnePersonTurnsNothing) {
  const auto tasks = tasks_of(bedroom(1), Spread::likely);
  EXPECT_TRUE(is_left_out(*tasks, "no_second_person", "turn"));
  EXPECT_FALSE(find(*tasks, "steam_hidden"));
  EXPECT_FALSE(find(*tasks, "open_cover"));
}

TEST(VisitTasks, TheDustCoverIsOpenedOnlyWithConsent) {
  Visit visit = bedroom(2);
  EXPECT_TRUE(is_left_out(*tasks_of(visit, Spread::likely), "no_consent", "open_cover"));
  visit.work[1].dust_cover_consent = true;
  EXPECT_TRUE(find(*tasks_of(visit, Spread::likely), "open_cover", 1));
}

TEST(VisitTasks, ACircuitAboveEightyPercentIsRefused) {
  Visit visit = bedroom(2);
  visit.steamer.watts = 1500;                             // 12.5 A at 120 V
  visit.circuits = {{"bedroom", "bedroom", 120, 15, 0}};  // may carry 12 A
  EXPECT_NEAR(visit.circuits[0].free_amperes(), 12, 1e-9);
  const auto refused = tasks_of(visit, Spread::likely);
  EXPECT_TRUE(is_left_out(*refused, "no_circuit", "steam"));
  EXPECT_FALSE(find(*refused, "steam"));
  EXPECT_FALSE(find(*refused, "heat_up"));
  visit.circuits.push_back({"kitchen", "kitchen", 120, 20, 0});  // may carry 16 A
  const auto taken = tasks_of(visit, Spread::likely);
  const auto steam = find(*taken, "steam", 0);
  ASSERT_TRUE(steam);
  EXPECT_EQ(taken->notes[*steam].circuit, 1U);
  EXPECT_TRUE(taken->notes[*steam].cord_from_other_room);
  EXPECT_NEAR(taken->notes[*steam].amperes, 12.5, 1e-9);
}

TEST(VisitTasks, SteamTakesPausesAndRefillsWhereTheTankRunsDry) {
  Visit visit = bedroom(2);
  const auto minutes_of = [&](const Visit& one, std::size_t item) {
    const auto tasks = tasks_of(one, Spread::likely);
    return tasks->project.tasks[*find(*tasks, "steam", item)].minutes;
  };
  const int plain = minutes_of(visit, 0);
  const double edges = 8 * at(task_minutes()->tasks.at("edge_change"), Spread::likely) / 60;
  EXPECT_EQ(plain, static_cast<int>(std::ceil(30 * 1.15 + edges - 1e-9)));
  visit.steamer.pauses = {{20, 40}};
  EXPECT_EQ(minutes_of(visit, 0), plain + 40);
  visit.steamer.pauses = {{35, 40}};
  EXPECT_EQ(minutes_of(visit, 0), plain) << "the tank runs dry later";
}

TEST(VisitTasks, PersonsAreNeverInTwoPlaces) {
  const Visit visit = bedroom(3);
  const auto tasks = tasks_of(visit, Spread::high);
  const auto schedule = visits::schedule(tasks->project, k_people);
  const auto who = persons(visit, *tasks, *schedule);
  for (std::size_t a = 0; a < who.size(); ++a) {
    EXPECT_EQ(who[a].size(), static_cast<std::size_t>(tasks->notes[a].people));
    for (std::size_t b = 0; b < a; ++b) {
      const bool together = schedule->start[a] < schedule->start[b] + tasks->project.tasks[b].minutes &&
                            schedule->start[b] < schedule->start[a] + tasks->project.tasks[a].minutes;
      for (const int person : who[a])
        EXPECT_TRUE(!together || std::count(who[b].begin(), who[b].end(), person) == 0);
    }
  }
}

TEST(VisitTasks, EveryTaskSaysWhyItWaits) {
  const auto tasks = tasks_of(bedroom(2), Spread::likely);
  const auto schedule = visits::schedule(tasks->project, k_people);
  const auto why = waits(*tasks, *schedule);
  for (std::size_t i = 0; i < why.size(); ++i) {
    if (schedule->start[i] == 0) {
      EXPECT_EQ(why[i].code, "none");
    } else if (why[i].task) {
      EXPECT_EQ(schedule->start[*why[i].task] + tasks->project.tasks[*why[i].task].minutes,
                schedule->start[i]);
    }
  }
}

}  // namespace
}  // namespace lastegg::visits
